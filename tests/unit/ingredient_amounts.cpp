// Amounts in the shapes in which cooks write them, lines for the table, headings, and lines that
// are no lines of a recipe. SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <string>
#include <string_view>

#include "jarproof/detail/ingredient_line.hpp"
#include "jarproof/detail/plan_lines.hpp"
#include "support/fixtures.hpp"

namespace ingredient_amounts_tests {
namespace {

using namespace jarproof::detail;
using jarproof::builtin_edition;

line_reading read(std::string_view text) { return read_line(builtin_edition(), text); }

bool understood(std::string_view text) {
  const line_reading l = read(text);
  return l.what != nullptr && l.strange.empty();
}

TEST_SUITE_BEGIN("check");

TEST_CASE("an amount is read in every shape, in front of the name or behind it") {
  struct row {
    const char* text;
    const char* amount;
  };
  for (const row& r : {row{"1 1/2 c. chopped onion", "1 1/2 cup"},
                       row{"1½ cups onions", "1 1/2 cup"},
                       row{"1 and 1/2 cups onions", "1 1/2 cup"},
                       row{"one and a half cups onions", "1 1/2 cup"},
                       row{"2 (15 oz) cans white beans", "30 oz"},
                       row{"2 15-oz cans white beans", "30 oz"},
                       row{"2 - 15 oz cans white beans", "30 oz"},
                       row{"2 x 400 g tins chopped tomatoes", "800 g"},
                       row{"1 can crushed tomatoes (796 ml)", "796 mL"},
                       row{"1 #10 can diced tomatoes", "1 can"},
                       row{"1 No. 2 can corn", "1 can"},
                       row{"#2 can corn", "1 can"},
                       row{"1 can corn", "1 can"},
                       row{"1 lb (450 g) onions", "1 lb"},
                       row{"3 onions (about 1 lb)", "3 piece"},
                       row{"1 lb 4 oz ground pork", "1 lb + 4 oz"},
                       row{"1 cup plus 2 tablespoons sugar", "1 cup + 2 tbsp"},
                       row{"5# venison", "5 lb"},
                       row{"6-8 cloves garlic", "6-8 clove"},
                       row{"6 to 8 cloves garlic", "6-8 clove"},
                       row{"two or three onions", "2-3 piece"},
                       row{"between 2 and 3 cups broth", "2-3 cup"},
                       row{"6 garlic cloves", "6 clove"},
                       row{"half a dozen ears of corn", "1/2 dozen"},
                       row{"a couple of onions", "2 piece"},
                       row{"1 T. salt", "1 tbsp"},
                       row{"1 t. salt", "1 tsp"},
                       row{"a pinch of salt", "1 pinch"},
                       row{"handful of parsley", "1 handful"},
                       row{"a spoonful of honey", "1 spoon"},
                       row{"onions, 2 large", "2 piece"},
                       row{"Salt - 1 tsp", "1 tsp"},
                       row{"carrots (3 cups)", "3 cup"},
                       row{"Onions ........ 2 cups", "2 cup"},
                       row{"Onions | 2 cups", "2 cup"},
                       row{"salt, a pinch", "1 pinch"},
                       row{"• 2 cups carrots", "2 cup"},
                       row{"3. 2 cups carrots", "2 cup"},
                       row{"[ ] 2 cups carrots", "2 cup"},
                       row{"1,5 kg tomatoes", "1 1/2 kg"},
                       row{"2 tazas de cebolla picada", "2 cup"},
                       row{"1 stalk celery with leaves", "1 stalk"},
                       row{"1 bay leaf", "1 leaf"},
                       row{"about 2 lb venison", "2 lb"},
                       row{"2 heaping cups kale", "2 cup"},
                       row{"salt to taste", ""},
                       row{"a little salt", ""},
                       row{"a few carrots", ""},
                       row{"some salt", ""},
                       row{"salt, as needed", ""},
                       row{"onion", ""}}) {
    const line_reading l = read(r.text);
    const std::string said = r.text;
    INFO(said);
    CHECK(l.amount_text == r.amount);
    CHECK(l.what != nullptr);
    CHECK(l.strange.empty());
    CHECK(l.amount.has_value() == !l.amount_text.empty());
  }
}

TEST_CASE("an amount for each jar is kept apart") {
  CHECK(read("1/2 tsp salt per quart").per_jar == "quart");
  CHECK(read("1 tbsp bottled lemon juice in each pint").per_jar == "pint");
  CHECK(read("1/4 tsp citric acid per pint jar").per_jar == "pint");
  CHECK(read("1 tsp salt in each jar").per_jar == "jar");
}

TEST_CASE("a thing for the table is not in the jar, and its rest is") {
  for (const std::string text :
       {"sour cream, for serving", "cheese to garnish", "1/4 cup heavy cream, added when serving",
        "sour cream for the table", "cilantro para servir", "a poached egg, when you serve it"}) {
    INFO(text);
    CHECK(read(text).at_serving);
  }
  for (const std::string text :
       {"1 cup cream, plus extra for serving", "1 cup milk", "2 tbsp flour, not for serving"}) {
    INFO(text);
    CHECK_FALSE(read(text).at_serving);
  }
}

TEST_CASE("a heading is known by its colon or its first words, not guessed") {
  const auto heading = [](const char* text) { return is_heading(builtin_edition(), text); };
  CHECK(heading("For the broth:"));
  CHECK(heading("Vegetables:"));
  CHECK(heading("For the pot"));
  CHECK_FALSE(heading("Vegetables"));
  CHECK_FALSE(heading("Meat"));
  CHECK_FALSE(heading("Tomato sauce"));
  CHECK_FALSE(heading("2 cups: onions"));
}

TEST_CASE("what is no line of a recipe is read in bounds, and never as harmless") {
  const std::string words(10'000, 'a');
  CHECK(read(words).what == nullptr);
  CHECK_FALSE(read(words).strange.empty());
  std::string many;
  for (int i = 0; i < 100; ++i) many += "onion ";
  CHECK_FALSE(read(many).strange.empty());
  std::string digits;
  for (int i = 0; i < 300; ++i) digits += "1/";
  CHECK((read(digits).what == nullptr));
  for (const std::string_view text :
       {std::string_view("1 cup on\0ion", 12), std::string_view("\xFF\xFE 1 cup onion"),
        std::string_view("1 cup \xC3"), std::string_view("\xE2\x82"), std::string_view("\xF0"),
        std::string_view("1 cup onion \xC2"), std::string_view("("), std::string_view(")(,"),
        std::string_view("1/0 cup onion"), std::string_view("999999999999999999 cups onion"),
        std::string_view("- - -"), std::string_view("#"), std::string_view("1 #"),
        std::string_view("or"), std::string_view("no"), std::string_view("if"),
        std::string_view("juice of"), std::string_view("1 (((((((("), std::string_view("\0", 1)}) {
    const line_reading l = read(text);
    CHECK(l.words.size() < 100);
  }
  CHECK_FALSE(read(std::string_view("1 cup on\0ion", 12)).what != nullptr);
  CHECK_FALSE(understood("1 cup onion\xFF"));
}

TEST_SUITE_END();

}  // namespace
}  // namespace ingredient_amounts_tests
