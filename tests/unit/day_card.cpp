// The step card, the label and what comes after. Boiling before tasting: USDA Complete Guide to
// Home Canning, part 1 (10 min below 1,000 ft, a minute more for each further 1,000 ft). Empty
// jars: the same part (boiled 10 min and a minute for each further 1,000 ft, under a process of 10
// min). SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

#include "jarproof/day_of.hpp"
#include "support/fixtures.hpp"

namespace day_card_tests {
namespace {

const jarproof::edition& rules = jarproof::builtin_edition();

bool has_step(const jarproof::day_batch& b, const std::string& id) {
  return std::any_of(b.steps.begin(), b.steps.end(),
                     [&](const jarproof::day_step& s) { return s.id == id; });
}
std::size_t count_steps(const jarproof::day_batch& b, std::initializer_list<const char*> ids) {
  std::size_t out = 0;
  for (const char* id : ids) out += has_step(b, id) ? 1 : 0;
  return out;
}
std::string step(const jarproof::day_batch& b, const std::string& id) {
  for (const jarproof::day_step& s : b.steps) {
    if (s.id == id) return s.says;
  }
  return {};
}
std::string label(const jarproof::day_batch& b, const std::string& name) {
  for (const jarproof::day_label_line& l : b.label) {
    if (l.name == name) return l.value;
  }
  return {};
}
jarproof::day_batch day(const std::map<std::string, std::string>& changes,
                        const std::map<std::string, std::string>& base = fixtures::beans()) {
  jarproof::day_plan d =
      jarproof::day_of(fixtures::plan_from(fixtures::plan_text(base, changes)), rules);
  return d.batches.front();
}
std::map<std::string, std::string> juice() {
  return {{"food", "apple juice"}, {"as-published", "true"},    {"pack", "hot"},
          {"jar", "pint"},         {"method", "boiling-water"}, {"time", "10 min"},
          {"altitude", "4600 ft"}};
}

/// Every step of a card that must be there, whatever the method.
void check_complete(const jarproof::day_batch& b) {
  const std::string method = b.judged.required->method;
  for (const char* id : {"wash-jars", "jars-hot", "lids-ready", "bubbles", "rims", "lids-on",
                         "load", "lift", "cool", "check", "label", "store"})
    CHECK_MESSAGE(has_step(b, id), id);
  CHECK(count_steps(b, {"fill-hot", "fill-raw"}) >= 1);
  CHECK(count_steps(b, {"canner-water", "canner-water-own", "canner-water-boiling",
                        "canner-water-steam", "canner-water-low"}) == 1);
  CHECK(count_steps(b, {"start-dial", "start-weight", "start-pressure", "start-boil", "start-steam",
                        "start-low"}) == 1);
  CHECK(count_steps(b, {"hold-pressure", "hold-boil", "hold-steam", "hold-low"}) == 1);
  CHECK(count_steps(b, {"rest-pressure", "rest-boiling", "rest-other"}) == 1);
  if (method == "pressure")
    CHECK(count_steps(b, {"close-lid", "vent", "close-vent", "heat-off-pressure"}) == 4);
  if (method == "boiling-water") CHECK(count_steps(b, {"cover-water", "cover-water-long"}) == 1);
  CHECK(has_step(b, "acid") == !b.judged.process->acids.empty());
  CHECK(has_step(b, "food") == !b.judged.process->conditions.empty());
  CHECK(b.cautions.size() >= 4);
  CHECK(b.check_after.size() >= 4);
  CHECK(b.opening.size() >= 2);
  for (const auto* part : {&b.steps, &b.cautions, &b.check_after, &b.opening}) {
    for (const jarproof::day_step& s : *part) {
      CAPTURE(s.id);
      CHECK_FALSE(s.says.empty());
      CHECK(s.says.find_first_of("{}?") == std::string::npos);
      CHECK(s.says.find("  ") == std::string::npos);
      CHECK((!s.sources.empty() || !s.evidence.empty()));
    }
  }
  const std::string minutes = std::to_string(b.judged.required->time_min) + " min";
  CHECK(label(b, "process").find(minutes) != std::string::npos);
  CHECK_FALSE(label(b, "food").empty());
  CHECK_FALSE(label(b, "altitude").empty());
  CHECK_FALSE(label(b, "rules").empty());
}

TEST_SUITE_BEGIN("day");

// The numbers that `check` asks for are put into the plan, so that each process is accepted as it
// is published: at both ends of the low bands and in the mountain kitchen.
TEST_CASE("every process that can be accepted gets a complete step card") {
  std::size_t cards = 0;
  std::set<std::string_view> foods;
  for (const jarproof::process& p : rules.processes) {
    for (const jarproof::table& t : p.tables) {
      if (!t.use) continue;
      for (const jarproof::jar_minutes& jar : t.minutes) {
        for (const char* altitude : {"800 ft", "4600 ft"}) {
          for (const char* method : {"pressure", "boiling-water", "steam", "low-temperature"}) {
            for (const char* gauge : {"dial", "weighted"}) {
              const bool pressure = std::string(method) == "pressure";
              if (!pressure && std::string(gauge) == "weighted") continue;
              if (pressure != t.boiling_water.empty()) continue;
              if (pressure && (std::string(gauge) == "dial" ? t.dial : t.weighted).empty())
                continue;
              std::map<std::string, std::string> keys{{"food", std::string(p.id)},
                                                      {"as-published", "true"},
                                                      {"form", std::string(t.forms[0])},
                                                      {"pack", std::string(t.pack)},
                                                      {"jar", std::string(jar.jar)},
                                                      {"method", method},
                                                      {"altitude", altitude}};
              if (pressure) keys["gauge"] = gauge;
              const jarproof::report asked = fixtures::judged(fixtures::plan_text(keys));
              if (!asked.required || asked.required->method != method) continue;
              keys["time"] = std::to_string(asked.required->time_min) + " min";
              if (asked.required->pressure_psi)
                keys["pressure"] = std::to_string(*asked.required->pressure_psi) + " psi";
              if (asked.required->least_f)
                keys["temperature"] = std::to_string(*asked.required->least_f) + " F";
              keys["jars"] = "3";
              keys["canner"] = "{quarts: 7, pints: 9}";
              jarproof::day_plan d =
                  jarproof::day_of(fixtures::plan_from(fixtures::plan_text(keys)), rules);
              const jarproof::day_batch& b = d.batches.front();
              if (b.judged.verdict != jarproof::verdict::accepted) {
                CHECK(b.steps.empty());
                CHECK(d.loads.empty());
                continue;
              }
              CAPTURE(p.id);
              CAPTURE(method);
              CAPTURE(jar.jar);
              check_complete(b);
              const bool listed = jar.jar != "half-gallon";
              CHECK(d.loads.size() == (listed ? 1 : 0));
              ++cards;
              foods.insert(p.id);
            }
          }
        }
      }
    }
  }
  CHECK(cards > 900);
  for (const jarproof::process& p : rules.processes) {
    const bool used = std::any_of(p.tables.begin(), p.tables.end(),
                                  [](const jarproof::table& t) { return t.use; });
    CHECK_MESSAGE((!used || foods.count(p.id) == 1), p.id);
  }
}

TEST_CASE("the order of the card is the order of the work") {
  const jarproof::day_batch b = day({});
  std::vector<std::string> ids;
  for (const jarproof::day_step& s : b.steps) ids.push_back(s.id);
  const auto at = [&](const char* id) {
    return std::find(ids.begin(), ids.end(), id) - ids.begin();
  };
  const char* order[] = {"jars-hot",      "canner-water",
                         "food",          "fill-raw",
                         "bubbles",       "rims",
                         "lids-on",       "load",
                         "close-lid",     "vent",
                         "close-vent",    "start-weight",
                         "hold-pressure", "heat-off-pressure",
                         "rest-pressure", "lift",
                         "cool",          "check",
                         "label",         "store"};
  for (std::size_t i = 0; i + 1 < std::size(order); ++i) {
    CAPTURE(order[i]);
    CHECK(at(order[i]) < at(order[i + 1]));
  }
}

TEST_CASE("the card has this plan's numbers") {
  const jarproof::day_batch b = day({{"vent", "12 min"}, {"time", "25 min"}});
  CHECK(step(b, "vent").find("vent 12 minutes") != std::string::npos);
  CHECK(step(b, "hold-pressure").find("15 psi (103 kPa) for 25 min") != std::string::npos);
  CHECK(step(b, "fill-raw").find("1 in (25 mm)") != std::string::npos);
  CHECK(step(b, "canner-water").find("140 F") != std::string::npos);
  CHECK(step(day({{"pack", "hot"}}), "canner-water").find("180 F") != std::string::npos);
}

TEST_CASE("a dial that reads high is held at what it has to show") {
  auto dial = fixtures::dial_beans();
  const jarproof::day_batch b = day({{"gauge-error", "+1 psi"}, {"pressure", "14 psi"}}, dial);
  REQUIRE(b.judged.verdict == jarproof::verdict::accepted);
  CHECK(step(b, "start-dial").find("14 psi (97 kPa)") != std::string::npos);
  const jarproof::day_batch metric = day({{"pressure", "90 kPa"}}, dial);
  CHECK(step(metric, "start-dial").find("shows 90 kPa") != std::string::npos);
}

TEST_CASE("empty jars are boiled only for a process under ten minutes") {
  // Apple juice, pints, at 0 to 1,000 ft: 5 min (USDA guide, part 2).
  const jarproof::day_batch low = day({{"altitude", "800 ft"}, {"time", "5 min"}}, juice());
  REQUIRE(low.judged.verdict == jarproof::verdict::accepted);
  CHECK(step(low, "sterilize-jars").find("for 10 minutes") != std::string::npos);
  CHECK(step(day({{"time", "10 min"}}, juice()), "sterilize-jars").empty());
}

TEST_CASE("minutes of boiling before tasting at both sides of each thousand feet") {
  const auto minutes = [](int feet) { return jarproof::detail::boiling_minutes(rules, feet); };
  CHECK(minutes(0) == 10);
  CHECK(minutes(999) == 10);
  CHECK(minutes(1'000) == 11);
  CHECK(minutes(1'001) == 12);
  CHECK(minutes(2'000) == 12);
  CHECK(minutes(4'600) == 15);
  CHECK(minutes(5'000) == 15);
  CHECK(minutes(5'200) == 16);
  CHECK(minutes(8'200) == 19);
}

TEST_CASE("low-acid food and tomatoes are boiled where there is doubt and plain fruit is not") {
  const auto boils = [](const jarproof::day_batch& b) {
    REQUIRE(b.judged.verdict == jarproof::verdict::accepted);
    return std::any_of(b.opening.begin(), b.opening.end(),
                       [](const jarproof::day_step& s) { return s.id == "boil-first"; });
  };
  CHECK(boils(day({})));
  CHECK(boils(day({}, {{"food", "chile salsa"},
                       {"as-published", "true"},
                       {"pack", "hot"},
                       {"jar", "pint"},
                       {"method", "boiling-water"},
                       {"time", "20 min"},
                       {"altitude", "4600 ft"}})));
  CHECK_FALSE(boils(day({}, juice())));
}

TEST_CASE("the label has the lot and both dates, or says that the date is missing") {
  const jarproof::day_batch b = day({{"date", "2028-02-29"}, {"lot", "beans-7"}});
  CHECK(label(b, "canned") == "2028-02-29");
  CHECK(label(b, "use first") == "by 2029-02-28, for quality");
  CHECK(label(b, "lot") == "beans-7");
  CHECK(label(b, "altitude") == "4,600 ft (1,402 m)");
  CHECK(label(b, "rules").find(std::string(rules.version)) != std::string::npos);
  const jarproof::day_batch none = day({});
  CHECK(label(none, "use first").empty());
  CHECK(std::count(none.unsaid.begin(), none.unsaid.end(),
                   "Dates of the label: the plan says no `date`.") == 1);
}

TEST_CASE("the label of a low-temperature batch has its temperature") {
  const jarproof::day_batch b = day({}, {{"food", "bread-and-butter pickles"},
                                         {"as-published", "true"},
                                         {"pack", "hot"},
                                         {"jar", "pint"},
                                         {"method", "low-temperature"},
                                         {"temperature", "180 F"},
                                         {"time", "30 min"},
                                         {"altitude", "4600 ft"}});
  CHECK(label(b, "process").find(", 180 to 185 F, 30 min, ") != std::string::npos);
  CHECK(label(day({}), "process").find(" F,") == std::string::npos);
}

TEST_CASE("rules without a canning day give no invented number") {
  jarproof::edition bare = rules;
  bare.day = {};
  const jarproof::day_plan d = jarproof::day_of(
      fixtures::plan_from(fixtures::plan_text(fixtures::beans(), {{"batch", "10 qt"}})), bare);
  CHECK(d.verdict == jarproof::verdict::accepted);
  CHECK_FALSE(d.batches[0].jars);
  CHECK(d.batches[0].steps.empty());
  CHECK(d.loads.empty());
}

TEST_CASE("every number and text of the day names its source or says that it has none") {
  const auto grounded = [](const auto& entries) {
    CHECK_FALSE(entries.empty());
    for (const auto& e : entries) {
      CAPTURE(e.id);
      CHECK((!e.sources.empty() || !e.evidence.empty()));
      for (const jarproof::citation& c : e.sources)
        CHECK(jarproof::find(rules.sources, c.ref) != nullptr);
      if (e.sources.empty()) {
        const bool told = e.evidence.find("no source") != std::string_view::npos ||
                          e.evidence.find("memory") != std::string_view::npos;
        CHECK(told);
      }
    }
  };
  grounded(rules.day.minutes);
  grounded(rules.day.numbers);
  grounded(rules.day.produce);
  grounded(rules.day.texts);
}

TEST_SUITE_END();

}  // namespace
}  // namespace day_card_tests
