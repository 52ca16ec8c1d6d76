// Which jars go into the canner together.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/day.hpp"
#include "jarproof/detail/day_words.hpp"
#include "jarproof/format/numbers.hpp"
#include "jarproof/plan.hpp"

namespace jarproof::detail {

inline constexpr std::int64_t pint_volume = 16 * micro_per_unit;
inline constexpr std::int64_t quart_volume = 2 * pint_volume;

/// Jars of one volume that the canner holds, as its owner counts them. A smaller jar takes the
/// place of a pint, one between pint and quart that of a quart; where only quarts are stated, every
/// jar takes the place of one. Nothing where that is not enough to tell.
[[nodiscard]] inline std::optional<int> holds(const canner_size& c, std::int64_t jar) {
  if (jar > quart_volume) return std::nullopt;
  if (jar <= pint_volume && c.pints) return c.pints->value;
  if (c.quarts) return c.quarts->value;
  return std::nullopt;
}

/// `jars` in as few loads as `most` allows, sizes that differ by one at most, larger ones first.
[[nodiscard]] inline std::vector<int> balanced(int jars, int most) {
  std::vector<int> out;
  if (jars <= 0 || most <= 0) return out;
  const int loads = (jars + most - 1) / most;
  for (int i = 0; i < loads; ++i) out.push_back(jars / loads + (i < jars % loads ? 1 : 0));
  return out;
}

/// An accepted plan on its way into the canner.
struct day_work {
  std::size_t batch = 0;
  const plan* what = nullptr;
  const report* judged = nullptr;
  std::int64_t jar = 0;  ///< volume
  int count = 0;
  int holds = 0;
};

/// Minutes of the process: the plan's own, never less than the table's.
[[nodiscard]] inline int process_minutes(const plan& what, const requirement& required) {
  const std::int64_t own = what.time ? divide(what.time->value.value, ms_per_min, rounding::up) : 0;
  return std::max(required.time_min, static_cast<int>(own));
}

/// What the gauge has to show: the plan's own pressure, which allows for its error.
[[nodiscard]] inline std::string process_pressure(const plan& what, const requirement& required) {
  if (!required.pressure_psi) return {};
  const std::string gauge = what.gauge ? what.gauge->text : std::string();
  if (!what.pressure) return pressure_text(*required.pressure_psi, gauge);
  const amount& own = what.pressure->value;
  // The dial may be marked in the other unit.
  if (own.metric)
    return what.pressure->text + " (" + decimal_of_thousandths(own.value / 100'000 * 100) + " psi)";
  if (own.value % micro_per_unit != 0) return what.pressure->text;
  return pressure_text(static_cast<int>(own.value / micro_per_unit), gauge);
}

/// Why two plans do not share a load; empty where they may.
[[nodiscard]] inline std::string why_apart(const day_work& a, const day_work& b) {
  const requirement& p = *a.judged->required;
  const requirement& q = *b.judged->required;
  const auto differs = [](const auto& left, const auto& right) {
    return (left ? left->value : 0) != (right ? right->value : 0);
  };
  if (p.method != q.method) return "the method differs";
  const bool gauges = a.what->gauge && b.what->gauge;
  if (gauges ? a.what->gauge->text != b.what->gauge->text : a.what->gauge || b.what->gauge)
    return "the gauge differs";
  if (p.pressure_psi != q.pressure_psi) return "the pressure differs";
  if (p.least_f != q.least_f || p.most_f != q.most_f) return "the temperature differs";
  if (p.pack != q.pack) return "one is packed raw, the other hot";
  if (a.judged->altitude_ft != b.judged->altitude_ft) return "the altitude differs";
  const canner_size& c = a.what->canner->value;
  const canner_size& d = b.what->canner->value;
  if (differs(c.quarts, d.quarts) || differs(c.pints, d.pints)) return "the canner differs";
  for (const day_work* w : {&a, &b}) {
    const process_needs& n = w->judged->process->needs;
    if (n.heat_up_min != 0 || n.water_qt != 0)
      return std::string(w->judged->process->title) + " has its own way of heating up";
  }
  return {};
}

/// Jars of different kinds that fit into one canner. In a layer a pint stands where a quart stands.
[[nodiscard]] inline std::optional<int> holds_together(const std::vector<const day_work*>& works) {
  std::int64_t largest = 0;
  std::int64_t smallest = works.front()->jar;
  for (const day_work* w : works) {
    largest = std::max(largest, w->jar);
    smallest = std::min(smallest, w->jar);
  }
  const canner_size& c = works.front()->what->canner->value;
  std::optional<int> out = holds(c, largest);
  const std::optional<int> small = holds(c, smallest);
  if (out && small) out = std::min(*out, *small);
  return out;
}

/// The loads of the day, in order: those of each plan, then what plans share. Plans share a load
/// only where that saves one: one food and one size in a load is better.
class load_planner {
 public:
  load_planner(const edition& rules, const std::vector<day_work>& works, day_plan& out)
      : rules_(rules), works_(works), out_(out) {}

  void plan_loads() {
    std::vector<std::vector<const day_work*>> shared;
    for (const day_work& w : works_) {
      if (w.count % w.holds != 0) join(w, shared);
    }
    const auto shares = [&](const day_work& w) {
      for (const auto& group : shared) {
        if (group.size() > 1 && std::find(group.begin(), group.end(), &w) != group.end())
          return true;
      }
      return false;
    };
    for (const day_work& w : works_) {
      const bool rest = shares(w);
      const int own = rest ? w.count - w.count % w.holds : w.count;
      for (const int jars : balanced(own, w.holds)) add({{&w, jars}}, w.holds);
    }
    for (const auto& group : shared) {
      if (group.size() < 2) continue;
      std::vector<std::pair<const day_work*, int>> parts;
      for (const day_work* w : group) parts.emplace_back(w, w->count % w->holds);
      add(parts, holds_together(group).value_or(0));
    }
  }

 private:
  const edition& rules_;
  const std::vector<day_work>& works_;
  day_plan& out_;

  /// Puts what is left of a plan to the first group that it fits, or opens one.
  void join(const day_work& w, std::vector<std::vector<const day_work*>>& shared) {
    for (auto& group : shared) {
      std::vector<const day_work*> tried = group;
      tried.push_back(&w);
      int jars = 0;
      for (const day_work* each : tried) jars += each->count % each->holds;
      const std::optional<int> most = holds_together(tried);
      if (!most || jars > *most) continue;
      std::string apart;
      for (const day_work* other : group) {
        if (apart.empty()) apart = why_apart(*other, w);
        if (!apart.empty()) {
          out_.apart.push_back(out_.batches[other->batch].name + " and " +
                               out_.batches[w.batch].name + " do not share a load: " + apart + ".");
          break;
        }
      }
      if (!apart.empty()) continue;
      group = std::move(tried);
      return;
    }
    shared.push_back({&w});
  }

  void add(const std::vector<std::pair<const day_work*, int>>& parts, int most) {
    day_load load;
    load.number = static_cast<int>(out_.loads.size()) + 1;
    load.holds = most;
    std::int64_t highest = -1;
    for (const auto& [w, count] : parts) {
      const requirement& r = *w->judged->required;
      load.parts.push_back({w->batch, count});
      load.jars += count;
      load.method = r.method;
      load.gauge = w->what->gauge ? w->what->gauge->text : std::string();
      load.time_min = std::max(load.time_min, process_minutes(*w->what, r));
      const std::int64_t own = w->what->pressure ? w->what->pressure->value.value : 0;
      if (own <= highest) continue;
      highest = own;
      load.pressure = process_pressure(*w->what, r);
    }
    load.half_full = load.jars * 2 <= most;
    if (load.half_full) remark(load, "half-full");
    if (parts.size() > 1) remark(load, "mixed");
    out_.loads.push_back(std::move(load));
  }
  void remark(day_load& load, std::string_view part) {
    for (const day_text& t : rules_.day.texts) {
      if (t.part != part) continue;
      day_step s{std::string(t.id), std::string(t.says), {}, {}, std::string(t.evidence)};
      add_sources(rules_, t.sources, s.sources);
      load.remarks.push_back(std::move(s));
    }
  }
};

/// True for fewer jars than a jar maker wants in a pressure canner. A jar up to a pint counts as a
/// pint, a larger one as a quart, and two pints as much as a quart.
[[nodiscard]] inline bool is_small(const edition& rules, const day_load& load,
                                   const std::vector<day_batch>& batches) {
  const day_number* quarts = number_of(rules, "smallest-load-quarts");
  const day_number* pints = number_of(rules, "smallest-load-pints");
  if (load.method != "pressure" || quarts == nullptr || pints == nullptr) return false;
  std::int64_t share = 0;  // of the smallest load, in millionths
  for (const day_load_part& p : load.parts) {
    const bool large = batches[p.batch].jars->volume > pint_volume;
    share += p.count * (1'000'000'000 / (large ? quarts : pints)->thousandths);
  }
  return share < 1'000'000;
}

}  // namespace jarproof::detail
