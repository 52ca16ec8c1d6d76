// What judging a run log found.
//
//   jarproof::log_report r = jarproof::judge_log(plan, edition, log);   // jarproof/judge_log.hpp
//   if (r.verdict == jarproof::verdict::accepted) ...                   // the process was
//   delivered for (const jarproof::to_do& t : r.now) use(t.what, t.until);
//
// The edition and the plan that it was made with must outlive it.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "jarproof/report.hpp"
#include "jarproof/run_log.hpp"

namespace jarproof {

/// A finding about a run, and when it happened.
struct log_finding : finding {
  std::optional<std::int64_t> at_us;  ///< nothing for what is about the whole run
};

/// One thing to do, and until when.
struct to_do {
  std::string id;  ///< of its sentence in the rules
  std::string what;
  std::string until;  ///< `18:40`, `18:40 the next day`, `minute 87`; empty where there is no limit
  std::optional<std::int64_t> until_us;
  bool or_else = false;  ///< in place of the one before it
};

/// How far the run has come.
enum class run_state {
  heating,   ///< no steam yet
  venting,   ///< steam flows, the vent is open
  rising,    ///< on the way to the pressure or the boil
  counting,  ///< the process time counts
  lost,      ///< below what is asked for, or started too early: nothing counts at the moment
  full,      ///< the whole time was delivered, and the heat is still on
  cooling,   ///< heat off, pressure not yet known to be zero
  over
};

[[nodiscard]] constexpr std::string_view name_of(run_state s) noexcept {
  constexpr std::string_view names[] = {"heating", "venting", "rising",  "counting",
                                        "lost",    "full",    "cooling", "over"};
  return names[static_cast<int>(s)];
}

/// A time during which the canner held what is asked for, by readings or the weight.
struct held_stretch {
  std::int64_t from_us = 0;
  std::int64_t to_us = 0;
  bool vouched = true;  ///< false where readings stand too far apart
};

/// A time in which what is asked for was not held, or in which nothing vouches for it.
struct missed_stretch {
  std::string check;  ///< `pressure-dropped`; `reading-gap` where readings stand too far apart
  std::int64_t from_us = 0;
  std::int64_t to_us = 0;
};

struct log_report {
  std::string source;  ///< display name of the log
  report plan;         ///< what the plan itself gives
  jarproof::verdict verdict = jarproof::verdict::unreadable;
  std::vector<log_finding> findings;  ///< the plan first, then by line and check id
  std::vector<to_do> now;             ///< in the order in which to do it
  std::vector<std::string> explains;  ///< by physics; decides nothing
  run_state state = run_state::over;
  bool running = false;  ///< the log is not at its end yet
  bool clock = false;
  std::int64_t first_us = 0;  ///< time of the first row
  std::int64_t last_us = 0;   ///< time of the last row

  std::optional<int> required_min;  ///< nothing where no table gives a time
  std::int64_t delivered_us = 0;    ///< longest stretch that readings or the weight vouch for
  std::vector<held_stretch> held;
  std::vector<missed_stretch> missed;
  std::optional<std::int64_t> counts_from_us;  ///< of a running log: the time that still counts
  std::optional<std::int64_t> ends_us;         ///< when the time is full, if nothing goes wrong
  std::optional<std::int64_t> least_reading;   ///< in millionths of the log's unit
  log_unit unit = log_unit::none;

  /// Minutes at 250 F that the steam did while the time counted (F0), and those of the process at
  /// its published numbers. Of a pressure canner only.
  std::optional<double> lethality_min, process_lethality_min;
};

}  // namespace jarproof
