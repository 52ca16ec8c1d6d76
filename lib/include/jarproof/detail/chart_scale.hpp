// Axes of a chart: from where to where, and where the ticks stand. Whole thousandths.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstdint>
#include <vector>

namespace jarproof::detail {

/// Rounded down, also below zero; `by` above 0.
[[nodiscard]] constexpr std::int64_t floor_div(std::int64_t value, std::int64_t by) noexcept {
  return value >= 0 ? value / by : -((by - 1 - value) / by);
}

/// The smallest and the largest of what was added.
struct extent {
  bool empty = true;
  std::int64_t low = 0;
  std::int64_t high = 0;

  constexpr void add(std::int64_t value) noexcept {
    low = empty ? value : std::min(low, value);
    high = empty ? value : std::max(high, value);
    empty = false;
  }
};

/// An axis: values from `from` through `through`, and ticks where value plus `shift` is a multiple
/// of `step`.
struct scale {
  std::int64_t from = 0;
  std::int64_t through = 1;
  std::int64_t step = 1;
  std::int64_t shift = 0;

  /// Where a value stands between `begin` and `end`; a value outside stands at the end it passed.
  [[nodiscard]] constexpr std::int64_t at(std::int64_t value, std::int64_t begin,
                                          std::int64_t end) const noexcept {
    const std::int64_t held = std::max(from, std::min(value, through));
    return begin + (end - begin) * (held - from) / (through - from);
  }
  [[nodiscard]] std::vector<std::int64_t> ticks() const {
    std::vector<std::int64_t> out;
    std::int64_t value = floor_div(from + shift + step - 1, step) * step - shift;
    for (; value <= through; value += step) out.push_back(value);
    return out;
  }
};

/// Minutes: ticks at steps that a clock has, six at most.
[[nodiscard]] constexpr scale minute_scale(const extent& e, std::int64_t shift) noexcept {
  constexpr std::int64_t steps[] = {1, 2, 5, 10, 15, 20, 30, 60, 120, 240, 480, 1'440};
  scale out{e.low, std::max(e.high, e.low + 1'000), 1'440'000, shift};
  for (const std::int64_t step : steps) {
    if ((out.through - out.from) / (step * 1'000) > 5) continue;
    out.step = step * 1'000;
    break;
  }
  while ((out.through - out.from) / out.step > 5) out.step *= 2;
  return out;
}

/// Values: ends at whole steps of 1, 2 or 5 times a power of ten, eight steps at most, a tenth at
/// least, with room above the highest.
[[nodiscard]] constexpr scale value_scale(const extent& e) noexcept {
  std::int64_t step = 100;
  for (int turn = 0; (e.high - e.low) / step >= 7; ++turn)
    step = step * (turn % 3 == 1 ? 5 : 4) / 2;
  const std::int64_t from = floor_div(e.low, step) * step;
  return {from, (floor_div(e.high, step) + 1) * step, step, 0};
}

}  // namespace jarproof::detail
