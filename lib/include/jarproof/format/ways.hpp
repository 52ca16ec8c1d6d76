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

#include "jarproof/detail/way_words.hpp"
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
  int altitude_ft = -1;              ///< -1 where the plan does not say
};

/// True where a way leads onto the shelf; the freezer alone does not.
[[nodiscard]] inline bool reaches_shelf(const std::vector<way>& ways) noexcept {
  for (const way& w : ways) {
    if (w.kind != "freezer") return true;
  }
  return false;
}

namespace detail {

inline void write_way(text_writer& w, const way& each, std::size_t number, const edition& rules) {
  const auto write_rows = [&](const std::vector<named_value>& rows) {
    for (const named_value& row : rows) w.row(row.name, row.value);
  };
  w.blank();
  w.heading(std::to_string(number) + ". " + each.title, "1");
  for (const std::string& c : each.changes) w.paragraph(c, "  - ", 4);
  for (const std::string& text : missing_texts(each)) w.paragraph(text, "  ", 2);
  write_rows(rows_of_numbers(each.numbers, rules));
  if (each.amounts) {
    write_rows(rows_of_amounts(*each.amounts, rules));
    for (const std::string& text : limits_of_amounts(*each.amounts)) w.paragraph(text, "  ", 2);
  }
  for (const way_part& p : each.parts) {
    w.blank();
    w.paragraph(title_of_part(p), "  * ", 4);
    write_rows(rows_of_part(p.numbers, rules));
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
  if (!reaches_shelf(found.ways)) w.paragraph(detail::nothing_for_the_shelf, "  ", 2);
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
