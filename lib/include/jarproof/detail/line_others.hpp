// Further ingredients of a line: `salt and pepper`, `milk or cream`, `browned in butter`.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/line_state.hpp"

namespace jarproof::detail::line {

class further {
 public:
  further(state& s, name_index& names) : s_(s), names_(names) {}

  void run() {
    if (s_.out.what == nullptr) return;
    share_noun();
    for (const bool folded_plural : {false, true}) {
      for (std::size_t from = 0; from < s_.size();) {
        if (!s_.is_free(from)) {
          ++from;
          continue;
        }
        std::size_t end = from;
        while (s_.free_beside(end, from)) ++end;
        const name_match m = names_.longest(from, end, folded_plural);
        if (m.what != nullptr) take(m);
        from = m.what == nullptr ? end : m.end;
      }
    }
  }

 private:
  /// How a further name is tied to the first one.
  enum class tie { none, with, instead, harmless };

  state& s_;
  name_index& names_;

  void take(const name_match& m) {
    const tie t = tie_of(m.from, m.end);
    if (t == tie::harmless) {
      s_.claim(m.from, m.end, use::word);
    } else if (t == tie::none) {
      // A plain word such as `ground` may be part of some name; alone it is only a word.
      for (std::size_t i = m.from; i < m.end; ++i) {
        s_.uses[i] = use::word;
        if (!s_.is_plain(s_.text(i))) s_.out.strange.push_back(s_.text(i));
      }
    } else {
      if (m.end + 1 == s_.from && is_joint(m.end) &&
          is_listed(s_.rules.phrases.shared_states, s_.text(m.from)))
        share_with_main(s_.text(m.from));
      claim(m.from, m.end, m.what, words_between(s_.tokens, m.from, m.end), t == tie::instead);
    }
  }

  [[nodiscard]] tie tie_of(std::size_t from, std::size_t end) const {
    constexpr std::string_view with[] = {
        "and",   "plus", "with", "in",  "from", "on",        "over", "into", "by",
        "using", "of",   "y",    "con", "en",   "including", "then", "but",  "e",
        "until", "till", "so",   "as",  "per",  "incl",      "donde"};
    constexpr std::string_view or_words[] = {"or",  "such", "like",   "preferably", "o",      "eg",
                                             "e.g", "ie",   "either", "substitute", "without"};
    constexpr std::string_view purpose[] = {"for", "against", "para"};
    constexpr std::string_view gone[] = {"removed", "discarded", "omitted", "free"};
    const std::size_t stop = s_.segment_end(from);
    const bool gone_behind = end < stop && one_of(s_.text(end), gone);
    if (!gone_behind && is_negated(s_, from)) {
      // `milk, if no cream`: the cream comes first.
      const std::size_t begin = s_.segment_begin(from);
      const bool lacking = s_.text(begin) == "if" && begin + 1 < from && s_.text(begin + 1) == "no";
      return end == stop && !lacking ? tie::harmless : tie::instead;
    }
    // `bacon removed later` was cooked with; what may not be in a jar stays a thing of the line.
    if (gone_behind && end + 1 == stop && !is_banned(from, end)) return tie::harmless;
    bool any = false;
    bool only_near = true;
    for (std::size_t i = from; i > 0 && s_.same_segment(i - 1, from); --i) {
      const std::string& w = s_.text(i - 1);
      // `oil for frying the onions`, where the first three words are a name
      if (s_.uses[i - 1] == use::name && only_near && i < from &&
          one_of(w, {"frying", "sauteing", "browning", "cooking"}))
        return is_banned(from, end) ? tie::instead : tie::harmless;
      if (s_.uses[i - 1] == use::name || s_.uses[i - 1] == use::other)
        return any || (i == from && is_seasoning(from, end)) ? tie::with : tie::none;
      if (one_of(w, or_words)) return tie::instead;
      // `hot peppers, I use jalapeno`
      if (one_of(w, {"use", "used"}) && i > 1 && one_of(s_.text(i - 2), {"i", "we"}))
        return tie::instead;
      // `for the soup`; `for body, cornstarch` and `for frying in butter` are no purpose of these.
      if (one_of(w, purpose) && only_near)
        return is_banned(from, end) ? tie::instead : tie::harmless;
      only_near = only_near && is_listed(s_.rules.phrases.before_purpose, w);
      // `water to boil the beans`
      if (w == "to" && !any && i < from &&
          is_listed(s_.rules.phrases.cooking_in_water, s_.text(i)) &&
          is_a(s_.rules, *s_.out.what, "water"))
        return tie::harmless;
      // `ascorbic acid to hold the apples`
      if (w == "to" && i < from && one_of(s_.text(i), {"hold", "soak", "dip", "treat"}) &&
          s_.out.what->id == "ascorbic-acid")
        return is_banned(from, end) ? tie::with : tie::harmless;
      any = any || one_of(w, with);
    }
    if (any) return tie::with;
    // The first of its segment: a second thing behind a comma, or one before the main name.
    if (!s_.same_segment(from, s_.from)) return tie::with;
    if (end <= s_.from && is_seasoning(from, end) &&
        (end == s_.from || names_.at(end, s_.from, true).what != nullptr))
      return tie::with;
    constexpr std::string_view after[] = {"and", "or", "plus", "with", "o", "y"};
    if (end < s_.from && one_of(s_.text(end), after))
      return s_.text(end) == "or" || s_.text(end) == "o" ? tie::instead : tie::with;
    return tie::none;
  }

  /// `salt pepper garlic powder`: seasonings stand beside each other without a comma.
  [[nodiscard]] bool is_seasoning(std::size_t from, std::size_t end) const {
    const ingredient* what = names_.at(from, end, true).what;
    const auto dry = [&](const ingredient& x) {
      return is_a(s_.rules, x, "spice") || is_a(s_.rules, x, "salt");
    };
    return what != nullptr && dry(*what) && dry(*s_.out.what);
  }

  [[nodiscard]] bool is_banned(std::size_t from, std::size_t end) const {
    const ingredient* what = names_.at(from, end, true).what;
    return what != nullptr &&
           (!ban_on(s_.rules, *what).empty() || is_a(s_.rules, *what, "made-dish"));
  }

  void claim(std::size_t from, std::size_t end, const ingredient* what, std::string name,
             bool instead) {
    s_.claim(from, end, use::other);
    if (what == s_.out.what) {
      // `2 lb onions and 2 lb onions`: a second amount of it would be lost.
      const bool number = from > 0 && is_size(s_.text(from - 1));
      if (number && is_a(s_.rules, *what, "spice")) {
        // `8 guajillo chiles and 3 anchos`: how many of each does not matter.
        s_.out.amount.reset();
        s_.out.amount_text.clear();
      } else if (number || (from > 1 && unit_named(s_.text(from - 1)) != nullptr &&
                            is_size(s_.text(from - 2))))
        s_.out.strange.push_back(name);
      return;
    }
    for (const other_ingredient& o : s_.out.others) {
      if (o.what == what) return;
    }
    s_.out.others.push_back({what, std::move(name), instead});
  }

  /// `red or green bell peppers`, `beef or vegetable broth`: the noun is said once; in `dried basil
  /// or oregano` the state is. A name that begins at the word behind `or` goes before both.
  void share_noun() {
    const std::vector<line_token> name = tokens_of(s_.out.name);
    for (std::size_t i = 0; i < s_.size(); ++i) {
      // `seeded and chopped`: a plain word is no kind, although `chopped peppers` is a name.
      if (!s_.is_free(i) || is_line_word(s_.rules, s_.text(i))) continue;
      const bool before = i < s_.from;
      // The end of a longer name: the knuckle of `veal knuckle and shin bones`.
      if (i > 0 && s_.free_beside(i - 1, i)) {
        const name_match longer = names_.at(i - 1, s_.segment_end(i), true);
        if (longer.what != nullptr && longer.end > i) continue;
      }
      const bool next = i + 1 < s_.size() && is_joint(i + 1);
      const bool last = i > 0 && is_joint(i - 1);
      const bool own_segment = s_.segment_begin(i) == i && s_.segment_end(i) == i + 1;
      if (is_joint(i) || !((before && (next || own_segment)) || (!before && (last || next))))
        continue;
      const name_match own = names_.at(i, s_.segment_end(i), true);
      // `dried pinto beans or red kidney beans`: the state is said once for both.
      if (!before && last && own.what != nullptr && own.end - own.from > 1 &&
          share_state(i, own.end, name, instead_at(i)))
        continue;
      if (!before && own.what != nullptr && own.end - own.from > 1) continue;
      const std::string_view joint = next ? s_.text(i + 1) : last ? s_.text(i - 1) : s_.text(i);
      const bool instead = joint != "and" && joint != "y";
      if (!before && own.what != nullptr && share_state(i, i + 1, name, instead)) continue;
      if (!before && !last) {
        // `beans, canned or dried`: both states are of the whole name.
        if (share(i, name, 0, instead) || own.what != nullptr || !next) continue;
        // `chicken carcasses, wings and necks`
        share_beginning(i, name, false);
        continue;
      }
      const std::size_t least = !before && s_.segment_begin(i) > s_.from ? 0 : 1;
      bool shared = false;
      for (std::size_t skip = least; skip < name.size() && !shared; ++skip)
        shared = share(i, name, skip, instead);
      if (!shared && own.what == nullptr) shared = share_drying(i, instead);
      // `chicken thighs and legs`
      if (!before && !shared && own.what == nullptr) share_beginning(i, name, instead);
    }
  }

  void share_beginning(std::size_t i, const std::vector<line_token>& name, bool instead) {
    for (std::size_t keep = name.size() - 1; keep > 0; --keep) {
      const std::string whole = words_between(name, 0, keep) + " " + s_.text(i);
      const ingredient* found = ingredient_named(s_.rules, whole);
      if (found == nullptr) continue;
      claim(i, i + 1, found, whole, instead);
      return;
    }
  }

  [[nodiscard]] bool is_joint(std::size_t i) const {
    return one_of(s_.text(i), {"or", "and", "o", "y"});
  }

  bool share(std::size_t i, const std::vector<line_token>& name, std::size_t skip, bool instead) {
    std::string whole = s_.text(i) + " " + words_between(name, skip, name.size());
    const ingredient* found = ingredient_named(s_.rules, whole);
    // `sweet green and red peppers`: the state before the first of them is its own.
    const bool state = i > 0 && s_.same_segment(i - 1, i) &&
                       is_listed(s_.rules.phrases.shared_states, s_.text(i - 1));
    if (state) {
      const std::string in_state = s_.text(i - 1) + " " + whole;
      if (const ingredient* stated = ingredient_named(s_.rules, in_state)) {
        found = stated;
        whole = in_state;
        s_.uses[i - 1] = use::other;
        share_with_main(s_.text(i - 1));
      }
    }
    if (found == nullptr) return false;
    claim(i, i + 1, found, whole, instead);
    return true;
  }

  /// `dried pinto or red kidney beans`, `sweet green and red peppers`: the state of the first is
  /// also that of the main food, where it stays the same kind of food.
  void share_with_main(const std::string& state) {
    const std::string whole = state + " " + s_.out.name;
    const ingredient* found = ingredient_named(s_.rules, whole);
    if (found == nullptr) return;
    const bool family = &most_general(s_.rules, *found) == &most_general(s_.rules, *s_.out.what);
    const bool legumes =
        is_a(s_.rules, *found, "dried-legume") && is_a(s_.rules, *s_.out.what, "dried-legume");
    if (!family && !legumes) return;
    s_.out.what = found;
    s_.out.name = whole;
  }

  /// `sultanas and currants`: beside dried fruit these are dried.
  bool share_drying(std::size_t i, bool instead) {
    const std::string_view id = s_.out.what->id;
    if (id != "raisin" && id != "golden-raisin" && id != "prune" && id.substr(0, 6) != "dried-")
      return false;
    const std::string whole = "dried " + s_.text(i);
    const ingredient* found = ingredient_named(s_.rules, whole);
    if (found == nullptr || found->kind != acidity::acid) return false;
    claim(i, i + 1, found, whole, instead);
    return true;
  }

  [[nodiscard]] bool instead_at(std::size_t i) const {
    return s_.text(i - 1) != "and" && s_.text(i - 1) != "y";
  }

  /// The state of the first name before the words `i` to `end`.
  bool share_state(std::size_t i, std::size_t end, const std::vector<line_token>& name,
                   bool instead) {
    if (name.size() < 2 || !is_listed(s_.rules.phrases.shared_states, name.front().text))
      return false;
    const std::string whole = name.front().text + " " + words_between(s_.tokens, i, end);
    const ingredient* found = ingredient_named(s_.rules, whole);
    if (found == nullptr) return false;
    claim(i, end, found, whole, instead);
    return true;
  }
};

}  // namespace jarproof::detail::line
