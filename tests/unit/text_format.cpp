// The report for a person: verdict first, narrow lines, no escape codes unless they are asked for.
// SPDX-License-Identifier: MIT
#include "jarproof/format/text.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <ostream>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/check.hpp"
#include "jarproof/detail/words.hpp"
#include "jarproof/format/find.hpp"
#include "jarproof/format/teach.hpp"
#include "jarproof/read_plan.hpp"
#include "jarproof/unreadable.hpp"
#include "jarproof/yaml.hpp"
#include "support/fixtures.hpp"
#include "support/readings.hpp"
#include "support/small_edition.hpp"

namespace text_format_tests {

using fixtures::bare_report;
using fixtures::full_report;
using fixtures::small_edition;
using jarproof::report;
using jarproof::text_of;
using jarproof::text_style;
using jarproof::verdict;

namespace {

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> out;
  std::size_t from = 0;
  while (from < text.size()) {
    const std::size_t end = std::min(text.find('\n', from), text.size());
    out.push_back(text.substr(from, end - from));
    from = end + 1;
  }
  return out;
}

/// The first line that is too wide although its last word would fit on a line, or nothing.
std::string too_wide(const std::string& text, std::size_t width = 60) {
  constexpr std::size_t deepest_indent = 13;
  for (const std::string& line : lines_of(text)) {
    if (jarproof::detail::characters(line) <= width) continue;
    const std::string last = line.substr(line.rfind(' ') + 1);
    if (jarproof::detail::characters(last) + deepest_indent <= width) return line;
  }
  return "";
}

/// True where the text holds nothing that could steer a terminal.
bool plain(const std::string& text) {
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto byte = static_cast<unsigned char>(text[i]);
    if ((byte < 0x20 && byte != '\n') || byte == 0x7F) return false;
    // U+0080 to U+009F
    if (byte == 0xC2 && i + 1 < text.size() && static_cast<unsigned char>(text[i + 1]) < 0xA0)
      return false;
  }
  return true;
}

/// Takes the escape codes out; false where one is opened twice or never closed.
bool without_codes(std::string& text) {
  std::string out;
  bool open = false;
  for (std::size_t at = 0; at < text.size();) {
    if (text[at] != '\x1b') {
      out += text[at++];
      continue;
    }
    const std::size_t end = text.find('m', at);
    if (end == std::string::npos) return false;
    const bool closes = text.substr(at, end - at) == "\x1b[0";
    if (closes != open) return false;
    open = !open;
    at = end + 1;
  }
  text = out;
  return !open;
}

/// The reports of a text, readable or not, as the command line makes them.
std::vector<report> reports_of(std::string_view text, const jarproof::edition& rules) {
  const auto documents = jarproof::read_yaml(text, "plan.yaml");
  if (!documents) return {jarproof::unreadable_report("plan.yaml", documents.errors(), rules)};
  std::vector<report> out;
  for (const jarproof::document& d : *documents) {
    const auto plan = jarproof::read_plan(d);
    out.push_back(plan ? jarproof::check(*plan, rules)
                       : jarproof::unreadable_report("plan.yaml", plan.errors(), rules));
  }
  return out;
}

std::vector<std::string> many_plans(const jarproof::edition& rules) {
  std::vector<std::string> out = {
      "food: corn\n",
      "food: moon dust\n",
      "pack: warm\npresure: 11\ntime: 85\n",
      "- a\n",
      "food: [\n",
      "food: soup\nmethod: oven\npressure: 10 psi\naltitude: 12000 ft\n",
      "ingredients: [3 lb venison, 2 cups corn, 1 cup flour]\nmethod: pressure\n",
      "food: corn\nheld: {for: 5 h, at: 70 F}\ncanner: {quarts: 2}\nprepared: [thickened]\n"};
  for (const jarproof::process& p : rules.processes) {
    std::map<std::string, std::string> keys = fixtures::beans();
    keys["food"] = std::string(p.id);
    keys["title"] =
        "A rather long title for one batch of " + std::string(p.title) + ", first picking";
    out.push_back(fixtures::plan_text(keys));
    out.push_back(fixtures::plan_text(keys, {{"time", "200 min"}, {"gauge", ""}, {"pack", "hot"}}));
    out.push_back(fixtures::plan_text(
        keys, {{"jar", "half-gallon"}, {"pressure", "69 kPa"}, {"headspace", "5 mm"}}));
    out.push_back(
        fixtures::plan_text(keys, {{"altitude", ""}, {"jar", "500 mL"}, {"as-published", "true"}}));
  }
  return out;
}

}  // namespace

TEST_SUITE_BEGIN("report");

TEST_CASE("the verdict stands first, in words") {
  struct shown {
    verdict v;
    std::string_view word;
  };
  for (const shown& s :
       {shown{verdict::accepted, "ACCEPTED"}, shown{verdict::rejected, "REJECTED"},
        shown{verdict::untested, "UNTESTED"}, shown{verdict::incomplete, "INCOMPLETE"},
        shown{verdict::unreadable, "UNREADABLE"}}) {
    const std::string text = text_of(bare_report(s.v), small_edition);
    CHECK(text.rfind(s.word, 0) == 0);
    CHECK(text.find("plan.yaml") != std::string::npos);
  }
}

TEST_CASE("no verdict says that a food is safe") {
  for (const verdict v : {verdict::accepted, verdict::rejected, verdict::untested,
                          verdict::incomplete, verdict::unreadable}) {
    const std::string text = text_of(bare_report(v), small_edition);
    CHECK(text.find("safe") == std::string::npos);
    CHECK(text.find("Safe") == std::string::npos);
  }
}

TEST_CASE("a finding tells its check, its place, what, why and what to do") {
  const std::string text = text_of(full_report(), small_edition, text_style{1'000, false});
  for (const std::string_view part :
       {"pressure-too-low", "plan.yaml:9:11 (pressure)", "The pressure is 10 psi",
        "Why: The water boils at a lower temperature", "Do: Put the 15 psi weight on.",
        "A made-up table, page 1-1"}) {
    CAPTURE(part);
    CHECK(text.find(part) != std::string::npos);
  }
}

TEST_CASE("the process is told in numbers, for both gauges") {
  const std::string text = text_of(full_report(), small_edition, text_style{1'000, false});
  for (const std::string_view part :
       {"Made-up beans", "4,600 ft (1,402 m)", "pint", "hot pack", "15 psi", "13 psi",
        "75 min (1 h 15 min)", "1 1/4 in (32 mm)", "10 min"}) {
    CAPTURE(part);
    CHECK(text.find(part) != std::string::npos);
  }
}

TEST_CASE("findings that decide stand above notes, the gravest first") {
  report r = bare_report(verdict::rejected);
  const auto add = [&](const char* check, jarproof::level l, jarproof::outcome o) {
    jarproof::finding f;
    f.check = check;
    f.level = l;
    f.outcome = o;
    f.message = "A message.";
    r.findings.push_back(f);
  };
  add("a-note", jarproof::level::note, jarproof::outcome::none);
  add("a-warning", jarproof::level::warning, jarproof::outcome::none);
  add("is-incomplete", jarproof::level::error, jarproof::outcome::incomplete);
  add("is-untested", jarproof::level::error, jarproof::outcome::untested);
  add("it-rejects", jarproof::level::error, jarproof::outcome::rejects);
  const std::string text = text_of(r, small_edition);
  std::size_t last = 0;
  for (const char* check : {"it-rejects", "is-untested", "is-incomplete", "a-warning", "a-note"}) {
    const std::size_t at = text.find(check);
    CAPTURE(text);
    REQUIRE(at != std::string::npos);
    CHECK(at > last);
    last = at;
  }
}

TEST_CASE("findings of one check stand together, with one lesson and one fix") {
  report r = bare_report(verdict::rejected);
  const auto add = [&](const char* check, const char* message, int line) {
    jarproof::finding f;
    f.check = check;
    f.level = jarproof::level::error;
    f.outcome = jarproof::outcome::rejects;
    f.line = line;
    f.message = message;
    f.why = "It is so. And more.";
    f.fix = "Leave it out.";
    r.findings.push_back(f);
  };
  add("fat-in-jar", "One. The same.", 1);
  add("egg-in-jar", "Two.", 2);
  add("fat-in-jar", "Three. The same.", 3);
  const std::string text = text_of(r, small_edition);
  const auto count = [&](std::string_view part) {
    int n = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
      ++n;
    return n;
  };
  CAPTURE(text);
  CHECK(count("fat-in-jar") == 1);
  CHECK(count("The same.") == 1);
  CHECK(count("It is so.") == 2);
  CHECK(count("Leave it out.") == 2);
  CHECK(text.find("Three.") < text.find("egg-in-jar"));
  CHECK(count("short form") == 0);
}

TEST_CASE("a long report is written in a short form that keeps every finding") {
  report r = bare_report(verdict::rejected);
  for (int i = 0; i < 8; ++i) {
    jarproof::finding f;
    f.check = "check-" + std::to_string(i);
    f.level = jarproof::level::error;
    f.outcome = i < 6 ? jarproof::outcome::rejects : jarproof::outcome::incomplete;
    f.message = "Message " + std::to_string(i) + ".";
    f.why = "The first sentence of this lesson is here. " + std::string(400, 'x') + ". The end.";
    f.fix = "Mend " + std::to_string(i) + ".";
    r.findings.push_back(f);
  }
  const std::string text = text_of(r, small_edition);
  CAPTURE(text);
  for (int i = 0; i < 8; ++i) {
    CHECK(text.find("Message " + std::to_string(i)) != std::string::npos);
    // What is only unsaid can wait until nothing refuses the plan.
    CHECK((text.find("Mend " + std::to_string(i)) != std::string::npos) == (i < 6));
  }
  CHECK(text.find("The first sentence of this lesson") != std::string::npos);
  CHECK(text.find("The end.") == std::string::npos);
  CHECK(text.find("jarproof why CHECK") != std::string::npos);
}

TEST_CASE("no line of a report is wider than 60 characters") {
  const jarproof::edition& rules = fixtures::loaded_edition();
  std::size_t count = 0;
  for (const std::string& plan : many_plans(rules)) {
    for (const report& r : reports_of(plan, rules)) {
      CHECK(too_wide(text_of(r, rules)) == "");
      ++count;
    }
  }
  CHECK(count > 100);
  CHECK(too_wide(jarproof::caution_text(rules)) == "");
}

TEST_CASE("another width holds too") {
  const jarproof::edition& rules = fixtures::loaded_edition();
  const report r = reports_of(many_plans(rules).back(), rules).front();
  for (const std::size_t width : {30U, 40U, 80U, 120U}) {
    CHECK(too_wide(text_of(r, rules, text_style{width, false}), width) == "");
  }
}

TEST_CASE("width counts characters, not bytes") {
  report r = bare_report(verdict::accepted);
  r.title = "";
  for (int i = 0; i < 60; ++i) r.title += "\u00F1\u00F1\u00F1\u00F1\u00F1 ";
  const std::string text = text_of(r, small_edition);
  CHECK(too_wide(text) == "");
  std::size_t widest = 0;
  for (const std::string& line : lines_of(text))
    widest = std::max(widest, jarproof::detail::characters(line));
  CHECK(widest > 54);
}

TEST_CASE("a word that is longer than a line stands on a line of its own") {
  report r = full_report();
  const std::string word(90, 'w');
  r.findings.front().message = "Before " + word + " behind it.";
  const auto lines = lines_of(text_of(r, small_edition));
  CHECK(std::find(lines.begin(), lines.end(), "  " + word) != lines.end());
}

TEST_CASE("no line ends with a blank and no text ends without a line end") {
  const jarproof::edition& rules = fixtures::loaded_edition();
  for (const std::string& plan : many_plans(rules)) {
    for (const report& r : reports_of(plan, rules)) {
      const std::string text = text_of(r, rules);
      CHECK(text.back() == '\n');
      CHECK(text.find(" \n") == std::string::npos);
      CHECK(text.find("\n\n\n") == std::string::npos);
    }
  }
}

TEST_CASE("without colour there is no escape code, with colour every one is closed") {
  const jarproof::edition& rules = fixtures::loaded_edition();
  for (const std::string& plan : many_plans(rules)) {
    for (const report& r : reports_of(plan, rules)) {
      const std::string bare = text_of(r, rules, text_style{60, false});
      std::string coloured = text_of(r, rules, text_style{60, true});
      CHECK(plain(bare));
      CHECK(coloured != bare);
      CHECK(without_codes(coloured));
      CHECK(coloured == bare);
    }
  }
}

TEST_CASE("what a plan says cannot steer the terminal") {
  const jarproof::edition& rules = fixtures::loaded_edition();
  for (const std::string_view plan :
       {"food: corn\ntitle: \"\\e[2J\\e[32mACCEPTED\"\n", "food: \"a\\rACCEPTED\"\n",
        "food: \"a\\u009b2Jb\"\n", "\"\\e[2Jfood\": corn\n", "food: corn\nacid: \"\\x07\\b\\b\"\n",
        "time: \"\\e[1A 5\"\n", "canner: {\"\\e[1A\": 7}\n", "food: \x1b[2J\n",
        "food: corn\nprepared: [\"\\x7f\"]\n",
        "food: corn\nfood: corn\n\"\\e[2J\": x\n\"\\e[2J\": y\n"}) {
    CAPTURE(plan);
    for (const report& r : reports_of(plan, rules)) CHECK(plain(text_of(r, rules)));
  }
}

TEST_CASE("the same report gives the same bytes as text") {
  const jarproof::edition& rules = fixtures::loaded_edition();
  for (const std::string& plan : many_plans(rules)) {
    const auto once = reports_of(plan, rules);
    const auto again = reports_of(plan, rules);
    REQUIRE(once.size() == again.size());
    for (std::size_t i = 0; i < once.size(); ++i)
      CHECK(text_of(once[i], rules) == text_of(again[i], rules));
  }
}

TEST_CASE("what is unreadable shows every mistake with its place and what to write") {
  const std::string text =
      text_of(reports_of("pack: warm\ntime: 85\n", small_edition).front(), small_edition);
  for (const std::string_view part :
       {"plan.yaml:1:7 (pack)", "`warm` is no pack", "write raw or hot", "plan.yaml:2:7 (time)",
        "`85` has no unit", "`85 min`"}) {
    CAPTURE(part);
    CHECK(text.find(part) != std::string::npos);
  }
}

TEST_CASE("the caution names the edition and its version") {
  const std::string text = jarproof::caution_text(small_edition);
  CHECK(text.find("it cannot see") != std::string::npos);
  CHECK(text.find("2015.1.1") != std::string::npos);
  CHECK(too_wide(text) == "");
}

TEST_CASE("every food's tables and every check's page are narrow and plain") {
  const jarproof::edition& rules = fixtures::loaded_edition();
  for (const jarproof::process& p : rules.processes) {
    for (const std::optional<int> altitude :
         {std::optional<int>(), std::optional<int>(4'600), std::optional<int>(12'000)}) {
      const std::string text = jarproof::find_text(p, rules, altitude);
      CHECK(too_wide(text) == "");
      CHECK(plain(text));
    }
  }
  for (const jarproof::check_rule& c : rules.checks) CHECK(plain(jarproof::why_text(c, rules)));
}

TEST_CASE("a name as wide as its column is still set apart from its value") {
  for (const std::string_view name : {"vent", "pint-and-half", "half-gallon", "pint-and-a-half"}) {
    jarproof::detail::text_writer w(text_style{});
    w.row(name, "75 min");
    CHECK(w.take().find(std::string(name) + "75") == std::string::npos);
  }
}

TEST_SUITE_END();

}  // namespace text_format_tests
