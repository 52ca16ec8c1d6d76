// Directions and titles in the words of publications. Sources, all USDA Complete Guide to Home
// Canning (2015): part 4, soups (the caution, half solids, boiled 5 min), pumpkin, page 4-17
// (potatoes: not mashed) and 4-9 (beets); part 3, page 3-21 (chile salsa) and 3-17 (tomato
// ketchup); part 2, page 2-6 (apple butter) and 2-7 (applesauce); part 5, pages 5-6 (ground meat)
// and 5-7 (stock); part 6, pages 6-14 (dilled beans, three-bean salad), 6-19 (dilled okra) and 6-10
// (quick fresh-pack dills). SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <string>

#include "support/dishes.hpp"
#include "support/fixtures.hpp"

namespace printed_directions_tests {
namespace {

using fixtures::has;
using fixtures::judged;
using fixtures::lines;
using jarproof::verdict;

std::string step_of(const std::string& step) { return "steps:\n  - \"" + step + "\"\n"; }

jarproof::report soup_by(const std::string& step) {
  return judged(fixtures::hot_plan(fixtures::soup(),
                                   "solids: 1/2\nbatch: 7 qt\nprepared: [boiled 5 min, "
                                   "reheated to a boil]\n" +
                                       step_of(step)));
}

/// A food by its published directions, at 4,600 ft under pressure and at 800 ft in boiling water.
jarproof::report under_pressure(const std::string& food, const std::string& time,
                                const std::string& more) {
  return judged("food: " + food + "\nas-published: true\npack: hot\njar: pint\n" +
                fixtures::weighted + "time: " + time + "\naltitude: 4600 ft\n" + more);
}
jarproof::report in_boiling_water(const std::string& food, const std::string& time,
                                  const std::string& more, const std::string& pack = "hot") {
  return judged("food: " + food + "\nas-published: true\npack: " + pack + "\njar: pint\n" +
                fixtures::boiling_water + "time: " + time + "\naltitude: 800 ft\n" +
                "prepared: [jars sterilized]\n" + more);
}

jarproof::report salsa_by(const std::string& step) {
  return in_boiling_water(
      "chile salsa", "15 min",
      fixtures::ingredients_text({"5 lb tomatoes", "2 lb chile peppers", "1 lb onions",
                                  "1 cup vinegar (5%)", "3 tsp salt"}) +
          step_of(step));
}
jarproof::report apple_butter_by(const std::string& step) {
  return in_boiling_water("apple butter", "5 min", step_of(step));
}
jarproof::report beets_by(const std::string& step) {
  return under_pressure("beets", "30 min", "form: whole\n" + step_of(step));
}
jarproof::report dills_by(const std::string& step) {
  return in_boiling_water("quick fresh-pack dill pickles", "10 min", step_of(step), "raw");
}

TEST_SUITE_BEGIN("check");

TEST_CASE("a published caution against thickeners is no thickener") {
  for (const char* step :
       {"Caution: Do not add noodles or other pasta, rice, flour, cream, milk or other thickening "
        "agents to home canned soups.",
        "Do not mash or puree.", "Caution: Do not mash or puree.", "Never puree or mash."}) {
    CAPTURE(std::string(step));
    CHECK(soup_by(step).verdict == verdict::accepted);
    CHECK(under_pressure("white potatoes", "35 min", "form: whole\n" + step_of(step)).verdict ==
          verdict::accepted);
  }
  CHECK(salsa_by("Do not thicken with flour or cornstarch before canning.").verdict ==
        verdict::accepted);
  CHECK(salsa_by("Great on tacos, eggs or rice!").verdict == verdict::accepted);
}

TEST_CASE("a caution that leaves something over, or takes it back, is none") {
  for (const char* step :
       {"Do not use other thickening agents.", "Do not add noodles to the soup but rice.",
        "Do not add rice to soups. Add it to each jar.",
        "Do not add rice or noodles. Cook and put them in the jars.",
        "Do not thicken with flour, use cornstarch.", "Do not thicken with just flour.",
        "Do not thicken with flour: cornstarch is better.", "Do not thicken too much.",
        "Do not mash or puree all of it.", "Do not mash or puree until the jars are filled.",
        "Do not mash, or puree if you like.", "Do not peel or core, but puree.",
        "Do not puree completely.", "Do not puree the carrots, puree the beans.",
        "Great on rice stirred in before canning.", "Great on its own, with rice in it."}) {
    CAPTURE(std::string(step));
    CHECK(soup_by(step).verdict != verdict::accepted);
  }
}

TEST_CASE("a pickle may be called pickled") {
  const auto titled = [](const std::string& food, const std::string& time, const std::string& title,
                         const std::string& pack) {
    return in_boiling_water(food, time, "title: " + title + "\n", pack).verdict;
  };
  CHECK(titled("dilled beans", "5 min", "Pickled Dilly Beans", "raw") == verdict::accepted);
  CHECK(titled("dilled okra", "10 min", "Pickled Dill Okra", "hot") == verdict::accepted);
  CHECK(titled("three-bean salad", "15 min", "Pickled Three-Bean Salad", "hot") ==
        verdict::accepted);
  for (const char* title :
       {"Pickled eggs", "Pickled sausage", "Pickled beets", "Dilly beans with pickled herring"}) {
    CAPTURE(std::string(title));
    CHECK(titled("dilled beans", "5 min", title, "raw") == verdict::incomplete);
  }
  CHECK(under_pressure("green beans", "20 min", "title: Pickled green beans\n").verdict ==
        verdict::incomplete);
}

TEST_CASE("words of printed procedures are no food of their own") {
  CHECK(salsa_by("Fill hot salsa into hot jars.").verdict == verdict::accepted);
  CHECK(salsa_by("Combine all in a 4-gallon stock pot.").verdict == verdict::accepted);
  CHECK(beets_by("Trim off beet tops, leaving an inch of stem and roots.").verdict ==
        verdict::accepted);
  CHECK(
      in_boiling_water("tomato ketchup", "15 min", step_of("Combine with tomato pulp.")).verdict ==
      verdict::accepted);
  CHECK(apple_butter_by("It is done if the butter remains mounded.").verdict == verdict::accepted);
  CHECK(under_pressure(
            "ground meat", "75 min",
            "ingredients: [10 lb ground beef]\n" +
                step_of("Shape into patties or cut cased sausage into 3- to 4-inch links."))
            .verdict == verdict::accepted);
  CHECK(in_boiling_water("applesauce", "15 min",
                         step_of("Add 1/8 cup sugar per quart. Taste and add more, if preferred."))
            .verdict == verdict::accepted);
  CHECK(under_pressure("beef stock", "20 min",
                       step_of("Skim off fat, add meat trimmings removed from bones to broth."))
            .verdict == verdict::accepted);
  CHECK(dills_by("Pour over cucumbers and let stand 12 hours. Drain.").verdict ==
        verdict::accepted);
}

TEST_CASE("the same words are food where something is put in") {
  for (const char* step : {"Stir in the butter.", "It foams less with the butter.",
                           "Melt the butter.", "Add the butter to reduce foam."}) {
    CAPTURE(std::string(step));
    CHECK(has(apple_butter_by(step), "step-names-unlisted"));
  }
  for (const char* step : {"Add hot salsa of the store.", "Add 1 stock pot.",
                           "Stir in a stock pot.", "Combine with pumpkin pulp."}) {
    CAPTURE(std::string(step));
    CHECK(has(salsa_by(step), "step-names-unlisted"));
  }
  for (const char* step :
       {"Trim off beet tops and add to the pot.", "Cut the beet tops in pieces.",
        "Cut off the beet tops. Chop and put them in the jars.", "Do not trim off beet tops."}) {
    CAPTURE(std::string(step));
    CHECK(has(beets_by(step), "step-names-unlisted"));
  }
  CHECK(has(soup_by("Cut cased sausage into links."), "step-names-unlisted"));
  CHECK(has(soup_by("Add meat trimmings."), "step-names-unlisted"));
  CHECK(has(under_pressure("beef stock", "20 min", step_of("Add vegetable trimmings.")),
            "step-names-unlisted"));
  CHECK(has(salsa_by("Taste and add more, if preferred."), "steps-against-plan"));
  CHECK(has(salsa_by("Add salt and peppers. Taste and add more."), "steps-against-plan"));
  for (const char* step : {"Let stand 13 hours.", "Fill the jars and let stand 12 hours.",
                           "Heat to boiling and let stand 12 hours."}) {
    CAPTURE(std::string(step));
    CHECK(has(dills_by(step), "standing-unsaid"));
  }
  // Part 6, cantaloupe pickles: these stand 18 hours, in the refrigerator.
  CHECK(has(in_boiling_water("cantaloupe pickles", "15 min", step_of("Let stand 18 hours.")),
            "standing-unsaid"));
}

TEST_SUITE_END();

}  // namespace
}  // namespace printed_directions_tests
