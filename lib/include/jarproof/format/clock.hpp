// A moment as a clock shows it, counted in minutes from the midnight before a day.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>

namespace jarproof {

/// `14:30`; a day before or after says so.
[[nodiscard]] inline std::string time_of_day_text(std::int64_t minutes) {
  const std::int64_t day = minutes >= 0 ? minutes / 1'440 : -((1'439 - minutes) / 1'440);
  const std::int64_t in_day = minutes - day * 1'440;
  std::string out = std::to_string(100 + in_day / 60).substr(1) + ":" +
                    std::to_string(100 + in_day % 60).substr(1);
  if (day == 1) out += " next day";
  if (day == -1) out += " the day before";
  if (day > 1) out += ", day " + std::to_string(day + 1);
  return out;
}

}  // namespace jarproof
