// What a check decides about gauge, altitude, vent and canner. Numbers: USDA Complete Guide to Home
// Canning (2015), part 4, page 4-8 (snap beans: pints 20 min; dial 11/12/13/14 psi to
// 2,000/4,000/6,000/8,000 ft, weighted 10 psi to 1,000 ft and 15 above); kept food: the pages that
// rules/checks/held-too-warm.yaml and held-too-long.yaml cite.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <map>
#include <string>

#include "support/fixtures.hpp"

namespace check_kitchen_tests {
namespace {

using fixtures::beans;
using fixtures::beans_with;
using fixtures::dial_beans;
using fixtures::finding_of;
using fixtures::has;
using fixtures::judged;
using fixtures::plan_text;
using jarproof::verdict;
using keys = std::map<std::string, std::string>;

TEST_SUITE_BEGIN("check");

TEST_CASE("weighted gauges hold 5, 10 and 15 psi, also as marked in kPa and bar") {
  for (const char* p : {"15 psi", "103 kPa", "105 kPa", "1.03 bar", "1.05 bar"}) {
    INFO(p);
    CHECK(beans_with({{"pressure", p}}).verdict == verdict::accepted);
  }
  for (const char* p : {"10 psi", "69 kPa", "70 kPa", "0.69 bar", "0.7 bar"}) {
    INFO(p);
    CHECK(beans_with({{"pressure", p}, {"altitude", "1000 ft"}}).verdict == verdict::accepted);
    CHECK(has(beans_with({{"pressure", p}}), "pressure-too-low"));
  }
  for (const char* p : {"5 psi", "34 kPa", "35 kPa", "0.34 bar", "0.35 bar"}) {
    INFO(p);
    CHECK(has(beans_with({{"pressure", p}, {"altitude", "0 ft"}}), "pressure-too-low"));
  }
  for (const char* p :
       {"11 psi", "13 psi", "14.9 psi", "90 kPa", "68 kPa", "71 kPa", "102 kPa", "104 kPa"}) {
    const jarproof::report r = beans_with({{"pressure", p}});
    INFO(p);
    CHECK(r.verdict == verdict::rejected);
    const jarproof::finding* f = finding_of(r, "gauge-cannot-hold");
    REQUIRE(f != nullptr);
    CHECK(f->message.find("5, 10 or 15 psi") != std::string::npos);
  }
}

TEST_CASE("a dial that reads high needs its error on top, and one that reads low needs nothing") {
  const auto with = [](const char* error, const char* pressure) {
    return judged(plan_text(dial_beans(), {{"gauge-error", error}, {"pressure", pressure}}));
  };
  CHECK(with("+1 psi", "14 psi").verdict == verdict::accepted);
  CHECK(has(with("+1 psi", "13 psi"), "pressure-too-low"));
  CHECK(finding_of(with("+1 psi", "13 psi"), "pressure-too-low")
            ->required.find("14 psi on this gauge") != std::string::npos);
  CHECK(with("-2 psi", "13 psi").verdict == verdict::accepted);
  CHECK(with("+2 psi", "15 psi").verdict == verdict::accepted);
  CHECK(has(with("+2.1 psi", "15 psi"), "gauge-error-too-large"));
  CHECK(has(with("-2.1 psi", "15 psi"), "gauge-error-too-large"));
  CHECK(has(with("+0.5 psi", "13.4 psi"), "pressure-too-low"));
  CHECK(with("+0.5 psi", "13.5 psi").verdict == verdict::accepted);
  // On a weight there is nothing to correct.
  CHECK(has(beans_with({{"gauge-error", "+1 psi"}}), "gauge-error-unused"));
  CHECK(beans_with({{"gauge-error", "+1 psi"}}).verdict == verdict::accepted);
}

TEST_CASE("above 15 psi is rejected, at 15 accepted, and metric readings count as whole psi") {
  CHECK(judged(plan_text(dial_beans(), {{"pressure", "15 psi"}})).verdict == verdict::accepted);
  CHECK(has(judged(plan_text(dial_beans(), {{"pressure", "15.1 psi"}})), "pressure-too-high"));
  CHECK(judged(plan_text(dial_beans(), {{"pressure", "105 kPa"}})).verdict == verdict::accepted);
  CHECK(has(judged(plan_text(dial_beans(), {{"pressure", "111 kPa"}})), "pressure-too-high"));
  CHECK(has(beans_with({{"pressure", "20 psi"}}), "pressure-too-high"));
}

TEST_CASE("altitude: rounded up to whole feet, below sea level is 0, nothing above 10,000 ft") {
  CHECK(beans_with({{"pressure", "10 psi"}, {"altitude", "304 m"}}).verdict == verdict::accepted);
  CHECK(beans_with({{"pressure", "10 psi"}, {"altitude", "305 m"}}).verdict == verdict::rejected);
  CHECK(beans_with({{"pressure", "10 psi"}, {"altitude", "1000.1 ft"}}).verdict ==
        verdict::rejected);
  CHECK(beans_with({{"pressure", "10 psi"}, {"altitude", "-280 ft"}}).verdict == verdict::accepted);
  CHECK(beans_with({{"altitude", "10,000 ft"}}).verdict == verdict::accepted);
  CHECK(beans_with({{"altitude", "10,001 ft"}}).verdict == verdict::untested);
  CHECK(has(beans_with({{"altitude", "10,001 ft"}}), "altitude-outside-table"));
  CHECK_FALSE(beans_with({{"altitude", "10,001 ft"}}).required);
  CHECK(
      judged(plan_text(dial_beans(), {{"altitude", "8,001 ft"}, {"pressure", "14 psi"}})).verdict ==
      verdict::rejected);
}

TEST_CASE("venting under 10 minutes and canners under 4 quarts are rejected") {
  CHECK(has(beans_with({{"vent", "9.9 min"}}), "vent-too-short"));
  CHECK(beans_with({{"vent", "10 min"}}).verdict == verdict::accepted);
  CHECK(has(beans_with({{"canner", "{quarts: 3}"}}), "canner-too-small"));
  CHECK(beans_with({{"canner", "{quarts: 4}"}}).verdict == verdict::accepted);
  CHECK(has(beans_with({{"canner", "{volume: 9.9 qt}"}}), "canner-too-small"));
  CHECK(beans_with({{"canner", "{volume: 10 qt}"}}).verdict == verdict::accepted);
}

TEST_CASE("food kept before canning: two hours warm, one where it is above 90 F, three days cold") {
  const auto held = [](const char* text, const char* prepared) {
    return beans_with({{"pack", "hot"}, {"held", text}, {"prepared", prepared}});
  };
  CHECK(held("{for: 2 h, at: 70 F}", "").verdict == verdict::accepted);
  CHECK(has(held("{for: 121 min, at: 70 F}", ""), "held-too-warm"));
  CHECK(has(held("{for: 61 min, at: 91 F}", ""), "held-too-warm"));
  CHECK(held("{for: 60 min, at: 91 F}", "").verdict == verdict::accepted);
  CHECK(held("{for: 61 min, at: 90 F}", "").verdict == verdict::accepted);
  CHECK(has(held("{for: 3 h, at: 41 F}", "[reheated to a boil]"), "held-too-warm"));
  const jarproof::report cold = held("{for: 14 h, at: 38 F}", "[reheated to a boil]");
  CHECK(cold.verdict == verdict::accepted);
  CHECK(finding_of(cold, "held-cold")->level == jarproof::level::warning);
  CHECK(has(held("{for: 14 h, at: 38 F}", ""), "not-reheated"));
  CHECK(held("{for: 14 h, at: 4 C}", "[reheated to a boil]").verdict == verdict::accepted);
  CHECK(held("{for: 14 h, at: 5 C}", "[reheated to a boil]").verdict == verdict::rejected);
  CHECK(held("{for: 72 h, at: 40 F}", "[reheated to a boil]").verdict == verdict::accepted);
  CHECK(has(held("{for: 73 h, at: 40 F}", "[reheated to a boil]"), "held-too-long"));
  CHECK(beans_with({{"held", "{for: 14 h}"}}).verdict == verdict::incomplete);
}

TEST_SUITE_END();

}  // namespace
}  // namespace check_kitchen_tests
