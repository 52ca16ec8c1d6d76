// The plan of a canning day as JSON, in the layout of docs/report-json.md.
//
//   std::string text = jarproof::day_json(day, {}, edition);
// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/day.hpp"
#include "jarproof/format/day_text.hpp"
#include "jarproof/format/json.hpp"
#include "jarproof/format/shelf_json.hpp"

namespace jarproof {

namespace detail {

inline void write_truth(json_writer& w, std::string_view key, bool value) {
  w.key(key);
  w.raw(value ? "true" : "false");
}

/// A volume in fluid ounces, cut off after three decimals.
inline void write_floz(json_writer& w, std::string_view key, std::int64_t millionths) {
  w.key(key);
  w.raw(decimal_of_thousandths(millionths / 1'000));
}

inline void write_ground(json_writer& w, const std::vector<std::string>& sources,
                         const std::string& evidence) {
  w.texts("sources", sources);
  if (!evidence.empty()) w.member("evidence", evidence);
}

inline void write_steps(json_writer& w, std::string_view key, const std::vector<day_step>& steps) {
  w.key(key);
  w.begin('[');
  for (const day_step& s : steps) {
    w.begin('{');
    w.member("id", s.id);
    w.member("says", s.says);
    if (!s.parts.empty()) w.texts("parts", s.parts);
    write_ground(w, s.sources, s.evidence);
    w.end('}');
  }
  w.end(']');
}

inline void write_jars(json_writer& w, const day_jars& j) {
  w.begin('{');
  w.member("jar", j.jar);
  w.member("count", j.count);
  w.member("most", j.most);
  w.member("counted_from", j.by);
  write_floz(w, "volume_floz", j.volume);
  write_floz(w, "fill_least_floz", j.fill_least);
  write_floz(w, "fill_most_floz", j.fill_most);
  if (j.available > 0) write_floz(w, "to_fill_floz", j.available);
  write_floz(w, "left_floz", j.left);
  w.end('}');
}

inline void write_food(json_writer& w, const day_food& f) {
  w.begin('{');
  w.member("food", f.name);
  const auto range = [&](std::string_view key, std::int64_t low, std::int64_t high) {
    w.key(key);
    w.begin('[');
    w.raw(decimal_of_thousandths(low));
    w.raw(decimal_of_thousandths(high));
    w.end(']');
  };
  range("pounds", f.least_lb, f.most_lb);
  if (f.most_bushels > 0) range("bushels", f.least_bushels, f.most_bushels);
  write_ground(w, f.sources, f.evidence);
  w.end('}');
}

inline void write_batch(json_writer& w, const day_batch& b) {
  w.begin('{');
  w.key("report");
  write_report(w, b.judged);
  if (b.judged.verdict == verdict::accepted) {
    w.key("jars");
    b.jars ? write_jars(w, *b.jars) : w.raw("null");
    w.key("fresh_food");
    b.produce ? write_food(w, *b.produce) : w.raw("null");
    write_steps(w, "left_over", b.left);
    write_steps(w, "steps", b.steps);
    write_steps(w, "cautions", b.cautions);
    w.key("label");
    w.begin('[');
    for (const day_label_line& l : b.label) {
      w.begin('{');
      w.member("name", l.name);
      w.member("value", l.value);
      w.end('}');
    }
    w.end(']');
    write_steps(w, "check_after", b.check_after);
    write_steps(w, "opening", b.opening);
    w.key("findings");
    w.begin('[');
    for (const finding& f : b.findings) write_finding(w, f);
    w.end(']');
    w.texts("not_said", b.unsaid);
  }
  w.end('}');
}

inline void write_load(json_writer& w, const day_plan& d, const day_load& l) {
  w.begin('{');
  w.member("number", l.number);
  w.key("jars");
  w.begin('[');
  for (const day_load_part& p : l.parts) {
    w.begin('{');
    w.member("plan", static_cast<std::int64_t>(p.batch));
    w.member("jar", d.batches[p.batch].jars->jar);
    w.member("count", p.count);
    w.end('}');
  }
  w.end(']');
  w.member("count", l.jars);
  w.member("holds", l.holds);
  write_truth(w, "half_full", l.half_full);
  w.member("method", l.method);
  if (!l.gauge.empty()) w.member("gauge", l.gauge);
  if (!l.pressure.empty()) w.member("pressure", l.pressure);
  w.member("time_min", l.time_min);
  write_steps(w, "remarks", l.remarks);
  w.key("stages");
  w.begin('[');
  for (const day_stage& s : l.stages) {
    w.begin('{');
    w.member("id", s.id);
    w.member("from_min", s.from_min);
    w.member("to_min", s.to_min);
    w.member("least_min", s.least_min);
    if (d.start_min) {
      w.member("from", clock_text(d, s.from_min));
      w.member("to", clock_text(d, s.to_min));
    }
    w.member("what", s.what);
    write_truth(w, "fuel", s.fuel);
    write_ground(w, s.sources, s.evidence);
    w.end('}');
  }
  w.end(']');
  w.end('}');
}

}  // namespace detail

/// The whole day; `unreadable` holds the reports of plans that could not be read. A shelf is its
/// last member. Ends with a line end.
[[nodiscard]] inline std::string day_json(const day_plan& day,
                                          const std::vector<report>& unreadable,
                                          const edition& rules,
                                          const std::optional<shelf_today>& shelf = std::nullopt) {
  detail::json_writer w(4);
  begin_document(w, "jarproof-day/1", rules);
  w.member("verdict", name_of(unreadable.empty() ? day.verdict : verdict::unreadable));
  w.key("plans");
  w.begin('[');
  for (const day_batch& b : day.batches) detail::write_batch(w, b);
  w.end(']');
  w.key("unreadable");
  w.begin('[');
  for (const report& r : unreadable) detail::write_report(w, r);
  w.end(']');
  w.key("loads");
  w.begin('[');
  for (const day_load& l : day.loads) detail::write_load(w, day, l);
  w.end(']');
  w.texts("apart", day.apart);
  w.key("clock");
  w.begin('{');
  if (!day.date.empty()) w.member("date", day.date);
  if (day.start_min) {
    w.member("start", detail::clock_text(day, 0));
    w.member("end", detail::clock_text(day, day.total_min));
  }
  w.member("total_min", day.total_min);
  w.member("least_total_min", day.least_total_min);
  w.member("fuel_min", day.fuel_min);
  w.member("least_fuel_min", day.least_fuel_min);
  w.end('}');
  w.texts("not_said", day.unsaid);
  if (shelf) {
    w.key("shelf");
    detail::write_shelf(w, *shelf);
  }
  w.end('}');
  return w.take() + "\n";
}

}  // namespace jarproof
