// Words elsewhere in a line that make its ingredient a closer one: `lemon juice, bottled`.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/line_state.hpp"

namespace jarproof::detail::line {

[[nodiscard]] inline bool same_facts(const ingredient& a, const ingredient& b) {
  return a.kind == b.kind && a.traits.size() == b.traits.size() &&
         a.can_as.size() == b.can_as.size() &&
         std::equal(a.traits.begin(), a.traits.end(), b.traits.begin()) &&
         std::equal(a.can_as.begin(), a.can_as.end(), b.can_as.begin());
}

class promotion {
 public:
  explicit promotion(state& s) : s_(s) {}

  void run() {
    if (s_.out.what == nullptr) return;
    name_counts();
    by_head();
    juice_of();
    by_container();
    before_name();
    for (std::size_t i = 0; i < s_.size(); ++i) {
      if (!s_.is_free(i) || is_function_word(s_.text(i)) || is_negated(s_, i) || is_governed(s_, i))
        continue;
      // `milk and butter` are two things and no buttermilk.
      if (i > 0 && s_.same_segment(i - 1, i) &&
          one_of(s_.text(i - 1), {"and", "or", "plus", "with", "y", "o"}) &&
          ingredient_named(s_.rules, s_.text(i)) != nullptr)
        continue;
      // `corn, cream style`, `tomatoes, fire roasted`
      for (std::size_t width = s_.free_beside(i + 1, i) ? 2 : 1; width > 0; --width) {
        if (!closer(words_between(s_.tokens, i, i + width), i, i + width)) continue;
        s_.claim(i, i + width, use::name);
        break;
      }
    }
    dried_herb();
  }

 private:
  state& s_;

  [[nodiscard]] static bool is_function_word(std::string_view w) {
    return w.size() < 3 || one_of(w, {"the", "and", "with", "from", "into", "for", "about", "each",
                                      "sauce", "mix", "soup"});
  }

  /// A state stands beside the name, or begins or ends a thought.
  [[nodiscard]] bool stands_apart(std::size_t first, std::size_t last) const {
    constexpr std::string_view joints[] = {"and",    "then", "but", "freshly",
                                           "finely", "very", "all"};
    if (last == s_.from || first == s_.end) return true;
    return s_.segment_begin(first) == first || s_.segment_end(first) == last ||
           one_of(s_.text(first - 1), joints) || one_of(s_.text(last), joints);
  }

  bool closer(const std::string& words, std::size_t first, std::size_t last) {
    std::string name = words + " " + s_.out.name;
    const ingredient* found = ingredient_named(s_.rules, name);
    if (found == nullptr) {
      name = s_.out.name + " " + words;
      found = ingredient_named(s_.rules, name);
    }
    if (found == nullptr) found = in_state(words, name);
    if (found == nullptr) return false;
    if (first < last && !stands_apart(first, last) && !same_facts(*found, *s_.out.what))
      return false;
    if (first < last && is_another_thing(first, last, *found)) return false;
    // `1 cup salt in a gallon of water` is no cup of salt water.
    if (is_a(s_.rules, *found, "water") && !is_a(s_.rules, *s_.out.what, "water")) return false;
    // `bottled by my mother`: only the bare word says that the juice was bought.
    const bool bare = s_.segment_begin(first) == first && s_.segment_end(first) == last;
    const bool beside = last == s_.from || first == s_.end;
    if (first < last && words == "bottled" && !bare && !(beside && s_.same_segment(first, s_.from)))
      return false;
    s_.out.what = found;
    s_.out.name = std::move(name);
    return true;
  }

  /// `frozen kernel corn` where only `frozen corn kernels` has a name: the state of any name of it.
  [[nodiscard]] const ingredient* in_state(const std::string& words, std::string& name) const {
    if (!one_of(words, {"frozen", "canned", "tinned", "dried", "dry", "cooked", "bottled"}))
      return nullptr;
    for (const std::string_view n : s_.out.what->names) {
      name = words + " " + std::string(n);
      if (const ingredient* found = ingredient_named(s_.rules, name)) return found;
    }
    return nullptr;
  }

  /// A word that is a food by itself, such as the egg of `tomatoes, 1 egg`: another thing where
  /// words stand before it, or where the closer ingredient would lose what the food is.
  [[nodiscard]] bool is_another_thing(std::size_t first, std::size_t last,
                                      const ingredient& closer) const {
    name_index names(s_.rules, s_.tokens);
    const name_match own = names.at(first, s_.segment_end(first), true);
    // `cream style` is more than the cream.
    if (own.what == nullptr || own.end < last ||
        one_of(s_.text(first), {"juice", "leaves", "flowers"}))
      return false;
    const bool alone = s_.segment_begin(first) == first && s_.segment_end(first) == own.end;
    const bool beside = (first == s_.end || own.end == s_.from) && s_.same_segment(first, s_.from);
    if (is_kind_of(s_.rules, closer, own.what->id)) return false;
    if (!alone && !beside) return true;
    if (beside && own.end == s_.from) return false;
    if (!beside && own.what->kind == acidity::low_acid && closer.kind != acidity::low_acid)
      return true;
    // A word of its own part of the line is a kind only where it has no canning of its own.
    const auto lost = [&](std::string_view trait) {
      return is_a(s_.rules, *own.what, trait) && !is_a(s_.rules, closer, trait);
    };
    return std::any_of(std::begin(trait_bans), std::end(trait_bans),
                       [&](const trait_ban& b) { return lost(b.trait); }) ||
           lost("seafood") || lost("alcohol") || lost("made-dish");
  }

  /// `8 heads fresh dill`: the heads of it, where they are an ingredient of their own.
  void by_head() {
    if (!s_.out.amount || s_.out.amount->counts != "head") return;
    const std::string name = s_.out.name + " heads";
    const ingredient* found = ingredient_named(s_.rules, name);
    if (found == nullptr) return;
    s_.out.what = found;
    s_.out.name = name;
  }

  void by_container() {
    const std::string& c = s_.amount.container;
    if (c == "can" && s_.out.name.find("canned") == std::string::npos) (void)closer("canned", 0, 0);
    if (c == "bottle") (void)closer("bottled", 0, 0);
    if (c == "jar") (void)closer("jarred", 0, 0);
  }

  /// `6 garlic cloves`, `1 cinnamon stick`: the name says what is counted.
  void name_counts() {
    const std::string& said = s_.out.amount_text;
    const bool bare = said.size() > 6 && said.compare(said.size() - 6, 6, " piece") == 0;
    if (!s_.out.amount || s_.out.amount->counts != "piece" || !bare) return;
    const measure_unit* u = unit_named(s_.text(s_.end - 1));
    const bool other = u != nullptr && u->kind == measure_kind::count && u->factor == 1'000 &&
                       u->counts != "can" && s_.end - s_.from > 1;
    if (!other || (u->counts == "clove" && is_a(s_.rules, *s_.out.what, "spice"))) return;
    s_.out.amount->counts = u->counts;
    const std::size_t blank = s_.out.amount_text.rfind(' ');
    s_.out.amount_text = s_.out.amount_text.substr(0, blank + 1) + std::string(u->id);
  }

  /// `juice of 2 lemons`, `zest and juice of an orange`: what goes in are these parts of the fruit.
  void juice_of() {
    std::size_t of = 0;
    while (of < s_.from && !one_of(s_.text(of), {"of", "from", "de"})) ++of;
    if (of == 0 || of >= s_.from) return;
    std::vector<std::string> parts;
    for (std::size_t i = 0; i < of; ++i) {
      const std::string& w = s_.text(i);
      if (one_of(w, {"juice", "jugo", "zumo"})) {
        parts.insert(parts.begin(), "juice");
      } else if (w == "ralladura") {
        parts.emplace_back("zest");
      } else if (one_of(w, {"zest", "rind", "peel"})) {
        parts.push_back(w);
      } else if (!one_of(w, {"and", "y", "the", "el", "grated", "finely", "fresh"})) {
        return;
      }
    }
    bool first = true;
    for (const std::string& part : parts) {
      const auto [found, name] = part_of_fruit(part);
      if (found == nullptr) continue;
      if (first) {
        s_.out.what = found;
        s_.out.name = name;
      } else {
        s_.out.others.push_back({found, name, false});
      }
      first = false;
    }
    if (first) return;
    if (!s_.out.amount) count_of(of + 1);
    s_.claim(0, s_.from, use::name);
  }

  [[nodiscard]] std::pair<const ingredient*, std::string> part_of_fruit(
      const std::string& part) const {
    const std::string said = words_between(s_.tokens, s_.from, s_.end);
    auto found = part_of(said, part);
    // `zest of 2 navel oranges`: that of any orange.
    for (const std::string_view other : s_.out.what->names) {
      if (found.first == nullptr) found = part_of(std::string(other), part);
    }
    return found;
  }

  [[nodiscard]] std::pair<const ingredient*, std::string> part_of(const std::string& one,
                                                                  const std::string& part) const {
    for (const std::string_view end : {"es", "s", ""}) {
      if (one.size() <= end.size() || one.compare(one.size() - end.size(), end.size(), end) != 0)
        continue;
      // Juice of a fruit is pressed fresh; what comes from a bottle is called juice.
      const std::string name = one.substr(0, one.size() - end.size()) + " " + part;
      const std::string de = "jugo de " + one.substr(0, one.size() - end.size());
      for (const std::string& each : {"fresh " + name, name, part == "juice" ? de : name}) {
        if (const ingredient* found = ingredient_named(s_.rules, each)) return {found, each};
      }
    }
    return {nullptr, {}};
  }

  /// The pieces of `juice of 2 large lemons`.
  void count_of(std::size_t at) {
    if (at >= s_.from) return;
    const std::string words = words_between(s_.tokens, at, s_.from) + " of it";
    std::string_view rest = words;
    const line_amount a = take_amount(rest);
    if (!a.found) return;
    s_.out.amount = a.amount;
    s_.out.amount_text = a.text;
  }

  /// `red pepper, ground`: the word before the name belongs to it too.
  void before_name() {
    const std::size_t before = s_.from - 1;
    if (s_.from == 0 || !s_.is_free(before) || !s_.same_segment(before, s_.from)) return;
    const std::string rest = " " + s_.text(before) + " " + s_.out.name;
    for (std::size_t i = 0; i < s_.size(); ++i) {
      if (!s_.is_free(i) || i == before || is_governed(s_, i)) continue;
      const std::string name = s_.text(i) + rest;
      const ingredient* found = ingredient_named(s_.rules, name);
      if (found == nullptr) continue;
      s_.out.what = found;
      s_.out.name = name;
      s_.uses[i] = s_.uses[before] = use::name;
      return;
    }
  }

  /// A spoon of an herb, neither fresh nor cut, is the dried one.
  void dried_herb() {
    const bool spoon = s_.out.amount && s_.out.amount->kind == measure_kind::volume &&
                       s_.out.amount->high <= 2'000;
    if (!spoon || !is_a(s_.rules, *s_.out.what, "fresh-herb")) return;
    constexpr std::string_view fresh[] = {"fresh",  "chopped", "minced",  "torn",
                                          "leaves", "sprigs",  "snipped", "cut"};
    const bool said_fresh = s_.out.name.find("fresh") != std::string::npos ||
                            std::any_of(s_.tokens.begin(), s_.tokens.end(),
                                        [&](const auto& t) { return one_of(t.text, fresh); });
    if (!said_fresh) (void)closer("dried", 0, 0);
  }
};

}  // namespace jarproof::detail::line
