// Numbers among the words of a line or a sentence.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "jarproof/detail/line_text.hpp"
#include "jarproof/quantity.hpp"

namespace jarproof::detail {

/// The number that begins at word `at`, in sixtieths, so that hours with fractions stay whole:
/// `75`, `1 1/2`, `1¾`. Moves `at` behind it; nothing where no number stands there, or one that no
/// kitchen has.
[[nodiscard]] inline std::optional<int> sixtieths_at(const std::vector<line_token>& words,
                                                     std::size_t& at) {
  constexpr std::int64_t most = 60 * 100'000;
  std::int64_t sum = 0;
  const std::size_t first = at;
  for (; at < words.size(); ++at) {
    std::string_view text = words[at].text;
    number n;
    if (take_number(text, n) != number_fault::none || !text.empty()) break;
    sum += n.over * 60 / n.under;
    if (sum > most) return std::nullopt;
  }
  if (at == first) return std::nullopt;
  return static_cast<int>(sum);
}

}  // namespace jarproof::detail
