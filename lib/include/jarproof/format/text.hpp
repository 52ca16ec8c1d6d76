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

[[nodiscard]] inline bool refused(const report& r) noexcept {
  return r.verdict == verdict::rejected || r.verdict == verdict::untested;
}

/// The first sentences of a lesson, as many as fit into two or three lines of a phone.
[[nodiscard]] inline std::string_view first_sentences(std::string_view text) {
  constexpr std::size_t most = 150;
  std::size_t end = text.find(". ");
  while (end != std::string_view::npos) {
    const std::size_t next = text.find(". ", end + 1);
    if (std::min(next, text.size()) >= most) break;
    end = next;
  }
  return end == std::string_view::npos ? text : text.substr(0, end + 1);
}

/// Writes findings, those of one check below one heading: its lesson, what to do and the source are
/// said once. A brief text has the first sentences of a lesson; beside what refuses a plan, what it
/// leaves unsaid needs none.
class finding_writer {
 public:
  finding_writer(text_writer& w, const report& r, bool brief) : w_(w), r_(r), brief_(brief) {}

  void write(const finding& f) {
    const bool decides = f.outcome != outcome::none;
    const bool again = last_ != nullptr && last_->check == f.check;
    if (!again) {
      end();
      w_.blank();
      w_.heading(f.check, decides ? "1;31" : "1");
    }
    // What to do stands behind the last of those that it is said of.
    if (again && last_->fix != f.fix) write_fix();
    const bool here = again && place_text(r_, f) == place_text(r_, *last_);
    if (!here) w_.paragraph(place_text(r_, f), "  at ", 5);
    w_.paragraph(again ? what_is_new(f.message, last_->message, here) : f.message, "  ", 2);
    if (!f.explains.empty()) w_.paragraph(f.explains, "  Heat: ", 8);
    const bool minor = brief_ && refused(r_) && f.outcome == outcome::incomplete;
    const bool known = std::find(taught_.begin(), taught_.end(), f.check) != taught_.end();
    if (!known && !minor && (decides || f.level == level::warning) && !f.why.empty())
      w_.paragraph(brief_ ? first_sentences(f.why) : f.why, "  Why: ", 7);
    if (!again)
      source_ = known ? "" : decides && !minor ? sources_text(f.sources, brief_ ? 1 : 2) : "";
    if (!known) taught_.push_back(f.check);
    last_ = &f;
  }
  /// Behind the last finding.
  void end() {
    if (last_ == nullptr) return;
    write_fix();
    if (!source_.empty() && !(brief_ && source_ == said_)) {
      w_.paragraph(source_, "  Source: ", 10);
      said_ = source_;
    }
    last_ = nullptr;
  }

 private:
  text_writer& w_;
  const report& r_;
  bool brief_;
  const finding* last_ = nullptr;
  std::vector<std::string_view> taught_;
  std::string source_;
  std::string said_;

  /// Of two findings of one check the second says only what the first has not said: its first
  /// sentence where the rest is the same, the rest where both are about one place.
  [[nodiscard]] static std::string_view what_is_new(std::string_view text, std::string_view above,
                                                    bool one_place) {
    const std::size_t end = text.find(". ");
    const std::size_t other = above.find(". ");
    if (end == std::string_view::npos || other == std::string_view::npos) return text;
    const bool same_start = text.substr(0, end) == above.substr(0, other);
    const bool same_rest = text.substr(end) == above.substr(other);
    if (same_start && !same_rest && one_place) return text.substr(end + 2);
    return same_rest && !same_start ? text.substr(0, end + 1) : text;
  }
  void write_fix() {
    // A refused plan is mended at what refuses it.
    if (brief_ && refused(r_) &&
        (last_->outcome == outcome::incomplete || last_->level == level::note))
      return;
    if (!last_->fix.empty()) w_.paragraph(last_->fix, "  Do: ", 6);
  }
};

/// True where a plan is refused for what goes into the jar.
[[nodiscard]] inline bool refused_for_food(const report& r) {
  return refused(r) && std::any_of(r.findings.begin(), r.findings.end(), [](const finding& f) {
           return (f.outcome == outcome::rejects || f.outcome == outcome::untested) &&
                  (f.field == "ingredients" || f.field == "steps");
         });
}

/// The numbers and the steps. A brief text of a plan that is refused for its food has no steps:
/// they hold for the dish as `ways` changes it.
inline void write_process(text_writer& w, const report& r, const edition& rules, bool brief) {
  if (!r.required || r.process == nullptr) return;
  const bool numbers_alone = brief && refused_for_food(r);
  w.blank();
  w.heading(heading_of_process(r), "1");
  for (const named_value& row : rows_of_process(r, rules)) w.row(row.name, row.value);
  if (!numbers_alone) {
    for (const std::string& step : steps_of_process(r)) w.paragraph(step, "  - ", 4);
  }
  if (!brief) w.paragraph(sources_text(r.required->sources), "  Source: ", 10);
}

[[nodiscard]] constexpr std::string_view colour_of(verdict v) noexcept {
  return v == verdict::accepted                               ? "1;32"
         : v == verdict::rejected || v == verdict::unreadable ? "1;31"
                                                              : "1;33";
}

/// The verdict and the findings.
inline void write_findings(text_writer& w, const report& r, bool brief) {
  w.heading(headline_of(r), colour_of(r.verdict));
  w.paragraph(r.title.empty() ? r.source : r.title + " (" + r.source + ")", "  ", 2);
  if (const std::string mixture = mixture_text(r); !mixture.empty()) w.paragraph(mixture, "  ", 2);
  finding_writer findings(w, r, brief);
  for (const finding* f : shown_findings(r)) findings.write(*f);
  findings.end();
}

/// True where the findings would fill more than a few screens of a phone.
[[nodiscard]] inline bool is_long(const report& r, text_style style) {
  constexpr std::ptrdiff_t most = 60;
  text_writer w(style);
  write_findings(w, r, false);
  const std::string text = w.take();
  return std::count(text.begin(), text.end(), '\n') > most;
}

}  // namespace detail

/// One report. What would be longer than a few screens of a phone is written in a short form, which
/// has every finding, but of each lesson only the beginning.
[[nodiscard]] inline std::string text_of(const report& r, const edition& rules,
                                         text_style style = {}) {
  using namespace detail;
  text_writer w(style);
  if (r.verdict == verdict::unreadable) {
    w.heading(headline_of(r), colour_of(r.verdict));
    w.paragraph(r.title.empty() ? r.source : r.title + " (" + r.source + ")", "  ", 2);
    write_mistakes(w, r);
    return w.take();
  }
  const bool brief = r.verdict != verdict::accepted && is_long(r, style);
  write_findings(w, r, brief);
  write_process(w, r, rules, brief);
  if (brief) {
    w.blank();
    w.paragraph("This is the short form. More of each: `jarproof why CHECK`.");
  }
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
