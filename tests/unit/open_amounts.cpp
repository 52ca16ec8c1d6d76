// Lines of tested recipes that leave open how much goes in, and headings that take it out again:
// the words are invented, the recipes are those of the USDA Complete Guide (2015), part 3
// (page 3-12 tomatoes with okra or zucchini, page 3-8 crushed tomatoes), part 6 (dilled beans) and
// of part 3, salsas (choice salsa, NCHFP).
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "support/fixtures.hpp"

namespace open_amounts_tests {
namespace {

using fixtures::has;
using fixtures::judged;
using jarproof::verdict;

/// A plan whose ingredient lines are given one by one.
jarproof::report canned(const std::vector<std::string>& lines, const std::string& rest) {
  std::string text = "altitude: 4600 ft\n" + rest + "ingredients:\n";
  for (const std::string& line : lines) text += "  - \"" + line + "\"\n";
  return judged(text);
}

const std::string salsa =
    "food: choice salsa\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\n";

jarproof::report salsa_with(const std::string& tomatoes, const std::string& peppers,
                            const std::string& juice) {
  return canned({tomatoes, "5 cups chopped onions", peppers, juice, "3 tsp canning salt"}, salsa);
}

const std::string tomatoes = "6 cups tomatoes, peeled, cored and chopped";
const std::string peppers = "4 cups chopped peppers";
const std::string juice = "1 1/2 cups bottled lemon juice";

jarproof::report beans_with(const std::string& water, const std::string& heading = {}) {
  std::vector<std::string> lines = {"4 lb green beans", "8 heads fresh dill", "8 cloves garlic",
                                    "1/2 cup canning salt"};
  if (!heading.empty()) lines.push_back(heading);
  lines.insert(lines.end(), {"4 cups white vinegar (5%)", water, "1 tsp hot red pepper flakes"});
  return canned(lines,
                "food: dilled beans\npack: raw\njar: pint\nmethod: boiling-water\ntime: 10 min\n");
}

TEST_SUITE_BEGIN("recipe");

TEST_CASE("words that leave an amount open are asked about in a tested recipe") {
  CHECK(salsa_with(tomatoes, peppers, juice).verdict == verdict::accepted);
  for (const char* more :
       {"4 cups chopped peppers, plus more to taste", "4 cups chopped peppers (more is fine)",
        "at least 4 cups chopped peppers", "4 heaping cups chopped peppers",
        "4 cups chopped peppers twice over", "4 cups chopped peppers per 3 cups tomatoes",
        "4 cups chopped peppers, and then some", "4 cups chopped peppers, a few extra"}) {
    INFO(more);
    const jarproof::report r = salsa_with(tomatoes, more, juice);
    CHECK(r.verdict == verdict::incomplete);
    CHECK(has(r, "amount-unknown"));
  }
  for (const char* less : {"6 cups tomatoes, use half", "6 cups tomatoes, left out",
                           "6 scant cups tomatoes", "6 cups tomatoes, or less"}) {
    INFO(less);
    CHECK(salsa_with(less, peppers, juice).verdict != verdict::accepted);
  }
  for (const char* swapped :
       {"6 cups tomatoes, some swapped for corn", "6 cups tomatoes, part replaced by zucchini"}) {
    INFO(swapped);
    CHECK(has(salsa_with(swapped, peppers, juice), "ingredient-unknown"));
  }
  CHECK(beans_with("4 cups water").verdict == verdict::accepted);
  for (const char* water :
       {"4 cups water, plus more to fill", "4 cups water, topped up with more water",
        "4 cups water, as needed", "4 cups water, extra if needed", "at least 4 cups water",
        "4 cups water per 2 cups vinegar", "4 cups water, or enough to cover"}) {
    INFO(water);
    CHECK(beans_with(water).verdict != verdict::accepted);
  }
}

TEST_CASE("an acid that its line takes back does not count") {
  for (const char* none :
       {"1 1/2 cups bottled lemon juice, not needed", "1 1/2 cups bottled lemon juice (not all)",
        "1 1/2 cups bottled lemon juice, not necessary",
        "1 1/2 cups bottled lemon juice per 12 cups tomatoes"}) {
    INFO(none);
    CHECK(salsa_with(tomatoes, peppers, none).verdict != verdict::accepted);
  }
}

TEST_CASE("what stands below a heading that may take it out does not count as there") {
  CHECK(beans_with("4 cups water", "For the brine:").verdict == verdict::accepted);
  CHECK(beans_with("4 cups water", "Pickling liquid:").verdict == verdict::accepted);
  for (const char* heading : {"Optional:", "Later:", "For soaking:", "For the marinade:",
                              "For the second batch:", "To serve:", "After opening:"}) {
    INFO(heading);
    CHECK(beans_with("4 cups water", heading).verdict != verdict::accepted);
  }
}

TEST_CASE("a heading with each jar counts for every line below it") {
  const std::vector<std::string> lines = {tomatoes, "5 cups chopped onions",
                                          "3 cups chopped peppers", juice, "3 tsp canning salt"};
  for (const char* heading : {"In each jar:", "Per jar:", "For each pint jar:", "Per pint:"}) {
    INFO(heading);
    std::vector<std::string> all = lines;
    all.insert(all.end(), {heading, "1/2 cup chopped onion"});
    CHECK(canned(all, salsa).verdict != verdict::accepted);
    // Six pints make 3 cups of it, 11 in all where 9 were tested.
    CHECK(canned(all, salsa + "jars: 6\n").verdict == verdict::rejected);
  }
}

TEST_CASE("the acid of the key and that of the lines agree, and soda is no acid") {
  const auto jars_of = [](const std::string& acid, const char* line) {
    std::vector<std::string> lines = {"20 lb tomatoes, peeled"};
    if (*line != '\0') lines.emplace_back(line);
    return canned(lines,
                  "food: tomatoes in water\npack: hot\njar: quart\nmethod: boiling-water\n"
                  "time: 55 min\n" +
                      (acid.empty() ? acid : "acid: " + acid + "\n"));
  };
  const char* good = "2 tbsp bottled lemon juice per quart";
  CHECK(jars_of(good, "").verdict == verdict::accepted);
  CHECK(jars_of("", good).verdict == verdict::accepted);
  CHECK(jars_of(good, "bottled lemon juice").verdict == verdict::accepted);
  CHECK(jars_of("2 tbsp bottled lemon juice and 1 tsp salt per quart", "").verdict ==
        verdict::accepted);
  for (const char* joined : {"1 tsp baking soda", "1 cup cream", "1 clove garlic", "1 tbsp flour",
                             "1 tsp pickling lime"}) {
    INFO(joined);
    CHECK(jars_of("2 tbsp bottled lemon juice and " + std::string(joined) + " per quart", "")
              .verdict != verdict::accepted);
  }
  CHECK(jars_of("none", good).verdict != verdict::accepted);
  CHECK(jars_of("2 tbsp fresh lemon juice per quart", good).verdict != verdict::accepted);
  CHECK(jars_of(good, "1 tsp bottled lemon juice per quart").verdict != verdict::accepted);
  CHECK(jars_of(good, "2 tbsp fresh lemon juice per quart").verdict != verdict::accepted);
}

TEST_CASE("a recipe is known by its lines only where they show all that belongs to it") {
  const std::string pressure =
      "pack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\n";
  CHECK(canned({"7 lb tomatoes, peeled and quartered", "2 1/2 lb okra, cut in 1-inch pieces"},
               pressure)
            .verdict == verdict::accepted);
  for (const char* onions : {"10 onions, chopped", "3 lb onions, chopped", "2 lb onions, sliced"}) {
    INFO(onions);
    CHECK(canned({"10 lb tomatoes", onions}, pressure).verdict != verdict::accepted);
    CHECK(canned({"7 lb tomatoes, peeled", "2 1/2 lb okra", onions}, pressure).verdict !=
          verdict::accepted);
  }
  const std::string water =
      "pack: hot\njar: pint\nmethod: boiling-water\ntime: 45 min\n"
      "acid: 1 tbsp bottled lemon juice per pint\n";
  CHECK(
      canned({"22 lb tomatoes, quartered", "1 cup carrots, sliced", "1 cup onions, chopped"}, water)
          .verdict != verdict::accepted);
  CHECK(canned({"10 lb cherries"}, "pack: hot\njar: pint\nmethod: boiling-water\ntime: 15 min\n")
            .verdict != verdict::accepted);
}

TEST_CASE("beans that their line leaves dry, and mashed ones, are no part of a tested recipe") {
  const auto chili = [](const char* beans) {
    return canned({beans, "5 1/2 cups water (for boiling the beans)", "5 tsp salt",
                   "3 lb ground beef, browned, drained", "1 1/2 cups chopped onion",
                   "1 cup chopped green pepper", "1 tsp black pepper", "4 tbsp chili powder",
                   "2 quarts crushed tomatoes"},
                  "food: chile con carne\npack: hot\njar: pint\nmethod: pressure\n"
                  "gauge: weighted\npressure: 15 psi\ntime: 75 min\n"
                  "prepared: [beans rehydrated]\n");
  };
  CHECK(chili("3 cups dry pinto beans").verdict == verdict::accepted);
  for (const char* dry :
       {"3 cups dry pinto beans, not soaked", "3 cups dry pinto beans, no soaking",
        "3 cups dry pinto beans, put in dry", "3 cups dry pinto beans, cooked in the jar",
        "3 cups dry pinto beans, soaked 10 minutes"}) {
    INFO(dry);
    CHECK(has(chili(dry), "beans-not-rehydrated"));
  }
  for (const char* mash : {"3 cups dry kidney beans, mashed", "3 cups dry kidney beans, pureed",
                           "3 cups dry kidney beans, half of them mashed"}) {
    INFO(mash);
    CHECK(chili(mash).verdict == verdict::rejected);
  }
  CHECK(has(chili("3 cups beans and rice"), "pasta-or-grain-in-jar"));
}

TEST_CASE("directions beside a tested recipe may not go against its plan") {
  const auto step = [](const char* sentence) {
    return canned({tomatoes, "5 cups chopped onions", peppers, juice, "3 tsp canning salt"},
                  salsa + "steps: [\"" + sentence + "\"]\n");
  };
  for (const char* good : {"Simmer until thick.", "Fill the jars, leaving 1/2 inch headspace.",
                           "Put the tomatoes through a food mill."}) {
    INFO(good);
    CHECK(step(good).verdict == verdict::accepted);
  }
  for (const char* bad :
       {"Do not process, just seal.", "Halve the vinegar.", "Use half of the lemon juice.",
        "Add baking soda to cut the acid.", "Fill gallon jars.", "No lemon juice needed.",
        "Stand jars on their lids until cold.", "Add a pinch of soda to each jar."}) {
    INFO(bad);
    CHECK(has(step(bad), "steps-against-plan"));
  }
}

TEST_CASE("a second food of a line with an amount that decides is asked about") {
  const auto brine = [](const char* line) {
    return canned({"4 lb green beans", "8 heads fresh dill", "8 cloves garlic",
                   "1/2 cup canning salt", line, "1 tsp hot red pepper flakes"},
                  "food: dilled beans\npack: raw\njar: pint\nmethod: boiling-water\n"
                  "time: 10 min\n");
  };
  for (const char* both :
       {"4 cups white vinegar (5%) and 9 cups water", "4 cups white vinegar (5%) + 9 cups water",
        "4 cups white vinegar (5%); 9 cups water", "4 cups white vinegar (5%) with water",
        "4 cups white vinegar (5%) and water"}) {
    INFO(both);
    CHECK(brine(both).verdict != verdict::accepted);
  }
  CHECK(brine("4 cups white vinegar (5%)").verdict == verdict::accepted);
}

TEST_CASE("pieces of another kind of pepper count by their weight") {
  // Part 3, page 3-25, tomato and tomato paste salsa: 6 jalapenos and 4 long green chiles; any kind
  // of pepper may stand for another as long as there is no more of it.
  const auto salsa_of = [](const std::vector<std::string>& chiles) {
    std::vector<std::string> lines = {"3 qt tomatoes, peeled, cored and chopped",
                                      "3 cups onions, chopped",
                                      "4 cloves garlic, chopped",
                                      "2 (12 oz) cans tomato paste",
                                      "2 cups bottled lemon juice",
                                      "1 tbsp salt"};
    lines.insert(lines.end(), chiles.begin(), chiles.end());
    return canned(lines,
                  "food: tomato and tomato paste salsa\npack: hot\njar: pint\nmethod: "
                  "boiling-water\ntime: 20 min\n");
  };
  CHECK(salsa_of({"6 jalapenos, chopped", "4 long green chiles, chopped"}).verdict ==
        verdict::accepted);
  CHECK(salsa_of({"7 jalapenos, chopped", "4 long green chiles, chopped"}).verdict !=
        verdict::accepted);
  for (const std::vector<std::string>& other :
       {std::vector<std::string>{"6 large bell peppers, chopped"},
        {"6 jalapenos, chopped", "4 bell peppers, chopped"},
        {"10 poblanos, chopped"},
        {"10 long green chiles, chopped"}}) {
    CAPTURE(other.front());
    CHECK(salsa_of(other).verdict != verdict::accepted);
  }
}

TEST_CASE("two measures of one line that cannot be the same amount leave it open") {
  CHECK(salsa_with(tomatoes, "4 cups chopped peppers (about 1 1/2 lb)", juice).verdict ==
        verdict::accepted);
  for (const char* more : {"4 cups chopped peppers (about 6 lb)", "4 cups (6 lb) chopped peppers",
                           "1 lb peppers (about 12 cups chopped)"}) {
    CAPTURE(std::string(more));
    CHECK(salsa_with(tomatoes, more, juice).verdict != verdict::accepted);
  }
  for (const char* less : {"1 1/2 cups bottled lemon juice, 1/2 for the jars",
                           "1 1/2 cups bottled lemon juice, 1 into the glass"}) {
    CAPTURE(std::string(less));
    CHECK(salsa_with(tomatoes, peppers, less).verdict != verdict::accepted);
  }
}

TEST_CASE("an amount of each counts for every one") {
  const auto onions = [](const std::string& line) {
    return canned({tomatoes, line, peppers, juice, "3 tsp canning salt"}, salsa);
  };
  CHECK(onions("2 1/2 cups red onions and 2 1/2 cups white onions, chopped").verdict !=
        verdict::rejected);
  for (const char* line :
       {"5 cups each red and yellow onions, chopped", "5 cups ea. red & yellow onions, chopped",
        "5 cups of each: red, yellow onions", "5 cups onions, both red and yellow",
        "red and yellow onions, 5 cups each"}) {
    CAPTURE(std::string(line));
    CHECK(onions(line).verdict != verdict::accepted);
  }
  // Two foods are two lines.
  const jarproof::report soup = judged(
      "altitude: 4600 ft\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 "
      "psi\ntime: 75 min\nsolids: 1/2\nbatch: 7 qt\nprepared: [boiled 5 min]\ningredients: [2 cups "
      "each carrots and corn, 4 qt beef broth]\n");
  CHECK(soup.verdict == verdict::accepted);
  REQUIRE(soup.ingredients.size() == 3);
  CHECK(soup.ingredients[0].amount == "2 cup");
  CHECK(soup.ingredients[1].amount == "2 cup");
}

TEST_CASE("a second number of a line puts the first in doubt") {
  for (const char* line :
       {"4 cups chopped peppers (I used 6)", "4 cups chopped peppers (6 is better)",
        "4 cups chopped peppers, 6 if small", "4 cups chopped peppers (6 max)"}) {
    CAPTURE(std::string(line));
    CHECK(salsa_with(tomatoes, line, juice).verdict != verdict::accepted);
  }
  CHECK(salsa_with(tomatoes, peppers, "1 1/2 cups bottled lemon juice (1)").verdict !=
        verdict::accepted);
  CHECK(salsa_with(tomatoes, "4 cups chopped peppers (about 8)", juice).verdict ==
        verdict::accepted);
  CHECK(beans_with("4 cups water (6 if needed)").verdict != verdict::accepted);
}

TEST_SUITE_END();

}  // namespace
}  // namespace open_amounts_tests
