// Words of printed directions for the food of the plan itself: `the butter` of apple butter, the
// cased sausage of ground meat, sugar to taste.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/recipe_places.hpp"
#include "jarproof/detail/step_sentences.hpp"

namespace jarproof::detail {

/// Stock is made of soup bones. `food` is the process of the plan, or null.
[[nodiscard]] inline bool is_stock(const process* food) {
  return food != nullptr &&
         std::any_of(food->names.begin(), food->names.end(), [](std::string_view name) {
           return name.find("broth") != std::string_view::npos ||
                  name.find("stock") != std::string_view::npos;
         });
}

/// `Pickled dilly beans`: a tested recipe with vinegar is a pickle, whatever it is called.
[[nodiscard]] inline bool is_pickle(const process* food) {
  return food != nullptr && food->kind == food_class::acid && has_part_with(*food, part_role::acid);
}

/// `It is done if the butter remains mounded`, `Fill hot salsa into jars`: apple butter and salsa
/// themselves. `Stir in the butter` is butter.
[[nodiscard]] inline bool is_own_dish(const process* food, const std::vector<line_token>& s,
                                      const name_match& m, std::string_view name) {
  const bool hot = starts_with(name, "hot ");
  const bool article = m.from > 0 && s[m.from - 1].text == "the";
  const bool puts_in = std::any_of(s.begin(), s.end(), [](const line_token& t) {
    return line::one_of(t.text, {"add", "adding", "brush", "cup", "cups", "dot", "in", "melt",
                                 "mix", "stir", "tbsp", "tsp", "with"}) ||
           starts_with(t.text, "tablespoon") || starts_with(t.text, "teaspoon");
  });
  if (food == nullptr || (!hot && !article) || puts_in) return false;
  const std::string own = " " + std::string(hot ? name.substr(4) : name);
  const auto ends = [&](std::string_view whole) {
    return whole.size() > own.size() && whole.substr(whole.size() - own.size()) == own;
  };
  return ends(folded(food->title)) || std::any_of(food->names.begin(), food->names.end(), ends);
}

/// `cut cased sausage into links`, where the table for ground meat has links.
[[nodiscard]] inline bool is_sausage_of_links(const process* food, const std::vector<line_token>& s,
                                              const name_match& m) {
  return m.what->id == "sausage" && m.from > 0 && s[m.from - 1].text == "cased" &&
         food != nullptr && food->recipe == recipe_kind::plain &&
         std::any_of(food->tables.begin(), food->tables.end(),
                     [](const table& t) { return t.forms.contains(std::string_view("links")); });
}

/// `Add sugar if desired`: nothing but sugar, salt and spice, of which more may be added.
[[nodiscard]] inline bool adds_seasoning(const edition& rules, const std::vector<line_token>& s) {
  if (std::none_of(s.begin(), s.end(), [](const line_token& t) { return t.text == "add"; }))
    return false;
  bool any = false;
  name_index names(rules, s);
  for (std::size_t at = 0; at < s.size();) {
    const name_match m = names.at(at, s.size(), true);
    at = m.what == nullptr ? at + 1 : m.end;
    if (m.what == nullptr || is_dish_word(rules, words_between(s, m.from, m.end))) continue;
    any = is_a(rules, *m.what, "sugar") || is_a(rules, *m.what, "salt") ||
          is_a(rules, *m.what, "spice");
    if (!any) return false;
  }
  return any;
}

}  // namespace jarproof::detail
