// Whole pages: checks and ways. Well formed whatever stands in a plan, the words of the text
// report.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "jarproof/format/html_check.hpp"
#include "jarproof/format/html_ways.hpp"
#include "jarproof/ways.hpp"
#include "support/dishes.hpp"
#include "support/fixtures.hpp"
#include "support/markup.hpp"
#include "support/small_edition.hpp"

namespace html_pages_tests {
namespace {

using strings = std::vector<std::string>;

std::string page_of(const std::string& yaml) {
  return jarproof::html_of({fixtures::judged(yaml)}, jarproof::builtin_edition());
}

jarproof::found_ways ways_of(const std::string& yaml) {
  const jarproof::plan what = fixtures::plan_from(yaml);
  jarproof::found_ways out{
      "stew.yaml", "Stew", jarproof::ways_of(what, jarproof::builtin_edition()), {}};
  out.altitude_ft = 4'600;
  return out;
}

const std::string stew =
    "ingredients: |\n  3 lb venison shoulder, cut in cubes\n  8 cups cooked white beans\n"
    "  4 cups chopped onion\n  2 qt beef broth\n  1/4 cup flour\n  1 cup cream\n"
    "jar: pint\nmethod: pressure\ngauge: weighted\naltitude: 4600 ft\n";

}  // namespace

TEST_SUITE_BEGIN("html");

TEST_CASE("an accepted plan: label, large numbers, boxes to tick, pictures") {
  const std::string page = page_of(fixtures::plan_text(fixtures::beans(), {{"title", "Beans"}}));
  CHECK(fixtures::faults_of_page(page) == strings{});
  CHECK(fixtures::stands_in(page, "<title>Beans: accepted</title>"));
  CHECK(fixtures::stands_in(page, "<h1>Beans</h1>"));
  CHECK(fixtures::stands_in(page, "<b>ACCEPTED</b> The plan matches a published process."));
  CHECK(fixtures::stands_in(page, "<strong>15 psi (103 kPa)</strong>"));
  CHECK(fixtures::stands_in(page,
                            "<strong>20 min</strong> counted from when the pressure is reached"));
  CHECK(fixtures::stands_in(page, "<ul class=\"steps\">"));
  CHECK(fixtures::stands_in(page, "id=\"plan1-bands\""));
  CHECK(fixtures::stands_in(page, "id=\"plan1-jar\""));
}

TEST_CASE("a plan that is not accepted has no large numbers and no boxes") {
  for (const char* pressure : {"10 psi", ""}) {
    const std::string page =
        page_of(fixtures::plan_text(fixtures::beans(), {{"pressure", pressure}}));
    CHECK(fixtures::faults_of_page(page) == strings{});
    CHECK_FALSE(fixtures::stands_in(page, "<strong>"));
    CHECK_FALSE(fixtures::stands_in(page, "class=\"steps\""));
  }
}

TEST_CASE("the page has every sentence of the text report") {
  for (const std::string& plan :
       {fixtures::plan_text(fixtures::beans(), {{"pressure", "10 psi"}, {"time", "15 min"}}),
        fixtures::plan_text(fixtures::dial_beans(), {{"headspace", "1/2 in"}}),
        fixtures::hot_plan(fixtures::soup({"1/4 cup flour", "1 cup moon dust"})),
        std::string("food: white beans\nmethod: oven\n")}) {
    const jarproof::report r = fixtures::judged(plan);
    const jarproof::edition& rules = jarproof::builtin_edition();
    const std::string words =
        fixtures::one_line(fixtures::words_of_page(jarproof::html_of({r}, rules)));
    for (const jarproof::finding& f : r.findings) {
      if (f.check == "step-reminder") continue;
      CAPTURE(f.message);
      CHECK(fixtures::stands_in(words, fixtures::one_line(f.message)));
      CHECK(fixtures::stands_in(words, fixtures::one_line(f.fix)));
      CHECK(fixtures::stands_in(words, f.check));
      if (f.outcome != jarproof::outcome::none)
        CHECK(fixtures::stands_in(words, fixtures::one_line(f.why)));
    }
    if (!r.required) continue;
    for (const jarproof::detail::named_value& row : jarproof::detail::rows_of_process(r, rules))
      CHECK(fixtures::stands_in(words, row.value));
    for (const std::string& step : jarproof::detail::steps_of_process(r))
      CHECK(fixtures::stands_in(words, fixtures::one_line(step)));
  }
}

TEST_CASE("several plans: a table of them, one h1, no id twice") {
  const std::vector<jarproof::report> reports = {
      fixtures::beans_with({{"title", "One"}}),
      fixtures::beans_with({{"title", "Two"}, {"pressure", "10 psi"}}),
      fixtures::bare_report(jarproof::verdict::unreadable),
      fixtures::beans_with({{"altitude", ""}})};
  const std::string page = jarproof::html_of(reports, jarproof::builtin_edition());
  CHECK(fixtures::faults_of_page(page) == strings{});
  CHECK(fixtures::stands_in(page, "<caption>4 plans, 1 accepted.</caption>"));
  CHECK(fixtures::stands_in(
      page, "<a href=\"#plan2\">Two</a><div class=\"small\">Pressure too low</div>"));
  CHECK(fixtures::stands_in(page, "id=\"plan4\""));
}

TEST_CASE("no plan is a page too, and says so") {
  const std::string page =
      jarproof::html_of(std::vector<jarproof::report>{}, jarproof::builtin_edition());
  CHECK(fixtures::faults_of_page(page) == strings{});
  CHECK(fixtures::stands_in(page, "0 plans, 0 accepted."));
}

TEST_CASE("what stands in a plan stays text") {
  jarproof::report r = fixtures::full_report();
  const std::string bad = "</style><script>alert(1)</script>\"' onload=x & <b>\x1b[31m\x80";
  r.title = bad;
  r.source = bad;
  r.mixture_class = bad;
  r.mixture_by = bad;
  r.required->style = bad;
  r.required->jar = bad;
  r.required->gauge = bad;
  r.required->method = bad;
  for (std::string* s : {&r.findings[0].check, &r.findings[0].message, &r.findings[0].why,
                         &r.findings[0].fix, &r.findings[0].field, &r.findings[0].file})
    *s = bad;
  r.findings[0].sources = {bad};
  for (const jarproof::verdict v : {jarproof::verdict::rejected, jarproof::verdict::unreadable}) {
    r.verdict = v;
    const std::string page = jarproof::html_of({r}, fixtures::small_edition);
    CHECK(fixtures::faults_of_page(page) == strings{});
    CHECK_FALSE(fixtures::stands_in(page, "<b>\x1b"));
  }
  CHECK(fixtures::faults_of_page(jarproof::html_of({r, r}, fixtures::small_edition)) == strings{});
}

TEST_CASE("rules of one's own are named on the label") {
  jarproof::process own = fixtures::small_edition.processes[0];
  own.added_by = "the mountain kitchen";
  jarproof::report r = fixtures::full_report();
  r.process = &own;
  r.verdict = jarproof::verdict::accepted;
  r.findings.clear();
  CHECK(fixtures::stands_in(
      jarproof::html_of({r}, fixtures::small_edition),
      "<b>ACCEPTED</b> by rules of the mountain kitchen, which are not the built-in ones."));
}

TEST_CASE("ways as a page") {
  const jarproof::edition& rules = jarproof::builtin_edition();
  const jarproof::found_ways found = ways_of(stew);
  const std::string page = jarproof::html_of(std::vector{found}, rules);
  CHECK(fixtures::faults_of_page(page) == strings{});
  CHECK(fixtures::stands_in(page, "<h1>Tested ways for Stew</h1>"));
  const std::string words = fixtures::one_line(fixtures::words_of_page(page));
  for (const jarproof::way& w : found.ways) {
    CHECK(fixtures::stands_in(words, w.title));
    for (const std::string& c : w.changes) CHECK(fixtures::stands_in(words, fixtures::one_line(c)));
    for (const std::string& n : w.notes) CHECK(fixtures::stands_in(words, fixtures::one_line(n)));
    for (const jarproof::way_part& p : w.parts) CHECK(fixtures::stands_in(words, p.title));
  }
  CHECK(fixtures::stands_in(page, "id=\"plan1-way1-jar\""));
  CHECK(fixtures::stands_in(page, "id=\"plan1-way1-bands\""));
}

TEST_CASE("ways of several plans, of one without altitude, of one that cannot be read") {
  const jarproof::edition& rules = jarproof::builtin_edition();
  jarproof::found_ways open =
      ways_of("ingredients: |\n  3 lb venison shoulder, cut in cubes\n  2 qt beef broth\n");
  open.altitude_ft = -1;
  jarproof::found_ways unreadable;
  unreadable.unreadable = fixtures::bare_report(jarproof::verdict::unreadable);
  const std::string page = jarproof::html_of(std::vector{ways_of(stew), open, unreadable}, rules);
  CHECK(fixtures::faults_of_page(page) == strings{});
  CHECK(fixtures::stands_in(page, "No numbers: the plan does not say the altitude."));
  CHECK(fixtures::stands_in(page, "id=\"plan3\""));
}

TEST_SUITE_END();

}  // namespace html_pages_tests
