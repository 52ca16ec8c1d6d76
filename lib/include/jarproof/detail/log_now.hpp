// What to do now, in order, with limits of time.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "jarproof/detail/log_events.hpp"
#include "jarproof/detail/log_findings.hpp"
#include "jarproof/detail/log_sentence.hpp"

namespace jarproof::detail {

class now_writer {
 public:
  explicit now_writer(run_judging& j) : j_(j) {
    facts_.hold = j.target.hold;
    facts_.time = time_text(j.target.time_min);
  }

  void write() {
    const bool plan_holds = j_.out.plan.verdict == verdict::accepted;
    if (!plan_holds) stop_for_plan();
    if (j_.out.state != run_state::over && j_.out.state != run_state::cooling) {
      if (j_.target.method.empty() || (j_.target.time_min == 0 && !plan_holds)) return;
      while_running();
      return;
    }
    if (j_.out.state == run_state::cooling) cooling(plan_holds);
    const bool good = j_.out.verdict == verdict::accepted;
    if (good) {
      after_good();
    } else if (j_.out.state == run_state::over || !j_.delivered || !plan_holds) {
      after_bad();
    }
  }

 private:
  /// Begins what may be done in place of the sentence before it.
  static constexpr std::string_view or_mark = "Or ";

  run_judging& j_;
  log_sentence_facts facts_;

  void add(std::string_view id, std::optional<std::int64_t> until = {}) {
    const run_step* step = find(j_.rules.run.steps, id);
    if (step == nullptr) step = find(j_.rules.after.steps, id);
    if (step == nullptr) return;
    if (until) facts_.at = j_.when(*until);
    const std::string what = filled(step->says, facts_);
    j_.out.now.push_back({std::string(id), what, until ? j_.when(*until) : std::string(), until,
                          what.compare(0, or_mark.size(), or_mark) == 0});
  }

  /// The sentence without its `Or` where it is the first of its kind.
  void add_choice(std::string_view id, std::optional<std::int64_t> until, bool first) {
    add(id, until);
    if (!first || j_.out.now.empty() || !j_.out.now.back().or_else) return;
    j_.out.now.back().or_else = false;
    std::string& what = j_.out.now.back().what;
    what.erase(0, or_mark.size());
    if (what[0] >= 'a' && what[0] <= 'z') what[0] = static_cast<char>(what[0] - 'a' + 'A');
  }

  void stop_for_plan() {
    add("stop-plan");
    for (const outcome o : {outcome::rejects, outcome::untested, outcome::incomplete}) {
      for (const finding& f : j_.out.plan.findings) {
        if (f.outcome != o || f.fix.empty()) continue;
        if (!j_.out.now.empty()) j_.out.now.back().what += " " + f.fix;
        return;
      }
    }
  }

  [[nodiscard]] bool again() const {
    return std::any_of(j_.course.losses.begin(), j_.course.losses.end(),
                       [](const log_loss& l) { return l.again_us.has_value(); });
  }

  [[nodiscard]] bool too_high_now() const {
    const log_row* last = nullptr;
    for (const log_row& row : j_.log.rows) {
      if (row.reading) last = &row;
    }
    return last != nullptr && j_.target.most && *last->reading > *j_.target.most;
  }

  void vent_again() {
    facts_.limit = std::to_string(j_.target.vent_min) + " min";
    add("vent-again");
  }

  [[nodiscard]] int heat_up_min() const {
    const process* p = j_.out.plan.process;
    return p == nullptr ? 0 : p->needs.heat_up_min;
  }

  /// Steam for the minutes of the venting; fish in quarts has minutes of heating before them.
  [[nodiscard]] std::int64_t vent_until(std::int64_t last_us) const {
    const std::int64_t vent = j_.target.vent_min * us_per_min;
    const log_moment* steam = last_before(j_.moments, log_event_kind::steam, last_us);
    std::int64_t end = steam->at_us + vent;
    const log_moment* on = last_before(j_.moments, log_event_kind::heat_on, steam->at_us);
    if (on != nullptr) end = std::max(end, on->at_us + heat_up_min() * us_per_min + vent);
    return end;
  }

  /// What no later minute makes good: other instruments, or another log.
  bool nothing_vouches() {
    constexpr std::string_view steps[][2] = {{"gauge-not-at-zero", "gauge-first"},
                                             {"gauges-disagree", "gauges-first"},
                                             {"thermometer-reads-high", "thermometer-first"},
                                             {"second-load", "own-log"}};
    for (const auto& [check, step] : steps) {
      if (!found_in(j_, check)) continue;
      add(step);
      return true;
    }
    return false;
  }

  void while_running() {
    const std::int64_t last = j_.out.last_us;
    facts_.limit = std::to_string(j_.target.vent_min) + " min";
    if (!found_in(j_, "vent-too-short") && nothing_vouches()) return;
    if (found_in(j_, "event-missing")) add("add-row");
    if (j_.out.state == run_state::heating) {
      // A low temperature shows no steam.
      add(j_.target.by_pressure                   ? "start"
          : j_.target.method == "low-temperature" ? "raise"
                                                  : "warm");
      if (found_in(j_, "vent-too-short")) add("vent");
      return;
    }
    if (j_.out.state == run_state::venting) {
      const std::int64_t end = vent_until(last);
      if (heat_up_min() > 0)
        facts_.limit += ", and until " + std::to_string(heat_up_min() + j_.target.vent_min) +
                        " min after the heat came on";
      if (end > last) add("vent", end);
      add("close-vent");
      add("raise");
      return;
    }
    if (found_in(j_, "vent-too-short") || found_in(j_, "heat-up-too-short")) {
      const venting v = venting_before(j_, last);
      const bool dry = v.air != nullptr && v.air->of(log_event_kind::water_low) != nullptr;
      add(dry ? "dry-canner" : "vent-again");
      return;
    }
    if (j_.out.state == run_state::rising) {
      add(j_.target.by_pressure ? "raise" : "raise-boil");
      return;
    }
    if (too_high_now()) {
      facts_.limit = limit_text(j_.log.unit, *j_.target.most);
      add("lower-heat");
    }
    if (j_.out.state == run_state::lost) {
      const log_row* row = j_.course.losses.empty() ? nullptr : j_.course.losses.back().row;
      const bool dry =
          row != nullptr && row->event && row->event->kind == log_event_kind::water_low;
      add(j_.target.by_pressure ? "raise-heat" : dry ? "refill" : "back-boil");
      add("start-again", last + j_.needed_us);
      return;
    }
    if (j_.out.state == run_state::counting) {
      const std::int64_t from = *j_.course.counts_from_us;
      if (again() || from != j_.course.restarted_us) {
        facts_.at = j_.when(from);
        add_hold_again(from);
      } else {
        add("hold", j_.out.ends_us);
      }
      if (j_.target.by_pressure) {
        add("then-off");
        return;
      }
    }
    turn_off();
  }
  void add_hold_again(std::int64_t from) {
    const run_step* step = find(j_.rules.run.steps, "hold-again");
    if (step == nullptr) return;
    facts_.at = j_.when(from);
    j_.out.now.push_back({"hold-again", filled(step->says, facts_),
                          j_.out.ends_us ? j_.when(*j_.out.ends_us) : std::string(),
                          j_.out.ends_us});
  }
  void turn_off() {
    if (j_.target.by_pressure) {
      add("off");
      add("fall");
    } else {
      add(j_.target.method == "steam"           ? "off-steam"
          : j_.target.method == "boiling-water" ? "off-boiling"
                                                : "off-low");
    }
  }

  void cooling(bool plan_holds) {
    if (!j_.delivered && plan_holds && j_.target.time_min > 0) {
      if (found_in(j_, "vent-too-short")) {
        vent_again();
        return;
      }
      add("run-again");
      add("fall-instead");
    } else {
      add("fall");
    }
    wait_for_lid();
  }
  /// The lid is closed still: how to open it.
  void wait_for_lid() {
    if (!j_.target.by_pressure) return;
    const std::int64_t from = cooling_from(j_);
    if (first_after(j_.moments, log_event_kind::opened, from) != nullptr) return;
    const int wait = limit_of(j_.rules.run.limits, "wait-after-zero-min");
    facts_.limit = std::to_string(wait) + " min";
    const log_moment* zero = zero_of(j_, from);
    const bool pressed = is_under_pressure();
    if (pressed || (zero == nullptr && j_.out.state == run_state::over)) add("fall");
    std::optional<std::int64_t> until;
    if (!pressed && zero != nullptr) until = zero->at_us + wait * us_per_min;
    add("wait", until);
  }

  /// The gauge shows pressure still, whatever the log says: no weight is taken off then.
  [[nodiscard]] bool is_under_pressure() const {
    const log_row* last = nullptr;
    for (const log_row& row : j_.log.rows) {
      if (row.reading) last = &row;
    }
    return last != nullptr && is_pressure(j_.log.unit) && j_.out.state == run_state::over &&
           *last->reading > j_.target.gauge_room;
  }

  /// Jars that were counted so long after the heat no longer stand under pressure.
  [[nodiscard]] bool jars_are_out() const {
    const std::int64_t cold = heat_ended(j_) + 60 * us_per_min;
    return std::any_of(j_.log.rows.begin(), j_.log.rows.end(), [&](const log_row& row) {
      return row.event && row.event->kind == log_event_kind::unsealed && row.at_us >= cold;
    });
  }

  [[nodiscard]] bool hot_pack() const {
    const process* p = j_.out.plan.process;
    if (p == nullptr || j_.rules.after.not_reprocessed.contains(p->id)) return false;
    for (const table& t : p->tables) {
      const bool same =
          j_.target.by_pressure ? !t.dial.empty() || !t.weighted.empty() : !t.boiling_water.empty();
      if (t.pack == "hot" && t.use && (same || j_.target.method == "low-temperature")) return true;
    }
    return false;
  }
  [[nodiscard]] std::int64_t after_hours(std::string_view limit) const {
    return heat_ended(j_) + limit_of(j_.rules.after.limits, limit) * 60 * us_per_min;
  }

  void after_good() {
    int in_time = 0;
    int late = 0;
    bool counted = false;
    const std::int64_t until = after_hours("unsealed-h");
    for (const log_row& row : j_.log.rows) {
      if (!row.event || row.event->kind != log_event_kind::unsealed) continue;
      counted = true;
      (row.at_us < until ? in_time : late) += row.event->count;
    }
    broken_jars();
    if (in_time > 0) {
      if (hot_pack()) add("reprocess-unsealed", until);
      add_choice("refrigerate-unsealed", until, !hot_pack());
      add("freeze-unsealed", until);
    }
    if (late > 0) {
      facts_.at = j_.when(until);
      add("discard-unsealed");
    }
    if (counted) return;
    wait_for_lid();
    add("cool", after_hours("seals-from-h"));
    add("check-seals", after_hours("seals-through-h"));
    add("liquid-lost");
  }

  void broken_jars() {
    for (const log_row& row : j_.log.rows) {
      if (!row.event || row.event->kind != log_event_kind::broken || row.event->count == 0)
        continue;
      add("broken");
      return;
    }
  }

  void after_bad() {
    const report& plan = j_.out.plan;
    if (j_.out.state == run_state::over && !jars_are_out()) wait_for_lid();
    broken_jars();
    if (j_.out.verdict == verdict::incomplete && plan.verdict == verdict::accepted)
      add("more-readings");
    if (plan.verdict == verdict::untested || plan.process == nullptr) {
      add("discard-untested");
      return;
    }
    const bool acid = plan.process->kind == food_class::acid;
    const std::int64_t until = after_hours(acid ? "reprocess-acid-h" : "reprocess-low-acid-h");
    if (until > j_.out.last_us) {
      if (hot_pack()) add("reprocess", until);
      add_choice("refrigerate", until, !hot_pack());
      add("freeze", until);
    }
    facts_.at = j_.when(until);
    add(acid ? "discard-acid" : "discard-low-acid");  // not until then, but from then on
  }
};

}  // namespace jarproof::detail
