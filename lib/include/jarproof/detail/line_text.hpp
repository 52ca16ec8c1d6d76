// The text of a recipe line in plain letters, and its words.
//
//   plain_line("• 1½ T. jalapeño – diced")   // "1½ tbsp jalapeno, diced"
// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/words.hpp"
#include "jarproof/quantity.hpp"

namespace jarproof::detail {

/// A word of a line. Commas, brackets, colons and lone dashes end a segment.
struct line_token {
  std::string text;
  int segment = 0;
};

namespace line {

[[nodiscard]] constexpr bool is_letter(char c) noexcept { return c >= 'a' && c <= 'z'; }

/// Letters of Latin-1 without their accents, for U+00C0 to U+00FF; `_` where there is none.
inline constexpr std::string_view latin_1 =
    "aaaaaaaceeeeiiiidnooooo_ouuuuy__aaaaaaaceeeeiiiidnooooo_ouuuuy_y";

/// Length of the UTF-8 character at the front.
[[nodiscard]] constexpr std::size_t length_of_character(std::string_view text) noexcept {
  const auto first = static_cast<unsigned char>(text.front());
  const std::size_t length = first < 0x80 ? 1 : first < 0xE0 ? 2 : first < 0xF0 ? 3 : 4;
  return length <= text.size() ? length : text.size();
}

/// What a character beyond ASCII stands for in a recipe line. Fraction signs stay as they are.
[[nodiscard]] inline std::string_view plain_character(std::string_view c) noexcept {
  struct pair {
    std::string_view from, to;
  };
  constexpr pair pairs[] = {{"\xC2\xA0", " "},      {"\xE2\x80\x89", " "},   {"\xE2\x80\xAF", " "},
                            {"\xE2\x80\x8A", " "},  {"\xE2\x80\x82", " "},   {"\xE2\x80\x83", " "},
                            {"\xE2\x80\x8B", ""},   {"\xEF\xBB\xBF", ""},    {"\xC2\xAD", ""},
                            {"\xE2\x80\x90", "-"},  {"\xE2\x80\x91", "-"},   {"\xE2\x80\x92", "-"},
                            {"\xE2\x80\x93", "-"},  {"\xE2\x80\x94", " - "}, {"\xE2\x88\x92", "-"},
                            {"\xE2\x81\x84", "/"},  {"\xE2\x80\x98", "'"},   {"\xE2\x80\x99", "'"},
                            {"\xE2\x80\xB2", "'"},  {"\xE2\x80\x9C", "\""},  {"\xE2\x80\x9D", "\""},
                            {"\xE2\x80\xB3", "\""}, {"\xC3\x97", " x "},     {"\xC2\xAE", ""},
                            {"\xE2\x84\xA2", ""},   {"\xC2\xBA", ""},        {"\xC2\xB0", ""},
                            {"\xE2\x80\xA0", ""},   {"\xE2\x80\xA2", ", "},  {"\xC2\xB7", ", "}};
  for (const pair& p : pairs) {
    if (p.from == c) return p.to;
  }
  if (c.size() == 2 && static_cast<unsigned char>(c[0]) == 0xC3) {
    const std::string_view letter = latin_1.substr(static_cast<unsigned char>(c[1]) & 0x3FU, 1);
    if (letter != "_") return letter;
  }
  return c;
}

/// Bullets, boxes and list numbers in front of a line.
inline void skip_bullet(std::string_view& text) noexcept {
  text = trim(text);
  while (!text.empty()) {
    const std::string_view c = text.substr(0, length_of_character(text));
    const auto first = static_cast<unsigned char>(c.front());
    const bool sign = c == "-" || c == "*" || c == "+" || c == "\xC2\xB7" || c == "\xE2\x80\xA2" ||
                      c == "\xE2\x80\x93" || c == "\xE2\x80\x94" || c == "\xE2\x80\x8B" ||
                      c == "\xEF\xBB\xBF" ||
                      (c.size() == 3 && first == 0xE2 && static_cast<unsigned char>(c[1]) >= 0x96 &&
                       static_cast<unsigned char>(c[1]) <= 0xAD);
    const bool box =
        starts_with(text, "[ ]") || starts_with(text, "[]") || starts_with(text, "[x]");
    if (!sign && !box) break;
    text = trim(text.substr(box ? text.find(']') + 1 : c.size()));
  }
  // `1. 2 cups` and `1) 2 cups`: a number of the list, because an amount follows.
  std::size_t digits = 0;
  while (digits < text.size() && digits < 2 && is_digit(text[digits])) ++digits;
  if (digits == 0 || digits + 2 >= text.size()) return;
  const bool mark = text[digits] == ')' || (text[digits] == '.' && text[digits + 1] == ' ');
  const std::string_view rest = trim(text.substr(digits + 1));
  const bool fraction = !rest.empty() && (rest.front() == '\xC2' || starts_with(rest, "\xE2\x85"));
  if (mark && !rest.empty() && (is_digit(rest.front()) || fraction)) text = rest;
}

/// A lone `T` behind a number is a tablespoon, a lone `t` a teaspoon; only the capital tells.
[[nodiscard]] inline std::string_view spoon_at(std::string_view text, std::size_t at) noexcept {
  if (text[at] != 'T' && text[at] != 't') return {};
  std::size_t before = at;
  while (before > 0 && text[before - 1] == ' ') --before;
  bool number = before > 0 && (is_digit(text[before - 1]) ||
                               static_cast<unsigned char>(text[before - 1]) >= 0x80);
  const char next = at + 1 < text.size() ? text[at + 1] : ' ';
  // `1 heaping T.`
  for (const std::string_view size : {"heaping", "heaped", "level", "rounded", "scant", "big"}) {
    number = number || (before >= size.size() &&
                        folds_to(text.substr(before - size.size(), size.size()), size));
  }
  if (!number || (next != ' ' && next != '.' && next != ',')) return {};
  return text[at] == 'T' ? "tbsp" : "tsp";
}

inline void replace_all(std::string& text, std::string_view from, std::string_view to) {
  for (std::size_t at = text.find(from); at != std::string::npos;
       at = text.find(from, at + to.size()))
    text.replace(at, from.size(), to);
}

}  // namespace line

/// Lower case, plain letters, one sign for each kind of dash and blank, `and` for `&`; fractions
/// stay. Lines are short: whoever calls bounds their length.
[[nodiscard]] inline std::string plain_line(std::string_view text) {
  line::skip_bullet(text);
  // `[1/4 tsp saffron, optional]`: the whole line in brackets.
  text = trim(text);
  if (text.size() > 2 && ((text.front() == '[' && text.find(']') == text.size() - 1) ||
                          (text.front() == '(' && text.find(')') == text.size() - 1)))
    text = trim(text.substr(1, text.size() - 2));
  std::string out;
  out.reserve(text.size() + 8);
  for (std::size_t at = 0; at < text.size();) {
    const std::string_view rest = text.substr(at);
    const std::string_view c = rest.substr(0, line::length_of_character(rest));
    const std::string_view spoon = c.size() == 1 ? line::spoon_at(text, at) : std::string_view();
    const char before = out.empty() ? ' ' : out.back();
    const char next = at + 1 < text.size() ? lower(text[at + 1]) : ' ';
    if (!spoon.empty()) {
      if (before != ' ') out += ' ';
      out += spoon;
    } else if (c == "&") {
      out += " and ";
    } else if (c == "/" && line::is_letter(before) && line::is_letter(next)) {
      out += out.size() >= 3 && out.compare(out.size() - 3, 3, "and") == 0 ? " " : " or ";
    } else if (c == "/" && before == ' ' && next == ' ' && out.size() > 1 &&
               line::is_letter(out[out.size() - 2]) && at + 2 < text.size() &&
               line::is_letter(lower(text[at + 2]))) {
      out += "or";  // `nixtamal / hominy`
    } else if (c.size() == 1 && lower(c.front()) == 'x' && is_digit(before) && is_digit(next)) {
      out += " x ";  // `2x400g`
    } else if (c == "/" && line::is_letter(before) && is_digit(next)) {
      out += " / ";
    } else if (c == "|" || (c == "." && next == '.') || (c == "." && before == ',')) {
      // `onions ........ 2 cups`, `onions | 2 cups`
      if (before != ',') out += " ,";
    } else if (c == "\"" && is_digit(before)) {
      out += " inch ";
    } else if (c == "," && is_digit(before) && is_digit(next)) {
      // `1,5 kg` has a decimal comma, `1,500 g` groups thousands.
      std::size_t digits = 1;
      while (at + 1 + digits < text.size() && is_digit(text[at + 1 + digits])) ++digits;
      out += digits == 3 ? "," : digits < 3 ? "." : ",";
    } else if (is_space(c.front())) {
      if (before != ' ') out += ' ';
    } else if (c.size() == 1) {
      if (c != "*") out += lower(c.front());
    } else {
      out += line::plain_character(c);
    }
    at += c.size();
  }
  line::replace_all(out, "fl. oz", "fl oz");
  line::replace_all(out, "fl.oz", "fl oz");
  line::replace_all(out, " w/o ", " without ");
  line::replace_all(out, " w/ ", " with ");
  line::replace_all(out, " w/", " with ");
  return std::string(trim(out));
}

/// The words of a plain line with the segment in which they stand.
[[nodiscard]] inline std::vector<line_token> tokens_of(std::string_view plain) {
  std::vector<line_token> out;
  int segment = 0;
  bool break_before = false;
  std::string word;
  const auto end_word = [&] {
    bool sentence = false;
    while (!word.empty() && (word.back() == '.' || word.back() == '!' || word.back() == '\'')) {
      sentence = word.back() != '\'' && word.size() > 4;
      word.pop_back();
      // Short for something, and no end of a sentence.
      for (const std::string_view w : {"tbsp", "tbsps", "tblsp", "tsps", "incl", "approx", "pkgs"})
        sentence = sentence && word != w;
    }
    if (word == "+" || word == "n" || word == "'n") word = "and";
    if (!word.empty()) {
      // `1 clove garlic or 1/8 tsp garlic powder`: with a new amount a new thing begins.
      if (is_digit(word.front()) && out.size() > 1 && out.back().segment == segment &&
          !break_before && (out.back().text == "or" || out.back().text == "plus"))
        out.back().segment = ++segment;
      if (break_before && !out.empty()) ++segment;
      out.push_back({word, segment});
      break_before = sentence;
    }
    word.clear();
  };
  for (std::size_t i = 0; i < plain.size(); ++i) {
    const char c = plain[i];
    const char before = i > 0 ? plain[i - 1] : ' ';
    const char next = i + 1 < plain.size() ? plain[i + 1] : ' ';
    const bool grouping = c == ',' && is_digit(before) && is_digit(next);
    const bool hard = c == '(' || c == ')' || c == '[' || c == ']' || c == ';' || c == ':' ||
                      (c == ',' && !grouping) || (c == '=' && before == ' ');
    const bool dash = c == '-' && (before == ' ' || next == ' ');
    if (hard || dash) {
      end_word();
      // `boneless- and skinless` is no new thought.
      if (hard || before == ' ') break_before = true;
    } else if (c == ' ' || c == '-' || c == '_' || c == '"') {
      end_word();
    } else {
      word += c;
    }
  }
  end_word();
  return out;
}

}  // namespace jarproof::detail
