// After the run: what is said of jars that broke, did not seal or lost liquid.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "jarproof/builtin.hpp"
#include "jarproof/judge_log.hpp"
#include "jarproof/read_log.hpp"
#include "support/fixtures.hpp"

namespace log_after_tests {
namespace {

// Pints of green beans, dial gauge at 4,600 ft: 20 min at 13 psi (USDA Complete Guide 2015, part 4,
// page 4-8).
jarproof::log_report run_with(const std::string& ends, const std::string& off = "36") {
  const jarproof::plan plan =
      fixtures::plan_from(fixtures::file_text("tests/logs/plans/beans-dial.yaml"));
  const auto log = jarproof::read_log(
      "minute,psi,event\n0,,steam\n10,0,weight-on\n"
      "16,13,at-pressure\n24,13,\n32,13,\n" +
          off + ",13,heat-off\n70,0,zero\n80,,opened\n" + ends,
      "run.csv");
  REQUIRE(log);
  return jarproof::judge_log(plan, jarproof::builtin_edition(), *log);
}

std::vector<std::string> steps_of(const jarproof::log_report& r) {
  std::vector<std::string> out;
  for (const jarproof::to_do& t : r.now) out.push_back(t.id);
  return out;
}

using steps = std::vector<std::string>;

}  // namespace

TEST_SUITE_BEGIN("judge_log");

TEST_CASE("before the seals are tested a good run says how, and what lost liquid means") {
  const jarproof::log_report r = run_with("");
  CHECK(r.verdict == jarproof::verdict::accepted);
  CHECK(steps_of(r) == steps{"cool", "check-seals", "liquid-lost"});
  // USDA Complete Guide 2015, part 1: jars are not opened to refill. Half or more: common practice,
  // no source.
  CHECK(
      r.now.back().what ==
      "Jars that lost liquid: do not open them to refill. Sealed, they are used first. If half or "
      "more is gone, refrigerate and use in 2 to 3 days.");
  CHECK(r.now.back().until.empty());
}

TEST_CASE("once the seals are told, only what is left to do is said") {
  CHECK(steps_of(run_with("1000,,unsealed 0\n")).empty());
  CHECK(steps_of(run_with("90,,broken 1\n1000,,unsealed 1\n")) ==
        steps{"broken", "reprocess-unsealed", "refrigerate-unsealed", "freeze-unsealed"});
}

TEST_CASE("the food of a broken jar is thrown out also where the run was not delivered") {
  const jarproof::log_report r = run_with("90,,broken 1\n", "35");
  CHECK(r.verdict == jarproof::verdict::rejected);
  CHECK(steps_of(r) == steps{"broken", "reprocess", "refrigerate", "freeze", "discard-low-acid"});
  const steps whole = steps_of(run_with("", "35"));
  CHECK(std::find(whole.begin(), whole.end(), "broken") == whole.end());
}

TEST_CASE("a weight that moved all the time did what its process does") {
  // Onions in quarts, weighted gauge at 4,600 ft: 40 min at 15 psi (Ask Extension, answer 867753).
  // At a constant heat the two differ by nothing but the minutes.
  const jarproof::plan plan =
      fixtures::plan_from(fixtures::file_text("tests/logs/plans/onions-weight.yaml"));
  const auto log = jarproof::read_log(
      "minute,event\n0,steam\n10,weight-on\n15,at-pressure\n25,steady\n35,steady\n45,steady\n"
      "55,heat-off\n90,zero\n100,opened\n",
      "run.csv");
  REQUIRE(log);
  const jarproof::log_report r = jarproof::judge_log(plan, jarproof::builtin_edition(), *log);
  REQUIRE(r.lethality_min);
  REQUIRE(r.process_lethality_min);
  CHECK(*r.lethality_min == doctest::Approx(*r.process_lethality_min).epsilon(0.001));
}

TEST_SUITE_END();

}  // namespace log_after_tests
