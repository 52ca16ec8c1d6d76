// A run log as one page: `jarproof log --format html`.
//
//   std::string page = jarproof::html_of(report, log, edition);
//
// What to do now stands first. The words are those of the text report; the run is drawn with what
// was asked for, what was held and what was missed.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/log_target.hpp"
#include "jarproof/detail/log_words.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/charts.hpp"
#include "jarproof/format/html_check.hpp"
#include "jarproof/log_report.hpp"
#include "jarproof/run_log.hpp"

namespace jarproof {

namespace detail {

/// Thousandths of a minute.
[[nodiscard]] constexpr std::int64_t chart_minute(std::int64_t at_us) noexcept {
  return floor_div(at_us + us_per_min / 2'000, us_per_min / 1'000);
}

/// Readings where there are any; else the rows that say whether it was held.
inline void fill_courses(page_chart& chart, const log_report& r, const run_log& log) {
  std::vector<chart_point> course;
  for (const log_row& row : log.rows) {
    if (row.reading) course.push_back({chart_minute(row.at_us), *row.reading / 1'000});
  }
  if (!course.empty()) {
    chart.title = is_pressure(log.unit) ? "Pressure over time" : "Temperature over time";
    chart.y_label = std::string(name_of(log.unit));
    if (is_pressure(log.unit)) chart.y_from = 0;
    chart.courses.push_back(std::move(course));
    if (r.least_reading) {
      // Up to what the axis can show, never down.
      chart.levels.push_back(
          {divided_up(*r.least_reading, 1'000),
           limit_text(log.unit, *r.least_reading) +
               (is_pressure(log.unit) ? " or more must be on this gauge all the time"
                                      : " or more must be on the thermometer all the time")});
    }
    return;
  }
  chart.title = "The run over time";
  chart.y_from = 0;  // so that what was held stands above what was lost, also where nothing was
  for (const log_row& row : log.rows) {
    if (!row.event) continue;
    const log_event_kind k = row.event->kind;
    const bool lost = k == log_event_kind::boil_lost || k == log_event_kind::water_low;
    if (k == log_event_kind::steady || lost)
      chart.courses.push_back({{chart_minute(row.at_us), lost ? 0 : 1'000}});
  }
}

/// What was held and what was missed.
inline void fill_spans(page_chart& chart, const log_report& r) {
  for (const held_stretch& s : r.held) {
    if (s.from_us == s.to_us) continue;
    chart.spans.push_back({chart_minute(s.from_us), chart_minute(s.to_us), span_kind::process,
                           "held " + duration_text(s.to_us - s.from_us) +
                               (s.vouched ? "" : ", with readings too far apart")});
  }
  for (const missed_stretch& s : r.missed) {
    const bool gap = s.check == "reading-gap";
    std::string says = words_of_id(s.check);
    for (const log_finding& f : r.findings) {
      if (!gap && f.check == s.check && f.at_us == s.from_us && !f.found.empty())
        says += ", " + f.found;
    }
    chart.spans.push_back({chart_minute(s.from_us), chart_minute(s.to_us),
                           gap ? span_kind::gap : span_kind::failing, std::move(says)});
  }
}

/// Jars are counted hours after the run; drawn with it, they would leave no room for it.
[[nodiscard]] inline bool is_count_of_jars(const log_row& row) noexcept {
  return row.event &&
         (row.event->kind == log_event_kind::unsealed || row.event->kind == log_event_kind::broken);
}

/// When the run was over: the last row that is no count of jars.
[[nodiscard]] inline std::int64_t end_of_run(const run_log& log) {
  for (auto row = log.rows.rbegin(); row != log.rows.rend(); ++row) {
    if (!is_count_of_jars(*row)) return row->at_us;
  }
  return log.rows.front().at_us;
}

/// What the cook wrote down, and what was found at a moment and is no stretch.
inline void fill_marks(page_chart& chart, const log_report& r, const run_log& log) {
  for (const log_row& row : log.rows) {
    if (!row.event || row.event->kind == log_event_kind::steady || is_count_of_jars(row)) continue;
    chart.events.push_back({chart_minute(row.at_us), std::string(name_of(row.event->kind))});
  }
  for (const log_finding& f : r.findings) {
    if (!f.at_us || f.outcome == outcome::none || f.check == "run-unfinished") continue;
    const bool drawn = *f.at_us > end_of_run(log) || f.check == "reading-gap" ||
                       std::any_of(r.missed.begin(), r.missed.end(), [&](const auto& s) {
                         return s.check == f.check && s.from_us == *f.at_us;
                       });
    if (drawn) continue;
    const std::int64_t x = chart_minute(*f.at_us);
    const std::string says = "found: " + words_of_id(f.check);
    const auto there = std::find_if(chart.events.begin(), chart.events.end(),
                                    [&](const chart_event& e) { return e.x == x; });
    if (there == chart.events.end()) {
      chart.events.push_back({x, says});
    } else {
      there->says += "; " + says;
    }
  }
  std::stable_sort(chart.events.begin(), chart.events.end(),
                   [](const auto& a, const auto& b) { return a.x < b.x; });
}

/// What is seen, in a sentence or two.
[[nodiscard]] inline std::string words_of_chart(const page_chart& chart, const log_report& r,
                                                const run_log& log) {
  std::string out = "From " + moment_text(chart, chart_minute(r.first_us)) + " to " +
                    moment_text(chart, chart_minute(end_of_run(log))) + ".";
  if (chart.y_label.empty() && !chart.courses.empty())
    out += " Dots are the rows of the log that say whether it was held: above held, below lost.";
  if (r.required_min) {
    out += " The process asks for " + time_text(*r.required_min) + " in one piece; " +
           duration_text(r.delivered_us) + " were delivered" + (r.running ? " so far." : ".");
  }
  const auto missed = std::count_if(chart.spans.begin(), chart.spans.end(),
                                    [](const auto& s) { return s.kind == span_kind::failing; });
  if (missed > 0) {
    out += missed == 1 ? " One hatched stretch did not hold what is asked for."
                       : " " + std::to_string(missed) +
                             " hatched stretches did not hold what is asked for.";
  }
  return out;
}

/// The run as drawn; `id` unlike every other of the page.
[[nodiscard]] inline page_chart chart_of(const log_report& r, const run_log& log,
                                         std::string_view id) {
  page_chart out;
  out.id = std::string(id);
  if (log.clock) out.clock_from_min = 0;
  fill_courses(out, r, log);
  fill_spans(out, r);
  fill_marks(out, r, log);
  out.description = words_of_chart(out, r, log);
  return out;
}

/// What to do, large enough to be read from the stove, each with its limit.
inline void write_do_now(html_writer& w, const log_report& r) {
  if (r.now.empty()) return;
  w.open("ol", "class=\"now\"");
  bool numbered = false;
  for (const to_do& t : r.now) {
    // What may be done in place of the one before stands under its number.
    if (numbered && !t.or_else) w.close();
    if (!numbered || !t.or_else) w.open("li");
    numbered = true;
    w.open("div");
    w.sentence(t.what);
    if (!t.until.empty()) {
      w.open("span", "class=\"until\"");
      w.text("until ");
      w.element("b", t.until);
      w.close();
    }
    w.close();
  }
  w.close();
  w.close();
}

inline void write_run_label(html_writer& w, const log_report& r) {
  if (!r.running) {
    write_label(w, name_of(r.verdict), meaning_of_run(r));
    if (!r.now.empty()) w.element("h2", "Do now");
    write_do_now(w, r);
    return;
  }
  // Not in the colour of what is accepted: nothing is, before the end.
  write_label(w, must_stop(r) ? "rejected" : "incomplete", meaning_of_running(r));
  w.element("p", capital_first(so_far_text(r)) + ".", "class=\"do\"");
  write_do_now(w, r);
  if (const log_finding* why = reason_of_running(r)) w.paragraph("Why: " + why->message);
}

inline void write_run_findings(html_writer& w, const log_report& r, source_notes& sources) {
  const std::vector<const log_finding*> shown = shown_findings(r);
  if (shown.empty()) return;
  report named;
  named.source = r.source;
  w.element("h2", shown.front()->outcome != outcome::none ? "What was found" : "Good to know");
  w.open("ol", "class=\"findings\"");
  std::vector<std::string_view> taught;
  for (const log_finding* f : shown) {
    const bool known = std::find(taught.begin(), taught.end(), f->check) != taught.end();
    write_finding(w, named, placed(r, *f), known, 3, sources);
    taught.push_back(f->check);
  }
  w.close();
}

}  // namespace detail

/// One page for one run. `log` is what `r` was made from, without rows where it could not be read.
[[nodiscard]] inline std::string html_of(const log_report& r, const run_log& log,
                                         const edition& rules) {
  using namespace detail;
  html_writer w;
  const std::string name = r.plan.title.empty() ? r.source : r.plan.title;
  w.element("h1", "Run: " + name);
  w.element("p", names_of_run(r), "class=\"small\"");
  write_run_label(w, r);
  if (r.plan.verdict == verdict::unreadable) write_report(w, r.plan, rules, 2, "plan");
  w.open("div", flow_of_print);
  if (!log.rows.empty()) {
    w.element("h2", "The run");
    write_chart(w, chart_of(r, log, "run"));
  }
  source_notes sources;
  write_run_findings(w, r, sources);
  if (const std::vector<named_value> rows = rows_of_run(r, rules); !rows.empty()) {
    w.element("h2", heading_of_run(r));
    write_numbers(w, rows, "");
    if (const std::string from = sources.refer(r.plan.required->sources); !from.empty())
      w.element("p", from, "class=\"small\"");
  }
  if (!r.explains.empty()) {
    w.element("h2", heading_of_physics);
    write_list(w, r.explains);
  }
  sources.write(w, 2);
  w.close();
  const std::string verdict_word =
      r.running ? (must_stop(r) ? "stop" : "running") : std::string(name_of(r.verdict));
  return html_page("Run: " + name + ": " + verdict_word, w.take(), rules);
}

}  // namespace jarproof
