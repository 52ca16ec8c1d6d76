// Numbers of a sentence of the directions: written in words, with lengths, pressures and jar sizes.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/line_numbers.hpp"
#include "jarproof/detail/sentences.hpp"
#include "jarproof/detail/token_numbers.hpp"

namespace jarproof::detail {

/// The number that a word is, 0 for a word that is none.
[[nodiscard]] inline int number_word(std::string_view w) {
  struct pair {
    std::string_view word;
    int value;
  };
  constexpr pair pairs[] = {
      {"one", 1},      {"two", 2},       {"three", 3},      {"four", 4},     {"five", 5},
      {"six", 6},      {"seven", 7},     {"eight", 8},      {"nine", 9},     {"ten", 10},
      {"eleven", 11},  {"twelve", 12},   {"fifteen", 15},   {"twenty", 20},  {"thirty", 30},
      {"forty", 40},   {"fifty", 50},    {"sixty", 60},     {"seventy", 70}, {"eighty", 80},
      {"ninety", 90},  {"hundred", 100}, {"una", 1},        {"dos", 2},      {"tres", 3},
      {"cuatro", 4},   {"cinco", 5},     {"diez", 10},      {"quince", 15},  {"veinte", 20},
      {"treinta", 30}, {"cuarenta", 40}, {"cincuenta", 50}, {"sesenta", 60}, {"setenta", 70},
      {"ochenta", 80}, {"noventa", 90},  {"un", 1}};
  for (const pair& p : pairs) {
    if (p.word == w) return p.value;
  }
  return 0;
}

/// The sentence with numbers in digits: `sixty minutes` as `60 minutes`, `half an hour` as `30
/// min`, `a quarter of an inch` as `1/4 inch`.
[[nodiscard]] inline std::vector<line_token> in_digits(const std::vector<line_token>& s) {
  struct phrase {
    std::string_view words, digits;
  };
  constexpr phrase phrases[] = {{"three quarters of an hour", "45 min"},
                                {"quarter of an hour", "15 min"},
                                {"an hour and a half", "90 min"},
                                {"one hour and a half", "90 min"},
                                {"1 hour and a half", "90 min"},
                                {"half an hour", "30 min"},
                                {"half hour", "30 min"},
                                {"media hora", "30 min"},
                                {"an hour", "1 hour"},
                                {"a minute", "1 min"},
                                {"half an inch", "1/2 inch"},
                                {"half inch", "1/2 inch"},
                                {"quarter of an inch", "1/4 inch"},
                                {"quarter inch", "1/4 inch"},
                                {"eighth inch", "1/8 inch"},
                                {"media pulgada", "1/2 inch"},
                                {"an inch", "1 inch"}};
  std::vector<line_token> out;
  for (std::size_t at = 0; at < s.size();) {
    const auto* found = std::find_if(std::begin(phrases), std::end(phrases), [&](const phrase& p) {
      std::string_view rest = p.words;
      for (std::size_t k = at; !rest.empty(); ++k) {
        const std::string_view w = rest.substr(0, rest.find(' '));
        if (k >= s.size() || s[k].text != w) return false;
        rest.remove_prefix(std::min(w.size() + 1, rest.size()));
      }
      return true;
    });
    if (found != std::end(phrases)) {
      const std::size_t cut = found->digits.find(' ');
      out.push_back({std::string(found->digits.substr(0, cut)), s[at].segment});
      out.push_back({std::string(found->digits.substr(cut + 1)), s[at].segment});
      at += 1 + static_cast<std::size_t>(std::count(found->words.begin(), found->words.end(), ' '));
      continue;
    }
    std::string_view w = s[at].text;
    if (w.size() > 1 && w.front() == '@') {
      out.push_back({"at", s[at].segment});
      w.remove_prefix(1);
    }
    // `at 15#`: the sign of the trade for pounds.
    if (w.size() > 1 && w.back() == '#' && is_digit(w.front())) {
      out.push_back({std::string(w.substr(0, w.size() - 1)), s[at].segment});
      out.push_back({"lb", s[at].segment});
      ++at;
      continue;
    }
    // `18-20 minutes` comes as two numbers, and promises no more than the first.
    const auto is_whole = [&](std::size_t k) {
      return std::all_of(s[k].text.begin(), s[k].text.end(), is_digit);
    };
    if (at + 1 < s.size() && is_whole(at) && is_whole(at + 1) &&
        s[at].segment == s[at + 1].segment) {
      out.push_back(s[at]);
      at += 2;
      continue;
    }
    const std::size_t dash = w.find('-');
    int value = number_word(w.substr(0, dash));
    if (value >= 20 && dash != std::string_view::npos) value += number_word(w.substr(dash + 1));
    ++at;
    if (value >= 20 && value < 100 && dash == std::string_view::npos && at < s.size()) {
      const int one = number_word(s[at].text);
      if (one > 0 && one < 10) {
        value += one;
        ++at;
      }
    }
    out.push_back(value > 0 ? line_token{std::to_string(value), s[at - 1].segment} : s[at - 1]);
  }
  return out;
}

/// The largest number before one of the units, in sixtieths.
[[nodiscard]] inline std::optional<int> largest_before(
    const std::vector<line_token>& s, std::initializer_list<std::string_view> units) {
  std::optional<int> largest;
  for (std::size_t at = 0; at < s.size();) {
    const std::optional<int> number = sixtieths_at(s, at);
    if (!number) {
      ++at;
      continue;
    }
    if (at < s.size() && std::find(units.begin(), units.end(), s[at].text) != units.end() &&
        (at + 1 >= s.size() || s[at + 1].text != "of" ||
         (at + 2 < s.size() &&
          line::one_of(s[at + 2].text, {"pressure", "the", "head", "headspace", "headroom", "space",
                                        "room", "weight", "weighted", "rim", "top"}))))
      largest = std::max(largest.value_or(0), *number);
  }
  return largest;
}

/// Minutes that stand behind a jar size or at the end without their unit: `Pints: 45`, `quarts 90`,
/// `in the canner for 30`. Under 15 it may count jars.
[[nodiscard]] inline std::optional<int> bare_minutes(const std::vector<line_token>& s) {
  std::optional<int> longest;
  for (std::size_t i = 0; i + 1 < s.size(); ++i) {
    const bool size = line::one_of(s[i].text, {"pint", "pints", "quart", "quarts"});
    const bool end =
        (s[i].text == "for" && has_one_of(s, {"canner", "process", "pressure", "rock"})) ||
        (i == 0 && s[i].text == "process") ||
        (s[i].text == "time" && has_one_of(s, {"canner", "processing"}));
    if (!size && !end) continue;
    std::size_t at = i + 1;
    while (at < s.size() && line::one_of(s[at].text, {"for", "at", "take", "need", "get", "jars"}))
      ++at;
    if (at >= s.size()) break;
    const std::optional<int> n = sixtieths_at(s, at);
    if (!n || *n < 15 * 60) continue;
    if (at == s.size() ||
        (size && line::one_of(s[at].text, {"and", "pint", "pints", "quart", "quarts", "half"})))
      longest = std::max(longest.value_or(0), *n / 60);
  }
  return longest;
}

/// `Pints 40 min`, `Give the quarts 1 hour`: a time right behind a jar size.
[[nodiscard]] inline bool times_jars(const std::vector<line_token>& s) {
  for (std::size_t i = 0; i + 2 < s.size(); ++i) {
    if (!line::one_of(s[i].text, {"pint", "pints", "quart", "quarts"})) continue;
    std::size_t at = i + 1;
    while (at < s.size() && line::one_of(s[at].text, {"for", "take", "need", "get", "jars"})) ++at;
    if (at < s.size() && sixtieths_at(s, at) && at < s.size() &&
        line::one_of(s[at].text,
                     {"min", "mins", "minute", "minutes", "hour", "hours", "hr", "hrs"}))
      return true;
  }
  return false;
}

/// `1 hour for quarts`, `60 min quarts`: a time right before a jar size.
[[nodiscard]] inline bool times_before_jars(const std::vector<line_token>& s) {
  for (std::size_t i = 0; i + 1 < s.size(); ++i) {
    if (!line::one_of(s[i].text,
                      {"min", "mins", "minute", "minutes", "hour", "hours", "hr", "hrs"}))
      continue;
    std::size_t at = i + 1;
    while (at < s.size() && line::one_of(s[at].text, {"for", "the", "per"})) ++at;
    if (at < s.size() && line::one_of(s[at].text, {"pint", "pints", "quart", "quarts"}))
      return true;
  }
  return false;
}

/// `At 15# for 40 minutes`, `45 min at ten pounds`: a weight that can only be a pressure.
[[nodiscard]] inline bool names_pressure(const std::vector<line_token>& s) {
  for (std::size_t i = 0; i + 1 < s.size(); ++i) {
    const bool pounds = line::one_of(s[i].text, {"lb", "lbs", "pound", "pounds", "psi"});
    if ((s[i].text == "under" || s[i].text == "at" || pounds) && s[i + 1].text == "pressure")
      return true;
    if (s[i].text == "pressure" && line::one_of(s[i + 1].text, {"is", "reaches", "reached"}))
      return true;
    if (!line::one_of(s[i].text, {"at", "@"})) continue;
    std::size_t at = i + 1;
    const std::optional<int> n = sixtieths_at(s, at);
    if (n && *n >= 5 * 60 && *n <= 20 * 60 && at < s.size() &&
        line::one_of(s[at].text, {"lb", "lbs", "pound", "pounds", "psi"}))
      return true;
  }
  return false;
}

/// A headspace that a sentence names, in thousandths of an inch.
[[nodiscard]] inline std::optional<int> headspace_in(const std::vector<line_token>& s) {
  const bool leaves = has_one_of(s, {"leave", "leaving", "leaves", "fill", "deje", "dejando",
                                     "within", "allow", "allowing", "headspace", "headroom"});
  const bool top = has_one_of(s, {"headspace", "headroom", "head", "top", "rim", "rims", "space",
                                  "room", "espacio"}) ||
                   (!s.empty() && line::one_of(s.back().text, {"in", "inch", "inches"}));
  // Water in the canner, stems, and slices are measured in inches too.
  if (!leaves || !top ||
      has_one_of(s, {"water", "stem", "stems", "stalk", "tail", "thick", "slices", "pieces",
                     "canner", "rack", "root", "roots", "tops", "cut"}))
    return std::nullopt;
  const std::optional<int> sixtieths = largest_before(s, {"inch", "inches", "in", "\"", "pulgada"});
  if (!sixtieths) {
    // 25.4 mm to the inch; 25 mm stand for an inch and 6 mm for a quarter of one.
    const std::optional<int> cm = largest_before(s, {"cm", "centimeters", "centimetres"});
    const std::optional<int> mm = largest_before(s, {"mm", "millimeters", "millimetres"});
    if (!cm && !mm) return std::nullopt;
    const int tenths_of_mm = std::min(cm ? *cm * 10 : *mm, 60 * 1'000) / 6;
    return (tenths_of_mm + 9) * 1'000 / 254;
  }
  // Whoever leaves feet of it has no jar: the figure only has to stay a number.
  return std::min(*sixtieths, 60 * 1'000) * 50 / 3;
}

/// The highest pressure that a sentence names, in psi.
[[nodiscard]] inline std::optional<int> pressure_in(const std::vector<line_token>& s) {
  const bool about =
      has_one_of(s, {"pressure", "psi", "gauge", "weight", "weighted", "regulator", "process",
                     "processed", "processing", "canner", "procese", "procesar", "presion"});
  if (!about) return std::nullopt;
  const std::optional<int> sixtieths =
      largest_before(s, {"psi", "pounds", "pound", "lb", "lbs", "libras", "psig"});
  if (sixtieths) return *sixtieths / 60;
  // 6.895 kPa to the psi (NIST SP 811, B.8); weights are marked in round kPa.
  const std::optional<int> kpa = largest_before(s, {"kpa"});
  const std::optional<int> bar = largest_before(s, {"bar"});
  if (kpa || bar) {
    const int pascals = std::min(kpa ? *kpa : *bar * 100, 60'000) * 1'000 / 60;
    return (pascals + 3'447) / 6'895;  // 103 kPa are marked for 15 psi
  }
  // `Set the weight at 5.`
  for (std::size_t i = 0; i + 2 < s.size(); ++i) {
    std::size_t at = i + 2;
    if (s[i].text != "weight" || s[i + 1].text != "at") continue;
    if (const std::optional<int> n = sixtieths_at(s, at); n && at == s.size()) return *n / 60;
  }
  return std::nullopt;
}

/// A jar that a sentence names, in thousandths of a fl oz, with its words.
struct step_jar {
  std::int64_t millis;
  std::string text;
};

/// `quart mason jars`, `64 oz jars`, `3 liter jars`, `in quarts`, `Jars: half-gallon`.
[[nodiscard]] inline std::vector<step_jar> jars_in(const std::vector<line_token>& s) {
  std::vector<step_jar> out;
  const bool label = s.size() < 6 && !s.empty() && line::one_of(s[0].text, {"jar", "jars"});
  const auto volume_of = [](std::string_view unit, std::int64_t sixtieths) -> std::int64_t {
    // 1 L = 33.814 fl oz (NIST SP 811, B.8).
    if (line::one_of(unit, {"oz", "ounce", "ounces", "floz"})) return sixtieths * 1'000 / 60;
    if (line::one_of(unit, {"ml", "milliliter", "milliliters", "millilitre", "millilitres"}))
      return sixtieths * 33'814 / 60'000;
    if (line::one_of(unit, {"liter", "litre", "l", "liters", "litres", "litro", "litros"}))
      return sixtieths * 33'814 / 60;
    if (line::one_of(unit, {"gallon", "gal", "gallons"})) return sixtieths * 128'000 / 60;
    return 0;
  };
  for (std::size_t i = 0; i < s.size(); ++i) {
    std::size_t at = i;
    std::int64_t millis = 0;
    const std::optional<int> number = sixtieths_at(s, at);
    std::string text = s[i].text;
    if (number) {
      if (at >= s.size() || *number > 60 * 10'000) continue;
      text += " " + s[at].text;
      millis = volume_of(s[at].text, *number);
      // `2 quart jars` are two of them.
      if (millis == 0) continue;
      ++at;
    } else if (text.find("gallon") != std::string::npos) {
      const bool half = text == "half-gallon" || (i > 0 && s[i - 1].text == "half");
      millis = half ? 64'000 : 128'000;
      at = i + 1;
    } else if (line::one_of(text, {"quart", "quarts", "qt", "qts"})) {
      millis = 32'000;
      at = i + 1;
    } else if (line::one_of(text, {"pint", "pints", "pt", "pts"})) {
      const bool half = i > 0 && line::one_of(s[i - 1].text, {"half", "1/2"});
      millis = half ? 8'000 : 16'000;
      at = i + 1;
    } else {
      continue;
    }
    // `frascos de un litro`, `can mine in quarts`
    const bool behind = i > 1 && line::one_of(s[i - 2].text, {"frasco", "frascos", "tarros"}) &&
                        s[i - 1].text == "de";
    const bool plural = line::one_of(text, {"quarts", "pints", "qts", "pts"}) && i > 0 &&
                        line::one_of(s[i - 1].text, {"in", "into"});
    while (
        at < s.size() &&
        line::one_of(s[at].text,
                     {"canning",    "mason",   "glass", "hot",        "clean",   "warm",  "sterile",
                      "sterilized", "wide",    "mouth", "wide-mouth", "regular", "size",  "sized",
                      "preserving", "storage", "or",    "and",        "half",    "quart", "pint"}))
      ++at;
    const bool jar = at < s.size() && line::one_of(s[at].text, {"jar", "jars"});
    if (jar || behind || plural || label) out.push_back({millis, text + " jars"});
  }
  return out;
}

}  // namespace jarproof::detail
