// The ways of a dish for a person, and as JSON in the layout of docs/report-json.md.
//
//   std::string text = jarproof::ways_text(plan, ways_of(plan, edition), edition);
//   std::string json = jarproof::ways_json({{plan.source, title, ways, {}}});
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/way_volumes.hpp"
#include "jarproof/format/json.hpp"
#include "jarproof/format/numbers.hpp"
#include "jarproof/format/text.hpp"
#include "jarproof/way.hpp"

namespace jarproof {

/// The ways of one plan.
struct found_ways {
  std::string source;
  std::string title;
  std::vector<way> ways;
  std::optional<report> unreadable;  ///< in place of the ways
};

/// True where a way leads onto the shelf; the freezer alone does not.
[[nodiscard]] inline bool reaches_shelf(const std::vector<way>& ways) noexcept {
  for (const way& w : ways) {
    if (w.kind != "freezer") return true;
  }
  return false;
}

namespace detail {

[[nodiscard]] inline std::string title_of_jar(const edition& rules, const std::string& id) {
  const jar_size* jar = find(rules.jars, id);
  return std::string(jar == nullptr ? std::string_view(id) : jar->title);
}

/// `60 min at 15 psi (103 kPa)`, `20 min`.
[[nodiscard]] inline std::string short_numbers(const requirement& r) {
  std::string out = time_text(r.time_min);
  if (r.pressure_psi) out += " at " + pressure_text(*r.pressure_psi, r.gauge);
  if (r.least_f) out += " at " + std::to_string(*r.least_f) + " F";
  return out;
}

/// What the plan leaves unsaid, once for the way and its parts.
inline void write_missing(text_writer& w, const way& each) {
  std::vector<std::string> missing = each.numbers.missing;
  bool by_jar = !each.numbers.by_jar.empty();
  for (const way_part& p : each.parts) {
    missing.insert(missing.end(), p.numbers.missing.begin(), p.numbers.missing.end());
    by_jar = by_jar || !p.numbers.by_jar.empty();
  }
  const auto lacks = [&](std::string_view key) {
    return std::find(missing.begin(), missing.end(), key) != missing.end();
  };
  if (lacks("altitude")) w.paragraph("No numbers: the plan does not say the altitude.", "  ", 2);
  if (lacks("jar") && by_jar)
    w.paragraph("The plan does not say the jar: numbers for each listed size.", "  ", 2);
  if (lacks("gauge"))
    w.paragraph("The plan does not say the gauge: these are numbers for a dial.", "  ", 2);
}

/// The numbers of one jar in a line: `pressure canner, dial gauge, hot pack, 75 min at ...`.
[[nodiscard]] inline std::string line_of(const requirement& r, const edition& rules) {
  return title_of_method(rules, r.method) + (r.gauge.empty() ? "" : ", " + r.gauge + " gauge") +
         ", " + r.pack + " pack, " + short_numbers(r) + ", headspace " +
         headspace_text(r.headspace_thousandths_in);
}

inline void write_jars(text_writer& w, const way_numbers& n, const edition& rules) {
  for (const requirement& r : n.by_jar) w.row(title_of_jar(rules, r.jar), line_of(r, rules));
}

inline void write_numbers(text_writer& w, const way_numbers& n, const edition& rules) {
  if (n.required) {
    const requirement& q = *n.required;
    w.row("jar, pack", title_of_jar(rules, q.jar) + " jars, " + q.pack + " pack");
    w.row("canner",
          title_of_method(rules, q.method) + (q.gauge.empty() ? "" : ", " + q.gauge + " gauge"));
    w.row("time", short_numbers(q) + counted_from(q));
    w.row("headspace", headspace_text(q.headspace_thousandths_in));
    if (q.vent_min) w.row("vent", std::to_string(*q.vent_min) + " min of steady steam");
    for (const requirement& o : n.options) w.row("or", way_text(rules, q, o));
  }
  write_jars(w, n, rules);
}

[[nodiscard]] inline std::string range_text(const volume_range& v) {
  const std::string low = cups_text(v.low, rounding::down);
  const std::string high = cups_text(v.high, rounding::down);
  return low == high ? low : low.substr(0, low.find(" cup")) + " to " + high;
}

inline void write_amounts(text_writer& w, const way_amounts& a, const edition& rules) {
  if (a.solids && !a.portions) w.row("solids", range_text(*a.solids) + " in all");
  if (a.liquid && !a.portions) w.row("liquid", range_text(*a.liquid) + " in all");
  for (const way_jars& j : a.jars) {
    const std::string name = title_of_jar(rules, j.jar);
    std::string text =
        measure_text(j.solids, *unit_named("cup"), rounding::down) + " of solids in each";
    if (a.solids) {
      text +=
          "; fills " + std::string(a.unknown.empty() ? "" : "at least ") + std::to_string(j.count);
      if (j.left >= way_cup / 4) text += ", " + cups_text(j.left, rounding::down) + " left over";
      if (j.missing > 0)
        text += "; needs " + cups_text(j.missing, rounding::up) + " more hot liquid";
    }
    w.row(name, text);
  }
  if (a.portions)
    w.row("portions",
          (a.unknown.empty() ? "" : "at least ") + std::to_string(*a.portions) + " pint portions");
  if (!a.unknown.empty()) {
    std::string lines;
    for (const std::string& line : a.unknown) lines += (lines.empty() ? "" : "; ") + line;
    w.paragraph("Not in the sums, no published volume: " + lines + ".", "  ", 2);
  }
  if (!a.jars.empty())
    w.paragraph("As the lines measure it; measure the drained solids again.", "  ", 2);
}

inline void write_way(text_writer& w, const way& each, std::size_t number, const edition& rules) {
  w.blank();
  w.heading(std::to_string(number) + ". " + each.title, "1");
  for (const std::string& c : each.changes) w.paragraph(c, "  - ", 4);
  write_missing(w, each);
  write_numbers(w, each.numbers, rules);
  if (each.amounts) write_amounts(w, *each.amounts, rules);
  for (const way_part& p : each.parts) {
    w.blank();
    std::string lines;
    for (const std::string& line : p.lines) lines += (lines.empty() ? ": " : ", ") + line;
    w.paragraph(p.title + lines, "  * ", 4);
    if (p.numbers.required) {
      const requirement& q = *p.numbers.required;
      w.row(title_of_jar(rules, q.jar), line_of(q, rules));
      constexpr std::size_t most = 2;  // the JSON has all
      for (std::size_t i = 0; i < p.numbers.options.size() && i < most; ++i)
        w.row("or", way_text(rules, q, p.numbers.options[i]));
    }
    write_jars(w, p.numbers, rules);
    for (const std::string& c : p.changes) w.paragraph(c, "  - ", 4);
  }
  for (const std::string& note : each.notes) w.paragraph(note, "  Note: ", 8);
  if (!each.sources.empty()) w.paragraph(sources_text(each.sources), "  Source: ", 10);
}

inline void write_cups(json_writer& w, std::string_view key, std::int64_t base) {
  w.key(key);
  w.raw(decimal_of_thousandths(base * 1'000 / way_cup));
}

inline void write_volume(json_writer& w, std::string_view key,
                         const std::optional<volume_range>& v) {
  if (!v) return;
  w.key(key);
  w.begin('[');
  for (const std::int64_t end : {v->low, v->high})
    w.raw(decimal_of_thousandths(end * 1'000 / way_cup));
  w.end(']');
}

inline void write_amounts(json_writer& w, const way_amounts& a) {
  w.key("amounts");
  w.begin('{');
  write_volume(w, "solids_cups", a.solids);
  write_volume(w, "liquid_cups", a.liquid);
  if (a.portions) w.member("pint_portions", *a.portions);
  w.texts("not_counted", a.unknown);
  w.end('}');
  if (a.jars.empty()) return;
  w.key("jars");
  w.begin('[');
  for (const way_jars& j : a.jars) {
    w.begin('{');
    w.member("jar", j.jar);
    w.member("count", j.count);
    write_cups(w, "solids_each_cups", j.solids);
    write_cups(w, "solids_left_cups", j.left);
    write_cups(w, "liquid_needed_cups", j.liquid);
    write_cups(w, "liquid_missing_cups", j.missing);
    w.end('}');
  }
  w.end(']');
}

inline void write_numbers(json_writer& w, const way_numbers& n) {
  w.key("required");
  if (n.required) {
    write_requirement(w, *n.required);
  } else {
    w.raw("null");
  }
  for (const auto& [key, all] :
       {std::pair{"options", &n.options}, std::pair{"by_jar", &n.by_jar}}) {
    w.key(key);
    w.begin('[');
    for (const requirement& r : *all) write_requirement(w, r);
    w.end(']');
  }
  w.texts("missing", n.missing);
}

inline void write_process_id(json_writer& w, const process* p) {
  w.key("process");
  p == nullptr ? w.raw("null") : w.text(p->id);
}

inline void write_way(json_writer& w, const way& each) {
  w.begin('{');
  w.member("kind", each.kind);
  w.member("title", each.title);
  write_process_id(w, each.process);
  write_numbers(w, each.numbers);
  w.member("lines_changed", each.altered);
  w.texts("changes", each.changes);
  w.texts("notes", each.notes);
  if (each.amounts) write_amounts(w, *each.amounts);
  if (!each.parts.empty()) {
    w.key("parts");
    w.begin('[');
    for (const way_part& p : each.parts) {
      w.begin('{');
      w.member("title", p.title);
      write_process_id(w, p.process);
      write_numbers(w, p.numbers);
      w.texts("lines", p.lines);
      w.texts("changes", p.changes);
      w.texts("sources", p.sources);
      w.end('}');
    }
    w.end(']');
  }
  w.texts("sources", each.sources);
  w.end('}');
}

inline void write_found(json_writer& w, const found_ways& f) {
  w.begin('{');
  w.member("source", f.source);
  w.member("title", f.title);
  w.key("ways");
  w.begin('[');
  for (const way& each : f.ways) write_way(w, each);
  w.end(']');
  if (f.unreadable) {
    w.key("findings");
    w.begin('[');
    for (const finding& each : f.unreadable->findings) write_finding(w, each);
    w.end(']');
  }
  w.end('}');
}

}  // namespace detail

/// The ways of one plan, numbered.
[[nodiscard]] inline std::string ways_text(const found_ways& found, const edition& rules,
                                           text_style style = {}) {
  if (found.unreadable) return text_of(*found.unreadable, rules, style);
  detail::text_writer w(style);
  w.heading("Tested ways for " +
                (found.title.empty() ? found.source : found.title + " (" + found.source + ")"),
            "1");
  if (!reaches_shelf(found.ways))
    w.paragraph("No published process was found for it or its parts.", "  ", 2);
  for (std::size_t i = 0; i < found.ways.size(); ++i)
    detail::write_way(w, found.ways[i], i + 1, rules);
  return w.take();
}

/// One plan gives `{"source": ..., "ways": [...]}`; several give `{"plans": [...]}` of such
/// objects. Ends with a line end.
[[nodiscard]] inline std::string ways_json(const std::vector<found_ways>& found) {
  detail::json_writer w(5);
  if (found.size() == 1) {
    detail::write_found(w, found.front());
    return w.take() + "\n";
  }
  w.begin('{');
  w.key("plans");
  w.begin('[');
  for (const found_ways& f : found) detail::write_found(w, f);
  w.end(']');
  w.end('}');
  return w.take() + "\n";
}

}  // namespace jarproof
