// What a check decides about foods with conditions of their own. Numbers: USDA Complete Guide to
// Home Canning (2015), part and page as each test names them. SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <string>

#include "support/fixtures.hpp"

namespace check_foods_tests {
namespace {

using fixtures::beans_with;
using fixtures::finding_of;
using fixtures::has;
using fixtures::judged;
using jarproof::outcome;
using jarproof::verdict;
using keys = std::map<std::string, std::string>;

TEST_SUITE_BEGIN("check");

TEST_CASE("dried beans: said dry rejects, unsaid is incomplete, as-published covers it") {
  // Part 4, page 4-5: pints 75 min, hot pack, only fully rehydrated beans.
  const keys dry{{"food", "beans-dry"}, {"pack", "hot"}, {"time", "75 min"}};
  const auto with = [&](const keys& more) {
    keys all = dry;
    all.insert(more.begin(), more.end());
    return beans_with(all);
  };
  CHECK(with({}).verdict == verdict::incomplete);
  CHECK(finding_of(with({}), "beans-not-rehydrated")->outcome == outcome::incomplete);
  CHECK(with({{"prepared", "[beans not rehydrated]"}}).verdict == verdict::rejected);
  CHECK(with({{"prepared", "[beans not rehydrated]"}, {"as-published", "true"}}).verdict ==
        verdict::rejected);
  CHECK(with({{"prepared", "[beans rehydrated]"}}).verdict == verdict::accepted);
  const jarproof::report covered = with({{"as-published", "true"}});
  CHECK(covered.verdict == verdict::accepted);
  CHECK(
      std::any_of(covered.findings.begin(), covered.findings.end(), [](const jarproof::finding& f) {
        return f.check == "step-reminder" && f.message.find("oak") != std::string::npos;
      }));
}

TEST_CASE(
    "fixed recipes and frames need as-published, and their ingredients are never taken on "
    "trust") {
  const keys chili{{"food", "chile-con-carne"},
                   {"pack", "hot"},
                   {"time", "75 min"},
                   {"prepared", "[beans rehydrated]"}};
  CHECK(beans_with(chili).verdict == verdict::incomplete);
  CHECK(has(beans_with(chili), "recipe-not-shown"));
  keys published = chili;
  published["as-published"] = "true";
  CHECK(beans_with(published).verdict == verdict::accepted);
  published["ingredients"] = "[2 lb whole kernel corn]";
  CHECK(beans_with(published).verdict == verdict::rejected);
  // Soups, part 4: pints 60 min; any seafood makes it 100.
  keys soup{{"food", "soups"}, {"pack", "hot"}, {"time", "60 min"}, {"as-published", "true"}};
  CHECK(beans_with(soup).verdict == verdict::accepted);
  soup["ingredients"] = "[2 lb carrots, 1 lb onions]";
  CHECK(beans_with(soup).verdict == verdict::accepted);
  soup["ingredients"] = "[2 lb carrots, 1 lb clams]";
  CHECK(beans_with(soup).verdict == verdict::untested);
  soup["ingredients"] = "[2 lb carrots, 1 lb noodles]";
  CHECK(beans_with(soup).verdict == verdict::rejected);
  CHECK(has(beans_with(soup), "pasta-or-grain-in-jar"));
  keys mixed{{"food", "mixed-vegetables"},
             {"pack", "hot"},
             {"time", "75 min"},
             {"as-published", "true"},
             {"ingredients", "[3 lb spinach, 2 lb carrots]"}};
  CHECK(beans_with(mixed).verdict == verdict::untested);
}

TEST_CASE("solids over half of the jar are rejected in a soup") {
  const keys soup{{"food", "soups"}, {"pack", "hot"}, {"time", "60 min"}, {"as-published", "true"}};
  const auto with = [&](const char* solids) {
    keys all = soup;
    all["solids"] = solids;
    return beans_with(all);
  };
  CHECK(with("1/2").verdict == verdict::accepted);
  CHECK(with("50 %").verdict == verdict::accepted);
  CHECK(has(with("51 %"), "solids-over-half"));
  CHECK(has(with("2/3"), "solids-over-half"));
}

TEST_CASE("crab needs acid in every jar, and what is there is compared") {
  // Part 5, page 5-9: pints 80 min; 1 tsp citric acid or 4 tbsp lemon juice a pint.
  const auto crab = [](const char* acid) {
    return beans_with(
        {{"food", "crab-king-dungeness"}, {"pack", "hot"}, {"time", "80 min"}, {"acid", acid}});
  };
  CHECK(crab("").verdict == verdict::incomplete);
  CHECK(crab("1 tsp citric acid per pint").verdict == verdict::accepted);
  CHECK(crab("1/2 tsp citric acid per half-pint").verdict == verdict::accepted);
  CHECK(crab("4 tbsp bottled lemon juice per pint").verdict == verdict::accepted);
  CHECK(crab("5 mL citric acid per 473 mL").verdict == verdict::accepted);
  CHECK(has(crab("3/4 tsp citric acid per pint"), "acid-too-little"));
  CHECK(has(crab("3 tbsp bottled lemon juice per pint"), "acid-too-little"));
  CHECK(has(crab("4 tbsp fresh lemon juice per pint"), "acid-not-bottled"));
  CHECK(has(crab("4 tbsp vinegar per pint"), "acid-does-not-count"));
  CHECK(has(crab("1 tsp citric acid per pint, optional"), "acid-missing"));
  CHECK(has(crab("1 tsp citric acid per pint, if desired"), "acid-missing"));
  CHECK(has(crab("1 tsp citric acid solution per pint"), "acid-missing"));
  CHECK(has(crab("some bottled lemon juice"), "amount-unknown"));
  CHECK(crab("some bottled lemon juice").verdict == verdict::incomplete);
  CHECK(crab("some lemon juice").verdict == verdict::incomplete);
}

TEST_CASE("smoked fish needs its water and a canner of 16 quarts") {
  // Part 5, page 5-13: 110 min, 4 quarts of water, canner of 16 quarts or more.
  const auto fish = [](const keys& more) {
    keys all{{"food", "fish-smoked"}, {"time", "110 min"}};
    for (const auto& [key, value] : more) all[key] = value;
    return beans_with(all);
  };
  CHECK(fish({}).verdict == verdict::incomplete);
  CHECK(fish({{"water", "4 qt"}}).verdict == verdict::accepted);
  CHECK(fish({{"as-published", "true"}}).verdict == verdict::accepted);
  CHECK(has(fish({{"water", "3.9 qt"}}), "water-too-little"));
  CHECK(has(fish({{"water", "3.7 L"}}), "water-too-little"));
  CHECK(fish({{"water", "3.8 L"}}).verdict == verdict::accepted);
  CHECK(has(fish({{"water", "4 qt"}, {"canner", "{volume: 15 qt}"}}), "canner-too-small"));
}

TEST_CASE("a table that is not used is shown and accepts nothing") {
  // Mango sauce: the guide prints it (part 2, page 2-18), Oregon State University has no
  // guideline.
  const jarproof::report r = beans_with({{"food", "mango-sauce"},
                                         {"pack", "hot"},
                                         {"jar", "half-pint"},
                                         {"method", "boiling-water"},
                                         {"gauge", ""},
                                         {"pressure", ""},
                                         {"time", "20 min"},
                                         {"as-published", "true"}});
  CHECK(r.verdict == verdict::untested);
  CHECK(has(r, "table-not-verified"));
  REQUIRE(r.required);
  CHECK(r.required->time_min == 20);
  CHECK_FALSE(r.required->verified);
}

TEST_CASE("what stands behind the comma can make another food of it") {
  // USDA Complete Guide (2015), part 4, page 4-8 (green beans raw, quarts 25 min); part 5, ground
  // meat and strips are packed by tables of their own; part 2, mangoes (National Center for Home
  // Food Preservation): green, hard mango only.
  const auto plan = [](const std::string& food, const std::string& line, const std::string& rest) {
    return judged("food: " + food + "\nmethod: pressure\ngauge: weighted\npressure: 15 psi\n" +
                  "altitude: 4600 ft\n" + rest + "ingredients:\n  - \"" + line + "\"\n");
  };
  const std::string raw = "pack: raw\njar: quart\ntime: 25 min\n";
  CHECK(plan("green beans", "7 lb green beans, washed", raw).verdict == verdict::accepted);
  for (const char* line :
       {"7 lb green beans, dried", "7 lb green beans, shelled", "7 lb green beans, pickled"})
    CHECK(plan("green beans", line, raw).verdict != verdict::accepted);
  const std::string hot = "pack: hot\njar: pint\ntime: 75 min\n";
  CHECK(plan("wild-game-strips", "5 lb venison", hot).verdict == verdict::accepted);
  CHECK(plan("wild-game-strips", "5 lb venison, ground", hot).verdict == verdict::untested);
  CHECK(plan("wild-game-strips", "5 lb minced venison", hot).verdict == verdict::untested);
  const auto mangoes = [](const std::string& line) {
    return judged(
        "food: green mangoes\nmethod: boiling-water\naltitude: 4600 ft\npack: hot\n"
        "jar: pint\ntime: 25 min\nprepared: [under-ripe]\ningredients: [\"" +
        line + "\"]\n");
  };
  CHECK(mangoes("5 lb green mangoes, peeled and sliced").verdict == verdict::accepted);
  CHECK(mangoes("5 lb green mangoes, fully ripe").verdict == verdict::incomplete);
  CHECK(mangoes("5 lb ripe mangoes").verdict == verdict::untested);
}

TEST_CASE("fish in quarts needs its heat-up and its water") {
  const jarproof::report r = beans_with({{"food", "fish-quart-jars"},
                                         {"jar", "quart"},
                                         {"time", "160 min"},
                                         {"heat-up", "20 min"},
                                         {"water", "3 qt"}});
  CHECK(r.verdict == verdict::accepted);
  CHECK(has(beans_with({{"food", "fish-quart-jars"},
                        {"jar", "quart"},
                        {"time", "160 min"},
                        {"heat-up", "19 min"}}),
            "heat-up-too-short"));
}

TEST_SUITE_END();

}  // namespace
}  // namespace check_foods_tests
