// What the ways say beside the numbers of the tables; part of an edition (jarproof/edition.hpp).
// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "jarproof/citation.hpp"
#include "jarproof/list.hpp"

namespace jarproof {

/// What becomes of an ingredient that may not go into the jar, or that freezes badly.
struct left_out {
  std::string_view id;
  list<std::string_view> traits;  ///< any of these
  list<std::string_view> foods;   ///< or any of these ingredients
  std::string_view leave_out;     ///< of a jar: sentence with `{found}`; may be empty
  std::string_view at_serving;    ///< when the jar is opened: sentence with `{found}`; may be empty
  std::string_view freezer;       ///< of a freezer portion: sentence with `{found}`; may be empty
  std::string_view evidence;      ///< where it has no source
  list<citation> sources;
};

/// One thing to do on a way by which a dish gets on the shelf or into the freezer.
struct way_step {
  std::string_view id;
  std::string_view way;              ///< `frame`, `recipe`, `parts` or `freezer`
  list<std::string_view> processes;  ///< of a frame: only with these; empty: with all
  list<std::string_view> if_any;     ///< traits: only for a dish that holds such a thing
  std::string_view says;
  std::string_view evidence;  ///< where it has no source
  list<citation> sources;
};

/// How many jars a weight of dry food fills when it is ready for them.
struct dry_yield {
  std::string_view id;
  list<std::string_view> traits;  ///< of the food
  int thousandths_lb = 0;
  std::string_view jar;  ///< id of the jar
  int jars = 0;
  list<citation> sources;
};

}  // namespace jarproof
