// A canning day as one page: `jarproof day --format html`.
//
//   std::string page = jarproof::html_of(day, {}, edition);
//
// The words are those of the text report; jars, loads and clock are drawn too. A plan that is not
// accepted has its findings, and no step card.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/day.hpp"
#include "jarproof/detail/day_lines.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/html_check.hpp"
#include "jarproof/format/strips.hpp"
#include "jarproof/report.hpp"

namespace jarproof {

namespace detail {

/// All loads by the clock, counted from the midnight before the day where it has times of day.
[[nodiscard]] inline page_strip strip_of(const day_plan& d, std::string_view id) {
  page_strip out{std::string(id), "The loads by the clock", {}, d.start_min.has_value()};
  const int start = d.start_min.value_or(0);
  for (const day_load& l : d.loads) {
    strip_row row{"Load " + std::to_string(l.number), {}, heading_of_load(d, l), {}};
    for (const day_stage& s : l.stages) {
      const strip_look look = s.id == "process" ? strip_look::work
                              : s.fuel          ? strip_look::heat
                                                : strip_look::rest;
      row.parts.push_back({start + s.from_min, start + s.to_min, s.what, look, s.least_min});
    }
    const bool last = !l.stages.empty() && l.stages.back().id != "next-load";
    row.ends = last ? "lift the jars out" : "";
    out.rows.push_back(std::move(row));
  }
  return out;
}

class day_page {
 public:
  day_page(const day_plan& d, const std::vector<report>& unreadable, const edition& rules,
           const page_end& end)
      : d_(d), unreadable_(unreadable), rules_(rules), end_(end) {}

  [[nodiscard]] std::string take() {
    const std::string title = title_of_day();
    w_.element("h1", title);
    std::size_t number = 0;
    for (const report& r : unreadable_)
      write_report(w_, r, rules_, 2, "plan" + std::to_string(++number));
    for (const day_batch& b : d_.batches) {
      if (accepted(b)) continue;
      write_report(w_, b.judged, rules_, 2, "plan" + std::to_string(++number));
      w_.element("p", no_card_text, "class=\"do\"");
    }
    w_.open("div", one() ? "" : "class=\"foods\"");
    for (const day_batch& b : d_.batches) {
      if (accepted(b)) write_jars(b, "plan" + std::to_string(++number));
    }
    w_.close();
    if (!d_.loads.empty()) write_loads();
    for (const std::string& text : d_.unsaid) w_.element("p", "Note: " + text);
    const std::vector<const day_batch*> cards = batches_with_card();
    for (const day_batch* b : cards) write_card(*b, cards);
    if (cards.size() > 1) write_shared(cards);
    sources_.write(w_, 2);
    write_end(w_, end_);
    return html_page(title, w_.take(), rules_);
  }

 private:
  const day_plan& d_;
  const std::vector<report>& unreadable_;
  const edition& rules_;
  const page_end& end_;
  html_writer w_;
  source_notes sources_;

  [[nodiscard]] static bool accepted(const day_batch& b) noexcept {
    return b.judged.verdict == verdict::accepted;
  }

  /// True where the whole page is about one plan, which its title names.
  [[nodiscard]] bool one() const noexcept { return d_.batches.size() == 1 && unreadable_.empty(); }

  [[nodiscard]] std::string title_of_day() const {
    const std::string day = d_.date.empty() ? "Canning day" : "Canning day " + d_.date;
    return one() ? day + ": " + d_.batches.front().name : day;
  }

  void write_jars(const day_batch& b, const std::string& id) {
    if (!one()) w_.element("h2", b.name);
    w_.element("p", b.judged.source, "class=\"small\"");
    write_label(w_, name_of(verdict::accepted), headline_of(b.judged));
    const std::vector<named_value> rows = rows_of_jars(b);
    const std::optional<jar_picture> jar = jar_of(b.judged.process, b.judged.required, rules_);
    if (jar && !rows.empty()) w_.open("div", "class=\"pictures jars\"");
    write_numbers(w_, rows, "Jars");
    if (jar) {
      w_.open("figure");
      w_.raw(jar_svg(id + "-jar", *jar));
      w_.element("figcaption", jar_in_words(*jar));
      w_.close();
    }
    if (jar && !rows.empty()) w_.close();
    for (const std::string& text : b.unsaid) w_.paragraph("Not said: " + text);
    write_warnings(b);
  }

  void write_warnings(const day_batch& b) {
    std::vector<const finding*> shown;
    for (const finding& f : b.judged.findings) {
      if (f.level == level::warning) shown.push_back(&f);
    }
    for (const finding& f : b.findings) shown.push_back(&f);
    if (shown.empty()) return;
    const int level = one() ? 2 : 3;
    w_.element(heading_tag(level), "Good to know");
    w_.open("ol", "class=\"findings\"");
    for (const finding* f : shown) write_finding(w_, b.judged, *f, false, level + 1, sources_);
    w_.close();
  }

  void write_loads() {
    w_.element("h2", heading_of_loads(d_));
    for (const std::string& text : d_.apart) w_.element("p", text);
    const page_strip strip = strip_of(d_, "day");
    w_.open("div", "class=\"pictures\"");
    write_numbers(w_, rows_of_day(d_), "");
    write_strip_picture(w_, strip);
    w_.close();
    for (const day_load& l : d_.loads) {
      for (const day_step& s : l.remarks)
        w_.paragraph("Load " + std::to_string(l.number) + ": " + s.says);
    }
    write_strip_tables(w_, strip);
  }

  void write_steps(const std::vector<day_step>& all, std::string_view tag) {
    if (all.empty()) return;
    w_.open(tag);
    for (const day_step& s : all) {
      w_.open("li");
      w_.sentence(s.says);
      write_list(w_, s.parts);
      w_.close();
    }
    w_.close();
  }

  using part = std::vector<day_step> day_batch::*;

  [[nodiscard]] std::vector<const day_batch*> batches_with_card() const {
    std::vector<const day_batch*> out;
    for (const day_batch& b : d_.batches) {
      if (accepted(b) && !fills_no_jar(b)) out.push_back(&b);
    }
    return out;
  }

  /// Said of every food in the same words: it stands once, behind the cards.
  [[nodiscard]] static bool is_shared(const std::vector<const day_batch*>& cards, part p,
                                      const day_step& s) {
    return cards.size() > 1 && std::all_of(cards.begin(), cards.end(), [&](const day_batch* b) {
             return std::any_of((b->*p).begin(), (b->*p).end(),
                                [&](const day_step& other) { return other.says == s.says; });
           });
  }

  void write_part(std::string_view heading, const std::vector<const day_batch*>& cards,
                  const day_batch& b, part p, bool shared) {
    std::vector<day_step> steps;
    for (const day_step& s : b.*p) {
      if (is_shared(cards, p, s) == shared) steps.push_back(s);
    }
    if (steps.empty()) return;
    w_.open("div");
    w_.element("h3", heading);
    write_steps(steps, "ul");
    w_.close();
  }

  void write_parts(const std::vector<const day_batch*>& cards, const day_batch& b, bool shared) {
    write_part("Mind", cards, b, &day_batch::cautions, shared);
    write_part(heading_after(rules_), cards, b, &day_batch::check_after, shared);
    write_part("When a jar is opened", cards, b, &day_batch::opening, shared);
  }

  void write_shared(const std::vector<const day_batch*>& cards) {
    w_.open("section", "class=\"card\"");
    w_.element("h2", "For every load of the day");
    w_.open("div", "class=\"pictures flow\"");
    write_parts(cards, *cards.front(), true);
    w_.close();
    w_.close();
  }

  void write_card(const day_batch& b, const std::vector<const day_batch*>& cards) {
    w_.open("section", "class=\"card\"");
    const bool named = d_.batches.size() > 1 || !b.judged.title.empty();
    w_.element("h2", named ? "Step card: " + b.name : "Step card");
    w_.open("div", flow_of_print);
    write_steps(b.steps, "ol");
    std::vector<named_value> rows;
    for (const day_label_line& l : b.label) rows.push_back({l.name, l.value});
    w_.open("div", "class=\"pictures\"");
    w_.open("div");
    w_.element("h3", "Label");
    w_.open("div", "class=\"jar-label\"");
    write_numbers(w_, rows, "");
    w_.close();
    w_.close();
    write_parts(cards, b, false);
    w_.close();
    if (b.judged.required && !b.judged.required->sources.empty())
      w_.element("p", sources_.refer(b.judged.required->sources), "class=\"small\"");
    w_.close();
    w_.close();
  }
};

}  // namespace detail

/// One page for the whole day; `unreadable` are plans that could not be read.
[[nodiscard]] inline std::string html_of(const day_plan& day, const std::vector<report>& unreadable,
                                         const edition& rules, const page_end& end = {}) {
  return detail::day_page(day, unreadable, rules, end).take();
}

}  // namespace jarproof
