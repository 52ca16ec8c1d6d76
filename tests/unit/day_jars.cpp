// Jars and fresh food of a canning day. Mouths: USDA Complete Guide to Home Canning, part 1
// (regular about 2 3/8 in, wide about 3 in). Fluid ounces: NIST SP 811, appendix B.8 (a gallon is
// 231 cubic inches). Pounds: USDA guide, part 4 (green beans 2 lb a quart, 30 lb a bushel for 12 to
// 22 quarts); University of Georgia (apples for sauce 2 1/2 to 3 1/2 lb, tomatoes 2 1/2 to 3 1/2 lb
// a quart). SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <string>

#include "jarproof/day_of.hpp"
#include "jarproof/format/day_text.hpp"
#include "support/fixtures.hpp"

namespace day_jars_tests {
namespace {

const jarproof::edition& rules = jarproof::builtin_edition();

jarproof::day_plan beans_day(const std::map<std::string, std::string>& changes) {
  return jarproof::day_of(fixtures::plan_from(fixtures::plan_text(fixtures::beans(), changes)),
                          rules);
}
const jarproof::day_batch& only(const jarproof::day_plan& d) {
  REQUIRE(d.batches.size() == 1);
  return d.batches.front();
}
const jarproof::day_jars& jars(const jarproof::day_plan& d) {
  REQUIRE(only(d).jars);
  return *only(d).jars;
}
bool says(const std::vector<std::string>& all, const std::string& part) {
  for (const std::string& text : all) {
    if (text.find(part) != std::string::npos) return true;
  }
  return false;
}
bool found(const jarproof::day_batch& b, const std::string& check) {
  for (const jarproof::finding& f : b.findings) {
    if (f.check == check) return true;
  }
  return false;
}

TEST_SUITE_BEGIN("day");

// pi / 4 * (2 3/8 in)^2 * 1 in = 4.4301 cubic in = 2.45479 fl oz; with 3 in 7.0686 = 3.91679 fl oz.
TEST_CASE("headspace is a cylinder of the mouth and never counted too small") {
  CHECK(jarproof::detail::headspace_room(2'375, 1'000) == 2'454'797);
  CHECK(jarproof::detail::headspace_room(3'000, 1'000) == 3'916'796);
  CHECK(jarproof::detail::headspace_room(2'375, 0) == 0);
  for (int headspace = 0; headspace < 1'500; headspace += 125) {
    const double in = headspace / 1'000.0;
    for (const double mouth : {2.375, 3.0}) {
      const double floz = 3.141592653589793 / 4 * mouth * mouth * in * 128 / 231;
      const auto room =
          jarproof::detail::headspace_room(static_cast<int>(mouth * 1'000), headspace);
      CHECK(static_cast<double>(room) >= floz * 1e6);
      CHECK(static_cast<double>(room) <= floz * 1e6 + 10);
    }
  }
}

TEST_CASE("a pint of green beans holds 12.08 to 13.55 fl oz under 1 in of headspace") {
  const auto d = beans_day({{"batch", "10 qt"}});
  CHECK(jars(d).fill_most == 16'000'000 - 2'454'797);
  CHECK(jars(d).fill_least == 16'000'000 - 3'916'796);
}

TEST_CASE("the table's headspace counts where the plan has less and the plan's where it has more") {
  CHECK(jars(beans_day({{"batch", "10 qt"}, {"headspace", "1 1/4 in"}})).fill_most ==
        16'000'000 - jarproof::detail::headspace_room(2'375, 1'250));
  CHECK(jars(beans_day({{"batch", "10 qt"}, {"headspace", "25 mm"}})).fill_most ==
        16'000'000 - 2'454'797);
}

// Regular mouths: 320 fl oz / 13.545205 = 23.62; wide mouths: 320 / 12.083168 = 26.48.
TEST_CASE("ten quarts fill at least 23 pints and at most 26") {
  const auto d = beans_day({{"batch", "12 qt"}, {"keep-back", "2 qt"}});
  CHECK(jars(d).available == 320'000'000);
  CHECK(jars(d).count == 23);
  CHECK(jars(d).most == 26);
  CHECK(jars(d).left == 320'000'000 - 23 * jars(d).fill_most);
  CHECK(jars(d).by == "batch");
}

TEST_CASE("check takes the jars that the day has counted") {
  for (const char* batch : {"10 qt", "9 pt", "6 qt", "1 gal", "30 cups"}) {
    const auto d = beans_day({{"batch", batch}});
    const auto r =
        fixtures::beans_with({{"batch", batch}, {"jars", std::to_string(jars(d).count)}});
    CHECK_MESSAGE(r.verdict == jarproof::verdict::accepted, batch);
  }
}

TEST_CASE("a batch that fills a jar exactly and one that is a drop short") {
  // 13.545205 fl oz are one jar; the amount is written in hundredths of an ounce.
  CHECK(jars(beans_day({{"batch", "13.55 oz"}})).count == 1);
  CHECK(jars(beans_day({{"batch", "13.54 oz"}})).count == 0);
  CHECK(jars(beans_day({{"batch", "27.1 oz"}})).count == 2);
  CHECK(jars(beans_day({{"batch", "27.09 oz"}})).count == 1);
}

TEST_CASE("food for less than a jar gets no load and a finding") {
  const auto d = beans_day({{"batch", "1 cup"}, {"canner", "{quarts: 7, pints: 9}"}});
  CHECK(jars(d).count == 0);
  CHECK(found(only(d), "jars-not-filled"));
  CHECK(d.loads.empty());
  CHECK(d.verdict == jarproof::verdict::accepted);
  CHECK(only(d).steps.empty());  // no jars are washed for it
  CHECK(only(d).label.empty());
  CHECK(jarproof::day_text_of(d, rules).find("Step card") == std::string::npos);
  CHECK_FALSE(says(only(d).unsaid, "Fresh food"));
  CHECK(says(only(d).unsaid, "the food fills no jar"));
  CHECK_FALSE(only(d).left.empty());
  CHECK(only(beans_day({{"from", "0.1 lb green beans"}})).steps.empty());
  const auto one = beans_day({{"batch", "13.55 oz"}});
  CHECK_FALSE(found(only(one), "jars-not-filled"));
  CHECK_FALSE(only(one).steps.empty());
}

TEST_CASE("more kept back than there is leaves nothing") {
  const auto d = beans_day({{"batch", "2 qt"}, {"keep-back", "3 qt"}});
  CHECK(jars(d).available == 0);
  CHECK(jars(d).count == 0);
  CHECK(found(only(d), "jars-not-filled"));
}

TEST_CASE("stated jars count and are compared with what is left of the batch") {
  // Nine pints with wide mouths take 108.75 fl oz.
  const auto enough = beans_day({{"jars", "9"}, {"batch", "9 pt"}, {"keep-back", "35 oz"}});
  CHECK(jars(enough).count == 9);
  CHECK(jars(enough).most == 9);
  CHECK_FALSE(found(only(enough), "jars-not-filled"));
  const auto short_of = beans_day({{"jars", "9"}, {"batch", "9 pt"}, {"keep-back", "36 oz"}});
  CHECK(found(only(short_of), "jars-not-filled"));
}

TEST_CASE("jars are counted from the yield where the plan has no batch") {
  const auto d = beans_day({{"yield", "Makes about 9 pints"}});
  CHECK(jars(d).by == "yield");
  CHECK(jars(d).available == 144'000'000);
  CHECK(jars(d).count == 10);
  CHECK(says(only(beans_day({{"yield", "Serves 8"}})).unsaid, "neither `batch`"));
}

TEST_CASE("what is left over gets a smaller jar only where check accepts it") {
  // 320 fl oz leave 8.46 fl oz; a half-pint takes 5.55 under 1 in.
  const auto d = beans_day({{"batch", "10 qt"}});
  REQUIRE(only(d).left.size() == 2);
  CHECK(only(d).left[1].says.find("half-pint") != std::string::npos);
  CHECK(jars(beans_day({{"batch", "13.6 oz"}})).left < 1'000'000);
  CHECK(only(beans_day({{"batch", "13.6 oz"}})).left.size() == 1);
  CHECK(only(beans_day({{"jars", "9"}})).left.empty());
}

TEST_CASE("fresh food for the jars, by the pounds of the publication") {
  const auto d = beans_day({{"jars", "9"}});  // 9 lb for 9 pints: USDA guide, part 4
  REQUIRE(only(d).produce);
  CHECK(only(d).produce->least_lb == 9'000);
  CHECK(only(d).produce->most_lb == 9'000);
  CHECK_FALSE(only(d).produce->sources.empty());
  // 4.5 quarts of the 12 to 22 of a bushel are less than half of one.
  CHECK(jarproof::detail::food_text(*only(d).produce) == "9 lb of green beans (4.1 kg)");
  const auto more = beans_day({{"jars", "13"}});
  CHECK(only(more).produce->least_bushels == 500);
  CHECK(only(more).produce->most_bushels == 1'000);
  CHECK(jarproof::detail::food_text(*only(more).produce) ==
        "13 lb of green beans (5.9 kg), or 0.5 to 1 bushel");
}

TEST_CASE("jars from pounds and from bushels") {
  CHECK(jars(beans_day({{"from", "9 lb green beans"}})).count == 9);
  CHECK(jars(beans_day({{"from", "8.9 lb green beans"}})).count == 8);
  CHECK(jars(beans_day({{"from", "9 lb"}})).count == 9);
  // 4.08 kg = 8.99 lb, 4.09 kg = 9.01 lb (NIST SP 811, appendix B.8).
  CHECK(jars(beans_day({{"from", "4.08 kg green beans"}})).count == 8);
  CHECK(jars(beans_day({{"from", "4.09 kg green beans"}})).count == 9);
  const auto bushel = beans_day({{"from", "1/2 bushel of green beans"}});
  CHECK(jars(bushel).count == 12);  // 12 to 22 quarts a bushel
  CHECK(jars(bushel).most == 22);
  CHECK(jars(bushel).by == "from");
}

// 12 to 22 quarts a bushel: half a bushel fills up to 22 pints.
TEST_CASE("loads and clock go by the most jars that fresh food may fill") {
  const auto day = beans_day({{"from", "1/2 bushel"}, {"canner", "{pints: 9}"}});
  REQUIRE(day.loads.size() == 3);
  CHECK(day.loads[0].jars + day.loads[1].jars + day.loads[2].jars == 22);
  CHECK(says(only(day).unsaid, "planned for 22 jars, the most that `1/2 bushel` may fill"));
  CHECK_FALSE(says(only(day).unsaid, "it needs another load"));
  const auto brief = beans_day({{"from", "1/2 bushel"},
                                {"canner", "{pints: 9}"},
                                {"start", "09:00"},
                                {"finish-by", "14:00"}});
  bool found = false;
  for (const jarproof::finding& f : only(brief).findings)
    found = found || f.check == "day-too-short";
  CHECK(found);
  // What is stated or measured is planned as before.
  const auto stated = beans_day({{"jars", "9"}, {"canner", "{pints: 9}"}});
  CHECK(stated.loads.size() == 1);
}

TEST_CASE("jars from another food or from one without pounds are left out and said") {
  // A food that is known makes it another plan.
  CHECK(beans_day({{"from", "20 lb tomatoes"}}).verdict == jarproof::verdict::incomplete);
  const auto other = beans_day({{"from", "20 lb garden things"}});
  CHECK_FALSE(only(other).jars);
  CHECK(says(only(other).unsaid, "are of green beans"));
  const auto onions = jarproof::day_of(
      fixtures::plan_from(
          "food: onions\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\n"
          "pressure: 13 psi\ntime: 40 min\naltitude: 4600 ft\nfrom: 20 lb onions\n"),
      rules);
  REQUIRE(only(onions).judged.verdict == jarproof::verdict::accepted);
  CHECK(says(only(onions).unsaid, "no pounds per jar"));
  const auto beets = jarproof::day_of(
      fixtures::plan_from("food: beets\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\n"
                          "pressure: 13 psi\ntime: 30 min\naltitude: 4600 ft\nfrom: 1 bushel\n"),
      rules);
  CHECK(says(only(beets).unsaid, "no bushel of beets"));
}

TEST_CASE("absurd amounts end at the most jars that a plan can state") {
  CHECK(jars(beans_day({{"from", "999999 bushels"}})).count == 9'999);
  CHECK(jars(beans_day({{"from", "999999.9999 kg"}})).count == 9'999);
  CHECK(jars(beans_day({{"batch", "999999 gal"}})).count == 9'999);
  CHECK(beans_day({{"jars", "9999"}, {"canner", "{pints: 4}"}}).loads.size() == 2'500);
}

TEST_CASE("what is kept back of an unstated batch is said") {
  CHECK(
      says(only(beans_day({{"jars", "9"}, {"keep-back", "1 qt"}})).unsaid, "the plan has neither"));
  const auto served = beans_day({{"jars", "9"}, {"keep-back", "2 L"}, {"yield", "24 servings"}});
  CHECK(says(only(served).unsaid, "the yield `24 servings` is none"));
  CHECK_FALSE(says(only(served).unsaid, "the plan has neither"));
}

TEST_CASE("a metric jar holds its true volume less the headspace") {
  const auto d = beans_day({{"jar", "500 mL"}, {"time", "25 min"}, {"batch", "10 L"}});
  REQUIRE(only(d).judged.verdict == jarproof::verdict::accepted);
  CHECK(jars(d).volume == 16'907'012);  // 500 mL, rounded up
  CHECK(jars(d).count == 23);           // 338.14 / 14.45
}

TEST_CASE("a plan that says no amount gets a card and no jars") {
  const auto d = beans_day({});
  CHECK_FALSE(only(d).jars);
  CHECK_FALSE(only(d).steps.empty());
  CHECK(says(only(d).unsaid, "neither `batch`, `jars` nor `from`"));
}

TEST_SUITE_END();

}  // namespace
}  // namespace day_jars_tests
