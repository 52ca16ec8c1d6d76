// Directions of a recipe. Rules: USDA Complete Guide to Home Canning (2015), part 4, soups: no
// thickener, noodles, rice or cream, boiled 5 minutes; pints 60 and quarts 75 min. Cooked food
// stands at most two hours between 40 and 140 F (USDA National Agricultural Library); no process
// for dishes of a slow cooker or for leftovers was published (PNW 361).
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <string>

#include "support/dishes.hpp"
#include "support/fixtures.hpp"

namespace judge_steps_tests {
namespace {

using fixtures::finding_of;
using fixtures::has;
using fixtures::judged;
using jarproof::verdict;

jarproof::report soup_by(const std::string& step, const std::string& more = "",
                         const std::string& line = "") {
  const fixtures::lines further = line.empty() ? fixtures::lines() : fixtures::lines{line};
  return judged(fixtures::hot_plan(
      fixtures::soup(further),
      "solids: 1/2\nbatch: 7 qt\nprepared: [boiled 5 min, reheated to a boil]\n" + more +
          "steps:\n  - \"Boil everything 5 minutes.\"\n  - \"" + step + "\"\n"));
}

TEST_SUITE_BEGIN("check");

TEST_CASE("words of the directions decide by themselves") {
  const struct {
    const char* step;
    const char* check;
    verdict outcome;
  } words[] = {{"Thicken the soup a little.", "thickener-in-jar", verdict::rejected},
               {"Cook until thickened.", "thickener-in-jar", verdict::rejected},
               {"Use venison dredged and browned.", "thickener-in-jar", verdict::rejected},
               {"Blend half of the soup.", "low-acid-puree", verdict::rejected},
               {"Puree the carrots.", "low-acid-puree", verdict::rejected},
               {"Put two cups in a blender.", "low-acid-puree", verdict::rejected},
               {"Mash the carrots.", "low-acid-puree", verdict::rejected},
               {"Liquidise a third of it.", "low-acid-puree", verdict::rejected},
               {"Cook it in the slow cooker for 8 hours.", "slow-cooked", verdict::untested},
               {"Add the leftovers of Sunday.", "leftovers-in-jar", verdict::rejected},
               {"Simmer until very thick.", "too-dense", verdict::rejected},
               {"Leave it on the stove overnight.", "standing-unsaid", verdict::incomplete}};
  for (const auto& w : words) {
    CAPTURE(std::string(w.step));
    const jarproof::report r = soup_by(w.step);
    CHECK(r.verdict == w.outcome);
    const jarproof::finding* f = finding_of(r, w.check);
    REQUIRE(f != nullptr);
    CHECK(f->field == "steps");
    CHECK(f->found == w.step);
  }
}

TEST_CASE("the same words are taken back by a no, or by the table") {
  for (const char* step :
       {"Fill the jars while hot.", "Do not thicken.", "Never thickened before canning.",
        "Thicken when serving.", "Do not mash the carrots.", "Puree when a jar is opened.",
        "Simmer to blend the flavors.", "Soak the pot overnight.", "Chill the broth overnight.",
        "Keep it in the refrigerator overnight.", "Add cream at serving.",
        "Serve over noodles, garnish with sour cream.", "Skim off the fat."}) {
    CAPTURE(std::string(step));
    CHECK(soup_by(step).verdict == verdict::accepted);
  }
  // Only in its own sentence.
  CHECK(has(soup_by("Do not hurry. Thicken the soup."), "thickener-in-jar"));
}

TEST_CASE("what the directions put in has to stand in the list") {
  for (const char* step : {"Stir in the cornstarch.", "Add the cream.", "Add 2 cups noodles.",
                           "Add cooked rice.", "Beat in 2 eggs.", "Fry it in butter."}) {
    CAPTURE(std::string(step));
    const jarproof::report r = soup_by(step);
    CHECK(r.verdict == verdict::incomplete);
    const jarproof::finding* f = finding_of(r, "step-names-unlisted");
    REQUIRE(f != nullptr);
    CHECK(f->field == "steps");
  }
  // On the list it is judged there, once.
  const jarproof::report listed = soup_by("Stir in the flour.", "", "1/2 cup all-purpose flour");
  CHECK(has(listed, "thickener-in-jar"));
  CHECK_FALSE(has(listed, "step-names-unlisted"));
  // 1.5 is no end of a sentence.
  CHECK(has(soup_by("Serve 1.5 cups each. Add the cream."), "step-names-unlisted"));
}

TEST_CASE("every thing that a sentence names is looked at") {
  const jarproof::report r = soup_by("Add barley to the beef broth.");
  CHECK(has(r, "step-names-unlisted"));
  CHECK(r.verdict == verdict::incomplete);
  // The dish itself, a label's date and to dip are no things put in.
  for (const char* step : {"Bring the stew to a boil.", "Label the jars with the date.",
                           "Dip the carrots in hot water."}) {
    CAPTURE(std::string(step));
    CHECK(soup_by(step).verdict == verdict::accepted);
  }
}

TEST_CASE("a tested recipe is cooked as it was tested") {
  // Part 3, page 3-14: spaghetti sauce is cooked down; pints 60 min, 15 psi above 1,000 ft.
  const jarproof::report r = judged(
      "food: spaghetti sauce with meat\nas-published: true\npack: hot\njar: pint\nmethod: "
      "pressure\n"
      "gauge: weighted\npressure: 15 psi\ntime: 60 min\naltitude: 4600 ft\n"
      "steps: [Simmer until thick., Puree the tomatoes in a blender.]\n");
  CHECK(r.verdict == verdict::accepted);
}

TEST_CASE("a pot that is kept says how long and how warm") {
  const char* step = "Leave it overnight.";
  CHECK(soup_by(step).verdict == verdict::incomplete);
  CHECK(soup_by(step, "held: {for: 10 h, at: 38 F}\n").verdict == verdict::accepted);
  CHECK(has(soup_by(step, "held: {for: 10 h, at: 38 F}\n"), "held-cold"));
  const jarproof::report warm = soup_by(step, "held: {for: 10 h, at: 70 F}\n");
  CHECK(warm.verdict == verdict::rejected);
  CHECK(has(warm, "held-too-warm"));
  // Two hours between 40 and 140 F, one above 90 F; three days in the cold.
  const char* fill = "Fill the jars.";
  CHECK(soup_by(fill, "held: {for: 2 h, at: 70 F}\n").verdict == verdict::accepted);
  CHECK(has(soup_by(fill, "held: {for: 2.1 h, at: 70 F}\n"), "held-too-warm"));
  CHECK(soup_by(fill, "held: {for: 1 h, at: 95 F}\n").verdict == verdict::accepted);
  CHECK(has(soup_by(fill, "held: {for: 1.1 h, at: 95 F}\n"), "held-too-warm"));
  CHECK(soup_by(fill, "held: {for: 72 h, at: 40 F}\n").verdict == verdict::accepted);
  CHECK(has(soup_by(fill, "held: {for: 73 h, at: 40 F}\n"), "held-too-long"));
}

jarproof::report soup_called(const std::string& title) {
  return judged(fixtures::hot_plan(
      fixtures::soup(),
      "title: \"" + title +
          "\"\nsolids: 1/2\nbatch: 7 qt\nprepared: [boiled 5 min, reheated to a boil]\n"));
}

TEST_CASE("a title is read like a sentence of the directions") {
  for (const char* title :
       {"Cream of venison soup", "Venison noodle soup", "Venison and rice soup",
        "Clam and venison soup", "Smoked venison soup", "Thick venison stew", "Creamy venison soup",
        "Venison bisque", "Boiling water bath venison soup", "Oven canned venison soup",
        "Sopa espesa"}) {
    CAPTURE(std::string(title));
    const jarproof::report r = soup_called(title);
    CHECK(r.verdict == verdict::incomplete);
    const bool named = has(r, "step-names-unlisted") || has(r, "steps-against-plan");
    CHECK(named);
  }
  CHECK(has(soup_called("Pureed venison soup"), "low-acid-puree"));
  CHECK(has(soup_called("Leftover venison soup"), "leftovers-in-jar"));
  CHECK(finding_of(soup_called("Cream of venison soup"), "step-names-unlisted")->field == "title");
  for (const char* title : {"Venison and white bean soup", "Hunter's stew", "Mountain chili base",
                            "Soup for the freezer shelf, first batch"}) {
    CAPTURE(std::string(title));
    CHECK(soup_called(title).verdict == verdict::accepted);
  }
}

TEST_CASE("a thing put in that nobody knows has to be asked about") {
  for (const char* step : {"Add the Mehl.", "Stir in Sahne.", "Agregue migas.",
                           "Eche las migas a la olla.", "Add 2 cups frobnets and simmer."}) {
    CAPTURE(std::string(step));
    CHECK(has(soup_by(step), "step-names-unlisted"));
  }
  for (const char* step : {"Add the carrots and the broth.", "Add more liquid if the level drops.",
                           "Stir in the salt gently.", "Add everything else to the pot."}) {
    CAPTURE(std::string(step));
    CHECK(soup_by(step).verdict == verdict::accepted);
  }
}

TEST_CASE("two denials deny nothing, and what goes in the jar is not for the table") {
  for (const char* step : {"It is nothing without rice.", "We never make it without rice.",
                           "Put rice in the jar so it is ready to serve."}) {
    CAPTURE(std::string(step));
    CHECK(has(soup_by(step), "step-names-unlisted"));
  }
  CHECK(soup_by("Make it without rice.").verdict == verdict::accepted);
}

TEST_CASE("what stands below a heading for the table is not put in the pot") {
  const auto soup_served = [](const std::string& step, const std::string& line = "") {
    fixtures::lines further{"To serve:", "1 cup cream"};
    if (!line.empty()) further.push_back(line);
    return judged(fixtures::hot_plan(
        fixtures::soup(further),
        "solids: 1/2\nbatch: 7 qt\nprepared: [boiled 5 min, reheated to a boil]\n"
        "steps:\n  - \"" +
            step + "\"\n"));
  };
  CHECK(soup_served("Boil everything 5 minutes.").verdict == verdict::accepted);
  CHECK(has(soup_served("Put everything in the pot."), "step-names-unlisted"));
  CHECK(has(soup_served("Stir the cream into the pot."), "step-names-unlisted"));
  CHECK(soup_served("Boil.", "stir into the pot and fill the jars").verdict == verdict::rejected);
}

TEST_CASE("directions that spoil, thicken or empty the safety of a jar are read") {
  for (const char* step : {"Fill the jars with lukewarm soup.",
                           "Llene los frascos con la sopa tibia.",
                           "Ladle only the solids into the jars.",
                           "Skip the broth.",
                           "Leave all the fat in.",
                           "Pour melted fat on top to seal.",
                           "No quite la grasa.",
                           "Altitude does not matter.",
                           "Use half gallons if you are out of quarts.",
                           "Scrape off any mold and use the rest.",
                           "Throw in whatever vegetables you have.",
                           "Use up yesterday's soup as the base.",
                           "Use a steam canner.",
                           "Boil the closed jars 3 hours.",
                           "Never vent, it wastes steam.",
                           "Put the weight on right away.",
                           "Fill to overflowing.",
                           "Do not boil the soup.",
                           "Pase por la licuadora.",
                           "Machaque los frijoles.",
                           "Voltee los frascos boca abajo.",
                           "Ponga los frijoles sin remojar.",
                           "Store the jars on the shelf without processing."}) {
    CAPTURE(std::string(step));
    CHECK(soup_by(step).verdict != verdict::accepted);
  }
}

TEST_SUITE_END();

}  // namespace
}  // namespace judge_steps_tests
