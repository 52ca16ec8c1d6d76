// The lines of a shelf record: a lot written, read and judged again.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "jarproof/builtin.hpp"
#include "jarproof/check.hpp"
#include "jarproof/json.hpp"
#include "jarproof/shelf.hpp"
#include "support/fixtures.hpp"
#include "support/readings.hpp"
#include "support/shelves.hpp"

namespace shelf_records_tests {

using fixtures::add_line;
using fixtures::beans;
using fixtures::kitchen_lot;
using fixtures::line_from;
using fixtures::plan_text;
using fixtures::record_from;
using fixtures::recorded;
using jarproof::builtin_edition;
using jarproof::check;
using jarproof::json_line_of;
using jarproof::shelf;
using jarproof::shelf_record;
using jarproof::shelf_run;
using jarproof::verdict;

TEST_SUITE_BEGIN("shelf");

TEST_CASE("every member of a record comes back as it was written") {
  const auto lot = recorded(kitchen_lot(), shelf_run{verdict::rejected, "beans \"1\".csv"}, 2);
  const shelf_record r = record_from(lot.line);
  CHECK(r.source == "shelf.jsonl:1");
  CHECK(r.lot == "beans-1");
  CHECK(r.title == "Green beans, first picking");
  CHECK(r.date == "2026-07-18");
  CHECK(r.use_by == "2027-07-18");
  CHECK(r.library == jarproof::library_version);
  CHECK(r.edition_name == builtin_edition().name);
  CHECK(r.edition_version == builtin_edition().version);
  CHECK(r.verdict == verdict::accepted);
  CHECK(r.process == "beans-snap");
  CHECK(r.jars == 9);
  CHECK(r.jar == "pint");
  REQUIRE(r.run);
  CHECK(r.run->verdict == verdict::rejected);
  CHECK(r.run->log == "beans \"1\".csv");
  CHECK(r.unsealed == 2);
  // USDA Complete Guide 2015, part 4, page 4-8: pints 20 min; weighted gauge above 1,000 ft 15 psi.
  CHECK(r.required.find("\"pressure_psi\": 15, \"time_min\": 20,") != std::string::npos);
  CHECK(jarproof::detail::line_of(r) == lot.line);
  CHECK(lot.line.find('\n') == std::string::npos);
}

TEST_CASE("without a run log there is no member `run`") {
  const auto lot = recorded(kitchen_lot());
  CHECK(lot.line.find("\"run\"") == std::string::npos);
  CHECK_FALSE(record_from(lot.line).run);
}

TEST_CASE("a recorded plan is judged as it was") {
  for (const auto& [key, value] : std::vector<std::pair<std::string, std::string>>{
           {"title", "Green beans, first picking"},
           {"time", "1 h"},
           {"jar", "12 oz"},
           {"headspace", "1 in"},
           {"prepared", "[covered with liquid]"},
           {"canner", "{quarts: 7, volume: 16 qt}"},
           {"steps", "|\n  Trim the pods.\n  Boil 5 minutes."}}) {
    const auto& shown_key = key;  // clang 14 captures no structured binding
    CAPTURE(shown_key);
    auto keys = kitchen_lot();
    keys[key] = value;
    const auto lot = recorded(keys);
    const shelf_record r = record_from(lot.line);
    jarproof::report again = check(r.plan, builtin_edition());
    // Places differ: JSON has no lines.
    CHECK(again.verdict == lot.report.verdict);
    CHECK(again.required->time_min == lot.report.required->time_min);
    REQUIRE(again.findings.size() == lot.report.findings.size());
    for (std::size_t i = 0; i < again.findings.size(); ++i)
      CHECK(fixtures::has(lot.report, again.findings[i].check));
    CHECK(jarproof::detail::line_of(r) == lot.line);
  }
}

TEST_CASE("every accepted example of the rules is judged the same from its record") {
  const jarproof::edition& rules = builtin_edition();
  const auto ids = [](const jarproof::report& r) {
    std::multiset<std::string> out;
    for (const jarproof::finding& f : r.findings) out.insert(f.check + " " + f.message);
    return out;
  };
  int tried = 0;
  for (const jarproof::check_rule& rule : rules.checks) {
    for (const jarproof::example& x : rule.good) {
      jarproof::document d = fixtures::documents_of(x.plan, x.name).front();
      for (const auto& [key, value] : std::vector<std::pair<std::string, std::string>>{
               {"lot", "example"}, {"date", "2026-08-14"}, {"jars", "7"}}) {
        if (jarproof::find(d.root, key) != nullptr) continue;
        jarproof::node n;
        n.kind = jarproof::node_kind::scalar;
        n.text = value;
        n.path = key;
        d.root.members.push_back({key, 0, 0, n});
      }
      const auto plan = jarproof::read_plan(d);
      REQUIRE(plan);
      const jarproof::report then = check(*plan, rules);
      if (then.verdict != verdict::accepted) continue;
      CAPTURE(rule.id);
      CAPTURE(x.name);
      const auto line = jarproof::record_line(then, *plan, d, rules);
      REQUIRE(line);
      const jarproof::report now = check(record_from(*line).plan, rules);
      CHECK(now.verdict == verdict::accepted);
      CHECK(ids(now) == ids(then));
      CHECK(now.process == then.process);
      ++tried;
    }
  }
  CHECK(tried > 60);
}

TEST_CASE("a plan that names a recipe is recorded with its lines and judged without the file") {
  const auto documents = fixtures::documents_of(plan_text({{"food", "green beans"},
                                                           {"pack", "raw"},
                                                           {"jar", "pint"},
                                                           {"method", "pressure"},
                                                           {"gauge", "weighted"},
                                                           {"pressure", "15 psi"},
                                                           {"time", "20 min"},
                                                           {"altitude", "4600 ft"},
                                                           {"lot", "beans-2"},
                                                           {"date", "2026-07-19"},
                                                           {"jars", "7"},
                                                           {"recipe", "beans.txt"}}));
  jarproof::document d = documents.front();
  jarproof::recipe beans;
  beans.source = "beans.txt";
  beans.ingredients = {{{}, "7 lb green beans", 2, 1}, {{}, "2 tsp salt", 3, 1}};
  beans.title = jarproof::word{{}, "Beans of the valley", 1, 1};
  jarproof::add_recipe(d, beans);
  const auto plan = jarproof::read_plan(d);
  REQUIRE(plan);
  const jarproof::report r = check(*plan, builtin_edition());
  REQUIRE(r.verdict == verdict::accepted);
  const auto line = jarproof::record_line(r, *plan, d, builtin_edition());
  REQUIRE(line);
  const shelf_record again = record_from(*line);
  CHECK(again.title == "Beans of the valley");
  REQUIRE(again.plan.recipe);
  CHECK(again.plan.recipe->text == "beans.txt");
  REQUIRE(again.plan.ingredients.size() == 2);
  CHECK(again.plan.ingredients[1].text == "2 tsp salt");
  CHECK(check(again.plan, builtin_edition()).verdict == verdict::accepted);
}

TEST_CASE("hostile texts come back as they were") {
  for (const char* title :
       {"\"}, {\\\" end", "a, b: c # d", "caf\xC3\xA9 \xE2\x80\xA8 line", "\xF0\x9F\xA5\xAB",
        "{\"record\": \"jarproof-shelf/1\"}", "' OR 1=1", "null", "-1e999", "\\u0000 \\n"}) {
    CAPTURE(title);
    auto keys = kitchen_lot();
    keys["title"] = std::string("|\n  ") + title;
    keys["lot"] = std::string("|\n  ") + title;
    const auto lot = recorded(keys);
    const shelf_record r = record_from(lot.line);
    CHECK(r.title == title);
    CHECK(r.lot == title);
    CHECK(lot.line.find('\n') == std::string::npos);
    shelf s;
    CHECK(add_line(s, lot.line) == "");
    CHECK(s.place_of(title) == 0);
  }
}

TEST_CASE("the use-first day is a year later, a leap day as the 28th") {
  const auto use_by = [](const char* date) {
    auto keys = kitchen_lot();
    keys["date"] = date;
    return record_from(recorded(keys).line).use_by;
  };
  CHECK(use_by("2026-01-01") == "2027-01-01");
  CHECK(use_by("2028-02-29") == "2029-02-28");
  CHECK(use_by("2027-02-28") == "2028-02-28");
  CHECK(use_by("2026-12-31") == "2027-12-31");
  CHECK(use_by("0999-05-01") == "1000-05-01");
}

TEST_CASE("only what is accepted and can be told apart is recorded") {
  const auto refused = [](const char* key, const char* value) {
    auto keys = kitchen_lot();
    keys[key] = value;
    return fixtures::refusals_of(keys);
  };
  CHECK(refused("lot", "") ==
        "1:1 lot | the plan has no `lot`, so its jars cannot be told from others | write `lot: "
        "2026-08-14-a`, another one for each batch\n");
  CHECK(refused("date", "") == "1:1 date | the plan has no `date` | write `date: 2026-08-14`\n");
  CHECK(refused("jars", "") ==
        "1:1 jars | the plan has no `jars`, so nothing can be counted | write how many jars there "
        "are, such as `jars: 7`\n");
  CHECK(refused("time", "19 min") ==
        "1:1 | the plan is rejected and is not recorded | record only what is accepted\n");
  CHECK(refused("altitude", "") ==
        "1:1 | the plan is incomplete and is not recorded | record only what is accepted\n");
  CHECK(refused("date", "9999-12-31") ==
        "1:1 date | the date is too far ahead | write the day of canning\n");
}

TEST_CASE("a plan too long to be read again is not recorded") {
  auto keys = kitchen_lot();
  keys["title"] = std::string(700'000, 'a');  // stands twice in the record
  CHECK(fixtures::refusals_of(keys) ==
        "1:1 | the plan is too long to be recorded | leave out what is not needed\n");
}

TEST_SUITE_END();

}  // namespace shelf_records_tests
