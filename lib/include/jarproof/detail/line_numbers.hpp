// Numbers of a recipe line, in digits and in words: `1 1/2`, `two or three`, `half a dozen`.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string_view>

#include "jarproof/detail/words.hpp"
#include "jarproof/quantity.hpp"

namespace jarproof::detail::line {

/// The first word of `text`, without a full stop behind it; `width` is what it takes up.
[[nodiscard]] inline std::string_view word_at(std::string_view text, std::size_t& width) noexcept {
  width = 0;
  while (width < text.size() && text[width] != ' ' && text[width] != '(' && text[width] != ')' &&
         text[width] != ',' && text[width] != ';' && text[width] != ':')
    ++width;
  std::string_view word = text.substr(0, width);
  while (!word.empty() && word.back() == '.') word.remove_suffix(1);
  return word;
}

template <std::size_t N>
[[nodiscard]] constexpr bool one_of(std::string_view word,
                                    const std::string_view (&words)[N]) noexcept {
  for (const std::string_view w : words) {
    if (w == word) return true;
  }
  return false;
}

/// Removes one of `words` from the front, with the blank behind it.
template <std::size_t N>
[[nodiscard]] bool take_word(std::string_view& text, const std::string_view (&words)[N]) noexcept {
  std::size_t width = 0;
  if (!one_of(word_at(text, width), words)) return false;
  text = trim(text.substr(width));
  return true;
}

inline constexpr std::string_view about_words[] = {
    "about", "approx",  "approximately", "around",  "roughly",    "circa",  "ca",
    "up",    "nearly",  "almost",        "scant",   "heaping",    "heaped", "generous",
    "level", "rounded", "good",          "another", "additional", "extra",  "to",
    "an",    "plus",    "each",          "only",    "just",       "at",     "least",
    "full"};
inline constexpr std::string_view size_words[] = {
    "large",   "medium",   "small",   "big",     "lg",       "med",      "sm",
    "heaping", "heaped",   "level",   "scant",   "generous", "rounded",  "full",
    "whole",   "extra",    "jumbo",   "tiny",    "good",     "sized",    "size",
    "packed",  "fat",      "thick",   "thin",    "plump",    "fresh",    "bushy",
    "average", "standard", "regular", "short",   "long",     "little",   "mini",
    "family",  "grande",   "grandes", "mediano", "mediana",  "medianos", "medianas",
    "chicas",  "chica",    "bite",    "tall",    "wide",     "very",     "firm"};

/// A number in words, or none.
[[nodiscard]] inline bool take_number_word(std::string_view& text, number& out, bool& vague) {
  struct named {
    std::string_view word;
    std::int64_t over, under;
  };
  constexpr named numbers[] = {{"a", 1, 1},
                               {"an", 1, 1},
                               {"one", 1, 1},
                               {"two", 2, 1},
                               {"three", 3, 1},
                               {"four", 4, 1},
                               {"five", 5, 1},
                               {"six", 6, 1},
                               {"seven", 7, 1},
                               {"eight", 8, 1},
                               {"nine", 9, 1},
                               {"ten", 10, 1},
                               {"eleven", 11, 1},
                               {"twelve", 12, 1},
                               {"fifteen", 15, 1},
                               {"twenty", 20, 1},
                               {"half", 1, 2},
                               {"quarter", 1, 4},
                               {"couple", 2, 1},
                               {"pair", 2, 1},
                               {"one-half", 1, 2},
                               {"one-third", 1, 3},
                               {"two-thirds", 2, 3},
                               {"one-quarter", 1, 4},
                               {"one-fourth", 1, 4},
                               {"three-quarters", 3, 4},
                               {"three-fourths", 3, 4},
                               {"thirty", 30, 1},
                               {"un", 1, 1},
                               {"una", 1, 1},
                               {"dos", 2, 1},
                               {"tres", 3, 1},
                               {"cuatro", 4, 1},
                               {"cinco", 5, 1},
                               {"seis", 6, 1},
                               {"media", 1, 2},
                               {"medio", 1, 2}};
  constexpr std::string_view few[] = {"few", "several", "some", "unos", "unas"};
  std::size_t width = 0;
  std::string_view rest = text;
  const std::string_view first = word_at(rest, width);
  if (one_of(first, few)) {
    vague = true;
    out = {1, 1};
    text = trim(rest.substr(width));
    return true;
  }
  constexpr std::string_view bits[] = {"little", "bit", "touch", "lot", "tad"};
  for (const named& n : numbers) {
    if (n.word != first) continue;
    rest = trim(rest.substr(width));
    out = {n.over, n.under};
    const std::string_view second = word_at(rest, width);
    if (first == "a" && one_of(second, bits)) {  // `a little salt`
      vague = true;
      text = trim(rest.substr(width));
      return true;
    }
    // `a few`, `a half`, `half a`, `a couple of`, `one half`
    if (n.over == 1 && n.under == 1 && one_of(second, few)) {
      vague = true;
      rest = trim(rest.substr(width));
    } else if (n.under == 1 && n.over == 1 &&
               (second == "half" || second == "quarter" || second == "couple" ||
                second == "pair")) {
      out = second == "half" ? number{1, 2} : second == "quarter" ? number{1, 4} : number{2, 1};
      rest = trim(rest.substr(width));
    } else if (n.under > 1 && (second == "a" || second == "an")) {
      rest = trim(rest.substr(width));
    } else if (n.under > 1 && (starts_with(rest, "of a ") || starts_with(rest, "of an "))) {
      rest = trim(rest.substr(rest.find(' ', 3)));
    } else if (n.over == 3 && (second == "quarter" || second == "quarters")) {
      out = {3, 4};
      rest = trim(rest.substr(width));
    } else if (n.under == 1 && (second == "third" || second == "thirds")) {
      out = {n.over, 3};
      rest = trim(rest.substr(width));
    }
    constexpr std::string_view of[] = {"of"};
    if (one_of(second, few) || second == "couple") (void)take_word(rest, of);
    text = rest;
    return true;
  }
  return false;
}

/// A number in digits; a comma behind it ends the thought, as in `chiles, 4, seeded`.
[[nodiscard]] inline bool take_digits_of_line(std::string_view& text, number& out) noexcept {
  std::size_t comma = text.find(',');
  while (comma != std::string_view::npos && comma + 1 < text.size() && is_digit(text[comma + 1]))
    comma = text.find(',', comma + 1);
  std::string_view rest = text.substr(0, comma);
  const std::size_t whole = rest.size();
  if (take_number(rest, out) != number_fault::none) return false;
  text.remove_prefix(whole - rest.size());
  return true;
}

/// `1.500 g` may be a thousand and a half.
[[nodiscard]] inline bool is_doubtful_point(std::string_view text) noexcept {
  std::size_t at = 0;
  while (at < text.size() && is_digit(text[at])) ++at;
  if (at == 0 || at + 4 > text.size() || text[at] != '.') return false;
  std::size_t more = at + 1;
  while (more < text.size() && is_digit(text[more])) ++more;
  const std::string_view unit = trim(text.substr(more));
  return more == at + 4 && (starts_with(unit, "g") || starts_with(unit, "ml"));
}

/// `11/2` may have lost the blank of `1 1/2`.
[[nodiscard]] inline bool is_doubtful_fraction(std::string_view text) noexcept {
  std::size_t digits = 0;
  while (digits < text.size() && is_digit(text[digits])) ++digits;
  return digits >= 2 && digits + 1 < text.size() && text[digits] == '/' &&
         is_digit(text[digits + 1]) && (digits + 2 >= text.size() || !is_digit(text[digits + 2]));
}

[[nodiscard]] inline bool take_one_number(std::string_view& text, number& out, bool& vague) {
  std::string_view rest = text;
  if (take_digits_of_line(rest, out)) {
    if (is_doubtful_fraction(text) || is_doubtful_point(text)) vague = true;
    // `35% cream` has no amount.
    if (starts_with(trim(rest), "%") || starts_with(trim(rest), "percent")) return false;
    text = rest;
    // `1 and 1/2`
    std::string_view more = trim(rest);
    if (out.under == 1 && starts_with(more, "and ")) {
      more = trim(more.substr(4));
      number part;
      if (take_number(more, part) == number_fault::none && part.over < part.under) {
        out = {out.over * part.under + part.over, part.under};
        text = more;
      }
    }
    return true;
  }
  if (!take_number_word(text, out, vague)) return false;
  std::string_view more = trim(text);
  // `one and a half`
  if (out.under == 1 && starts_with(more, "and a half")) {
    out = {out.over * 2 + 1, 2};
    text = trim(more.substr(10));
  }
  return true;
}

/// A number or a range: `6-8`, `6 to 8`, `two or three`.
[[nodiscard]] inline bool take_range(std::string_view& text, number& low, number& high,
                                     bool& vague) {
  std::string_view rest = text;
  constexpr std::string_view between[] = {"between"};
  const bool from_between = take_word(rest, between);
  if (!take_one_number(rest, low, vague)) return false;
  high = low;
  text = rest;
  std::string_view more = trim(rest);
  for (const std::string_view joint : {"-", "to ", "or ", "and "}) {
    if (!starts_with(more, joint) || (joint == "and " && !from_between)) continue;
    std::string_view after = trim(more.substr(joint.size()));
    number second;
    bool second_vague = false;
    // `1 or a 2 inch piece`: only a larger number makes a range.
    if (!take_one_number(after, second, second_vague) ||
        second.over * low.under <= low.over * second.under)
      continue;
    high = second;
    text = after;
    break;
  }
  return true;
}

}  // namespace jarproof::detail::line
