// From the words of a plan to the entries of an edition: foods, methods, jars.
//
//   auto foods = jarproof::foods_named(edition, "green beans");   // one clear answer, or several
//   const jarproof::method* m = jarproof::method_named(edition, "water bath");
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/words.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/quantity.hpp"

namespace jarproof {

namespace detail {

[[nodiscard]] inline bool names_it(list<std::string_view> names, std::string_view folded_text) {
  return std::any_of(names.begin(), names.end(),
                     [&](std::string_view name) { return folds_to(name, folded_text); });
}

}  // namespace detail

/// Foods whose id, title or usual name is `text`; a name that several foods share gives them all,
/// in the order of the edition. Case, hyphens and blanks do not matter.
[[nodiscard]] inline std::vector<const process*> foods_named(const edition& rules,
                                                             std::string_view text) {
  const std::string wanted = detail::folded(text);
  std::vector<const process*> shared;
  for (const process& p : rules.processes) {
    if (detail::folds_to(p.id, wanted) || detail::folds_to(p.title, wanted) ||
        detail::names_it(p.names, wanted)) {
      return {&p};
    }
    if (detail::names_it(p.shared_names, wanted)) shared.push_back(&p);
  }
  return shared;
}

namespace detail {

/// Up to `most` of the names that `each` visits that are nearest to `text`, nearest first.
template <class Visit>
[[nodiscard]] std::vector<std::string> nearest_names(std::string_view text, std::size_t most,
                                                     Visit&& each) {
  std::vector<std::string> out;
  if (text.size() > 64) return out;
  const std::string wanted = detail::folded(text);
  std::vector<std::pair<std::size_t, std::string_view>> ranked;
  // Only slips of the pen: a food that merely sounds alike is another food.
  const std::size_t slips = std::clamp<std::size_t>(wanted.size() / 5, 1, 2);
  const auto consider = [&](std::string_view name) {
    if (name.size() + slips < wanted.size()) return;  // folding makes no name longer
    const std::string plain = detail::folded(name);
    const std::size_t d = detail::distance(wanted, plain, slips);
    if (d <= slips) ranked.emplace_back(d, name);
  };
  each(consider);
  std::stable_sort(ranked.begin(), ranked.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  for (const auto& [rank, name] : ranked) {
    if (out.size() == most) break;
    if (std::find(out.begin(), out.end(), name) == out.end()) out.emplace_back(name);
  }
  return out;
}

}  // namespace detail

/// Up to `most` names of foods of the edition that are nearest to `text`, nearest first.
[[nodiscard]] inline std::vector<std::string> names_near(const edition& rules,
                                                         std::string_view text,
                                                         std::size_t most = 3) {
  return detail::nearest_names(text, most, [&](auto&& consider) {
    for (const process& p : rules.processes) {
      for (const std::string_view name : p.names) consider(name);
      for (const std::string_view name : p.shared_names) consider(name);
    }
  });
}

/// The same for the names of ingredients.
[[nodiscard]] inline std::vector<std::string> ingredients_near(const edition& rules,
                                                               std::string_view text,
                                                               std::size_t most = 3) {
  return detail::nearest_names(text, most, [&](auto&& consider) {
    for (const ingredient& i : rules.ingredients) {
      for (const std::string_view name : i.names) consider(name);
    }
  });
}

/// The food without a tested process that has this id, title or name, or null.
[[nodiscard]] inline const untested_food* untested_named(const edition& rules,
                                                         std::string_view text) {
  const std::string wanted = detail::folded(text);
  for (const untested_food& f : rules.untested_foods) {
    if (detail::folds_to(f.id, wanted) || detail::folds_to(f.title, wanted) ||
        detail::names_it(f.names, wanted)) {
      return &f;
    }
  }
  return nullptr;
}

/// The method with this id or name, accepted or refused, or null.
[[nodiscard]] inline const method* method_named(const edition& rules, std::string_view text) {
  const std::string wanted = detail::folded(text);
  for (const method& m : rules.methods) {
    if (detail::folds_to(m.id, wanted) || detail::names_it(m.names, wanted)) return &m;
  }
  return nullptr;
}

/// The jar size with this id or name, or null.
[[nodiscard]] inline const jar_size* jar_named(const edition& rules, std::string_view text) {
  const std::string wanted = detail::folded(text);
  for (const jar_size& j : rules.jars) {
    if (detail::folds_to(j.id, wanted) || detail::names_it(j.names, wanted)) return &j;
  }
  return nullptr;
}

/// The smallest jar that `row` lists and that is at least as large as `micro_floz`, or null where
/// the jar is larger than every listed one.
[[nodiscard]] inline const jar_minutes* listed_jar(const edition& rules, const table& row,
                                                   std::int64_t micro_floz) noexcept {
  const jar_minutes* best = nullptr;
  int best_floz = 0;
  for (const jar_minutes& m : row.minutes) {
    const jar_size* size = find(rules.jars, m.jar);
    if (size == nullptr || size->volume_floz * micro_per_unit < micro_floz) continue;
    if (best == nullptr || size->volume_floz < best_floz) {
      best = &m;
      best_floz = size->volume_floz;
    }
  }
  return best;
}

/// The largest jar that `row` lists; null only for a row without jars.
[[nodiscard]] inline const jar_minutes* largest_jar(const edition& rules,
                                                    const table& row) noexcept {
  const jar_minutes* best = nullptr;
  int best_floz = 0;
  for (const jar_minutes& m : row.minutes) {
    const jar_size* size = find(rules.jars, m.jar);
    if (size != nullptr && size->volume_floz > best_floz) {
      best = &m;
      best_floz = size->volume_floz;
    }
  }
  return best;
}

}  // namespace jarproof
