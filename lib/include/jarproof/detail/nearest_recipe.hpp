// The published recipe that lines of the cook's own come nearest to.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "jarproof/detail/judge_recipe.hpp"
#include "jarproof/detail/mixture_parts.hpp"

namespace jarproof::detail {

/// The published recipe that lines come nearest to; null where none is near enough to be meant.
struct nearest_recipe {
  const process* food = nullptr;
  recipe_match match;
  std::size_t share = 0;  ///< how much of recipe and lines go together, per mille
};

/// How much of the lines and of a recipe go together, per mille; 0 where they are not near.
[[nodiscard]] inline std::size_t share_of(const process& p, const recipe_match& m) {
  const std::size_t lines = m.placed.size();
  const auto placed = static_cast<std::size_t>(std::count(m.placed.begin(), m.placed.end(), true));
  std::size_t parts = 0;
  for (const recipe_part& part : p.recipes[0].parts) parts += part.optional ? 0U : 1U;
  // Half of the lines and a third of the recipe have to be there.
  if (!m.main_food || placed * 2 < lines || placed * 3 < parts || placed < 3) return 0;
  return placed * 1'000 / std::max(lines, parts);
}

template <class Wanted>
[[nodiscard]] nearest_recipe nearest_among(const judging& j, const std::vector<plan_line>& lines,
                                           Wanted wanted) {
  nearest_recipe best;
  const main_foods main(j.rules, lines);
  for (const process& p : j.rules.processes) {
    if (p.recipes.empty() || !main.there(p)) continue;
    recipe_match m = match_recipes(j, p, lines);
    const std::size_t share = share_of(p, m);
    if (share > best.share && wanted(p, m)) best = {&p, std::move(m), share};
  }
  return best;
}

/// Of all recipes, also of those of another kind: what the lines may be meant as.
[[nodiscard]] inline nearest_recipe nearest_to(const judging& j,
                                               const std::vector<plan_line>& lines) {
  return nearest_among(j, lines, [](const process&, const recipe_match&) { return true; });
}

/// The line with the most of a food that a jar may hold, by weight; null where none is known. A cup
/// without a published weight counts as 5 oz (common practice, no source).
[[nodiscard]] inline const plan_line* most_of(const edition& rules,
                                              const std::vector<plan_line>& lines) {
  constexpr std::int64_t mg_in_cup = 142'000;
  const plan_line* out = nullptr;
  std::int64_t most = 0;
  for (const plan_line& l : lines) {
    if (l.reading.what == nullptr || !l.amount || is_liquid(rules, *l.reading.what) ||
        is_seasoning(rules, *l.reading.what) || !ban_on(rules, *l.reading.what).empty())
      continue;
    const std::optional<measured> mg = in_mg(rules, *l.reading.what, *l.amount, l.reading.words);
    const std::int64_t here = mg ? mg->low
                              : l.amount->kind == measure_kind::volume
                                  ? l.amount->low / 1'000 * mg_in_cup / 48
                                  : 0;
    if (here <= most) continue;
    most = here;
    out = &l;
  }
  return out;
}

/// True where the food that the lines have most of has its place in the recipe.
[[nodiscard]] inline bool holds_most(const edition& rules, const recipe_match& m,
                                     const std::vector<plan_line>& lines) {
  const plan_line* most = most_of(rules, lines);
  return most == nullptr || m.placed[static_cast<std::size_t>(most - lines.data())];
}

/// True where lines and a recipe are one kind of dish: the food they have most of, half of the
/// others and two thirds of the recipe's go together, with half of all its parts, and acid, starch
/// and meat of the recipe are there.
[[nodiscard]] inline bool of_same_kind(const judging& j, const process& p, const recipe_match& m,
                                       const std::vector<plan_line>& lines) {
  const edition& rules = j.rules;
  const auto any = [&](auto fits) {
    return std::any_of(lines.begin(), lines.end(), [&](const plan_line& l) {
      bool out = false;
      each_ingredient(l, [&](const ingredient& i) { out = out || fits(i); });
      return out;
    });
  };
  std::size_t foods = 0;
  std::size_t placed = 0;
  std::size_t unread = 0;  // each may be one of the parts
  const auto lines_placed =
      static_cast<std::size_t>(std::count(m.placed.begin(), m.placed.end(), true));
  bool strange_meat = false;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const ingredient* what = lines[i].reading.what;
    unread += what == nullptr ? 1U : 0U;
    if (what == nullptr || is_liquid(rules, *what) || is_seasoning(rules, *what)) continue;
    if (!m.placed[i] && !ban_on(rules, *what).empty()) continue;  // it would be left out
    ++foods;
    placed += m.placed[i] ? 1U : 0U;
    const bool meat = is_a(rules, *what, "meat") || is_a(rules, *what, "poultry") ||
                      is_a(rules, *what, "seafood");
    strange_meat = strange_meat || (meat && !is_a(rules, *what, "cured-meat") && !m.placed[i]);
  }
  if (strange_meat || placed * 2 < foods || !holds_most(rules, m, lines)) return false;
  return std::any_of(p.recipes.begin(), p.recipes.end(), [&](const tested_recipe& r) {
    std::size_t parts = 0;
    std::size_t there = 0;
    bool acid = false;
    bool own_acid = true;
    std::size_t all = 0;
    std::vector<std::string_view> groups;
    for (const recipe_part& part : r.parts) {
      if (part.optional || part.discarded) continue;
      const bool counted = std::find(groups.begin(), groups.end(), part.one_of) != groups.end();
      if (!part.one_of.empty() && !counted) groups.push_back(part.one_of);
      all += part.one_of.empty() || !counted ? 1U : 0U;
      const bool in =
          any([&](const ingredient& i) { return near_to(rules, i, part) != nearness::other; });
      acid = acid || part.role == part_role::acid;
      own_acid = own_acid && (in || part.role != part_role::acid);
      if (part.role == part_role::starch &&
          !any([&](const ingredient& i) { return is_a(rules, i, "thickener"); }))
        return false;
      const ingredient* food = find(rules.ingredients, part.foods[0]);
      const bool meat =
          food != nullptr && (is_a(rules, *food, "meat") || is_a(rules, *food, "poultry"));
      if (meat && !in) return false;
      if (part.role != part_role::acid_food && part.role != part_role::low_acid) continue;
      if (!in && !part.one_of.empty()) continue;  // another of them suffices
      if (food != nullptr && is_seasoning(rules, *food)) continue;
      ++parts;
      there += in ? 1U : 0U;
    }
    if (acid && !any([&](const ingredient& i) { return is_a(rules, i, "acidifier"); }))
      return false;
    if (parts == 1 && !own_acid) return false;  // one food alone is told by what it lies in
    return (there + unread) * 3 >= parts * 2 && (lines_placed + unread) * 2 >= all;
  });
}

/// The nearest recipe of the same kind as the dish.
[[nodiscard]] inline nearest_recipe nearest_of_kind(const judging& j,
                                                    const std::vector<plan_line>& lines,
                                                    bool acid_only = false) {
  return nearest_among(j, lines, [&](const process& p, const recipe_match& m) {
    return !(acid_only && p.kind != food_class::acid) && of_same_kind(j, p, m, lines);
  });
}

/// How the lines differ from a recipe, one part of a sentence each.
[[nodiscard]] inline std::vector<std::string> differences_from(
    const judging& j, const recipe_match& match, const std::vector<plan_line>& lines) {
  std::vector<std::string> out;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (match.placed[i] || lines[i].reading.what == nullptr || lines[i].reading.at_serving ||
        objection_to(j.rules, lines[i], *lines[i].reading.what).empty())
      continue;
    out.push_back("it has no \"" + lines[i].said->text + "\"");
  }
  for (const held_finding& f : match.findings) {
    if (f.facts.required.empty()) continue;
    if (f.id == "amount-unknown") {
      out.push_back("it needs an amount in " + f.facts.required + " for \"" + f.facts.found + "\"");
      continue;
    }
    out.push_back((f.facts.found.empty() || f.facts.found == "none"
                       ? std::string("it needs ")
                       : "\"" + f.facts.found + "\" where it has ") +
                  f.facts.required);
  }
  return out;
}

/// Names the nearest published recipe and how the lines differ from it.
inline void mention_nearest(judging& j, const std::vector<plan_line>& lines) {
  const nearest_recipe best = nearest_of_kind(j, lines);
  if (best.food == nullptr) return;
  std::string differences;
  for (const std::string& d : differences_from(j, best.match, lines))
    differences += (differences.empty() ? "" : "; ") + d;
  finding& f = j.say("nearest-recipe", place_of("ingredients", *lines.front().said),
                     {std::string(best.food->title),
                      {},
                      differences.empty() ? std::string() : "Differences: " + differences + ".",
                      {},
                      {}});
  cite_first(j.rules, best.food->sources, f);
}

}  // namespace jarproof::detail
