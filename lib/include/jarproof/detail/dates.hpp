// Calendar days as texts, `2026-08-14`; as texts they compare in the order of the days.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "jarproof/detail/words.hpp"

namespace jarproof::detail {

[[nodiscard]] constexpr int digits_at(std::string_view text, std::size_t at,
                                      std::size_t count) noexcept {
  int number = 0;
  for (const char c : text.substr(at, count)) number = number * 10 + (c - '0');
  return number;
}

[[nodiscard]] constexpr bool is_leap_year(int year) noexcept {
  return (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
}

[[nodiscard]] constexpr int days_of_month(int year, int month) noexcept {
  constexpr int days[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  return month == 2 && is_leap_year(year) ? 29 : days[month - 1];
}

/// True for year, month and day of a day that exists.
[[nodiscard]] constexpr bool is_date(std::string_view text) noexcept {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (i != 4 && i != 7 && !is_digit(text[i])) return false;
  }
  const int month = digits_at(text, 5, 2);
  const int day = digits_at(text, 8, 2);
  return month >= 1 && month <= 12 && day >= 1 &&
         day <= days_of_month(digits_at(text, 0, 4), month);
}

/// The same day a year later, 29 February as the 28th; empty behind the year 9999. `date` must be
/// a date.
[[nodiscard]] inline std::string a_year_after(std::string_view date) {
  const int year = digits_at(date, 0, 4) + 1;
  if (year > 9999) return {};
  std::string out = std::to_string(10'000 + year).substr(1) + std::string(date.substr(4));
  if (!is_date(out)) out[9] = '8';
  return out;
}

/// Days from a fixed one far back, so that two of them can be subtracted. `date` must be a date.
[[nodiscard]] constexpr int day_count(std::string_view date) noexcept {
  // Years that begin in March end in the leap day.
  const int month = digits_at(date, 5, 2);
  const int year = digits_at(date, 0, 4) - (month < 3 ? 1 : 0);
  const int of_year = (153 * ((month + 9) % 12) + 2) / 5 + digits_at(date, 8, 2);
  return year * 365 + year / 4 - year / 100 + year / 400 + of_year;
}

[[nodiscard]] constexpr int days_between(std::string_view from, std::string_view to) noexcept {
  return day_count(to) - day_count(from);
}

}  // namespace jarproof::detail
