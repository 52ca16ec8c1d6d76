// Further amounts of a line: the same amount in another measure, or one that puts the first in
// doubt. SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "jarproof/detail/line_state.hpp"

namespace jarproof::detail::line {

/// Takes `(2 tsp in each pint)` and `1 or 2 for each jar` out of a line that begins with the whole
/// amount: how it is shared out. More than the whole is no share, and stays.
inline void drop_shares(std::vector<line_token>& words, const std::optional<measured>& whole) {
  if (!whole) return;
  for (std::size_t from = 0; from < words.size();) {
    std::size_t end = from;
    while (end < words.size() && words[end].segment == words[from].segment) ++end;
    std::string_view first = words[from].text;
    number n;
    const bool share = from > 0 && end - from >= 4 && end - from <= 6 &&
                       one_of(words[end - 1].text, {"pint", "quart", "jar"}) &&
                       one_of(words[end - 2].text, {"each", "every"}) &&
                       one_of(words[end - 3].text, {"in", "for", "to"}) &&
                       take_number(first, n) == number_fault::none && first.empty();
    // Behind the number stands its unit, or nothing: `1 or 2 for each jar` of things counted.
    std::string_view last = share ? std::string_view(words[end - 4].text) : std::string_view();
    const bool counted = take_number(last, n) == number_fault::none && last.empty();
    const measure_unit* u =
        share ? unit_named(counted ? whole->counts : words[end - 4].text) : nullptr;
    const std::optional<measured> part = u != nullptr ? measure_of(n, n, *u) : std::nullopt;
    if (part && part->kind == whole->kind && part->high <= whole->high) {
      words.erase(words.begin() + static_cast<std::ptrdiff_t>(from),
                  words.begin() + static_cast<std::ptrdiff_t>(end));
    } else {
      from = end;
    }
  }
}

/// The measure that words `at` and `at + 1` say, such as `2 lb` or `400g`; its width in words.
struct measure_at {
  std::optional<measured> amount;
  std::size_t width = 0;
};

[[nodiscard]] inline measure_at measure_in(const state& s, std::size_t at) {
  std::string_view rest = s.text(at);
  number n;
  if (take_number(rest, n) != number_fault::none) return {};
  measure_at out;
  out.width = rest.empty() ? 2 : 1;
  if (rest.empty() && at + 1 < s.size() && s.same_segment(at, at + 1)) rest = s.text(at + 1);
  const measure_unit* u = unit_named(rest);
  if (u == nullptr || u->kind == measure_kind::count) return {};
  out.amount = measure_of(n, n, *u);
  return out;
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

/// True for a segment of nothing but a measure and plain words: `(about 1 lb)`, `2 cups in all`.
[[nodiscard]] inline bool says_the_same(const state& s, std::size_t at, const measured& m) {
  constexpr std::string_view doubts[] = {"again", "then",  "or",    "if",     "plus",
                                         "more",  "use",   "and",   "less",   "double",
                                         "to",    "maybe", "extra", "another"};
  for (std::size_t i = s.segment_begin(at); i < s.segment_end(at); ++i) {
    if (s.uses[i] == use::other || one_of(s.text(i), doubts)) return false;
  }
  // The same measure has to be the same amount, but for rounding.
  if (!s.out.amount || s.out.amount->kind != m.kind) return true;
  const std::int64_t low = s.out.amount->low;
  const std::int64_t high = s.out.amount->high;
  return m.low * 5 >= low * 4 && m.high * 4 <= high * 5;
}

/// Words between an amount and its name that make it no count of the thing: `half of 10 lb onions`,
/// `two (2) cups onions`, `1 sack onions`.
inline void find_doubt_before_name(state& s) {
  constexpr std::string_view heaps[] = {
      "sack", "sacks",   "bucket", "buckets", "bowl",  "bowls",   "crate",  "crates",
      "pile", "hundred", "score",  "mess",    "batch", "batches", "pot",    "pots",
      "tray", "load",    "basket", "baskets", "jar",   "jars",    "potful", "stone"};
  if (!s.out.amount) return;
  const bool pieces = s.out.amount->counts == "piece";
  for (std::size_t i = 0; i < s.from; ++i) {
    if (!s.is_free(i)) continue;
    const measure_at m = measure_in(s, i);
    const bool same = m.amount && (pieces || m.amount->kind == s.out.amount->kind);
    const measure_unit* u = unit_named(s.text(i));
    const bool heap =
        pieces && (one_of(s.text(i), heaps) || (u != nullptr && u->kind != measure_kind::count) ||
                   (u != nullptr && u->counts == "can"));
    const bool open = one_of(s.text(i), {"more", "over", "plus", "several"});
    if (!same && !heap && !open) continue;
    s.out.amount.reset();
    s.out.amount_text.clear();
    return;
  }
}

/// `carrots and a carcass`, `with a knob`: behind a joint something has to be named, or to be said
/// of the food.
inline void find_nameless(state& s) {
  if (s.out.what == nullptr) return;
  constexpr std::string_view joints[] = {"and", "with", "plus", "in"};
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

/// `2 lb onions (4 lb if you like)`, `1 cup vinegar or less`: the first amount is in doubt, and so
/// is the line.
inline void find_doubt_behind_name(state& s) {
  constexpr std::string_view before[] = {"or", "use", "plus", "x", "less", "maybe", "than", "to"};
  for (std::size_t i = s.end; i < s.size(); ++i) {
    if (!s.is_free(i)) continue;
    const std::string& w = s.text(i);
    const bool near = i > 0 && s.same_segment(i - 1, i);
    // `salt, or more` is to taste.
    const bool taste = is_a(s.rules, *s.out.what, "spice") || is_a(s.rules, *s.out.what, "salt");
    if ((w == "more" || w == "less" || w == "most") && near && !taste &&
        one_of(s.text(i - 1), {"or", "at"})) {
      s.out.strange.push_back(s.text(i - 1) + " " + w);
      continue;
    }
    // `1 lb onions, the same again`, `for every pound of tomatoes`
    constexpr std::string_view again[] = {"again", "times",   "thrice",  "several", "plenty",
                                          "lots",  "minimum", "another", "amount"};
    const measure_unit* each = i + 1 < s.segment_end(i) ? unit_named(s.text(i + 1)) : nullptr;
    const bool ratio = (w == "per" || w == "every" || w == "each") && each != nullptr &&
                       each->kind != measure_kind::count;
    if (!taste && s.out.amount &&
        ((one_of(w, again) && (w != "again" || s.text(i - 1) == "same")) || ratio)) {
      s.out.strange.push_back(w);
      continue;
    }
    const measure_at m = measure_in(s, i);
    if (m.amount) {
      bool owned = false;  // `and 2 cups rice`: the amount of the other ingredient
      for (std::size_t k = s.segment_begin(i); k < s.segment_end(i); ++k)
        owned = owned || s.uses[k] == use::other;
      if (!owned && !says_the_same(s, i, *m.amount)) s.out.strange.push_back(w);
      i += m.width - 1;
      continue;
    }
    // `2 cubes`, `1 packet`: something that comes in these.
    const measure_unit* u = i > s.end ? unit_named(w) : nullptr;
    number count;
    std::string_view counted = near ? std::string_view(s.text(i - 1)) : std::string_view();
    if (u != nullptr && s.out.amount && (u->counts == "can" || u->id == "cube") &&
        take_number(counted, count) == number_fault::none && counted.empty() &&
        s.out.others.empty())
      s.out.strange.push_back(w);
    std::string_view rest = w;
    number n;
    if (near && one_of(s.text(i - 1), before) && take_number(rest, n) == number_fault::none &&
        rest.empty() && s.segment_end(i) == i + 1)
      s.out.strange.push_back(w);
  }
}

inline void find_other_amounts(state& s, name_index& names) {
  if (s.out.what == nullptr) return;
  find_amounts_of_others(s, names);
  find_doubt_before_name(s);
  find_doubt_behind_name(s);
}

}  // namespace jarproof::detail::line
