// The parts of a day by the clock, a bar for each canner load.
//
//   jarproof::page_strip strip{"day", "The day by the clock", {}};
//   strip.rows.push_back({"Load 1", {{570, 600, "heat up", jarproof::strip_look::heat}}});
//   jarproof::html_writer w;
//   jarproof::write_strip(w, strip);      // picture and a table for each load
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/chart_scale.hpp"
#include "jarproof/detail/svg.hpp"
#include "jarproof/format/clock.hpp"
#include "jarproof/format/html.hpp"

namespace jarproof {

/// How a part of a day is drawn.
enum class strip_look { heat, work, rest };

/// Minutes from the midnight before the day; a day later is 1,440 more. Without a clock, from the
/// start.
struct strip_part {
  int from_min = 0;
  int through_min = 0;
  std::string what;
  strip_look look = strip_look::work;
  int least_min = 0;  ///< how short it may be; 0 where that is not said
};

/// One canner load.
struct strip_row {
  std::string name;  ///< short: it stands in the picture
  std::vector<strip_part> parts;
  std::string says = {};  ///< above its table, in place of the name
  std::string ends = "done";
};

/// A day by the clock.
struct page_strip {
  std::string id;  ///< unlike every other id of the page
  std::string title;
  std::vector<strip_row> rows;
  bool by_clock = true;  ///< else minutes count from the start of the day
};

namespace detail {

/// What happens in a day, each once, in the order in which a load goes through it; a part is known
/// by its place.
[[nodiscard]] inline std::vector<std::string> steps_of(const page_strip& strip) {
  std::vector<std::string> out;
  for (const strip_row& row : strip.rows) {
    std::size_t next = 0;
    for (const strip_part& part : row.parts) {
      auto at = std::find(out.begin(), out.end(), part.what);
      if (at == out.end())
        at = out.insert(out.begin() + static_cast<std::ptrdiff_t>(next), part.what);
      next = static_cast<std::size_t>(at - out.begin()) + 1;
    }
  }
  return out;
}

[[nodiscard]] inline std::string number_of(const std::vector<std::string>& steps,
                                           const std::string& what) {
  return std::to_string(std::find(steps.begin(), steps.end(), what) - steps.begin() + 1);
}

/// `14:30` by the clock; else the time since the start, `1:25 h`.
[[nodiscard]] inline std::string strip_time(const page_strip& strip, std::int64_t minutes) {
  if (strip.by_clock) return time_of_day_text(minutes);
  return std::to_string(minutes / 60) + ":" + std::to_string(100 + minutes % 60).substr(1) + " h";
}

/// The part of a load that is this step; null where it has none.
[[nodiscard]] inline const strip_part* part_of(const strip_row& row, const std::string& step) {
  for (const strip_part& part : row.parts) {
    if (part.what == step) return &part;
  }
  return nullptr;
}

/// `60`, `12 to 15`
[[nodiscard]] inline std::string minutes_of(const strip_part& part) {
  const int minutes = part.through_min - part.from_min;
  const bool may_be_shorter = part.least_min > 0 && part.least_min < minutes;
  return (may_be_shorter ? std::to_string(part.least_min) + " to " : "") + std::to_string(minutes);
}

/// True for two or three loads, which a phone has room for, where a step takes the same minutes in
/// each and comes once.
[[nodiscard]] inline bool share_a_table(const page_strip& strip,
                                        const std::vector<std::string>& steps) {
  if (strip.rows.size() < 2 || strip.rows.size() > 3) return false;
  for (const std::string& step : steps) {
    std::string minutes;
    for (const strip_row& row : strip.rows) {
      for (const strip_part& part : row.parts) {
        if (part.what != step) continue;
        if (part_of(row, step) != &part) return false;
        if (!minutes.empty() && minutes != minutes_of(part)) return false;
        minutes = minutes_of(part);
      }
    }
  }
  return true;
}

[[nodiscard]] inline std::string_view class_of(strip_look look) noexcept {
  return look == strip_look::heat ? "heat" : look == strip_look::work ? "work" : "rest";
}

}  // namespace detail

/// The picture alone; `write_strip_tables` adds what belongs to it.
[[nodiscard]] inline std::string strip_svg(const page_strip& strip) {
  using namespace detail;
  constexpr std::int64_t left = 60;
  constexpr std::int64_t right = 3'540;
  constexpr std::int64_t row_height = 620;
  extent minutes;
  for (const strip_row& row : strip.rows) {
    for (const strip_part& part : row.parts) {
      minutes.add(part.from_min * std::int64_t{1'000});
      minutes.add(part.through_min * std::int64_t{1'000});
    }
  }
  const scale clock = minute_scale(minutes, 0);
  const auto x_of = [&](std::int64_t thousandths) { return clock.at(thousandths, left, right); };
  const std::int64_t bottom = 160 + row_height * static_cast<std::int64_t>(strip.rows.size());
  const std::vector<std::string> steps = steps_of(strip);
  std::string words;
  for (const strip_row& row : strip.rows) {
    words += row.name + ":";
    for (const strip_part& part : row.parts)
      words += " " + strip_time(strip, part.from_min) + " " + part.what + ",";
    if (!row.parts.empty()) words += " until " + strip_time(strip, row.parts.back().through_min);
    words += ". ";
  }
  svg_writer svg(strip.id, 3'600, bottom + 300, strip.title, words);
  for (const std::int64_t tick : clock.ticks()) {
    svg.line(x_of(tick), 60, x_of(tick), bottom + 60, "grid");
    // At the edge a time would be cut off.
    const std::int64_t x = std::max<std::int64_t>(210, std::min<std::int64_t>(x_of(tick), 3'390));
    svg.text(x, bottom + 210, strip_time(strip, floor_div(tick, 1'000)).substr(0, 5), "",
             anchor::middle);
  }
  std::int64_t y = 190;
  for (const strip_row& row : strip.rows) {
    svg.text(left, y, row.name, "strong");
    for (const strip_part& part : row.parts) {
      const std::int64_t from = x_of(part.from_min * std::int64_t{1'000});
      const std::int64_t end = x_of(part.through_min * std::int64_t{1'000});
      if (end <= from) continue;
      svg.rect(from, y + 70, end - from, 340, class_of(part.look));
      constexpr std::int64_t digit = 100;
      const std::string number = number_of(steps, part.what);
      if (end - from < digit * static_cast<std::int64_t>(number.size()) + 30) continue;
      svg.text((from + end) / 2, y + 290, number,
               part.look == strip_look::rest ? "inside" : "light", anchor::middle);
    }
    y += row_height;
  }
  svg.line(left, bottom, right, bottom, "axis");
  return svg.take();
}

/// The picture with its name; `write_strip_tables` must stand below it.
inline void write_strip_picture(html_writer& w, const page_strip& strip) {
  if (strip.rows.empty()) return;
  w.open("figure", "class=\"wide\"");
  w.raw(strip_svg(strip));
  w.element("figcaption", strip.title + ". The numbers are those of the steps below.");
  w.close();
}

namespace detail {

inline void write_header_row(html_writer& w, const std::vector<std::string>& names) {
  w.open("thead");
  w.open("tr");
  for (const std::string& name : names) w.element("th", name, "scope=\"col\"");
  w.close();
  w.close();
}

/// One table for all loads, a column for each.
inline void write_strip_columns(html_writer& w, const page_strip& strip,
                                const std::vector<std::string>& steps) {
  w.open("ul", "class=\"key\"");
  for (const strip_row& row : strip.rows) w.element("li", row.says.empty() ? row.name : row.says);
  w.close();
  w.open("table", "class=\"columns\"");
  std::vector<std::string> names = {"step", "min"};
  for (const strip_row& row : strip.rows) names.push_back(row.name);
  write_header_row(w, names);
  w.open("tbody");
  for (const std::string& step : steps) {
    std::vector<std::string> times;
    std::string minutes;
    for (const strip_row& row : strip.rows) {
      const strip_part* part = part_of(row, step);
      times.push_back(part == nullptr ? "" : strip_time(strip, part->from_min));
      if (part != nullptr) minutes = minutes_of(*part);
    }
    w.open("tr");
    w.element("td", number_of(steps, step) + ". " + step);
    w.element("td", minutes);
    for (const std::string& time : times) w.element("td", time);
    w.close();
  }
  for (const strip_row& row : strip.rows) {
    if (row.parts.empty() || row.ends.empty()) continue;
    w.open("tr");
    w.element("td", row.ends);
    w.element("td", "");
    for (const strip_row& other : strip.rows)
      w.element("td", &other == &row ? strip_time(strip, row.parts.back().through_min) : "");
    w.close();
  }
  w.close();
  w.close();
}

/// A table for each load.
inline void write_strip_rows(html_writer& w, const page_strip& strip,
                             const std::vector<std::string>& steps) {
  w.open("div", "class=\"pictures loads\"");
  for (const strip_row& row : strip.rows) {
    w.open("table");
    w.element("caption", row.says.empty() ? row.name : row.says);
    write_header_row(w, {strip.by_clock ? "from" : "after", "step", "min"});
    w.open("tbody");
    for (const strip_part& part : row.parts) {
      w.open("tr");
      w.element("th", strip_time(strip, part.from_min), "scope=\"row\"");
      w.element("td", number_of(steps, part.what) + ". " + part.what);
      w.element("td", minutes_of(part));
      w.close();
    }
    if (!row.parts.empty() && !row.ends.empty()) {
      w.open("tr");
      w.element("th", strip_time(strip, row.parts.back().through_min), "scope=\"row\"");
      w.element("td", row.ends);
      w.element("td", "");
      w.close();
    }
    w.close();
    w.close();
  }
  w.close();
}

}  // namespace detail

/// What, from when, how long: few loads that take the same minutes for a step share a table.
inline void write_strip_tables(html_writer& w, const page_strip& strip) {
  if (strip.rows.empty()) return;
  const std::vector<std::string> steps = detail::steps_of(strip);
  if (detail::share_a_table(strip, steps)) {
    detail::write_strip_columns(w, strip, steps);
  } else {
    detail::write_strip_rows(w, strip, steps);
  }
}

inline void write_strip(html_writer& w, const page_strip& strip) {
  write_strip_picture(w, strip);
  write_strip_tables(w, strip);
}

}  // namespace jarproof
