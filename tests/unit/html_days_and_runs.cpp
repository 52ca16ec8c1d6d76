// Whole pages: run logs and canning days. Well formed whatever was written, the words of the text.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <filesystem>
#include <string>
#include <vector>

#include "jarproof/day_of.hpp"
#include "jarproof/format/html_day.hpp"
#include "jarproof/format/html_log.hpp"
#include "jarproof/judge_log.hpp"
#include "jarproof/read_log.hpp"
#include "jarproof/unreadable_log.hpp"
#include "jarproof/yaml.hpp"
#include "support/fixtures.hpp"
#include "support/markup.hpp"
#include "support/small_edition.hpp"

namespace html_days_and_runs_tests {
namespace {

namespace fs = std::filesystem;

using strings = std::vector<std::string>;
const jarproof::edition& rules = jarproof::builtin_edition();

struct judged_run {
  jarproof::run_log log;
  jarproof::log_report report;
};

judged_run run_of(const std::string& plan, const std::string& csv) {
  const auto log = jarproof::read_log(csv, "run.csv");
  REQUIRE(log);
  return {*log, jarproof::judge_log(fixtures::plan_from(plan), rules, *log)};
}

/// The run of a file of tests/logs/.
judged_run run_in(const std::string& name) {
  const std::string text = fixtures::file_text("tests/logs/" + name);
  const std::size_t plan = text.find("plan: ") + 6;
  const std::string csv = text.substr(text.find("--- log\n") + 8);
  return run_of(fixtures::file_text("tests/logs/plans/" +
                                    text.substr(plan, text.find('\n', plan) - plan) + ".yaml"),
                csv);
}

std::string page_of(const judged_run& run) { return jarproof::html_of(run.report, run.log, rules); }

std::string page_of_log(const std::string& name) { return page_of(run_in(name)); }

jarproof::day_plan day_in(const std::string& file) {
  std::vector<jarproof::plan> plans;
  const auto documents = jarproof::read_yaml(fixtures::file_text(file), file);
  REQUIRE(documents);
  for (const auto& each : *documents) {
    const auto p = jarproof::read_plan(each);
    REQUIRE(p);
    plans.push_back(*p);
  }
  return jarproof::day_of(plans, rules);
}

std::string page_of(const jarproof::day_plan& d) { return jarproof::html_of(d, {}, rules); }

}  // namespace

TEST_SUITE_BEGIN("html");

TEST_CASE("every run of tests/logs is a page with all that was found and is to be done") {
  std::size_t count = 0;
  for (const auto& entry :
       fs::directory_iterator(std::string(JARPROOF_SOURCE_DIR) + "/tests/logs")) {
    if (entry.path().extension() != ".log") continue;
    CAPTURE(entry.path().filename().string());
    const judged_run run = run_in(entry.path().filename().string());
    const std::string page = page_of(run);
    CHECK(fixtures::faults_of_page(page) == strings{});
    CHECK(page == page_of(run));
    const std::string words = fixtures::one_line(fixtures::words_of_page(page));
    for (const jarproof::log_finding& f : run.report.findings) {
      CHECK(fixtures::stands_in(words, fixtures::one_line(f.message)));
      CHECK(fixtures::stands_in(words, fixtures::one_line(f.fix)));
      CHECK(fixtures::stands_in(words, f.check));
    }
    for (const jarproof::to_do& t : run.report.now) {
      CHECK(fixtures::stands_in(words, fixtures::one_line(t.what)));
      CHECK(fixtures::stands_in(words, t.until));
    }
    for (const std::string& e : run.report.explains) CHECK(fixtures::stands_in(words, e));
    for (const auto& row : jarproof::detail::rows_of_run(run.report, rules))
      CHECK(fixtures::stands_in(words, row.value));
    ++count;
  }
  CHECK(count >= 60);
}

TEST_CASE("a drop: what to do first, the drop marked, the line of what was asked for") {
  const std::string page = page_of_log("dial-drop.log");
  const std::string words = fixtures::one_line(fixtures::words_of_page(page));
  CHECK(
      fixtures::stands_in(page, "<b>REJECTED</b> The run did not deliver the published process."));
  CHECK(page.find("class=\"now\"") < page.find("<svg class=\"drawing\""));
  CHECK(fixtures::stands_in(page, "<title id=\"run-title\">Pressure over time</title>"));
  CHECK(fixtures::stands_in(page, "class=\"failing\""));
  // The dial at 4,600 ft: 13 psi (USDA Complete Guide, 2015, guide 4, page 4-8).
  CHECK(fixtures::stands_in(words, "13 psi or more must be on this gauge all the time"));
  CHECK(fixtures::stands_in(words, "24 min to 26 min: Pressure dropped, 12.5 psi"));
  CHECK(fixtures::stands_in(words, "26 min to 36 min: held 10 min"));
  CHECK(fixtures::stands_in(words, "36 min: heat-off"));
}

TEST_CASE("a dial that reads high has its line that much higher") {
  // 13 psi as above, and 1 psi for the dial.
  CHECK(fixtures::stands_in(fixtures::words_of_page(page_of_log("error-high-good.log")),
                            "14 psi or more"));
}

TEST_CASE("a run that is going on: stop, or go on, and never the look of what is accepted") {
  const std::string stop = page_of_log("running-lost.log");
  CHECK(fixtures::stands_in(stop, "class=\"label rejected\""));
  CHECK(fixtures::stands_in(stop, "<b>STOP</b> Do this now."));
  CHECK(fixtures::stands_in(stop, "until <b>minute 44</b>"));
  const std::string on = page_of_log("running-counting.log");
  CHECK(fixtures::stands_in(on, "<b>RUNNING</b> Go on like this."));
  CHECK(fixtures::stands_in(on, "So far, to minute 24: 12 min to go, to minute 36."));
  for (const std::string& page : {stop, on})
    CHECK_FALSE(fixtures::stands_in(page, "class=\"label accepted\""));
}

TEST_CASE("a run without readings shows the rows that say whether it was held") {
  const std::string page = page_of_log("weight-stood-still.log");
  const std::string words = fixtures::one_line(fixtures::words_of_page(page));
  CHECK(fixtures::stands_in(page, "<title id=\"run-title\">The run over time</title>"));
  CHECK(fixtures::stands_in(page, "class=\"spot\""));
  CHECK(fixtures::stands_in(words, "above held, below lost."));
  CHECK_FALSE(fixtures::stands_in(page, "class=\"course\""));
}

TEST_CASE("jars counted the next day do not squeeze the run") {
  const std::string page = page_of_log("dial-all-faults.log");
  const std::string words = fixtures::one_line(fixtures::words_of_page(page));
  CHECK(fixtures::stands_in(words, "From 0 min to 40 min."));
  CHECK(fixtures::stands_in(words, "opened; found: Cooling forced"));
  CHECK(fixtures::stands_in(words, "1 jar did not seal."));
}

TEST_CASE("stretches that were missed end where it was held again") {
  const auto missed = run_in("dial-drop.log").report.missed;
  REQUIRE(missed.size() == 1);
  CHECK(missed[0].check == "pressure-dropped");
  CHECK(missed[0].from_us == 24 * jarproof::us_per_min);
  CHECK(missed[0].to_us == 26 * jarproof::us_per_min);
  const auto gaps = run_in("dial-gap-a-second-more.log").report.missed;
  REQUIRE(gaps.size() == 1);
  CHECK(gaps[0].check == "reading-gap");
  CHECK(run_in("dial-good.log").report.missed.empty());
}

TEST_CASE("a log and a plan that cannot be read are pages too") {
  const auto log = jarproof::read_log("minute,psi\n5,10\n4,<b>\n", "<run>.csv");
  REQUIRE_FALSE(log);
  const jarproof::log_report r = jarproof::unreadable_log_report(
      "<run>.csv", log.errors(), fixtures::judged(fixtures::plan_text(fixtures::beans(), {})),
      rules);
  const std::string page = jarproof::html_of(r, {}, rules);
  CHECK(fixtures::faults_of_page(page) == strings{});
  CHECK(fixtures::stands_in(page, "<b>UNREADABLE</b>"));
  CHECK_FALSE(fixtures::stands_in(page, "<svg class=\"drawing\""));
  jarproof::log_report without = r;
  without.plan = fixtures::bare_report(jarproof::verdict::unreadable);
  CHECK(fixtures::faults_of_page(jarproof::html_of(without, {}, rules)) == strings{});
}

TEST_CASE("what stands in a log or the plan of a day stays text") {
  const std::string bad = "</style><script>alert(1)</script>\"' onload=x & <b>\x1b[31m\x80";
  judged_run run = run_in("dial-drop.log");
  run.report.source = bad;
  run.report.plan.title = bad;
  run.report.explains = {bad};
  run.report.now = {{"x", bad, bad, {}}};
  for (jarproof::log_finding& f : run.report.findings) f.message = f.found = f.check = f.fix = bad;
  for (jarproof::missed_stretch& s : run.report.missed) s.check = bad;
  for (const bool running : {true, false}) {
    run.report.running = running;
    CHECK(fixtures::faults_of_page(page_of(run)) == strings{});
  }

  jarproof::day_plan d = day_in("examples/days/soup.yaml");
  d.date = bad;
  d.apart = d.unsaid = {bad};
  jarproof::day_batch& b = d.batches.front();
  b.name = b.judged.title = b.judged.source = b.jars->jar = bad;
  b.unsaid = {bad};
  b.label = {{bad, bad}};
  for (auto* steps : {&b.steps, &b.cautions, &b.left, &b.check_after, &b.opening})
    *steps = {{"x", bad, {bad}, {}, {}}};
  d.loads.front().remarks = {{"x", bad, {}, {}, {}}};
  d.loads.front().stages.front().what = bad;
  CHECK(fixtures::faults_of_page(page_of(d)) == strings{});
}

TEST_CASE("the worked day: jars, loads, clock, card, label") {
  const jarproof::day_plan d = day_in("examples/days/soup.yaml");
  const std::string page = page_of(d);
  CHECK(fixtures::faults_of_page(page) == strings{});
  CHECK(fixtures::stands_in(page, "<h1>Canning day 2026-11-21: Venison and white bean soup</h1>"));
  CHECK(fixtures::stands_in(page, "id=\"plan1-jar\""));
  CHECK(fixtures::stands_in(page, "id=\"day\""));
  CHECK(fixtures::stands_in(page, "<h2>3 loads: 8 + 8 + 7</h2>"));
  CHECK(fixtures::stands_in(page, "<li>Load 3: 7 pint jars (the canner holds 9)</li>"));
  CHECK(fixtures::stands_in(page, "<td>60</td>\n<td>09:35</td>\n<td>12:40</td>\n<td>15:45</td>"));
  CHECK(fixtures::stands_in(page, "class=\"jar-label\""));
}

TEST_CASE("the page of a day has every sentence of its text") {
  for (const char* file : {"examples/days/soup.yaml", "examples/days/tomatoes-and-salsa.yaml"}) {
    CAPTURE(file);
    const jarproof::day_plan d = day_in(file);
    const std::string page = page_of(d);
    CHECK(fixtures::faults_of_page(page) == strings{});
    const std::string words = fixtures::one_line(fixtures::words_of_page(page));
    for (const jarproof::day_batch& b : d.batches) {
      for (const auto* steps : {&b.steps, &b.cautions, &b.left, &b.check_after, &b.opening}) {
        for (const jarproof::day_step& s : *steps) {
          CAPTURE(s.id);
          CHECK(fixtures::stands_in(words, fixtures::one_line(s.says)));
          for (const std::string& part : s.parts)
            CHECK(fixtures::stands_in(words, fixtures::one_line(part)));
        }
      }
      for (const jarproof::day_label_line& l : b.label) CHECK(fixtures::stands_in(words, l.value));
      for (const auto& row : jarproof::detail::rows_of_jars(b))
        CHECK(fixtures::stands_in(words, row.value));
      for (const std::string& text : b.unsaid)
        CHECK(fixtures::stands_in(words, fixtures::one_line(text)));
    }
    for (const auto& row : jarproof::detail::rows_of_day(d))
      CHECK(fixtures::stands_in(words, fixtures::one_line(row.value)));
    for (const jarproof::day_load& l : d.loads) {
      CHECK(fixtures::stands_in(words, jarproof::detail::heading_of_load(d, l)));
      for (const jarproof::day_step& s : l.remarks) CHECK(fixtures::stands_in(words, s.says));
      for (const jarproof::day_stage& s : l.stages) CHECK(fixtures::stands_in(words, s.what));
    }
  }
}

TEST_CASE("what is the same for every food of a day stands once, behind the cards") {
  const jarproof::day_plan d = day_in("examples/days/tomatoes-and-salsa.yaml");
  REQUIRE(d.batches.size() == 2);
  const std::string words = fixtures::one_line(fixtures::words_of_page(page_of(d)));
  const auto times = [&](const std::string& what) {
    std::size_t count = 0;
    for (std::size_t at = words.find(what); at != std::string::npos; at = words.find(what, at + 1))
      ++count;
    return count;
  };
  CHECK(times("When a jar is opened") == 1);
  CHECK(times("For every load of the day") == 1);
  for (const jarproof::day_step& s : d.batches[0].opening) CHECK(times(s.says) == 1);
  // Each food has its own minutes.
  CHECK(times("start the whole 55 min again") == 1);
  CHECK(times("start the whole 20 min (55 min in load 3) again") == 1);
  // The worked day has one food, and nothing to share.
  CHECK_FALSE(fixtures::stands_in(page_of(day_in("examples/days/soup.yaml")), "For every load"));
}

TEST_CASE("a plan that is not accepted has its findings, and no card, no loads, no jar to fill") {
  const jarproof::day_plan d = jarproof::day_of(
      fixtures::plan_from(fixtures::plan_text(
          fixtures::beans(), {{"pressure", "10 psi"}, {"jars", "23"}, {"canner", "{pints: 9}"}})),
      rules);
  const std::string page =
      jarproof::html_of(d, {fixtures::bare_report(jarproof::verdict::unreadable)}, rules);
  CHECK(fixtures::faults_of_page(page) == strings{});
  CHECK(fixtures::stands_in(page, "pressure-too-low"));
  CHECK(fixtures::stands_in(page, "No step card and no loads"));
  for (const char* none : {"Step card", "id=\"day\"", "class=\"jar-label\""}) {
    CAPTURE(none);
    CHECK_FALSE(
        fixtures::stands_in(page, none == std::string("Step card") ? "<h2>Step card" : none));
  }
}

TEST_CASE("a day without a clock counts from its start") {
  const jarproof::day_plan d =
      jarproof::day_of(fixtures::plan_from(fixtures::plan_text(
                           fixtures::beans(), {{"jars", "9"}, {"canner", "{pints: 9}"}})),
                       rules);
  const std::string page = page_of(d);
  CHECK(fixtures::faults_of_page(page) == strings{});
  CHECK(fixtures::stands_in(page, "<th scope=\"col\">after</th>"));
}

TEST_SUITE_END();

}  // namespace html_days_and_runs_tests
