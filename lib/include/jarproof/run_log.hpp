// What a canner did, as a cook or a data logger wrote it down.
//
//   jarproof::result<jarproof::run_log> log = jarproof::read_log(text, "run.csv");  // read_log.hpp
//   for (const jarproof::log_row& row : log->rows) use(row.at_us, row.reading);
//
// Times and readings are exact integers; nothing is converted here.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace jarproof {

inline constexpr std::int64_t us_per_min = 60'000'000;

/// Unit of the reading column; pressures are gauge pressures.
enum class log_unit { none, psi, kpa, bar, fahrenheit, celsius };

enum class log_event_kind {
  heat_on,      ///< the heat was turned on, with the jars in the canner
  steam,        ///< steady jet at the open vent; full boil; pure steam
  weight_on,    ///< vent closed
  at_pressure,  ///< the cook starts timing
  steady,       ///< the weight moves as its maker says; the water boils
  boil_lost,    ///< the boil stopped; the weight stood still
  water_low,    ///< the water did not cover the jars as it should
  heat_off,     ///< end of the process time
  zero,         ///< pressure is down by itself
  opened,       ///< weight or lid off
  unsealed,     ///< so many jars did not seal
  broken        ///< so many jars broke
};

struct log_event {
  log_event_kind kind = log_event_kind::steady;
  int count = 0;  ///< of `unsealed` and `broken`
  int column = 0;
};

/// One row; a reading, an event or both.
struct log_row {
  int line = 0;
  int column = 0;                       ///< of the time
  std::int64_t at_us = 0;               ///< from minute 0, or from midnight of the first day
  std::string reading_text;             ///< as written; empty without a reading
  std::optional<std::int64_t> reading;  ///< in millionths of the unit, what is finer cut off
  int reading_column = 0;
  std::optional<log_event> event;
};

struct run_log {
  std::string source;  ///< display name of the text it came from
  bool clock = false;  ///< times of day in place of minutes
  log_unit unit = log_unit::none;
  std::vector<log_row> rows;  ///< at least one; times never go back
};

[[nodiscard]] constexpr std::string_view name_of(log_unit u) noexcept {
  constexpr std::string_view names[] = {"", "psi", "kPa", "bar", "F", "C"};
  return names[static_cast<int>(u)];
}

[[nodiscard]] constexpr bool is_pressure(log_unit u) noexcept {
  return u == log_unit::psi || u == log_unit::kpa || u == log_unit::bar;
}

[[nodiscard]] constexpr bool is_temperature(log_unit u) noexcept {
  return u == log_unit::fahrenheit || u == log_unit::celsius;
}

/// The events as they are written, in the order of the enumeration.
inline constexpr std::string_view log_event_words[] = {
    "heat-on",   "steam",    "weight-on", "at-pressure", "steady",   "boil-lost",
    "water-low", "heat-off", "zero",      "opened",      "unsealed", "broken"};

[[nodiscard]] constexpr std::string_view name_of(log_event_kind k) noexcept {
  return log_event_words[static_cast<int>(k)];
}

}  // namespace jarproof
