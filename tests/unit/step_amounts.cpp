// Directions that name other amounts, another acid or a larger jar than the plan. Rules: USDA
// Complete Guide to Home Canning (2015), part 3, page 3-7 (crushed tomatoes: to each quart 2 tbsp
// bottled lemon juice or 1/2 tsp citric acid), chile salsa (page 3-21: 5 lb tomatoes, 2 lb chiles,
// 1 lb onions, 1 cup vinegar of 5 %), part 6, page 6-14 (dilled beans: 4 cups vinegar and 4 cups
// water), part 4, page 4-5, dried beans (soaked, boiled 30 min), part 7, page 7-6 (jam without
// added pectin). SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <string>

#include "support/fixtures.hpp"

namespace step_amounts_tests {
namespace {

using fixtures::has;
using fixtures::judged;
using jarproof::verdict;

jarproof::report salsa(const std::string& step) {
  return judged(
      "altitude: 800 ft\nfood: chile salsa\npack: hot\njar: pint\nmethod: boiling-water\ntime: 15 "
      "min\ningredients: [5 lb tomatoes, 2 lb chile peppers, 1 lb onions, \"1 cup vinegar (5%)\", "
      "3 tsp salt]\nsteps: [\"" +
      step + "\"]\n");
}

jarproof::report tomatoes(const std::string& step) {
  return judged(
      "altitude: 800 ft\nfood: crushed tomatoes\nacid: 2 tbsp bottled lemon juice per quart\npack: "
      "hot\njar: quart\nmethod: boiling-water\ntime: 45 min\nsteps: [\"" +
      step + "\"]\n");
}

jarproof::report dilled(const std::string& step) {
  return judged(
      "altitude: 800 ft\nfood: dilled beans\npack: raw\njar: pint\nmethod: boiling-water\ntime: 10 "
      "min\ningredients: [4 lb green beans, 8 heads dill, 1/2 cup canning salt, \"4 cups white "
      "vinegar (5%)\", 4 cups water]\nsteps: [\"" +
      step + "\"]\n");
}

jarproof::report pintos(const std::string& step, const std::string& line = "5 lb dried pintos") {
  return judged(
      "altitude: 800 ft\nfood: dried beans\nas-published: true\npack: hot\njar: quart\nmethod: "
      "pressure\ngauge: weighted\npressure: 10 psi\ntime: 90 min\ningredients: [\"" +
      line + "\"]\nsteps: [\"" + step + "\"]\n");
}

jarproof::report jam(const std::string& step) {
  return judged(
      "altitude: 800 ft\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 10 min\n"
      "ingredients: [4 cups crushed strawberries, 4 cups sugar]\nsteps: [\"" +
      step + "\"]\n");
}

TEST_SUITE_BEGIN("check");

TEST_CASE("an amount of the directions is that of the list") {
  for (const char* step :
       {"Add 1 cup vinegar and 1 lb onions.", "Simmer 10 minutes.", "Add onions and vinegar.",
        "Cook the onions in 1/4 cup of the vinegar.", "Add the remaining 1/2 cup vinegar.",
        "Dip tomatoes in boiling water 30 seconds and slip off the skins."}) {
    CAPTURE(std::string(step));
    CHECK(salsa(step).verdict == verdict::accepted);
  }
  for (const char* step :
       {"Add 1 cup of water and 1/2 cup vinegar.", "Combine 1/2 cup vinegar with the peppers.",
        "Use 1/2 cup vinegar if you like it mild.", "Reduced vinegar to 1/4 cup for the children.",
        "Add 3 lb chopped onions.", "Add 2 lb more onions.", "Add another pound of onions.",
        "Add 4 more chiles.", "Use twice the onions.", "Onions increased to 4 lb.",
        "Use half the vinegar.", "Top up the jars with boiling water.",
        "Fill jars half with salsa and top with water."}) {
    CAPTURE(std::string(step));
    CHECK(has(salsa(step), "steps-against-plan"));
    CHECK(salsa(step).verdict != verdict::accepted);
  }
  CHECK(dilled("Boil 4 cups water with 4 cups vinegar.").verdict == verdict::accepted);
  for (const char* step :
       {"Boil 6 cups water with 4 cups vinegar and the salt.",
        "Boil 4 cups water and 2 cups vinegar.",
        "Top up the jars with water if you run out of brine.", "Mash it well before filling."}) {
    CAPTURE(std::string(step));
    CHECK(dilled(step).verdict != verdict::accepted);
  }
  for (const char* step : {"Use only 2 cups sugar.", "Cut the sugar in half."}) {
    CAPTURE(std::string(step));
    CHECK(jam(step).verdict != verdict::accepted);
  }
  CHECK(jam("Boil the berries with 4 cups sugar.").verdict == verdict::accepted);
}

TEST_CASE("the acid of the directions is enough for each jar, and bottled") {
  for (const char* step :
       {"Add 2 tbsp bottled lemon juice to each quart.", "Add 2 tbsp lemon juice to each quart.",
        "Add 1/2 tsp citric acid per quart.", "Add 4 tbsp vinegar to each quart."}) {
    CAPTURE(std::string(step));
    CHECK(tomatoes(step).verdict == verdict::accepted);
  }
  for (const char* step :
       {"Add 1 tbsp lemon juice to each quart.", "Add lemon juice (1 Tbsp) to each quart.",
        "Add 1/4 tsp citric acid to each jar.", "Add 3 tbsp vinegar to each quart.",
        "Add a splash of vinegar to each jar.", "Add 2 tbsp fresh lemon juice to each jar.",
        "Lemon juice is optional.", "Ripe tomatoes do not need lemon juice.",
        "No acid is needed with garden tomatoes.", "Add a tomato canning tablet to each jar.",
        "Leave the peels on.", "No need to peel."}) {
    CAPTURE(std::string(step));
    CHECK(tomatoes(step).verdict != verdict::accepted);
  }
  for (const char* step :
       {"Substitute fresh lime juice for the vinegar.", "Fresh limes can replace vinegar.",
        "Rice vinegar works fine too.", "Drain and discard the vinegar, then fill jars.",
        "Swap half the tomatoes for peaches.", "Feel free to add any vegetables you like."}) {
    CAPTURE(std::string(step));
    CHECK(salsa(step).verdict != verdict::accepted);
  }
}

TEST_CASE("the jar of the directions is no larger than that of the plan") {
  for (const char* step : {"Fill pint jars.", "Fill 16 oz jars.", "Use 500 ml jars.",
                           "Makes 3 quarts.", "Use half-pint or pint jars."}) {
    CAPTURE(std::string(step));
    CHECK(salsa(step).verdict == verdict::accepted);
  }
  // Chile salsa has no process in quarts.
  for (const char* step :
       {"Fill quart jars and process 15 minutes.", "Use pint or quart jars.",
        "Pour into quart mason jars.", "Fill 32-oz jars.", "Fill 1 L jars.", "Fill 750 mL jars.",
        "Llene frascos de un litro.", "Fill half-gallon mason jars.", "Use any size jar."}) {
    CAPTURE(std::string(step));
    CHECK(has(salsa(step), "steps-against-plan"));
  }
  // Crushed tomatoes have one in both.
  CHECK_FALSE(has(tomatoes("Use pint or quart jars."), "steps-against-plan"));
  CHECK(has(tomatoes("Pour into half-gallon mason jars."), "steps-against-plan"));
}

TEST_CASE("directions for dried beans soak and boil them, whatever else the plan states") {
  for (const char* step :
       {"Soak overnight, drain, cover with fresh water and boil 30 minutes.",
        "Boil 2 minutes, take off the heat, let stand 1 hour, drain, boil 30 minutes in water."}) {
    CAPTURE(std::string(step));
    CHECK(pintos(step).verdict == verdict::accepted);
  }
  CHECK(pintos("Fill the jars.", "5 lb dried pintos, soaked overnight and boiled 30 minutes")
            .verdict == verdict::accepted);
  for (const char* step :
       {"Rinse the beans and put a cup in each jar.", "Rinse and load the jars.",
        "Fill each jar with 3/4 cup of rinsed beans.", "Soak beans 12 hours. Do not cook.",
        "Boil the beans 5 minutes and fill jars.", "Quick soak the beans 10 minutes, then boil.",
        "Soak beans 1 hour in warm water. Boil 30 minutes.",
        "Ponga una taza de frijoles secos en cada frasco."}) {
    CAPTURE(std::string(step));
    CHECK(pintos(step).verdict != verdict::accepted);
  }
}

TEST_CASE("directions that print the time of the lowest kitchens warn where another one holds") {
  // Chile salsa, pints: 15 min up to 1,000 ft, 20 min up to 6,000 ft.
  const auto high = [](const std::string& step) {
    return judged(
        "altitude: 4600 ft\nfood: chile salsa\npack: hot\njar: pint\nmethod: boiling-water\ntime: "
        "20 min\ningredients: [5 lb tomatoes, 2 lb chile peppers, 1 lb onions, \"1 cup vinegar "
        "(5%)\", 3 tsp salt]\nsteps: [\"" +
        step + "\"]\n");
  };
  for (const char* step : {"Process pints 15 minutes in a boiling water canner.",
                           "Process 15 minutes at 0-1,000 feet; 20 minutes at 1,001-6,000 feet."}) {
    CAPTURE(std::string(step));
    CHECK(has(high(step), "step-time-lower"));
    CHECK(high(step).verdict == verdict::accepted);
  }
  CHECK_FALSE(has(high("Process pints 20 minutes."), "step-time-lower"));
  for (const char* step : {"Process pints 14 minutes.", "Process pints 16 minutes."}) {
    CAPTURE(std::string(step));
    CHECK(has(high(step), "steps-against-plan"));
    CHECK(high(step).verdict == verdict::incomplete);
  }
}

TEST_CASE("meat that directions call by its last word is that of the list") {
  // USDA Complete Guide (2015), part 5, page 5-8, chile con carne: 3 lb ground beef to 3 cups of
  // beans; pumpkin and winter squash, part 4: 1-inch cubes.
  const auto chili = [](const std::string& step) {
    return judged(
        "altitude: 800 ft\nfood: chile con carne\npack: hot\njar: pint\nmethod: pressure\ngauge: "
        "weighted\npressure: 10 psi\ntime: 75 min\nprepared: [beans rehydrated]\ningredients: [\"3 "
        "cups dried red kidney beans, soaked overnight and boiled 30 minutes\", 3 lb ground beef, "
        "1 1/2 cups chopped onion, 5 tsp salt, 1 tsp pepper, 4 tbsp chili powder, 2 quarts crushed "
        "tomatoes]\nsteps: [\"" +
        step + "\"]\n");
  };
  CHECK(chili("Brown the beef with the onions and drain off the fat.").verdict ==
        verdict::accepted);
  for (const char* step :
       {"Add 2 lb more beef.", "Use 5 lb of beef.", "Puree half the beans and stir them in.",
        "Mash some of the beans to thicken it.", "Do not drain the fat.", "Add a can of beer."}) {
    CAPTURE(std::string(step));
    CHECK(chili(step).verdict != verdict::accepted);
  }
  const auto squash = [](const std::string& step) {
    return judged(
        "altitude: 800 ft\nfood: winter squash\npack: hot\njar: quart\nmethod: pressure\ngauge: "
        "weighted\npressure: 10 psi\ntime: 90 min\nsteps: [\"" +
        step + "\"]\n");
  };
  CHECK(squash("Cut in 1-inch cubes and boil 2 minutes.").verdict == verdict::accepted);
  for (const char* step :
       {"Cut in 3-inch chunks.", "Steam and whip with a mixer.",
        "Roast, scoop out the flesh and fill the jars.", "Pack dry without liquid."}) {
    CAPTURE(std::string(step));
    CHECK(squash(step).verdict != verdict::accepted);
  }
}

TEST_CASE("a thing put into a tested recipe that nobody knows is asked about") {
  for (const char* step : {"If too thin, whisk in instant zelbo.", "Sprinkle in some quintle.",
                           "Add 2 cups of trellin.", "Thicken with zelbo."}) {
    CAPTURE(std::string(step));
    CHECK(salsa(step).verdict != verdict::accepted);
  }
  for (const char* step : {"Add remaining ingredients and bring to a boil.",
                           "Stir in the vinegar and salt.", "Mix in the chopped onions."}) {
    CAPTURE(std::string(step));
    CHECK(salsa(step).verdict == verdict::accepted);
  }
}

TEST_SUITE_END();

}  // namespace
}  // namespace step_amounts_tests
