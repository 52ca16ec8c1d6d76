// The report as JSON, in the layout of docs/report-json.md.
//
//   std::string text = jarproof::json_of(reports, edition);          // one object, indented
//   std::string line = jarproof::json_line_of(report);               // one element of `plans`
// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/words.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/numbers.hpp"
#include "jarproof/report.hpp"
#include "jarproof/version.hpp"

namespace jarproof {

namespace detail {

/// Writes one JSON text; keys stand in the order in which they are written.
class json_writer {
 public:
  /// `indented` writes a line for each member down to `depth` levels.
  explicit json_writer(int depth = 0) : depth_(depth) {}

  [[nodiscard]] std::string take() { return std::move(out_); }

  void begin(char bracket) {
    item();
    out_ += bracket;
    first_.push_back(true);
  }
  void end(char bracket) {
    const bool empty = first_.back();
    const bool on_one_line = static_cast<int>(first_.size()) > depth_;
    first_.pop_back();
    if (!empty && !on_one_line) line();
    out_ += bracket;
  }
  void key(std::string_view name) {
    item();
    string(name);
    out_ += ": ";
    after_key_ = true;
  }
  void text(std::string_view value) {
    item();
    string(value);
  }
  /// A number, `true`, `false` or `null`, as it stands.
  void raw(std::string_view value) {
    item();
    out_ += value;
  }
  void number(std::int64_t value) { raw(std::to_string(value)); }

  void member(std::string_view name, std::string_view value) {
    key(name);
    text(value);
  }
  void member(std::string_view name, std::int64_t value) {
    key(name);
    number(value);
  }
  void texts(std::string_view name, const std::vector<std::string>& values) {
    key(name);
    begin('[');
    for (const std::string& v : values) text(v);
    end(']');
  }

 private:
  std::string out_;
  std::vector<bool> first_;
  int depth_;
  bool after_key_ = false;

  void item() {
    if (after_key_) {
      after_key_ = false;
      return;
    }
    if (first_.empty()) return;
    if (!first_.back()) out_ += static_cast<int>(first_.size()) > depth_ ? ", " : ",";
    first_.back() = false;
    line();
  }
  void line() {
    if (static_cast<int>(first_.size()) > depth_ || depth_ == 0) return;
    out_ += '\n';
    out_.append(first_.size() * 2, ' ');
  }
  void string(std::string_view value) {
    constexpr std::string_view hex = "0123456789abcdef";
    out_ += '"';
    const std::string valid = valid_utf8(value);
    for (const char c : valid) {
      const auto byte = static_cast<unsigned char>(c);
      if (c == '"' || c == '\\') {
        out_ += '\\';
        out_ += c;
      } else if (c == '\n') {
        out_ += "\\n";
      } else if (byte < 0x20) {
        out_ += "\\u00";
        out_ += hex[byte >> 4];
        out_ += hex[byte & 15];
      } else {
        out_ += c;
      }
    }
    out_ += '"';
  }
};

inline void write_requirement(json_writer& w, const requirement& r) {
  w.begin('{');
  w.member("method", r.method);
  if (!r.gauge.empty()) w.member("gauge", r.gauge);
  if (r.pressure_psi) w.member("pressure_psi", *r.pressure_psi);
  w.member("time_min", r.time_min);
  w.member("pack", r.pack);
  w.member("jar", r.jar);
  w.member("style", r.style);
  w.key("headspace_in");
  w.raw(decimal_of_thousandths(r.headspace_thousandths_in));
  if (r.vent_min) w.member("vent_min", *r.vent_min);
  if (r.least_f) w.member("temperature_least_F", *r.least_f);
  if (r.most_f) w.member("temperature_most_F", *r.most_f);
  w.key("verified");
  w.raw(r.verified ? "true" : "false");
  w.texts("sources", r.sources);
  w.end('}');
}

inline void write_finding(json_writer& w, const finding& f) {
  w.begin('{');
  w.member("check", f.check);
  w.member("level", name_of(f.level));
  w.member("outcome", name_of(f.outcome));
  w.member("field", f.field);
  if (!f.file.empty()) w.member("file", f.file);
  if (f.line > 0) {
    w.member("line", f.line);
    w.member("column", f.column);
  }
  w.member("found", f.found);
  w.member("required", f.required);
  w.member("message", f.message);
  w.member("why", f.why);
  if (!f.explains.empty()) w.member("explains", f.explains);
  w.member("fix", f.fix);
  w.texts("sources", f.sources);
  w.end('}');
}

inline void write_report(json_writer& w, const report& r) {
  w.begin('{');
  w.member("source", r.source);
  if (r.verdict == verdict::unreadable) {
    w.member("verdict", name_of(r.verdict));
  } else {
    w.member("title", r.title);
    w.member("verdict", name_of(r.verdict));
    w.key("process");
    r.process == nullptr ? w.raw("null") : w.text(r.process->id);
    w.key("required");
    if (r.required) {
      write_requirement(w, *r.required);
    } else {
      w.raw("null");
    }
    w.key("options");
    w.begin('[');
    for (const requirement& option : r.options) write_requirement(w, option);
    w.end(']');
    if (!r.mixture_class.empty()) w.member("mixture_class", r.mixture_class);
    if (!r.recipe_source.empty()) w.member("recipe", r.recipe_source);
    w.key("ingredients");
    w.begin('[');
    for (const ingredient_line& line : r.ingredients) {
      w.begin('{');
      if (line.line > 0) w.member("line", line.line);
      w.member("text", line.text);
      w.key("ingredient");
      line.ingredient.empty() ? w.raw("null") : w.text(line.ingredient);
      w.key("amount");
      line.amount.empty() ? w.raw("null") : w.text(line.amount);
      w.key("class");
      if (line.ingredient.empty()) {
        w.raw("null");
      } else {
        w.text(line.kind);
      }
      w.texts("traits", line.traits);
      w.end('}');
    }
    w.end(']');
  }
  w.key("findings");
  w.begin('[');
  for (const finding& f : r.findings) write_finding(w, f);
  w.end(']');
  w.end('}');
}

}  // namespace detail

/// One report on one line, without a line end: an element of `plans`.
[[nodiscard]] inline std::string json_line_of(const report& r) {
  detail::json_writer w;
  detail::write_report(w, r);
  return w.take();
}

namespace detail {

/// Opens the object that a command writes: its layout, the library and the rules behind it.
inline void begin_document(json_writer& w, std::string_view format, const edition& rules) {
  w.begin('{');
  w.member("format", format);
  w.member("library", library_version);
  w.key("edition");
  w.begin('{');
  w.member("name", rules.name);
  w.member("version", rules.version);
  w.end('}');
}

/// The object of one run; `more` writes what stands behind its other members.
template <class More>
[[nodiscard]] std::string run_text(const std::vector<report>& reports, const edition& rules,
                                   More&& more) {
  json_writer w(5);
  begin_document(w, report_format, rules);
  w.key("plans");
  w.begin('[');
  for (const report& r : reports) write_report(w, r);
  w.end(']');
  w.key("summary");
  w.begin('{');
  for (const verdict v : {verdict::accepted, verdict::rejected, verdict::untested,
                          verdict::incomplete, verdict::unreadable}) {
    std::int64_t count = 0;
    for (const report& r : reports) count += r.verdict == v ? 1 : 0;
    w.member(name_of(v), count);
  }
  w.end('}');
  more(w);
  w.end('}');
  return w.take() + "\n";
}

}  // namespace detail

/// All reports of one run. Ends with a line end.
[[nodiscard]] inline std::string json_of(const std::vector<report>& reports, const edition& rules) {
  return detail::run_text(reports, rules, [](detail::json_writer&) {});
}

}  // namespace jarproof
