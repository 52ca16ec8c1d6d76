// The clock of a canning day as iCalendar (RFC 5545), for the timers of a phone.
//
//   const auto calendar = jarproof::icalendar(day, edition);
//   if (calendar) save(*calendar);                  // needs a date and `start` or `finish-by`
//
// Times are local and floating (RFC 5545, 3.3.5). UID and DTSTAMP come from the content, so that
// the same day gives the same bytes. SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>

#include "jarproof/day.hpp"
#include "jarproof/format/day_text.hpp"
#include "jarproof/result.hpp"
#include "jarproof/version.hpp"

namespace jarproof {

namespace detail {

/// A text value (RFC 5545, 3.3.11).
[[nodiscard]] inline std::string calendar_text(std::string_view text) {
  std::string out;
  for (const char c : valid_utf8(text)) {
    if (c == '\\' || c == ';' || c == ',') out += '\\';
    if (c == '\n') {
      out += "\\n";
    } else if (static_cast<unsigned char>(c) >= 0x20) {
      out += c;
    }
  }
  return out;
}

/// One content line: at most 75 octets, the rest on lines that begin with a blank (3.1). A
/// character is never cut in two.
[[nodiscard]] inline std::string calendar_line(const std::string& text) {
  constexpr std::size_t most = 75;
  std::string out;
  std::size_t at = 0;
  std::size_t room = most;
  while (text.size() - at > room) {
    std::size_t end = at + room;
    while ((static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) --end;
    out += text.substr(at, end - at) + "\r\n ";
    at = end;
    room = most - 1;  // for the blank
  }
  return out + text.substr(at) + "\r\n";
}

/// 64 bits of FNV-1a: an id from the content, not a secret.
[[nodiscard]] inline std::string content_id(std::string_view text) {
  std::uint64_t hash = 14'695'981'039'346'656'037U;
  for (const char c : text) {
    hash ^= static_cast<unsigned char>(c);
    hash *= 1'099'511'628'211U;
  }
  std::string out;
  constexpr std::string_view hex = "0123456789abcdef";
  for (int shift = 60; shift >= 0; shift -= 4) out += hex[(hash >> shift) & 15];
  return out;
}

class calendar_writer {
 public:
  calendar_writer(const day_plan& d, const edition& rules) : d_(d), rules_(rules) {}

  [[nodiscard]] std::string take() {
    line("BEGIN:VCALENDAR");
    line("VERSION:2.0");
    line("PRODID:-//jarproof//canning day " + std::string(library_version) + "//EN");
    line("CALSCALE:GREGORIAN");
    for (const day_load& l : d_.loads) write_load(l);
    line("END:VCALENDAR");
    return std::move(out_);
  }

 private:
  const day_plan& d_;
  const edition& rules_;
  std::string out_;

  void line(const std::string& text) { out_ += calendar_line(text); }

  /// `20260814T143000`, minutes from the start of the day.
  [[nodiscard]] std::string moment(int minute) const {
    const int at = *d_.start_min + minute;
    const calendar_date day = days_after(date_of(d_.date), at / minutes_a_day);
    return four_digits(day.year) + two_digits(day.month) + two_digits(day.day) + "T" +
           two_digits(at / 60 % 24) + two_digits(at % 60) + "00";
  }

  void event(int from, int to, const std::string& summary, const std::string& says,
             const std::string& alarm) {
    const calendar_date day = date_of(d_.date);
    line("BEGIN:VEVENT");
    line("UID:" + content_id(moment(from) + moment(to) + summary + says) + "@jarproof");
    line("DTSTAMP:" + four_digits(day.year) + two_digits(day.month) + two_digits(day.day) +
         "T000000Z");
    line("DTSTART:" + moment(from));
    line("DTEND:" + moment(to));
    line("SUMMARY:" + calendar_text(summary));
    line("DESCRIPTION:" + calendar_text(says));
    line("TRANSP:OPAQUE");
    if (!alarm.empty()) {
      line("BEGIN:VALARM");
      line("ACTION:DISPLAY");
      line("TRIGGER;RELATED=END:PT0S");
      line("DESCRIPTION:" + calendar_text(alarm));
      line("END:VALARM");
    }
    line("END:VEVENT");
  }

  void write_load(const day_load& l) {
    const std::string load =
        "Load " + std::to_string(l.number) + " of " + std::to_string(d_.loads.size()) + ": ";
    const std::string jars = load_jars_text(d_, l);
    int end = 0;
    for (const day_stage& s : l.stages) {
      if (s.id != "next-load") end = s.to_min;
      if (s.from_min == s.to_min) continue;
      std::string says = jars + ".";
      std::string alarm;
      if (s.id == "process") {
        says +=
            " Planned. The time counts from the real moment on, by a timer, and is never cut to "
            "keep to the clock.";
        alarm = load + "planned end of the " + s.what +
                ". Turn the heat off only when your timer says so.";
      } else if (s.id == "vent") {
        alarm = load + "planned end of venting. Close the vent after the full minutes.";
      } else if (s.id == "rest") {
        alarm = load + "planned end of the rest. Lift the jars out.";
      }
      event(s.from_min, s.to_min, load + s.what, says, alarm);
    }
    const day_number* least = number_of(rules_, "cool-least");
    const day_number* most = number_of(rules_, "cool-most");
    if (least == nullptr || most == nullptr) return;
    event(end + least->thousandths * 60 / 1'000, end + most->thousandths * 60 / 1'000,
          load + "test the seals", jars + ".", {});
  }
};

}  // namespace detail

/// The calendar, with an alarm at the planned end of each vent, process and rest. Problems where
/// the day has no loads, no date or no time of day.
[[nodiscard]] inline result<std::string> icalendar(const day_plan& day, const edition& rules) {
  problems errors;
  const std::string name = day.batches.empty() ? std::string() : day.batches.front().judged.source;
  if (day.loads.empty())
    errors.push_back({name, 0, 0, "", "a calendar needs canner loads",
                      "write `canner` and one of `batch`, `jars` or `from`"});
  if (day.date.empty())
    errors.push_back({name, 0, 0, "date", "a calendar needs a date", "write `date: 2026-08-14`"});
  if (!day.start_min && !day.loads.empty())
    errors.push_back(
        {name, 0, 0, "start", "a calendar needs a time of day", "write `start: 14:30`"});
  if (!errors.empty()) return errors;
  return detail::calendar_writer(day, rules).take();
}

}  // namespace jarproof
