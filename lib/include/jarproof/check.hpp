// The main job: a plan goes in, a report comes out.
//
//   const jarproof::report r = jarproof::check(plan, jarproof::builtin_edition());
//   r.verdict                    accepted only where a published process covers the whole plan
//   r.required, r.options        the process in numbers for this jar and altitude
//   r.findings                   what was found, in the order of the plan
//
// The tables decide. What they do not cover is never accepted.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <tuple>
#include <vector>

#include "jarproof/detail/judge_batch.hpp"
#include "jarproof/detail/judge_conditions.hpp"
#include "jarproof/detail/judge_directions.hpp"
#include "jarproof/detail/judge_food.hpp"
#include "jarproof/detail/judge_process.hpp"
#include "jarproof/detail/judge_steps.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/plan.hpp"
#include "jarproof/report.hpp"

namespace jarproof {

namespace detail {

/// Says that a low-acid food is not to be canned by `m`; true where it said so.
inline bool judge_low_acid(judging& j, const method& m, const std::vector<const process*>& foods) {
  if (m.id == "pressure" || (foods.empty() && !j.low_acid_mixture)) return false;
  for (const process* p : foods) {
    if (p->kind != food_class::low_acid) return false;
  }
  j.words.food = foods.size() == 1 ? std::string(foods.front()->title)
                 : j.what.food     ? j.what.food->text
                 : foods.empty()   ? std::string("a mixture with low-acid food in it")
                                   : std::string("this food");
  sentence_facts facts;
  facts.found = j.what.method->text;
  facts.required = "pressure";
  for (const ph_entry& e : j.rules.ph) {
    if (facts.reason.empty() && foods.size() == 1 && e.explains.contains(foods.front()->id))
      facts.reason = "On the list: " + ph_text(e);
  }
  if (foods.empty())
    facts.instead = "Pickles, relishes and salsas follow a published recipe to the letter.";
  finding& f =
      j.say("low-acid-needs-pressure", place_of("method", *j.what.method), std::move(facts));
  if (!foods.empty()) cite_first(j.rules, foods.front()->sources, f);
  return true;
}

/// Rows whose numbers were read again by somebody; where there are none, says so.
[[nodiscard]] inline std::vector<fitting_row> verified_rows(judging& j,
                                                            std::vector<fitting_row> rows) {
  std::vector<fitting_row> kept;
  for (const fitting_row& r : rows) {
    if (r.row->use) kept.push_back(r);
  }
  if (!kept.empty() || rows.empty()) return kept;
  const plan& what = j.what;
  j.say("table-not-verified", what.food ? place_of("food", *what.food) : place_of("food", what),
        {{}, {}, std::string(rows.front().row->note), {}, {}});
  return rows;
}

/// Facts that a table is looked up and compared with.
inline void missing_for_table(judging& j, bool by_pressure) {
  if (!j.what.time) missing(j, "time");
  if (!j.what.pack) missing(j, "pack");
  if (by_pressure && !j.what.pressure) missing(j, "pressure");
  if (by_pressure && !j.what.gauge) missing(j, "gauge");
}

/// Says that `m` has no table for this food, and which methods have.
inline void no_table_by(judging& j, const process& p, const method& m) {
  const plan& what = j.what;
  const place at = place_of("method", *what.method);
  std::string others;
  for (const requirement& way : all_ways(j, p, std::max(j.out.altitude_ft, 0))) {
    if (others.find("`" + way.method + "`") != std::string::npos) continue;
    others += (others.empty() ? "" : ", ") + ("`" + way.method + "`");
  }
  const std::string instead =
      others.empty() ? "" : "Published for " + std::string(p.title) + ": " + others + ".";
  if (m.id == "low-temperature") {
    finding& f = j.say("method-not-for-food", at, {what.method->text, others, {}, instead, {}});
    cite_first(j.rules, p.sources, f);
    return;
  }
  finding& f = j.say("no-tested-process", at,
                     {what.method->text,
                      {},
                      "No table for " + std::string(p.title) + " by this method is published.",
                      instead,
                      {}});
  cite_first(j.rules, p.sources, f);
}

inline void judge_process(judging& j, const process& p, const method* m, bool comparable) {
  const plan& what = j.what;
  j.out.process = &p;
  j.words.food = std::string(p.title);
  const bool by_pressure = m != nullptr && m->id == "pressure";
  std::vector<const table*> published = rows_by(p, heat_of(p, m));
  const bool wrong_for_class = m != nullptr && !by_pressure && p.kind == food_class::low_acid;
  const bool low_temperature_unnamed =
      m != nullptr && m->id == "low-temperature" && p.low_temperature.minutes == 0;
  const bool no_table = published.empty() || low_temperature_unnamed;
  if (no_table && m != nullptr && !wrong_for_class) no_table_by(j, p, *m);
  // The numbers by another method are shown all the same.
  if (published.empty()) {
    published = rows_by(p, p.kind == food_class::acid ? heat::boiling_water : heat::pressure);
  }
  const method* shown = no_table || wrong_for_class ? nullptr : m;
  const std::vector<const table*> rows = rows_for_pack_and_form(j, published);
  const std::vector<fitting_row> fitting = verified_rows(j, rows_for_jar(j, p, rows));
  find_required(j, p, shown, fitting);
  if (j.untested_variant) {  // no number of the frame stands for it
    j.out.required.reset();
    j.out.options.clear();
  }
  if (j.out.required) j.out.required->time_min = std::max(j.out.required->time_min, j.least_min);
  for (requirement& o : j.out.options) o.time_min = std::max(o.time_min, j.least_min);
  // Numbers that nobody could read again are shown, and nothing is compared with them.
  const bool numbers_hold = !fitting.empty() && fitting.front().row->use;
  if (m == nullptr || no_table || wrong_for_class || !numbers_hold) {
    missing_for_table(j, by_pressure);
  } else if (by_pressure) {
    if (what.gauge) {
      judge_gauge(j, p, fitting, column_of(what.gauge->text), published, comparable);
    } else {
      judge_either_gauge(j, p, fitting, published, comparable);
    }
    judge_headspace(j, fitting);
  } else {
    if (m->id == "low-temperature") {
      judge_low_temperature(j, p, fitting, published);
    } else {
      judge_boiling_water(j, p, *m, fitting, published);
    }
    judge_headspace(j, fitting);
  }
  judge_conditions(j, p);
  judge_other_words(j, p);
  judge_needs(j, p);
  judge_acid(j, p);
  judge_vinegar(j, p);
  judge_recipe(j, p);
  if (!p.source_note.empty()) {
    const bool added = !p.added_by.empty();
    const std::string whose = added ? "This process was added by " + std::string(p.added_by) +
                                          " and is not one of the built-in publications. "
                                    : std::string();
    finding& f = j.say("numbers-by-extension",
                       what.food ? place_of("food", *what.food) : place_of("food", what),
                       {{}, {}, whose + std::string(p.source_note), {}, {}});
    if (added) f.level = level::warning;
    cite_first(j.rules, p.sources, f);
  }
}

/// Order, verdict, and what the verdict makes pointless.
inline void settle(report& out) {
  std::stable_sort(out.findings.begin(), out.findings.end(),
                   [](const finding& a, const finding& b) {
                     return std::tie(a.file, a.line, a.column, a.check) <
                            std::tie(b.file, b.line, b.column, b.check);
                   });
  out.findings.erase(std::unique(out.findings.begin(), out.findings.end(),
                                 [](const finding& a, const finding& b) {
                                   return a.check == b.check && a.file == b.file &&
                                          a.line == b.line && a.column == b.column &&
                                          a.field == b.field && a.message == b.message;
                                 }),
                     out.findings.end());
  out.verdict = verdict_of(out.findings);
  if (out.verdict != verdict::rejected && out.verdict != verdict::untested) return;
  // "More than that is accepted" beside a rejection reads as if it made up for something.
  out.findings.erase(std::remove_if(out.findings.begin(), out.findings.end(),
                                    [](const finding& f) { return f.check == "over-required"; }),
                     out.findings.end());
}

}  // namespace detail

/// Judges one plan against one edition. The report refers to both; the edition must outlive it.
[[nodiscard]] inline report check(const plan& what, const edition& rules) {
  using namespace detail;
  report out;
  out.source = what.source;
  if (what.recipe_source != what.source) out.recipe_source = what.recipe_source;
  if (what.title) out.title = what.title->text;
  judging j{what, rules, out, {}};
  if (what.altitude) {
    out.altitude_ft = whole_feet(what.altitude->value.value);
    j.words.altitude = altitude_text(out.altitude_ft);
  }
  if (what.gauge_error && what.gauge_error->value.value > 0)
    out.dial_high = what.gauge_error->value.value;
  if (what.gauge) j.words.gauge = what.gauge->text;
  if (what.pack) j.words.pack = what.pack->text;
  if (what.jar) j.words.jar = what.jar->text;

  const method* m = judge_method(j);
  judge_words(j);
  const std::vector<const process*> foods = judge_food(j);
  if (what.as_published && what.as_published->value && !what.food) {
    j.say("as-published-without-food", place_of("as-published", *what.as_published));
  }
  judge_steps(j, foods.size() == 1 ? foods.front() : nullptr);
  judge_held(j, foods.size() == 1 ? foods.front()->needs : process_needs{});
  if (m != nullptr) judge_low_acid(j, *m, foods);
  const method* canner = find(rules.methods, "pressure");
  const bool by_pressure = m != nullptr && m == canner;
  // A pressure or a canner is judged even where the method is missing: it can only do harm.
  const bool comparable =
      canner != nullptr && (m == nullptr || by_pressure) && judge_pressure_canner(j, *canner);
  if (!what.jar) missing(j, "jar");
  if (!what.altitude) missing(j, "altitude");
  if (foods.size() == 1) {
    judge_process(j, *foods.front(), m, comparable);
  } else {
    missing_for_table(j, by_pressure);
    judge_refused_words(j, foods);
    if (what.altitude && out.altitude_ft > rules.highest_ft) {
      j.say("altitude-outside-table", place_of("altitude", *what.altitude),
            {what.altitude->text, "at most " + altitude_text(rules.highest_ft), {}, {}, {}});
    }
  }
  judge_jars(j);
  judge_directions(j, foods.size() == 1 ? foods.front() : nullptr, m);
  if (by_pressure && !what.vent) {
    j.say("step-reminder", place_of("vent", what),
          {{},
           {},
           "Vent steadily flowing steam for " + std::to_string(canner->vent_min) +
               " min before closing the vent; the time counts from when the pressure is reached.",
           {},
           {}});
  }
  settle(out);
  return out;
}

}  // namespace jarproof
