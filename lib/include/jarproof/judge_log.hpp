// Judging what a canner did: did it deliver the process that the plan names?
//
//   const jarproof::log_report r = jarproof::judge_log(plan, edition, log);
//   r.verdict     accepted only where the plan is, and the rows of the log vouch for the whole time
//   r.findings    what went wrong, with line and time
//   r.now         what to do, with limits; also of a log that is still being written
//
// Readings are compared as integers in the unit in which they were written. Physics explains and
// decides nothing.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <tuple>
#include <utility>

#include "jarproof/check.hpp"
#include "jarproof/detail/log_events.hpp"
#include "jarproof/detail/log_explain.hpp"
#include "jarproof/detail/log_loads.hpp"
#include "jarproof/detail/log_now.hpp"
#include "jarproof/detail/log_timing.hpp"
#include "jarproof/log_report.hpp"
#include "jarproof/run_log.hpp"

namespace jarproof {

namespace detail {

[[nodiscard]] inline run_state state_of_run(const run_judging& j) {
  const std::int64_t first = j.log.rows.front().at_us;
  const std::int64_t last = j.log.rows.back().at_us;
  const auto has = [&](log_event_kind k, std::int64_t from) {
    return first_after(j.moments, k, from) != nullptr;
  };
  const std::int64_t start = j.course.restarted_us.value_or(first);
  const bool counted = has(log_event_kind::unsealed, first);
  const bool off =
      j.course.off_us || (!j.course.started_us && has(log_event_kind::heat_off, first));
  if (counted || (off && !j.target.by_pressure)) return run_state::over;
  if (j.target.by_pressure) {
    const bool opened = has(log_event_kind::opened, j.course.started_us.value_or(first)) &&
                        (off || j.course.started_us);
    const log_moment* zero = zero_of(j, start);
    // Pressure again behind it: the run goes on, with air in the canner.
    const bool again = !off && zero != nullptr && !opened &&
                       std::any_of(j.moments.begin(), j.moments.end(), [&](const log_moment& m) {
                         return m.at_us > zero->at_us && has_pressure(j, m);
                       });
    if ((zero != nullptr && !again) || opened) return run_state::over;
  }
  if (off) return run_state::cooling;
  const log_moment* steam = last_before(j.moments, log_event_kind::steam, last);
  const log_moment* closed = last_before(j.moments, log_event_kind::weight_on, last);
  if (!j.course.started_us || (j.target.by_pressure && steam != nullptr && steam->at_us > start)) {
    if (!j.target.by_pressure) return steam != nullptr ? run_state::rising : run_state::heating;
    if (closed != nullptr && (steam == nullptr || closed->at_us >= steam->at_us))
      return run_state::rising;
    return steam != nullptr && jet_stopped(j) == nullptr ? run_state::venting : run_state::heating;
  }
  if (j.delivered) return run_state::full;
  return j.course.counts_from_us && !j.course.lost ? run_state::counting : run_state::lost;
}

/// The plan stands before the run: what it is not, no run can make good.
inline void judge_plan_first(run_judging& j) {
  const report& plan = j.out.plan;
  if (plan.verdict == verdict::accepted) return;
  const finding* gravest = nullptr;
  for (const finding& f : plan.findings) {
    if (f.outcome != outcome::none && (gravest == nullptr || f.outcome > gravest->outcome))
      gravest = &f;
  }
  sentence_facts facts;
  facts.found = std::string(name_of(plan.verdict));
  facts.reason = gravest == nullptr ? std::string() : gravest->message;
  log_finding& f = j.say("plan-not-accepted", nullptr, std::move(facts));
  f.outcome = gravest == nullptr ? outcome::incomplete : gravest->outcome;
}

/// Rows without which nothing can be counted.
inline void judge_missing(run_judging& j) {
  const std::int64_t first = j.log.rows.front().at_us;
  const bool over = !j.out.running || j.out.state == run_state::cooling;
  // Of a run that goes on, what its rows show to be missing: the time counts.
  if (!over && !j.course.started_us) return;
  const bool starts = first_after(j.moments, log_event_kind::at_pressure, first) != nullptr;
  const bool steams = first_after(j.moments, log_event_kind::steam, first) != nullptr;
  const bool at_boil = !j.target.by_pressure && (steams || starts);
  const bool low = j.target.method == "low-temperature";
  if (!starts && !(at_boil && !low))
    missing_event(j, log_event_kind::at_pressure, "when the timing began");
  // A thermometer shows the boil by itself; `steady` alone does not say when it began.
  const bool by_thermometer = j.target.by_reading && j.target.method != "steam";
  if (starts && !steams && !low && !j.target.by_pressure && !by_thermometer)
    missing_event(j, log_event_kind::steam, "when the full boil began");
  if (!over) return;
  // A canner that is opened in the middle says by itself when the process ended.
  const bool opened = j.course.end_row != nullptr && j.course.end_row->event &&
                      j.course.end_row->event->kind == log_event_kind::opened && !j.delivered;
  if (j.course.started_us && !j.course.off_us && !opened)
    missing_event(j, log_event_kind::heat_off, "when the heat was turned off");
}

inline void judge_unfinished(run_judging& j) {
  if (!j.out.running) return;
  sentence_facts facts;
  facts.found = j.when(j.out.last_us);
  facts.required = j.out.state == run_state::cooling ? "`zero`" : "`heat-off`";
  if (j.out.ends_us && j.out.state == run_state::counting)
    facts.reason = "If all goes well, the time is full at " + j.when(*j.out.ends_us) + ".";
  j.say("run-unfinished", &j.log.rows.back(), std::move(facts));
}

/// From each loss to when it was held again, the heat went off or the log ends; and the gaps.
inline void fill_missed(run_judging& j) {
  auto next = j.course.claimed.begin();  // losses and stretches both stand in order of time
  for (const log_loss& loss : j.course.losses) {
    std::int64_t to =
        j.course.off_us && *j.course.off_us > loss.at_us ? *j.course.off_us : j.out.last_us;
    while (next != j.course.claimed.end() && next->from_us <= loss.at_us) ++next;
    if (next != j.course.claimed.end()) to = std::min(to, next->from_us);
    j.out.missed.push_back({std::string(loss.check), loss.at_us, loss.again_us.value_or(to)});
  }
  for (const log_gap& gap : j.course.gaps)
    j.out.missed.push_back({"reading-gap", gap.from_us, gap.to_us});
}

inline void fill_numbers(run_judging& j) {
  log_report& out = j.out;
  const held_stretch best = longest(j.course.vouched);
  out.delivered_us = best.to_us - best.from_us;
  if (j.target.time_min > 0) out.required_min = j.target.time_min;
  j.needed_us = j.target.time_min * us_per_min;
  j.delivered = j.target.time_min > 0 && out.delivered_us >= j.needed_us;
  out.state = state_of_run(j);
  out.running = out.state != run_state::over;
  out.least_reading = j.target.least;
  out.unit = j.log.unit;
  for (held_stretch s : j.course.claimed) {
    const auto same =
        std::lower_bound(j.course.vouched.begin(), j.course.vouched.end(), s.from_us,
                         [](const held_stretch& v, std::int64_t from) { return v.from_us < from; });
    s.vouched =
        same != j.course.vouched.end() && same->from_us == s.from_us && same->to_us == s.to_us;
    out.held.push_back(s);
  }
  fill_missed(j);
  if (out.state == run_state::counting) {
    out.counts_from_us = j.course.counts_from_us;
    out.ends_us = *j.course.counts_from_us + j.needed_us;
  } else if (out.state == run_state::lost) {
    out.ends_us = j.log.rows.back().at_us + j.needed_us;
  } else if (out.state == run_state::full) {
    out.ends_us = best.from_us + j.needed_us;
  }
}

[[nodiscard]] inline plan_words words_of_run(const plan& what, const report& plan) {
  plan_words words;
  if (plan.process != nullptr) words.food = std::string(plan.process->title);
  if (plan.required) words.jar = plan.required->jar;
  if (plan.required) words.pack = plan.required->pack;
  if (what.gauge) words.gauge = what.gauge->text;
  if (plan.altitude_ft >= 0) words.altitude = altitude_text(plan.altitude_ft);
  return words;
}

}  // namespace detail

/// Judges one run against one plan and edition; both must outlive the report.
[[nodiscard]] inline log_report judge_log(const plan& what, const edition& rules,
                                          const run_log& log) {
  using namespace detail;
  log_report out;
  out.source = log.source;
  out.plan = check(what, rules);
  out.clock = log.clock;
  if (log.rows.empty()) {  // no reader gives such a log
    out.verdict = verdict::incomplete;
    return out;
  }
  out.first_us = log.rows.front().at_us;
  out.last_us = log.rows.back().at_us;
  run_judging j{what, rules, log, out, moments_of(log), {}, {}, {}};
  j.target = target_of(what, rules, out.plan, log);
  j.course =
      course_reader(j.moments, j.target, limit_of(rules.run.limits, "longest-gap-min") * us_per_min,
                    limit_of(rules.run.limits, "fastest-rise-min") * us_per_min)
          .read();
  j.words = words_of_run(what, out.plan);
  fill_numbers(j);

  judge_plan_first(j);
  const bool unlike = judge_kind_of_log(j);
  judge_delivery(j, unlike);
  if (!j.target.method.empty()) judge_missing(j);
  if (j.target.by_pressure) {
    // The venting before the time that counted; of a start that was too early, before it counted.
    const held_stretch best = longest(j.delivered ? j.course.vouched : j.course.claimed);
    const std::int64_t before =
        j.delivered ? best.from_us
                    : std::max(j.course.restarted_us.value_or(out.last_us), best.from_us);
    const bool closing = out.state != run_state::heating && out.state != run_state::venting;
    // Of a run that goes on, what still holds now.
    const bool open = out.running && out.state != run_state::cooling;
    if (out.state == run_state::heating) judge_jet(j);
    if (closing) judge_vent(j, open ? out.last_us : before);
    judge_zero_readings(j);
    judge_gauge_beside_weight(j);
    if (closing) judge_heat_up(j, open ? out.last_us : before);
    if (!out.running || out.state == run_state::cooling) judge_cooling(j);
  }
  judge_thermometer(j);
  judge_second_load(j);
  judge_too_high(j);
  judge_jars_after(j);
  judge_unfinished(j);

  std::stable_sort(
      out.findings.begin(), out.findings.end(), [](const log_finding& a, const log_finding& b) {
        return std::make_tuple(a.at_us.has_value(), a.line, std::string_view(a.check)) <
               std::make_tuple(b.at_us.has_value(), b.line, std::string_view(b.check));
      });
  const std::vector<finding> plain(out.findings.begin(), out.findings.end());
  out.verdict = verdict_of(plain);
  explain_run(j);
  now_writer(j).write();
  return out;
}

}  // namespace jarproof
