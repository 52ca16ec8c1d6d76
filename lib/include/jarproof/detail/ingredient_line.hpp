// One line of a recipe: how much of which ingredient, and how it was cut.
//
//   line_reading r = read_line(edition, "2 (15 oz) cans white beans, drained");
//   r.what->id         "canned-white-bean"
//   r.amount_text      "30 oz"
//
// The longest name wins; every other word must be one of the edition's plain words. A word that is
// not understood stays with the line, because it may be flour, cream or bacon. A second ingredient
// in the line (`browned in butter`, `salt and pepper`, `milk or cream`) is kept beside the first.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "jarproof/detail/line_amount.hpp"
#include "jarproof/detail/line_bought.hpp"
#include "jarproof/detail/line_doubts.hpp"
#include "jarproof/detail/line_names.hpp"
#include "jarproof/detail/line_other_amounts.hpp"
#include "jarproof/detail/line_others.hpp"
#include "jarproof/detail/line_phrases.hpp"
#include "jarproof/detail/line_promotion.hpp"
#include "jarproof/detail/line_reading.hpp"
#include "jarproof/detail/line_remarks.hpp"
#include "jarproof/detail/line_serving.hpp"
#include "jarproof/detail/line_state.hpp"
#include "jarproof/edition.hpp"

namespace jarproof::detail {

/// Reads a line: the words are claimed one after the other, and what nobody claims is strange.
class line_reader {
 public:
  line_reader(const edition& rules, std::string_view text) : s_{rules} {
    // A longer line is no line of a recipe, and reading it would be slow.
    if (text.size() > longest_line) {
      refuse(text);
      return;
    }
    plain_ = plain_line(text);
    take_leading_amount();
    s_.tokens = tokens_of(plain_);
    if (s_.tokens.size() > most_words) {
      refuse(text);
      return;
    }
    line::drop_shares(s_.tokens, s_.amount.amount);
    line::take_per_jar(s_.tokens, s_.out.per_jar);
    line::take_strength(s_.tokens, s_.out.vinegar_percent);
    line::spell_out(rules, s_.tokens);
    s_.uses.assign(s_.tokens.size(), line::use::free);
    // `For half of the jars:` is a heading that nobody understands, and no thing of the kitchen.
    if (line::is_utensil_line(s_) && text.back() != ':') {
      s_.out.what = find(rules.ingredients, std::string_view("kitchen-utensil"));
      s_.out.name = words_between(s_.tokens, 0, s_.size());
      s_.out.at_serving = s_.out.what != nullptr;
      return;
    }
    name_index names(rules, s_.tokens);
    find_main(names);
    line::find_open_amount(s_);
    line::find_remarks(s_);
    line::find_purposes(s_);
    line::find_weighing(s_);
    line::find_likeness(s_);
    line::find_own_liquid(s_);
    line::find_browning(s_);
    line::find_vessel(s_);
    line::find_gone(s_);
    // `for serving, in each jar` is in the jar; the share was taken out of the words above.
    if (!line::names_closed_jar(plain_)) {
      line::find_table_phrases(s_, names);
      line::find_serving(s_, names);
      line::find_side_dish(s_, names);
    }
    line::find_opening(s_, names);
    line::find_negations(s_, names);
    line::find_free_of(s_, names);
    line::find_colored_parts(s_);
    line::find_telling(s_);
    line::promotion(s_).run();
    line::find_dry(s_);
    line::find_own_parts(s_, names);
    line::find_bought(s_);
    line::further(s_, names).run();
    line::find_kinds(s_, names);
    line::find_wiping(s_);
    line::find_nameless(s_);
    line::find_other_amounts(s_, names);
    sort_words();
  }

  [[nodiscard]] line_reading take() { return std::move(s_.out); }

 private:
  static constexpr std::size_t longest_line = 1'000;
  static constexpr std::size_t most_words = 80;

  line::state s_;
  std::string plain_;

  void refuse(std::string_view text) {
    s_.out = {};
    s_.out.name = std::string(trim(text).substr(0, 40));
    s_.out.strange.push_back(s_.out.name);
  }

  void take_leading_amount() {
    std::string_view rest = plain_;
    s_.amount = take_amount(rest);
    if (s_.amount.found) {
      plain_ = std::string(rest);
      take_size_behind();
    } else {
      take_amount_behind();
    }
    s_.out.amount = s_.amount.amount;
    s_.out.amount_text = s_.amount.text;
    for (const std::string& s : s_.amount.sizes) s_.out.words.push_back(s);
  }

  /// `1 can crushed tomatoes (796 ml)`: the size of the can stands behind the name.
  void take_size_behind() {
    const std::size_t open = plain_.find('(');
    if (!s_.amount.amount || s_.amount.amount->counts != "can" || open == std::string::npos) return;
    std::string_view rest = std::string_view(plain_).substr(open);
    const std::optional<line::beside> size = line::take_beside(rest, true);
    if (!size) return;
    s_.amount.amount = size->times(s_.amount.count_low, s_.amount.count_high);
    s_.amount.text = size->text(s_.amount.count_low, s_.amount.count_high);
    plain_ = plain_.substr(0, open) + ", " + std::string(rest);
  }

  /// True where an amount may begin: at a digit or a fraction sign behind a blank or a bracket, and
  /// at a number in words behind a comma or a dash: `salt, a pinch`.
  [[nodiscard]] bool begins_amount(std::size_t at) const {
    const char before = plain_[at - 1];
    if (is_digit(plain_[at]) || plain_[at] == '\xC2')
      return before == ' ' || before == '(' || before == ':';
    if (!line::is_letter(plain_[at]) || (before != ' ' && before != '(')) return false;
    std::size_t back = at - 1;
    while (back > 0 && plain_[back] == ' ') --back;
    constexpr std::string_view separators = ",(-:";
    if (separators.find(plain_[back]) == std::string_view::npos) return false;
    std::size_t width = 0;
    constexpr std::string_view numbers[] = {
        "a",       "an",    "one",     "two",   "three", "four",    "five",
        "six",     "seven", "eight",   "nine",  "ten",   "twelve",  "half",
        "quarter", "dozen", "several", "pinch", "dash",  "handful", "few",
        "just",    "about", "scant",   "some",  "un",    "una",     "media"};
    return line::one_of(line::word_at(std::string_view(plain_).substr(at), width), numbers);
  }

  /// `onions, 2 large`, `salt - 1 tsp`, `carrots (3 cups)`: an amount with nothing but plain words
  /// behind it.
  void take_amount_behind() {
    for (std::size_t at = 1; at < plain_.size(); ++at) {
      if (!begins_amount(at)) continue;
      std::string_view rest = std::string_view(plain_).substr(at);
      const line_amount found = take_amount(rest, true);
      if (!found.found || (found.amount && found.amount->counts == "inch")) continue;
      // `cooked 5 minutes`, `for the 3-4 hour stand`
      constexpr std::string_view times[] = {
          "min",  "mins", "minute",  "minutes", "hour",  "hours", "hr", "hrs", "day",
          "days", "sec",  "seconds", "week",    "weeks", "times", "f",  "c",   "degrees"};
      std::size_t time_width = 0;
      const std::string_view behind = trim(rest);
      if (line::one_of(line::word_at(behind, time_width), times) && found.sizes.empty()) continue;
      // In words, only a measure or a number that ends its thought: `cut in, one by one` is none.
      const std::size_t next = rest.find_first_not_of(' ');
      const bool in_words = line::is_letter(plain_[at]);
      if (in_words && found.amount && found.amount->counts == "piece" && found.sizes.empty() &&
          next != std::string_view::npos && rest[next] != ',' && rest[next] != ')')
        continue;
      const std::size_t stop = std::min(rest.find_first_of(",();+"), rest.size());
      bool plain = true;
      for (const line_token& t : tokens_of(rest.substr(0, stop)))
        plain = plain && t.text != "fat" &&
                (line::one_of(t.text, {"per", "quart", "pint"}) ||
                 (line::one_of(t.text, line::size_words) || is_line_word(s_.rules, t.text)));
      if (!plain) continue;
      s_.amount = found;
      plain_ = plain_.substr(0, at) + " , " + std::string(rest);
      return;
    }
  }

  /// `1 bunch coriander`: what is bought in bunches is fresh, though the word alone may be the
  /// seed.
  bool find_fresh() {
    const std::optional<measured>& m = s_.out.amount;
    if (!m || (m->counts != "bunch" && m->counts != "sprig" && m->counts != "handful"))
      return false;
    for (std::size_t i = 0; i < s_.size(); ++i) {
      const std::string name = "fresh " + s_.text(i);
      const ingredient* found = ingredient_named(s_.rules, name);
      if (found != nullptr) return take_one_word(i, *found, name);
    }
    return false;
  }

  /// `1 tsp coriander`: so little of it, by the spoon, is the ground seed.
  bool find_seed() {
    const std::optional<measured>& m = s_.out.amount;
    if (!m || m->kind != measure_kind::volume || m->high > 3'000) return false;
    for (std::size_t i = 0; i < s_.size(); ++i) {
      const std::string name = "ground " + s_.text(i);
      const ingredient* found = ingredient_named(s_.rules, name);
      if (found != nullptr && is_a(s_.rules, *found, "spice"))
        return take_one_word(i, *found, name);
    }
    return false;
  }

  /// Word `i` stands for a longer name.
  bool take_one_word(std::size_t i, const ingredient& what, const std::string& name) {
    s_.out.what = &what;
    s_.out.name = name;
    s_.from = i;
    s_.end = i + 1;
    s_.claim(i, i + 1, line::use::name);
    return true;
  }

  /// `flour mixed with cold water`, `1 cup salt per gallon ice water`: the thing is what the water
  /// holds. How much of it there is cannot be known of a ratio.
  [[nodiscard]] name_match before_water(name_index& names, const name_match& water,
                                        std::size_t from, bool folded_plural) {
    if (water.from == from) return water;
    const name_match earlier = names.longest(from, water.from, folded_plural);
    if (earlier.what == nullptr || is_line_word(s_.rules, s_.text(earlier.from)) ||
        is_a(s_.rules, *earlier.what, "acidifier"))
      return water;
    bool joined = false;
    bool ratio = false;
    for (std::size_t i = earlier.end; i < water.from; ++i) {
      if (line::one_of(s_.text(i), {"and", "or", "no", "not", "without", "from", "of"}))
        return water;
      joined = joined || line::one_of(s_.text(i), {"with", "in", "into", "per", "to"});
      ratio = ratio || line::one_of(s_.text(i), {"per", "to"});
    }
    if (!joined) return water;
    if (ratio) {
      s_.out.amount.reset();
      s_.out.amount_text.clear();
    }
    return earlier;
  }

  void find_main(name_index& names) {
    for (const bool folded_plural : {false, true}) {
      for (std::size_t from = 0; from < s_.size(); from = s_.segment_end(from)) {
        const std::size_t last = s_.segment_end(from);
        name_match m = names.longest(from, last, folded_plural);
        // `no salt added tomatoes`: what is not there is not the thing.
        constexpr std::string_view no[] = {"no", "not", "without", "omit", "sin"};
        if (m.what != nullptr && m.from > from && line::one_of(s_.text(m.from - 1), no)) {
          const name_match next = names.longest(m.end, last, folded_plural);
          if (next.what != nullptr) m = next;
        }
        if (m.what == nullptr) continue;
        if (is_a(s_.rules, *m.what, "water")) m = before_water(names, m, from, folded_plural);
        s_.out.what = m.what;
        s_.from = m.from;
        s_.end = m.end;
        s_.out.name = words_between(s_.tokens, m.from, m.end);
        s_.claim(m.from, m.end, line::use::name);
        return;
      }
    }
    if (find_fresh() || find_seed()) return;
    s_.out.name =
        s_.tokens.empty() ? std::string() : words_between(s_.tokens, 0, s_.segment_end(0));
  }

  /// `not homemade` says what an acid is; `not needed` takes it out.
  [[nodiscard]] bool is_taken_back(std::size_t i) const {
    return i > 0 && s_.text(i - 1) == "not" &&
           line::one_of(s_.text(i), {"homemade", "fresh", "freshly", "flavored", "flavoured",
                                     "seasoned", "cleaning", "sweetened"});
  }

  void sort_words() {
    if (s_.out.at_serving) {  // what is not in the jar is not judged by its words
      s_.out.strange.clear();
      s_.out.telling.clear();
      return;
    }
    for (std::size_t i = 0; i < s_.tokens.size(); ++i) {
      if (s_.uses[i] == line::use::free || s_.uses[i] == line::use::word)
        s_.out.words.push_back(s_.tokens[i].text);
    }
    if (s_.out.what == nullptr) return;  // the whole line is unknown
    const bool dried = is_a(s_.rules, *s_.out.what, "spice");
    const bool acid = is_a(s_.rules, *s_.out.what, "acidifier");
    // `pepper` is the spice by the pinch; a quarter of a cup of it may be the vegetable.
    const bool much =
        s_.out.amount &&
        (s_.out.amount->kind == measure_kind::mass ||
         (s_.out.amount->kind == measure_kind::volume && s_.out.amount->high >= 12'000));
    const bool two_things = dried && much &&
                            find(s_.rules.ingredients, std::string_view(s_.out.name)) != nullptr &&
                            s_.out.name != s_.out.what->id;
    if (two_things) s_.out.strange.push_back(s_.out.name);
    if (acid && s_.amount.less) s_.out.strange.emplace_back("less than the measure");
    line::doubts(s_).run();
    // These are always dried, and are cut up for their seeds.
    const bool chile =
        s_.out.what->id == "large-dried-chile" || s_.out.what->id == "dried-red-pepper";
    constexpr std::string_view cuts[] = {"chopped", "diced",  "sliced", "seeded",
                                         "cored",   "peeled", "strips", "fresh"};
    for (std::size_t i = 0; i < s_.tokens.size(); ++i) {
      const std::string& w = s_.tokens[i].text;
      // A spice is not cut: `pepper, chopped` is no black pepper.
      if (dried && s_.uses[i] == line::use::free && line::one_of(w, cuts) &&
          !says(s_.out, "ground") && !(w == "fresh" && says(s_.out, "dried")) &&
          !(w == "seeded" && s_.out.name.find("dried") != std::string::npos) && !chile) {
        s_.out.strange.push_back(w);
      } else if (s_.uses[i] == line::use::free && !s_.is_plain(w) && !s_.is_counting_word(i)) {
        s_.out.strange.push_back(w);
      } else if (acid && s_.uses[i] != line::use::name && s_.uses[i] != line::use::other &&
                 !s_.rules.acid_words.contains(w) && !line::is_size(w) && !is_taken_back(i)) {
        s_.out.strange.push_back(w);
      }
    }
  }
};

/// Reads one line; what it cannot read is in `strange`, never lost.
[[nodiscard]] inline line_reading read_line(const edition& rules, std::string_view text) {
  return line_reader(rules, text).take();
}

}  // namespace jarproof::detail
