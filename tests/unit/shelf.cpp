// The shelf: a lot recorded, read, counted down and judged again.
// SPDX-License-Identifier: MIT
#include "jarproof/shelf.hpp"

#include <doctest/doctest.h>

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "jarproof/builtin.hpp"
#include "jarproof/format/shelf_json.hpp"
#include "jarproof/json.hpp"
#include "support/fixtures.hpp"
#include "support/readings.hpp"
#include "support/shelves.hpp"

namespace shelf_tests {

using fixtures::add_line;
using fixtures::beans;
using fixtures::happening;
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

TEST_CASE("jars are counted down in the order of the lines") {
  shelf s;
  REQUIRE(add_line(s, recorded(kitchen_lot(), std::nullopt, 1).line) == "");
  const auto now = [&] {
    const jarproof::shelf_lot& l = s.lots().front();
    return std::to_string(l.left) + " left " + std::to_string(l.open) + " open " +
           std::to_string(l.unsealed) + " unsealed " + std::to_string(l.opened) + " opened " +
           std::to_string(l.eaten) + " eaten " + std::to_string(l.discarded) + " discarded";
  };
  CHECK(now() == "8 left 0 open 1 unsealed 0 opened 0 eaten 0 discarded");
  CHECK(add_line(s, happening("beans-1", "2026-07-19", "unsealed", 1)) == "");
  CHECK(now() == "7 left 0 open 2 unsealed 0 opened 0 eaten 0 discarded");
  CHECK(add_line(s, happening("beans-1", "2026-10-01", "opened", 3)) == "");
  CHECK(now() == "4 left 3 open 2 unsealed 3 opened 0 eaten 0 discarded");
  CHECK(add_line(s, happening("beans-1", "2026-10-02", "eaten", 2)) == "");
  CHECK(now() == "4 left 1 open 2 unsealed 3 opened 2 eaten 0 discarded");
  CHECK(add_line(s, happening("beans-1", "2026-10-05", "discarded", 2)) == "");
  CHECK(now() == "3 left 0 open 2 unsealed 3 opened 2 eaten 2 discarded");
  CHECK(add_line(s, happening("beans-1", "2026-11-01", "eaten", 3)) == "");
  CHECK(now() == "0 left 0 open 2 unsealed 3 opened 5 eaten 2 discarded");
  CHECK(s.lines() == 6);
}

TEST_CASE("the jars that were opened first are eaten or discarded first") {
  shelf s;
  REQUIRE(add_line(s, recorded(kitchen_lot()).line) == "");
  const auto open = [&] {
    const jarproof::shelf_lot& l = s.lots().front();
    return std::to_string(l.open) + " since " + l.open_since;
  };
  CHECK(add_line(s, happening("beans-1", "2027-03-19", "opened", 1)) == "");
  CHECK(add_line(s, happening("beans-1", "2027-03-10", "opened", 2)) == "");
  CHECK(open() == "3 since 2027-03-10");
  CHECK(add_line(s, happening("beans-1", "2027-03-19", "discarded", 1)) == "");
  CHECK(open() == "2 since 2027-03-10");
  CHECK(add_line(s, happening("beans-1", "2027-03-19", "eaten", 1)) == "");
  CHECK(open() == "1 since 2027-03-19");
  CHECK(add_line(s, happening("beans-1", "2027-03-20", "eaten", 3)) == "");
  CHECK(open() == "0 since ");
}

TEST_CASE("a line that does not fit changes nothing") {
  shelf s;
  REQUIRE(add_line(s, recorded(kitchen_lot()).line) == "");
  CHECK(add_line(s, happening("beans-1", "2026-10-01", "opened", 10)) ==
        "opened | of the lot `beans-1` only 9 jars are left | write at most 9\n");
  CHECK(add_line(s, happening("beans-1", "2026-10-01", "eaten", 9)) == "");
  CHECK(add_line(s, happening("beans-1", "2026-10-02", "discarded", 1)) ==
        "discarded | of the lot `beans-1` no jar is left | take the line out, or put the lot "
        "right\n");
  CHECK(add_line(s, happening("beans-1", "2026-10-02", "unsealed", 1)) ==
        "unsealed | of the lot `beans-1` no jar is left | take the line out, or put the lot "
        "right\n");
  CHECK(add_line(s, happening("beans-2", "2026-10-02", "eaten", 1)) ==
        "lot | no record of the lot `beans-2` stands before this line | did you mean `beans-1`?\n");
  CHECK(add_line(s, happening("tomatoes", "2026-10-02", "eaten", 1)) ==
        "lot | no record of the lot `tomatoes` stands before this line | write the name of a "
        "recorded lot\n");
  CHECK(add_line(s, happening("beans-1", "2026-07-17", "eaten", 1)) ==
        "date | this is before the lot was put up, 2026-07-18 | write the day on which it "
        "happened\n");
  CHECK(s.lots().size() == 1);
  CHECK(s.lots().front().left == 0);
  CHECK(s.lines() == 2);
}

TEST_CASE("a lot stands once, and a second record adds the run log of the same plan") {
  shelf s;
  const std::string first = recorded(kitchen_lot()).line;
  REQUIRE(add_line(s, first) == "");
  const std::string twice =
      "lot | the lot `beans-1` is recorded already in shelf.jsonl:1 | give each batch a `lot` of "
      "its own\n";
  CHECK(add_line(s, first) == twice);
  auto other = kitchen_lot();
  other["time"] = "25 min";
  CHECK(add_line(s, recorded(other, shelf_run{verdict::accepted, "b.csv"}).line) == twice);
  CHECK(add_line(s, recorded(kitchen_lot(), shelf_run{verdict::accepted, "b.csv"}, 2).line) == "");
  REQUIRE(s.lots().size() == 1);
  CHECK(s.lots().front().left == 7);
  REQUIRE(s.lots().front().record.run);
  CHECK(s.lots().front().record.run->log == "b.csv");
  CHECK(add_line(s, recorded(kitchen_lot(), shelf_run{verdict::accepted, "c.csv"}).line) == twice);
  // A second log that is at fault is never lost: nobody knows which jars it is about.
  CHECK(add_line(s, recorded(kitchen_lot(), shelf_run{verdict::rejected, "c.csv"}).line) == "");
  CHECK(s.lots().front().record.run->verdict == verdict::rejected);
  CHECK(jarproof::not_accepted(jarproof::today_of(s, jarproof::builtin_edition())).size() == 1);
}

TEST_CASE(
    "a run log that is written on takes the place of itself, and its unsealed jars count once") {
  const auto line = [](verdict v, int unsealed, const char* log = "b.csv") {
    return recorded(kitchen_lot(), shelf_run{v, log}, unsealed).line;
  };
  shelf s;
  REQUIRE(add_line(s, line(verdict::incomplete, 0)) == "");
  CHECK(add_line(s, line(verdict::accepted, 0)) == "");
  CHECK(add_line(s, happening("beans-1", "2026-07-20", "eaten", 1)) == "");
  CHECK(add_line(s, line(verdict::accepted, 2)) == "");
  CHECK(s.lots().front().left == 6);
  CHECK(add_line(s, line(verdict::accepted, 3)) == "");
  REQUIRE(s.lots().size() == 1);
  CHECK(s.lots().front().unsealed == 3);
  CHECK(s.lots().front().left == 5);
  CHECK(s.lots().front().record.run->verdict == verdict::accepted);
  CHECK(add_line(s, line(verdict::accepted, 2)) ==
        "unsealed | the log of the lot `beans-1` had 3 unsealed before | write at least as many\n");
  CHECK(add_line(s, line(verdict::accepted, 9)) ==
        "unsealed | of the lot `beans-1` only 8 jars are left | write at most 8\n");
  CHECK(s.lots().front().left == 5);
}

TEST_CASE("a run log that was rejected stays so") {
  const auto line = [](verdict v) { return recorded(kitchen_lot(), shelf_run{v, "b.csv"}).line; };
  shelf s;
  REQUIRE(add_line(s, line(verdict::accepted)) == "");
  CHECK(add_line(s, line(verdict::rejected)) == "");
  CHECK(s.lots().front().record.run->verdict == verdict::rejected);
  CHECK(
      add_line(s, line(verdict::accepted)) ==
      "run | the run log of the lot `beans-1` was rejected before | give jars that were processed "
      "again a `lot` of their own\n");
  CHECK(s.lots().front().record.run->verdict == verdict::rejected);
}

TEST_CASE("a lot counts as accepted only by plan, record and run log together") {
  const auto accepted = [](const std::string& line) {
    shelf s;
    REQUIRE(add_line(s, line) == "");
    const jarproof::shelf_today t = jarproof::today_of(s, builtin_edition());
    REQUIRE(t.lots.size() == 1);
    CHECK(jarproof::eat_first(t).size() == (t.lots[0].accepted ? 1 : 0));
    CHECK(jarproof::not_accepted(t).size() == (t.lots[0].accepted ? 0 : 1));
    return t.lots[0].accepted;
  };
  const std::string good = recorded(kitchen_lot()).line;
  CHECK(accepted(good));
  CHECK(accepted(recorded(kitchen_lot(), shelf_run{verdict::accepted, "b.csv"}).line));
  CHECK_FALSE(accepted(recorded(kitchen_lot(), shelf_run{verdict::rejected, "b.csv"}).line));
  CHECK_FALSE(accepted(recorded(kitchen_lot(), shelf_run{verdict::incomplete, "b.csv"}).line));
  CHECK_FALSE(
      accepted(fixtures::replaced(good, "\"verdict\": \"accepted\"", "\"verdict\": \"untested\"")));
  // USDA Complete Guide 2015, part 4, page 4-8: 20 min.
  CHECK_FALSE(accepted(fixtures::replaced(good, "\"20 min\"", "\"19 min\"")));
}

TEST_CASE("a shelf is judged by the edition in use and tells which edition judged before") {
  shelf s;
  REQUIRE(add_line(s, recorded(kitchen_lot()).line) == "");
  CHECK_FALSE(jarproof::today_of(s, builtin_edition()).lots[0].other_edition);
  jarproof::edition newer = builtin_edition();
  newer.version = "2027.1.1";
  // As if the newer edition had no table for the food.
  newer.processes = {};
  const jarproof::shelf_today t = jarproof::today_of(s, newer);
  CHECK(t.lots[0].other_edition);
  CHECK_FALSE(t.lots[0].accepted);
  CHECK(t.lots[0].report.verdict == verdict::untested);
  CHECK(fixtures::has(t.lots[0].report, "no-tested-process"));
}

TEST_CASE("oldest first, and to eat first open jars, then by the day of use, never past doubt") {
  shelf s;
  const auto put = [&](const char* lot, const char* date, const char* time = "20 min") {
    auto keys = kitchen_lot();
    keys["lot"] = lot;
    keys["date"] = date;
    REQUIRE(add_line(s, fixtures::replaced(recorded(keys).line, "\"20 min\"",
                                           "\"" + std::string(time) + "\"")) == "");
  };
  put("new", "2026-09-01");
  put("old", "2025-09-01");
  put("short", "2025-01-01", "10 min");
  put("middle", "2026-01-01");
  put("gone", "2024-01-01");
  REQUIRE(add_line(s, happening("gone", "2024-06-01", "eaten", 9)) == "");
  REQUIRE(add_line(s, happening("new", "2026-10-01", "opened", 1)) == "");
  const auto names = [](const jarproof::shelf_today& t, const std::vector<std::size_t>& places) {
    std::string out;
    for (const std::size_t i : places) out += t.lots[i].lot.record.lot + " ";
    return out;
  };
  const jarproof::shelf_today t = jarproof::today_of(s, builtin_edition(), "2026-09-02");
  CHECK(names(t, {0, 1, 2, 3, 4}) == "gone short old middle new ");
  CHECK(names(t, jarproof::eat_first(t)) == "new old middle ");
  CHECK(names(t, jarproof::not_accepted(t)) == "short ");
  CHECK(t.lots[2].past_use_by);
  CHECK_FALSE(t.lots[3].past_use_by);
  // On the day itself it is not past.
  CHECK_FALSE(jarproof::today_of(s, builtin_edition(), "2026-09-01").lots[2].past_use_by);
  CHECK_FALSE(jarproof::today_of(s, builtin_edition()).lots[2].past_use_by);
}

TEST_CASE("10,000 lines are one shelf") {
  const std::string line = recorded(kitchen_lot()).line;
  shelf s;
  for (int i = 0; i < 2'500; ++i) {
    const std::string lot = "beans-1" + std::to_string(i);
    std::string mine = line;
    for (int both = 0; both < 2; ++both)
      mine = fixtures::replaced(mine, "\"beans-1\"", "\"" + lot + "\"");
    REQUIRE(add_line(s, mine) == "");
    for (const char* what : {"opened", "eaten", "unsealed"})
      REQUIRE(add_line(s, happening(lot, "2026-10-01", what, 1)) == "");
  }
  CHECK(s.lines() == 10'000);
  int left = 0;
  for (const jarproof::shelf_lot& l : s.lots()) left += l.left;
  CHECK(left == 2'500 * 7);
}

TEST_SUITE_END();

}  // namespace shelf_tests
