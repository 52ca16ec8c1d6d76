// A mixture of the cook's own: what each part is, what may not be in the jar, which published frame
// holds it. A frame, such as soup, takes only parts with a process of their own.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/judge_batch.hpp"
#include "jarproof/detail/judge_process.hpp"
#include "jarproof/detail/plan_lines.hpp"

namespace jarproof::detail {

/// True for what flavors or covers the food and is no part of it.
[[nodiscard]] inline bool is_seasoning(const edition& rules, const ingredient& i) {
  for (const std::string_view t :
       {"spice", "salt", "sugar", "sweetener", "fresh-herb", "acidifier"}) {
    if (is_a(rules, i, t)) return true;
  }
  return std::any_of(
      rules.seasonings.begin(), rules.seasonings.end(), [&](const seasoning_limit& s) {
        return std::any_of(s.foods.begin(), s.foods.end(),
                           [&](std::string_view food) { return is_kind_of(rules, i, food); });
      });
}

[[nodiscard]] inline bool is_liquid(const edition& rules, const ingredient& i) {
  return is_a(rules, i, "water") || is_a(rules, i, "broth");
}

/// The processes by which an ingredient is canned alone and whose numbers may be used.
[[nodiscard]] inline std::vector<const process*> own_processes(const edition& rules,
                                                               const ingredient& i) {
  std::vector<const process*> out;
  for (const std::string_view id : i.can_as) {
    const process* p = find(rules.processes, id);
    const bool usable = p != nullptr && std::any_of(p->tables.begin(), p->tables.end(),
                                                    [](const table& t) { return t.use; });
    if (usable) out.push_back(p);
  }
  return out;
}

/// What an ingredient is to a frame.
enum class place_in { seasoning, part, banned, without_process, not_held };

[[nodiscard]] inline place_in place_in_frame(const edition& rules, const process& frame,
                                             const ingredient& i) {
  if (frame.holds.contains(i.id)) return place_in::part;
  if (!ban_on(rules, i).empty()) return place_in::banned;
  // Seafood makes another soup, also as a broth.
  if (is_a(rules, i, "seafood") && i.can_as.empty() && !is_liquid(rules, i))
    return place_in::without_process;
  const std::vector<const process*> own = own_processes(rules, i);
  for (const process* p : own) {
    if (frame.made_of.contains(p->id)) return place_in::part;
  }
  if (is_a(rules, i, "seafood") && !frame.made_of.contains("clams")) return place_in::not_held;
  if (is_seasoning(rules, i) || is_liquid(rules, i)) return place_in::seasoning;
  if (frame.liquids.contains(i.id)) return place_in::part;
  return own.empty() ? place_in::without_process : place_in::not_held;
}

/// All ingredients of a line, whether together or in place of each other.
template <class Each>
void each_ingredient(const plan_line& l, Each each) {
  if (l.reading.what == nullptr) return;
  each(*l.reading.what);
  for (const other_ingredient& o : l.reading.others) each(*o.what);
}

/// An ingredient as its line names it.
[[nodiscard]] inline std::string name_in(const plan_line& l, const ingredient& i) {
  if (l.reading.what == &i) return l.reading.name;
  for (const other_ingredient& o : l.reading.others) {
    if (o.what == &i) return o.name;
  }
  return std::string(i.names[0]);
}

/// How much of an ingredient a line has: of one that stands beside the first, its own amount.
[[nodiscard]] inline std::optional<measured> amount_in(const plan_line& l, const ingredient& i) {
  for (const other_ingredient& o : l.reading.others) {
    if (o.what == &i && o.amount && l.reading.per_jar.empty()) return o.amount;
  }
  return l.amount;
}

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
      facts.reason = "No published process for " + std::string(frame.title) + " has " + name + ".";
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

/// Dried beans or peas that are said to go in as they are.
inline void judge_dry_beans(judging& j, const process& frame, const plan_line& l) {
  bool legume = false;
  each_ingredient(
      l, [&](const ingredient& i) { legume = legume || is_a(j.rules, i, "dried-legume"); });
  bool negated = says(l.reading, "unsoaked") || says(l.reading, "uncooked");
  for (const std::string_view w : {"soaked", "cooked", "boiled", "rehydrated"})
    negated = negated || denies(l.reading, w);
  // Said of the beans that were bought, or of what is to be done with them; a doubt is enough.
  for (const std::string_view w : {"raw", "later", "bag", "barely", "quite", "hardly", "straight"})
    negated = negated || says(l.reading, w);
  const std::vector<std::string>& words = l.reading.words;
  for (std::size_t i = 1; i < words.size(); ++i)
    negated = negated || ((words[i] == "soaking" || words[i] == "soak") &&
                          (words[i - 1] == "no" || words[i - 1] == "without"));
  if (!legume || !negated) return;
  finding& f = j.say("beans-not-rehydrated", place_of("ingredients", *l.said),
                     {l.said->text, "beans rehydrated", {}, {}, {}});
  cite_first(j.rules, frame.sources, f);
}

/// How much the batch makes, in thousandths of a teaspoon, at least: as stated, or the liquids and
/// four fifths of what the solids weigh, taken as water (common practice, no source).
[[nodiscard]] inline std::int64_t batch_at_least(const judging& j,
                                                 const std::vector<plan_line>& lines,
                                                 bool& stated) {
  stated = true;
  // 1 fl oz is 6 tsp.
  if (j.what.batch) return j.what.batch->value.value / 1'000 * 6;
  const std::int64_t jar = jar_volume(j).value_or(0);
  if (j.what.jars && jar > 0) return jar / 1'000 * 6 * j.what.jars->value;
  if (const std::optional<measured> made = yield_volume(j.what)) return made->low;
  stated = false;
  std::int64_t sum = 0;
  for (const plan_line& l : lines) {
    if (l.reading.what == nullptr || l.reading.at_serving || !l.amount || says_discarded(l))
      continue;
    const ingredient& i = *l.reading.what;
    const bool liquid = is_a(j.rules, i, "liquid") || is_a(j.rules, i, "water");
    if (liquid && l.amount->kind == measure_kind::volume) {
      sum += l.amount->low;
    } else if (!is_seasoning(j.rules, i)) {
      const std::optional<measured> mg = in_mg(j.rules, i, *l.amount, l.reading.words);
      // 1 mL of water weighs 1 g and is 0.2029 tsp.
      if (mg) sum += mg->low / 1'000 * 203 * 4 / 5;
    }
  }
  return sum;
}

[[nodiscard]] inline bool is_about(const edition& rules, const seasoning_limit& s,
                                   const ingredient& i) {
  if (!s.trait.empty()) return is_a(rules, i, s.trait);
  return std::any_of(s.foods.begin(), s.foods.end(),
                     [&](std::string_view food) { return is_kind_of(rules, i, food); });
}

/// Seasonings against the limits of the edition: above them a seasoning is a vegetable.
inline void judge_seasonings(judging& j, const process& frame,
                             const std::vector<plan_line>& lines) {
  bool stated = false;
  const std::int64_t batch = batch_at_least(j, lines, stated);
  for (const seasoning_limit& s : j.rules.seasonings) {
    // Fruit is canned in syrup; a soup is not.
    if (s.trait == "sugar" && frame.recipe != recipe_kind::frame) continue;
    const measure_unit& unit = *unit_named(s.unit);
    const base_amount each = base_of(s.per_quart, unit);
    // 192,000 thousandths of a tsp are a quart.
    const std::int64_t most = divide(each.over * (batch / 100), each.under * 1'920, rounding::down);
    std::int64_t sum = 0;
    const plan_line* last = nullptr;
    for (const plan_line& l : lines) {
      if (l.reading.at_serving || !l.amount) continue;
      bool about = false;
      const ingredient* what = nullptr;
      each_ingredient(l, [&](const ingredient& i) {
        if (!about && ban_on(j.rules, i).empty() && is_about(j.rules, s, i)) {
          about = true;
          what = &i;
        }
      });
      if (!about) continue;
      const std::optional<measured> amount = amount_in(l, *what);
      // A count belongs to the entry that counts, a measure to the one that measures.
      const auto same_kind = [&](const measure_unit& u) {
        return amount->kind == u.kind &&
               (u.kind != measure_kind::count || amount->counts == u.counts ||
                (u.counts == "piece" && amount->counts == "stick"));
      };
      const std::optional<measured> m =
          same_kind(unit) ? amount : converted(j.rules, *what, *amount, unit, l.reading.words);
      if (!m) {
        const bool elsewhere = std::any_of(
            j.rules.seasonings.begin(), j.rules.seasonings.end(), [&](const seasoning_limit& o) {
              if (&o == &s || !is_about(j.rules, o, *what)) return false;
              const measure_unit& u = *unit_named(o.unit);
              return same_kind(u) ||
                     converted(j.rules, *what, *amount, u, l.reading.words).has_value();
            });
        if (!elsewhere) {
          j.say("amount-unknown", place_of("ingredients", *l.said),
                {l.said->text,
                 std::string(s.unit),
                 "how much of a seasoning it is decides whether it counts as a vegetable",
                 "Write how much it is in `" + std::string(s.unit) + "`.",
                 {}});
        }
        continue;
      }
      sum += m->high;
      last = &l;
    }
    if (last == nullptr || sum <= most) continue;
    const std::string limit = measure_text(each.over / each.under, unit, rounding::down) + " of " +
                              std::string(s.says) + " in a quart";
    if (!stated) {
      j.say("amount-unknown", place_of("ingredients", *last->said),
            {last->said->text,
             "`batch`",
             "how much the batch makes is not said, and at most " + limit + " counts as seasoning",
             "Write how much is ready to fill, for example `batch: 9 qt`.",
             {}});
    } else {
      sentence_facts facts;
      facts.found = last->said->text;
      facts.required = "at most " + limit;
      facts.reason = std::string(s.says) + " above a seasoning's amount (" + limit + ")";
      finding& f = j.say("ingredient-without-process", place_of("ingredients", *last->said),
                         std::move(facts));
      cite_first(j.rules, frame.sources, f);
    }
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
      if (!judge_part(j, frame, l, i)) judge_longest_part(j, frame, l, i);
    });
  }
  judge_seasonings(j, frame, lines);
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
