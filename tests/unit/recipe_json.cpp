// Recipes as linked data: schema.org Recipe in JSON and in web pages, and which reader is taken.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <ostream>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/json.hpp"
#include "jarproof/read_recipe.hpp"
#include "support/fixtures.hpp"
#include "support/readings.hpp"

namespace recipe_json_tests {

using jarproof::read_recipe_json;
using jarproof::recipe;
using jarproof::word;

namespace {

std::vector<recipe> recipes_from(std::string_view text) {
  const auto read = read_recipe_json(text, "soup.json");
  if (!read) FAIL(text << "\n" << fixtures::line_of(read.errors().front()));
  return *read;
}

recipe recipe_from(std::string_view text) {
  std::vector<recipe> all = recipes_from(text);
  REQUIRE(all.size() == 1);
  return all.front();
}

std::string lines_of(const std::vector<word>& words) {
  std::string out;
  for (const word& w : words) out += w.text + "\n";
  return out;
}

std::string faults(std::string_view text) {
  const auto read = read_recipe_json(text, "soup.json");
  std::string out;
  if (read) return out;
  for (const jarproof::problem& p : read.errors()) out += fixtures::line_of(p) + "\n";
  return out;
}

std::string with_steps(std::string_view steps) {
  return lines_of(recipe_from(R"({"@type": "Recipe", "recipeIngredient": ["salt"],
                                  "recipeInstructions": )" +
                              std::string(steps) + "}")
                      .steps);
}

}  // namespace

TEST_SUITE_BEGIN("recipe");

TEST_CASE("a Recipe object gives its parts without markup") {
  const recipe r = recipe_from(R"({"@context": "https://schema.org", "@type": "Recipe",
    "name": "Venison &amp; bean soup", "recipeYield": "9 pints",
    "recipeIngredient": ["1&frac12;&nbsp;cups <b>salt</b>", "", "\u25A2 3 lb venison", "a\nb"]})");
  REQUIRE(r.title);
  CHECK(r.title->text == "Venison & bean soup");
  REQUIRE(r.yield);
  CHECK(r.yield->text == "9 pints");
  CHECK(lines_of(r.ingredients) == "1\u00BD cups salt\n3 lb venison\na\nb\n");
  CHECK(fixtures::place_of(r.ingredients[0]) == "0:0");
}

TEST_CASE("a Recipe is found wherever it stands") {
  for (const char* text :
       {R"({"recipeIngredient": ["salt"]})", R"({"@type": ["Recipe"], "ingredients": ["salt"]})",
        R"([{"@type": "WebSite"}, {"@type": "Recipe", "recipeIngredient": ["salt"]}])",
        R"({"@graph": [{"@type": "Person"}, {"@type": "Recipe", "recipeIngredient": ["salt"]}]})",
        R"({"@type": "WebPage", "mainEntity": {"@type": "schema:Recipe",
            "recipeIngredient": "salt"}})",
        R"({"@type": "https://schema.org/Recipe", "recipeIngredient": ["salt"],
            "ingredients": ["salt"]})",
        R"([[{"@type": ["NewsArticle", "Recipe"], "recipeIngredient": ["salt"]}]])"}) {
    CAPTURE(std::string(text));
    CHECK(lines_of(recipe_from(text).ingredients) == "salt\n");
  }
}

TEST_CASE("of several recipes each comes once and mentions do not count") {
  const auto all = recipes_from(R"({"@graph": [
    {"@type": "Recipe", "name": "Soup", "recipeIngredient": ["venison"]},
    {"@type": "Recipe", "name": "The same soup", "recipeIngredient": ["venison"]},
    {"@type": "Recipe", "name": "A mention", "url": "soup.html"},
    {"@type": "Recipe", "name": "Salsa", "recipeIngredient": ["tomatoes"]}]})");
  REQUIRE(all.size() == 2);
  CHECK(all[0].title->text == "Soup");
  CHECK(all[1].title->text == "Salsa");
}

TEST_CASE("instructions of every shape become steps") {
  CHECK(with_steps(R"("Soak.\nBoil.")") == "Soak.\nBoil.\n");
  CHECK(with_steps(R"("<p>Soak.</p><p>Boil &amp; fill.</p>")") == "Soak.\nBoil & fill.\n");
  CHECK(with_steps(R"(["Soak.", "Boil."])") == "Soak.\nBoil.\n");
  CHECK(with_steps(R"([{"@type": "HowToStep", "text": "Soak.", "name": "First"},
                       {"@type": "HowToStep", "name": "Boil."}])") == "First\nSoak.\nBoil.\n");
  // The name is said once where the text begins with it, and is not lost where it does not.
  CHECK(with_steps(R"([{"name": "Soak", "text": "Soak the beans."}])") == "Soak the beans.\n");
  CHECK(with_steps(R"([{"name": "Add noodles", "text": "Boil."}])") == "Add noodles\nBoil.\n");
  CHECK(with_steps(R"([{"@type": "HowToSection", "name": "Broth", "itemListElement": [
                         {"@type": "HowToStep", "text": "Boil."}]}])") == "Broth\nBoil.\n");
  CHECK(with_steps(R"({"@type": "ItemList", "itemListElement": [
                       {"@type": "ListItem", "item": {"text": "Boil."}}]})") == "Boil.\n");
  CHECK(with_steps("null").empty());
}

TEST_CASE("what other fields of a recipe say are notes, and those of a step are steps") {
  const recipe r =
      recipe_from(R"({"@type": "Recipe", "name": "Soup", "recipeIngredient": ["3 lb beans"],
    "recipeYield": ["9 pints", "with 1 cup cream"], "alternateName": "Creamy soup",
    "cookingMethod": "slow cooker", "tool": [{"@type": "HowToTool", "name": "blender"}, "pot"],
    "notes": "Stir in rice.",
    "recipeInstructions": [{"@type": "HowToStep", "text": "Boil.", "supply": ["1 cup flour"],
                            "description": "Let it stand.", "tool": {"name": "masher"}}]})");
  CHECK(lines_of(r.notes) ==
        "9 pints\nwith 1 cup cream\nCreamy soup\nslow cooker\nblender\npot\nStir in rice.\n");
  CHECK(lines_of(r.steps) == "Boil.\nLet it stand.\n1 cup flour\nmasher\n");
}

TEST_CASE("tips and comments are notes, as a text, a list or an object with a text") {
  for (const char* key :
       {"tip", "tips", "note", "notes", "variations", "comment", "articleBody", "headline"}) {
    for (const char* value : {R"("Thicken it.")", R"(["Thicken it."])",
                              R"({"@type": "Comment", "text": "Thicken it."})",
                              R"([{"@type": "Comment", "text": "Thicken it."}])"}) {
      CAPTURE(std::string(key));
      CAPTURE(std::string(value));
      const recipe r = recipe_from(R"({"@type": "Recipe", "recipeIngredient": ["salt"], ")" +
                                   std::string(key) + R"(": )" + value + "}");
      CHECK(lines_of(r.notes) == "Thicken it.\n");
    }
  }
  CHECK(with_steps(R"([{"@type": "HowToStep", "text": "Boil.", "note": "Thicken it."}])") ==
        "Boil.\nThicken it.\n");
}

TEST_CASE("steps may stand under other names") {
  for (const char* key : {"step", "steps", "instructions", "directions"}) {
    const recipe r = recipe_from(R"({"@type": "Recipe", "recipeIngredient": ["3 lb beans"], ")" +
                                 std::string(key) +
                                 R"(": [{"@type": "HowToStep", "text": "Stir in 1 cup rice."}]})");
    CHECK(lines_of(r.steps) == "Stir in 1 cup rice.\n");
  }
}

TEST_CASE("supplies that the list lacks are ingredients, and the description is a note") {
  const recipe r = recipe_from(R"({"@type": "Recipe", "recipeIngredient": ["2 cups carrots"],
    "supply": [{"@type": "HowToSupply", "name": "carrots"}, {"name": "1 cup cream"}, "flour"],
    "description": "A soup that is thickened."})");
  CHECK(lines_of(r.ingredients) == "2 cups carrots\n1 cup cream\nflour\n");
  CHECK(lines_of(r.notes) == "A soup that is thickened.\n");
}

TEST_CASE("a recipe inside a recipe is refused, a mention of one is not") {
  CHECK(faults(R"({"@type": "Recipe", "recipeIngredient": ["salt"],
                   "hasPart": {"@type": "Recipe", "recipeIngredient": ["1 cup flour"]}})")
            .find("a recipe stands inside the recipe") != std::string::npos);
  CHECK(faults(R"({"@type": "Recipe", "recipeIngredient": ["salt"],
                   "isRelatedTo": {"@type": "Recipe", "name": "Bread"}})")
            .empty());
}

TEST_CASE("a yield may be a text or a number or a list") {
  const auto yield = [](std::string_view value) {
    return recipe_from(R"({"@type": "Recipe", "recipeIngredient": ["salt"], "recipeYield": )" +
                       std::string(value) + "}")
        .yield.value_or(word{})
        .text;
  };
  CHECK(yield("\"9 pints\"") == "9 pints");
  CHECK(yield("8") == "8");
  CHECK(yield("[\"8\", \"8 servings\"]") == "8 servings");
  CHECK(yield("[8]") == "8");
  CHECK(yield("{\"value\": 8}").empty());
  CHECK(yield("[]").empty());
}

TEST_CASE("a web page gives the recipe of its scripts") {
  const std::string_view page =
      "<!DOCTYPE html><html><head>\xFF<SCRIPT>var a = \"<\";</SCRIPT>\n"
      "<script type=\"application/ld+json\">{\"@type\": \"Organization\",</script>\n"
      "<script class=\"x\" type='application/ld+json'>\n//<![CDATA[\n"
      "{\"@type\": \"Recipe\", \"recipeIngredient\": [\"salt\"]}\n//]]>\n</Script></head></html>";
  CHECK(lines_of(recipe_from(page).ingredients) == "salt\n");
  CHECK(lines_of(recipe_from("\xEF\xBB\xBF \n<script type=application/ld+json><!--\n"
                             "[{\"@type\": \"Recipe\", \"recipeIngredient\": [\"salt\"]}]\n-->")
                     .ingredients) == "salt\n");
}

TEST_CASE("a key twice matters where it is read and nowhere else") {
  CHECK(faults(R"({"@type": "Recipe", "image": 1, "image": 2, "recipeIngredient": ["salt"]})")
            .empty());
  CHECK(faults(R"({"@graph": [{"@type": "Recipe", "recipeIngredient": ["salt"],
                   "recipeIngredient": ["cream"]}]})") ==
        "0:0 @graph[1].recipeIngredient | `recipeIngredient` stands twice | keep one of the two\n");
}

TEST_CASE("what a text begins with says how it is read") {
  const auto lines = [](std::string_view text) {
    const auto read = jarproof::read_recipes(text, "soup");
    if (!read) FAIL(fixtures::line_of(read.errors().front()));
    return lines_of(read->front().ingredients);
  };
  CHECK(lines("Ingredients\nsalt\n") == "salt\n");
  CHECK(lines("[ ] salt\n[x] cream\n") == "salt\ncream\n");
  CHECK(lines("\xEF\xBB\xBF\n {\"recipeIngredient\": [\"salt\"]}") == "salt\n");
  CHECK(lines(" [{\"recipeIngredient\": [\"salt\"]}]") == "salt\n");
  CHECK(lines("<div><script type=\"application/ld+json\">{\"recipeIngredient\": [\"salt\"]}"
              "</script></div>") == "salt\n");
}

TEST_CASE("both example recipes hold the same ingredients") {
  const auto read = [](const char* ending) {
    const std::string file = std::string("examples/recipes/venison-white-bean-soup") + ending;
    const auto recipes = jarproof::read_recipes(fixtures::file_text(file), file);
    REQUIRE(recipes);
    REQUIRE(recipes->size() == 1);
    return recipes->front();
  };
  const recipe text = read(".txt");
  const recipe json = read(".json");
  CHECK(lines_of(text.ingredients) == lines_of(json.ingredients));
  CHECK(text.steps.size() == json.steps.size());
  CHECK(text.title->text == json.title->text);
  CHECK(text.ingredients.size() == 4);
}

TEST_SUITE_END();

}  // namespace recipe_json_tests
