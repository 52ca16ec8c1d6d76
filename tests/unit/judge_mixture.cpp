// Mixtures of the cook's own. Numbers: USDA Complete Guide to Home Canning (2015), part 4, soups
// (pints 60 min, quarts 75 min; half solids; boiled 5 minutes; no thickener, dairy, noodles, rice)
// and mixed vegetables (page 4-12: 75 and 90 min); part 5, chile con carne (page 5-8: pints 75 min,
// no quarts); weighted gauge 15 psi above 1,000 ft. Seasonings: rules/seasonings.yaml, common
// practice, no source.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "support/dishes.hpp"
#include "support/fixtures.hpp"

namespace judge_mixture_tests {
namespace {

using fixtures::finding_of;
using fixtures::has;
using fixtures::hot_plan;
using fixtures::judged;
using fixtures::lines;
using fixtures::soup;
using fixtures::soup_with;
using fixtures::soup_words;
using jarproof::verdict;

TEST_SUITE_BEGIN("check");

TEST_CASE("parts with a process of their own, in broth, are a soup") {
  const jarproof::report quart = soup_with({});
  CHECK(quart.verdict == verdict::accepted);
  REQUIRE(quart.process != nullptr);
  CHECK(quart.process->id == "soups");
  REQUIRE(quart.required);
  CHECK(quart.required->time_min == 75);
  CHECK(judged(hot_plan(soup(), soup_words, "quart", "74 min")).verdict == verdict::rejected);
  CHECK(judged(hot_plan(soup(), soup_words, "pint", "60 min")).verdict == verdict::accepted);
  CHECK(judged(hot_plan(soup(), soup_words, "pint", "59 min")).verdict == verdict::rejected);
}

TEST_CASE("a soup has a quarter of its batch in liquid, to the exact edge") {
  // Common practice, no source. A quarter of 7 quarts is 7 cups.
  const lines solids{"3 lb venison, cut in cubes and browned", "2 lb carrots, peeled and sliced"};
  const auto with = [&](const char* broth) {
    lines all = solids;
    all.emplace_back(broth);
    return judged(hot_plan(all, soup_words));
  };
  CHECK(with("7 cups beef broth").verdict == verdict::accepted);
  CHECK(with("1 3/4 quarts beef broth").verdict == verdict::accepted);
  CHECK(has(with("6 7/8 cups beef broth"), "too-dense"));
  CHECK(with("6 7/8 cups beef broth").verdict == verdict::rejected);
}

TEST_CASE("a heading without a colon is no ingredient") {
  const lines list{"Soup", "3 lb venison, cut in cubes and browned",
                   "2 lb carrots, peeled and sliced", "3 qt beef broth"};
  CHECK(judged(hot_plan(list, soup_words)).verdict == verdict::accepted);
  // What may be an ingredient stays one: with a ban, with an amount, at the end of the list.
  for (const char* line : {"Cream sauce", "1 quart soup", "Gravy", "Alfredo sauce", "Flour",
                           "Beans", "Beans & meat", "Hot sauce", "Vegetables"}) {
    CAPTURE(std::string(line));
    lines with = list;
    with[0] = line;
    CHECK(judged(hot_plan(with, soup_words)).verdict != verdict::accepted);
  }
  lines last(list.begin() + 1, list.end());
  last.emplace_back("Soup");
  CHECK(judged(hot_plan(last, soup_words)).verdict != verdict::accepted);
}

TEST_CASE("what may not be in the jar is found on its own line") {
  const struct {
    const char* line;
    const char* check;
    verdict outcome;
  } bans[] = {{"1/2 cup all-purpose flour", "thickener-in-jar", verdict::rejected},
              {"1/4 cup cornstarch", "thickener-in-jar", verdict::rejected},
              {"1/2 cup masa harina", "thickener-in-jar", verdict::rejected},
              {"1 cup heavy cream", "dairy-in-jar", verdict::rejected},
              {"2 cups shredded cheddar", "dairy-in-jar", verdict::rejected},
              {"2 cups egg noodles", "pasta-or-grain-in-jar", verdict::rejected},
              {"1 cup macaroni", "pasta-or-grain-in-jar", verdict::rejected},
              {"1 cup white rice", "pasta-or-grain-in-jar", verdict::rejected},
              {"1 cup pearl barley", "pasta-or-grain-in-jar", verdict::rejected},
              {"2 eggs, beaten", "egg-in-jar", verdict::rejected},
              {"1 lb hard candy", "ingredient-without-process", verdict::untested},
              {"2 cups pumpkin puree", "low-acid-puree", verdict::rejected},
              {"2 cups refried beans", "low-acid-puree", verdict::rejected},
              {"1/2 cup olive oil", "fat-in-jar", verdict::rejected},
              {"1 lb bacon, diced", "cured-meat-in-jar", verdict::rejected},
              {"1 lb ham, cubed", "cured-meat-in-jar", verdict::rejected},
              {"2 lb beef cubes, floured and browned", "thickener-in-jar", verdict::rejected},
              {"3 cups dried white beans, not soaked", "beans-not-rehydrated", verdict::rejected},
              {"3 cups dried white beans, not cooked", "beans-not-rehydrated", verdict::rejected},
              {"3 cups dried white beans, un-soaked", "beans-not-rehydrated", verdict::rejected},
              {"3 cups dried white beans", "beans-not-rehydrated", verdict::incomplete},
              {"2 lb lettuce", "ingredient-without-process", verdict::untested},
              {"2 cups celery, sliced", "ingredient-without-process", verdict::untested},
              {"4 cups cabbage, shredded", "ingredient-without-process", verdict::untested},
              {"2 cups zucchini, diced", "ingredient-without-process", verdict::untested}};
  for (const auto& b : bans) {
    CAPTURE(std::string(b.line));
    const jarproof::report r = soup_with({b.line});
    CHECK(r.verdict == b.outcome);
    // What decides points at its line; beans that are left unsaid are a fact of the plan.
    const int line = b.outcome == verdict::incomplete ? 1 : 5;
    CHECK(std::any_of(r.findings.begin(), r.findings.end(), [&](const jarproof::finding& f) {
      return f.check == b.check && f.line == line;
    }));
  }
}

TEST_CASE("a step that a line denies is not taken as said") {
  CHECK(soup_with({"2 lb chicken breast, boneless, cooked"}).verdict == verdict::accepted);
  for (const char* line :
       {"2 lb chicken breast, boneless", "2 lb chicken breast, boneless, raw",
        "2 lb chicken breast, boneless, not cooked", "2 lb chicken breast, boneless, uncooked"}) {
    CAPTURE(std::string(line));
    CHECK(soup_with({line}).verdict != verdict::accepted);
  }
  // What the plan says of its beans does not outweigh what the line says.
  const std::string words =
      "solids: 1/2\nbatch: 7 qt\nprepared: [beans rehydrated, boiled 5 min]\n";
  CHECK(soup_with({"3 cups dried white beans"}, words).verdict == verdict::accepted);
  CHECK(soup_with({"3 cups dried white beans, not soaked"}, words).verdict == verdict::rejected);
}

TEST_CASE("zucchini is a part of mixed vegetables and not most of them") {
  // USDA Complete Guide (2015), part 4, page 4-12: 4 of 32 cups, other proportions too; at most a
  // third is common practice, no source.
  const auto mixed = [](const std::string& zucchini, const std::string& more) {
    return judged("food: mixed vegetables\n" +
                  hot_plan({"6 cups carrots, peeled and sliced", "6 cups corn kernels",
                            "6 cups green beans, cut", "6 cups lima beans",
                            "4 cups crushed tomatoes", zucchini},
                           "prepared: [boiled 5 min]\n" + more, "quart", "90 min"));
  };
  CHECK(mixed("4 cups diced zucchini", "").verdict == verdict::accepted);
  CHECK(mixed("10 cups diced zucchini", "batch: 8 qt\n").verdict == verdict::accepted);
  const jarproof::report most = mixed("11 cups diced zucchini", "batch: 8 qt\n");
  CHECK(most.verdict == verdict::untested);
  CHECK(has(most, "ingredient-without-process"));
  CHECK(mixed("28 cups diced zucchini", "").verdict == verdict::incomplete);
  CHECK(mixed("zucchini, diced", "batch: 8 qt\n").verdict == verdict::incomplete);
}

TEST_CASE("greens with a table of their own may go into a soup, and into no mixed vegetables") {
  CHECK(soup_with({"2 lb spinach, washed"}).verdict == verdict::accepted);
  const auto mixed = [](const char* green) {
    return judged("food: mixed vegetables\n" +
                  hot_plan({"4 lb carrots, peeled and sliced", "3 lb green beans, cut", green},
                           "prepared: [boiled 5 min]\n", "quart", "90 min"));
  };
  CHECK(mixed("2 lb asparagus, cut").verdict == verdict::accepted);
  const jarproof::report r = mixed("2 lb spinach, washed");
  CHECK(r.verdict == verdict::untested);
  CHECK(has(r, "no-tested-process"));
}

TEST_CASE("seafood needs the longer process of its soup") {
  // Part 4, footnote of the soup table: 100 min in pints and quarts.
  const jarproof::report r = soup_with({"1 lb clams, shucked"});
  REQUIRE(r.process != nullptr);
  CHECK(r.process->id == "soups-with-seafood");
  CHECK(has(r, "time-too-short"));
}

TEST_CASE("a seasoning is one up to its limit and a vegetable one step beyond") {
  // For 7 quarts, each limit of rules/seasonings.yaml seven times.
  const struct {
    const char* id;
    const char* most;
    const char* beyond;
  } edges[] = {
      {"dried-herbs-and-spices", "14 tbsp dried oregano", "14 1/8 tbsp dried oregano"},
      {"whole-spices", "56 bay leaves", "57 bay leaves"},
      {"salt", "14 tsp canning salt", "14 1/8 tsp canning salt"},
      {"garlic", "14 cloves garlic, minced", "15 cloves garlic, minced"},
      {"fresh-herbs", "7 tbsp fresh parsley, chopped", "7 1/8 tbsp fresh parsley, chopped"},
      {"fresh-ginger", "7 tbsp fresh ginger, minced", "7 1/8 tbsp fresh ginger, minced"},
      {"sprigs", "14 sprigs fresh thyme", "15 sprigs fresh thyme"},
      {"other-salts", "14 tsp lite salt", "14 1/8 tsp lite salt"},
      {"sweeteners", "21 tbsp sugar", "21 1/8 tbsp sugar"},
      {"ascorbic-acid", "7 tsp ascorbic acid", "7 1/8 tsp ascorbic acid"}};
  std::vector<std::string> tried;
  for (const auto& e : edges) {
    CAPTURE(std::string(e.id));
    tried.emplace_back(e.id);
    CHECK(soup_with({e.most}).verdict == verdict::accepted);
    const jarproof::report r = soup_with({e.beyond});
    CHECK(r.verdict == verdict::untested);
    const jarproof::finding* f = finding_of(r, "ingredient-without-process");
    REQUIRE(f != nullptr);
    CHECK(f->line == 5);
  }
  for (const jarproof::seasoning_limit& s : jarproof::builtin_edition().seasonings) {
    CAPTURE(std::string(s.id));
    CHECK(std::find(tried.begin(), tried.end(), s.id) != tried.end());
  }
}

TEST_CASE("amounts of one seasoning are added up, and the batch says how much is allowed") {
  CHECK(soup_with({"7 tbsp dried oregano", "7 tbsp ground cumin"}).verdict == verdict::accepted);
  CHECK(has(soup_with({"7 tbsp dried oregano", "7 1/8 tbsp ground cumin"}),
            "ingredient-without-process"));
  const std::string half = "solids: 1/2\nbatch: 3.5 qt\nprepared: [boiled 5 min]\n";
  CHECK(has(soup_with({"14 cloves garlic"}, half), "ingredient-without-process"));
  // Without a batch, a jar count and a yield nobody knows what the limit is.
  const std::string open = "solids: 1/2\nprepared: [boiled 5 min]\n";
  CHECK(soup_with({"40 cloves garlic"}, open).verdict == verdict::incomplete);
  CHECK(soup_with({"garlic to taste"}).verdict != verdict::rejected);
}

TEST_CASE("the class of a mixture is that of its most demanding part") {
  const auto of = [](const lines& l) {
    return judged(hot_plan(l, "", "pint", "20 min", fixtures::boiling_water));
  };
  CHECK(of({"3 lb peaches", "2 lb plums"}).mixture_class == "acid");
  CHECK(of({"3 lb peaches", "2 lb tomatoes"}).mixture_class == "borderline");
  const jarproof::report low =
      of({"3 lb peaches", "2 lb tomatoes", "1 lb onions", "1 cup vinegar"});
  CHECK(low.mixture_class == "low-acid");
  CHECK(low.mixture_by == "1 lb onions");
  // What is not understood counts as low-acid; salt, spices and what comes in later do not count.
  CHECK(of({"3 lb peaches", "2 lb gribble root"}).mixture_class == "low-acid");
  CHECK(of({"3 lb peaches", "2 lb plums", "1 tsp salt", "1 tbsp cinnamon"}).mixture_class ==
        "acid");
  CHECK(of({"3 lb peaches", "2 lb plums", "1 cup cream, to serve"}).mixture_class == "acid");
  CHECK(soup_with({}).mixture_class == "low-acid");
  // A tested recipe is of the class in which it was tested (part 3, page 3-21: chile salsa, acid).
  const jarproof::report salsa = of({"5 lb tomatoes", "2 lb chile peppers", "1 lb onions",
                                     "1 cup vinegar (5%)", "3 tsp canning salt"});
  CHECK(salsa.mixture_class == "acid");
  CHECK(salsa.mixture_by.empty());
  CHECK(judged(fixtures::plan_text(fixtures::beans())).mixture_class.empty());
}

TEST_CASE("a low-acid mixture is rejected in boiling water and steam, whatever it is") {
  const std::vector<lines> dishes = {
      soup(),
      {"3 lb ground beef, browned", "2 cups onion", "2 qt tomatoes", "3 tbsp chili powder"},
      {"4 lb carrots", "3 lb green beans"},
      {"5 lb tomatoes", "3 lb chile peppers", "2 lb onions", "1 cup vinegar (5%)"},
      {"2 lb mushrooms", "1 lb garlic", "1 cup bottled lemon juice"},
      {"2 lb pumpkin, cubed", "1 lb apples"}};
  for (const char* how : {fixtures::boiling_water, "method: steam\n"}) {
    for (const lines& dish : dishes) {
      CAPTURE(dish.front());
      const jarproof::report r = judged(hot_plan(dish, "", "pint", "45 min", how));
      CHECK(r.verdict == verdict::rejected);
      CHECK(has(r, "low-acid-needs-pressure"));
    }
  }
}

TEST_CASE("a line that is not understood is never accepted") {
  for (const char* line : {"2 cups gribble root", "1 cup mystery sauce", "3 cups", "some of it"}) {
    CAPTURE(std::string(line));
    CHECK(soup_with({line}).verdict != verdict::accepted);
    CHECK(judged("food: soups\nas-published: true\n" + hot_plan(soup({line}))).verdict !=
          verdict::accepted);
  }
  CHECK(has(soup_with({"2 cups gribble root"}), "ingredient-unknown"));
}

TEST_CASE("what a published recipe is followed by has to be named") {
  const std::string bare = "as-published: true\n";
  const jarproof::report named = judged("food: soups\n" + hot_plan(soup(), bare));
  CHECK(named.verdict == verdict::accepted);
  CHECK_FALSE(has(named, "as-published-without-food"));
  const jarproof::report unnamed = judged(hot_plan(soup(), bare));
  CHECK(unnamed.verdict == verdict::incomplete);
  CHECK(has(unnamed, "as-published-without-food"));
  // The share of solids and the five minutes of boiling are asked for.
  CHECK(has(unnamed, "fact-missing"));
  CHECK(has(unnamed, "step-left-out"));
  CHECK(judged(hot_plan(soup(), bare + soup_words)).verdict == verdict::accepted);
  // A recipe that is recognised by its lines has steps too: dried beans are soaked and boiled.
  const lines chili = {"3 lb ground beef",      "3 cups dried pinto beans", "1 1/2 cups onion",
                       "1 tsp black pepper",    "3 tbsp chili powder",      "2 quarts tomatoes",
                       "1 cup peppers, chopped"};
  CHECK(judged(hot_plan(chili, bare, "pint")).verdict == verdict::incomplete);
  CHECK(judged("food: chile con carne\n" + hot_plan(chili, bare, "pint")).verdict ==
        verdict::accepted);
  const jarproof::report said = judged(hot_plan(chili, "prepared: [beans rehydrated]\n", "pint"));
  CHECK(said.verdict == verdict::accepted);
  REQUIRE(said.process != nullptr);
  CHECK(said.process->id == "chile-con-carne");
}

TEST_CASE("whoever follows no named publication says the acid") {
  // Part 3: tomatoes packed in water, quarts 55 min at 4,600 ft, acid in each jar.
  const auto tomatoes = [](const char* food, const char* line) {
    return judged(std::string(food) + hot_plan({line}, "as-published: true\n", "quart", "55 min",
                                               fixtures::boiling_water))
        .verdict;
  };
  CHECK(tomatoes("food: tomatoes in water\n", "20 lb tomatoes") == verdict::accepted);
  CHECK(tomatoes("", "20 lb tomatoes in water") != verdict::accepted);
  // Part 2: figs in syrup or water take acid too.
  const auto figs = [](const char* food) {
    return judged(std::string(food) + hot_plan({"10 lb figs"}, "as-published: true\n", "quart",
                                               "85 min", fixtures::boiling_water))
        .verdict;
  };
  CHECK(figs("food: figs\n") == verdict::accepted);
  CHECK(figs("") == verdict::incomplete);
}

TEST_CASE("cubes in a soup are no larger than those of their own table") {
  // USDA Complete Guide (2015), part 4: white potatoes, page 4-17, in 1/2-inch cubes; winter
  // squash in 1-inch cubes. The soup's parts are prepared as for those.
  for (const char* line : {"2 lb potatoes, peeled, in 1/2-inch cubes", "2 lb potatoes, cubed",
                           "2 lb butternut squash, in 1-inch cubes", "2 lb carrots, sliced"}) {
    CAPTURE(std::string(line));
    CHECK(fixtures::soup_with({line}).verdict == verdict::accepted);
  }
  for (const char* line :
       {"2 lb potatoes, peeled, in 1-inch cubes", "2 lb potatoes, peeled, 3-inch chunks",
        "2 lb butternut squash, in 2 inch cubes", "2 lb potatoes in 2 cm dice"}) {
    CAPTURE(std::string(line));
    const jarproof::report r = fixtures::soup_with({line});
    CHECK(r.verdict == verdict::rejected);
    const jarproof::finding* f = fixtures::finding_of(r, "form-not-tested");
    REQUIRE(f != nullptr);
    CHECK(f->field == "ingredients");
  }
}

TEST_SUITE_END();

}  // namespace
}  // namespace judge_mixture_tests
