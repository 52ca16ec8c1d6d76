// What a run is held to, in numbers; whole runs stand in tests/logs/ (run_logs.cpp).
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <cstdint>
#include <string>

#include "jarproof/judge_log.hpp"
#include "jarproof/read_log.hpp"
#include "jarproof/unreadable_log.hpp"
#include "support/fixtures.hpp"

namespace judge_log_tests {
namespace {

using namespace jarproof;

log_report judged_run(const std::string& plan_text, const std::string& log_text) {
  const auto log = read_log(log_text, "run.csv");
  REQUIRE(log);
  return judge_log(fixtures::plan_from(plan_text), builtin_edition(), *log);
}

/// Vented, at `first` from minute 16, at `second` from minute 21, heat off at `end`.
std::string run_of(const std::string& unit, const std::string& first, const std::string& second,
                   const std::string& end) {
  return "minute," + unit + ",event\n0,0,steam\n10,0,weight-on\n16," + first + ",at-pressure\n21," +
         second + ",\n26," + first + ",\n31," + first + ",\n" + end + "," + first +
         ",heat-off\n70,0,zero\n80,,opened\n";
}

std::string micro_text(std::int64_t millionths) {
  std::string digits = std::to_string(millionths % 1'000'000 + 1'000'000).substr(1);
  return std::to_string(millionths / 1'000'000) + "." + digits;
}

}  // namespace

TEST_SUITE_BEGIN("judge_log");

// 1 kPa is 0.145037737 psi, cut off (NIST SP 811, appendix B.8): 13 psi are 89.631845 kPa and a
// bit.
TEST_CASE("the least reading in kPa and bar is the first that is enough") {
  CHECK(detail::least_reading(log_unit::psi, 13'000'000) == 13'000'000);
  CHECK(detail::least_reading(log_unit::kpa, 13'000'000) == 89'631'846);
  CHECK(detail::least_reading(log_unit::bar, 13'000'000) == 896'319);
  for (std::int64_t psi = 5; psi <= 15; ++psi) {
    const std::int64_t kpa = detail::least_reading(log_unit::kpa, psi * micro_per_unit);
    CHECK(kpa * 145'037'737 / 1'000'000'000 >= psi * micro_per_unit);
    CHECK((kpa - 1) * 145'037'737 / 1'000'000'000 < psi * micro_per_unit);
    const std::int64_t bar = detail::least_reading(log_unit::bar, psi * micro_per_unit);
    CHECK(bar * 14'503'773 / micro_per_unit >= psi * micro_per_unit);
    CHECK((bar - 1) * 14'503'773 / micro_per_unit < psi * micro_per_unit);
  }
}

// Published figures of a space agency: 208.4 F at 2,000 ft, 203 F at 5,000 ft.
TEST_CASE("the boiling point between two published ones") {
  const list<boiling_point> points = builtin_edition().run.boiling;
  CHECK(detail::boiling_thousandths_f(points, 0) == 212'000);
  CHECK(detail::boiling_thousandths_f(points, 2000) == 208'400);
  CHECK(detail::boiling_thousandths_f(points, 5000) == 203'000);
  CHECK(detail::boiling_thousandths_f(points, 3500) == 205'700);
  CHECK(detail::boiling_thousandths_f(points, 10'000) == 193'600);
  CHECK_FALSE(detail::boiling_thousandths_f(points, 10'001));
}

TEST_CASE("degrees Celsius are compared as millionths of a degree Fahrenheit") {
  CHECK(detail::least_degrees(log_unit::fahrenheit, 180'000'000) == 180'000'000);
  CHECK(detail::least_degrees(log_unit::celsius, 180'000'000) == 82'222'223);
  CHECK(detail::least_degrees(log_unit::celsius, 212'000'000) == 100'000'000);
}

// USDA Complete Guide 2015, part 4, page 4-8: pints of beans 20 min; dial 11, 12, 13, 14 psi.
TEST_CASE("every band of the dial: its pressure is enough, a millionth of a psi less is not") {
  struct band {
    const char* altitude;
    std::int64_t psi;
  };
  for (const band b :
       {band{"2000 ft", 11}, band{"4000 ft", 12}, band{"6000 ft", 13}, band{"8000 ft", 14}}) {
    const std::string plan = fixtures::plan_text(
        fixtures::dial_beans(),
        {{"altitude", b.altitude}, {"pressure", std::to_string(b.psi) + " psi"}});
    for (const auto& [unit, name] :
         {std::pair{log_unit::psi, "psi"}, std::pair{log_unit::kpa, "kPa"},
          std::pair{log_unit::bar, "bar"}}) {
      const auto& shown_name = name;  // clang 14 captures no structured binding
      CAPTURE(shown_name);
      const std::int64_t least = detail::least_reading(unit, b.psi * micro_per_unit);
      const std::string enough = micro_text(least);
      const std::string less = micro_text(least - 1);
      CHECK(judged_run(plan, run_of(name, enough, enough, "36")).verdict == verdict::accepted);
      const log_report low = judged_run(plan, run_of(name, enough, less, "36"));
      CHECK(low.verdict == verdict::rejected);
      REQUIRE(low.findings.size() == 1);
      CHECK(low.findings[0].check == "pressure-dropped");
      CHECK(low.findings[0].line == 5);
      // The time: exactly, and a microsecond of a minute less.
      const log_report brief = judged_run(plan, run_of(name, enough, enough, "35.999999"));
      CHECK(brief.verdict == verdict::rejected);
      REQUIRE(brief.findings.size() == 1);
      CHECK(brief.findings[0].check == "time-too-short");
    }
  }
}

TEST_CASE("the error of a dial is added to what it must show, and only where it reads high") {
  const auto plan = [](const char* error, const char* pressure) {
    return fixtures::plan_text(fixtures::dial_beans(),
                               {{"gauge-error", error}, {"pressure", pressure}});
  };
  const auto verdict_at = [&](const char* error, const char* pressure, const char* reading) {
    return judged_run(plan(error, pressure), run_of("psi", reading, reading, "36")).verdict;
  };
  CHECK(verdict_at("+0.5 psi", "14 psi", "13.5") == verdict::accepted);
  CHECK(verdict_at("+0.5 psi", "14 psi", "13.499999") == verdict::rejected);
  CHECK(verdict_at("-2 psi", "13 psi", "13") == verdict::accepted);
  CHECK(verdict_at("-2 psi", "13 psi", "12.9") == verdict::rejected);
}

// Both sides are worked out by physics.hpp; its numbers are compared in tests/published/.
TEST_CASE("lethality is shown and decides nothing") {
  const std::string plan = fixtures::plan_text(fixtures::dial_beans());
  const log_report good = judged_run(plan, run_of("psi", "13", "13", "36"));
  REQUIRE(good.lethality_min);
  REQUIRE(good.process_lethality_min);
  CHECK(*good.lethality_min == doctest::Approx(*good.process_lethality_min));
  // More heat in less time does more, and is rejected all the same.
  const log_report hot = judged_run(plan, run_of("psi", "15", "15", "33"));
  CHECK(*hot.lethality_min > *hot.process_lethality_min);
  CHECK(hot.verdict == verdict::rejected);
}

TEST_CASE("a log that cannot be read says what its plan is") {
  const auto log = read_log("minute,psi\n0,11 psi\n", "run.csv");
  REQUIRE_FALSE(log);
  const plan what = fixtures::plan_from(fixtures::plan_text(fixtures::dial_beans()));
  const log_report r = unreadable_log_report("run.csv", log.errors(),
                                             check(what, builtin_edition()), builtin_edition());
  CHECK(r.verdict == verdict::unreadable);
  REQUIRE(r.findings.size() == 1);
  CHECK(r.findings[0].check == "log-unreadable");
  CHECK(r.findings[0].line == 2);
  CHECK(r.plan.verdict == verdict::accepted);
}

// Without what stands in canning-day.yaml nothing vouches for anything.
TEST_CASE("rules without limits accept no run") {
  edition bare = builtin_edition();
  bare.run = {};
  bare.after = {};
  const auto log = read_log(run_of("psi", "13", "13", "36"), "run.csv");
  REQUIRE(log);
  const plan what = fixtures::plan_from(fixtures::plan_text(fixtures::dial_beans()));
  CHECK(judge_log(what, bare, *log).verdict == verdict::incomplete);
}

TEST_CASE("no log gives anything but a report") {
  run_log nothing;
  nothing.source = "run.csv";
  const plan what = fixtures::plan_from(fixtures::plan_text(fixtures::dial_beans()));
  CHECK(judge_log(what, builtin_edition(), nothing).verdict == verdict::incomplete);
}

TEST_SUITE_END();

}  // namespace judge_log_tests
