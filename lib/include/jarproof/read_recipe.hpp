// Reading recipes: pasted text, and schema.org Recipe in a document tree.
//
//   jarproof::result<jarproof::recipe> soup = jarproof::read_recipe_text(text, "soup.txt");
//   if (!soup) for (const jarproof::problem& p : soup.errors()) ...
//
// JSON texts and web pages are read by `read_recipe_json` in jarproof/json.hpp. Nothing is decided
// about food here; what may be an ingredient line is kept as one.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <unordered_set>
#include <utility>
#include <vector>

#include "jarproof/detail/recipe_text.hpp"
#include "jarproof/detail/recipe_tree.hpp"
#include "jarproof/document.hpp"
#include "jarproof/recipe.hpp"
#include "jarproof/result.hpp"

namespace jarproof {

/// A recipe as pasted from anywhere, or a plain list of ingredient lines. Below a heading such as
/// `Ingredients` every line is an ingredient, up to one such as `Method` or `Directions`. Without
/// headings, lines with an amount and short lines are ingredients, and long sentences are steps.
/// A text without any ingredient is refused; so are more than 1 MiB, bytes that are no UTF-8 and
/// control characters.
[[nodiscard]] inline result<recipe> read_recipe_text(std::string_view text, std::string name) {
  if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);  // byte order mark
  problems errors = detail::recipe_byte_faults(text, name);
  if (!errors.empty()) return errors;
  return detail::recipe_text_reader(text, std::move(name)).read();
}

/// True for an object of linked data (JSON-LD), which may hold a Recipe and is never a plan.
[[nodiscard]] inline bool is_linked_data(const node& n) {
  return n.kind == node_kind::map &&
         std::any_of(n.members.begin(), n.members.end(), [](const member& m) {
           return m.key == "recipeIngredient" || (!m.key.empty() && m.key.front() == '@');
         });
}

/// Every schema.org Recipe in the documents of one text, each once, at whatever depth it stands.
/// Mentions of a recipe without its ingredients are passed over where another has them.
[[nodiscard]] inline result<std::vector<recipe>> recipes_of(const std::vector<document>& documents,
                                                            const std::string& name) {
  struct place {
    const document* in;
    const node* at;
  };
  std::vector<place> found;
  for (const document& d : documents) {
    std::vector<const node*> here;
    detail::find_recipes(d.root, here);
    for (const node* n : here) found.push_back({&d, n});
  }
  const auto is_mention = [](const place& p) { return detail::ingredients_in(*p.at) == nullptr; };
  if (!std::all_of(found.begin(), found.end(), is_mention))
    found.erase(std::remove_if(found.begin(), found.end(), is_mention), found.end());
  problems errors;
  if (found.empty()) {
    errors.push_back(
        {name, 0, 0, "", "no recipe stands in it (schema.org Recipe)",
         "write `\"@type\": \"Recipe\"` and `\"recipeIngredient\": [...]`, or save the "
         "recipe as plain text (.txt)"});
  }
  std::vector<recipe> out;
  std::unordered_set<std::string> seen;
  for (const place& p : found) {
    recipe r = detail::recipe_object_reader(*p.in, errors).read(*p.at);
    if (seen.insert(detail::words_together(r)).second) out.push_back(std::move(r));
  }
  if (!errors.empty()) return errors;
  return out;
}

}  // namespace jarproof
