// A plan's ingredients against tested recipes. Amounts: USDA Complete Guide to Home Canning (2015),
// part 3 (chile salsa, page 3-21), part 6 (bread-and-butter pickles, page 6-9), part 2 (blueberry
// and cherry pie filling, pages 2-27 and 2-28), part 7 (pear-apple jam, page 7-8).
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <string>

#include "support/dishes.hpp"
#include "support/fixtures.hpp"

namespace unit_recipes_tests {
namespace {

using fixtures::finding_of;
using fixtures::has;
using fixtures::judged;
using fixtures::lines;
using jarproof::verdict;

std::string plan_of(const char* food, const char* jar, const char* time, const lines& ingredients,
                    const char* more = "") {
  return fixtures::hot_plan(ingredients, "food: " + std::string(food) + "\n" + more, jar, time,
                            fixtures::boiling_water);
}

lines salsa() {
  return {"5 lb tomatoes, peeled and chopped",
          "2 lb chile peppers, seeded and chopped",
          "1 lb onions, chopped",
          "1 cup vinegar (5%)",
          "3 tsp canning salt",
          "1/2 tsp black pepper"};
}
jarproof::report salsa_with(std::size_t i, const char* line) {
  lines all = salsa();
  if (i < all.size()) {
    all[i] = line;
  } else {
    all.emplace_back(line);
  }
  return judged(plan_of("salsa-chile", "pint", "20 min", all));
}

TEST_SUITE_BEGIN("check");

TEST_CASE("the tested recipe is accepted at any size, and nothing beyond it") {
  CHECK(judged(plan_of("salsa-chile", "pint", "20 min", salsa())).verdict == verdict::accepted);
  CHECK(judged(plan_of("salsa-chile", "pint", "20 min",
                       {"10 lb tomatoes", "4 lb chile peppers", "2 lb onions", "2 cups vinegar"}))
            .verdict == verdict::accepted);
  CHECK(
      judged(plan_of("salsa-chile", "pint", "20 min",
                     {"2267 g tomatoes", "900 g chile peppers", "450 g onions", "237 mL vinegar"}))
          .verdict == verdict::accepted);
  CHECK(has(salsa_with(0, "5 1/2 lb tomatoes"), "acid-too-little"));
  CHECK(has(salsa_with(1, "2 1/4 lb chile peppers"), "low-acid-share-too-high"));
  CHECK(has(salsa_with(2, "1 1/8 lb onions"), "low-acid-share-too-high"));
  CHECK(has(salsa_with(3, "7/8 cup vinegar"), "acid-too-little"));
  CHECK(has(salsa_with(3, "236 mL vinegar"), "acid-too-little"));
  CHECK(has(salsa_with(3, "1 cup water"), "acid-missing"));
  CHECK(has(salsa_with(6, "1 cup water"), "water-too-much"));
}

TEST_CASE("an amount for each jar counts by the size and number of the jars") {
  const auto with = [](const char* vinegar, const char* more) {
    lines all = salsa();
    all[3] = vinegar;
    return judged(plan_of("salsa-chile", "pint", "20 min", all, more));
  };
  // 1 cup is 16 tbsp: 7 pints are 3 1/2 quarts, 5 tbsp per quart are 17 1/2 tbsp.
  CHECK(with("5 tbsp vinegar per quart", "jars: 7\n").verdict == verdict::accepted);
  CHECK(has(with("3 tbsp vinegar per quart", "jars: 7\n"), "acid-too-little"));
  CHECK(with("8 tsp vinegar per pint", "jars: 6\n").verdict == verdict::accepted);
  CHECK(has(with("7 tsp vinegar per pint", "jars: 6\n"), "acid-too-little"));
  CHECK(with("8 tsp vinegar in each jar", "jars: 6\n").verdict == verdict::accepted);
  CHECK(has(with("8 tsp vinegar per 500 mL jar", "jars: 6\n"), "acid-too-little"));
  CHECK(has(with("8 tsp vinegar per pint", ""), "amount-unknown"));
  lines onions = salsa();
  onions.emplace_back("1 cup red onions, chopped, in each jar");
  CHECK(has(judged(plan_of("salsa-chile", "pint", "20 min", onions, "jars: 6\n")),
            "low-acid-share-too-high"));
}

TEST_CASE("only water that is said to be poured off does not count") {
  CHECK(has(salsa_with(6, "2 cups water for brine"), "water-too-much"));
  CHECK(has(salsa_with(6, "2 cups water for soaking"), "water-too-much"));
  CHECK(salsa_with(6, "2 cups water for soaking, discarded").verdict == verdict::accepted);
  for (const char* water : {"water for soaking", "soaking water, added to the vinegar",
                            "water to soak with the vinegar", "ice, to top off and cover"}) {
    CAPTURE(std::string(water));
    CHECK(salsa_with(6, water).verdict != verdict::accepted);
  }
  // USDA Complete Guide 2015, part 6: bread-and-butter pickles are salted under ice and drained.
  const auto pickles = [](const std::string& line) {
    return judged(
        "ingredients:\n  - 6 lb pickling cucumbers, sliced\n  - 8 cups thinly sliced onions\n"
        "  - 1/2 cup canning salt, for soaking\n  - 4 cups vinegar (5%)\n"
        "  - 4 1/2 cups sugar\n  - 2 tbsp mustard seed\n  - \"" +
        line + "\"\npack: hot\njar: pint\nmethod: boiling-water\ntime: 10 min\naltitude: 650 ft\n");
  };
  CHECK(pickles("crushed ice, to cover").verdict == verdict::accepted);
  for (const char* more : {"ice, to top off and cover in the jar", "ice to cover in the syrup",
                           "water for soaking and for the brine", "soaking water"}) {
    CAPTURE(std::string(more));
    CHECK(pickles(more).verdict != verdict::accepted);
  }
}

TEST_CASE("what stands below a heading for the soak is poured off") {
  // USDA Complete Guide 2015, part 6, page 6-10, quick fresh-pack dill pickles, half of it: 1
  // gallon of water in the soak, 1 quart in the liquid.
  const auto dills = [](const std::string& heading, const std::string& water) {
    return judged(
        "altitude: 4600 ft\nfood: quick fresh-pack dill pickles\npack: raw\njar: quart\n"
        "method: boiling-water\ntime: 20 min\ningredients:\n  - 4 lb pickling cucumbers\n"
        "  - \"" +
        heading +
        "\"\n  - 1 gallon water\n  - 6 tbsp canning salt\n  - \"For the jars:\"\n"
        "  - 3 cups vinegar (5%)\n  - 1/4 cup canning salt\n  - 2 tbsp sugar\n  - \"" +
        water + "\"\n  - 7 heads fresh dill\n");
  };
  CHECK(dills("For the overnight brine (poured off):", "1 quart water").verdict ==
        verdict::accepted);
  CHECK(dills("For the soak:", "1 quart water").verdict == verdict::accepted);
  CHECK(has(dills("For the soak:", "5 cups water"), "water-too-much"));
  CHECK(has(dills("For the brine:", "1 quart water"), "water-too-much"));
  CHECK(has(dills("For the soak and the jars:", "1 quart water"), "water-too-much"));
}

TEST_CASE("acid that need not be there, or of unknown strength, does not count") {
  CHECK(has(salsa_with(3, "1 cup vinegar, optional"), "acid-missing"));
  CHECK(has(salsa_with(3, "1 cup vinegar, if desired"), "acid-missing"));
  CHECK(has(salsa_with(3, "1 cup vinegar, discarded"), "acid-missing"));
  CHECK(has(salsa_with(3, "1 cup vinegar solution"), "acid-missing"));
  CHECK(salsa_with(3, "1 cup vinegar, for the pickling solution").verdict == verdict::accepted);
}

TEST_CASE("allowed changes pass") {
  CHECK(salsa_with(1, "2 lb jalapeno peppers, seeded and chopped").verdict == verdict::accepted);
  CHECK(salsa_with(1, "1 lb chile peppers").verdict == verdict::accepted);
  CHECK(salsa_with(2, "1 lb red onions, chopped").verdict == verdict::accepted);
  CHECK(salsa_with(3, "1 cup bottled lemon juice").verdict == verdict::accepted);
  CHECK(salsa_with(3, "1 1/2 cups vinegar (5%)").verdict == verdict::accepted);
  CHECK(salsa_with(4, "1 tsp canning salt").verdict == verdict::accepted);
  CHECK(salsa_with(6, "1 tbsp dried oregano").verdict == verdict::accepted);
  CHECK(salsa_with(6, "1 tbsp sugar").verdict == verdict::accepted);
  CHECK(salsa_with(0, "5 lb tomatillos").verdict == verdict::accepted);
}

TEST_CASE("forbidden changes are found, each by its own check") {
  CHECK(has(salsa_with(3, "1 cup fresh lemon juice"), "acid-not-bottled"));
  CHECK(has(salsa_with(3, "1 cup vinegar (4%)"), "vinegar-too-weak"));
  CHECK(has(salsa_with(3, "1 cup homemade vinegar"), "vinegar-homemade"));
  CHECK(has(salsa_with(6, "2 tbsp cornstarch"), "thickener-in-jar"));
  CHECK(has(salsa_with(6, "2 cups corn"), "low-acid-share-too-high"));
  CHECK(has(salsa_with(6, "1 bunch fresh cilantro"), "low-acid-share-too-high"));
  CHECK(has(salsa_with(6, "1/2 cup olive oil"), "fat-in-jar"));
  CHECK(has(salsa_with(6, "1 cup black beans"), "low-acid-share-too-high"));
  CHECK(has(salsa_with(6, "3 cups pepper"), "low-acid-share-too-high") == false);
  CHECK(salsa_with(6, "3 cups pepper").verdict != verdict::accepted);
  CHECK(salsa_with(6, "3 cups pepper, chopped").verdict == verdict::incomplete);
  CHECK(salsa_with(6, "2 cups mystery powder").verdict == verdict::incomplete);
  CHECK(has(judged(plan_of("salsa-chile", "quart", "25 min", salsa())), "jar-too-large"));
  // Lemon is not replaced by vinegar where the recipe has lemon.
  CHECK(has(judged(plan_of("salsa-choice", "pint", "20 min",
                           {"6 cups tomatoes", "9 cups onions, chopped", "1 1/2 cups vinegar",
                            "3 tsp canning salt"})),
            "acid-missing"));
}

TEST_CASE("an amount that cannot be compared leaves the plan incomplete") {
  CHECK(salsa_with(2, "onions, chopped").verdict == verdict::incomplete);
  CHECK(salsa_with(3, "vinegar").verdict == verdict::incomplete);
  CHECK(judged(plan_of("salsa-chile", "pint", "20 min", {"2 lb chile peppers"})).verdict !=
        verdict::accepted);
  // Weighed through the published weight of a cup: 3 cups of chopped onion are 480 g, over 1 lb.
  CHECK(has(salsa_with(2, "3 cups onions, chopped"), "low-acid-share-too-high"));
  CHECK(salsa_with(2, "2 cups onions, chopped").verdict == verdict::accepted);
}

TEST_CASE("one column of a recipe is followed whole") {
  const auto filling = [](const lines& l) {
    return judged(plan_of("pie-filling-blueberry", "quart", "40 min", l)).verdict;
  };
  CHECK(filling({"3 1/2 cups blueberries", "7/8 cup sugar", "5 tbsp cook-type modified corn starch",
                 "1 cup water", "3 1/2 tsp bottled lemon juice"}) == verdict::accepted);
  CHECK(filling({"3 1/2 cups frozen blueberries", "7/8 cup sugar",
                 "5 tbsp cook-type modified corn starch", "1 cup water",
                 "3 1/2 tsp bottled lemon juice"}) == verdict::rejected);
  CHECK(filling({"3 1/2 cups frozen blueberries", "7/8 cup sugar",
                 "4 tbsp cook-type modified corn starch", "1 cup water",
                 "3 1/2 tsp bottled lemon juice"}) == verdict::accepted);
  CHECK(filling({"3 1/2 cups blueberries", "7/8 cup sugar", "5 tbsp all-purpose flour",
                 "1 cup water", "3 1/2 tsp bottled lemon juice"}) == verdict::rejected);
  // Cherries: the lemon juice of the 7-quart column with the starch of the 1-quart one fits
  // neither.
  CHECK(judged(plan_of("pie-filling-cherry", "quart", "40 min",
                       {"6 quarts sour cherries", "7 cups sugar",
                        "2 1/8 cups cook-type modified corn starch", "9 1/3 cups water",
                        "1/2 cup bottled lemon juice"}))
            .verdict == verdict::rejected);
}

TEST_CASE("the sugar of a jam is not cut, and its pectin is of one kind") {
  const auto jam = [](const char* sugar, const char* pectin) {
    return judged(plan_of("jam-pear-apple", "half-pint", "10 min",
                          {"2 cups pears, peeled, cored, finely chopped", "1 cup apples", sugar,
                           "1/3 cup bottled lemon juice", pectin}));
  };
  CHECK(jam("6 1/2 cups sugar", "6 oz liquid pectin").verdict == verdict::accepted);
  CHECK(has(jam("6 cups sugar", "6 oz liquid pectin"), "sugar-reduced-in-jam"));
  CHECK(jam("6 1/2 cups sugar", "1.75 oz powdered pectin").verdict != verdict::accepted);
}

TEST_CASE("salt of a brine does not make up for the salt of the ferment") {
  const auto kraut = [](const lines& l) {
    std::string plan = plan_of("sauerkraut", "quart", "35 min", l, "prepared: [fully fermented]\n");
    plan.replace(plan.find("pack: hot"), 9, "pack: raw");
    return judged(plan);
  };
  CHECK(kraut({"5 lb cabbage, shredded", "3 tbsp canning salt"}).verdict == verdict::accepted);
  CHECK(has(kraut({"5 lb cabbage, shredded", "2 tbsp canning salt", "1 1/2 tbsp canning salt"}),
            "salt-reduced-in-ferment"));
  CHECK(kraut({"5 lb cabbage, shredded", "3 tbsp lite salt"}).verdict != verdict::accepted);
}

TEST_CASE("the report shows what each line was taken for") {
  const jarproof::report r = salsa_with(6, "2 tbsp cornstarch");
  REQUIRE(r.ingredients.size() == 7);
  CHECK(r.ingredients[0].ingredient == "tomato");
  CHECK(r.ingredients[0].amount == "5 lb");
  CHECK(r.ingredients[2].kind == "low-acid");
  CHECK(r.ingredients[6].traits.front() == "thickener");
}

TEST_SUITE_END();

}  // namespace
}  // namespace unit_recipes_tests
