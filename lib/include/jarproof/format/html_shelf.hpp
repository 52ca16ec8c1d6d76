// The shelf as a part of a page: what is left, what to eat first, and what not to eat. The words
// are those of the text report. SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/shelf_words.hpp"
#include "jarproof/format/html.hpp"
#include "jarproof/shelf_today.hpp"

namespace jarproof::detail {

inline void write_lot(html_writer& w, const lot_today& l, std::string_view says) {
  w.open("li");
  w.element("b", lot_name(l.lot.record));
  w.element("div", says);
  w.close();
}

inline void write_lots_to_eat(html_writer& w, const shelf_today& t) {
  const std::vector<std::size_t> places = eat_first(t);
  if (places.empty()) return;
  w.element("h3", eat_heading);
  w.open("ol");
  for (const std::size_t place : places) write_lot(w, t.lots[place], use_text(t.lots[place]));
  w.close();
  w.element("p", use_day_text, "class=\"small\"");
}

inline void write_lots_open_too_long(html_writer& w, const shelf_today& t) {
  const std::vector<std::size_t> places = open_too_long(t);
  if (places.empty()) return;
  w.element("h3", too_long_heading);
  w.open("ul");
  for (const std::size_t place : places)
    write_lot(w, t.lots[place], too_long_jars_text(t.lots[place]));
  w.close();
  w.element("p", too_long_text, "class=\"small\"");
}

inline void write_lots_not_to_eat(html_writer& w, const shelf_today& t) {
  const std::vector<std::size_t> places = not_accepted(t);
  if (places.empty()) return;
  w.element("h3", do_not_eat_heading);
  w.open("ol", "class=\"findings\"");
  for (const std::size_t place : places) {
    const lot_today& l = t.lots[place];
    w.open("li", "class=\"is-rejects\"");
    w.open("h4");
    w.raw(shape_of("rejects") + " ");
    w.text(lot_name(l.lot.record));
    w.close();
    w.element("p", put_up_text(l));
    for (const std::string& text : against_lot(l)) w.element("p", text);
    write_list(w, findings_of_lot(l));
    w.close();
  }
  w.close();
}

/// The shelf below a heading of level 2.
inline void write_shelf(html_writer& w, const shelf_today& t) {
  w.open("section", "id=\"shelf\"");
  w.element("h2", headline_of(t));
  if (const std::string unread = unread_text(t); !unread.empty())
    w.element("p", unread, "class=\"do\"");
  if (const std::string later = later_text(t); !later.empty())
    w.element("p", later, "class=\"do\"");
  write_lots_to_eat(w, t);
  write_lots_open_too_long(w, t);
  write_lots_not_to_eat(w, t);
  const std::vector<std::string> editions = other_editions(t);
  if (!editions.empty()) w.element("h3", other_rules_heading);
  write_list(w, editions);
  w.close();
}

}  // namespace jarproof::detail
