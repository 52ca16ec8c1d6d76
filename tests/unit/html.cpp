// The frame of every page: escaping, elements, findings, and how far colours stand apart.
// SPDX-License-Identifier: MIT
#include "jarproof/format/html.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "support/markup.hpp"
#include "support/small_edition.hpp"

namespace html_tests {
namespace {

using strings = std::vector<std::string>;

/// The colours of the style sheet by name.
std::map<std::string, std::string> colours() {
  std::map<std::string, std::string> out;
  const std::string css(jarproof::html_style);
  const std::regex one("--([a-z-]+):#([0-9a-f]{6})");
  for (auto at = std::sregex_iterator(css.begin(), css.end(), one); at != std::sregex_iterator();
       ++at)
    out[(*at)[1].str()] = (*at)[2].str();
  return out;
}

/// Relative luminance of an sRGB colour (WCAG 2.2, definition of relative luminance).
double luminance(const std::string& hex) {
  double parts[3] = {};
  for (std::size_t i = 0; i < 3; ++i) {
    const double share = std::stoi(hex.substr(i * 2, 2), nullptr, 16) / 255.0;
    parts[i] = share <= 0.04045 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
  }
  return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
}

/// Contrast ratio of two colours (WCAG 2.2, definition of contrast ratio).
double contrast(const std::string& a, const std::string& b) {
  const double first = luminance(a);
  const double second = luminance(b);
  return (std::max(first, second) + 0.05) / (std::min(first, second) + 0.05);
}

}  // namespace

TEST_SUITE_BEGIN("html");

TEST_CASE("texts are escaped") {
  using jarproof::html_text;
  CHECK(html_text("<b>\"5\" & 'x'</b>") == "&lt;b&gt;&quot;5&quot; &amp; &#39;x&#39;&lt;/b&gt;");
  CHECK(html_text("a\x01"
                  "b\x1b[31m\x7f\xc2\x9b\x80") ==
        "a\xEF\xBF\xBD"
        "b\xEF\xBF\xBD[31m\xEF\xBF\xBD\xEF\xBF\xBD"
        "\xEF\xBF\xBD");
  CHECK(html_text(std::string_view("a\0b", 3)) ==
        "a\xEF\xBF\xBD"
        "b");
  CHECK(html_text("jalape\u00F1o, 5 \u00B0") == "jalape\u00F1o, 5 \u00B0");
}

TEST_CASE("elements close in order") {
  jarproof::html_writer w;
  w.open("ul", "class=\"x\"");
  w.open("li");
  w.text("1 < 2");
  CHECK(w.take() == "<ul class=\"x\"><li>1 &lt; 2</li>\n</ul>\n");
  w.close();
  CHECK(w.take().empty());
}

TEST_CASE("backticks of a sentence become code, an odd one stays") {
  jarproof::html_writer w;
  w.sentence("write `vent: <10> min`, or `");
  CHECK(w.take() == "write <code>vent: &lt;10&gt; min</code>, or `");
}

TEST_CASE("a page is whole, and says what a check cannot see") {
  const std::string page = jarproof::html_page("A & B", "<h1>A</h1>\n", fixtures::small_edition);
  CHECK(fixtures::faults_of_page(page) == strings{});
  CHECK(page.find("<title>A &amp; B</title>") != std::string::npos);
  const std::string words = fixtures::words_of_page(page);
  CHECK(words.find(fixtures::small_edition.caution) != std::string::npos);
  CHECK(words.find("Rules: small \"tables\", 2015.1.1.") != std::string::npos);
}

TEST_CASE("the strict look finds faults") {
  using fixtures::faults_of_markup;
  for (const char* bad :
       {"<p>", "<p></b>", "<p class=x></p>", "a & b", "<p id=\"a\"></p><p id=\"a\"></p>",
        "<h1>a</h1><h3>b</h3>", "<th>a</th>", "<svg viewBox=\"0 0 1 1\"><path d=\"\"/></svg>",
        "<svg><title></title></svg>", "<script></script>", "<p onclick=\"x\"></p>", "<br/>",
        "<a href=\"https://example.org\">a</a>", "<a href=\"#nowhere\">a</a>", "a > b", "\x01",
        "<p title=\"a<b\"></p>", "<p title=\"a\"title=\"b\"></p>", "<p"}) {
    CAPTURE(bad);
    CHECK_FALSE(faults_of_markup(bad).empty());
  }
  CHECK(faults_of_markup("<h1>a &amp; b</h1><h2>c</h2><h1>d</h1>") == strings{});
  CHECK_FALSE(fixtures::faults_of_page("<h1>a</h1>").empty());
}

TEST_CASE("a finding says what it does in a word beside its shape") {
  const jarproof::report r = fixtures::full_report();
  jarproof::html_writer w;
  jarproof::detail::source_notes sources;
  w.open("ol");
  jarproof::detail::write_finding(w, r, r.findings[0], false, 2, sources, "minute 87");
  jarproof::detail::write_finding(w, r, r.findings[0], true, 2, sources);
  w.close();
  sources.write(w, 2);
  const std::string out = w.take();
  CHECK(out.find("</svg> rejects</span> Pressure too low</h2>") != std::string::npos);
  CHECK(out.find("minute 87, at plan.yaml:9:11 (pressure)") != std::string::npos);
  CHECK(out.find("class=\"do\">Do: Put the 15 psi weight on.</p>") != std::string::npos);
  CHECK(out.find("Why: ") == out.rfind("Why: "));
  CHECK(out.find(". Source 1</p>") == out.rfind(". Source 1</p>"));
  CHECK(out.find("<li>A made-up table, page 1-1</li>") != std::string::npos);
}

TEST_CASE("a publication is named once and referred to by its number") {
  jarproof::detail::source_notes sources;
  CHECK(sources.refer({}).empty());
  CHECK(sources.refer({"A", "B", "C"}) == "Source 1, 2");
  CHECK(sources.refer({"D", "A"}) == "Source 3, 1");
}

TEST_CASE("every verdict has a shape of its own") {
  std::set<std::string> drawn;
  for (const char* name : {"accepted", "rejected", "untested", "incomplete", "unreadable"}) {
    std::string shape = jarproof::shape_of(name);
    CHECK(fixtures::faults_of_markup(shape) == strings{});
    shape.erase(0, shape.find("</title>"));
    CHECK(drawn.insert(shape).second);
  }
}

// WCAG 2.2, success criterion 1.4.3: 4.5 to 1 for text; 1.4.11: 3 to 1 for what is drawn.
TEST_CASE("texts and lines stand out from their ground") {
  const auto named = colours();
  const auto ratio = [&](const std::string& a, const std::string& b) {
    CAPTURE(a);
    CAPTURE(b);
    REQUIRE(named.count(a) == 1);
    REQUIRE(named.count(b) == 1);
    return contrast(named.at(a), named.at(b));
  };
  // WCAG 2.2: black on white is 21 to 1.
  CHECK(contrast("000000", "ffffff") == doctest::Approx(21.0));
  const std::vector<std::pair<std::string, std::string>> texts = {
      {"ink", "paper"},      {"ink", "band"},        {"ink", "white"},
      {"ink", "glass"},      {"ink", "liquid"},      {"ink", "food"},
      {"ink", "good-soft"},  {"ink", "white"},       {"ink", "bad-soft"},
      {"soft", "paper"},     {"copper", "paper"},    {"white", "copper"},
      {"white", "good"},     {"white", "bad"},       {"white", "ink"},
      {"good", "good-soft"}, {"bad", "bad-soft"},    {"untested", "untested-soft"},
      {"open", "open-soft"}, {"plain", "plain-soft"}};
  for (const auto& [text, ground] : texts) {
    const auto& shown_text = text;  // clang 14 captures no structured binding
    CAPTURE(shown_text);
    const auto& shown_ground = ground;  // clang 14 captures no structured binding
    CAPTURE(shown_ground);
    CHECK(ratio(text, ground) >= 4.5);
  }
  for (const auto& [line, ground] :
       std::vector<std::pair<std::string, std::string>>{{"good", "paper"},
                                                        {"good", "good-soft"},
                                                        {"bad", "paper"},
                                                        {"bad", "bad-soft"},
                                                        {"edge", "paper"},
                                                        {"edge", "white"},
                                                        {"untested", "paper"},
                                                        {"open", "paper"},
                                                        {"plain", "plain-soft"},
                                                        {"white", "untested"},
                                                        {"white", "open"},
                                                        {"white", "plain"},
                                                        {"copper", "band"}}) {
    const auto& shown_line = line;  // clang 14 captures no structured binding
    CAPTURE(shown_line);
    const auto& shown_ground = ground;  // clang 14 captures no structured binding
    CAPTURE(shown_ground);
    CHECK(ratio(line, ground) >= 3.0);
  }
  // No colour but those of the first rule, and of these none unused.
  const std::string css(jarproof::html_style);
  const std::string rules = css.substr(css.find('}'));
  CHECK(rules.find('#') == std::string::npos);
  for (const auto& [name, hex] : named) {
    const auto& shown_name = name;  // clang 14 captures no structured binding
    CAPTURE(shown_name);
    CHECK(rules.find("var(--" + name + ")") != std::string::npos);
  }
}

TEST_CASE("no text is small: 16 px on a screen, 9 pt on paper, 14 units in a picture") {
  const std::string css(jarproof::html_style);
  const std::regex size("font(?:-size)?:(?:[0-9]+ )?([0-9.]+)(rem|em|pt|px)");
  std::size_t count = 0;
  for (auto at = std::sregex_iterator(css.begin(), css.end(), size); at != std::sregex_iterator();
       ++at, ++count) {
    const std::string unit = (*at)[2].str();
    const double value = std::stod((*at)[1].str());
    CAPTURE((*at)[0].str());
    CHECK(value >= (unit == "rem" ? 1.0 : unit == "em" ? 0.85 : unit == "pt" ? 9.0 : 14.0));
  }
  CHECK(count > 10);
}

TEST_SUITE_END();

}  // namespace html_tests
