// The tested ways of a dish as one page: `jarproof ways --format html`.
//
//   std::string page = jarproof::html_of({{plan.source, title, ways, {}}}, edition);
// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/way_words.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/html_check.hpp"
#include "jarproof/format/ways.hpp"

namespace jarproof {

namespace detail {

/// One way. The pictures are those of its own process; parts have only their numbers.
inline void write_way(html_writer& w, const way& each, std::size_t number, int altitude_ft,
                      const edition& rules, int level, const std::string& id,
                      source_notes& sources) {
  w.open(heading_tag(level), "id=\"" + id + "\"");
  w.text(std::to_string(number) + ". " + each.title);
  w.close();
  write_list(w, each.changes, true);
  for (const std::string& text : missing_texts(each)) w.element("p", text);
  write_numbers(w, rows_of_numbers(each.numbers, rules), "");
  write_pictures(
      w, bands_of(each.process, each.numbers.required, each.numbers.options, altitude_ft, rules),
      jar_of(each.process, each.numbers.required, rules), id);
  if (each.amounts) {
    write_numbers(w, rows_of_amounts(*each.amounts, rules), "How much it makes");
    for (const std::string& text : limits_of_amounts(*each.amounts)) w.element("p", text);
  }
  for (const way_part& p : each.parts) {
    w.element(heading_tag(level + 1), title_of_part(p));
    write_numbers(w, rows_of_part(p.numbers, rules), "");
    write_list(w, p.changes, true);
  }
  for (const std::string& note : each.notes) w.element("p", "Note: " + note);
  if (const std::string from = sources.refer(each.sources); !from.empty())
    w.element("p", from, "class=\"small\"");
}

[[nodiscard]] inline std::string change_text(const way& each) {
  if (each.kind == "parts") return "taken apart";
  if (each.kind == "freezer") return "nothing is canned";
  if (each.altered == 0) return "as it is";
  return each.altered == 1 ? "1 line changes" : std::to_string(each.altered) + " lines change";
}

/// A row for each way: what it is, and how many lines of the recipe change.
inline void write_choice(html_writer& w, const std::vector<way>& ways, const std::string& id) {
  if (ways.size() < 2) return;
  w.open("table");
  w.element("caption", std::to_string(ways.size()) + " ways");
  w.open("thead");
  w.open("tr");
  for (const char* name : {"way", "recipe", "kept"}) w.element("th", name, "scope=\"col\"");
  w.close();
  w.close();
  w.open("tbody");
  for (std::size_t i = 0; i < ways.size(); ++i) {
    w.open("tr");
    w.open("td");
    w.element("a", std::to_string(i + 1) + ". " + ways[i].title,
              "href=\"#" + id + "-way" + std::to_string(i + 1) + "\"");
    w.close();
    w.element("td", change_text(ways[i]));
    w.element("td", ways[i].kind == "freezer" ? "in the freezer" : "on the shelf");
    w.close();
  }
  w.close();
  w.close();
}

inline void write_found(html_writer& w, const found_ways& f, const edition& rules, int level,
                        const std::string& id) {
  if (f.unreadable) {
    write_report(w, *f.unreadable, rules, level, id);
    return;
  }
  w.element(heading_tag(level), "Tested ways for " + (f.title.empty() ? f.source : f.title));
  if (!f.title.empty()) w.element("p", f.source, "class=\"small\"");
  if (!reaches_shelf(f.ways)) w.element("p", nothing_for_the_shelf);
  write_choice(w, f.ways, id);
  source_notes sources;
  w.open("div", flow_of_print);
  for (std::size_t i = 0; i < f.ways.size(); ++i) {
    write_way(w, f.ways[i], i + 1, f.altitude_ft, rules, level + 1,
              id + "-way" + std::to_string(i + 1), sources);
  }
  sources.write(w, level + 1);
  w.close();
}

}  // namespace detail

/// One page for the ways of all plans.
[[nodiscard]] inline std::string html_of(const std::vector<found_ways>& found,
                                         const edition& rules) {
  html_writer w;
  if (found.size() == 1) {
    const found_ways& f = found.front();
    detail::write_found(w, f, rules, 1, "plan1");
    return html_page("Tested ways for " + (f.title.empty() ? f.source : f.title), w.take(), rules);
  }
  const std::string title = "Tested ways for " + std::to_string(found.size()) + " plans";
  w.element("h1", title);
  for (std::size_t i = 0; i < found.size(); ++i) {
    const std::string id = "plan" + std::to_string(i + 1);
    w.open("section", "class=\"plan\" id=\"" + id + "\"");
    detail::write_found(w, found[i], rules, 2, id);
    w.close();
  }
  return html_page(title, w.take(), rules);
}

}  // namespace jarproof
