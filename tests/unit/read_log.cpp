// Reading run logs: what CSV may look like, exact numbers, clocks, limits; broken ones stand in
// tests/bad-input/logs/.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <cstdint>
#include <filesystem>
#include <set>
#include <string>

#include "jarproof/read_log.hpp"
#include "support/fixtures.hpp"
#include "support/readings.hpp"

namespace read_log_tests {
namespace {

using jarproof::log_event_kind;
using jarproof::log_unit;
using jarproof::us_per_min;

jarproof::run_log log_of(const std::string& text) {
  const auto read = jarproof::read_log(text, "run.csv");
  REQUIRE_MESSAGE(read, (read ? std::string() : fixtures::line_of(read.errors().front())));
  return *read;
}

std::string first_problem(const std::string& text) {
  const auto read = jarproof::read_log(text, "run.csv");
  return read ? std::string("good") : fixtures::line_of(read.errors().front());
}

const std::string next_day =
    "put the rows in order of time, and check this one; where it is of the next day, write the "
    "date in front of every time, as in `2026-11-29 14:30`";

}  // namespace

TEST_SUITE_BEGIN("read_log");

TEST_CASE("a log kept by hand") {
  const jarproof::run_log log = log_of("minute,psi,event\n0,,steam\n10,0,weight-on\n24.5,13.25,\n");
  CHECK(log.source == "run.csv");
  CHECK_FALSE(log.clock);
  CHECK(log.unit == log_unit::psi);
  REQUIRE(log.rows.size() == 3);
  CHECK(log.rows[0].event->kind == log_event_kind::steam);
  CHECK_FALSE(log.rows[0].reading);
  CHECK(log.rows[1].line == 3);
  CHECK(log.rows[1].event->column == 6);
  CHECK(log.rows[2].at_us == 24 * us_per_min + us_per_min / 2);
  CHECK(*log.rows[2].reading == 13'250'000);
  CHECK(log.rows[2].reading_text == "13.25");
  CHECK(log.rows[2].reading_column == 6);
}

// RFC 4180, section 2, and what is allowed beside it.
TEST_CASE("quotes, blanks, comments, line ends, a byte order mark") {
  const jarproof::run_log log = log_of(
      "\xEF\xBB\xBF# kitchen, 4,600 ft\r\n\r\n \"Event\" , MINUTE,Psi\r\n\"steam\",\"0\",\r"
      "  # a comment\n\n\"at-pressure\", 16 ,\"13\"\n\"steady\",20,13");
  REQUIRE(log.rows.size() == 3);
  CHECK(log.rows[0].event->kind == log_event_kind::steam);
  CHECK(log.rows[0].line == 4);
  CHECK(log.rows[1].at_us == 16 * us_per_min);
  CHECK(*log.rows[1].reading == 13'000'000);
  CHECK(log.rows[1].line == 7);
  CHECK(log.rows[2].event->kind == log_event_kind::steady);
}

TEST_CASE("a cell may go over lines and hold quotation marks") {
  CHECK(first_problem("minute,event\n0,\"ste\"\"am\"\n") ==
        "2:3 event | `ste\"am` is no event | did you mean `steam`?");
  CHECK(first_problem("minute,event\n0,\"weight\non\"\n1,x\n") ==
        "4:3 event | `x` is no event | write heat-on, steam, weight-on, at-pressure, steady, "
        "boil-lost, water-low, heat-off, zero, opened, unsealed or broken");
}

TEST_CASE("events in other spellings") {
  const jarproof::run_log log =
      log_of("minute,event\n0,Weight On\n1,HEAT_OFF\n2,Unsealed  12\n3,broken 1\n4,unsealed 0\n");
  CHECK(log.rows[0].event->kind == log_event_kind::weight_on);
  CHECK(log.rows[1].event->kind == log_event_kind::heat_off);
  CHECK(log.rows[2].event->count == 12);
  CHECK(log.rows[3].event->kind == log_event_kind::broken);
  CHECK(log.rows[4].event->count == 0);
}

TEST_CASE("every unit") {
  for (const auto& [name, unit] :
       {std::pair{"psi", log_unit::psi}, std::pair{"kPa", log_unit::kpa},
        std::pair{"KPA", log_unit::kpa}, std::pair{"bar", log_unit::bar},
        std::pair{"F", log_unit::fahrenheit}, std::pair{"c", log_unit::celsius}}) {
    CHECK(log_of("minute," + std::string(name) + "\n0,1.5\n").unit == unit);
  }
}

// 0.000001 min is 60 microseconds, exactly.
TEST_CASE("decimals are exact, and what is finer is cut off") {
  const jarproof::run_log log =
      log_of("minute,psi\n-1.5,0\n0.000001,12.999999\n0.0000019,12.9999999\n10.083333333,13\n");
  CHECK(log.rows[0].at_us == -90'000'000);
  CHECK(log.rows[1].at_us == 60);
  CHECK(*log.rows[1].reading == 12'999'999);
  CHECK(log.rows[2].at_us == 60);
  CHECK(*log.rows[2].reading == 12'999'999);
  CHECK(log.rows[3].at_us == 604'999'980);
}

TEST_CASE("times with am and pm, dates and parts of a second") {
  const auto minutes = [](const std::string& rows) {
    std::string out;
    for (const jarproof::log_row& row : log_of("time,event\n" + rows).rows)
      out += std::to_string(row.at_us / us_per_min) + " ";
    return out;
  };
  CHECK(minutes("12:05 am,steam\n11:59 AM,steady\n12:00 pm,steady\n2:30pm,steady\n"
                "9:31 p.m.,heat-off\n12:10 a.m.,opened\n") == "5 719 720 870 1291 1450 ");
  // Below a morning time, an hour without its half of the day goes back.
  CHECK(first_problem("time,psi\n9:31 am,13\n1:05,13\n") ==
        "3:1 time | the time goes back: `1:05` stands below a later one | " + next_day);
  CHECK(minutes("2026-11-29 23:50,steam\n2026-11-30T00:10:00,steady\n2026-12-02 07:00,opened\n") ==
        "1430 1450 4740 ");
  // The date decides: half a day and more is no reason to think of another one.
  CHECK(minutes("2026-02-28 08:00,steam\n2026-03-01 21:00,opened\n") == "480 2700 ");
  CHECK(minutes("2026-11-29 14:00,steam\n14:10,steady\n") == "840 850 ");
  const jarproof::run_log log = log_of("time,C\n2026-11-29 14:00:05.250,116\n");
  CHECK(log.rows[0].at_us == 14 * 60 * us_per_min + 5'250'000);
}

TEST_CASE("clock times pass midnight, and jars are counted on another day") {
  const jarproof::run_log log = log_of(
      "time,psi,event\n23:50,13,\n00:05:30,13,\n0:50,,opened\n14:00,,steady\n09:00,,unsealed 1\n");
  CHECK(log.clock);
  CHECK(log.rows[0].at_us == (23 * 60 + 50) * us_per_min);
  CHECK(log.rows[1].at_us == (24 * 60 + 5) * us_per_min + us_per_min / 2);
  CHECK(log.rows[3].at_us == (24 + 14) * 60 * us_per_min);
  CHECK(log.rows[4].at_us == (48 + 9) * 60 * us_per_min);
  // A step of 12 hours over midnight is one, a minute more is a slip of the pen.
  CHECK(first_problem("time,psi\n18:00,0\n06:00,0\n") == "good");
  CHECK(first_problem("time,psi\n18:00,0\n06:01,0\n") ==
        "3:1 time | the time goes back: `06:01` stands below a later one | " + next_day);
  CHECK(first_problem("time,psi\n17:59,0\n00:10,0\n") ==
        "3:1 time | the time goes back: `00:10` stands below a later one | " + next_day);
}

TEST_CASE("the edges of what a canner can show") {
  CHECK(first_problem("minute,psi\n0,30\n1,0\n2,-0\n") == "good");
  CHECK(first_problem("minute,psi\n0,30.000001\n") != "good");
  CHECK(first_problem("minute,kPa\n0,207\n") == "good");
  CHECK(first_problem("minute,bar\n0,2.07\n") == "good");
  CHECK(first_problem("minute,bar\n0,2.08\n") != "good");
  CHECK(first_problem("minute,F\n0,300\n1,0\n") == "good");
  CHECK(first_problem("minute,C\n0,150\n1,-20\n") == "good");
  CHECK(first_problem("minute,psi\n10080,1\n") == "good");
  CHECK(first_problem("minute,psi\n10080.1,1\n") != "good");
}

TEST_CASE("a sensor may be off by half a pound, and the columns have a few names") {
  CHECK(first_problem("min,psig,events\n0,-0.5,steam\n") == "good");
  CHECK(first_problem("minutes,psi\n0,-0.500001\n") != "good");
  CHECK(first_problem("minute,kPa\n0,-3.4\n") == "good");
  CHECK(first_problem("minute,kPa\n0,-3.400001\n") != "good");
  CHECK(first_problem("minute,bar\n0,-0.034\n") == "good");
  CHECK(first_problem("minute,bar\n0,-0.034001\n") != "good");
}

TEST_CASE("a canner may stand overnight, and other rows do not go back by so much") {
  CHECK(first_problem("time,event\n18:36,heat-off\n07:00,zero\n07:40,opened\n") == "good");
  CHECK(first_problem("time,event\n18:36,heat-off\n07:00,steam\n") != "good");
  CHECK(first_problem("time,event\n18:00,heat-off\n10:00,zero\n") == "good");
  CHECK(first_problem("time,event\n18:00,heat-off\n10:01,zero\n") != "good");
}

// An hour that was not carried over is no other day.
TEST_CASE("pressure zero below a later row of the day is a slip of the pen") {
  CHECK(first_problem("time,event\n10:31,heat-off\n10:16,zero\n") ==
        "3:1 time | the time goes back: `10:16` stands below a later one | " + next_day);
  CHECK(first_problem("time,event\n17:59,heat-off\n07:00,zero\n") != "good");
  CHECK(first_problem("time,event\n11:16,zero\n10:27,opened\n") != "good");
  CHECK(first_problem("time,event\n2026-11-29 10:31,heat-off\n2026-11-30 10:16,zero\n") == "good");
  CHECK(first_problem("time,event\n2026-11-29 10:31,heat-off\n10:16,zero\n") ==
        "3:1 time | the time goes back: `10:16` stands below a later one | put the rows in order "
        "of time, and check this one");
}

TEST_CASE("two readings for one moment may be the same, and an event has a row of its own") {
  CHECK(first_problem("minute,psi,event\n1,13,\n1,13.0,\n1,,steady\n") == "good");
}

TEST_CASE("cells that are left out at the end must be empty") {
  CHECK(first_problem("minute,psi,event\n1,13,,,\n") == "good");
  CHECK(first_problem("minute,psi,event,\n1,13,,\n") == "good");
  CHECK(first_problem("minute,psi,event\n1,13,,x\n") != "good");
  CHECK(first_problem("minute,psi,event,\n1,13,,boil-lost\n") ==
        "2:7 | `boil-lost` stands under no name | write it under `event`, or leave it out");
  CHECK(first_problem("minute,psi,event\n1,13,\n,,\n") == "good");
}

TEST_CASE("a row may end where it has no more to say") {
  CHECK(first_problem("minute,psi,event\n1,13\n") == "good");
  CHECK(first_problem("minute,event,psi\n1,steady\n") == "good");
  CHECK(first_problem("minute,psi,event\n1,steady\n") ==
        "2:3 psi | `steady` is no number under `psi` | write a number such as `11.5`, or leave the "
        "cell empty");
  CHECK(first_problem("psi,event,minute\n13,steady\n") ==
        "2:4 minute | the minute is missing | write the minute of this row");
}

TEST_CASE("large logs") {
  std::string text = "minute,psi\n";
  text += fixtures::repeated("1,13\n", 1'000'000);
  CHECK(first_problem(text) == "good");
  CHECK(first_problem(text + "1,13\n") ==
        "1000002:1 | the log has more than a million rows | give the log of one run, with a "
        "reading every few seconds at most");
  const std::string comment = "# " + std::string(16 * 1024 * 1024 - 20, 'x') + "\n";
  CHECK(first_problem(comment + "minute,psi\n0,1\n") == "good");
  CHECK(first_problem(comment + "minute,psi\n0,1\n# more\n") ==
        "1:1 | the log is larger than 16 MiB | give the log of one run");
}

TEST_CASE("faults are counted up to a hundred") {
  const auto read =
      jarproof::read_log("minute,psi\n" + fixtures::repeated("x,13\n", 500), "run.csv");
  REQUIRE_FALSE(read);
  CHECK(read.errors().size() == 101);
  CHECK(read.errors().back().message == "there are more faults than these");
}

TEST_SUITE_END();

TEST_SUITE_BEGIN("bad_input");

TEST_CASE("every broken log is refused with exactly the lines of its expectation") {
  namespace fs = std::filesystem;
  const std::string folder = "tests/bad-input/logs/";
  std::set<std::string> logs;
  std::set<std::string> expected;
  for (const auto& entry :
       fs::directory_iterator(std::string(JARPROOF_SOURCE_DIR) + "/" + folder)) {
    const std::string stem = entry.path().stem().string();
    if (entry.path().extension() == ".expect") {
      expected.insert(stem);
      continue;
    }
    logs.insert(stem);
    const std::string name = entry.path().filename().string();
    const auto read = jarproof::read_log(fixtures::file_text(folder + name), name);
    std::string got;
    if (!read) {
      for (const jarproof::problem& p : read.errors()) got += fixtures::line_of(p) + "\n";
    }
    const std::string wanted = fixtures::file_text(folder + stem + ".expect");
    const bool as_expected = !got.empty() && got == wanted;
    CHECK_MESSAGE(as_expected, name << "\nit says:\n" << got << "expected:\n" << wanted);
  }
  CHECK(logs.size() >= 25);
  CHECK(logs == expected);
}

TEST_SUITE_END();

}  // namespace read_log_tests
