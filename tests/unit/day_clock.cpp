// The clock of a day. Minutes: USDA Complete Guide to Home Canning, part 1, as Michigan State
// University Extension repeats it (01600948): 12 to 15 min to steam, 10 min vent, 20 to 60 min to
// cool, 20 to 30 min to a full boil; 3 to 10 min to pressure; 10 min before the lid is opened.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <string>

#include "jarproof/day_of.hpp"
#include "jarproof/format/day_text.hpp"
#include "support/fixtures.hpp"

namespace day_clock_tests {
namespace {

const jarproof::edition& rules = jarproof::builtin_edition();
using changes = std::map<std::string, std::string>;

jarproof::day_plan beans_day(changes more) {
  more.try_emplace("jars", "23");
  more.try_emplace("canner", "{quarts: 7, pints: 9}");
  return jarproof::day_of(fixtures::plan_from(fixtures::plan_text(fixtures::beans(), more)), rules);
}
const jarproof::finding* too_short(const jarproof::day_plan& d) {
  for (const jarproof::finding& f : d.batches.front().findings) {
    if (f.check == "day-too-short") return &f;
  }
  return nullptr;
}

TEST_SUITE_BEGIN("day");

// 3 loads of 15 + 10 + 10 + 20 + 60 + 10 min, and 20 min twice between them.
TEST_CASE("the stages follow one another and add up") {
  const auto d = beans_day({});
  CHECK(d.total_min == 3 * 125 + 2 * 20);
  CHECK(d.least_total_min == 3 * (12 + 10 + 3 + 20 + 20 + 10) + 2 * 10);
  CHECK(d.fuel_min == 3 * 55);
  CHECK(d.least_fuel_min == 3 * 45);
  int at = 0;
  int least = 0;
  int fuel = 0;
  for (const jarproof::day_load& l : d.loads) {
    for (const jarproof::day_stage& s : l.stages) {
      CHECK(s.from_min == at);
      CHECK(s.to_min - s.from_min >= s.least_min);
      CHECK_FALSE(s.what.empty());
      CHECK((s.id == "process" || !s.sources.empty() || !s.evidence.empty()));
      at = s.to_min;
      least += s.least_min;
      if (s.fuel) fuel += s.to_min - s.from_min;
    }
    CHECK((l.stages.back().id == "next-load") == (&l != &d.loads.back()));
  }
  CHECK(at == d.total_min);
  CHECK(least == d.least_total_min);
  CHECK(fuel == d.fuel_min);
}

TEST_CASE("the process and the vent of the plan count where they are longer") {
  const auto d = beans_day({{"jars", "9"}, {"time", "25 min 30 s"}, {"vent", "12 min"}});
  CHECK(d.loads[0].time_min == 26);  // begun minutes count whole
  CHECK(d.total_min == 15 + 12 + 10 + 26 + 60 + 10);
}

TEST_CASE("fish in quarts heats up as long as its process says") {
  // USDA guide, part 5: 20 min of heating, 10 min of venting; 160 min in quarts.
  const auto d = jarproof::day_of(
      fixtures::plan_from("food: fish-quart-jars\nas-published: true\npack: raw\njar: quart\n"
                          "method: pressure\ngauge: dial\npressure: 13 psi\ntime: 160 min\n"
                          "altitude: 4600 ft\njars: 7\ncanner: {quarts: 7}\n"),
      rules);
  REQUIRE(d.verdict == jarproof::verdict::accepted);
  CHECK(d.loads[0].stages[0].least_min == 20);
  CHECK(d.loads[0].stages[0].to_min == 20);
  bool heat_up = false;
  for (const jarproof::day_step& s : d.batches[0].steps) {
    CHECK(s.id != "canner-water");
    heat_up = heat_up || s.says.find("high for 20 minutes") != std::string::npos;
  }
  CHECK(heat_up);
}

TEST_CASE("forward from start and past midnight") {
  const auto d = beans_day({{"start", "20:00"}, {"date", "2026-08-14"}});
  CHECK(*d.start_min == 1200);
  CHECK(d.date == "2026-08-14");
  CHECK(jarproof::detail::clock_text(d, 0) == "20:00");
  CHECK(jarproof::detail::clock_text(d, 239) == "23:59");
  CHECK(jarproof::detail::clock_text(d, 240) == "00:00 (+1 day)");
  CHECK(jarproof::detail::clock_text(d, d.total_min) == "02:55 (+1 day)");
}

TEST_CASE("backward from finish-by and to the day before") {
  const auto day = beans_day({{"finish-by", "18:00"}, {"date", "2026-08-14"}});
  CHECK(jarproof::detail::clock_text(day, 0) == "11:05");
  CHECK(jarproof::detail::clock_text(day, day.total_min) == "18:00");
  CHECK(day.date == "2026-08-14");
  const auto night = beans_day({{"finish-by", "02:00"}, {"date", "2028-03-01"}});
  CHECK(night.date == "2028-02-29");
  CHECK(jarproof::detail::clock_text(night, 0) == "19:05");
  CHECK(jarproof::detail::clock_text(night, night.total_min) == "02:00 (+1 day)");
}

TEST_CASE("a day that is too short is a finding and changes no minute and no verdict") {
  const auto d = beans_day({{"start", "14:30"}, {"finish-by", "18:00"}});
  const jarproof::finding* f = too_short(d);
  REQUIRE(f != nullptr);
  CHECK(f->field == "finish-by");
  CHECK(f->found == "210 min (3 h 30 min)");
  CHECK(f->required == "415 min (6 h 55 min)");
  CHECK(f->message.find("at the shortest 245 min") != std::string::npos);
  CHECK(d.total_min == 415);
  CHECK(d.verdict == jarproof::verdict::accepted);
}

TEST_CASE("both sides of the edge between enough and too short") {
  CHECK(too_short(beans_day({{"start", "10:00"}, {"finish-by", "16:55"}})) == nullptr);
  CHECK(too_short(beans_day({{"start", "10:00"}, {"finish-by", "16:54"}})) != nullptr);
  // Over midnight: from 20:00 to 02:55 there are 415 minutes.
  CHECK(too_short(beans_day({{"start", "20:00"}, {"finish-by", "02:55"}})) == nullptr);
  CHECK(too_short(beans_day({{"start", "20:00"}, {"finish-by", "02:54"}})) != nullptr);
  CHECK(too_short(beans_day({{"start", "20:00"}, {"finish-by", "20:00"}})) != nullptr);
}

TEST_CASE("without a time of day the clock counts from the start") {
  const auto d = beans_day({});
  CHECK_FALSE(d.start_min);
  CHECK(jarproof::detail::clock_text(d, 0) == "0:00");
  CHECK(jarproof::detail::clock_text(d, 415) == "6:55");
}

TEST_CASE("a boiling-water load has no vent and no pressure") {
  const auto d = jarproof::day_of(
      fixtures::plan_from("food: plums\nform: whole\npack: hot\njar: pint\nmethod: boiling-water\n"
                          "time: 30 min\naltitude: 4600 ft\njars: 9\ncanner: {pints: 9}\n"),
      rules);
  REQUIRE(d.verdict == jarproof::verdict::accepted);
  std::string ids;
  for (const jarproof::day_stage& s : d.loads[0].stages) ids += s.id + " ";
  CHECK(ids == "heat-up process rest ");
  CHECK(d.total_min == 30 + 30 + 5);
}

TEST_CASE("dates run over months and years and leap days") {
  using jarproof::detail::date_of;
  using jarproof::detail::days_after;
  using jarproof::detail::iso_text;
  CHECK(iso_text(days_after(date_of("2026-12-31"), 1)) == "2027-01-01");
  CHECK(iso_text(days_after(date_of("2027-01-01"), -1)) == "2026-12-31");
  CHECK(iso_text(days_after(date_of("2027-02-28"), 1)) == "2027-03-01");
  CHECK(iso_text(days_after(date_of("2028-02-28"), 1)) == "2028-02-29");
  CHECK(iso_text(jarproof::detail::years_after(date_of("2028-02-29"), 1)) == "2029-02-28");
  CHECK(iso_text(jarproof::detail::years_after(date_of("2026-08-14"), 1)) == "2027-08-14");
}

TEST_SUITE_END();

}  // namespace
}  // namespace day_clock_tests
