// The ways of a dish. Numbers: USDA Complete Guide to Home Canning (2015), part 4 (soups: pints 60,
// quarts 75, with seafood 100 min), part 5 (chile con carne: pints 75 min). Weights of measures:
// USDA SR 27, as in rules/ingredients (carrots, sliced: 122 g a cup, NDB 11124).
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "jarproof/format/ways.hpp"
#include "jarproof/ways.hpp"
#include "support/dishes.hpp"
#include "support/fixtures.hpp"

namespace ways_tests {
namespace {

using fixtures::lines;
using jarproof::way;

const jarproof::edition& rules = jarproof::builtin_edition();

std::string plan_of(const lines& ingredients, const std::string& more) {
  return fixtures::ingredients_text(ingredients) + more;
}
const std::string mountain = "method: pressure\ngauge: weighted\naltitude: 4600 ft\n";

std::vector<way> ways(const std::string& yaml) {
  return jarproof::ways_of(fixtures::plan_from(yaml), rules);
}
std::string kinds(const std::vector<way>& all) {
  std::string out;
  for (const way& w : all) out += (out.empty() ? "" : " ") + w.kind;
  return out;
}
const way& of_kind(const std::vector<way>& all, const char* kind) {
  const auto at =
      std::find_if(all.begin(), all.end(), [&](const way& w) { return w.kind == kind; });
  REQUIRE(at != all.end());
  return *at;
}
bool says(const std::vector<std::string>& texts, const std::string& part) {
  return std::any_of(texts.begin(), texts.end(),
                     [&](const std::string& t) { return t.find(part) != std::string::npos; });
}
std::string id_of(const way& w) { return w.process == nullptr ? "" : std::string(w.process->id); }
const jarproof::way_part* part_named(const way& w, std::string_view id) {
  for (const jarproof::way_part& p : w.parts) {
    if (p.process->id == id) return &p;
  }
  return nullptr;
}

lines stew() {
  return {"3 lb venison, cubed",   "8 cups cooked white beans",
          "4 cups chopped onion",  "1 lb carrots, sliced",
          "2 cups chopped celery", "2 qt beef broth",
          "1/4 cup flour",         "1 cup cream",
          "8 oz noodles"};
}

TEST_SUITE_BEGIN("ways");

TEST_CASE("a thickened venison and bean stew becomes a soup with the rest at serving") {
  const std::vector<way> all = ways(plan_of(stew(), "jar: pint\n" + mountain));
  CHECK(kinds(all) == "frame parts freezer");
  const way& soup = all[0];
  CHECK(id_of(soup) == "soups");
  CHECK(soup.altered == 4);
  CHECK(says(soup.changes, "Leave out: 1/4 cup flour (thickener). Thicken with it"));
  CHECK(says(soup.changes, "Leave out: 2 cups chopped celery (no process of its own). Add it"));
  CHECK(says(soup.changes, "Stir in at serving: 1 cup cream, 8 oz noodles."));
  CHECK(says(soup.changes, "Boil 5 minutes."));
  CHECK(says(soup.changes, "Fill each jar half with solids"));
  CHECK_FALSE(says(soup.changes, "Rehydrate"));
  REQUIRE(soup.numbers.required);
  CHECK(soup.numbers.required->time_min == 60);
  CHECK(soup.numbers.required->pressure_psi == 15);
  CHECK(soup.numbers.required->jar == "pint");
  CHECK(says(soup.notes, "75 min"));  // venison alone
}

TEST_CASE("the amounts of the soup are those of the published weights") {
  const way soup = ways(plan_of(stew(), "jar: pint\n" + mountain))[0];
  REQUIRE(soup.amounts);
  const jarproof::way_amounts& a = *soup.amounts;
  CHECK(a.unknown == lines{"3 lb venison, cubed"});
  // 8 + 4 cups, and a pound of carrots: 453,592 mg at 122 g a cup are 178,462 of 48,000 parts.
  REQUIRE(a.solids);
  CHECK(a.solids->low == 12 * 48'000 + 178'462);
  REQUIRE(a.liquid);
  CHECK(a.liquid->low == 8 * 48'000);
  CHECK(a.liquid->high == 8 * 48'000);
  // Half of 14 fl oz is 7/8 cup: 17 pints with 714,000 parts, 40,462 left; as much broth, of which
  // 8 cups are there.
  REQUIRE(a.jars.size() == 2);
  CHECK(a.jars[0].jar == "pint");
  CHECK(a.jars[0].solids == 42'000);
  CHECK(a.jars[0].count == 17);
  CHECK(a.jars[0].left == 40'462);
  CHECK(a.jars[0].missing == 714'000 - 384'000);
  CHECK(a.jars[1].jar == "quart");
  CHECK(a.jars[1].solids == 84'000);
  CHECK(a.jars[1].count == 8);
}

TEST_CASE("what swells or shrinks on the way has no volume") {
  const way soup = ways(plan_of(
      {"2 cups dried pinto beans", "4 cups spinach", "2 cups chopped onion", "4 cups beef broth"},
      "jar: pint\n" + mountain))[0];
  REQUIRE(soup.amounts);
  CHECK(soup.amounts->unknown == lines{"4 cups spinach"});
  // Dried beans by the published yield: 2 cups of 193 g are 0.85 lb, of which 3 1/4 fill 9 pints.
  CHECK(soup.amounts->solids->low / 48'000 == 2 + 4);
}

TEST_CASE("a dish that is a soup already is shown as planned, with its amounts") {
  const std::vector<way> all =
      ways(plan_of({"3 cups chopped onion", "4 cups chopped carrots", "4 cups beef broth"},
                   "pack: hot\njar: pint\ntime: 60 min\npressure: 10 psi\nsolids: 1/2\n"
                   "prepared: [boiled 5 min]\n" +
                       mountain));
  CHECK(kinds(all) == "as-planned parts freezer");
  CHECK(says(all[0].changes, "15 psi"));
  REQUIRE(all[0].amounts);
  CHECK(all[0].amounts->jars[0].count == 8);
  CHECK(all[0].amounts->jars[0].missing == 8 * 42'000 - 4 * 48'000);
}

TEST_CASE("a plain food under pressure is shown as planned") {
  const std::vector<way> all = ways("food: beets\npack: hot\njar: quart\n" + mountain);
  CHECK(kinds(all) == "as-planned freezer");
  CHECK(all[0].numbers.required->time_min == 35);
  CHECK(all[0].changes.empty());
}

TEST_CASE("a jar or a gauge that the table does not have") {
  const std::vector<way> all =
      ways("food: chile con carne\nas-published: true\npack: hot\njar: quart\n" + mountain);
  CHECK(kinds(all) == "as-planned freezer");
  CHECK(says(all[0].changes, "Use pint jars or smaller"));
  CHECK(all[0].changes.size() == 1);
  CHECK(all[0].numbers.required->jar == "pint");
}

TEST_CASE("chili with bacon: the published recipe without it, and soup, and its parts") {
  const std::vector<way> all =
      ways(plan_of({"3 cups dried pinto beans", "3 lb ground beef", "1/2 lb bacon, chopped",
                    "1 1/2 cups chopped onions", "1 cup chopped peppers", "3 tbsp chili powder",
                    "5 tsp salt", "2 qt crushed tomatoes"},
                   "food: chili\njar: quart\n" + mountain));
  CHECK(kinds(all) == "recipe frame parts freezer");
  CHECK(id_of(all[0]) == "chile-con-carne");
  CHECK(says(all[0].changes, "It has no \"1/2 lb bacon, chopped\"."));
  CHECK(says(all[0].changes, "Use pint jars or smaller."));
  CHECK(all[0].numbers.required->jar == "pint");
  CHECK(all[0].numbers.required->time_min == 75);
  CHECK(says(all[1].changes, "Rehydrate the dried beans"));
  CHECK(says(all[1].changes, "bacon (cured meat)"));
  // As a soup it is a variant of chile con carne: in pints only, and for the time of that recipe.
  CHECK(says(all[1].changes, "Use pint jars or smaller."));
  CHECK(all[1].numbers.required->jar == "pint");
  CHECK(all[1].numbers.required->time_min == 75);
  const jarproof::way_part* tomatoes = part_named(all[2], "tomatoes-crushed");
  REQUIRE(tomatoes != nullptr);
  CHECK(says(tomatoes->changes, "1/4 tsp of citric acid per pint"));
  const jarproof::way_part* peppers = part_named(all[2], "peppers");
  REQUIRE(peppers != nullptr);
  CHECK(peppers->numbers.required->jar == "pint");
  CHECK(says(peppers->changes, "Use pint jars or smaller."));
}

TEST_CASE("own salsa: the nearest recipe and its parts, never a soup") {
  const std::vector<way> all = ways(
      plan_of({"5 lb tomatoes, peeled and chopped", "3 lb chile peppers, chopped",
               "2 lb onions, chopped", "1 cup vinegar (5%)", "3 tsp salt", "1 cup corn kernels"},
              "jar: pint\nmethod: boiling-water\naltitude: 4600 ft\n"));
  CHECK(kinds(all) == "recipe parts freezer");
  CHECK(says(all[0].changes, "It has no \"1 cup corn kernels\"."));
  CHECK(all[0].numbers.required->method == "boiling-water");
  const jarproof::way_part* peppers = part_named(all[1], "peppers");
  REQUIRE(peppers != nullptr);
  CHECK(says(peppers->changes, "Use a pressure canner."));
  CHECK(peppers->numbers.required->method == "pressure");
}

TEST_CASE("thick potato soup in half-gallon jars: thin, and in quarts at most") {
  const std::vector<way> all =
      ways(plan_of({"3 lb potatoes, diced", "2 cups chopped onion", "1/4 cup flour",
                    "6 cups chicken broth", "2 cups heavy cream"},
                   "title: Potato soup\njar: half-gallon\n" + mountain));
  const way& soup = of_kind(all, "frame");
  CHECK(says(soup.changes, "Use quart jars or smaller."));
  CHECK(soup.numbers.required->jar == "quart");
  CHECK(soup.numbers.required->time_min == 75);
  CHECK(soup.amounts->jars[0].jar == "quart");
  CHECK(says(of_kind(all, "freezer").changes, "3 lb potatoes: add when reheating"));
}

TEST_CASE("fish chowder goes by the soup with seafood") {
  const std::vector<way> all =
      ways(plan_of({"2 lb salmon fillets", "1 lb potatoes, diced", "1 cup chopped onion",
                    "4 cups fish stock", "2 cups milk", "3 tbsp flour"},
                   "title: Fish chowder\njar: pint\n" + mountain));
  const way& soup = of_kind(all, "frame");
  CHECK(id_of(soup) == "soups-with-seafood");
  CHECK(soup.numbers.required->time_min == 100);
  CHECK(says(soup.changes, "Stir in at serving: 2 cups milk."));
}

TEST_CASE("acid fruit is no soup") {
  const std::vector<way> all =
      ways(plan_of({"2 lb apples, sliced", "1 lb pears, sliced"},
                   "jar: pint\nmethod: boiling-water\naltitude: 4600 ft\n"));
  CHECK(kinds(all) == "parts freezer");
  CHECK(all[0].parts.size() == 2);
}

TEST_CASE("a food that is only named") {
  const std::vector<way> stew_ways = ways("food: beef stew\njar: pint\n" + mountain);
  CHECK(kinds(stew_ways) == "frame freezer");
  CHECK(id_of(stew_ways[0]) == "soups");
  CHECK(says(stew_ways[0].changes, "half solids and half broth"));
  CHECK(id_of(ways("food: own chili\njar: pint\n" + mountain)[0]) == "chile-con-carne");
  const std::vector<way> several = ways("food: soup\njar: pint\n" + mountain);
  CHECK(kinds(several) == "frame frame freezer");
  CHECK(says(several[0].changes, "Write `food: soups"));
  CHECK(kinds(ways("food: no such food at all\njar: pint\n" + mountain)) == "freezer");
}

TEST_CASE("nothing is guessed for a jar, an altitude or a gauge that is unsaid") {
  const std::string lines_only = plan_of(stew(), "method: pressure\n");
  const way by_jar = ways(lines_only + "gauge: dial\naltitude: 4600 ft\n")[0];
  CHECK_FALSE(by_jar.numbers.required);
  CHECK(by_jar.numbers.missing == lines{"jar"});
  REQUIRE(by_jar.numbers.by_jar.size() == 2);
  CHECK(by_jar.numbers.by_jar[0].jar == "pint");
  CHECK(by_jar.numbers.by_jar[1].time_min == 75);
  const way nowhere = ways(lines_only + "jar: pint\n")[0];
  CHECK_FALSE(nowhere.numbers.required);
  CHECK(nowhere.numbers.by_jar.empty());
  CHECK(nowhere.numbers.missing == lines{"altitude"});
  const way no_gauge = ways(lines_only + "jar: pint\naltitude: 4600 ft\n")[0];
  CHECK(no_gauge.numbers.missing == lines{"gauge"});
  CHECK(no_gauge.numbers.required->gauge == "dial");
}

TEST_CASE("above the tables only the freezer is left") {
  const std::string high = "jar: pint\nmethod: pressure\ngauge: dial\naltitude: ";
  CHECK(kinds(ways(plan_of(stew(), high + "10000 ft\n"))) == "frame parts freezer");
  const std::vector<way> all = ways(plan_of(stew(), high + "10001 ft\n"));
  CHECK(kinds(all) == "freezer");
  CHECK(says(all[0].notes, "Above 10,000 ft"));
  CHECK_FALSE(jarproof::reaches_shelf(all));
}

TEST_CASE("a line that is not understood stays out of the jar") {
  const std::vector<way> all = ways(plan_of(
      {"2 cups zorblax", "3 cups chopped onion", "2 qt beef broth"}, "jar: pint\n" + mountain));
  CHECK(says(of_kind(all, "frame").changes, "2 cups zorblax (not understood)"));
  CHECK(says(of_kind(all, "freezer").amounts->unknown, "zorblax"));
}

TEST_CASE("one part of a line is left out, and a word that decides") {
  const std::vector<way> all =
      ways(plan_of({"2 lb beef stew meat, browned in butter", "2 cups pureed carrots",
                    "3 cups chopped onion", "2 qt beef broth"},
                   "jar: pint\n" + mountain));
  const way& soup = of_kind(all, "frame");
  CHECK(says(soup.changes, "butter with \"2 lb beef stew meat\""));
  CHECK(says(soup.changes, "pureed"));
}

TEST_CASE("numbers of a list are not shown, and water for a step is no broth") {
  const std::vector<way> all =
      ways(plan_of({"1. 3 cups chopped onion", "2. 1/2 head of cabbage, shredded",
                    "3. 4 cups beef broth", "4. 3 cups water, for soaking"},
                   "jar: pint\n" + mountain));
  const way& soup = of_kind(all, "frame");
  CHECK(says(soup.changes, "Leave out: 1/2 head of cabbage (no process of its own)."));
  CHECK(soup.amounts->liquid->low == 4 * 48'000);
}

TEST_CASE("what is for the table already is left alone") {
  const std::vector<way> all =
      ways(plan_of({"3 cups chopped onion", "2 qt beef broth", "To serve:", "1 cup cream"},
                   "jar: pint\nsolids: 1/2\n" + mountain));
  for (const way& w : all) CHECK_FALSE(says(w.changes, "cream"));
}

TEST_CASE("food that stood too long is discarded on every way") {
  const std::vector<way> all =
      ways(plan_of(stew(), "jar: pint\nheld: {for: 5 h, at: 70 F}\n" + mountain));
  for (const way& w : all) CHECK(says({w.changes.front()}, "discard it"));
}

TEST_CASE("a process whose numbers nobody could read again is not named") {
  const std::vector<way> all = ways(
      "food: mango sauce\njar: pint\nmethod: boiling-water\n"
      "altitude: 4600 ft\n");
  for (const way& w : all) CHECK(id_of(w) != "mango-sauce");
}

TEST_CASE("freezer portions are counted from the known volumes") {
  // 12 cups and 178,462 parts of solids, 2 of celery, 8 of broth, 1/4 of flour: pints of 12 fl oz.
  const way freezer = of_kind(ways(plan_of(stew(), "jar: pint\n" + mountain)), "freezer");
  REQUIRE(freezer.amounts->portions);
  CHECK(*freezer.amounts->portions == (22 * 48'000 + 12'000 + 178'462) / 72'000);
  CHECK(says(freezer.changes, "1 1/2 in of headspace"));
  CHECK(says(freezer.changes, "165 F"));
}

TEST_CASE("the JSON of one plan, and of several") {
  const jarproof::plan what = fixtures::plan_from(plan_of(stew(), "jar: pint\n" + mountain));
  const jarproof::found_ways one{"stew.yaml", "Stew", jarproof::ways_of(what, rules), {}};
  const std::string text = jarproof::ways_json({one});
  CHECK(text.find("{\n  \"source\": \"stew.yaml\",\n  \"title\": \"Stew\",\n  \"ways\": [") == 0);
  CHECK(text.find("\"kind\": \"frame\"") != std::string::npos);
  CHECK(text.find("\"process\": \"soups\"") != std::string::npos);
  CHECK(jarproof::ways_json({one, one}).find("{\n  \"plans\": [") == 0);
}

TEST_CASE("the text is narrow and never says safe") {
  const jarproof::plan what = fixtures::plan_from(plan_of(stew(), "jar: pint\n" + mountain));
  const std::string text =
      jarproof::ways_text({"stew.yaml", "", jarproof::ways_of(what, rules), {}}, rules);
  std::size_t from = 0;
  while (from < text.size()) {
    const std::size_t end = text.find('\n', from);
    CHECK(end - from <= 60);
    from = end + 1;
  }
  CHECK(text.find("safe") == std::string::npos);
}

TEST_CASE("the soup way undoes what the directions mash, and names no jar the recipe lacks") {
  const std::string steps = "steps: [Blend half of the peas until smooth.]\n";
  const way peas = ways(plan_of({"1 lb dried green split peas", "2 cups sliced carrots",
                                 "2 cups chopped onions", "1 cup chopped celery", "8 cups water"},
                                steps + "jar: pint\n" + mountain))[0];
  CHECK(peas.kind == "frame");
  CHECK(says(peas.changes, "freeze the puree"));
  // A chili of one's own is held to chile con carne, which has pints alone (USDA Complete Guide
  // 2015, part 5, page 5-8).
  const way chili =
      ways(plan_of({"3 lb ground beef", "2 cups dried kidney beans", "2 cups chopped onions",
                    "1 cup chopped bell pepper", "2 quarts crushed tomatoes",
                    "1/4 cup chili powder", "2 tsp salt", "8 cups beef broth", "1 cup beer"},
                   "jar: pint\n" + mountain))[0];
  CHECK(chili.kind == "frame");
  REQUIRE(chili.amounts);
  REQUIRE(chili.amounts->jars.size() == 1);
  CHECK(chili.amounts->jars[0].jar == "pint");
}

TEST_SUITE_END();

}  // namespace
}  // namespace ways_tests
