// Dates, times of day and sentences of the canning day.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/day.hpp"
#include "jarproof/detail/dates.hpp"
#include "jarproof/detail/findings.hpp"
#include "jarproof/detail/words.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/numbers.hpp"

namespace jarproof::detail {

/// No jar is filled: there is nothing to put on a card or a label.
[[nodiscard]] inline bool fills_no_jar(const day_batch& b) { return b.jars && b.jars->count == 0; }

/// Jars that loads and clock are planned for. Fresh food may fill many more than the least, and a
/// day that is too short for them is to be known before.
[[nodiscard]] inline int planned_jars(const day_jars& j) noexcept {
  return j.by == "from" ? j.most : j.count;
}

inline constexpr int minutes_a_day = 24 * 60;

using filling_words = std::vector<std::pair<std::string_view, std::string>>;

/// The sentence with its words in braces filled in.
[[nodiscard]] inline std::string filled(std::string_view sentence, const filling_words& words) {
  return with_words(sentence, [&](std::string_view word) -> std::string_view {
    for (const auto& [name, value] : words) {
      if (name == word) return value;
    }
    return {};
  });
}

[[nodiscard]] inline int clock_minutes(std::string_view hh_mm) noexcept {
  return ((hh_mm[0] - '0') * 10 + hh_mm[1] - '0') * 60 + (hh_mm[3] - '0') * 10 + hh_mm[4] - '0';
}

[[nodiscard]] inline std::string two_digits(int number) {
  return std::to_string(100 + number % 100).substr(1);
}

struct calendar_date {
  int year = 0;
  int month = 0;
  int day = 0;
};

/// A date that `read_plan` has accepted: `2026-08-14`.
[[nodiscard]] inline calendar_date date_of(std::string_view iso) noexcept {
  return {digits_at(iso, 0, 4), digits_at(iso, 5, 2), digits_at(iso, 8, 2)};
}

[[nodiscard]] inline calendar_date days_after(calendar_date d, int days) noexcept {
  for (; days > 0; --days) {
    if (++d.day <= days_of_month(d.year, d.month)) continue;
    d.day = 1;
    if (++d.month > 12) {
      d.month = 1;
      ++d.year;
    }
  }
  for (; days < 0; ++days) {
    if (--d.day >= 1) continue;
    if (--d.month < 1) {
      d.month = 12;
      --d.year;
    }
    d.day = days_of_month(d.year, d.month);
  }
  return d;
}

/// The same day some years on; 29 February becomes the 28th.
[[nodiscard]] inline calendar_date years_after(calendar_date d, int years) noexcept {
  d.year += years;
  if (d.day > days_of_month(d.year, d.month)) d.day = days_of_month(d.year, d.month);
  return d;
}

[[nodiscard]] inline std::string four_digits(int year) {
  return std::to_string(10'000 + year % 10'000).substr(1);
}

[[nodiscard]] inline std::string iso_text(const calendar_date& d) {
  return four_digits(d.year) + "-" + two_digits(d.month) + "-" + two_digits(d.day);
}

[[nodiscard]] inline const day_number* number_of(const edition& rules,
                                                 std::string_view id) noexcept {
  return find(rules.day.numbers, id);
}

/// A number of the rules as text, `?` where the rules lack it.
[[nodiscard]] inline std::string number_text(const edition& rules, std::string_view id) {
  const day_number* n = number_of(rules, id);
  return n == nullptr ? std::string("?") : decimal_of_thousandths(n->thousandths);
}

}  // namespace jarproof::detail
