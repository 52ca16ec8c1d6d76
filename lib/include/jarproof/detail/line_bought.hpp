// What was bought of the food of a line, and how many pieces of it that are.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/line_state.hpp"

namespace jarproof::detail::line {

/// `2 3/4 lb peeled carrots (about 3 1/2 lb as purchased)`: what was bought stands beside what is
/// left of it. Which of the two a recipe prints, its parts say.
inline void find_purchased(state& s) {
  if (!s.out.amount || s.out.amount->kind != measure_kind::mass || !s.out.per_jar.empty()) return;
  for (std::size_t begin = s.segment_end(s.from); begin < s.size(); begin = s.segment_end(begin)) {
    const std::size_t end = s.segment_end(begin);
    if (end < begin + 3 || s.text(end - 2) != "as" ||
        !one_of(s.text(end - 1), {"purchased", "bought"}))
      continue;
    std::size_t at = begin;
    while (one_of(s.text(at), about_words)) ++at;
    std::string_view rest = s.text(at);
    number n;
    number part;
    if (take_number(rest, n) != number_fault::none || !rest.empty()) continue;
    rest = s.text(++at);
    if (n.under == 1 && take_number(rest, part) == number_fault::none && rest.empty() &&
        part.over < part.under) {
      n = {n.over * part.under + part.over, part.under};
      ++at;
    }
    const measure_unit* u = unit_named(s.text(at));
    if (u == nullptr || at + 3 != end) continue;
    const std::optional<measured> bought = measure_of(n, n, *u);
    // No food of these loses more than half.
    if (!bought || bought->kind != measure_kind::mass || bought->low < s.out.amount->high ||
        bought->high > s.out.amount->low * 2)
      continue;
    s.out.purchased = bought;
    s.claim(begin, end, use::word);
  }
}

/// `1/2 cup sliced green peppers (1/2 medium pepper)`: pieces of the thing itself, of which there
/// may be about so many.
inline void find_own_pieces(state& s) {
  if (!s.out.amount || s.out.amount->kind == measure_kind::count) return;
  const std::string& last = s.text(s.end - 1);
  for (std::size_t begin = s.segment_end(s.from); begin < s.size(); begin = s.segment_end(begin)) {
    const std::size_t end = s.segment_end(begin);
    const std::string& piece = s.text(end - 1);
    if (piece != last && piece + "s" != last) continue;
    std::size_t at = begin;
    while (at < end && one_of(s.text(at), about_words)) ++at;
    std::string_view rest = s.text(at);
    number n;
    if (take_number(rest, n) != number_fault::none || !rest.empty()) continue;
    std::vector<std::string> sizes;
    for (++at; at + 1 < end && one_of(s.text(at), {"large", "medium", "small"}); ++at)
      sizes.push_back(s.text(at));
    if (at + 1 != end) continue;
    const std::optional<measured> pieces =
        measure_of(n, n, {"piece", measure_kind::count, 1'000, 1, "piece"});
    if (!pieces) continue;
    const std::optional<measured> x = in_mg(s.rules, *s.out.what, *s.out.amount, {});
    const std::optional<measured> y = in_mg(s.rules, *s.out.what, *pieces, sizes);
    if (!x || !y || x->low * 2 > y->high * 5 || y->low * 2 > x->high * 5) continue;
    s.claim(begin, end, use::word);
  }
}

inline void find_bought(state& s) {
  if (s.out.what == nullptr) return;
  find_purchased(s);
  find_own_pieces(s);
}

}  // namespace jarproof::detail::line
