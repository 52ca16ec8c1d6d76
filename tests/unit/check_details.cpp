// What stands in ingredient lines, and food that was kept before canning. Numbers: USDA Complete
// Guide to Home Canning (2015), part 4 (potatoes whole or in 1/2-inch cubes, page 4-17; carrots
// sliced or diced, page 4-10; pumpkin in 1-inch cubes) and part 5 (smoked fish, page 5-13).
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <string>

#include "support/fixtures.hpp"

namespace check_details_tests {
namespace {

using fixtures::beans;
using fixtures::beans_with;
using fixtures::has;
using fixtures::judged;
using fixtures::plan_text;
using jarproof::verdict;
using keys = std::map<std::string, std::string>;

TEST_SUITE_BEGIN("check");

TEST_CASE("what stands behind the comma of an ingredient is compared or refused") {
  const auto with = [](const char* food, const char* line, const char* time) {
    return beans_with({{"food", food},
                       {"pack", "hot"},
                       {"time", time},
                       {"ingredients", "[\"" + std::string(line) + "\"]"}})
        .verdict;
  };
  CHECK(with("white potatoes", "7 lb white potatoes, peeled", "35 min") == verdict::accepted);
  CHECK(with("white potatoes", "7 lb white potatoes, peeled, sliced", "35 min") ==
        verdict::incomplete);
  CHECK(with("pumpkin", "9 lb pumpkin, quartered", "55 min") == verdict::incomplete);
  CHECK(with("pumpkin", "9 lb pumpkin, 1-inch cubes", "55 min") == verdict::accepted);
  CHECK(with("carrots", "11 lb carrots, peeled, sliced", "25 min") == verdict::accepted);
  CHECK(with("carrots", "11 lb carrots, halved", "25 min") == verdict::incomplete);
  CHECK(with("green beans", "7 lb green beans, with bacon", "20 min") == verdict::rejected);
}

TEST_CASE("amounts before the food are read as people write them") {
  for (const char* line : {"1,000 g green beans", "7 lb. of green beans", "7 LB green beans",
                           "3 Qt green beans", "green beans"}) {
    INFO(line);
    CHECK(beans_with({{"ingredients", "[\"" + std::string(line) + "\"]"}}).verdict ==
          verdict::accepted);
  }
}

TEST_CASE("an ingredient name of several foods is asked back") {
  CHECK(beans_with({{"ingredients", "[7 lb green beans, 1 lb beans]"}}).verdict ==
        verdict::incomplete);
  const auto soup = [](const char* line) {
    return beans_with({{"food", "soups"},
                       {"pack", "hot"},
                       {"time", "60 min"},
                       {"as-published", "true"},
                       {"ingredients", "[" + std::string(line) + "]"}})
        .verdict;
  };
  CHECK(soup("2 lb chicken") == verdict::accepted);  // without bones, the only kind soups hold
  CHECK(soup("2 lb clams") == verdict::untested);
  CHECK(soup("2 lb carrots") == verdict::accepted);
}

TEST_CASE("kept food is cooked food, which no raw pack takes") {
  CHECK(has(beans_with({{"held", "{for: 14 h, at: 38 F}"}}), "not-in-process"));
  CHECK(has(beans_with({{"held", "{for: 1 h, at: 70 F}"}}), "not-in-process"));
  CHECK(beans_with({{"prepared", "[reheated to a boil]"}}).verdict == verdict::incomplete);
  CHECK(beans_with({{"pack", "hot"}, {"prepared", "[reheated to a boil]"}}).verdict ==
        verdict::accepted);
}

TEST_CASE("smoked fish is chilled a day at most, and its canner takes 8 pints or more") {
  const auto fish = [](const char* key, const char* value) {
    return beans_with(
        {{"food", "fish-smoked"}, {"time", "110 min"}, {"water", "4 qt"}, {key, value}});
  };
  CHECK(fish("held", "{for: 24 h, at: 38 F}").verdict == verdict::accepted);
  CHECK(has(fish("held", "{for: 25 h, at: 38 F}"), "held-too-long"));
  CHECK(fish("canner", "{pints: 8}").verdict == verdict::accepted);
  CHECK(has(fish("canner", "{pints: 7}"), "canner-too-small"));
}

TEST_CASE("juice that may be bottled is asked for with a line that can be copied") {
  const jarproof::report r = beans_with({{"food", "crab-king-dungeness"},
                                         {"pack", "hot"},
                                         {"time", "80 min"},
                                         {"acid", "4 tbsp Lemon Juice per pint"}});
  CHECK(r.verdict == verdict::incomplete);
  const jarproof::finding* f = fixtures::finding_of(r, "acid-not-bottled");
  REQUIRE(f != nullptr);
  CHECK(f->message.find("`acid: 4 tbsp bottled lemon juice per pint`") != std::string::npos);
}

TEST_SUITE_END();

}  // namespace
}  // namespace check_details_tests
