// Phrases of a line that say nothing about what is in the jar, or take something back: `no skin or
// bones`, `fat free`, `white part only`; and the words that tell by themselves.
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
  constexpr std::string_view ends[] = {"in",   "with", "from", "on",  "by", "but",
                                       "then", "for",  "of",   "con", "y",  "too"};
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (!s.is_free(i) || !one_of(s.text(i), no)) continue;
    // `if no fresh dill can be found`: what is named there may be taken instead.
    if (s.text(i) == "no" && i > 0 && s.segment_begin(i) == i - 1 && s.text(i - 1) == "if" &&
        s.from < i)
      s.uses[i] = use::word;
    // `with or without`, `never without`: it may be there.
    if (i > 0 && s.same_segment(i - 1, i) &&
        one_of(s.text(i - 1), {"or", "never", "not", "o", "if"}))
      continue;
    // `no fat removed`: all of it is there.
    constexpr std::string_view taken[] = {"removed", "trimmed", "skimmed", "drained"};
    bool still_there = false;
    for (std::size_t k = i + 2; k < s.segment_end(i); ++k)
      still_there = still_there || one_of(s.text(k), taken);
    if (s.text(i) == "no" && still_there) continue;
    const bool state_of = s.text(i) == "not" || s.text(i) == "never";
    bool joined = true;
    bool known_only = false;
    bool gap = false;  // `no-name noodles` are noodles
    std::size_t named_end = 0;
    std::size_t last = i;
    for (std::size_t at = i + 1; at < i + 9 && s.free_beside(at, i);) {
      const std::string& w = s.text(at);
      if (one_of(w, ends)) break;
      if (one_of(w, joints)) {
        const bool again = w == "and" || w == "o" || w == "ni";
        if (again && state_of) break;
        joined = true;
        known_only = known_only || again;
        ++at;
        continue;
      }
      const name_match m = names.at(at, s.segment_end(at), true);
      if (m.what != nullptr && !(s.is_plain(w) && m.end == at + 1)) {
        // `do not drain the bacon fat`: only what stands right behind is not there.
        if (!joined || known_only || (state_of && at > i + 1) || gap) break;
        joined = false;
        last = m.end - 1;
        named_end = m.end;
        at = m.end;
      } else if (s.is_plain(w) || is_listed(s.rules.phrases.waste, w) ||
                 (state_of && is_listed(s.rules.phrases.denied_states, w))) {
        gap = gap || !one_of(w, {"the", "any", "added", "extra", "more", "other", "fresh"});
        last = at++;
      } else {
        break;
      }
    }
    // `no flour unless too thin`, `omit cream if you like`: it may be there.
    constexpr std::string_view trailing[] = {"added", "please", "needed",  "necessary", "used",
                                             "left",  "on",     "visible", "attached"};
    std::size_t after = named_end;
    while (after < s.segment_end(i) && one_of(s.text(after), trailing)) ++after;
    const bool at_end = after >= s.segment_end(i) || !s.is_free(after) ||
                        one_of(s.text(after), {"y", "con", "e", "and", "but", "plus"});
    // `(not pie filling)`: the whole of its part of the line, about the food before it.
    const bool apart = s.out.what != nullptr && s.from < i && s.segment_begin(i) == i &&
                       named_end == s.segment_end(i);
    if (named_end > 0 && !apart && (state_of || !at_end)) continue;
    if (last > i) s.claim(i, last + 1, use::word);
    // `peeled or not`
    if (last == i && i > 0 && s.segment_end(i) == i + 1 && s.free_beside(i - 1, i) &&
        s.text(i - 1) == "or")
      s.claim(i - 1, i + 1, use::word);
  }
}

/// `clams with their liquor`: what comes along in the shell. The liquid of canned beans is starchy
/// and stays a word in doubt.
inline void find_own_liquid(state& s) {
  if (s.out.what == nullptr) return;
  const std::string_view id = s.out.what->id;
  const auto holds = [&](std::string_view part) { return id.find(part) != std::string_view::npos; };
  const bool pickled = id == "caper" || id == "chipotle-in-adobo" || holds("olive") ||
                       holds("sauerkraut") || holds("kimchi") || holds("pickle");
  if (!is_a(s.rules, *s.out.what, "seafood") && (!pickled || holds("oil"))) return;
  for (std::size_t i = 1; i < s.size(); ++i) {
    const bool own = one_of(s.text(i), {"liquid", "liquor"}) ||
                     (pickled && one_of(s.text(i), {"brine", "juice", "sauce"}));
    if (!s.is_free(i) || !own || i + 1 != s.segment_end(i)) continue;
    std::size_t first = i;
    while (first > s.segment_begin(i) && i - first < 5 && s.is_free(first - 1) &&
           (one_of(s.text(first - 1),
                   {"their", "its", "the", "all", "some", "of", "adobo", "own", "a", "little"}) ||
            is_size(s.text(first - 1)) || unit_named(s.text(first - 1)) != nullptr))
      --first;
    if (first > s.segment_begin(i) && s.is_free(first - 1) &&
        one_of(s.text(first - 1), {"with", "plus", "incl", "including"}))
      s.claim(first - 1, i + 1, use::word);
  }
}

/// `so they do not go brown`: a colour that the food takes on or shall not take on.
inline void find_browning(state& s) {
  for (std::size_t i = 1; i < s.size(); ++i) {
    if (s.is_free(i) && s.free_beside(i - 1, i) &&
        one_of(s.text(i), {"brown", "gray", "grey", "dark", "black"}) &&
        one_of(s.text(i - 1), {"go", "goes", "going", "turn", "turns", "turning", "till", "until"}))
      s.claim(i - 1, i + 1, use::word);
  }
}

/// `the size of a walnut`, `as big as an egg`: what it is likened to is not there.
inline void find_likeness(state& s) {
  constexpr std::string_view articles[] = {"a", "an", "the", "your", "my", "large", "small"};
  constexpr std::string_view likened[] = {"size", "big", "large", "small"};
  for (std::size_t i = 0; i + 2 < s.size(); ++i) {
    if (!one_of(s.text(i), likened) || !one_of(s.text(i + 1), {"of", "as"})) continue;
    if (!s.same_segment(i, i + 2) || !one_of(s.text(i + 2), articles)) continue;
    std::size_t last = i + 3;
    // One noun: `the size of a cricket ball`; what comes behind is something else.
    if (last >= s.size() || !s.same_segment(last, i) ||
        !is_listed(s.rules.phrases.likened_to, s.text(last)))
      continue;
    ++last;
    if (last < s.size() && s.same_segment(last, i) && s.text(last) == "ball") ++last;
    s.claim(i, last, use::word);
  }
}

/// `fat free`, `gluten-free`, `free range`, `pea sized`, `thawed if frozen`.
inline void find_free_of(state& s, name_index& names) {
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (!s.is_free(i)) continue;
    const std::string& w = s.text(i);
    if (w == "reduced" && i > 0 && s.same_segment(i - 1, i) && s.is_free(i - 1) &&
        is_listed(s.rules.phrases.absent, s.text(i - 1))) {
      s.claim(i - 1, i + 1, use::word);
    } else if (w == "free" && i > 0 && s.same_segment(i - 1, i) && s.is_free(i - 1)) {
      const bool known = is_listed(s.rules.phrases.absent, s.text(i - 1)) ||
                         s.is_plain(s.text(i - 1)) || names.at(i - 1, i, true).what != nullptr;
      if (known) s.claim(i - 1, i + 1, use::word);
    } else if (w == "free" && s.free_beside(i + 1, i) && s.text(i + 1) == "range") {
      s.claim(i, i + 2, use::word);
    } else if (w == "if" && s.free_beside(i + 1, i) &&
               is_listed(s.rules.phrases.possible_states, s.text(i + 1))) {
      s.claim(i, i + 2, use::word);
    } else if (w == "sized" && i > 0 && s.same_segment(i - 1, i) && s.is_free(i - 1) &&
               names.at(i - 1, i, true).what != nullptr) {
      s.claim(i - 1, i + 1, use::word);
    }
  }
}

/// `in a dry pan`, `to the hot pan`: the vessel; `pan` alone may be bread. `before filling`, `a mix
/// of red and green`, `in the brine`: no things of their own either.
inline void find_vessel(state& s) {
  for (std::size_t i = 1; i < s.size(); ++i) {
    const std::string& before = s.text(i - 1);
    const bool near = s.same_segment(i - 1, i);
    const bool salty = s.out.what != nullptr &&
                       (is_a(s.rules, *s.out.what, "salt") || is_a(s.rules, *s.out.what, "water") ||
                        is_a(s.rules, *s.out.what, "spice"));
    if ((s.text(i) == "filling" && near && one_of(before, {"before", "when", "after", "at"})) ||
        (s.text(i) == "brine" && near && salty && one_of(before, {"the", "a", "for"})))
      s.claim(i - 1, i + 1, use::word);
  }
  for (std::size_t i = 0; i + 1 < s.size(); ++i) {
    if (one_of(s.text(i), {"mix", "mixture", "combination", "medley"}) && s.text(i + 1) == "of" &&
        s.is_free(i))
      s.claim(i, i + 2, use::word);
  }
  for (std::size_t i = 1; i < s.size(); ++i) {
    if (s.text(i) != "pan" && s.text(i) != "pans") continue;
    for (std::size_t first = i; first > 0 && i - first < 3 && s.free_beside(first - 1, i);
         --first) {
      if (!one_of(s.text(first - 1), {"a", "the", "same"})) continue;
      bool plain = true;
      for (std::size_t k = first; k < i; ++k)
        plain = plain && (s.is_plain(s.text(k)) || one_of(s.text(k), {"dry", "hot"}));
      if (plain) s.claim(first, i + 1, use::word);
      break;
    }
  }
}

/// A colour that tells a part of a plant from another: `white and light green parts only`.
inline void find_colored_parts(state& s) {
  for (std::size_t i = 0; i < s.size(); ++i) {
    std::size_t at = i;
    while (s.free_beside(at, i) && is_listed(s.rules.phrases.part_colors, s.text(at))) ++at;
    if (at == i || !s.free_beside(at, i) || !is_listed(s.rules.phrases.plant_parts, s.text(at)))
      continue;
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
  constexpr std::string_view behind[] = {"roasted", "toasted", "measure", "weight", "measured"};
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (!s.is_free(i) || s.text(i) != "dry") continue;
    const bool verb =
        i > 0 && s.same_segment(i - 1, i) && is_listed(s.rules.phrases.drying, s.text(i - 1));
    const bool way = i + 1 < s.size() && s.same_segment(i + 1, i) && one_of(s.text(i + 1), behind);
    const bool powder =
        s.out.what != nullptr &&
        (is_listed(s.rules.phrases.powders, s.text(s.end - 1)) ||
         is_a(s.rules, *s.out.what, "spice") || is_a(s.rules, *s.out.what, "dried-legume"));
    if (verb || way || powder) s.uses[i] = use::word;
  }
}

/// `seeds and ribs removed`, `trimmed of fat`: parts that are thrown away.
inline void find_gone(state& s) {
  const auto part = [&](std::size_t i) {
    return s.is_free(i) && is_listed(s.rules.phrases.waste, s.text(i));
  };
  for (std::size_t i = 0; i < s.size(); ++i) {
    if (!part(i)) continue;
    const std::size_t begin = s.segment_begin(i);
    std::size_t first = i;
    while (first > begin && s.is_free(first - 1) &&
           (is_listed(s.rules.phrases.around_waste, s.text(first - 1)) || part(first - 1)))
      --first;
    std::size_t end = i + 1;
    while (end < s.segment_end(i) && s.is_free(end) &&
           (is_listed(s.rules.phrases.around_waste, s.text(end)) ||
            is_listed(s.rules.phrases.removed, s.text(end)) || part(end)))
      ++end;
    const bool behind = end > i + 1 && is_listed(s.rules.phrases.removed, s.text(end - 1)) &&
                        !is_listed(s.rules.phrases.removed, s.text(first));
    bool before = first > begin && s.is_free(first - 1) &&
                  is_listed(s.rules.phrases.removing, s.text(first - 1));
    // `1/16 inch cut off the blossom end`
    if (!before && first > begin + 1 && s.is_free(first - 1) && s.is_free(first - 2) &&
        one_of(s.text(first - 1), {"off", "away"}) &&
        one_of(s.text(first - 2),
               {"cut", "trim", "trimmed", "pull", "pulled", "snapped", "sliced"})) {
      before = true;
      --first;
    }
    const bool kept = first > begin && one_of(s.text(first - 1), {"not", "never", "dont", "don't"});
    const bool kept2 =
        before && first - 1 > begin && one_of(s.text(first - 2), {"not", "never", "don't"});
    // `cooked in skimmed fat`, `half the fat removed`: it is there.
    bool there = false;
    for (std::size_t k = begin; k < first; ++k)
      there = there || one_of(s.text(k), {"in", "with", "half", "some", "most", "only"});
    // `no fat removed`, `fat skimmed then added`, `skin removed and chopped in`
    there = there || (behind && first > begin && one_of(s.text(first - 1), {"no", "without"}));
    for (std::size_t k = end; k < s.segment_end(i); ++k)
      there = there || one_of(s.text(k), {"then", "back", "returned", "added", "chopped"});
    // `no fat was removed`: all of it is there.
    bool denied = false;
    for (std::size_t k = end; k < s.segment_end(i); ++k)
      denied = denied || is_listed(s.rules.phrases.removed, s.text(k));
    denied = denied && before && s.text(first - 1) == "no";
    if ((!behind && !before) || kept || kept2 || there || denied) continue;
    s.claim(before ? first - 1 : first, end, use::word);
    i = end - 1;
  }
  // `skins on`, `in their skins`: those of a fruit, a root or a bulb.
  if (s.out.what != nullptr && !is_a(s.rules, *s.out.what, "meat") &&
      !is_a(s.rules, *s.out.what, "poultry")) {
    for (std::size_t i = 0; i < s.size(); ++i) {
      const bool on = i + 1 < s.size() && s.text(i + 1) == "on";
      const bool own = i > 0 && s.text(i - 1) == "their";
      if (s.is_free(i) && one_of(s.text(i), {"skin", "skins"}) && (on || own))
        s.uses[i] = use::word;
    }
  }
  // Seeds and ribs of a pepper or a tomato are its own, whether left in or not.
  if (s.out.what != nullptr) {
    const std::string_view family = most_general(s.rules, *s.out.what).id;
    if (family == "pepper" || family == "tomato") {
      for (std::size_t i = 0; i < s.size(); ++i) {
        if (s.is_free(i) && one_of(s.text(i), {"seed", "seeds", "rib", "ribs"}))
          s.uses[i] = use::word;
      }
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
      // A `no` takes back what stands right behind it; the table, anything of its part of the line.
      constexpr std::string_view no[] = {"not", "never", "no", "without"};
      bool taken_back = false;
      for (std::size_t k = s.segment_begin(i); k < s.segment_end(i); ++k) {
        // `mashed before serving` may be before the jar.
        const bool far = (one_of(s.text(k), no) && k + 1 != i) ||
                         (k > 0 && one_of(s.text(k), {"serving", "serve"}) &&
                          one_of(s.text(k - 1), {"before", "for"}));
        taken_back = taken_back || (!far && t.unless.contains(s.text(k)));
      }
      if (!taken_back) s.out.telling.push_back(&t);
    }
  }
}

}  // namespace jarproof::detail::line
