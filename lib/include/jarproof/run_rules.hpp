// What judging a run log needs beside the tables: limits and sentences; part of an edition
// (jarproof/edition.hpp).
// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "jarproof/citation.hpp"
#include "jarproof/list.hpp"

namespace jarproof {

/// A number that a run is held to; the unit is the end of the id, such as `longest-gap-min`.
struct run_limit {
  std::string_view id;
  int value = 0;
  std::string_view says;      ///< what it limits
  std::string_view evidence;  ///< where it has no source
  list<citation> sources;
};

/// What to do now, with `{hold}`, `{time}`, `{at}` and `{limit}` in braces.
struct run_step {
  std::string_view id;
  std::string_view says;
  std::string_view evidence;  ///< where it has no source
  list<citation> sources;
};

/// Where water boils.
struct boiling_point {
  int altitude_ft = 0;
  int thousandths_f = 0;
};

/// While the canner is at work.
struct run_rules {
  list<run_limit> limits;
  list<run_step> steps;
  list<boiling_point> boiling;  ///< from 0 ft up
  std::string_view boiling_evidence;
  list<citation> boiling_sources;
};

/// When it is done.
struct after_rules {
  list<run_limit> limits;
  list<run_step> steps;
  list<std::string_view> not_reprocessed;  ///< processes whose food is too dense to be heated again
  std::string_view not_reprocessed_evidence;
  list<citation> not_reprocessed_sources;
};

/// Ids that the code asks for; the loader wants each of them.
inline constexpr std::string_view run_limit_ids[] = {
    "longest-gap-min",   "fastest-cooling-min", "wait-after-zero-min", "boil-tolerance-f",
    "steam-tolerance-f", "weight-swing-psi",    "zero-reading-psi",    "fastest-rise-min"};
inline constexpr std::string_view run_step_ids[] = {"start",        "warm",
                                                    "vent",         "close-vent",
                                                    "vent-again",   "raise",
                                                    "raise-boil",   "hold",
                                                    "raise-heat",   "back-boil",
                                                    "refill",       "start-again",
                                                    "hold-again",   "lower-heat",
                                                    "then-off",     "off",
                                                    "off-boiling",  "off-steam",
                                                    "off-low",      "fall",
                                                    "wait",         "stop-plan",
                                                    "dry-canner",   "gauge-first",
                                                    "gauges-first", "thermometer-first",
                                                    "own-log",      "fall-instead",
                                                    "add-row"};
inline constexpr std::string_view after_limit_ids[] = {
    "reprocess-low-acid-h", "reprocess-acid-h", "unsealed-h", "seals-from-h", "seals-through-h"};
inline constexpr std::string_view after_step_ids[] = {"more-readings",
                                                      "run-again",
                                                      "reprocess",
                                                      "refrigerate",
                                                      "freeze",
                                                      "discard-low-acid",
                                                      "discard-acid",
                                                      "discard-untested",
                                                      "cool",
                                                      "check-seals",
                                                      "liquid-lost",
                                                      "reprocess-unsealed",
                                                      "refrigerate-unsealed",
                                                      "freeze-unsealed",
                                                      "discard-unsealed",
                                                      "broken"};

}  // namespace jarproof
