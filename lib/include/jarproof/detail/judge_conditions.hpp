// What belongs to a process beside its table: preparation, acid, heat-up, water, recipe.
// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "jarproof/detail/judge_food.hpp"
#include "jarproof/detail/judge_process.hpp"

namespace jarproof::detail {

[[nodiscard]] inline bool follows_publication(const plan& p) noexcept {
  return p.as_published && p.as_published->value;
}

/// A step of the process that the plan need not state.
inline void remind(judging& j, const process& p, std::string_view field, std::string sentence) {
  finding& f =
      j.say("step-reminder", place_of(field, j.what), {{}, {}, std::move(sentence), {}, {}});
  cite_first(j.rules, p.sources, f);
}

inline void judge_conditions(judging& j, const process& p) {
  const plan& what = j.what;
  for (const condition& c : p.conditions) {
    if (!c.packs.empty() && what.pack && !c.packs.contains(what.pack->text)) continue;
    const word* denied_by = nullptr;
    for (const word& w : what.prepared) {
      for (const prepared_word& known : j.rules.prepared) {
        if (!c.prepared.empty() && known.denies == c.prepared &&
            folded(known.id) == folded(w.text)) {
          denied_by = &w;
        }
      }
    }
    // With the pack unsaid, a word against one pack's step leaves the pack to be said.
    if (!c.packs.empty() && !what.pack) {
      if (denied_by != nullptr) missing(j, "pack");
      continue;
    }
    if (denied_by != nullptr) {
      const std::string_view id = c.check.empty() ? std::string_view("step-left-out") : c.check;
      finding& f = j.say(id, place_of("prepared", *denied_by),
                         {denied_by->text, std::string(c.prepared), std::string(c.says), {}, {}});
      cite_first(j.rules, p.sources, f);
      continue;
    }
    if (!c.prepared.empty() && has_prepared(what, c.prepared)) continue;
    if (c.must_be_said && !follows_publication(what)) {
      const std::string_view id = c.check.empty() ? std::string_view("step-left-out") : c.check;
      finding& f = j.unsaid(id, place_of("prepared", what),
                            {{}, std::string(c.prepared), std::string(c.says), {}, {}});
      cite_first(j.rules, p.sources, f);
      continue;
    }
    remind(j, p, "prepared", std::string(c.says));
  }
}

/// Words that no table allows unless a condition of its own asks for them, such as `thickened`.
inline void judge_refused_words(judging& j, const process& p) {
  for (const word& w : j.what.prepared) {
    for (const prepared_word& known : j.rules.prepared) {
      if (known.refused_by.empty() || folded(known.id) != folded(w.text)) continue;
      bool settled = false;  // asked for, or found as a contradiction already
      for (const condition& c : p.conditions) {
        settled = settled || c.prepared == known.id ||
                  (!c.prepared.empty() && c.prepared == known.denies);
      }
      if (settled) continue;
      j.say(known.refused_by, place_of("prepared", w),
            {w.text, {}, "No published process for " + std::string(p.title) + " has it.", {}, {}});
    }
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
  if (needs.canner_volume_qt > 0) {
    const std::string least =
        "a canner of at least " + std::to_string(needs.canner_volume_qt) + " qt";
    const bool stated = what.canner && what.canner->value.volume;
    if (stated &&
        what.canner->value.volume->value.value < needs.canner_volume_qt * 32 * micro_per_unit) {
      finding& f = j.say("canner-too-small", place_of("canner", *what.canner->value.volume),
                         {what.canner->value.volume->text, least, {}, {}, {}});
      cite_first(j.rules, p.sources, f);
    } else if (!stated) {
      remind(j, p, "canner", "Use " + least + ".");
    }
  }
  if (needs.solids_percent > 0) {
    const std::string most =
        needs.solids_percent == 50 ? "half" : std::to_string(needs.solids_percent) + " %";
    if (what.solids && what.solids->value.value > needs.solids_percent * micro_per_unit / 100) {
      finding& f = j.say("solids-over-half", place_of("solids", *what.solids),
                         {what.solids->text, "at most " + most + " of the jar", {}, {}, {}});
      cite_first(j.rules, p.sources, f);
    } else if (!what.solids) {
      remind(j, p, "solids",
             "Fill the jar at most " + most + " with solids, the rest with liquid.");
    }
  }
}

/// The acid a plan adds to each jar: `2 tbsp bottled lemon juice per quart`.
struct acid_addition {
  std::int64_t micro_floz = 0;
  std::string name;
  std::int64_t jar_micro_floz = 0;
};

[[nodiscard]] inline std::optional<acid_addition> read_acid(const judging& j) {
  const std::string_view text = j.what.acid->text;
  const std::size_t per = text.rfind(" per ");
  if (per == std::string_view::npos) return std::nullopt;
  std::string_view rest = trim(text.substr(0, per));
  const std::string_view jar = trim(text.substr(per + 5));
  acid_addition out;
  number n;
  if (take_number(rest, n) != number_fault::none) return std::nullopt;
  rest = trim(rest);
  const unit* u = take_unit(rest, list<unit>(volume_units));
  if (u == nullptr) return std::nullopt;
  out.micro_floz = divide(n.over * u->factor, n.under * u->divisor, rounding::down);
  out.name = folded(rest);
  if (folded(jar) == "jar") {
    out.jar_micro_floz = jar_volume(j).value_or(0);
  } else if (const jar_size* size = jar_named(j.rules, jar)) {
    out.jar_micro_floz = size->volume_floz * micro_per_unit;
  } else {
    std::string_view number_of_jar = jar;
    if (starts_with(number_of_jar, "1 ")) number_of_jar.remove_prefix(2);
    const amount_reading r = read_amount(jar, dimension::volume, rounding::up);
    if (r.ok()) out.jar_micro_floz = r.value;
  }
  if (out.jar_micro_floz <= 0 || out.name.empty()) return std::nullopt;
  return out;
}

inline void judge_acid(judging& j, const process& p) {
  if (p.acids.empty()) return;
  const plan& what = j.what;
  std::string needed;
  for (const acid_choice& a : p.acids)
    needed += (needed.empty() ? "" : "; or ") + std::string(a.says);
  const std::string example =
      "acid: " + decimal_of_thousandths(p.acids[0].thousandths_tsp_per_pint) + " tsp " +
      std::string(p.acids[0].acid) + " per pint";
  if (!what.acid) {
    if (follows_publication(what)) {
      remind(j, p, "acid", "Add to each jar: " + needed + ".");
    } else {
      missing(j, "acid", example);
    }
    return;
  }
  const place at = place_of("acid", *what.acid);
  const std::optional<acid_addition> given = read_acid(j);
  if (!given) {
    j.say("amount-unknown", at,
          {what.acid->text, needed, {}, "Write it like `" + example + "`.", {}});
    return;
  }
  for (const acid_choice& a : p.acids) {
    // The whole name: fresh lemon juice is not the bottled juice that was tested.
    if (given->name != folded(a.acid)) continue;
    // Thousandths of a tsp per pint, for the jar the plan speaks of; a tsp is a sixth of a fl oz.
    const std::int64_t least =
        divide(a.thousandths_tsp_per_pint * (given->jar_micro_floz / 1000), 6 * 16, rounding::down);
    if (given->micro_floz < least) {
      finding& f = j.say("acid-too-little", at, {what.acid->text, needed, {}, {}, {}});
      cite_first(j.rules, p.sources, f);
    }
    return;
  }
  finding& f = j.say("acid-missing", at, {what.acid->text, needed, {}, {}, {}});
  cite_first(j.rules, p.sources, f);
}

/// Ingredients of a frame: each must be one of the foods that it may hold, whatever its name means.
inline void judge_frame(judging& j, const process& p) {
  for (const word& line : j.what.ingredients) {
    for (const process* food : foods_named(j.rules, plain_food(line.text))) {
      if (p.made_of.contains(food->id)) continue;
      finding& f = j.say("no-tested-process", place_of("ingredients", line),
                         {line.text,
                          {},
                          "\"" + line.text + "\" may be " + std::string(food->title) + ", which " +
                              std::string(p.title) + " does not hold.",
                          "Name the food more exactly, leave that line out, or use the published "
                          "process that holds it.",
                          {}});
      cite_first(j.rules, p.sources, f);
      break;
    }
  }
}

inline void judge_recipe(judging& j, const process& p) {
  if (p.recipe == recipe_kind::plain) return;
  if (p.recipe == recipe_kind::frame) judge_frame(j, p);
  std::string_view reason;
  if (!follows_publication(j.what)) {
    reason = p.recipe == recipe_kind::fixed
                 ? "The process belongs to the published recipe with its tested proportions"
                 : "The cook may choose what goes in, but only inside the published rules";
  } else if (p.recipe == recipe_kind::fixed && !j.what.ingredients.empty()) {
    reason =
        "It lists ingredients of its own, and these rules hold no proportions to compare them with";
  } else {
    return;
  }
  finding& f = j.unsaid("recipe-not-shown", place_of("as-published", j.what),
                        {{}, "the published recipe", std::string(reason), {}, {}});
  cite_first(j.rules, p.sources, f);
}

}  // namespace jarproof::detail
