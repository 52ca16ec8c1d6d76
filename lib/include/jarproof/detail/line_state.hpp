// A line while it is read: its words, and which of them are claimed already.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/ingredient_facts.hpp"
#include "jarproof/detail/line_amount.hpp"
#include "jarproof/detail/line_names.hpp"
#include "jarproof/detail/line_reading.hpp"
#include "jarproof/edition.hpp"

namespace jarproof::detail::line {

/// What a word of a line turned out to be. What stays free at the end is strange, unless it is one
/// of the plain words.
enum class use { free, name, other, word };

struct state {
  const edition& rules;
  line_reading out = {};
  line_amount amount = {};
  std::vector<line_token> tokens = {};
  std::vector<use> uses = {};
  std::size_t from = 0;  ///< of the main name
  std::size_t end = 0;

  [[nodiscard]] std::size_t size() const noexcept { return tokens.size(); }
  [[nodiscard]] const std::string& text(std::size_t i) const { return tokens[i].text; }
  [[nodiscard]] bool is_free(std::size_t i) const { return uses[i] == use::free; }
  [[nodiscard]] bool same_segment(std::size_t a, std::size_t b) const {
    return tokens[a].segment == tokens[b].segment;
  }
  /// The word exists, stands in the segment of `of`, and is free.
  [[nodiscard]] bool free_beside(std::size_t i, std::size_t of) const {
    return i < size() && same_segment(i, of) && is_free(i);
  }
  [[nodiscard]] std::size_t segment_end(std::size_t i) const {
    std::size_t last = i;
    while (last < size() && same_segment(last, i)) ++last;
    return last;
  }
  [[nodiscard]] std::size_t segment_begin(std::size_t i) const {
    while (i > 0 && same_segment(i - 1, i)) --i;
    return i;
  }
  void claim(std::size_t first, std::size_t last, use as) {
    for (std::size_t i = first; i < last; ++i) uses[i] = as;
  }
  [[nodiscard]] bool is_plain(const std::string& w) const {
    // `Nana's` says whose it is.
    const bool whose = w.size() > 4 && w.compare(w.size() - 2, 2, "'s") == 0;
    return is_line_word(rules, w) || one_of(w, size_words) || is_size(w) ||
           (w.size() > 1 && w.front() == '#' && is_digit(w[1])) ||
           (whose && is_line_word(rules, std::string_view(w).substr(0, w.size() - 2)));
  }
  /// A word of a measure beside the name, as in `celery ribs`, or beside a number; elsewhere, as in
  /// `beans and links`, it may be food.
  [[nodiscard]] bool is_counting_word(std::size_t i) const {
    // A loaf beside a name may be made of it: `turkey loaf`.
    if (unit_named(text(i)) == nullptr || unit_named(text(i))->id == "loaf") return false;
    const bool behind_number = i > 0 && same_segment(i - 1, i) && is_size(text(i - 1));
    return behind_number || (i > 0 && i == end) || i + 1 == from ||
           unit_named(text(i))->kind != measure_kind::count;
  }
};

/// True for a word that its line takes back: `no skin`, `without the fat`, `bacon removed`; not for
/// one of `with or without cream`.
[[nodiscard]] inline bool is_negated(const state& s, std::size_t at) {
  constexpr std::string_view no[] = {"no",  "not",  "without", "never",
                                     "non", "omit", "sin",     "minus"};
  constexpr std::string_view gone[] = {"free", "removed", "discarded", "omitted"};
  constexpr std::string_view between[] = {"the", "any", "added", "a", "an", "of", "la", "el"};
  constexpr std::string_view again[] = {"or", "never", "not", "o"};
  std::size_t back = at;
  while (back > 0 && at - back < 2 && s.same_segment(back - 1, at) &&
         one_of(s.text(back - 1), between))
    --back;
  if (back > 0 && s.same_segment(back - 1, at) && one_of(s.text(back - 1), no))
    return back < 2 || !s.same_segment(back - 2, at) || !one_of(s.text(back - 2), again);
  return at + 1 < s.size() && s.same_segment(at + 1, at) && one_of(s.text(at + 1), gone);
}

/// True for a word that depends on one before it, and so is no state of the ingredient: `cut from
/// the cob`, `to be cooked later`, `half cooked`, `dried or canned`.
[[nodiscard]] inline bool is_governed(const state& s, std::size_t at) {
  constexpr std::string_view governs[] = {
      "from",   "in",   "off",    "on",       "to",    "for",       "with",    "by",     "until",
      "like",   "as",   "if",     "when",     "once",  "after",     "before",  "into",   "at",
      "or",     "half", "partly", "barely",   "under", "partially", "almost",  "nearly", "lightly",
      "of",     "some", "little", "slightly", "quick", "home",      "makes",   "make",   "yields",
      "equals", "such", "about",  "may",      "can",   "like",      "against", "over",   "than"};
  for (std::size_t i = at; i > 0 && s.same_segment(i - 1, at); --i) {
    if (s.uses[i - 1] == use::name || s.uses[i - 1] == use::other) return false;
    if (one_of(s.text(i - 1), governs)) return true;
  }
  // `cooked 5 min`, `canned later`, `cooked in the jar`
  const bool more = at + 1 < s.size() && s.same_segment(at + 1, at);
  if (more && at < s.from && s.text(at) == "bone" && s.text(at + 1) == "in") return false;
  return more &&
         (one_of(s.text(at + 1), {"or", "later", "in", "only", "last"}) || is_size(s.text(at + 1)));
}

}  // namespace jarproof::detail::line
