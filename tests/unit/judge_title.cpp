// What a plan says beside its lines: the title, the yield and the fresh food of `from`. Rules: USDA
// Complete Guide to Home Canning (2015), part 4, soups: no noodles or other pasta, rice, flour,
// cream, milk or other thickener, seafood by another process; part 4, page 4-8, green
// beans raw, quarts 25 min.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <string>

#include "support/dishes.hpp"
#include "support/fixtures.hpp"

namespace judge_title_tests {
namespace {

using fixtures::finding_of;
using fixtures::has;
using fixtures::judged;
using jarproof::verdict;

/// Soup by the published directions, without lines.
jarproof::report soup(const std::string& more) {
  return judged(
      "food: soups\nas-published: true\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\n"
      "pressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n" +
      more + "\n");
}

jarproof::report own_soup(const std::string& more) {
  return judged(fixtures::hot_plan(
      fixtures::soup({}), "solids: 1/2\nbatch: 7 qt\nprepared: [boiled 5 min]\n" + more + "\n"));
}

jarproof::report green_beans(const std::string& title) {
  return judged(
      "food: green beans\npack: raw\njar: quart\nmethod: pressure\ngauge: weighted\n"
      "pressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\ntitle: " +
      title + "\n");
}

TEST_SUITE_BEGIN("check");

TEST_CASE("a title of another dish is asked about where no line shows what is in the jar") {
  for (const char* title :
       {"Clam chowder", "Fish soup", "Shrimp gumbo", "Cream of mushroom soup", "Beef barley soup",
        "Cabbage soup", "Chicken noodle soup", "Ham and bean soup", "Creamy tomato soup",
        "Minestrone", "Wild rice soup", "Venison soup with kale and cauliflower"}) {
    CAPTURE(std::string(title));
    const jarproof::report r = soup("title: " + std::string(title));
    CHECK(r.verdict == verdict::incomplete);
    const jarproof::finding* f = finding_of(r, "step-names-unlisted");
    REQUIRE(f != nullptr);
    CHECK(f->field == "title");
  }
  CHECK(soup("title: Split pea puree").verdict == verdict::rejected);
  CHECK(soup("title: Bean soup thickened with masa").verdict == verdict::rejected);
}

TEST_CASE("a title that names the food, its parts, a place or the table is not") {
  for (const char* title :
       {"Vegetable soup", "Venison and white bean soup", "Autumn soup, second batch",
        "Vegetable beef soup", "Turkey soup for noodles", "Soup without noodles", "Venison stew",
        "Soup of the community caf\xC3\xA9", "Potato and corn soup"}) {
    CAPTURE(std::string(title));
    CHECK(soup("title: " + std::string(title)).verdict == verdict::accepted);
  }
}

TEST_CASE("the title of a plain food names nothing else") {
  for (const char* title :
       {"Green beans, first picking", "Garden beans", "Green beans for casserole"})
    CHECK(green_beans(title).verdict == verdict::accepted);
  for (const char* title : {"Green beans and bacon", "Pickled green beans", "Green bean casserole",
                            "Green beans with potatoes"}) {
    CAPTURE(std::string(title));
    CHECK(green_beans(title).verdict == verdict::incomplete);
  }
}

TEST_CASE("the title and the fresh food of a plain food are that food") {
  const auto fruit = [](const std::string& food, const std::string& more) {
    return judged(
        "food: " + food +
        "\npack: hot\njar: quart\nmethod: boiling-water\ntime: 35 min\naltitude: 4600 ft\n" + more +
        "\n");
  };
  // USDA Complete Guide (2015), part 2: white peaches and Asian pears are not the peaches and pears
  // of its tables; pie filling has a recipe of its own.
  CHECK(fruit("peaches", "title: Peaches, first box").verdict == verdict::accepted);
  CHECK(fruit("peaches", "title: White peaches").verdict == verdict::incomplete);
  CHECK(fruit("peaches", "from: 20 lb white peaches").verdict == verdict::incomplete);
  CHECK(fruit("peaches", "title: Peaches with bananas").verdict == verdict::incomplete);
  CHECK(fruit("pears", "from: 20 lb Asian pears").verdict == verdict::incomplete);
  CHECK(fruit("apples", "title: Apple pie filling").verdict == verdict::incomplete);
}

TEST_CASE("directions of a named food add nothing that its table or recipe does not have") {
  const auto salsa = [](const std::string& step) {
    return judged(
        "altitude: 4600 ft\nfood: chile salsa\npack: hot\njar: pint\nmethod: boiling-water\ntime: "
        "20 "
        "min\ningredients: [\"5 lb tomatoes, peeled and chopped\", \"2 lb chile peppers, seeded "
        "and "
        "chopped\", \"1 lb onions, chopped\", \"1 cup vinegar (5%)\", 3 tsp canning salt]\nsteps: "
        "[\"" +
        step + "\"]\n");
  };
  CHECK(salsa("Add the onions, chiles, vinegar and salt and simmer 10 minutes.").verdict ==
        verdict::accepted);
  for (const char* step :
       {"Add 1 can black beans and 2 cups corn.", "Stir in corn.", "Add celery and carrots.",
        "I always add mushrooms.", "Double the onions.", "Add 2 cups more onions.",
        "Add more peppers to taste.", "Vinegar can be left out.", "Cut the vinegar with water.",
        "Thin with 2 cups of water.", "Use limes from the tree."}) {
    CAPTURE(std::string(step));
    CHECK(salsa(step).verdict != verdict::accepted);
  }
  const auto tomatoes = [](const std::string& step) {
    return judged(
        "altitude: 4600 ft\nfood: tomatoes-whole-raw-no-liquid\npack: raw\njar: quart\nmethod: "
        "boiling-water\ntime: 95 min\nacid: 2 tbsp bottled lemon juice per quart\nsteps: [\"" +
        step + "\"]\n");
  };
  CHECK(tomatoes("Put 2 tbsp bottled lemon juice in each jar.").verdict == verdict::accepted);
  for (const char* step : {"Add garlic and basil to each jar.", "Add onions.",
                           "Use only 1 tbsp lemon juice per quart.",
                           "Squeeze lemons into the jars.", "I leave the lemon juice out.",
                           "No need for lemon juice, these are acid enough.", "Use fresh lemons.",
                           "Add the lemon juice when you open the jar.", "Boil jars 40 minutes."}) {
    CAPTURE(std::string(step));
    CHECK(tomatoes(step).verdict != verdict::accepted);
  }
}

TEST_CASE("a yield and the fresh food of a plan are read like its title") {
  CHECK(soup("yield: 9 pints").verdict == verdict::accepted);
  CHECK(own_soup("yield: 7 quarts and 1 pint").verdict == verdict::accepted);
  CHECK(own_soup("yield: 7 quarts plus 1 cup cream").verdict == verdict::incomplete);
  CHECK(soup("yield: 9 pints, thickened with flour").verdict == verdict::rejected);
  CHECK(soup("from: 20 lb carrots").verdict == verdict::accepted);
  CHECK(soup("from: 20 lb clams").verdict == verdict::incomplete);
}

TEST_CASE("directions may say what stays out and what comes at the table") {
  for (const char* step :
       {"Do not add rice or pasta before canning.", "No noodles or rice.", "Do not add noodles.",
        "Add noodles when you reheat it.", "Good with crusty bread and butter."}) {
    CAPTURE(std::string(step));
    CHECK(own_soup("steps: [\"" + std::string(step) + "\"]").verdict == verdict::accepted);
  }
  for (const char* step : {"Do not skip the rice.",
                           "Without rice it is boring, so add 1 cup.",
                           "Never add rice after the broth.",
                           "No noodles or rice until the last minute.",
                           "No rice unless cooked.",
                           "Don't use brown rice, use white.",
                           "Do not add rice before canning, add during canning.",
                           "Good with a cup of rice in each jar.",
                           "Good with cream stirred in before filling.",
                           "The noodles soften when you reheat it.",
                           "To serve, add noodles to jars before canning.",
                           "Serving tip: rice goes in the jar dry.",
                           "Serving suggestions: Stir in 1 cup cream before filling.",
                           "Do not add too much rice.",
                           "Do not add the cream until the end.",
                           "Do not add rice before "
                           "the soup boils.",
                           "No flour and add noodles.",
                           "Do not add uncooked rice before canning.",
                           "No raw rice.",
                           "No rice or noodles in the pot; they go in the jars.",
                           "Do not add the noodles. They are put in each jar.",
                           "Add cream when you reheat it to fill the jars.",
                           "Add rice, good with venison."}) {
    CAPTURE(std::string(step));
    CHECK(own_soup("steps: [\"" + std::string(step) + "\"]").verdict != verdict::accepted);
  }
}

TEST_CASE("lentils of the directions are no beans of the list") {
  const auto bean_soup = [](const std::string& step) {
    return judged(fixtures::hot_plan(fixtures::soup({"4 cups cooked white beans, drained"}),
                                     fixtures::soup_words + ("steps: [" + step + "]\n")));
  };
  CHECK(bean_soup("Add the beans.").verdict == verdict::accepted);
  CHECK(bean_soup("Add 2 cups lentils.").verdict == verdict::incomplete);
}

TEST_CASE("meat is browned in a little fat, and no more of it goes in") {
  for (const char* step :
       {"Brown the venison in a little oil and drain.", "Sear the meat in a small amount of lard.",
        "Even better the next day.", "Simmer the bones overnight."}) {
    CAPTURE(std::string(step));
    CHECK(own_soup("steps: [\"" + std::string(step) + "\"]").verdict == verdict::accepted);
  }
  for (const char* step :
       {"Brown the venison in 2 cups of lard.", "Brown the meat, then add a little oil.",
        "Pour a little oil in each jar.", "Let it stand, it is even better the next day.",
        "Simmer the soup, then leave it out overnight."}) {
    CAPTURE(std::string(step));
    CHECK(own_soup("steps: [\"" + std::string(step) + "\"]").verdict != verdict::accepted);
  }
}

TEST_CASE("directions may call a food of the list by its last word") {
  const auto squash = [](const std::string& step) {
    return judged(fixtures::hot_plan(
        fixtures::soup({"2 lb butternut squash, peeled and cubed"}),
        "solids: 1/2\nbatch: 7 qt\nprepared: [boiled 5 min]\nsteps: [" + step + "]\n"));
  };
  CHECK(squash("Add the squash.").verdict == verdict::accepted);
  CHECK(squash("Add the kale.").verdict == verdict::incomplete);
  const jarproof::report butter =
      judged(fixtures::hot_plan(fixtures::soup({"2 cups cocoa butter"}),
                                "solids: 1/2\nbatch: 7 qt\nprepared: [boiled 5 min]\n"));
  CHECK(butter.verdict == verdict::rejected);
}

TEST_CASE("directions are read for food where no line shows what is in the jar") {
  CHECK(soup("steps: [Add the carrots., Boil 5 minutes.]").verdict == verdict::accepted);
  CHECK(soup("steps: [Add 2 cups cream.]").verdict == verdict::incomplete);
  CHECK(soup("steps: [Add the cabbage.]").verdict == verdict::incomplete);
}

}  // namespace
}  // namespace judge_title_tests
