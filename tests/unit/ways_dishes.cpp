// Dishes as families write them, and what the ways say of them. The soup frame: USDA Complete Guide
// to Home Canning (2015), part 4. What is of the same kind, and what is left out, is common
// practice, no source.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "jarproof/format/ways.hpp"
#include "jarproof/ways.hpp"
#include "support/dishes.hpp"
#include "support/fixtures.hpp"

namespace ways_dishes_tests {
namespace {

using fixtures::lines;
using jarproof::way;

const jarproof::edition& rules = jarproof::builtin_edition();
const std::string pressure = "jar: quart\nmethod: pressure\ngauge: weighted\naltitude: 4600 ft\n";
const std::string boiling = "jar: pint\nmethod: boiling-water\naltitude: 4600 ft\n";

std::vector<way> ways(const lines& ingredients, const std::string& more) {
  return jarproof::ways_of(fixtures::plan_from(fixtures::ingredients_text(ingredients) + more),
                           rules);
}
std::string kinds(const std::vector<way>& all) {
  std::string out;
  for (const way& w : all) out += (out.empty() ? "" : " ") + w.kind;
  return out;
}
const way* of_kind(const std::vector<way>& all, const char* kind) {
  const auto at =
      std::find_if(all.begin(), all.end(), [&](const way& w) { return w.kind == kind; });
  return at == all.end() ? nullptr : &*at;
}
bool says(const std::vector<std::string>& texts, const std::string& part) {
  return std::any_of(texts.begin(), texts.end(),
                     [&](const std::string& t) { return t.find(part) != std::string::npos; });
}
std::string id_of(const way* w) {
  return w == nullptr || w->process == nullptr ? "" : std::string(w->process->id);
}
bool has_part(const way& w, std::string_view id) {
  return std::any_of(w.parts.begin(), w.parts.end(),
                     [&](const jarproof::way_part& p) { return p.process->id == id; });
}

TEST_SUITE_BEGIN("ways");

TEST_CASE("a vegetable soup is offered as soup, and no relish in its place") {
  const std::vector<way> all =
      ways({"8 cups peeled, diced tomatoes", "6 cups peeled, cubed potatoes",
            "6 cups thickly sliced carrots", "4 cups green beans, cut in 1 inch pieces",
            "4 cups whole kernel corn", "2 cups celery, sliced", "2 cups chopped onion",
            "6 cups water", "salt and pepper to taste"},
           pressure);
  CHECK(kinds(all) == "frame parts freezer");
  CHECK(id_of(&all[0]) == "soups");
  CHECK(says(all[0].changes, "Leave out: 2 cups celery (no process of its own)."));
}

TEST_CASE("a published recipe is offered where it is of the same kind") {
  // Applesauce is no pie filling: no starch in it. Green beans with bacon are no pickle: no acid.
  CHECK(of_kind(ways({"20 lbs apples, peeled, cored and sliced", "2 cups water", "1 cup sugar",
                      "2 tsp cinnamon", "1/4 cup lemon juice"},
                     boiling),
                "recipe") == nullptr);
  CHECK(of_kind(ways({"14 lb green beans, trimmed", "1/2 lb bacon", "7 tsp salt", "4 qt water"},
                     pressure),
                "recipe") == nullptr);
  // A tomato soup has no meat in it, and beans in water are no baked beans.
  CHECK(of_kind(ways({"14 quarts tomatoes", "7 onions", "1 bunch celery", "14 tbsp flour",
                      "14 tbsp butter", "3 tbsp salt", "8 tbsp sugar", "2 tsp pepper"},
                     "title: Cream of Tomato Soup\n" + pressure),
                "recipe") == nullptr);
  CHECK(of_kind(ways({"2 lb dried black beans, soaked overnight and drained", "3 qt water",
                      "1 tsp salt"},
                     pressure),
                "recipe") == nullptr);
  CHECK(id_of(of_kind(ways({"6 quarts sliced peaches", "7 cups sugar", "2 cups cornstarch",
                            "5 cups water", "1 tsp cinnamon", "1 3/4 cups lemon juice"},
                           boiling),
                      "recipe")) == "pie-filling-peach");
  const std::vector<way> salsa =
      ways({"10 cups peeled, chopped tomatoes", "3 cups chopped onions",
            "2 cups chopped green chiles", "1 cup jalapenos, chopped", "6 cloves garlic",
            "1 bunch cilantro", "1/2 cup lime juice", "1 tbsp salt"},
           boiling);
  CHECK(id_of(of_kind(salsa, "recipe")).find("salsa") == 0);
  CHECK(of_kind(salsa, "frame") == nullptr);
  const std::vector<way> peach =
      ways({"6 cups peaches, diced", "2 cups mango", "1 1/4 cups red onion", "4 jalapenos",
            "1 red bell pepper", "1/2 cup cilantro", "1/2 cup vinegar", "2 tbsp honey"},
           boiling);
  CHECK(id_of(of_kind(peach, "recipe")) == "salsa-peach");
}

TEST_CASE("what the title of a dish names comes first") {
  // Stock is strained (part 5): its carrots are not canned, and no soup is made of them.
  const std::vector<way> broth = ways({"1 turkey carcass", "2 carrots, in chunks",
                                       "2 onions, quartered", "3 stalks celery", "5 quarts water"},
                                      "title: Turkey Bone Broth\n" + pressure);
  CHECK(kinds(broth) == "as-planned freezer");
  CHECK(id_of(&broth[0]) == "meat-stock-poultry");
  const std::vector<way> beans =
      ways({"14 lb green beans, trimmed", "1/2 lb bacon", "7 tsp salt", "boiling water"},
           "title: Green Beans with Bacon\n" + pressure);
  CHECK(kinds(beans) == "as-planned freezer");
  CHECK(id_of(&beans[0]) == "beans-snap");
  CHECK(says(beans[0].changes, "Leave out: 1/2 lb bacon (cured meat)."));
  // `Chili` is a name of peppers too, and a venison stew is no plain venison.
  const std::vector<way> chili =
      ways({"3 lbs ground beef", "2 large onions, chopped", "1 green bell pepper, chopped",
            "2 (28 oz) cans diced tomatoes", "2 (15 oz) cans kidney beans, drained"},
           "title: Chili\n" + pressure);
  CHECK(id_of(&chili[0]) != "peppers");
  const std::vector<way> stew =
      ways({"4 lb venison stew meat", "2 quarts beef stock", "1 lb carrots", "2 onions"},
           "title: Venison and Vegetable Stew\n" + pressure);
  CHECK(kinds(stew) == "as-planned parts freezer");
  CHECK(id_of(&stew[0]) == "soups");
}

TEST_CASE("a title that was pasted without a blank line is no ingredient of a way") {
  const std::vector<way> all =
      ways({"Beef Stew", "4 lb stew beef, cut in cubes", "12 cups potatoes, peeled and cubed",
            "8 cups sliced carrots", "2 qt beef broth", "1/4 cup flour"},
           pressure);
  const way* soup = of_kind(all, "frame");
  REQUIRE(soup != nullptr);
  CHECK_FALSE(says(soup->changes, "Beef Stew"));
  CHECK(says(soup->changes, "Leave out: 1/4 cup flour (thickener)."));
}

TEST_CASE("store cans stay as they are where the parts get jars of their own") {
  const std::vector<way> all =
      ways({"2 lb ground beef", "1 onion", "1 can (15 oz) pinto beans",
            "1 can (14.5 oz) diced tomatoes", "1 pkt taco seasoning", "2 cups beef broth"},
           pressure);
  const way* parts = of_kind(all, "parts");
  REQUIRE(parts != nullptr);
  CHECK(says(parts->changes,
             "Keep in its can or jar from the store: 1 can (15 oz) pinto beans, 1 "
             "can (14.5 oz) diced tomatoes."));
  CHECK(has_part(*parts, "ground-meat"));
  CHECK_FALSE(has_part(*parts, "beans-dry"));
  CHECK_FALSE(has_part(*parts, "tomatoes-crushed"));
  CHECK(says(parts->changes, "a mix often holds starch or milk"));
}

TEST_CASE("a carcass makes the broth, and is neither canned nor added at serving") {
  const std::vector<way> all =
      ways({"1 whole chicken carcass", "16 cups chicken broth", "3 cups cooked chicken, diced",
            "1 1/2 cups carrots, sliced", "8 oz egg noodles"},
           pressure);
  for (const char* kind : {"frame", "parts", "freezer"}) {
    CAPTURE(kind);
    const way* w = of_kind(all, kind);
    REQUIRE(w != nullptr);
    CHECK(says(w->changes, "1 whole chicken carcass: cook it for the broth only"));
    CHECK_FALSE(says(w->changes, "Leave out: 1 whole chicken carcass"));
    CHECK_FALSE(says(w->changes, "cook fresh: 1 whole chicken carcass"));
  }
}

TEST_CASE(
    "no soup of one food in water, without its main food, or of what loses most of its foods") {
  CHECK(of_kind(ways({"6 lb pork shoulder, cut in cubes", "2 tbsp salt", "1 cup lard"}, pressure),
                "frame") == nullptr);
  // Lentils have no table of their own.
  CHECK(of_kind(ways({"4 cups lentils", "1 cup chopped onion", "2 carrots, sliced",
                      "6 cups vegetable broth"},
                     pressure),
                "frame") == nullptr);
  CHECK(of_kind(ways({"2 eggplants, cubed", "4 zucchini, sliced", "1 onion", "4 cups cabbage",
                      "6 cups vegetable broth"},
                     pressure),
                "frame") == nullptr);
}

// USDA Complete Guide to Home Canning (2015), part 4, dried beans: 5 lb for 7 quarts, 3 1/4 lb for
// 9 pints. A quart has room for 28 fl oz under its headspace (common practice, no source).
TEST_CASE("dried beans count as they fill jars when ready") {
  const std::vector<way> all =
      ways({"5 lb dried navy beans", "4 cups chopped onions", "4 qt vegetable broth"}, pressure);
  const way* soup = &all.front();
  CHECK(id_of(soup) == "soups");
  REQUIRE(soup->amounts);
  CHECK(soup->amounts->unknown.empty());
  CHECK(soup->amounts->swollen);
  // 7 quarts of 3 1/2 cups are 24 1/2 cups; by the pints it is less: 9 * 1 3/4 * 5 / 3 1/4.
  CHECK(soup->amounts->solids->low / 48'000 == 4 + 24);
  CHECK(soup->amounts->solids->high / 48'000 == 4 + 24);
  CHECK(soup->amounts->solids->high > soup->amounts->solids->low);
  CHECK(says(soup->sources, "Guide 4"));
  // Whether `pinto beans` are dry or cooked is unsaid.
  const std::vector<way> unsaid =
      ways({"3 lb pinto beans", "4 cups chopped onions", "4 qt vegetable broth"}, pressure);
  CHECK(says(of_kind(unsaid, "freezer")->amounts->unknown, "3 lb pinto beans"));
}

TEST_CASE("tomatoes in pieces are solids, their juice and sauce are liquid") {
  const std::vector<way> all =
      ways({"2 lb beef stew meat", "4 cups diced tomatoes", "4 cups chopped carrots",
            "2 cups tomato juice", "1 cup tomato sauce", "3 cups beef broth"},
           pressure);
  const way* soup = &all.front();
  CHECK(id_of(soup) == "soups");
  REQUIRE(soup->amounts);
  CHECK(soup->amounts->solids->low == 8 * 48'000);
  CHECK(soup->amounts->liquid->low == 6 * 48'000);
  CHECK(soup->amounts->tomatoes);
  CHECK(soup->amounts->unknown == lines{"2 lb beef stew meat"});
}

TEST_CASE("portions of raw volumes are the most that they can be") {
  const auto text_of = [](const lines& ingredients) {
    const jarproof::plan p =
        fixtures::plan_from(fixtures::ingredients_text(ingredients) + pressure);
    return jarproof::ways_text({"dish.yaml", "", jarproof::ways_of(p, rules), {}}, rules);
  };
  CHECK(text_of({"12 cups sliced carrots", "6 cups beef broth"}).find("at most 12 pint portions") !=
        std::string::npos);
  CHECK(text_of({"12 cups cooked white beans", "6 cups beef broth"})
            .find("portions   12 pint portions") != std::string::npos);
  CHECK(text_of({"12 cups sliced carrots", "3 lb ground beef", "6 cups beef broth"})
            .find("about 12 pint portions and more") != std::string::npos);
  // Without its main food a count would mislead.
  CHECK(text_of({"5 lb ground beef", "1 cup sliced carrots", "1 cup beef broth"})
            .find("pint portion") == std::string::npos);
}

TEST_CASE("a line is shown up to its food, also where that stands behind a comma") {
  const std::vector<way> all =
      ways({"8 cups peeled, diced tomatoes", "6 cups peeled, cubed potatoes, rinsed",
            "2 lb beef stew meat, trimmed", "6 cups beef broth"},
           pressure);
  const way* parts = of_kind(all, "parts");
  REQUIRE(parts != nullptr);
  std::vector<std::string> shown;
  for (const jarproof::way_part& p : parts->parts) {
    for (const std::string& l : p.lines) shown.push_back(l);
  }
  CHECK(shown == lines{"8 cups peeled, diced tomatoes", "6 cups peeled, cubed potatoes",
                       "2 lb beef stew meat"});
}

TEST_SUITE_END();

}  // namespace
}  // namespace ways_dishes_tests
