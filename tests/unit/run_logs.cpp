// Whole runs: every `.log` file of tests/logs/ holds a run and what is to be said about it.
//
// At the top stand `plan:` (a file of tests/logs/plans/), `verdict:`, `state:`, and where there are
// any `found: LINE MINUTE CHECK EFFECT` for each finding, in order, `now:` the first thing to do
// with its limit, and `ends:`. EFFECT is the outcome, or the level of a finding without one. Below
// `--- log` stands the log.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <sstream>
#include <string>
#include <vector>

#include "jarproof/format/log_json.hpp"
#include "jarproof/format/log_text.hpp"
#include "jarproof/judge_log.hpp"
#include "jarproof/read_log.hpp"
#include "support/fixtures.hpp"

namespace run_logs_tests {
namespace {

namespace fs = std::filesystem;

const std::string folder = "tests/logs/";

std::vector<std::string> log_names() {
  std::vector<std::string> out;
  for (const auto& entry : fs::directory_iterator(std::string(JARPROOF_SOURCE_DIR) + "/" + folder))
    if (entry.path().extension() == ".log") out.push_back(entry.path().filename().string());
  std::sort(out.begin(), out.end());
  return out;
}

struct expected_run {
  std::string plan;
  std::string expectation;  ///< all lines but `plan:` and comments, in order
  std::string log;
};

expected_run parts_of(const std::string& text) {
  expected_run out;
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) {
    if (line == "--- log") break;
    if (line.rfind("plan: ", 0) == 0) {
      out.plan = line.substr(6);
    } else if (line.rfind("#", 0) != 0) {
      out.expectation += line + "\n";
    }
  }
  std::ostringstream rest;
  rest << lines.rdbuf();
  out.log = rest.str();
  return out;
}

std::string lines_of(const jarproof::log_report& r, bool ends) {
  using namespace jarproof;
  std::string out = "verdict: " + std::string(name_of(r.verdict)) +
                    "\nstate: " + std::string(name_of(r.state)) + "\n";
  if (ends && r.ends_us) out += "ends: " + detail::when_text(r.clock, *r.ends_us) + "\n";
  for (const log_finding& f : r.findings) {
    const std::string minute =
        f.at_us ? detail::minute_text(*f.at_us - (r.clock ? r.first_us : 0)) : "-";
    out += "found: " + std::to_string(f.line) + " " + minute + " " + f.check + " " +
           std::string(f.outcome == outcome::none ? name_of(f.level) : name_of(f.outcome)) + "\n";
  }
  return out;
}

std::string now_line(const jarproof::log_report& r) {
  if (r.now.empty()) return "now: nothing\n";
  const jarproof::to_do& first = r.now.front();
  return "now: " + first.id + (first.until.empty() ? "" : " until " + first.until) + "\n";
}

}  // namespace

TEST_SUITE_BEGIN("judge_log");

TEST_CASE("every run of tests/logs is judged as its file says") {
  const std::vector<std::string> names = log_names();
  CHECK(names.size() >= 60);
  for (const std::string& name : names) {
    const expected_run run = parts_of(fixtures::file_text(folder + name));
    const jarproof::plan plan =
        fixtures::plan_from(fixtures::file_text(folder + "plans/" + run.plan + ".yaml"));
    const auto log = jarproof::read_log(run.log, name);
    REQUIRE_MESSAGE(log, name << ": " << (log ? "" : log.errors().front().message));
    const jarproof::log_report r = jarproof::judge_log(plan, jarproof::builtin_edition(), *log);
    std::string got = lines_of(r, run.expectation.find("ends: ") != std::string::npos);
    if (run.expectation.find("now: ") != std::string::npos) got += now_line(r);
    CHECK_MESSAGE(got == run.expectation, name << "\nit says:\n"
                                               << got << "expected:\n"
                                               << run.expectation);
  }
}

// What holds for every run, whatever it is.
TEST_CASE("no run is better than its plan, and what is not accepted says what to do") {
  const jarproof::edition& rules = jarproof::builtin_edition();
  for (const std::string& name : log_names()) {
    CAPTURE(name);
    const expected_run run = parts_of(fixtures::file_text(folder + name));
    const jarproof::plan plan =
        fixtures::plan_from(fixtures::file_text(folder + "plans/" + run.plan + ".yaml"));
    const auto log = jarproof::read_log(run.log, name);
    REQUIRE(log);
    const jarproof::log_report r = jarproof::judge_log(plan, rules, *log);
    const bool accepted = r.verdict == jarproof::verdict::accepted;
    if (accepted) {
      CHECK(r.plan.verdict == jarproof::verdict::accepted);
      CHECK_FALSE(r.running);
      CHECK(r.delivered_us >= *r.required_min * jarproof::us_per_min);
    } else {
      CHECK_FALSE(r.now.empty());
    }
    // Sentences are whole, and the text fits a phone.
    for (const jarproof::to_do& t : r.now) CHECK(t.what.find('{') == std::string::npos);
    for (const jarproof::log_finding& f : r.findings) {
      CHECK_FALSE(f.message.empty());
      CHECK(f.message.find('{') == std::string::npos);
    }
    std::istringstream lines(jarproof::log_text(r, rules));
    for (std::string line; std::getline(lines, line);)
      CHECK(jarproof::detail::characters(line) <= 60);
    CHECK(jarproof::log_json(r, rules) == jarproof::log_json(r, rules));
  }
}

TEST_SUITE_END();

}  // namespace run_logs_tests
