// What every page has: escaping, elements that close, the frame with its style sheet, shapes of a
// verdict, lists, tables of numbers, the caution.
//
//   jarproof::html_writer w;
//   w.element("h1", "Green beans & friends");     // escapes
//   std::string page = jarproof::html_page("Green beans", w.take(), edition);
//
// A page is one file: no outside resource, no script. Nothing is read from it but the text given.
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
#include "jarproof/format/html_style.hpp"
#include "jarproof/report.hpp"

namespace jarproof {

/// Text for an element or a quoted attribute. What HTML may not hold becomes U+FFFD: control
/// characters and bytes that are no UTF-8.
[[nodiscard]] inline std::string html_text(std::string_view text) {
  std::string out;
  for (const char c : detail::printable(text)) {
    switch (c) {
      case '&':
        out += "&amp;";
        break;
      case '<':
        out += "&lt;";
        break;
      case '>':
        out += "&gt;";
        break;
      case '"':
        out += "&quot;";
        break;
      case '\'':
        out += "&#39;";
        break;
      default:
        out += c;
    }
  }
  return out;
}

/// Writes elements; what is open is closed in order. Tags and attributes come from code alone,
/// texts from anywhere.
class html_writer {
 public:
  /// `attributes` as they stand in the tag: `class="small"`.
  void open(std::string_view tag, std::string_view attributes = "") {
    out_ += "<" + std::string(tag);
    if (!attributes.empty()) out_ += " " + std::string(attributes);
    out_ += '>';
    open_.emplace_back(tag);
  }
  void close() {
    if (open_.empty()) return;
    out_ += "</" + open_.back() + ">";
    if (breaks_after(open_.back())) out_ += '\n';
    open_.pop_back();
  }
  void text(std::string_view words) { out_ += html_text(words); }
  /// The same for a sentence of the rules, in which backticks enclose what to write: `dial`.
  void sentence(std::string_view words) {
    for (std::size_t at = words.find('`'); at != std::string_view::npos; at = words.find('`')) {
      const std::size_t end = words.find('`', at + 1);
      if (end == std::string_view::npos) break;
      text(words.substr(0, at));
      element("code", words.substr(at + 1, end - at - 1));
      words.remove_prefix(end + 1);
    }
    text(words);
  }
  /// Finished markup, such as a drawing.
  void raw(std::string_view markup) { out_ += markup; }
  void element(std::string_view tag, std::string_view words, std::string_view attributes = "") {
    open(tag, attributes);
    text(words);
    close();
  }
  /// A paragraph of a sentence of the rules.
  void paragraph(std::string_view words, std::string_view attributes = "") {
    open("p", attributes);
    sentence(words);
    close();
  }
  /// All that was written, with everything closed.
  [[nodiscard]] std::string take() {
    while (!open_.empty()) close();
    return std::move(out_);
  }

 private:
  [[nodiscard]] static bool breaks_after(std::string_view tag) noexcept {
    return tag != "b" && tag != "strong" && tag != "span" && tag != "code" && tag != "a";
  }

  std::string out_;
  std::vector<std::string> open_;
};

/// A heading of level 1 through 6.
[[nodiscard]] inline std::string heading_tag(int level) { return "h" + std::to_string(level); }

/// A sign that differs in shape, so that it is known without its colour: circle with a tick,
/// octagon with a bar, square with a question mark, triangle with dots; a rhombus for anything
/// else. It stands beside its word and is hidden from those who hear the page.
[[nodiscard]] inline std::string shape_of(std::string_view name) {
  std::string out = R"(<svg class="shape" viewBox="0 0 32 32" aria-hidden="true"><title>)" +
                    html_text(name) + "</title>";
  if (name == "accepted") {
    out += R"(<circle class="on" cx="16" cy="16" r="15"/><path class="off" d="M9 17l5 5 9-12"/>)";
  } else if (name == "rejected" || name == "rejects") {
    out += R"(<path class="on" d="M10 1h12l9 9v12l-9 9h-12l-9-9v-12z"/>)"
           R"(<path class="off" d="M9 16h14"/>)";
  } else if (name == "untested") {
    out += R"(<path class="on" d="M2 2h28v28h-28z"/>)"
           R"(<path class="off" d="M11 12c0-7 10-7 10-1 0 4-5 4-5 8"/>)"
           R"(<circle class="dot" cx="16" cy="25" r="2"/>)";
  } else if (name == "incomplete") {
    out +=
        R"(<path class="on" d="M16 1l15.5 29h-31z"/><circle class="dot" cx="9.5" cy="24" r="2"/>)"
        R"(<circle class="dot" cx="16" cy="24" r="2"/><circle class="dot" cx="22.5" cy="24" r="2"/>)";
  } else {
    out += R"(<path class="on" d="M16 1l15 15-15 15-15-15z"/><path class="off" d="M16 9v9"/>)"
           R"(<circle class="dot" cx="16" cy="23" r="2"/>)";
  }
  return out + "</svg>";
}

namespace detail {

[[nodiscard]] inline std::string capital_first(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
    text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

/// `pressure-too-low` as `Pressure too low`.
[[nodiscard]] inline std::string words_of_id(std::string_view id) {
  std::string out(id);
  for (char& c : out) c = c == '-' ? ' ' : c;
  return capital_first(std::move(out));
}

/// A part of the page that stands in two columns on paper.
inline constexpr std::string_view flow_of_print = "class=\"flow\"";

/// The label on top: sign, verdict, what it means.
inline void write_label(html_writer& w, std::string_view name, std::string_view sentence) {
  const std::size_t end = sentence.find_first_of(": ");
  std::string rest(trim(end == std::string_view::npos ? "" : sentence.substr(end + 1)));
  if (end != std::string_view::npos && sentence[end] == ':') rest = capital_first(rest);
  w.open("p", "class=\"label " + std::string(name) + "\"");
  w.raw(shape_of(name));
  w.open("span");
  w.element("b", sentence.substr(0, end));
  w.raw(" ");
  w.text(rest);
  w.close();
  w.close();
}

/// What a finding does, or else how it is shown.
[[nodiscard]] inline std::string_view weight_of_finding(const finding& f) noexcept {
  return f.outcome != outcome::none ? name_of(f.outcome) : name_of(f.level);
}

/// Publications of a page, each named once: texts refer to them by number.
class source_notes {
 public:
  /// `Source 1, 3`, and keeps what is new; at most two, all are in the JSON report.
  [[nodiscard]] std::string refer(const std::vector<std::string>& sources) {
    std::string out;
    for (std::size_t i = 0; i < sources.size() && i < 2; ++i) {
      auto at = std::find(named_.begin(), named_.end(), sources[i]);
      if (at == named_.end()) at = named_.insert(at, sources[i]);
      out += (i == 0 ? "Source " : ", ") + std::to_string(at - named_.begin() + 1);
    }
    return out;
  }
  /// The list of them, with a heading.
  void write(html_writer& w, int heading) const {
    if (named_.empty()) return;
    w.element(heading_tag(heading), "Sources");
    w.open("ol", "class=\"sources\"");
    for (const std::string& source : named_) w.element("li", source);
    w.close();
  }

 private:
  std::vector<std::string> named_;
};

/// One entry of a list of findings; `taught` says that the check's lesson stands above already.
/// `when` stands in front of the place, such as a minute of a run; may be empty.
inline void write_finding(html_writer& w, const report& r, const finding& f, bool taught,
                          int heading, source_notes& sources, std::string_view when = "") {
  const std::string weight(weight_of_finding(f));
  const bool decides = f.outcome != outcome::none;
  w.open("li", "class=\"is-" + weight + "\"");
  w.open(heading_tag(heading));
  w.open("span", "class=\"tag " + weight + "\"");
  w.raw(shape_of(weight) + " ");
  w.text(weight);
  w.close();
  w.text(" " + words_of_id(f.check));
  w.close();
  w.paragraph(f.message);
  if (!f.explains.empty()) w.paragraph("Heat: " + f.explains);
  if (!f.fix.empty()) w.paragraph("Do: " + f.fix, decides ? "class=\"do\"" : "");
  if ((decides || f.level == level::warning) && !f.why.empty() && !taught)
    w.paragraph("Why: " + f.why, "class=\"why\"");
  w.open("p", "class=\"small\"");
  if (!when.empty()) w.text(std::string(when) + ", ");
  w.text("at " + place_text(r, f) + ", check ");
  w.element("code", f.check);
  if (decides && !taught && !f.sources.empty()) w.text(". " + sources.refer(f.sources));
  w.close();
  w.close();
}

/// A table of names and values. With `large`, what a cook reads from afar is set large: pressure,
/// time, headspace and vent.
inline void write_numbers(html_writer& w, const std::vector<named_value>& rows,
                          std::string_view caption, bool large = false) {
  if (rows.empty()) return;
  w.open("table");
  if (!caption.empty()) w.element("caption", caption);
  w.open("tbody");
  for (const named_value& row : rows) {
    w.open("tr");
    w.element("th", row.name, "scope=\"row\"");
    w.open("td");
    std::string_view value = row.value;
    if (large && (row.name == "pressure" || row.name == "time" || row.name == "headspace" ||
                  row.name == "vent" || row.name == "water")) {
      const std::size_t end = row.name == "vent" ? value.find(" of") : value.find(", ");
      w.element("strong", value.substr(0, end));
      value.remove_prefix(std::min(end, value.size()));
      if (!value.empty() && value.front() == ',') value.remove_prefix(1);
      if (!value.empty()) w.raw(" ");
    }
    w.text(trim(value));
    w.close();
    w.close();
  }
  w.close();
  w.close();
}

/// A list of sentences; with `boxes`, each has a box to tick on paper.
inline void write_list(html_writer& w, const std::vector<std::string>& items, bool boxes = false) {
  if (items.empty()) return;
  w.open("ul", boxes ? "class=\"steps\"" : "");
  for (const std::string& item : items) {
    w.open("li");
    w.sentence(item);
    w.close();
  }
  w.close();
}

}  // namespace detail

/// A whole page: `body` is finished markup with one `h1`. Ends with what a check cannot see and the
/// edition.
[[nodiscard]] inline std::string html_page(std::string_view title, std::string_view body,
                                           const edition& rules) {
  std::string out =
      "<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
      "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
      // Should markup ever slip through, a browser still runs and fetches nothing.
      "<meta http-equiv=\"Content-Security-Policy\" "
      "content=\"default-src 'none'; style-src 'unsafe-inline'\">\n"
      "<title>";
  out += html_text(title);
  out += "</title>\n<style>";
  out += html_style;
  out += "</style>\n</head>\n<body>\n<main>\n";
  out += body;
  out += "</main>\n<footer>\n<p>";
  out += html_text(rules.caution) + "</p>\n<p>Rules: " + html_text(rules.name) + ", " +
         html_text(rules.version) + ".</p>\n</footer>\n</body>\n</html>\n";
  return out;
}

}  // namespace jarproof
