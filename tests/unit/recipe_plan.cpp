// A plan with a recipe: whose lines it takes over, where findings point, and what it refuses.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <ostream>
#include <string>
#include <string_view>

#include "jarproof/read_recipe.hpp"
#include "support/fixtures.hpp"
#include "support/readings.hpp"

namespace recipe_plan_tests {

using jarproof::document;
using jarproof::plan;
using jarproof::recipe;

namespace {

recipe soup(std::string_view text =
                "Soup\nMakes 9 pints\nIngredients\n3 lb venison\nyak butter\n"
                "Directions\nBoil.\n") {
  return *jarproof::read_recipe_text(text, "soup.txt");
}

document with_recipe(std::string_view yaml, const recipe& r = soup()) {
  document d = fixtures::documents_of(yaml).front();
  jarproof::add_recipe(d, r);
  return d;
}

plan plan_with(std::string_view yaml) {
  const auto read = jarproof::read_plan(with_recipe(yaml));
  if (!read) FAIL(fixtures::line_of(read.errors().front()));
  return *read;
}

std::string faults(const document& d) {
  std::string out;
  const auto read = jarproof::read_plan(d);
  if (read) return out;
  for (const jarproof::problem& p : read.errors())
    out += p.file + ":" + fixtures::line_of(p) + "\n";
  return out;
}

constexpr std::string_view kitchen =
    "recipe: soup.txt\nfood: soups\nas-published: true\npack: hot\njar: pint\nmethod: pressure\n"
    "gauge: weighted\npressure: 15 psi\ntime: 60 min\naltitude: 4600 ft\n";

}  // namespace

TEST_SUITE_BEGIN("recipe");

TEST_CASE("a plan takes over the lines of its recipe") {
  const plan p = plan_with("recipe: soup.txt\nfood: soups\n");
  CHECK(p.recipe->text == "soup.txt");
  CHECK(p.recipe_source == "soup.txt");
  REQUIRE(p.ingredients.size() == 2);
  CHECK(p.ingredients[0].text == "3 lb venison");
  CHECK(fixtures::place_of(p.ingredients[0]) == "4:1");
  CHECK(p.ingredients[0].in_recipe);
  CHECK_FALSE(p.food->in_recipe);
  REQUIRE(p.steps.size() == 1);
  CHECK(p.steps[0].text == "Boil.");
  CHECK(p.title->text == "Soup");
  CHECK(p.yield->text == "9 pints");
}

TEST_CASE("title and yield of the plan stand before those of the recipe") {
  const plan p = plan_with("recipe: soup.txt\ntitle: Second batch\nyield: 4 pints\n");
  CHECK(p.title->text == "Second batch");
  CHECK(p.yield->text == "4 pints");
  CHECK_FALSE(p.yield->in_recipe);
}

TEST_CASE("a plan may hold steps and yield itself") {
  const plan p = fixtures::plan_from("food: soups\nsteps: |\n  Soak.\n  Boil.\nyield: 9 pints\n");
  REQUIRE(p.steps.size() == 2);
  CHECK(fixtures::place_of(p.steps[1]) == "4:3");
  CHECK(p.yield->text == "9 pints");
  CHECK(fixtures::plan_from("steps: [Soak., Boil.]\n").steps.size() == 2);
  CHECK(fixtures::faults_of("steps: >\n  Soak.\n") ==
        "1:8 steps | folded text joins the lines, so two steps would become one | put `|` instead "
        "of `>` after the key, and every line on a line of its own\n");
  CHECK(fixtures::fault_places_of("steps: {a: b}\nyield: [9]\n") == "1:8 steps\n2:8 yield\n");
}

TEST_CASE("two lists of ingredients or steps are one too many") {
  CHECK(faults(with_recipe("recipe: soup.txt\nsteps: [Boil.]\ningredients: [salt]\n")) ==
        "plan.yaml:2:8 steps | `steps` stands beside a recipe, which has its own | leave out "
        "`steps` or the recipe\n"
        "plan.yaml:3:14 ingredients | `ingredients` stands beside a recipe, which has its own | "
        "leave out `ingredients` or the recipe\n");
}

TEST_CASE("a plan whose recipe was not read is no plan") {
  const document d =
      fixtures::documents_of("recipe: soup.txt\nfood: soups\nas-published: true\n").front();
  CHECK(faults(d) ==
        "plan.yaml:1:9 recipe | the recipe `soup.txt` was not read with the plan | write its lines "
        "under "
        "`ingredients`\n");
  CHECK(fixtures::fault_places_of("recipe: [a, b]\n") == "1:9 recipe\n");
}

TEST_CASE("faults of the recipe stand behind those of the plan") {
  document d = with_recipe("recipe: soup.txt\npack: warm\n");
  d.faults.push_back({"soup.txt", 1, 1, "", "broken", "mend it"});
  CHECK(faults(d) ==
        "plan.yaml:2:7 pack | `warm` is no pack | write raw or hot\n"
        "soup.txt:1:1 | broken | mend it\n");
  const jarproof::edition& rules = jarproof::builtin_edition();
  const auto report =
      jarproof::unreadable_report("plan.yaml", jarproof::read_plan(d).errors(), rules);
  CHECK(report.findings[0].file.empty());
  CHECK(report.findings[1].file == "soup.txt");
  CHECK(jarproof::text_of(report, rules).find("  at soup.txt:1:1\n") != std::string::npos);
}

TEST_CASE("a finding about a line of the recipe names the file of the recipe") {
  const jarproof::edition& rules = jarproof::builtin_edition();
  const auto report = jarproof::check(plan_with(kitchen), rules);
  const jarproof::finding* unknown = fixtures::finding_of(report, "ingredient-unknown");
  REQUIRE(unknown != nullptr);
  CHECK(unknown->file == "soup.txt");
  CHECK(fixtures::place_of(*unknown) == "5:1");
  CHECK(jarproof::text_of(report, rules).find("  at soup.txt:5:1 (ingredients)\n") !=
        std::string::npos);
  const std::string json = jarproof::json_line_of(report);
  CHECK(json.find("\"recipe\": \"soup.txt\", \"ingredients\": [{\"line\": 4,") !=
        std::string::npos);
  CHECK(json.find("\"file\": \"soup.txt\", \"line\": 5, \"column\": 1") != std::string::npos);
}

TEST_CASE("findings about the plan itself name no other file") {
  const auto report = jarproof::check(plan_with("recipe: soup.txt\nfood: soups\npack: raw\n"),
                                      jarproof::builtin_edition());
  for (const jarproof::finding& f : report.findings) {
    CAPTURE(f.check);
    CHECK(f.file == (f.field == "ingredients" ? "soup.txt" : ""));
  }
  CHECK(report.findings.size() > 4);
}

TEST_CASE("a recipe alone is a plan with its own places") {
  const auto read = jarproof::read_plan(jarproof::plan_document(soup()));
  REQUIRE(read);
  CHECK(read->source == "soup.txt");
  CHECK(read->line == 1);
  const auto report = jarproof::check(*read, jarproof::builtin_edition());
  CHECK(report.recipe_source.empty());
  CHECK(report.verdict != jarproof::verdict::accepted);
  for (const jarproof::finding& f : report.findings) CHECK(f.file.empty());
}

TEST_SUITE_END();

}  // namespace recipe_plan_tests
