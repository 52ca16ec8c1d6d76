// YAML that is refused: bytes, duplicate keys, anchors, depth, broken syntax, size.
// SPDX-License-Identifier: MIT
#include "jarproof/yaml.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <ostream>
#include <string>
#include <string_view>

#include "support/readings.hpp"

namespace yaml_refused_tests {

using fixtures::begins;
using fixtures::documents_of;
using fixtures::fault_places_of;
using fixtures::faults_of;
using fixtures::one_mib;
using fixtures::repeated;
using namespace std::string_view_literals;

TEST_SUITE_BEGIN("yaml");

TEST_CASE("UTF-16 is named") {
  const std::string_view message = "1:1 | the text is UTF-16 | save it as UTF-8\n";
  CHECK(faults_of("\xFF\xFE"
                  "f\0o\0o\0d\0:\0 \0x\0"sv) == message);
  CHECK(faults_of("\xFE\xFF"
                  "\0f\0o\0o\0d\0:\0 \0x"sv) == message);
}

TEST_CASE("bytes that are no UTF-8 are refused at the first one") {
  CHECK(faults_of("food: corn\ntitle: \u00BD \xFF and \xFE\n") ==
        "2:10 | the text is not UTF-8 from here on | save it as UTF-8\n");
  CHECK(faults_of("title: jalape\xF1os\n") ==
        "1:14 | the text is not UTF-8 from here on | save it as UTF-8\n");
  CHECK(begins(faults_of("food: \xC0\xAF\n"), "1:7 | the text is not UTF-8"));
  CHECK(begins(faults_of("food: \xED\xA0\x80\n"), "1:7 | the text is not UTF-8"));
  CHECK(begins(faults_of("food: corn \xE2\x82"), "1:12 | the text is not UTF-8"));
}

TEST_CASE("tabs that indent are refused, each with its line, and other tabs are blanks") {
  const std::string message = " | a tab stands where the line is indented | indent with blanks\n";
  CHECK(faults_of("canner:\n\tquarts: 7\n  \tpints: 9\n") == "2:1" + message + "3:3" + message);
  CHECK(faults_of("food:\tcorn\npack: raw\t# note\n") == "");
}

TEST_CASE("control characters are refused, each with its place") {
  const std::string message = " | a control character stands in the text | delete it\n";
  CHECK(faults_of("title: \u00BD\x01 \x02\nfood: a\x1B[31m\n") ==
        "1:9" + message + "1:11" + message + "2:8" + message);
  CHECK(faults_of("food: a\0b\n"sv) == "1:8" + message);
  CHECK(faults_of("food: a\x7F\n") == "1:8" + message);
  CHECK(faults_of("food: a\u009B31m\n") == "1:8" + message);
}

TEST_CASE("a key that stands twice names both lines") {
  CHECK(faults_of("food: corn\npack: raw\nfood: peas\n") ==
        "3:1 food | `food` stands twice; the first is on line 1 | keep one of the two\n");
  CHECK(faults_of("food: corn\n\"food\": corn\n'food': corn\n") ==
        "2:1 food | `food` stands twice; the first is on line 1 | keep one of the two\n"
        "3:1 food | `food` stands twice; the first is on line 1 | keep one of the two\n");
  CHECK(faults_of("held: {for: 1 h, at: 38 F,\n for: 2 h}\n") ==
        "2:2 held.for | `for` stands twice; the first is on line 1 | keep one of the two\n");
}

TEST_CASE("the same key in two maps or two documents is no duplicate") {
  CHECK(documents_of("food: corn\n---\nfood: corn\n").size() == 2);
  CHECK(fault_places_of("a: {x: 1}\nb: {x: 1}\n") == "1:1 a\n2:1 b\n");
}

TEST_CASE("anchors, aliases, tags and merges are refused, all of them") {
  CHECK(faults_of("food: &f corn\ntitle: *f\nform: !!str whole\nlot: !mine a\n<<: {pack: raw}\n") ==
        "1:7 | an anchor (`&name`) marks this value | "
        "leave the anchor out and write every value where it is used\n"
        "2:8 | an alias (`*name`) repeats another value | write the value out here\n"
        "3:7 | a tag (`!name`) stands before this value | leave the tag out\n"
        "4:6 | a tag (`!name`) stands before this value | leave the tag out\n"
        "5:1 << | `<<` merges another map into this one | write the keys out\n");
}

TEST_CASE("anchors and tags on maps, lists, keys and nothing are refused") {
  for (const std::string_view text :
       {"held: &h {for: 1 h, at: 38 F}\n", "prepared: &p [a]\n", "&k food: corn\n", "food: &e\n",
        "held: !!map {for: 1 h, at: 38 F}\n", "prepared: !!seq [a]\n", "!!str food: corn\n",
        "food: !!null\n", "&root\nfood: corn\n", "!!map\nfood: corn\n", "food: !<tag:x> corn\n",
        "food: ! corn\n", "food: !!binary Y29ybg==\n"}) {
    const std::string faults = faults_of(text);
    CAPTURE(text);
    CHECK((faults.find("an anchor") != std::string::npos ||
           faults.find("a tag") != std::string::npos));
  }
}

TEST_CASE("an alias is called one even where its anchor is missing") {
  CHECK(begins(faults_of("title: *best beans*\n"), "1:8 | an alias (`*name`)"));
  CHECK(begins(faults_of("food: *corn\n"), "1:7 | an alias (`*name`)"));
}

TEST_CASE("aliases inside aliases do not grow") {
  std::string text = "a0: &a0 [x, x, x, x, x, x, x, x, x]\n";
  for (int i = 1; i < 10; ++i) {
    const std::string name = "a" + std::to_string(i);
    const std::string before = "*a" + std::to_string(i - 1);
    text += name + ": &" + name + " [" + before + repeated(", " + before, 8) + "]\n";
  }
  const std::string faults = faults_of(text);
  CHECK(faults.size() < 20'000);
  CHECK(faults.find("2:10 | an alias") != std::string::npos);
}

TEST_CASE("a key must be a word") {
  for (const std::string_view text :
       {"[a]: b\n", "{a: b}: c\n", "? [a]\n: b\n", ": b\n", "~: b\n"}) {
    CAPTURE(text);
    CHECK(faults_of(text).find("a key must be a word") != std::string::npos);
  }
}

TEST_CASE("sixteen levels are read, one more is refused") {
  const std::string deep = "title: " + repeated("[", 15) + repeated("]", 15) + "\n";
  CHECK(faults_of(deep) ==
        "1:8 title | `title` takes one value | write `title: Green beans, first picking`\n");
  CHECK(begins(faults_of("title: " + repeated("[", 16) + repeated("]", 16) + "\n"),
               "1:23 | the nesting is deeper than 16 levels | a plan needs two levels at most\n"));
}

TEST_CASE("a hundred thousand brackets are refused at once") {
  for (const std::string_view bracket : {"[", "{", "- ", "? ", "{a: ", "[{", "a: {"}) {
    for (const std::string_view head : {"", "food: ", "prepared:\n  "}) {
      CAPTURE(bracket);
      CAPTURE(head);
      CHECK_FALSE(faults_of(std::string(head) + repeated(bracket, 100'000)).empty());
    }
  }
  CHECK(begins(faults_of("food: " + repeated("[", 100'000) + repeated("]", 100'000)),
               "1:22 | the nesting is deeper than 16 levels"));
}

TEST_CASE("a bracket or brace that is not closed") {
  const std::string message = " | a bracket or brace is not closed | close it with `]` or `}`\n";
  for (const std::string_view text :
       {"food: corn\nprepared: [a, b\n", "food: corn\nprepared: [a, b\njar: pint\n",
        "food: corn\nheld: {for: 1 h\n", "food: corn\nheld: {for: 1 h\npack: raw\n",
        "{food: corn\n", "food: corn\nprepared: [a, b"}) {
    CAPTURE(text);
    CHECK(faults_of(text).find(message) != std::string::npos);
  }
}

TEST_CASE("a quote that is not closed") {
  const std::string message = " | a quote is not closed | close it, or leave both quotes out\n";
  for (const std::string_view text :
       {"food: corn\ntitle: \"beans", "food: corn\ntitle: \"beans\n", "food: corn\ntitle: 'beans\n",
        "food: corn\ntitle: \"beans\npack: raw\n", "title: 'it''s\n", "\"food: corn\n"}) {
    CAPTURE(text);
    CHECK(faults_of(text).find(message) != std::string::npos);
  }
}

TEST_CASE("text behind a closing quote is not called wrong indentation") {
  const std::string faults = faults_of("title: \"Beans\" first picking\nfood: corn\n");
  CHECK(begins(faults, "1:"));
  CHECK(faults.find("indented") == std::string::npos);
}

TEST_CASE("a second colon in a line") {
  CHECK(
      faults_of("food: corn\ntitle: note: sweet\n") ==
      "2:12 | a second `: ` stands in this line | put the text after the first colon in quotes\n");
}

TEST_CASE("wrong indentation") {
  const std::string message =
      " | this line is indented otherwise than the keys above it | "
      "start it in the same column as they do\n";
  CHECK(faults_of("canner:\n  quarts: 7\n pints: 9\n") == "3:2" + message);
  CHECK(faults_of("ingredients:\n  - beans\n - salt\n") == "3:2" + message);
  CHECK(faults_of("food: corn\n- salt\n") == "2:1" + message);
}

TEST_CASE("a line that is indented further than the keys above it is called that") {
  const std::string deeper = faults_of("food: corn\n pack: raw\njar: pint\n");
  CHECK(begins(deeper, "2:"));
  CHECK(deeper.find("is indented otherwise") != std::string::npos);
  CHECK(faults_of("canner:\n  quarts: 7\n   pints: 9\n").find("is indented otherwise") !=
        std::string::npos);
}

TEST_CASE("a colon without a blank is found on its own line") {
  CHECK(begins(faults_of("food: corn\npack:raw\njar: pint\n"), "2:"));
}

TEST_CASE("characters that YAML keeps for itself are refused") {
  for (const std::string_view text :
       {"title: @home\n", "title: `home`\n", "title: %5\n", "food: ]\n", "food: [corn]]\n",
        "food: corn\n}\n", "title: \"a\\qb\"\n"}) {
    CAPTURE(text);
    CHECK(begins(faults_of(text), text.find('\n') + 1 == text.size() ? "1:" : "2:"));
  }
  CHECK(faults_of("title: \"a\\qb\"\n") ==
        "1:12 | a backslash in double quotes starts an unknown escape | use single quotes\n");
}

TEST_CASE("one MiB is read and one byte more is refused") {
  std::string text = "food: corn\n#";
  text.resize(one_mib - 1, 'x');
  text += "\n";
  REQUIRE(text.size() == one_mib);
  CHECK(faults_of(text) == "");
  CHECK(faults_of(text + "\n") ==
        "1:1 | the text is larger than 1 MiB | split it into several files\n");
}

TEST_CASE("one long line of many values is read to its end") {
  CHECK(faults_of("prepared: [" + repeated("a, ", 100'000) + "a]\n") == "");
}

TEST_CASE("every one of many bad bytes is named") {
  CHECK(fault_places_of(repeated("\x01", 3)) == "1:1\n1:2\n1:3\n");
  CHECK_FALSE(faults_of(repeated("\t\n", 100'000)).empty());
}

TEST_CASE("many documents are all read") {
  CHECK(documents_of(repeated("food: corn\n---\n", 20'000)).size() >= 20'000);
}

TEST_CASE("a comma where a document should begin ends the reading") {
  for (const std::string_view text :
       {", x", "{food: corn}, {food: peas}\n", "[a],\n", "\"a\" ,", "{food: corn},\n"}) {
    CAPTURE(text);
    CHECK_FALSE(faults_of(text).empty());
  }
}

TEST_CASE("whatever the bytes, reading ends with documents or with reasons") {
  constexpr std::string_view parts[] = {
      ",",   "food", ": ",  ":",  "\n", " ",  "  ",     "- ",   "-",  "[", "]",     "{",
      "}",   "\"",   "'",   "|",  ">",  "&a", "*a",     "!t",   "!!", "#", "---\n", "...\n",
      "%",   "?",    "\t",  "\r", "\\", "~",  "\u00BD", "\xC2", "<<", "@", "corn",  "\xEF\xBB\xBF",
      "2\n", "|2\n", "\0"sv};
  std::uint32_t state = 2015;  // a fixed walk through the parts, the same in every run
  const auto next = [&](std::size_t below) {
    state = state * 1'664'525 + 1'013'904'223;
    return static_cast<std::size_t>(state >> 8) % below;
  };
  int wrong = 0;
  int refused = 0;
  for (int i = 0; i < 20'000; ++i) {
    std::string text;
    for (std::size_t n = next(14) + 1; n > 0; --n) text += parts[next(std::size(parts))];
    const std::string faults = faults_of(text);
    if (faults.empty()) continue;
    ++refused;
    // Every fault has a place inside the text.
    const auto last_line = 1 + std::count(text.begin(), text.end(), '\n');
    const long line = std::stol(faults);
    if (line < 1 || line > last_line || faults.find(":0") == faults.find(':')) ++wrong;
  }
  CHECK(wrong == 0);
  CHECK(refused > 1'000);
}

TEST_SUITE_END();

}  // namespace yaml_refused_tests
