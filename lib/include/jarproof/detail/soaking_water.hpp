// Water that the directions soak something in and pour off. SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <initializer_list>
#include <optional>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/findings.hpp"
#include "jarproof/detail/measure.hpp"
#include "jarproof/detail/measure_units.hpp"
#include "jarproof/detail/sentences.hpp"

namespace jarproof::detail {

/// True where the words from `at` are an amount of water: `2 gals of cold water`.
[[nodiscard]] inline bool is_water_at(const std::vector<line_token>& s, std::size_t at,
                                      const measured& amount) {
  std::string_view rest = s[at].text;
  number n;
  if (take_number(rest, n) != number_fault::none || !rest.empty() || at + 2 >= s.size())
    return false;
  const measure_unit* u = unit_named(s[at + 1].text);
  const std::optional<measured> said = u == nullptr ? std::nullopt : measure_of(n, n, *u);
  if (!said || said->kind != amount.kind || said->low != amount.low || said->high != amount.high)
    return false;
  at += 2;
  while (at < s.size() && line::one_of(s[at].text, {"of", "cold", "cool"})) ++at;
  return at < s.size() && s[at].text == "water";
}

/// `Drain`, `Drain and rinse well`: nothing of it is kept.
[[nodiscard]] inline bool only_drains(const std::vector<line_token>& s) {
  return !s.empty() && s.front().text == "drain" &&
         std::all_of(s.begin(), s.end(), [](const line_token& t) {
           return line::one_of(t.text, {"drain", "and", "rinse", "well", "thoroughly", "discard",
                                        "the", "water", "cucumbers"});
         });
}

/// `Dissolve 3/4 cup salt in 2 gals water. Pour over cucumbers and let stand 12 hours. Drain.`:
/// the directions soak something in so much water, once, and pour it off.
[[nodiscard]] inline bool is_soaked_and_drained(const judging& j, const measured& water) {
  std::vector<std::vector<line_token>> all;
  for (const word& step : j.what.steps) {
    for (std::vector<line_token>& s : sentences_of(step.text)) {
      if (!s.empty()) all.push_back(std::move(s));
    }
  }
  std::size_t times = 0;
  std::size_t soak = 0;
  for (std::size_t i = 0; i < all.size(); ++i) {
    for (std::size_t at = 0; at < all[i].size(); ++at) {
      if (!is_water_at(all[i], at, water)) continue;
      ++times;
      soak = i;
    }
  }
  if (times != 1) return false;
  std::size_t drain = soak + 1;  // it stands in the next sentence, or in the one behind it
  bool stands = has_one_of(all[soak], {"soak", "stand"});
  for (; drain < all.size() && drain < soak + 3 && !only_drains(all[drain]); ++drain)
    stands = stands || has_one_of(all[drain], {"soak", "stand"});
  if (!stands || drain >= all.size() || !only_drains(all[drain])) return false;
  return std::none_of(all.begin(), all.end(), [&](const std::vector<line_token>& s) {
    const bool later = &s > &all[drain] && has_one_of(s, {"soak", "soaking", "soaked", "drained"});
    return later || has_one_of(s, {"keep", "reserve", "reserved", "reserving", "save", "saved",
                                   "saving", "catch"});
  });
}

}  // namespace jarproof::detail
