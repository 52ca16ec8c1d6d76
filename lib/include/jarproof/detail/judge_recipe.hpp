// A plan's ingredients against the tested recipes of its food: which recipe it comes nearest to,
// and what has no place in it. A plan follows one recipe whole. SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/dry_beans.hpp"
#include "jarproof/detail/mixture_parts.hpp"
#include "jarproof/detail/plain_foods.hpp"
#include "jarproof/detail/recipe_comparison.hpp"

namespace jarproof::detail {

/// The check that objects to an ingredient which has no place in the recipe, or empty. Salt, sugar
/// and dried spices change the taste, and more acid than tested is the strict side.
[[nodiscard]] inline std::string_view objection_to(const edition& rules, const plan_line& l,
                                                   const ingredient& i) {
  const auto is = [&](std::string_view trait) { return is_a(rules, i, trait); };
  if (const std::string_view ban = ban_on(rules, i); !ban.empty()) return ban;
  // Half a cup of one spice is no seasoning.
  const bool much = is("spice") && l.reading.amount &&
                    l.reading.amount->kind == measure_kind::volume &&
                    l.reading.amount->high >= 24'000;
  if (is("not-bottled")) return "acid-not-bottled";
  if (is("homemade")) return "vinegar-homemade";
  if (is("salt") || is("sugar") || (is("spice") && !much)) return {};
  if (is("acidifier") && l.reading.vinegar_percent.value_or(5) >= 5) return {};
  if (is("water") && says_discarded(l)) return {};
  if (is("water") || (is("liquid") && i.kind == acidity::neutral)) return "water-too-much";
  if (i.kind == acidity::low_acid || i.kind == acidity::borderline || is("fresh-herb"))
    return "low-acid-share-too-high";
  return "not-in-recipe";
}

/// Ice under which a recipe with such a soak chills its vegetables: `crushed ice, to cover`. And
/// water to soak what is then canned under pressure, where every word of the line says so. Water in
/// a pickle thins the vinegar, so that there nothing but `discarded` takes it away.
[[nodiscard]] inline bool is_poured_away(const edition& rules, const process& p,
                                         const plan_line& l) {
  const ingredient* what = l.reading.what;
  if (what == nullptr || !is_a(rules, *what, "water") || !l.reading.others.empty()) return false;
  const bool ice = what->id == "ice";
  const bool soak = std::any_of(p.recipes.begin(), p.recipes.end(), [](const tested_recipe& r) {
    return std::any_of(r.parts.begin(), r.parts.end(),
                       [](const recipe_part& part) { return part.discarded; });
  });
  if (ice ? !soak : p.kind != food_class::low_acid || l.reading.amount.has_value()) return false;
  bool said = ice;
  for (const line_token& t : tokens_of(plain_line(l.said->text))) {
    said = said || line::one_of(t.text, {"cover", "covering", "soak", "soaking"});
    if (!is_digit(t.text.front()) && unit_named(t.text) == nullptr &&
        !line::one_of(t.text, {"ice",     "crushed",  "cubed", "cubes",   "to",      "for",
                               "cover",   "covering", "soak",  "soaking", "chill",   "chilling",
                               "water",   "cold",     "and",   "boil",    "boiling", "cook",
                               "cooking", "beans",    "the",   "about"}))
      return false;
  }
  return said;
}

/// An ingredient that has no place in the recipe.
inline void judge_stranger(judging& j, const process& p, const plan_line& l, const ingredient& i) {
  if (is_poured_away(j.rules, p, l)) return;
  const std::string_view id = objection_to(j.rules, l, i);
  if (id.empty()) return;
  sentence_facts facts;
  facts.found = l.said->text;
  facts.required = id == "acid-not-bottled"   ? "bottled juice, in the amount that was tested"
                   : id == "vinegar-homemade" ? "vinegar of 5 %"
                                              : "none of it";
  facts.reason = "The tested recipe has none.";
  finding& f = j.say(id, place_of("ingredients", *l.said), std::move(facts));
  cite_first(j.rules, p.sources, f);
}

/// Lines that cannot be read, one finding each.
inline void judge_unread_lines(judging& j, const std::vector<plan_line>& lines) {
  int unknown = 0;
  for (const plan_line& l : lines) {
    if (l.reading.what != nullptr && l.reading.strange.empty()) continue;
    if (l.reading.at_serving) continue;
    sentence_facts facts;
    facts.found = l.said->text;
    if (l.reading.what != nullptr) {
      facts.instead = "Not understood: " + joined(l.reading.strange, "and") + ".";
    } else if (++unknown <= 20) {  // looking for near names is slow; after some it helps nobody
      facts.choices = joined(ingredients_near(j.rules, l.reading.name));
      if (!facts.choices.empty())
        facts.instead = "If it is only spelled otherwise: " + facts.choices + ".";
    }
    j.say("ingredient-unknown", place_of("ingredients", *l.said), std::move(facts));
  }
}

/// Strength of a vinegar on a line or in the plan: at least 5 %.
inline void judge_vinegar_lines(judging& j, const process& p, const std::vector<plan_line>& lines) {
  for (const plan_line& l : lines) {
    if (l.reading.what == nullptr || !is_a(j.rules, *l.reading.what, "acidifier")) continue;
    const int named = l.reading.what->vinegar_percent;
    const std::optional<int> percent = l.reading.vinegar_percent ? l.reading.vinegar_percent
                                       : named != 0              ? std::optional<int>(named)
                                                                 : std::nullopt;
    if (!percent || *percent >= 5) continue;
    finding& f = j.say("vinegar-too-weak", place_of("ingredients", *l.said),
                       {l.said->text, "at least 5 %", {}, {}, {}});
    cite_first(j.rules, p.sources, f);
  }
}

/// True where some part of the food's recipes takes this ingredient, or a food at least so near.
[[nodiscard]] inline bool has_part_for(const edition& rules, const process& p, const ingredient& i,
                                       nearness least = nearness::kind) {
  for (const tested_recipe& r : p.recipes) {
    for (const recipe_part& part : r.parts) {
      if (near_to(rules, i, part) >= least) return true;
    }
  }
  return false;
}

/// True for a second food of a line whose amount decides: `4 cups vinegar and 9 cups water`. A line
/// has one amount.
[[nodiscard]] inline bool needs_own_line(const edition& rules, const process& p, const plan_line& l,
                                         const other_ingredient& o) {
  if (o.instead || is_a(rules, *o.what, "spice")) return false;
  if (o.what->kind == acidity::low_acid) return true;
  // `apples, tart and sweet`
  if (&most_general(rules, *o.what) == &most_general(rules, *l.reading.what)) return false;
  return std::any_of(p.recipes.begin(), p.recipes.end(), [&](const tested_recipe& r) {
    return std::any_of(r.parts.begin(), r.parts.end(), [&](const recipe_part& part) {
      return part.limit != part_limit::free && near_to(rules, *o.what, part) != nearness::other;
    });
  });
}

/// The lines of a plan against the recipes of one food: of each set the recipe that they come
/// nearest to.
struct recipe_match {
  std::vector<held_finding> findings;
  std::vector<bool> placed;  ///< of each line
  bool main_food = true;     ///< the main food of each set is there
  bool whole = false;        ///< the lines show the recipes with all that belongs to them
  int score = 0;             ///< how far the lines are from the recipe; 0 = as published
};

[[nodiscard]] inline recipe_match match_recipes(const judging& j, const process& p,
                                                const std::vector<plan_line>& lines) {
  recipe_match out;
  out.placed.assign(lines.size(), false);
  std::vector<std::string_view> sets;
  for (const tested_recipe& r : p.recipes) {
    if (std::find(sets.begin(), sets.end(), r.set) == sets.end()) sets.push_back(r.set);
  }
  const auto weight_of = [&](const held_finding& f) {
    const check_rule* rule = find(j.rules.checks, f.id);
    if (f.left_unsaid) return 1;
    if (rule == nullptr) return 100;
    const outcome o = outcome_of(rule->outcome);
    return o == outcome::rejects      ? 100
           : o == outcome::untested   ? 10
           : o == outcome::incomplete ? 1
                                      : 0;
  };
  bool lacks = false;
  bool more = false;
  for (const std::string_view set : sets) {
    std::optional<recipe_comparison> best;
    int best_score = 0;
    for (const tested_recipe& r : p.recipes) {
      if (r.set != set) continue;
      recipe_comparison c(j, r, lines);
      // A recipe whose main food is not there is another recipe, whatever else fits.
      int score = c.has_main_food() ? 0 : 100'000;
      for (const held_finding& f : c.findings()) score += weight_of(f);
      // A line that this recipe does not know counts as much as one that is wrong.
      for (std::size_t i = 0; i < lines.size(); ++i) score += c.has_place(i) ? 0 : 10;
      if (best && score >= best_score) continue;
      best.emplace(std::move(c));
      best_score = score;
    }
    for (std::size_t i = 0; i < lines.size(); ++i)
      out.placed[i] = out.placed[i] || best->has_place(i);
    for (const held_finding& f : best->findings()) {
      out.score += weight_of(f);
      out.findings.push_back(f);
    }
    out.main_food = out.main_food && best->has_main_food();
    lacks = lacks || best->lacks_part();
    more = more || best->has_more();
  }
  // Where all parts but the main food may be left out, only a name tells the dish.
  out.whole = !lacks && (more || sets.size() > 1);
  return out;
}

/// The ingredient and all that it is a kind of.
[[nodiscard]] inline std::vector<std::string_view> family_line(const edition& rules,
                                                               const ingredient& i) {
  std::vector<std::string_view> out;
  for (const ingredient* up = &i; up != nullptr; up = parent_of(rules, *up)) out.push_back(up->id);
  return out;
}

/// Which recipes find their main food among the lines. It is asked first, because a whole
/// comparison is slow.
class main_foods {
 public:
  main_foods(const edition& rules, const std::vector<plan_line>& lines) : rules_(rules) {
    for (const plan_line& l : lines) {
      if (l.reading.what != nullptr) lines_.push_back(family_line(rules, *l.reading.what));
    }
  }

  /// True where each set of the food's recipes has one whose main food is there.
  [[nodiscard]] bool there(const process& p) const {
    std::vector<std::string_view> missing;
    std::vector<std::string_view> found;
    for (const tested_recipe& r : p.recipes) {
      std::vector<std::string_view>& sets = there(r) ? found : missing;
      if (sets.empty() || sets.back() != r.set) sets.push_back(r.set);
    }
    return std::all_of(missing.begin(), missing.end(), [&](std::string_view set) {
      return std::find(found.begin(), found.end(), set) != found.end();
    });
  }

 private:
  const edition& rules_;
  std::vector<std::vector<std::string_view>> lines_;  // each with all that it is a kind of

  [[nodiscard]] bool there(const tested_recipe& r) const {
    return std::any_of(r.parts.begin(), r.parts.end(), [&](const recipe_part& part) {
      return part.anchor && std::any_of(part.foods.begin(), part.foods.end(),
                                        [&](std::string_view food) { return there(food); });
    });
  }
  [[nodiscard]] bool there(std::string_view food) const {
    const auto has = [](const std::vector<std::string_view>& ids, std::string_view id) {
      return std::find(ids.begin(), ids.end(), id) != ids.end();
    };
    for (const std::vector<std::string_view>& l : lines_) {
      if (has(l, food)) return true;
    }
    const ingredient* wanted = find(rules_.ingredients, food);
    if (wanted == nullptr || wanted->kind_of.empty()) return false;
    const std::vector<std::string_view> above = family_line(rules_, *wanted);
    return std::any_of(lines_.begin(), lines_.end(),
                       [&](const auto& l) { return has(above, l.front()); });
  }
};

/// True for a word on the line of a recipe's own part that was tested with it: tomatoes or a stick
/// of cinnamon that are crushed, flour that is blended with water. No recipe has them pureed.
[[nodiscard]] inline bool is_tested_so(const edition& rules, const plan_line& l,
                                       const telling_word& t) {
  const ingredient& i = *l.reading.what;
  if (!l.reading.others.empty()) return false;
  if (t.id == "crushed") return i.kind != acidity::low_acid || is_seasoning(rules, i);
  return t.id == "blended" && is_a(rules, i, "thickener");
}

/// Compares the plan's ingredients with every recipe of the food and reports against the one that
/// they come nearest to.
inline void judge_tested_recipe(judging& j, const process& p) {
  const std::vector<plan_line> lines = read_lines(j);
  report_lines(j, lines);
  judge_unread_lines(j, lines);
  j.out.mixture_class = p.kind == food_class::acid ? "acid" : "low-acid";
  if (lines.empty()) {
    finding& f =
        j.unsaid("recipe-not-shown", place_of("ingredients", j.what),
                 {{}, "the published recipe", "No line of `ingredients` names a food", {}, {}});
    cite_first(j.rules, p.sources, f);
    return;
  }
  judge_vinegar_lines(j, p, lines);
  const recipe_match m = match_recipes(j, p, lines);
  for (const held_finding& f : m.findings) {
    finding& said = f.left_unsaid ? j.unsaid(f.id, f.at, f.facts) : j.say(f.id, f.at, f.facts);
    cite_first(j.rules, p.sources, said);
  }
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const plan_line& l = lines[i];
    if (l.reading.what == nullptr || !l.reading.strange.empty() || l.reading.at_serving) continue;
    judge_dry_beans(j, p, l);
    if (keeps_skins(p, l) && l.reading.what->kind != acidity::low_acid)
      j.say("ingredient-unknown", place_of("ingredients", *l.said),
            {l.said->text, "peeled", {}, "The published recipe peels it.", {}});
    if (!m.placed[i] && !answers_acid(j, p, l.reading)) judge_stranger(j, p, l, *l.reading.what);
    for (const other_ingredient& o : l.reading.others) {
      if (!has_part_for(j.rules, p, *o.what)) {
        judge_stranger(j, p, l, *o.what);
      } else if (needs_own_line(j.rules, p, l, o)) {
        finding& f = j.say("amount-unknown", place_of("ingredients", *l.said),
                           {l.said->text,
                            "an amount for each food; give " + o.name + " a line of its own",
                            {},
                            {},
                            {}});
        cite_first(j.rules, p.sources, f);
      }
    }
    for (const telling_word* t : l.reading.telling) {
      const ingredient& food = *l.reading.what;
      const bool thin = food.kind != acidity::low_acid || is_seasoning(j.rules, food);
      if (t->check == "low-acid-puree" && (thin || is_tested_so(j.rules, l, *t))) continue;
      j.say(t->check, place_of("ingredients", *l.said),
            {l.said->text, "none of it", "The word is \"" + std::string(t->id) + "\".", {}, {}});
    }
  }
}

/// True where the lines are a published recipe, with nothing that it would object to.
[[nodiscard]] inline bool is_as_published(const judging& j, const process& p,
                                          const std::vector<plan_line>& lines) {
  const recipe_match m = match_recipes(j, p, lines);
  if (!m.main_food || !m.whole || m.score > 0) return false;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const plan_line& l = lines[i];
    if (l.reading.at_serving) continue;
    if (l.reading.what == nullptr || !l.reading.strange.empty() || denies_soaking(j.rules, l))
      return false;
    for (const telling_word* t : l.reading.telling) {
      if (!m.placed[i] || !is_tested_so(j.rules, l, *t)) return false;
    }
    if (!m.placed[i] && !is_poured_away(j.rules, p, l) &&
        !objection_to(j.rules, l, *l.reading.what).empty())
      return false;
    for (const other_ingredient& o : l.reading.others) {
      const bool stranger = !has_part_for(j.rules, p, *o.what);
      if (stranger ? !objection_to(j.rules, l, *o.what).empty() : needs_own_line(j.rules, p, l, o))
        return false;
    }
  }
  return true;
}

}  // namespace jarproof::detail
