// Text as it comes out of web pages: HTML entities, tags and special blanks become plain text.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstdint>
#include <iterator>
#include <string>
#include <string_view>

#include "jarproof/detail/words.hpp"

namespace jarproof::detail {

struct named_entity {
  std::string_view name;
  std::string_view text;
};

/// The entities that recipes use (names of the HTML standard). Others stay as written, so that what
/// they stand for is not lost in silence.
inline constexpr named_entity entities[] = {
    {"amp", "&"},         {"lt", "<"},          {"gt", ">"},          {"quot", "\""},
    {"apos", "'"},        {"nbsp", " "},        {"thinsp", " "},      {"ensp", " "},
    {"emsp", " "},        {"shy", ""},          {"frac12", "\u00BD"}, {"half", "\u00BD"},
    {"frac14", "\u00BC"}, {"frac34", "\u00BE"}, {"frac13", "\u2153"}, {"frac23", "\u2154"},
    {"frac15", "\u2155"}, {"frac25", "\u2156"}, {"frac35", "\u2157"}, {"frac45", "\u2158"},
    {"frac16", "\u2159"}, {"frac56", "\u215A"}, {"frac18", "\u215B"}, {"frac38", "\u215C"},
    {"frac58", "\u215D"}, {"frac78", "\u215E"}, {"frasl", "\u2044"},  {"deg", "\u00B0"},
    {"times", "\u00D7"},  {"ndash", "\u2013"},  {"mdash", "\u2014"},  {"hellip", "\u2026"},
    {"lsquo", "\u2018"},  {"rsquo", "\u2019"},  {"ldquo", "\u201C"},  {"rdquo", "\u201D"},
    {"bull", "\u2022"},   {"middot", "\u00B7"}, {"eacute", "\u00E9"}, {"Eacute", "\u00C9"},
    {"egrave", "\u00E8"}, {"ecirc", "\u00EA"},  {"agrave", "\u00E0"}, {"aacute", "\u00E1"},
    {"acirc", "\u00E2"},  {"iacute", "\u00ED"}, {"icirc", "\u00EE"},  {"oacute", "\u00F3"},
    {"ocirc", "\u00F4"},  {"uacute", "\u00FA"}, {"ucirc", "\u00FB"},  {"ntilde", "\u00F1"},
    {"ccedil", "\u00E7"}, {"auml", "\u00E4"},   {"ouml", "\u00F6"},   {"uuml", "\u00FC"},
    {"szlig", "\u00DF"},  {"oslash", "\u00F8"}, {"aring", "\u00E5"},  {"aelig", "\u00E6"}};

/// Tags that only shape the text, and those that end a line. Any other stays as written: `<quart`
/// may be meant as less than a quart.
inline constexpr std::string_view inline_tags[] = {
    "a",    "abbr", "b",     "del",  "em",     "font",   "i",   "img", "input", "ins", "label",
    "mark", "s",    "small", "span", "strike", "strong", "sub", "sup", "u",     "wbr"};
inline constexpr std::string_view line_tags[] = {
    "article", "br", "dd", "div", "dl",      "dt",    "h1",    "h2", "h3", "h4", "h5", "h6",
    "hr",      "li", "ol", "p",   "section", "table", "tbody", "td", "th", "tr", "ul"};

/// U+0001 to U+10FFFF as UTF-8; nothing for what is no character.
[[nodiscard]] inline std::string utf8_of(std::uint32_t c) {
  const auto tail = [](std::uint32_t bits) { return static_cast<char>(0x80 | (bits & 0x3F)); };
  if (c == 0 || c > 0x10FFFF || (c >= 0xD800 && c <= 0xDFFF)) return {};
  if (c < 0x80) return {static_cast<char>(c)};
  if (c < 0x800) return {static_cast<char>(0xC0 | (c >> 6)), tail(c)};
  if (c < 0x10000) return {static_cast<char>(0xE0 | (c >> 12)), tail(c >> 6), tail(c)};
  return {static_cast<char>(0xF0 | (c >> 18)), tail(c >> 12), tail(c >> 6), tail(c)};
}

/// Moves an entity at the front of `text`, such as `&frac12;`, to `out`; false where there is none.
[[nodiscard]] inline bool take_entity(std::string_view& text, std::string& out) {
  constexpr std::size_t longest = 10;
  const std::size_t end = text.substr(0, longest).find(';');
  if (end == std::string_view::npos || end < 3) return false;
  const std::string_view name = text.substr(1, end - 1);
  if (name.front() == '#') {
    const bool hex = name[1] == 'x' || name[1] == 'X';
    std::uint32_t code = 0;
    for (const char c : name.substr(hex ? 2 : 1)) {
      const char l = lower(c);
      if (!is_digit(c) && !(hex && l >= 'a' && l <= 'f')) return false;
      code =
          code * (hex ? 16 : 10) + static_cast<std::uint32_t>(is_digit(c) ? c - '0' : l - 'a' + 10);
    }
    const std::string written = utf8_of(code);
    const bool blank = written == "\n" || written == "\r" || written == "\t";
    if (written.empty() || (!blank && control_length(written) > 0)) return false;
    out += written;
  } else {
    const auto* found = std::find_if(std::begin(entities), std::end(entities),
                                     [&](const named_entity& e) { return e.name == name; });
    if (found == std::end(entities)) return false;
    out += found->text;
  }
  text.remove_prefix(end + 1);
  return true;
}

/// A word of its own behind a digit: `1<sup>1</sup>/<sub>2</sub>` is no 11/2.
inline void part_from_number(std::string& out) {
  if (!out.empty() && is_digit(out.back())) out += ' ';
}

/// Takes a known tag from the front of `text`; false where none stands there.
[[nodiscard]] inline bool take_tag(std::string_view& text, std::string& out) {
  std::size_t at = text.size() > 1 && text[1] == '/' ? 2 : 1;
  const bool closes = at == 2;
  std::string name;
  while (at < text.size() && name.size() < 8 &&
         ((lower(text[at]) >= 'a' && lower(text[at]) <= 'z') || is_digit(text[at]))) {
    name += lower(text[at++]);
  }
  if (at >= text.size() || (text[at] != '>' && text[at] != '/' && !is_space(text[at])))
    return false;
  const std::size_t end = text.find_first_of("<>", at);
  if (end == std::string_view::npos || text[end] != '>') return false;
  const auto is = [&](std::string_view tag) { return name == tag; };
  const bool ends_line = std::any_of(std::begin(line_tags), std::end(line_tags), is);
  if (!ends_line && std::none_of(std::begin(inline_tags), std::end(inline_tags), is)) return false;
  if (ends_line) out += '\n';
  // The 2 of `<sub>2</sub>` ends at its tag, and what comes behind it is parted by its own blank.
  if (!ends_line && !closes) part_from_number(out);
  text.remove_prefix(end + 1);
  return true;
}

/// Length of a blank beyond ASCII at the front of `text` (no-break, thin and wide blanks), or 0.
[[nodiscard]] inline std::size_t blank_length(std::string_view text) noexcept {
  if (text.substr(0, 2) == "\u00A0") return 2;
  const std::string_view three = text.substr(0, 3);
  const bool of_widths = three >= "\u2000" && three <= "\u200A" && three.size() == 3;
  return of_widths || three == "\u202F" || three == "\u205F" || three == "\u3000" ? 3 : 0;
}

/// Length of a character without width (soft hyphen, zero-width blank, byte order mark), or 0.
[[nodiscard]] inline std::size_t zero_width_length(std::string_view text) noexcept {
  if (text.substr(0, 2) == "\u00AD") return 2;
  const std::string_view three = text.substr(0, 3);
  const bool joins = three >= "\u200B" && three <= "\u200D" && three.size() == 3;
  return joins || three == "\u2060" || three == "\uFEFF" ? 3 : 0;
}

/// One pass over the text; see `plain_text`.
[[nodiscard]] inline std::string without_markup(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  while (!text.empty()) {
    if (text.front() == '&' && take_entity(text, out)) continue;
    if (text.front() == '<' && take_tag(text, out)) continue;
    if (const std::size_t blank = blank_length(text)) {
      out += ' ';
      text.remove_prefix(blank);
    } else if (const std::size_t none = zero_width_length(text)) {
      part_from_number(out);
      text.remove_prefix(none);
    } else {
      const char c = text.front();
      out += c == '\t' ? ' ' : c == '\r' ? '\n' : c;
      text.remove_prefix(1);
    }
  }
  return out;
}

/// Entities as their characters, without tags, with plain blanks; tags such as `<br>` become line
/// ends. Twice, because recipe sites write `&amp;frac12;` too.
[[nodiscard]] inline std::string plain_text(std::string_view written) {
  return without_markup(without_markup(written));
}

}  // namespace jarproof::detail
