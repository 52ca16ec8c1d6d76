// How much there is to fill, and whether the jars can hold that little.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "jarproof/detail/judge_rows.hpp"
#include "jarproof/detail/line_amount.hpp"
#include "jarproof/detail/line_text.hpp"

namespace jarproof::detail {

/// What the recipe makes, where its yield begins with a volume: `Makes about 9 quarts`.
[[nodiscard]] inline std::optional<measured> yield_volume(const plan& what) {
  if (!what.yield) return std::nullopt;
  const std::string plain = plain_line(what.yield->text);
  const std::size_t digit = plain.find_first_of("0123456789");
  std::string_view rest =
      digit == std::string::npos ? std::string_view() : std::string_view(plain).substr(digit);
  const line_amount made = take_amount(rest);
  if (!made.amount || made.amount->kind != measure_kind::volume) return std::nullopt;
  return made.amount;
}

/// The room that the headspace takes: a cylinder as wide as the mouth, in millionths of a fluid
/// ounce, rounded up. A gallon of 128 fl oz is 231 cubic inches (NIST SP 811, appendix B.8); a
/// quarter of pi is 0.785398, and one unit more so that it is never too little.
[[nodiscard]] constexpr std::int64_t headspace_room(
    std::int64_t mouth_thousandths_in, std::int64_t headspace_thousandths_in) noexcept {
  const std::int64_t area = mouth_thousandths_in * mouth_thousandths_in * 785'399 / 1'000'000;
  const std::int64_t millionths_cubic_in = area * headspace_thousandths_in / 1'000;
  return (millionths_cubic_in * 128 + 230) / 231;
}

/// The headspace of the plan, never less than the table's, in thousandths of an inch.
[[nodiscard]] inline std::int64_t headspace_of(const plan& what, const requirement& required) {
  const std::int64_t own = what.headspace ? what.headspace->value.value * 1'000 / nm_per_in : 0;
  return std::max<std::int64_t>(own, required.headspace_thousandths_in);
}

/// More jars than the batch can fill. The number of jars multiplies what goes into each, so it is
/// not believed where it cannot be. Up to 5 % is left for measuring (common practice, no source).
inline void judge_jars(judging& j) {
  const plan& what = j.what;
  const std::optional<std::int64_t> jar = jar_volume(j);
  const std::optional<measured> made = yield_volume(what);
  if (!what.jars || !jar || (!what.batch && !made)) return;
  // 1 fl oz is 6 tsp; a yield is in thousandths of a tsp.
  const std::int64_t batch = what.batch ? what.batch->value.value : made->high * 1'000 / 6;
  std::int64_t food = *jar;  // in a jar
  const day_number* mouth = find(j.rules.day.numbers, "mouth-regular");
  if (j.out.required && mouth != nullptr)
    food -= headspace_room(mouth->thousandths, j.out.required->headspace_thousandths_in);
  if (what.jars->value * (food / 100) * 20 <= batch / 100 * 21) return;
  j.say("jars-over-batch", place_of("jars", *what.jars),
        {what.jars->text + " jars (" + what.jar->text + ")",
         what.batch ? what.batch->text : what.yield->text,
         {},
         {},
         {}});
}

}  // namespace jarproof::detail
