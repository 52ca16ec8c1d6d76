// What a check decides, plan by plan. Numbers: USDA Complete Guide to Home Canning (2015), part 4,
// page 4-8 (snap beans: pints 20 min, quarts 25 min, raw or hot; dial 11/12/13/14 psi to
// 2,000/4,000/6,000/8,000 ft, weighted 10 psi to 1,000 ft and 15 above; 1 in headspace), and
// part 5, page 5-6 (meat in cubes: pints 75, quarts 90), unless a test names another.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "support/fixtures.hpp"

namespace check_tests {
namespace {

using fixtures::beans;
using fixtures::beans_with;
using fixtures::dial_beans;
using fixtures::finding_of;
using fixtures::has;
using fixtures::judged;
using fixtures::plan_text;
using jarproof::outcome;
using jarproof::verdict;
using keys = std::map<std::string, std::string>;

TEST_SUITE("check") {
  TEST_CASE("a plan that matches a published process is accepted, and the report says which") {
    const jarproof::report r = beans_with({});
    CHECK(r.verdict == verdict::accepted);
    REQUIRE(r.process != nullptr);
    CHECK(r.process->id == "beans-snap");
    REQUIRE(r.required);
    CHECK(r.required->pressure_psi == 15);
    CHECK(r.required->time_min == 20);
    CHECK(r.required->gauge == "weighted");
    CHECK(r.required->jar == "pint");
    CHECK(r.required->pack == "raw");
    CHECK(r.required->headspace_thousandths_in == 1000);
    CHECK(r.required->vent_min == 10);
    REQUIRE(r.options.size() == 1);
    CHECK(r.options[0].gauge == "dial");
    CHECK(r.options[0].pressure_psi == 13);
    REQUIRE_FALSE(r.required->sources.empty());
    CHECK(r.required->sources[0].find("page 4-8") != std::string::npos);
  }

  TEST_CASE("the verdict is the worst outcome, in the order of the contract") {
    CHECK(beans_with({{"time", "19 min"}, {"altitude", ""}}).verdict == verdict::rejected);
    CHECK(beans_with({{"food", "artichoke hearts"}, {"altitude", ""}}).verdict ==
          verdict::untested);
    CHECK(beans_with({{"altitude", ""}}).verdict == verdict::incomplete);
  }

  TEST_CASE("findings stand in the order of the plan, and reports are the same each time") {
    const std::string text =
        plan_text(beans(), {{"time", "10 min"}, {"pressure", "5 psi"}, {"vent", "2 min"}});
    const jarproof::report a = judged(text);
    const jarproof::report b = judged(text);
    CHECK(jarproof::json_line_of(a) == jarproof::json_line_of(b));
    CHECK(std::is_sorted(a.findings.begin(), a.findings.end(), [](const auto& x, const auto& y) {
      return std::tie(x.line, x.column, x.check) < std::tie(y.line, y.column, y.check);
    }));
  }

  TEST_CASE("every finding says what, why, what to do and where it is written") {
    const jarproof::report r = beans_with({{"time", "10 min"},
                                           {"pressure", "10 psi"},
                                           {"headspace", "1/2 in"},
                                           {"jar", "half-gallon"}});
    for (const jarproof::finding& f : r.findings) {
      INFO(f.check);
      CHECK_FALSE(f.message.empty());
      CHECK_FALSE(f.why.empty());
      CHECK_FALSE(f.fix.empty());
      CHECK_FALSE(f.sources.empty());
      CHECK(f.line > 0);
      CHECK((f.outcome == outcome::none || f.level == jarproof::level::error));
      for (const std::string* s : {&f.message, &f.why, &f.fix})
        CHECK(s->find('{') == std::string::npos);
    }
  }

  TEST_CASE("low-acid food in boiling water or steam is rejected whatever else holds") {
    for (const char* method : {"boiling-water", "water bath", "steam", "low-temperature"}) {
      const jarproof::report r = beans_with({{"method", method}, {"time", "600 min"}});
      INFO(method);
      CHECK(r.verdict == verdict::rejected);
      const jarproof::finding* f = finding_of(r, "low-acid-needs-pressure");
      REQUIRE(f != nullptr);
      CHECK(f->why.find("botulism") != std::string::npos);
      REQUIRE(r.required);
      CHECK(r.required->method == "pressure");
    }
    // The name fits two foods, but both are low-acid.
    CHECK(has(beans_with({{"food", "chicken"}, {"method", "boiling-water"}}),
              "low-acid-needs-pressure"));
    CHECK(beans_with({{"food", "chicken"}, {"method", "boiling-water"}}).verdict ==
          verdict::rejected);
  }

  TEST_CASE("refused methods get their own reason, unknown ones are not accepted either") {
    for (const jarproof::method& m : jarproof::builtin_edition().methods) {
      if (m.accepted) continue;
      const jarproof::report r = beans_with({{"method", std::string(m.id)}});
      const jarproof::finding* f = finding_of(r, "method-not-accepted");
      INFO(m.id);
      REQUIRE(f != nullptr);
      CHECK(f->outcome == outcome::rejects);
      CHECK((f->message + f->why + f->fix).find(std::string(m.why).substr(0, 20)) !=
            std::string::npos);
    }
    const jarproof::report typo = beans_with({{"method", "presure"}});
    REQUIRE(has(typo, "method-not-accepted"));
    const jarproof::finding* f = finding_of(typo, "method-not-accepted");
    CHECK((f->message + f->fix).find("`pressure`") != std::string::npos);
    CHECK(typo.verdict == verdict::rejected);
  }

  TEST_CASE("every critical fact left out makes the plan incomplete and is named") {
    for (const char* key : {"food", "jar", "method", "gauge", "pressure", "time", "altitude"}) {
      const jarproof::report r = judged(plan_text(dial_beans(), {{key, ""}}));
      INFO(key);
      CHECK(r.verdict == verdict::incomplete);
      const bool named =
          std::any_of(r.findings.begin(), r.findings.end(), [&](const jarproof::finding& f) {
            return f.check == "fact-missing" && f.field == key && f.outcome == outcome::incomplete;
          });
      CHECK(named);
    }
  }

  TEST_CASE("a missing fact does no harm where the plan holds for every value it could have") {
    // 15 psi at 500 ft holds on either gauge.
    const jarproof::report gauge = beans_with({{"gauge", ""}, {"altitude", "500 ft"}});
    CHECK(gauge.verdict == verdict::accepted);
    CHECK(has(gauge, "holds-either-way"));
    // 11 psi at 500 ft holds on a dial, but no weight holds 11 psi.
    CHECK(beans_with({{"gauge", ""}, {"altitude", "500 ft"}, {"pressure", "11 psi"}}).verdict ==
          verdict::incomplete);
    // 10 psi at 500 ft holds on a weight only.
    CHECK(beans_with({{"gauge", ""}, {"altitude", "500 ft"}, {"pressure", "10 psi"}}).verdict ==
          verdict::incomplete);
    // 12 psi at 4,600 ft holds on neither.
    CHECK(beans_with({{"gauge", ""}, {"pressure", "12 psi"}}).verdict == verdict::rejected);
    // Raw and hot beans share their numbers; beets have no raw table (part 4, page 4-9).
    const jarproof::report pack = beans_with({{"pack", ""}});
    CHECK(pack.verdict == verdict::accepted);
    CHECK(has(pack, "holds-either-way"));
    CHECK(beans_with({{"food", "beets"}, {"pack", ""}, {"time", "30 min"}}).verdict ==
          verdict::incomplete);
    // A word that only one pack allows leaves the pack to be said.
    CHECK(beans_with({{"pack", ""}, {"prepared", "[not boiled before filling]"}}).verdict ==
          verdict::incomplete);
  }

  TEST_CASE("without an altitude a pressure below every band is rejected all the same") {
    CHECK(judged(plan_text(dial_beans(), {{"altitude", ""}, {"pressure", "10 psi"}})).verdict ==
          verdict::rejected);
    CHECK(judged(plan_text(dial_beans(), {{"altitude", ""}, {"pressure", "11 psi"}})).verdict ==
          verdict::incomplete);
  }

  TEST_CASE("more than the table asks for is accepted with a note") {
    CHECK(has(beans_with({{"time", "30 min"}}), "over-required"));
    CHECK(beans_with({{"time", "30 min"}}).verdict == verdict::accepted);
    CHECK(has(beans_with({{"altitude", "500 ft"}}), "over-required"));
    CHECK_FALSE(has(beans_with({}), "over-required"));
  }

  TEST_CASE("a jar in between takes the next larger listed size, a larger one has no process") {
    CHECK(beans_with({{"jar", "12 oz"}}).verdict == verdict::accepted);
    CHECK(has(beans_with({{"jar", "12 oz"}}), "jar-in-between"));
    CHECK(beans_with({{"jar", "half-pint"}, {"time", "19 min"}}).verdict == verdict::rejected);
    CHECK(beans_with({{"jar", "24 oz"}}).verdict == verdict::rejected);
    CHECK(beans_with({{"jar", "24 oz"}, {"time", "25 min"}}).verdict == verdict::accepted);
    CHECK(beans_with({{"jar", "500 mL"}}).verdict == verdict::rejected);
    CHECK(beans_with({{"jar", "500 mL"}, {"time", "25 min"}}).verdict == verdict::accepted);
    CHECK(has(beans_with({{"jar", "1 L"}, {"time", "90 min"}}), "jar-too-large"));
    CHECK(has(beans_with({{"jar", "half-gallon"}, {"time", "90 min"}}), "jar-too-large"));
    const jarproof::report r = beans_with({{"jar", "half-gallon"}});
    CHECK(finding_of(r, "jar-too-large")->message.find("apple juice and grape juice") !=
          std::string::npos);
    REQUIRE(r.required);
    CHECK(r.required->jar == "quart");
    CHECK(has(beans_with({{"jar", "bucket"}}), "word-unknown"));
    CHECK(beans_with({{"jar", "bucket"}}).verdict == verdict::incomplete);
    // Mushrooms have no quart table (part 4, page 4-13).
    CHECK(has(
        beans_with({{"food", "mushrooms"}, {"pack", "hot"}, {"jar", "24 oz"}, {"time", "200 min"}}),
        "jar-too-large"));
  }

  TEST_CASE("pack and form that no table has are rejected, unknown words left open") {
    CHECK(has(beans_with({{"food", "beets"}, {"time", "60 min"}}), "pack-not-tested"));
    CHECK(beans_with({{"food", "beets"}, {"time", "60 min"}}).verdict == verdict::rejected);
    CHECK(beans_with({{"form", "1-inch-pieces"}}).verdict == verdict::accepted);
    CHECK(has(beans_with({{"form", "diced"}}), "form-not-tested"));
    CHECK(beans_with({{"form", "frenched"}}).verdict == verdict::incomplete);
    for (const char* form : {"mashed", "pureed"}) {
      CHECK(has(
          beans_with({{"food", "pumpkin"}, {"pack", "hot"}, {"time", "90 min"}, {"form", form}}),
          "low-acid-puree"));
    }
  }

  TEST_CASE("of forms with different numbers the strictest holds unless the plan says which") {
    // Raw fresh limas in quarts: 1 1/2 in for small beans, 1 1/4 in for large (part 4, page 4-7).
    const keys limas{{"food", "beans-lima-fresh"},
                     {"jar", "quart"},
                     {"time", "50 min"},
                     {"headspace", "1 1/4 in"}};
    CHECK(has(beans_with(limas), "headspace-too-small"));
    keys large = limas;
    large["form"] = "large";
    CHECK(beans_with(large).verdict == verdict::accepted);
    keys small = limas;
    small["form"] = "small";
    CHECK(has(beans_with(small), "headspace-too-small"));
    small["headspace"] = "1 1/2 in";
    CHECK(beans_with(small).verdict == verdict::accepted);
  }

  TEST_CASE(
      "headspace: 1 mm is reading precision, less rejects, more is a note and then a warning") {
    CHECK(beans_with({{"headspace", "25 mm"}}).verdict == verdict::accepted);
    CHECK(beans_with({{"headspace", "24.4 mm"}}).verdict == verdict::accepted);
    CHECK(has(beans_with({{"headspace", "24.3 mm"}}), "headspace-too-small"));
    CHECK(has(beans_with({{"headspace", "7/8 in"}}), "headspace-too-small"));
    CHECK(finding_of(beans_with({{"headspace", "1 1/4 in"}}), "headspace-too-large")->level ==
          jarproof::level::note);
    CHECK(finding_of(beans_with({{"headspace", "1 3/8 in"}}), "headspace-too-large")->level ==
          jarproof::level::warning);
    CHECK(beans_with({{"headspace", "2 in"}}).verdict == verdict::accepted);
    CHECK(has(beans_with({}), "step-reminder"));
  }

  TEST_CASE("words that no process has are rejected, contradicted steps too") {
    CHECK(has(beans_with({{"prepared", "[thickened]"}}), "thickener-in-jar"));
    CHECK(has(beans_with({{"prepared", "[lightly smoked]"}}), "not-in-process"));
    CHECK(has(beans_with({{"prepared", "[no liquid added]"}}), "step-left-out"));
    CHECK(has(beans_with({{"food", "white potatoes"},
                          {"pack", "hot"},
                          {"time", "35 min"},
                          {"prepared", "[unpeeled]"}}),
              "step-left-out"));
    CHECK(beans_with({{"prepared", "[well stirred]"}}).verdict == verdict::incomplete);
    CHECK(has(beans_with({{"prepared", "[well stirred]"}}), "word-unknown"));
  }

  TEST_CASE("a name of several foods is asked back with the candidates") {
    const jarproof::report r =
        beans_with({{"food", "chicken"}, {"time", "90 min"}, {"headspace", "1 1/4 in"}});
    CHECK(r.verdict == verdict::incomplete);
    const jarproof::finding* f = finding_of(r, "food-ambiguous");
    REQUIRE(f != nullptr);
    CHECK(f->message.find("chicken-with-bones") != std::string::npos);
    CHECK(f->message.find("chicken-without-bones") != std::string::npos);
    CHECK(r.process == nullptr);
  }

  TEST_CASE(
      "without a food, ingredients are looked up as plain names, and unknown is not accepted") {
    const auto with = [](const char* lines) {
      return beans_with({{"food", ""}, {"ingredients", lines}});
    };
    const jarproof::report one = with("[\"7 lb green beans, washed\"]");
    CHECK(one.verdict == verdict::accepted);
    REQUIRE(one.process != nullptr);
    CHECK(one.process->id == "beans-snap");
    CHECK(with("[7 lb green beans, 1 cup mystery]").verdict == verdict::incomplete);
    CHECK(has(with("[7 lb green beans, 1 cup mystery]"), "ingredient-unknown"));
    // Several vegetables are the published mixed vegetables: hot, pints 75 min (part 4, 4-12).
    const jarproof::report mixed = with("[7 lb green beans, 2 lb carrots]");
    CHECK(mixed.verdict == verdict::rejected);
    REQUIRE(mixed.process != nullptr);
    CHECK(mixed.process->id == "mixed-vegetables");
    CHECK(has(mixed, "time-too-short"));
    CHECK(has(beans_with({{"ingredients", "[7 lb green beans, 2 lb carrots]"}}),
              "no-tested-process"));
  }

  TEST_CASE("an unknown food is untested, with the nearest names") {
    const jarproof::report r = beans_with({{"food", "gren beans"}});
    CHECK(r.verdict == verdict::untested);
    const jarproof::finding* f = finding_of(r, "no-tested-process");
    REQUIRE(f != nullptr);
    CHECK((f->message + f->fix).find("green beans") != std::string::npos);
  }

  TEST_CASE("an edition without the texts of the checks still objects") {
    jarproof::edition bare = jarproof::builtin_edition();
    bare.checks = {};
    const jarproof::report r =
        jarproof::check(fixtures::plan_from(plan_text(beans(), {{"time", "1 min"}})), bare);
    CHECK(r.verdict == verdict::rejected);
  }

  TEST_CASE("a table without a column for the stated gauge covers nothing on it") {
    jarproof::edition rules = jarproof::builtin_edition();
    const jarproof::process* beans_process = jarproof::find(rules.processes, "beans-snap");
    REQUIRE(beans_process != nullptr);
    jarproof::table row = beans_process->tables[1];
    REQUIRE(row.pack == "raw");
    row.dial = {};
    jarproof::process only_weighted = *beans_process;
    only_weighted.tables = {&row, 1};
    rules.processes = {&only_weighted, 1};
    const auto with = [&](const keys& plan) {
      return jarproof::check(fixtures::plan_from(plan_text(plan)), rules);
    };
    CHECK(with(beans()).verdict == verdict::accepted);
    CHECK(with(dial_beans()).verdict == verdict::untested);
    CHECK(has(with(dial_beans()), "no-tested-process"));
  }

  TEST_CASE("what must not pass by a slip of writing") {
    // 5.2 ft may be 5.2 thousand; capitals are units too.
    const auto read = [](const char* altitude) {
      return jarproof::read_amount(altitude, jarproof::dimension::altitude, jarproof::rounding::up);
    };
    CHECK_FALSE(read("5.2 ft").ok());
    CHECK_FALSE(read("1.4 m").ok());
    CHECK(read("852.5 ft").ok());
    CHECK(beans_with({{"food", ""}, {"ingredients", "[7 LB green beans]"}}).verdict ==
          verdict::accepted);
    // Words that only rule out what is refused anyway are welcome with every food.
    CHECK(beans_with({{"prepared", "[not thickened, not smoked]"}}).verdict == verdict::accepted);
    // Smoked fish was tested in canners that take 7 quarts (part 5, page 5-13: 16 to 22 quarts).
    const keys fish{{"food", "fish-smoked"}, {"time", "110 min"}, {"water", "4 qt"}};
    keys large = fish;
    large["canner"] = "{quarts: 20}";
    CHECK(beans_with(fish).verdict == verdict::accepted);
    CHECK(has(beans_with(large), "canner-too-large"));
  }

  TEST_CASE("an empty edition accepts nothing") {
    const jarproof::edition none;
    CHECK(jarproof::check(fixtures::plan_from(plan_text(beans())), none).verdict !=
          verdict::accepted);
  }
}

}  // namespace
}  // namespace check_tests
