// Pictures as SVG inside a page. Lengths are whole tenths of a unit; numbers are written without
// streams, so that a picture is the same under every locale.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>

#include "jarproof/format/html.hpp"

namespace jarproof::detail {

/// Tenths as a decimal: 125 is `12.5`.
[[nodiscard]] inline std::string svg_number(std::int64_t tenths) {
  return decimal_of_thousandths(tenths * 100);
}

/// Where a text stands to its point.
enum class anchor { start, middle, end };

/// One picture with its name and its description in words; colours are classes of the style sheet.
class svg_writer {
 public:
  /// `id` must be unlike every other on the page.
  svg_writer(std::string_view id, std::int64_t width, std::int64_t height, std::string_view title,
             std::string_view description) {
    const std::string name = html_text(id);
    out_ = "<svg class=\"drawing\" id=\"" + name + "\" role=\"img\" aria-labelledby=\"" + name +
           "-title " + name + "-desc\" viewBox=\"0 0 " + svg_number(width) + " " +
           svg_number(height) + "\">\n<title id=\"" + name + "-title\">" + html_text(title) +
           "</title>\n<desc id=\"" + name + "-desc\">" + html_text(description) + "</desc>\n";
  }

  void rect(std::int64_t x, std::int64_t y, std::int64_t width, std::int64_t height,
            std::string_view look, std::int64_t round = 0) {
    out_ += "<rect class=\"" + std::string(look) + "\"";
    number("x", x);
    number("y", y);
    number("width", width);
    number("height", height);
    if (round > 0) number("rx", round);
    out_ += "/>\n";
  }
  void line(std::int64_t x1, std::int64_t y1, std::int64_t x2, std::int64_t y2,
            std::string_view look) {
    out_ += "<line class=\"" + std::string(look) + "\"";
    number("x1", x1);
    number("y1", y1);
    number("x2", x2);
    number("y2", y2);
    out_ += "/>\n";
  }
  void circle(std::int64_t x, std::int64_t y, std::int64_t radius, std::string_view look) {
    out_ += "<circle class=\"" + std::string(look) + "\"";
    number("cx", x);
    number("cy", y);
    number("r", radius);
    out_ += "/>\n";
  }
  /// `course` as SVG path data.
  void path(std::string_view course, std::string_view look) {
    out_ += "<path class=\"" + std::string(look) + "\" d=\"" + std::string(course) + "\"/>\n";
  }
  void text(std::int64_t x, std::int64_t y, std::string_view words, std::string_view look = "",
            anchor at = anchor::start) {
    out_ += "<text";
    if (!look.empty()) out_ += " class=\"" + std::string(look) + "\"";
    number("x", x);
    number("y", y);
    if (at != anchor::start)
      out_ += at == anchor::middle ? " text-anchor=\"middle\"" : " text-anchor=\"end\"";
    out_ += ">" + html_text(words) + "</text>\n";
  }
  [[nodiscard]] std::string take() { return std::move(out_) + "</svg>\n"; }

 private:
  void number(std::string_view name, std::int64_t tenths) {
    out_ += " " + std::string(name) + "=\"" + svg_number(tenths) + "\"";
  }

  std::string out_;
};

/// `M` or `L` and a point, for path data.
[[nodiscard]] inline std::string path_point(char command, std::int64_t x, std::int64_t y) {
  return std::string(1, command) + svg_number(x) + " " + svg_number(y);
}

}  // namespace jarproof::detail
