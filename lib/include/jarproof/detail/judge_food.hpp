// Which food of the edition a plan means.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/judge_kitchen.hpp"

namespace jarproof::detail {

/// The food of an ingredient line written as a plain food name: `7 lb green beans, washed` is
/// `green beans`. What follows a comma is preparation; amount and unit in front do not count.
[[nodiscard]] inline std::string_view plain_food(std::string_view line) {
  std::string_view rest = trim(line.substr(0, line.find(',')));
  number n;
  if (take_number(rest, n) != number_fault::none) return rest;
  rest = trim(rest);
  std::string_view after = rest;
  constexpr std::string_view weights[] = {"lb", "lbs", "pound", "pounds", "kg", "g"};
  const std::string_view first = rest.substr(0, rest.find(' '));
  for (const std::string_view w : weights) {
    if (folded(first) == w) return trim(rest.substr(w.size()));
  }
  if (take_unit(after, list<unit>(volume_units)) != nullptr) return trim(after);
  return rest;
}

/// True where all that stands behind the commas of a line are words that change nothing. What is
/// not read could be flour, cream or bacon.
[[nodiscard]] inline bool rest_is_plain(const edition& rules, std::string_view line) {
  std::size_t comma = line.find(',');
  while (comma != std::string_view::npos) {
    line.remove_prefix(comma + 1);
    comma = line.find(',');
    if (!names_it(rules.plain_words, folded(line.substr(0, comma)))) return false;
  }
  return true;
}

/// Looks every ingredient line up and says which are unknown; returns the foods that fit all lines.
[[nodiscard]] inline std::vector<const process*> judge_ingredients(judging& j) {
  std::vector<const process*> common;
  bool first = true;
  for (const word& line : j.what.ingredients) {
    const std::string_view name = plain_food(line.text);
    const bool plain = rest_is_plain(j.rules, line.text);
    const std::vector<const process*> foods =
        plain ? foods_named(j.rules, name) : std::vector<const process*>();
    ingredient_line entry{line.line, line.text, {}, {}, food_class::low_acid};
    entry.amount = std::string(trim(std::string_view(line.text).substr(0, line.text.find(name))));
    if (foods.empty()) {
      sentence_facts facts;
      facts.found = line.text;
      facts.choices = joined(names_near(j.rules, name));
      if (!plain) {
        facts.instead =
            "What stands behind the comma may only be words such as `washed` or `sliced`.";
      } else if (!facts.choices.empty()) {
        facts.instead = "If it is only spelled otherwise: " + facts.choices + ".";
      }
      j.say("ingredient-unknown", place_of("ingredients", line), std::move(facts));
    } else {
      entry.ingredient = std::string(name);
      entry.kind = foods.front()->kind;
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

/// All foods a plan may mean: none (said so), one, or several (said so).
[[nodiscard]] inline std::vector<const process*> judge_food(judging& j) {
  const plan& p = j.what;
  const std::vector<const process*> from_lines = judge_ingredients(j);
  std::vector<const process*> foods;
  place at = place_of("food", p);
  std::string found;
  if (p.food) {
    at = place_of("food", *p.food);
    found = p.food->text;
    foods = foods_named(j.rules, p.food->text);
    if (foods.empty()) {
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
    std::vector<std::string> candidates;
    for (const process* f : foods)
      candidates.push_back("`" + std::string(f->id) + "` (" + std::string(f->title) + ")");
    sentence_facts facts;
    facts.found = found;
    facts.choices = joined(candidates);
    j.say("food-ambiguous", at, std::move(facts));
  }
  // A plain food with other foods among its ingredients is a mixture that its table does not cover.
  if (foods.size() == 1 && p.food && foods.front()->recipe == recipe_kind::plain) {
    for (const word& line : p.ingredients) {
      const std::vector<const process*> named = foods_named(j.rules, plain_food(line.text));
      if (!named.empty() && std::find(named.begin(), named.end(), foods.front()) == named.end()) {
        j.say("no-tested-process", place_of("ingredients", line),
              {line.text,
               {},
               "The table for " + std::string(foods.front()->title) +
                   " is for that food alone, and \"" + line.text + "\" is another.",
               "Leave it out, or name the published process of the mixture in `food`.",
               {}});
      }
    }
  }
  return foods;
}

}  // namespace jarproof::detail
