// What the edition knows about an ingredient: its kinds, its traits, its weights.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/measure.hpp"
#include "jarproof/edition.hpp"

namespace jarproof::detail {

[[nodiscard]] inline bool has_trait(const ingredient& i, std::string_view trait) noexcept {
  return i.traits.contains(trait);
}

/// The more general ingredient, or null.
[[nodiscard]] inline const ingredient* parent_of(const edition& rules, const ingredient& i) {
  return i.kind_of.empty() ? nullptr : find(rules.ingredients, i.kind_of);
}

/// True where `i` is `id` or a kind of it.
[[nodiscard]] inline bool is_kind_of(const edition& rules, const ingredient& i,
                                     std::string_view id) {
  for (const ingredient* up = &i; up != nullptr; up = parent_of(rules, *up)) {
    if (up->id == id) return true;
  }
  return false;
}

[[nodiscard]] inline const ingredient& most_general(const edition& rules, const ingredient& i) {
  const ingredient* top = &i;
  while (const ingredient* up = parent_of(rules, *top)) top = up;
  return *top;
}

/// Trait of the ingredient or of what it is a kind of.
[[nodiscard]] inline bool is_a(const edition& rules, const ingredient& i, std::string_view trait) {
  for (const ingredient* up = &i; up != nullptr; up = parent_of(rules, *up)) {
    if (has_trait(*up, trait)) return true;
  }
  return false;
}

/// A trait of what is kept out of every jar but those of a recipe that has it.
struct trait_ban {
  std::string_view trait, check;
};

/// Of an ingredient with several of these traits the first decides which check speaks. They stand
/// here and not in the rule folder: no folder may forget one.
inline constexpr trait_ban trait_bans[] = {{"thickener", "thickener-in-jar"},
                                           {"dairy", "dairy-in-jar"},
                                           {"grain-or-pasta", "pasta-or-grain-in-jar"},
                                           {"egg", "egg-in-jar"},
                                           {"low-acid-puree", "low-acid-puree"},
                                           {"cured-meat", "cured-meat-in-jar"},
                                           {"fat", "fat-in-jar"}};

/// The check that keeps an ingredient out of every jar but those of a recipe that has it, or empty.
[[nodiscard]] inline std::string_view ban_on(const edition& rules, const ingredient& i) {
  for (const trait_ban& b : trait_bans) {
    if (is_a(rules, i, b.trait)) return b.check;
  }
  return {};
}

/// The ingredient with this name, which is folded; names are kept folded and sorted.
[[nodiscard]] inline const ingredient* ingredient_named(const edition& rules,
                                                        std::string_view folded_name) {
  const auto at = std::lower_bound(
      rules.ingredient_names.begin(), rules.ingredient_names.end(), folded_name,
      [](const ingredient_name& n, std::string_view wanted) { return n.name < wanted; });
  if (at == rules.ingredient_names.end() || at->name != folded_name) return nullptr;
  return &rules.ingredients[static_cast<std::size_t>(at->at)];
}

/// Milligrams in a measure of an ingredient, from the lightest to the heaviest published weight of
/// the forms that the line names, of all forms where it names none; nothing where none is known.
[[nodiscard]] inline std::optional<measured> weight_of_one(const edition& rules,
                                                           const ingredient& i,
                                                           std::string_view unit,
                                                           const std::vector<std::string>& words) {
  for (const ingredient* up = &i; up != nullptr; up = parent_of(rules, *up)) {
    measured range;
    bool by_form = false;
    for (const measure_weight& w : up->weights) {
      if (w.unit != unit) continue;
      const bool named = std::find(words.begin(), words.end(), std::string(w.form)) != words.end();
      if (by_form && !named) continue;
      if (named && !by_form) range = {};
      by_form = by_form || named;
      range.low = range.low == 0 ? w.low_mg : std::min<std::int64_t>(range.low, w.low_mg);
      range.high = std::max<std::int64_t>(range.high, w.high_mg);
    }
    if (range.high > 0) return range;
  }
  return std::nullopt;
}

/// A pinch or a dash is something up to 1/8 tsp (common practice, no source).
[[nodiscard]] inline measured pinches(const measured& m) {
  measured out;
  out.kind = measure_kind::volume;
  out.high = divide(m.high, 8, rounding::up);
  return out;
}

/// An amount in milligrams, both ends; nothing where the weight of its measure is not published.
[[nodiscard]] inline std::optional<measured> in_mg(const edition& rules, const ingredient& i,
                                                   const measured& m,
                                                   const std::vector<std::string>& words) {
  measured out;
  out.kind = measure_kind::mass;
  if (m.kind == measure_kind::mass) {
    // 1 oz = 28,349.523 mg (NIST SP 811, B.8)
    out.low = divide(m.low * 28'349'523, 1'000'000, rounding::down);
    out.high = divide(m.high * 28'349'523, 1'000'000, rounding::up);
    return out;
  }
  if (m.counts == "pinch") return in_mg(rules, i, pinches(m), words);
  const auto by = [&](std::string_view unit, std::int64_t base) -> std::optional<measured> {
    const std::optional<measured> one = weight_of_one(rules, i, unit, words);
    if (!one) return std::nullopt;
    measured sum = out;
    sum.low = divide(m.low * one->low, base, rounding::down);
    sum.high = divide(m.high * one->high, base, rounding::up);
    return sum;
  };
  if (m.kind == measure_kind::count) return by(m.counts, 1'000);
  for (const auto& [unit, base] : {std::pair<std::string_view, std::int64_t>{"cup", 48'000},
                                   {"tbsp", 3'000},
                                   {"tsp", 1'000}}) {
    if (auto sum = by(unit, base)) return sum;
  }
  return std::nullopt;
}

/// `m` in the measure that a recipe prints, both ends; nothing where no published weight leads
/// there.
[[nodiscard]] inline std::optional<measured> converted(const edition& rules, const ingredient& i,
                                                       const measured& m,
                                                       const measure_unit& printed,
                                                       const std::vector<std::string>& words) {
  if (m.kind == printed.kind && (m.kind != measure_kind::count || m.counts == printed.counts)) {
    return m;
  }
  if (m.counts == "head" && printed.counts == "clove") {
    // A head of garlic has 8 to 16 cloves (common practice, no source).
    measured cloves = m;
    cloves.counts = "clove";
    cloves.low *= 8;
    cloves.high *= 16;
    return cloves;
  }
  if (m.counts == "pinch" && m.kind == measure_kind::count)
    return converted(rules, i, pinches(m), printed, words);
  if (m.ounces && printed.kind == measure_kind::volume && is_a(rules, i, "liquid")) {
    measured fluid = m;  // of a liquid, oz are fluid ounces; they are never metric
    fluid.kind = measure_kind::volume;
    fluid.low *= 6;
    fluid.high *= 6;
    return fluid;
  }
  const std::optional<measured> mg = in_mg(rules, i, m, words);
  if (!mg) return std::nullopt;
  measured out;
  out.kind = printed.kind;
  out.counts = printed.counts;
  if (printed.kind == measure_kind::mass) {
    out.low = divide(mg->low * 1'000'000, 28'349'523, rounding::down);
    out.high = divide(mg->high * 1'000'000, 28'349'523, rounding::up);
    return out;
  }
  const auto by = [&](std::string_view unit, std::int64_t base) {
    const std::optional<measured> one = weight_of_one(rules, i, unit, words);
    if (!one) return false;
    out.low = divide(mg->low * base, one->high, rounding::down);
    out.high = divide(mg->high * base, one->low, rounding::up);
    return true;
  };
  if (printed.kind == measure_kind::count)
    return by(printed.counts, 1'000) ? std::optional<measured>(out) : std::nullopt;
  const bool known = by("cup", 48'000) || by("tbsp", 3'000) || by("tsp", 1'000);
  return known ? std::optional<measured>(out) : std::nullopt;
}

}  // namespace jarproof::detail
