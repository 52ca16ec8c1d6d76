// A recipe as somebody wrote it down: what goes in, what is done, how much it makes.
//
//   jarproof::result<jarproof::recipe> soup = jarproof::read_recipe_text(text, "soup.txt");
//   jarproof::add_recipe(document, *soup);        // the plan's document takes its lines over
//   jarproof::read_plan(document);
//
// Readers stand in jarproof/read_recipe.hpp and jarproof/json.hpp.
// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/document.hpp"
#include "jarproof/plan.hpp"
#include "jarproof/result.hpp"

namespace jarproof {

struct recipe {
  std::string source;  ///< display name of the text it came from
  std::optional<word> title;
  std::vector<word> ingredients;  ///< a line each, without bullets, HTML entities and tags
  std::vector<word> steps;
  std::vector<word> notes;    ///< introduction and remarks; judged as the steps are
  std::vector<word> asides;   ///< bare times, names, reviews; not compared
  std::optional<word> yield;  ///< such as `9 pints` or `Serves 8`
};

namespace detail {

[[nodiscard]] inline node recipe_node(const word& w, std::string path) {
  node n;
  n.kind = node_kind::scalar;
  n.style = scalar_style::quoted;
  n.in_recipe = true;
  n.text = w.text;
  n.line = w.line;
  n.column = w.column;
  n.path = std::move(path);
  return n;
}

inline void add_recipe_lines(document& plan, const char* key, const std::vector<word>& lines) {
  if (const node* own = find(plan.root, key)) {
    plan.faults.push_back({plan.name, own->line, own->column, key,
                           "`" + std::string(key) + "` stands beside a recipe, which has its own",
                           "leave out `" + std::string(key) + "` or the recipe"});
    return;
  }
  if (lines.empty()) return;
  node list;
  list.kind = node_kind::sequence;
  list.in_recipe = true;
  list.line = lines.front().line;
  list.column = lines.front().column;
  list.path = key;
  for (const word& line : lines) {
    list.items.push_back(
        recipe_node(line, std::string(key) + "[" + std::to_string(list.items.size() + 1) + "]"));
  }
  plan.root.members.push_back({key, list.line, list.column, std::move(list)});
}

inline void add_recipe_word(document& plan, const char* key, const std::optional<word>& w) {
  if (!w || find(plan.root, key) != nullptr) return;
  plan.root.members.push_back({key, w->line, w->column, recipe_node(*w, key)});
}

}  // namespace detail

/// Puts a recipe into the document of a plan, before `read_plan`: its ingredients, its steps with
/// its notes behind them, and its title and yield where the plan has none. `ingredients` or `steps`
/// of the plan's own are a fault of the document: two lists, of which one would go unseen.
inline void add_recipe(document& plan, const recipe& r) {
  plan.recipe_source = r.source;
  if (plan.root.kind != node_kind::map) return;
  detail::add_recipe_lines(plan, "ingredients", r.ingredients);
  std::vector<word> steps = r.steps;  // `Note: stir in some cream` is done like any step
  steps.insert(steps.end(), r.notes.begin(), r.notes.end());
  detail::add_recipe_lines(plan, "steps", steps);
  detail::add_recipe_word(plan, "title", r.title);
  detail::add_recipe_word(plan, "yield", r.yield);
}

/// A plan that says nothing but its recipe; the other keys are put in by the caller.
[[nodiscard]] inline document plan_document(const recipe& r) {
  document plan;
  plan.name = r.source;
  plan.root.kind = node_kind::map;
  const bool has_lines = !r.ingredients.empty() && r.ingredients.front().line > 0;
  plan.root.line = has_lines ? 1 : 0;
  plan.root.column = has_lines ? 1 : 0;
  add_recipe(plan, r);
  return plan;
}

}  // namespace jarproof
