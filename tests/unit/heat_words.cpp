// The heat of a gauge pressure in words. Steam temperatures: IAPWS-IF97 region 4 over the US
// Standard Atmosphere 1976 (tests/published/science.csv); z of 18 F: FDA, low-acid canned food.
// SPDX-License-Identifier: MIT
#include "jarproof/detail/heat_words.hpp"

#include <doctest/doctest.h>

#include <string>

#include "support/fixtures.hpp"

namespace heat_words_tests {
namespace {

using jarproof::detail::heat_words;

std::string plan_at(const std::string& pressure, const std::string& altitude,
                    const std::string& gauge = "dial") {
  return "food: beans-snap\npack: raw\njar: pint\nmethod: pressure\ngauge: " + gauge +
         "\npressure: " + pressure + "\ntime: 20 min\naltitude: " + altitude + "\n";
}

TEST_SUITE_BEGIN("physics");

TEST_CASE("10 psi at 4,600 ft is about 234 F and does half the work") {
  const std::string words = heat_words(10, 4600);
  CHECK(words.find("At 4,600 ft (1,402 m) steam at 10 psi is about 234 F (112 C).") == 0);
  CHECK(words.find("about half the work") != std::string::npos);
}

TEST_CASE("shares are said as a cook says them") {
  using jarproof::detail::share_words;
  CHECK(share_words(0.5) == "half");
  CHECK(share_words(0.26) == "a quarter of");
  CHECK(share_words(0.34) == "a third of");
  CHECK(share_words(0.7) == "70 % of");
  CHECK(share_words(0.01) == "a small part of");
}

TEST_CASE("no plan that meets a published schedule gets a word about its heat") {
  // USDA Complete Guide (2015), part 4: dial gauge 11, 12, 13 and 14 psi to 2,000, 4,000, 6,000
  // and 8,000 ft; weighted 10 to 1,000 ft and 15 above.
  const struct {
    double psi;
    int ft;
  } schedule[] = {{11, 2000}, {12, 4000}, {13, 6000}, {14, 8000}, {15, 10000}, {15, 4600}};
  for (const auto& s : schedule) {
    CAPTURE(s.ft);
    CHECK(heat_words(s.psi, s.ft).empty());
  }
  const jarproof::report good = fixtures::judged(plan_at("13 psi", "6000 ft"));
  CHECK(good.verdict == jarproof::verdict::accepted);
  for (const jarproof::finding& f : good.findings) CHECK(f.explains.empty());
  const jarproof::report weight = fixtures::judged(plan_at("10 psi", "1000 ft", "weighted"));
  CHECK(weight.verdict == jarproof::verdict::accepted);
  for (const jarproof::finding& f : weight.findings) CHECK(f.explains.empty());
}

TEST_CASE("a pressure that is too low is explained, and the verdict rests on the table") {
  const jarproof::report r = fixtures::judged(plan_at("10 psi", "4600 ft"));
  const jarproof::finding* f = fixtures::finding_of(r, "pressure-too-low");
  REQUIRE(f != nullptr);
  CHECK(f->explains == heat_words(10, 4600));
  CHECK(r.verdict == jarproof::verdict::rejected);
  // A dial that reads 1 psi high holds 1 psi less.
  const jarproof::report high =
      fixtures::judged(plan_at("11 psi", "4600 ft") + "gauge-error: +1 psi\n");
  REQUIRE(fixtures::finding_of(high, "pressure-too-low") != nullptr);
  CHECK(fixtures::finding_of(high, "pressure-too-low")->explains == heat_words(10, 4600));
  // One psi too low at the top of a band is rejected, although it is nearly as hot.
  CHECK(fixtures::judged(plan_at("10 psi", "200 ft")).verdict == jarproof::verdict::rejected);
}

TEST_SUITE_END();

}  // namespace
}  // namespace heat_words_tests
