// The shelf beside the plan of a day, as JSON.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <string>

#include "jarproof/builtin.hpp"
#include "jarproof/day_of.hpp"
#include "jarproof/format/day_json.hpp"
#include "support/fixtures.hpp"
#include "support/shelves.hpp"

namespace day_shelf_tests {

TEST_SUITE_BEGIN("day_json");

TEST_CASE("a shelf is the last member of a day, and without one nothing changes") {
  using namespace jarproof;
  const edition& rules = builtin_edition();
  const day_plan day =
      day_of(fixtures::plan_from(fixtures::file_text("examples/days/soup.yaml")), rules);
  const std::string alone = day_json(day, {}, rules);
  CHECK(alone.find("\"shelf\"") == std::string::npos);
  shelf s;
  REQUIRE(fixtures::add_line(s, fixtures::recorded(fixtures::kitchen_lot()).line) == "");
  const std::string both = day_json(day, {}, rules, today_of(s, rules, day.date));
  const std::string same = alone.substr(0, alone.rfind("\n}"));
  CHECK(both.compare(0, same.size(), same) == 0);
  CHECK(both.compare(same.size(), 14, ",\n  \"shelf\": {\n", 14) == 0);
  CHECK(both.find("\"date\": \"2026-11-21\",\n    \"left\": 9,") != std::string::npos);
}

TEST_SUITE_END();

}  // namespace day_shelf_tests
