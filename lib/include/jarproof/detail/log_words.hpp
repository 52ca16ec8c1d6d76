// What a run log gives, in words: what the text and the page say alike.
// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/log_times.hpp"
#include "jarproof/detail/report_words.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/numbers.hpp"
#include "jarproof/log_report.hpp"

namespace jarproof::detail {

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

/// What no later minute makes good: a plan that is none, a canner with air in it, an instrument
/// that vouches for nothing, a log of two loads.
inline constexpr std::string_view checks_that_spoil_a_run[] = {
    "plan-not-accepted", "vent-too-short",         "heat-up-too-short", "gauge-not-at-zero",
    "gauges-disagree",   "thermometer-reads-high", "second-load"};

[[nodiscard]] inline bool spoils(const log_finding& f) noexcept {
  for (const std::string_view check : checks_that_spoil_a_run) {
    if (f.check == check && f.outcome != outcome::none) return true;
  }
  return false;
}

/// True where a run that is going on has to be mended.
[[nodiscard]] inline bool must_stop(const log_report& r) noexcept {
  for (const log_finding& f : r.findings) {
    if (f.outcome != outcome::none && f.check != "run-unfinished") {
      const bool row = f.check == "event-missing";
      if (r.state != run_state::counting || row || spoils(f)) return true;
    }
  }
  return false;
}

/// The words on top of a run that is going on.
[[nodiscard]] inline std::string_view meaning_of_running(const log_report& r) noexcept {
  return must_stop(r) ? "STOP: do this now." : "RUNNING: go on like this.";
}

/// The first of these that was found; null where there is none.
[[nodiscard]] inline const log_finding* spoils_run(const log_report& r) noexcept {
  for (const std::string_view check : checks_that_spoil_a_run) {
    for (const log_finding& f : r.findings) {
      if (f.check == check && f.outcome != outcome::none) return &f;
    }
  }
  return nullptr;
}

/// How far the log goes, and how long it is to the end of the time.
[[nodiscard]] inline std::string so_far_text(const log_report& r) {
  std::string out = "so far, to " + when_text(r.clock, r.last_us);
  if (r.state == run_state::counting && r.ends_us && spoils_run(r) == nullptr &&
      *r.ends_us > r.last_us)
    out += ": " + duration_text(*r.ends_us - r.last_us) + " to go, to " +
           when_text(r.clock, *r.ends_us);
  return out;
}

/// Why a run that is going on must be mended, or was; null where all is well.
[[nodiscard]] inline const log_finding* reason_of_running(const log_report& r) noexcept {
  const bool stop = must_stop(r);
  const log_finding* why = spoils_run(r);
  if (why != nullptr) return why;
  for (const log_finding& f : r.findings) {
    const bool counts = f.outcome != outcome::none && f.check != "run-unfinished";
    if (counts && (why == nullptr || stop)) why = &f;
  }
  return why;
}

/// The log, and the plan that it is held against.
[[nodiscard]] inline std::string names_of_run(const log_report& r) {
  return r.source + ", for " +
         (r.plan.title.empty() ? r.plan.source : r.plan.title + " (" + r.plan.source + ")");
}

/// Findings in the order in which they are shown: what decides first, then warnings, then notes.
[[nodiscard]] inline std::vector<const log_finding*> shown_findings(const log_report& r) {
  std::vector<const log_finding*> out;
  for (const outcome o : {outcome::rejects, outcome::untested, outcome::incomplete}) {
    for (const log_finding& f : r.findings) {
      if (f.outcome == o) out.push_back(&f);
    }
  }
  for (const level l : {level::warning, level::note}) {
    for (const log_finding& f : r.findings) {
      if (f.outcome == outcome::none && f.level == l) out.push_back(&f);
    }
  }
  return out;
}

/// A finding with the time in the place of a key; what is about the whole run has no line.
[[nodiscard]] inline finding placed(const log_report& r, const log_finding& f) {
  finding out = f;
  if (!f.at_us && r.verdict != verdict::unreadable) out.line = 0;
  if (f.at_us) out.field = when_text(r.clock, *f.at_us);
  return out;
}

[[nodiscard]] inline std::string heading_of_run(const log_report& r) {
  return "The run beside the table at " + altitude_text(r.plan.altitude_ft);
}

inline constexpr std::string_view heading_of_physics =
    "By physics; this explains and decides nothing";

/// What the table asks for and what was delivered; nothing where no table gives a time.
[[nodiscard]] inline std::vector<named_value> rows_of_run(const log_report& r,
                                                          const edition& rules) {
  std::vector<named_value> out;
  if (!r.required_min || !r.plan.required) return out;
  const requirement& q = *r.plan.required;
  if (r.plan.process != nullptr) out.push_back({"food", std::string(r.plan.process->title)});
  out.push_back({"canner", title_of_method(rules, q.method) +
                               (q.gauge.empty() ? "" : ", " + q.gauge + " gauge")});
  if (q.pressure_psi) out.push_back({"pressure", pressure_text(*q.pressure_psi, q.gauge)});
  out.push_back({"time", time_text(*r.required_min) + counted_from(q)});
  out.push_back({"delivered", duration_text(r.delivered_us) + " that the log vouches for"});
  return out;
}

}  // namespace jarproof::detail
