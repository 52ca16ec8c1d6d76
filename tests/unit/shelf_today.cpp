// The shelf on one day: what is accepted, what to eat first, what has not happened yet.
// SPDX-License-Identifier: MIT
#include "jarproof/shelf_today.hpp"

#include <doctest/doctest.h>

#include <optional>
#include <string>
#include <vector>

#include "jarproof/builtin.hpp"
#include "support/fixtures.hpp"
#include "support/shelves.hpp"

namespace shelf_today_tests {

using fixtures::add_line;
using fixtures::happening;
using fixtures::kitchen_lot;
using fixtures::recorded;
using jarproof::builtin_edition;
using jarproof::shelf;
using jarproof::shelf_run;
using jarproof::verdict;

TEST_SUITE_BEGIN("shelf");

TEST_CASE("a lot counts as accepted only by plan, record and run log together") {
  const auto accepted = [](const std::string& line) {
    shelf s;
    REQUIRE(add_line(s, line) == "");
    const jarproof::shelf_today t = jarproof::today_of(s, builtin_edition());
    REQUIRE(t.lots.size() == 1);
    CHECK(jarproof::eat_first(t).size() == (t.lots[0].accepted ? 1 : 0));
    CHECK(jarproof::not_accepted(t).size() == (t.lots[0].accepted ? 0 : 1));
    return t.lots[0].accepted;
  };
  const std::string good = recorded(kitchen_lot()).line;
  CHECK(accepted(good));
  CHECK(accepted(recorded(kitchen_lot(), shelf_run{verdict::accepted, "b.csv"}).line));
  CHECK_FALSE(accepted(recorded(kitchen_lot(), shelf_run{verdict::rejected, "b.csv"}).line));
  CHECK_FALSE(accepted(recorded(kitchen_lot(), shelf_run{verdict::incomplete, "b.csv"}).line));
  CHECK_FALSE(
      accepted(fixtures::replaced(good, "\"verdict\": \"accepted\"", "\"verdict\": \"untested\"")));
  // USDA Complete Guide 2015, part 4, page 4-8: 20 min.
  CHECK_FALSE(accepted(fixtures::replaced(good, "\"20 min\"", "\"19 min\"")));
}

TEST_CASE("a shelf is judged by the edition in use and tells which edition judged before") {
  shelf s;
  REQUIRE(add_line(s, recorded(kitchen_lot()).line) == "");
  CHECK_FALSE(jarproof::today_of(s, builtin_edition()).lots[0].other_edition);
  jarproof::edition newer = builtin_edition();
  newer.version = "2027.1.1";
  // As if the newer edition had no table for the food.
  newer.processes = {};
  const jarproof::shelf_today t = jarproof::today_of(s, newer);
  CHECK(t.lots[0].other_edition);
  CHECK_FALSE(t.lots[0].accepted);
  CHECK(t.lots[0].report.verdict == verdict::untested);
  CHECK(fixtures::has(t.lots[0].report, "no-tested-process"));
}

TEST_CASE("oldest first, and to eat first open jars, then by the day of use, never past doubt") {
  shelf s;
  const auto put = [&](const char* lot, const char* date, const char* time = "20 min") {
    auto keys = kitchen_lot();
    keys["lot"] = lot;
    keys["date"] = date;
    REQUIRE(add_line(s, fixtures::replaced(recorded(keys).line, "\"20 min\"",
                                           "\"" + std::string(time) + "\"")) == "");
  };
  put("new", "2026-09-01");
  put("old", "2025-09-01");
  put("short", "2025-01-01", "10 min");
  put("middle", "2026-01-01");
  put("gone", "2024-01-01");
  REQUIRE(add_line(s, happening("gone", "2024-06-01", "eaten", 9)) == "");
  REQUIRE(add_line(s, happening("new", "2026-09-02", "opened", 1)) == "");
  const auto names = [](const jarproof::shelf_today& t, const std::vector<std::size_t>& places) {
    std::string out;
    for (const std::size_t i : places) out += t.lots[i].lot.record.lot + " ";
    return out;
  };
  const jarproof::shelf_today t = jarproof::today_of(s, builtin_edition(), "2026-09-02");
  CHECK(names(t, {0, 1, 2, 3, 4}) == "gone short old middle new ");
  CHECK(names(t, jarproof::eat_first(t)) == "new old middle ");
  CHECK(names(t, jarproof::not_accepted(t)) == "short ");
  CHECK(t.lots[2].past_use_by);
  CHECK_FALSE(t.lots[3].past_use_by);
  // On the day itself it is not past.
  CHECK_FALSE(jarproof::today_of(s, builtin_edition(), "2026-09-01").lots[2].past_use_by);
  CHECK_FALSE(jarproof::today_of(s, builtin_edition()).lots[2].past_use_by);
}

TEST_CASE("what is dated behind the day has not happened yet") {
  shelf s;
  REQUIRE(add_line(s, recorded(kitchen_lot(), std::nullopt, 1).line) == "");
  REQUIRE(add_line(s, happening("beans-1", "2026-07-19", "unsealed", 1)) == "");
  REQUIRE(add_line(s, happening("beans-1", "2026-12-05", "opened", 2)) == "");
  REQUIRE(add_line(s, happening("beans-1", "2026-10-01", "eaten", 1)) == "");
  REQUIRE(add_line(s, happening("beans-1", "2026-12-06", "unsealed", 1)) == "");
  auto keys = kitchen_lot();
  keys["lot"] = "beans-2";
  keys["date"] = "2027-07-18";
  REQUIRE(add_line(s, recorded(keys).line) == "");
  const auto on = [&](const char* day) {
    const jarproof::shelf_today t = jarproof::today_of(s, builtin_edition(), day);
    std::string out = std::to_string(t.later.size()) + " later:";
    for (const jarproof::lot_today& l : t.lots) {
      out += " " + l.lot.record.lot + " " + std::to_string(l.lot.left) + " left " +
             std::to_string(l.lot.open) + " open " + std::to_string(l.lot.unsealed) + " unsealed " +
             std::to_string(l.lot.eaten) + " eaten";
    }
    return out;
  };
  CHECK(on("2026-07-17") == "6 later:");
  CHECK(on("2026-07-18") == "5 later: beans-1 8 left 0 open 1 unsealed 0 eaten");
  CHECK(on("2026-12-04") == "3 later: beans-1 6 left 0 open 2 unsealed 1 eaten");
  CHECK(on("2026-12-05") == "2 later: beans-1 5 left 1 open 2 unsealed 1 eaten");
  CHECK(on("2027-07-18") ==
        "0 later: beans-1 4 left 1 open 3 unsealed 1 eaten beans-2 9 left 0 open 0 unsealed 0 "
        "eaten");
  // Without a day nothing is later.
  CHECK(on("") == on("2027-07-18"));
  CHECK(jarproof::today_of(s, builtin_edition(), "2027-07-17").later ==
        std::vector<std::string>{"shelf.jsonl:1"});
}

// Food of an open jar keeps a few days: common practice, no source.
TEST_CASE("of a lot with open jars only those are past that are open too long") {
  shelf s;
  REQUIRE(add_line(s, recorded(kitchen_lot()).line) == "");
  REQUIRE(add_line(s, happening("beans-1", "2026-11-20", "opened", 2)) == "");
  REQUIRE(add_line(s, happening("beans-1", "2026-11-27", "opened", 1)) == "");
  const auto past = [&](const char* day) {
    return jarproof::today_of(s, builtin_edition(), day).lots[0].open_past;
  };
  CHECK(past("2026-11-23") == 0);
  CHECK(past("2026-11-24") == 2);
  CHECK(past("2026-11-30") == 2);
  CHECK(past("2026-12-01") == 3);
  const jarproof::shelf_today t = jarproof::today_of(s, builtin_edition(), "2026-11-28");
  CHECK(jarproof::eat_first(t).size() == 1);
  CHECK(jarproof::open_too_long(t).size() == 1);
}

TEST_SUITE_END();

}  // namespace shelf_today_tests
