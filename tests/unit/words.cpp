// Comparing names, nearest words, joined lists, valid UTF-8.
// SPDX-License-Identifier: MIT
#include "jarproof/detail/words.hpp"

#include <doctest/doctest.h>

#include <string>
#include <string_view>
#include <vector>

#include "jarproof/list.hpp"

namespace words_tests {

using namespace jarproof::detail;
using namespace std::string_view_literals;

TEST_SUITE_BEGIN("words");

TEST_CASE("blanks, digits and lower case are those of ASCII, whatever the locale") {
  for (int byte = 0; byte < 256; ++byte) {
    const char c = static_cast<char>(byte);
    CAPTURE(byte);
    CHECK(is_digit(c) == (byte >= 0x30 && byte <= 0x39));
    CHECK(is_space(c) == (byte == 0x20 || byte == 0x09 || byte == 0x0A || byte == 0x0D));
    CHECK(lower(c) == (byte >= 0x41 && byte <= 0x5A ? static_cast<char>(byte + 0x20) : c));
  }
}

TEST_CASE("trim takes blanks from both ends and from nowhere else") {
  CHECK(trim(" \t\r\n a  b \n") == "a  b");
  CHECK(trim("a") == "a");
  CHECK(trim("") == "");
  CHECK(trim(" \t\r\n ") == "");
}

TEST_CASE("names are the same whatever their case, hyphens and blanks") {
  CHECK(folded("Green-Beans ") == "green beans");
  CHECK(folded("  green \t  beans") == "green beans");
  CHECK(folded("green_beans") == "green beans");
  CHECK(folded("-green--beans-") == "green beans");
  CHECK(folded(" - ") == "");
  CHECK(folded("") == "");
}

TEST_CASE("letters outside ASCII stay as they are") {
  CHECK(folded("Jalape\u00F1o-Peppers") == "jalape\u00F1o peppers");
  CHECK(folded("\u00D1and\u00FA") == "\u00D1and\u00FA");
}

TEST_CASE("folding a folded name changes nothing") {
  for (const char* name : {"Green-Beans ", "a_b-c d", "", "--", "1-inch-pieces"}) {
    CHECK(folded(folded(name)) == folded(name));
  }
}

TEST_CASE("distance counts inserted, deleted, replaced and swapped characters") {
  CHECK(distance("", "") == 0);
  CHECK(distance("", "jar") == 3);
  CHECK(distance("jar", "") == 3);
  CHECK(distance("jar", "jar") == 0);
  CHECK(distance("presure", "pressure") == 1);
  CHECK(distance("presssure", "pressure") == 1);
  CHECK(distance("prezsure", "pressure") == 1);
  CHECK(distance("perssure", "pressure") == 1);
  CHECK(distance("kitten", "sitting") == 3);
}

TEST_CASE("distance is the same from either side and zero only for equal words") {
  const std::vector<std::string> words = {"", "a", "ab", "ba", "jar", "jars", "gauge", "gague"};
  for (const std::string& a : words) {
    for (const std::string& b : words) {
      CAPTURE(a);
      CAPTURE(b);
      CHECK(distance(a, b) == distance(b, a));
      CHECK((distance(a, b) == 0) == (a == b));
    }
  }
}

TEST_CASE("the nearest word is found for a slip of the pen") {
  const std::vector<std::string_view> keys = {"food", "form", "gauge-error", "pressure", "time"};
  CHECK(nearest("presure", keys) == "pressure");
  CHECK(nearest("tiem", keys) == "time");
  CHECK(nearest("Gauge_Error", keys) == "gauge-error");
  CHECK(nearest("fod", keys) == "food");
}

TEST_CASE("there is no nearest word for something else altogether") {
  const std::vector<std::string_view> keys = {"food", "form", "gauge-error", "pressure", "time"};
  CHECK(nearest("ingredients", keys) == "");
  CHECK(nearest("xyz", keys) == "");
  CHECK(nearest("time", std::vector<std::string>{}) == "");
}

TEST_CASE("a long text is no slip of the pen") {
  const std::string key(64, 'k');
  const std::vector<std::string> keys = {key};
  CHECK(nearest(std::string(63, 'k'), keys) == key);
  CHECK(nearest(std::string(65, 'k'), keys) == "");
}

TEST_CASE("of equally near words the first is taken") {
  const std::vector<std::string> words = {"bat", "cat"};
  CHECK(nearest("rat", words) == "bat");
}

TEST_CASE("nearest and joined work on the lists of an edition") {
  static constexpr std::string_view words[] = {"raw", "hot"};
  const jarproof::list<std::string_view> packs = words;
  CHECK(nearest("rwa", packs) == "raw");
  CHECK(joined(packs) == "raw or hot");
}

TEST_CASE("words are joined as in a sentence") {
  using words = std::vector<std::string>;
  CHECK(joined(words{}) == "");
  CHECK(joined(words{"a"}) == "a");
  CHECK(joined(words{"a", "b"}) == "a or b");
  CHECK(joined(words{"a", "b", "c"}) == "a, b or c");
  CHECK(joined(words{"a", "b", "c"}, "and") == "a, b and c");
}

TEST_CASE("characters are counted as code points") {
  CHECK(characters("") == 0);
  CHECK(characters("abc") == 3);
  CHECK(characters("\u00BD cup") == 5);
  CHECK(characters("\u00F1\u20AC\U0001F96B") == 3);
}

TEST_CASE("valid UTF-8 is valid up to the ends of every range (RFC 3629, section 4)") {
  constexpr auto none = std::string_view::npos;
  for (const std::string_view good :
       {""sv, "a"sv, "\0"sv, "\x7F"sv, "\xC2\x80"sv, "\xDF\xBF"sv, "\xE0\xA0\x80"sv,
        "\xED\x9F\xBF"sv, "\xEE\x80\x80"sv, "\xEF\xBF\xBF"sv, "\xF0\x90\x80\x80"sv,
        "\xF4\x8F\xBF\xBF"sv}) {
    CAPTURE(good);
    CHECK(invalid_utf8(good) == none);
    CHECK(invalid_utf8("ab" + std::string(good) + "cd") == none);
  }
}

TEST_CASE("one step beyond a range of RFC 3629 is invalid, and the place is told") {
  for (const std::string_view bad :
       {"\x80"sv, "\xBF"sv, "\xC0\x80"sv, "\xC1\xBF"sv, "\xC2\x7F"sv, "\xC2\xC0"sv,
        "\xE0\x9F\xBF"sv, "\xED\xA0\x80"sv, "\xED\xBF\xBF"sv, "\xF0\x8F\xBF\xBF"sv,
        "\xF4\x90\x80\x80"sv, "\xF5\x80\x80\x80"sv, "\xFE"sv, "\xFF"sv}) {
    CAPTURE(bad);
    CHECK(invalid_utf8(bad) == 0);
    CHECK(invalid_utf8("\u00BD" + std::string(bad) + "cd") == 2);
  }
}

TEST_CASE("a character that is cut off is invalid") {
  for (const std::string_view whole : {"\xC2\xBD"sv, "\xE2\x82\xAC"sv, "\xF0\x9F\xA5\xAB"sv}) {
    for (std::size_t size = 1; size < whole.size(); ++size) {
      CHECK(invalid_utf8(whole.substr(0, size)) == 0);
      CHECK(invalid_utf8("a" + std::string(whole.substr(0, size))) == 1);
      CHECK(invalid_utf8(std::string(whole.substr(0, size)) + "a") == 0);
    }
  }
}

TEST_SUITE_END();

}  // namespace words_tests
