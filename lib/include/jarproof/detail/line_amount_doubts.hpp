// Further amounts of a line that put the first one in doubt: `1 lb onions (4 lb if you like)`, `3
// cups onions (about 4 lb)`, `1 cup vinegar (1/2)`. SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "jarproof/detail/line_state.hpp"

namespace jarproof::detail::line {

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

/// True unless two measures of a low-acid food cannot be the same amount: `3 cups onions (about
/// 4 lb)`. Recipes print what was bought beside what is left of it, up to two and a half times as
/// much (common practice, no source).
[[nodiscard]] inline bool may_be_equal(const state& s, const measured& a, const measured& b) {
  if (s.out.what->kind != acidity::low_acid || a.kind == measure_kind::count ||
      b.kind == measure_kind::count)
    return true;
  const std::optional<measured> x = in_mg(s.rules, *s.out.what, a, {});
  const std::optional<measured> y = in_mg(s.rules, *s.out.what, b, {});
  return !x || !y || (x->low * 2 <= y->high * 5 && y->low * 2 <= x->high * 5);
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
  if (!s.out.amount) return true;
  if (s.out.amount->kind != m.kind) {
    // `cut from about 15 lb of ears`: as it was bought, with what is thrown away.
    for (std::size_t i = s.segment_begin(at); i < s.segment_end(at); ++i) {
      if (one_of(s.text(i),
                 {"from", "ears", "pods", "husk", "husks", "shell", "unshelled", "whole"}))
        return true;
    }
    return may_be_equal(s, *s.out.amount, m);
  }
  const std::int64_t low = s.out.amount->low;
  const std::int64_t high = s.out.amount->high;
  return m.low * 5 >= low * 4 && m.high * 4 <= high * 5;
}

/// `from about 8 cups whole`, `to make 5 cups juice`, `enough for 5 cups crushed`: before or after
/// some work the same thing measures otherwise.
[[nodiscard]] inline bool is_yield(const state& s, std::size_t at) {
  if (is_a(s.rules, *s.out.what, "acidifier") || is_a(s.rules, *s.out.what, "salt")) return false;
  std::size_t i = s.segment_begin(at);
  if (i == at) return false;
  const std::string_view first = s.text(i);
  bool yields = one_of(first, {"from", "makes", "yields", "gives", "equals"});
  if (one_of(first, {"enough", "sufficient"}) && one_of(s.text(i + 1), {"for", "to"})) {
    yields = true;
    i += s.text(i + 1) == "to" ? 2 : 1;
  } else if (first == "to" && one_of(s.text(i + 1), {"make", "yield", "get", "give", "equal"})) {
    yields = true;
    ++i;
  }
  for (std::size_t k = i + 1; k < at; ++k)
    yields = yields && one_of(s.text(k), {"about", "approx", "approximately", "around", "roughly",
                                          "make", "yield", "get", "a", "full", "up", "to"});
  for (std::size_t k = at; k < s.segment_end(at); ++k)
    yields = yields && s.uses[k] != use::other &&
             !one_of(s.text(k), {"or", "plus", "and", "more", "if", "then"});
  return yields;
}

/// `5 to 6 lbs each`: how heavy each piece is.
[[nodiscard]] inline bool is_weight_of_each(const state& s, std::size_t at) {
  if (!s.out.amount || s.out.amount->counts != "piece") return false;
  bool each = false;
  for (std::size_t i = s.segment_begin(at); i < s.segment_end(at); ++i) {
    const std::string& w = s.text(i);
    each = each || one_of(w, {"each", "apiece", "ea"});
    if (!is_size(w) && unit_named(w) == nullptr &&
        !one_of(w, {"each", "apiece", "ea", "to", "about", "weighing", "approx"}))
      return false;
  }
  return each;
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

/// `2 lb onions (4 lb if you like)`, `1 cup vinegar or less`: the first amount is in doubt, and so
/// is the line.
inline void find_doubt_behind_name(state& s) {
  constexpr std::string_view before[] = {"or", "use", "plus", "x", "less", "maybe", "than", "to"};
  std::optional<measured> source;  // what the amount was made of, or makes
  for (std::size_t i = s.end; i < s.size(); ++i) {
    if (!s.is_free(i)) continue;
    const std::string& w = s.text(i);
    const bool near = i > 0 && s.same_segment(i - 1, i);
    // `salt, or more` is to taste.
    const bool taste = is_a(s.rules, *s.out.what, "spice") || is_a(s.rules, *s.out.what, "salt");
    if ((w == "more" || w == "less" || w == "most") && near && !taste &&
        one_of(s.text(i - 1), {"or", "at"})) {
      // `6 cups stock, or more for thinning`: nobody knows how much.
      if (w == "more" && s.text(i - 1) == "or" && s.free_beside(i + 1, i) == false &&
          i + 1 < s.segment_end(i) && is_a(s.rules, *s.out.what, "broth")) {
        s.out.amount.reset();
        s.out.amount_text.clear();
        continue;
      }
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
      if (is_yield(s, i)) {
        source = m.amount;
        // The pulp of fruit and tomatoes; that of a squash is too thick for a jar.
        for (std::size_t k = i; k < s.segment_end(i); ++k) {
          if (s.is_free(k) && s.text(k) == "pulp" && s.out.what->kind != acidity::low_acid)
            s.uses[k] = use::word;
        }
      }
      const bool again_source = source && source->kind == m.amount->kind &&
                                m.amount->low * 5 >= source->low * 4 &&
                                m.amount->high * 4 <= source->high * 5;
      bool owned = again_source || is_weight_of_each(s, i);
      // `and 2 cups rice`: the amount of the other ingredient
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
    // `24 oz cranberries (2 bags)`: how fruit and vegetables are sold.
    const bool bags = u != nullptr && u->id == "bag" && s.segment_end(i) == i + 1 &&
                      s.segment_begin(i) + 1 == i && s.out.amount &&
                      s.out.amount->kind != measure_kind::count &&
                      !is_a(s.rules, *s.out.what, "meat") && !is_a(s.rules, *s.out.what, "poultry");
    // `enough to fill 4 jars`
    const bool fills = u != nullptr && u->id == "jar" &&
                       one_of(s.text(s.segment_begin(i)), {"enough", "makes", "yields", "fills"});
    if (u != nullptr && s.out.amount && !bags && !fills &&
        (u->counts == "can" || u->id == "cube") &&
        take_number(counted, count) == number_fault::none && counted.empty() &&
        s.out.others.empty())
      s.out.strange.push_back(w);
    std::string_view rest = w;
    number n;
    // `2 cups lemon juice, 1/2 for the jars`: some of it goes elsewhere.
    if (s.out.amount && !taste && i + 1 < s.segment_end(i) &&
        is_a(s.rules, *s.out.what, "acidifier") &&
        one_of(s.text(i + 1), {"for", "into", "goes", "in", "to"}) &&
        take_number(rest, n) == number_fault::none && rest.empty())
      s.out.strange.push_back(w);
    rest = w;
    if (near && one_of(s.text(i - 1), before) && take_number(rest, n) == number_fault::none &&
        rest.empty() && s.segment_end(i) == i + 1)
      s.out.strange.push_back(w);
  }
}

/// `1 lb onions (I used 3)`, `4 cups water (6 if needed)`, `1 cup vinegar (1/2)`: another amount in
/// the same measure. `2 lb apples (about 6)` counts them.
inline void find_bare_number(state& s) {
  if (!s.out.amount || s.out.amount->kind == measure_kind::count) return;
  const bool thin = is_a(s.rules, *s.out.what, "acidifier") || is_a(s.rules, *s.out.what, "water");
  for (std::size_t i = s.end; i < s.size(); ++i) {
    std::string_view rest = s.text(i);
    number n;
    if (!s.is_free(i) || take_number(rest, n) != number_fault::none || !rest.empty()) continue;
    const bool measured_on = i + 1 < s.segment_end(i) && unit_named(s.text(i + 1)) != nullptr;
    const bool says_more =
        i + 1 < s.segment_end(i) &&
        one_of(s.text(i + 1), {"percent", "%", "min", "mins", "minutes", "hour", "hours", "days"});
    if (measured_on || says_more) continue;
    bool doubt = thin;
    for (std::size_t k = s.segment_begin(i); k < s.segment_end(i); ++k)
      doubt = doubt && s.uses[k] != use::other && s.uses[k] != use::name;
    for (std::size_t k = s.segment_begin(i); k < s.segment_end(i); ++k)
      doubt = doubt || one_of(s.text(k), {"if",   "used", "use",   "i",      "we",      "mom",
                                          "was",  "were", "last",  "max",    "maximum", "least",
                                          "best", "fine", "works", "too",    "needed",  "year",
                                          "like", "do",   "did",   "better", "instead", "now"});
    if (doubt) s.out.strange.push_back(s.text(i));
  }
}

}  // namespace jarproof::detail::line
