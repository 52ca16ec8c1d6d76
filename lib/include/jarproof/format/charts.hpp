// A value over the minutes of a run, drawn.
//
//   jarproof::page_chart chart;
//   chart.id = "pressure";   chart.title = "Pressure over time";   chart.y_label = "psi";
//   chart.courses = {{{0, 0}, {12'000, 15'200}}};      // minute 12: 15.2 psi
//   jarproof::html_writer w;
//   jarproof::write_chart(w, chart);      // picture and, in words, all that is marked in it
//
// Plain structs: whoever has readings or loads fills them. Values are whole thousandths.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/chart_scale.hpp"
#include "jarproof/detail/svg.hpp"
#include "jarproof/format/clock.hpp"
#include "jarproof/format/html.hpp"
#include "jarproof/format/numbers.hpp"

namespace jarproof {

/// A reading.
struct chart_point {
  std::int64_t x = 0;  ///< thousandths of a minute
  std::int64_t y = 0;  ///< thousandths of the unit of `y_label`
};

/// A value to be held, drawn across from minute to minute.
struct chart_level {
  std::int64_t y = 0;
  std::string says;  ///< `15 psi required`
};

enum class span_kind {
  process,  ///< the time that counts
  failing,  ///< where what is required was not held
  gap       ///< no readings
};

/// A stretch of time, thousandths of a minute.
struct chart_span {
  std::int64_t from = 0;
  std::int64_t through = 0;
  span_kind kind = span_kind::process;
  std::string says;
};

/// Something that happened at a minute.
struct chart_event {
  std::int64_t x = 0;
  std::string says;
};

/// A value over time.
struct page_chart {
  std::string id;  ///< unlike every other id of the page
  std::string title;
  std::string description;  ///< what it shows, in a sentence
  std::string y_label;  ///< empty where the height means nothing: then no values stand beside it
  std::vector<std::vector<chart_point>> courses;  ///< joined within, not from one to the next
  std::vector<chart_level> levels;
  std::vector<chart_span> spans;
  std::vector<chart_event> events;
  std::optional<std::int64_t> y_from;  ///< where the axis begins at the latest
  std::optional<int> clock_from_min;  ///< minute of the day at minute 0; then clock times are shown
};

namespace detail {

/// `21.5 min`, or the clock; seconds where it is no whole minute.
[[nodiscard]] inline std::string moment_text(const page_chart& chart, std::int64_t x) {
  if (chart.clock_from_min) {
    std::string out = time_of_day_text(*chart.clock_from_min + floor_div(x, 1'000));
    const std::int64_t seconds = ((x - floor_div(x, 1'000) * 1'000) * 60 + 500) / 1'000;
    if (seconds > 0)
      out.insert(5, ":" + std::to_string(100 + std::min<std::int64_t>(seconds, 59)).substr(1));
    return out;
  }
  return decimal_of_thousandths(x) + " min";
}

/// `A` to `Z`, then numbers.
[[nodiscard]] inline std::string badge_of(std::size_t index) {
  return index < 26 ? std::string(1, static_cast<char>('A' + index)) : std::to_string(index + 1);
}

/// Slanted lines across a rectangle, so that it is known without its colour.
[[nodiscard]] inline std::string hatching(std::int64_t left, std::int64_t top, std::int64_t right,
                                          std::int64_t bottom) {
  std::string out;
  for (std::int64_t start = left - (bottom - top); start < right; start += 90) {
    const std::int64_t from = std::max<std::int64_t>(0, left - start);
    const std::int64_t to = std::min(bottom - top, right - start);
    if (from >= to) continue;
    out += path_point('M', start + from, bottom - from) + path_point('L', start + to, bottom - to);
  }
  return out;
}

/// What a chart is drawn on: minutes from left to right, values upwards.
struct chart_frame {
  static constexpr std::int64_t left = 420;
  static constexpr std::int64_t right = 3'540;
  static constexpr std::int64_t top = 560;
  static constexpr std::int64_t bottom = 2'160;
  scale x;
  scale y;

  [[nodiscard]] std::int64_t x_at(std::int64_t value) const { return x.at(value, left, right); }
  [[nodiscard]] std::int64_t y_at(std::int64_t value) const { return y.at(value, bottom, top); }
};

[[nodiscard]] inline chart_frame frame_of(const page_chart& chart) {
  extent x;
  extent y;
  for (const auto& course : chart.courses) {
    for (const chart_point& p : course) {
      x.add(p.x);
      y.add(p.y);
    }
  }
  for (const chart_level& l : chart.levels) y.add(l.y);
  for (const chart_span& s : chart.spans) {
    x.add(s.from);
    x.add(s.through);
  }
  for (const chart_event& e : chart.events) x.add(e.x);
  if (chart.y_from) y.add(*chart.y_from);
  const std::int64_t shift = chart.clock_from_min ? *chart.clock_from_min * std::int64_t{1'000} : 0;
  return {minute_scale(x, shift), value_scale(y)};
}

inline void draw_spans(svg_writer& svg, const page_chart& chart, const chart_frame& frame,
                       span_kind kind) {
  for (const chart_span& s : chart.spans) {
    if (s.kind != kind) continue;
    constexpr std::int64_t least = 30;  // what is short is seen too
    const std::int64_t from = std::min(frame.x_at(s.from), chart_frame::right - least);
    const std::int64_t end = std::max(frame.x_at(s.through), from + least);
    svg.rect(from, chart_frame::top, end - from, chart_frame::bottom - chart_frame::top,
             kind == span_kind::process ? "process"
             : kind == span_kind::gap   ? "gap"
                                        : "failing");
    if (kind == span_kind::failing)
      svg.path(hatching(from, chart_frame::top, end, chart_frame::bottom), "hatch");
  }
}

/// The points of a course, as many as can be told apart: of those that share a column the first,
/// the lowest, the highest and the last, so that no dip is lost.
[[nodiscard]] inline std::string course_path(const std::vector<chart_point>& course,
                                             const chart_frame& frame) {
  std::string out;
  const auto add = [&](const chart_point& p) {
    out += path_point(out.empty() ? 'M' : 'L', frame.x_at(p.x), frame.y_at(p.y));
  };
  for (std::size_t i = 0; i < course.size();) {
    std::size_t end = i;
    std::size_t low = i;
    std::size_t high = i;
    const std::int64_t column = frame.x_at(course[i].x) / 10;
    for (; end < course.size() && frame.x_at(course[end].x) / 10 == column; ++end) {
      if (course[end].y < course[low].y) low = end;
      if (course[end].y > course[high].y) high = end;
    }
    std::array<std::size_t, 4> kept = {i, low, high, end - 1};
    std::sort(kept.begin(), kept.end());
    for (std::size_t k = 0; k < kept.size(); ++k) {
      if (k == 0 || kept[k] != kept[k - 1]) add(course[kept[k]]);
    }
    i = end;
  }
  return out;
}

inline void draw_courses(svg_writer& svg, const page_chart& chart, const chart_frame& frame) {
  std::size_t count = 0;
  for (const auto& course : chart.courses) count += course.size();
  for (const auto& course : chart.courses) {
    if (course.size() > 1) svg.path(course_path(course, frame), "course");
    constexpr std::size_t few = 60;  // more would run together
    if (count > few && course.size() > 1) continue;
    for (const chart_point& p : course) svg.circle(frame.x_at(p.x), frame.y_at(p.y), 28, "spot");
  }
}

inline void draw_axes(svg_writer& svg, const page_chart& chart, const chart_frame& frame) {
  for (const std::int64_t value : frame.y.ticks()) {
    if (chart.y_label.empty()) break;
    svg.line(chart_frame::left, frame.y_at(value), chart_frame::right, frame.y_at(value), "grid");
    svg.text(chart_frame::left - 70, frame.y_at(value) + 50, decimal_of_thousandths(value), "",
             anchor::end);
  }
  svg.text(40, 160, chart.y_label, "strong");
  for (const std::int64_t value : frame.x.ticks()) {
    const std::int64_t x = frame.x_at(value);
    svg.line(x, chart_frame::bottom, x, chart_frame::bottom + 60, "axis");
    const std::string text = chart.clock_from_min
                                 ? time_of_day_text(*chart.clock_from_min + floor_div(value, 1'000))
                                 : decimal_of_thousandths(value);
    // The place for a day stands beside the picture, not below each tick.
    svg.text(std::min<std::int64_t>(x, 3'390), chart_frame::bottom + 210, text.substr(0, 5), "",
             anchor::middle);
  }
  svg.line(chart_frame::left, chart_frame::bottom, chart_frame::right, chart_frame::bottom, "axis");
  svg.line(chart_frame::left, chart_frame::top, chart_frame::left, chart_frame::bottom, "axis");
  svg.text((chart_frame::left + chart_frame::right) / 2, chart_frame::bottom + 410,
           chart.clock_from_min ? "time of day" : "minutes", "", anchor::middle);
}

/// A sign at the edge would be cut off.
[[nodiscard]] constexpr std::int64_t within_picture(std::int64_t x) noexcept {
  return x < 3'500 ? x : 3'500;
}

inline void draw_marks(svg_writer& svg, const page_chart& chart, const chart_frame& frame) {
  // Neighbours stand in two rows, so that their numbers stay apart.
  std::array<std::int64_t, 2> row_end = {-1'000, -1'000};
  for (std::size_t i = 0; i < chart.events.size(); ++i) {
    const std::int64_t x = frame.x_at(chart.events[i].x);
    const std::size_t row = x - row_end[0] > 200 ? 0 : 1;
    row_end[row] = x;
    const std::int64_t y = row == 0 ? 410 : 220;
    const std::int64_t held = within_picture(x);
    svg.line(x, y, x, chart_frame::bottom, "leader");
    svg.circle(held, y, 90, "event");
    svg.text(held, y + 48, std::to_string(i + 1), "light", anchor::middle);
  }
  std::size_t failing = 0;
  for (const chart_span& s : chart.spans) {
    if (s.kind != span_kind::failing) continue;
    const std::int64_t x = within_picture((frame.x_at(s.from) + frame.x_at(s.through)) / 2);
    svg.circle(x, chart_frame::bottom - 130, 90, "badge");
    svg.text(x, chart_frame::bottom - 82, badge_of(failing++), "light", anchor::middle);
  }
}

}  // namespace detail

/// The picture alone; `write_chart` adds the words that belong to it.
[[nodiscard]] inline std::string chart_svg(const page_chart& chart) {
  using namespace detail;
  const chart_frame frame = frame_of(chart);
  svg_writer svg(chart.id, 3'600, chart_frame::bottom + 460, chart.title,
                 chart.description.empty() ? chart.title : chart.description);
  draw_spans(svg, chart, frame, span_kind::process);
  draw_spans(svg, chart, frame, span_kind::gap);
  draw_spans(svg, chart, frame, span_kind::failing);
  draw_axes(svg, chart, frame);
  for (const chart_level& l : chart.levels)
    svg.line(chart_frame::left, frame.y_at(l.y), chart_frame::right, frame.y_at(l.y), "required");
  draw_courses(svg, chart, frame);
  draw_marks(svg, chart, frame);
  return svg.take();
}

/// The picture and, as a list below it, what each line, shading, letter and number in it means.
inline void write_chart(html_writer& w, const page_chart& chart) {
  w.open("figure", "class=\"wide\"");
  w.raw(chart_svg(chart));
  w.element("figcaption", chart.description.empty() ? chart.title : chart.description);
  w.open("ul", "class=\"key\"");
  const auto entry = [&](std::string_view sign, const std::string& words) {
    w.open("li");
    w.element("b", sign);
    w.sentence(" " + words);
    w.close();
  };
  for (const chart_level& l : chart.levels) entry("Dashed line:", l.says);
  std::size_t failing = 0;
  for (const span_kind kind : {span_kind::process, span_kind::failing, span_kind::gap}) {
    for (const chart_span& s : chart.spans) {
      if (s.kind != kind) continue;
      entry(kind == span_kind::process   ? "Shaded:"
            : kind == span_kind::failing ? detail::badge_of(failing++)
                                         : "Dashed box:",
            detail::moment_text(chart, s.from) +
                (s.from == s.through ? "" : " to " + detail::moment_text(chart, s.through)) +
                (s.says.empty() ? "" : ": " + s.says));
    }
  }
  for (std::size_t i = 0; i < chart.events.size(); ++i) {
    entry(std::to_string(i + 1),
          detail::moment_text(chart, chart.events[i].x) + ": " + chart.events[i].says);
  }
  w.close();
  w.close();
}

}  // namespace jarproof
