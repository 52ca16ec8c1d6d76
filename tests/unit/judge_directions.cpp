// Directions that say something else than the plan. Rules: USDA Complete Guide to Home Canning
// (2015), part 4, soups: hot pack, pints 60 and quarts 75 min; part 1: methods that are
// not accepted.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <string>

#include "jarproof/detail/token_numbers.hpp"
#include "support/fixtures.hpp"

namespace judge_directions_tests {
namespace {

using fixtures::finding_of;
using fixtures::has;
using fixtures::judged;
using jarproof::verdict;

jarproof::report soup_by(const std::string& step) {
  return judged(
      "ingredients:\n  - 3 lb venison, cut in cubes and browned\n"
      "  - 2 lb carrots, peeled and sliced\n  - 3 qt beef broth\n"
      "pack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\n"
      "time: 75 min\naltitude: 4600 ft\nsolids: 1/2\nbatch: 7 qt\nprepared: [boiled 5 min]\n"
      "steps:\n  - \"" +
      step + "\"\n");
}

TEST_SUITE_BEGIN("check");

TEST_CASE("a shorter process time in the directions is against the plan") {
  for (const char* step :
       {"Process for 74 minutes.", "Process 1 hour.", "Process for 1 hour and 14 minutes.",
        "Processing takes 1 1/4 min.", "Keep 40 min in the canner.", "Process 60 min at 10 psi."}) {
    CAPTURE(std::string(step));
    const jarproof::report r = soup_by(step);
    CHECK(r.verdict == verdict::incomplete);
    const jarproof::finding* f = finding_of(r, "steps-against-plan");
    REQUIRE(f != nullptr);
    CHECK(f->field == "steps");
    CHECK(f->required == "75 min");
  }
}

TEST_CASE("a process time in other words is one too") {
  for (const char* step : {"Process 45 min. at 15#.",
                           "45 min. at 15 lb.",
                           "Pints: 45.",
                           "Quarts 45, pints 40.",
                           "Can 45 minutes.",
                           "Pints 40 min, quarts 50 min.",
                           "Give the quarts 45 minutes.",
                           "40 minutes at ten pounds.",
                           "40 min under pressure.",
                           "In the canner for 30.",
                           "Pressure can for 25 minutes.",
                           "Canning time: 45 minutes",
                           "Jars go in for 45 minutes.",
                           "Let it rock 45 minutes.",
                           "Turn off the heat after 30 minutes.",
                           "Fill jars, seal, and boil one hour.",
                           "1 hour for quarts.",
                           "60 min quarts, 45 min pints.",
                           "15 lb pressure for 50 minutes.",
                           "10# pressure 1 hr.",
                           "50 min @15#.",
                           "Process 45.",
                           "Let her rock for 45.",
                           "Can it for an hour.",
                           "Once at pressure, 50 minutes.",
                           "When pressure is reached set the timer for 50 minutes.",
                           "Shorten the time by 15 min.",
                           "Process 75 minutes including venting.",
                           "Boil closed jars 3 hours.",
                           "Steam the jars 75 min.",
                           "Cover jars with water and boil 3 hours.",
                           "Leave 1/2 inch.",
                           "Fill to within 1/2 inch of rim.",
                           "Use 1/2 gal jars."}) {
    CAPTURE(std::string(step));
    CHECK(has(soup_by(step), "steps-against-plan"));
    CHECK(soup_by(step).verdict == verdict::incomplete);
  }
  for (const char* step :
       {"Quarts 75, pints 60.", "75 min. at 15#.", "Can 75 minutes.", "Let it rock 75 minutes.",
        "Turn off the heat, remove the lid and leave the jars 10 minutes.",
        "Cook the venison 20 minutes at 10 pounds until tender.",
        "Add 2 quarts broth, simmer 20 min.", "Makes 7 quarts.",
        "A canner holds quarts 7, pints 9."}) {
    CAPTURE(std::string(step));
    CHECK_FALSE(has(soup_by(step), "steps-against-plan"));
  }
}

TEST_CASE("jars that are closed and then boiled are another method") {
  CHECK(has(soup_by("Seal and boil."), "steps-against-plan"));
  CHECK(has(soup_by("Put on lids and boil for 3 hours."), "steps-against-plan"));
  CHECK(has(soup_by("Ladle it in and let them seal."), "steps-against-plan"));
  CHECK_FALSE(has(soup_by("Bring to a boil and fill the jars."), "steps-against-plan"));
}

TEST_CASE("everything boils as long as the process says") {
  for (const char* step : {"Boil everything 2 minutes.", "Cover with broth and boil 3 min.",
                           "Bring to a rolling boil 1 minute.", "Boil 2 minutes, then jar.",
                           "Bring to boil, boil 3 minutes, fill jars.", "Simmer soup 3 minutes."}) {
    CAPTURE(std::string(step));
    const jarproof::report r = soup_by(step);
    const jarproof::finding* f = finding_of(r, "steps-against-plan");
    REQUIRE(f != nullptr);
    CHECK(f->required == "5 min");
  }
  for (const char* step :
       {"Cover with broth and boil 5 minutes.", "Boil the carrots 2 minutes and drain.",
        "Boil 2 minutes, then soak 1 hour.", "Boil the beans 2 minutes."}) {
    CAPTURE(std::string(step));
    CHECK_FALSE(has(soup_by(step), "steps-against-plan"));
  }
}

TEST_CASE("the same time, a longer one and other times are not") {
  for (const char* step :
       {"Process for 75 minutes.", "Process pints 60 and quarts 75 minutes.",
        "Process 1 hour 15 minutes.", "Process 1 1/4 hours.", "Process 1½ hours.",
        "Vent the canner 10 minutes.", "Simmer 20 minutes.", "Let the canner cool for 45 minutes.",
        "Stir 2 minutes in the food processor when serving."}) {
    CAPTURE(std::string(step));
    CHECK_FALSE(has(soup_by(step), "steps-against-plan"));
  }
}

TEST_CASE("another method in the directions is against the plan") {
  for (const char* step :
       {"Process the jars in a boiling water bath.", "Bake the filled jars in the oven.",
        "Turn the jars upside down.", "Seal the jars in the dishwasher."}) {
    CAPTURE(std::string(step));
    CHECK(has(soup_by(step), "steps-against-plan"));
    CHECK(soup_by(step).verdict == verdict::incomplete);
  }
  for (const char* step : {"Roast the bones in the oven.", "Keep the clean jars warm in the oven.",
                           "Wash the jars in the dishwasher.", "Never put the jars upside down.",
                           "Can it in a pressure canner, no water bath."}) {
    CAPTURE(std::string(step));
    CHECK_FALSE(has(soup_by(step), "steps-against-plan"));
  }
}

TEST_CASE("how the jars are filled is read") {
  const struct {
    const char* step;
    const char* check;
  } steps[] = {{"Put the raw meat in the jars.", "steps-against-plan"},
               {"Put a cup of dried beans in each jar.", "steps-against-plan"},
               {"Fill the jars to the brim.", "steps-against-plan"},
               {"Pack the jars tightly.", "too-dense"},
               {"Let the pot cool, then fill the jars.", "standing-unsaid"},
               {"Lift the weight off when the timer rings.", "steps-against-plan"}};
  for (const auto& s : steps) {
    CAPTURE(std::string(s.step));
    const jarproof::report r = soup_by(s.step);
    CHECK(has(r, s.check));
    CHECK(r.verdict != verdict::accepted);
  }
  for (const char* step :
       {"Rinse the raw carrots.", "Do not fill the jars to the brim.",
        "Screw the lids on the jars fingertip tight.", "Let the jars cool for a day."}) {
    CAPTURE(std::string(step));
    CHECK(soup_by(step).verdict == verdict::accepted);
  }
  // A raw pack is filled raw: strips or cubes of meat, quarts 90 min (part 5, page 5-6).
  CHECK(judged("food: meat-strips-cubes-chunks\ningredients: [10 lb beef in cubes]\npack: raw\n"
               "jar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 90 min\n"
               "altitude: 4600 ft\nas-published: true\nsteps: [Put the raw meat in the jars.]\n")
            .verdict == verdict::accepted);
}

TEST_CASE("a fraction sign, a hyphen and the pressure of the lowest kitchens are read") {
  // Part 4, soups: 1 inch of headspace, 75 min in quarts; 15 psi above 1,000 ft.
  for (const char* step : {"Leave ¼ inch headspace.", "Leave ¾ inch headspace.", "Process ¾ hour.",
                           "Fill 2-quart jars."}) {
    CAPTURE(std::string(step));
    CHECK(soup_by(step).verdict == verdict::incomplete);
    CHECK(has(soup_by(step), "steps-against-plan"));
  }
  for (const char* step :
       {"Leave 1 inch headspace.", "Leave 99999 inches headspace.", "Fill 2 quart jars."}) {
    CAPTURE(std::string(step));
    CHECK_FALSE(has(soup_by(step), "steps-against-plan"));
  }
  const jarproof::report low = soup_by("Process at 10 psi for 75 minutes.");
  const jarproof::finding* f = finding_of(low, "step-pressure-lower");
  REQUIRE(f != nullptr);
  CHECK(f->level == jarproof::level::warning);
  CHECK(f->required == "15 psi");
  CHECK(low.verdict == verdict::accepted);
  CHECK_FALSE(has(soup_by("Process at 15 psi for 75 minutes."), "step-pressure-lower"));
}

TEST_CASE("closed jars may stand overnight, and food that still has to be filled may not") {
  for (const char* step : {"Process quarts 75 minutes. Cool the jars on towels overnight.",
                           "Let the pressure drop to zero by itself. Lift the jars out and leave "
                           "them be til next day.",
                           "Process 75 min. in the canner and cool overnight on a rack."}) {
    CAPTURE(std::string(step));
    CHECK_FALSE(has(soup_by(step), "standing-unsaid"));
  }
  for (const char* step :
       {"Let the soup stand overnight. Fill the jars and process 75 minutes.",
        "Process quarts 75 minutes. Leave the rest of the soup in the pot overnight.",
        "Process the first load 75 minutes. Keep the other jars out on the counter overnight.",
        "Process 75 minutes. Leave the broth out overnight.",
        "Process 75 minutes. Leave it on the counter overnight.",
        "Process the next batch 75 minutes. Let it stand on the counter overnight before "
        "filling."}) {
    CAPTURE(std::string(step));
    CHECK(has(soup_by(step), "standing-unsaid"));
  }
}

TEST_CASE("words of the work are no food, and crushed tomatoes are one") {
  for (const char* step :
       {"Poke out the air bubbles.", "Skim the broth.",
        "Put the venison and carrots in the roaster.", "Stir with a butter knife."}) {
    CAPTURE(std::string(step));
    CHECK_FALSE(has(soup_by(step), "step-names-unlisted"));
  }
  CHECK(has(soup_by("Add the butter."), "step-names-unlisted"));
  CHECK(has(soup_by("Add crushed carrots."), "low-acid-puree"));
  CHECK(has(soup_by("Add crushed tomatoes and crushed carrots."), "low-acid-puree"));
  CHECK_FALSE(has(soup_by("Add crushed tomatoes."), "low-acid-puree"));
}

TEST_CASE("numbers among words are read as a whole") {
  const auto sixtieths = [](const char* text) {
    std::size_t at = 0;
    return jarproof::detail::sixtieths_at(jarproof::detail::tokens_of(text), at).value_or(-1);
  };
  CHECK(sixtieths("75 minutes") == 4500);
  CHECK(sixtieths("1 1/4 hours") == 75);
  CHECK(sixtieths("1½ hours") == 90);
  CHECK(sixtieths("¼ inch") == 15);
  CHECK(sixtieths("1¾ hours") == 105);
  CHECK(sixtieths("99999 99999 hours") == -1);
  CHECK(sixtieths("1/0 hours") == -1);
  CHECK(sixtieths("many hours") == -1);
}

TEST_CASE("times in words and in Spanish are read") {
  for (const char* step :
       {"Process the jars for sixty minutes.", "Process three quarters of an hour.",
        "Process for an hour.", "Can for 20 minutes at pressure.",
        "Hold the pressure for half an hour.", "Procese 30 minutos.", "Procese por una hora."}) {
    CAPTURE(std::string(step));
    CHECK(has(soup_by(step), "steps-against-plan"));
  }
  for (const char* step :
       {"Process the jars for seventy-five minutes.", "Process for an hour and a half.",
        "Procese 75 minutos.", "Cook the beans in a pressure cooker for 20 minutes."}) {
    CAPTURE(std::string(step));
    CHECK_FALSE(has(soup_by(step), "steps-against-plan"));
  }
}

TEST_CASE("headspace, pressure, venting and jars of the directions are compared") {
  // Part 4, soups: 1 inch of headspace; part 1: 10 minutes of steam before the weight. The
  // pressures of the lowest band, 10 and 11 psi, stand in every recipe.
  for (const char* step :
       {"Leave 1/4 inch headspace.", "Fill the jars to within 1/4 inch of the top.",
        "Leave half an inch at the top.", "Process at 5 pounds.", "Keep the gauge at 8 pounds.",
        "Set the weight at 5.", "Process at 20 pounds to be quick.", "Vent 3 minutes.",
        "Let steam escape for 2 minutes.", "Use 64 oz jars.", "Fill 3 liter jars.",
        "Water bath for 3 hours."}) {
    CAPTURE(std::string(step));
    CHECK(has(soup_by(step), "steps-against-plan"));
    CHECK(soup_by(step).verdict == verdict::incomplete);
  }
  for (const char* step :
       {"Leave 1 inch headspace.", "Keep the water an inch over the tops of the jars.",
        "Process at 10 pounds pressure, 11 on a dial gauge.", "Use 15 pounds above 1,000 feet.",
        "Vent the canner for ten minutes.", "Use 32 oz jars.", "Cut in 1/2 inch pieces."}) {
    CAPTURE(std::string(step));
    CHECK(soup_by(step).verdict == verdict::accepted);
  }
  for (const char* step :
       {"Let sit 4 hours.", "Hold at 120 F.", "Keep the soup warm for 5 hours."}) {
    CAPTURE(std::string(step));
    CHECK(has(soup_by(step), "standing-unsaid"));
  }
}

TEST_CASE("labels of a recipe and jars that are filled over half with solids are read") {
  // Part 4, soups: fill the jars halfway with solid mixture, the rest is liquid.
  for (const char* step :
       {"Fill jars 3/4 full of meat.", "Fill the jars three quarters full with solids.",
        "Pack each jar 2/3 full.", "Jars: half-gallon", "Jar size: 1/2 gallon",
        "Method: boiling water", "Method: water bath"}) {
    CAPTURE(std::string(step));
    CHECK(has(soup_by(step), "steps-against-plan"));
    CHECK(soup_by(step).verdict == verdict::incomplete);
  }
  for (const char* step :
       {"Fill jars 1/2 full of solids.", "Fill jars half full, then add broth to 1 inch.",
        "Jars: quarts", "Method: pressure canner", "Fill the canner 3/4 full of water."}) {
    CAPTURE(std::string(step));
    CHECK_FALSE(has(soup_by(step), "steps-against-plan"));
  }
}

TEST_CASE("ranges, metric numbers and short names of methods are read") {
  for (const char* step :
       {"Process 50-60 minutes.", "Vent 5-7 minutes.", "Process at 5-8 lbs.",
        "Leave 1 cm headspace.", "Leave 12 mm headspace.", "Process at 35 kPa.",
        "Process at 0.35 bar.", "BWB 3 hours.", "HWB 3 hours.", "WB 3 hours.", "Cold pack 3 hours.",
        "Boil in canner 3 hrs.", "Add 2 tbsp vinegar to each jar and boil 3 hours.",
        "Process 20 m.", "Give them 20 minutes.", "Canner time 20.",
        "After the jiggler starts, 20 min."}) {
    CAPTURE(std::string(step));
    CHECK(has(soup_by(step), "steps-against-plan"));
  }
  // 25 mm are printed for 1 in, 103 kPa are marked for 15 psi.
  for (const char* step : {"Process 75-80 minutes.", "Process 1-1/4 hours.", "Vent 10-12 minutes.",
                           "Leave 2.5 cm headspace.", "Process at 103 kPa for 75 minutes.",
                           "Cover with boiling water or broth."}) {
    CAPTURE(std::string(step));
    CHECK_FALSE(has(soup_by(step), "steps-against-plan"));
  }
  CHECK(has(soup_by("Chill for 5 days, skim the fat, then fill the jars."), "standing-unsaid"));
  CHECK_FALSE(
      has(soup_by("Chill for 2 days, skim the fat, then fill the jars."), "standing-unsaid"));
}

TEST_SUITE_END();

}  // namespace
}  // namespace judge_directions_tests
