// The shelf for a person: what is left, what to eat first, and what not to eat.
//
//   std::string text = jarproof::shelf_text(jarproof::today_of(shelf, edition, "2026-11-28"));
// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/shelf_words.hpp"
#include "jarproof/format/text.hpp"
#include "jarproof/shelf_today.hpp"

namespace jarproof {

namespace detail {

inline void write_what_to_eat(text_writer& w, const shelf_today& t) {
  const std::vector<std::size_t> places = eat_first(t);
  if (places.empty()) return;
  w.blank();
  w.heading(eat_heading, "1");
  int number = 0;
  for (const std::size_t place : places) {
    const std::string first = "  " + std::to_string(++number) + ". ";
    w.paragraph(lot_name(t.lots[place].lot.record), first, first.size());
    const std::string indent(first.size(), ' ');
    w.paragraph(use_text(t.lots[place]), indent, indent.size());
  }
  w.blank();
  w.paragraph(use_day_text, "  ", 2);
}

inline void write_open_too_long(text_writer& w, const shelf_today& t) {
  const std::vector<std::size_t> places = open_too_long(t);
  if (places.empty()) return;
  w.blank();
  w.heading(too_long_heading, "1;31");
  for (const std::size_t place : places) {
    w.paragraph(lot_name(t.lots[place].lot.record), "  ", 2);
    w.paragraph(too_long_jars_text(t.lots[place]), "    ", 4);
  }
  w.paragraph(too_long_text, "  ", 2);
}

inline void write_what_not_to_eat(text_writer& w, const shelf_today& t) {
  const std::vector<std::size_t> places = not_accepted(t);
  if (places.empty()) return;
  w.blank();
  w.heading(do_not_eat_heading, "1;31");
  for (const std::size_t place : places) {
    const lot_today& l = t.lots[place];
    w.paragraph(lot_name(l.lot.record), "  ", 2);
    w.paragraph(put_up_text(l), "    ", 4);
    for (const std::string& text : against_lot(l)) w.paragraph(text, "    ", 4);
    for (const std::string& text : findings_of_lot(l)) w.paragraph(text, "    - ", 6);
  }
}

}  // namespace detail

/// What is left and what to eat first; then lots that are not accepted, with the findings.
[[nodiscard]] inline std::string shelf_text(const shelf_today& t, text_style style = {}) {
  using namespace detail;
  text_writer w(style);
  w.heading(headline_of(t), "1");
  if (const std::string unread = unread_text(t); !unread.empty()) w.paragraph(unread);
  if (const std::string later = later_text(t); !later.empty()) w.paragraph(later);
  write_what_to_eat(w, t);
  write_open_too_long(w, t);
  write_what_not_to_eat(w, t);
  const std::vector<std::string> editions = other_editions(t);
  if (!editions.empty()) {
    w.blank();
    w.heading(other_rules_heading, "1");
  }
  for (const std::string& text : editions) w.paragraph(text, "  ", 2);
  return w.take();
}

}  // namespace jarproof
