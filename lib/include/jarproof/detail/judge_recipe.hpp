// A plan's ingredients against the tested recipes of its food: which recipe it comes nearest to,
// and what has no place in it. A plan follows one recipe whole. SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/recipe_comparison.hpp"

namespace jarproof::detail {

/// An ingredient that has no place in the recipe.
inline void judge_stranger(judging& j, const process& p, const plan_line& l) {
  const place at = place_of("ingredients", *l.said);
  const ingredient& i = *l.reading.what;
  const auto is = [&](std::string_view trait) { return is_a(j.rules, i, trait); };
  const auto say = [&](std::string_view id) {
    sentence_facts facts;
    facts.found = l.said->text;
    facts.required = is("not-bottled") ? "bottled juice, in the amount that was tested"
                     : is("homemade")  ? "vinegar of 5 %"
                                       : "none of it";
    facts.reason = "The tested recipe has none.";
    finding& f = j.say(id, at, std::move(facts));
    cite_first(j.rules, p.sources, f);
  };
  if (is("thickener")) return say("thickener-in-jar");
  if (is("dairy")) return say("dairy-in-jar");
  if (is("grain-or-pasta")) return say("pasta-or-grain-in-jar");
  if (is("egg")) return say("egg-in-jar");
  if (is("fat")) return say("fat-in-jar");
  if (is("low-acid-puree")) return say("low-acid-puree");
  // Salt, sugar and dried spices change the taste, and more acid than tested is the strict side.
  // Half a cup of one spice is no seasoning.
  const bool much = is("spice") && l.reading.amount &&
                    l.reading.amount->kind == measure_kind::volume &&
                    l.reading.amount->high >= 24'000;
  if (is("not-bottled")) return say("acid-not-bottled");
  if (is("homemade")) return say("vinegar-homemade");
  if (is("salt") || is("sugar") || (is("spice") && !much)) return;
  if (is("acidifier") && l.reading.vinegar_percent.value_or(5) >= 5) return;
  if (is("water") && says_discarded(l)) return;
  if (is("water") || (is("liquid") && i.kind == acidity::neutral)) return say("water-too-much");
  if (i.kind == acidity::low_acid || i.kind == acidity::borderline || is("fresh-herb"))
    return say("low-acid-share-too-high");
  say("not-in-recipe");
}

/// Lines that cannot be read, one finding each.
inline void judge_unread_lines(judging& j, const std::vector<plan_line>& lines) {
  int unknown = 0;
  for (const plan_line& l : lines) {
    if (l.reading.what != nullptr && l.reading.strange.empty()) continue;
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

/// Compares the plan's ingredients with every recipe of the food and reports against the one that
/// they come nearest to.
inline void judge_tested_recipe(judging& j, const process& p) {
  const std::vector<plan_line> lines = read_lines(j);
  report_lines(j, lines);
  judge_unread_lines(j, lines);
  judge_vinegar_lines(j, p, lines);
  std::vector<std::string_view> sets;
  for (const tested_recipe& r : p.recipes) {
    if (std::find(sets.begin(), sets.end(), r.set) == sets.end()) sets.push_back(r.set);
  }
  std::vector<bool> placed(lines.size(), false);
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
    for (std::size_t i = 0; i < lines.size(); ++i) placed[i] = placed[i] || best->has_place(i);
    for (const held_finding& f : best->findings()) {
      finding& said = f.left_unsaid ? j.unsaid(f.id, f.at, f.facts) : j.say(f.id, f.at, f.facts);
      cite_first(j.rules, p.sources, said);
    }
  }
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const bool read = lines[i].reading.what != nullptr && lines[i].reading.strange.empty();
    if (read && !placed[i] && !answers_acid(j, p, lines[i].reading)) judge_stranger(j, p, lines[i]);
  }
}

}  // namespace jarproof::detail
