// Each tested way to get a dish, or its parts, on the shelf, and what has to change for it.
//
//   for (const jarproof::way& w : jarproof::ways_of(plan, edition)) use(w.kind, w.changes);
//
// A way names only what is published: its numbers are those that `check` asks for. The freezer is
// always the last one.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/way_parts.hpp"
#include "jarproof/detail/way_title.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/plan.hpp"
#include "jarproof/way.hpp"

namespace jarproof {

namespace detail {

/// Ids in backticks that name processes: `soups`.
[[nodiscard]] inline std::vector<const process*> named_in(const edition& rules,
                                                          std::string_view text) {
  std::vector<const process*> out;
  for (std::size_t at = text.find('`'); at != std::string_view::npos; at = text.find('`', at + 1)) {
    const std::size_t end = text.find('`', at + 1);
    if (end == std::string_view::npos) break;
    const process* p = find(rules.processes, text.substr(at + 1, end - at - 1));
    if (p != nullptr && usable(*p)) out.push_back(p);
    at = end;
  }
  return out;
}

/// The plan's own process, where nothing in the dish speaks against it.
[[nodiscard]] inline std::optional<way> as_planned(const dish& d) {
  const process* p = d.judged.process;
  if (p == nullptr || !usable(*p)) return std::nullopt;
  const auto about_dish = [](const finding& f) {
    if (f.outcome == outcome::none || f.check == "fact-missing") return false;
    return f.field == "ingredients" || f.field == "food" || f.check == "recipe-not-shown" ||
           f.check == "no-tested-process" || f.check == "table-not-verified";
  };
  if (std::any_of(d.judged.findings.begin(), d.judged.findings.end(), about_dish))
    return std::nullopt;
  // Lines that happen to fit a soup are no planned soup where the plan says boiling water.
  if (!d.what.food && p->recipe == recipe_kind::frame &&
      std::any_of(d.judged.findings.begin(), d.judged.findings.end(),
                  [](const finding& f) { return f.check == "low-acid-needs-pressure"; }))
    return std::nullopt;
  way out;
  out.kind = "as-planned";
  out.title =
      (d.judged.verdict == verdict::rejected ? "The same food, put right: " : "As planned: ") +
      std::string(p->title);
  out.process = p;
  for (const finding& f : d.judged.findings) {
    // What is unsaid of the kitchen is answered by the numbers.
    if (f.outcome == outcome::none || (f.check == "fact-missing" && f.field != "acid")) continue;
    add_once(out.changes, f.fix);
  }
  std::vector<std::string> said;  // by the findings already
  out.numbers = numbers_for(d, *p, said);
  if (d.judged.required && d.judged.required->verified) {
    // The plan's own pack and form count here.
    out.numbers.required = d.judged.required;
    out.numbers.options = d.judged.options;
  }
  if (!open_to(d, out.numbers)) return std::nullopt;
  add_acid(*p, out.changes);
  if (p->recipe == recipe_kind::frame && !d.lines.empty())
    out.amounts = fill_of(d, *p, d.lines, out.numbers);
  add_other_position(d.judged, out);
  cite(d, *p, out.numbers, out.sources);
  return out;
}

/// A published recipe; with lines, how they differ from it.
[[nodiscard]] inline std::optional<way> recipe_way(const dish& d, const process& p,
                                                   const recipe_match* match) {
  way out;
  out.kind = "recipe";
  out.title = "The published recipe: " + std::string(p.title);
  out.process = &p;
  cite(d, p, {}, out.sources);
  add_steps(d, "recipe", &p, trait_among(d.rules, d.lines), out);
  if (match != nullptr) {
    for (const std::string& difference : differences_from(d.reading, *match, d.lines)) {
      std::string text = difference;
      ++out.altered;
      if (!text.empty() && text.front() >= 'a' && text.front() <= 'z')
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
      add_once(out.changes, text + ".");
    }
  }
  out.numbers = numbers_for(d, p, out.changes);
  if (!open_to(d, out.numbers)) return std::nullopt;
  add_acid(p, out.changes);
  cite(d, p, out.numbers, out.sources);
  return out;
}

/// A process that the plan only names by a word, or a relative of the food that it names.
[[nodiscard]] inline std::optional<way> named_way(const dish& d, const process& p, bool relative) {
  if (!usable(p)) return std::nullopt;
  std::optional<way> out;
  if (p.recipe == recipe_kind::fixed) {
    out = recipe_way(d, p, nullptr);
  } else {
    out.emplace();
    out->process = &p;
    const bool frame = p.recipe == recipe_kind::frame;
    out->kind = frame ? "frame" : relative ? "parts" : "as-planned";
    out->title = (frame      ? "As "
                  : relative ? "In its place: "
                             : "The food of the plan: ") +
                 std::string(p.title);
    add_sources(d.rules, p.sources, out->sources);
    if (frame)
      add_steps(
          d, "frame", &p, [](std::string_view) { return true; }, *out);
    if (!frame && relative) {
      out->process = nullptr;
      out->parts.push_back(part_of(d, p));
      out->sources = out->parts.front().sources;
      if (!open_to(d, out->parts.front().numbers)) return std::nullopt;
      return out;
    }
    out->numbers = numbers_for(d, p, out->changes);
    if (!open_to(d, out->numbers)) return std::nullopt;
    add_acid(p, out->changes);
    cite(d, p, out->numbers, out->sources);
  }
  return out;
}

class way_finder {
 public:
  way_finder(const plan& what, const edition& rules)
      : dish_{what, rules, check(what, rules), {}, {what, rules, dish_.scratch, {}}, {}} {
    for (plan_line& l : read_lines(dish_.reading)) {
      if (!l.reading.at_serving) dish_.lines.push_back(std::move(l));
    }
    if (what.title) {
      title_ = what.title->text;
    } else if (is_title(dish_)) {
      title_ = dish_.lines.front().said->text;
      dish_.lines.erase(dish_.lines.begin());
    }
    if (what.altitude) dish_.scratch.altitude_ft = dish_.judged.altitude_ft;
  }

  [[nodiscard]] std::vector<way> take() {
    keep(as_planned(dish_));
    const bool planned = !out_.empty();
    if (dish_.lines.empty()) {
      if (!planned) by_name();
    } else {
      by_lines(planned);
    }
    keep(freezer_way(dish_));
    discard_first();
    return std::move(out_);
  }

 private:
  dish dish_;
  std::vector<way> out_;
  std::string title_;

  void keep(std::optional<way> w) {
    if (w) out_.push_back(std::move(*w));
  }
  [[nodiscard]] bool has(const process& p) const {
    return std::any_of(out_.begin(), out_.end(), [&](const way& w) { return w.process == &p; });
  }

  /// Only a name is there: the foods that share it, or the relatives of a food without a process.
  void by_name() {
    const plan& what = dish_.what;
    if (!what.food) return;
    const std::vector<const process*> foods = foods_named(dish_.rules, what.food->text);
    for (const process* p : foods) {
      std::optional<way> w = named_way(dish_, *p, false);
      if (w && foods.size() > 1)
        w->changes.insert(w->changes.begin(), "Write `food: " + std::string(p->id) + "`.");
      keep(std::move(w));
    }
    if (foods.empty()) relatives();
  }
  void relatives() {
    const untested_food* food =
        dish_.what.food ? untested_named(dish_.rules, dish_.what.food->text) : nullptr;
    if (food == nullptr) return;
    for (const process* p : named_in(dish_.rules, food->instead)) {
      if (has(*p)) continue;
      std::optional<way> w = named_way(dish_, *p, true);
      if (!w) continue;
      w->changes.insert(w->changes.begin(), std::string(food->instead));
      add_sources(dish_.rules, food->sources, w->sources);
      keep(std::move(w));
    }
  }

  void by_lines(bool planned) {
    const bool plain = planned && dish_.judged.process->recipe != recipe_kind::frame;
    if (plain && dish_.judged.process->recipe == recipe_kind::plain) return;
    if (!planned && by_title()) return;
    bool titled = false;
    const nearest_recipe recipe = plain ? nearest_recipe{} : nearest(titled);
    const std::size_t first = out_.size();
    // Pickles and salsas keep by their acid; as a soup they would be another dish.
    const bool acid = recipe.food != nullptr && recipe.food->kind == food_class::acid;
    // What is called by a published sauce is no soup unless it has broth.
    const bool sauce = titled && !has_broth(dish_);
    if (!plain && !acid && !sauce && !meant_as_acid()) {
      for (const process* frame : frames_for(dish_)) {
        if (!has(*frame)) keep(frame_way(dish_, *frame));
      }
    }
    if (recipe.food != nullptr) keep(recipe_way(dish_, *recipe.food, &recipe.match));
    // What the dish is called by comes first, then the way that changes the fewest lines.
    std::stable_sort(out_.begin() + static_cast<std::ptrdiff_t>(first), out_.end(),
                     [&](const way& a, const way& b) {
                       if (titled && (a.kind == "recipe") != (b.kind == "recipe"))
                         return a.kind == "recipe";
                       return a.altered != b.altered ? a.altered < b.altered
                                                     : a.kind == "recipe" && b.kind != "recipe";
                     });
    if (out_.empty()) relatives();
    keep(parts_way(dish_));
  }

  /// A plain food that the title names; true where there is one.
  [[nodiscard]] bool by_title() {
    if (dish_.what.food || title_.empty()) return false;
    const std::size_t before = out_.size();
    for (const process* p : named_by_title(dish_.rules, title_)) keep(titled_food(dish_, *p));
    return out_.size() > before;
  }

  /// The recipe of the food that the plan names, or that its title does (`titled`), or else the one
  /// that its lines come nearest to.
  [[nodiscard]] nearest_recipe nearest(bool& titled) const {
    const auto fits = [&](const process* p) {
      return p != nullptr && usable(*p) && !p->recipes.empty();
    };
    nearest_recipe best;
    std::vector<const process*> named;
    if (fits(dish_.judged.process)) named.push_back(dish_.judged.process);
    if (named.empty() && dish_.what.food) named = foods_named(dish_.rules, dish_.what.food->text);
    if (named.empty() && dish_.what.food) {
      if (const untested_food* f = untested_named(dish_.rules, dish_.what.food->text))
        named = named_in(dish_.rules, f->instead);
    }
    bool frame = false;  // what is called a soup is no relish
    const bool by_title = named.empty() && !title_.empty();
    if (by_title) named = named_by_title(dish_.rules, title_);
    for (const process* p : named) {
      frame = frame || (by_title && p->recipe == recipe_kind::frame);
      if (!fits(p)) continue;
      recipe_match m = match_recipes(dish_.reading, *p, dish_.lines);
      if (by_title && !holds_most(dish_.rules, m, dish_.lines)) continue;
      if (!m.main_food || (best.food != nullptr && m.score >= best.match.score)) continue;
      best = {p, std::move(m), 0};
    }
    titled = by_title && best.food != nullptr;
    if (best.food == nullptr && frame) return best;
    if (best.food == nullptr && is_sour(dish_.rules, dish_.lines))
      best = nearest_of_kind(dish_.reading, dish_.lines, true);
    if (best.food == nullptr) best = nearest_of_kind(dish_.reading, dish_.lines);
    if (best.food != nullptr && !usable(*best.food)) best = {};
    return best;
  }
  [[nodiscard]] bool meant_as_acid() const {
    if (is_sour(dish_.rules, dish_.lines)) return true;
    if (!dish_.what.food) return false;
    const std::vector<const process*> foods = foods_named(dish_.rules, dish_.what.food->text);
    return !foods.empty() && std::all_of(foods.begin(), foods.end(), [](const process* p) {
      return p->kind == food_class::acid;
    });
  }
  /// Food that stood too long goes neither into a jar nor into the freezer.
  void discard_first() {
    for (const finding& f : dish_.judged.findings) {
      if (f.check != "held-too-warm" && f.check != "held-too-long") continue;
      for (way& w : out_) {
        if (std::find(w.changes.begin(), w.changes.end(), f.fix) == w.changes.end())
          w.changes.insert(w.changes.begin(), f.fix);
      }
    }
  }
};

}  // namespace detail

/// The ways of one dish: as planned, then by how little changes, its parts, and the freezer last. A
/// plan that does not say jar or altitude gets them without those numbers, or for every listed jar.
[[nodiscard]] inline std::vector<way> ways_of(const plan& what, const edition& rules) {
  return detail::way_finder(what, rules).take();
}

}  // namespace jarproof
