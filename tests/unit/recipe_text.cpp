// Recipes as pasted text: which lines are ingredients, where they stand, and what is not lost.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <ctime>
#include <ostream>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/read_recipe.hpp"
#include "support/readings.hpp"

namespace recipe_text_tests {

using jarproof::read_recipe_text;
using jarproof::recipe;
using jarproof::word;

namespace {

recipe recipe_from(std::string_view text) {
  const auto read = read_recipe_text(text, "soup.txt");
  if (!read) FAIL(text << "\n" << fixtures::line_of(read.errors().front()));
  return *read;
}

std::string lines_of(const std::vector<word>& words) {
  std::string out;
  for (const word& w : words) out += w.text + "\n";
  return out;
}

std::string ingredients_of(std::string_view text) {
  return lines_of(recipe_from(text).ingredients);
}

std::string faults(std::string_view text) {
  const auto read = read_recipe_text(text, "soup.txt");
  std::string out;
  if (read) return out;
  for (const jarproof::problem& p : read.errors()) out += fixtures::line_of(p) + "\n";
  return out;
}

constexpr std::string_view soup =
    "Venison soup\n"
    "\n"
    "From the mountains.\n"
    "Yield: 9 pints\n"
    "\n"
    "Ingredients\n"
    "- 3 lb venison, cubed\n"
    "- 2 cups dried white beans\n"
    "  \u2022 salt to taste\n"
    "\n"
    "For the broth:\n"
    "1 onion\n"
    "\n"
    "Directions:\n"
    "1. Soak the beans.\n"
    "2. Boil everything,\n"
    "   then fill the jars.\n"
    "\n"
    "Notes\n"
    "2 cups of cream come in at the table.\n";

}  // namespace

TEST_SUITE_BEGIN("recipe");

TEST_CASE("a recipe with headings comes apart into its parts") {
  const recipe r = recipe_from(soup);
  CHECK(r.source == "soup.txt");
  REQUIRE(r.title);
  CHECK(r.title->text == "Venison soup");
  CHECK(fixtures::place_of(*r.title) == "1:1");
  REQUIRE(r.yield);
  CHECK(r.yield->text == "9 pints");
  CHECK(r.yield->line == 4);
  CHECK(lines_of(r.ingredients) ==
        "3 lb venison, cubed\n2 cups dried white beans\nsalt to taste\nFor the broth:\n1 onion\n");
  CHECK(fixtures::place_of(r.ingredients[0]) == "7:3");
  CHECK(fixtures::place_of(r.ingredients[2]) == "9:5");
  CHECK(fixtures::place_of(r.ingredients[4]) == "12:1");
  CHECK(lines_of(r.steps) == "Soak the beans.\nBoil everything, then fill the jars.\n");
  CHECK(fixtures::place_of(r.steps[0]) == "15:4");
  CHECK(lines_of(r.notes) == "From the mountains.\n2 cups of cream come in at the table.\n");
}

TEST_CASE("line ends of other systems and a byte order mark change nothing") {
  std::string crlf = "\xEF\xBB\xBF";
  std::string cr;
  for (const char c : soup) {
    crlf += c == '\n' ? "\r\n" : std::string(1, c);
    cr += c == '\n' ? '\r' : c;
  }
  for (const std::string& text : {crlf, cr}) {
    const recipe r = recipe_from(text);
    CHECK(lines_of(r.ingredients) == lines_of(recipe_from(soup).ingredients));
    CHECK(lines_of(r.steps) == lines_of(recipe_from(soup).steps));
    CHECK(fixtures::place_of(r.ingredients[4]) == "12:1");
  }
}

TEST_CASE("headings are known in many shapes") {
  for (const char* heading :
       {"Ingredients", "INGREDIENTS:", "## Ingredients", "**Ingredients**", "**Ingredients:**",
        "Ingredients (for 9 pints)", "Ingredients for the soup",
        "Ingredient list:", "You will need:", "Soup ingredients", "What you'll need",
        "<h2>Ingredients</h2>", "- Ingredients -"}) {
    CAPTURE(heading);
    CHECK(ingredients_of("Soup\n" + std::string(heading) + "\nsalt\n\nMethod\nBoil\n") == "salt\n");
  }
  for (const char* heading :
       {"Method", "DIRECTIONS", "Instructions:", "### Steps", "Preparation", "**Directions:**",
        "Canning instructions", "Directions for canning", "How to make it"}) {
    CAPTURE(heading);
    const recipe r = recipe_from("Ingredients\nsalt\n" + std::string(heading) + "\nBoil\n");
    CHECK(lines_of(r.ingredients) == "salt\n");
    CHECK(lines_of(r.steps) == "Boil\n");
  }
}

TEST_CASE("what stands behind a heading in its line is not lost") {
  const recipe r = recipe_from("Ingredients: 3 lb venison\nDirections: 1. Boil it.\n");
  REQUIRE(r.ingredients.size() == 1);
  CHECK(r.ingredients[0].text == "3 lb venison");
  CHECK(fixtures::place_of(r.ingredients[0]) == "1:14");
  CHECK(lines_of(r.steps) == "Boil it.\n");
  // Not a heading: nothing says that the list begins behind these words.
  CHECK(ingredients_of("Ingredients\nIngredients 3 lb flour\n") == "Ingredients 3 lb flour\n");
}

TEST_CASE("a time of preparation is no heading") {
  const recipe r = recipe_from("Soup\n\n3 lb venison\nPreparation: 20 min\n2 cups cream\n");
  CHECK(lines_of(r.ingredients) == "3 lb venison\n2 cups cream\n");
}

TEST_CASE("below the heading every line is an ingredient") {
  CHECK(ingredients_of("Ingredients\nCream\nNote: thickened with flour before canning.\nSalt.\n"
                       "Serves 8 with 1 cup cream\nMakes a fine soup\nMethod\nBoil\n") ==
        "Cream\nNote: thickened with flour before canning.\nSalt.\nServes 8 with 1 cup cream\n"
        "Makes a fine soup\n");
}

TEST_CASE("a count of jars above the list is the yield") {
  for (const char* yield : {"About 9 pints", "7 quarts", "18 pints, two canner loads"}) {
    CAPTURE(std::string(yield));
    const recipe r = recipe_from("Bean soup\n" + std::string(yield) +
                                 "\nIngredients\n2 lb beans\nMethod\nBoil.\n");
    REQUIRE(r.yield);
    CHECK(r.yield->text == yield);
    CHECK(lines_of(r.ingredients) == "2 lb beans\n");
  }
  // What is more than jars is read as a line.
  CHECK(ingredients_of("Ingredients\n2 lb beans\nMakes 1 cup flour slurry\nMethod\nBoil.\n") ==
        "2 lb beans\nMakes 1 cup flour slurry\n");
  CHECK(ingredients_of("Bean soup\n2 quarts cream\nIngredients\n2 lb beans\nMethod\nBoil.\n") ==
        "2 quarts cream\n2 lb beans\n");
}

TEST_CASE("numbers behind a list without a further heading are steps") {
  const recipe r = recipe_from(
      "Beans\nYou need:\n3 lb beans\n2 t. salt\n1) Boil the beans 2 minutes.\n2) Fill the jars.\n");
  CHECK(lines_of(r.ingredients) == "3 lb beans\n2 t. salt\n");
  CHECK(lines_of(r.steps) == "Boil the beans 2 minutes.\nFill the jars.\n");
}

TEST_CASE("a dish right above its first amount is the title of a recipe with directions") {
  const std::string rest =
      "\n3 lb beans\n2 qt broth\nBoil the beans until they are soft and fill the jars.\n";
  for (const char* title : {"Dad's Chili", "Beef Stew", "GREEN TOMATO RELISH"}) {
    const recipe r = recipe_from(title + rest);
    REQUIRE(r.title);
    CHECK(r.title->text == title);
    CHECK(lines_of(r.ingredients) == "3 lb beans\n2 qt broth\n");
  }
  for (const char* line : {"Chili", "Hot sauce", "Chicken broth", "Salt", "Soup, canned"}) {
    const recipe r = recipe_from(line + rest);
    CHECK_FALSE(r.title);
    CHECK(lines_of(r.ingredients) == std::string(line) + "\n3 lb beans\n2 qt broth\n");
  }
  CHECK_FALSE(recipe_from("Beef Stew\n3 lb beans\n2 qt broth\n").title);
}

TEST_CASE("reviews are asides, and tips, comments and what stands below nutrition are notes") {
  const recipe r = recipe_from(
      "Beans\nIngredients\n3 lb beans\nMethod\nBoil.\nTips\nStir in cream.\nNutrition\nFat 5 g\n"
      "Comments\nI add rice.\nReviews\nI thickened mine.\n");
  CHECK(lines_of(r.notes) == "Stir in cream.\nFat 5 g\nI add rice.\n");
  CHECK(lines_of(r.asides) == "I thickened mine.\n");
}

TEST_CASE("several lists of one recipe are all read") {
  CHECK(ingredients_of("Soup ingredients\n3 lb venison\nMethod\nBoil.\nSauce ingredients\n1 cup "
                       "cream\nMethod\nStir.\n") == "3 lb venison\n1 cup cream\n");
  CHECK(
      ingredients_of("Ingredients\n3 lb venison\nFor the sauce\n1 cup cream\nFor the sauce, flour\n"
                     "Method\nBoil\n") ==
      "3 lb venison\nFor the sauce\n1 cup cream\nFor the sauce, flour\n");
  CHECK(ingredients_of("Ingredients\n2 cups flour:\nMethod\n") == "2 cups flour:\n");
}

TEST_CASE("a list without a heading behind it ends at the first long sentence") {
  const recipe r = recipe_from(
      "Ingredients\n3 lb venison\nSalt.\n\n"
      "Brown the venison in a large kettle and cover it well with water.\n");
  CHECK(lines_of(r.ingredients) == "3 lb venison\nSalt.\n");
  CHECK(r.steps.size() == 1);
}

TEST_CASE("a plain list is a recipe") {
  const recipe r = recipe_from("3 lb venison\nsalt to taste\n2 cups cream\n");
  CHECK(lines_of(r.ingredients) == "3 lb venison\nsalt to taste\n2 cups cream\n");
  CHECK_FALSE(r.title);
  CHECK(ingredients_of("cream\n3 lb venison\n") == "cream\n3 lb venison\n");
  CHECK(ingredients_of("cream\n\n3 lb venison\n\nsalt\n") == "cream\n3 lb venison\nsalt\n");
}

TEST_CASE("without headings amounts and short lines are ingredients and sentences are steps") {
  const recipe r = recipe_from(
      "# Venison soup\n"
      "Prep time: 20 min\n"
      "Serves 8\n"
      "3 lb venison, trimmed of all fat and cut in even cubes of about an inch\n"
      "\u00BD cup salt\n"
      "about 2 cups white beans\n"
      "pepper\n"
      "\n"
      "Brown the venison, add the beans and the water, and boil it all for 30 minutes.\n"
      "Fill.\n");
  REQUIRE(r.title);
  CHECK(r.title->text == "Venison soup");
  CHECK(lines_of(r.ingredients) ==
        "3 lb venison, trimmed of all fat and cut in even cubes of about an inch\n\u00BD cup salt\n"
        "about 2 cups white beans\npepper\n");
  CHECK(r.steps.size() == 2);
  REQUIRE(r.yield);
  CHECK(r.yield->text == "Serves 8");
}

TEST_CASE("a title without headings needs a sign or a blank line below it") {
  CHECK(recipe_from("Soup\n\n1 lb beans\n2 onions\n").title);
  CHECK(recipe_from("Soup\n====\n1 lb beans\n2 onions\n").title);
  CHECK_FALSE(recipe_from("Flour\n1 lb beans\n2 onions\n").title);
  CHECK(ingredients_of("Flour\n1 lb beans\n2 onions\n") == "Flour\n1 lb beans\n2 onions\n");
}

TEST_CASE("bullets and numbers go and amounts stay") {
  CHECK(ingredients_of("Ingredients\n* 1 onion\n+ 2 onions\n\u25A2 3 onions\n[ ] 4 onions\n"
                       "\u2013 5 onions\n\u2022\n6 onions\n#10 can of beans\n1.5 lb beans\n") ==
        "1 onion\n2 onions\n3 onions\n4 onions\n5 onions\n6 onions\n#10 can of beans\n1.5 lb "
        "beans\n");
  CHECK(ingredients_of("Ingredients\n1. 3 lb venison\n2. cream\n3) 1 onion\n") ==
        "3 lb venison\ncream\n1 onion\n");
  CHECK(ingredients_of("Ingredients\n3. oz cream\n") == "3. oz cream\n");
}

TEST_CASE("a broken line is put together again") {
  CHECK(
      ingredients_of("Ingredients\n2 lb carrots,\n  sliced thin\n1 cup vinegar plus\n2 tbsp more\n"
                     "1 can (15 oz,\ndrained) beans\n3 cups beans\n(about 1 lb)\nsalt and\npepper\n"
                     "salt to taste\n") ==
      "2 lb carrots, sliced thin\n1 cup vinegar plus 2 tbsp more\n1 can (15 oz, drained) beans\n"
      "3 cups beans (about 1 lb)\nsalt and pepper\nsalt to taste\n");
  const recipe r = recipe_from("Ingredients\n- 2 lb carrots,\n  sliced\n- 1 onion\n");
  CHECK(fixtures::place_of(r.ingredients[0]) == "2:3");
  CHECK(fixtures::place_of(r.ingredients[1]) == "4:3");
}

TEST_CASE("joining lines swallows no ingredient") {
  // A list with commas at the ends of its lines.
  CHECK(ingredients_of("Ingredients\n3 lb venison,\n2 cups cream,\n1 onion\n") ==
        "3 lb venison,\n2 cups cream,\n1 onion\n");
  CHECK(ingredients_of("Ingredients\n- salt and\n- flour\n") == "salt and\nflour\n");
  CHECK(ingredients_of("Ingredients\n2 cups beans (soaked\n1 lb flour\n1 lb cream\n") ==
        "2 cups beans (soaked\n1 lb flour\n1 lb cream\n");
  CHECK(ingredients_of("Ingredients\n2 cups beans\n(optional) 1 cup cream\n") ==
        "2 cups beans\n(optional) 1 cup cream\n");
  CHECK(ingredients_of("Ingredients\n2 cups beans,\n\ncream\n") == "2 cups beans,\ncream\n");
}

TEST_CASE("entities and tags and blanks of web pages become plain text") {
  CHECK(ingredients_of("Ingredients\n<li>1&frac12;&nbsp;cups <b>salt</b> &amp; pepper</li>\n"
                       "1<sup>1</sup>/<sub>2</sub> cups cream<br>2 onions\n3\u00A0lb\u2009beans\n"
                       "&#189; cup &#x62;eans\n&amp;frac14; cup oil\n") ==
        "1\u00BD cups salt & pepper\n1 1/2 cups cream\n2 onions\n3 lb beans\n\u00BD cup beans\n"
        "\u00BC cup oil\n");
  // Nothing that is not known for markup is taken away.
  CHECK(ingredients_of("Ingredients\njars <quart or >pint\n2 <unknown> cups\n&cream; 1 <b\n") ==
        "jars <quart or >pint\n2 <unknown> cups\n&cream; 1 <b\n");
}

TEST_CASE("yields are known in many shapes") {
  const auto yield = [](std::string_view line) {
    const recipe r =
        recipe_from("Soup\n\n" + std::string(line) + "\nIngredients\nsalt\nMethod\nBoil\n");
    return r.yield ? r.yield->text : std::string();
  };
  CHECK(yield("Makes 9 pints") == "9 pints");
  CHECK(yield("Makes about 9 pints.") == "about 9 pints");
  CHECK(yield("Yield: 6 quarts") == "6 quarts");
  CHECK(yield("**Yield:** 6 quarts") == "6 quarts");
  CHECK(yield("Yields 6 to 7 quarts") == "6 to 7 quarts");
  CHECK(yield("Serves 8") == "Serves 8");
  CHECK(yield("Servings: 8") == "Servings: 8");
  CHECK(yield("Serves 8\nMakes 9 pints") == "9 pints");
  CHECK(yield("Makes a fine soup").empty());
  CHECK(yield("Servings").empty());
}

TEST_CASE("a text without ingredients says what to write") {
  constexpr std::string_view write =
      "write a line `Ingredients` and below it one ingredient a line, such as `3 lb venison, "
      "cubed`";
  CHECK(faults("") == "1:1 | the recipe is empty | " + std::string(write) + "\n");
  CHECK(faults(" \n\t\n") == "1:1 | the recipe is empty | " + std::string(write) + "\n");
  CHECK(faults("Soup\n\nIngredients\n\nMethod\nBoil.\n") ==
        "1:1 | the recipe has no ingredients | " + std::string(write) + "\n");
}

TEST_CASE("bytes that are no text are refused with their places") {
  CHECK(faults(std::string("Soup\n1\0 onion\0\n2 \x1B onions\n", 26)) ==
        "2:2 | a control character stands in the text | delete it\n"
        "3:3 | a control character stands in the text | delete it\n");
  CHECK(faults("Soup\n\xC3\xA9\xFF\n") ==
        "2:2 | the text is not UTF-8 from here on | save it as UTF-8\n");
  CHECK(faults("\xFF\xFEs") == "1:1 | the text is UTF-16 | save it as UTF-8\n");
  CHECK(ingredients_of("&#7; onion &#x9B;\n") == "&#7; onion &#x9B;\n");
  CHECK(faults(std::string(fixtures::one_mib + 1, 'x')) ==
        "1:1 | the text is larger than 1 MiB | give the recipe alone\n");
}

TEST_CASE("large texts are read in linear time") {
  const std::clock_t start = std::clock();
  const std::string line(fixtures::one_mib - 20, 'x');
  CHECK(recipe_from("Ingredients\n" + line).ingredients.size() == 1);
  CHECK(recipe_from(fixtures::repeated("1 onion\n", 100'000)).ingredients.size() == 100'000);
  for (const std::string_view part :
       {"<b", "&a", "1 (\n", "a,\n", "(\n", "- \n1 a\n", "# ", "*", "a and\n"}) {
    const std::string text = fixtures::repeated(part, fixtures::one_mib / 16 / part.size());
    CHECK(faults("Ingredients\nsalt\n" + text).empty());
    CHECK(faults("1 onion\n" + text).empty());
  }
  CHECK(static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC < 20);
}

TEST_CASE("what a heading or a fact says beside its word is a note") {
  for (const char* heading : {"Ingredients (plus rice)", "Ingredients for soup with flour:"}) {
    CAPTURE(heading);
    const recipe r = recipe_from(std::string(heading) + "\nsalt\nMethod\nBoil\n");
    CHECK(lines_of(r.ingredients) == "salt\n");
    CHECK(lines_of(r.notes) == std::string(heading) + "\n");
  }
  const recipe steps = recipe_from("Ingredients\nsalt\nSteps (stir in rice)\nBoil\n");
  CHECK(lines_of(steps.steps) == "Boil\n");
  CHECK(lines_of(steps.notes) == "Steps (stir in rice)\n");
  for (const char* fact :
       {"Servings: 9 quarts plus 1 cup rice", "Prep time: 20 min, add 1/4 cup flour",
        "Cook time: 2 h, then 1 cup rice", "Course: soup with rice"}) {
    CAPTURE(fact);
    const recipe r =
        recipe_from("Soup\n" + std::string(fact) + "\nIngredients\nsalt\nMethod\nBoil\n");
    CHECK(lines_of(r.notes) == std::string(fact) + "\n");
  }
  const recipe plain =
      recipe_from("Soup\nPrep time: 1 h 20 min\nServings: 9 quarts\nIngredients\nsalt\n");
  CHECK(plain.notes.empty());
}

TEST_SUITE_END();

}  // namespace recipe_text_tests
