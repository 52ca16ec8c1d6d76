// Typed quantities (Boost.Units) for programs that compute with a plan's amounts.
//
//   auto gauge = jarproof::gauge_pressure_of(plan.pressure->value);   // gauge_pressure
//   auto outside = jarproof::air_pressure(jarproof::altitude_of(plan.altitude->value));
//   auto inside = jarproof::absolute(gauge, *outside);                // absolute_pressure
//   auto steam = jarproof::steam_temperature(inside);                 // celsius_temperature
//   auto t = jarproof::celsius(116.0);  jarproof::fahrenheit_of(t);   // absolute<> only
//
// Opt-in: including it costs about a second of compile time. Gauge and absolute pressure are
// different types, and temperatures are points on a scale (`absolute<>`): the plain temperature
// quantity of Boost.Units converts 5 C to 9 F, as a difference, without a word.
// SPDX-License-Identifier: MIT
#pragma once

#include <boost/units/absolute.hpp>
#include <boost/units/base_units/temperature/celsius.hpp>
#include <boost/units/base_units/temperature/fahrenheit.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/length.hpp>
#include <boost/units/systems/si/pressure.hpp>
#include <boost/units/systems/si/time.hpp>
#include <boost/units/systems/temperature/celsius.hpp>
#include <boost/units/systems/temperature/fahrenheit.hpp>
#include <optional>

#include "jarproof/physics.hpp"
#include "jarproof/plan.hpp"
#include "jarproof/quantity.hpp"

namespace jarproof {

using pressure_quantity = boost::units::quantity<boost::units::si::pressure>;
using length_quantity = boost::units::quantity<boost::units::si::length>;
using time_quantity = boost::units::quantity<boost::units::si::time>;
using celsius_temperature =
    boost::units::quantity<boost::units::absolute<boost::units::celsius::temperature>>;
using fahrenheit_temperature =
    boost::units::quantity<boost::units::absolute<boost::units::fahrenheit::temperature>>;

/// Pressure above the air around the canner, as a gauge shows it.
struct gauge_pressure {
  pressure_quantity value;
};

/// Pressure above vacuum, which decides the temperature of steam.
struct absolute_pressure {
  pressure_quantity value;
};

/// What the steam has inside: gauge pressure on top of the air's own.
[[nodiscard]] inline absolute_pressure absolute(gauge_pressure inside, absolute_pressure air) {
  return {inside.value + air.value};
}

/// What a gauge shows in air of pressure `air`.
[[nodiscard]] inline gauge_pressure gauge(absolute_pressure inside, absolute_pressure air) {
  return {inside.value - air.value};
}

[[nodiscard]] inline gauge_pressure psi_gauge(double psi) {
  return {psi * pascal_per_psi * boost::units::si::pascals};
}
[[nodiscard]] inline gauge_pressure kilopascal_gauge(double kpa) {
  return {kpa * 1000.0 * boost::units::si::pascals};
}
[[nodiscard]] inline double psi_of(gauge_pressure p) { return p.value.value() / pascal_per_psi; }
[[nodiscard]] inline double kilopascal_of(gauge_pressure p) { return p.value.value() / 1000.0; }

[[nodiscard]] inline celsius_temperature celsius(double degrees) {
  return degrees * boost::units::absolute<boost::units::celsius::temperature>();
}
[[nodiscard]] inline fahrenheit_temperature fahrenheit(double degrees) {
  return degrees * boost::units::absolute<boost::units::fahrenheit::temperature>();
}

/// Conversions take points on a scale; a difference of temperatures does not convert here.
[[nodiscard]] inline fahrenheit_temperature fahrenheit_of(celsius_temperature t) {
  return fahrenheit_temperature(t);
}
[[nodiscard]] inline celsius_temperature celsius_of(fahrenheit_temperature t) {
  return celsius_temperature(t);
}
fahrenheit_temperature fahrenheit_of(boost::units::quantity<boost::units::celsius::temperature>) =
    delete;
celsius_temperature celsius_of(boost::units::quantity<boost::units::fahrenheit::temperature>) =
    delete;

/// Pressure of the air at an altitude; ranges and failure as in `air_pressure_pa`.
[[nodiscard]] inline std::optional<absolute_pressure> air_pressure(length_quantity altitude) {
  const std::optional<double> pascal = air_pressure_pa(altitude.value());
  if (!pascal) return {};
  return absolute_pressure{*pascal * boost::units::si::pascals};
}

/// Temperature of pure steam; ranges and failure as in `saturation_temperature_c`.
[[nodiscard]] inline std::optional<celsius_temperature> steam_temperature(absolute_pressure steam) {
  const std::optional<double> degrees = saturation_temperature_c(steam.value.value());
  if (!degrees) return {};
  return celsius(*degrees);
}

/// The amounts of a plan as quantities; each takes an amount of its own dimension.
[[nodiscard]] inline gauge_pressure gauge_pressure_of(amount pressure) {
  return psi_gauge(static_cast<double>(pressure.value) / micro_per_unit);
}
[[nodiscard]] inline time_quantity time_of(amount time) {
  return static_cast<double>(time.value) / 1000.0 * boost::units::si::seconds;
}
[[nodiscard]] inline length_quantity headspace_of(amount headspace) {
  return static_cast<double>(headspace.value) * 1e-9 * boost::units::si::metres;
}
[[nodiscard]] inline length_quantity altitude_of(amount altitude) {
  return static_cast<double>(altitude.value) * m_per_ft / 1000.0 * boost::units::si::metres;
}
[[nodiscard]] inline fahrenheit_temperature temperature_of(amount temperature) {
  return fahrenheit(static_cast<double>(temperature.value) / 1000.0);
}

}  // namespace jarproof
