// A tiny edition and reports made by hand, for tests of the report formats. Its numbers are made
// up: no plan is judged by it outside the tests.
// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "jarproof/edition.hpp"
#include "jarproof/report.hpp"

namespace fixtures {

namespace small {

inline constexpr jarproof::citation cited[] = {{"made-up", "1", "1-1"}};

constexpr jarproof::source source() {
  jarproof::source s;
  s.id = "made-up";
  s.title = "A made-up table";
  return s;
}
inline constexpr jarproof::source sources[] = {source()};

inline constexpr std::string_view pint_names[] = {"pint", "pints"};

constexpr jarproof::jar_size jar() {
  jarproof::jar_size j;
  j.id = "pint";
  j.title = "pint";
  j.volume_floz = 16;
  j.names = pint_names;
  return j;
}
inline constexpr jarproof::jar_size jars[] = {jar()};

constexpr jarproof::process process() {
  jarproof::process p;
  p.id = "made-up-beans";
  p.title = "Made-up beans";
  return p;
}
inline constexpr jarproof::process processes[] = {process()};

constexpr jarproof::check_rule check(std::string_view id, std::string_view level,
                                     std::string_view outcome) {
  jarproof::check_rule c;
  c.id = id;
  c.title = "A check";
  c.level = level;
  c.outcome = outcome;
  c.says = "{reason}.";
  c.why = "It cannot be judged.";
  c.fix = "{instead}.";
  c.sources = cited;
  return c;
}
inline constexpr jarproof::check_rule checks[] = {check("plan-unreadable", "error", "rejects"),
                                                  check("step-reminder", "note", "none")};

constexpr jarproof::edition edition() {
  jarproof::edition e;
  e.name = "small \"tables\"";
  e.version = "2015.1.1";
  e.caution =
      "A check reads the plan, not the kitchen: it cannot see the food, the gauge or the seal.";
  e.highest_ft = 10'000;
  e.sources = sources;
  e.jars = jars;
  e.processes = processes;
  e.checks = checks;
  return e;
}

}  // namespace small

inline constexpr jarproof::edition small_edition = small::edition();

/// Every part of a report filled in.
inline jarproof::report full_report() {
  jarproof::report r;
  r.source = "plan.yaml";
  r.title = "First picking";
  r.verdict = jarproof::verdict::rejected;
  r.process = &small_edition.processes[0];
  r.altitude_ft = 4'600;
  jarproof::requirement needed;
  needed.method = "pressure";
  needed.gauge = "weighted";
  needed.pressure_psi = 15;
  needed.time_min = 75;
  needed.pack = "hot";
  needed.jar = "pint";
  needed.headspace_thousandths_in = 1'250;
  needed.vent_min = 10;
  needed.sources = {"A made-up table, page 1-1"};
  r.required = needed;
  needed.gauge = "dial";
  needed.pressure_psi = 13;
  r.options = {needed};
  jarproof::ingredient_line known;
  known.kind = "low-acid";
  known.line = 4;
  known.text = "2 cups chopped onion";
  known.ingredient = "onion";
  r.ingredients.push_back(known);
  jarproof::ingredient_line unknown;
  unknown.line = 5;
  unknown.text = "1 cup moon dust";
  r.ingredients.push_back(unknown);
  jarproof::finding f;
  f.check = "pressure-too-low";
  f.level = jarproof::level::error;
  f.outcome = jarproof::outcome::rejects;
  f.field = "pressure";
  f.line = 9;
  f.column = 11;
  f.found = "10 psi";
  f.required = "15 psi (103 kPa)";
  f.message = "The pressure is 10 psi, and the table asks for 15 psi at this altitude.";
  f.why = "The water boils at a lower temperature the higher the kitchen lies.";
  f.fix = "Put the 15 psi weight on.";
  f.sources = {"A made-up table, page 1-1"};
  r.findings.push_back(f);
  jarproof::finding note;
  note.check = "step-reminder";
  note.field = "prepared";
  note.message = "Boil the beans for 5 minutes before they are packed.";
  r.findings.push_back(note);
  return r;
}

/// Nothing but the verdict.
inline jarproof::report bare_report(jarproof::verdict verdict) {
  jarproof::report r;
  r.source = "plan.yaml";
  r.verdict = verdict;
  return r;
}

}  // namespace fixtures
