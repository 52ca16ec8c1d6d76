// The shelf: which lots stand on it, and how many jars are left.
//
//   result<std::string> line = record_line(report, plan, document, edition);   // to be added
//   shelf s;
//   for (const document& d : lines) if (auto line = read_record(d)) problems p = s.add(*line);
//
// What it comes to on a day, and what to eat first, is told by jarproof/shelf_today.hpp.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <variant>
#include <vector>

#include "jarproof/detail/shelf_reader.hpp"
#include "jarproof/detail/shelf_writer.hpp"
#include "jarproof/document.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/report.hpp"
#include "jarproof/shelf_record.hpp"
#include "jarproof/version.hpp"

namespace jarproof {

/// True for an object that is, or is meant to be, a line of a shelf record; it is no plan.
[[nodiscard]] inline bool is_record(const node& n) noexcept {
  return n.kind == node_kind::map && find(n, "record") != nullptr;
}

/// Reads one line of a shelf record. Whether its counts fit the lot is told by `shelf::add`.
[[nodiscard]] inline result<shelf_line> read_record(const document& line) {
  return detail::shelf_reader(line).read();
}

/// The line of one lot, without a line end. `what` is the plan of `r`, `text` the document that it
/// was read from. Refused: a plan that is not accepted, one without `lot`, `date` or `jars`, and a
/// line too long to be read again.
[[nodiscard]] inline result<std::string> record_line(const report& r, const plan& what,
                                                     const document& text, const edition& rules,
                                                     std::optional<shelf_run> run = std::nullopt,
                                                     int unsealed = 0) {
  problems errors;
  const auto refuse = [&](std::string path, std::string message, std::string write) {
    errors.push_back({what.source, what.line, what.column, std::move(path), std::move(message),
                      std::move(write)});
  };
  if (r.verdict != verdict::accepted) {
    refuse("", "the plan is " + std::string(name_of(r.verdict)) + " and is not recorded",
           "record only what is accepted");
    return errors;
  }
  if (!what.lot)
    refuse("lot", "the plan has no `lot`, so its jars cannot be told from others",
           "write `lot: 2026-08-14-a`, another one for each batch");
  if (!what.date) refuse("date", "the plan has no `date`", "write `date: 2026-08-14`");
  if (!what.jars)
    refuse("jars", "the plan has no `jars`, so nothing can be counted",
           "write how many jars there are, such as `jars: 7`");
  if (what.jars && (unsealed < 0 || unsealed > what.jars->value))
    refuse("unsealed", "more jars are unsealed than were put up",
           "write at most " + what.jars->text);
  if (!errors.empty()) return errors;

  shelf_record out;
  out.lot = what.lot->text;
  out.title = r.title;
  out.date = what.date->text;
  out.library = std::string(library_version);
  out.edition_name = std::string(rules.name);
  out.edition_version = std::string(rules.version);
  out.verdict = r.verdict;
  if (r.process != nullptr) out.process = std::string(r.process->id);
  out.required = "null";
  if (r.required) {
    detail::json_writer w;
    detail::write_requirement(w, *r.required);
    out.required = w.take();
  }
  out.plan_text = detail::tree_text(text.root, detail::plain_scalars::as_texts);
  out.jars = what.jars->value;
  if (what.jar) out.jar = what.jar->text;
  out.run = std::move(run);
  out.unsealed = unsealed;
  out.use_by = detail::a_year_after(out.date);
  if (out.use_by.empty()) refuse("date", "the date is too far ahead", "write the day of canning");
  std::string line = detail::line_of(out);
  constexpr std::size_t longest_line = 1 << 20;
  if (line.size() > longest_line)
    refuse("", "the plan is too long to be recorded", "leave out what is not needed");
  if (!errors.empty()) return errors;
  return line;
}

/// One lot with everything that its lines say. Jars eaten or discarded are open ones first, then
/// jars from the shelf.
struct shelf_lot {
  shelf_record record;
  int unsealed = 0;
  int opened = 0;
  int eaten = 0;
  int discarded = 0;
  int open = 0;            ///< opened, and neither eaten nor discarded
  std::string open_since;  ///< day of the first opening of those; empty where none is open
  std::vector<std::pair<std::string, int>> openings;  ///< of those: day and jars, by day
  int left = 0;                                       ///< on the shelf, never opened
  int unsealed_in_log = 0;                            ///< of `unsealed`, what its run log counts
};

/// Lots in the order in which they were recorded.
class shelf {
 public:
  /// Takes one line over. A line that does not fit what stands before it changes nothing, and the
  /// reason is returned. A second record of a lot is its run log, with the same plan; a further one
  /// is the same log written on, which may have more unsealed jars.
  problems add(const shelf_line& line) {
    problems misfits = std::visit([&](const auto& one) { return take(one); }, line);
    lines_ += misfits.empty() ? 1 : 0;
    return misfits;
  }

  [[nodiscard]] const std::vector<shelf_lot>& lots() const noexcept { return lots_; }

  /// What became of jars, in the order of the lines.
  [[nodiscard]] const std::vector<shelf_happening>& happenings() const noexcept {
    return happenings_;
  }

  /// The shelf as it stood on a day: what is dated later has not happened yet.
  [[nodiscard]] shelf as_of(std::string_view day) const {
    shelf out = *this;
    out.happenings_.clear();
    for (shelf_lot& lot : out.lots_) {
      lot.opened = lot.eaten = lot.discarded = lot.open = 0;
      lot.openings.clear();
      lot.open_since.clear();
    }
    for (const shelf_happening& h : happenings_) {
      if (h.what == shelf_event::unsealed) out.lots_[places_.at(h.lot)].unsealed -= h.jars;
    }
    for (shelf_lot& lot : out.lots_) lot.left = lot.record.jars - lot.unsealed;
    for (const shelf_happening& h : happenings_) {
      if (h.date <= day) static_cast<void>(out.take(h));
    }
    return out;
  }

  /// How many lines it was made of.
  [[nodiscard]] std::size_t lines() const noexcept { return lines_; }

  /// Place in `lots()` of the lot with this name.
  [[nodiscard]] std::optional<std::size_t> place_of(const std::string& lot) const {
    const auto at = places_.find(lot);
    if (at == places_.end()) return std::nullopt;
    return at->second;
  }

 private:
  std::vector<shelf_lot> lots_;
  std::unordered_map<std::string, std::size_t> places_;
  std::vector<shelf_happening> happenings_;
  std::size_t lines_ = 0;

  [[nodiscard]] static problems one(const std::string& source, const char* path,
                                    std::string message, std::string write) {
    return {{source, 0, 0, path, std::move(message), std::move(write)}};
  }

  problems take(const shelf_record& r) {
    const std::optional<std::size_t> place = place_of(r.lot);
    if (place) return take_run(lots_[*place], r);
    shelf_lot lot;
    lot.record = r;
    lot.unsealed = r.unsealed;
    lot.unsealed_in_log = r.run ? r.unsealed : 0;
    lot.left = r.jars - r.unsealed;
    places_.emplace(r.lot, lots_.size());
    lots_.push_back(std::move(lot));
    return {};
  }

  problems take_run(shelf_lot& lot, const shelf_record& r) {
    const bool same = r.plan_text == lot.record.plan_text;
    const std::optional<shelf_run>& before = lot.record.run;
    if (same && r.run && before && before->log != r.run->log &&
        r.run->verdict != verdict::accepted) {
      // Of two logs of one lot the graver holds: nobody knows which jars were in which.
      if (before->verdict == verdict::accepted) lot.record.run = r.run;
      return {};
    }
    if (!same || !r.run || (before && before->log != r.run->log)) {
      return one(r.source, "lot",
                 "the lot `" + r.lot + "` is recorded already in " + lot.record.source,
                 "give each batch a `lot` of its own");
    }
    if (before && before->verdict == verdict::rejected && r.run->verdict != verdict::rejected) {
      return one(r.source, "run", "the run log of the lot `" + r.lot + "` was rejected before",
                 "give jars that were processed again a `lot` of their own");
    }
    const int more = r.unsealed - lot.unsealed_in_log;
    if (more < 0) {
      return one(r.source, "unsealed",
                 "the log of the lot `" + r.lot + "` had " + std::to_string(lot.unsealed_in_log) +
                     " unsealed before",
                 "write at least as many");
    }
    if (more > lot.left)
      return too_many(r.source, "unsealed", lot.left + lot.unsealed_in_log, r.lot);
    lot.record.run = r.run;
    lot.unsealed += more;
    lot.unsealed_in_log = r.unsealed;
    lot.left -= more;
    return {};
  }

  [[nodiscard]] static problems too_many(const std::string& source, const char* path, int left,
                                         const std::string& lot) {
    return one(source, path,
               "of the lot `" + lot + "` " +
                   (left == 0 ? "no jar is left"
                              : "only " + std::to_string(left) + " " +
                                    (left == 1 ? "jar is" : "jars are") + " left"),
               left == 0 ? "take the line out, or put the lot right"
                         : "write at most " + std::to_string(left));
  }

  /// The jars that were opened first are eaten or discarded first.
  static void take_opened(shelf_lot& lot, int jars) {
    lot.open -= jars;
    while (jars > 0) {
      auto& [day, count] = lot.openings.front();
      const int taken = std::min(jars, count);
      count -= taken;
      jars -= taken;
      if (count == 0) lot.openings.erase(lot.openings.begin());
    }
  }

  problems take(const shelf_happening& h) {
    const std::optional<std::size_t> place = place_of(h.lot);
    if (!place) {
      std::vector<std::string_view> names;  // of a large shelf, comparing all would be slow
      if (lots_.size() <= 200) {
        for (const shelf_lot& l : lots_) names.push_back(l.record.lot);
      }
      const std::string near = detail::nearest(h.lot, names);
      return one(
          h.source, "lot", "no record of the lot `" + h.lot + "` stands before this line",
          near.empty() ? "write the name of a recorded lot" : "did you mean `" + near + "`?");
    }
    shelf_lot& lot = lots_[*place];
    if (h.date < lot.record.date) {
      return one(h.source, "date", "this is before the lot was put up, " + lot.record.date,
                 "write the day on which it happened");
    }
    const bool from_open = h.what == shelf_event::eaten || h.what == shelf_event::discarded;
    const int there = lot.left + (from_open ? lot.open : 0);
    const std::string_view name = name_of(h.what);
    if (h.jars > there) return too_many(h.source, std::string(name).c_str(), there, h.lot);
    const int open_ones = from_open ? std::min(lot.open, h.jars) : 0;
    take_opened(lot, open_ones);
    lot.left -= h.jars - open_ones;
    if (h.what == shelf_event::opened) {
      lot.open += h.jars;
      const auto later = std::upper_bound(
          lot.openings.begin(), lot.openings.end(), h.date,
          [](const std::string& day, const auto& opening) { return day < opening.first; });
      lot.openings.insert(later, {h.date, h.jars});
    }
    lot.open_since = lot.openings.empty() ? std::string() : lot.openings.front().first;
    int& total = h.what == shelf_event::opened      ? lot.opened
                 : h.what == shelf_event::eaten     ? lot.eaten
                 : h.what == shelf_event::discarded ? lot.discarded
                                                    : lot.unsealed;
    total += h.jars;
    happenings_.push_back(h);
    return {};
  }
};

}  // namespace jarproof
