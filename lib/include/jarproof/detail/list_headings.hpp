// Headings within a list of ingredients, and what they say about the lines below them.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <initializer_list>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/ingredient_line.hpp"
#include "jarproof/detail/sentences.hpp"
#include "jarproof/plan.hpp"

namespace jarproof::detail {

/// A number of jars or servings, in digits or in words; `half` of them is none.
[[nodiscard]] inline bool is_count(std::string_view w) {
  if (is_digit(w.front())) return true;
  number n;
  bool vague = false;
  std::string_view rest = w;
  return line::take_number_word(rest, n, vague) && rest.empty() && !vague && n.under == 1 &&
         n.over > 1;
}

/// A line that names a part of the recipe and no food: `For the sauce:`. All its words have to be
/// words of headings; `Cornstarch slurry:` and `Bacon:` are read as lines.
[[nodiscard]] inline bool is_heading(const edition& rules, std::string_view text) {
  const std::string plain = plain_line(text);
  if (plain.empty()) return false;
  std::string_view rest = plain;
  if (take_amount(rest).found) return false;
  constexpr std::string_view openings[] = {"for the ", "for ", "to serve", "to finish", "para "};
  const bool opens = std::any_of(std::begin(openings), std::end(openings),
                                 [&](std::string_view o) { return starts_with(plain, o); });
  if (plain.back() != ':' && !opens) return false;
  const std::vector<line_token> words = tokens_of(plain);
  return std::all_of(words.begin(), words.end(), [&](const line_token& t) {
    return rules.heading_words.contains(std::string_view(t.text)) || is_count(t.text);
  });
}

/// Below `To serve:` nothing goes into the jar. `For 6 servings:` is how many it feeds.
[[nodiscard]] inline bool is_serving_heading(const edition& rules, std::string_view text) {
  constexpr std::string_view before[] = {"to",  "for", "at",  "when", "the",   "before", "a",
                                         "you", "it",  "jar", "is",   "after", "once",   "just"};
  bool any = false;
  for (const line_token& t : tokens_of(plain_line(text))) {
    if (is_listed(rules.phrases.serving_headings, t.text)) {
      any = true;
    } else if (!line::one_of(t.text, before)) {
      return false;
    }
  }
  return any;
}

/// `Soup` or `Molasses sauce` alone on its line: a heading without a colon, where the two lines
/// below begin with amounts. `Cream sauce` is no heading, nor is `Molasses sauce` where no molasses
/// stands below.
[[nodiscard]] inline bool is_quiet_heading(const edition& rules, const std::vector<word>& lines,
                                           std::size_t at) {
  const std::vector<line_token> words = tokens_of(plain_line(lines[at].text));
  if (words.empty() || words.size() > 4 || at + 2 >= lines.size()) return false;
  for (const std::size_t below : {at + 1, at + 2}) {
    const std::string plain = plain_line(lines[below].text);
    std::string_view rest = plain;
    if (!take_amount(rest).found) return false;
  }
  const std::string plain = plain_line(lines[at].text);
  std::string_view rest = plain;
  if (take_amount(rest).found || plain.find_first_of(",(") != std::string::npos) return false;
  // `Beans` or `Hot sauce` may be an ingredient whose amount was forgotten; `Soup`, `Pickles` and
  // `Syrup` name what is made.
  const auto may_be_food = [&](const ingredient* i) {
    if (i == nullptr) return false;
    const bool low_acid = i->kind == acidity::low_acid || i->kind == acidity::borderline;
    return !ban_on(rules, *i).empty() || is_a(rules, *i, "condiment") ||
           (low_acid && !is_a(rules, *i, "made-dish"));
  };
  if (may_be_food(ingredient_named(rules, plain))) return false;
  const auto is_known = [&](const line_token& t) {
    return t.text == "&" || (rules.heading_words.contains(std::string_view(t.text)) &&
                             !may_be_food(ingredient_named(rules, t.text)));
  };
  if (!is_known(words.back())) return false;
  return std::all_of(words.begin(), words.end(), [&](const line_token& t) {
    if (is_known(t)) return true;
    return std::any_of(lines.begin() + static_cast<std::ptrdiff_t>(at) + 1,
                       lines.begin() + static_cast<std::ptrdiff_t>(std::min(at + 5, lines.size())),
                       [&](const word& w) {
                         const std::vector<line_token> below = tokens_of(plain_line(w.text));
                         return std::any_of(below.begin(), below.end(), [&](const line_token& b) {
                           return starts_with(b.text, t.text);
                         });
                       });
  });
}

/// What the headings say about one line of a list.
struct listed_under {
  bool heading = false;     ///< the line itself names a part of the list
  bool serving = false;     ///< below `To serve:`
  bool doubtful = false;    ///< below `Optional:` or `For soaking:`: it may not be in the jar
  bool poured_off = false;  ///< below `For the soak:` or `Brine (poured off):`
  std::string per_jar;      ///< below `In each jar:`: `jar`
};

/// True for a heading below which everything goes into the jar: `For the brine:`. Any other word of
/// headings may take it out again; what names a food below does not.
[[nodiscard]] inline bool is_plain_heading(const edition& rules, const std::vector<line_token>& t) {
  return std::all_of(t.begin(), t.end(), [&](const line_token& w) {
    return is_listed(rules.phrases.plain_headings, w.text) || is_count(w.text) ||
           !rules.heading_words.contains(std::string_view(w.text));
  });
}

/// `For stroganoff, when a jar is opened:`, `AT THE TABLE`: about the table, whatever it names.
[[nodiscard]] inline bool is_opening_heading(const edition& rules, std::string_view text) {
  const std::string plain = plain_line(text);
  if (plain.empty()) return false;
  std::string_view rest = plain;
  if (take_amount(rest).found) return false;
  const std::vector<line_token> words = tokens_of(plain);
  if (has_one_of(words, {"before", "fill", "into", "each", "canning", "process", "pot", "not"}))
    return false;
  const std::string said = words_between(words, 0, words.size());
  for (const std::string_view phrase : rules.phrases.opening_headings) {
    if (said == phrase) return true;
    const std::size_t at = (" " + said + " ").find(" " + std::string(phrase) + " ");
    if (plain.back() == ':' && at != std::string::npos) return true;
  }
  return false;
}

/// `For the soak:`, `For the overnight brine (poured off):`.
[[nodiscard]] inline bool is_poured_off_heading(const std::vector<line_token>& t) {
  if (has_one_of(t, {"then", "used", "into", "from", "not", "jar", "jars", "and"})) return false;
  return has_one_of(t, {"soak", "soaking", "discarded", "discard"}) ||
         (has_one_of(t, {"poured"}) && has_one_of(t, {"off"}));
}

/// `For 7 quarts:`, `For six wide-mouth jars`, `Pints:`: how much the lines below make.
[[nodiscard]] inline bool is_batch_heading(const std::vector<line_token>& t) {
  const auto any = [&](auto is) {
    return std::any_of(t.begin(), t.end(), [&](const line_token& w) { return is(w.text); });
  };
  return any([](std::string_view w) {
           return line::one_of(w, {"pint", "pints", "quart", "quarts"});
         }) ||
         (any(is_count) && any([](std::string_view w) { return w == "jars"; }));
}

/// True for a line that a sign refers to a footnote: `1/2 tsp black pepper*`.
[[nodiscard]] inline bool has_footnote_sign(std::string_view text) {
  line::skip_bullet(text);
  return text.find('*') != std::string_view::npos;
}

/// `*Optional` as the last line, below lines with its sign.
[[nodiscard]] inline bool is_optional_footnote(const std::vector<word>& said, std::size_t at) {
  if (at + 1 != said.size()) return false;
  const std::vector<line_token> words = tokens_of(plain_line(said[at].text));
  return words.size() == 1 && words.front().text == "optional" &&
         std::any_of(said.begin(), said.end() - 1,
                     [](const word& w) { return has_footnote_sign(w.text); });
}

/// The headings of a list, line by line.
[[nodiscard]] inline std::vector<listed_under> headings_of(const edition& rules,
                                                           const std::vector<word>& said) {
  std::vector<listed_under> out;
  listed_under now;
  bool batch = false;  // a heading before this one said how much its lines make
  for (std::size_t i = 0; i < said.size(); ++i) {
    const std::string& text = said[i].text;
    if (is_optional_footnote(said, i)) {
      for (std::size_t k = 0; k < i; ++k)
        out[k].doubtful = out[k].doubtful || has_footnote_sign(said[k].text);
      out.push_back({});
      out.back().heading = true;
      continue;
    }
    const std::string plain = plain_line(text);
    if (is_opening_heading(rules, text)) {
      now = {};
      now.serving = true;
      out.push_back(now);
      out.back().heading = true;
      continue;
    }
    const bool colon = !plain.empty() && plain.back() == ':';
    if (is_heading(rules, text) || is_quiet_heading(rules, said, i)) {
      now = {};
      now.serving = is_serving_heading(rules, text);
      std::vector<line_token> tokens = tokens_of(plain);
      // `For 9 pints:` behind `For 7 quarts:` is another batch in place of the first.
      const bool other_batch = batch && is_batch_heading(tokens);
      batch = batch || is_batch_heading(tokens);
      line::take_per_jar(tokens, now.per_jar);
      now.poured_off = is_poured_off_heading(tokens);
      now.doubtful = !now.serving && (other_batch || !is_plain_heading(rules, tokens));
      out.push_back(now);
      out.back().heading = true;
      continue;
    }
    // Whatever else looks like a heading ends the part before it.
    if (colon || starts_with(plain, "for ")) now = {};
    out.push_back(now);
  }
  return out;
}

}  // namespace jarproof::detail
