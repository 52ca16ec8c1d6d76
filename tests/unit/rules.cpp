// The rule folder as a whole: what is loaded, what is compiled in, its examples, folders of one's
// own. SPDX-License-Identifier: MIT
#include "jarproof/rules.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

#include "jarproof/builtin.hpp"
#include "jarproof/check.hpp"
#include "support/fixtures.hpp"

namespace rules_tests {
namespace {

using jarproof::rule_file;

const std::string build_update = "build the target `update`: cmake --build --preset update";

jarproof::owned_edition loaded(const std::vector<rule_file>& files) {
  const auto result = jarproof::load_edition(files);
  if (!result) FAIL(result.errors().front().file << ": " << result.errors().front().message);
  return *result;
}

std::string& text_of(std::vector<rule_file>& files, const std::string& name) {
  const auto at =
      std::find_if(files.begin(), files.end(), [&](const rule_file& f) { return f.name == name; });
  REQUIRE_MESSAGE(at != files.end(), name);
  return at->text;
}

std::vector<rule_file> with(const std::string& name, const std::string& from,
                            const std::string& to) {
  std::vector<rule_file> files = fixtures::rule_files();
  std::string& text = text_of(files, name);
  const std::size_t at = text.find(from);
  REQUIRE_MESSAGE(at != std::string::npos, "no `" << from << "` in " << name);
  text.replace(at, from.size(), to);
  return files;
}

/// The first line in which two texts differ, or nothing. The texts are too long to be printed.
std::string first_difference(const std::string& a, const std::string& b) {
  std::istringstream in_a(a);
  std::istringstream in_b(b);
  for (int line = 1;; ++line) {
    std::string of_a;
    std::string of_b;
    const bool more_a = static_cast<bool>(std::getline(in_a, of_a));
    const bool more_b = static_cast<bool>(std::getline(in_b, of_b));
    if (!more_a && !more_b) return a == b ? "" : "the line ends differ";
    if (more_a != more_b || of_a != of_b)
      return "line " + std::to_string(line) + ":\n" + of_a + "\n" + of_b;
  }
}

const char* okra_plan =
    "food: okra\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 25 "
    "min\naltitude: 4600 ft\n";

/// A copy of `rules` with one check put in the place of that with the same id.
struct edition_with_check {
  std::vector<jarproof::check_rule> checks;
  jarproof::edition view;

  edition_with_check(const jarproof::edition& rules, const jarproof::check_rule& changed)
      : checks(rules.checks.begin(), rules.checks.end()), view(rules) {
    for (jarproof::check_rule& c : checks) {
      if (c.id == changed.id) c = changed;
    }
    view.checks = {checks.data(), checks.size()};
  }
};

jarproof::check_rule check_named(std::string_view id) {
  const jarproof::check_rule* check = jarproof::find(fixtures::loaded_edition().checks, id);
  REQUIRE_MESSAGE(check != nullptr, id);
  return *check;
}

}  // namespace

TEST_SUITE_BEGIN("rules");

TEST_CASE("the edition of the rule folder is the built-in one") {
  const std::string difference =
      first_difference(jarproof::embedded_source(jarproof::builtin_edition()),
                       jarproof::embedded_source(fixtures::loaded_edition()));
  CHECK_MESSAGE(difference.empty(),
                build_update << "; built-in and rules/ differ in " << difference);
}

TEST_CASE("the committed source of the built-in edition is what the rule folder gives") {
  const std::string difference =
      first_difference(fixtures::file_text("lib/src/edition_builtin.cpp"),
                       jarproof::embedded_source(fixtures::loaded_edition()));
  CHECK_MESSAGE(difference.empty(), build_update
                                        << "; lib/src/edition_builtin.cpp and rules/ differ in "
                                        << difference);
}

TEST_CASE("an embedded text survives quotes and backslashes and line ends") {
  jarproof::edition rules;
  rules.name = "say \"no\"\\\nnew line";
  const std::string source = jarproof::embedded_source(rules);
  CHECK(source.find("\"say \\\"no\\\"\\\\\\nnew line\"") != std::string::npos);
}

TEST_CASE("an embedded text holds no bare carriage return that would end a line of C++") {
  jarproof::edition rules;
  rules.name = "return\rthere";
  const std::string source = jarproof::embedded_source(rules);
  CHECK(source.find('\r') == std::string::npos);
  CHECK(source.find("return") != std::string::npos);
}

TEST_CASE("the order in which files are given does not matter") {
  std::vector<rule_file> files = fixtures::rule_files();
  const std::string in_order = jarproof::embedded_source(loaded(files).view());
  std::reverse(files.begin(), files.end());
  CHECK(first_difference(in_order, jarproof::embedded_source(loaded(files).view())).empty());
  // Every file once in front.
  for (std::size_t by : {std::size_t{1}, std::size_t{7}, files.size() / 2, files.size() - 1}) {
    std::vector<rule_file> turned = files;
    std::rotate(turned.begin(), turned.begin() + static_cast<std::ptrdiff_t>(by), turned.end());
    CAPTURE(by);
    CHECK(first_difference(in_order, jarproof::embedded_source(loaded(turned).view())).empty());
  }
}

TEST_CASE("the order in which broken files are given does not matter") {
  std::vector<rule_file> files = with("processes/okra.yaml", "class: low-acid", "class: sour");
  text_of(files, "jars.yaml").replace(0, 0, "jar: none\n");
  const auto message_list = [](const std::vector<rule_file>& given) {
    const auto result = jarproof::load_edition(given);
    REQUIRE(!result);
    std::string out;
    for (const jarproof::problem& p : result.errors())
      out += p.file + ":" + std::to_string(p.line) + " " + p.message + "\n";
    return out;
  };
  const std::string in_order = message_list(files);
  CHECK(in_order ==
        "jars.yaml:1 `jar` is no key here\nprocesses/okra.yaml:5 `sour` is not known here\n");
  std::reverse(files.begin(), files.end());
  CHECK(message_list(files) == in_order);
}

TEST_CASE("windows line ends and a byte order mark give the same edition") {
  std::vector<rule_file> files = fixtures::rule_files();
  const std::string plain = jarproof::embedded_source(loaded(files).view());
  for (rule_file& f : files) {
    std::string text = "\xEF\xBB\xBF";
    for (const char c : f.text) text += c == '\n' ? std::string("\r\n") : std::string(1, c);
    f.text = text;
  }
  CHECK(first_difference(plain, jarproof::embedded_source(loaded(files).view())) == "");
}

TEST_CASE("a file given twice is refused") {
  std::vector<rule_file> files = fixtures::rule_files();
  files.push_back({"jars.yaml", text_of(files, "jars.yaml")});
  const auto result = jarproof::load_edition(files);
  REQUIRE(!result);
  REQUIRE(result.errors().size() == 1);
  CHECK(result.errors()[0].file == "jars.yaml");
  CHECK(result.errors()[0].line == 1);
  CHECK(result.errors()[0].message == "this rule file was given twice");
}

TEST_CASE("no files are no edition") {
  const auto result = jarproof::load_edition({});
  REQUIRE(!result);
  std::string files;
  for (const jarproof::problem& p : result.errors()) files += p.file + " ";
  CHECK(
      files ==
      "altitude.yaml edition.yaml jars.yaml methods.yaml processes sources.yaml vocabulary.yaml ");
}

TEST_CASE("a folder without a single process is no edition") {
  std::vector<rule_file> files = fixtures::rule_files();
  files.erase(std::remove_if(files.begin(), files.end(),
                             [](const rule_file& f) { return f.name.rfind("processes/", 0) == 0; }),
              files.end());
  const auto result = jarproof::load_edition(files);
  REQUIRE(!result);
  REQUIRE(result.errors().size() == 1);
  CHECK(result.errors()[0].message == "no process file was given");
}

TEST_CASE("a folder without a single check is no edition") {
  std::vector<rule_file> files = fixtures::rule_files();
  files.erase(std::remove_if(files.begin(), files.end(),
                             [](const rule_file& f) { return f.name.rfind("checks/", 0) == 0; }),
              files.end());
  CHECK(!jarproof::load_edition(files));
}

TEST_CASE("a process file with a title only gives every missing key and no crash") {
  std::vector<rule_file> files = fixtures::rule_files();
  files.push_back({"processes/cardoons.yaml", "title: cardoons\n"});
  const auto result = jarproof::load_edition(files);
  REQUIRE(!result);
  std::string messages;
  for (const jarproof::problem& p : result.errors()) {
    CHECK(p.file == "processes/cardoons.yaml");
    CHECK(p.line == 1);
    CHECK(p.column == 1);
    messages += p.message + "\n";
  }
  CAPTURE(messages);
  for (const std::string key : {"`id`", "`class`", "`recipe`", "`sources`", "`tables`"}) {
    CHECK_MESSAGE(messages.find(key + " is missing") != std::string::npos, key);
  }
}

TEST_CASE("every example of every check gives what it says") {
  const jarproof::problems differing = jarproof::run_examples(fixtures::loaded_edition());
  for (const jarproof::problem& p : differing)
    FAIL_CHECK(p.file << ": " << p.message << "; " << p.write);
  CHECK(differing.empty());
}

TEST_CASE("an example that gives something else is named") {
  jarproof::check_rule changed = check_named("pressure-too-low");
  REQUIRE(changed.good.size() >= 1);
  REQUIRE(changed.bad.size() >= 1);

  SUBCASE("a bad one at another place") {
    std::vector<jarproof::example> bad(changed.bad.begin(), changed.bad.end());
    const std::string_view wrong[] = {"99:1 pressure-too-low"};
    bad[0].expect = wrong;
    changed.bad = {bad.data(), bad.size()};
    const edition_with_check rules(fixtures::loaded_edition(), changed);
    const jarproof::problems differing = jarproof::run_examples(changed, rules.view);
    REQUIRE(differing.size() == 1);
    CHECK(differing[0].file == "checks/pressure-too-low.yaml");
    CHECK(differing[0].message.find("example \"" + std::string(bad[0].name) + "\" gives ") == 0);
    CHECK(differing[0].write == "it expects 99:1 pressure-too-low");
  }
  SUBCASE("a bad one that expects only other checks") {
    std::vector<jarproof::example> bad(changed.bad.begin(), changed.bad.end());
    const std::string_view other[] = {"1:1 over-required"};
    bad[0].expect = other;
    changed.bad = {bad.data(), bad.size()};
    const edition_with_check rules(fixtures::loaded_edition(), changed);
    const jarproof::problems differing = jarproof::run_examples(changed, rules.view);
    REQUIRE(differing.size() == 2);
    CHECK(differing[1].message ==
          "example \"" + std::string(bad[0].name) + "\" does not expect its own check");
    CHECK(differing[1].write == "add a `LINE:COLUMN pressure-too-low` entry");
  }
  SUBCASE("a good one that is bad") {
    std::vector<jarproof::example> good(changed.good.begin(), changed.good.end());
    good[0].plan = changed.bad[0].plan;
    changed.good = {good.data(), good.size()};
    const edition_with_check rules(fixtures::loaded_edition(), changed);
    const jarproof::problems differing = jarproof::run_examples(changed, rules.view);
    REQUIRE(differing.size() == 1);
    CHECK(differing[0].message.find("example \"" + std::string(good[0].name) +
                                    "\" is not good: ") == 0);
    CHECK(differing[0].message.find("pressure-too-low") != std::string::npos);
  }
  SUBCASE("a good one that is no plan") {
    std::vector<jarproof::example> good(changed.good.begin(), changed.good.end());
    good[0].plan = "food: [okra";
    changed.good = {good.data(), good.size()};
    const edition_with_check rules(fixtures::loaded_edition(), changed);
    const jarproof::problems differing = jarproof::run_examples(changed, rules.view);
    REQUIRE(differing.size() == 1);
    CHECK(differing[0].message.find("plan-unreadable") != std::string::npos);
  }
}

TEST_CASE("findings of an example are those with an outcome and those of its own check") {
  const jarproof::edition& rules = fixtures::loaded_edition();
  jarproof::example shown;
  shown.name = "okra";
  shown.plan = okra_plan;
  CHECK(jarproof::example_findings(check_named("pressure-too-low"), shown, rules).empty());
  // The same plan, asked on behalf of the reminders: they have no outcome, but they are its own.
  const auto own = jarproof::example_findings(check_named("step-reminder"), shown, rules);
  CHECK(own.size() >= 2);
  for (const std::string& line : own) CHECK(line.find(" step-reminder") != std::string::npos);
}

TEST_CASE("a copy of an edition keeps its data alive") {
  std::optional<jarproof::owned_edition> kept;
  std::string before;
  {
    const std::vector<rule_file> files = fixtures::rule_files();
    const auto result = jarproof::load_edition(files);
    REQUIRE(result);
    before = jarproof::embedded_source(result->view());
    kept = *result;
  }
  const jarproof::owned_edition second = *kept;
  kept.reset();
  CHECK(first_difference(before, jarproof::embedded_source(second.view())).empty());
  CHECK(jarproof::check(fixtures::plan_from(okra_plan), second.view()).verdict ==
        jarproof::verdict::accepted);
}

TEST_CASE("a folder of one's own changes a verdict") {
  const jarproof::plan plan = fixtures::plan_from(okra_plan);
  CHECK(jarproof::check(plan, loaded(fixtures::rule_files()).view()).verdict ==
        jarproof::verdict::accepted);

  const jarproof::owned_edition stricter =
      loaded(with("processes/okra.yaml", "{pint: 25,", "{pint: 30,"));
  const jarproof::report r = jarproof::check(plan, stricter.view());
  CHECK(r.verdict == jarproof::verdict::rejected);
  const jarproof::finding* short_time = fixtures::finding_of(r, "time-too-short");
  REQUIRE(short_time != nullptr);
  CHECK(short_time->found == "25 min");
  CHECK(short_time->required == "30 min");
  CHECK(short_time->line == 7);
  REQUIRE(r.required);
  CHECK(r.required->time_min == 30);
}

TEST_CASE("a table that is set to `use: no` makes a plan untested") {
  const jarproof::owned_edition doubted =
      loaded(with("processes/okra.yaml", "use: yes",
                  "use: no\n    note: Nobody could read these numbers again."));
  const jarproof::report r = jarproof::check(fixtures::plan_from(okra_plan), doubted.view());
  CHECK(r.verdict == jarproof::verdict::untested);
  const jarproof::finding* why = fixtures::finding_of(r, "table-not-verified");
  REQUIRE(why != nullptr);
  CHECK(why->message.find("Nobody could read these numbers again.") != std::string::npos);
}

TEST_CASE("a check taken out of a folder still objects") {
  std::vector<rule_file> files = fixtures::rule_files();
  files.erase(
      std::remove_if(files.begin(), files.end(),
                     [](const rule_file& f) { return f.name == "checks/time-too-short.yaml"; }),
      files.end());
  const jarproof::owned_edition rules = loaded(files);
  const std::string plan =
      std::string(okra_plan).replace(std::string(okra_plan).find("25 min"), 6, "24 min");
  CHECK(jarproof::check(fixtures::plan_from(plan), rules.view()).verdict ==
        jarproof::verdict::rejected);
}

TEST_SUITE_END();

}  // namespace rules_tests
