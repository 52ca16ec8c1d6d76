// A dish of the cook's own that is a published low-acid recipe in other amounts or with other meat.
// A frame, such as soup, must not take it by less than that recipe asks for.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/judge_mixture.hpp"
#include "jarproof/detail/nearest_recipe.hpp"

namespace jarproof::detail {

/// True where a line stands in the place of a part: the same food, another kind of it, another
/// meat for the meat, other beans for the beans, tomatoes in any form for tomatoes.
[[nodiscard]] inline bool stands_for(const edition& rules, const ingredient& i,
                                     const recipe_part& part) {
  if (near_to(rules, i, part) != nearness::other) return true;
  if (part.optional) return false;
  const auto one_of = [&](const ingredient& each, std::string_view a, std::string_view b) {
    return is_a(rules, each, a) || is_a(rules, each, b);
  };
  return std::any_of(part.foods.begin(), part.foods.end(), [&](std::string_view id) {
    const ingredient* food = find(rules.ingredients, id);
    if (food == nullptr || is_liquid(rules, i)) return false;
    const auto tomato = [](std::string_view name) {
      return name.find("tomato") != std::string_view::npos;
    };
    return (tomato(id) && tomato(i.id)) || &most_general(rules, *food) == &most_general(rules, i) ||
           (one_of(*food, "meat", "poultry") && one_of(i, "meat", "poultry")) ||
           (one_of(*food, "dried-legume", "rehydrated-legume") &&
            one_of(i, "dried-legume", "rehydrated-legume"));
  });
}

/// How far lines are a variant of one recipe.
struct variant_fit {
  std::size_t parts = 0;    ///< foods that make the dish
  std::size_t covered = 0;  ///< of these, how many the lines have
  bool main_food = false;
  bool marked = false;  ///< by what sets it apart, such as the chili powder of chile con carne
};

[[nodiscard]] inline variant_fit variant_fit_of(const edition& rules, const tested_recipe& r,
                                                const std::vector<plan_line>& lines,
                                                std::vector<bool>& placed) {
  variant_fit out;
  for (const recipe_part& part : r.parts) {
    if (part.discarded) continue;
    const bool makes = part.role == part_role::low_acid || part.role == part_role::acid_food;
    const bool marks = (part.role == part_role::spice || part.role == part_role::sugar) &&
                       part.limit != part_limit::free;
    if (!makes && !marks && !part.anchor) continue;
    bool there = false;
    for (std::size_t i = 0; i < lines.size(); ++i) {
      const plan_line& l = lines[i];
      if (l.reading.what == nullptr || l.reading.at_serving) continue;
      bool here = false;
      each_ingredient(l, [&](const ingredient& w) { here = here || stands_for(rules, w, part); });
      if (!here) continue;
      there = true;
      if (!marks) placed[i] = true;
    }
    out.main_food = out.main_food || (part.anchor && there);
    out.marked = out.marked || (marks && there);
    if (part.optional) continue;
    ++out.parts;
    out.covered += there ? 1U : 0U;
  }
  return out;
}

/// True where the title of the plan names the food.
[[nodiscard]] inline bool title_names(const plan& what, const process& p) {
  if (!what.title) return false;
  const std::vector<line_token> words = tokens_of(plain_line(what.title->text));
  const std::string title = " " + words_between(words, 0, words.size()) + " ";
  const auto is_there = [&](std::string_view name) {
    return title.find(" " + folded(name) + " ") != std::string::npos;
  };
  return std::any_of(p.names.begin(), p.names.end(), is_there) ||
         std::any_of(p.shared_names.begin(), p.shared_names.end(), is_there);
}

/// Broth, or water that stays in the jar, at least a quarter of the batch (common practice, no
/// source); whoever follows the soup directions by name has it too. Where the recipe has water to
/// boil its beans, only broth counts.
[[nodiscard]] inline bool has_thin_liquid(const judging& j, const process& p,
                                          const std::vector<plan_line>& lines) {
  if (follows_publication(j.what)) return true;
  const bool boils = std::any_of(p.recipes.begin(), p.recipes.end(), [](const tested_recipe& r) {
    return std::any_of(r.parts.begin(), r.parts.end(), [](const recipe_part& part) {
      return part.discarded && part.role == part_role::water;
    });
  });
  std::int64_t thin = 0;  // thousandths of a tsp
  for (const plan_line& l : lines) {
    if (l.reading.what == nullptr || l.reading.at_serving || says_discarded(l)) continue;
    const bool counts =
        is_a(j.rules, *l.reading.what, "broth") || (!boils && is_liquid(j.rules, *l.reading.what));
    if (counts && l.amount && l.amount->kind == measure_kind::volume) thin += l.amount->low;
  }
  bool stated = false;
  return thin > 0 && thin >= batch_at_least(j, lines, stated) / 4;
}

/// A soup needs liquid between its solids: where the lines say how much there is, at least a
/// quarter of the batch (common practice, no source). Where they do not, `solids` speaks for it.
inline void judge_liquid(judging& j, const process& frame, const std::vector<plan_line>& lines) {
  if (frame.liquids.empty() || follows_publication(j.what)) return;
  std::int64_t thin = 0;  // thousandths of a tsp
  const plan_line* last = nullptr;
  for (const plan_line& l : lines) {
    if (l.reading.what == nullptr || l.reading.at_serving || says_discarded(l)) continue;
    const ingredient& i = *l.reading.what;
    const bool liquid =
        is_liquid(j.rules, i) ||
        std::any_of(frame.liquids.begin(), frame.liquids.end(),
                    [&](std::string_view id) { return is_kind_of(j.rules, i, id); });
    if (!liquid) continue;
    last = &l;
    if (!l.amount || l.amount->kind != measure_kind::volume) return;  // as much as it takes
    thin += l.amount->high;
  }
  bool stated = false;
  if (last == nullptr || thin >= batch_at_least(j, lines, stated) / 4) return;
  finding& f = j.say("too-dense", place_of("ingredients", *last->said),
                     {last->said->text,
                      "a quarter of the batch in liquid",
                      "So little liquid does not fill the jars between the solids.",
                      {},
                      {}});
  cite_first(j.rules, frame.sources, f);
}

/// How far the lines are a variant of the food's recipe, in percent; 0 where they are none. The
/// main food has to be there, and of what makes the dish and of the lines so much that it is no
/// soup of the same things: a half with the recipe's own spice or sweetening, a third with its name
/// in the title, two thirds without thin liquid, else all.
[[nodiscard]] inline std::size_t variant_share(const judging& j, const process& p,
                                               const std::vector<plan_line>& lines) {
  std::vector<bool> placed(lines.size(), false);
  std::vector<std::string_view> sets;
  std::size_t parts = 0;
  std::size_t covered = 0;
  bool marked = false;
  for (const tested_recipe& first : p.recipes) {
    if (std::find(sets.begin(), sets.end(), first.set) != sets.end()) continue;
    sets.push_back(first.set);
    variant_fit best;
    std::vector<bool> best_placed = placed;
    for (const tested_recipe& r : p.recipes) {
      if (r.set != first.set) continue;
      std::vector<bool> here = placed;
      const variant_fit fit = variant_fit_of(j.rules, r, lines, here);
      if (!fit.main_food || (best.main_food && fit.covered <= best.covered)) continue;
      best = fit;
      best_placed = std::move(here);
    }
    if (!best.main_food) return 0;
    placed = std::move(best_placed);
    parts += best.parts;
    covered += best.covered;
    marked = marked || best.marked;
  }
  std::size_t solids = 0;
  std::size_t in_place = 0;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const plan_line& l = lines[i];
    if (l.reading.what == nullptr || l.reading.at_serving) continue;
    if (is_seasoning(j.rules, *l.reading.what) || is_liquid(j.rules, *l.reading.what)) continue;
    ++solids;
    in_place += placed[i] ? 1U : 0U;
  }
  const auto reach = [&](std::size_t over, std::size_t under) {
    return covered * under >= parts * over && in_place * under >= solids * over;
  };
  const bool near = reach(1, 1) || (marked && reach(1, 2)) ||
                    (covered > 1 && reach(1, 3) && title_names(j.what, p)) ||
                    (reach(2, 3) && !has_thin_liquid(j, p, lines));
  return near ? 100 * (covered + in_place) / std::max<std::size_t>(parts + solids, 1) : 0;
}

/// The longest published time of a recipe in a jar of this size; 0 where it was not tested there.
[[nodiscard]] inline int longest_in(const edition& rules, const process& p, std::int64_t volume) {
  int minutes = 0;
  for (const table& t : p.tables) {
    const jar_minutes* m = t.use ? listed_jar(rules, t, volume) : nullptr;
    if (m != nullptr) minutes = std::max(minutes, m->minutes[0]);
  }
  return minutes;
}

/// True where the lines are a variant of a published recipe that was not tested in a jar so large.
[[nodiscard]] inline bool variant_lacks_jar(const judging& j, const std::vector<plan_line>& lines,
                                            std::int64_t volume) {
  return std::any_of(j.rules.processes.begin(), j.rules.processes.end(), [&](const process& p) {
    return !p.recipes.empty() && p.kind == food_class::low_acid && variant_share(j, p, lines) > 0 &&
           longest_in(j.rules, p, volume) == 0;
  });
}

/// Holds a mixture in a frame to the published recipe that it is a variant of: not in a jar which
/// that recipe does not have, not for a shorter time, and not as a soup where nothing thin is in
/// it.
inline void judge_variants(judging& j, const process& frame, const std::vector<plan_line>& lines) {
  const std::optional<std::int64_t> volume = jar_volume(j);
  const process* untested = nullptr;
  std::size_t untested_share = 0;
  std::string reason;
  for (const process& p : j.rules.processes) {
    if (p.recipes.empty() || p.kind != food_class::low_acid) continue;
    const std::size_t share = variant_share(j, p, lines);
    if (share == 0) continue;
    const bool thick = !frame.liquids.empty() && !has_thin_liquid(j, p, lines);
    const int minutes = volume ? longest_in(j.rules, p, *volume) : 0;
    if (thick || (volume && minutes == 0)) {
      if (share <= untested_share) continue;  // the nearest one is named
      untested = &p;
      untested_share = share;
      reason = thick ? "Without broth or water, a quarter of the batch, it is no soup."
                     : "That recipe was not tested in a jar of this size.";
    } else if (minutes > j.least_min) {
      j.least_min = minutes;
      j.least_by = &p;
    }
  }
  if (untested == nullptr) return judge_liquid(j, frame, lines);
  j.untested_variant = true;
  finding& f =
      j.say("variant-of-tested-recipe", place_of("ingredients", *lines.front().said),
            {std::string(untested->title), {}, std::move(reason), std::string(untested->id), {}});
  cite_first(j.rules, untested->sources, f);
}

}  // namespace jarproof::detail
