// What the log says that no load can: a thermometer hotter than water, a second load, more jars
// than there are. SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <utility>

#include "jarproof/detail/log_events.hpp"
#include "jarproof/detail/log_findings.hpp"
#include "jarproof/detail/log_sentence.hpp"

namespace jarproof::detail {

/// Water that boils in an open pot, and its steam, are no hotter than the boiling point.
inline void judge_thermometer(run_judging& j) {
  if (j.target.by_pressure || !j.target.boils_at_most) return;
  for (const log_row& row : j.log.rows) {
    if (!row.reading || *row.reading <= *j.target.boils_at_most) continue;
    log_finding& f = j.say("thermometer-reads-high", &row,
                           {reading_text(j, row),
                            "at most " + limit_text(j.log.unit, *j.target.boils_at_most),
                            {},
                            {},
                            j.when(row.at_us)});
    f.field = std::string(name_of(j.log.unit));
    f.column = row.reading_column;
    return;
  }
}

/// The highest reading above what home canners are run at.
inline void judge_too_high(run_judging& j) {
  if (!j.target.by_reading || !j.target.most) return;
  const log_row* highest = nullptr;
  for (const log_row& row : j.log.rows) {
    if (!row.reading || *row.reading <= *j.target.most) continue;
    if (highest == nullptr || *row.reading > *highest->reading) highest = &row;
  }
  if (highest == nullptr) return;
  log_finding& f = j.say("pressure-too-high", highest,
                         {reading_text(j, *highest) + " at " + j.when(highest->at_us),
                          "at most " + limit_text(j.log.unit, *j.target.most),
                          {},
                          {},
                          {}});
  f.field = std::string(name_of(j.log.unit));
  f.column = highest->reading_column;
}

/// The row with which a second load begins, behind the end of the first; null where there is none.
/// A canner that was opened because its water was low holds the same load still.
[[nodiscard]] inline const log_row* second_load(const run_judging& j) {
  bool started = false;
  bool off = false;
  bool ended = false;
  const std::int64_t full =
      j.delivered ? longest(j.course.vouched).to_us : j.out.last_us + us_per_min;
  for (const log_moment& m : j.moments) {
    const auto has = [&](log_event_kind k) { return m.of(k) != nullptr; };
    if (ended) {
      for (const log_event_kind k :
           {log_event_kind::heat_on, log_event_kind::steam, log_event_kind::weight_on,
            log_event_kind::at_pressure, log_event_kind::steady}) {
        if (has(k)) return m.of(k);
      }
      if (j.target.gauge_room > 0 && is_pressure(j.log.unit) && m.reading != nullptr &&
          has_pressure(j, m) && !found_in(j, "gauge-not-at-zero"))
        return m.reading;
    }
    if (has(log_event_kind::water_low)) started = off = false;
    if (has(log_event_kind::at_pressure) || (!j.target.by_pressure && has(log_event_kind::steam)))
      started = true;
    off = off || (started && (has(log_event_kind::heat_off) || has(log_event_kind::zero)));
    const bool out = has(log_event_kind::opened) || has(log_event_kind::unsealed);
    // Whoever goes on behind a full time and the end of it has other jars in the canner.
    const bool down = m.at_us >= full && (j.target.by_pressure ? has(log_event_kind::zero)
                                                               : has(log_event_kind::heat_off));
    ended = ended || (off && out) || down;
  }
  return nullptr;
}

inline void judge_second_load(run_judging& j) {
  const log_row* row = second_load(j);
  if (row == nullptr) return;
  j.say("second-load", row,
        {row->event ? "`" + std::string(name_of(row->event->kind)) + "`" : reading_text(j, *row),
         {},
         {},
         {},
         j.when(row->at_us)});
}

/// Found so late, an unsealed jar is neither processed again nor eaten.
inline void say_too_late(const run_judging& j, log_finding& f) {
  const int hours = limit_of(j.rules.after.limits, "unsealed-h");
  const std::int64_t until = heat_ended(j) + hours * 60 * us_per_min;
  if (*f.at_us < until) return;
  const run_step* step = find(j.rules.after.steps, "discard-unsealed");
  f.message += " That was found " + std::to_string(hours) + " h or more after the heat went off.";
  if (step == nullptr) return;
  log_sentence_facts facts;
  facts.at = j.when(until);
  f.fix = filled(step->says, facts);
}

inline void judge_jars_after(run_judging& j) {
  int lost = 0;
  for (const log_row& row : j.log.rows) {
    if (!row.event || row.event->count == 0) continue;
    const int before = lost;
    lost += row.event->count;
    sentence_facts facts;
    facts.found = std::to_string(row.event->count) + (row.event->count == 1 ? " jar" : " jars");
    if (row.event->kind == log_event_kind::unsealed)
      say_too_late(j, j.say("jar-unsealed", &row, std::move(facts)));
    if (row.event->kind == log_event_kind::broken) j.say("jar-broken", &row, std::move(facts));
    if (!j.what.jars || lost <= j.what.jars->value || before > j.what.jars->value) continue;
    j.say("log-unlike-plan", &row,
          {std::to_string(lost) + " unsealed or broken jars",
           "at most " + j.what.jars->text,
           "So many the plan has under `jars`.",
           {},
           {}});
  }
}

}  // namespace jarproof::detail
