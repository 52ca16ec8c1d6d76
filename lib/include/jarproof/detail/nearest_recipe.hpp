// The published recipe that lines of the cook's own come nearest to.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

#include "jarproof/detail/judge_recipe.hpp"

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

[[nodiscard]] inline nearest_recipe nearest_to(const judging& j,
                                               const std::vector<plan_line>& lines,
                                               bool acid_only = false) {
  nearest_recipe best;
  const main_foods main(j.rules, lines);
  for (const process& p : j.rules.processes) {
    if (p.recipes.empty() || (acid_only && p.kind != food_class::acid)) continue;
    if (!main.there(p)) continue;
    recipe_match m = match_recipes(j, p, lines);
    const std::size_t share = share_of(p, m);
    if (share > best.share) best = {&p, std::move(m), share};
  }
  return best;
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
  const nearest_recipe best = nearest_to(j, lines);
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
