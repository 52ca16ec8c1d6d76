// Amounts as people write them: units, mixed forms, rounding.
// SPDX-License-Identifier: MIT
#include "jarproof/quantity.hpp"

#include <doctest/doctest.h>

#include <cstdint>
#include <ostream>
#include <string>
#include <string_view>

namespace quantity_tests {

using jarproof::amount_reading;
using jarproof::dimension;
using jarproof::read_amount;
using jarproof::rounding;
using jarproof::whole_feet;

namespace {

/// The value of a text that must be an amount.
std::int64_t value(std::string_view text, dimension d, rounding direction = rounding::down) {
  const amount_reading r = read_amount(text, d, direction);
  if (!r.ok()) FAIL_CHECK(text << ": " << r.message);
  return r.value;
}

struct known {
  std::string_view text;
  std::int64_t value;
};

template <std::size_t N>
void check_all(const known (&amounts)[N], dimension d) {
  for (const known& k : amounts) {
    CAPTURE(k.text);
    CHECK(value(k.text, d) == k.value);
  }
}

}  // namespace

TEST_SUITE_BEGIN("quantity");

TEST_CASE("time in every unit, in milliseconds") {
  constexpr known amounts[] = {
      {"1 s", 1'000},        {"1 sec", 1'000},          {"1 second", 1'000},
      {"2 seconds", 2'000},  {"1 min", 60'000},         {"1 min.", 60'000},
      {"1 minute", 60'000},  {"75 minutes", 4'500'000}, {"75 mins", 4'500'000},
      {"1 h", 3'600'000},    {"1 hr", 3'600'000},       {"2 hrs", 7'200'000},
      {"1 hour", 3'600'000}, {"3 hours", 10'800'000}};
  check_all(amounts, dimension::time);
}

TEST_CASE("pressure in US units, in millionths of a psi") {
  constexpr known amounts[] = {{"10 psi", 10'000'000},   {"10 psig", 10'000'000},
                               {"11 lb", 11'000'000},    {"11 lb.", 11'000'000},
                               {"15 lbs", 15'000'000},   {"1 pound", 1'000'000},
                               {"15 pounds", 15'000'000}};
  check_all(amounts, dimension::pressure);
}

TEST_CASE("pressure in metric units (NIST SP 811, B.8: 1 psi = 6.894 757 kPa)") {
  CHECK(value("100 kPa", dimension::pressure) == 14'503'773);
  CHECK(value("1 bar", dimension::pressure) == 14'503'773);
  CHECK(value("100 KPA", dimension::pressure) == 14'503'773);
}

TEST_CASE("a pressure in kPa is never read as more than it is, nor as less by two millionths") {
  for (std::int64_t kpa = 1; kpa <= 200; ++kpa) {
    const std::int64_t psi = value(std::to_string(kpa) + " kPa", dimension::pressure);
    CAPTURE(kpa);
    CHECK(psi * 6'894'757'293 <= kpa * 1'000'000'000'000'000);
    CHECK((psi + 2) * 6'894'757'293 > kpa * 1'000'000'000'000'000);
  }
}

TEST_CASE("a published 10 or 11 psi is reached at the next whole kPa and not one before") {
  CHECK(value("68 kPa", dimension::pressure) < 10'000'000);
  CHECK(value("68.9 kPa", dimension::pressure) < 10'000'000);
  CHECK(value("69 kPa", dimension::pressure) >= 10'000'000);
  CHECK(value("0.68 bar", dimension::pressure) < 10'000'000);
  CHECK(value("0.69 bar", dimension::pressure) >= 10'000'000);
  CHECK(value("0.7 bar", dimension::pressure) >= 10'000'000);
  CHECK(value("0.7 bar", dimension::pressure) < 11'000'000);
  CHECK(value("75 kPa", dimension::pressure) < 11'000'000);
  CHECK(value("76 kPa", dimension::pressure) >= 11'000'000);
}

TEST_CASE("length in every unit, in nanometres (NIST SP 811, B.8: 1 in = 25.4 mm)") {
  constexpr known amounts[] = {
      {"1 in", 25'400'000},     {"1 in.", 25'400'000},   {"1 inch", 25'400'000},
      {"2 inches", 50'800'000}, {"1\"", 25'400'000},     {"1 \u2033", 25'400'000},
      {"25 mm", 25'000'000},    {"25.4 mm", 25'400'000}, {"2.5 cm", 25'000'000}};
  check_all(amounts, dimension::length);
}

TEST_CASE("altitude in US units, in thousandths of a foot") {
  constexpr known amounts[] = {{"1000 ft", 1'000'000}, {"5,200 ft", 5'200'000}, {"1 foot", 1'000},
                               {"850 feet", 850'000},  {"850'", 850'000},       {"0 ft", 0}};
  check_all(amounts, dimension::altitude);
}

TEST_CASE("altitude in metric units (NIST SP 811, B.8: 1 ft = 0.3048 m)") {
  for (const std::string_view unit : {" m", " metre", " metres", " meter", " meters"}) {
    CAPTURE(unit);
    CHECK(value("304.8" + std::string(unit), dimension::altitude) == 1'000'000);
  }
}

TEST_CASE("an altitude in metres is rounded up to the next thousandth of a foot") {
  for (std::int64_t metres = 0; metres <= 3'100; ++metres) {
    const std::int64_t ft = value(std::to_string(metres) + " m", dimension::altitude, rounding::up);
    CAPTURE(metres);
    CHECK(ft * 3'048 >= metres * 10'000'000);
    CHECK((ft - 1) * 3'048 < metres * 10'000'000);
  }
}

TEST_CASE("volume in US units, in millionths of a fluid ounce") {
  constexpr known amounts[] = {
      {"1 oz", 1'000'000},     {"12 fl oz", 12'000'000},  {"1 ounce", 1'000'000},
      {"8 ounces", 8'000'000}, {"1 cup", 8'000'000},      {"2 cups", 16'000'000},
      {"1 pt", 16'000'000},    {"1 pint", 16'000'000},    {"2 pints", 32'000'000},
      {"1 qt", 32'000'000},    {"1 quart", 32'000'000},   {"9 quarts", 288'000'000},
      {"1 gal", 128'000'000},  {"1 gallon", 128'000'000}, {"2 gallons", 256'000'000},
      {"1 tbsp", 500'000},     {"1 tablespoon", 500'000}, {"2 tablespoons", 1'000'000},
      {"3 tsp", 500'000},      {"3 teaspoons", 500'000},  {"1 teaspoon", 166'666}};
  check_all(amounts, dimension::volume);
}

TEST_CASE("volume in metric units (NIST SP 811, B.8: 1 fl oz = 29.573 53 mL)") {
  for (const std::string_view unit : {" L", " l", " liter", " liters", " litre", " litres"}) {
    CAPTURE(unit);
    CHECK(value("1" + std::string(unit), dimension::volume) == value("1000 mL", dimension::volume));
  }
  for (std::int64_t ml = 1; ml <= 900; ++ml) {
    const std::int64_t floz = value(std::to_string(ml) + " mL", dimension::volume);
    CAPTURE(ml);
    CHECK((floz - 1) * 295'735'295'625 <= ml * 10'000'000'000'000'000);
    CHECK((floz + 2) * 295'735'295'625 > ml * 10'000'000'000'000'000);
  }
}

TEST_CASE("a metric jar is at most a pint up to 473 mL") {
  CHECK(value("473 mL", dimension::volume, rounding::up) <= 16'000'000);
  CHECK(value("474 mL", dimension::volume, rounding::up) > 16'000'000);
  CHECK(value("500 mL", dimension::volume, rounding::up) > 16'000'000);
}

TEST_CASE("temperature in every unit, in thousandths of a degree Fahrenheit") {
  constexpr known amounts[] = {
      {"182 F", 182'000}, {"182F", 182'000},     {"182 \u00B0F", 182'000}, {"182\u00B0f", 182'000},
      {"0 C", 32'000},    {"100 C", 212'000},    {"116 C", 240'800},       {"-40 C", -40'000},
      {"-40 F", -40'000}, {"4 \u00B0C", 39'200}, {"40 c", 104'000}};
  check_all(amounts, dimension::temperature);
}

TEST_CASE("a share is a fraction, a decimal or per cent") {
  constexpr known amounts[] = {{"1/2", 500'000},    {"\u00BD", 500'000}, {"0.5", 500'000},
                               {"50 %", 500'000},   {"50%", 500'000},    {"50 percent", 500'000},
                               {"5 %", 50'000},     {"1/2 %", 5'000},    {"4.5 %", 45'000},
                               {"100 %", 1'000'000}};
  check_all(amounts, dimension::share);
}

TEST_CASE("numbers with fractions and groups") {
  constexpr known lengths[] = {
      {"1/2 in", 12'700'000},      {"1 1/4 in", 31'750'000},       {"1-1/4 in", 31'750'000},
      {"\u00BD in", 12'700'000},   {"1\u00BD in", 38'100'000},     {"1 \u00BD in", 38'100'000},
      {"1-\u00BD in", 38'100'000}, {"0.5 in", 12'700'000},         {"1.25 in", 31'750'000},
      {"1/2in", 12'700'000},       {"  1   1/4   in ", 31'750'000}};
  check_all(lengths, dimension::length);
  CHECK(value("10,000 ft", dimension::altitude) == 10'000'000);
  CHECK(value("1,000.5 ft", dimension::altitude) == 1'000'500);
}

TEST_CASE("every fraction sign has its value") {
  constexpr known lengths[] = {
      {"\u00BD in", 12'700'000}, {"\u00BC in", 6'350'000},  {"\u00BE in", 19'050'000},
      {"\u2153 in", 8'466'666},  {"\u2154 in", 16'933'333}, {"\u215B in", 3'175'000},
      {"\u215C in", 9'525'000},  {"\u215D in", 15'875'000}, {"\u215E in", 22'225'000}};
  check_all(lengths, dimension::length);
}

TEST_CASE("amounts of several units") {
  CHECK(value("1 h 15 min", dimension::time) == 4'500'000);
  CHECK(value("1h15min", dimension::time) == 4'500'000);
  CHECK(value("1 hour 15 minutes 30 s", dimension::time) == 4'530'000);
  CHECK(value("1 1/2 h", dimension::time) == 5'400'000);
  CHECK(value("2 qt 1 pt 1 cup", dimension::volume) == 88'000'000);
}

TEST_CASE("what a conversion cannot hold exactly goes down or up as asked") {
  CHECK(value("1/7 min", dimension::time, rounding::down) == 8'571);
  CHECK(value("1/7 min", dimension::time, rounding::up) == 8'572);
  CHECK(value("1 tsp", dimension::volume, rounding::down) == 166'666);
  CHECK(value("1 tsp", dimension::volume, rounding::up) == 166'667);
  CHECK(value("75 min", dimension::time, rounding::up) == 4'500'000);
}

TEST_CASE("down is colder and up is warmer, also below zero") {
  CHECK(value("-0.0001 C", dimension::temperature, rounding::down) == 31'999);
  CHECK(value("-0.0001 C", dimension::temperature, rounding::up) == 32'000);
  CHECK(value("-0.0001 F", dimension::temperature, rounding::down) == -1);
  CHECK(value("-0.0001 F", dimension::temperature, rounding::up) == 0);
}

TEST_CASE("a dial's error keeps its sign, and both directions of rounding hold below zero") {
  CHECK(value("+1 psi", dimension::pressure, rounding::up) == 1'000'000);
  CHECK(value("-1 psi", dimension::pressure, rounding::up) == -1'000'000);
  CHECK(value("- 1 psi", dimension::pressure, rounding::up) == -1'000'000);
  CHECK(value("-7 kPa", dimension::pressure, rounding::down) == -1'015'265);
  CHECK(value("-7 kPa", dimension::pressure, rounding::up) == -1'015'264);
}

TEST_CASE("metric units are marked as converted") {
  CHECK(read_amount("69 kPa", dimension::pressure).metric);
  CHECK(read_amount("0.7 bar", dimension::pressure).metric);
  CHECK(read_amount("25 mm", dimension::length).metric);
  CHECK(read_amount("500 mL", dimension::volume).metric);
  CHECK(read_amount("260 m", dimension::altitude).metric);
  CHECK(read_amount("4 C", dimension::temperature).metric);
  CHECK_FALSE(read_amount("10 psi", dimension::pressure).metric);
  CHECK_FALSE(read_amount("1 in", dimension::length).metric);
  CHECK_FALSE(read_amount("1 qt", dimension::volume).metric);
  CHECK_FALSE(read_amount("850 ft", dimension::altitude).metric);
  CHECK_FALSE(read_amount("75 min", dimension::time).metric);
}

TEST_CASE("the largest numbers of every unit stay within their integers") {
  CHECK(value("999999.9999 gal", dimension::volume) == 127'999'999'987'200);
  CHECK(value("999999.9999 h", dimension::time) == 3'599'999'999'640);
  CHECK(value("999999.9999 in", dimension::length) == 25'399'999'997'460);
  CHECK(value("-999999.9999 psi", dimension::pressure) == -999'999'999'900);
  CHECK(value("999,999 999/999 ft", dimension::altitude) == 1'000'000'000);
}

TEST_CASE("an altitude counts in whole feet, rounded up, and below the sea it is 0") {
  static_assert(whole_feet(0) == 0);
  static_assert(whole_feet(-200'000) == 0);
  static_assert(whole_feet(1) == 1);
  static_assert(whole_feet(1'000'000) == 1'000);
  static_assert(whole_feet(1'000'001) == 1'001);
  CHECK(whole_feet(value("999,999 ft", dimension::altitude)) == 999'999);
  CHECK(whole_feet(value("-0.5 ft", dimension::altitude, rounding::up)) == 0);
}

TEST_CASE("609 m is below a step at 2,000 ft and 610 m is above it") {
  CHECK(whole_feet(value("609 m", dimension::altitude, rounding::up)) == 1'999);
  CHECK(whole_feet(value("609.6 m", dimension::altitude, rounding::up)) == 2'000);
  CHECK(whole_feet(value("609.6001 m", dimension::altitude, rounding::up)) == 2'001);
  CHECK(whole_feet(value("610 m", dimension::altitude, rounding::up)) == 2'002);
}

TEST_CASE("blanks of other widths, as they are copied from a page, are blanks") {
  CHECK(value("75\u00A0min", dimension::time) == 4'500'000);
  CHECK(value("1\u202Fh 15\u2009min", dimension::time) == 4'500'000);
}

TEST_SUITE_END();

}  // namespace quantity_tests
