// The amount of a recipe line, as people write it: `1 1/2 c.`, `2 (15 oz) cans`, `a pinch`,
// `two large`, `1 lb 4 oz`, `6-8 cloves`, `2 x 400 g tins`.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/line_numbers.hpp"
#include "jarproof/detail/line_text.hpp"
#include "jarproof/detail/measure.hpp"

namespace jarproof::detail {

/// What stands for an amount in a line.
struct line_amount {
  bool found = false;
  std::string open = {};           ///< `at least`, `heaping`: the amount may be another
  bool less = false;               ///< `nearly`, `scant`, `small`: less than the measure says
  std::optional<measured> amount;  ///< nothing where it cannot be known, such as `a few`
  std::optional<measured> second;  ///< the same amount in another measure, such as `(500 g)`
  std::string container;           ///< `can`, `jar`, `package`, where it is one
  number count_low;                ///< how many of them, or how much
  number count_high;
  std::vector<std::string> sizes;  ///< `large`, `heaped`, ...
  std::string text;                ///< `1 1/2 cup`, `6-8 clove`; empty where nothing is known
};

namespace line {

/// The size of an old can, `#10`, `No. 2`: it stands for no amount that is checked.
inline void take_can_number(std::string_view& text) noexcept {
  std::string_view rest = text;
  constexpr std::string_view marks[] = {"no", "number", "nr", "size"};
  if (starts_with(rest, "#")) {
    rest = trim(rest.substr(1));
  } else if (!take_word(rest, marks)) {
    return;
  }
  number n;
  if (take_number(rest, n) != number_fault::none) return;
  rest = trim(rest);
  if (!rest.empty() && rest.front() == '-') rest = trim(rest.substr(1));
  constexpr std::string_view cans[] = {"can", "cans", "tin", "tins"};
  std::size_t width = 0;
  if (one_of(word_at(rest, width), cans)) text = rest;
}

/// A unit word, perhaps joined to its number by a hyphen; sizes before it are kept.
[[nodiscard]] inline const measure_unit* take_unit_word(std::string_view& text,
                                                        std::vector<std::string>& sizes) {
  std::string_view rest = trim(text);
  if (!rest.empty() && rest.front() == '-') rest = trim(rest.substr(1));
  take_can_number(rest);
  const measure_unit* found = take_measure_unit(rest);
  if (found != nullptr) {
    text = rest;
    return found;
  }
  std::vector<std::string> skipped;
  std::string_view after = rest;
  for (int i = 0; i < 3; ++i) {
    std::size_t width = 0;
    const std::string_view w = word_at(after, width);
    if (!one_of(w, size_words)) return nullptr;
    skipped.emplace_back(w);
    after = trim(after.substr(width));
    if (!after.empty() && after.front() == ',') after = trim(after.substr(1));
    std::string_view tried = after;
    found = take_measure_unit(tried);
    if (found == nullptr) continue;
    for (std::string& s : skipped) sizes.push_back(std::move(s));
    text = tried;
    return found;
  }
  return nullptr;
}

/// `1 1/2`, `6-8`, `0.75`.
[[nodiscard]] inline std::string number_words(number low, number high) {
  const auto one = [](number n) {
    std::int64_t x = n.over;
    std::int64_t y = n.under;
    while (y != 0) {
      const std::int64_t rest = x % y;
      x = y;
      y = rest;
    }
    if (x == 0) return std::string("0");
    const std::int64_t over = n.over / x;
    const std::int64_t under = n.under / x;
    std::string out = over >= under ? std::to_string(over / under) : "";
    if (over % under == 0) return out;
    if (under > 16) return kitchen_fraction(static_cast<int>(over * 1'000 / under));
    if (!out.empty()) out += " ";
    return out + std::to_string(over % under) + "/" + std::to_string(under);
  };
  const bool same = low.over * high.under == high.over * low.under;
  return same ? one(low) : one(low) + "-" + one(high);
}

[[nodiscard]] inline std::string amount_words(number low, number high, const measure_unit& u) {
  return number_words(low, high) + " " + std::string(u.id);
}

/// `(15 oz)`, `(about 1 lb)`, `15-oz`, `400 g`: a measure that stands beside the first one.
struct beside {
  number low, high;
  const measure_unit* unit;

  /// So much of it `n_low` to `n_high` times.
  [[nodiscard]] std::optional<measured> times(number n_low, number n_high) const {
    return measure_of(product(low, n_low), product(high, n_high), *unit);
  }
  [[nodiscard]] std::string text(number n_low, number n_high) const {
    return amount_words(product(low, n_low), product(high, n_high), *unit);
  }

 private:
  /// Both stay far below what 64 bits hold: a number of a line has at most nine digits.
  [[nodiscard]] static number product(number a, number b) noexcept {
    if (a.over > 1'000'000'000 || b.over > 1'000'000'000) return {1'000'000'000, 1};
    return {a.over * b.over, a.under * b.under};
  }
};

[[nodiscard]] inline std::optional<beside> take_beside(std::string_view& text, bool open) {
  std::string_view rest = trim(text);
  std::size_t close = 0;
  if (open) {
    if (rest.empty() || rest.front() != '(') return std::nullopt;
    close = rest.find(')');
    if (close == std::string_view::npos) return std::nullopt;
    rest = trim(rest.substr(1, close - 1));
  }
  while (take_word(rest, about_words)) {
  }
  number low;
  number high;
  bool vague = false;
  if (!take_range(rest, low, high, vague) || vague) return std::nullopt;
  std::vector<std::string> sizes;
  const measure_unit* u = take_unit_word(rest, sizes);
  if (u == nullptr || u->kind == measure_kind::count) return std::nullopt;
  if (open) {
    constexpr std::string_view each[] = {"each", "size", "total", "drained", "in",     "all",
                                         "or",   "so",   "net",   "weight",  "apiece", "ea"};
    // A further measure of the same can, as in `(15 oz / 425 g)`, says nothing new.
    rest = trim(rest);
    const std::size_t slash = rest.find('/');
    if (slash != std::string_view::npos && trim(rest.substr(0, slash)).empty()) rest = {};
    while (take_word(rest, each)) {
    }
    if (!rest.empty() && !is_digit(rest.front())) return std::nullopt;
    text = trim(trim(text).substr(close + 1));
  } else {
    text = rest;
  }
  return beside{low, high, u};
}

inline void add_up(std::optional<measured>& sum, const std::optional<measured>& more) {
  if (!sum || !more || sum->kind != more->kind || sum->counts != more->counts) {
    sum.reset();
    return;
  }
  sum->low += more->low;
  sum->high += more->high;
  sum->metric = 0;
  sum->ounces = sum->ounces && more->ounces;
}

}  // namespace line

/// Takes an amount from the front of a plain line. A bare number counts pieces. Where it stands
/// `behind_name`, nothing has to follow it.
[[nodiscard]] inline line_amount take_amount(std::string_view& text, bool behind_name = false) {
  line_amount out;
  std::string_view rest = trim(text);
  const bool at_most = starts_with(rest, "up to ");
  number low;
  number high;
  bool vague = false;
  for (int i = 0; i < 4; ++i) {
    std::string_view tried = rest;
    if (line::take_range(tried, low, high, vague)) {
      rest = tried;
      out.found = true;
      break;
    }
    out.less = out.less || starts_with(rest, "nearly") || starts_with(rest, "almost") ||
               starts_with(rest, "scant");
    for (const std::string_view open :
         {"nearly", "almost", "scant", "heaping", "heaped", "generous", "rounded", "least"}) {
      if (starts_with(rest, open)) out.open = open;
    }
    if (!line::take_word(rest, line::about_words)) break;
  }
  if (!out.found) {
    // `pinch of salt`, `handful basil`: a small measure without a number is one.
    std::string_view can = rest;
    line::take_can_number(can);
    std::string_view tried = rest;
    std::vector<std::string> sizes;
    const measure_unit* u = line::take_unit_word(tried, sizes);
    constexpr std::string_view small_measures[] = {"pinch", "handful", "vague"};
    const bool small =
        u != nullptr && (line::one_of(u->counts, small_measures) ||
                         (u->id == u->name && line::one_of(u->counts, {"bunch", "sprig"})));
    if (!small && can.size() == rest.size()) return out;
    low = high = {1, 1};
    out.found = true;
  }
  constexpr measure_unit piece{"piece", measure_kind::count, 1'000, 1, "piece"};
  // `5# venison`: pounds.
  const std::string_view sign = trim(rest);
  if (starts_with(sign, "#") && !(sign.size() > 1 && is_digit(sign[1]))) {
    out.count_low = low;
    out.count_high = high;
    out.amount = measure_of(low, high, *unit_named("lb"));
    out.text = line::amount_words(low, high, *unit_named("lb"));
    text = trim(sign.substr(1));
    return out;
  }
  constexpr std::string_view times_word[] = {"x"};
  std::string_view tried = trim(rest);
  std::optional<line::beside> inner;
  // `2 - 15 oz cans` counts two cans, while `14-16 oz can` is the size of one.
  if (low.under == 1 && low.over <= 6 && high.over > 6 * high.under) {
    std::string_view behind = tried;
    std::vector<std::string> sizes;
    const measure_unit* size = line::take_unit_word(behind, sizes);
    std::string_view container = behind;
    const measure_unit* holds = size == nullptr ? nullptr : line::take_unit_word(container, sizes);
    if (holds != nullptr && holds->counts == "can" && size->kind != measure_kind::count) {
      inner = line::beside{high, high, size};
      high = low;
      tried = rest = behind;
    }
  }
  bool multiplied = false;
  if (!inner && line::take_word(tried, times_word)) {
    inner = line::take_beside(tried, false);
    if (!inner) inner = line::take_beside(tried, true);
    multiplied = inner.has_value();
    if (inner) rest = tried;
  }
  if (!inner) inner = line::take_beside(rest, true);
  const measure_unit* u = nullptr;
  if (!inner) {
    // `2 15-oz cans`: a measure, and a container behind it.
    tried = trim(rest);
    const std::optional<line::beside> size = line::take_beside(tried, false);
    std::vector<std::string> sizes;
    std::string_view behind = tried;
    const measure_unit* container = size ? line::take_unit_word(behind, sizes) : nullptr;
    if (container != nullptr && container->counts == "can") {
      inner = size;
      u = container;
      rest = behind;
    }
  }
  if (u == nullptr) {
    tried = rest;
    std::vector<std::string> sizes;
    u = line::take_unit_word(tried, sizes);
    // `2 cloves` alone is the spice: a count of nothing counts itself.
    std::string_view nothing = trim(tried);
    const bool alone = !behind_name && u != nullptr && u->kind == measure_kind::count &&
                       u->counts != "can" &&
                       (nothing.empty() || nothing.front() == ',' || nothing.front() == '(');
    if (alone) {
      u = nullptr;
    } else if (u != nullptr) {
      rest = tried;
      out.sizes = std::move(sizes);
    }
  }
  // `a quart and a half`
  if (u != nullptr && u->kind != measure_kind::count && low.under == 1) {
    tried = trim(rest);
    for (const std::string_view part : {"and a half", "and a quarter", "and three quarters"}) {
      if (!starts_with(tried, part)) continue;
      const std::int64_t under = part == "and a half" ? 2 : 4;
      const std::int64_t over = part == "and three quarters" ? 3 : 1;
      low = {low.over * under + over, under};
      high = high.under == 1 ? number{high.over * under + over, under} : high;
      rest = tried.substr(part.size());
      break;
    }
  }
  // `a sprig or two of thyme`
  if (u != nullptr && low.over == low.under && high.over == high.under) {
    tried = trim(rest);
    for (const std::string_view more : {"or two ", "or three "}) {
      if (!starts_with(tried, more)) continue;
      high = {more == "or two " ? 2 : 3, 1};
      rest = tried.substr(more.size());
      break;
    }
  }
  // `2 dozen ears`: what is counted may follow.
  if (u != nullptr && u->factor == 12'000) {
    tried = rest;
    std::vector<std::string> sizes;
    const measure_unit* counted = line::take_unit_word(tried, sizes);
    if (counted != nullptr && counted->kind == measure_kind::count && !trim(tried).empty())
      rest = tried;
  }
  if (u != nullptr && u->counts == "can") out.container = std::string(u->id);
  if (u != nullptr && (u->kind == measure_kind::mass || u->kind == measure_kind::volume)) {
    // `15 oz can white beans`
    tried = rest;
    std::vector<std::string> sizes;
    const measure_unit* holds = line::take_unit_word(tried, sizes);
    if (holds != nullptr && holds->counts == "can" && !trim(tried).empty()) {
      out.container = std::string(holds->id);
      rest = tried;
    }
  }
  if (!inner) inner = line::take_beside(rest, true);
  if (!inner && !out.container.empty()) {
    // `2 latas de 400 g`, `1 can of 15 oz`
    constexpr std::string_view of[] = {"de", "of"};
    tried = trim(rest);
    if (line::take_word(tried, of)) {
      inner = line::take_beside(tried, false);
      if (inner) rest = tried;
    }
  }
  out.count_low = low;
  out.count_high = high;
  out.amount = measure_of(low, high, u == nullptr ? piece : *u);
  out.text = line::amount_words(low, high, u == nullptr ? piece : *u);
  const bool holds = u == nullptr || (u->counts == "can" && u->kind == measure_kind::count);
  if (inner && holds && (u != nullptr || multiplied)) {
    // `2 (15 oz) cans`: what the cans hold.
    out.amount = inner->times(low, high);
    out.text = inner->text(low, high);
  } else if (inner) {
    out.second = inner->times({1, 1}, {1, 1});
    // `1 lb (3 lb) onions`
    const bool same = out.amount && out.second && out.amount->kind == out.second->kind;
    if (same &&
        (out.second->low * 5 > out.amount->high * 6 || out.second->high * 6 < out.amount->low * 5))
      out.amount.reset();
  }
  if (u != nullptr && u->kind == measure_kind::volume) {
    for (const std::string& size : out.sizes) {
      if (line::one_of(size, {"heaping", "heaped", "scant", "generous", "rounded", "big"}))
        out.open = size;
    }
  }
  for (const std::string& size : out.sizes)
    out.less = out.less || size == "scant" || size == "small" || size == "sm";
  if (low.over == 0 || vague || (u != nullptr && u->counts == "vague")) out.amount.reset();
  if (at_most && out.amount) out.amount->low = out.amount->metric = 0;
  // `1 cup plus 2 tbsp`, `1 lb 4 oz`, `500 g / 1 lb`
  for (int more = 0; more < 2 && u != nullptr && u->kind != measure_kind::count; ++more) {
    tried = trim(rest);
    constexpr std::string_view and_words[] = {"plus", "and", "+"};
    constexpr std::string_view or_words[] = {"/", "or", "="};
    const bool sum = line::take_word(tried, and_words);
    const bool other = !sum && ((!tried.empty() && (tried.front() == '/' || tried.front() == '='))
                                    ? (tried = trim(tried.substr(1)), true)
                                    : line::take_word(tried, or_words));
    if (tried.empty() ||
        !(is_digit(tried.front()) || static_cast<unsigned char>(tried.front()) >= 0x80 || sum))
      break;
    const std::optional<line::beside> next = line::take_beside(tried, false);
    if (!next) break;
    const bool smaller = out.amount && next->unit->kind == out.amount->kind;
    if (!sum && !other && !smaller) break;
    if (other) {
      out.second = next->times({1, 1}, {1, 1});
      // `1 lb or 3 lb` is a range, `500 g / 1 lb` the same twice.
      if (smaller && out.second &&
          (out.second->low * 5 > out.amount->low * 6 ||
           out.second->high * 6 < out.amount->high * 5)) {
        out.amount->low = std::min(out.amount->low, out.second->low);
        out.amount->high = std::max(out.amount->high, out.second->high);
        out.amount->metric = 0;
        out.text += " or " + next->text({1, 1}, {1, 1});
      }
    } else {
      line::add_up(out.amount, next->times({1, 1}, {1, 1}));
      out.text += " + " + next->text({1, 1}, {1, 1});
    }
    rest = tried;
  }
  rest = trim(rest);
  constexpr std::string_view of[] = {"of", "de", "x"};
  constexpr std::string_view the[] = {"the"};
  if (line::take_word(rest, of)) (void)line::take_word(rest, the);
  if (vague) out.text.clear();
  text = rest;
  return out;
}

}  // namespace jarproof::detail
