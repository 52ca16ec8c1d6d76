// What a gauge pressure means as heat, in words that explain a finding. It never makes one.
// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <optional>
#include <string>

#include "jarproof/format/numbers.hpp"
#include "jarproof/physics.hpp"

namespace jarproof::detail {

/// A share of the work as a cook says it: `half`, `a quarter of`, `70 % of`.
[[nodiscard]] inline std::string share_words(double share) {
  const int percent = static_cast<int>(std::lround(share * 20)) * 5;
  if (percent >= 45 && percent <= 55) return "half";
  if (percent == 35) return "a third of";
  if (percent == 25) return "a quarter of";
  if (percent < 5) return "a small part of";
  return std::to_string(percent) + " % of";
}

/// `At 4,600 ft steam at 10 psi is about 234 F (112 C); a minute there does about half the work of
/// one at 240 F`, the heat that home tests of low-acid food were made at (PNW 421). Empty where it
/// is as hot as that, but for one degree, or outside what the physics knows.
[[nodiscard]] inline std::string heat_words(double gauge_psi, int altitude_ft) {
  constexpr double tested_f = 240;
  constexpr double margin_f = 1;  // published dial schedules reach 239.3 F at the top of a band
  const std::optional<double> steam = steam_temperature_f(gauge_psi, altitude_ft);
  if (!steam || *steam >= tested_f - margin_f) return {};
  const std::optional<double> share = relative_rate(*steam, tested_f);
  if (!share) return {};
  const std::int64_t thousandths = std::llround(gauge_psi * 1000);
  const long celsius = std::lround(celsius_from_fahrenheit(*steam));
  return "At " + altitude_text(altitude_ft) + " steam at " + decimal_of_thousandths(thousandths) +
         " psi is about " + std::to_string(std::lround(*steam)) + " F (" + std::to_string(celsius) +
         " C). A minute there does about " + share_words(*share) +
         " the work of a minute at 240 F, the heat that the tables for low-acid food stand for.";
}

}  // namespace jarproof::detail
