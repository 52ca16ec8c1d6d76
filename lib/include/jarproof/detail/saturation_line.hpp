// The line on which water and steam live together: IAPWS Industrial Formulation 1997, region 4.
// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <optional>

namespace jarproof::detail {

/// n1 to n10 of IAPWS R7-97(2012), table 34; `saturation_n[0]` is n1.
inline constexpr double saturation_n[] = {
    0.11670521452767e4,  -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5,
    -0.32325550322333e7, 0.14915108613530e2,  -0.48232657361591e4, 0.40511340542057e6,
    -0.23855557567849,   0.65017534844798e3};

// The ends of the line, each widened by less than its last printed digit: the two equations do not
// meet there exactly, and what one of them gives must be an input of the other.
inline constexpr double saturation_from_k = 273.15 - 1e-9;
inline constexpr double saturation_through_k = 647.096 + 1e-9;
inline constexpr double saturation_from_pa = 611.2126;
inline constexpr double saturation_through_pa = 22'064'000.001;

/// IAPWS R7-97(2012), equation 30; 273.15 K through 647.096 K, else nothing.
[[nodiscard]] inline std::optional<double> saturation_pa(double temperature_k) noexcept {
  if (!(temperature_k >= saturation_from_k && temperature_k <= saturation_through_k)) return {};
  const auto& n = saturation_n;
  const double theta = temperature_k + n[8] / (temperature_k - n[9]);
  const double a = (theta + n[0]) * theta + n[1];
  const double b = (n[2] * theta + n[3]) * theta + n[4];
  const double c = (n[5] * theta + n[6]) * theta + n[7];
  const double root = 2.0 * c / (-b + std::sqrt(b * b - 4.0 * a * c));
  return root * root * root * root * 1e6;
}

/// IAPWS R7-97(2012), equation 31; 611.213 Pa through 22.064 MPa, else nothing.
[[nodiscard]] inline std::optional<double> saturation_k(double pressure_pa) noexcept {
  if (!(pressure_pa >= saturation_from_pa && pressure_pa <= saturation_through_pa)) return {};
  const auto& n = saturation_n;
  const double beta = std::sqrt(std::sqrt(pressure_pa * 1e-6));
  const double e = (beta + n[2]) * beta + n[5];
  const double f = (n[0] * beta + n[3]) * beta + n[6];
  const double g = (n[1] * beta + n[4]) * beta + n[7];
  const double d = 2.0 * g / (-f - std::sqrt(f * f - 4.0 * e * g));
  const double sum = n[9] + d;
  return (sum - std::sqrt(sum * sum - 4.0 * (n[8] + n[9] * d))) / 2.0;
}

}  // namespace jarproof::detail
