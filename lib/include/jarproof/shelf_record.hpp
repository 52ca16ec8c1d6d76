// What one line of a shelf record says: a lot that was put up, or what became of its jars.
//
// A record is JSON Lines: `{"record": "jarproof-shelf/1", "lot": "beans-1", ...}`. Lines are only
// added, so that a year of canning can be told from its beginning (docs/shelf.md).
// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "jarproof/plan.hpp"
#include "jarproof/report.hpp"

namespace jarproof {

/// Name and revision of the layout of a line, its member `record`.
inline constexpr std::string_view shelf_format = "jarproof-shelf/1";

/// What the run log of a lot was judged to be.
struct shelf_run {
  jarproof::verdict verdict = jarproof::verdict::incomplete;
  std::string log;  ///< file name of the log
};

/// A lot as it was recorded; `lot` is its identity.
struct shelf_record {
  std::string source;  ///< display name of the line, `FILE:LINE`
  std::string lot;
  std::string title;    ///< may be empty
  std::string date;     ///< the day it was put up, `2026-08-14`
  std::string use_by;   ///< at most a year after `date`: for quality, no limit of safety
  std::string library;  ///< version of the library that judged it
  std::string edition_name;
  std::string edition_version;
  jarproof::verdict verdict = jarproof::verdict::incomplete;  ///< of the plan, when recorded
  std::string process;    ///< id of the process; empty where there was none
  std::string required;   ///< the numbers at that time, as JSON; `null` where there were none
  jarproof::plan plan;    ///< to be judged again
  std::string plan_text;  ///< the same as JSON: two records of one lot must agree in it
  int jars = 0;           ///< put up, 1 to 9999
  std::string jar;        ///< as the plan says it
  std::optional<shelf_run> run;
  int unsealed = 0;  ///< jars that did not seal
};

enum class shelf_event { opened, eaten, discarded, unsealed };

[[nodiscard]] constexpr std::string_view name_of(shelf_event e) noexcept {
  switch (e) {
    case shelf_event::opened:
      return "opened";
    case shelf_event::eaten:
      return "eaten";
    case shelf_event::discarded:
      return "discarded";
    case shelf_event::unsealed:
      break;
  }
  return "unsealed";
}

/// What became of some jars of a lot.
struct shelf_happening {
  std::string source;
  std::string lot;
  std::string date;
  shelf_event what = shelf_event::opened;
  int jars = 0;  ///< 1 to 9999
};

using shelf_line = std::variant<shelf_record, shelf_happening>;

}  // namespace jarproof
