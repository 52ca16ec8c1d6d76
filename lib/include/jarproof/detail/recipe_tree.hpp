// Recipes in linked data: schema.org Recipe as JSON-LD, in a tree that a JSON reader made.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <iterator>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/pasted_text.hpp"
#include "jarproof/detail/recipe_lines.hpp"
#include "jarproof/document.hpp"
#include "jarproof/recipe.hpp"

namespace jarproof::detail {

/// `Recipe`, also with the address or prefix of schema.org before it.
[[nodiscard]] inline bool names_recipe(const node& type) {
  if (type.kind == node_kind::sequence)
    return std::any_of(type.items.begin(), type.items.end(), names_recipe);
  const std::string_view text = type.text;
  const std::size_t start = text.find_last_of("/:#");
  return text.substr(start == std::string_view::npos ? 0 : start + 1) == "Recipe";
}

[[nodiscard]] inline const node* ingredients_in(const node& n) noexcept {
  const node* list = find(n, "recipeIngredient");
  return list != nullptr ? list : find(n, "ingredients");
}

[[nodiscard]] inline bool is_recipe(const node& n) {
  if (n.kind != node_kind::map) return false;
  return find(n, "recipeIngredient") != nullptr ||
         std::any_of(n.members.begin(), n.members.end(),
                     [](const member& m) { return m.key == "@type" && names_recipe(m.value); });
}

/// All recipes below `n`, in the order of the text; what stands inside a recipe belongs to it.
inline void find_recipes(const node& n, std::vector<const node*>& out) {
  if (is_recipe(n)) {
    out.push_back(&n);
    return;
  }
  for (const member& m : n.members) find_recipes(m.value, out);
  for (const node& item : n.items) find_recipes(item, out);
}

/// Reads one Recipe; what it cannot read is added to `errors`.
class recipe_object_reader {
 public:
  recipe_object_reader(const document& d, problems& errors) : d_(d), errors_(errors) {}

  [[nodiscard]] recipe read(const node& n) {
    recipe out;
    out.source = d_.name;
    for (const problem& p : d_.faults) {
      if (is_about(p.path, n)) errors_.push_back(p);
    }
    if (const node* name = find(n, "name")) out.title = one_line(first_of(*name));
    read_ingredients(n, out);
    for (const char* key : {"recipeInstructions", "instructions", "directions", "step", "steps"}) {
      if (const node* steps = find(n, key)) read_steps(*steps, out.steps);
    }
    if (const node* yield = find(n, "recipeYield")) {
      out.yield = yield_in(*yield);
      // A second entry may say more: `["9 pints", "with 1 cup cream"]`.
      for (const node& item : yield->items) read_texts(item, out.notes);
    }
    for (const std::string_view key : note_keys) {
      if (const node* more = find(n, key)) read_texts(*more, out.notes);
    }
    return out;
  }

 private:
  const document& d_;
  problems& errors_;

  /// What a page says about its recipe beside list and directions. Cooks put changes there, so that
  /// all of it is judged like a direction.
  static constexpr std::string_view note_keys[] = {
      "description", "alternateName", "alternativeHeadline",
      "headline",    "cookingMethod", "tool",
      "note",        "notes",         "recipeNotes",
      "tip",         "tips",          "variations",
      "comment",     "abstract",      "disambiguatingDescription",
      "articleBody", "text"};
  static constexpr const char* text_wanted =
      "write each ingredient as a text, such as `\"3 lb venison, cubed\"`";

  void fault(const node& at, std::string message, std::string write) {
    errors_.push_back({d_.name, at.line, at.column, at.path, std::move(message), std::move(write)});
  }

  /// A recipe page says many things twice; only what is read here matters.
  [[nodiscard]] static bool is_about(std::string_view path, const node& n) {
    const std::string_view own = n.path;
    if (!own.empty() && !begins_with(path, std::string(own) + ".")) return false;
    const std::string_view key = path.substr(own.empty() ? 0 : own.size() + 1);
    const std::string_view first = key.substr(0, key.find_first_of(".["));
    return std::find(std::begin(note_keys), std::end(note_keys), first) != std::end(note_keys) ||
           is_one_of(first,
                     {"name", "recipeIngredient", "ingredients", "recipeInstructions",
                      "recipeYield", "supply", "step", "steps", "instructions", "directions"});
  }

  [[nodiscard]] static const node& first_of(const node& n) noexcept {
    return n.kind == node_kind::sequence && !n.items.empty() ? n.items.front() : n;
  }

  [[nodiscard]] static bool is_text(const node& n) noexcept {
    return n.kind == node_kind::scalar && n.style != scalar_style::plain;
  }

  /// The lines of a text, without markup; an entry may hold several.
  void add_lines(const node& n, std::vector<word>& out) {
    const std::string plain = plain_text(n.text);
    if (has_control(plain)) {
      fault(n, "a control character stands in the text", "delete it");
      return;
    }
    std::string_view rest = plain;
    while (!rest.empty()) {
      const std::size_t end = rest.find('\n');
      recipe_line line;
      std::string_view text = rest.substr(0, end);
      take_bullets(text, line);
      if (!text.empty()) out.push_back({{}, std::string(text), n.line, n.column});
      rest.remove_prefix(end == std::string_view::npos ? rest.size() : end + 1);
    }
  }

  [[nodiscard]] std::optional<word> one_line(const node& n) {
    if (n.kind != node_kind::scalar) return std::nullopt;
    std::vector<word> lines;
    add_lines(n, lines);
    if (lines.empty()) return std::nullopt;
    return std::move(lines.front());
  }

  [[nodiscard]] std::optional<word> yield_in(const node& n) {
    // `["9", "9 pints"]`: the entry with words says more.
    for (const node& item : n.items) {
      const bool has_words = item.text.find_first_not_of("0123456789 ") != std::string::npos;
      if (item.kind == node_kind::scalar && has_words) return one_line(item);
    }
    return one_line(first_of(n));
  }

  void read_ingredients(const node& n, recipe& out) {
    const node* list = ingredients_in(n);
    if (list == nullptr) {
      fault(n, "the recipe has no `recipeIngredient`",
            "write `\"recipeIngredient\": [\"3 lb venison, cubed\"]`");
      return;
    }
    const node* old = find(n, "ingredients");
    const std::size_t before = errors_.size();
    out.ingredients = texts_of(*list);
    if (old != nullptr && old != list) {
      const std::vector<word> others = texts_of(*old);
      const bool same =
          std::equal(others.begin(), others.end(), out.ingredients.begin(), out.ingredients.end(),
                     [](const word& a, const word& b) { return a.text == b.text; });
      if (!same)
        fault(*old, "`ingredients` and `recipeIngredient` differ", "keep one of the two lists");
    }
    if (const node* supply = find(n, "supply")) add_supplies(*supply, out.ingredients);
    for (const member& m : n.members) {
      std::vector<const node*> inner;
      find_recipes(m.value, inner);
      for (const node* part : inner) {
        if (ingredients_in(*part) != nullptr)
          fault(*part, "a recipe stands inside the recipe",
                "put its ingredients into `recipeIngredient`, or into a recipe of its own");
      }
    }
    if (out.ingredients.empty() && errors_.size() == before)
      fault(*list, "the list of ingredients is empty", text_wanted);
  }

  /// What is said to be used up is an ingredient too, unless the list has it.
  void add_supplies(const node& n, std::vector<word>& out) {
    for (const node& item : n.items) add_supplies(item, out);
    const node* name = n.kind == node_kind::map ? find(n, "name") : &n;
    if (name == nullptr || !is_text(*name)) return;
    std::vector<word> lines;
    add_lines(*name, lines);
    for (word& l : lines) {
      const bool listed = std::any_of(out.begin(), out.end(), [&](const word& have) {
        return folded(have.text).find(folded(l.text)) != std::string::npos;
      });
      if (!listed) out.push_back(std::move(l));
    }
  }

  [[nodiscard]] std::vector<word> texts_of(const node& list) {
    std::vector<word> out;
    if (is_text(list)) {
      add_lines(list, out);
    } else if (list.kind != node_kind::sequence) {
      fault(list, "the ingredients are no list of texts", text_wanted);
    }
    for (const node& item : list.items) {
      if (is_text(item)) {
        add_lines(item, out);
      } else {
        fault(item, "this ingredient is no text", text_wanted);
      }
    }
    return out;
  }

  /// Whatever of a field is text: remarks, a tool, a comment. Numbers and the like say nothing.
  void read_texts(const node& n, std::vector<word>& out) {
    if (is_text(n)) add_lines(n, out);
    for (const node& item : n.items) read_texts(item, out);
    if (n.kind != node_kind::map) return;
    for (const char* key : {"name", "text", "description"}) {
      if (const node* inner = find(n, key)) read_texts(*inner, out);
    }
  }

  /// Texts, HowToStep, HowToSection and lists of them.
  void read_steps(const node& n, std::vector<word>& out) {
    if (is_text(n)) return add_lines(n, out);
    if (n.kind == node_kind::scalar)
      return fault(n, "this step is no text", "write each step as a text");
    for (const node& item : n.items) read_steps(item, out);
    if (n.kind != node_kind::map) return;
    const node* text = find(n, "text");
    const node* name = find(n, "name");
    // The name of a step often says its text again; where it does not, both are said.
    if (name != nullptr && is_text(*name) &&
        (text == nullptr || !begins_with(folded(text->text), folded(name->text))))
      read_steps(*name, out);
    if (text != nullptr) read_steps(*text, out);
    for (const char* key : {"description", "supply", "tool", "note", "notes", "tip", "tips"}) {
      if (const node* more = find(n, key)) read_texts(*more, out);
    }
    for (const char* key : {"itemListElement", "steps", "item"}) {
      if (const node* inner = find(n, key)) read_steps(*inner, out);
    }
  }
};

/// What two mentions of one recipe have in common.
[[nodiscard]] inline std::string words_together(const recipe& r) {
  std::string out;
  for (const std::vector<word>* words : {&r.ingredients, &r.steps}) {
    for (const word& w : *words) out += w.text + "\n";
    out += "\n";
  }
  return out;
}

}  // namespace jarproof::detail
