// The physics of a canner: ranges, directions, and the sentences that findings say with it. The
// published values are compared line by line in tests/published/science.cpp.
// SPDX-License-Identifier: MIT
#include "jarproof/physics.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>
#include <vector>

namespace physics_tests {

using doctest::Approx;
using namespace jarproof;

namespace {

constexpr double none = std::numeric_limits<double>::quiet_NaN();
constexpr double endless = std::numeric_limits<double>::infinity();

}  // namespace

TEST_SUITE_BEGIN("physics");

TEST_CASE("both equations of the saturation line agree (IAPWS R7-97, equations 30 and 31)") {
  double last_pa = 0.0;
  for (int tenths = 0; tenths <= 3739; ++tenths) {
    const double celsius = tenths / 10.0;
    const auto pa = saturation_pressure_pa(celsius);
    REQUIRE(pa);
    CHECK(*pa > last_pa);
    last_pa = *pa;
    const auto back = saturation_temperature_c(*pa);
    REQUIRE(back);
    CHECK(std::abs(*back - celsius) < 1e-8);
  }
  double last_c = -1.0;
  for (double pa = 612.0; pa < 22'064'000.0; pa *= 1.01) {
    const auto celsius = saturation_temperature_c(pa);
    REQUIRE(celsius);
    CHECK(*celsius > last_c);
    last_c = *celsius;
    const auto back = saturation_pressure_pa(*celsius);
    REQUIRE(back);
    CHECK(*back == Approx(pa).epsilon(1e-10));
  }
}

TEST_CASE("the line has its printed ends (IAPWS R7-97, section 8) and gives nothing beyond") {
  CHECK(saturation_temperature_c(611.213));
  CHECK(saturation_temperature_c(22'064'000.0));
  CHECK(saturation_temperature_c(saturation_pressure_pa(0.0).value()));
  CHECK(saturation_temperature_c(saturation_pressure_pa(373.946).value()));
  CHECK(saturation_pressure_pa(saturation_temperature_c(22'064'000.0).value()));
  for (const double celsius : {-0.001, 373.947, none, endless, -endless}) {
    CHECK_FALSE(saturation_pressure_pa(celsius));
  }
  for (const double pa : {0.0, 611.212, 22'064'001.0, -101'325.0, none, endless, -endless}) {
    CHECK_FALSE(saturation_temperature_c(pa));
  }
}

TEST_CASE("air thins with height, counts from sea level and ends with the troposphere") {
  double last_pa = 101'326.0;
  for (int m = 0; m <= 11'000; m += 100) {
    const auto pa = air_pressure_pa(m);
    REQUIRE(pa);
    CHECK(*pa < last_pa);
    last_pa = *pa;
  }
  CHECK(air_pressure_pa(-430.0) == air_pressure_pa(0.0));
  CHECK(boiling_point_f(-1300.0) == boiling_point_f(0.0));
  CHECK(steam_temperature_f(11.0, -1.0) == steam_temperature_f(11.0, 0.0));
  CHECK(gauge_psi_for(240.0, -1.0) == gauge_psi_for(240.0, 0.0));
  CHECK(boiling_point_f(36'089.0));
  for (const double ft : {36'090.0, none, endless, -endless}) {
    CHECK_FALSE(boiling_point_f(ft));
    CHECK_FALSE(steam_temperature_f(11.0, ft));
    CHECK_FALSE(gauge_psi_for(240.0, ft));
  }
}

TEST_CASE("a surveyed height is a little more than the one that counts") {
  CHECK(geopotential_m(0.0) == Approx(0.0));
  CHECK(geopotential_m(3000.0) == Approx(2998.58).epsilon(1e-5));
  const double apart = *air_pressure_pa(geopotential_m(3048.0)) - *air_pressure_pa(3048.0);
  CHECK(apart == Approx(13.0).epsilon(0.05));
}

TEST_CASE("published pressures stay a little below 240 F at the top of their bands") {
  CHECK(*steam_temperature_f(11.0, 2000.0) == Approx(239.3).epsilon(0.0002));  // USDA, dial
  CHECK(*steam_temperature_f(10.0, 1000.0) == Approx(238.2).epsilon(0.0002));  // USDA, weight
}

TEST_CASE("each thousand feet takes 1.82 to 1.84 F from boiling water up to 10,000 ft") {
  for (int ft = 0; ft < 10'000; ft += 1000) {
    const double fall = *boiling_point_f(ft) - *boiling_point_f(ft + 1000);
    CHECK(fall > 1.82);
    CHECK(fall < 1.84);
  }
}

TEST_CASE("gauge pressure and temperature lead back to each other") {
  for (int ft = 0; ft <= 10'000; ft += 500) {
    for (int half_psi = 0; half_psi <= 40; ++half_psi) {
      for (const double air : {0.0, 0.1, 0.3}) {
        const auto hot = steam_temperature_f(half_psi / 2.0, ft, air);
        REQUIRE(hot);
        const auto psi = gauge_psi_for(*hot, ft, air);
        REQUIRE(psi);
        CHECK(std::abs(*psi - half_psi / 2.0) < 1e-9);
      }
    }
  }
}

TEST_CASE("no pressure is needed for what boiling water reaches, and steam has an end") {
  CHECK(gauge_psi_for(200.0, 0.0) == 0.0);
  CHECK(gauge_psi_for(32.0, 0.0) == 0.0);
  CHECK(steam_temperature_f(0.0, 4600.0) == boiling_point_f(4600.0));
  CHECK(steam_temperature_f(3185.0, 0.0));
  for (const double psi : {-0.1, 3186.0, none, endless, -endless}) {
    CHECK_FALSE(steam_temperature_f(psi, 0.0));
  }
  for (const double fahrenheit : {31.0, 706.0, none, endless, -endless}) {
    CHECK_FALSE(gauge_psi_for(fahrenheit, 0.0));
  }
}

TEST_CASE("air left in the canner cools the steam, and takes more pressure for the same heat") {
  double last_f = 300.0;
  double last_psi = 0.0;
  for (int percent = 0; percent <= 90; percent += 5) {
    const auto hot = steam_temperature_f(10.5, 4600.0, percent / 100.0);
    const auto psi = gauge_psi_for(240.0, 4600.0, percent / 100.0);
    REQUIRE(hot);
    REQUIRE(psi);
    CHECK(*hot < last_f);
    CHECK(*psi > last_psi);
    last_f = *hot;
    last_psi = *psi;
  }
  // Half air under an open lid: the steam has half an atmosphere.
  CHECK(*steam_temperature_f(0.0, 0.0, 0.5) ==
        Approx(fahrenheit_from_celsius(*saturation_temperature_c(101'325.0 / 2.0))));
  for (const double air : {-0.01, 1.0, 1.5, none, endless, -endless}) {
    CHECK_FALSE(steam_temperature_f(10.5, 0.0, air));
    CHECK_FALSE(gauge_psi_for(240.0, 0.0, air));
  }
}

TEST_CASE("what a wrong pressure, altitude or vent costs, in degrees and in work") {
  // Worked out apart from the library over IAPWS R7-97 and the US Standard Atmosphere 1976.
  const double sea = *steam_temperature_f(10.5, 0.0);
  const double high = *steam_temperature_f(10.5, 5000.0);
  CHECK(high == Approx(234.8007).epsilon(1e-6));
  CHECK(*relative_rate(high, 240.0) == Approx(0.514).epsilon(0.001));
  CHECK(*steam_temperature_f(11.0, 0.0) - *steam_temperature_f(10.0, 0.0) ==
        Approx(2.2).epsilon(0.01));
  const double with_air = *steam_temperature_f(10.5, 0.0, 0.1);
  CHECK(sea - with_air == Approx(5.8).epsilon(0.01));
  CHECK(*relative_rate(with_air, sea) == Approx(0.477).epsilon(0.002));
  const double low_weather =
      fahrenheit_from_celsius(*saturation_temperature_c(98'000.0 + 10.5 * pascal_per_psi));
  CHECK(sea - low_weather == Approx(1.1).epsilon(0.02));
}

TEST_CASE("boiling water would need hours for what 250 F does in minutes") {
  CHECK(*minutes_at(212.0, 12.0 * 0.21) == Approx(325.47).epsilon(1e-5));  // 12 D, D 0.21 min
  CHECK(*minutes_at(212.0, 3.0) / 60.0 == Approx(6.5).epsilon(0.01));      // F0 3
}

TEST_CASE("lethal rates: one at the reference, tenfold by z, equal in both scales but for it") {
  CHECK(lethal_rate(250.0) == 1.0);
  CHECK(*lethal_rate(268.0) == Approx(10.0));
  CHECK(*lethal_rate(232.0) == Approx(0.1));
  CHECK(lethal_rate(121.1, f0_celsius) == 1.0);
  for (int fahrenheit = 200; fahrenheit <= 260; ++fahrenheit) {
    const double celsius = celsius_from_fahrenheit(fahrenheit);
    CHECK(*lethal_rate(celsius, f0_celsius) / *lethal_rate(fahrenheit) ==
          Approx(1.00256).epsilon(1e-5));
    CHECK(*relative_rate(celsius, 116.0, f0_celsius) ==
          Approx(*relative_rate(fahrenheit, fahrenheit_from_celsius(116.0))));
    CHECK(*minutes_at(fahrenheit, 3.0) * *lethal_rate(fahrenheit) == Approx(3.0));
  }
}

TEST_CASE("a rate needs numbers and a z above nothing") {
  for (const double bad : {none, endless, -endless}) {
    CHECK_FALSE(lethal_rate(bad));
    CHECK_FALSE(relative_rate(240.0, bad));
    CHECK_FALSE(minutes_at(bad, 3.0));
    CHECK_FALSE(minutes_at(240.0, bad));
    CHECK_FALSE(lethal_rate(240.0, {bad, 18.0}));
    CHECK_FALSE(lethal_rate(240.0, {250.0, bad}));
  }
  CHECK_FALSE(lethal_rate(240.0, {250.0, 0.0}));
  CHECK_FALSE(lethal_rate(240.0, {250.0, -18.0}));
  CHECK_FALSE(lethal_rate(240.0, lethality_scale{}));
  CHECK_FALSE(minutes_at(240.0, -1.0));
  CHECK_FALSE(lethal_rate(1e6));
  CHECK(minutes_at(240.0, 0.0) == 0.0);
}

TEST_CASE("the lethality of a course is that of its pieces, and less than that of trapezoids") {
  const temperature_point course[] = {{0, 180},  {12, 236}, {15, 240.5}, {40, 239.9},
                                      {41, 244}, {46, 240}, {60, 180}};
  const auto whole = lethality_min(course);
  REQUIRE(whole);
  double pieces = 0.0;
  double trapezoids = 0.0;
  double fine = 0.0;
  for (std::size_t i = 1; i < std::size(course); ++i) {
    const temperature_point from = course[i - 1], to = course[i];
    pieces += *lethality_min({&course[i - 1], 2});
    const double minutes = to.minute - from.minute;
    trapezoids += minutes * (*lethal_rate(from.temperature) + *lethal_rate(to.temperature)) / 2.0;
    constexpr int steps = 20'000;
    for (int k = 0; k < steps; ++k) {
      const double at = (k + 0.5) / steps;
      fine += minutes / steps *
              *lethal_rate(from.temperature + at * (to.temperature - from.temperature));
    }
  }
  CHECK(*whole == Approx(pieces).epsilon(1e-12));
  CHECK(*whole == Approx(fine).epsilon(1e-8));
  CHECK(*whole < trapezoids);
  // A reading more on a straight line, or another start of the clock, changes nothing.
  const temperature_point straight[] = {{5, 212}, {15, 240}};
  const temperature_point read_twice[] = {{-3, 212}, {1, 223.2}, {7, 240}};
  CHECK(*lethality_min(straight) == Approx(*lethality_min(read_twice)).epsilon(1e-12));
}

TEST_CASE("a level course counts minutes times rate, and so does one that is almost level") {
  const temperature_point level[] = {{0, 240}, {20, 240}};
  const temperature_point almost[] = {{0, 240}, {20, 240 + 1e-10}};
  CHECK(*lethality_min(level) == Approx(20.0 * *lethal_rate(240.0)).epsilon(1e-14));
  CHECK(*lethality_min(almost) == Approx(*lethality_min(level)).epsilon(1e-10));
}

TEST_CASE("a jump within one minute takes no time") {
  const temperature_point jump[] = {{0, 240}, {10, 240}, {10, 250}, {13, 250}};
  CHECK(*lethality_min(jump) == Approx(10.0 * *lethal_rate(240.0) + 3.0).epsilon(1e-14));
}

TEST_CASE("a course needs two points, numbers, and minutes that never go back") {
  const std::vector<temperature_point> nothing;
  CHECK_FALSE(lethality_min({nothing.data(), nothing.size()}));
  const temperature_point one[] = {{0, 240}};
  CHECK_FALSE(lethality_min(one));
  const temperature_point back[] = {{0, 240}, {10, 240}, {9, 240}};
  CHECK_FALSE(lethality_min(back));
  for (const double bad : {none, endless, -endless}) {
    const temperature_point temperature_last[] = {{0, 240}, {10, bad}};
    const temperature_point temperature_first[] = {{0, bad}, {10, 240}};
    const temperature_point minute_last[] = {{0, 240}, {bad, 240}};
    const temperature_point minute_first[] = {{bad, 240}, {10, 240}};
    CHECK_FALSE(lethality_min(temperature_last));
    CHECK_FALSE(lethality_min(temperature_first));
    CHECK_FALSE(lethality_min(minute_last));
    CHECK_FALSE(lethality_min(minute_first));
  }
  const temperature_point good[] = {{0, 240}, {10, 240}};
  CHECK_FALSE(lethality_min(good, {250.0, 0.0}));
}

TEST_SUITE_END();

}  // namespace physics_tests
