// Phrases of a line that say nothing about what is in the jar, or take something back: `no skin or
// bones`, `fat free`, `white part only`, `for serving`; and the words that tell by themselves.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "jarproof/detail/line_state.hpp"

namespace jarproof::detail::line {

/// Claims the words behind `no`, `not` and `without` as far as each is a plain word or a name: what
/// is not there does no harm. An unknown word stays free, and so does a name behind `and`, which
/// may be there again: `no salt and cream`.
inline void find_negations(state& s, name_index& names) {
  constexpr std::string_view no[] = {"no", "not", "without", "never", "sin", "omit"};
  constexpr std::string_view joints[] = {"or", "and", "nor", "ni", "o"};
  constexpr std::string_view ends[] = {"in",  "with", "from", "on", "by",
                                       "but", "then", "for",  "of"};
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (!s.is_free(i) || !one_of(s.text(i), no)) continue;
    const bool state_of = s.text(i) == "not" || s.text(i) == "never";
    bool joined = true;
    bool known_only = false;
    std::size_t last = i;
    for (std::size_t at = i + 1; at < i + 9 && s.free_beside(at, i);) {
      const std::string& w = s.text(at);
      if (one_of(w, ends)) break;
      if (one_of(w, joints)) {
        const bool again = w == "and" || w == "o";
        if (again && state_of) break;
        joined = true;
        known_only = known_only || again;
        ++at;
        continue;
      }
      constexpr std::string_view states[] = {"canned", "dry",    "dried",  "frozen",   "raw",
                                             "smoked", "salted", "cooked", "sweetened"};
      const name_match m = names.at(at, s.segment_end(at), true);
      if (m.what != nullptr && !(s.is_plain(w) && m.end == at + 1)) {
        if (!joined || known_only) break;
        joined = false;
        last = m.end - 1;
        at = m.end;
      } else if (s.is_plain(w) || (state_of && one_of(w, states))) {
        last = at++;
      } else {
        break;
      }
    }
    if (last > i) s.claim(i, last + 1, use::word);
    // `peeled or not`
    if (last == i && i > 0 && s.segment_end(i) == i + 1 && s.free_beside(i - 1, i) &&
        s.text(i - 1) == "or")
      s.claim(i - 1, i + 1, use::word);
  }
}

/// `the size of a walnut`, `as big as an egg`: what it is likened to is not there.
inline void find_likeness(state& s) {
  constexpr std::string_view articles[] = {"a", "an", "the", "your", "my", "large", "small"};
  constexpr std::string_view likened[] = {"size", "big", "large", "small", "thick", "shape"};
  for (std::size_t i = 0; i + 2 < s.size(); ++i) {
    if (!one_of(s.text(i), likened) || !one_of(s.text(i + 1), {"of", "as"})) continue;
    if (!s.same_segment(i, i + 2) || !one_of(s.text(i + 2), articles)) continue;
    std::size_t last = i + 3;
    constexpr std::string_view ends[] = {"and", "or", "with", "in", "rolled", "then", "from"};
    while (last < s.size() && last < i + 6 && s.same_segment(last, i) && s.is_free(last) &&
           !one_of(s.text(last), ends))
      ++last;
    s.claim(i, last, use::word);
  }
}

/// `fat free`, `gluten-free`, `free range`, `pea sized`, `thawed if frozen`.
inline void find_free_of(state& s, name_index& names) {
  constexpr std::string_view absent[] = {"fat", "dairy",   "gluten",   "sugar", "salt", "sodium",
                                         "egg", "nut",     "lactose",  "soy",   "oil",  "grain",
                                         "msg", "alcohol", "additive", "skin",  "bone", "gristle"};
  constexpr std::string_view states[] = {"frozen", "fresh",    "canned", "dried",
                                         "dry",    "unsalted", "salted", "possible"};
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (!s.is_free(i)) continue;
    const std::string& w = s.text(i);
    if (w == "free" && i > 0 && s.same_segment(i - 1, i) && s.is_free(i - 1)) {
      const bool known = one_of(s.text(i - 1), absent) || s.is_plain(s.text(i - 1)) ||
                         names.at(i - 1, i, true).what != nullptr;
      if (known) s.claim(i - 1, i + 1, use::word);
    } else if (w == "free" && s.free_beside(i + 1, i) && s.text(i + 1) == "range") {
      s.claim(i, i + 2, use::word);
    } else if (w == "if" && s.free_beside(i + 1, i) && one_of(s.text(i + 1), states)) {
      s.claim(i, i + 2, use::word);
    } else if ((w == "sized" || w == "size") && i > 0 && s.same_segment(i - 1, i) &&
               s.is_free(i - 1) && names.at(i - 1, i, true).what != nullptr) {
      s.claim(i - 1, i + 1, use::word);
    }
  }
}

/// `in a dry pan`, `to the hot pan`: the vessel; `pan` alone may be bread.
inline void find_vessel(state& s) {
  for (std::size_t i = 1; i < s.size(); ++i) {
    if (s.text(i) != "pan" && s.text(i) != "pans") continue;
    for (std::size_t first = i; first > 0 && i - first < 3 && s.free_beside(first - 1, i);
         --first) {
      if (!one_of(s.text(first - 1), {"a", "the", "same"})) continue;
      s.claim(first, i + 1, use::word);
      break;
    }
  }
}

/// A colour that tells a part of a plant from another: `white and light green parts only`.
inline void find_colored_parts(state& s) {
  constexpr std::string_view colors[] = {"white", "green",  "yellow", "red",    "brown",
                                         "pale",  "light",  "dark",   "tender", "and",
                                         "or",    "bright", "pink",   "black",  "the"};
  constexpr std::string_view parts[] = {"part", "parts", "portion", "portions", "end",   "ends",
                                        "bit",  "bits",  "section", "sections", "tops",  "top",
                                        "pith", "only",  "inner",   "leaves",   "fronds"};
  for (std::size_t i = 0; i < s.size(); ++i) {
    std::size_t at = i;
    while (s.free_beside(at, i) && one_of(s.text(at), colors)) ++at;
    if (at == i || !s.free_beside(at, i) || !one_of(s.text(at), parts)) continue;
    // `white only` may be the sort, where there is one; `white part only` is not.
    if (s.text(at) == "only" && s.text(at - 1) != "part" &&
        ingredient_named(s.rules, s.text(i) + " " + s.out.name) != nullptr)
      continue;
    s.claim(i, at + 1, use::word);
    i = at;
  }
}

/// `dry` is no state of the food in `pat dry` and `dry-roasted`, and nothing new of a spice or a
/// mix.
inline void find_dry(state& s) {
  constexpr std::string_view before[] = {"pat",     "patted",  "wiped",   "wipe",   "spun",
                                         "towel",   "shaken",  "blotted", "dried",  "squeezed",
                                         "browned", "roasted", "toasted", "rubbed", "drained",
                                         "spin",    "shake",   "blot"};
  constexpr std::string_view behind[] = {"roasted", "toasted", "measure", "weight", "measured"};
  constexpr std::string_view powders[] = {"mix",     "powder", "seasoning", "flakes",
                                          "mustard", "crumbs", "flour",     "starch",
                                          "yeast",   "sugar",  "salt",      "breadcrumbs"};
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (!s.is_free(i) || s.text(i) != "dry") continue;
    const bool verb = i > 0 && s.same_segment(i - 1, i) && one_of(s.text(i - 1), before);
    const bool way = i + 1 < s.size() && s.same_segment(i + 1, i) && one_of(s.text(i + 1), behind);
    const bool powder = s.out.what != nullptr &&
                        (one_of(s.text(s.end - 1), powders) || is_a(s.rules, *s.out.what, "spice"));
    if (verb || way || powder) s.uses[i] = use::word;
  }
}

/// `for serving`, `to garnish`: on the table, not in the jar.
inline void find_serving(state& s) {
  constexpr std::string_view before[] = {"you",  "we",   "for",    "to",    "at",   "when", "as",
                                         "on",   "upon", "before", "while", "para", "al",   "the",
                                         "just", "in",   "each",   "every", "per",  "once"};
  constexpr std::string_view table[] = {
      "serving",  "serve",  "garnish",    "garnishing", "topping", "table",   "dipping",
      "decorate", "side",   "sprinkling", "servir",     "mesa",    "decorar", "adornar",
      "plating",  "served", "bowl",       "bowls",      "plate",   "plates",  "acompanar"};
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (!s.is_free(i) || !one_of(s.text(i), table)) continue;
    std::size_t first = i;
    while (first > 0 && i - first < 2 && s.same_segment(first - 1, i) && s.is_free(first - 1) &&
           one_of(s.text(first - 1), before))
      --first;
    if (first == i && s.text(i) != "garnish") continue;
    // `plus extra for serving`: the rest of it is in the jar.
    bool rest_in_jar = false;
    for (std::size_t k = 0; k < first; ++k)
      rest_in_jar = rest_in_jar || s.text(k) == "plus" || s.text(k) == "extra" ||
                    s.text(k) == "more" || (s.text(k) == "and" && k + 1 == first);
    if (!rest_in_jar && !is_negated(s, first)) s.out.at_serving = true;
    s.claim(first, i + 1, use::word);
  }
}

/// `when a jar is opened`, `after opening`: later, not in the jar.
inline void find_opening(state& s) {
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (!one_of(s.text(i), {"open", "opened", "opening"})) continue;
    std::size_t first = i;
    while (first > 0 && s.same_segment(first - 1, i) && s.uses[first - 1] != use::name) {
      --first;
      if (!one_of(s.text(first), {"when", "after", "once", "upon", "on", "until"})) continue;
      if (s.text(first) == "until" || is_negated(s, first)) break;
      s.out.at_serving = true;
      s.claim(first, i + 1, use::word);
      break;
    }
  }
}

/// Words that decide by themselves, such as `floured`.
inline void find_telling(state& s) {
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (s.uses[i] != use::free && s.uses[i] != use::word) continue;
    for (const telling_word& t : s.rules.telling_words) {
      if (!starts_with(t.id, s.text(i))) continue;
      std::size_t last = i + 1;
      for (const char c : t.id) last += c == ' ' ? 1 : 0;
      if (last > s.size() || words_between(s.tokens, i, last) != t.id) continue;
      s.claim(i, last, use::word);
      bool taken_back = false;
      for (const line_token& other : s.tokens)
        taken_back =
            taken_back || (other.segment == s.tokens[i].segment && t.unless.contains(other.text));
      if (!taken_back) s.out.telling.push_back(&t);
    }
  }
}

}  // namespace jarproof::detail::line
