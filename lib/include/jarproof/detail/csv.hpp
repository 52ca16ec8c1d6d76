// Comma-separated text (RFC 4180), row by row, with the place of every cell.
//
// Beyond the RFC: line ends may be CR or LF alone, lines that begin with `#` are comments, empty
// lines are passed over, and blanks around a cell do not belong to it.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/words.hpp"
#include "jarproof/result.hpp"

namespace jarproof::detail {

struct csv_cell {
  std::string text;
  int line = 0;
  int column = 0;
};

class csv_reader {
 public:
  csv_reader(std::string_view text, std::string name, problems& errors)
      : text_(text), name_(std::move(name)), errors_(errors) {}

  /// The next row; false at the end.
  [[nodiscard]] bool next(std::vector<csv_cell>& row) {
    row.clear();
    broken_ = false;
    skip_empty_lines();
    if (at_end()) return false;
    row.push_back(cell());
    while (!at_end() && text_[at_] == ',') {
      step();
      row.push_back(cell());
    }
    if (!at_end()) line_end();
    return true;
  }

  /// True where the quotation marks of the last row do not say what its cells are.
  [[nodiscard]] bool broken() const noexcept { return broken_; }

 private:
  std::string_view text_;
  std::string name_;
  problems& errors_;
  std::size_t at_ = 0;
  int line_ = 1;
  int column_ = 1;
  bool broken_ = false;

  [[nodiscard]] bool at_end() const noexcept { return at_ >= text_.size(); }
  [[nodiscard]] bool at_line_end() const noexcept {
    return at_end() || text_[at_] == '\n' || text_[at_] == '\r';
  }
  void step() noexcept {
    ++at_;
    // Bytes that continue a character are no column of their own.
    if (at_end() || (static_cast<unsigned char>(text_[at_]) & 0xC0) != 0x80) ++column_;
  }
  void line_end() noexcept {
    const bool pair = text_[at_] == '\r' && at_ + 1 < text_.size() && text_[at_ + 1] == '\n';
    at_ += pair ? 2 : 1;
    ++line_;
    column_ = 1;
  }
  void skip_blanks() noexcept {
    while (!at_end() && (text_[at_] == ' ' || text_[at_] == '\t')) step();
  }
  void skip_empty_lines() noexcept {
    while (!at_end()) {
      std::size_t end = at_;
      while (end < text_.size() && (text_[end] == ' ' || text_[end] == '\t')) ++end;
      const bool comment = end < text_.size() && text_[end] == '#';
      while (comment && end < text_.size() && text_[end] != '\n' && text_[end] != '\r') ++end;
      if (end < text_.size() && text_[end] != '\n' && text_[end] != '\r') return;
      at_ = end;
      if (!at_end()) line_end();
    }
  }
  void wrong(int line, int column, std::string message, std::string write) {
    broken_ = true;
    errors_.push_back({name_, line, column, "", std::move(message), std::move(write)});
  }

  [[nodiscard]] csv_cell cell() {
    skip_blanks();
    csv_cell out{{}, line_, column_};
    if (!at_end() && text_[at_] == '"') {
      quoted(out);
      return out;
    }
    const std::size_t first = at_;
    bool said = false;
    for (; !at_line_end() && text_[at_] != ','; step()) {
      if (text_[at_] != '"' || said) continue;
      said = true;
      wrong(line_, column_, "a quotation mark stands inside a cell",
            "leave it out, or put the whole cell in quotation marks and double it");
    }
    out.text = std::string(trim(text_.substr(first, at_ - first)));
    return out;
  }

  void quoted(csv_cell& out) {
    step();
    while (true) {
      if (at_end()) {
        wrong(out.line, out.column, "this quotation mark is not closed",
              "write a second one at the end of the cell");
        return;
      }
      if (text_[at_] == '"') {
        step();
        if (at_end() || text_[at_] != '"') break;
      }
      out.text += text_[at_];
      if (at_line_end()) {
        line_end();
      } else {
        step();
      }
    }
    skip_blanks();
    if (at_line_end() || text_[at_] == ',') {
      out.text = std::string(trim(out.text));
      return;
    }
    wrong(line_, column_, "something stands behind the closing quotation mark",
          "put the whole cell between the quotation marks");
    while (!at_line_end() && text_[at_] != ',') step();
  }
};

}  // namespace jarproof::detail
