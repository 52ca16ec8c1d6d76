// Acid foods: boiling water, pressure options, steam, low temperature, sterile jars, acid per jar.
// Numbers: USDA Complete Guide to Home Canning (2015), part 2 (figs, page 2-14; apple juice, page
// 2-6), part 3 (tomatoes in water, page 3-9; tomato juice, page 3-5), part 6 (bread-and-butter
// pickles, page 6-9; sauerkraut, page 6-8), part 7 (jam, page 7-6); NCHFP (steam canners).
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "support/fixtures.hpp"

namespace acid_foods_tests {
namespace {

using fixtures::finding_of;
using fixtures::has;
using fixtures::judged;
using fixtures::plan_text;
using jarproof::verdict;
using keys = std::map<std::string, std::string>;

keys tomatoes() {
  return {{"food", "tomatoes in water"},
          {"pack", "hot"},
          {"jar", "quart"},
          {"method", "boiling-water"},
          {"time", "55 min"},
          {"altitude", "4600 ft"},
          {"acid", "2 tbsp bottled lemon juice per quart"}};
}
jarproof::report tomatoes_with(const keys& changes) {
  return judged(plan_text(tomatoes(), changes));
}
jarproof::report under_pressure(const char* gauge, const char* pressure, const char* time,
                                const char* altitude) {
  return tomatoes_with({{"food", "tomato juice"},
                        {"method", "pressure"},
                        {"gauge", gauge},
                        {"pressure", pressure},
                        {"time", time},
                        {"altitude", altitude}});
}

TEST_SUITE_BEGIN("check");

TEST_CASE("the time in boiling water is that of the altitude's band") {
  CHECK(tomatoes_with({}).verdict == verdict::accepted);
  CHECK(has(tomatoes_with({{"time", "54 min"}}), "time-too-short"));
  CHECK(tomatoes_with({{"time", "45 min"}, {"altitude", "1000 ft"}}).verdict == verdict::accepted);
  CHECK(has(tomatoes_with({{"time", "45 min"}, {"altitude", "1001 ft"}}), "time-too-short"));
  CHECK(tomatoes_with({{"time", "60 min"}, {"altitude", "10000 ft"}}).verdict == verdict::accepted);
  CHECK(
      has(tomatoes_with({{"time", "90 min"}, {"altitude", "10001 ft"}}), "altitude-outside-table"));
}

TEST_CASE("time and pressure come from one option whole") {
  // Tomato juice, dial at 4,001-6,000 ft: 8 psi for 20 min, or 13 psi for 15 min.
  CHECK(under_pressure("dial", "8 psi", "20 min", "4600 ft").verdict == verdict::accepted);
  CHECK(under_pressure("dial", "13 psi", "15 min", "4600 ft").verdict == verdict::accepted);
  const jarproof::report mixed = under_pressure("dial", "8 psi", "15 min", "4600 ft");
  CHECK(mixed.verdict == verdict::rejected);
  const jarproof::finding* f = finding_of(mixed, "time-too-short");
  REQUIRE(f != nullptr);
  CHECK(f->message.find("20 min at 8 psi, 15 min at 13 psi") != std::string::npos);
  CHECK(under_pressure("dial", "12 psi", "15 min", "4600 ft").verdict == verdict::rejected);
  CHECK(under_pressure("dial", "12 psi", "20 min", "4600 ft").verdict == verdict::accepted);
  CHECK(has(under_pressure("dial", "7 psi", "20 min", "4600 ft"), "pressure-too-low"));
  // Weighted: 15 psi for 10 min up to 1,000 ft only; above, 15 psi goes with 15 min.
  CHECK(under_pressure("weighted", "15 psi", "10 min", "1000 ft").verdict == verdict::accepted);
  CHECK(under_pressure("weighted", "15 psi", "10 min", "1001 ft").verdict == verdict::rejected);
  CHECK(under_pressure("weighted", "15 psi", "15 min", "1001 ft").verdict == verdict::accepted);
  CHECK(under_pressure("weighted", "10 psi", "20 min", "1001 ft").verdict == verdict::accepted);
  CHECK(under_pressure("weighted", "5 psi", "20 min", "1001 ft").verdict == verdict::rejected);
}

TEST_CASE("the other published ways stand beside the required one") {
  const jarproof::report r = tomatoes_with({{"time", "10 min"}});
  REQUIRE(r.required);
  CHECK(r.required->method == "boiling-water");
  CHECK(r.required->time_min == 55);
  CHECK_FALSE(r.required->pressure_psi);
  CHECK(r.required->gauge.empty());
  std::vector<std::string> ways;
  for (const jarproof::requirement& o : r.options) {
    ways.push_back(o.method + " " + o.gauge + " " + std::to_string(o.pressure_psi.value_or(0)) +
                   " " + std::to_string(o.time_min));
  }
  CHECK(ways == std::vector<std::string>{"pressure dial 13 10", "pressure dial 8 15",
                                         "pressure weighted 15 10", "pressure weighted 10 15"});
}

TEST_CASE("an unsaid gauge does no harm where the plan holds on either") {
  // 15 psi and 20 min at 500 ft: enough on a dial and on a weight.
  const auto without_gauge = [](const char* pressure, const char* time) {
    return under_pressure("", pressure, time, "500 ft");
  };
  CHECK(without_gauge("15 psi", "20 min").verdict == verdict::accepted);
  CHECK(without_gauge("15 psi", "12 min").verdict != verdict::accepted);
  CHECK(without_gauge("5 psi", "20 min").verdict == verdict::incomplete);
}

TEST_CASE("a steam canner takes the boiling-water time up to 45 minutes") {
  CHECK(has(tomatoes_with({{"method", "steam"}}), "steam-time-too-long"));
  CHECK(tomatoes_with({{"method", "steam"}, {"time", "45 min"}, {"altitude", "1000 ft"}}).verdict ==
        verdict::accepted);
  CHECK(has(tomatoes_with({{"method", "steam"}, {"time", "46 min"}, {"altitude", "1000 ft"}}),
            "steam-time-too-long"));
  CHECK(has(tomatoes_with({{"food", "green beans"}, {"pack", "raw"}, {"method", "steam"}}),
            "low-acid-needs-pressure"));
}

TEST_CASE("low-temperature pasteurization is for the recipes that name it") {
  const keys pickles{{"food", "bread-and-butter pickles"},
                     {"method", "low-temperature"},
                     {"time", "30 min"},
                     {"temperature", "180 F"},
                     {"as-published", "true"},
                     {"acid", ""}};
  const auto with = [&](keys changes) {
    keys all = pickles;
    for (const auto& [key, value] : changes) all[key] = value;
    return tomatoes_with(all);
  };
  CHECK(with({}).verdict == verdict::accepted);
  CHECK(with({{"altitude", "9000 ft"}}).verdict == verdict::accepted);
  CHECK(has(with({{"temperature", "179 F"}}), "temperature-too-low"));
  CHECK(has(with({{"temperature", "82 C"}}), "temperature-too-low"));
  CHECK(with({{"temperature", "83 C"}}).verdict == verdict::accepted);
  CHECK(with({{"temperature", ""}}).verdict == verdict::incomplete);
  CHECK(has(with({{"temperature", "190 F"}}), "over-required"));
  CHECK(has(with({{"time", "29 min"}}), "time-too-short"));
  CHECK(has(with({{"food", "sauerkraut"}}), "method-not-for-food"));
}

TEST_CASE("jars are sterilized where the process is under ten minutes") {
  const keys juice{
      {"food", "apple juice"}, {"acid", ""}, {"time", "5 min"}, {"altitude", "900 ft"}};
  const auto with = [&](keys changes) {
    keys all = juice;
    for (const auto& [key, value] : changes) all[key] = value;
    return tomatoes_with(all);
  };
  CHECK(with({}).verdict == verdict::incomplete);
  CHECK(has(with({}), "jar-sterilization"));
  CHECK(with({{"prepared", "[jars sterilized]"}}).verdict == verdict::accepted);
  CHECK(with({{"prepared", "[jars not sterilized]"}}).verdict == verdict::rejected);
  CHECK(with({{"as-published", "true"}}).verdict == verdict::accepted);
  CHECK(with({{"time", "10 min"}}).verdict == verdict::accepted);
  // Above 1,000 ft the process is ten minutes, and half-gallons take ten from the start.
  CHECK(with({{"time", "10 min"}, {"altitude", "1001 ft"}}).verdict == verdict::accepted);
  CHECK(with({{"time", "10 min"}, {"jar", "half-gallon"}}).verdict == verdict::accepted);
  CHECK(has(with({{"time", "9 min"}, {"jar", "half-gallon"}}), "time-too-short"));
}

TEST_CASE("the acid of each jar is one of the table's, in its amount, in any of its words") {
  const auto acid = [](const char* text) { return tomatoes_with({{"acid", text}}).verdict; };
  for (const char* good :
       {"2 tbsp bottled lemon juice per quart", "1 tbsp bottled lemon juice per pint",
        "1/2 tsp citric acid per quart", "1/4 tsp citric acid in each pint",
        "4 tbsp vinegar per quart", "4 tbsp white vinegar (5%) per quart",
        "30 mL bottled lemon juice per 946 mL jar", "2 tbsp bottled lemon juice per jar",
        "lemon juice, bottled, 2 tbsp in each quart", "in each quart 2 tbsp bottled lemon juice",
        "1 tbsp bottled lemon juice and 1/2 tsp citric acid per quart",
        "3 tbsp bottled lemon juice per quart"}) {
    INFO(good);
    CHECK(acid(good) == verdict::accepted);
  }
  for (const auto& [text, check] : std::vector<std::pair<const char*, const char*>>{
           {"1 tbsp bottled lemon juice per quart", "acid-too-little"},
           {"29 mL bottled lemon juice per 946 mL jar", "acid-too-little"},
           {"1/4 tsp citric acid per quart", "acid-too-little"},
           {"3 tbsp vinegar per quart", "acid-too-little"},
           {"1 tbsp bottled lemon juice and 1/4 tsp citric acid per quart", "acid-too-little"},
           {"2 tbsp fresh lemon juice per quart", "acid-not-bottled"},
           {"juice of a lemon per quart", "acid-not-bottled"},
           {"2 tbsp key lime juice per quart", "acid-not-bottled"},
           {"1 tsp ascorbic acid per quart", "acid-does-not-count"},
           {"4 tbsp vinegar (4%) per quart", "vinegar-too-weak"},
           {"4 tbsp homemade vinegar per quart", "vinegar-homemade"},
           {"none", "acid-missing"}}) {
    const char* const bad = text;  // INFO keeps it, and a structured binding cannot be kept
    const jarproof::report r = tomatoes_with({{"acid", bad}});
    INFO(bad);
    CHECK(r.verdict == verdict::rejected);
    CHECK(has(r, check));
  }
  CHECK(acid("2 tbsp lemon juice per quart") == verdict::incomplete);
  CHECK(acid("2 tbsp bottled lemon juice") == verdict::incomplete);
  CHECK(acid("a splash of bottled lemon juice per quart") == verdict::incomplete);
  CHECK(acid("2 tbsp moon dust per quart") == verdict::incomplete);
  CHECK(acid("") == verdict::incomplete);
  CHECK(tomatoes_with({{"acid", ""}, {"as-published", "true"}}).verdict == verdict::accepted);
  CHECK(has(tomatoes_with({{"acid", "4 tbsp vinegar per quart"}, {"vinegar", "4 %"}}),
            "vinegar-too-weak"));
}

TEST_CASE("acid is needed under pressure too, and each food has its own list") {
  CHECK(has(tomatoes_with({{"method", "pressure"},
                           {"gauge", "weighted"},
                           {"pressure", "15 psi"},
                           {"time", "10 min"},
                           {"acid", "none"}}),
            "acid-missing"));
  const auto in = [](const char* food, const char* acid) {
    return tomatoes_with({{"food", food}, {"jar", "pint"}, {"time", "60 min"}, {"acid", acid}});
  };
  CHECK(in("figs", "1/4 tsp citric acid per pint").verdict == verdict::accepted);
  CHECK(has(in("figs", "2 tbsp vinegar per pint"), "acid-does-not-count"));
  CHECK(in("asian pears", "1 tbsp bottled lemon juice per pint").verdict == verdict::accepted);
  CHECK(has(in("asian pears", "1/4 tsp citric acid per pint"), "acid-does-not-count"));
}

TEST_CASE("acid may stand among the ingredients") {
  const auto lines = [](const char* acid, const char* jars) {
    return tomatoes_with(
        {{"acid", ""},
         {"jars", jars},
         {"ingredients", "[21 lb tomatoes, \"" + std::string(acid) + "\", 7 tsp salt]"}});
  };
  CHECK(lines("2 tbsp bottled lemon juice per quart", "").verdict == verdict::accepted);
  CHECK(lines("14 tbsp bottled lemon juice", "7").verdict == verdict::accepted);
  CHECK(has(lines("13 tbsp bottled lemon juice", "7"), "acid-too-little"));
  CHECK(lines("14 tbsp bottled lemon juice", "").verdict == verdict::incomplete);
}

TEST_CASE("a ferment is fully fermented, and pectin directions stand for a recipe") {
  const auto kraut = [](const char* prepared) {
    return tomatoes_with({{"food", "sauerkraut"},
                          {"acid", ""},
                          {"pack", "raw"},
                          {"time", "35 min"},
                          {"prepared", prepared},
                          {"ingredients", "[5 lb cabbage, 3 tbsp canning salt]"}});
  };
  CHECK(kraut("[fully fermented]").verdict == verdict::accepted);
  CHECK(kraut("[not fully fermented]").verdict == verdict::rejected);
  CHECK(kraut("").verdict == verdict::incomplete);
  const auto jam = [](const char* prepared) {
    return tomatoes_with({{"food", "strawberry jam"},
                          {"acid", ""},
                          {"jar", "half-pint"},
                          {"time", "10 min"},
                          {"prepared", prepared}});
  };
  CHECK(jam("[pectin directions followed]").verdict == verdict::accepted);
  CHECK(has(jam("[pectin directions followed]"), "step-reminder"));
  CHECK(jam("[pectin directions changed]").verdict == verdict::rejected);
  CHECK(jam("").verdict == verdict::incomplete);
}

TEST_CASE("foods without a tested process say why and what to do instead") {
  for (const char* food : {"pumpkin butter", "bananas", "white peaches", "garlic in oil",
                           "pickled eggs", "eggplant", "summer squash", "elderberries"}) {
    const jarproof::report r = tomatoes_with({{"food", food}, {"acid", ""}});
    INFO(food);
    CHECK(r.verdict != verdict::accepted);
    const jarproof::finding* f = finding_of(r, "no-tested-process");
    REQUIRE(f != nullptr);
    CHECK(f->outcome == jarproof::outcome::untested);
    CHECK(f->message.size() > 60);
    CHECK(f->fix.size() > 60);
    CHECK_FALSE(f->sources.empty());
  }
  CHECK(jarproof::builtin_edition().untested_foods.size() >= 60);
}

TEST_SUITE_END();

}  // namespace
}  // namespace acid_foods_tests
