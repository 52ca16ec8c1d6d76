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
#include "jarproof/detail/recipe_variant.hpp"

namespace jarproof::detail {

/// The food of an ingredient line written as a plain food name: `7 lb green beans, washed` is
/// `green beans`. What follows a comma is preparation; amount and unit in front do not count.
[[nodiscard]] inline std::string_view plain_food(std::string_view line) {
  std::string_view rest = trim(line.substr(0, preparation_comma(line)));
  number n;
  if (take_number(rest, n) != number_fault::none) return rest;
  rest = trim(rest);
  std::string_view after = rest;
  constexpr std::string_view weights[] = {"lb", "lbs", "pound", "pounds", "kg", "g"};
  std::string_view first = rest.substr(0, rest.find(' '));
  const std::size_t length = first.size();
  if (!first.empty() && first.back() == '.') first.remove_suffix(1);
  for (const std::string_view w : weights) {
    if (folded(first) == w) after = rest.substr(length);
  }
  if (after.size() == rest.size() && take_unit(after, list<unit>(volume_units)) == nullptr)
    return rest;
  after = trim(after);
  return starts_with(after, "of ") ? trim(after.substr(3)) : after;
}

/// True where all that stands behind the commas of a line is plain: words that change nothing, or
/// a form that every table of the food lists. What is not read could be flour, cream or bacon, and
/// a cut that no table has is another process.
[[nodiscard]] inline bool rest_is_plain(const edition& rules, std::string_view line,
                                        const std::vector<const process*>& foods) {
  std::size_t comma = preparation_comma(line);
  while (comma != std::string_view::npos) {
    line.remove_prefix(comma + 1);
    comma = line.find(',');
    const std::string part = folded(line.substr(0, comma));
    const auto lists_it = [&](const process* food) {
      return std::all_of(food->tables.begin(), food->tables.end(),
                         [&](const table& t) { return names_it(t.forms, part); });
    };
    if (names_it(rules.plain_words, part)) continue;
    if (foods.empty() || !std::all_of(foods.begin(), foods.end(), lists_it)) return false;
  }
  return true;
}

/// What may go into a jar beside a plain food: salt, sugar, water and the acids of its table. Null
/// for anything else.
[[nodiscard]] inline const ingredient* addition(const judging& j, const process& food,
                                                const word& line) {
  const line_reading r = read_line(j.rules, line.text);
  if (r.what == nullptr || !r.strange.empty()) return nullptr;
  for (const std::string_view trait : {"salt", "sugar", "water"}) {
    if (is_a(j.rules, *r.what, trait)) return r.what;
  }
  return !food.acids.empty() && is_a(j.rules, *r.what, "acidifier") ? r.what : nullptr;
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

/// The processes of a line's food by its name, or else by what its ingredient is canned as alone.
[[nodiscard]] inline std::vector<const process*> foods_of(const edition& rules,
                                                          const plan_line& l) {
  const std::string_view before_comma = plain_food(l.said->text);
  std::vector<const process*> named = foods_named(rules, before_comma);
  if (l.reading.what == nullptr) return named;
  // `venison, ground` and `green beans, dried` are other foods than the word before the comma.
  const bool same = !named.empty() && read_line(rules, before_comma).what == l.reading.what;
  return same ? named : own_processes(rules, *l.reading.what);
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
      if (is_a(j.rules, i, "spice") || (is_liquid(j.rules, i) && food.kind == food_class::low_acid))
        return;
      const std::vector<const process*> other =
          first ? foods_of(j.rules, l) : own_processes(j.rules, i);
      const bool among =
          std::find(other.begin(), other.end(), &food) != other.end() || i.can_as.contains(food.id);
      if (among && first && has_other_cut(j.rules, l, food)) {
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

/// Foods of lines that all mean one plain food, such as `7 lb green beans` with salt; empty where
/// they are a mixture.
[[nodiscard]] inline std::vector<const process*> one_food(const judging& j,
                                                          const std::vector<plan_line>& lines) {
  std::vector<const process*> common;
  const ingredient* solid = nullptr;
  bool any = false;
  bool sweet = false;
  bool thin = false;
  for (const plan_line& l : lines) {
    if (l.reading.at_serving) continue;
    const std::vector<const process*> foods = foods_of(j.rules, l);
    const ingredient* what = l.reading.what;
    if (what != nullptr && foods.empty() && l.reading.others.empty() &&
        (is_seasoning(j.rules, *what) || is_liquid(j.rules, *what))) {
      sweet = sweet || is_a(j.rules, *what, "sugar");
      thin = thin || is_liquid(j.rules, *what);
      continue;
    }
    if (foods.empty() || !l.reading.others.empty()) return {};
    // Two things that one table names, such as carrots and carrots, are one food.
    if (solid != nullptr && what != nullptr &&
        &most_general(j.rules, *solid) != &most_general(j.rules, *what))
      return {};
    solid = what != nullptr ? what : solid;
    if (!any) {
      common = foods;
    } else {
      common.erase(std::remove_if(common.begin(), common.end(),
                                  [&](const process* p) {
                                    return std::find(foods.begin(), foods.end(), p) == foods.end();
                                  }),
                   common.end());
    }
    any = true;
  }
  // Fruit with sugar and no water is a jam, not fruit in syrup.
  if (sweet && !thin) return {};
  return common;
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
  if (!p.solids) {
    std::vector<const process*> plain = one_food(j, lines);
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
