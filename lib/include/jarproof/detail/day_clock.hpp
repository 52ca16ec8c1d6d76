// The clock of the day: the stages of each load, forward from `start` or backward from `finish-by`.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/day.hpp"
#include "jarproof/detail/day_loads.hpp"

namespace jarproof::detail {

/// The stages of all loads, one after another.
class day_clock {
 public:
  day_clock(const edition& rules, const std::vector<const plan*>& plans, day_plan& out)
      : rules_(rules), plans_(plans), out_(out) {}

  void run() {
    for (std::size_t i = 0; i < out_.loads.size(); ++i) {
      load_ = &out_.loads[i];
      heat_up();
      vent();
      published("come-up", true);
      add("process", load_->time_min, load_->time_min, process_text(), true);
      published("cool-down", false);
      published("rest", false);
      if (i + 1 < out_.loads.size()) published("next-load", false);
    }
  }

 private:
  const edition& rules_;
  const std::vector<const plan*>& plans_;
  day_plan& out_;
  day_load* load_ = nullptr;

  day_stage& add(std::string_view id, int least, int use, std::string what, bool fuel) {
    day_stage s;
    s.id = std::string(id);
    s.from_min = out_.total_min;
    s.to_min = s.from_min + use;
    s.least_min = least;
    s.what = std::move(what);
    s.fuel = fuel;
    out_.total_min += use;
    out_.least_total_min += least;
    if (fuel) {
      out_.fuel_min += use;
      out_.least_fuel_min += least;
    }
    load_->stages.push_back(std::move(s));
    return load_->stages.back();
  }
  [[nodiscard]] const day_minutes* minutes_of(std::string_view stage) const {
    for (const day_minutes& m : rules_.day.minutes) {
      if (m.stage == stage && m.methods.contains(load_->method)) return &m;
    }
    return nullptr;
  }
  void ground(day_stage& s, const day_minutes& m) {
    s.evidence = std::string(m.evidence);
    add_sources(rules_, m.sources, s.sources);
  }
  void published(std::string_view stage, bool fuel) {
    const day_minutes* m = minutes_of(stage);
    if (m == nullptr) return;  // this method has no such stage
    ground(add(stage, m->from_min, m->use_min, std::string(m->says), fuel), *m);
  }
  /// A process, or the plan, may ask for a longer one.
  void heat_up() {
    const day_minutes* m = minutes_of("heat-up");
    int least = 0;
    for (const day_load_part& p : load_->parts) {
      least = std::max(least, out_.batches[p.batch].judged.process->needs.heat_up_min);
      const plan& what = *plans_[p.batch];
      if (what.heat_up)
        least = std::max(
            least, static_cast<int>(divide(what.heat_up->value.value, ms_per_min, rounding::up)));
    }
    if (m == nullptr) {
      out_.unsaid.push_back("The clock: the rules have no minutes of heating up for the method `" +
                            load_->method + "`.");
      if (least == 0) return;
    }
    day_stage& s = add("heat-up", std::max(least, m == nullptr ? 0 : m->from_min),
                       std::max(least, m == nullptr ? 0 : m->use_min),
                       m == nullptr ? std::string("heat up") : std::string(m->says), true);
    if (m != nullptr) ground(s, *m);
  }
  void vent() {
    const method* m = find(rules_.methods, load_->method);
    if (m == nullptr || m->vent_min == 0) return;
    int minutes = m->vent_min;
    for (const day_load_part& p : load_->parts) {
      const plan& what = *plans_[p.batch];
      if (what.vent)
        minutes = std::max(
            minutes, static_cast<int>(divide(what.vent->value.value, ms_per_min, rounding::up)));
    }
    day_stage& s = add("vent", minutes, minutes,
                       "vent a full, steady jet of steam, then close the vent", true);
    add_sources(rules_, m->sources, s.sources);
  }
  [[nodiscard]] std::string process_text() const {
    std::string out = "process " + time_text(load_->time_min);
    if (!load_->pressure.empty()) out += " at " + load_->pressure;
    return out;
  }
};

/// The first plan that says `key`, or null.
[[nodiscard]] inline const word* first_said(const std::vector<const plan*>& plans,
                                            std::optional<word> plan::*key) {
  for (const plan* p : plans) {
    if (p->*key) return &*(p->*key);
  }
  return nullptr;
}

/// Sets the time of day at which the day starts. With `finish-by` alone it is counted back from
/// there, and may lie on the day before. With both it starts at `start`; where the day then lasts
/// longer than until the next `finish-by`, that is a finding.
inline void set_start(const edition& rules, const std::vector<const plan*>& plans, day_plan& out) {
  const word* start = first_said(plans, &plan::start);
  const word* finish = first_said(plans, &plan::finish_by);
  for (const plan* p : plans) {
    const bool other = (p->start && p->start->text != start->text) ||
                       (p->finish_by && p->finish_by->text != finish->text) ||
                       (p->date && p->date->text != out.date);
    if (!other) continue;
    out.unsaid.emplace_back(
        "The plans state different dates or times; the first that is stated counts.");
    break;
  }
  if (start != nullptr) out.start_min = clock_minutes(start->text);
  if (finish == nullptr) return;
  const int end = clock_minutes(finish->text);
  if (start == nullptr) {
    int first = end - out.total_min;
    int days = 0;
    for (; first < 0; first += minutes_a_day) --days;
    if (!out.date.empty()) out.date = iso_text(days_after(date_of(out.date), days));
    out.start_min = first;
    return;
  }
  const int window = (end - *out.start_min + minutes_a_day) % minutes_a_day;
  if (out.total_min <= window) return;
  std::size_t at = 0;
  while (!plans[at]->finish_by) ++at;
  report scratch;
  judging j{*plans[at], rules, scratch, {}};
  j.say("day-too-short", place_of("finish-by", *finish),
        {time_text(window),
         time_text(out.total_min),
         "at the shortest " + time_text(out.least_total_min),
         {},
         {}});
  out.batches[at].findings.push_back(std::move(scratch.findings.front()));
}

}  // namespace jarproof::detail
