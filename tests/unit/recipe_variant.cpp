// Dishes that are nearly a tested recipe, and numbers of jars. Numbers: USDA Complete Guide to Home
// Canning (2015), part 5, chile con carne (page 5-8: pints 75 min, no quarts); part 4, soups (60
// and 75 min), succotash (60 and 85 min), baked beans (65 and 75 min); 15 psi above 1,000 ft.
// Oregon State University Extension: a chili of one's own has no time. SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <string>

#include "support/dishes.hpp"
#include "support/fixtures.hpp"

namespace recipe_variant_tests {
namespace {

using fixtures::finding_of;
using fixtures::has;
using fixtures::judged;
using fixtures::lines;
using jarproof::verdict;

const std::string soup_words =
    "solids: 1/2\nbatch: 7 qt\nprepared: [beans rehydrated, meat precooked, boiled 5 min]\n";

jarproof::report canned(const lines& ingredients, const char* jar, const char* time,
                        const std::string& more = soup_words) {
  return judged(fixtures::hot_plan(ingredients, more, jar, time));
}

lines chili(const lines& more = {}) {
  lines out = {"3 lb ground beef, browned", "3 cups canned kidney beans, drained",
               "2 cups onion, chopped", "1 qt tomatoes, chopped", "2 tbsp chili powder"};
  out.insert(out.end(), more.begin(), more.end());
  return out;
}

TEST_SUITE_BEGIN("check");

TEST_CASE("a published recipe is known by its lines, also where they say how a thing is cut") {
  // Part 5, page 5-8: the printed amounts; `crushed or whole` tomatoes.
  const auto chili = [](const std::string& more) {
    return judged(
        "ingredients:\n  - 3 cups dried red kidney beans\n  - 5 1/2 cups water\n"
        "  - 5 tsp salt\n  - 3 lb ground beef\n  - 1 1/2 cups chopped onion\n"
        "  - 1 cup chopped green pepper\n  - 1 tsp black pepper\n"
        "  - 3 to 6 tbsp chili powder\n  - 2 quarts crushed tomatoes\n" +
        more +
        "pack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\n"
        "time: 75 min\naltitude: 5200 ft\nprepared: [beans rehydrated]\n");
  };
  for (const char* more : {"", "  - shredded cheese and sour cream, for serving\n"}) {
    const jarproof::report r = chili(more);
    CHECK(r.verdict == verdict::accepted);
    REQUIRE(r.process != nullptr);
    CHECK(r.process->id == "chile-con-carne");
  }
  CHECK(chili("  - 1 cup crushed carrots\n").verdict != verdict::accepted);
  CHECK(chili("  - 1 quart pureed tomatoes\n").verdict != verdict::accepted);
  CHECK(chili("  - 1 cup shredded cheese\n").verdict != verdict::accepted);
}

TEST_CASE("a thin chili of one's own takes the time of chile con carne") {
  const lines thin = chili({"3 qt beef broth"});
  const jarproof::report r = canned(thin, "pint", "75 min");
  CHECK(r.verdict == verdict::accepted);
  REQUIRE(r.process != nullptr);
  CHECK(r.process->id == "soups");
  REQUIRE(r.required);
  CHECK(r.required->time_min == 75);
  for (const jarproof::requirement& o : r.options) CHECK(o.time_min == 75);
  CHECK_FALSE(has(r, "over-required"));
  const jarproof::report short_time = canned(thin, "pint", "74 min");
  CHECK(short_time.verdict == verdict::rejected);
  const jarproof::finding* f = finding_of(short_time, "time-too-short");
  REQUIRE(f != nullptr);
  CHECK(f->required == "75 min (1 h 15 min)");
  CHECK(f->message.find("chile con carne") != std::string::npos);
  CHECK(canned(thin, "half-pint", "74 min").verdict == verdict::rejected);
}

TEST_CASE("it has no process in quarts, nor without broth") {
  for (const char* jar : {"quart", "pint-and-half", "500 mL"}) {
    CAPTURE(std::string(jar));
    const jarproof::report r = canned(chili({"3 qt beef broth"}), jar, "120 min");
    CHECK(r.verdict == verdict::untested);
    CHECK(has(r, "variant-of-tested-recipe"));
    CHECK_FALSE(r.required);
    CHECK(r.options.empty());
  }
  CHECK(canned(chili(), "pint", "120 min").verdict == verdict::untested);
  // A splash of broth makes no soup: of 7 quarts, a quarter is 7 cups.
  CHECK(canned(chili({"6 7/8 cups beef broth"}), "pint", "120 min").verdict == verdict::untested);
  CHECK(canned(chili({"7 cups beef broth"}), "pint", "120 min").verdict == verdict::accepted);
  CHECK(canned(chili({"beef broth"}), "pint", "120 min").verdict == verdict::untested);
  // The recipe boils its beans in water: water is no sign of a soup here.
  CHECK(canned(chili({"5 1/2 cups water"}), "pint", "120 min").verdict == verdict::untested);
}

TEST_CASE("other meat, other beans and more vegetables make it no soup") {
  lines dish = chili({"2 qt beef broth"});
  for (const char* meat : {"3 lb ground venison, browned", "3 lb ground turkey, browned",
                           "3 lb venison, cut in cubes and browned"}) {
    CAPTURE(std::string(meat));
    dish[0] = meat;
    CHECK(canned(dish, "quart", "90 min").verdict == verdict::untested);
  }
  dish[1] = "3 cups canned black beans, drained";
  CHECK(canned(dish, "quart", "90 min").verdict == verdict::untested);
  dish.emplace_back("2 cups whole kernel corn");
  dish.emplace_back("1 lb carrots, peeled and sliced");
  CHECK(canned(dish, "quart", "90 min").verdict == verdict::untested);
  dish = chili({"2 qt beef broth", "1 lb potatoes, peeled and cubed"});
  dish[3] = "1 qt canned diced tomatoes";
  CHECK(canned(dish, "quart", "90 min").verdict == verdict::untested);
  // Without chili powder the title may still name it.
  lines plain = chili({"2 qt beef broth"});
  plain[4] = "2 tbsp ground cumin";
  CHECK(canned(plain, "quart", "75 min").verdict == verdict::accepted);
  const std::string named = "title: Hunter's chili\n" + soup_words;
  CHECK(canned(plain, "quart", "90 min", named).verdict == verdict::untested);
  CHECK(canned({"3 lb venison, cut in cubes and browned", "3 cups canned white beans, drained",
                "1 lb potatoes, peeled and cubed", "2 qt beef broth"},
               "quart", "90 min", named)
            .verdict == verdict::untested);
}

TEST_CASE("to call it soup does not help") {
  const std::string named = "food: soups\n" + soup_words;
  CHECK(canned(chili({"3 qt beef broth"}), "quart", "90 min", named).verdict == verdict::untested);
  CHECK(canned(chili({"3 qt beef broth"}), "pint", "60 min", named).verdict == verdict::rejected);
  const std::string published = "food: soups\nas-published: true\n";
  CHECK(canned(chili(), "quart", "90 min", published).verdict == verdict::untested);
  CHECK(canned(chili(), "pint", "75 min", published).verdict == verdict::accepted);
  CHECK(canned(chili(), "pint", "60 min", published).verdict == verdict::rejected);
}

TEST_CASE("soups that only share some parts with a recipe stay soups") {
  CHECK(canned({"3 lb venison, cut in cubes and browned", "2 lb dried white beans, rinsed",
                "2 lb onions, peeled", "1 lb carrots, peeled and sliced", "3 qt beef broth"},
               "quart", "75 min")
            .verdict == verdict::accepted);
  CHECK(canned({"3 lb ground beef, browned", "2 lb potatoes, peeled and cubed",
                "2 lb carrots, peeled and sliced", "1 lb green beans, cut",
                "1 qt tomatoes, chopped", "2 cups onion, chopped", "2 qt beef broth"},
               "quart", "75 min")
            .verdict == verdict::accepted);
}

TEST_CASE("succotash and baked beans are not made shorter by calling them soup") {
  const lines succotash = {"3 quarts whole kernel corn", "4 quarts lima beans",
                           "2 quarts tomatoes"};
  CHECK(canned(succotash, "quart", "84 min", "title: Corn soup\n" + soup_words).verdict !=
        verdict::accepted);
  const lines beans = {"3 lb dried beans", "4 cups water", "3 tbsp dark molasses", "1 tbsp vinegar",
                       "2 tsp salt"};
  const jarproof::report r = canned(beans, "pint", "64 min");
  CHECK(r.verdict != verdict::accepted);
  CHECK(canned(beans, "pint", "64 min", "food: soups\n" + soup_words).verdict != verdict::accepted);
}

TEST_CASE("lines that lack a part of a recipe are not taken for it") {
  // Peppers, tomatoes and vinegar of cayenne sauce, but no onion, garlic or cilantro; with one
  // tenth more peppers than easy hot sauce has.
  const jarproof::report r = judged(
      "ingredients: [8 cups canned diced tomatoes, 1.65 cups serrano peppers, 4 cups vinegar, 2 "
      "tsp canning salt, 2 tbsp mixed pickling spice]\npack: hot\njar: pint\n"
      "method: boiling-water\ntime: 60 min\naltitude: 4600 ft\n");
  CHECK(r.verdict == verdict::rejected);
  CHECK(has(r, "low-acid-needs-pressure"));
}

TEST_CASE("more jars than the batch fills are asked back, fewer are not") {
  const auto jars = [](const char* count, const char* jar, const std::string& batch) {
    return judged("food: tomatoes in water\npack: hot\njar: " + std::string(jar) + "\njars: " +
                  count + "\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\n" +
                  "acid: 2 tbsp bottled lemon juice per quart\n" + batch);
  };
  // Arithmetic: 1/2 in under a regular mouth takes 1.23 fl oz (231 cubic inches are 128 fl oz), so
  // a pint takes 14.77 fl oz and a quart 30.77; 20 qt are 640, and 5 % are left for measuring.
  CHECK(jars("20", "quart", "batch: 20 qt\n").verdict == verdict::accepted);
  CHECK(jars("21", "quart", "batch: 20 qt\n").verdict == verdict::accepted);
  const jarproof::report r = jars("22", "quart", "batch: 20 qt\n");
  CHECK(r.verdict == verdict::incomplete);
  CHECK(has(r, "jars-over-batch"));
  CHECK(jars("3", "quart", "batch: 20 qt\n").verdict == verdict::accepted);
  CHECK(jars("40", "pint", "batch: 20 qt\n").verdict == verdict::accepted);
  CHECK(jars("45", "pint", "batch: 20 qt\n").verdict == verdict::accepted);
  CHECK(has(jars("46", "pint", "batch: 20 qt\n"), "jars-over-batch"));
  CHECK(has(jars("22", "quart", "yield: Makes about 20 quarts\n"), "jars-over-batch"));
  CHECK_FALSE(has(jars("22", "quart", "yield: enough for the winter\n"), "jars-over-batch"));
  CHECK_FALSE(has(jars("22", "quart", ""), "jars-over-batch"));
}

TEST_SUITE_END();

}  // namespace
}  // namespace recipe_variant_tests
