// No way has a number that `check` would not ask for: over all recipes of tests/corpus/open.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <string>
#include <vector>

#include "jarproof/ways.hpp"
#include "support/fixtures.hpp"
#include "support/readings.hpp"

namespace ways_numbers_tests {
namespace {

using jarproof::way;

const jarproof::edition& rules = jarproof::builtin_edition();

TEST_SUITE_BEGIN("ways");

/// The plan that asks `check` for one process in this kitchen, written anew.
jarproof::report asked(const jarproof::plan& what, const jarproof::process& p,
                       const jarproof::requirement& r, bool by_jar) {
  std::string yaml = "food: " + std::string(p.id) + "\nas-published: true\n";
  if (r.pack.find(' ') == std::string::npos) yaml += "pack: " + r.pack + "\n";
  yaml += "method: " + r.method + "\naltitude: " + what.altitude->text + "\n";
  yaml += "jar: " + (by_jar ? r.jar : what.jar->text) + "\n";
  if (!r.gauge.empty()) yaml += "gauge: " + r.gauge + "\n";
  if (r.pressure_psi) yaml += "pressure: " + std::to_string(*r.pressure_psi) + " psi\n";
  return fixtures::judged(yaml);
}

void check_numbers(const jarproof::plan& what, const jarproof::process* p,
                   const jarproof::way_numbers& n) {
  if (p == nullptr) return;
  CAPTURE(p->id);
  CHECK(jarproof::detail::usable(*p));
  const auto same = [&](const jarproof::requirement& r, bool by_jar) {
    CHECK(r.verified);
    // Lines that are a variant of a tested recipe may take more time, or a smaller jar, than a
    // frame.
    const bool frame = p->recipe == jarproof::recipe_kind::frame;
    const jarproof::report report = asked(what, *p, r, by_jar || frame);
    REQUIRE(report.required);
    const jarproof::requirement& q = *report.required;
    CHECK(q.method == r.method);
    CHECK(q.gauge == r.gauge);
    CHECK(q.pressure_psi == r.pressure_psi);
    CHECK((frame ? q.time_min <= r.time_min : q.time_min == r.time_min));
    CHECK(q.jar == r.jar);
    CHECK(q.headspace_thousandths_in == r.headspace_thousandths_in);
  };
  if (n.required) same(*n.required, false);
  for (const jarproof::requirement& r : n.by_jar) same(r, true);
}

TEST_CASE("every number of every way is what check requires for that process") {
  const std::string folder = std::string(JARPROOF_SOURCE_DIR) + "/tests/corpus/open";
  std::vector<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator(folder))
    names.push_back(entry.path().filename().string());
  std::sort(names.begin(), names.end());
  std::size_t numbers = 0;
  for (const std::string& name : names) {
    if (name.find(".yaml") == std::string::npos) continue;
    INFO(name);
    const jarproof::node root = fixtures::root_of(fixtures::file_text("tests/corpus/open/" + name));
    const jarproof::node* recipe = find(root, "recipe");
    const jarproof::node* settings = find(root, "plan");
    if (recipe == nullptr || settings == nullptr || find(root, "form")->text == "json-ld") continue;
    for (const char* jar : {"", "pint", "quart"}) {
      jarproof::document d;
      d.name = name;
      d.root.kind = jarproof::node_kind::map;
      for (const jarproof::member& m : settings->members) {
        if (*jar == '\0' || m.key != "jar") d.root.members.push_back(m);
      }
      d.root.members.push_back({"ingredients", 1, 1, *recipe});
      if (*jar != '\0') {
        jarproof::node value;
        value.kind = jarproof::node_kind::scalar;
        value.text = jar;
        d.root.members.push_back({"jar", 1, 1, value});
      }
      const auto what = jarproof::read_plan(d);
      if (!what || !what->altitude || !what->jar) continue;
      const std::vector<way> all = jarproof::ways_of(*what, rules);
      REQUIRE_FALSE(all.empty());
      CHECK(all.back().kind == "freezer");
      for (const way& w : all) {
        check_numbers(*what, w.process, w.numbers);
        numbers += w.numbers.required ? 1 : 0;
        for (const jarproof::way_part& p : w.parts) check_numbers(*what, p.process, p.numbers);
        for (const std::string& c : w.changes) CHECK(c.find(" safe") == std::string::npos);
      }
    }
  }
  CHECK(numbers >= 50);
}

TEST_SUITE_END();

}  // namespace
}  // namespace ways_numbers_tests
