// What the parts of a mixture are: seasoning or liquid, banned, or canned alone by a process.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/ingredient_facts.hpp"
#include "jarproof/detail/plan_lines.hpp"

namespace jarproof::detail {

/// True for what flavors or covers the food and is no part of it.
[[nodiscard]] inline bool is_seasoning(const edition& rules, const ingredient& i) {
  for (const std::string_view t :
       {"spice", "salt", "sugar", "sweetener", "fresh-herb", "acidifier"}) {
    if (is_a(rules, i, t)) return true;
  }
  return std::any_of(
      rules.seasonings.begin(), rules.seasonings.end(), [&](const seasoning_limit& s) {
        return std::any_of(s.foods.begin(), s.foods.end(),
                           [&](std::string_view food) { return is_kind_of(rules, i, food); });
      });
}

[[nodiscard]] inline bool is_liquid(const edition& rules, const ingredient& i) {
  return is_a(rules, i, "water") || is_a(rules, i, "broth");
}

/// The processes by which an ingredient is canned alone and whose numbers may be used.
[[nodiscard]] inline std::vector<const process*> own_processes(const edition& rules,
                                                               const ingredient& i) {
  std::vector<const process*> out;
  for (const std::string_view id : i.can_as) {
    const process* p = find(rules.processes, id);
    const bool usable = p != nullptr && std::any_of(p->tables.begin(), p->tables.end(),
                                                    [](const table& t) { return t.use; });
    if (usable) out.push_back(p);
  }
  return out;
}

/// What an ingredient is to a frame.
enum class place_in { seasoning, part, banned, without_process, not_held };

[[nodiscard]] inline place_in place_in_frame(const edition& rules, const process& frame,
                                             const ingredient& i) {
  if (frame.holds.contains(i.id)) return place_in::part;
  if (!ban_on(rules, i).empty()) return place_in::banned;
  // Seafood makes another soup, also as a broth.
  if (is_a(rules, i, "seafood") && i.can_as.empty() && !is_liquid(rules, i))
    return place_in::without_process;
  const std::vector<const process*> own = own_processes(rules, i);
  for (const process* p : own) {
    if (frame.made_of.contains(p->id)) return place_in::part;
  }
  if (is_a(rules, i, "seafood") && !frame.made_of.contains("clams")) return place_in::not_held;
  if (is_seasoning(rules, i) || is_liquid(rules, i)) return place_in::seasoning;
  if (frame.liquids.contains(i.id)) return place_in::part;
  return own.empty() ? place_in::without_process : place_in::not_held;
}

/// All ingredients of a line, whether together or in place of each other.
template <class Each>
void each_ingredient(const plan_line& l, Each each) {
  if (l.reading.what == nullptr) return;
  each(*l.reading.what);
  for (const other_ingredient& o : l.reading.others) each(*o.what);
}

/// An ingredient as its line names it.
[[nodiscard]] inline std::string name_in(const plan_line& l, const ingredient& i) {
  if (l.reading.what == &i) return l.reading.name;
  for (const other_ingredient& o : l.reading.others) {
    if (o.what == &i) return o.name;
  }
  return std::string(i.names[0]);
}

/// How much of an ingredient a line has: of one that stands beside the first, its own amount.
[[nodiscard]] inline std::optional<measured> amount_in(const plan_line& l, const ingredient& i) {
  for (const other_ingredient& o : l.reading.others) {
    if (o.what == &i && o.amount && l.reading.per_jar.empty()) return o.amount;
  }
  return l.amount;
}

}  // namespace jarproof::detail
