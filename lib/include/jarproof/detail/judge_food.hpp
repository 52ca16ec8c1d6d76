// Which food of the edition a plan means.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/food_cuts.hpp"
#include "jarproof/detail/frame_choice.hpp"
#include "jarproof/detail/ingredient_line.hpp"
#include "jarproof/detail/judge_kitchen.hpp"
#include "jarproof/detail/judge_mixture.hpp"
#include "jarproof/detail/judge_recipe.hpp"
#include "jarproof/detail/plain_foods.hpp"
#include "jarproof/detail/recipe_variant.hpp"

namespace jarproof::detail {

/// True for a food that is packed by its table without added liquid, such as crushed tomatoes.
[[nodiscard]] inline bool is_without_liquid(const process& food) {
  return food.title.find("without added liquid") != std::string_view::npos ||
         std::any_of(food.tables.begin(), food.tables.end(), [](const table& t) {
           return t.style.find("no added liquid") != std::string_view::npos;
         });
}

/// What may go into a jar beside a plain food: salt, sugar, water and the acids of its table. Null
/// for anything else.
[[nodiscard]] inline const ingredient* addition(const judging& j, const process& food,
                                                const word& line) {
  const line_reading r = read_line(j.rules, line.text);
  if (r.what == nullptr || !r.strange.empty()) return nullptr;
  for (const std::string_view trait : {"salt", "sugar", "water"}) {
    if (trait == "water" && is_without_liquid(food)) continue;
    if (is_a(j.rules, *r.what, trait)) return r.what;
  }
  // On fruit a little acid keeps the color; more acid is the strict side.
  const bool fruit = food.kind == food_class::acid;
  if (fruit && r.what->kind == acidity::acid && is_seasoning(j.rules, *r.what) &&
      !is_a(j.rules, *r.what, "not-bottled"))
    return r.what;
  return !food.acids.empty() && is_a(j.rules, *r.what, "acidifier") ? r.what : nullptr;
}

/// What goes in beside a plain food, or what it is made of, by its own table: the syrup of pears,
/// the carcass of poultry stock.
[[nodiscard]] inline bool is_held_by(const edition& rules, const process& food,
                                     const ingredient& i) {
  const auto is_that = [&](std::string_view id) { return is_kind_of(rules, i, id); };
  return std::any_of(food.liquids.begin(), food.liquids.end(), is_that) ||
         std::any_of(food.holds.begin(), food.holds.end(), is_that);
}

/// A name that fits several foods is asked back with all of them.
inline void ask_which(judging& j, const place& at, std::string found,
                      const std::vector<const process*>& foods) {
  std::vector<std::string> candidates;
  for (const process* f : foods) {
    candidates.push_back("`" + std::string(f->id) + "` (" + std::string(f->title) + ")");
  }
  sentence_facts facts;
  facts.found = std::move(found);
  facts.choices = joined(candidates);
  j.say("food-ambiguous", at, std::move(facts));
}

/// The lines of a plan for one plain food: that food, what its table allows beside it, and nothing
/// else.
inline void judge_plain_lines(judging& j, const process& food,
                              const std::vector<plan_line>& lines) {
  judge_unread_lines(j, lines);
  // `beans` alone beside `food: beans-snap` are those; beside green beans they may be any.
  const bool one_part =
      std::count_if(lines.begin(), lines.end(), [&](const plan_line& l) {
        return l.reading.what == nullptr ||
               (!is_seasoning(j.rules, *l.reading.what) && !is_liquid(j.rules, *l.reading.what));
      }) == 1;
  for (const plan_line& l : lines) {
    if (l.reading.at_serving || l.reading.what == nullptr || !l.reading.strange.empty()) continue;
    judge_telling(j, l);
    judge_dry_beans(j, food, l);
    const place at = place_of("ingredients", *l.said);
    each_ingredient(l, [&](const ingredient& i) {
      const std::string_view ban = ban_on(j.rules, i);
      if (!ban.empty()) {
        finding& f = j.say(ban, at,
                           {l.said->text,
                            "none of it",
                            "The table for " + std::string(food.title) + " has none.",
                            {},
                            {}});
        cite_first(j.rules, food.sources, f);
        return;
      }
      const bool first = &i == l.reading.what;
      if (first && addition(j, food, *l.said) != nullptr) return;
      if (is_held_by(j.rules, food, i)) return;
      if (is_a(j.rules, i, "water")) {
        if (!is_without_liquid(food) || says_discarded(l)) return;
        finding& f = j.say(
            "no-tested-process", at,
            {l.said->text,
             {},
             "The table for " + std::string(food.title) + " is for food without added liquid.",
             "Leave it out, or take the table for food in water.",
             {}});
        cite_first(j.rules, food.sources, f);
        return;
      }
      if (is_a(j.rules, i, "spice") || (is_liquid(j.rules, i) && food.kind == food_class::low_acid))
        return;
      const std::vector<const process*> other =
          first ? foods_of(j.rules, l) : own_processes(j.rules, i);
      const bool among =
          std::find(other.begin(), other.end(), &food) != other.end() || i.can_as.contains(food.id);
      const bool pressed =
          is_in_pieces(food) &&
          std::any_of(l.reading.telling.begin(), l.reading.telling.end(),
                      [](const telling_word* t) { return t->check == "low-acid-puree"; });
      if (among && first && (pressed || keeps_skins(food, l) || has_other_cut(j.rules, l, food))) {
        sentence_facts facts;
        facts.found = l.said->text;
        facts.instead = "How it is cut may only be said in the words of the food's table.";
        j.say("ingredient-unknown", at, std::move(facts));
        return;
      }
      const bool same_fruit = std::all_of(other.begin(), other.end(), [](const process* each) {
        return each->kind == food_class::acid;
      });
      // `tomatoes` beside a table for tomatoes is that food, whatever other tables tomatoes have.
      const bool by_ingredient =
          i.can_as.contains(food.id) || (j.what.food && one_part && l.reading.others.empty());
      if (among && (other.size() == 1 || same_fruit || by_ingredient)) return;
      if (among) {
        ask_which(j, at, l.said->text, other);
        return;
      }
      j.say("no-tested-process", at,
            {l.said->text,
             {},
             "The table for " + std::string(food.title) + " is for that food alone, and \"" +
                 l.said->text + "\" is another.",
             "Leave that line out, or name the published process of the mixture in `food`.",
             {}});
    });
  }
  judge_seasonings(j, food, lines);
}

/// A mixture that neither a recipe nor a frame covers: what is wrong with its parts, and that no
/// process is published.
inline void judge_uncovered(judging& j, const std::vector<plan_line>& lines) {
  classify(j, lines);
  const bool all_read = std::all_of(lines.begin(), lines.end(), [](const plan_line& l) {
    return l.reading.what != nullptr && l.reading.strange.empty();
  });
  const process* frame = nullptr;
  for (const process& p : j.rules.processes) {
    if (frame == nullptr && p.recipe == recipe_kind::frame && !p.liquids.empty()) frame = &p;
  }
  bool low_acid = false;
  for (const plan_line& l : lines) {
    if (l.reading.at_serving || l.reading.what == nullptr) continue;
    judge_telling(j, l);
    if (!l.reading.strange.empty()) {
      if (frame != nullptr) judge_half_read(j, *frame, l);
      continue;
    }
    each_ingredient(l, [&](const ingredient& i) {
      const bool harmless = is_seasoning(j.rules, i) || i.kind == acidity::neutral;
      low_acid = low_acid || (i.kind == acidity::low_acid && !harmless);
      if (frame == nullptr) return;
      const place_in p = place_in_frame(j.rules, *frame, i);
      if (p == place_in::banned || (p == place_in::without_process && i.kind == acidity::low_acid))
        (void)judge_part(j, *frame, l, i);
    });
  }
  j.low_acid_mixture = low_acid;
  if (!all_read) return;  // what is not understood may make it a published recipe
  j.say(
      "no-tested-process", place_of("ingredients", *lines.front().said),
      {lines.front().said->text,
       {},
       low_acid ? "The ingredients are a mixture, low-acid by its most demanding part, and no "
                  "published process covers it."
                : "The ingredients are a mixture of acid foods, and such mixtures are canned only "
                  "by a published recipe; none in this edition is this one.",
       "Name the published process in `food` (for example `soups` or `mixed-vegetables`), or "
       "can each food by its own table.",
       {}});
  mention_nearest(j, lines);
}

/// The lines as they would be without the words that are not understood, and without those that
/// name nothing known. A word that decides by itself stays known.
[[nodiscard]] inline std::vector<plan_line> readable_part(const std::vector<plan_line>& lines) {
  std::vector<plan_line> out;
  for (const plan_line& l : lines) {
    if (l.reading.what == nullptr && l.reading.telling.empty()) continue;
    out.push_back(l);
    out.back().reading.strange.clear();
  }
  return out;
}

/// All foods a plan may mean: none (said so), one, or several (said so).
[[nodiscard]] inline std::vector<const process*> judge_food(judging& j) {
  const plan& p = j.what;
  std::vector<const process*> foods;
  if (p.food) {
    const std::string& found = p.food->text;
    foods = foods_named(j.rules, found);
    const untested_food* untested = untested_named(j.rules, found);
    if (foods.empty() && untested != nullptr) {
      finding& f =
          j.say("no-tested-process", place_of("food", *p.food),
                {found, {}, std::string(untested->why), std::string(untested->instead), {}});
      cite_first(j.rules, untested->sources, f);
    } else if (foods.empty()) {
      sentence_facts facts;
      facts.found = found;
      facts.choices = joined(names_near(j.rules, found));
      facts.instead =
          facts.choices.empty() ? "" : "If it is only spelled otherwise: " + facts.choices + ".";
      facts.reason = "No published process in this edition goes by the name \"" + found + "\".";
      j.say("no-tested-process", place_of("food", *p.food), std::move(facts));
    }
  }
  if (p.ingredients.empty()) {
    if (!p.food) missing(j, "food");
    if (foods.size() > 1) ask_which(j, place_of("food", *p.food), p.food->text, foods);
    return foods;
  }
  // The lines of a tested recipe are read and compared by it.
  if (foods.size() == 1 && !foods.front()->recipes.empty()) return foods;
  const std::vector<plan_line> lines = read_lines(j);
  if (lines.empty()) {
    report_lines(j, lines);
    if (!p.food) missing(j, "ingredients");
    if (foods.size() > 1) ask_which(j, place_of("food", *p.food), p.food->text, foods);
    return foods;
  }
  if (foods.size() == 1) {
    const process& food = *foods.front();
    report_lines(j, lines);
    if (food.recipe == recipe_kind::plain) {
      judge_plain_lines(j, food, lines);
    } else {
      judge_unread_lines(j, lines);
      if (food.recipe == recipe_kind::frame) {
        classify(j, lines);
        judge_own_lines(j, food, lines);
        judge_variants(j, food, lines);
      }
    }
    return foods;
  }
  if (p.food && foods.empty()) {  // said above; the lines are read all the same
    report_lines(j, lines);
    judge_unread_lines(j, lines);
    classify(j, lines);
    j.low_acid_mixture = std::any_of(lines.begin(), lines.end(), [&](const plan_line& l) {
      return l.reading.what != nullptr && !l.reading.at_serving &&
             l.reading.what->kind == acidity::low_acid && !is_seasoning(j.rules, *l.reading.what);
    });
    return foods;
  }
  // No food is named, or several share its name: the lines decide.
  std::vector<const process*> candidates = foods;
  const auto is_candidate = [&](const process& each) {
    return candidates.empty() ||
           std::find(candidates.begin(), candidates.end(), &each) != candidates.end();
  };
  std::vector<const process*> recipes;
  const main_foods main(j.rules, lines);
  for (const process& each : j.rules.processes) {
    if (!each.recipes.empty() && is_candidate(each) && main.there(each) &&
        is_as_published(j, each, lines))
      recipes.push_back(&each);
  }
  if (recipes.size() == 1) {
    // Where another recipe is nearer and does not hold, nobody knows which of them is meant.
    const nearest_recipe nearest = nearest_to(j, lines);
    const process& found = *recipes.front();
    if (nearest.share <= share_of(found, match_recipes(j, found, lines)))
      return recipes;  // its lines are reported when they are compared
    recipes.push_back(nearest.food);
  }
  report_lines(j, lines);
  judge_unread_lines(j, lines);
  const place at =
      p.food ? place_of("food", *p.food) : place_of("ingredients", p.ingredients.front());
  const std::string found = p.food ? p.food->text : p.ingredients.front().text;
  if (recipes.size() > 1) {
    ask_which(j, at, found, recipes);
    return recipes;
  }
  // What is not understood keeps the lines from being the one recipe that they look like: it is
  // asked about, and nothing is said of a mixture.
  const std::vector<plan_line> readable = readable_part(lines);
  const bool unread = std::any_of(lines.begin(), lines.end(), [](const plan_line& l) {
    return l.reading.what == nullptr || !l.reading.strange.empty();
  });
  if (!p.food && unread && !readable.empty() &&
      std::count_if(j.rules.processes.begin(), j.rules.processes.end(), [&](const process& each) {
        return !each.recipes.empty() && main.there(each) && is_as_published(j, each, readable);
      }) == 1) {
    mention_nearest(j, lines);
    return {};
  }
  if (!p.solids) {
    std::vector<const process*> plain = narrowed(j, lines, one_food(j, lines));
    plain.erase(std::remove_if(plain.begin(), plain.end(),
                               [&](const process* each) { return !is_candidate(*each); }),
                plain.end());
    if (plain.size() == 1) {
      const std::vector<const process*> only = plain;
      if (only.front()->recipe == recipe_kind::plain) judge_plain_lines(j, *only.front(), lines);
      return only;
    }
    if (plain.size() > 1) {
      ask_which(j, at, found, plain);
      return plain;
    }
  }
  // What goes into boiling water is meant as a salsa or a pickle, not as a soup.
  const method* how = p.method ? method_named(j.rules, p.method->text) : nullptr;
  const bool pressure = how == nullptr || how->id == "pressure" || p.solids || !candidates.empty();
  const process* frame = pressure ? frame_for(j, lines) : nullptr;
  if (frame != nullptr && is_candidate(*frame)) {
    classify(j, lines);
    judge_own_lines(j, *frame, lines);
    judge_variants(j, *frame, lines);
    mention_nearest(j, lines);
    return {frame};
  }
  if (!candidates.empty()) {
    ask_which(j, at, found, candidates);
    mention_nearest(j, lines);
    return candidates;
  }
  judge_uncovered(j, lines);
  return {};
}

}  // namespace jarproof::detail
