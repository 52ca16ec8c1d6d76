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
#include <vector>

#include "jarproof/detail/ingredient_facts.hpp"
#include "jarproof/detail/line_amount.hpp"
#include "jarproof/detail/line_names.hpp"
#include "jarproof/edition.hpp"

namespace jarproof::detail {

/// A further ingredient of a line.
struct other_ingredient {
  const ingredient* what;
  std::string name;
  bool instead;  ///< `or`: in place of the first one
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
  std::string per_jar;  ///< `quart` of `per quart`, `jar` of `in each jar`
  std::optional<int> vinegar_percent;
  bool at_serving = false;  ///< said to be for the table, not for the jar
};

[[nodiscard]] inline bool says(const line_reading& r, std::string_view word) {
  return std::find(r.words.begin(), r.words.end(), word) != r.words.end();
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

/// Reads a line: the words are claimed one after the other, and what nobody claims is strange.
class line_reader {
 public:
  line_reader(const edition& rules, std::string_view text) : rules_(rules) {
    // A longer line is no line of a recipe, and reading it would be slow.
    if (text.size() > longest_line) {
      out_.name = std::string(trim(text).substr(0, 40));
      out_.strange.push_back(out_.name);
      return;
    }
    plain_ = plain_line(text);
    take_leading_amount();
    tokens_ = tokens_of(plain_);
    if (tokens_.size() > most_words) {
      out_.name = std::string(trim(text).substr(0, 40));
      out_.strange.push_back(out_.name);
      return;
    }
    line::take_per_jar(tokens_, out_.per_jar);
    line::take_strength(tokens_, out_.vinegar_percent);
    use_.assign(tokens_.size(), use::free);
    find_main();
    find_serving();
    find_telling();
    promote();
    find_others();
    sort_words();
  }

  [[nodiscard]] line_reading take() { return std::move(out_); }

 private:
  static constexpr std::size_t longest_line = 1'000;
  static constexpr std::size_t most_words = 80;
  enum class use { free, name, other, word };

  const edition& rules_;
  line_reading out_;
  std::string plain_;
  line_amount amount_;
  std::vector<line_token> tokens_;
  std::vector<use> use_;
  std::size_t from_ = 0;  // of the main name
  std::size_t end_ = 0;

  void take_leading_amount() {
    std::string_view rest = plain_;
    amount_ = take_amount(rest);
    if (amount_.found) {
      plain_ = std::string(rest);
      take_size_behind();
    } else {
      take_amount_behind();
    }
    out_.amount = amount_.amount;
    out_.amount_text = amount_.text;
    for (const std::string& s : amount_.sizes) out_.words.push_back(s);
  }

  /// `1 can crushed tomatoes (796 ml)`: the size of the can stands behind the name.
  void take_size_behind() {
    const std::size_t open = plain_.find('(');
    if (!amount_.amount || amount_.amount->counts != "can" || open == std::string::npos) return;
    std::string_view rest = std::string_view(plain_).substr(open);
    const std::optional<line::beside> size = line::take_beside(rest, true);
    if (!size) return;
    amount_.amount = size->times(amount_.count_low, amount_.count_high);
    amount_.text = size->text(amount_.count_low, amount_.count_high);
    plain_ = plain_.substr(0, open) + ", " + std::string(rest);
  }

  /// `onions, 2 large`, `salt - 1 tsp`, `carrots (3 cups)`: an amount with nothing but plain words
  /// behind it.
  void take_amount_behind() {
    for (std::size_t at = 1; at < plain_.size(); ++at) {
      const char before = plain_[at - 1];
      const bool begins = (is_digit(plain_[at]) || plain_.compare(at, 1, "\xC2") == 0) &&
                          (before == ' ' || before == '(' || before == ':');
      if (!begins) continue;
      std::string_view rest = std::string_view(plain_).substr(at);
      const line_amount found = take_amount(rest);
      if (!found.found || (found.amount && found.amount->counts == "inch")) continue;
      const std::size_t stop = std::min(rest.find_first_of(",();"), rest.size());
      bool plain = true;
      for (const line_token& t : tokens_of(rest.substr(0, stop)))
        plain = plain && (line::one_of(t.text, line::size_words) || is_line_word(rules_, t.text));
      if (!plain) continue;
      amount_ = found;
      plain_ = plain_.substr(0, at) + " , " + std::string(rest);
      return;
    }
  }

  [[nodiscard]] std::size_t segment_end(std::size_t from) const {
    std::size_t end = from;
    while (end < tokens_.size() && tokens_[end].segment == tokens_[from].segment) ++end;
    return end;
  }

  void find_main() {
    for (const bool folded_plural : {false, true}) {
      for (std::size_t from = 0; from < tokens_.size(); from = segment_end(from)) {
        const name_match m = longest_name(rules_, tokens_, from, segment_end(from), folded_plural);
        if (m.what == nullptr) continue;
        out_.what = m.what;
        from_ = m.from;
        end_ = m.end;
        out_.name = words_between(tokens_, from_, end_);
        for (std::size_t i = from_; i < end_; ++i) use_[i] = use::name;
        return;
      }
    }
    out_.name = tokens_.empty() ? std::string() : words_between(tokens_, 0, segment_end(0));
  }

  /// A word elsewhere in the line that makes the name a closer one: `lemon juice, bottled`.
  void promote() {
    if (out_.what == nullptr) return;
    const auto closer = [&](std::string_view word) {
      for (const std::string& name :
           {std::string(word) + " " + out_.name, out_.name + " " + std::string(word)}) {
        const ingredient* found = ingredient_named(rules_, name);
        if (found == nullptr || found == out_.what) continue;
        out_.what = found;
        out_.name = name;
        return true;
      }
      return false;
    };
    name_counts();
    if (amount_.container == "can" && out_.name.find("canned") == std::string::npos)
      (void)closer("canned");
    if (amount_.container == "bottle") (void)closer("bottled");
    for (std::size_t i = 0; i < tokens_.size(); ++i) {
      if (use_[i] != use::free || is_negated(i)) continue;
      if (i > 0 && i < from_ && (tokens_[i + 1].text == "or" || tokens_[i - 1].text == "or"))
        continue;
      if (closer(tokens_[i].text)) use_[i] = use::name;
    }
    // `red pepper, ground`: the word before the name belongs to it too.
    if (from_ > 0 && use_[from_ - 1] == use::free &&
        tokens_[from_ - 1].segment == tokens_[from_].segment) {
      const std::string before = tokens_[from_ - 1].text + " " + out_.name;
      for (std::size_t i = 0; i < tokens_.size(); ++i) {
        if (use_[i] != use::free || i == from_ - 1) continue;
        const std::string name = tokens_[i].text + " " + before;
        const ingredient* found = ingredient_named(rules_, name);
        if (found == nullptr) continue;
        out_.what = found;
        out_.name = name;
        use_[i] = use_[from_ - 1] = use::name;
        break;
      }
    }
    // A spoon of an herb, neither fresh nor cut, is the dried one.
    const bool spoon =
        out_.amount && out_.amount->kind == measure_kind::volume && out_.amount->high <= 2'000;
    constexpr std::string_view fresh[] = {"fresh",  "chopped", "minced",  "torn",
                                          "leaves", "sprigs",  "snipped", "cut"};
    const bool said_fresh = out_.name.find("fresh") != std::string::npos ||
                            std::any_of(tokens_.begin(), tokens_.end(), [&](const line_token& t) {
                              return line::one_of(t.text, fresh);
                            });
    if (spoon && !said_fresh && is_a(rules_, *out_.what, "fresh-herb")) (void)closer("dried");
  }

  /// `6 garlic cloves`, `1 cinnamon stick`: the name says what is counted.
  void name_counts() {
    if (!out_.amount || out_.amount->counts != "piece") return;
    const measure_unit* u = unit_named(tokens_[end_ - 1].text);
    const bool other = u != nullptr && u->kind == measure_kind::count && u->factor == 1'000 &&
                       u->counts != "can" && end_ - from_ > 1;
    if (!other || (u->counts == "clove" && is_a(rules_, *out_.what, "spice"))) return;
    out_.amount->counts = u->counts;
    const std::size_t blank = out_.amount_text.rfind(' ');
    out_.amount_text = out_.amount_text.substr(0, blank + 1) + std::string(u->id);
  }

  [[nodiscard]] bool is_negated(std::size_t at) const {
    constexpr std::string_view no[] = {"no",  "not",  "without", "never",
                                       "non", "less", "omit",    "un"};
    constexpr std::string_view gone[] = {"free",      "removed", "trimmed", "off",
                                         "discarded", "skimmed", "reduced"};
    const int segment = tokens_[at].segment;
    for (std::size_t back = at; back > 0 && at - back < 3; --back) {
      const line_token& t = tokens_[back - 1];
      if (t.segment != segment || use_[back - 1] == use::name) break;
      if (line::one_of(t.text, no)) return true;
    }
    const bool behind = at + 1 < tokens_.size() && tokens_[at + 1].segment == segment;
    return behind && line::one_of(tokens_[at + 1].text, gone);
  }

  /// `for serving`, `to garnish`: on the table, not in the jar.
  void find_serving() {
    constexpr std::string_view before[] = {"you", "we", "for",  "to",     "at",   "when",
                                           "as",  "on", "upon", "before", "while"};
    constexpr std::string_view table[] = {"serving", "serve",     "garnish", "garnishing",
                                          "topping", "table",     "dipping", "decorate",
                                          "side",    "sprinkling"};
    for (std::size_t i = 0; i < tokens_.size(); ++i) {
      if (use_[i] != use::free || !line::one_of(tokens_[i].text, table)) continue;
      std::size_t first = i;
      while (first > 0 && i - first < 2 && tokens_[first - 1].segment == tokens_[i].segment &&
             use_[first - 1] == use::free &&
             (line::one_of(tokens_[first - 1].text, before) || tokens_[first - 1].text == "the"))
        --first;
      if (first == i && tokens_[i].text != "garnish") continue;
      // `plus extra for serving`: the rest of it is in the jar.
      bool rest_in_jar = false;
      for (std::size_t k = 0; k < first; ++k)
        rest_in_jar = rest_in_jar || tokens_[k].text == "plus" || tokens_[k].text == "extra" ||
                      tokens_[k].text == "more" || tokens_[k].text == "and";
      out_.at_serving = !rest_in_jar;
      for (std::size_t k = first; k <= i; ++k) use_[k] = use::word;
    }
  }

  void find_telling() {
    for (std::size_t i = 0; i < tokens_.size(); ++i) {
      if (use_[i] != use::free) continue;
      for (const telling_word& t : rules_.telling_words) {
        if (t.id != tokens_[i].text) continue;
        use_[i] = use::word;
        const bool taken_back =
            std::any_of(tokens_.begin(), tokens_.end(), [&](const line_token& other) {
              return other.segment == tokens_[i].segment && t.unless.contains(other.text);
            });
        if (!taken_back) out_.telling.push_back(&t);
      }
    }
  }

  /// How a further name is tied to the first one.
  enum class tie { none, with, instead, harmless };

  [[nodiscard]] tie tie_of(std::size_t from, std::size_t end) const {
    constexpr std::string_view with[] = {"and",  "plus", "with",      "in",    "from", "on",
                                         "over", "into", "by",        "using", "of",   "y",
                                         "con",  "en",   "including", "then"};
    constexpr std::string_view or_words[] = {"or", "such", "like", "preferably", "o",
                                             "eg", "e.g",  "ie",   "either"};
    constexpr std::string_view purpose[] = {"for", "until", "as", "against", "para"};
    if (is_negated(from)) return tie::harmless;
    if (end < tokens_.size() && tokens_[end].segment == tokens_[from].segment &&
        (tokens_[end].text == "removed" || tokens_[end].text == "trimmed" ||
         tokens_[end].text == "discarded" || tokens_[end].text == "free"))
      return tie::harmless;
    std::size_t back = from;
    bool any = false;
    while (back > 0 && tokens_[back - 1].segment == tokens_[from].segment) {
      const std::string& w = tokens_[back - 1].text;
      if (use_[back - 1] == use::name || use_[back - 1] == use::other)
        return any ? tie::with : tie::none;
      if (line::one_of(w, or_words)) return tie::instead;
      if (line::one_of(w, purpose)) return tie::harmless;
      any = any || line::one_of(w, with);
      --back;
    }
    if (any) return tie::with;
    // The first of its segment: a second thing behind a comma, or one before the main name.
    if (tokens_[from].segment != tokens_[from_].segment) return tie::with;
    constexpr std::string_view after[] = {"and", "or", "plus", "with", "o", "y"};
    if (end < from_ && line::one_of(tokens_[end].text, after))
      return tokens_[end].text == "or" || tokens_[end].text == "o" ? tie::instead : tie::with;
    return tie::none;
  }

  void claim_other(std::size_t from, std::size_t end, const ingredient* what, std::string name,
                   bool instead) {
    for (std::size_t i = from; i < end; ++i) use_[i] = use::other;
    if (what == out_.what) return;
    for (const other_ingredient& o : out_.others) {
      if (o.what == what) return;
    }
    out_.others.push_back({what, std::move(name), instead});
  }

  /// `red or green bell peppers`, `beef or vegetable broth`: the noun is said once.
  void share_noun() {
    const std::vector<line_token> name = tokens_of(out_.name);
    for (std::size_t i = 0; i < tokens_.size(); ++i) {
      if (use_[i] != use::free || is_plain(tokens_[i].text)) continue;
      const bool before = i < from_;
      const bool next_or =
          i + 1 < tokens_.size() && (tokens_[i + 1].text == "or" || tokens_[i + 1].text == "and");
      const bool last_or = i > 0 && (tokens_[i - 1].text == "or" || tokens_[i - 1].text == "and");
      const bool own_segment =
          (i == 0 || tokens_[i - 1].segment != tokens_[i].segment) &&
          (i + 1 == tokens_.size() || tokens_[i + 1].segment != tokens_[i].segment);
      if (!(before && (next_or || own_segment)) && !(!before && last_or)) continue;
      for (std::size_t skip = 1; skip < name.size(); ++skip) {
        const std::string whole = tokens_[i].text + " " + words_between(name, skip, name.size());
        const ingredient* found = ingredient_named(rules_, whole);
        if (found == nullptr) continue;
        const std::string& joint = next_or   ? tokens_[i + 1].text
                                   : last_or ? tokens_[i - 1].text
                                             : tokens_[i].text;
        claim_other(i, i + 1, found, whole, joint != "and");
        break;
      }
    }
  }

  void find_others() {
    if (out_.what == nullptr) return;
    share_noun();
    for (const bool folded_plural : {false, true}) {
      for (std::size_t from = 0; from < tokens_.size();) {
        if (use_[from] != use::free) {
          ++from;
          continue;
        }
        std::size_t end = from;
        while (end < tokens_.size() && use_[end] == use::free &&
               tokens_[end].segment == tokens_[from].segment)
          ++end;
        const name_match m = longest_name(rules_, tokens_, from, end, folded_plural);
        if (m.what == nullptr) {
          from = end;
          continue;
        }
        const tie t = tie_of(m.from, m.end);
        if (t == tie::harmless) {
          for (std::size_t i = m.from; i < m.end; ++i) use_[i] = use::word;
        } else if (t == tie::none) {
          // A plain word such as `ground` may be part of some name; alone it is only a word.
          for (std::size_t i = m.from; i < m.end; ++i) {
            use_[i] = use::word;
            if (!is_plain(tokens_[i].text)) out_.strange.push_back(tokens_[i].text);
          }
        } else {
          claim_other(m.from, m.end, m.what, words_between(tokens_, m.from, m.end),
                      t == tie::instead);
        }
        from = m.end;
      }
    }
  }

  [[nodiscard]] bool is_plain(const std::string& w) const {
    return line::is_size(w) || line::one_of(w, line::size_words) || is_line_word(rules_, w) ||
           unit_named(w) != nullptr || w.front() == '#';
  }

  void sort_words() {
    if (out_.at_serving) {  // what is not in the jar is not judged by its words
      out_.strange.clear();
      out_.telling.clear();
      return;
    }
    for (std::size_t i = 0; i < tokens_.size(); ++i) {
      if (use_[i] == use::free || use_[i] == use::word) out_.words.push_back(tokens_[i].text);
    }
    if (out_.what == nullptr) return;  // the whole line is unknown
    const bool dried = is_a(rules_, *out_.what, "spice");
    // `pepper` is the spice by the pinch; a quarter of a cup of it may be the vegetable.
    const bool much =
        out_.amount && (out_.amount->kind == measure_kind::mass ||
                        (out_.amount->kind == measure_kind::volume && out_.amount->high >= 12'000));
    const bool two_things = dried && much &&
                            find(rules_.ingredients, std::string_view(out_.name)) != nullptr &&
                            out_.name != out_.what->id;
    if (two_things) out_.strange.push_back(out_.name);
    constexpr std::string_view cuts[] = {"chopped", "diced",  "sliced", "seeded",
                                         "cored",   "peeled", "strips", "fresh"};
    for (std::size_t i = 0; i < tokens_.size(); ++i) {
      const std::string& w = tokens_[i].text;
      // A spice is not cut: `pepper, chopped` is no black pepper.
      if (dried && use_[i] == use::free && line::one_of(w, cuts) && !says(out_, "ground")) {
        out_.strange.push_back(w);
      } else if (use_[i] == use::free && !is_plain(w)) {
        out_.strange.push_back(w);
      }
    }
  }
};

/// Reads one line; what it cannot read is in `strange`, never lost.
[[nodiscard]] inline line_reading read_line(const edition& rules, std::string_view text) {
  return line_reader(rules, text).take();
}

}  // namespace jarproof::detail
