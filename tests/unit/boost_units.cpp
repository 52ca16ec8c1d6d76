// Typed quantities: conversions, gauge and absolute pressure, the amounts of a plan.
// SPDX-License-Identifier: MIT
#include "jarproof/boost_units.hpp"

#include <doctest/doctest.h>

#include "support/fixtures.hpp"

namespace unit_boost_units_tests {

using doctest::Approx;
using namespace jarproof;

namespace {

/// Pressure of the standard atmosphere (NIST SP 811, B.8: 101 325 Pa).
absolute_pressure standard_atmosphere() { return {101'325.0 * boost::units::si::pascals}; }

double fahrenheit_for(double degrees_celsius) {
  return fahrenheit_of(celsius(degrees_celsius)).value();
}

double celsius_for(double degrees_fahrenheit) {
  return celsius_of(fahrenheit(degrees_fahrenheit)).value();
}

}  // namespace

TEST_SUITE_BEGIN("boost_units");

TEST_CASE("points on the two scales (NIST SP 811, B.8: F = 1.8 C + 32)") {
  CHECK(fahrenheit_for(0) == Approx(32.0));
  CHECK(fahrenheit_for(100) == Approx(212.0));
  CHECK(fahrenheit_for(116) == Approx(240.8));
  CHECK(fahrenheit_for(-40) == Approx(-40.0));
  CHECK(fahrenheit_for(5) == Approx(41.0));
  CHECK(celsius_for(32) == Approx(0.0).epsilon(1e-9));
  CHECK(celsius_for(212) == Approx(100.0));
  CHECK(celsius_for(240.8) == Approx(116.0));
  CHECK(celsius_for(-40) == Approx(-40.0));
}

TEST_CASE("there and back again") {
  for (int degrees = -40; degrees <= 130; ++degrees) {
    CHECK(celsius_for(fahrenheit_for(degrees)) == Approx(degrees).epsilon(1e-9));
  }
}

// NIST SP 811, B.8 prints 6.894 757; the digits behind are those of pound, gravity and inch.
TEST_CASE("gauge pressure in psi and kPa (1 psi = 6.894 757 293 kPa)") {
  CHECK(kilopascal_of(psi_gauge(1)) == Approx(6.894757293).epsilon(1e-9));
  CHECK(kilopascal_of(psi_gauge(15)) == Approx(103.421359398).epsilon(1e-9));
  CHECK(psi_of(kilopascal_gauge(68.94757293)) == Approx(10.0).epsilon(1e-9));
  CHECK(psi_of(psi_gauge(11)) == Approx(11.0));
  CHECK(kilopascal_of(kilopascal_gauge(69)) == Approx(69.0));
}

TEST_CASE("absolute pressure is gauge pressure on top of the air's own") {
  const absolute_pressure inside = absolute(psi_gauge(15), standard_atmosphere());
  CHECK(inside.value.value() == Approx(101'325.0 + 103'421.359));
  CHECK(psi_of(gauge(inside, standard_atmosphere())) == Approx(15.0));
}

TEST_CASE("the same gauge reading is less absolute pressure in thinner air") {
  const absolute_pressure thin{84'000.0 * boost::units::si::pascals};
  CHECK(absolute(psi_gauge(10), thin).value < absolute(psi_gauge(10), standard_atmosphere()).value);
}

TEST_CASE("an open vent is no gauge pressure at all") {
  CHECK(psi_of(gauge(standard_atmosphere(), standard_atmosphere())) == Approx(0.0));
  CHECK(absolute(psi_gauge(0), standard_atmosphere()).value.value() == Approx(101'325.0));
}

TEST_CASE("steam of a plan in thinner air (IAPWS R7-97 over US Standard Atmosphere 1976)") {
  const auto outside = air_pressure(2000.0 * m_per_ft * boost::units::si::metres);
  REQUIRE(outside);
  CHECK(outside->value.value() == Approx(94'212.907).epsilon(1e-8));
  const auto hot = steam_temperature(absolute(psi_gauge(11), *outside));
  REQUIRE(hot);
  CHECK(fahrenheit_of(*hot).value() == Approx(239.2859).epsilon(1e-6));
  CHECK_FALSE(air_pressure(11'001.0 * boost::units::si::metres));
  CHECK_FALSE(steam_temperature({0.0 * boost::units::si::pascals}));
}

TEST_CASE("the amounts of a plan become quantities") {
  const plan p = fixtures::plan_from(
      "pressure: 11 psi\ntime: 1 h 15 min\nheadspace: 1 in\naltitude: 1000 ft\ntemperature: 182 "
      "F\n");
  CHECK(psi_of(gauge_pressure_of(p.pressure->value)) == Approx(11.0));
  CHECK(time_of(p.time->value).value() == Approx(4'500.0));
  CHECK(headspace_of(p.headspace->value).value() == Approx(0.0254));
  CHECK(altitude_of(p.altitude->value).value() == Approx(304.8));
  CHECK(temperature_of(p.temperature->value).value() == Approx(182.0));
}

TEST_CASE("metric amounts of a plan become the same quantities") {
  const plan p = fixtures::plan_from(
      "pressure: 69 kPa\nheadspace: 25 mm\naltitude: 260 m\ntemperature: 116 C\n");
  CHECK(kilopascal_of(gauge_pressure_of(p.pressure->value)) == Approx(69.0).epsilon(1e-6));
  CHECK(headspace_of(p.headspace->value).value() == Approx(0.025));
  CHECK(altitude_of(p.altitude->value).value() == Approx(260.0).epsilon(1e-5));
  CHECK(celsius_of(temperature_of(p.temperature->value)).value() == Approx(116.0));
}

TEST_SUITE_END();

}  // namespace unit_boost_units_tests
