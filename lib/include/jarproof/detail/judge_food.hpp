// Which food of the edition a plan means.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/ingredient_line.hpp"
#include "jarproof/detail/judge_kitchen.hpp"

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

/// Looks every ingredient line up and says which are unknown; returns the foods that fit all lines.
/// `beside` is the plain food that the plan names, if it names one.
[[nodiscard]] inline std::vector<const process*> judge_ingredients(judging& j,
                                                                   const process* beside) {
  std::vector<const process*> common;
  bool first = true;
  int unknown = 0;
  for (const word& line : j.what.ingredients) {
    const std::string_view name = plain_food(line.text);
    std::vector<const process*> foods = foods_named(j.rules, name);
    const bool plain = rest_is_plain(j.rules, line.text, foods);
    if (!plain) foods.clear();
    ingredient_line entry{line.line, line.text, {}, {}, {}, {}};
    entry.amount = std::string(trim(std::string_view(line.text).substr(0, line.text.find(name))));
    const ingredient* added = beside == nullptr ? nullptr : addition(j, *beside, line);
    if (added != nullptr) {
      entry.ingredient = std::string(added->id);
      entry.kind = std::string(name_of(added->kind));
    } else if (foods.empty()) {
      sentence_facts facts;
      facts.found = line.text;
      // Looking for near names is slow; after the first lines it helps nobody.
      if (plain && ++unknown <= 20) facts.choices = joined(names_near(j.rules, name));
      if (!plain) {
        facts.instead =
            "What stands behind the comma may only be words such as `washed`, or a form of the "
            "food's table.";
      } else if (!facts.choices.empty()) {
        facts.instead = "If it is only spelled otherwise: " + facts.choices + ".";
      }
      j.say("ingredient-unknown", place_of("ingredients", line), std::move(facts));
    } else {
      entry.ingredient = std::string(name);
      entry.kind = foods.front()->kind == food_class::acid ? "acid" : "low-acid";
      if (first) {
        common = foods;
      } else {
        common.erase(std::remove_if(common.begin(), common.end(),
                                    [&](const process* p) {
                                      return std::find(foods.begin(), foods.end(), p) ==
                                             foods.end();
                                    }),
                     common.end());
      }
      first = false;
    }
    j.out.ingredients.push_back(std::move(entry));
  }
  return common;
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

/// All foods a plan may mean: none (said so), one, or several (said so).
[[nodiscard]] inline std::vector<const process*> judge_food(judging& j) {
  const plan& p = j.what;
  std::vector<const process*> foods;
  place at = place_of("food", p);
  std::string found;
  if (p.food) foods = foods_named(j.rules, p.food->text);
  const process* named = foods.size() == 1 ? foods.front() : nullptr;
  // The lines of a tested recipe are read and compared by it.
  const bool by_recipe = named != nullptr && !named->recipes.empty();
  const std::vector<const process*> from_lines =
      by_recipe ? std::vector<const process*>()
                : judge_ingredients(
                      j, named != nullptr && named->recipe == recipe_kind::plain ? named : nullptr);
  if (p.food) {
    at = place_of("food", *p.food);
    found = p.food->text;
    const untested_food* untested = untested_named(j.rules, found);
    if (foods.empty() && untested != nullptr) {
      finding& f =
          j.say("no-tested-process", at,
                {found, {}, std::string(untested->why), std::string(untested->instead), {}});
      cite_first(j.rules, untested->sources, f);
    } else if (foods.empty()) {
      sentence_facts facts;
      facts.found = found;
      facts.choices = joined(names_near(j.rules, found));
      facts.instead =
          facts.choices.empty() ? "" : "If it is only spelled otherwise: " + facts.choices + ".";
      facts.reason = "No published process in this edition goes by the name \"" + found + "\".";
      j.say("no-tested-process", at, std::move(facts));
    }
  } else if (p.ingredients.empty()) {
    missing(j, "food");
  } else {
    at = place_of("ingredients", p.ingredients.front());
    found = p.ingredients.front().text;
    foods = from_lines;
    const bool all_known =
        std::all_of(j.out.ingredients.begin(), j.out.ingredients.end(),
                    [](const ingredient_line& l) { return !l.ingredient.empty(); });
    if (foods.empty() && all_known) {
      j.say("no-tested-process", at,
            {found,
             {},
             "The ingredients are several foods, and no published process of this edition "
             "was named for the mixture.",
             "Name the published process in `food` (for example `soups` or `mixed-vegetables`), or "
             "can "
             "each food by its own table.",
             {}});
    }
    if (!all_known) foods.clear();
  }
  if (foods.size() > 1) {
    ask_which(j, at, found, foods);
  }
  // A plain food with other foods among its ingredients is a mixture that its table does not cover.
  if (foods.size() == 1 && p.food && foods.front()->recipe == recipe_kind::plain) {
    for (const word& line : p.ingredients) {
      if (addition(j, *foods.front(), line) != nullptr) continue;
      const std::vector<const process*> other = foods_named(j.rules, plain_food(line.text));
      if (other.empty() || (other.size() == 1 && other.front() == foods.front())) continue;
      const bool same_fruit = std::all_of(other.begin(), other.end(), [](const process* each) {
        return each->kind == food_class::acid;
      });
      const bool among = std::find(other.begin(), other.end(), foods.front()) != other.end();
      // `tomatoes` beside a table for tomatoes is that food, whatever other tables tomatoes have.
      if (among && same_fruit) continue;
      if (among) {
        ask_which(j, place_of("ingredients", line), line.text, other);
        continue;
      }
      j.say("no-tested-process", place_of("ingredients", line),
            {line.text,
             {},
             "The table for " + std::string(foods.front()->title) +
                 " is for that food alone, and \"" + line.text + "\" is another.",
             "Leave that line out, or name the published process of the mixture in `food`.",
             {}});
    }
  }
  return foods;
}

}  // namespace jarproof::detail
