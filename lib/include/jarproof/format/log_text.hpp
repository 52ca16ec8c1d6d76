// What a run log gives, for a person: the verdict first, then what to do now, then why.
//
//   std::string text = jarproof::log_text(report, edition, jarproof::text_style{});
//
// Of a run that is going on only what matters at the stove is shown, on one screen.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/log_words.hpp"
#include "jarproof/format/text.hpp"
#include "jarproof/log_report.hpp"

namespace jarproof {

namespace detail {

inline void write_now(text_writer& w, const log_report& r) {
  int number = 0;
  for (const to_do& t : r.now) {
    // What may be done in place of the one before stands under its number.
    const std::string first = t.or_else && number > 0 ? "   " : std::to_string(++number) + ". ";
    w.paragraph(t.what, first, first.size());
    if (!t.until.empty()) w.paragraph("until " + t.until, "   ", 3);
  }
}

inline void write_running(text_writer& w, const log_report& r) {
  w.heading(meaning_of_running(r), must_stop(r) ? "1;31" : "1;32");
  w.paragraph(so_far_text(r), "  ", 2);
  w.blank();
  write_now(w, r);
  const log_finding* why = reason_of_running(r);
  if (why == nullptr) return;
  w.blank();
  w.paragraph(why->message, "Why: ", 5);
}

inline void write_run_numbers(text_writer& w, const log_report& r, const edition& rules) {
  const std::vector<named_value> rows = rows_of_run(r, rules);
  if (rows.empty()) return;
  w.blank();
  w.heading(heading_of_run(r), "1");
  for (const named_value& row : rows) w.row(row.name, row.value);
  w.paragraph(sources_text(r.plan.required->sources), "  Source: ", 10);
}

}  // namespace detail

/// One run. Ends with a line end.
[[nodiscard]] inline std::string log_text(const log_report& r, const edition& rules,
                                          text_style style = {}) {
  using namespace detail;
  text_writer w(style);
  if (r.running) {
    write_running(w, r);
    return w.take();
  }
  w.heading(meaning_of_run(r), colour_of(r.verdict));
  w.paragraph(names_of_run(r), "  ", 2);
  if (!r.now.empty()) {
    w.blank();
    w.heading("Do now", "1");
    write_now(w, r);
  }
  report named;
  named.source = r.source;
  std::vector<finding> shown;
  for (const log_finding* f : shown_findings(r)) shown.push_back(placed(r, *f));
  finding_writer findings(w, named, false);
  for (const finding& f : shown) findings.write(f);
  findings.end();
  write_run_numbers(w, r, rules);
  if (!r.explains.empty()) {
    w.blank();
    w.heading(heading_of_physics, "1");
    for (const std::string& e : r.explains) w.paragraph(e, "  - ", 4);
  }
  return w.take();
}

}  // namespace jarproof
