// The physics of a canner, to explain findings: how hot boiling water and steam are at an altitude
// and a gauge pressure, and how much less a minute does where they are cooler.
//
//   auto hot = jarproof::steam_temperature_f(11, 2000);     // 239.29, dial at 11 psi, 2,000 ft
//   auto air = jarproof::steam_temperature_f(11, 2000, 0.1);          // a tenth of it air
//   auto need = jarproof::gauge_psi_for(240, 5000);         // 12.76
//   auto share = jarproof::relative_rate(*hot, 240);        // 0.91 of what a minute at 240 F does
//
// It judges nothing. Published schedules fall up to 2 F short of 240 F at the top of a band, and
// steam says nothing about the coldest spot of a jar: the tables alone decide. Every function gives
// nothing outside the range it states, and for what is infinite or no number.
// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <optional>

#include "jarproof/detail/saturation_line.hpp"
#include "jarproof/list.hpp"

namespace jarproof {

inline constexpr double m_per_ft = 0.3048;  ///< exact (NIST SP 811, B.8)
/// 1 psi in pascal: a pound of 0.45359237 kg under standard gravity on a square inch, all exact.
inline constexpr double pascal_per_psi = 0.45359237 * 9.80665 / (0.0254 * 0.0254);

[[nodiscard]] constexpr double fahrenheit_from_celsius(double celsius) noexcept {
  return celsius * 1.8 + 32.0;
}
[[nodiscard]] constexpr double celsius_from_fahrenheit(double fahrenheit) noexcept {
  return (fahrenheit - 32.0) / 1.8;
}

namespace detail {

// US Standard Atmosphere 1976. Its gas constant is older than that of the SI, and part of it.
inline constexpr double sea_level_k = 288.15;
inline constexpr double sea_level_pa = 101'325.0;
inline constexpr double lapse_k_per_m = 0.0065;
inline constexpr double gravity_m_per_s2 = 9.80665;
inline constexpr double air_kg_per_kmol = 28.9644;
inline constexpr double gas_j_per_kmol_k = 8314.32;
inline constexpr double earth_radius_m = 6'356'766.0;
inline constexpr double troposphere_m = 11'000.0;
inline constexpr double pressure_exponent =
    gravity_m_per_s2 * air_kg_per_kmol / (gas_j_per_kmol_k * lapse_k_per_m);

inline constexpr double zero_celsius_k = 273.15;

/// A result, unless it is infinite or no number.
[[nodiscard]] inline std::optional<double> finite(double value) noexcept {
  if (!std::isfinite(value)) return {};
  return value;
}

}  // namespace detail

/// Height by which the standard atmosphere counts, in metres, for a surveyed height in metres. The
/// two differ by 1.4 m at 3,000 m; `air_pressure_pa` takes the altitude of a plan for this one.
[[nodiscard]] constexpr double geopotential_m(double surveyed_m) noexcept {
  return detail::earth_radius_m * surveyed_m / (detail::earth_radius_m + surveyed_m);
}

/// Pressure of the air in pascal (US Standard Atmosphere 1976). Altitude in metres through 11,000;
/// below sea level counts as 0. The weather of a day moves it by a few percent.
[[nodiscard]] inline std::optional<double> air_pressure_pa(double altitude_m) noexcept {
  using namespace detail;
  if (!std::isfinite(altitude_m) || altitude_m > troposphere_m) return {};
  const double height_m = altitude_m < 0.0 ? 0.0 : altitude_m;
  return sea_level_pa * std::pow(1.0 - lapse_k_per_m * height_m / sea_level_k, pressure_exponent);
}

/// Absolute pressure in pascal under which water boils at a temperature in Celsius, 0 through
/// 373.946 (IAPWS R7-97, region 4). Tables on the scale of 1968 print up to 0.03 C more.
[[nodiscard]] inline std::optional<double> saturation_pressure_pa(double celsius) noexcept {
  return detail::saturation_pa(celsius + detail::zero_celsius_k);
}

/// Temperature in Celsius of boiling water and its steam under an absolute pressure in pascal,
/// 611.213 through 22,064,000 (IAPWS R7-97, region 4).
[[nodiscard]] inline std::optional<double> saturation_temperature_c(double pressure_pa) noexcept {
  const std::optional<double> kelvin = detail::saturation_k(pressure_pa);
  if (!kelvin) return {};
  return *kelvin - detail::zero_celsius_k;
}

/// Temperature in Fahrenheit of the steam in a closed canner. Gauge pressure in psi from 0, for
/// pure steam to 3,185; altitude in feet through 36,089, below sea level counts as 0. `air_share`
/// is the share of air in the canner, well mixed and by volume, from 0 to below 1: it bears its
/// share of the absolute pressure, and leaves less for the steam.
[[nodiscard]] inline std::optional<double> steam_temperature_f(double gauge_psi, double altitude_ft,
                                                               double air_share = 0.0) noexcept {
  const std::optional<double> outside_pa = air_pressure_pa(altitude_ft * m_per_ft);
  if (!outside_pa || !(gauge_psi >= 0.0) || !(air_share >= 0.0 && air_share < 1.0)) return {};
  const double steam_pa = (*outside_pa + gauge_psi * pascal_per_psi) * (1.0 - air_share);
  const std::optional<double> celsius = saturation_temperature_c(steam_pa);
  if (!celsius) return {};
  return fahrenheit_from_celsius(*celsius);
}

/// Temperature in Fahrenheit of water in an open canner, and of pure steam without pressure.
/// Altitude in feet through 36,089; below sea level counts as 0.
[[nodiscard]] inline std::optional<double> boiling_point_f(double altitude_ft) noexcept {
  return steam_temperature_f(0.0, altitude_ft);
}

/// Least gauge pressure in psi at which the steam is as hot as a temperature in Fahrenheit, 32
/// through 705.1; 0 where it is so without pressure. Altitude and air as in `steam_temperature_f`.
[[nodiscard]] inline std::optional<double> gauge_psi_for(double fahrenheit, double altitude_ft,
                                                         double air_share = 0.0) noexcept {
  const std::optional<double> outside_pa = air_pressure_pa(altitude_ft * m_per_ft);
  const std::optional<double> steam_pa =
      saturation_pressure_pa(celsius_from_fahrenheit(fahrenheit));
  if (!outside_pa || !steam_pa || !(air_share >= 0.0 && air_share < 1.0)) return {};
  const double psi = (*steam_pa / (1.0 - air_share) - *outside_pa) / pascal_per_psi;
  return psi > 0.0 ? psi : 0.0;
}

/// By what lethal rates are counted: the temperature at which a minute counts as one, and z, the
/// degrees that make it ten times as many. Both in one scale, as are all temperatures used with it.
struct lethality_scale {
  double reference = 0.0;
  double z = 0.0;  ///< above 0
};

/// F0, the scale for spores of Clostridium botulinum, in Fahrenheit.
inline constexpr lethality_scale f0_fahrenheit{250.0, 18.0};
/// F0 as it is printed in Celsius. 250 F is 121.11 C: rates by this one are 0.26 percent higher.
inline constexpr lethality_scale f0_celsius{121.1, 10.0};

/// Minutes at temperature `other` that do what one minute at `temperature` does. D values were
/// measured from 104 C (220 F) to 140 C; beyond these the straight line is drawn on.
[[nodiscard]] inline std::optional<double> relative_rate(
    double temperature, double other, lethality_scale scale = f0_fahrenheit) noexcept {
  if (!(scale.z > 0.0) || !std::isfinite(scale.z)) return {};
  const double tenfolds = (temperature - other) / scale.z;
  if (!std::isfinite(tenfolds)) return {};
  return detail::finite(std::pow(10.0, tenfolds));
}

/// Minutes at the reference temperature that do what one minute at `temperature` does.
[[nodiscard]] inline std::optional<double> lethal_rate(
    double temperature, lethality_scale scale = f0_fahrenheit) noexcept {
  return relative_rate(temperature, scale.reference, scale);
}

/// Minutes at a steady `temperature` that do what `reference_min` minutes, from 0, do at the
/// reference temperature. With a D value at the reference it gives the D value at `temperature`.
[[nodiscard]] inline std::optional<double> minutes_at(
    double temperature, double reference_min, lethality_scale scale = f0_fahrenheit) noexcept {
  const std::optional<double> slower = relative_rate(scale.reference, temperature, scale);
  if (!slower || !(reference_min >= 0.0)) return {};
  return detail::finite(reference_min * *slower);
}

/// A temperature at a minute, counted from any start.
struct temperature_point {
  double minute = 0.0;
  double temperature = 0.0;
};

/// Minutes at the reference temperature that do what the whole course does (F0 with the scale of
/// that name), where the temperature runs straight from point to point: exact, not a sum of
/// trapezoids, which counts up to several times as much. At least two points, minutes never going
/// back. It is that of the place where the temperatures were taken, and of no other.
[[nodiscard]] inline std::optional<double> lethality_min(
    list<temperature_point> course, lethality_scale scale = f0_fahrenheit) noexcept {
  constexpr double ln_10 = 2.302585092994046;
  if (course.size() < 2) return {};
  double sum_min = 0.0;
  for (std::size_t i = 1; i < course.size(); ++i) {
    const temperature_point from = course[i - 1];
    const temperature_point to = course[i];
    const std::optional<double> rate = lethal_rate(from.temperature, scale);
    if (!rate || !(to.minute >= from.minute)) return {};
    const double rise = ln_10 * (to.temperature - from.temperature) / scale.z;
    if (!std::isfinite(rise)) return {};
    // The mean of the rates along a straight line; expm1 keeps the digits where it is almost level.
    const double mean = rise == 0.0 ? *rate : *rate * std::expm1(rise) / rise;
    sum_min += (to.minute - from.minute) * mean;
  }
  return detail::finite(sum_min);
}

}  // namespace jarproof
