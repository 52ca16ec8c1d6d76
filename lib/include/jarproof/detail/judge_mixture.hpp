// A mixture of the cook's own against a published frame: what may not be in the jar, and what its
// parts alone would need. A frame, such as soup, takes only parts with a process of their own.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/dry_beans.hpp"
#include "jarproof/detail/food_cuts.hpp"
#include "jarproof/detail/judge_process.hpp"
#include "jarproof/detail/judge_seasonings.hpp"
#include "jarproof/detail/mixture_parts.hpp"
#include "jarproof/detail/plan_lines.hpp"

namespace jarproof::detail {

/// Says what keeps one ingredient of a line out of the frame; true where something does.
inline bool judge_part(judging& j, const process& frame, const plan_line& l, const ingredient& i) {
  const place at = place_of("ingredients", *l.said);
  const std::string name = name_in(l, i);
  sentence_facts facts;
  facts.found = l.said->text;
  const auto say = [&](std::string_view check) {
    finding& f = j.say(check, at, std::move(facts));
    cite_first(j.rules, frame.sources, f);
    return true;
  };
  switch (place_in_frame(j.rules, frame, i)) {
    case place_in::banned:
      facts.required = "none of it";
      facts.reason = "No published process for a mixture has " + name + ".";
      return say(ban_on(j.rules, i));
    case place_in::without_process:
      facts.required = "ingredients with a process of their own";
      facts.reason = name;
      return say("ingredient-without-process");
    case place_in::not_held:
      facts.reason = "The process for " + std::string(frame.title) + " does not hold " + name +
                     ", although a table for it alone is published.";
      facts.instead = "Leave it out, or can it by its own table and join them at serving.";
      return say("no-tested-process");
    case place_in::seasoning:
    case place_in::part:
      break;
  }
  return false;
}

/// Words that decide by themselves: `breaded`, `pureed`, `to thicken`.
inline void judge_telling(judging& j, const plan_line& l) {
  for (const telling_word* t : l.reading.telling) {
    const bool puree_of_acid =
        t->check == "low-acid-puree" && l.reading.what != nullptr &&
        (l.reading.what->kind != acidity::low_acid || is_seasoning(j.rules, *l.reading.what));
    if (puree_of_acid || (t->check == "standing-unsaid" && j.what.held)) continue;
    j.say(t->check, place_of("ingredients", *l.said),
          {l.said->text, "none of it", "The word is \"" + std::string(t->id) + "\".", {}, {}});
  }
}

/// The other published position on a mixture: one part alone would need longer, or has no process
/// in a jar of this size. It is a note and changes nothing.
inline void judge_longest_part(judging& j, const process& frame, const plan_line& l,
                               const ingredient& i) {
  const std::optional<std::int64_t> volume = jar_volume(j);
  if (!volume) return;
  const jar_minutes* mixed = listed_jar(j.rules, frame.tables[0], *volume);
  if (mixed == nullptr) return;
  const process* part = nullptr;
  const jar_minutes* alone = nullptr;
  for (const process* p : own_processes(j.rules, i)) {
    if (!frame.made_of.contains(p->id) || p->kind != food_class::low_acid) continue;
    for (const table& t : p->tables) {
      if (t.pack != "hot" || !t.use) continue;
      const jar_minutes* here = listed_jar(j.rules, t, *volume);
      // The kindest of several tables counts: which of them it would be is open.
      if (part != nullptr &&
          (here == nullptr || (alone != nullptr && alone->minutes[0] <= here->minutes[0])))
        continue;
      part = p;
      alone = here;
    }
  }
  if (part == nullptr || (alone != nullptr && alone->minutes[0] <= mixed->minutes[0])) return;
  const std::string name(part->title);
  j.say("other-position", place_of("ingredients", *l.said),
        {l.said->text,
         {},
         alone == nullptr
             ? "The table for " + name + " alone has no jar of this size."
             : "The table for " + name + " alone has " + time_text(alone->minutes[0]) + ".",
         {},
         {}});
}

/// The parts of a frame are prepared as for their own hot pack, so that their cubes are no larger.
inline void judge_cubes(judging& j, const process& frame, const plan_line& l, const ingredient& i) {
  std::vector<const process*> own = own_processes(j.rules, i);
  own.erase(std::remove_if(own.begin(), own.end(),
                           [&](const process* p) { return !frame.made_of.contains(p->id); }),
            own.end());
  const std::string_view printed = cubes_too_large_for(tokens_of(plain_line(l.said->text)), own);
  if (printed.empty()) return;
  sentence_facts facts;
  facts.found = l.said->text;
  facts.choices = std::string(printed) + " of " + name_in(l, i);
  finding& f = j.say("form-not-tested", place_of("ingredients", *l.said), std::move(facts));
  cite_first(j.rules, own.front()->sources, f);
}

/// What of a line may not be in any jar, also where some of its words are not understood.
inline void judge_half_read(judging& j, const process& frame, const plan_line& l) {
  each_ingredient(l, [&](const ingredient& i) {
    if (place_in_frame(j.rules, frame, i) == place_in::banned) (void)judge_part(j, frame, l, i);
  });
}

/// The cook's own lines in a frame.
inline void judge_own_lines(judging& j, const process& frame, const std::vector<plan_line>& lines) {
  j.shown.emplace();
  for (const plan_line& l : lines) {
    if (l.reading.at_serving) continue;
    judge_telling(j, l);
    judge_dry_beans(j, frame, l);
    if (l.reading.what == nullptr) continue;
    if (!l.reading.strange.empty()) {
      judge_half_read(j, frame, l);
      continue;
    }
    if (is_a(j.rules, *l.reading.what, "water") && says_discarded(l)) continue;
    each_ingredient(l, [&](const ingredient& i) {
      j.shown->push_back({&i, l.reading.words});
      if (judge_part(j, frame, l, i)) return;
      judge_cubes(j, frame, l, i);
      judge_longest_part(j, frame, l, i);
    });
  }
  judge_seasonings(j, frame, lines);
  judge_held_share(j, frame, lines);
}

/// The class of a mixture is that of its most demanding part; seasonings do not count, and what is
/// not understood counts as low-acid.
inline void classify(judging& j, const std::vector<plan_line>& lines) {
  const auto demand = [](acidity a) {
    return a == acidity::low_acid ? 3 : a == acidity::borderline ? 2 : a == acidity::acid ? 1 : 0;
  };
  acidity most = acidity::neutral;
  const auto take = [&](const plan_line& l, acidity a) {
    if (l.reading.at_serving || demand(a) <= demand(most)) return;
    most = a;
    j.out.mixture_by = l.said->text;
  };
  for (const plan_line& l : lines) {
    each_ingredient(l, [&](const ingredient& i) {
      if (!is_seasoning(j.rules, i)) take(l, i.kind);
    });
  }
  for (const plan_line& l : lines) {
    if (l.reading.what == nullptr || !l.reading.strange.empty()) take(l, acidity::low_acid);
  }
  if (most != acidity::neutral) j.out.mixture_class = std::string(name_of(most));
}

}  // namespace jarproof::detail
