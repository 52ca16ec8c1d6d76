// The shelf on one day: what is left, what to eat first, and whether the process of each lot is
// still accepted.
//
//   shelf_today today = today_of(s, edition, "2026-11-28");   // judged again; no clock is read
//
// A lot whose plan is not accepted by the edition in use is never among what to eat. What is dated
// behind the day is not counted, and is named.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

#include "jarproof/check.hpp"
#include "jarproof/shelf.hpp"

namespace jarproof {

/// One lot as it stands by the edition in use.
struct lot_today {
  shelf_lot lot;
  jarproof::report report;     ///< of its plan, by the edition in use
  bool accepted = false;       ///< the plan then and now, and its run log where it has one
  bool other_edition = false;  ///< it was recorded with another edition, or version of it
  bool past_use_by = false;    ///< false where no day is given
  bool open_too_long = false;  ///< the same; an open jar keeps a few days in the refrigerator
  int open_past = 0;           ///< jars that are open so long
};

/// Food of an open jar keeps a few days in the refrigerator, as food that filled no jar does.
inline constexpr int longest_open_days = 3;

struct shelf_today {
  std::string date;                ///< the day that it is told for; may be empty
  std::vector<lot_today> lots;     ///< oldest first
  int unread = 0;                  ///< lines that could not be read: the counts may be wrong
  std::vector<std::string> later;  ///< lines dated behind that day, `FILE:LINE`: not counted
};

/// `reports` are those of the plans of `s.lots()`, in their order, under `rules`, which must
/// outlive the result. `date` may be empty: then no lot is past its day, and no line is later.
[[nodiscard]] inline shelf_today today_of(const shelf& s, std::vector<report> reports,
                                          const edition& rules, std::string_view date = "") {
  shelf_today out{std::string(date), {}, 0, {}};
  const auto is_later = [&](const std::string& day) { return !date.empty() && day > date; };
  for (const shelf_lot& lot : s.lots()) {
    if (is_later(lot.record.date)) out.later.push_back(lot.record.source);
  }
  for (const shelf_happening& h : s.happenings()) {
    if (is_later(h.date)) out.later.push_back(h.source);
  }
  const shelf then = out.later.empty() ? shelf{} : s.as_of(date);
  const std::vector<shelf_lot>& lots = out.later.empty() ? s.lots() : then.lots();
  for (std::size_t i = 0; i < lots.size() && i < reports.size(); ++i) {
    const shelf_record& r = lots[i].record;
    if (is_later(r.date)) continue;
    lot_today one{lots[i], std::move(reports[i])};
    one.accepted = one.report.verdict == verdict::accepted && r.verdict == verdict::accepted &&
                   (!r.run || r.run->verdict == verdict::accepted);
    one.other_edition = r.edition_name != rules.name || r.edition_version != rules.version;
    one.past_use_by = !date.empty() && r.use_by < date;
    for (const auto& [day, jars] : one.lot.openings) {
      if (!date.empty() && detail::days_between(day, date) > longest_open_days)
        one.open_past += jars;
    }
    one.open_too_long = one.open_past > 0;
    out.lots.push_back(std::move(one));
  }
  std::stable_sort(out.lots.begin(), out.lots.end(), [](const lot_today& a, const lot_today& b) {
    return a.lot.record.date < b.lot.record.date;
  });
  return out;
}

/// Judges the plan of every lot again.
[[nodiscard]] inline shelf_today today_of(const shelf& s, const edition& rules,
                                          std::string_view date = "") {
  std::vector<report> reports;
  for (const shelf_lot& l : s.lots()) reports.push_back(check(l.record.plan, rules));
  return today_of(s, std::move(reports), rules, date);
}

/// Places in `t.lots` of what there is to eat: lots with an open jar, then by the day of use, then
/// the oldest. Lots that are not accepted are never among them, nor jars that are open too long.
[[nodiscard]] inline std::vector<std::size_t> eat_first(const shelf_today& t) {
  std::vector<std::size_t> out;
  for (std::size_t i = 0; i < t.lots.size(); ++i) {
    const lot_today& l = t.lots[i];
    if (l.accepted && l.lot.left + l.lot.open > l.open_past) out.push_back(i);
  }
  std::stable_sort(out.begin(), out.end(), [&](std::size_t a, std::size_t b) {
    const auto rank = [&](std::size_t i) {
      const shelf_lot& l = t.lots[i].lot;
      return std::make_tuple(l.open == t.lots[i].open_past, std::string_view(l.record.use_by));
    };
    return rank(a) < rank(b);
  });
  return out;
}

/// Accepted lots with jars that are open too long.
[[nodiscard]] inline std::vector<std::size_t> open_too_long(const shelf_today& t) {
  std::vector<std::size_t> out;
  for (std::size_t i = 0; i < t.lots.size(); ++i) {
    if (t.lots[i].accepted && t.lots[i].open_too_long) out.push_back(i);
  }
  return out;
}

/// Lots whose process, or run, is not accepted; also those of which no jar is left.
[[nodiscard]] inline std::vector<std::size_t> not_accepted(const shelf_today& t) {
  std::vector<std::size_t> out;
  for (std::size_t i = 0; i < t.lots.size(); ++i) {
    if (!t.lots[i].accepted) out.push_back(i);
  }
  return out;
}

}  // namespace jarproof
