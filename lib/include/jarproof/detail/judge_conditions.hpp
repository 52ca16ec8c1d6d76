// What belongs to a process beside its table: preparation, acid, heat-up, water, recipe.
// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "jarproof/detail/judge_acid.hpp"
#include "jarproof/detail/judge_food.hpp"
#include "jarproof/detail/judge_process.hpp"
#include "jarproof/detail/judge_recipe.hpp"

namespace jarproof::detail {

/// A step of the process that the plan need not state.
inline void remind(judging& j, const process& p, std::string_view field, std::string sentence) {
  finding& f =
      j.say("step-reminder", place_of(field, j.what), {{}, {}, std::move(sentence), {}, {}});
  cite_first(j.rules, p.sources, f);
}

/// The word of the plan that contradicts a condition, or null.
[[nodiscard]] inline const word* denial_of(const judging& j, const condition& c) {
  if (c.prepared.empty()) return nullptr;
  for (const word& w : j.what.prepared) {
    for (const prepared_word& known : j.rules.prepared) {
      if (known.denies == c.prepared && folds_to(known.id, folded(w.text))) return &w;
    }
  }
  return nullptr;
}

/// True where the condition is a step of every pack the food has.
[[nodiscard]] inline bool in_every_pack(const process& p, const condition& c) {
  for (const table& t : p.tables) {
    const bool here =
        std::any_of(p.conditions.begin(), p.conditions.end(), [&](const condition& other) {
          return other.prepared == c.prepared &&
                 (other.packs.empty() || other.packs.contains(t.pack));
        });
    if (!here) return false;
  }
  return true;
}

[[nodiscard]] inline bool is_meant(const judging& j, const condition& c, const own_part& part) {
  return std::any_of(c.if_any.begin(), c.if_any.end(),
                     [&](std::string_view trait) { return is_a(j.rules, *part.what, trait); });
}

/// True where the cook's own lines hold what the condition is about.
[[nodiscard]] inline bool shows_any(const judging& j, const condition& c) {
  return std::any_of(j.shown->begin(), j.shown->end(),
                     [&](const own_part& part) { return is_meant(j, c, part); });
}

/// True where each line that the condition is about states it: `beef, browned`.
[[nodiscard]] inline bool lines_say(const judging& j, const condition& c) {
  if (!j.shown || c.said_by.empty() || !shows_any(j, c)) return false;
  return std::all_of(j.shown->begin(), j.shown->end(), [&](const own_part& part) {
    return !is_meant(j, c, part) ||
           std::any_of(c.said_by.begin(), c.said_by.end(),
                       [&](std::string_view w) { return says(part.words, w); });
  });
}

inline void judge_conditions(judging& j, const process& p) {
  const plan& what = j.what;
  for (const condition& c : p.conditions) {
    if (!c.packs.empty() && what.pack && !c.packs.contains(what.pack->text)) continue;
    if (!c.if_any.empty() && j.shown && !shows_any(j, c)) continue;
    const std::string_view id = c.check.empty() ? std::string_view("step-left-out") : c.check;
    if (const word* denied_by = denial_of(j, c)) {
      if (!what.pack && !in_every_pack(p, c)) {
        missing(j, "pack");  // one pack has this step, the other has not
        continue;
      }
      finding& f = j.say(id, place_of("prepared", *denied_by),
                         {denied_by->text, std::string(c.prepared), std::string(c.says), {}, {}});
      cite_first(j.rules, p.sources, f);
      continue;
    }
    if (!c.prepared.empty() && has_prepared(what, c.prepared)) continue;
    if (lines_say(j, c)) continue;
    const bool needed = c.must_be_said || (c.own_recipe && j.shown);
    if (needed && !follows_publication(what)) {
      finding& f = j.unsaid(id, place_of("prepared", what),
                            {{}, std::string(c.prepared), std::string(c.says), {}, {}});
      cite_first(j.rules, p.sources, f);
      continue;
    }
    const std::string pack = !what.pack && !c.packs.empty() ? joined(c.packs) + " pack: " : "";
    remind(j, p, "prepared", pack + std::string(c.says));
  }
}

/// Words that have no place in this process: refused outright where the vocabulary says so, such
/// as `thickened`; otherwise these rules cannot tell what they do to it.
inline void judge_other_words(judging& j, const process& p) {
  for (const word& w : j.what.prepared) {
    for (const prepared_word& known : j.rules.prepared) {
      if (!folds_to(known.id, folded(w.text))) continue;
      const bool passes = j.what.pack
                              ? known.general.contains(j.what.pack->text)
                              : known.general.contains("raw") && known.general.contains("hot");
      if (passes) continue;
      const bool placed =
          std::any_of(p.conditions.begin(), p.conditions.end(), [&](const condition& c) {
            const bool other_pack =
                !c.packs.empty() && j.what.pack && !c.packs.contains(j.what.pack->text);
            return !other_pack && !c.prepared.empty() &&
                   (c.prepared == known.id || c.prepared == known.denies);
          });
      if (placed) continue;
      const std::string reason = "The process for " + std::string(p.title) + " has no such step.";
      j.say(known.refused_by.empty() ? "word-without-place" : known.refused_by,
            place_of("prepared", w), {w.text, {}, reason, {}, {}});
    }
  }
}

/// The same for a plan whose food is not clear: what is refused for all of its candidates.
inline void judge_refused_words(judging& j, const std::vector<const process*>& foods) {
  for (const word& w : j.what.prepared) {
    for (const prepared_word& known : j.rules.prepared) {
      if (known.refused_by.empty() || !folds_to(known.id, folded(w.text))) continue;
      const bool asked_for = std::any_of(foods.begin(), foods.end(), [&](const process* p) {
        return std::any_of(p->conditions.begin(), p->conditions.end(),
                           [&](const condition& c) { return c.prepared == known.id; });
      });
      if (asked_for) continue;
      j.say(known.refused_by, place_of("prepared", w),
            {w.text, {}, "No published process for low-acid food has it.", {}, {}});
    }
  }
  const form_word* form = form_of(j);
  if (form != nullptr && !form->refused_by.empty()) {
    j.say(form->refused_by, place_of("form", *j.what.form), {j.what.form->text, {}, {}, {}, {}});
  }
}

/// Compares a stated amount with one a process needs; unsaid, it is critical unless the plan
/// follows the publication.
inline void judge_least(judging& j, const process& p, std::string_view key, std::string_view id,
                        const std::optional<quantity>& given, std::int64_t needed,
                        std::string text) {
  if (given && given->value.value < needed) {
    finding& f = j.say(id, place_of(key, *given), {given->text, std::move(text), {}, {}, {}});
    cite_first(j.rules, p.sources, f);
  } else if (!given && follows_publication(j.what)) {
    remind(j, p, key, "This process needs: " + std::string(find_key(key)->name) + " " + text + ".");
  } else if (!given) {
    missing(j, key, std::string(key) + ": " + text);
  }
}

/// A process that was tested in canners of a certain size.
inline void judge_canner_of_process(judging& j, const process& p) {
  const process_needs& needs = p.needs;
  if (needs.canner_volume_qt == 0) return;
  const std::string range =
      std::to_string(needs.canner_volume_qt) +
      (needs.canner_volume_most_qt > 0 ? " to " + std::to_string(needs.canner_volume_most_qt)
                                       : "") +
      " qt";
  const auto object = [&](std::string_view check, const auto& given, std::string found) {
    finding& f = j.say(check, place_of("canner", given),
                       {std::move(found), "a canner of " + range, {}, {}, {}});
    cite_first(j.rules, p.sources, f);
  };
  const canner_size* size = j.what.canner ? &j.what.canner->value : nullptr;
  if (size != nullptr && size->volume) {
    const std::int64_t volume = size->volume->value.value;
    if (volume < needs.canner_volume_qt * 32 * micro_per_unit) {
      object("canner-too-small", *size->volume, size->volume->text);
    } else if (needs.canner_volume_most_qt > 0 &&
               volume > needs.canner_volume_most_qt * 32 * micro_per_unit) {
      object("canner-too-large", *size->volume, size->volume->text);
    }
  } else if (size != nullptr && size->quarts && size->quarts->value < needs.canner_quarts) {
    object("canner-too-small", *size->quarts, size->quarts->text + " quart jars");
  } else if (size != nullptr && size->pints && size->pints->value < needs.canner_pints) {
    object("canner-too-small", *size->pints, size->pints->text + " pint jars");
  } else if (size != nullptr && size->quarts && needs.canner_volume_most_qt > 0 &&
             size->quarts->value > needs.canner_quarts) {
    // Home canners of every size in this range take the same number of quarts; more is a larger
    // one.
    object("canner-too-large", *size->quarts, size->quarts->text + " quart jars");
  } else {
    remind(j, p, "canner", "Use a canner of " + range + ".");
  }
}

inline void judge_needs(judging& j, const process& p) {
  const plan& what = j.what;
  const process_needs& needs = p.needs;
  if (needs.heat_up_min > 0) {
    judge_least(j, p, "heat-up", "heat-up-too-short", what.heat_up, needs.heat_up_min * ms_per_min,
                std::to_string(needs.heat_up_min) + " min");
  }
  if (needs.water_qt > 0) {
    judge_least(j, p, "water", "water-too-little", what.water, needs.water_qt * 32 * micro_per_unit,
                std::to_string(needs.water_qt) + " qt");
  }
  judge_canner_of_process(j, p);
  if (needs.solids_percent > 0) {
    const std::string most = share_of_jar(needs.solids_percent);
    if (what.solids && what.solids->value.value > needs.solids_percent * micro_per_unit / 100) {
      finding& f = j.say("solids-over-half", place_of("solids", *what.solids),
                         {what.solids->text, "at most " + most + " of the jar", {}, {}, {}});
      cite_first(j.rules, p.sources, f);
    } else if (!what.solids && j.shown && !follows_publication(what)) {
      missing(j, "solids");
    } else if (!what.solids) {
      remind(j, p, "solids",
             "Fill the jar at most " + most + " with solids, the rest with liquid.");
    }
  }
}

/// True where a step of the process, such as following the directions of the pectin, stands for the
/// recipe and the plan states it; a note repeats it.
[[nodiscard]] inline bool stands_for_recipe(judging& j, const process& p) {
  for (const condition& c : p.conditions) {
    if (!c.instead_of_recipe || !has_prepared(j.what, c.prepared)) continue;
    remind(j, p, "prepared", std::string(c.says));
    return true;
  }
  return false;
}

inline void judge_recipe(judging& j, const process& p) {
  const plan& what = j.what;
  std::string_view reason;
  if (what.as_published && !what.as_published->value) {
    reason = "It says that the publication is not followed";
  } else if (p.recipe == recipe_kind::fixed && stands_for_recipe(j, p)) {
    return;
  } else if (p.recipe == recipe_kind::fixed && !what.ingredients.empty() && !p.recipes.empty()) {
    judge_tested_recipe(j, p);
    return;
  } else if (p.recipe == recipe_kind::fixed && !follows_publication(what)) {
    reason = "The process belongs to the published recipe with its tested proportions";
  } else if (p.recipe == recipe_kind::frame && !follows_publication(what) && !j.shown) {
    reason = "The cook may choose what goes in, but only inside the published rules";
  } else if (p.recipe == recipe_kind::fixed && !what.ingredients.empty()) {
    reason =
        "It lists ingredients, and the amounts of this recipe are not on file to compare them with";
  } else {
    return;
  }
  finding& f = j.unsaid("recipe-not-shown",
                        what.as_published ? place_of("as-published", *what.as_published)
                                          : place_of("as-published", what),
                        {{}, "the published recipe", std::string(reason), {}, {}});
  cite_first(j.rules, p.sources, f);
}

}  // namespace jarproof::detail
