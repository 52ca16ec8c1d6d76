// From a document tree to a plan; every error of the text at once.
//
//   jarproof::result<jarproof::plan> plan = jarproof::read_plan(document);
//   if (!plan) for (const jarproof::problem& p : plan.errors()) ...
//
// Reading knows amounts and keys, not foods: which food, method or jar a word means is decided by
// the check, against an edition.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>

#include "jarproof/detail/words.hpp"
#include "jarproof/document.hpp"
#include "jarproof/keys.hpp"
#include "jarproof/plan.hpp"
#include "jarproof/quantity.hpp"
#include "jarproof/result.hpp"

namespace jarproof {

namespace detail {

class plan_reader {
 public:
  explicit plan_reader(const document& source) : source_(source) {
    plan_.source = source.name;
    plan_.line = source.root.line;
    plan_.column = source.root.column;
  }

  [[nodiscard]] result<plan> read() {
    errors_ = source_.faults;
    if (source_.root.kind != node_kind::map) {
      if (errors_.empty())
        fault(source_.root, "this is no plan",
              "write a plan as keys with values, for example `food: green beans`");
      return errors_;
    }
    if (source_.root.members.empty() && errors_.empty()) {
      fault(source_.root, "the plan is empty",
            "write at least `food`, `pack`, `jar`, `method`, `time` and `altitude`");
    }
    for (const member& m : source_.root.members) read_member(m);
    if (!errors_.empty()) {
      std::stable_sort(errors_.begin(), errors_.end(), [](const problem& a, const problem& b) {
        return std::tie(a.line, a.column) < std::tie(b.line, b.column);
      });
      return errors_;
    }
    return std::move(plan_);
  }

 private:
  const document& source_;
  plan plan_;
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
    return word{{}, plain, value.line + (below ? 1 : 0), below ? value.text_column : value.column};
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

  [[nodiscard]] std::optional<word> date(const node& value) {
    const std::optional<word> written = text(value, "date");
    if (!written) return std::nullopt;
    const std::string& t = written->text;
    bool good = t.size() == 10 && t[4] == '-' && t[7] == '-';
    for (std::size_t i = 0; good && i < t.size(); ++i) good = i == 4 || i == 7 || is_digit(t[i]);
    if (good) {
      const int year = std::stoi(t.substr(0, 4));
      const int month = std::stoi(t.substr(5, 2));
      const int day = std::stoi(t.substr(8, 2));
      const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
      const int days[] = {31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
      good = month >= 1 && month <= 12 && day >= 1 && day <= days[month - 1];
    }
    if (!good) {
      fault(value, "`" + t + "` is no date", "write year, month and day, such as `2026-08-14`");
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
      fault(value, "`" + t + "` is no time of day", "write hours and minutes, such as `14:30`");
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
      fault(value, "folded text joins the lines, so two ingredients would become one",
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

  /// `peeled, drained` in one line are two words; no word of the list holds a comma.
  [[nodiscard]] static std::vector<word> split(const std::vector<word>& lines) {
    std::vector<word> out;
    for (const word& line : lines) {
      std::string_view rest = line.text;
      int column = line.column;
      while (true) {
        const std::size_t comma = rest.find(',');
        const std::string_view one = rest.substr(0, comma);
        const std::size_t blanks = one.size() - trim(one).size();
        const int at =
            line.column == 0
                ? 0
                : column + static_cast<int>(one.empty() ? 0
                                            : one.find_first_not_of(' ') == std::string_view::npos
                                                ? blanks
                                                : one.find_first_not_of(' '));
        if (!trim(one).empty()) out.push_back({{}, std::string(trim(one)), line.line, at});
        if (comma == std::string_view::npos) break;
        column += static_cast<int>(characters(one)) + 1;
        rest.remove_prefix(comma + 1);
      }
    }
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

  void read_jar(const node& value) {
    plan_.jar = text(value, "jar");
    if (!plan_.jar) return;
    const amount_reading r = read_amount(plan_.jar->text, dimension::volume, rounding::up);
    // `1/2 pint` is both an amount and a size's name; as an amount it means the same. What is no
    // amount, such as `8 oz jar`, may still be the name of a size in the edition.
    if (r.ok() && r.value > 0) {
      plan_.jar_volume = amount{r.value, r.metric};
      return;
    }
    const bool has_word =
        plan_.jar->text.find_first_not_of("+-.,/0123456789 ") != std::string::npos;
    if (r.ok()) fault(value, "the jar is empty", "write `jar: pint`");
    if (!r.ok() && !has_word) {
      fault(value, r.message,
            "write the unit: `" + plan_.jar->text + " oz` (oz, cup, pt, qt, gal, mL or L)");
    }
  }

  void read_held(const node& value) {
    said<holding> held{{}, "", value.line, value.column};
    small_map(value, "held", {"for", "at"}, [&](const member& m) {
      if (m.key == "for") {
        held.value.duration = measure(m.value, "held", dimension::time, rounding::up);
      } else {
        held.value.temperature = measure(m.value, "held", dimension::temperature);
        if (held.value.temperature) {
          held.value.highest_temperature =
              read_amount(held.value.temperature->text, dimension::temperature, rounding::up).value;
        }
      }
    });
    plan_.held = std::move(held);
  }

  void read_canner(const node& value) {
    said<canner_size> canner{{}, "", value.line, value.column};
    small_map(value, "canner", {"quarts", "pints", "volume"}, [&](const member& m) {
      if (m.key == "quarts") canner.value.quarts = count(m.value, "canner");
      if (m.key == "pints") canner.value.pints = count(m.value, "canner");
      if (m.key == "volume") canner.value.volume = positive(m.value, "canner", dimension::volume);
    });
    plan_.canner = std::move(canner);
  }

  void read_member(const member& m) {
    const std::string& key = m.key;
    const node& value = m.value;
    if (value.faulty) return;
    if (key == "title")
      plan_.title = text(value, key);
    else if (key == "lot")
      plan_.lot = text(value, key);
    else if (key == "date")
      plan_.date = date(value);
    else if (key == "food")
      plan_.food = text(value, key);
    else if (key == "form")
      plan_.form = text(value, key);
    else if (key == "as-published")
      plan_.as_published = yes_or_no(value, key);
    else if (key == "ingredients")
      plan_.ingredients = lines(value, key);
    else if (key == "pack")
      plan_.pack = one_of(value, key, {"raw", "hot"});
    else if (key == "jar")
      read_jar(value);
    else if (key == "method")
      plan_.method = text(value, key);
    else if (key == "gauge")
      plan_.gauge = one_of(value, key, {"dial", "weighted"});
    else if (key == "gauge-error")
      plan_.gauge_error = measure(value, key, dimension::pressure, rounding::up);
    else if (key == "pressure")
      plan_.pressure = positive(value, key, dimension::pressure);
    else if (key == "time")
      plan_.time = positive(value, key, dimension::time);
    else if (key == "temperature")
      plan_.temperature = measure(value, key, dimension::temperature);
    else if (key == "altitude")
      plan_.altitude = measure(value, key, dimension::altitude, rounding::up);
    else if (key == "headspace")
      plan_.headspace = measure(value, key, dimension::length);
    else if (key == "vent")
      plan_.vent = measure(value, key, dimension::time);
    else if (key == "heat-up")
      plan_.heat_up = measure(value, key, dimension::time);
    else if (key == "water")
      plan_.water = measure(value, key, dimension::volume);
    else if (key == "acid")
      plan_.acid = text(value, key);
    else if (key == "vinegar")
      plan_.vinegar = measure(value, key, dimension::share);
    else if (key == "solids")
      plan_.solids = measure(value, key, dimension::share, rounding::up);
    else if (key == "prepared")
      plan_.prepared = split(lines(value, key));
    else if (key == "held")
      read_held(value);
    else if (key == "batch")
      plan_.batch = positive(value, key, dimension::volume);
    else if (key == "jars")
      plan_.jars = count(value, key);
    else if (key == "keep-back")
      plan_.keep_back = measure(value, key, dimension::volume);
    else if (key == "canner")
      read_canner(value);
    else if (key == "start")
      plan_.start = clock(value, key);
    else if (key == "finish-by")
      plan_.finish_by = clock(value, key);
    else {
      std::vector<std::string_view> names;
      for (const plan_key& k : plan_keys) names.push_back(k.name);
      unknown_key(m, key, nearest(key, names), joined(names, "and"));
    }
  }
};

}  // namespace detail

/// Reads one document as a plan.
[[nodiscard]] inline result<plan> read_plan(const document& source) {
  return detail::plan_reader(source).read();
}

}  // namespace jarproof
