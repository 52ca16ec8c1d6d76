// Words about lots and what is left of them, the same in text and on a page.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/words.hpp"
#include "jarproof/report.hpp"
#include "jarproof/shelf_today.hpp"

namespace jarproof::detail {

[[nodiscard]] inline std::string counted(int number, std::string_view one, std::string_view many) {
  return std::to_string(number) + " " + std::string(number == 1 ? one : many);
}

[[nodiscard]] inline std::string lot_name(const shelf_record& r) {
  return r.title.empty() || r.title == r.lot ? r.lot : r.lot + ": " + r.title;
}

/// `7 pint jars left, 1 open since 2026-11-26`.
[[nodiscard]] inline std::string left_text(const shelf_lot& l) {
  const std::string& jar = l.record.jar;
  std::string out =
      l.left == 0 ? "none left" : counted(l.left, jar + " jar", jar + " jars") + " left";
  if (l.open > 0) out += ", " + std::to_string(l.open) + " open since " + l.open_since;
  return out;
}

/// The same without jars that are open too long.
[[nodiscard]] inline std::string left_to_eat_text(const lot_today& l) {
  shelf_lot rest = l.lot;
  rest.open -= l.open_past;
  int past = l.open_past;
  for (const auto& [day, jars] : rest.openings) {
    if (past < jars) {
      rest.open_since = day;
      break;
    }
    past -= jars;
  }
  return left_text(rest);
}

/// `1 open since 2026-11-20`: jars that are open too long.
[[nodiscard]] inline std::string too_long_jars_text(const lot_today& l) {
  return std::to_string(l.open_past) + " open since " + l.lot.open_since;
}

/// `The shelf on 2026-11-28: 3 lots, 20 jars left.`
[[nodiscard]] inline std::string headline_of(const shelf_today& t) {
  int left = 0;
  int open = 0;
  int not_to_eat = 0;
  for (const lot_today& l : t.lots) {
    left += l.lot.left;
    open += l.lot.open;
    if (!l.accepted) not_to_eat += l.lot.left + l.lot.open;
  }
  return "The shelf" + (t.date.empty() ? "" : " on " + t.date) + ": " +
         counted(static_cast<int>(t.lots.size()), "lot", "lots") + ", " +
         counted(left, "jar", "jars") + " left" +
         (open > 0 ? ", " + std::to_string(open) + " open" : "") +
         (not_to_eat > 0 ? ", " + std::to_string(not_to_eat) + " not to be eaten" : "") + ".";
}

/// What is said where lines of the record could not be read; empty where all were.
[[nodiscard]] inline std::string unread_text(const shelf_today& t) {
  if (t.unread == 0) return {};
  return counted(t.unread, "line", "lines") +
         " could not be read or did not fit, so these counts may be wrong. Put that right first.";
}

/// What is dated behind the day; empty where nothing is.
[[nodiscard]] inline std::string later_text(const shelf_today& t) {
  if (t.later.empty()) return {};
  constexpr std::size_t most = 5;
  std::vector<std::string> named(
      t.later.begin(),
      t.later.begin() + static_cast<std::ptrdiff_t>(std::min(most, t.later.size())));
  const int lines = static_cast<int>(t.later.size());
  if (t.later.size() > most) named.push_back(std::to_string(t.later.size() - most) + " more");
  return counted(lines, "line is", "lines are") + " dated after " + t.date + " and " +
         (lines == 1 ? "is" : "are") + " not counted: " + joined(named, "and") +
         ". Put a wrong date right, or tell the shelf for a later day.";
}

inline constexpr std::string_view eat_heading = "Eat from the top down";
inline constexpr std::string_view do_not_eat_heading = "Not accepted: do not eat from these lots";
inline constexpr std::string_view too_long_heading = "Open too long: throw out what is open";
inline constexpr std::string_view too_long_text =
    "Food of an open jar keeps a few days in the refrigerator.";
inline constexpr std::string_view other_rules_heading =
    "Recorded with other rules, judged again here";
// USDA Complete Guide, Guide 1: use within a year, for quality.
inline constexpr std::string_view use_day_text =
    "The day of use is for quality and no limit of safety.";

/// `7 pint jars left; put up 2026-11-28, use by 2027-11-28`.
[[nodiscard]] inline std::string use_text(const lot_today& l) {
  return left_to_eat_text(l) + "; put up " + l.lot.record.date + ", use by " + l.lot.record.use_by +
         (l.past_use_by ? ", which is past" : "");
}

/// `7 pint jars left; put up 2026-11-28 (soup.yaml)`.
[[nodiscard]] inline std::string put_up_text(const lot_today& l) {
  return left_text(l.lot) + "; put up " + l.lot.record.date + " (" + l.lot.record.source + ")";
}

/// Which judgments of a lot are against it, one sentence each.
[[nodiscard]] inline std::vector<std::string> against_lot(const lot_today& l) {
  const shelf_record& r = l.lot.record;
  std::vector<std::string> out;
  if (r.verdict != verdict::accepted)
    out.push_back("The plan was " + std::string(name_of(r.verdict)) + " when it was recorded.");
  if (r.run && r.run->verdict != verdict::accepted)
    out.push_back("The run log " + r.run->log + " was " + std::string(name_of(r.run->verdict)) +
                  ".");
  if (l.report.verdict != verdict::accepted)
    out.push_back("By the rules in use the plan is " + std::string(name_of(l.report.verdict)) +
                  ":");
  return out;
}

/// What decided against the plan of a lot by the rules in use.
[[nodiscard]] inline std::vector<std::string> findings_of_lot(const lot_today& l) {
  std::vector<std::string> out;
  for (const finding& f : l.report.findings) {
    if (f.outcome != outcome::none) out.push_back(f.check + ": " + f.message);
  }
  return out;
}

/// Other editions than the one in use, each with its lots.
[[nodiscard]] inline std::vector<std::string> other_editions(const shelf_today& t) {
  std::map<std::string, std::vector<std::string>> lots;
  for (const lot_today& l : t.lots) {
    if (l.other_edition)
      lots[l.lot.record.edition_name + ", " + l.lot.record.edition_version].push_back(
          l.lot.record.lot);
  }
  std::vector<std::string> out;
  for (const auto& [edition, names] : lots) out.push_back(edition + ": " + joined(names, "and"));
  return out;
}

}  // namespace jarproof::detail
