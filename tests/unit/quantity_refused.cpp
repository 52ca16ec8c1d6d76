// Amounts that are refused, each with the reason and what to write.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <cstdint>
#include <ostream>
#include <string>
#include <string_view>

#include "jarproof/quantity.hpp"

namespace quantity_refused_tests {

using jarproof::amount_reading;
using jarproof::dimension;
using jarproof::read_amount;
using jarproof::rounding;
using namespace std::string_view_literals;

namespace {

constexpr dimension all_dimensions[] = {
    dimension::time,   dimension::pressure,    dimension::length, dimension::altitude,
    dimension::volume, dimension::temperature, dimension::share};

/// True where the text is refused, and every refusal says what is wrong and what to write.
bool refused(std::string_view text, dimension d) {
  const amount_reading r = read_amount(text, d);
  if (r.ok()) return false;
  return !r.message.empty() && !r.write.empty();
}

}  // namespace

TEST_SUITE_BEGIN("quantity");

TEST_CASE("a share of more than the whole is refused: `5` without a unit is not 500 %") {
  for (const std::string_view text : {"5", "4", "50", "1 1/2", "110 %"}) {
    CAPTURE(text);
    CHECK(refused(text, dimension::share));
  }
}

TEST_CASE("a second reading of the same thing is not added to the first") {
  CHECK(refused("10 psi 5 psi", dimension::pressure));
  CHECK(refused("10 psi 69 kPa", dimension::pressure));
  CHECK(refused("1/2 in 13 mm", dimension::length));
  CHECK(refused("10 min 10 min", dimension::time));
  CHECK(refused("850 ft 260 m", dimension::altitude));
  CHECK(refused("50 % 50 %", dimension::share));
  CHECK(refused("180 F 185 F", dimension::temperature));
}

TEST_CASE("more parts than anybody writes are refused") {
  CHECK(refused("1 h 2 min 3 s 4 s", dimension::time));
}

TEST_CASE("only altitudes, pressures and temperatures carry a sign") {
  CHECK(read_amount("-200 ft", dimension::altitude).value == -200'000);
  CHECK(read_amount("+200 ft", dimension::altitude).value == 200'000);
  CHECK(refused("-5 min", dimension::time));
  CHECK(refused("+5 min", dimension::time));
  CHECK(refused("-1 in", dimension::length));
  CHECK(refused("-1 qt", dimension::volume));
  CHECK(refused("-5 %", dimension::share));
  CHECK(refused("--1 psi", dimension::pressure));
  CHECK(refused("+-1 psi", dimension::pressure));
}

TEST_CASE("a sign without a number is no amount: `-` is not an altitude of 0 ft") {
  for (const std::string_view text : {"-", "+", " - ", "- ft", "+ psi"}) {
    CAPTURE(text);
    CHECK(refused(text, dimension::altitude));
    CHECK(refused(text, dimension::pressure));
    CHECK(refused(text, dimension::temperature));
  }
}

TEST_CASE("a bare number is refused and the message says which unit to write") {
  struct bare {
    dimension d;
    std::string_view number;
    std::string_view write;
  };
  constexpr bare numbers[] = {
      {dimension::time, "75", "write the unit: `75 min` (min or h)"},
      {dimension::pressure, "11", "write the unit: `11 psi` (psi, kPa or bar)"},
      {dimension::length, "1 1/4", "write the unit: `1 1/4 in` (in, mm or cm)"},
      {dimension::altitude, "5,200", "write the unit: `5,200 ft` (ft or m)"},
      {dimension::volume, "9", "write the unit: `9 qt` (oz, cup, pt, qt, gal, mL or L)"},
      {dimension::temperature, "182", "write the unit: `182 F` (F or C)"}};
  for (const bare& b : numbers) {
    const amount_reading r = read_amount(b.number, b.d);
    CHECK(r.message == "`" + std::string(b.number) + "` has no unit");
    CHECK(r.write == b.write);
  }
}

TEST_CASE("the last part of a mixed amount needs its unit too") {
  const amount_reading r = read_amount("1 h 15", dimension::time);
  CHECK(r.message == "`1 h 15` has no unit");
  CHECK(r.write == "write the unit: `1 h 15 min` (min or h)");
}

TEST_CASE("a unit of another dimension, an unknown one and a longer word are refused") {
  CHECK(refused("5 in", dimension::time));
  CHECK(refused("5 m", dimension::time));
  CHECK(refused("5 min", dimension::altitude));
  CHECK(refused("3 lb", dimension::volume));
  CHECK(refused("10 inHg", dimension::pressure));
  CHECK(refused("0.069 MPa", dimension::pressure));
  CHECK(refused("1 km", dimension::altitude));
  CHECK(refused("300 K", dimension::temperature));
  CHECK(refused("5 mint", dimension::time));
  CHECK(refused("5 hot", dimension::time));
  CHECK(refused("1 ink", dimension::length));
  const amount_reading r = read_amount("5 stone", dimension::pressure);
  CHECK(r.message == "`5 stone` has a unit that is not known here");
  CHECK(r.write == "use psi, kPa or bar, as in `11 psi`");
}

TEST_CASE("a comma groups thousands or is refused, so that 1,5 never becomes 15") {
  for (const std::string_view text : {"1,5 in", "1,50 in", "0,75 in", "5,20 in", "5,2000 in", "1,",
                                      ",5 in", "5200,000 in", "1,000,5 in", "1,\u00BD in"}) {
    CAPTURE(text);
    CHECK(refused(text, dimension::length));
  }
  CHECK(read_amount("1,5 in", dimension::length).write ==
        "use a point for decimals (`1.5`) and a comma only as in `5,200`");
}

TEST_CASE("numbers that no kitchen has are refused") {
  for (const std::string_view text : {"1000000 ft", "99999999999999999999 ft", "1,000,000 ft",
                                      "999,999,999 ft", "000000000000000000001 ft"}) {
    CAPTURE(text);
    CHECK(refused(text, dimension::altitude));
  }
  CHECK(read_amount("999,999 ft", dimension::altitude).value == 999'999'000);
  CHECK(refused("0.12345 ft", dimension::altitude));
  CHECK(refused("1/1000 ft", dimension::altitude));
}

TEST_CASE("a division by zero is named") {
  for (const std::string_view text : {"1/0 in", "0/0 in", "1 1/0 in", "1/000 in"}) {
    const amount_reading r = read_amount(text, dimension::length);
    CHECK(r.message == "`" + std::string(text) + "` divides by zero");
    CHECK_FALSE(r.write.empty());
  }
}

TEST_CASE("an empty amount is named") {
  for (const std::string_view text : {""sv, " "sv, "\t\r\n"sv}) {
    for (const dimension d : all_dimensions) {
      CHECK(read_amount(text, d).message == "the amount is empty");
    }
  }
}

TEST_CASE("words, broken numbers and foreign digits are no amounts") {
  for (const std::string_view text :
       {"min"sv,        "about 75 min"sv, "75 min or so"sv, "75-80 min"sv,        "~75 min"sv,
        "1 15 min"sv,   "1:15 h"sv,       "1. min"sv,       ".5 min"sv,           "1.2.3 min"sv,
        "1e3 min"sv,    "0x10 min"sv,     "nan min"sv,      "inf min"sv,          "1 / 2 min"sv,
        "1/ min"sv,     "/2 min"sv,       "1/2/3 min"sv,    "\u00BD\u00BD min"sv, "1 1/2 1/2 min"sv,
        "\u0663 min"sv, "75 min, 5 s"sv,  "75 (min)"sv,     "75 min.."sv}) {
    CAPTURE(text);
    CHECK(refused(text, dimension::time));
  }
}

TEST_CASE("bytes that are no text are refused") {
  for (const std::string_view text :
       {"\xFF"sv, "75 \xFF"sv, "75\0 min"sv, "\0"sv, "75 min\0"sv, "\xC2"sv, "75\xC2"sv,
        "75 \xC2"sv, "1 \xE2\x85 min"sv, "75 min\x1B[0m"sv}) {
    CHECK(refused(text, dimension::time));
    CHECK(refused(text, dimension::temperature));
  }
}

TEST_CASE("whatever is written, the answer is a value within range or a reason") {
  constexpr std::string_view parts[] = {
      "1",      "0",       "999999", "9999999", "12345", "\u00BD", "/",     "1/3",  ".",
      ".9999",  ",",       ",5",     ",000",    " ",     "  ",     "-",     "+",    "%",
      "min",    "h",       "s",      "psi",     "kPa",   "bar",    "in",    "mm",   "\"",
      "'",      "ft",      "m",      "qt",      "gal",   "mL",     "tsp",   "F",    "C",
      "\u00B0", "\u00B0C", "\xFF",   "\xC2",    "\0"sv,  "\n",     "999/1", "1/999"};
  std::uint32_t state = 2015;  // a fixed walk through the parts, the same in every run
  const auto next = [&](std::size_t below) {
    state = state * 1'664'525 + 1'013'904'223;
    return static_cast<std::size_t>(state >> 8) % below;
  };
  int wrong = 0;
  int read = 0;
  std::string first_wrong;
  for (int i = 0; i < 20'000; ++i) {
    std::string text;
    for (std::size_t n = next(9) + 1; n > 0; --n) text += parts[next(std::size(parts))];
    for (const dimension d : all_dimensions) {
      const amount_reading down = read_amount(text, d, rounding::down);
      const amount_reading up = read_amount(text, d, rounding::up);
      bool good = down.ok() == up.ok() && down.message == up.message && down.write == up.write;
      if (down.ok()) {
        ++read;
        const bool has_number = text.find_first_of("0123456789") != std::string::npos ||
                                text.find("\u00BD") != std::string::npos;
        good = good && has_number && down.write.empty() && up.value - down.value >= 0 &&
               up.value - down.value <= 3 && down.value > -1'000'000'000'000'000 &&
               up.value < 1'000'000'000'000'000;
      } else {
        good = good && !down.write.empty();
      }
      if (!good && ++wrong == 1) first_wrong = text;
    }
  }
  CAPTURE(first_wrong);
  CHECK(wrong == 0);
  CHECK(read > 500);
}

TEST_SUITE_END();

}  // namespace quantity_refused_tests
