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

#include "jarproof/detail/report_words.hpp"
#include "jarproof/detail/words.hpp"
#include "jarproof/edition.hpp"
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

inline void write_process(text_writer& w, const report& r, const edition& rules) {
  if (!r.required || r.process == nullptr) return;
  w.blank();
  w.heading(heading_of_process(r), "1");
  for (const named_value& row : rows_of_process(r, rules)) w.row(row.name, row.value);
  for (const std::string& step : steps_of_process(r)) w.paragraph(step, "  - ", 4);
  w.paragraph(sources_text(r.required->sources), "  Source: ", 10);
}

[[nodiscard]] constexpr std::string_view colour_of(verdict v) noexcept {
  return v == verdict::accepted                               ? "1;32"
         : v == verdict::rejected || v == verdict::unreadable ? "1;31"
                                                              : "1;33";
}

}  // namespace detail

/// One report.
[[nodiscard]] inline std::string text_of(const report& r, const edition& rules,
                                         text_style style = {}) {
  using namespace detail;
  text_writer w(style);
  w.heading(headline_of(r), colour_of(r.verdict));
  w.paragraph(r.title.empty() ? r.source : r.title + " (" + r.source + ")", "  ", 2);
  if (r.verdict == verdict::unreadable) {
    write_mistakes(w, r);
    return w.take();
  }
  if (const std::string mixture = mixture_text(r); !mixture.empty()) w.paragraph(mixture, "  ", 2);
  std::vector<std::string_view> taught;
  for (const finding* f : shown_findings(r)) {
    write_finding(w, r, *f, std::find(taught.begin(), taught.end(), f->check) != taught.end());
    taught.push_back(f->check);
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
