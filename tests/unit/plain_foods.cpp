// Ordinary recipes of plain foods and of tested pickles that were asked back or refused for no
// reason. Rules: USDA Complete Guide to Home Canning (2015), part 2, pages 2-5 (applesauce), 2-7
// (apples) and 2-18 (peaches); part 5 (strips, cubes and chunks: pints 75 min, quarts 90 min); part
// 6, dilled beans (1 or 2 dill heads to the pint) and bread-and-butter pickles (chilled under ice).
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "support/fixtures.hpp"

namespace plain_foods_tests {
namespace {

using fixtures::has;
using fixtures::judged;
using jarproof::verdict;

jarproof::report fruit(const std::string& lines, const std::string& more) {
  return judged("altitude: 4600 ft\npack: hot\njar: pint\nmethod: boiling-water\ningredients: [" +
                lines + "]\n" + more);
}

TEST_SUITE_BEGIN("recipe");

TEST_CASE("peaches with what keeps their color are peaches") {
  for (const char* more : {"", ", 4 cups sugar, 9 cups water", ", 1 tsp ascorbic acid",
                           ", 4 cups sugar, 9 cups water, 1 tsp ascorbic acid"}) {
    CAPTURE(std::string(more));
    CHECK(fruit("\"10 lb peaches, peeled and halved\"" + std::string(more), "time: 30 min\n")
              .verdict == verdict::accepted);
  }
  CHECK(fruit("\"10 lb peaches, peeled and halved\", 1 cup cream", "time: 30 min\n").verdict !=
        verdict::accepted);
}

TEST_CASE("fruit that is pressed and roots that keep their skins are not what the table packs") {
  for (const char* line : {"10 lb peaches, blended", "10 lb peaches, sieved"}) {
    CAPTURE(std::string(line));
    CHECK(fruit("\"" + std::string(line) + "\"", "time: 30 min\n").verdict != verdict::accepted);
  }
  for (const char* line : {"14 lb beets", "14 lb beets, skins on", "14 lb beet stalks"}) {
    CAPTURE(std::string(line));
    const jarproof::report r = judged(
        "altitude: 4600 ft\nfood: beets\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\n"
        "pressure: 15 psi\ntime: 35 min\ningredients: [\"" +
        std::string(line) + "\"]\n");
    CHECK((r.verdict == verdict::accepted) == (std::string(line) == "14 lb beets"));
  }
}

TEST_CASE("what is for the table and goes into the jar is in the jar") {
  const auto soup = [](const std::string& line) {
    return judged(
        "altitude: 4600 ft\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 "
        "psi\ntime: 75 min\nsolids: 1/2\nbatch: 7 qt\nprepared: [boiled 5 min]\ningredients: [\"3 "
        "lb "
        "venison, cut in cubes and browned\", \"2 lb carrots, peeled and sliced\", 3 qt beef "
        "broth, \"" +
        line + "\"]\n");
  };
  for (const char* line :
       {"rice, for serving", "rice, for serving when the jars are opened", "cream, to garnish"}) {
    CAPTURE(std::string(line));
    CHECK(soup(line).verdict == verdict::accepted);
  }
  for (const char* line :
       {"rice, for serving, in each jar", "rice, to garnish each jar",
        "rice (in each jar for serving)", "cream, for serving, 1/4 cup per jar",
        "rice, for serving, added at the start", "noodles, for serving, into the pot"}) {
    CAPTURE(std::string(line));
    CHECK(soup(line).verdict != verdict::accepted);
  }
}

TEST_CASE("a title says what apples become") {
  const std::string apples = "\"21 lb apples, quartered and cooked\", 1 cup sugar";
  const jarproof::report sauce = fruit(apples, "time: 25 min\ntitle: Applesauce\n");
  REQUIRE(sauce.process != nullptr);
  CHECK(sauce.process->id == "applesauce");
  CHECK(sauce.verdict == verdict::accepted);
  CHECK(fruit(apples, "time: 25 min\n").verdict != verdict::accepted);
  // Slices may become sauce: the directions are asked then.
  const std::string slices = "\"21 lb apples, peeled, cored and sliced\", 2 cups water";
  const std::string mill = "steps: [Cook until soft., Put through a food mill.]\n";
  CHECK(fruit(slices, "time: 30 min\nfood: sliced apples\n").verdict == verdict::accepted);
  CHECK(fruit(slices, "time: 30 min\nfood: sliced apples\n" + mill).verdict == verdict::incomplete);
  CHECK(fruit(slices, "time: 30 min\n" + mill).verdict != verdict::accepted);
  const jarproof::report home = fruit(slices, "time: 25 min\ntitle: Homemade Applesauce\n" + mill);
  REQUIRE(home.process != nullptr);
  CHECK(home.process->id == "applesauce");
  CHECK(home.verdict == verdict::accepted);
}

TEST_CASE("a cut tells meat in cubes from ground meat") {
  const auto venison = [](const std::string& line) {
    return judged(
        "altitude: 4600 ft\npack: raw\njar: quart\nmethod: pressure\ngauge: weighted\n"
        "pressure: 15 psi\ntime: 90 min\ningredients: [\"" +
        line + "\", salt]\n");
  };
  const jarproof::report cubes = venison("10 lb venison, cut in 1-inch cubes");
  REQUIRE(cubes.process != nullptr);
  CHECK(cubes.process->id == "wild-game-strips");
  CHECK(cubes.verdict == verdict::accepted);
  CHECK(has(venison("10 lb venison"), "food-ambiguous"));
}

TEST_CASE("less dill is a matter of taste, ice is poured off and raw beans are packed tightly") {
  const std::string beans =
      "\"4 lb green beans\", \"1/2 cup canning salt\", \"4 cups white vinegar (5%)\", \"4 cups "
      "water\"";
  const auto dilled = [&](const std::string& dill) {
    return judged(
        "altitude: 4600 ft\npack: raw\njar: pint\nmethod: boiling-water\ntime: 10 min\n"
        "food: dilled beans\ningredients: [" +
        beans + dill + "]\n");
  };
  CHECK(dilled("").verdict == verdict::accepted);
  CHECK(dilled(", \"4 heads fresh dill\"").verdict == verdict::accepted);
  CHECK(dilled(", \"17 heads fresh dill\"").verdict == verdict::rejected);
  CHECK(dilled(", \"1 bunch dill\"").verdict == verdict::incomplete);
  const auto pickles = [](const std::string& last) {
    return judged(
        "altitude: 4600 ft\npack: hot\njar: pint\nmethod: boiling-water\ntime: 15 min\nfood: "
        "bread and butter pickles\ningredients: [6 lb cucumbers, 3 lb onions, 1/2 cup canning "
        "salt, "
        "4 cups vinegar (5%), 4 1/2 cups sugar, 2 tbsp mustard seed, 1 1/2 tbsp celery seed, 1 "
        "tbsp "
        "turmeric, " +
        last + "]\n");
  };
  CHECK(pickles("crushed ice").verdict == verdict::accepted);
  CHECK(pickles("1 cup water").verdict == verdict::rejected);
  const auto packed = [](const std::string& pack, const std::string& step) {
    return judged(
        "altitude: 4600 ft\npack: " + pack +
        "\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\n"
        "food: green beans\nsteps: [" +
        step + "]\n");
  };
  for (const char* step :
       {"Pack the beans tightly into the jars.", "Pack the jars tightly with raw beans."})
    CHECK(packed("raw", step).verdict == verdict::accepted);
  CHECK(has(packed("hot", "Pack the beans tightly into the jars."), "too-dense"));
}

TEST_CASE("a clove of garlic is known by the spoon") {
  const auto soup = [](const std::string& garlic) {
    return judged(
        "altitude: 4600 ft\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 "
        "psi\ntime: 75 min\nsolids: 1/2\nbatch: 7 qt\nprepared: [boiled 5 min]\ningredients: [\"3 "
        "lb "
        "venison, cut in cubes and browned\", \"2 lb carrots, peeled and sliced\", 3 qt beef "
        "broth, " +
        garlic + "]\n");
  };
  CHECK(soup("1 tbsp minced garlic").verdict == verdict::accepted);
  CHECK(soup("1/2 cup minced garlic").verdict == verdict::untested);
  const jarproof::report bunch = soup("1 bunch parsley");
  CHECK(std::count_if(bunch.findings.begin(), bunch.findings.end(),
                      [](const jarproof::finding& f) { return f.check == "amount-unknown"; }) == 1);
}

TEST_CASE("a cut is known in each of its forms, and potatoes are white ones") {
  const auto canned = [](const std::string& line, const std::string& time) {
    return judged(
        "altitude: 4600 ft\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\n"
        "pressure: 15 psi\ntime: " +
        time + "\ningredients: [\"" + line + "\"]\n");
  };
  // USDA Complete Guide (2015), part 4, page 4-17: quarts 40 min; part 5, page 5-6: 90 min.
  CHECK(canned("20 lb potatoes, peeled and cubed", "40 min").verdict == verdict::accepted);
  CHECK(canned("20 lb potatoes, peeled and cubed", "39 min").verdict == verdict::rejected);
  CHECK(canned("20 lb potatoes, mashed", "40 min").verdict != verdict::accepted);
  CHECK(canned("14 lb venison, cubed", "90 min").verdict == verdict::accepted);
  CHECK(canned("14 lb venison, cubed", "89 min").verdict == verdict::rejected);
  CHECK(canned("14 lb venison, not in cubes", "90 min").verdict != verdict::accepted);
}

TEST_CASE("fruit is no puree until the plan says so") {
  CHECK(fruit("\"8 lb strawberries\"", "time: 20 min\n").verdict != verdict::accepted);
  CHECK(fruit("\"8 lb strawberries, pureed\"", "time: 20 min\n").verdict == verdict::accepted);
}

TEST_CASE("what is packed without added liquid takes no water") {
  // USDA Complete Guide (2015), part 3, pages 3-7 and 3-11: crushed tomatoes, and raw whole ones,
  // have no added liquid; peaches (part 2) are covered with water, juice or syrup.
  const auto tomatoes = [](const std::string& food, const std::string& more) {
    return judged("altitude: 800 ft\njar: quart\nmethod: boiling-water\nfood: " + food +
                  "\nacid: 2 tbsp bottled lemon juice per quart\n" + more);
  };
  const std::string crushed = "pack: hot\ntime: 45 min\ningredients: [22 lb tomatoes";
  CHECK(tomatoes("crushed tomatoes", crushed + "]\n").verdict == verdict::accepted);
  CHECK(tomatoes("crushed tomatoes", crushed + ", 9 cups water]\n").verdict != verdict::accepted);
  CHECK(tomatoes("tomatoes-whole-raw-no-liquid",
                 "pack: raw\ntime: 85 min\ningredients: [21 lb tomatoes, 9 cups water]\n")
            .verdict != verdict::accepted);
  CHECK(fruit("\"10 lb peaches, halved\", 9 cups water", "time: 30 min\n").verdict ==
        verdict::accepted);
}

TEST_SUITE_END();

}  // namespace
}  // namespace plain_foods_tests
