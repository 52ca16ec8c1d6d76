// Which published frame a mixture without a named food belongs to.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/findings.hpp"
#include "jarproof/detail/mixture_parts.hpp"
#include "jarproof/detail/plan_lines.hpp"

namespace jarproof::detail {

/// How a mixture's parts stand to a frame.
struct frame_fit {
  int parts = 0;   ///< solids that it holds
  int others = 0;  ///< what it does not hold, bans and things without a process not counted
  bool liquid = false;
  bool broth = false;
};

[[nodiscard]] inline frame_fit fit_of(const edition& rules, const process& frame,
                                      const std::vector<plan_line>& lines) {
  frame_fit out;
  for (const plan_line& l : lines) {
    if (l.reading.at_serving) continue;
    each_ingredient(l, [&](const ingredient& i) {
      const bool liquid =
          std::any_of(frame.liquids.begin(), frame.liquids.end(),
                      [&](std::string_view id) { return is_kind_of(rules, i, id); });
      out.liquid = out.liquid || liquid;
      out.broth = out.broth || is_a(rules, i, "broth");
      const place_in p = place_in_frame(rules, frame, i);
      if (p == place_in::part && !is_liquid(rules, i) && !(liquid && i.id != "tomato")) ++out.parts;
      if (p == place_in::not_held) ++out.others;
    });
  }
  return out;
}

/// The frame that a mixture without a named food belongs to, or null. Where two would do, the one
/// with the longer time counts unless the plan speaks of soup.
[[nodiscard]] inline const process* frame_for(const judging& j,
                                              const std::vector<plan_line>& lines) {
  const process* best = nullptr;
  frame_fit best_fit;
  const std::string title = j.what.title ? folded(j.what.title->text) : std::string();
  const bool soup = j.what.solids || title.find("soup") != std::string::npos ||
                    title.find("sopa") != std::string::npos;
  for (const process& p : j.rules.processes) {
    if (p.recipe != recipe_kind::frame) continue;
    const frame_fit f = fit_of(j.rules, p, lines);
    const bool wants_liquid = !p.liquids.empty();
    if (f.parts == 0 || (wants_liquid && !f.liquid)) continue;
    // A mixture without liquid of its own: nothing in it may be foreign, and no broth or meat.
    if (!wants_liquid && (f.others > 0 || f.broth || f.parts < 2 || soup)) continue;
    if (!wants_liquid) {
      bool foreign = false;
      for (const plan_line& l : lines) {
        each_ingredient(l, [&](const ingredient& i) {
          const place_in at = place_in_frame(j.rules, p, i);
          foreign = foreign || at == place_in::banned || at == place_in::without_process;
        });
      }
      if (foreign) continue;
    }
    const auto minutes = [](const process& each) { return each.tables[0].minutes[0].minutes[0]; };
    const bool better =
        best == nullptr || f.others < best_fit.others ||
        (f.others == best_fit.others && f.parts > best_fit.parts) ||
        (f.others == best_fit.others && f.parts == best_fit.parts &&
         (wants_liquid == best->liquids.empty() ? minutes(p) > minutes(*best)
                                                : p.made_of.size() < best->made_of.size()));
    if (!better) continue;
    best = &p;
    best_fit = f;
  }
  return best;
}

}  // namespace jarproof::detail
