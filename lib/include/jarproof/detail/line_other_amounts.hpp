// Further amounts of a line: shares of the whole, those of other ingredients, cans in place of
// them. SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

#include "jarproof/detail/line_amount_doubts.hpp"
#include "jarproof/detail/line_state.hpp"

namespace jarproof::detail::line {

/// Where the words `from` to `end` are `2 tsp in each pint`, `1 tsp per jar` or `2 tbsp per quart
/// jar`, the place behind number and unit; 0 for anything else.
[[nodiscard]] inline std::size_t end_of_share(const std::vector<line_token>& words,
                                              std::size_t from, std::size_t end) {
  const auto is = [&](std::size_t back, std::initializer_list<std::string_view> these) {
    return end >= from + back &&
           std::find(these.begin(), these.end(), words[end - back].text) != these.end();
  };
  if (end - from < 4 || end - from > 6 || !is(1, {"pint", "quart", "jar"})) return 0;
  if (is(2, {"each", "every", "a", "the"}) && is(3, {"in", "for", "to"})) return end - 3;
  if (is(2, {"per"})) return end - 2;
  return is(1, {"jar"}) && is(2, {"pint", "quart"}) && is(3, {"per"}) ? end - 3 : 0;
}

/// Takes `(2 tsp in each pint)` and `1 or 2 for each jar` out of a line that begins with the whole
/// amount: how it is shared out. More than the whole is no share, and stays.
inline void drop_shares(std::vector<line_token>& words, const std::optional<measured>& whole) {
  if (!whole) return;
  for (std::size_t from = 0; from < words.size();) {
    std::size_t end = from;
    while (end < words.size() && words[end].segment == words[from].segment) ++end;
    std::string_view first = words[from].text;
    number n;
    const std::size_t behind = from > 0 ? end_of_share(words, from, end) : 0;
    const bool share =
        behind > from && take_number(first, n) == number_fault::none && first.empty();
    // Behind the number stands its unit, or nothing: `1 or 2 for each jar` of things counted.
    std::string_view last = share ? std::string_view(words[behind - 1].text) : std::string_view();
    const bool counted = take_number(last, n) == number_fault::none && last.empty();
    const measure_unit* u =
        share ? unit_named(counted ? whole->counts : words[behind - 1].text) : nullptr;
    const std::optional<measured> part = u != nullptr ? measure_of(n, n, *u) : std::nullopt;
    if (part && part->kind == whole->kind && part->high <= whole->high) {
      words.erase(words.begin() + static_cast<std::ptrdiff_t>(from),
                  words.begin() + static_cast<std::ptrdiff_t>(end));
    } else {
      from = end;
    }
  }
}

/// The amounts that stand before further ingredients: `or 1 tsp garlic powder`.
inline void find_amounts_of_others(state& s, name_index& names) {
  for (other_ingredient& o : s.out.others) {
    for (std::size_t i = 0; i + 1 < s.size(); ++i) {
      const measure_at m = measure_in(s, i);
      if (!m.amount) continue;
      std::size_t at = i + m.width;
      if (at < s.size() && s.text(at) == "of") ++at;
      if (at >= s.size() || !s.same_segment(at, i) || s.uses[at] != use::other) continue;
      if (names.at(at, s.segment_end(at), true).what == o.what) o.amount = m.amount;
    }
  }
}

/// `2 lb hominy, or 2 29-oz cans`: the same food out of cans, in place of the first amount.
inline void find_cans_instead(state& s) {
  constexpr std::string_view cans[] = {"can", "cans", "tin", "tins", "lata", "latas"};
  constexpr std::string_view rest[] = {"of",     "de",        "with", "juice", "drained",
                                       "rinsed", "undrained", "and",  "their", "x",
                                       "small",  "large",     "big",  "in",    "each"};
  for (std::size_t i = 0; i < s.size(); i = s.segment_end(i)) {
    const std::size_t end = s.segment_end(i);
    if (i <= s.from || !one_of(s.text(i), {"or", "o"}) || i + 2 >= end) continue;
    number count;
    bool vague = false;
    std::string_view w = s.text(i + 1);
    if (take_number(w, count) != number_fault::none || !w.empty()) {
      w = s.text(i + 1);
      if (!take_number_word(w, count, vague) || vague || !trim(w).empty()) continue;
    }
    bool can = false;
    bool plain = true;
    std::optional<measured> size;
    for (std::size_t k = i + 2; k < end; ++k) {
      if (const measure_at m = measure_in(s, k); m.amount && !size) {
        size = m.amount;
        k += m.width - 1;
      } else if (one_of(s.text(k), cans)) {
        can = true;
      } else {
        plain = plain && s.is_free(k) && one_of(s.text(k), rest);
      }
    }
    if (!can || !plain) continue;
    const ingredient* found = nullptr;
    std::string name;
    for (const std::string_view n : s.out.what->names) {
      name = "canned " + std::string(n);
      found = ingredient_named(s.rules, name);
      if (found != nullptr) break;
    }
    if (found == nullptr) continue;
    s.claim(i, end, use::word);
    if (found == s.out.what) {  // both amounts may be meant
      s.out.amount.reset();
      s.out.amount_text.clear();
      continue;
    }
    if (size && count.over < 100) {
      size->low = size->low * count.over / count.under;
      size->high = size->high * count.over / count.under;
      size->metric = 0;
    }
    s.out.others.push_back({found, name, true, size});
  }
}

/// `carrots and a carcass`, `with a knob`: behind a joint something has to be named, or to be said
/// of the food.
inline void find_nameless(state& s) {
  if (s.out.what == nullptr) return;
  constexpr std::string_view joints[] = {"and", "with", "plus", "in", "including", "incl"};
  for (std::size_t i = 0; i + 1 < s.size(); ++i) {
    if (!s.is_free(i) || !one_of(s.text(i), joints)) continue;
    std::size_t at = i + 1;
    const std::size_t stop = s.segment_end(i);
    const bool article = at < stop && one_of(s.text(at), {"a", "an", "some"});
    if (s.text(i) == "in" && !article) continue;
    if (article) ++at;
    if (at + 1 != stop || !s.is_free(at)) continue;  // one word alone
    const std::string& w = s.text(at);
    const auto ends = [&](std::string_view e) {
      return w.size() > e.size() && w.compare(w.size() - e.size(), e.size(), e) == 0;
    };
    if (is_listed(s.rules.phrases.joined, w) || ends("ed") || ends("en") || ends("ly") ||
        ends("ing") || is_size(w) || ends("less") || ends("ado") || ends("ada") || ends("ados") ||
        ends("adas"))
      continue;
    s.out.strange.push_back(w);
  }
}

/// `3 cups each red and yellow onions`, `red and green peppers, 1 lb each`: the amount is that of
/// every one. Where the kinds are no further ingredients, nobody counts them.
inline void find_each(state& s) {
  if (!s.out.amount || !s.out.per_jar.empty()) return;
  bool joined = false;
  for (std::size_t i = 0; i < s.size(); ++i)
    joined = joined || one_of(s.text(i), {"and", "y", "or", "plus"}) ||
             (i > 0 && i < s.from && !s.same_segment(i - 1, i));
  bool each = false;
  for (std::size_t i = 0; i < s.size(); ++i) {
    const bool first = i < 2 && i < s.from && (i == 0 || s.text(0) == "of");
    const bool last = i + 1 == s.size() && i >= s.end;
    each = each || ((first || last) && one_of(s.text(i), {"each", "ea", "both", "apiece"})) ||
           (s.text(i) == "both" && i >= s.end);
  }
  if (!each || !joined) return;
  s.out.each = true;
  const bool alone = std::none_of(s.out.others.begin(), s.out.others.end(),
                                  [](const other_ingredient& o) { return !o.instead; });
  if (alone && !is_a(s.rules, *s.out.what, "spice") && !is_a(s.rules, *s.out.what, "salt"))
    s.out.open = "each";
}

inline void find_other_amounts(state& s, name_index& names) {
  if (s.out.what == nullptr) return;
  find_each(s);
  find_bare_number(s);
  if (s.out.amount && s.amount.second && s.out.amount->kind != s.amount.second->kind &&
      !may_be_equal(s, *s.out.amount, *s.amount.second))
    s.out.strange.push_back("two amounts");
  find_amounts_of_others(s, names);
  find_cans_instead(s);
  find_doubt_before_name(s);
  find_doubt_behind_name(s);
}

}  // namespace jarproof::detail::line
