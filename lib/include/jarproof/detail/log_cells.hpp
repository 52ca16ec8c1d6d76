// The cells of a run log: times, readings, events, and what is wrong with them.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <iterator>
#include <optional>
#include <string>
#include <string_view>

#include "jarproof/detail/dates.hpp"
#include "jarproof/detail/words.hpp"
#include "jarproof/run_log.hpp"

namespace jarproof::detail {

/// What was read from a cell, or why nothing could be.
template <class T>
struct cell_reading {
  T value{};
  std::string message;  ///< empty where the reading is good
  std::string write;

  [[nodiscard]] bool ok() const noexcept { return message.empty(); }
};

/// A decimal in millionths; more places are cut off. A number of more than nine digits before the
/// point is none that a canner could show.
[[nodiscard]] inline std::optional<std::int64_t> millionths_of(std::string_view text) noexcept {
  const bool negative = !text.empty() && text.front() == '-';
  if (!text.empty() && (text.front() == '-' || text.front() == '+')) text.remove_prefix(1);
  std::int64_t whole = 0;
  std::size_t digits = 0;
  while (!text.empty() && is_digit(text.front())) {
    whole = whole * 10 + (text.front() - '0');
    if (++digits > 9) return std::nullopt;
    text.remove_prefix(1);
  }
  if (digits == 0) return std::nullopt;
  std::int64_t part = 0;
  if (!text.empty()) {
    if (text.front() != '.' || text.size() == 1) return std::nullopt;
    text.remove_prefix(1);
    std::int64_t unit = 100'000;
    for (const char c : text) {
      if (!is_digit(c)) return std::nullopt;
      part += (c - '0') * unit;
      unit /= 10;
    }
  }
  const std::int64_t value = whole * 1'000'000 + part;
  return negative ? -value : value;
}

/// `11,5` as `11.5` where that makes it a number.
[[nodiscard]] inline std::string with_point(std::string_view text) {
  const std::size_t comma = text.find(',');
  if (comma == std::string_view::npos) return {};
  std::string out(text);
  out[comma] = '.';
  return millionths_of(out) ? out : std::string();
}

/// What people write behind a number in a log: a unit, or an event that has a column of its own.
[[nodiscard]] inline bool is_word_behind_number(std::string_view text) {
  const std::string word = folded(text);
  for (const std::string_view unit :
       {"psi", "psig", "pounds", "lb", "lbs", "kpa", "bar", "f", "c", "°f", "°c", "° f", "° c",
        "deg f", "deg c", "degrees", "min", "minutes", "m"}) {
    if (word == unit) return true;
  }
  for (const std::string_view event : log_event_words) {
    if (folds_to(event, word)) return true;
  }
  return false;
}

/// The number at the front of `11 psi`, or nothing. `1e1`, `0x0b` and `1 1` are no such thing, and
/// what they mean is not guessed at.
[[nodiscard]] inline std::string number_before_unit(std::string_view text) {
  const std::size_t end = text.find_first_not_of("+-0123456789.");
  if (end == 0 || end == std::string_view::npos) return {};
  if (!is_word_behind_number(text.substr(end))) return {};
  const std::string number(trim(text.substr(0, end)));
  return millionths_of(number) ? number : std::string();
}

[[nodiscard]] inline cell_reading<std::int64_t> number_in(std::string_view text,
                                                          std::string_view column,
                                                          std::string_view example) {
  if (const std::optional<std::int64_t> value = millionths_of(text)) return {*value, {}, {}};
  const std::string shown = "`" + std::string(text) + "`";
  if (const std::string point = with_point(text); !point.empty())
    return {0, shown + " has a decimal comma", "write `" + point + "`"};
  if (const std::string number = number_before_unit(text); !number.empty())
    return {0, shown + " has more than a number in it",
            "write `" + number + "`; the header names the unit, and words go under `event`"};
  return {0, shown + " is no number under `" + std::string(column) + "`",
          "write a number such as `" + std::string(example) + "`, or leave the cell empty"};
}

/// A minute in microseconds.
[[nodiscard]] inline cell_reading<std::int64_t> minute_in(std::string_view text) {
  cell_reading<std::int64_t> out = number_in(text, "minute", "12.5");
  if (text.empty()) return {0, "the minute is missing", "write the minute of this row"};
  constexpr std::int64_t a_week = std::int64_t{7} * 24 * 60 * 1'000'000;
  if (out.ok() && (out.value > a_week || out.value < -a_week))
    return {0, "`" + std::string(text) + "` is more than a week", "count the minutes of one run"};
  out.value *= us_per_min / 1'000'000;
  return out;
}

struct clock_time {
  std::int64_t us = 0;     ///< microseconds since midnight
  std::optional<int> day;  ///< `day_count` of the date in front of the time
};

/// Which half of the day `am` and `pm` at the end name; takes them off.
enum class half_day { none, morning, afternoon };

[[nodiscard]] inline half_day take_half_day(std::string_view& time) {
  const std::string plain = folded(time);
  for (const std::string_view ending : {"am", "a.m.", "pm", "p.m."}) {
    if (plain.size() != time.size() || plain.size() <= ending.size() ||
        plain.substr(plain.size() - ending.size()) != ending)
      continue;
    time = trim(time.substr(0, time.size() - ending.size()));
    return ending.front() == 'a' ? half_day::morning : half_day::afternoon;
  }
  return half_day::none;
}

/// `14:30`, `14:30:05` or `14:30:05.250` in microseconds, as the digits stand; hours below 100.
[[nodiscard]] inline std::optional<std::int64_t> time_of_digits(std::string_view rest) noexcept {
  std::int64_t parts[3] = {0, 0, 0};
  std::int64_t fraction = 0;
  std::size_t count = 0;
  while (true) {
    std::size_t digits = 0;
    while (digits < rest.size() && is_digit(rest[digits])) ++digits;
    if (count == 3 || !(digits == 2 || (digits == 1 && count == 0))) return std::nullopt;
    parts[count] = digits_at(rest, 0, digits);
    ++count;
    rest.remove_prefix(digits);
    if (rest.empty()) break;
    if (count == 3 && rest.front() == '.') {
      const std::optional<std::int64_t> part = millionths_of("0" + std::string(rest));
      if (!part) return std::nullopt;
      fraction = *part;
      break;
    }
    if (rest.front() != ':') return std::nullopt;
    rest.remove_prefix(1);
  }
  if (count < 2 || parts[1] > 59 || parts[2] > 59) return std::nullopt;
  return ((parts[0] * 60 + parts[1]) * 60 + parts[2]) * 1'000'000 + fraction;
}

/// A time of day: `14:30`, `14:30:05`, `2:30 pm`, each also with its date, `2026-11-29 14:30`.
[[nodiscard]] inline cell_reading<clock_time> clock_in(std::string_view text) {
  if (text.empty()) return {{}, "the time is missing", "write the time of this row"};
  constexpr std::int64_t hour = 60 * us_per_min;
  clock_time out;
  std::string_view rest = text;
  constexpr std::size_t date = 10;
  if (rest.size() > date && is_date(rest.substr(0, date)) &&
      (rest[date] == ' ' || rest[date] == 'T' || rest[date] == 't')) {
    out.day = day_count(rest.substr(0, date));
    rest = trim(rest.substr(date + 1));
  }
  const half_day half = take_half_day(rest);
  const std::optional<std::int64_t> time = time_of_digits(rest);
  const bool by_twelve = half != half_day::none;
  if (time && (by_twelve ? *time >= hour && *time < 13 * hour : *time < 24 * hour)) {
    out.us = *time;
    if (by_twelve) out.us = *time % (12 * hour) + (half == half_day::afternoon ? 12 * hour : 0);
    return {out, {}, {}};
  }
  const std::string shown = "`" + std::string(text) + "`";
  if (out.day && rest.find_first_of("Zz+-") != std::string_view::npos)
    return {{}, shown + " names a time zone", "write the time of the kitchen's clock, without one"};
  if (text.find_first_of("/-") != std::string_view::npos)
    return {{},
            shown + " is no date with a time of day",
            "write it as `2026-11-29 14:30:05`, or leave the date out"};
  return {{}, shown + " is no time of day", "write it as `14:30`, `14:30:05` or `2:30 pm`"};
}

struct reading_limits {
  std::int64_t least;  ///< millionths
  std::int64_t most;
  std::string_view shown;
};

/// What no canner shows. 30 psi is twice what any table asks for, and 207 kPa or 2.07 bar.
[[nodiscard]] constexpr reading_limits limits_of(log_unit u) noexcept {
  switch (u) {
    case log_unit::psi:
      return {0, 30'000'000, "0 to 30 psi"};
    case log_unit::kpa:
      return {0, 207'000'000, "0 to 207 kPa"};
    case log_unit::bar:
      return {0, 2'070'000, "0 to 2.07 bar"};
    case log_unit::fahrenheit:
      return {0, 300'000'000, "0 to 300 F"};
    case log_unit::celsius:
      return {-20'000'000, 150'000'000, "-20 to 150 C"};
    case log_unit::none:
      break;
  }
  return {0, 0, ""};
}

[[nodiscard]] inline cell_reading<std::int64_t> reading_in(std::string_view text, log_unit u) {
  const bool warm = is_temperature(u);
  cell_reading<std::int64_t> out = number_in(text, name_of(u), warm ? "203.5" : "11.5");
  if (!out.ok()) return out;
  const reading_limits limits = limits_of(u);
  const std::string shown = "`" + std::string(text) + "`";
  // A sensor may be off by a little, and a canner that cools draws a vacuum.
  const std::int64_t offset = u == log_unit::kpa   ? 3'400'000
                              : u == log_unit::bar ? 34'000
                                                   : 500'000;
  if (is_pressure(u) && out.value < 0 && out.value >= -offset) out.value = 0;
  if (is_pressure(u) && out.value < 0)
    return {0, shown + " is below no pressure at all", "write `0` for a canner without pressure"};
  if (out.value < limits.least || out.value > limits.most) {
    return {0, shown + " is outside " + std::string(limits.shown) + ", which no canner shows",
            "check the reading and the unit; the header may name psi, kPa, bar, F or C"};
  }
  return out;
}

/// No canner of a home kitchen holds more: common practice, no source.
inline constexpr int most_jars = 99;

[[nodiscard]] inline cell_reading<log_event> event_in(std::string_view text) {
  const std::string plain = folded(text);
  const std::size_t blank = plain.rfind(' ');
  const std::string_view tail =
      blank == std::string::npos ? std::string_view() : std::string_view(plain).substr(blank + 1);
  std::string word = plain;
  int count = -1;
  if (!tail.empty() && tail.size() <= 3 &&
      tail.find_first_not_of("0123456789") == std::string_view::npos) {
    count = 0;
    for (const char c : tail) count = count * 10 + (c - '0');
    word.resize(blank);
  }
  for (std::size_t i = 0; i < std::size(log_event_words); ++i) {
    if (!folds_to(log_event_words[i], word)) continue;
    const auto kind = static_cast<log_event_kind>(i);
    const bool counted = kind == log_event_kind::unsealed || kind == log_event_kind::broken;
    const std::string name(log_event_words[i]);
    if (counted && count < 0)
      return {{},
              "`" + std::string(text) + "` does not say how many jars",
              "write it like `" + name + " 2`"};
    if (counted && count > most_jars)
      return {{},
              "`" + std::string(text) + "` are more jars than a canner holds",
              "write the jars of this load, like `" + name + " 2`"};
    if (!counted && count >= 0)
      return {
          {}, "`" + std::string(text) + "` is an event without a number", "write `" + name + "`"};
    return {{kind, counted ? count : 0, 0}, {}, {}};
  }
  if (millionths_of(text))
    return {{},
            "`" + std::string(text) + "` is no event",
            "if it belongs to the reading, write a point in place of the comma, as in `11.5`"};
  for (const std::string_view counted : {"unsealed", "broken"}) {
    if (plain.substr(0, counted.size()) == counted)
      return {{},
              "`" + std::string(text) + "` does not say in digits how many jars",
              "write it like `" + std::string(counted) + " 2`"};
  }
  const std::string near = nearest(word, log_event_words);
  return {{},
          "`" + std::string(text) + "` is no event",
          near.empty() ? "write " + joined(log_event_words) : "did you mean `" + near + "`?"};
}

}  // namespace jarproof::detail
