// Amounts of a recipe: volumes, weights and counts, as exact integers that can be compared.
//
//   auto m = take_measure("1 1/2 cups chopped onion");   // 72,000 thousandths of a tsp
//
// A metric amount has no exact value in these units: it becomes the two whole numbers around it,
// and whoever compares takes the one that is not in the cook's favour.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "jarproof/detail/measure_units.hpp"
#include "jarproof/detail/words.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/numbers.hpp"
#include "jarproof/quantity.hpp"

namespace jarproof::detail {

/// An amount between two whole numbers of base units.
struct measured {
  measure_kind kind = measure_kind::none;
  std::int64_t low = 0;
  std::int64_t high = 0;
  std::string_view counts;  ///< of a count: `piece`, `clove`, ...
  bool ounces = false;      ///< written in oz, which of a liquid are fluid ounces
  /// One metric amount as written, in mg or uL; 0 for any other. Whoever changes `low` or `high`
  /// sets it to 0.
  std::int64_t metric = 0;
};

/// About 200 quarts or 2,500 lb: larger amounts are no kitchen's, and products of two stay exact.
inline constexpr std::int64_t most_base_units = 40'000'000;

/// A metric amount in mg or uL; 0 for another unit, for a range and for a finer number.
[[nodiscard]] inline std::int64_t metric_of(number low, number high,
                                            const measure_unit& u) noexcept {
  // All metric units, and they alone, have these factors; what they divide by tells kg from g.
  const bool gram = u.kind == measure_kind::mass && u.factor == 35'273'962;
  const bool litre = u.kind == measure_kind::volume && u.factor == 20'288'414;
  constexpr std::int64_t finest = 10'000;  // of a number as written; products stay exact
  if ((!gram && !litre) || low.under > finest || high.under > finest ||
      low.over * high.under != high.over * low.under)
    return 0;
  const std::int64_t over = low.over * ((gram ? 1'000'000'000 : 100'000'000) / u.divisor);
  return over % low.under == 0 ? over / low.under : 0;
}

[[nodiscard]] inline std::optional<measured> measure_of(number low, number high,
                                                        const measure_unit& u) {
  measured out;
  out.kind = u.kind;
  out.counts = u.counts;
  out.ounces = u.kind == measure_kind::mass && u.factor == 1'000;
  if (low.over > 1'000'000 * low.under || high.over > 1'000'000 * high.under) return std::nullopt;
  out.low = divide(low.over * u.factor, low.under * u.divisor, rounding::down);
  out.high = divide(high.over * u.factor, high.under * u.divisor, rounding::up);
  if (out.high > most_base_units || out.low > out.high) return std::nullopt;
  out.metric = metric_of(low, high, u);
  return out;
}

/// The next word of a line in lower case; blanks and `(` end it.
[[nodiscard]] inline std::string_view first_word(std::string_view text) noexcept {
  return text.substr(0, text.find_first_of(" \t(),"));
}

/// A number, or a range of two: `6`, `1 1/2`, `6-8`, `6 to 8`. Removes it from the front.
[[nodiscard]] inline bool take_numbers(std::string_view& text, number& low, number& high) {
  if (take_number(text, low) != number_fault::none) return false;
  high = low;
  std::string_view rest = trim(text);
  for (const std::string_view dash : {"-", "\xE2\x80\x93", "\xE2\x80\x94", "to "}) {
    if (!starts_with(rest, dash)) continue;
    std::string_view after = trim(rest.substr(dash.size()));
    number second;
    if (!after.empty() && is_digit(after.front()) &&
        take_number(after, second) == number_fault::none) {
      high = second;
      text = after;
      return true;
    }
  }
  return true;
}

/// A unit word with an optional full stop, removed from the front; null where there is none.
[[nodiscard]] inline const measure_unit* take_measure_unit(std::string_view& text) {
  const std::string_view rest = trim(text);
  for (const std::size_t words : {2U, 1U}) {
    std::size_t end = 0;
    for (std::size_t i = 0; i < words && end != std::string_view::npos; ++i) {
      end = rest.find_first_of(" \t(),", i == 0 ? 0 : end + 1);
    }
    std::string word = folded(rest.substr(0, end));
    if (!word.empty() && word.back() == '.') word.pop_back();
    if (const measure_unit* u = unit_named(word)) {
      text = end == std::string_view::npos ? std::string_view() : rest.substr(end);
      return u;
    }
  }
  return nullptr;
}

/// What stands in parentheses at the front, as an amount: `(12 oz)`, `(15-ounce)`.
[[nodiscard]] inline std::optional<measured> take_inner_measure(std::string_view& text) {
  std::string_view rest = trim(text);
  const bool open = !rest.empty() && rest.front() == '(';
  const std::size_t close = rest.find(')');
  if (!open || close == std::string_view::npos) return std::nullopt;
  std::string_view inner = rest.substr(1, close - 1);
  if (starts_with(trim(inner), "about ")) inner = trim(inner).substr(6);
  number low;
  number high;
  inner = trim(inner);
  if (!take_numbers(inner, low, high)) return std::nullopt;
  if (!inner.empty() && inner.front() == '-') inner.remove_prefix(1);
  const measure_unit* u = take_measure_unit(inner);
  if (u == nullptr || !trim(inner).empty()) return std::nullopt;
  text = rest.substr(close + 1);
  return measure_of(low, high, *u);
}

/// The amount of a part of a tested recipe, as a fraction of base units.
struct base_amount {
  std::int64_t over = 0;
  std::int64_t under = 1;
};

[[nodiscard]] inline base_amount base_of(printed_amount a, const measure_unit& u) noexcept {
  std::int64_t over = a.over * u.factor;
  std::int64_t under = a.under * u.divisor;
  std::int64_t x = over;
  std::int64_t y = under;
  while (y != 0) {
    const std::int64_t rest = x % y;
    x = y;
    y = rest;
  }
  if (x == 0) return {0, 1};
  return {over / x, under / x};
}

/// `amount` times `anchor_given` / `anchor_printed`, rounded: how much of a part belongs to so much
/// of the main food.
[[nodiscard]] inline std::int64_t scaled(base_amount amount, std::int64_t anchor_given,
                                         base_amount anchor_printed, rounding r) noexcept {
  return divide(amount.over * anchor_given * anchor_printed.under,
                amount.under * anchor_printed.over, r);
}

/// True where a part and the main food are both metric, and the part is to it exactly as printed or
/// on the safe side: at least or at most so much. In whole base units both are rounded against the
/// cook, so that 2.25 kg to 900 g would not be 5 lb to 2 lb.
[[nodiscard]] inline bool is_in_ratio(const measured& given, const measured& given_anchor,
                                      base_amount printed, base_amount printed_anchor,
                                      bool least) noexcept {
  constexpr std::int64_t tonne = 1'000'000'000;  // in mg; within these bounds products are exact
  const auto is_metric = [](const measured& m) { return m.metric > 0 && m.metric <= tonne; };
  const auto is_small = [](base_amount a) { return a.over <= 10'000'000 && a.under <= 100; };
  if (!is_metric(given) || !is_metric(given_anchor) || given.kind != given_anchor.kind ||
      !is_small(printed) || !is_small(printed_anchor))
    return false;
  const std::int64_t is = given.metric * printed.under * printed_anchor.over;
  const std::int64_t wanted = given_anchor.metric * printed_anchor.under * printed.over;
  return least ? is >= wanted : is <= wanted;
}

/// Base units in a unit of the recipe, for a reader: `1 1/2 cups`, `2/3 cup`. Rounded to the strict
/// side where no kitchen fraction fits.
[[nodiscard]] inline std::string measure_text(std::int64_t base, const measure_unit& u,
                                              rounding r) {
  std::string amount;
  const std::int64_t thirds = base * 3 * u.divisor;
  const bool exact_third = thirds % u.factor == 0 && (thirds / u.factor) % 3 != 0;
  // Rounded to whole base units, a third is one unit off.
  const std::int64_t near = thirds + (r == rounding::up ? -2 : 2) * u.divisor;
  const bool near_third = !exact_third && u.factor % 3 == 0 && near % u.factor == 0;
  if (exact_third || near_third) {
    const std::int64_t count = (exact_third ? thirds : near) / u.factor;
    if (count >= 3) amount = std::to_string(count / 3);
    if (count % 3 != 0) amount += (amount.empty() ? "" : " ") + std::to_string(count % 3) + "/3";
  } else {
    std::int64_t thousandths = divide(base * 1'000 * u.divisor, u.factor, r);
    // Two decimals are as fine as a kitchen measures.
    if (thousandths % 125 != 0) thousandths = divide(thousandths, 10, r) * 10;
    amount = kitchen_fraction(static_cast<int>(thousandths));
  }
  const bool several = base * u.divisor > u.factor;
  constexpr std::string_view plural[] = {"cup",   "pint", "quart", "gallon", "piece",
                                         "clove", "head", "stick", "drop"};
  const bool takes_s =
      several && std::find(std::begin(plural), std::end(plural), u.name) != std::end(plural);
  return amount + " " + std::string(u.name == "floz" ? std::string_view("fl oz") : u.name) +
         (takes_s ? "s" : "");
}

}  // namespace jarproof::detail
