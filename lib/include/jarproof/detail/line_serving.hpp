// Phrases of a line by which its food is for the table: `for serving`, `when a jar is opened`.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <string_view>

#include "jarproof/detail/line_numbers.hpp"
#include "jarproof/detail/line_remarks.hpp"
#include "jarproof/detail/line_state.hpp"

namespace jarproof::detail::line {

/// Words of `in each bowl` and `stirred in` before a phrase about the table, from `i` on; 0 where
/// none stand there.
[[nodiscard]] inline std::size_t table_words_at(const state& s, std::size_t i) {
  const std::size_t end = s.segment_end(i);
  if (one_of(s.text(i), {"in", "into", "on", "over"})) {
    const std::size_t each =
        i + 1 < end && one_of(s.text(i + 1), {"each", "every", "the", "your"}) ? i + 2 : i + 1;
    if (each < end && one_of(s.text(each), {"bowl", "bowls", "plate", "plates"}))
      return each + 1 - i;
  }
  if (one_of(s.text(i), {"stirred", "swirled"}) && i + 3 < end && s.text(i + 1) == "in" &&
      one_of(s.text(i + 2), {"at", "on", "when", "just"}))
    return 2;
  return 0;
}

/// `I can it all together`, `or before canning`, `I add mine before`: for the table, and in the jar
/// all the same.
[[nodiscard]] inline bool puts_in_jar(const state& s, std::size_t first, std::size_t end) {
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (i >= first && i < end) continue;
    const bool more = i + 1 < s.size() && s.same_segment(i, i + 1);
    const std::string_view next = more ? std::string_view(s.text(i + 1)) : std::string_view();
    if (s.text(i) == "can" && one_of(next, {"it", "them", "all", "everything", "this", "mine"}))
      return true;
    if (s.text(i) == "before" &&
        (!more || one_of(next, {"canning", "filling", "jarring", "sealing", "processing"})))
      return true;
    if (one_of(s.text(i), {"together", "mine", "ours"})) return true;
  }
  return false;
}

/// True where the phrase in words `first` to `end` is about the main ingredient and about all of
/// it: alone in its part of the line or behind the name, with nothing that is another thing or
/// keeps some of it.
[[nodiscard]] inline bool is_about_all(const state& s, name_index& names, std::size_t first,
                                       std::size_t end) {
  constexpr std::string_view some[] = {
      "half",     "some",    "rest",    "divided",     "reserve", "reserved",
      "extra",    "more",    "plus",    "freeze",      "rinse",   "rinsed",
      "use",      "keep",    "drain",   "drained",     "quarter", "little",
      "spoonful", "part",    "third",   "thirds",      "most",    "remainder",
      "bit",      "scoop",   "in",      "into",        "with",    "through",
      "stirred",  "swirled", "floured", "refrigerate", "dredged", "breaded"};
  if (s.out.what == nullptr || s.from >= end || s.segment_end(first) != end) return false;
  if (puts_in_jar(s, first, end)) return false;
  const bool own_part = s.segment_begin(first) == first;
  // `cilantro, avocado and lime wedges for serving`: a list without amounts, and the end of it.
  const bool listed =
      !s.amount.found && end == s.size() &&
      (s.segment_begin(first) == 0 ||
       std::any_of(s.tokens.begin() + static_cast<std::ptrdiff_t>(s.segment_begin(first)),
                   s.tokens.end(), [](const line_token& t) { return t.text == "and"; }));
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (i >= first && i < end) continue;
    if (const std::size_t words = table_words_at(s, i)) {
      i += words - 1;
      continue;
    }
    const bool joins = one_of(s.text(i), {"or", "and"}) && i + 1 < s.size() &&
                       names.at(i + 1, s.segment_end(i + 1), true).what != nullptr;
    if (one_of(s.text(i), some) || (!own_part && !listed && joins)) return false;
    // A further number is a part of it: `1 cup butter, 2 T for serving`.
    number n;
    bool vague = false;
    std::string_view w = s.text(i);
    if (i >= s.end && (is_size(w) || (w.size() > 2 && take_number_word(w, n, vague)))) return false;
  }
  for (std::size_t i = s.segment_begin(first); i < first && !listed; ++i) {
    if ((i < s.from || i >= s.end) && names.at(i, first, true).what != nullptr &&
        !s.is_plain(s.text(i)))
      return false;
  }
  return true;
}

/// `for serving`, `to garnish`, `at the table`: not in the jar, where it ends its part of the line.
inline void find_serving(state& s, name_index& names) {
  constexpr std::string_view before[] = {"for", "to",  "at",  "when", "before", "para",
                                         "al",  "the", "you", "just", "en",     "el"};
  constexpr std::string_view trailing[] = {"only", "day", "time", "it", "up", "bowls"};
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (!s.is_free(i) || !is_listed(s.rules.phrases.serving, s.text(i))) continue;
    std::size_t first = i;
    while (first > 0 && i - first < 3 && s.same_segment(first - 1, i) && s.is_free(first - 1) &&
           one_of(s.text(first - 1), before))
      --first;
    std::size_t end = i + 1;
    while (end < s.segment_end(i) && one_of(s.text(end), trailing)) ++end;
    const bool alone = s.segment_begin(first) == first && s.segment_end(first) == end;
    if (first == i && i > 0 && s.text(i) == "serving" && s.free_beside(i - 1, i) &&
        s.text(i - 1) == "on")
      --first;
    const bool said = first < i || s.text(i) == "garnish" || (end > i + 1 && s.text(i) != "table");
    const bool table_word = s.text(i) != "table" || s.text(first) == "at" || s.text(first) == "for";
    const bool topping =
        !one_of(s.text(i), {"topping", "bowls", "dipping"}) || (alone && s.text(first) == "for");
    // `cut in serving pieces` is how large they are.
    if (s.text(i) == "serving" && s.free_beside(i + 1, i) &&
        one_of(s.text(i + 1), {"pieces", "portions", "size", "sized"})) {
      s.claim(i, i + 2, use::word);
      continue;
    }
    if (one_of(s.text(i), {"reheating", "reheat"}) && s.text(first) != "when") continue;
    // `mashed before serving` may be mashed before the jar.
    const bool state = s.text(first) == "before" && first > 0 && s.same_segment(first - 1, i) &&
                       find(s.rules.telling_words, s.text(first - 1)) != nullptr;
    if (state || !said || !table_word || !topping ||
        (first < i && one_of(s.text(first), {"the", "you", "el"})))
      continue;
    if (!is_negated(s, first) && is_about_all(s, names, first, end)) s.out.at_serving = true;
    s.claim(first, end, use::word);
  }
}

/// `passed at the table`, `on the side at serving`: a part of the line that is nothing else.
inline void find_table_phrases(state& s, name_index& names) {
  for (std::size_t i = 0; i < s.size(); ++i) {
    const std::size_t width = phrase_at(s, i, s.rules.phrases.table_phrases);
    if (width == 0 || s.segment_begin(i) != i || i + width != s.segment_end(i)) continue;
    if (is_about_all(s, names, i, i + width)) s.out.at_serving = true;
    s.claim(i, i + width, use::word);
  }
}

/// `as a side dish`: beside the dish, not in it.
inline void find_side_dish(state& s, name_index& names) {
  for (std::size_t i = 0; i + 2 < s.size(); ++i) {
    if (s.text(i) != "as" || !s.is_free(i) || !s.same_segment(i, i + 2)) continue;
    std::size_t end = i + 1;
    if (one_of(s.text(end), {"a", "an"})) ++end;
    if (one_of(s.text(end), {"accompaniment", "garnish"})) {
      ++end;
    } else if (s.text(end) == "side" && end + 1 < s.size() && s.text(end + 1) == "dish") {
      end += 2;
    } else {
      continue;
    }
    if (s.segment_end(i) != end || is_negated(s, i)) continue;
    if (is_about_all(s, names, i, end)) s.out.at_serving = true;
    s.claim(i, end, use::word);
  }
}

/// `when a jar is opened`: later, not in the jar. Clams that open, and cans, are something else.
inline void find_opening(state& s, name_index& names) {
  constexpr std::string_view between[] = {"the", "a",   "each", "jar", "jars",
                                          "is",  "are", "you",  "open"};
  for (std::size_t i = 0; i < s.size(); ++i) {
    const bool open_jar = s.text(i) == "jar" || s.text(i) == "jars";
    const bool opened = one_of(s.text(i), {"opened", "opening"});
    if (!open_jar && !opened) continue;
    std::size_t first = i;
    bool jar = open_jar;
    bool opens = opened;
    while (first > 0 && s.free_beside(first - 1, i) && one_of(s.text(first - 1), between)) {
      --first;
      jar = jar || s.text(first) == "jar" || s.text(first) == "jars";
      opens = opens || s.text(first) == "open";
    }
    if (!jar || !opens || first == 0 || !s.free_beside(first - 1, i)) continue;
    --first;
    if (!one_of(s.text(first), {"when", "after", "once", "upon", "on"}) || is_negated(s, first))
      continue;
    if (s.out.what != nullptr && !is_a(s.rules, *s.out.what, "seafood") &&
        s.amount.container.empty() && is_about_all(s, names, first, i + 1))
      s.out.at_serving = true;
    s.claim(first, i + 1, use::word);
  }
}

/// True for text that speaks of a jar or the pot and of no opening: `in each jar`, `goes in the
/// pot`, `added at the start`.
[[nodiscard]] inline bool names_closed_jar(std::string_view plain) {
  bool jar = false;
  for (const line_token& t : tokens_of(plain)) {
    if (one_of(t.text, {"opened", "opening", "open", "opens"})) return false;
    jar = jar || one_of(t.text, {"jar", "jars", "frasco", "frascos", "pot", "kettle", "start",
                                 "beginning", "olla"});
  }
  return jar;
}

}  // namespace jarproof::detail::line
