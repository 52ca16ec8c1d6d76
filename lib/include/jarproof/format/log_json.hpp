// What a run log gives as JSON, in the layout of docs/report-json.md.
//
//   std::string text = jarproof::log_json(report, edition);
// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <optional>
#include <string>

#include "jarproof/detail/log_times.hpp"
#include "jarproof/format/json.hpp"
#include "jarproof/log_report.hpp"

namespace jarproof {

namespace detail {

/// Minutes from the same start as the log's own; of times of day from its first row.
inline void write_minute(json_writer& w, const log_report& r, std::string_view key,
                         std::int64_t at_us) {
  w.key(key);
  w.raw(minute_text(at_us - (r.clock ? r.first_us : 0)));
}

inline void write_log_finding(json_writer& w, const log_report& r, const log_finding& f) {
  w.begin('{');
  w.member("check", f.check);
  w.member("level", name_of(f.level));
  w.member("outcome", name_of(f.outcome));
  w.member("field", f.field);
  if (f.line > 0) {
    w.member("line", f.line);
    w.member("column", f.column);
  }
  if (f.at_us) {
    write_minute(w, r, "minute", *f.at_us);
    if (r.clock) w.member("time", when_text(true, *f.at_us));
  }
  w.member("found", f.found);
  w.member("required", f.required);
  w.member("message", f.message);
  w.member("why", f.why);
  w.member("fix", f.fix);
  w.texts("sources", f.sources);
  w.end('}');
}

/// A number with two decimals, or null.
inline void write_decimal(json_writer& w, std::string_view key, std::optional<double> value) {
  w.key(key);
  w.raw(value ? decimal_of_thousandths(std::llround(*value * 100.0) * 10) : "null");
}

}  // namespace detail

/// One run. Ends with a line end.
[[nodiscard]] inline std::string log_json(const log_report& r, const edition& rules) {
  using namespace detail;
  json_writer w(4);
  begin_document(w, log_format, rules);
  w.member("source", r.source);
  w.member("verdict", name_of(r.verdict));
  if (r.verdict != verdict::unreadable) {
    w.key("running");
    w.raw(r.running ? "true" : "false");
    w.member("state", name_of(r.state));
    w.key("required_min");
    w.raw(r.required_min ? std::to_string(*r.required_min) : "null");
    w.key("delivered_min");
    w.raw(minute_text(r.delivered_us));
    w.key("ends_at");
    r.ends_us&& r.running ? w.text(when_text(r.clock, *r.ends_us)) : w.raw("null");
    w.key("left_min");
    const bool counting = r.state == run_state::counting && r.ends_us;
    w.raw(counting ? minute_text(*r.ends_us - r.last_us) : "null");
    write_decimal(w, "lethality_min", r.lethality_min);
    write_decimal(w, "process_lethality_min", r.process_lethality_min);
  }
  w.key("findings");
  w.begin('[');
  for (const log_finding& f : r.findings) write_log_finding(w, r, f);
  w.end(']');
  w.key("now");
  w.begin('[');
  for (const to_do& t : r.now) {
    w.begin('{');
    w.member("id", t.id);
    w.member("do", t.what);
    w.member("until", t.until);
    if (t.until_us) write_minute(w, r, "until_minute", *t.until_us);
    if (t.or_else) w.key("or");
    if (t.or_else) w.raw("true");
    w.end('}');
  }
  w.end(']');
  w.texts("explains", r.explains);
  w.key("plan");
  write_report(w, r.plan);
  w.end('}');
  return w.take() + "\n";
}

}  // namespace jarproof
