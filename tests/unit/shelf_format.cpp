// The shelf as text and as JSON.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <sstream>
#include <string>
#include <vector>

#include "jarproof/builtin.hpp"
#include "jarproof/format/shelf_json.hpp"
#include "jarproof/format/shelf_text.hpp"
#include "jarproof/shelf_today.hpp"
#include "support/readings.hpp"
#include "support/shelves.hpp"

namespace shelf_format_tests {

using fixtures::add_line;
using fixtures::happening;
using fixtures::kitchen_lot;
using fixtures::recorded;
using fixtures::replaced;
using jarproof::find;
using jarproof::node;
using jarproof::shelf;
using jarproof::shelf_run;
using jarproof::verdict;

namespace {

/// Beans with an open jar, soup whose time was cut in the record, and beans of an older edition.
shelf kitchen_shelf() {
  shelf s;
  REQUIRE(add_line(s, recorded(kitchen_lot()).line) == "");
  REQUIRE(add_line(s, happening("beans-1", "2026-11-26", "opened", 1)) == "");
  auto keys = kitchen_lot();
  keys["lot"] = "beans-2";
  keys["date"] = "2026-07-25";
  // USDA Complete Guide 2015, part 4, page 4-8: pints 20 min.
  REQUIRE(add_line(s, replaced(recorded(keys).line, "\"20 min\"", "\"15 min\"")) == "");
  keys["lot"] = "beans-3";
  keys["title"] = "";
  keys["date"] = "2026-08-01";
  REQUIRE(add_line(s, replaced(recorded(keys).line,
                               std::string(jarproof::builtin_edition().version), "2025.1.1")) ==
          "");
  return s;
}

jarproof::shelf_today kitchen_today(const char* day = "2026-11-28") {
  return jarproof::today_of(kitchen_shelf(), jarproof::builtin_edition(), day);
}

}  // namespace

TEST_SUITE_BEGIN("shelf");

TEST_CASE("the text: what is left, what to eat first, what not to eat") {
  CHECK(jarproof::shelf_text(kitchen_today()) ==
        "The shelf on 2026-11-28: 3 lots, 26 jars left, 1 open, 9 not\n"
        "to be eaten.\n"
        "\n"
        "Eat from the top down\n"
        "  1. beans-1: Green beans, first picking\n"
        "     8 pint jars left, 1 open since 2026-11-26; put up\n"
        "     2026-07-18, use by 2027-07-18\n"
        "  2. beans-3\n"
        "     9 pint jars left; put up 2026-08-01, use by 2027-08-01\n"
        "\n"
        "  The day of use is for quality and no limit of safety.\n"
        "\n"
        "Not accepted: do not eat from these lots\n"
        "  beans-2: Green beans, first picking\n"
        "    9 pint jars left; put up 2026-07-25 (shelf.jsonl:1)\n"
        "    By the rules in use the plan is rejected:\n"
        "    - time-too-short: The plan has 15 min; for snap and\n"
        "      Italian beans in pint jars the table asks for at least\n"
        "      20 min.\n"
        "\n"
        "Recorded with other rules, judged again here\n"
        "  jarproof tested processes, 2025.1.1: beans-3\n");
}

TEST_CASE("an open jar is eaten within a few days or thrown out") {
  CHECK(jarproof::open_too_long(kitchen_today("2026-11-29")).empty());
  const jarproof::shelf_today t = kitchen_today("2026-11-30");
  REQUIRE(jarproof::open_too_long(t).size() == 1);
  const std::string text = jarproof::shelf_text(t);
  CHECK(text.find("Open too long: throw out what is open\n"
                  "  beans-1: Green beans, first picking\n"
                  "    1 open since 2026-11-26\n"
                  "  Food of an open jar keeps a few days in the refrigerator.\n") !=
        std::string::npos);
  // What is left of the lot is eaten by its own day, and says nothing of what to throw out.
  CHECK(text.find("beans-1: Green beans, first picking\n"
                  "     8 pint jars left; put up 2026-07-18, use by 2027-07-18\n") !=
        std::string::npos);
  CHECK(jarproof::eat_first(t).size() == 2);
  CHECK(jarproof::shelf_json(t).find("\"open_too_long\": [\"beans-1\"]") != std::string::npos);
  jarproof::shelf s = kitchen_shelf();
  REQUIRE(add_line(s, happening("beans-1", "2026-11-30", "discarded", 1)) == "");
  CHECK(jarproof::open_too_long(jarproof::today_of(s, jarproof::builtin_edition(), "2026-12-24"))
            .empty());
  // The last jars of a lot, open for years, are nothing to eat.
  REQUIRE(add_line(s, happening("beans-1", "2026-12-01", "opened", 8)) == "");
  const auto later = jarproof::today_of(s, jarproof::builtin_edition(), "2036-11-28");
  CHECK(jarproof::shelf_text(later).find("1. beans-1") == std::string::npos);
}

TEST_CASE("without a day no lot is past it") {
  CHECK(jarproof::shelf_text(kitchen_today("2027-07-30")).find("which is past") !=
        std::string::npos);
  const std::string text = jarproof::shelf_text(kitchen_today(""));
  CHECK(text.find("The shelf: 3 lots") == 0);
  CHECK(text.find("past") == std::string::npos);
}

TEST_CASE("lines that could not be read put the counts in doubt") {
  jarproof::shelf_today t = kitchen_today();
  t.unread = 1;
  CHECK(jarproof::shelf_text(t).find(
            "\n1 line could not be read or did not fit, so these counts may\n") !=
        std::string::npos);
  CHECK(jarproof::shelf_json(t).find("\"unread_lines\": 1,") != std::string::npos);
}

TEST_CASE("lines of a later day are named and not counted") {
  shelf s = kitchen_shelf();
  REQUIRE(add_line(s, happening("beans-3", "2026-12-05", "eaten", 9)) == "");
  const jarproof::shelf_today t = jarproof::today_of(s, jarproof::builtin_edition(), "2026-11-28");
  const std::string text = jarproof::shelf_text(t);
  CHECK(text.find("1 line is dated after 2026-11-28 and is not counted:\n"
                  "shelf.jsonl:1. Put a wrong date right, or tell the shelf for\n"
                  "a later day.\n") != std::string::npos);
  CHECK(text.find("  2. beans-3\n     9 pint jars left;") != std::string::npos);
  CHECK(jarproof::shelf_json(t).find("\"later_lines\": [\"shelf.jsonl:1\"],") != std::string::npos);
  const std::string before =
      jarproof::shelf_text(jarproof::today_of(s, jarproof::builtin_edition(), "2026-11-25"));
  CHECK(before.find("2 lines are dated after 2026-11-25 and are not counted:\n") !=
        std::string::npos);
}

TEST_CASE("a run log that was not accepted is named, and the plan at fault when recorded") {
  shelf s;
  const std::string line =
      recorded(kitchen_lot(), shelf_run{verdict::rejected, "beans.csv"}, 1).line;
  REQUIRE(add_line(s, replaced(line, "\"verdict\": \"accepted\"", "\"verdict\": \"untested\"")) ==
          "");
  const std::string text = jarproof::shelf_text(jarproof::today_of(s, jarproof::builtin_edition()));
  CHECK(text.find("    The run log beans.csv was rejected.\n") != std::string::npos);
  CHECK(text.find("    The plan was untested when it was recorded.\n") != std::string::npos);
  CHECK(text.find("Eat from") == std::string::npos);
}

TEST_CASE("lines are at most 60 characters, and nothing of a record reaches the terminal raw") {
  auto keys = kitchen_lot();
  keys["title"] = "Beans of the long valley behind the mountain, " + std::string(40, 'b');
  keys["lot"] = std::string("picked-in-the-rain-on-the-upper-terrace-of-the-garden");
  shelf s;
  REQUIRE(add_line(s, recorded(keys).line) == "");
  std::istringstream lines(
      jarproof::shelf_text(jarproof::today_of(s, jarproof::builtin_edition(), "2026-11-28")));
  for (std::string line; std::getline(lines, line);) {
    CAPTURE(line);
    CHECK(line.size() <= 60);
  }
}

TEST_CASE("the JSON holds every lot, oldest first, in the documented order") {
  const std::string text = jarproof::shelf_json(kitchen_today());
  const node root = fixtures::root_of(text, "shelf.json");
  std::vector<std::string> keys;
  for (const jarproof::member& m : root.members) keys.push_back(m.key);
  CHECK(keys == std::vector<std::string>{"date", "left", "open", "unread_lines", "later_lines",
                                         "eat_first", "open_too_long", "not_accepted", "lots"});
  CHECK(find(root, "left")->text == "26");
  CHECK(find(root, "eat_first")->items[1].text == "beans-3");
  CHECK(find(root, "not_accepted")->items[0].text == "beans-2");
  const node& lots = *find(root, "lots");
  REQUIRE(lots.items.size() == 3);
  keys.clear();
  for (const jarproof::member& m : lots.items[0].members) keys.push_back(m.key);
  CHECK(keys == std::vector<std::string>{"lot", "source", "title", "date", "use_by", "past_use_by",
                                         "jar", "jars", "unsealed", "opened", "eaten", "discarded",
                                         "open", "open_since", "left", "accepted", "verdict",
                                         "recorded", "other_edition"});
  CHECK(find(lots.items[1], "accepted")->text == "false");
  CHECK(find(lots.items[1], "verdict")->text == "rejected");
  CHECK(find(*find(lots.items[1], "recorded"), "verdict")->text == "accepted");
  CHECK(find(lots.items[2], "other_edition")->text == "true");
}

TEST_CASE("a run with a shelf has it behind its other members") {
  const jarproof::edition& rules = jarproof::builtin_edition();
  const jarproof::shelf_today t = kitchen_today();
  std::vector<jarproof::report> reports;
  for (const jarproof::lot_today& l : t.lots) reports.push_back(l.report);
  const node root = fixtures::root_of(jarproof::json_of(reports, t, rules), "run.json");
  CHECK(root.members.back().key == "shelf");
  CHECK(find(root, "plans")->items.size() == 3);
  // The rest is the run without a shelf, byte for byte.
  const std::string plain = jarproof::json_of(reports, rules);
  CHECK(jarproof::json_of(reports, t, rules).find(plain.substr(0, plain.size() - 3)) == 0);
}

TEST_SUITE_END();

}  // namespace shelf_format_tests
