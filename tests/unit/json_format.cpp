// The report as JSON: well formed, in the order of its documentation, the same every time.
// SPDX-License-Identifier: MIT
#include "jarproof/format/json.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <ostream>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/words.hpp"
#include "jarproof/unreadable.hpp"
#include "support/readings.hpp"
#include "support/small_edition.hpp"

namespace json_format_tests {

using fixtures::bare_report;
using fixtures::full_report;
using fixtures::small_edition;
using jarproof::find;
using jarproof::json_line_of;
using jarproof::json_of;
using jarproof::node;
using jarproof::node_kind;
using jarproof::report;
using jarproof::scalar_style;
using jarproof::verdict;

namespace {

node parsed(const std::string& json) { return fixtures::root_of(json, "report.json"); }

/// Key names of `map` that are documented, in the order in which they are written.
std::vector<std::string> documented(const node& map, const std::vector<std::string>& keys) {
  std::vector<std::string> out;
  for (const jarproof::member& m : map.members) {
    if (std::find(keys.begin(), keys.end(), m.key) != keys.end()) out.push_back(m.key);
  }
  return out;
}

report unreadable() {
  return jarproof::unreadable_report(
      "plans.jsonl:7", {{"plans.jsonl:7", 0, 0, "time", "`75` has no unit", "write `75 min`"}},
      small_edition);
}

}  // namespace

TEST_SUITE_BEGIN("report");

TEST_CASE("the class of a mixture stands before its lines, and only where one was judged") {
  report r = full_report();
  CHECK(find(parsed(json_line_of(r)), "mixture_class") == nullptr);
  r.mixture_class = "low-acid";
  const node plan = parsed(json_line_of(r));
  REQUIRE(find(plan, "mixture_class") != nullptr);
  CHECK(find(plan, "mixture_class")->text == "low-acid");
  CHECK(documented(plan, {"options", "mixture_class", "ingredients"}) ==
        std::vector<std::string>{"options", "mixture_class", "ingredients"});
}

TEST_CASE("reports of every kind are JSON that can be read again") {
  const std::vector<report> reports = {full_report(), bare_report(verdict::accepted),
                                       bare_report(verdict::untested),
                                       bare_report(verdict::incomplete), unreadable()};
  const node root = parsed(json_of(reports, small_edition));
  CHECK(root.kind == node_kind::map);
  CHECK(find(root, "plans")->items.size() == reports.size());
  for (const report& r : reports) CHECK(parsed(json_line_of(r)).kind == node_kind::map);
}

TEST_CASE("a run without plans is JSON too") {
  const node root = parsed(json_of({}, small_edition));
  CHECK(find(root, "plans")->kind == node_kind::sequence);
  CHECK(find(root, "plans")->items.empty());
}

TEST_CASE("keys stand in the documented order and none of them is left out") {
  using keys = std::vector<std::string>;
  const node root = parsed(json_of({full_report()}, small_edition));
  const keys top = {"format", "library", "edition", "plans", "summary"};
  CHECK(documented(root, top) == top);
  const keys edition = {"name", "version"};
  CHECK(documented(*find(root, "edition"), edition) == edition);
  const keys summary = {"accepted", "rejected", "untested", "incomplete", "unreadable"};
  CHECK(documented(*find(root, "summary"), summary) == summary);
  const node& plan = find(root, "plans")->items.front();
  const keys plan_keys = {"source",   "title",   "verdict",     "process",
                          "required", "options", "ingredients", "findings"};
  CHECK(documented(plan, plan_keys) == plan_keys);
  const keys required = {"method", "gauge", "pressure_psi", "time_min",
                         "pack",   "jar",   "headspace_in", "vent_min"};
  CHECK(documented(*find(plan, "required"), required) == required);
  CHECK(documented(find(plan, "options")->items.front(), required) == required);
  const keys line = {"line", "text", "ingredient", "amount", "class", "traits"};
  for (const node& item : find(plan, "ingredients")->items) CHECK(documented(item, line) == line);
  const keys finding = {"check", "level",    "outcome", "field", "line", "column",
                        "found", "required", "message", "why",   "fix",  "sources"};
  CHECK(documented(find(plan, "findings")->items.front(), finding) == finding);
}

TEST_CASE("the head names the layout, the library and the edition") {
  const node root = parsed(json_of({}, small_edition));
  CHECK(find(root, "format")->text == "jarproof-report/1");
  CHECK(find(root, "library")->text == jarproof::library_version);
  CHECK(find(*find(root, "edition"), "name")->text == "small \"tables\"");
  CHECK(find(*find(root, "edition"), "version")->text == "2015.1.1");
}

TEST_CASE("values come through as they are, numbers as numbers") {
  const node plan = parsed(json_line_of(full_report()));
  CHECK(find(plan, "verdict")->text == "rejected");
  CHECK(find(plan, "process")->text == "made-up-beans");
  const node& required = *find(plan, "required");
  CHECK(find(required, "pressure_psi")->text == "15");
  CHECK(find(required, "pressure_psi")->style == scalar_style::plain);
  CHECK(find(required, "time_min")->text == "75");
  CHECK(find(required, "headspace_in")->text == "1.25");
  CHECK(find(required, "headspace_in")->style == scalar_style::plain);
  CHECK(find(find(plan, "options")->items.front(), "pressure_psi")->text == "13");
  const node& finding = find(plan, "findings")->items.front();
  CHECK(find(finding, "level")->text == "error");
  CHECK(find(finding, "outcome")->text == "rejects");
  CHECK(find(finding, "line")->text == "9");
  CHECK(find(finding, "found")->text == "10 psi");
  CHECK(find(finding, "sources")->items.front().text == "A made-up table, page 1-1");
}

TEST_CASE("what there is not is null") {
  const node plan = parsed(json_line_of(bare_report(verdict::untested)));
  CHECK(find(plan, "process")->kind == node_kind::null);
  CHECK(find(plan, "required")->kind == node_kind::null);
  CHECK(find(plan, "options")->items.empty());
  const node full = parsed(json_line_of(full_report()));
  const node& unknown = find(full, "ingredients")->items.back();
  CHECK(find(unknown, "ingredient")->kind == node_kind::null);
  CHECK(find(unknown, "class")->kind == node_kind::null);
  CHECK(find(find(full, "ingredients")->items.front(), "class")->text == "low-acid");
}

TEST_CASE("a finding without a line has no line and no column") {
  const node note = find(parsed(json_line_of(full_report())), "findings")->items.back();
  CHECK(find(note, "line") == nullptr);
  CHECK(find(note, "column") == nullptr);
}

TEST_CASE("a process without a gauge or a pressure says nothing of either") {
  report r = full_report();
  r.required->gauge.clear();
  r.required->pressure_psi.reset();
  r.required->vent_min.reset();
  const node required = *find(parsed(json_line_of(r)), "required");
  CHECK(find(required, "gauge") == nullptr);
  CHECK(find(required, "pressure_psi") == nullptr);
  CHECK(find(required, "vent_min") == nullptr);
}

TEST_CASE("what is no plan is answered in its place") {
  const node plan = parsed(json_line_of(unreadable()));
  REQUIRE(plan.members.size() == 3);
  CHECK(plan.members[0].key == "source");
  CHECK(plan.members[0].value.text == "plans.jsonl:7");
  CHECK(plan.members[1].key == "verdict");
  CHECK(plan.members[1].value.text == "unreadable");
  CHECK(plan.members[2].key == "findings");
  const node& finding = plan.members[2].value.items.front();
  CHECK(find(finding, "check")->text == "plan-unreadable");
  CHECK(find(finding, "field")->text == "time");
}

TEST_CASE("the summary counts the verdicts") {
  std::vector<report> reports = {full_report(), full_report(), bare_report(verdict::accepted),
                                 bare_report(verdict::untested), unreadable()};
  const node summary = *find(parsed(json_of(reports, small_edition)), "summary");
  CHECK(find(summary, "accepted")->text == "1");
  CHECK(find(summary, "rejected")->text == "2");
  CHECK(find(summary, "untested")->text == "1");
  CHECK(find(summary, "incomplete")->text == "0");
  CHECK(find(summary, "unreadable")->text == "1");
}

TEST_CASE("control characters, quotes and backslashes are escaped and come through") {
  std::string all;
  for (int byte = 0; byte < 0x80; ++byte) all.push_back(static_cast<char>(byte));
  all += "\u00BD \u20AC \U0001F96B \u2028";
  report r = full_report();
  r.title = all;
  r.findings.front().message = all;
  r.ingredients.front().text = all;
  r.source = all;
  const std::string json = json_line_of(r);
  for (const char c : json) CHECK(static_cast<unsigned char>(c) >= 0x20);
  const node plan = parsed(json);
  CHECK(find(plan, "title")->text == all);
  CHECK(find(plan, "source")->text == all);
  CHECK(find(find(plan, "findings")->items.front(), "message")->text == all);
  CHECK(find(find(plan, "ingredients")->items.front(), "text")->text == all);
}

TEST_CASE("a file name that is no UTF-8 leaves the report UTF-8 (RFC 8259, section 8.1)") {
  report r = full_report();
  r.source = "caf\xE9.yaml";
  const std::string json = json_of({r}, small_edition);
  CHECK(jarproof::detail::invalid_utf8(json) == std::string::npos);
}

TEST_CASE("a report on one line is one line") {
  CHECK(json_line_of(full_report()).find('\n') == std::string::npos);
  CHECK(json_line_of(unreadable()).find('\n') == std::string::npos);
}

TEST_CASE("all reports end with one line end, indented by blanks only") {
  const std::string json = json_of({full_report(), unreadable()}, small_edition);
  CHECK(json.back() == '\n');
  CHECK(json[json.size() - 2] == '}');
  CHECK(json.find('\t') == std::string::npos);
  CHECK(json.find('\r') == std::string::npos);
  CHECK(json.find(" \n") == std::string::npos);
}

TEST_CASE("a plan is the same on a line of its own as in the list") {
  const report r = full_report();
  const node alone = parsed(json_line_of(r));
  const node listed = find(parsed(json_of({r}, small_edition)), "plans")->items.front();
  REQUIRE(alone.members.size() == listed.members.size());
  for (std::size_t i = 0; i < alone.members.size(); ++i) {
    CHECK(alone.members[i].key == listed.members[i].key);
    CHECK(alone.members[i].value.text == listed.members[i].value.text);
    CHECK(alone.members[i].value.items.size() == listed.members[i].value.items.size());
  }
}

TEST_CASE("the same reports give the same bytes as JSON") {
  CHECK(json_of({full_report(), unreadable()}, small_edition) ==
        json_of({full_report(), unreadable()}, small_edition));
  CHECK(json_line_of(full_report()) == json_line_of(full_report()));
}

TEST_SUITE_END();

}  // namespace json_format_tests
