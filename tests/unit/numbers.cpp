// Numbers as a cook reads them.
// SPDX-License-Identifier: MIT
#include "jarproof/format/numbers.hpp"

#include <doctest/doctest.h>

#include <string>

namespace numbers_tests {

using namespace jarproof;

TEST_SUITE_BEGIN("numbers");

TEST_CASE("thousands are grouped by a comma") {
  CHECK(grouped(0) == "0");
  CHECK(grouped(999) == "999");
  CHECK(grouped(1'000) == "1,000");
  CHECK(grouped(10'000) == "10,000");
  CHECK(grouped(123'456) == "123,456");
  CHECK(grouped(1'234'567) == "1,234,567");
  CHECK(grouped(-1) == "-1");
  CHECK(grouped(-999) == "-999");
  CHECK(grouped(-1'000) == "-1,000");
}

TEST_CASE("a decimal has no zeros at its end and no point without decimals") {
  CHECK(decimal_of_thousandths(0) == "0");
  CHECK(decimal_of_thousandths(1'000) == "1");
  CHECK(decimal_of_thousandths(1'250) == "1.25");
  CHECK(decimal_of_thousandths(1'500) == "1.5");
  CHECK(decimal_of_thousandths(1'001) == "1.001");
  CHECK(decimal_of_thousandths(10) == "0.01");
  CHECK(decimal_of_thousandths(100'000) == "100");
  CHECK(decimal_of_thousandths(-1'250) == "-1.25");
  CHECK(decimal_of_thousandths(-10) == "-0.01");
}

TEST_CASE("kitchen fractions are eighths, and other shares stay decimals") {
  CHECK(kitchen_fraction(0) == "0");
  CHECK(kitchen_fraction(125) == "1/8");
  CHECK(kitchen_fraction(250) == "1/4");
  CHECK(kitchen_fraction(375) == "3/8");
  CHECK(kitchen_fraction(500) == "1/2");
  CHECK(kitchen_fraction(625) == "5/8");
  CHECK(kitchen_fraction(750) == "3/4");
  CHECK(kitchen_fraction(875) == "7/8");
  CHECK(kitchen_fraction(1'000) == "1");
  CHECK(kitchen_fraction(1'250) == "1 1/4");
  CHECK(kitchen_fraction(2'500) == "2 1/2");
  CHECK(kitchen_fraction(333) == "0.333");
  CHECK(kitchen_fraction(1'100) == "1.1");
}

TEST_CASE("altitudes carry metres, to the nearest (NIST SP 811, B.8: 1 ft = 0.3048 m)") {
  CHECK(altitude_text(0) == "0 ft (0 m)");
  CHECK(altitude_text(1) == "1 ft (0 m)");
  CHECK(altitude_text(2) == "2 ft (1 m)");
  CHECK(altitude_text(1'000) == "1,000 ft (305 m)");
  CHECK(altitude_text(1'250) == "1,250 ft (381 m)");
  CHECK(altitude_text(2'000) == "2,000 ft (610 m)");
  CHECK(altitude_text(4'600) == "4,600 ft (1,402 m)");
  CHECK(altitude_text(10'000) == "10,000 ft (3,048 m)");
}

TEST_CASE("pressures carry kPa, on a dial rounded up (NIST SP 811, B.8: 1 psi = 6.894 757 kPa)") {
  CHECK(pressure_text(5) == "5 psi (35 kPa)");
  CHECK(pressure_text(10) == "10 psi (69 kPa)");
  CHECK(pressure_text(11) == "11 psi (76 kPa)");
  CHECK(pressure_text(12) == "12 psi (83 kPa)");
  CHECK(pressure_text(13) == "13 psi (90 kPa)");
  CHECK(pressure_text(14) == "14 psi (97 kPa)");
  CHECK(pressure_text(15) == "15 psi (104 kPa)");
}

TEST_CASE(
    "weights carry the kPa that are marked on them (NIST SP 811, B.8: 1 psi = 6.894 757 kPa)") {
  CHECK(pressure_text(5, "weighted") == "5 psi (34 kPa)");
  CHECK(pressure_text(10, "weighted") == "10 psi (69 kPa)");
  CHECK(pressure_text(15, "weighted") == "15 psi (103 kPa)");
}

TEST_CASE("the kPa that are printed for a dial are enough when they are read again") {
  for (int psi = 1; psi <= 15; ++psi) {
    const std::string text = pressure_text(psi);
    const std::size_t open = text.find('(') + 1;
    const amount_reading again =
        read_amount(text.substr(open, text.find(')') - open), dimension::pressure);
    REQUIRE(again.ok());
    CHECK(again.value >= psi * micro_per_unit);
  }
}

TEST_CASE("headspaces carry mm to the nearest (NIST SP 811, B.8: 1 in = 25.4 mm)") {
  CHECK(headspace_text(250) == "1/4 in (6 mm)");
  CHECK(headspace_text(500) == "1/2 in (13 mm)");
  CHECK(headspace_text(1'000) == "1 in (25 mm)");
  CHECK(headspace_text(1'250) == "1 1/4 in (32 mm)");
  CHECK(headspace_text(1'500) == "1 1/2 in (38 mm)");
}

TEST_CASE("times above an hour are also told in hours") {
  CHECK(time_text(0) == "0 min");
  CHECK(time_text(20) == "20 min");
  CHECK(time_text(59) == "59 min");
  CHECK(time_text(61) == "61 min (1 h 1 min)");
  CHECK(time_text(75) == "75 min (1 h 15 min)");
  CHECK(time_text(120) == "120 min (2 h)");
  CHECK(time_text(160) == "160 min (2 h 40 min)");
}

TEST_SUITE_END();

}  // namespace numbers_tests
