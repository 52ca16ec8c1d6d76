// A report in words for a person: what the text and the page say alike.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/findings.hpp"
#include "jarproof/detail/words.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/numbers.hpp"
#include "jarproof/report.hpp"

namespace jarproof::detail {

/// The first publications of a list; the whole list is in the JSON report.
[[nodiscard]] inline std::string sources_text(const std::vector<std::string>& sources,
                                              std::size_t most = 2) {
  std::string out;
  for (std::size_t i = 0; i < sources.size() && i < most; ++i) {
    out += (i == 0 ? "" : "; ") + sources[i];
  }
  return out;
}

/// `FILE:LINE:COLUMN (key)`. A source that names its first line already loses it.
[[nodiscard]] inline std::string place_text(const report& r, const finding& f) {
  std::string out = f.file.empty() ? r.source : f.file;
  if (f.line > 0) {
    const std::size_t colon = out.rfind(':');
    const bool has_line = f.file.empty() && colon != std::string::npos && colon + 1 < out.size() &&
                          out.find_first_not_of("0123456789", colon + 1) == std::string::npos;
    if (has_line) out.resize(colon);
    out += ":" + std::to_string(f.line) + ":" + std::to_string(f.column);
  }
  if (!f.field.empty()) out += " (" + f.field + ")";
  return out;
}

[[nodiscard]] inline std::string title_of_method(const edition& rules, const std::string& id) {
  const method* m = find(rules.methods, id);
  return std::string(m == nullptr ? std::string_view(id) : m->title);
}

[[nodiscard]] inline std::string counted_from(const requirement& q) {
  return ", counted from " + std::string(start_of_time(q.method));
}

/// Another published way beside `shown`: what differs is said.
[[nodiscard]] inline std::string way_text(const edition& rules, const requirement& shown,
                                          const requirement& o) {
  if (o.pressure_psi) {
    const bool other_method = shown.method != o.method;
    return (other_method ? "in a pressure canner, " + o.gauge + " gauge, "
                         : "with a " + o.gauge + " gauge ") +
           pressure_text(*o.pressure_psi, o.gauge) + ", " + time_text(o.time_min);
  }
  if (o.method == "low-temperature") {
    return "by low-temperature pasteurization, " + std::to_string(o.least_f.value_or(0)) + " to " +
           std::to_string(o.most_f.value_or(0)) + " F for " + time_text(o.time_min);
  }
  return title_of_method(rules, o.method) + ", " + time_text(o.time_min);
}

[[nodiscard]] inline std::string title_of_jar(const edition& rules, const std::string& id) {
  const jar_size* jar = find(rules.jars, id);
  return std::string(jar == nullptr ? std::string_view(id) : jar->title);
}

/// One line of a table of numbers.
struct named_value {
  std::string_view name;
  std::string value;
};

[[nodiscard]] inline std::string heading_of_process(const report& r) {
  const bool verified = r.required && r.required->verified;
  return (verified ? "The published process at " : "Not verified, not to be used: numbers at ") +
         altitude_text(r.altitude_ft);
}

/// The process of a report in numbers; both it and its requirement must be there.
[[nodiscard]] inline std::vector<named_value> rows_of_process(const report& r,
                                                              const edition& rules) {
  const requirement& q = *r.required;
  std::vector<named_value> out;
  out.push_back({"food", std::string(r.process->title) + ": " + q.style});
  out.push_back({"jar, pack", title_of_jar(rules, q.jar) + " jars, " + q.pack + " pack"});
  out.push_back({"canner", title_of_method(rules, q.method) +
                               (q.gauge.empty() ? "" : ", " + q.gauge + " gauge")});
  if (q.pressure_psi) out.push_back({"pressure", pressure_text(*q.pressure_psi, q.gauge)});
  if (q.pressure_psi && q.gauge == "dial" && r.dial_high > 0)
    out.push_back({"your dial", dial_text(*q.pressure_psi, r.dial_high)});
  if (q.least_f && q.most_f) {
    out.push_back({"water", "held at " + std::to_string(*q.least_f) + " to " +
                                std::to_string(*q.most_f) + " F, by a thermometer"});
  }
  out.push_back({"time", time_text(q.time_min) + counted_from(q)});
  out.push_back({"headspace", headspace_text(q.headspace_thousandths_in)});
  if (q.vent_min) {
    out.push_back(
        {"vent", std::to_string(*q.vent_min) + " min of steady steam before the vent is closed"});
  }
  for (const requirement& o : r.options) out.push_back({"or", way_text(rules, q, o)});
  std::string acids;
  for (const acid_choice& a : r.process->acids)
    acids += (acids.empty() ? "" : "; or ") + std::string(a.says);
  if (!acids.empty()) out.push_back({"acid", acids + ", into each jar"});
  return out;
}

/// All steps of the process, also those that the plan states: a cook works from this list.
[[nodiscard]] inline std::vector<std::string> steps_of_process(const report& r) {
  const std::string& pack = r.required->pack;
  std::vector<std::string> out;
  for (const condition& c : r.process->conditions) {
    if (!c.packs.empty() && !c.packs.contains(pack) && pack.find(" or ") == std::string::npos)
      continue;
    const bool of_one_pack = !c.packs.empty() && !c.packs.contains(pack);
    out.push_back((of_one_pack ? joined(c.packs) + " pack: " : "") + std::string(c.says));
  }
  for (const finding& f : r.findings) {
    if (f.check != "step-reminder" || f.field == "headspace" || f.field == "vent" ||
        f.field == "prepared")
      continue;
    out.push_back(f.message);
  }
  return out;
}

[[nodiscard]] inline std::string_view meaning_of(verdict v) noexcept {
  switch (v) {
    case verdict::accepted:
      return "ACCEPTED: the plan matches a published process.";
    case verdict::rejected:
      return "REJECTED: the plan goes against the published process. Do not can it this way.";
    case verdict::untested:
      return "UNTESTED: no published process in these rules covers this plan. Do not can it this "
             "way.";
    case verdict::incomplete:
      return "INCOMPLETE: the plan leaves out or leaves open what decides. Do not can before it is "
             "said.";
    case verdict::unreadable:
      break;
  }
  return "UNREADABLE: this is no plan that can be checked.";
}

/// The verdict of a report in a sentence; its first word is the verdict.
[[nodiscard]] inline std::string headline_of(const report& r) {
  const bool by_own_rules =
      r.verdict == verdict::accepted && r.process != nullptr && !r.process->added_by.empty();
  return by_own_rules ? "ACCEPTED by rules of " + std::string(r.process->added_by) +
                            ", which are not the built-in ones."
                      : std::string(meaning_of(r.verdict));
}

/// What makes the mixture of a report what it is; empty where nothing is to be said.
[[nodiscard]] inline std::string mixture_text(const report& r) {
  if (r.mixture_by.empty()) return {};
  const bool vowel =
      std::string_view("aeiou").find(r.mixture_class.empty() ? 'x' : r.mixture_class.front()) !=
      std::string_view::npos;
  return (vowel ? "An " : "A ") + r.mixture_class +
         " mixture, by its most demanding part: " + r.mixture_by + ".";
}

/// Findings that decide come first, the gravest outcome at the top, then warnings and notes, those
/// of one check together; the steps that go with the process stand below its numbers.
[[nodiscard]] inline std::vector<const finding*> shown_findings(const report& r) {
  std::vector<const finding*> out;
  for (const outcome o : {outcome::rejects, outcome::untested, outcome::incomplete}) {
    for (const finding& f : r.findings) {
      if (f.outcome == o) out.push_back(&f);
    }
  }
  for (const level l : {level::warning, level::note}) {
    for (const finding& f : r.findings) {
      if (f.outcome == outcome::none && f.level == l && f.check != "step-reminder")
        out.push_back(&f);
    }
  }
  // What may not be in the jar is told once for a line, also where some of its words are unknown.
  out.erase(std::remove_if(
                out.begin(), out.end(),
                [&](const finding* f) {
                  return f->check == "ingredient-unknown" &&
                         std::any_of(r.findings.begin(), r.findings.end(), [&](const finding& o) {
                           return o.outcome == outcome::rejects && o.field == f->field &&
                                  o.file == f->file && o.line == f->line && o.column == f->column;
                         });
                }),
            out.end());
  const auto rank_of = [](const finding& f) {
    return std::pair(f.outcome == outcome::none, f.outcome == outcome::none
                                                     ? static_cast<int>(f.level)
                                                     : static_cast<int>(f.outcome));
  };
  for (std::size_t i = 0; i < out.size(); ++i) {
    // The next of the same check moves up to it.
    std::size_t to = i + 1;
    for (std::size_t k = i + 1; k < out.size() && rank_of(*out[k]) == rank_of(*out[i]); ++k) {
      if (out[k]->check != out[i]->check) continue;
      std::rotate(out.begin() + static_cast<std::ptrdiff_t>(to),
                  out.begin() + static_cast<std::ptrdiff_t>(k),
                  out.begin() + static_cast<std::ptrdiff_t>(k) + 1);
      ++to;
    }
    i = to - 1;
  }
  return out;
}

}  // namespace jarproof::detail
