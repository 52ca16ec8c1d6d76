// The shelf for a person: what is left, what to eat first, and what not to eat.
//
//   std::string text = jarproof::shelf_text(jarproof::today_of(shelf, edition, "2026-11-28"));
// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/format/text.hpp"
#include "jarproof/shelf.hpp"

namespace jarproof {

namespace detail {

[[nodiscard]] inline std::string counted(int number, std::string_view one, std::string_view many) {
  return std::to_string(number) + " " + std::string(number == 1 ? one : many);
}

[[nodiscard]] inline std::string lot_name(const shelf_record& r) {
  return r.title.empty() || r.title == r.lot ? r.lot : r.lot + ": " + r.title;
}

/// `7 pint jars left, 1 open`.
[[nodiscard]] inline std::string left_text(const shelf_lot& l) {
  const std::string& jar = l.record.jar;
  std::string out =
      l.left == 0 ? "none left" : counted(l.left, jar + " jar", jar + " jars") + " left";
  if (l.open > 0) out += ", " + std::to_string(l.open) + " open";
  return out;
}

inline void write_what_to_eat(text_writer& w, const shelf_today& t) {
  const std::vector<std::size_t> places = eat_first(t);
  if (places.empty()) return;
  w.blank();
  w.heading("Eat from the top down", "1");
  int number = 0;
  for (const std::size_t place : places) {
    const lot_today& l = t.lots[place];
    const std::string first = "  " + std::to_string(++number) + ". ";
    w.paragraph(lot_name(l.lot.record), first, first.size());
    const std::string indent(first.size(), ' ');
    w.paragraph(left_text(l.lot) + "; put up " + l.lot.record.date + ", use by " +
                    l.lot.record.use_by + (l.past_use_by ? ", which is past" : ""),
                indent, indent.size());
  }
  w.blank();
  // USDA Complete Guide, Guide 1: use within a year, for quality.
  w.paragraph("The day of use is for quality and no limit of safety.", "  ", 2);
}

inline void write_what_not_to_eat(text_writer& w, const shelf_today& t) {
  const std::vector<std::size_t> places = not_accepted(t);
  if (places.empty()) return;
  w.blank();
  w.heading("Not accepted: do not eat from these lots", "1;31");
  for (const std::size_t place : places) {
    const lot_today& l = t.lots[place];
    const shelf_record& r = l.lot.record;
    w.paragraph(lot_name(r), "  ", 2);
    w.paragraph(left_text(l.lot) + "; put up " + r.date + " (" + r.source + ")", "    ", 4);
    if (r.verdict != verdict::accepted)
      w.paragraph("The plan was " + std::string(name_of(r.verdict)) + " when it was recorded.",
                  "    ", 4);
    if (r.run && r.run->verdict != verdict::accepted)
      w.paragraph(
          "The run log " + r.run->log + " was " + std::string(name_of(r.run->verdict)) + ".",
          "    ", 4);
    if (l.report.verdict != verdict::accepted)
      w.paragraph("By the rules in use the plan is " + std::string(name_of(l.report.verdict)) + ":",
                  "    ", 4);
    for (const finding& f : l.report.findings) {
      if (f.outcome != outcome::none) w.paragraph(f.check + ": " + f.message, "    - ", 6);
    }
  }
}

inline void write_other_editions(text_writer& w, const shelf_today& t) {
  std::map<std::string, std::vector<std::string>> lots;  // by edition
  for (const lot_today& l : t.lots) {
    if (l.other_edition)
      lots[l.lot.record.edition_name + ", " + l.lot.record.edition_version].push_back(
          l.lot.record.lot);
  }
  if (lots.empty()) return;
  w.blank();
  w.heading("Recorded with other rules, judged again here", "1");
  for (const auto& [edition, names] : lots)
    w.paragraph(edition + ": " + joined(names, "and"), "  ", 2);
}

}  // namespace detail

/// What is left and what to eat first; then lots that are not accepted, with the findings.
[[nodiscard]] inline std::string shelf_text(const shelf_today& t, text_style style = {}) {
  using namespace detail;
  text_writer w(style);
  int left = 0;
  int open = 0;
  int not_to_eat = 0;
  for (const lot_today& l : t.lots) {
    left += l.lot.left;
    open += l.lot.open;
    if (!l.accepted) not_to_eat += l.lot.left + l.lot.open;
  }
  w.heading("The shelf" + (t.date.empty() ? "" : " on " + t.date) + ": " +
                counted(static_cast<int>(t.lots.size()), "lot", "lots") + ", " +
                counted(left, "jar", "jars") + " left" +
                (open > 0 ? ", " + std::to_string(open) + " open" : "") +
                (not_to_eat > 0 ? ", " + std::to_string(not_to_eat) + " not to be eaten" : "") +
                ".",
            "1");
  if (t.unread > 0) {
    w.paragraph(counted(t.unread, "line", "lines") +
                " could not be read or did not fit, so these counts may be wrong. Put that right "
                "first.");
  }
  write_what_to_eat(w, t);
  write_what_not_to_eat(w, t);
  write_other_editions(w, t);
  return w.take();
}

}  // namespace jarproof
