// Strict reading of the values of a plan: each mistake is reported with its place.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/dates.hpp"
#include "jarproof/detail/log_cells.hpp"
#include "jarproof/detail/log_times.hpp"
#include "jarproof/detail/words.hpp"
#include "jarproof/document.hpp"
#include "jarproof/keys.hpp"
#include "jarproof/plan.hpp"
#include "jarproof/quantity.hpp"
#include "jarproof/result.hpp"

namespace jarproof::detail {

/// What the reader of plans builds on. A value that cannot be read is reported and stands in as
/// nothing, so that one mistake gives one message.
class plan_values {
 protected:
  explicit plan_values(const document& source) : source_(source) {}

  const document& source_;
  problems errors_;

  void fault(const node& at, std::string message, std::string write) {
    errors_.push_back(
        {source_.name, at.line, at.column, at.path, std::move(message), std::move(write)});
  }

  void unknown_key(const member& m, const std::string& path, const std::string& near,
                   const std::string& keys, std::string_view of = "a plan") {
    std::string write = near.empty() ? "use one of: " + keys : "did you mean `" + near + "`?";
    errors_.push_back({source_.name, m.line, m.column, path,
                       "`" + m.key + "` is no key of " + std::string(of), std::move(write)});
  }

  [[nodiscard]] static std::string example_of(std::string_view key) {
    const plan_key* known = find_key(key);
    return known == nullptr ? std::string(key)
                            : std::string(key) + ": " + std::string(known->example);
  }

  /// One line of text, not empty.
  [[nodiscard]] std::optional<word> text(const node& value, std::string_view key) {
    if (value.faulty) return std::nullopt;
    if (value.kind == node_kind::null) {
      fault(value, "`" + std::string(key) + "` has no value",
            "write `" + example_of(key) + "` or leave the key out");
      return std::nullopt;
    }
    if (value.kind != node_kind::scalar) {
      fault(value, "`" + std::string(key) + "` takes one value", "write `" + example_of(key) + "`");
      return std::nullopt;
    }
    if (value.style == scalar_style::folded) {
      fault(value, "the lines of this text are folded into one, so its line ends are lost",
            "write it on one line, or lines of a list under `|`");
      return std::nullopt;
    }
    const std::string plain(trim(value.text));
    if (has_control(plain)) {
      fault(value, "a control character stands in the text", "delete it");
      return std::nullopt;
    }
    if (plain.empty() || plain.find('\n') != std::string::npos) {
      fault(value, "`" + std::string(key) + "` takes one line of text",
            "write `" + example_of(key) + "`");
      return std::nullopt;
    }
    // The text of a literal block begins on the line after the `|`.
    const bool below = value.style == scalar_style::literal && value.line > 0;
    if (!below) return word{{}, plain, value.line, value.column, value.in_recipe};
    const std::size_t first = value.text.find_first_not_of(" \n");
    const auto blank_lines = std::count(
        value.text.begin(), value.text.begin() + static_cast<std::ptrdiff_t>(first), '\n');
    return word{{}, plain, value.line + 1 + static_cast<int>(blank_lines), value.text_column};
  }

  [[nodiscard]] std::optional<quantity> measure(const node& value, std::string_view key,
                                                dimension d, rounding direction = rounding::down) {
    const std::optional<word> written = text(value, key);
    if (!written) return std::nullopt;
    const amount_reading r = read_amount(written->text, d, direction);
    if (!r.ok()) {
      fault(value, r.message, r.write);
      return std::nullopt;
    }
    return quantity{{r.value, r.metric}, written->text, value.line, value.column};
  }

  /// An amount that cannot be below zero and, where `positive`, not zero either.
  [[nodiscard]] std::optional<quantity> positive(const node& value, std::string_view key,
                                                 dimension d) {
    std::optional<quantity> q = measure(value, key, d);
    if (q && q->value.value <= 0) {
      fault(value, "`" + q->text + "` is not above zero", "write `" + example_of(key) + "`");
      return std::nullopt;
    }
    return q;
  }

  [[nodiscard]] std::optional<word> one_of(const node& value, std::string_view key,
                                           std::initializer_list<std::string_view> words) {
    std::optional<word> written = text(value, key);
    if (!written) return std::nullopt;
    const std::string plain = folded(written->text);
    for (const std::string_view w : words) {
      if (plain == w) {
        written->text = std::string(w);
        return written;
      }
    }
    fault(value, "`" + written->text + "` is no " + std::string(key), "write " + joined(words));
    return std::nullopt;
  }

  [[nodiscard]] std::optional<said<int>> count(const node& value, std::string_view key) {
    const std::optional<word> written = text(value, key);
    if (!written) return std::nullopt;
    int number = 0;
    bool digits = written->text.size() <= 4;
    for (const char c : written->text) {
      digits = digits && is_digit(c);
      if (digits) number = number * 10 + (c - '0');
    }
    if (!digits || number == 0 || (written->text.front() == '0')) {
      fault(value, "`" + written->text + "` is no count",
            "write a whole number without a unit, such as `7`");
      return std::nullopt;
    }
    return said<int>{number, written->text, value.line, value.column};
  }

  /// `20 lb tomatoes`, `1/2 bushel of apples`.
  [[nodiscard]] std::optional<said<raw_food>> raw_food_of(const node& value) {
    const std::optional<word> written = text(value, "from");
    if (!written) return std::nullopt;
    struct weight_unit {
      std::string_view name;
      std::int64_t factor;  ///< thousandths of a pound or of a bushel
      std::int64_t divisor;
      bool bushels;
    };
    // 1 lb = 0.45359237 kg (NIST SP 811, appendix B.8), so 1 kg = 2.204622 lb, cut off.
    static constexpr weight_unit units[] = {
        {"lb", 1'000, 1, false},         {"lbs", 1'000, 1, false},
        {"pound", 1'000, 1, false},      {"pounds", 1'000, 1, false},
        {"kg", 2'204'622, 1'000, false}, {"g", 2'204'622, 1'000'000, false},
        {"bushel", 1'000, 1, true},      {"bushels", 1'000, 1, true},
        {"bu", 1'000, 1, true}};
    const auto refused = [&] {
      fault(value, "`" + written->text + "` is no amount of fresh food",
            "write pounds, kilograms or bushels and the food, such as `20 lb tomatoes`");
      return std::nullopt;
    };
    std::string_view rest = written->text;
    number n;
    if (take_number(rest, n) != number_fault::none) return refused();
    rest = trim(rest);
    const std::size_t end = rest.find(' ');
    const std::string unit_name = folded(rest.substr(0, end));
    rest = end == std::string_view::npos ? std::string_view() : trim(rest.substr(end));
    if (folded(rest.substr(0, 3)) == "of" && rest.size() > 2) rest = trim(rest.substr(2));
    for (const weight_unit& u : units) {
      if (unit_name != u.name) continue;
      raw_food out;
      out.thousandths = n.over * u.factor / (n.under * u.divisor);
      out.bushels = u.bushels;
      out.name = std::string(rest);
      if (out.thousandths <= 0) return refused();
      return said<raw_food>{out, written->text, value.line, value.column};
    }
    return refused();
  }

  [[nodiscard]] std::optional<word> date(const node& value, std::string_view key = "date") {
    const std::optional<word> written = text(value, key);
    if (written && !is_date(written->text)) {
      fault(value, "`" + written->text + "` is no date",
            "write year, month and day, such as `2026-08-14`");
      return std::nullopt;
    }
    return written;
  }

  [[nodiscard]] std::optional<word> clock(const node& value, std::string_view key) {
    const std::optional<word> written = text(value, key);
    if (!written) return std::nullopt;
    const std::string& t = written->text;
    const bool good = t.size() == 5 && t[2] == ':' && is_digit(t[0]) && is_digit(t[1]) &&
                      is_digit(t[3]) && is_digit(t[4]) && std::stoi(t.substr(0, 2)) < 24 &&
                      std::stoi(t.substr(3, 2)) < 60;
    if (!good) {
      const cell_reading<clock_time> meant = clock_in(t);  // `9:00`, `2:30 pm`
      const std::int64_t minutes = meant.value.us / us_per_min;
      const bool clear = meant.ok() && !meant.value.day && meant.value.us % us_per_min == 0;
      fault(value, "`" + t + "` is no time of day",
            clear ? "write `" + two_digits(minutes / 60) + ":" + two_digits(minutes % 60) + "`"
                  : "write hours and minutes, such as `14:30`");
      return std::nullopt;
    }
    return written;
  }

  /// A list of lines: a sequence, or one literal block with a line each.
  [[nodiscard]] std::vector<word> lines(const node& value, std::string_view key) {
    std::vector<word> out;
    if (value.kind == node_kind::map) {
      fault(value, "`" + std::string(key) + "` takes a list", "write `" + example_of(key) + "`");
      return out;
    }
    if (value.kind == node_kind::sequence) {
      for (const node& item : value.items) {
        if (std::optional<word> line = text(item, key)) out.push_back(std::move(*line));
      }
      if (value.items.empty())
        fault(value, "`" + std::string(key) + "` is empty",
              "write `" + example_of(key) + "` or leave the key out");
      return out;
    }
    if (value.kind == node_kind::scalar && value.style == scalar_style::folded) {
      fault(value,
            "folded text joins the lines, so two " +
                std::string(key == "steps" ? "steps" : "ingredients") + " would become one",
            "put `|` instead of `>` after the key, and every line on a line of its own");
      return out;
    }
    if (value.kind == node_kind::scalar && value.style == scalar_style::literal) {
      int line = value.line;
      std::string_view rest = value.text;
      while (!rest.empty()) {
        const std::size_t end = rest.find('\n');
        const std::string_view one = rest.substr(0, end);
        if (line > 0) ++line;
        if (has_control(one)) {
          fault(value, "a control character stands in the text", "delete it");
          return {};
        }
        if (!trim(one).empty()) {
          const auto indent = static_cast<int>(one.find_first_not_of(" \t"));
          out.push_back(
              {{}, std::string(trim(one)), line, line > 0 ? value.text_column + indent : 0});
        }
        rest.remove_prefix(end == std::string_view::npos ? rest.size() : end + 1);
      }
      if (out.empty())
        fault(value, "`" + std::string(key) + "` is empty",
              "write `" + example_of(key) + "` or leave the key out");
      return out;
    }
    if (std::optional<word> single = text(value, key)) out.push_back(std::move(*single));
    return out;
  }

  /// Words of a list. `peeled, drained` in one text are two words: no word holds a comma.
  [[nodiscard]] std::vector<word> word_list(const node& value, std::string_view key) {
    std::vector<word> out;
    const auto add = [&](const word& text, bool quoted) {
      std::string_view rest = text.text;
      const bool several = rest.find(',') != std::string_view::npos;
      int column = text.column + (several && quoted ? 1 : 0);
      for (bool more = true; more;) {
        const std::size_t comma = rest.find(',');
        const std::string_view one = rest.substr(0, comma);
        const std::size_t blanks = std::min(one.find_first_not_of(' '), one.size());
        const int at = text.column == 0 ? 0 : column + static_cast<int>(blanks);
        if (!trim(one).empty()) out.push_back({{}, std::string(trim(one)), text.line, at});
        more = comma != std::string_view::npos;
        column += static_cast<int>(characters(one)) + 1;
        rest.remove_prefix(more ? comma + 1 : rest.size());
      }
    };
    if (value.kind == node_kind::sequence && !value.items.empty()) {
      for (const node& item : value.items) {
        const std::optional<word> one = text(item, key);
        if (one) add(*one, item.style == scalar_style::quoted);
      }
      return out;
    }
    for (const word& line : lines(value, key)) add(line, value.style == scalar_style::quoted);
    return out;
  }

  [[nodiscard]] std::optional<said<bool>> yes_or_no(const node& value, std::string_view key) {
    const std::optional<word> written = text(value, key);
    if (!written) return std::nullopt;
    const std::string plain = folded(written->text);
    if (plain != "true" && plain != "false" && plain != "yes" && plain != "no") {
      fault(value, "`" + written->text + "` is neither true nor false",
            "write `" + example_of(key) + "`");
      return std::nullopt;
    }
    return said<bool>{plain == "true" || plain == "yes", written->text, value.line, value.column};
  }

  /// The members of a small map such as `canner`; unknown keys are errors.
  template <class Each>
  void small_map(const node& value, std::string_view key,
                 std::initializer_list<std::string_view> keys, Each&& each) {
    if (value.kind != node_kind::map || value.members.empty()) {
      fault(value, "`" + std::string(key) + "` takes its parts in braces",
            "write `" + example_of(key) + "`");
      return;
    }
    for (const member& m : value.members) {
      bool known = false;
      for (const std::string_view k : keys) known = known || m.key == k;
      if (known) {
        each(m);
      } else {
        unknown_key(m, m.value.path, nearest(m.key, keys), joined(keys, "and"),
                    "`" + std::string(key) + "`");
      }
    }
  }
};

}  // namespace jarproof::detail
