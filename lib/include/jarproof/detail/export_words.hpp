// How an exported edition names and prints what the code keeps as enumerations and fractions.
// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "jarproof/edition.hpp"

namespace jarproof::detail {

[[nodiscard]] constexpr std::string_view name_of(part_limit l) noexcept {
  return l == part_limit::least     ? "least"
         : l == part_limit::most    ? "most"
         : l == part_limit::between ? "between"
                                    : "free";
}

[[nodiscard]] constexpr std::string_view name_of(part_role r) noexcept {
  constexpr std::string_view names[] = {"acid-food", "low-acid", "acid",   "salt", "sugar",
                                        "spice",     "water",    "starch", "fat",  "other"};
  return names[static_cast<std::size_t>(r)];
}

[[nodiscard]] constexpr std::string_view name_of(recipe_kind k) noexcept {
  return k == recipe_kind::plain ? "plain" : k == recipe_kind::frame ? "frame" : "fixed";
}

/// As printed: `3`, `0.5`, `2 2/3`.
[[nodiscard]] inline std::string printed_text(printed_amount a) {
  if (a.over % a.under == 0) return std::to_string(a.over / a.under);
  if (1'000 % a.under == 0 || 10'000 % a.under == 0) {
    std::string part = std::to_string(10'000 + a.over % a.under * (10'000 / a.under)).substr(1);
    while (part.back() == '0') part.pop_back();
    return std::to_string(a.over / a.under) + "." + part;
  }
  const std::string fraction = std::to_string(a.over % a.under) + "/" + std::to_string(a.under);
  return a.over < a.under ? fraction : std::to_string(a.over / a.under) + " " + fraction;
}

}  // namespace jarproof::detail
