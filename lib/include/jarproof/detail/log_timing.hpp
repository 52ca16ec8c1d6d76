// Whether the process time was delivered, and what kept it from counting.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>

#include "jarproof/detail/log_findings.hpp"

namespace jarproof::detail {

/// `Started again at 14:52, the whole 75 min end at 16:07.`
[[nodiscard]] inline std::string again_text(const run_judging& j, const log_loss& loss) {
  if (!loss.again_us) {
    return "From when it is held again, the whole " + time_text(j.target.time_min) +
           " start again: at the earliest from then on to " +
           j.when(std::max(loss.at_us, j.out.running ? j.out.last_us : 0) + j.needed_us) + ".";
  }
  std::string out = "The whole " + time_text(j.target.time_min) + " start again at " +
                    j.when(*loss.again_us) + " and end at " + j.when(*loss.again_us + j.needed_us) +
                    ".";
  if (j.course.off_us && *j.course.off_us < *loss.again_us + j.needed_us)
    out += " The heat went off at " + j.when(*j.course.off_us) + ".";
  return out;
}

/// What was lost let air in: the time does not start again before a new venting.
[[nodiscard]] inline bool lets_air_in(const run_judging& j, const log_loss& loss) {
  if (!j.target.by_pressure) return false;
  const log_row& row = *loss.row;
  const bool dry = row.event && row.event->kind == log_event_kind::water_low;
  return dry || (row.reading && j.target.by_reading && *row.reading <= j.target.gauge_room &&
                 loss.check == "pressure-dropped");
}

inline void judge_losses(run_judging& j) {
  for (const log_loss& loss : j.course.losses) {
    sentence_facts facts;
    facts.required = j.target.hold;
    if (j.target.by_reading && !j.target.least_text.empty() && !j.target.by_pressure)
      facts.required += ", which is " + j.target.least_text + " or more here";
    const log_row* row = loss.row;
    const bool reading = row->reading && j.target.by_reading && *row->reading < *j.target.least;
    const bool early = loss.check == "timing-started-early";
    facts.found = reading      ? reading_text(j, *row)
                  : early      ? "nothing that shows it yet"
                  : row->event ? "`" + std::string(name_of(row->event->kind)) + "`"
                               : row->reading_text;
    facts.choices = j.when(loss.at_us);
    if (lets_air_in(j, loss)) {
      facts.reason = "The canner is vented again before the whole " + time_text(j.target.time_min) +
                     " start again.";
    } else if (j.target.time_min != 0) {
      facts.reason = again_text(j, loss);
    }
    if (early && loss.unclear) {
      soften(j, j.unsaid("timing-started-early", row, std::move(facts)));
    } else if (early) {
      soften(j, j.say("timing-started-early", row, std::move(facts)));
    } else if (loss.check == "pressure-dropped") {
      soften(j, j.say("pressure-dropped", row, std::move(facts)));
    } else if (loss.check == "water-low") {
      soften(j, j.say("water-low", row, std::move(facts)));
    } else if (loss.check == "temperature-too-low") {
      soften(j, j.say("temperature-too-low", row, std::move(facts)));
    } else {
      soften(j, j.say("boil-lost", row, std::move(facts)));
    }
  }
}

inline void judge_gaps(run_judging& j, int gap_min) {
  for (const log_gap& gap : j.course.gaps) {
    sentence_facts facts;
    facts.found = duration_text(gap.to_us - gap.from_us);
    // A short time is no gap where somebody saw the pressure before and after it.
    facts.required = gap.to_us - gap.from_us > gap_min * us_per_min
                         ? "at most " + std::to_string(gap_min) + " min"
                         : "none of the time";
    facts.reason = "From " + j.when(gap.from_us) + " to " + j.when(gap.to_us) + ".";
    if (j.target.by_pressure && !j.target.weighted && !j.target.by_reading)
      facts.reason += " With a dial only readings of the dial vouch for the pressure.";
    j.say("reading-gap", gap.row, std::move(facts));
  }
}

/// Temperatures beside a weight that is seen to move: the weight vouches, they explain.
[[nodiscard]] inline bool stands_beside_weight(const run_judging& j) {
  return j.target.by_pressure && j.target.by_steady &&
         first_after(j.moments, log_event_kind::steady, j.out.first_us) != nullptr;
}

/// While the time counts, water under pressure is hotter than it boils anywhere.
[[nodiscard]] inline bool contradicts_weight(const run_judging& j, const log_row& r) {
  if (!j.course.started_us || r.at_us < *j.course.started_us) return false;
  if (j.course.off_us && r.at_us > *j.course.off_us) return false;
  return *r.reading <= least_degrees(j.log.unit, 212 * micro_per_unit);
}

/// Rows that only a pressure canner has, of a plan without pressure.
inline bool judge_events_of_pressure(run_judging& j) {
  if (j.target.by_pressure || j.target.method.empty()) return false;
  for (const log_row& r : j.log.rows) {
    if (!r.event) continue;
    const log_event_kind k = r.event->kind;
    if (k != log_event_kind::weight_on && k != log_event_kind::zero) continue;
    j.say("log-unlike-plan", &r,
          {"`" + std::string(name_of(k)) + "`",
           "rows of a canner without a weight or a gauge",
           "The plan uses no pressure.",
           {},
           {}});
    return true;
  }
  return false;
}

/// A log of something else than the plan: it explains, and vouches for nothing.
inline bool judge_kind_of_log(run_judging& j) {
  if (judge_events_of_pressure(j)) return true;
  const bool warm = is_temperature(j.log.unit);
  const bool pressure = is_pressure(j.log.unit);
  if (j.target.method.empty() || (j.target.by_pressure ? !warm : !pressure)) return false;
  const log_row* row = nullptr;
  const bool beside_weight = stands_beside_weight(j);
  for (const log_row& r : j.log.rows) {
    if (row == nullptr && r.reading && (!beside_weight || contradicts_weight(j, r))) row = &r;
  }
  if (row == nullptr) return false;
  sentence_facts facts;
  facts.found = "readings in " + std::string(name_of(j.log.unit));
  facts.required = j.target.by_pressure ? "readings in psi, kPa or bar, or rows with `steady`"
                                        : "readings in F or C, or rows with `steady`";
  facts.reason = j.target.by_pressure
                     ? "A thermometer shows one spot; the tables are printed for a pressure."
                     : "The plan uses no pressure.";
  j.say("log-unlike-plan", row, std::move(facts));
  return true;
}

/// The time itself. `unlike`: the log is of another kind, which has been said.
inline void judge_delivery(run_judging& j, bool unlike) {
  if (j.target.time_min == 0 || !j.course.started_us) return;
  judge_losses(j);
  if (j.delivered) return;
  const held_stretch claimed = longest(j.course.claimed);
  const bool enough_but_for_gaps = claimed.to_us - claimed.from_us >= j.needed_us;
  if (!unlike) judge_gaps(j, limit_of(j.rules.run.limits, "longest-gap-min"));
  if (j.out.running && j.out.state != run_state::cooling) return;
  const bool short_span = j.course.span_us < j.needed_us;
  if (j.course.span_us <= 0 && !j.course.losses.empty()) return;
  const bool explained = !j.course.losses.empty() || enough_but_for_gaps ||
                         (!unlike && !j.course.gaps.empty()) || unlike;
  if (!short_span && explained) return;
  const held_stretch counted{j.course.span_from_us, j.course.span_to_us, true};
  sentence_facts facts;
  facts.found = duration_text(counted.to_us - counted.from_us);
  facts.required = time_text(j.target.time_min);
  facts.reason = "Counted from " + j.when(counted.from_us) + " to " + j.when(counted.to_us) + ".";
  j.say("time-too-short", j.course.end_row, std::move(facts));
}

}  // namespace jarproof::detail
