// The shelf as JSON, in the layout of docs/report-json.md.
//
//   std::string run = jarproof::json_of(reports, today, edition);   // with a member `shelf`
//   std::string alone = jarproof::shelf_json(today);                // one object
// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "jarproof/format/json.hpp"
#include "jarproof/shelf_today.hpp"

namespace jarproof {

namespace detail {

inline void write_edition(json_writer& w, const shelf_record& r) {
  w.key("edition");
  w.begin('{');
  w.member("name", r.edition_name);
  w.member("version", r.edition_version);
  w.end('}');
}

inline void write_flag(json_writer& w, std::string_view key, bool value) {
  w.key(key);
  w.raw(value ? "true" : "false");
}

inline void write_lot(json_writer& w, const lot_today& l, bool dated) {
  const shelf_record& r = l.lot.record;
  w.begin('{');
  w.member("lot", r.lot);
  w.member("source", r.source);
  w.member("title", r.title);
  w.member("date", r.date);
  w.member("use_by", r.use_by);
  if (dated) write_flag(w, "past_use_by", l.past_use_by);
  w.member("jar", r.jar);
  w.member("jars", r.jars);
  w.member("unsealed", l.lot.unsealed);
  w.member("opened", l.lot.opened);
  w.member("eaten", l.lot.eaten);
  w.member("discarded", l.lot.discarded);
  w.member("open", l.lot.open);
  if (!l.lot.open_since.empty()) w.member("open_since", l.lot.open_since);
  w.member("left", l.lot.left);
  write_flag(w, "accepted", l.accepted);
  w.member("verdict", name_of(l.report.verdict));
  if (r.run) {
    w.key("run");
    w.begin('{');
    w.member("verdict", name_of(r.run->verdict));
    w.member("log", r.run->log);
    w.end('}');
  }
  w.key("recorded");
  w.begin('{');
  w.member("library", r.library);
  write_edition(w, r);
  w.member("verdict", name_of(r.verdict));
  w.key("process");
  r.process.empty() ? w.raw("null") : w.text(r.process);
  w.key("required");
  w.raw(r.required);
  w.end('}');
  write_flag(w, "other_edition", l.other_edition);
  w.end('}');
}

inline void write_lot_names(json_writer& w, std::string_view key, const shelf_today& t,
                            const std::vector<std::size_t>& places) {
  w.key(key);
  w.begin('[');
  for (const std::size_t place : places) w.text(t.lots[place].lot.record.lot);
  w.end(']');
}

/// One object: the lots, oldest first, and which of them to eat first and not to eat.
inline void write_shelf(json_writer& w, const shelf_today& t) {
  std::int64_t left = 0;
  std::int64_t open = 0;
  for (const lot_today& l : t.lots) {
    left += l.lot.left;
    open += l.lot.open;
  }
  w.begin('{');
  if (!t.date.empty()) w.member("date", t.date);
  w.member("left", left);
  w.member("open", open);
  w.member("unread_lines", t.unread);
  w.key("later_lines");
  w.begin('[');
  for (const std::string& line : t.later) w.text(line);
  w.end(']');
  write_lot_names(w, "eat_first", t, eat_first(t));
  write_lot_names(w, "open_too_long", t, open_too_long(t));
  write_lot_names(w, "not_accepted", t, not_accepted(t));
  w.key("lots");
  w.begin('[');
  for (const lot_today& l : t.lots) write_lot(w, l, !t.date.empty());
  w.end(']');
  w.end('}');
}

}  // namespace detail

/// The shelf alone, on one line, without a line end.
[[nodiscard]] inline std::string shelf_json(const shelf_today& t) {
  detail::json_writer w;
  detail::write_shelf(w, t);
  return w.take();
}

/// All reports of one run, with the shelf that stood among the plans as its last member.
[[nodiscard]] inline std::string json_of(const std::vector<report>& reports, const shelf_today& t,
                                         const edition& rules) {
  return detail::run_text(reports, rules, [&](detail::json_writer& w) {
    w.key("shelf");
    detail::write_shelf(w, t);
  });
}

}  // namespace jarproof
