// Canner loads of a day. Smallest load: Iowa State University Extension, Pressure Canner Load (2
// quarts or 4 pints, good practice of a jar maker). Times: USDA Complete Guide to Home Canning,
// part 3 (crushed tomatoes, quarts 55 min at 3,001 to 6,000 ft), part 2 (plums), part 4.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <numeric>
#include <string>
#include <vector>

#include "jarproof/day_of.hpp"
#include "support/fixtures.hpp"

namespace day_loads_tests {
namespace {

const jarproof::edition& rules = jarproof::builtin_edition();
using jarproof::detail::balanced;
using changes = std::map<std::string, std::string>;

jarproof::plan beans_plan(const changes& more) {
  return fixtures::plan_from(fixtures::plan_text(fixtures::beans(), more));
}
jarproof::day_plan beans_day(const changes& more) {
  return jarproof::day_of(beans_plan(more), rules);
}
std::string sizes(const jarproof::day_plan& d) {
  std::string out;
  for (const jarproof::day_load& l : d.loads)
    out += (out.empty() ? "" : "+") + std::to_string(l.jars);
  return out;
}
bool found(const jarproof::day_plan& d, const std::string& check) {
  for (const jarproof::day_batch& b : d.batches) {
    for (const jarproof::finding& f : b.findings) {
      if (f.check == check) return true;
    }
  }
  return false;
}

bool says(const jarproof::day_plan& d, const std::string& part) {
  for (const std::string& text : d.batches.front().unsaid) {
    if (text.find(part) != std::string::npos) return true;
  }
  return false;
}

/// What the label says about the process.
std::string process_of(const jarproof::day_batch& b) {
  for (const jarproof::day_label_line& l : b.label) {
    if (l.name == "process") return l.value;
  }
  return {};
}

/// Tomatoes of the mountain kitchen, in boiling water.
jarproof::plan tomatoes(const changes& more = {}) {
  return fixtures::plan_from(fixtures::plan_text({{"title", "Tomatoes"},
                                                  {"food", "crushed tomatoes"},
                                                  {"acid", "2 tbsp bottled lemon juice per quart"},
                                                  {"pack", "hot"},
                                                  {"jar", "quart"},
                                                  {"method", "boiling-water"},
                                                  {"time", "55 min"},
                                                  {"altitude", "4600 ft"},
                                                  {"jars", "8"},
                                                  {"canner", "{quarts: 7, pints: 9}"}},
                                                 more));
}
jarproof::plan salsa(const changes& more = {}) {
  return fixtures::plan_from(fixtures::plan_text({{"title", "Salsa"},
                                                  {"food", "chile salsa"},
                                                  {"as-published", "true"},
                                                  {"pack", "hot"},
                                                  {"jar", "pint"},
                                                  {"method", "boiling-water"},
                                                  {"time", "20 min"},
                                                  {"altitude", "4600 ft"},
                                                  {"jars", "12"},
                                                  {"canner", "{quarts: 7, pints: 9}"}},
                                                 more));
}

TEST_SUITE_BEGIN("day");

TEST_CASE("loads are as few as possible and never more than the canner holds and balanced") {
  for (int most = 1; most <= 24; ++most) {
    for (int jars = 0; jars <= 130; ++jars) {
      const std::vector<int> loads = balanced(jars, most);
      CHECK(std::accumulate(loads.begin(), loads.end(), 0) == jars);
      CHECK(static_cast<int>(loads.size()) == (jars + most - 1) / most);
      if (loads.empty()) continue;
      const auto [least, largest] = std::minmax_element(loads.begin(), loads.end());
      CHECK(*largest <= most);
      CHECK(*largest - *least <= 1);
      CHECK(std::is_sorted(loads.rbegin(), loads.rend()));
    }
  }
  CHECK(balanced(5, 0).empty());
}

TEST_CASE("23 pints in a canner for 9 are 8 and 8 and 7") {
  const auto d = beans_day({{"jars", "23"}, {"canner", "{quarts: 7, pints: 9}"}});
  CHECK(sizes(d) == "8+8+7");
  for (const jarproof::day_load& l : d.loads) {
    CHECK(l.holds == 9);
    CHECK_FALSE(l.half_full);
    CHECK(l.remarks.empty());
  }
}

TEST_CASE("two layers count only where the cook states them") {
  CHECK(sizes(beans_day({{"jars", "18"}, {"canner", "{quarts: 7, pints: 18}"}})) == "18");
  CHECK(sizes(beans_day({{"jars", "18"}, {"canner", "{quarts: 7, volume: 22 qt}"}})) == "6+6+6");
}

TEST_CASE("what the canner does not say is not guessed") {
  const auto quarts = beans_day({{"jar", "quart"},
                                 {"time", "25 min"},
                                 {"jars", "7"},
                                 {"canner", "{pints: 9, volume: 16 qt}"}});
  REQUIRE(quarts.verdict == jarproof::verdict::accepted);
  CHECK(quarts.loads.empty());
  CHECK(says(quarts, "does not say how many quart"));
  const auto none = beans_day({{"jars", "7"}});
  CHECK(none.loads.empty());
  CHECK(says(none, "does not say `canner`"));
}

TEST_CASE("a load that is half full or less is noted") {
  const auto half = beans_day({{"jars", "4"}, {"canner", "{quarts: 7, pints: 9}"}});
  REQUIRE(half.loads.size() == 1);
  CHECK(half.loads[0].half_full);
  REQUIRE(half.loads[0].remarks.size() == 1);
  CHECK_FALSE(half.loads[0].remarks[0].sources.empty());
  CHECK_FALSE(beans_day({{"jars", "5"}, {"canner", "{quarts: 7, pints: 9}"}}).loads[0].half_full);
}

TEST_CASE("fewer than 4 pints or 2 quarts in a pressure canner are a warning") {
  const changes canner{{"canner", "{quarts: 7, pints: 9}"}};
  const auto pints = [&](const char* jars) {
    changes all = canner;
    all["jars"] = jars;
    return found(beans_day(all), "load-small");
  };
  CHECK(pints("3"));
  CHECK_FALSE(pints("4"));
  const auto quarts = [&](const char* jars) {
    changes all = canner;
    all["jar"] = "quart";
    all["time"] = "25 min";
    all["jars"] = jars;
    return found(beans_day(all), "load-small");
  };
  CHECK(quarts("1"));
  CHECK_FALSE(quarts("2"));
  const auto boiling = jarproof::day_of(salsa({{"jars", "1"}}), rules);
  REQUIRE(boiling.loads.size() == 1);
  CHECK_FALSE(found(boiling, "load-small"));
  CHECK(boiling.verdict == jarproof::verdict::accepted);
}

// One quart and three pints are left over: longest time 55 min, of the tomatoes.
TEST_CASE("plans share a load where that saves one and all its jars get the longest time") {
  const auto d = jarproof::day_of({tomatoes(), salsa()}, rules);
  REQUIRE(d.verdict == jarproof::verdict::accepted);
  CHECK(sizes(d) == "7+9+4");
  const jarproof::day_load& shared = d.loads.back();
  CHECK(shared.parts.size() == 2);
  CHECK(shared.time_min == 55);
  CHECK(shared.holds == 7);  // a pint stands where a quart stands
  REQUIRE_FALSE(shared.remarks.empty());
  bool says_both = false;
  for (const jarproof::day_step& s : d.batches[1].steps)
    says_both = says_both || s.says.find("20 min (55 min in load 3)") != std::string::npos;
  CHECK(says_both);
  // 9 jars of the salsa got 20 minutes and 3 got 55; all jars of the tomatoes got 55.
  CHECK(process_of(d.batches[1]).find(", 20 min (55 min in load 3), ") != std::string::npos);
  CHECK(process_of(d.batches[0]).find(", 55 min, ") != std::string::npos);
}

TEST_CASE("plans keep apart where method or pressure or gauge or pack or canner differ") {
  const auto apart = [](const std::vector<jarproof::plan>& plans) {
    const auto d = jarproof::day_of(plans, rules);
    REQUIRE(d.verdict == jarproof::verdict::accepted);
    for (const jarproof::day_load& l : d.loads) CHECK(l.parts.size() == 1);
    return d.apart.empty() ? std::string() : d.apart.front();
  };
  const changes few{{"jars", "2"}, {"canner", "{quarts: 7, pints: 9}"}};
  CHECK(apart({salsa({{"jars", "2"}}), beans_plan(few)}).find("method") != std::string::npos);
  changes dial = few;
  dial["gauge"] = "dial";
  dial["pressure"] = "13 psi";
  CHECK(apart({beans_plan(few), beans_plan(dial)}).find("gauge") != std::string::npos);
  changes low = few;
  low["altitude"] = "900 ft";
  low["pressure"] = "10 psi";
  CHECK(apart({beans_plan(few), beans_plan(low)}).find("pressure") != std::string::npos);
  changes hot = few;
  hot["pack"] = "hot";
  CHECK(apart({beans_plan(few), beans_plan(hot)}).find("raw") != std::string::npos);
  CHECK(apart({salsa({{"jars", "2"}}), salsa({{"jars", "2"}, {"canner", "{pints: 8}"}})})
            .find("canner") != std::string::npos);
}

TEST_CASE("the highest pressure of the plans in a load counts") {
  // At 900 ft the table asks for 10 psi; one plan states 15.
  const changes low{{"altitude", "900 ft"},
                    {"pressure", "10 psi"},
                    {"jars", "2"},
                    {"canner", "{quarts: 7, pints: 9}"}};
  changes high = low;
  high["pressure"] = "15 psi";
  high["time"] = "22 min";
  const auto d = jarproof::day_of({beans_plan(low), beans_plan(high)}, rules);
  REQUIRE(d.verdict == jarproof::verdict::accepted);
  REQUIRE(d.loads.size() == 1);
  CHECK(d.loads[0].pressure == "15 psi (103 kPa)");
  CHECK(d.loads[0].time_min == 22);
  CHECK(process_of(d.batches[0]).find(", 15 psi (103 kPa), 22 min, ") != std::string::npos);
}

TEST_CASE("no load of several plans holds more than the canner and no jar is lost") {
  for (int quarts = 1; quarts <= 16; ++quarts) {
    for (int pints = 1; pints <= 20; pints += 3) {
      const auto d = jarproof::day_of(
          {tomatoes({{"jars", std::to_string(quarts)}}), salsa({{"jars", std::to_string(pints)}})},
          rules);
      int seen[2] = {0, 0};
      for (const jarproof::day_load& l : d.loads) {
        int sum = 0;
        for (const jarproof::day_load_part& p : l.parts) {
          seen[p.batch] += p.count;
          sum += p.count;
        }
        CHECK(sum == l.jars);
        CHECK(l.jars <= l.holds);
      }
      CHECK(seen[0] == quarts);
      CHECK(seen[1] == pints);
      CHECK(static_cast<int>(d.loads.size()) <= (quarts + 6) / 7 + (pints + 8) / 9);
    }
  }
}

TEST_CASE("a plan that is not accepted gets no load and no card and the other keeps its own") {
  const auto d = jarproof::day_of({tomatoes({{"time", "45 min"}}), salsa()}, rules);
  CHECK(d.verdict == jarproof::verdict::rejected);
  CHECK_FALSE(d.batches[0].jars);
  CHECK(d.batches[0].steps.empty());
  CHECK(d.batches[0].label.empty());
  CHECK(d.batches[0].opening.empty());
  CHECK(sizes(d) == "6+6");
  CHECK_FALSE(d.batches[1].steps.empty());
}

TEST_SUITE_END();

}  // namespace
}  // namespace day_loads_tests
