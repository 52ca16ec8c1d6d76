// The text of a YAML file at the marks of yaml-cpp, and what yaml-cpp does not tell about it.
// SPDX-License-Identifier: MIT
#pragma once

#include <yaml-cpp/mark.h>

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/words.hpp"
#include "jarproof/document.hpp"

namespace jarproof {

/// Where a colon joins a key to its value without a blank, such as `pack:raw`.
[[nodiscard]] inline std::size_t glued_colon(std::string_view line) {
  const std::size_t colon = line.find(':');
  if (colon == std::string_view::npos || colon + 1 >= line.size()) return std::string_view::npos;
  const std::string_view key = detail::trim(line.substr(0, colon));
  const bool word = !key.empty() && key.find(' ') == std::string_view::npos;
  return word && !detail::is_space(line[colon + 1]) ? colon : std::string_view::npos;
}

/// A text whose places yaml-cpp names by marks.
class marked_text {
 public:
  explicit marked_text(std::string_view text) : text_(text) {
    line_starts_.push_back(0);
    for (std::size_t i = 0; i < text.size(); ++i) {
      if (text[i] == '\n') line_starts_.push_back(i + 1);
    }
  }

  [[nodiscard]] std::size_t lines() const noexcept { return line_starts_.size(); }
  [[nodiscard]] std::ptrdiff_t count(char c) const {
    return std::count(text_.begin(), text_.end(), c);
  }
  [[nodiscard]] bool has(const YAML::Mark& mark, char c) const {
    const std::size_t at = offset(mark);
    return at < text_.size() && text_[at] == c;
  }

  /// yaml-cpp counts lines and columns from 0, and columns in bytes.
  [[nodiscard]] std::pair<int, int> place(const YAML::Mark& mark) {
    if (mark.is_null()) return {1, 1};
    const auto line = std::min(static_cast<std::size_t>(mark.line), line_starts_.size() - 1);
    const std::size_t start = line_starts_[line];
    const auto bytes = std::min(static_cast<std::size_t>(mark.column), text_.size() - start);
    // A line is counted once, however many values stand in it.
    if (counted_line_ != line || counted_bytes_ > bytes) {
      counted_line_ = line;
      counted_bytes_ = 0;
      counted_characters_ = 0;
    }
    counted_characters_ +=
        detail::characters(text_.substr(start + counted_bytes_, bytes - counted_bytes_));
    counted_bytes_ = bytes;
    return {mark.line + 1, static_cast<int>(counted_characters_) + 1};
  }

  /// True where `---` stands at the mark, or `...` on the last line with text above it.
  [[nodiscard]] bool begins_document(const YAML::Mark& mark) const {
    if (mark.is_null()) return true;
    const std::string_view before = text_.substr(0, std::min(offset(mark), text_.size()));
    const std::string_view at = text_.substr(before.size());
    if (at.substr(0, 3) == "---" || at.substr(0, 1) == "%") return true;
    std::string_view above = detail::trim(before);
    while (!above.empty()) {
      const std::size_t line_start = above.rfind('\n') + 1;
      const std::string_view last = detail::trim(above.substr(line_start));
      if (!last.empty() && last.front() != '#') return last == "..." || last == "---";
      above = detail::trim(above.substr(0, line_start));
    }
    return true;
  }

  /// The lone dash of an item without a value, whose mark stands further down.
  [[nodiscard]] std::pair<int, int> lone_dash(const node& sequence, int mark_line,
                                              std::pair<int, int> otherwise) const {
    const int from = sequence.items.empty() ? sequence.line : sequence.items.back().line + 1;
    const auto last = std::min(static_cast<std::size_t>(mark_line), line_starts_.size());
    for (auto line = static_cast<std::size_t>(from); line <= last; ++line) {
      const std::string_view rest = text_.substr(line_starts_[line - 1]);
      const std::string_view whole = rest.substr(0, rest.find('\n'));
      if (detail::trim(whole) != "-") continue;
      return {static_cast<int>(line), static_cast<int>(whole.find('-')) + 1};
    }
    return otherwise;
  }

  /// The line of a mark as far as the mark.
  [[nodiscard]] std::string_view line_before(const YAML::Mark& mark) const {
    const auto line = static_cast<std::size_t>(mark.line);
    if (mark.is_null() || line >= line_starts_.size()) return {};
    return text_.substr(line_starts_[line], static_cast<std::size_t>(mark.column));
  }

  [[nodiscard]] std::string_view line_above(const YAML::Mark& mark) const {
    const auto line = static_cast<std::size_t>(mark.line);
    if (mark.is_null() || line == 0 || line >= line_starts_.size()) return {};
    return text_.substr(line_starts_[line - 1], line_starts_[line] - 1 - line_starts_[line - 1]);
  }

  [[nodiscard]] bool quote_is_closed(const YAML::Mark& mark) const {
    const std::size_t at = offset(mark);
    if (at >= text_.size() || (text_[at] != '"' && text_[at] != '\'')) return true;
    return quote_end(at) != text_.size();
  }

  /// yaml-cpp does not tell how a scalar was written; the text at its mark does.
  [[nodiscard]] scalar_style style_of(const YAML::Mark& mark, const std::string& value) const {
    const std::size_t at = offset(mark);
    if (at >= text_.size()) return scalar_style::plain;
    const char first = text_[at];
    if (first == '|') return scalar_style::literal;
    if (first == '>') return scalar_style::folded;
    if (first == '"' || first == '\'') {
      const bool one_line =
          text_.substr(at, quote_end(at) - at).find('\n') == std::string_view::npos;
      return one_line ? scalar_style::quoted : scalar_style::folded;
    }
    return text_.substr(at, value.size()) == value ? scalar_style::plain : scalar_style::folded;
  }

  /// Column where the lines of a literal block begin, or `otherwise` where it has no text.
  [[nodiscard]] int literal_column(const YAML::Mark& mark, const std::string& value,
                                   int otherwise) const {
    const std::size_t text = value.find_first_not_of(" \n");
    if (text == std::string::npos) return otherwise;
    const std::size_t line_start = value.rfind('\n', text);
    const std::size_t kept = text - (line_start == std::string::npos ? 0 : line_start + 1);
    for (auto line = static_cast<std::size_t>(mark.line) + 1; line < line_starts_.size(); ++line) {
      const std::string_view rest = text_.substr(line_starts_[line]);
      const std::size_t first = rest.find_first_not_of(' ');
      if (first == std::string_view::npos || rest[first] == '\n' || rest[first] == '\r') continue;
      return static_cast<int>(first - std::min(first, kept)) + 1;
    }
    return otherwise;
  }

 private:
  std::string_view text_;
  std::vector<std::size_t> line_starts_;
  std::size_t counted_line_ = 0;
  std::size_t counted_bytes_ = 0;
  std::size_t counted_characters_ = 0;

  [[nodiscard]] std::size_t offset(const YAML::Mark& mark) const {
    return mark.is_null() ? text_.size() : static_cast<std::size_t>(mark.pos);
  }

  /// Where the quoted text that begins at `at` closes; the end of the text where it does not.
  [[nodiscard]] std::size_t quote_end(std::size_t at) const {
    const char quote = text_[at];
    for (std::size_t i = at + 1; i < text_.size(); ++i) {
      if (quote == '"' && text_[i] == '\\') {
        ++i;
      } else if (text_[i] == quote) {
        if (quote == '"' || i + 1 >= text_.size() || text_[i + 1] != quote) return i;
        ++i;  // '' stands for one quote
      }
    }
    return text_.size();
  }
};

}  // namespace jarproof
