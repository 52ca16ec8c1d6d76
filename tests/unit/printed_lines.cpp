// Ingredient lines and headings in the words of publications. Sources, USDA Complete Guide to Home
// Canning (2015): part 3, page 3-21 (chile salsa); part 5, page 5-8 (chile con carne), 5-5
// (chicken) and 5-7 (stock); part 6, pages 6-16 (pickled carrots), 6-14 (three-bean salad) and 6-10
// (quick fresh-pack dills); part 2, page 2-6 (apple butter), 2-19 and 2-14 (pears, figs).
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <cstddef>
#include <string>

#include "support/dishes.hpp"
#include "support/fixtures.hpp"

namespace printed_lines_tests {
namespace {

using fixtures::has;
using fixtures::judged;
using fixtures::lines;
using jarproof::verdict;

lines with(lines all, std::size_t i, const std::string& line) {
  all[i] = line;
  return all;
}
lines and_more(lines all, const lines& more) {
  all.insert(all.end(), more.begin(), more.end());
  return all;
}

jarproof::report in_boiling_water(const std::string& food, const std::string& time,
                                  const lines& ingredients, const std::string& more = "",
                                  const std::string& pack = "hot") {
  return judged((food.empty() ? "" : "food: " + food + "\n") +
                fixtures::ingredients_text(ingredients) + "pack: " + pack + "\njar: pint\n" +
                fixtures::boiling_water + "time: " + time + "\naltitude: 800 ft\n" + more);
}

const lines salsa_lines = {"5 lb tomatoes", "2 lb chile peppers", "1 lb onions",
                           "1 cup vinegar (5%)", "3 tsp salt"};
jarproof::report salsa(const lines& all, const std::string& food = "chile salsa") {
  return in_boiling_water(food, "15 min", all, "prepared: [peeled, boiled before filling]\n");
}

const std::string published = "as-published: true\n";

TEST_SUITE_BEGIN("check");

TEST_CASE("vinegar as publications print it is vinegar of 5 percent") {
  for (const char* line :
       {"1 cup vinegar (5 percent), preferably white distilled", "1 cup vinegar (at least 5%)",
        "1 cup apple cider vinegar (5%), not homemade"}) {
    CAPTURE(std::string(line));
    CHECK(salsa(with(salsa_lines, 3, line)).verdict == verdict::accepted);
    CHECK(salsa(with(salsa_lines, 3, line), "").verdict == verdict::accepted);
  }
  CHECK(has(salsa(with(salsa_lines, 3, "1 cup vinegar (at least 4%)")), "vinegar-too-weak"));
  for (const char* line :
       {"1 cup vinegar (at most 5%)", "at least 1 cup vinegar (5%)",
        "1 cup vinegar (5%), preferably homemade", "1 cup vinegar (5%), preferably less",
        "1 cup vinegar (5%), preferably diluted", "1 cup vinegar, preferably rice",
        "1 cup vinegar, not only store bought but homemade", "1 cup cider"}) {
    CAPTURE(std::string(line));
    CHECK(salsa(with(salsa_lines, 3, line)).verdict != verdict::accepted);
  }
}

TEST_CASE("a state said once is that of both foods") {
  const lines chili = {"3 cups dried pinto or red kidney beans",
                       "5-1/2 cups water",
                       "5 tsp salt",
                       "3 lbs ground beef",
                       "1-1/2 cups chopped onions",
                       "1 tsp black pepper",
                       "3 to 6 tbsp chili powder",
                       "2 qts crushed or whole tomatoes"};
  CHECK(judged(fixtures::hot_plan(chili,
                                  "food: chile con carne\nprepared: [beans rehydrated, drained, "
                                  "meat precooked, fat removed, boiled before filling, boiled 5 "
                                  "min, not thickened]\n",
                                  "pint"))
            .verdict == verdict::accepted);
  const lines canned = with(chili, 0, "3 cups dried pinto or canned red kidney beans");
  CHECK(has(judged(fixtures::hot_plan(canned, "food: chile con carne\n" + published, "pint")),
            "low-acid-share-too-high"));
}

TEST_CASE("what was bought stands beside what is left of it") {
  const lines rest = {"5-1/2 cups white vinegar (5%)", "1 cup water", "2 cups sugar",
                      "2 tsp canning salt"};
  const auto carrots = [&](const char* line) {
    return in_boiling_water("pickled carrots", "15 min", and_more({line}, rest), published);
  };
  // The recipe prints the peeled weight of the carrots, and the bought one of the tomatoes.
  CHECK(carrots("2-3/4 lbs peeled carrots (about 3-1/2 lbs as purchased)").verdict ==
        verdict::accepted);
  CHECK(has(carrots("3 lbs peeled carrots (about 3-1/2 lbs as purchased)"), "acid-too-little"));
  CHECK(has(carrots("2-3/4 lbs peeled carrots (about 5-3/4 lbs as purchased)"),
            "ingredient-unknown"));
  CHECK(has(carrots("3-1/2 lbs peeled carrots (about 2-3/4 lbs as purchased)"),
            "ingredient-unknown"));
  const char* onions = "1 lb peeled onions (about 1-1/4 lb as purchased)";
  CHECK(has(salsa(with(salsa_lines, 2, onions)), "low-acid-share-too-high"));
  CHECK(salsa(with(salsa_lines, 0, "4-1/2 lb peeled tomatoes (about 5 lb as purchased)")).verdict ==
        verdict::accepted);
  CHECK(has(salsa(with(salsa_lines, 0, "5 lb peeled tomatoes (about 6 lb as purchased)")),
            "acid-too-little"));
}

TEST_CASE("pieces in brackets are those of the line, if they can be so many") {
  const lines salad = {"1-1/2 cups cut and blanched green or yellow beans",
                       "1-1/2 cups canned, drained, red kidney beans",
                       "1 cup canned, drained garbanzo beans",
                       "1/2 cup sliced green peppers (1/2 medium pepper)",
                       "1/2 cup white vinegar (5%)",
                       "1/4 cup bottled lemon juice",
                       "1-1/4 cups water"};
  const auto judge = [&](const lines& all) {
    return in_boiling_water("three-bean salad", "15 min", all, published);
  };
  CHECK(judge(salad).verdict == verdict::accepted);
  for (const char* line :
       {"1/2 cup sliced green peppers (5 large peppers)", "1/2 cup green peppers (1/2 cup pepper)",
        "1/2 cup sliced green peppers (1/2 medium pepper and rice)"}) {
    CAPTURE(std::string(line));
    CHECK(judge(with(salad, 3, line)).verdict != verdict::accepted);
  }
}

TEST_CASE("water that the directions soak in and drain off does not count") {
  const lines dills = {"8 lbs of 3- to 5-inch pickling cucumbers",
                       "2 gals water",
                       "1-1/4 cups canning or pickling salt",
                       "1-1/2 qts vinegar (5%)",
                       "2 quarts water",
                       "about 14 heads of fresh dill"};
  const auto judge = [](const lines& all, const std::string& steps) {
    return in_boiling_water("quick fresh-pack dill pickles", "10 min", all,
                            published + "steps:\n  - \"" + steps + "\"\n", "raw");
  };
  const std::string soak =
      "Dissolve 3/4 cup salt in 2 gals water. Pour over cucumbers and let stand 12 hours. ";
  CHECK(judge(dills, soak + "Drain.").verdict == verdict::accepted);
  CHECK(judge(dills, soak + "Drain and rinse.").verdict == verdict::accepted);
  for (const std::string& steps :
       {soak, soak + "Drain, saving the water.", soak + "Drain into the kettle.",
        soak + "Drain. Combine vinegar and the soaking water.",
        soak + "Drain. Combine vinegar and 2 gals water.",
        soak + "Drain. Keep the liquid for the jars.",
        std::string("Combine vinegar and 2 gals water. Heat. Drain.")}) {
    CAPTURE(steps);
    CHECK(has(judge(dills, steps), "water-too-much"));
  }
  CHECK(has(judge(with(dills, 4, "2 gals water"), soak + "Drain."), "water-too-much"));
}

TEST_CASE("cider in a recipe is the juice") {
  CHECK(in_boiling_water("apple butter", "5 min",
                         {"8 lbs apples", "2 cups cider", "2 cups vinegar (5%)", "2 cups sugar"},
                         published + "prepared: [jars sterilized]\n")
            .verdict == verdict::accepted);
}

TEST_CASE("fruit stands in the syrup and the juice of its table") {
  const auto pears = [](const char* liquid) {
    return in_boiling_water("pears", "20 min", {"17 lb pears, halved", liquid}, published);
  };
  for (const char* liquid :
       {"light syrup", "medium syrup", "water or apple juice", "white grape juice"}) {
    CAPTURE(std::string(liquid));
    CHECK(pears(liquid).verdict == verdict::accepted);
  }
  for (const char* liquid : {"cream", "2 cups rum", "corn syrup", "carrot juice", "tomato juice",
                             "light syrup thickened with cornstarch"}) {
    CAPTURE(std::string(liquid));
    CHECK(pears(liquid).verdict != verdict::accepted);
  }
  const std::string acid = published + "acid: 1 tbsp bottled lemon juice per pint\n";
  CHECK(in_boiling_water("figs", "45 min", {"16 lb figs", "light syrup"}, acid).verdict ==
        verdict::accepted);
  CHECK(has(in_boiling_water("figs", "45 min", {"16 lb figs", "apple juice"}, acid),
            "no-tested-process"));
}

TEST_CASE("boneless chicken in cubes and the bones of stock are what their tables are for") {
  const auto pressed = [](const std::string& food, const char* line, const char* pack,
                          const char* time) {
    return judged("food: " + food + "\n" + published + fixtures::ingredients_text({line}) +
                  "pack: " + pack + "\njar: pint\n" + fixtures::weighted + "time: " + time +
                  "\naltitude: 4600 ft\n")
        .verdict;
  };
  for (const char* line : {"10 lb boneless chicken, cubed", "10 lb boneless chicken, in chunks"})
    CHECK(pressed("chicken without bones", line, "raw", "75 min") == verdict::accepted);
  for (const char* line : {"10 lb boneless chicken, ground", "10 lb boneless chicken, shredded",
                           "10 lb boneless chicken, cubed and breaded"})
    CHECK(pressed("chicken without bones", line, "raw", "75 min") != verdict::accepted);
  for (const char* line : {"4 lb chicken bones", "1 turkey carcass"}) {
    CHECK(pressed("chicken stock", line, "hot", "20 min") == verdict::accepted);
    CHECK(pressed("beef stock", line, "hot", "20 min") == verdict::untested);
  }
  // In a soup the bones would stay.
  CHECK(fixtures::soup_with({"1 turkey carcass"}).verdict != verdict::accepted);
}

TEST_CASE("a heading may say how much its lines make, once") {
  for (const char* heading : {"For 7 quarts:", "For six wide-mouth pint jars"}) {
    CAPTURE(std::string(heading));
    CHECK(salsa(and_more({heading}, salsa_lines)).verdict == verdict::accepted);
  }
  const lines half = with(salsa_lines, 3, "1/2 cup vinegar (5%)");
  CHECK(has(
      salsa(and_more(and_more({"For 7 pints:"}, half), {"For 9 pints:", "1/2 cup vinegar (5%)"})),
      "acid-missing"));
  CHECK(has(salsa(and_more(and_more({"Pints:"}, half), {"Quarts:", "1/2 cup vinegar (5%)"})),
            "acid-missing"));
  CHECK(salsa(and_more({"For half of the jars:"}, salsa_lines)).verdict == verdict::incomplete);
  CHECK(salsa(and_more({"For six rice jars:"}, salsa_lines)).verdict == verdict::rejected);
}

TEST_CASE("a footnote makes the lines with its sign optional") {
  CHECK(salsa(and_more(salsa_lines, {"1/2 tsp black pepper*", "*Optional"})).verdict ==
        verdict::accepted);
  CHECK(has(salsa(and_more(with(salsa_lines, 3, "1 cup vinegar (5%)*"), {"*Optional"})),
            "acid-missing"));
  CHECK(has(salsa(and_more(salsa_lines, {"1/2 cup rice*", "*Optional"})), "pasta-or-grain-in-jar"));
  CHECK(salsa(and_more(salsa_lines, {"*Optional"})).verdict == verdict::incomplete);
  CHECK(salsa(and_more(salsa_lines, {"1/2 tsp pepper*", "*Optional rice"})).verdict !=
        verdict::accepted);
}

TEST_CASE("metric amounts in exactly the printed proportion are not rounded apart") {
  const lines metric = {"2.25 kg tomatoes", "900 g chile peppers", "450 g onions",
                        "1 cup vinegar (5%)", "3 tsp salt"};
  CHECK(salsa(metric).verdict == verdict::accepted);
  lines mixed = with(metric, 1, "450 g jalapeno peppers");
  mixed.emplace_back("450 g bell peppers");
  CHECK(salsa(mixed).verdict == verdict::accepted);
  mixed.back() = "451 g bell peppers";
  CHECK(has(salsa(mixed), "low-acid-share-too-high"));
  const struct {
    std::size_t at;
    const char* line;
  } beyond[] = {{0, "2249 g tomatoes"},
                {0, "2-2.25 kg tomatoes"},
                {1, "901 g chile peppers"},
                {1, "900.1 g chile peppers"},
                {1, "900-910 g chile peppers"},
                {1, "900 g plus 1 g chile peppers"},
                {2, "451 g onions"}};
  for (const auto& b : beyond) {
    CAPTURE(std::string(b.line));
    CHECK(has(salsa(with(metric, b.at, b.line)), "low-acid-share-too-high"));
  }
}

TEST_CASE("one line that is not understood keeps a recipe from being known and no more") {
  for (const char* line : {"1 cup frobnitz", "2 tsp salt from the zorgmine"}) {
    CAPTURE(std::string(line));
    const jarproof::report r = salsa(and_more(salsa_lines, {line}), "");
    CHECK(r.verdict == verdict::incomplete);
    CHECK(has(r, "ingredient-unknown"));
    CHECK_FALSE(has(r, "low-acid-needs-pressure"));
  }
  CHECK(salsa(and_more(salsa_lines, {"1 cup frobnitz rice"}), "").verdict == verdict::rejected);
  CHECK(salsa(and_more(salsa_lines, {"1 cup thickened frobnitz"}), "").verdict ==
        verdict::rejected);
  // Half of the vinegar is no published recipe.
  CHECK(has(salsa(with(salsa_lines, 3, "1/2 cup vinegar (5%) xyzzy"), ""),
            "low-acid-needs-pressure"));
}

TEST_CASE("what a part of a line or a heading gives to the table is not in the jar") {
  // Part 4, soups: noodles, rice, flour, cream and milk stay out of the jar.
  const auto soup = [](const lines& more) { return fixtures::soup_with(more).verdict; };
  for (const char* line :
       {"Parmesan and olive oil, passed at the table",
        "grated cheese and crackers, on the side at serving", "mashed potatoes, to serve it over",
        "sour cream, on top when we eat it", "rice or noodles, cooked in it when the jar is opened",
        "1 cup cream, to stir in at serving"}) {
    CAPTURE(std::string(line));
    CHECK(soup({line}) == verdict::accepted);
  }
  for (const char* line :
       {"1 cup cream, half to stir in at serving", "1 cup cream, on the side of the stove",
        "cream, at serving and in the jars", "1 cup rice on the side, 1 cup in the pot"}) {
    CAPTURE(std::string(line));
    CHECK(soup({line}) != verdict::accepted);
  }
  for (const char* heading : {"For stroganoff, when a jar is opened:", "When you heat them:",
                              "AT THE TABLE", "For the dumplings, made fresh when a jar is opened:",
                              "To finish when the jar is opened:"}) {
    CAPTURE(std::string(heading));
    CHECK(soup({heading, "1 cup sour cream", "2 tbsp flour mixed with 1/4 cup milk"}) ==
          verdict::accepted);
  }
  for (const char* heading :
       {"For each jar, when opened:", "Fill into the pot at the table:", "For the dumplings:"}) {
    CAPTURE(std::string(heading));
    CHECK(soup({heading, "1 cup sour cream"}) != verdict::accepted);
  }
  CHECK(soup({"When you heat them:", "1 cup cream", "For the pot:", "1 cup rice"}) !=
        verdict::accepted);
}

TEST_SUITE_END();

}  // namespace
}  // namespace printed_lines_tests
