// From plans to the plan of a day.
//
//   const jarproof::day_plan d = jarproof::day_of(plan, jarproof::builtin_edition());
//   d.batches[0].steps, d.loads, d.total_min
//
// A plan is judged first. One that is not accepted gets no jars, no loads and no card; the others
// of the same day keep theirs.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "jarproof/check.hpp"
#include "jarproof/day.hpp"
#include "jarproof/detail/day_card.hpp"
#include "jarproof/detail/day_clock.hpp"
#include "jarproof/detail/day_jars.hpp"
#include "jarproof/detail/day_loads.hpp"

namespace jarproof {

namespace detail {

/// Says that there is not enough for the jars of the plan, or for a single one.
inline void judge_filling(const plan& what, const edition& rules, day_batch& out) {
  const day_jars& jars = *out.jars;
  const bool by_count = jars.by == "jars";
  const bool short_of = by_count
                            ? jars.available > 0 && jars.count * jars.fill_least > jars.available
                            : jars.count == 0;
  if (!short_of) return;
  report scratch;
  judging j{what, rules, scratch, {}};
  const int filled_jars =
      by_count ? static_cast<int>(jars.available / jars.fill_least) : jars.count;
  const place at = what.jars    ? place_of("jars", *what.jars)
                   : what.batch ? place_of("batch", *what.batch)
                   : what.from  ? place_of("from", *what.from)
                                : place_of("yield", *what.yield);
  j.say("jars-not-filled", at,
        {std::to_string(filled_jars), std::to_string(std::max(jars.count, 1)), jars.jar, {}, {}});
  out.findings.push_back(std::move(scratch.findings.front()));
}

inline void judge_small_loads(const std::vector<const plan*>& plans, const edition& rules,
                              day_plan& out) {
  for (const day_load& load : out.loads) {
    if (!is_small(rules, load, out.batches)) continue;
    const plan& what = *plans[load.parts.front().batch];
    report scratch;
    judging j{what, rules, scratch, {}};
    j.say("load-small", place_of("canner", *what.canner),
          {std::to_string(load.jars),
           number_text(rules, "smallest-load-quarts") + " quarts or " +
               number_text(rules, "smallest-load-pints") + " pints",
           std::to_string(load.number),
           {},
           {}});
    out.batches[load.parts.front().batch].findings.push_back(std::move(scratch.findings.front()));
  }
}

/// The capacity of the canner for this jar, or why it is not known.
[[nodiscard]] inline std::optional<int> capacity(const plan& what, const day_jars& jars,
                                                 std::vector<std::string>& unsaid) {
  if (!what.canner) {
    unsaid.emplace_back("Loads and clock: the plan does not say `canner`.");
    return std::nullopt;
  }
  const std::optional<int> out = holds(what.canner->value, jars.volume);
  if (!out)
    unsaid.push_back("Loads and clock: `canner` does not say how many " + jars.jar +
                     " jars it holds" +
                     (jars.volume <= quart_volume ? "; write `quarts` or `pints`." : "."));
  return out;
}

}  // namespace detail

/// The day on which all these plans are canned, one load after another, in their order.
[[nodiscard]] inline day_plan day_of(const std::vector<plan>& plans, const edition& rules) {
  using namespace detail;
  day_plan out;
  std::vector<const plan*> all;
  std::vector<day_work> works;
  out.batches.reserve(plans.size());  // the works point into it
  for (const plan& p : plans) {
    all.push_back(&p);
    day_batch b;
    b.judged = check(p, rules);
    out.verdict = out.batches.empty() ? b.judged.verdict : std::max(out.verdict, b.judged.verdict);
    b.name = !b.judged.title.empty()       ? b.judged.title
             : b.judged.process != nullptr ? std::string(b.judged.process->title)
                                           : b.judged.source;
    if (p.lot) b.lot = p.lot->text;
    out.batches.push_back(std::move(b));
  }
  for (std::size_t i = 0; i < plans.size(); ++i) {
    const plan& p = plans[i];
    day_batch& b = out.batches[i];
    if (b.judged.verdict != verdict::accepted || !b.judged.required) continue;
    b.jars = jars_of(p, rules, b.judged, b.unsaid);
    if (!b.jars) continue;
    judge_filling(p, rules, b);
    b.produce = food_for(rules, *b.judged.process, *b.jars);
    if (!b.produce && !fills_no_jar(b))
      b.unsaid.push_back("Fresh food: the rules have no pounds per jar for " +
                         std::string(b.judged.process->title) + ".");
    const std::optional<int> most = capacity(p, *b.jars, b.unsaid);
    if (!most || b.jars->count == 0) continue;
    const int planned = planned_jars(*b.jars);
    if (b.jars->most > b.jars->count && planned == b.jars->most)
      b.unsaid.push_back("Loads and clock: planned for " + std::to_string(planned) +
                         " jars, the most that `" + p.from->text + "` may fill; it may be fewer.");
    if (balanced(b.jars->most, *most).size() > balanced(planned, *most).size())
      b.unsaid.push_back("Loads: if it fills more jars than planned, it needs another load.");
    works.push_back({i, &p, &b.judged, b.jars->volume, planned, *most});
  }
  if (const word* date = first_said(all, &plan::date)) out.date = date->text;
  load_planner(rules, works, out).plan_loads();
  judge_small_loads(all, rules, out);
  day_clock(rules, all, out).run();
  if (!out.loads.empty()) set_start(rules, all, out);
  for (std::size_t i = 0; i < plans.size(); ++i) {
    day_batch& b = out.batches[i];
    if (b.judged.verdict == verdict::accepted && b.judged.required)
      card_writer(rules, plans[i], out, b).write();
  }
  return out;
}

/// The day of one plan.
[[nodiscard]] inline day_plan day_of(const plan& what, const edition& rules) {
  return day_of(std::vector<plan>{what}, rules);
}

}  // namespace jarproof
