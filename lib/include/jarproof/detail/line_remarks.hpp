// Remarks of a line: what a thing is put in for, where it comes from, how it was weighed, and words
// of a kitchen that name no food.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>

#include "jarproof/detail/line_state.hpp"

namespace jarproof::detail::line {

/// The words that the longest of `phrases` takes up at word `i`, all of them free; 0 for none.
[[nodiscard]] inline std::size_t phrase_at(const state& s, std::size_t i,
                                           list<std::string_view> phrases) {
  std::size_t best = 0;
  const std::string& first = s.text(i);
  for (const std::string_view* p =
           std::lower_bound(phrases.begin(), phrases.end(), std::string_view(first));
       p != phrases.end() && starts_with(*p, first); ++p) {
    std::size_t width = 1;
    for (const char c : *p) width += c == ' ' ? 1 : 0;
    if (width <= best || i + width > s.segment_end(i)) continue;
    bool free = true;
    for (std::size_t k = i; k < i + width; ++k) free = free && s.is_free(k);
    if (free && words_between(s.tokens, i, i + width) == *p) best = width;
  }
  return best;
}

/// `from the mill` says nothing about the food; with `or none` the thing may be left out.
inline void find_remarks(state& s) {
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (!s.is_free(i)) continue;
    if (const std::size_t width = phrase_at(s, i, s.rules.phrases.remarks)) {
      s.claim(i, i + width, use::word);
      i += width - 1;
      continue;
    }
    // Only at the end of its thought: `omit for plain or fry in butter` says more.
    const std::size_t width = phrase_at(s, i, s.rules.phrases.left_out);
    if (width == 0 || i + width != s.segment_end(i) || s.out.what == nullptr || s.from > i)
      continue;
    s.claim(i, i + width, use::word);
    s.out.words.emplace_back("optional");
  }
}

[[nodiscard]] inline bool is_liquid_line(const state& s) {
  return s.out.what != nullptr &&
         (is_a(s.rules, *s.out.what, "liquid") || is_a(s.rules, *s.out.what, "water") ||
          is_a(s.rules, *s.out.what, "salt"));
}

/// `plus more to cover`, `or less`, `use half`: how much of it there is stays open.
inline void find_open_amount(state& s) {
  s.out.open = s.amount.open;
  for (std::size_t i = 0; i < s.size() && s.out.open.empty(); ++i) {
    std::size_t width = phrase_at(s, i, s.rules.phrases.open_amounts);
    if (width == 0) {
      width = phrase_at(s, i, s.rules.phrases.open_ends);
      if (i + width != s.segment_end(i)) width = 0;
    }
    // Of food, what is poured off is its fat.
    if (width > 0 && s.text(i + width - 1) == "off" && !is_liquid_line(s)) continue;
    if (width > 0) s.out.open = words_between(s.tokens, i, i + width);
  }
}

/// `for deglazing`, `to reduce the foaming`, `against foaming`.
inline void find_purposes(state& s) {
  constexpr std::string_view before[] = {"for", "to", "against", "para"};
  for (std::size_t i = 1; i < s.size(); ++i) {
    if (!s.is_free(i) || !is_listed(s.rules.phrases.purposes, s.text(i))) continue;
    std::size_t first = i;
    while (first > 0 && i - first < 4 && s.free_beside(first - 1, i) &&
           is_listed(s.rules.phrases.to_purposes, s.text(first - 1)))
      --first;
    if (first == 0 || !s.free_beside(first - 1, i) || !one_of(s.text(first - 1), before)) continue;
    s.claim(first - 1, i + 1, use::word);
    // `for frying the veg`: of what it is for nothing comes in here.
    constexpr std::string_view them[] = {"veg", "veggies", "vegetables"};
    if (s.free_beside(i + 1, i) && one_of(s.text(i + 1), {"the", "your"}) &&
        s.free_beside(i + 2, i) && one_of(s.text(i + 2), them))
      s.claim(i + 1, i + 3, use::word);
  }
}

/// `weighed with stones`, `stoned weight`.
inline void find_weighing(state& s) {
  constexpr std::string_view ways[] = {"stoned",   "pitted",  "peeled",  "shelled", "net",
                                       "drained",  "raw",     "trimmed", "cleaned", "prepared",
                                       "dressed",  "boned",   "total",   "live",    "gross",
                                       "unpeeled", "unpitted"};
  constexpr std::string_view around[] = {"with",  "without", "after", "before", "when",
                                         "their", "once",    "still", "in"};
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (!s.is_free(i)) continue;
    if (s.text(i) == "weight" && i > 0 && s.free_beside(i - 1, i) && one_of(s.text(i - 1), ways)) {
      s.claim(i - 1, i + 1, use::word);
      continue;
    }
    if (s.text(i) != "weighed") continue;
    std::size_t end = i + 1;
    while (s.free_beside(end, i) && (is_listed(s.rules.phrases.waste, s.text(end)) ||
                                     is_listed(s.rules.phrases.around_waste, s.text(end)) ||
                                     one_of(s.text(end), around) || one_of(s.text(end), ways)))
      ++end;
    if (end == s.segment_end(i)) s.claim(i, end, use::word);
  }
}

/// Parts that a food brings along: the pulp of an orange, the caps of a mushroom. `M` beside an egg
/// is its size.
inline void find_own_parts(state& s, name_index& names) {
  if (s.out.what == nullptr) return;
  const std::string_view id = s.out.what->id;
  const auto holds = [&](std::string_view part) { return id.find(part) != std::string_view::npos; };
  const bool whole = s.out.name.find("juice") == std::string::npos &&
                     !is_a(s.rules, *s.out.what, "acidifier") &&
                     !is_a(s.rules, *s.out.what, "liquid") && s.out.what->kind == acidity::acid;
  const bool citrus = whole && (id == "orange" || id == "lemon" || id == "lime" ||
                                id == "grapefruit" || id == "tangerine" || id == "citrus");
  const bool mushroom = holds("mushroom") && !holds("soup") && !holds("powder");
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (!s.is_free(i)) continue;
    const std::string& w = s.text(i);
    // `cumin seed, toasted and ground`; not of `ground beef`.
    const bool ground = w == "ground" && is_a(s.rules, *s.out.what, "spice") &&
                        names.at(i, s.segment_end(i), true).what == nullptr;
    const bool dry =
        is_a(s.rules, *s.out.what, "spice") && one_of(w, {"seco", "seca", "secos", "secas"});
    const bool own =
        ground || dry || (w == "rendered" && is_a(s.rules, *s.out.what, "fat")) ||
        (citrus && one_of(w, {"rind", "rinds", "zest", "pulp", "peel", "peels", "segments"})) ||
        (mushroom && one_of(w, {"cap", "caps", "stem", "stems"})) ||
        (id == "egg" && s.segment_begin(i) == i && s.segment_end(i) == i + 1 &&
         one_of(w, {"s", "m", "l", "xl"}));
    if (own) s.uses[i] = use::word;
  }
}

/// `mexican oregano`: where a spice, a fruit or a drink comes from. Beside other food such a word
/// may stand for a way of cooking it. Colours and shapes of fresh peppers decide nothing either.
inline void find_kinds(state& s, name_index& names) {
  const auto named = [&](std::size_t i) {
    return i < s.size() && (s.uses[i] == use::name || s.uses[i] == use::other);
  };
  for (std::size_t i = 0; i + 1 < s.size(); ++i) {
    if (!s.is_free(i) || !is_listed(s.rules.phrases.origins, s.text(i))) continue;
    if (!named(i + 1) || !s.same_segment(i, i + 1)) continue;
    const ingredient* what =
        i + 1 == s.from ? s.out.what : names.at(i + 1, s.segment_end(i), true).what;
    if (what == nullptr || is_a(s.rules, *what, "acidifier")) continue;
    if (is_a(s.rules, *what, "spice") || is_a(s.rules, *what, "fresh-herb") ||
        is_a(s.rules, *what, "alcohol") || is_a(s.rules, *what, "salt") ||
        what->kind == acidity::acid)
      s.uses[i] = use::word;
  }
  if (s.out.what == nullptr) return;
  const std::string_view family = most_general(s.rules, *s.out.what).id;
  if (family != "pepper" && family != "bell-pepper") return;
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (s.is_free(i) && is_listed(s.rules.phrases.pepper_kinds, s.text(i))) s.uses[i] = use::word;
  }
}

/// `vinegar, for wiping the rims`: what cleans a jar does not go into it. Any further word leaves
/// the line as it was.
inline void find_wiping(state& s) {
  if (s.out.what == nullptr || !s.out.others.empty()) return;
  if (!is_a(s.rules, *s.out.what, "acidifier") && !is_a(s.rules, *s.out.what, "water")) return;
  constexpr std::string_view rest[] = {"for",    "to",    "the",   "jar",   "jars",      "your",
                                       "of",     "clean", "white", "plain", "distilled", "rim",
                                       "rims",   "a",     "bit",   "and",   "in",        "splash",
                                       "canner", "cloth", "little"};
  bool wiping = false;
  bool rims = false;
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (i >= s.from && i < s.end) continue;
    const bool wipes = one_of(s.text(i), {"wiping", "wipe"});
    if (wipes && (i == 0 || !one_of(s.text(i - 1), {"for", "to"}))) return;
    if (!wipes && !one_of(s.text(i), rest)) return;
    wiping = wiping || wipes;
    rims = rims || one_of(s.text(i), {"rim", "rims"});
  }
  if (!wiping || !rims) return;
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (s.is_free(i)) s.uses[i] = use::word;
  }
  s.out.at_serving = true;
}

/// `1 square of muslin`, `8 clean jars with lids`: a line of nothing but things that are no food.
[[nodiscard]] inline bool is_utensil_line(const state& s) {
  constexpr std::string_view things[] = {"muslin",      "cheesecloth", "twine", "funnel",
                                         "thermometer", "lids",        "jars",  "tongs"};
  constexpr std::string_view joints[] = {"a",   "an", "and", "of",    "with",   "or",   "the",
                                         "for", "to", "in",  "about", "approx", "your", "some"};
  bool thing = false;
  bool said = false;
  for (const line_token& t : s.tokens) {
    const bool listed = is_listed(s.rules.phrases.utensils, t.text);
    if (!listed && !one_of(t.text, joints) && !is_size(t.text) && unit_named(t.text) == nullptr)
      return false;
    thing = thing || (listed && one_of(t.text, things));
    // `2 jars` alone may be jars of something.
    said = said || (listed && t.text != "jars" && t.text != "jar");
  }
  return thing && said;
}

}  // namespace jarproof::detail::line
