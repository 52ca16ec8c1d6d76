// The reports of a check as one page: `jarproof check --format html`.
//
//   std::string page = jarproof::html_of({jarproof::check(plan, edition)}, edition);
//
// The words are those of the text report; pictures are added where they teach.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/report_words.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/drawings.hpp"
#include "jarproof/format/html.hpp"
#include "jarproof/format/html_shelf.hpp"
#include "jarproof/report.hpp"
#include "jarproof/shelf_today.hpp"

namespace jarproof {

namespace detail {

/// Altitude bands and jar of a process, each with its words; `id` begins the ids of both.
inline void write_pictures(html_writer& w, const std::optional<band_picture>& bands,
                           const std::optional<jar_picture>& jar, std::string_view id) {
  if (!bands && !jar) return;
  w.open("div", "class=\"pictures\"");
  if (bands) {
    w.open("figure");
    w.raw(bands_svg(std::string(id) + "-bands", *bands));
    w.element("figcaption", "This kitchen, at " + altitude_text(bands->altitude_ft) +
                                ", lies in the dark bands.");
    w.open("ul", "class=\"key\"");
    for (const std::string& row : bands_in_words(*bands)) w.element("li", row);
    w.close();
    w.close();
  }
  if (jar) {
    w.open("figure");
    w.raw(jar_svg(std::string(id) + "-jar", *jar));
    w.element("figcaption", jar_in_words(*jar) +
                                " Drawn as a straight jar of that volume; yours is shaped "
                                "differently, so measure from its rim.");
    w.close();
  }
  w.close();
}

/// Mistakes in the text: what the check teaches is said once, above the first.
inline void write_mistakes(html_writer& w, const report& r, int heading) {
  if (r.findings.empty()) return;
  w.paragraph(r.findings.front().why);
  w.open("ol", "class=\"findings\"");
  for (const finding& f : r.findings) {
    w.open("li", "class=\"is-incomplete\"");
    w.element(heading_tag(heading), "at " + place_text(r, f));
    w.paragraph(f.message);
    if (!f.fix.empty()) w.paragraph("Do: " + f.fix, "class=\"do\"");
    w.close();
  }
  w.close();
}

inline void write_findings(html_writer& w, const report& r, int heading, source_notes& sources) {
  const std::vector<const finding*> shown = shown_findings(r);
  if (shown.empty()) return;
  const bool decides = shown.front()->outcome != outcome::none;
  w.element(heading_tag(heading), decides ? "What was found" : "Good to know");
  w.open("ol", "class=\"findings\"");
  std::vector<std::string_view> taught;
  for (const finding* f : shown) {
    const bool known = std::find(taught.begin(), taught.end(), f->check) != taught.end();
    write_finding(w, r, *f, known, heading + 1, sources);
    taught.push_back(f->check);
  }
  w.close();
}

inline void write_process(html_writer& w, const report& r, const edition& rules, int heading,
                          std::string_view id, source_notes& sources) {
  if (!r.required || r.process == nullptr) return;
  const bool accepted = r.verdict == verdict::accepted;
  w.element(heading_tag(heading), heading_of_process(r));
  write_numbers(w, rows_of_process(r, rules), "", accepted);
  write_pictures(w, bands_of(r, rules), jar_of(r.process, r.required, rules), id);
  const std::vector<std::string> steps = steps_of_process(r);
  if (!steps.empty()) w.element(heading_tag(heading + 1), "What belongs to it");
  write_list(w, steps, accepted);
  if (const std::string from = sources.refer(r.required->sources); !from.empty())
    w.element("p", from, "class=\"small\"");
}

/// Title and all below it. `level` is that of the title, `id` begins the ids of its pictures.
inline void write_report(html_writer& w, const report& r, const edition& rules, int level,
                         std::string_view id) {
  w.element(heading_tag(level), r.title.empty() ? r.source : r.title);
  if (!r.title.empty()) w.element("p", r.source, "class=\"small\"");
  write_label(w, name_of(r.verdict), headline_of(r));
  if (r.verdict == verdict::unreadable) {
    write_mistakes(w, r, level + 1);
    return;
  }
  if (const std::string mixture = mixture_text(r); !mixture.empty()) w.element("p", mixture);
  source_notes sources;
  w.open("div", flow_of_print);
  write_findings(w, r, level + 1, sources);
  write_process(w, r, rules, level + 1, id, sources);
  sources.write(w, level + 1);
  w.close();
}

/// What decided, in the names of the checks, each once.
[[nodiscard]] inline std::string deciding_checks(const report& r) {
  std::vector<std::string_view> named;
  std::string out;
  for (const finding& f : r.findings) {
    if (f.outcome == outcome::none || std::find(named.begin(), named.end(), f.check) != named.end())
      continue;
    named.push_back(f.check);
    out += (out.empty() ? "" : "; ") + words_of_id(f.check);
  }
  return out;
}

/// Verdict, plan and what decided, a row for each plan.
inline void write_summary(html_writer& w, const std::vector<report>& reports) {
  const auto accepted = std::count_if(reports.begin(), reports.end(), [](const report& r) {
    return r.verdict == verdict::accepted;
  });
  w.open("table");
  w.element("caption",
            std::to_string(reports.size()) + " plans, " + std::to_string(accepted) + " accepted.");
  w.open("thead");
  w.open("tr");
  for (const char* name : {"plan, and what decided", "verdict"})
    w.element("th", name, "scope=\"col\"");
  w.close();
  w.close();
  w.open("tbody");
  for (std::size_t i = 0; i < reports.size(); ++i) {
    const report& r = reports[i];
    w.open("tr");
    w.open("td");
    w.element("a", r.title.empty() ? r.source : r.title,
              "href=\"#plan" + std::to_string(i + 1) + "\"");
    if (const std::string checks = deciding_checks(r); !checks.empty())
      w.element("div", checks, "class=\"small\"");
    w.close();
    w.open("td");
    w.open("span", "class=\"tag " + std::string(name_of(r.verdict)) + "\"");
    w.raw(shape_of(name_of(r.verdict)) + " ");
    w.text(name_of(r.verdict));
    w.close();
    w.close();
    w.close();
  }
  w.close();
  w.close();
}

}  // namespace detail

/// What may stand below the reports of a page.
struct page_end {
  std::vector<std::string> remarks;  ///< a paragraph each
  std::optional<shelf_today> shelf;
};

namespace detail {

inline void write_end(html_writer& w, const page_end& end) {
  for (const std::string& text : end.remarks) w.paragraph(text);
  if (end.shelf) write_shelf(w, *end.shelf);
}

}  // namespace detail

/// One page for all reports; several begin with a table of them.
[[nodiscard]] inline std::string html_of(const std::vector<report>& reports, const edition& rules,
                                         const page_end& end = {}) {
  html_writer w;
  if (reports.size() == 1) {
    const report& r = reports.front();
    detail::write_report(w, r, rules, 1, "plan1");
    detail::write_end(w, end);
    return html_page(
        (r.title.empty() ? r.source : r.title) + ": " + std::string(name_of(r.verdict)), w.take(),
        rules);
  }
  const std::string title = std::to_string(reports.size()) + " canning plans";
  w.element("h1", title);
  detail::write_summary(w, reports);
  for (std::size_t i = 0; i < reports.size(); ++i) {
    const std::string id = "plan" + std::to_string(i + 1);
    w.open("section", "class=\"plan\" id=\"" + id + "\"");
    detail::write_report(w, reports[i], rules, 2, id);
    w.close();
  }
  detail::write_end(w, end);
  return html_page(title, w.take(), rules);
}

}  // namespace jarproof
