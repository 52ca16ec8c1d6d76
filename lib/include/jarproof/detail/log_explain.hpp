// What physics says about a run. It explains and decides nothing.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "jarproof/detail/log_findings.hpp"
#include "jarproof/physics.hpp"

namespace jarproof::detail {

[[nodiscard]] inline std::string rounded_text(double value) {
  return std::to_string(std::llround(value));
}

/// A reading of pressure in psi, what a dial reads high taken off.
[[nodiscard]] inline double true_psi(const run_judging& j, std::int64_t reading) {
  double psi = static_cast<double>(reading) / 1e6;
  if (j.log.unit == log_unit::kpa) psi *= 1000.0 / pascal_per_psi;
  if (j.log.unit == log_unit::bar) psi *= 100'000.0 / pascal_per_psi;
  const bool high = !j.target.weighted && j.what.gauge_error && j.what.gauge_error->value.value > 0;
  if (high) psi -= static_cast<double>(j.what.gauge_error->value.value) / 1e6;
  return psi < 0.0 ? 0.0 : psi;
}

/// How hot it was at one moment, in Fahrenheit; nothing where the moment does not say.
[[nodiscard]] inline std::optional<double> temperature_at(const run_judging& j, const log_moment& m,
                                                          int psi, int altitude_ft) {
  // The weight vouches from the start of the timing and to its end, also without a `steady` there.
  const bool at_end =
      m.reading == nullptr &&
      std::any_of(j.course.vouched.begin(), j.course.vouched.end(), [&](const held_stretch& s) {
        return s.from_us == m.at_us || s.to_us == m.at_us;
      });
  if (j.target.weighted && (at_end || m.of(log_event_kind::steady) != nullptr))
    return steam_temperature_f(psi, altitude_ft);
  if (m.reading == nullptr) return std::nullopt;
  if (is_pressure(j.log.unit))
    return steam_temperature_f(true_psi(j, *m.reading->reading), altitude_ft);
  const double degrees = static_cast<double>(*m.reading->reading) / 1e6;
  return j.log.unit == log_unit::celsius ? fahrenheit_from_celsius(degrees) : degrees;
}

inline void explain_run(run_judging& j) {
  const report& plan = j.out.plan;
  if (!j.target.by_pressure || !plan.required || !plan.required->pressure_psi) return;
  const int psi = *plan.required->pressure_psi;
  const int feet = plan.altitude_ft < 0 ? 0 : plan.altitude_ft;
  const std::optional<double> wanted = steam_temperature_f(psi, feet);
  if (!wanted) return;
  j.out.explains.push_back("At " + altitude_text(feet) + ", " + std::to_string(psi) +
                           " psi of steam without air is about " + rounded_text(*wanted) + " F.");
  if (j.what.gauge_error && j.what.gauge_error->value.value > 0 && !j.target.weighted)
    j.out.explains.push_back("The dial reads " + pounds(j.what.gauge_error->value.value) +
                             " high, so it must show that much more.");
  if (!j.course.started_us) return;
  const std::int64_t from = *j.course.started_us;
  const std::int64_t to = j.course.off_us.value_or(j.log.rows.back().at_us);
  // Minutes before a loss and after it are not added up: the longest stretch without one is told.
  const held_stretch held = longest(j.course.claimed);
  const bool broken = !j.course.losses.empty() && held.to_us > held.from_us;
  std::vector<temperature_point> course;
  const log_moment* lowest = nullptr;
  double lowest_f = *wanted;
  for (const log_moment& m : j.moments) {
    if (m.at_us < from || m.at_us > to) continue;
    const std::optional<double> f = temperature_at(j, m, psi, feet);
    if (!f) continue;
    if (!broken || (m.at_us >= held.from_us && m.at_us <= held.to_us))
      course.push_back({static_cast<double>(m.at_us) / static_cast<double>(us_per_min), *f});
    if (*f >= lowest_f - 0.5 || m.reading == nullptr) continue;
    lowest_f = *f;
    lowest = &m;
  }
  const std::optional<double> rate = relative_rate(lowest_f, *wanted);
  if (lowest != nullptr && rate) {
    j.out.explains.push_back("At the lowest reading, " + reading_text(j, *lowest->reading) +
                             ", it is about " + rounded_text(lowest_f) +
                             " F, where a minute does about " + rounded_text(*rate * 100.0) +
                             " % as much.");
  }
  const std::optional<double> done =
      lethality_min(list<temperature_point>(course.data(), course.size()));
  const std::optional<double> each = lethal_rate(*wanted);
  if (!done || !each) return;
  j.out.lethality_min = *done;
  j.out.process_lethality_min = *each * plan.required->time_min;
  const auto tenths = [](double value) {
    return decimal_of_thousandths(std::llround(value * 10.0) * 100);
  };
  const std::string stretch = broken ? "In the longest stretch without a loss, " +
                                           duration_text(held.to_us - held.from_us) + ", the steam"
                                     : "While the time was counted, the steam";
  j.out.explains.push_back(stretch + " did what " + tenths(*done) +
                           " min at 250 F do; at its published numbers the process does " +
                           tenths(*j.out.process_lethality_min) +
                           ". Of the steam, not of the middle of a jar.");
}

}  // namespace jarproof::detail
