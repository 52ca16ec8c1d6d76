// Lists of a plan: ingredients and prepared as list, literal block or one line; folded text.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <ostream>
#include <string>
#include <string_view>

#include "jarproof/read_plan.hpp"
#include "support/fixtures.hpp"
#include "support/readings.hpp"

namespace read_plan_lists_tests {

using fixtures::fault_places_of;
using fixtures::faults_of;
using fixtures::place_of;
using fixtures::plan_from;
using jarproof::plan;

TEST_SUITE_BEGIN("read_plan");

TEST_CASE("a missing item of a list points at the line of its dash") {
  CHECK(fault_places_of("ingredients:\n- 7 lb beans\n-\n- salt\n").rfind("3:", 0) == 0);
  CHECK(fault_places_of("ingredients:\n  - 7 lb beans\n  -\npack: raw\n").rfind("3:", 0) == 0);
  CHECK(fault_places_of("food: corn\nprepared:\n  - boiled\n  -\n").rfind("4:", 0) == 0);
}

TEST_CASE("each of several missing items points at its own dash") {
  CHECK(fault_places_of("ingredients:\n  -\n  -\n  - salt\n") ==
        "2:3 ingredients[1]\n3:3 ingredients[2]\n");
}

TEST_CASE("ingredients as a list keep their lines") {
  const plan p = plan_from(
      "ingredients:\n  - 3 lb venison, cubed\n\n  # the rest\n  - \"2 cups onion: chopped\"\n");
  REQUIRE(p.ingredients.size() == 2);
  CHECK(p.ingredients[0].text == "3 lb venison, cubed");
  CHECK(place_of(p.ingredients[0]) == "2:5");
  CHECK(p.ingredients[1].text == "2 cups onion: chopped");
  CHECK(place_of(p.ingredients[1]) == "5:5");
}

TEST_CASE("ingredients as a literal block keep their lines") {
  const plan p = plan_from(
      "food: soup\n"
      "ingredients: |\n"
      "  3 lb venison\n"
      "  \u00BD cup onion: chopped  \n"
      "\n"
      "    2 tsp salt # not too much\n"
      "pack: hot\n");
  REQUIRE(p.ingredients.size() == 3);
  CHECK(p.ingredients[0].text == "3 lb venison");
  CHECK(place_of(p.ingredients[0]) == "3:3");
  CHECK(p.ingredients[1].text == "\u00BD cup onion: chopped");
  CHECK(place_of(p.ingredients[1]) == "4:3");
  CHECK(p.ingredients[2].text == "2 tsp salt # not too much");
  CHECK(place_of(p.ingredients[2]) == "6:5");
  CHECK(place_of(*p.pack) == "7:7");
}

TEST_CASE("a literal block may end in any way and begin with an empty line") {
  for (const std::string_view head : {"|", "|-", "|+", "| # list"}) {
    const plan p = plan_from("ingredients: " + std::string(head) + "\n\n   beans\n   salt");
    REQUIRE(p.ingredients.size() == 2);
    CHECK(place_of(p.ingredients[0]) == "3:4");
    CHECK(place_of(p.ingredients[1]) == "4:4");
  }
}

TEST_CASE("a literal block that tells its own indentation keeps its columns") {
  const plan p = plan_from("ingredients: |1\n    beans\n  salt\n");
  REQUIRE(p.ingredients.size() == 2);
  CHECK(place_of(p.ingredients[0]) == "2:5");
  CHECK(place_of(p.ingredients[1]) == "3:3");
}

TEST_CASE("a literal block with lines ended by CR LF keeps lines and columns") {
  const plan p = plan_from("ingredients: |\r\n\r\n  beans\r\n    salt\r\npack: raw\r\n");
  REQUIRE(p.ingredients.size() == 2);
  CHECK(p.ingredients[0].text == "beans");
  CHECK(place_of(p.ingredients[0]) == "3:3");
  CHECK(place_of(p.ingredients[1]) == "4:5");
}

TEST_CASE("an empty literal block is an empty list") {
  CHECK(faults_of("ingredients: |\npack: raw\n") ==
        "1:14 ingredients | `ingredients` is empty | "
        "write `ingredients: [7 lb green beans]` or leave the key out\n");
  CHECK(fault_places_of("prepared: |\n\n") == "1:11 prepared\n");
}

TEST_CASE("folded text is refused with the reason, for lists and for lines of text") {
  const std::string of_list =
      " | folded text joins the lines, so two ingredients would become one | "
      "put `|` instead of `>` after the key, and every line on a line of its own\n";
  const std::string of_text =
      " | the lines of this text are folded into one, so its line ends are lost | "
      "write it on one line, or lines of a list under `|`\n";
  for (const std::string_view written : {">\n  beans\n  salt", ">-\n  beans", "beans\n  salt",
                                         "\"beans\n  salt\"", "'beans\n  salt'"}) {
    CHECK(faults_of("ingredients: " + std::string(written) + "\npack: raw\n") ==
          "1:14 ingredients" + of_list);
    CHECK(faults_of("prepared: " + std::string(written) + "\npack: raw\n") ==
          "1:11 prepared" + of_list);
    CHECK(faults_of("acid: " + std::string(written) + "\npack: raw\n") == "1:7 acid" + of_text);
  }
  CHECK(faults_of("ingredients:\n  - beans\n  - salt and\n    pepper\n") ==
        "3:5 ingredients[2]" + of_text);
}

TEST_CASE("a list inside a list, a map inside a list and several lines in one item are refused") {
  CHECK(fault_places_of("ingredients: [beans, [salt], {water: 1 qt}]\n") ==
        "1:22 ingredients[2]\n1:30 ingredients[3]\n");
  CHECK(fault_places_of("ingredients:\n  - |\n    beans\n    salt\n").rfind("2:5 ", 0) == 0);
  CHECK(fault_places_of("prepared: \"a\\nb\"\n") == "1:11 prepared\n");
}

TEST_CASE("words of `prepared` in one line keep their columns") {
  const auto last_place = [](std::string_view value) {
    return place_of(plan_from("prepared: " + std::string(value) + "\n").prepared.back());
  };
  CHECK(plan_from("prepared: peeled, drained\n").prepared.size() == 2);
  CHECK(last_place("peeled, drained") == "1:19");
  CHECK(last_place("peeled,drained") == "1:18");
  CHECK(last_place("\"peeled, drained\"") == "1:20");
  CHECK(last_place("[boiled, \"peeled, drained\"]") == "1:29");
  CHECK(last_place("|\n  peeled, drained") == "2:11");
  CHECK(last_place("\u00F1, drained") == "1:14");
}

TEST_SUITE_END();

}  // namespace read_plan_lists_tests
