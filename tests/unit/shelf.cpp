// The shelf: lots and jars counted in the order of the lines.
// SPDX-License-Identifier: MIT
#include "jarproof/shelf.hpp"

#include <doctest/doctest.h>

#include <optional>
#include <string>

#include "jarproof/builtin.hpp"
#include "jarproof/shelf_today.hpp"
#include "support/shelves.hpp"

namespace shelf_tests {

using fixtures::add_line;
using fixtures::happening;
using fixtures::kitchen_lot;
using fixtures::recorded;
using jarproof::shelf;
using jarproof::shelf_run;
using jarproof::verdict;

TEST_SUITE_BEGIN("shelf");

TEST_CASE("jars are counted down in the order of the lines") {
  shelf s;
  REQUIRE(add_line(s, recorded(kitchen_lot(), std::nullopt, 1).line) == "");
  const auto now = [&] {
    const jarproof::shelf_lot& l = s.lots().front();
    return std::to_string(l.left) + " left " + std::to_string(l.open) + " open " +
           std::to_string(l.unsealed) + " unsealed " + std::to_string(l.opened) + " opened " +
           std::to_string(l.eaten) + " eaten " + std::to_string(l.discarded) + " discarded";
  };
  CHECK(now() == "8 left 0 open 1 unsealed 0 opened 0 eaten 0 discarded");
  CHECK(add_line(s, happening("beans-1", "2026-07-19", "unsealed", 1)) == "");
  CHECK(now() == "7 left 0 open 2 unsealed 0 opened 0 eaten 0 discarded");
  CHECK(add_line(s, happening("beans-1", "2026-10-01", "opened", 3)) == "");
  CHECK(now() == "4 left 3 open 2 unsealed 3 opened 0 eaten 0 discarded");
  CHECK(add_line(s, happening("beans-1", "2026-10-02", "eaten", 2)) == "");
  CHECK(now() == "4 left 1 open 2 unsealed 3 opened 2 eaten 0 discarded");
  CHECK(add_line(s, happening("beans-1", "2026-10-05", "discarded", 2)) == "");
  CHECK(now() == "3 left 0 open 2 unsealed 3 opened 2 eaten 2 discarded");
  CHECK(add_line(s, happening("beans-1", "2026-11-01", "eaten", 3)) == "");
  CHECK(now() == "0 left 0 open 2 unsealed 3 opened 5 eaten 2 discarded");
  CHECK(s.lines() == 6);
}

TEST_CASE("the jars that were opened first are eaten or discarded first") {
  shelf s;
  REQUIRE(add_line(s, recorded(kitchen_lot()).line) == "");
  const auto open = [&] {
    const jarproof::shelf_lot& l = s.lots().front();
    return std::to_string(l.open) + " since " + l.open_since;
  };
  CHECK(add_line(s, happening("beans-1", "2027-03-19", "opened", 1)) == "");
  CHECK(add_line(s, happening("beans-1", "2027-03-10", "opened", 2)) == "");
  CHECK(open() == "3 since 2027-03-10");
  CHECK(add_line(s, happening("beans-1", "2027-03-19", "discarded", 1)) == "");
  CHECK(open() == "2 since 2027-03-10");
  CHECK(add_line(s, happening("beans-1", "2027-03-19", "eaten", 1)) == "");
  CHECK(open() == "1 since 2027-03-19");
  CHECK(add_line(s, happening("beans-1", "2027-03-20", "eaten", 3)) == "");
  CHECK(open() == "0 since ");
}

TEST_CASE("a line that does not fit changes nothing") {
  shelf s;
  REQUIRE(add_line(s, recorded(kitchen_lot()).line) == "");
  CHECK(add_line(s, happening("beans-1", "2026-10-01", "opened", 10)) ==
        "opened | of the lot `beans-1` only 9 jars are left | write at most 9\n");
  CHECK(add_line(s, happening("beans-1", "2026-10-01", "eaten", 9)) == "");
  CHECK(add_line(s, happening("beans-1", "2026-10-02", "discarded", 1)) ==
        "discarded | of the lot `beans-1` no jar is left | take the line out, or put the lot "
        "right\n");
  CHECK(add_line(s, happening("beans-1", "2026-10-02", "unsealed", 1)) ==
        "unsealed | of the lot `beans-1` no jar is left | take the line out, or put the lot "
        "right\n");
  CHECK(add_line(s, happening("beans-2", "2026-10-02", "eaten", 1)) ==
        "lot | no record of the lot `beans-2` stands before this line | did you mean `beans-1`?\n");
  CHECK(add_line(s, happening("tomatoes", "2026-10-02", "eaten", 1)) ==
        "lot | no record of the lot `tomatoes` stands before this line | write the name of a "
        "recorded lot\n");
  CHECK(add_line(s, happening("beans-1", "2026-07-17", "eaten", 1)) ==
        "date | this is before the lot was put up, 2026-07-18 | write the day on which it "
        "happened\n");
  CHECK(s.lots().size() == 1);
  CHECK(s.lots().front().left == 0);
  CHECK(s.lines() == 2);
}

TEST_CASE("a lot stands once, and a second record adds the run log of the same plan") {
  shelf s;
  const std::string first = recorded(kitchen_lot()).line;
  REQUIRE(add_line(s, first) == "");
  const std::string twice =
      "lot | the lot `beans-1` is recorded already in shelf.jsonl:1 | give each batch a `lot` of "
      "its own\n";
  CHECK(add_line(s, first) == twice);
  auto other = kitchen_lot();
  other["time"] = "25 min";
  CHECK(add_line(s, recorded(other, shelf_run{verdict::accepted, "b.csv"}).line) == twice);
  CHECK(add_line(s, recorded(kitchen_lot(), shelf_run{verdict::accepted, "b.csv"}, 2).line) == "");
  REQUIRE(s.lots().size() == 1);
  CHECK(s.lots().front().left == 7);
  REQUIRE(s.lots().front().record.run);
  CHECK(s.lots().front().record.run->log == "b.csv");
  CHECK(add_line(s, recorded(kitchen_lot(), shelf_run{verdict::accepted, "c.csv"}).line) == twice);
  // A second log that is at fault is never lost: nobody knows which jars it is about.
  CHECK(add_line(s, recorded(kitchen_lot(), shelf_run{verdict::rejected, "c.csv"}).line) == "");
  CHECK(s.lots().front().record.run->verdict == verdict::rejected);
  CHECK(jarproof::not_accepted(jarproof::today_of(s, jarproof::builtin_edition())).size() == 1);
}

TEST_CASE(
    "a run log that is written on takes the place of itself, and its unsealed jars count once") {
  const auto line = [](verdict v, int unsealed, const char* log = "b.csv") {
    return recorded(kitchen_lot(), shelf_run{v, log}, unsealed).line;
  };
  shelf s;
  REQUIRE(add_line(s, line(verdict::incomplete, 0)) == "");
  CHECK(add_line(s, line(verdict::accepted, 0)) == "");
  CHECK(add_line(s, happening("beans-1", "2026-07-20", "eaten", 1)) == "");
  CHECK(add_line(s, line(verdict::accepted, 2)) == "");
  CHECK(s.lots().front().left == 6);
  CHECK(add_line(s, line(verdict::accepted, 3)) == "");
  REQUIRE(s.lots().size() == 1);
  CHECK(s.lots().front().unsealed == 3);
  CHECK(s.lots().front().left == 5);
  CHECK(s.lots().front().record.run->verdict == verdict::accepted);
  CHECK(add_line(s, line(verdict::accepted, 2)) ==
        "unsealed | the log of the lot `beans-1` had 3 unsealed before | write at least as many\n");
  CHECK(add_line(s, line(verdict::accepted, 9)) ==
        "unsealed | of the lot `beans-1` only 8 jars are left | write at most 8\n");
  CHECK(s.lots().front().left == 5);
}

TEST_CASE("a run log that was rejected stays so") {
  const auto line = [](verdict v) { return recorded(kitchen_lot(), shelf_run{v, "b.csv"}).line; };
  shelf s;
  REQUIRE(add_line(s, line(verdict::accepted)) == "");
  CHECK(add_line(s, line(verdict::rejected)) == "");
  CHECK(s.lots().front().record.run->verdict == verdict::rejected);
  CHECK(
      add_line(s, line(verdict::accepted)) ==
      "run | the run log of the lot `beans-1` was rejected before | give jars that were processed "
      "again a `lot` of their own\n");
  CHECK(s.lots().front().record.run->verdict == verdict::rejected);
}

TEST_CASE("10,000 lines are one shelf") {
  const std::string line = recorded(kitchen_lot()).line;
  shelf s;
  for (int i = 0; i < 2'500; ++i) {
    const std::string lot = "beans-1" + std::to_string(i);
    std::string mine = line;
    for (int both = 0; both < 2; ++both)
      mine = fixtures::replaced(mine, "\"beans-1\"", "\"" + lot + "\"");
    REQUIRE(add_line(s, mine) == "");
    for (const char* what : {"opened", "eaten", "unsealed"})
      REQUIRE(add_line(s, happening(lot, "2026-10-01", what, 1)) == "");
  }
  CHECK(s.lines() == 10'000);
  int left = 0;
  for (const jarproof::shelf_lot& l : s.lots()) left += l.left;
  CHECK(left == 2'500 * 7);
}

TEST_SUITE_END();

}  // namespace shelf_tests
