// The dish inside a published frame, such as soup: what stays in the jar, what is left out.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/frame_choice.hpp"
#include "jarproof/detail/recipe_variant.hpp"
#include "jarproof/detail/way_numbers.hpp"
#include "jarproof/detail/way_volumes.hpp"

namespace jarproof::detail {

/// The lines of a dish as a frame takes them.
struct frame_lines {
  std::vector<word> said;  ///< owns what `kept` points at
  std::vector<plan_line> kept;
  left_outs out;
  int altered = 0;
  int solids = 0;         ///< parts with a table of their own that stay
  int lost = 0;           ///< parts that do not
  bool low_acid = false;  ///< one that stays is low-acid
  bool liquid = false;    ///< broth, or what else may cover the solids
};

[[nodiscard]] inline bool says_for_jar(const left_out& e) {
  return !e.leave_out.empty() || !e.at_serving.empty();
}

/// The sentence about an ingredient that a frame does not take, or null where it takes it.
[[nodiscard]] inline const left_out* kept_out(const edition& rules, const left_outs& outs,
                                              const process& frame, const ingredient& i) {
  const left_out* entry = nullptr;
  switch (place_in_frame(rules, frame, i)) {
    case place_in::seasoning:
    case place_in::part:
      return nullptr;
    case place_in::banned:
      entry = outs.entry_of(i, says_for_jar);
      break;
    case place_in::not_held:
      entry = find(rules.left_outs, "not-held");
      break;
    case place_in::without_process:
      entry = outs.entry_of(i, says_for_jar);
      break;
  }
  static constexpr left_out plain{"left-out", {}, {}, "Leave out: {found}.", {}, {}, {}, {}};
  if (entry == nullptr) entry = find(rules.left_outs, "without-process");
  return entry != nullptr ? entry : &plain;  // no sentence must not turn into a permission
}

/// Sorts the lines: what is not understood stays out too.
[[nodiscard]] inline frame_lines lines_in(const dish& d, const process& frame) {
  const edition& rules = d.rules;
  frame_lines out{{}, {}, left_outs(rules)};
  out.said.reserve(d.lines.size());
  for (const plan_line& l : d.lines) {
    const line_reading& r = l.reading;
    if (r.what != nullptr && is_a(rules, *r.what, "water") && says_discarded(l)) continue;
    const left_out* whole = r.what == nullptr ? nullptr : kept_out(rules, out.out, frame, *r.what);
    for (const other_ingredient& o : r.others) {
      // `milk or water`: nobody knows which of them it will be.
      if (whole == nullptr && o.instead) whole = kept_out(rules, out.out, frame, *o.what);
    }
    const bool read = r.what != nullptr && r.strange.empty();
    const bool banned = r.what != nullptr && !ban_on(rules, *r.what).empty();
    if (!read && !banned) whole = find(rules.left_outs, "not-read");
    if (whole != nullptr) {
      out.out.add(whole, short_line(l));
      ++out.altered;
      out.lost += read && !banned && whole->foods.empty() ? 1 : 0;
      continue;
    }
    if (!read) {  // without a sentence for it, it stays out all the same
      ++out.altered;
      continue;
    }
    bool changed = false;
    for (const other_ingredient& o : r.others) {
      const left_out* entry = o.instead ? nullptr : kept_out(rules, out.out, frame, *o.what);
      if (entry == nullptr) continue;
      out.out.add(entry, o.name + " with \"" + short_line(l) + "\"");
      changed = true;
    }
    for (const telling_word* t : r.telling) {
      if (t->check == "low-acid-puree" && r.what->kind != acidity::low_acid) continue;
      out.out.add(find(rules.left_outs, "word-of-a-line"),
                  "\"" + std::string(t->id) + "\" of " + short_line(l));
      changed = true;
    }
    word text = *l.said;
    if (changed) text.text = r.amount_text + " " + r.name;
    out.altered += changed ? 1 : 0;
    out.said.push_back(std::move(text));
    plan_line kept = l;
    kept.said = &out.said.back();
    const bool part = place_in_frame(rules, frame, *r.what) == place_in::part &&
                      !is_liquid_of(rules, &frame, *r.what);
    out.solids += part ? 1 : 0;
    out.liquid = out.liquid || frame.liquids.empty() || is_liquid_of(rules, &frame, *r.what) ||
                 is_tomato(rules, *r.what);
    out.low_acid = out.low_acid || (part && r.what->kind == acidity::low_acid);
    out.kept.push_back(std::move(kept));
  }
  return out;
}

/// Whether something that stays in the jar has a trait.
[[nodiscard]] inline auto trait_among(const edition& rules, const std::vector<plan_line>& lines) {
  return [&rules, &lines](std::string_view trait) {
    return std::any_of(lines.begin(), lines.end(), [&](const plan_line& l) {
      return l.reading.what != nullptr && is_a(rules, *l.reading.what, trait) &&
             !is_liquid(rules, *l.reading.what);
    });
  };
}

/// Solids, liquid and jars of lines that stay; nothing where the frame sets no share of solids.
[[nodiscard]] inline std::optional<way_amounts> fill_of(const dish& d, const process& frame,
                                                        const std::vector<plan_line>& lines,
                                                        const way_numbers& numbers) {
  if (frame.needs.solids_percent == 0) return std::nullopt;
  way_amounts out = amounts_of(d.rules, &frame, lines);
  const std::optional<std::int64_t> own = jar_volume(d.reading);
  std::vector<std::string_view> done;
  if (own && numbers.required) {
    const jar_size* listed = find(d.rules.jars, numbers.required->jar);
    const std::int64_t volume =
        std::min(*own, std::int64_t{listed == nullptr ? 0 : listed->volume_floz} * micro_per_unit);
    const bool same = listed != nullptr && volume == listed->volume_floz * micro_per_unit;
    const std::string name = same || !d.what.jar ? numbers.required->jar : d.what.jar->text;
    out.jars.push_back(jars_of(out, name, volume));
    if (same) done.push_back(numbers.required->jar);
  }
  for (const jar_size& jar : d.rules.jars) {
    const table& t = frame.tables[0];
    const bool listed = std::any_of(t.minutes.begin(), t.minutes.end(),
                                    [&](const jar_minutes& m) { return m.jar == jar.id; });
    if (!listed || std::find(done.begin(), done.end(), jar.id) != done.end()) continue;
    if (variant_lacks_jar(d.reading, lines, jar.volume_floz * micro_per_unit)) continue;
    out.jars.push_back(jars_of(out, jar.id, jar.volume_floz * micro_per_unit));
  }
  return out;
}

/// What `check` still finds in the rewritten recipe: seasonings above their limit, and the other
/// published position on a long part.
inline void judge_rewritten(const dish& d, const process& frame, const frame_lines& lines,
                            way& out) {
  plan q = plan_for(d.what, frame);
  if (q.jar && out.numbers.required) {  // it may be a smaller one than the plan has
    q.jar = word_of(out.numbers.required->jar);
    q.jar_volume.reset();
  }
  for (const plan_line& l : lines.kept) q.ingredients.push_back(*l.said);
  if (!q.batch && !q.jars && out.amounts && out.amounts->unknown.empty() &&
      !out.amounts->jars.empty() && out.amounts->jars.front().count > 0 && q.jar) {
    q.jars.emplace();
    q.jars->value = static_cast<int>(out.amounts->jars.front().count);
  }
  const report r = check(q, d.rules);
  add_other_position(r, out);
  for (const finding& f : r.findings) {
    if (f.field != "ingredients" || f.outcome == outcome::none) continue;
    const bool limit = f.check == "ingredient-without-process" && !f.required.empty();
    const bool told = !limit && f.message.find(f.found) != std::string::npos;
    add_once(out.changes, (told ? "" : f.found + ": ") + (limit ? f.required + "." : f.message));
    for (const std::string& s : f.sources) add_once(out.sources, s);
  }
}

/// What the directions do that no jar of the frame may have: mashing, thickening, standing warm.
inline void undo_directions(const dish& d, way& out) {
  for (const finding& f : d.judged.findings) {
    if (f.outcome != outcome::none && (f.field == "steps" || f.field == "title") &&
        f.check != "steps-against-plan" && f.check != "step-names-unlisted")
      add_once(out.changes, f.fix);
  }
}

[[nodiscard]] inline std::optional<way> frame_way(const dish& d, const process& frame) {
  const frame_lines lines = lines_in(d, frame);
  // What loses its main food, or most of its foods, would be another dish, and one food alone has
  // its own table; with broth it is a soup all the same.
  if (lines.solids == 0 || !lines.low_acid || !lines.liquid || lines.lost > lines.solids)
    return std::nullopt;
  const auto kept_line = [&](const word* said) {
    return std::any_of(lines.kept.begin(), lines.kept.end(), [&](const plan_line& l) {
      return l.said->line == said->line && l.said->column == said->column;
    });
  };
  const plan_line* main = most_of(d.rules, d.lines);
  if (main != nullptr && ban_on(d.rules, *main->reading.what).empty() && !kept_line(main->said))
    return std::nullopt;
  const bool covered = std::any_of(lines.kept.begin(), lines.kept.end(), [&](const plan_line& l) {
    return !is_a(d.rules, *l.reading.what, "water") &&
           is_liquid_of(d.rules, &frame, *l.reading.what);
  });
  if (lines.solids == 1 && !covered && !frame.liquids.empty()) return std::nullopt;
  way out;
  out.kind = "frame";
  out.title = "As " + std::string(frame.title);
  out.process = &frame;
  out.altered = lines.altered;
  add_sources(d.rules, frame.sources, out.sources);
  lines.out.write(out);
  undo_directions(d, out);
  add_steps(d, "frame", &frame, trait_among(d.rules, lines.kept), out);
  out.numbers = numbers_for(d, frame, out.changes, lines.kept);
  if (!open_to(d, out.numbers)) return std::nullopt;
  out.amounts = fill_of(d, frame, lines.kept, out.numbers);
  if (out.amounts) cite_yields(d.rules, *out.amounts, out.sources);
  judge_rewritten(d, frame, lines, out);
  cite(d, frame, out.numbers, out.sources);
  return out;
}

/// The frames that may hold the dish: the soup that holds most of it, and before it a mixture
/// without broth where nothing in the dish is foreign to it.
[[nodiscard]] inline std::vector<const process*> frames_for(const dish& d) {
  std::vector<const process*> out;
  const process* dry = frame_for(d.reading, d.lines);
  if (dry != nullptr && dry->liquids.empty() && usable(*dry)) out.push_back(dry);
  const process* best = nullptr;
  frame_fit best_fit;
  for (const process& p : d.rules.processes) {
    if (p.recipe != recipe_kind::frame || p.liquids.empty() || !usable(p)) continue;
    const frame_fit f = fit_of(d.rules, p, d.lines);
    if (f.parts == 0) continue;
    const bool better = best == nullptr || f.parts > best_fit.parts ||
                        (f.parts == best_fit.parts && f.others < best_fit.others) ||
                        (f.parts == best_fit.parts && f.others == best_fit.others &&
                         p.made_of.size() < best->made_of.size());
    if (!better) continue;
    best = &p;
    best_fit = f;
  }
  if (best != nullptr) out.push_back(best);
  return out;
}

}  // namespace jarproof::detail
