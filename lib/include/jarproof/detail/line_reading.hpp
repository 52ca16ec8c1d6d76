// What one line of a recipe was read as.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/measure.hpp"
#include "jarproof/edition.hpp"

namespace jarproof::detail {

/// A further ingredient of a line.
struct other_ingredient {
  const ingredient* what;
  std::string name;
  bool instead;                         ///< `or`: in place of the first one
  std::optional<measured> amount = {};  ///< its own, as in `or 1 tsp garlic powder`
};

/// What a line says.
struct line_reading {
  std::optional<measured> amount;
  std::string amount_text;           ///< `1 1/2 cup`; empty where none is said
  const ingredient* what = nullptr;  ///< null where no name is known
  std::string name;                  ///< the words that were looked up
  std::vector<std::string> words;    ///< the other words of the line
  std::vector<std::string> strange;  ///< of these, the ones that are not understood
  std::vector<other_ingredient> others;
  std::vector<const telling_word*> telling;
  /// What was bought of it, as in `2 lb peeled carrots (about 3 lb as purchased)`.
  std::optional<measured> purchased = {};
  std::string per_jar;  ///< `quart` of `per quart`, `jar` of `in each jar`
  std::optional<int> vinegar_percent;
  std::string open;         ///< words that leave the amount open: `plus more`
  bool each = false;        ///< `1 cup each carrots and corn`: the amount is that of every one
  bool at_serving = false;  ///< said to be for the table, not for the jar
};

/// True where the line has this word and does not take it back: `not drained` does not say
/// `drained`.
[[nodiscard]] inline bool says(const std::vector<std::string>& words, std::string_view word,
                               bool denied = false) {
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (words[i] != word) continue;
    const std::string_view before = i > 0 ? std::string_view(words[i - 1]) : std::string_view();
    if ((before == "not" || before == "never" || before == "un") == denied) return true;
  }
  return false;
}
[[nodiscard]] inline bool says(const line_reading& r, std::string_view word) {
  return says(r.words, word);
}
/// True for `not soaked` and `un-soaked`.
[[nodiscard]] inline bool denies(const line_reading& r, std::string_view word) {
  return says(r.words, word, true);
}

/// True for what must be there but by its own words may not be: `vinegar, optional`, or a `vinegar
/// solution` of unknown strength.
[[nodiscard]] inline bool says_doubtful(const line_reading& r, bool acid) {
  constexpr std::string_view doubts[] = {"optional", "discarded", "if", "desired", "taste"};
  if (std::any_of(std::begin(doubts), std::end(doubts),
                  [&](std::string_view word) { return says(r, word); }))
    return true;
  if (acid && std::any_of(r.others.begin(), r.others.end(),
                          [](const other_ingredient& o) { return o.instead; }))
    return true;
  return acid && says(r, "solution") && !says(r, "for") && !says(r, "in");
}

}  // namespace jarproof::detail
