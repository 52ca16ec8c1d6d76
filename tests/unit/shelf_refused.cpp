// Lines of a shelf record that are refused, each fault with its key path and what to write.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/json.hpp"
#include "jarproof/shelf.hpp"
#include "support/shelves.hpp"

namespace shelf_refused_tests {

using fixtures::record_faults;
using fixtures::recorded;
using fixtures::replaced;

namespace {

std::string good() { return recorded(fixtures::kitchen_lot()).line; }

/// What is wrong with the good line after one change.
std::string faults_with(std::string_view from, std::string_view to) {
  return record_faults(replaced(good(), from, to));
}

std::string about_jars(const std::string& members) {
  return "{\"record\": \"jarproof-shelf/1\", " + members + "}";
}

}  // namespace

TEST_SUITE_BEGIN("shelf");

TEST_CASE("the good line has no fault") { CHECK(record_faults(good()) == ""); }

TEST_CASE("each member that is missing is named") {
  for (const auto& [from, path] : std::vector<std::pair<std::string, std::string>>{
           {"\"lot\": \"beans-1\", \"title\"", "lot"},
           {"\"library\": \"" + std::string(jarproof::library_version) + "\", \"edition\"",
            "library"},
           {"\"verdict\": \"accepted\", \"process\"", "verdict"},
           {"\"process\": \"beans-snap\", \"required\"", "process"},
           {"\"title\": \"Green beans, first picking\", \"date\"", "title"},
           {"\"date\": \"2026-07-18\", \"library\"", "date"},
           {"\"jars\": 9, \"jar\"", "jars"},
           {"\"jar\": \"pint\", \"unsealed\"", "jar"},
           {"\"unsealed\": 0, \"use_by\"", "unsealed"},
           {", \"use_by\": \"2027-07-18\"", "use_by"}}) {
    const auto& shown_path = path;  // clang 14 captures no structured binding
    CAPTURE(shown_path);
    // What follows the member stays.
    const std::size_t next = from.rfind(", \"");
    const std::string kept = next == 0 ? "" : from.substr(next + 2);
    const std::string said = faults_with(from, kept);
    CHECK(said.find(path + " | `" + path + "` is missing | ") == 0);
    CHECK(said.find('\n') == said.size() - 1);
  }
}

TEST_CASE("a record without its plan or with a broken one cannot be judged again") {
  const std::string line = good();
  const std::size_t from = line.find("\"plan\": ");
  const std::size_t end = line.find("}, \"jars\": 9", from) + 3;
  std::string without = line;
  without.erase(from, end - from);
  CHECK(record_faults(without) ==
        "plan | `plan` is missing | write the plan, so that it can be judged again\n");
  CHECK(record_faults(line.substr(0, from) + "\"plan\": {}, " + line.substr(end)) ==
        "plan | the plan is empty | write at least `food`, `pack`, `jar`, `method`, `time` and "
        "`altitude`\n");
  CHECK(record_faults(line.substr(0, from) + "\"plan\": \"beans\", " + line.substr(end)) ==
        "plan | this is no plan | write a plan as keys with values, for example `food: green "
        "beans`\n");
  CHECK(faults_with("\"20 min\"", "\"20\"") ==
        "plan.time | `20` has no unit | write the unit: `20 min` (min or h)\n");
  CHECK(faults_with("\"food\":", "\"fod\":") ==
        "plan.fod | `fod` is no key of a plan | did you mean `food`?\n");
  CHECK(faults_with("\"food\": \"green beans\"", "\"recipe\": \"beans.txt\"") ==
        "plan.recipe | the recipe `beans.txt` was not read with the plan | write its lines under "
        "`ingredients`\n");
}

TEST_CASE("unknown keys, other layouts and keys that stand twice") {
  CHECK(faults_with("\"title\":", "\"titel\":") ==
        "titel | `titel` is no key of the record of a lot | did you mean `title`?\n"
        "title | `title` is missing | write it as the other lines have it\n");
  CHECK(faults_with("jarproof-shelf/1", "jarproof-shelf/2") ==
        "record | `jarproof-shelf/2` is no record that can be read | write `jarproof-shelf/1`\n");
  CHECK(faults_with("\"version\":", "\"verison\":") ==
        "edition.verison | `verison` is no key of `edition` | did you mean `version`?\n"
        "edition.version | `version` is missing | write it as the other lines have it\n");
  CHECK(faults_with("\"jars\": 9,", "\"jars\": 9, \"jars\": 9,") ==
        "jars | `jars` stands twice | keep one of the two\n");
  CHECK(faults_with("\"unsealed\": 0", "\"run\": {\"verdict\": \"good\"}, \"unsealed\": 0") ==
        "run.verdict | `good` is no verdict of a plan | write accepted, rejected, untested or "
        "incomplete\n"
        "run.log | `log` is missing | write it as the other lines have it\n");
  CHECK(faults_with("\"unsealed\": 0", "\"run\": \"good\", \"unsealed\": 0") ==
        "run | `run` takes its parts in braces | write `{\"verdict\": \"accepted\", \"log\": "
        "\"soup.csv\"}`\n");
}

TEST_CASE("values that a member cannot have") {
  CHECK(faults_with("\"verdict\": \"accepted\"", "\"verdict\": \"unreadable\"") ==
        "verdict | `unreadable` is no verdict of a plan | write accepted, rejected, untested or "
        "incomplete\n");
  CHECK(faults_with("\"library\": \"" + std::string(jarproof::library_version) + "\"",
                    "\"library\": null") ==
        "library | `library` takes one value | write it as the other lines have it\n");
  CHECK(faults_with("\"title\": \"Green", "\"title\": \"\\u0007Green") ==
        "title | a control character stands in the text | delete it\n");
  CHECK(faults_with("\"lot\": \"beans-1\", \"title\"", "\"lot\": \"\", \"title\"") ==
        "lot | `lot` takes one value | give the lot a name of its own, such as `beans-1`\n");
  CHECK(faults_with("\"lot\": \"beans-1\", \"title\"", "\"lot\": [1], \"title\"") ==
        "lot | `lot` takes one value | give the lot a name of its own, such as `beans-1`\n");
}

TEST_CASE("dates that do not exist, and days of use that cannot be") {
  for (const char* date : {"2026-02-29", "2026-13-01", "2026-00-10", "2026-06-31", "2026-6-1",
                           "18.07.2026", "20260718", "2026-07-18T10:00", "-026-07-18"}) {
    CAPTURE(date);
    CHECK(faults_with("\"2027-07-18\"", "\"" + std::string(date) + "\"") ==
          "use_by | `" + std::string(date) +
              "` is no date | write year, month and day, such as `2026-08-14`\n");
  }
  CHECK(faults_with("\"2027-07-18\"", "\"2027-07-19\"") ==
        "use_by | the day of use is more than a year after `date` | write `2027-07-18`\n");
  CHECK(faults_with("\"2027-07-18\"", "\"2026-07-17\"") ==
        "use_by | the day of use lies before `date` | write `2027-07-18`\n");
  CHECK(faults_with("\"2027-07-18\"", "\"2026-12-24\"") == "");
}

TEST_CASE("counts below zero, too large, or none at all") {
  for (const char* count : {"-1", "0", "1.5", "1e2", "10000", "\"nine\"", "\" 09\""}) {
    CAPTURE(count);
    const std::string said = faults_with("\"jars\": 9,", "\"jars\": " + std::string(count) + ",");
    CHECK(said.find("jars | `") == 0);
    CHECK(said.find("` is no count | write a whole number without a unit, such as `7`\n") !=
          std::string::npos);
  }
  CHECK(faults_with("\"jars\": 9,", "\"jars\": true,") ==
        "jars | `true` is no count | write a whole number without a unit, such as `7`\n");
  CHECK(faults_with("\"unsealed\": 0", "\"unsealed\": -2") ==
        "unsealed | `-2` is no count | write a whole number without a unit, such as `7`\n");
  CHECK(faults_with("\"unsealed\": 0", "\"unsealed\": 10") ==
        "unsealed | more jars are unsealed than were put up | write at most 9\n");
  CHECK(faults_with("\"unsealed\": 0", "\"unsealed\": 9") == "");
}

TEST_CASE("a record that says something else than its plan") {
  CHECK(faults_with("\"jars\": 9,", "\"jars\": 8,") ==
        "jars | the plan in the record has jars `9` | write the same in both places\n");
  CHECK(faults_with("\"lot\": \"beans-1\"", "\"lot\": \"beans-2\"") ==
        "lot | the plan in the record has lot `beans-1` | write the same in both places\n");
  CHECK(faults_with("\"jar\": \"pint\", \"unsealed\"", "\"jar\": \"quart\", \"unsealed\"") ==
        "jar | the plan in the record has jar `pint` | write the same in both places\n");
  CHECK(faults_with("\"date\": \"2026-07-18\", \"library\"",
                    "\"date\": \"2026-07-17\", \"library\"") ==
        "use_by | the day of use is more than a year after `date` | write `2027-07-17`\n"
        "date | the plan in the record has date `2026-07-18` | write the same in both places\n");
}

TEST_CASE("lines about jars: one count, of a lot, on a day") {
  CHECK(record_faults(about_jars("\"lot\": \"a\", \"date\": \"2026-10-01\", \"opened\": 2")) == "");
  CHECK(record_faults(about_jars("\"lot\": \"a\", \"date\": \"2026-10-01\", \"eaten\": \"2\"")) ==
        "");
  CHECK(record_faults(about_jars("\"lot\": \"a\", \"date\": \"2026-10-01\"")) ==
        " | the line does not say what happened | write one of `opened`, `eaten`, `discarded` and "
        "`unsealed` with a count, such as `\"opened\": 2`\n");
  CHECK(record_faults(about_jars("\"lot\": \"a\", \"date\": \"2026-10-01\", \"opened\": 1, "
                                 "\"eaten\": 1")) ==
        " | the line says several things | write one of `opened`, `eaten`, `discarded` and "
        "`unsealed` with a count, such as `\"opened\": 2`\n");
  CHECK(record_faults(about_jars("\"opend\": 2")) ==
        "opend | `opend` is no key of a line about a lot | did you mean `opened`?\n"
        "lot | `lot` is missing | write it as the other lines have it\n"
        "date | `date` is missing | write year, month and day, such as `2026-08-14`\n"
        " | the line does not say what happened | write one of `opened`, `eaten`, `discarded` and "
        "`unsealed` with a count, such as `\"opened\": 2`\n");
  for (const char* count : {"0", "-3", "10000", "2.0"}) {
    CAPTURE(count);
    CHECK(record_faults(about_jars("\"lot\": \"a\", \"date\": \"2026-10-01\", \"discarded\": " +
                                   std::string(count)))
              .find("discarded | `" + std::string(count) + "` is no count | ") == 0);
  }
}

TEST_CASE("a byte order mark and the line ends of other systems change nothing") {
  CHECK(record_faults("\xEF\xBB\xBF" + good() + "\r") == "");
  CHECK(record_faults("  " + good() + " \t") == "");
}

TEST_CASE("hostile values are named, never taken") {
  const std::string deep = std::string(14, '[') + std::string(14, ']');
  for (const std::string& value : {std::string("null"), std::string("[]"), std::string("{}"),
                                   std::string("\"\\u0000\""), std::string("\"a\\nb\""), deep}) {
    CAPTURE(value);
    for (const char* key : {"lot", "date", "library", "edition", "verdict", "plan", "jars", "jar",
                            "use_by", "unsealed", "run", "record"}) {
      CAPTURE(key);
      const auto read = jarproof::read_json_line(good(), "shelf.jsonl:1");
      REQUIRE(read);
      std::string line = "{";
      for (const jarproof::member& m : read->root.members) {
        if (m.key == key) continue;
        line += "\"" + m.key + "\": " +
                jarproof::detail::tree_text(m.value, jarproof::detail::plain_scalars::as_written) +
                ", ";
      }
      line += "\"" + std::string(key) + "\": " + value + "}";
      CHECK(record_faults(line) != "");
    }
  }
}

TEST_SUITE_END();

}  // namespace shelf_refused_tests
