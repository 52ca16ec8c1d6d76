// JSON and JSON Lines into trees: key paths, numbers as written, and everything that is refused.
// SPDX-License-Identifier: MIT
#include "jarproof/json.hpp"

#include <doctest/doctest.h>

#include <ostream>
#include <string>
#include <string_view>

#include "jarproof/read_plan.hpp"
#include "support/readings.hpp"

namespace json_tests {

using fixtures::begins;
using fixtures::documents_of;
using fixtures::one_mib;
using fixtures::repeated;
using jarproof::find;
using jarproof::node;
using jarproof::node_kind;
using jarproof::scalar_style;
using namespace std::string_view_literals;

namespace {

std::string faults_of(std::string_view text) { return fixtures::faults_of(text, "plan.json"); }

std::string places_of(std::string_view text) {
  return fixtures::fault_places_of(text, "plan.json");
}

node root_of(std::string_view text) { return fixtures::root_of(text, "plan.json"); }

}  // namespace

TEST_SUITE_BEGIN("json");

TEST_CASE("an object is one plan") {
  const node root =
      root_of("{\"food\": \"corn\", \"canner\": {\"quarts\": 7}, \"prepared\": [\"a\", \"b\"]}");
  REQUIRE(root.kind == node_kind::map);
  REQUIRE(root.members.size() == 3);
  CHECK(root.members[0].key == "food");
  CHECK(root.members[0].value.text == "corn");
  CHECK(root.members[0].value.path == "food");
  CHECK(find(root, "canner")->members[0].value.path == "canner.quarts");
  CHECK(find(root, "prepared")->items[1].path == "prepared[2]");
  CHECK(root.line == 0);
  CHECK(find(root, "food")->line == 0);
  CHECK(find(root, "food")->column == 0);
}

TEST_CASE("an array is one plan for each element") {
  const auto all = documents_of("[{\"food\": \"corn\"}, {\"food\": \"peas\"}]", "plans.json");
  REQUIRE(all.size() == 2);
  CHECK(all[0].name == "plans.json[1]");
  CHECK(all[1].name == "plans.json[2]");
  CHECK(find(all[1].root, "food")->text == "peas");
  CHECK(documents_of("[]", "plans.json").empty());
}

TEST_CASE("an empty text holds no document") {
  CHECK(documents_of("", "plan.json").empty());
  CHECK(documents_of(" \r\n\t", "plan.json").empty());
}

TEST_CASE("faults name their key path") {
  CHECK(faults_of("{\"time\": 75, \"canner\": {\"quart\": 7, \"pints\": \"x\"}, \"prepared\": "
                  "[\"a\", null]}") ==
        "0:0 time | `75` has no unit | write the unit: `75 min` (min or h)\n"
        "0:0 canner.quart | `quart` is no key of `canner` | did you mean `quarts`?\n"
        "0:0 canner.pints | `x` is no count | write a whole number without a unit, such as `7`\n"
        "0:0 prepared[2] | `prepared` has no value | write `prepared: [beans rehydrated]` or leave "
        "the key out\n");
}

TEST_CASE("in an array of plans the name tells the element and the path begins inside it") {
  const auto all = documents_of(
      "[{\"food\": \"corn\"}, {\"time\": 75, \"fod\": \"peas\", \"held\": {\"fro\": 1}, \"jars\": "
      "7, \"jars\": 7}]",
      "plans.json");
  REQUIRE(all.size() == 2);
  CHECK(jarproof::read_plan(all[0]));
  const auto second = jarproof::read_plan(all[1]);
  REQUIRE_FALSE(second);
  std::string paths;
  for (const jarproof::problem& p : second.errors()) {
    CHECK(p.file == "plans.json[2]");
    paths += p.path + "\n";
  }
  CHECK(paths == "jars\ntime\nfod\nheld.fro\n");
}

TEST_CASE("text, numbers and truth values are told apart by their style") {
  const node root = root_of("{\"a\": \"7\", \"b\": 7, \"c\": true, \"d\": \"x\\ny\", \"e\": null}");
  CHECK(find(root, "a")->style == scalar_style::quoted);
  CHECK(find(root, "b")->style == scalar_style::plain);
  CHECK(find(root, "c")->text == "true");
  CHECK(find(root, "d")->style == scalar_style::literal);
  CHECK(find(root, "e")->kind == node_kind::null);
}

TEST_CASE("numbers stay as they are written") {
  for (const std::string_view number :
       {"7", "0", "-0", "1.50", "0.10", "1e3", "1E+3", "-2.5e-3", "12345678901234567890",
        "-12345678901234567890123", "0.1000000000000000000001", "1e400"}) {
    const node root = root_of("{\"a\": " + std::string(number) + "}");
    CHECK(find(root, "a")->text == number);
  }
  const std::string digits = repeated("1", 100'000);
  CHECK(find(root_of("{\"a\": " + digits + "}"), "a")->text == digits);
}

TEST_CASE("a count may be a number, an amount needs its unit") {
  CHECK(faults_of("{\"jars\": 9, \"canner\": {\"quarts\": 7}, \"as-published\": true}") == "");
  CHECK(places_of("{\"jars\": 9.0}") == "0:0 jars\n");
  CHECK(places_of("{\"pressure\": 11}") == "0:0 pressure\n");
}

TEST_CASE("escapes and text in other scripts") {
  const node root = root_of(
      "{\"a\": \"\\u00bd \\\"cup\\\" \\\\ \\/ \\t\", \"\\u00f1\": \"\\ud83e\\udd6b\", \"b\": "
      "\"\u00BD\"}");
  CHECK(find(root, "a")->text == "\u00BD \"cup\" \\ / \t");
  REQUIRE(find(root, "\u00F1") != nullptr);
  CHECK(find(root, "\u00F1")->text == "\U0001F96B");
  CHECK(find(root, "b")->text == "\u00BD");
}

TEST_CASE("escapes in long text come through whole") {
  const node root = root_of("{\"a\": \"" + repeated("\\u00bdx\\n", 30'000) + "\", \"b\": 1}");
  CHECK(find(root, "a")->text == repeated("\u00BDx\n", 30'000));
  CHECK(find(root, "b")->text == "1");
}

TEST_CASE("a text of almost a MiB is read, one over a MiB is refused") {
  const std::string head = "{\"title\": \"";
  const std::string tail = "\"}";
  const std::string text(one_mib - head.size() - tail.size(), 'x');
  CHECK(find(root_of(head + text + tail), "title")->text == text);
  CHECK(faults_of(head + text + "x" + tail) ==
        "0:0 | the text is larger than 1 MiB | split it into several files\n");
}

TEST_CASE("a text with line ends is a list of lines") {
  CHECK(faults_of("{\"ingredients\": \"3 lb venison\\n\\n  2 tsp salt\\n\"}") == "");
  CHECK(places_of("{\"title\": \"a\\nb\"}") == "0:0 title\n");
}

TEST_CASE("control characters that escapes would bring in are refused") {
  for (const std::string_view escape :
       {"\\u001b[31m", "\\r", "\\u0000", "\\b", "\\u009b31m", "\\u007f"}) {
    CHECK(places_of("{\"food\": \"corn\", \"title\": \"a" + std::string(escape) + "b\"}") ==
          "0:0 title\n");
  }
}

TEST_CASE("a key that stands twice") {
  CHECK(faults_of("{\"food\": \"corn\", \"food\": \"corn\"}") ==
        "0:0 food | `food` stands twice | keep one of the two\n");
  CHECK(places_of("{\"food\": \"corn\", \"f\\u006fod\": \"corn\"}") == "0:0 food\n");
  CHECK(places_of("{\"held\": {\"for\": \"1 h\", \"at\": \"38 F\", \"for\": \"2 h\"}}") ==
        "0:0 held.for\n");
  CHECK(places_of("[{\"food\": \"corn\"}, {\"food\": \"corn\", \"food\": \"corn\"}]") ==
        "0:0 food\n");
  CHECK(faults_of("[{\"food\": \"corn\"}, {\"food\": \"corn\"}]") == "");
}

TEST_CASE("sixteen levels are read, one more is refused") {
  const std::string message =
      "0:0 | the nesting is deeper than 16 levels | a plan needs two levels at most\n";
  CHECK(faults_of("{\"title\": " + repeated("[", 15) + repeated("]", 15) + "}") ==
        "0:0 title | `title` takes one value | write `title: Green beans, first picking`\n");
  CHECK(faults_of("{\"title\": " + repeated("[", 16) + repeated("]", 16) + "}").find(message) !=
        std::string::npos);
  CHECK(faults_of(repeated("[", 100'000)) == message);
  CHECK(faults_of(repeated("{\"a\":", 100'000)) == message);
}

TEST_CASE("text behind the plan is refused") {
  for (const std::string_view text :
       {"{\"food\": \"corn\"} x", "{\"food\": \"corn\"}}",
        "{\"food\": \"corn\"}\n{\"food\": \"peas\"}", "{\"food\": \"corn\"},", "[] []"}) {
    CAPTURE(text);
    CHECK(begins(faults_of(text), "0:0 | this is no JSON: "));
  }
  CHECK(faults_of("{\"food\": \"corn\"}\n \r\n\t") == "");
}

TEST_CASE("what RFC 8259 does not allow is refused") {
  for (const std::string_view text : {"{\"food\": \"corn\",}"sv,
                                      "{'food': 'corn'}"sv,
                                      "{food: \"corn\"}"sv,
                                      "{\"food\": corn}"sv,
                                      "{\"food\": \"corn\""sv,
                                      "{\"food\": \"corn"sv,
                                      "{\"food\" \"corn\"}"sv,
                                      "{\"jars\": 07}"sv,
                                      "{\"jars\": +7}"sv,
                                      "{\"jars\": .5}"sv,
                                      "{\"jars\": 5.}"sv,
                                      "{\"jars\": NaN}"sv,
                                      "{\"jars\": 0x10}"sv,
                                      "{\"food\": \"a\tb\"}"sv,
                                      "{\"food\": \"a\nb\"}"sv,
                                      "{\"food\": \"\\x41\"}"sv,
                                      "{\"food\": \"\\ud800\"}"sv,
                                      "{\"food\": \"corn\" /* c */}"sv,
                                      "{\"food\": tru}"sv,
                                      "[1, 2"sv,
                                      "\0"sv,
                                      "food: corn"sv}) {
    CAPTURE(text);
    const std::string faults = faults_of(text);
    CHECK(begins(faults, "0:0 | this is no JSON: "));
    CHECK(faults.find(" at byte ") != std::string::npos);
  }
}

TEST_CASE("bytes that are no UTF-8 are refused, and so is UTF-16") {
  const std::string_view message = "0:0 | the text is not UTF-8 | save it as UTF-8\n";
  CHECK(faults_of("{\"food\": \"\xFF\"}") == message);
  CHECK(faults_of("{\"food\": \"\xC3\x28\"}") == message);
  CHECK(faults_of("{\"\xED\xA0\x80\": 1}") == message);
  CHECK(faults_of("\xFF\xFE{\0}\0"sv) == message);
}

TEST_CASE("a byte order mark is left out") {
  CHECK(find(root_of("\xEF\xBB\xBF{\"food\": \"corn\"}"), "food")->text == "corn");
}

TEST_CASE("what is no object is no plan") {
  const std::string no_plan =
      "this is no plan | write a plan as keys with values, for example `food: green beans`\n";
  CHECK(faults_of("null") == "0:0 | " + no_plan);
  CHECK(faults_of("7") == "0:0 | " + no_plan);
  CHECK(faults_of("\"food\"") == "0:0 | " + no_plan);
  CHECK(faults_of("[{\"food\": \"corn\"}, 7]") == "0:0 | " + no_plan);
  CHECK(begins(faults_of("{}"), "0:0 | the plan is empty | "));
}

TEST_CASE("a key that is too long is refused") {
  CHECK_FALSE(faults_of("{\"" + std::string(5'000, 'k') + "\": 1}").empty());
}

TEST_CASE("many keys are all read") {
  std::string text = "{";
  for (int i = 0; i < 40'000; ++i) text += "\"k" + std::to_string(i) + "\": [],\n";
  const auto read = jarproof::read_json(text + "\"food\": \"corn\"}", "plan.json");
  REQUIRE(read);
  CHECK(read->front().root.members.size() == 40'001);
}

TEST_CASE("a line of JSON Lines is one plan") {
  const auto good = jarproof::read_json_line("{\"food\": \"corn\"}", "plans.jsonl:7");
  REQUIRE(good);
  CHECK(good->name == "plans.jsonl:7");
  CHECK(find(good->root, "food")->text == "corn");
  CHECK(jarproof::read_json_line("  {\"food\": \"corn\"} \r", "plans.jsonl:8"));
}

TEST_CASE("a line that is broken, empty or holds two plans is refused, and the next one is read") {
  for (const std::string_view line :
       {"", "  ", "{\"food\": ", "{\"food\": 1}{\"food\": 2}", "\xFF"}) {
    const auto bad = jarproof::read_json_line(line, "plans.jsonl:7");
    REQUIRE_FALSE(bad);
    CHECK(bad.errors().front().file == "plans.jsonl:7");
  }
  CHECK(fixtures::fault_places_of("{\"food\": }\n{\"food\": \"corn\"}\n{\"fod\": \"corn\"}\n",
                                  "p.jsonl") == "0:0\n0:0 fod\n");
}

TEST_CASE("an array on one line of JSON Lines is no plan") {
  CHECK(begins(fixtures::faults_of("[{\"food\": \"corn\"}]\n", "p.jsonl"),
               "0:0 | this is no plan | "));
}

TEST_SUITE_END();

}  // namespace json_tests
