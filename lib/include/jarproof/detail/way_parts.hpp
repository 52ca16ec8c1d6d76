// The dish taken apart: its parts in jars of their own, or all of it in the freezer.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/way_frame.hpp"

namespace jarproof::detail {

/// The process by which a part is canned alone: a plain table before a recipe.
[[nodiscard]] inline const process* own_process(const edition& rules, const ingredient& i) {
  const std::vector<const process*> own = own_processes(rules, i);
  for (const process* p : own) {
    if (p->recipe == recipe_kind::plain) return p;
  }
  return own.empty() ? nullptr : own.front();
}

[[nodiscard]] inline way_part part_of(const dish& d, const process& p) {
  way_part out;
  out.title = std::string(p.title);
  out.process = &p;
  out.numbers = numbers_for(d, p, out.changes);
  add_acid(p, out.changes);
  if (p.recipe == recipe_kind::fixed)
    add_once(out.changes, "By the published recipe for " + std::string(p.title) + ".");
  cite(d, p, out.numbers, out.sources);
  return out;
}

/// Each part by its own table; what has none is left for the freezer or the day.
[[nodiscard]] inline std::optional<way> parts_way(const dish& d) {
  way out;
  out.kind = "parts";
  out.title = "Its parts in jars of their own, joined at serving";
  left_outs outs(d.rules);
  std::string fresh;
  const auto later = [&](const std::string& line) {
    if (fresh.find(line) == std::string::npos) fresh += (fresh.empty() ? "" : ", ") + line;
  };
  const auto has = trait_among(d.rules, d.lines);
  const bool meat = has("meat") || has("poultry") || has("seafood");
  for (const plan_line& l : d.lines) {
    if (l.reading.what == nullptr || !l.reading.strange.empty()) {
      outs.add(find(d.rules.left_outs, "not-read"), short_line(l));
      continue;
    }
    each_ingredient(l, [&](const ingredient& i) {
      const bool first = &i == l.reading.what;
      const std::string line =
          first ? short_line(l) : name_in(l, i) + " of \"" + short_line(l) + "\"";
      if (!ban_on(d.rules, i).empty()) {
        outs.add(outs.entry_of(i, says_for_jar), line);
        return;
      }
      // Meat is covered with its broth; water and seasonings are no part.
      if (is_a(d.rules, i, "water") || (is_a(d.rules, i, "broth") && meat)) return;
      if (is_seasoning(d.rules, i)) return;
      const left_out* own_word = outs.entry_of(i, says_for_jar);
      if (own_word != nullptr) {
        outs.add(own_word, line);
        return;
      }
      const left_out* can = is_canned(l) ? find(d.rules.left_outs, "store-can") : nullptr;
      if (can != nullptr) {
        outs.add(can, line);
        return;
      }
      const process* p = own_process(d.rules, i);
      if (p == nullptr) {
        later(line);
        return;
      }
      for (way_part& have : out.parts) {
        if (have.process == p) {
          add_once(have.lines, line);
          return;
        }
      }
      way_part part = part_of(d, *p);
      if (!open_to(d, part.numbers)) {
        later(line);
        return;
      }
      part.lines.push_back(line);
      out.parts.push_back(std::move(part));
    });
  }
  if (out.parts.empty()) return std::nullopt;
  // One side part without the main food is no dish.
  const plan_line* most = most_of(d.rules, d.lines);
  const bool main =
      most == nullptr || std::any_of(out.parts.begin(), out.parts.end(), [&](const way_part& p) {
        const auto& l = p.lines;
        return std::find(l.begin(), l.end(), short_line(*most)) != l.end();
      });
  if (!main && out.parts.size() == 1 && !is_canned(*most)) return std::nullopt;
  add_steps(d, "parts", nullptr, trait_among(d.rules, d.lines), out);
  outs.write(out);
  if (!fresh.empty()) add_once(out.changes, "Freeze, or cook fresh: " + fresh + ".");
  for (const way_part& p : out.parts) {
    for (const std::string& s : p.sources) add_once(out.sources, s);
  }
  return out;
}

/// Everything may be frozen.
[[nodiscard]] inline way freezer_way(const dish& d) {
  way out;
  out.kind = "freezer";
  out.title = "In the freezer";
  const edition& rules = d.rules;
  if (d.judged.altitude_ft > rules.highest_ft)
    out.notes.push_back("Above " + altitude_text(rules.highest_ft) +
                        " no published process is used for canning.");
  left_outs outs(rules, true);
  std::vector<plan_line> kept;
  for (const plan_line& l : d.lines) {
    if (l.reading.what == nullptr) {
      kept.push_back(l);
      continue;
    }
    const left_out* entry =
        outs.entry_of(*l.reading.what, [](const left_out& e) { return !e.freezer.empty(); });
    if (entry != nullptr) outs.add(entry, short_line(l));
    if (entry == nullptr || is_a(rules, *l.reading.what, "thickener")) kept.push_back(l);
  }
  add_steps(d, "freezer", nullptr, trait_among(rules, d.lines), out);
  outs.write(out);
  if (d.lines.empty()) return out;
  way_amounts a = amounts_of(rules, nullptr, kept);
  for (const plan_line& l : kept) {
    if (l.reading.what == nullptr) add_once(a.unknown, l.said->text);
  }
  cite_yields(rules, a, out.sources);
  const std::int64_t known = (a.solids ? a.solids->low : 0) + (a.liquid ? a.liquid->low : 0);
  // Where most of the food is not in the sum, a count would mislead.
  bool counted = known > 0;
  const plan_line* most = most_of(rules, d.lines);
  if (most != nullptr &&
      std::find(a.unknown.begin(), a.unknown.end(), most->said->text) != a.unknown.end()) {
    constexpr std::int64_t mg_in_cup = 142'000;  // 5 oz (common practice, no source)
    const std::optional<measured> mg =
        in_mg(rules, *most->reading.what, *most->amount, most->reading.words);
    counted = counted && mg && known / way_cup * mg_in_cup > 2 * mg->low;
  }
  if (counted) a.portions = known / (freezer_pint_room_floz * base_in_floz);
  out.amounts = std::move(a);
  return out;
}

}  // namespace jarproof::detail
