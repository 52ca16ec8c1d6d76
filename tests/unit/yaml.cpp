// YAML into trees: places, styles, several documents.
// SPDX-License-Identifier: MIT
#include "jarproof/yaml.hpp"

#include <doctest/doctest.h>

#include <ostream>
#include <string>
#include <string_view>

#include "jarproof/read_plan.hpp"
#include "support/readings.hpp"

namespace yaml_tests {

using fixtures::begins;
using fixtures::documents_of;
using fixtures::fault_places_of;
using fixtures::faults_of;
using fixtures::place_of;
using fixtures::root_of;
using jarproof::find;
using jarproof::node;
using jarproof::node_kind;
using jarproof::scalar_style;

namespace {

scalar_style style_of(std::string_view value) {
  const node root = root_of("title: " + std::string(value) + "\npack: raw\n");
  return find(root, "title")->style;
}

std::string text_of(std::string_view value) {
  const node root = root_of("title: " + std::string(value) + "\n");
  return find(root, "title")->text;
}

}  // namespace

TEST_SUITE_BEGIN("yaml");

TEST_CASE("keys and values keep their places") {
  const node root = root_of("food: corn\n\n# note\ncanner:\n  quarts: 7\nprepared: [a,  b]\n");
  REQUIRE(root.kind == node_kind::map);
  CHECK(place_of(root) == "1:1");
  REQUIRE(root.members.size() == 3);
  CHECK(place_of(root.members[0]) == "1:1");
  CHECK(place_of(root.members[0].value) == "1:7");
  CHECK(place_of(root.members[1]) == "4:1");
  const node& canner = root.members[1].value;
  CHECK(canner.kind == node_kind::map);
  CHECK(place_of(canner) == "5:3");
  CHECK(canner.members[0].value.path == "canner.quarts");
  CHECK(place_of(canner.members[0].value) == "5:11");
  const node& prepared = root.members[2].value;
  CHECK(prepared.kind == node_kind::sequence);
  REQUIRE(prepared.items.size() == 2);
  CHECK(prepared.items[1].path == "prepared[2]");
  CHECK(place_of(prepared.items[1]) == "6:16");
}

TEST_CASE("columns count characters, not bytes") {
  const node root = root_of("{\"\u00BD \u00F1 \U0001F96B\": \u20AC, food: corn}\n");
  CHECK(place_of(root.members[0]) == "1:2");
  CHECK(place_of(root.members[0].value) == "1:11");
  CHECK(place_of(root.members[1]) == "1:14");
  CHECK(place_of(root.members[1].value) == "1:20");
}

TEST_CASE("lines and columns after text in other scripts stay right") {
  CHECK(fault_places_of("title: jalape\u00F1os \u00BD\n\u00F1: x\nheld: {\u00BD: y, for: 2}\n") ==
        "2:1 \u00F1\n3:8 held.\u00BD\n3:19 held.for\n");
}

TEST_CASE("plain, quoted, literal and folded text are told apart") {
  CHECK(style_of("green beans") == scalar_style::plain);
  CHECK(style_of("green beans # note") == scalar_style::plain);
  CHECK(style_of("it's") == scalar_style::plain);
  CHECK(style_of("\"green beans\"") == scalar_style::quoted);
  CHECK(style_of("\"a \\\" b\"") == scalar_style::quoted);
  CHECK(style_of("'green beans'") == scalar_style::quoted);
  CHECK(style_of("'it''s'") == scalar_style::quoted);
  CHECK(style_of("\"\"") == scalar_style::quoted);
  CHECK(style_of("|\n  green\n  beans") == scalar_style::literal);
  CHECK(style_of("|-\n  green") == scalar_style::literal);
  CHECK(style_of(">\n  green\n  beans") == scalar_style::folded);
  CHECK(style_of("green\n  beans") == scalar_style::folded);
  CHECK(style_of("\"green\n  beans\"") == scalar_style::folded);
  CHECK(style_of("'green\n  beans'") == scalar_style::folded);
}

TEST_CASE("text is what stands there: nothing becomes a number, a date or a truth value") {
  for (const std::string_view text :
       {"010", "0x1F", "1_000", "1.50", "-0", "1e3", ".5", "yes", "No", "true", "2026-08-14",
        "14:30", "1:15", "+1 psi", "4,600 ft", "a#b", "a:b"}) {
    CHECK(text_of(text) == text);
  }
  CHECK(text_of("\"a: b # c\"") == "a: b # c");
  CHECK(text_of("'it''s'") == "it's");
  CHECK(text_of("\"\\u00BD \\\"cup\\\"\"") == "\u00BD \"cup\"");
}

TEST_CASE("null is null unless it is quoted") {
  for (const std::string_view nothing : {"", "~", "null", "Null", "NULL"}) {
    const node root = root_of("food: " + std::string(nothing) + "\npack: raw\n");
    CHECK(find(root, "food")->kind == node_kind::null);
    CHECK(place_of(*find(root, "food")) == "1:1");
  }
  CHECK(find(root_of("food: \"null\"\n"), "food")->kind == node_kind::scalar);
}

TEST_CASE("several documents are several plans, each with its place") {
  const auto all = documents_of("food: corn\n---\nfood: peas\n...\n---\n# third\nfood: okra\n");
  REQUIRE(all.size() == 3);
  CHECK(find(all[0].root, "food")->text == "corn");
  CHECK(place_of(*find(all[1].root, "food")) == "3:7");
  CHECK(place_of(all[2].root) == "7:1");
  CHECK(all[2].name == "plan.yaml");
}

TEST_CASE("an error in one document is told with its line in the text") {
  CHECK(fault_places_of("food: corn\n---\nfood: peas\nfood: okra\n---\npack: warm\n") ==
        "4:1 food\n6:7 pack\n");
}

TEST_CASE("a text that goes on after its plan without `---` is broken, not two plans") {
  CHECK(begins(faults_of("  food: corn\npack: raw\n"), "2:1"));
  CHECK(begins(faults_of("{food: corn}\npack: raw\n"), "2:1"));
  CHECK(begins(faults_of("{food: corn} {pack: raw}\n"), "1:14"));
  CHECK_FALSE(faults_of("food: corn\n...\npack: raw\n---\n{jar: pint} x\n").empty());
}

TEST_CASE("no plan of a text that goes on without `---` is judged, the first neither") {
  for (const std::string_view text :
       {"  food: corn\npack: raw\n", "{food: corn}\npack: raw\n", "{food: corn} {pack: raw}\n"}) {
    CAPTURE(text);
    for (const jarproof::document& d : documents_of(text)) CHECK_FALSE(jarproof::read_plan(d));
  }
}

TEST_CASE("after `...` a plan may begin without `---`, also below a comment") {
  CHECK(documents_of("food: corn\n...\nfood: peas\n").size() == 2);
  CHECK(faults_of("food: corn\n...\nfood: peas\n") == "");
  CHECK(faults_of("food: corn\n...\n# the second\n\nfood: peas\n") == "");
  CHECK(faults_of("food: corn\n--- # the second\nfood: peas\n") == "");
}

TEST_CASE("an empty text holds no document") {
  CHECK(documents_of("").empty());
  CHECK(documents_of("\n\n").empty());
  CHECK(documents_of("# only a note\n").empty());
  CHECK(documents_of("\xEF\xBB\xBF").empty());
}

TEST_CASE("a byte order mark does not move the first line") {
  const node root = root_of(
      "\xEF\xBB\xBF"
      "food: corn\n");
  CHECK(place_of(root.members[0].value) == "1:7");
  CHECK(fault_places_of("\xEF\xBB\xBF"
                        "pack: warm\n") == "1:7 pack\n");
}

TEST_CASE("lines may end with CR LF") {
  const node root = root_of("food: corn\r\npack: raw\r\nprepared:\r\n  - a\r\n  - \"b\"\r\n");
  CHECK(find(root, "food")->text == "corn");
  CHECK(place_of(*find(root, "pack")) == "2:7");
  CHECK(find(root, "prepared")->items[1].text == "b");
  CHECK(place_of(find(root, "prepared")->items[1]) == "5:5");
  CHECK(fault_places_of("food: corn\r\n\r\npack: warm\r\n") == "3:7 pack\n");
}

TEST_SUITE_END();

}  // namespace yaml_tests
