// Numbers among the words of a line or a sentence.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

#include "jarproof/detail/line_text.hpp"
#include "jarproof/detail/words.hpp"

namespace jarproof::detail {

/// The number that begins at word `at`, in sixtieths, so that hours with fractions stay whole:
/// `75`, `1 1/2`, `1½`. Moves `at` behind it; nothing where no number stands there.
[[nodiscard]] inline std::optional<int> sixtieths_at(const std::vector<line_token>& words,
                                                     std::size_t& at) {
  std::optional<int> sum;
  for (; at < words.size(); ++at) {
    std::string_view text = words[at].text;
    int part = 0;
    if (text.size() >= 2 && text.substr(text.size() - 2) == "\u00BD") {
      part += 30;
      text.remove_suffix(2);
    }
    int over = 0;
    int under = 0;
    bool slash = false;
    bool number = text.size() <= 5 && (part > 0 || !text.empty());
    for (const char c : text) {
      if (c == '/' && !slash) {
        slash = true;
      } else if (is_digit(c)) {
        int& side = slash ? under : over;
        side = side * 10 + (c - '0');
      } else {
        number = false;
      }
    }
    if (!number || (slash && under == 0)) break;
    sum = sum.value_or(0) + part + (slash ? over * 60 / under : over * 60);
  }
  return sum;
}

}  // namespace jarproof::detail
