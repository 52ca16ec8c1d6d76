// One tested route by which a dish, or its parts, can get on the shelf or into the freezer.
//
// A way refers to the edition it was found in, which must outlive it.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "jarproof/edition.hpp"
#include "jarproof/report.hpp"

namespace jarproof {

/// Volumes between two ends, in thousandths of a US teaspoon; a cup is 48,000.
struct volume_range {
  std::int64_t low = 0;
  std::int64_t high = 0;
};

inline constexpr std::int64_t way_cup = 48'000;

/// How many jars of one size the solids of a recipe fill by half.
struct way_jars {
  std::string jar;           ///< id of the jar
  std::int64_t count = 0;    ///< whole jars, at least
  std::int64_t left = 0;     ///< solids that are left over, thousandths of a teaspoon
  std::int64_t solids = 0;   ///< in each jar
  std::int64_t liquid = 0;   ///< for all the jars
  std::int64_t missing = 0;  ///< of the liquid, what the recipe does not have
};

/// Volumes of a recipe as far as published weights tell them.
struct way_amounts {
  std::optional<volume_range> solids;
  std::optional<volume_range> liquid;
  std::optional<std::int64_t> portions;  ///< pint portions for the freezer
  std::vector<way_jars> jars;            ///< the plan's own jar first
  std::vector<std::string> unknown;      ///< lines that are not in the sums
  bool raw = false;                      ///< measured before cooking, which makes some less
  bool swollen = false;                  ///< dried food, counted as it fills jars when ready
  bool tomatoes = false;                 ///< counted with the solids
};

/// The published process of a way or of one of its parts, in numbers for this kitchen.
struct way_numbers {
  std::optional<requirement> required;
  std::vector<requirement> options;  ///< other gauges and methods
  std::vector<requirement> by_jar;   ///< where the plan names no jar: one for each listed size
  std::vector<std::string> missing;  ///< keys of the plan without which there are no numbers
};

/// A part of the dish in jars of its own.
struct way_part {
  std::string title;
  const jarproof::process* process = nullptr;
  std::vector<std::string> lines;  ///< of the recipe
  way_numbers numbers;
  std::vector<std::string> changes;
  std::vector<std::string> sources;
};

struct way {
  std::string kind;  ///< `as-planned`, `frame`, `recipe`, `parts` or `freezer`
  std::string title;
  const jarproof::process* process = nullptr;  ///< null for parts and the freezer
  way_numbers numbers;
  int altered = 0;                   ///< lines of the recipe that change
  std::vector<std::string> changes;  ///< what has to change and what to do, in order
  std::vector<std::string> notes;    ///< nothing has to change
  std::optional<way_amounts> amounts;
  std::vector<way_part> parts;
  std::vector<std::string> sources;
};

}  // namespace jarproof
