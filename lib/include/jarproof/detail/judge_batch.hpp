// How much there is to fill, and whether the jars can hold that little.
// SPDX-License-Identifier: MIT
#pragma once

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

/// More jars than the batch can fill. The number of jars multiplies what goes into each, so it is
/// not believed where it cannot be. Up to 5 % is left for measuring (common practice, no source).
inline void judge_jars(judging& j) {
  const plan& what = j.what;
  const std::optional<std::int64_t> jar = jar_volume(j);
  const std::optional<measured> made = yield_volume(what);
  if (!what.jars || !jar || (!what.batch && !made)) return;
  // 1 fl oz is 6 tsp; a yield is in thousandths of a tsp.
  const std::int64_t batch = what.batch ? what.batch->value.value : made->high * 1'000 / 6;
  if (what.jars->value * (*jar / 100) * 20 <= batch / 100 * 21) return;
  j.say("jars-over-batch", place_of("jars", *what.jars),
        {what.jars->text + " jars (" + what.jar->text + ")",
         what.batch ? what.batch->text : what.yield->text,
         {},
         {},
         {}});
}

}  // namespace jarproof::detail
