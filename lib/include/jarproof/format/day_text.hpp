// The plan of a canning day for a person, as wide as a phone.
//
//   std::string text = jarproof::day_text_of(day, edition, jarproof::text_style{});
// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "jarproof/day.hpp"
#include "jarproof/detail/day_lines.hpp"
#include "jarproof/format/text.hpp"

namespace jarproof {

namespace detail {

class day_writer {
 public:
  day_writer(const day_plan& d, const edition& rules, text_style style)
      : d_(d), rules_(rules), style_(style), w_(style) {}

  [[nodiscard]] std::string take() {
    for (const day_batch& b : d_.batches) {
      if (b.judged.verdict != verdict::accepted) write_refused(b);
    }
    for (const day_batch& b : d_.batches) {
      if (b.judged.verdict == verdict::accepted) write_jars(b);
    }
    if (!d_.loads.empty()) write_loads();
    for (const std::string& text : d_.unsaid) w_.paragraph(text, "  Note: ", 8);
    for (const day_batch& b : d_.batches) {
      if (b.judged.verdict == verdict::accepted) write_card(b);
    }
    return out_ + w_.take();
  }

 private:
  const day_plan& d_;
  const edition& rules_;
  text_style style_;
  text_writer w_;
  std::string out_;
  bool begun_ = false;

  void write_refused(const day_batch& b) {
    out_ += text_of(b.judged, rules_, style_);
    text_writer w(style_);
    w.blank();
    w.paragraph(no_card_text);
    w.blank();
    out_ += w.take();
  }

  /// A blank line above all but the first.
  void section() {
    if (begun_) w_.blank();
    begun_ = true;
  }

  void title(std::string_view what, const day_batch& b) {
    w_.heading(
        std::string(what) + (d_.batches.size() > 1 || !b.judged.title.empty() ? ": " + b.name : ""),
        "1");
  }

  void write_jars(const day_batch& b) {
    section();
    w_.heading(headline_of(b.judged), colour_of(verdict::accepted));
    w_.paragraph(
        b.judged.title.empty() ? b.judged.source : b.judged.title + " (" + b.judged.source + ")",
        "  ", 2);
    for (const named_value& row : rows_of_jars(b)) w_.row(row.name, row.value);
    for (const std::string& text : b.unsaid) w_.paragraph(text, "  Not said: ", 12);
    finding_writer findings(w_, b.judged, false);
    for (const finding& f : b.judged.findings) {
      if (f.level == level::warning) findings.write(f);
    }
    for (const finding& f : b.findings) findings.write(f);
    findings.end();
  }

  void write_loads() {
    section();
    w_.heading(heading_of_loads(d_), "1");
    for (const std::string& text : d_.apart) w_.paragraph(text, "  ", 2);
    for (const named_value& row : rows_of_day(d_)) w_.row(row.name, row.value);
    for (const day_load& l : d_.loads) {
      w_.blank();
      w_.heading(heading_of_load(d_, l), "1");
      for (const day_step& s : l.remarks) w_.paragraph(s.says, "  ", 2);
      for (const day_stage& s : l.stages) {
        std::string minutes = std::to_string(s.to_min - s.from_min) + " min";
        if (s.least_min != s.to_min - s.from_min)
          minutes = std::to_string(s.least_min) + " to " + minutes;
        w_.paragraph(s.what + (s.id == "process" ? "" : ", " + minutes),
                     "  " + clock_text(d_, s.from_min) + "  ", 9);
      }
      if (!l.stages.empty()) {
        const day_stage& last = l.stages.back();
        if (last.id != "next-load")
          w_.paragraph("lift the jars out", "  " + clock_text(d_, last.to_min) + "  ", 9);
      }
    }
  }

  void steps(const std::vector<day_step>& all, bool numbered) {
    int number = 0;
    for (const day_step& s : all) {
      const std::string head = numbered ? std::to_string(++number) + "." : std::string("-");
      std::string first = "  " + head;
      first.resize(numbered ? 6 : 4, ' ');
      w_.paragraph(s.says, first, first.size());
      for (const std::string& part : s.parts) w_.paragraph(part, "      - ", 8);
    }
  }

  void write_card(const day_batch& b) {
    if (fills_no_jar(b)) return;
    section();
    title("Step card", b);
    steps(b.steps, true);
    w_.blank();
    w_.heading("Mind", "1");
    steps(b.cautions, false);
    w_.blank();
    w_.heading("Label", "1");
    for (const day_label_line& l : b.label) w_.row(l.name, l.value);
    w_.blank();
    w_.heading(heading_after(rules_), "1");
    steps(b.check_after, false);
    w_.blank();
    w_.heading("When a jar is opened", "1");
    steps(b.opening, false);
    std::vector<std::string> sources;
    if (b.judged.required) sources = b.judged.required->sources;
    if (!sources.empty()) w_.paragraph(sources_text(sources), "  Source: ", 10);
  }
};

}  // namespace detail

/// The whole day: what is not accepted first, then jars, loads and clock, then the step cards.
[[nodiscard]] inline std::string day_text_of(const day_plan& day, const edition& rules,
                                             text_style style = {}) {
  return detail::day_writer(day, rules, style).take();
}

}  // namespace jarproof
