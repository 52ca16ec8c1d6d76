// What must not compile with typed quantities: mixing gauge and absolute pressure, converting
// differences of temperatures.
// SPDX-License-Identifier: MIT
#include "jarproof/boost_units.hpp"

#include <doctest/doctest.h>

#include <type_traits>
#include <utility>

namespace static_boost_units_tests {
namespace {

namespace units = boost::units;
using jarproof::absolute_pressure;
using jarproof::celsius_temperature;
using jarproof::fahrenheit_temperature;
using jarproof::gauge_pressure;
using celsius_difference = units::quantity<units::celsius::temperature>;
using fahrenheit_difference = units::quantity<units::fahrenheit::temperature>;

// Wrapped, so that what does not compile is an answer and no error.
struct call_absolute {
  template <class A, class B>
  auto operator()(A a, B b) const -> decltype(jarproof::absolute(a, b));
};
struct call_gauge {
  template <class A, class B>
  auto operator()(A a, B b) const -> decltype(jarproof::gauge(a, b));
};
struct call_psi_of {
  template <class A>
  auto operator()(A a) const -> decltype(jarproof::psi_of(a));
};
struct call_fahrenheit_of {
  template <class T>
  auto operator()(T t) const -> decltype(jarproof::fahrenheit_of(t));
};
struct call_celsius_of {
  template <class T>
  auto operator()(T t) const -> decltype(jarproof::celsius_of(t));
};
struct add {
  template <class A, class B>
  auto operator()(A a, B b) const -> decltype(a + b);
};

static_assert(!std::is_same_v<gauge_pressure, absolute_pressure>);
static_assert(!std::is_convertible_v<gauge_pressure, absolute_pressure>);
static_assert(!std::is_convertible_v<absolute_pressure, gauge_pressure>);
static_assert(!std::is_constructible_v<absolute_pressure, gauge_pressure>);
static_assert(!std::is_constructible_v<gauge_pressure, absolute_pressure>);
static_assert(!std::is_assignable_v<absolute_pressure&, gauge_pressure>);
static_assert(!std::is_convertible_v<gauge_pressure, double>);
static_assert(!std::is_convertible_v<double, gauge_pressure>);
static_assert(!std::is_invocable_v<add, gauge_pressure, gauge_pressure>);
static_assert(!std::is_invocable_v<add, gauge_pressure, absolute_pressure>);

static_assert(
    std::is_invocable_r_v<absolute_pressure, call_absolute, gauge_pressure, absolute_pressure>);
static_assert(!std::is_invocable_v<call_absolute, gauge_pressure, gauge_pressure>);
static_assert(!std::is_invocable_v<call_absolute, absolute_pressure, absolute_pressure>);
static_assert(!std::is_invocable_v<call_absolute, absolute_pressure, gauge_pressure>);
static_assert(!std::is_invocable_v<call_absolute, double, absolute_pressure>);

static_assert(
    std::is_invocable_r_v<gauge_pressure, call_gauge, absolute_pressure, absolute_pressure>);
static_assert(!std::is_invocable_v<call_gauge, gauge_pressure, absolute_pressure>);
static_assert(!std::is_invocable_v<call_gauge, absolute_pressure, gauge_pressure>);

static_assert(std::is_invocable_r_v<double, call_psi_of, gauge_pressure>);
static_assert(!std::is_invocable_v<call_psi_of, absolute_pressure>);
static_assert(!std::is_invocable_v<call_psi_of, double>);

static_assert(
    std::is_invocable_r_v<fahrenheit_temperature, call_fahrenheit_of, celsius_temperature>);
static_assert(!std::is_invocable_v<call_fahrenheit_of, celsius_difference>, "5 C is not 9 F");
static_assert(!std::is_invocable_v<call_fahrenheit_of, fahrenheit_difference>);
static_assert(!std::is_invocable_v<call_fahrenheit_of, double>);
static_assert(!std::is_invocable_v<call_fahrenheit_of, int>);

static_assert(std::is_invocable_r_v<celsius_temperature, call_celsius_of, fahrenheit_temperature>);
static_assert(!std::is_invocable_v<call_celsius_of, fahrenheit_difference>);
static_assert(!std::is_invocable_v<call_celsius_of, celsius_difference>);
static_assert(!std::is_invocable_v<call_celsius_of, double>);

static_assert(!std::is_same_v<celsius_temperature, fahrenheit_temperature>);
static_assert(!std::is_convertible_v<celsius_temperature, celsius_difference>);
static_assert(!std::is_convertible_v<celsius_difference, celsius_temperature>);
static_assert(!std::is_convertible_v<jarproof::time_quantity, jarproof::length_quantity>);

}  // namespace

TEST_SUITE_BEGIN("boost_units");

TEST_CASE("what must not mix does not compile, and what must does") {
  // The assertions above are the test; these two keep the wrappers honest at run time.
  CHECK(std::is_invocable_v<call_absolute, gauge_pressure, absolute_pressure>);
  CHECK(std::is_invocable_v<call_fahrenheit_of, celsius_temperature>);
}

TEST_SUITE_END();

}  // namespace static_boost_units_tests
