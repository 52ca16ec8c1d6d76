// What a plan says beside its lines: the title, the yield and the fresh food of `from`. Rules: USDA
// Complete Guide to Home Canning (2015), part 4, soups: no noodles or other pasta, rice, flour,
// cream, milk or other thickener, seafood by another process (page 4-18); part 4, page 4-8, green
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
  for (const char* step :
       {"Do not add too much rice.", "Do not add the cream until the end.",
        "Do not add rice before "
        "the soup boils.",
        "No flour and add noodles.", "Add cream when you reheat it to fill the jars.",
        "Add rice, good with venison."}) {
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
