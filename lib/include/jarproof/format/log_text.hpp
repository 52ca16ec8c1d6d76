// What a run log gives, for a person: the verdict first, then what to do now, then why.
//
//   std::string text = jarproof::log_text(report, edition, jarproof::text_style{});
//
// Of a run that is going on only what matters at the stove is shown, on one screen.
// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/log_times.hpp"
#include "jarproof/format/text.hpp"
#include "jarproof/log_report.hpp"

namespace jarproof {

namespace detail {

[[nodiscard]] inline std::string_view meaning_of_run(const log_report& r) noexcept {
  switch (r.verdict) {
    case verdict::accepted:
      return "ACCEPTED: the run delivered the published process.";
    case verdict::rejected:
      return "REJECTED: the run did not deliver the published process.";
    case verdict::untested:
      return "UNTESTED: no published process in these rules covers this plan.";
    case verdict::incomplete:
      return "INCOMPLETE: the log cannot vouch for the published process.";
    case verdict::unreadable:
      break;
  }
  return "UNREADABLE: this is no run log that can be judged.";
}

/// True where a run that is going on has to be mended.
[[nodiscard]] inline bool must_stop(const log_report& r) noexcept {
  for (const log_finding& f : r.findings) {
    if (f.outcome != outcome::none && f.check != "run-unfinished") {
      const bool counts_again = r.state == run_state::counting && f.check != "vent-too-short" &&
                                f.check != "plan-not-accepted";
      if (!counts_again) return true;
    }
  }
  return false;
}

inline void write_now(text_writer& w, const log_report& r) {
  int number = 0;
  for (const to_do& t : r.now) {
    const std::string first = std::to_string(++number) + ". ";
    w.paragraph(t.what, first, first.size());
    if (!t.until.empty()) w.paragraph("until " + t.until, "   ", 3);
  }
}

/// `13:42`: how far the log goes, and how long it is to the end of the time.
inline void write_so_far(text_writer& w, const log_report& r) {
  std::string line = "so far, to " + when_text(r.clock, r.last_us);
  if (r.state == run_state::counting && r.ends_us)
    line += ": " + duration_text(*r.ends_us - r.last_us) + " to go, to " +
            when_text(r.clock, *r.ends_us);
  w.paragraph(line, "  ", 2);
}

inline void write_running(text_writer& w, const log_report& r) {
  const bool stop = must_stop(r);
  const log_finding* why = nullptr;
  for (const log_finding& f : r.findings) {
    const bool counts = f.outcome != outcome::none && f.check != "run-unfinished";
    if (counts && (why == nullptr || stop)) why = &f;
  }
  w.heading(stop ? "STOP: do this now." : "RUNNING: go on like this.", stop ? "1;31" : "1;32");
  write_so_far(w, r);
  w.blank();
  write_now(w, r);
  if (why == nullptr) return;
  w.blank();
  w.paragraph(why->message, "Why: ", 5);
}

inline void write_log_finding(text_writer& w, const log_report& r, const log_finding& f,
                              bool taught) {
  report named;
  named.source = r.source;
  const bool whole = !f.at_us && r.verdict != verdict::unreadable;
  finding shown = f;
  if (whole) shown.line = 0;
  if (f.at_us) shown.field = when_text(r.clock, *f.at_us);
  write_finding(w, named, shown, taught);
}

inline void write_run_numbers(text_writer& w, const log_report& r, const edition& rules) {
  if (!r.required_min || !r.plan.required) return;
  const requirement& q = *r.plan.required;
  w.blank();
  w.heading("The run beside the table at " + altitude_text(r.plan.altitude_ft), "1");
  if (r.plan.process != nullptr) w.row("food", r.plan.process->title);
  w.row("canner",
        title_of_method(rules, q.method) + (q.gauge.empty() ? "" : ", " + q.gauge + " gauge"));
  if (q.pressure_psi) w.row("pressure", pressure_text(*q.pressure_psi, q.gauge));
  w.row("time", time_text(*r.required_min) + counted_from(q));
  w.row("delivered", duration_text(r.delivered_us) + " that the log vouches for");
  w.paragraph(sources_text(q.sources), "  Source: ", 10);
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
  w.paragraph(
      r.source + ", for " +
          (r.plan.title.empty() ? r.plan.source : r.plan.title + " (" + r.plan.source + ")"),
      "  ", 2);
  if (!r.now.empty()) {
    w.blank();
    w.heading("Do now", "1");
    write_now(w, r);
  }
  std::vector<std::string_view> taught;
  const auto write = [&](const log_finding& f) {
    write_log_finding(w, r, f, std::find(taught.begin(), taught.end(), f.check) != taught.end());
    taught.push_back(f.check);
  };
  for (const outcome o : {outcome::rejects, outcome::untested, outcome::incomplete}) {
    for (const log_finding& f : r.findings) {
      if (f.outcome == o) write(f);
    }
  }
  for (const level l : {level::warning, level::note}) {
    for (const log_finding& f : r.findings) {
      if (f.outcome == outcome::none && f.level == l) write(f);
    }
  }
  write_run_numbers(w, r, rules);
  if (!r.explains.empty()) {
    w.blank();
    w.heading("By physics; this explains and decides nothing", "1");
    for (const std::string& e : r.explains) w.paragraph(e, "  - ", 4);
  }
  return w.take();
}

}  // namespace jarproof
