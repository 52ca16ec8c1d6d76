// Times of a run as a cook reads them.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>

#include "jarproof/format/numbers.hpp"
#include "jarproof/run_log.hpp"

namespace jarproof::detail {

[[nodiscard]] inline std::string two_digits(std::int64_t number) {
  return (number < 10 ? "0" : "") + std::to_string(number);
}

/// `87`, `10.083`: a minute of the log, to the thousandth.
[[nodiscard]] inline std::string minute_text(std::int64_t at_us) {
  constexpr std::int64_t us_per_thousandth = us_per_min / 1000;
  const std::int64_t size = at_us < 0 ? -at_us : at_us;
  const std::int64_t thousandths = (size + us_per_thousandth / 2) / us_per_thousandth;
  return decimal_of_thousandths(at_us < 0 ? -thousandths : thousandths);
}

/// `18:40`, `18:40:05`, `02:10 the next day`, `minute 87`.
[[nodiscard]] inline std::string when_text(bool clock, std::int64_t at_us) {
  if (!clock) return "minute " + minute_text(at_us);
  const std::int64_t seconds = at_us / 1'000'000;
  const std::int64_t days = seconds / 86'400;
  std::string out = two_digits(seconds / 3600 % 24) + ":" + two_digits(seconds / 60 % 60);
  if (seconds % 60 != 0) out += ":" + two_digits(seconds % 60);
  if (days == 1) out += " the next day";
  if (days > 1) out += " " + std::to_string(days) + " days later";
  return out;
}

/// `75 min`, `74 min 55 s`; what is left of a second is not shown.
[[nodiscard]] inline std::string duration_text(std::int64_t us) {
  const std::int64_t seconds = us / 1'000'000;
  std::string out = std::to_string(seconds / 60) + " min";
  if (seconds % 60 != 0) out += " " + std::to_string(seconds % 60) + " s";
  return out;
}

}  // namespace jarproof::detail
