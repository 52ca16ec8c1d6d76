// The report for a person: verdict first, then what was found, then the process in numbers.
//
//   std::string text = jarproof::text_of(report, edition, jarproof::text_style{});
//
// Lines are at most `width` characters, so that it reads on a phone.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/words.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/numbers.hpp"
#include "jarproof/report.hpp"

namespace jarproof {

struct text_style {
  std::size_t width = 60;
  bool colour = false;  ///< ANSI (ECMA-48) bold and colours
};

namespace detail {

class text_writer {
 public:
  explicit text_writer(text_style style) : style_(style) {}

  [[nodiscard]] std::string take() { return std::move(out_); }
  void blank() { out_ += '\n'; }

  /// A paragraph, wrapped; `first` begins its first line and `indent` blanks the others. A word
  /// that is longer than the line stands on a line of its own.
  void paragraph(std::string_view written, std::string_view first = "", std::size_t indent = 0) {
    const std::string shown = printable(written);
    std::string_view text = shown;
    std::string line(first);
    std::size_t used = characters(first);
    bool fresh = true;
    while (!text.empty()) {
      text = trim(text);
      const std::size_t end = text.find_first_of(" \n");
      const std::string_view word = text.substr(0, end);
      if (word.empty()) break;
      if (!fresh && used + 1 + characters(word) > style_.width) {
        out_ += line + "\n";
        line.assign(indent, ' ');
        used = indent;
        fresh = true;
      }
      if (!fresh) {
        line += ' ';
        ++used;
      }
      line += word;
      used += characters(word);
      fresh = false;
      text.remove_prefix(word.size());
    }
    out_ += line + "\n";
  }

  void heading(std::string_view text, std::string_view code) {
    const std::size_t start = out_.size();
    paragraph(text);
    if (!style_.colour) return;
    out_.insert(start, "\x1b[" + std::string(code) + "m");
    out_.insert(out_.size() - 1, "\x1b[0m");
  }

  /// `name` in a column of its own, then its value.
  void row(std::string_view name, std::string_view value) {
    constexpr std::size_t value_column = 13;
    std::string first = "  " + std::string(name);
    first.resize(std::max(value_column, first.size() + 1), ' ');
    paragraph(value, first, value_column);
  }

 private:
  text_style style_;
  std::string out_;
};

/// The first publications of a list; the whole list is in the JSON report.
[[nodiscard]] inline std::string sources_text(const std::vector<std::string>& sources) {
  constexpr std::size_t most = 2;
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

/// A mistake in the text: what the check teaches is said once, above the first.
inline void write_mistakes(text_writer& w, const report& r) {
  if (!r.findings.empty()) w.paragraph(r.findings.front().why, "  ", 2);
  for (const finding& f : r.findings) {
    w.blank();
    w.paragraph(place_text(r, f), "  at ", 5);
    w.paragraph(f.message, "  ", 2);
    w.paragraph(f.fix, "  Do: ", 6);
  }
}

/// `taught` says that the check's lesson stands above already.
inline void write_finding(text_writer& w, const report& r, const finding& f, bool taught) {
  w.blank();
  w.heading(f.check, f.outcome == outcome::none ? "1" : "1;31");
  w.paragraph(place_text(r, f), "  at ", 5);
  w.paragraph(f.message, "  ", 2);
  if (!f.explains.empty()) w.paragraph(f.explains, "  Heat: ", 8);
  if (f.outcome != outcome::none || f.level == level::warning) {
    if (!f.why.empty() && !taught) w.paragraph(f.why, "  Why: ", 7);
  }
  if (!f.fix.empty()) w.paragraph(f.fix, "  Do: ", 6);
  if (f.outcome != outcome::none && !taught) {
    w.paragraph(sources_text(f.sources), "  Source: ", 10);
  }
}

[[nodiscard]] inline std::string title_of_method(const edition& rules, const std::string& id) {
  const method* m = find(rules.methods, id);
  return std::string(m == nullptr ? std::string_view(id) : m->title);
}

[[nodiscard]] inline std::string counted_from(const requirement& q) {
  if (q.pressure_psi) return ", counted from when the pressure is reached";
  if (q.method == "low-temperature") return ", counted from when the water is that warm";
  return q.method == "steam" ? ", counted from when pure steam flows"
                             : ", counted from the full boil";
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

inline void write_process(text_writer& w, const report& r, const edition& rules) {
  if (!r.required || r.process == nullptr) return;
  const requirement& q = *r.required;
  const auto title_of_jar = [&](const std::string& id) {
    const jar_size* jar = find(rules.jars, id);
    return std::string(jar == nullptr ? std::string_view(id) : jar->title);
  };
  w.blank();
  w.heading(
      (q.verified ? "The published process at " : "Not verified, not to be used: numbers at ") +
          altitude_text(r.altitude_ft),
      "1");
  w.row("food", std::string(r.process->title) + ": " + q.style);
  w.row("jar, pack", title_of_jar(q.jar) + " jars, " + q.pack + " pack");
  w.row("canner",
        title_of_method(rules, q.method) + (q.gauge.empty() ? "" : ", " + q.gauge + " gauge"));
  if (q.pressure_psi) w.row("pressure", pressure_text(*q.pressure_psi, q.gauge));
  if (q.least_f && q.most_f) {
    w.row("water", "held at " + std::to_string(*q.least_f) + " to " + std::to_string(*q.most_f) +
                       " F, by a thermometer");
  }
  w.row("time", time_text(q.time_min) + counted_from(q));
  w.row("headspace", headspace_text(q.headspace_thousandths_in));
  if (q.vent_min)
    w.row("vent", std::to_string(*q.vent_min) + " min of steady steam before the vent is closed");
  for (const requirement& o : r.options) w.row("or", way_text(rules, q, o));
  std::string acids;
  for (const acid_choice& a : r.process->acids)
    acids += (acids.empty() ? "" : "; or ") + std::string(a.says);
  if (!acids.empty()) w.row("acid", acids + ", into each jar");
  // All steps, also those that the plan states: this list is what a cook works from.
  for (const condition& c : r.process->conditions) {
    if (!c.packs.empty() && !c.packs.contains(q.pack) && q.pack.find(" or ") == std::string::npos)
      continue;
    const bool of_one_pack = !c.packs.empty() && !c.packs.contains(q.pack);
    w.paragraph((of_one_pack ? joined(c.packs) + " pack: " : "") + std::string(c.says), "  - ", 4);
  }
  for (const finding& f : r.findings) {
    if (f.check != "step-reminder" || f.field == "headspace" || f.field == "vent" ||
        f.field == "prepared")
      continue;
    w.paragraph(f.message, "  - ", 4);
  }
  w.paragraph(sources_text(q.sources), "  Source: ", 10);
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

[[nodiscard]] constexpr std::string_view colour_of(verdict v) noexcept {
  return v == verdict::accepted                               ? "1;32"
         : v == verdict::rejected || v == verdict::unreadable ? "1;31"
                                                              : "1;33";
}

/// What stands at the top: whose tables the verdict rests on is said with it.
[[nodiscard]] inline std::string verdict_text(const report& r) {
  const bool by_own_rules =
      r.verdict == verdict::accepted && r.process != nullptr && !r.process->added_by.empty();
  return by_own_rules ? "ACCEPTED by rules of " + std::string(r.process->added_by) +
                            ", which are not the built-in ones."
                      : std::string(meaning_of(r.verdict));
}

}  // namespace detail

/// One report. Findings that decide come first, the gravest outcome at the top; the steps that go
/// with the process stand below its numbers.
[[nodiscard]] inline std::string text_of(const report& r, const edition& rules,
                                         text_style style = {}) {
  using namespace detail;
  text_writer w(style);
  w.heading(verdict_text(r), colour_of(r.verdict));
  w.paragraph(r.title.empty() ? r.source : r.title + " (" + r.source + ")", "  ", 2);
  if (r.verdict == verdict::unreadable) {
    write_mistakes(w, r);
    return w.take();
  }
  if (!r.mixture_by.empty()) {
    w.paragraph(
        "A " + r.mixture_class + " mixture, by its most demanding part: " + r.mixture_by + ".",
        "  ", 2);
  }
  std::vector<std::string_view> taught;
  const auto write = [&](const finding& f) {
    write_finding(w, r, f, std::find(taught.begin(), taught.end(), f.check) != taught.end());
    taught.push_back(f.check);
  };
  for (const outcome o : {outcome::rejects, outcome::untested, outcome::incomplete}) {
    for (const finding& f : r.findings) {
      if (f.outcome == o) write(f);
    }
  }
  for (const level l : {level::warning, level::note}) {
    for (const finding& f : r.findings) {
      if (f.outcome == outcome::none && f.level == l && f.check != "step-reminder") write(f);
    }
  }
  write_process(w, r, rules);
  return w.take();
}

/// What every run ends with: the edition, and what a check cannot see.
[[nodiscard]] inline std::string caution_text(const edition& rules, text_style style = {}) {
  detail::text_writer w(style);
  w.paragraph(rules.caution);
  w.paragraph("Rules: " + std::string(rules.name) + ", " + std::string(rules.version) + ".");
  return w.take();
}

}  // namespace jarproof
