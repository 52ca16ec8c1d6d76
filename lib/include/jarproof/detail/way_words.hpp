// The ways of a dish in words for a person: what the text and the page say alike.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/report_words.hpp"
#include "jarproof/detail/way_volumes.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/numbers.hpp"
#include "jarproof/way.hpp"

namespace jarproof::detail {

inline constexpr const char* nothing_for_the_shelf =
    "No published process was found for it or its parts.";

/// `60 min at 15 psi (103 kPa)`, `20 min`.
[[nodiscard]] inline std::string short_numbers(const requirement& r) {
  std::string out = time_text(r.time_min);
  if (r.pressure_psi) out += " at " + pressure_text(*r.pressure_psi, r.gauge);
  if (r.least_f) out += " at " + std::to_string(*r.least_f) + " F";
  return out;
}

/// What the plan leaves unsaid, once for the way and its parts.
[[nodiscard]] inline std::vector<std::string> missing_texts(const way& each) {
  std::vector<std::string> missing = each.numbers.missing;
  bool by_jar = !each.numbers.by_jar.empty();
  for (const way_part& p : each.parts) {
    missing.insert(missing.end(), p.numbers.missing.begin(), p.numbers.missing.end());
    by_jar = by_jar || !p.numbers.by_jar.empty();
  }
  const auto lacks = [&](std::string_view key) {
    return std::find(missing.begin(), missing.end(), key) != missing.end();
  };
  std::vector<std::string> out;
  if (lacks("altitude")) out.emplace_back("No numbers: the plan does not say the altitude.");
  if (lacks("jar") && by_jar)
    out.emplace_back("The plan does not say the jar: numbers for each listed size.");
  if (lacks("gauge"))
    out.emplace_back("The plan does not say the gauge: these are numbers for a dial.");
  return out;
}

/// The numbers of one jar in a line: `pressure canner, dial gauge, hot pack, 75 min at ...`.
[[nodiscard]] inline std::string line_of(const requirement& r, const edition& rules) {
  return title_of_method(rules, r.method) + (r.gauge.empty() ? "" : ", " + r.gauge + " gauge") +
         ", " + r.pack + " pack, " + short_numbers(r) + ", headspace " +
         headspace_text(r.headspace_thousandths_in);
}

[[nodiscard]] inline std::vector<named_value> rows_by_jar(const way_numbers& n,
                                                          const edition& rules) {
  std::vector<named_value> out;
  for (const requirement& r : n.by_jar) {
    const jar_size* jar = find(rules.jars, r.jar);
    out.push_back({jar == nullptr ? std::string_view(r.jar) : jar->title, line_of(r, rules)});
  }
  return out;
}

/// The numbers of a way.
[[nodiscard]] inline std::vector<named_value> rows_of_numbers(const way_numbers& n,
                                                              const edition& rules) {
  std::vector<named_value> out;
  if (n.required) {
    const requirement& q = *n.required;
    out.push_back({"jar, pack", title_of_jar(rules, q.jar) + " jars, " + q.pack + " pack"});
    out.push_back({"canner", title_of_method(rules, q.method) +
                                 (q.gauge.empty() ? "" : ", " + q.gauge + " gauge")});
    out.push_back({"time", short_numbers(q) + counted_from(q)});
    out.push_back({"headspace", headspace_text(q.headspace_thousandths_in)});
    if (q.vent_min) out.push_back({"vent", std::to_string(*q.vent_min) + " min of steady steam"});
    for (const requirement& o : n.options) out.push_back({"or", way_text(rules, q, o)});
  }
  for (named_value& row : rows_by_jar(n, rules)) out.push_back(std::move(row));
  return out;
}

/// The numbers of a part, a line for each jar; of the other methods the first two, the JSON has
/// all.
[[nodiscard]] inline std::vector<named_value> rows_of_part(const way_numbers& n,
                                                           const edition& rules) {
  std::vector<named_value> out;
  if (n.required) {
    const requirement& q = *n.required;
    const jar_size* jar = find(rules.jars, q.jar);
    out.push_back({jar == nullptr ? std::string_view(q.jar) : jar->title, line_of(q, rules)});
    constexpr std::size_t most = 2;
    for (std::size_t i = 0; i < n.options.size() && i < most; ++i)
      out.push_back({"or", way_text(rules, q, n.options[i])});
  }
  for (named_value& row : rows_by_jar(n, rules)) out.push_back(std::move(row));
  return out;
}

[[nodiscard]] inline std::string range_text(const volume_range& v) {
  const std::string low = cups_text(v.low, rounding::down);
  const std::string high = cups_text(v.high, rounding::down);
  return low == high ? low : low.substr(0, low.find(" cup")) + " to " + high;
}

/// A count with how sure it is: raw food shrinks, and what is not in the sum adds to it.
[[nodiscard]] inline std::string count_text(const way_amounts& a, std::int64_t count,
                                            std::string_view what = "") {
  const std::string number = std::to_string(count) + std::string(what);
  const auto exact = [](const std::optional<volume_range>& v) { return !v || v->low == v->high; };
  if (a.raw && a.unknown.empty() && exact(a.solids) && exact(a.liquid)) return "at most " + number;
  if (a.raw) return "about " + number + (a.unknown.empty() ? "" : " and more");
  return (a.unknown.empty() ? "" : "at least ") + number;
}

/// The volumes of a way and how many jars they fill.
[[nodiscard]] inline std::vector<named_value> rows_of_amounts(const way_amounts& a,
                                                              const edition& rules) {
  std::vector<named_value> out;
  if (a.solids && !a.portions) out.push_back({"solids", range_text(*a.solids) + " in all"});
  if (a.liquid && !a.portions) out.push_back({"liquid", range_text(*a.liquid) + " in all"});
  for (const way_jars& j : a.jars) {
    std::string text =
        measure_text(j.solids, *unit_named("cup"), rounding::down) + " of solids in each";
    if (a.solids) {
      text +=
          j.count == 0 ? std::string("; less than one jar") : "; fills " + count_text(a, j.count);
      if (j.count > 0 && j.left >= way_cup / 4)
        text += ", " + cups_text(j.left, rounding::down) + " left over";
      if (j.missing > 0)
        text += "; needs " + cups_text(j.missing, rounding::up) + " more hot liquid";
    }
    const jar_size* jar = find(rules.jars, j.jar);
    out.push_back({jar == nullptr ? std::string_view(j.jar) : jar->title, text});
  }
  if (a.portions && *a.portions > 0) {
    out.push_back({"portions", count_text(a, *a.portions,
                                          *a.portions == 1 ? " pint portion" : " pint portions")});
  }
  return out;
}

/// What the sums of a way leave out, and how far they go.
[[nodiscard]] inline std::vector<std::string> limits_of_amounts(const way_amounts& a) {
  std::vector<std::string> out;
  if (!a.unknown.empty()) {
    std::string lines;
    for (const std::string& line : a.unknown) {
      lines += (lines.empty() ? "" : "; ") + line;
      while (!lines.empty() && lines.back() == '.') lines.pop_back();
    }
    out.push_back("Not in the sums, no published volume: " + lines + ".");
  }
  if (a.swollen) out.emplace_back("Dried beans and peas are counted as they fill jars when ready.");
  if (a.tomatoes && !a.jars.empty())
    out.emplace_back("Tomatoes are counted with the solids; their juice is liquid.");
  if (!a.jars.empty())
    out.emplace_back("As the lines measure it; measure the drained solids again.");
  return out;
}

/// The name of a part and the lines of the recipe that are in it.
[[nodiscard]] inline std::string title_of_part(const way_part& p) {
  std::string out = p.title;
  for (const std::string& line : p.lines) out += (&line == p.lines.data() ? ": " : ", ") + line;
  return out;
}

}  // namespace jarproof::detail
