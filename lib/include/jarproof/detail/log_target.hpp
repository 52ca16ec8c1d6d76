// What a run must show: the published numbers in the unit in which the log was written.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "jarproof/detail/judge_kitchen.hpp"
#include "jarproof/format/numbers.hpp"
#include "jarproof/lookup.hpp"
#include "jarproof/report.hpp"
#include "jarproof/run_log.hpp"

namespace jarproof::detail {

struct log_target {
  std::string method;  ///< id of the plan's method; empty where it is none
  bool by_pressure = false;
  bool weighted = false;
  int time_min = 0;  ///< 0 where no table gives a time
  int vent_min = 0;
  bool by_reading = false;                    ///< a reading shows whether it is held
  bool by_steady = false;                     ///< so does a row that says `steady`
  std::optional<std::int64_t> least;          ///< lowest reading that is enough, in millionths
  std::optional<std::int64_t> most;           ///< highest reading of a home canner
  std::optional<std::int64_t> boils_at_most;  ///< no thermometer in an open pot shows more
  std::int64_t gauge_room = 0;                ///< by how much a gauge may be off, in millionths
  std::string hold;                           ///< `13 psi (90 kPa)`, `a full boil`
  std::string least_text;                     ///< the lowest reading in the unit of the log
};

/// `number` divided by `by`, up to the next whole one; both above 0.
[[nodiscard]] constexpr std::int64_t divided_up(std::int64_t number, std::int64_t by) noexcept {
  return (number + by - 1) / by;
}

/// A published gauge pressure as the lowest reading that reaches it: a reading in metric units is
/// converted and cut off, which is never in the cook's favour.
[[nodiscard]] constexpr std::int64_t least_reading(log_unit u, std::int64_t micro_psi) noexcept {
  if (u == log_unit::kpa) return divided_up(micro_psi * 1'000'000'000, 145'037'737);
  if (u == log_unit::bar) return divided_up(micro_psi * 1'000'000, 14'503'773);
  return micro_psi;
}

/// The lowest reading that reaches a temperature in millionths of a degree Fahrenheit.
[[nodiscard]] constexpr std::int64_t least_degrees(log_unit u, std::int64_t micro_f) noexcept {
  if (u != log_unit::celsius) return micro_f;
  return divided_up((micro_f - 32'000'000) * 5, 9);
}

/// `90 kPa`, `0.9 bar`, `13.5 psi`, `200.9 F`: a limit, rounded up as far as a gauge can be read.
[[nodiscard]] inline std::string limit_text(log_unit u, std::int64_t millionths) {
  const std::int64_t step = u == log_unit::kpa   ? 1'000'000
                            : u == log_unit::bar ? 10'000
                            : u == log_unit::psi ? 1'000
                                                 : 100'000;
  return decimal_of_thousandths(divided_up(millionths, step) * step / 1000) + " " +
         std::string(name_of(u));
}

/// Where water boils at this altitude, in thousandths of a degree Fahrenheit: between two published
/// points the straight line. Nothing above the last point.
[[nodiscard]] inline std::optional<int> boiling_thousandths_f(list<boiling_point> points,
                                                              int altitude_ft) noexcept {
  for (std::size_t i = 1; i < points.size(); ++i) {
    const boiling_point& low = points[i - 1];
    const boiling_point& high = points[i];
    if (altitude_ft > high.altitude_ft) continue;
    const std::int64_t fall = low.thousandths_f - high.thousandths_f;
    return low.thousandths_f - static_cast<int>(fall * (altitude_ft - low.altitude_ft) /
                                                (high.altitude_ft - low.altitude_ft));
  }
  return std::nullopt;
}

[[nodiscard]] inline int limit_of(list<run_limit> limits, std::string_view id) noexcept {
  const run_limit* found = find(limits, id);
  return found == nullptr ? 0 : found->value;
}

/// The highest reading of a home canner; in kPa and bar the mark of the highest weight.
[[nodiscard]] inline std::int64_t most_reading(log_unit u, const method& canner,
                                               std::int64_t error_micro_psi) noexcept {
  if (u == log_unit::psi || canner.weights_kpa.empty())
    return least_reading(u, canner.highest_psi * micro_per_unit + error_micro_psi);
  const std::int64_t mark = canner.weights_kpa[canner.weights_kpa.size() - 1];
  const std::int64_t scale = u == log_unit::kpa ? 1'000'000 : 10'000;
  return mark * scale + (error_micro_psi == 0 ? 0 : least_reading(u, error_micro_psi));
}

inline void target_by_pressure(log_target& t, const plan& what, const method& canner, int psi,
                               log_unit unit, int swing_psi, int room_psi) {
  const bool high = !t.weighted && what.gauge_error && what.gauge_error->value.value > 0;
  const std::int64_t error = high ? what.gauge_error->value.value : 0;
  const std::int64_t needed = psi * micro_per_unit + error;
  t.hold = pressure_text(psi, t.weighted ? "weighted" : "dial");
  t.by_reading = is_pressure(unit);
  const log_unit shown = t.by_reading ? unit : log_unit::psi;
  if (high)
    t.hold = limit_text(shown, least_reading(shown, needed)) + " on this gauge (" +
             std::to_string(psi) + " psi true)";
  if (!t.by_reading) return;
  t.least = least_reading(unit, needed);
  t.gauge_room = least_reading(unit, room_psi * micro_per_unit);
  t.most = most_reading(unit, canner, error);
  if (t.weighted) *t.most += least_reading(unit, swing_psi * micro_per_unit);
  for (std::size_t i = 0; t.weighted && i < canner.weights_psi.size(); ++i) {
    // The lower of the two marks that a weight has in kPa.
    if (canner.weights_psi[i] != psi || 2 * i >= canner.weights_kpa.size()) continue;
    if (unit == log_unit::kpa) t.least = canner.weights_kpa[2 * i] * std::int64_t{1'000'000};
    if (unit == log_unit::bar) t.least = canner.weights_kpa[2 * i] * std::int64_t{10'000};
  }
  t.least_text = limit_text(unit, *t.least);
}

/// What the log of this plan is held to; `judged` is the plan's report.
[[nodiscard]] inline log_target target_of(const plan& what, const edition& rules,
                                          const report& judged, const run_log& log) {
  log_target t;
  const method* m = what.method ? method_named(rules, what.method->text) : nullptr;
  if (m == nullptr || !m->accepted) return t;
  t.method = std::string(m->id);
  t.by_pressure = m->id == "pressure";
  t.vent_min = m->vent_min;
  const bool steady_only_of_weights = t.by_pressure;
  if (judged.required && judged.required->method == t.method) {
    const requirement& q = *judged.required;
    t.time_min = q.time_min;
    t.weighted = what.gauge ? what.gauge->text == "weighted" : q.gauge == "weighted";
    if (q.pressure_psi)
      target_by_pressure(t, what, *m, *q.pressure_psi, log.unit,
                         limit_of(rules.run.limits, "weight-swing-psi"),
                         limit_of(rules.run.limits, "zero-reading-psi"));
    if (q.least_f) {
      t.hold = std::to_string(*q.least_f) + " to " + std::to_string(q.most_f.value_or(0)) + " F";
      t.by_reading = is_temperature(log.unit);
      t.least = least_degrees(log.unit, *q.least_f * micro_per_unit);
    }
  }
  const std::optional<int> boils =
      boiling_thousandths_f(rules.run.boiling, judged.altitude_ft < 0 ? 0 : judged.altitude_ft);
  if (!t.by_pressure && is_temperature(log.unit) && boils) {
    const int tolerance = limit_of(rules.run.limits, "boil-tolerance-f") * 1000;
    t.boils_at_most = least_degrees(log.unit, (*boils + tolerance) * std::int64_t{1000});
  }
  if (t.method == "low-temperature") {
    if (t.least) t.least_text = limit_text(log.unit, *t.least);
    return t;
  }
  // Without a stated gauge the cook has a weight if it is seen to move.
  t.by_steady = !steady_only_of_weights || t.weighted || !what.gauge;
  if (t.by_pressure) return t;
  t.hold = t.method == "steam" ? "pure steam" : "a full boil";
  if (!is_temperature(log.unit) || !boils) return t;
  t.by_reading = true;
  const int tolerance =
      limit_of(rules.run.limits, t.method == "steam" ? "steam-tolerance-f" : "boil-tolerance-f") *
      1000;
  t.least = least_degrees(log.unit, (*boils - tolerance) * std::int64_t{1000});
  t.least_text = limit_text(log.unit, *t.least);
  return t;
}

}  // namespace jarproof::detail
