// Reading a run log: CSV (RFC 4180) as a cook keeps it by hand or a data logger writes it.
//
//   jarproof::result<jarproof::run_log> log = jarproof::read_log(text, "run.csv");
//   if (!log) for (const jarproof::problem& p : log.errors()) explain(p.line, p.message, p.write);
//
// All independent faults come together, the first hundred of them. The format is described in
// docs/run-log.md.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/csv.hpp"
#include "jarproof/detail/log_cells.hpp"
#include "jarproof/result.hpp"
#include "jarproof/run_log.hpp"

namespace jarproof {

inline constexpr std::size_t longest_log_bytes = std::size_t{16} * 1024 * 1024;
inline constexpr std::size_t longest_log_rows = 1'000'000;

namespace detail {

class log_reader {
 public:
  log_reader(std::string_view text, std::string name) : text_(text), name_(std::move(name)) {
    log_.source = name_;
  }

  [[nodiscard]] result<run_log> read() {
    if (!is_text()) return errors_;
    csv_reader rows(text_, name_, errors_);
    std::vector<csv_cell> row;
    if (!rows.next(row)) {
      wrong(1, 1, "", "the log is empty", "write a header such as `minute,psi,event`, and rows");
      return errors_;
    }
    if (rows.broken() || !read_header(row)) return errors_;
    std::size_t count = 0;
    while (errors_.size() < most_errors && rows.next(row)) {
      if (++count > longest_log_rows) {
        wrong(row.front().line, 1, "", "the log has more than a million rows",
              "give the log of one run, with a reading every few seconds at most");
        return errors_;
      }
      if (!rows.broken()) read_row(row);
    }
    if (errors_.size() >= most_errors) {
      errors_.resize(most_errors);
      const int line = errors_.back().line;
      wrong(line, 1, "", "there are more faults than these", "put these right first");
    }
    if (count == 0 && errors_.empty())
      wrong(row_line_, 1, "", "the log has a header and no rows", "write a row such as `0,,steam`");
    if (!errors_.empty()) {
      std::stable_sort(errors_.begin(), errors_.end(), [](const problem& a, const problem& b) {
        return a.line != b.line ? a.line < b.line : a.column < b.column;
      });
      return errors_;
    }
    return std::move(log_);
  }

 private:
  static constexpr std::size_t most_errors = 100;
  static constexpr std::size_t none = static_cast<std::size_t>(-1);

  std::string_view text_;
  std::string name_;
  problems errors_;
  run_log log_;
  std::size_t columns_ = 0;
  std::size_t time_at_ = none;
  std::size_t reading_at_ = none;
  std::size_t event_at_ = none;
  std::size_t unnamed_at_ = none;
  int row_line_ = 1;
  std::int64_t day_us_ = 0;       // midnight of the day of the last row
  std::optional<int> first_day_;  // by its date, where the rows have dates
  std::optional<std::int64_t> last_us_;
  std::optional<log_row> last_reading_;

  void wrong(int line, int column, std::string_view path, std::string message, std::string write) {
    errors_.push_back(
        {name_, line, column, std::string(path), std::move(message), std::move(write)});
  }
  void wrong(const csv_cell& at, std::string_view path, std::string message, std::string write) {
    wrong(at.line, at.column, path, std::move(message), std::move(write));
  }

  /// Bytes that can be read at all; takes off the mark that some programs put in front.
  [[nodiscard]] bool is_text() {
    if (text_.size() > longest_log_bytes) {
      wrong(1, 1, "", "the log is larger than 16 MiB", "give the log of one run");
      return false;
    }
    const bool utf16 =
        text_.size() >= 2 && (text_.substr(0, 2) == "\xFF\xFE" || text_.substr(0, 2) == "\xFE\xFF");
    if (utf16) {
      wrong(1, 1, "", "the log is not UTF-8 but UTF-16", "save it as CSV in UTF-8");
      return false;
    }
    if (text_.substr(0, 3) == "\xEF\xBB\xBF") text_.remove_prefix(3);
    const std::size_t bad = std::min(invalid_utf8(text_), first_control());
    if (bad >= text_.size()) return true;
    int line = 1;
    std::size_t start = 0;
    for (std::size_t i = 0; i < bad; ++i) {
      const bool ends =
          text_[i] == '\n' || (text_[i] == '\r' && (i + 1 >= text_.size() || text_[i + 1] != '\n'));
      if (!ends) continue;
      ++line;
      start = i + 1;
    }
    const int column = static_cast<int>(characters(text_.substr(start, bad - start))) + 1;
    if (invalid_utf8(text_) == bad) {
      wrong(line, column, "", "here stands a byte that is no UTF-8", "save the log in UTF-8");
    } else {
      wrong(line, column, "", "here stands a control character", "remove it");
    }
    return false;
  }
  [[nodiscard]] std::size_t first_control() const noexcept {
    for (std::size_t i = 0; i < text_.size(); ++i) {
      if (text_[i] == '\n' || text_[i] == '\r' || text_[i] == '\t') continue;
      if (control_length(text_.substr(i, 2)) > 0) return i;
    }
    return std::string_view::npos;
  }

  [[nodiscard]] bool read_header(const std::vector<csv_cell>& row) {
    row_line_ = row.front().line;
    columns_ = row.size();
    const std::string first = folded(row.front().text);
    const bool tabs = std::any_of(row.begin(), row.end(), [](const csv_cell& c) {
      return c.text.find('\t') != std::string::npos;
    });
    if (tabs || (row.size() == 1 && first.find_first_of(";|") != std::string::npos)) {
      wrong(row.front(), "", "the columns are not separated by commas",
            "write commas, and a point in decimals: `minute,psi,event`");
      return false;
    }
    if (!first.empty() && (is_digit(first.front()) || first.front() == '-')) {
      wrong(row.front(), "", "the header is missing",
            "write a first line that names the columns, such as `minute,psi,event`");
      return false;
    }
    const csv_cell* readings = nullptr;
    for (std::size_t i = 0; i < row.size(); ++i) read_column(row[i], i, readings);
    if (time_at_ == none)
      wrong(row.front(), "", "no column says when",
            "name one column `minute` or `time`, as in `minute,psi,event`");
    if (reading_at_ == none && event_at_ == none && readings == nullptr)
      wrong(row.front(), "", "no column holds readings or events",
            "name one `psi`, `kPa`, `bar`, `F` or `C`, or one `event`");
    return time_at_ != none && (reading_at_ != none || event_at_ != none);
  }

  void read_column(const csv_cell& cell, std::size_t at, const csv_cell*& readings) {
    const std::string name = folded(cell.text);
    const auto taken = [&](std::size_t& place, const char* what) {
      if (place != none)
        wrong(cell, "", "a second column says " + std::string(what), "keep one of the two");
      if (place == none) place = at;
    };
    if (name == "minute" || name == "minutes" || name == "min" || name == "time") {
      if (time_at_ == none) log_.clock = name == "time";
      taken(time_at_, "when");
      return;
    }
    if (name == "event" || name == "events") {
      taken(event_at_, "what happened");
      return;
    }
    constexpr log_unit units[] = {log_unit::psi, log_unit::kpa, log_unit::bar, log_unit::fahrenheit,
                                  log_unit::celsius};
    for (const log_unit u : units) {
      const bool gauge = u == log_unit::psi && name == "psig";
      if (!gauge && !folds_to(name_of(u), name)) continue;
      if (readings != nullptr) {
        wrong(cell, "",
              "two columns hold readings: `" + readings->text + "` and `" + cell.text + "`",
              "keep one, with one unit for the whole log");
        return;
      }
      readings = &cell;
      reading_at_ = at;
      log_.unit = u;
      return;
    }
    if (name.empty() && at + 1 == columns_) {  // a comma at the end of the line
      unnamed_at_ = at;
      return;
    }
    constexpr std::string_view known[] = {"minute", "time", "psi", "kPa", "bar", "F", "C", "event"};
    const std::string near = name.size() < 3 ? std::string() : nearest(name, known);
    wrong(cell, "", "`" + cell.text + "` is no column of a run log",
          near.empty() ? "leave it out, or name it " + joined(known)
                       : "did you mean `" + near + "`?");
  }

  void read_row(std::vector<csv_cell>& row) {
    row_line_ = row.front().line;
    std::size_t used = row.size();
    while (used > columns_ && row[used - 1].text.empty()) --used;
    if (used > columns_) {
      too_many(row, used);
      return;
    }
    // What a spreadsheet leaves below a table.
    if (std::all_of(row.begin(), row.end(), [](const csv_cell& c) { return c.text.empty(); }))
      return;
    // A row kept by hand ends where it has no more to say: `9:31,15` under `time,psi,event`.
    const csv_cell end{"", row.back().line, row.back().column};
    row.resize(std::max(row.size(), columns_), end);
    if (unnamed_at_ != none && !row[unnamed_at_].text.empty()) {
      wrong(row[unnamed_at_], "", "`" + row[unnamed_at_].text + "` stands under no name",
            "write it under `event`, or leave it out");
      return;
    }
    log_row out;
    out.line = row[time_at_].line;
    out.column = row[time_at_].column;
    const bool timed = read_time(row[time_at_], out, row);
    bool good = timed;
    if (reading_at_ != none && !row[reading_at_].text.empty()) {
      const csv_cell& cell = row[reading_at_];
      const cell_reading<std::int64_t> reading = reading_in(cell.text, log_.unit);
      if (!reading.ok()) wrong(cell, name_of(log_.unit), reading.message, reading.write);
      good = good && reading.ok();
      out.reading = reading.value;
      out.reading_text = cell.text;
      out.reading_column = cell.column;
      if (timed && reading.ok()) compare_with_last(cell, out);
    }
    if (event_at_ != none && !row[event_at_].text.empty()) {
      const csv_cell& cell = row[event_at_];
      cell_reading<log_event> event = event_in(cell.text);
      if (!event.ok()) wrong(cell, "event", event.message, event.write);
      good = good && event.ok();
      event.value.column = cell.column;
      out.event = event.value;
    }
    if (good && !out.reading && !out.event) {
      wrong(row.front(), "", "this row has neither a reading nor an event",
            "write one of them, or leave the row out");
      return;
    }
    if (good) log_.rows.push_back(std::move(out));
  }

  void too_many(const std::vector<csv_cell>& row, std::size_t used) {
    std::string write = "write as many cells as the header has";
    // `12,11,5` under two columns: most likely a decimal comma.
    if (used == columns_ + 1) write += "; decimals have a point, as in `11.5`";
    wrong(
        row.front(), "",
        "the row has " + std::to_string(used) + " cells and the header " + std::to_string(columns_),
        write);
  }

  [[nodiscard]] bool read_time(const csv_cell& cell, log_row& out,
                               const std::vector<csv_cell>& row) {
    const char* column = log_.clock ? "time" : "minute";
    const cell_reading<clock_time> time = log_.clock ? clock_in(cell.text) : minute_time(cell.text);
    if (!time.ok()) {
      wrong(cell, column, time.message, time.write);
      return false;
    }
    constexpr std::int64_t day = 24 * 60 * us_per_min;
    if (time.value.day) {
      const int days = static_cast<int>(day_us_ / day);
      if (!first_day_) first_day_ = *time.value.day - days;
      const int since = *time.value.day - *first_day_;
      if (since > 7) {
        wrong(cell, column, "`" + cell.text + "` is more than a week after the first day",
              "give the log of one run");
        return false;
      }
      if (since > days) day_us_ = since * day;
      if (since < days) {
        goes_back(cell, column);
        return false;
      }
    }
    std::int64_t at = time.value.us + day_us_;
    if (last_us_ && at < *last_us_) {
      const std::string_view event = event_at_ == none ? std::string_view() : row[event_at_].text;
      if (!log_.clock || time.value.day || !passes_midnight(*last_us_ % day, at % day, event)) {
        goes_back(cell, column);
        last_us_ = at;  // so that one slip is not reported again with every row below
        return false;
      }
      day_us_ += day;
      at += day;
    }
    last_us_ = at;
    out.at_us = at;
    return true;
  }

  void goes_back(const csv_cell& cell, const char* column) {
    wrong(cell, column, "the time goes back: `" + cell.text + "` stands below a later one",
          std::string("put the rows in order of time, and check this one") +
              (log_.clock && !first_day_ ? "; where it is of the next day, write the date in front "
                                           "of every time, as in `2026-11-29 14:30`"
                                         : ""));
  }

  [[nodiscard]] static cell_reading<clock_time> minute_time(std::string_view text) {
    cell_reading<std::int64_t> minute = minute_in(text);
    return {{minute.value, {}}, std::move(minute.message), std::move(minute.write)};
  }

  /// A clock that goes back has passed midnight where the row above is of an evening and this one
  /// of the night; a canner that stood overnight is opened before ten. Any other is a slip of the
  /// pen. Jars are counted on the next day.
  [[nodiscard]] static bool passes_midnight(std::int64_t before_us, std::int64_t us,
                                            std::string_view text) {
    constexpr std::int64_t hour = 60 * us_per_min;
    const cell_reading<log_event> event = event_in(text);
    const auto is = [&](log_event_kind k) { return event.ok() && event.value.kind == k; };
    if (is(log_event_kind::unsealed) || is(log_event_kind::broken)) return true;
    const bool overnight = is(log_event_kind::zero) || is(log_event_kind::opened);
    return before_us >= 18 * hour && us <= (overnight ? 10 : 6) * hour;
  }

  void compare_with_last(const csv_cell& cell, const log_row& row) {
    if (last_reading_ && last_reading_->at_us == row.at_us &&
        last_reading_->reading != row.reading) {
      wrong(cell, name_of(log_.unit),
            "two readings for one moment: `" + last_reading_->reading_text + "` on line " +
                std::to_string(last_reading_->line) + " and `" + cell.text + "`",
            "keep the right one, or write the seconds");
    }
    last_reading_ = row;
  }
};

}  // namespace detail

/// Reads a run log. `name` is shown in messages.
[[nodiscard]] inline result<run_log> read_log(std::string_view text, std::string name) {
  return detail::log_reader(text, std::move(name)).read();
}

}  // namespace jarproof
