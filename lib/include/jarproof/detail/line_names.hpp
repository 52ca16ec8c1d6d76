// Names of ingredients among the words of a line.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/ingredient_facts.hpp"
#include "jarproof/detail/line_numbers.hpp"
#include "jarproof/detail/line_text.hpp"
#include "jarproof/detail/measure_units.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/quantity.hpp"

namespace jarproof::detail {

/// Words `from` to `end` of a line that are the name of `what`.
struct name_match {
  const ingredient* what = nullptr;
  std::size_t from = 0;
  std::size_t end = 0;
};

/// True for a word of one of the lists that the loader sorts.
[[nodiscard]] inline bool is_listed(list<std::string_view> sorted, std::string_view w) noexcept {
  return std::binary_search(sorted.begin(), sorted.end(), w);
}

/// True for a word that changes nothing that is checked.
[[nodiscard]] inline bool is_line_word(const edition& rules, std::string_view w) noexcept {
  return is_listed(rules.line_words, w);
}

[[nodiscard]] inline std::string words_between(const std::vector<line_token>& tokens,
                                               std::size_t from, std::size_t end) {
  std::string out;
  for (std::size_t i = from; i < end; ++i) out += (out.empty() ? "" : " ") + tokens[i].text;
  return out;
}

/// The first name that does not come before `key`, looked for from `first` on, near it at first.
[[nodiscard]] inline const ingredient_name* name_from(const ingredient_name* first,
                                                      const ingredient_name* last,
                                                      std::string_view key) noexcept {
  const ingredient_name* low = first;
  std::ptrdiff_t step = 1;
  while (last - low > step && low[step].name < key) {
    low += step;
    step *= 2;
  }
  return std::lower_bound(
      low, last - low > step ? low + step + 1 : last, key,
      [](const ingredient_name& n, std::string_view wanted) { return n.name < wanted; });
}

/// The names of the edition as the words of one line look them up: each word is searched once.
class name_index {
 public:
  name_index(const edition& rules, const std::vector<line_token>& tokens)
      : rules_(rules), tokens_(tokens) {
    begins_.assign(tokens.size(), nullptr);
  }

  /// The longest name that begins with word `from` and ends before `end`. With `folded_plural` a
  /// plural that no list has is taken for its singular and the other way round.
  [[nodiscard]] name_match at(std::size_t from, std::size_t end, bool folded_plural) {
    name_match best;
    std::string key = tokens_[from].text;
    const ingredient_name* place = begin_of(from);
    const ingredient_name* last = rules_.ingredient_names.end();
    for (std::size_t i = from; i < end; ++i) {
      if (i > from) {
        key += ' ';
        key += tokens_[i].text;
        place = name_from(place, last, key);
      }
      const bool prefix = place != last && place->name.substr(0, key.size()) == key;
      const ingredient* found = nullptr;
      if (prefix && place->name.size() == key.size()) {
        found = &rules_.ingredients[static_cast<std::size_t>(place->at)];
      } else if (folded_plural && key.size() > 3) {
        found = other_number(key, place);
      }
      if (found != nullptr) best = {found, from, i + 1};
      if (!prefix) break;  // no name begins like this
    }
    return best;
  }

  /// The longest name between `from` and `end`. Of two, the first, but of two that overlap the one
  /// that ends later where nothing but plain words is left of the other: in `lean beef chuck` the
  /// thing is the chuck.
  [[nodiscard]] name_match longest(std::size_t from, std::size_t end, bool folded_plural) {
    name_match best;
    for (std::size_t i = from; i < end; ++i) {
      const name_match m = at(i, end, folded_plural);
      if (m.what == nullptr) continue;
      const std::size_t length = m.end - m.from;
      bool better = length > best.end - best.from;
      if (!better && best.what != nullptr && length == best.end - best.from && m.from < best.end &&
          m.end > best.end) {
        better = true;
        for (std::size_t k = best.from; k < m.from; ++k)
          better = better && is_line_word(rules_, tokens_[k].text);
      }
      if (better) best = m;
    }
    return best;
  }

 private:
  [[nodiscard]] const ingredient_name* begin_of(std::size_t i) {
    if (begins_[i] == nullptr) {
      begins_[i] = std::lower_bound(
          rules_.ingredient_names.begin(), rules_.ingredient_names.end(),
          std::string_view(tokens_[i].text),
          [](const ingredient_name& n, std::string_view wanted) { return n.name < wanted; });
    }
    return begins_[i];
  }

  [[nodiscard]] const ingredient* other_number(std::string& key, const ingredient_name* place) {
    key += 's';
    const ingredient_name* more = name_from(place, rules_.ingredient_names.end(), key);
    const bool found = more != rules_.ingredient_names.end() && more->name == key;
    key.pop_back();
    if (found) return &rules_.ingredients[static_cast<std::size_t>(more->at)];
    const std::string_view k = key;
    if (k.back() != 's') return nullptr;
    if (const ingredient* one = ingredient_named(rules_, k.substr(0, k.size() - 1))) return one;
    if (k.size() > 4 && k.substr(k.size() - 2) == "es")
      return ingredient_named(rules_, k.substr(0, k.size() - 2));
    return nullptr;
  }

  const edition& rules_;
  const std::vector<line_token>& tokens_;
  std::vector<const ingredient_name*> begins_;
};

namespace line {

/// The words of a short text, such as the form of a recipe part.
[[nodiscard]] inline std::vector<std::string> words_of(std::string_view text) {
  std::vector<std::string> out;
  for (line_token& t : tokens_of(plain_line(text))) out.push_back(std::move(t.text));
  return out;
}

[[nodiscard]] inline bool is_jar_word(std::string_view w) noexcept {
  constexpr std::string_view jars[] = {"jar",   "jars",   "pint", "pints",
                                       "quart", "quarts", "pt",   "qt"};
  return std::find(std::begin(jars), std::end(jars), w) != std::end(jars);
}

[[nodiscard]] inline bool is_metric_volume(std::string_view text) {
  const amount_reading r = read_amount(text, dimension::volume, rounding::up);
  return r.ok() && r.metric;
}

inline void erase(std::vector<line_token>& tokens, std::size_t from, std::size_t end) {
  tokens.erase(tokens.begin() + static_cast<std::ptrdiff_t>(from),
               tokens.begin() + static_cast<std::ptrdiff_t>(end));
}

/// Takes `per quart`, `in each jar`, `to each 500 ml jar` out of the words.
inline void take_per_jar(std::vector<line_token>& words, std::string& per_jar) {
  for (std::size_t i = 0; i < words.size(); ++i) {
    const std::string& w = words[i].text;
    if (w != "per" && w != "each" && w != "every") continue;
    std::size_t end = i + 1;
    while (end < words.size() && end < i + 4 && !is_jar_word(words[end].text)) ++end;
    const bool jar_word = end < words.size() && is_jar_word(words[end].text);
    // `per 500 ml` needs no word for the jar.
    if (!jar_word) end = i + (i + 1 < words.size() && is_metric_volume(words[i + 1].text) ? 1 : 2);
    if (end >= words.size() ||
        (!jar_word && !is_metric_volume(words_between(words, i + 1, end + 1))))
      continue;
    // `each fried in butter, pint jars` is no amount for each jar.
    bool plain = true;
    for (std::size_t k = i + 1; k < end; ++k)
      plain = plain && (is_jar_word(words[k].text) || (is_digit(words[k].text.front())) ||
                        unit_named(words[k].text) != nullptr ||
                        one_of(words[k].text, {"one", "half", "a", "the", "of", "canning", "wide",
                                               "mouth", "regular", "large", "small", "big", "full",
                                               "inch", "ml", "oz", "ounce", "litre", "liter"}));
    if (!plain || words[end].segment != words[i].segment) continue;
    std::string jar = words_between(words, i + 1, end + 1);
    // `500 ml jar` is a jar of 500 ml; `quart jar` a quart.
    if (words[end].text == "jar" || words[end].text == "jars") {
      const std::size_t cut = jar.rfind(' ');
      if (cut != std::string::npos) jar.resize(cut);
    }
    if (end + 1 < words.size() && (words[end + 1].text == "jar" || words[end + 1].text == "jars"))
      ++end;
    per_jar = jar;
    std::size_t start = i;
    while (start > 0 && (words[start - 1].text == "to" || words[start - 1].text == "in" ||
                         words[start - 1].text == "into" || words[start - 1].text == "for" ||
                         words[start - 1].text == "added"))
      --start;
    erase(words, start, end + 1);
    return;
  }
}

/// Takes a strength such as `5%` or `5 % acidity` out of the words.
inline void take_strength(std::vector<line_token>& words, std::optional<int>& percent) {
  for (std::size_t i = 0; i < words.size(); ++i) {
    std::string_view w = words[i].text;
    number n;
    if (take_number(w, n) != number_fault::none) continue;
    std::size_t end = i + 1;
    bool grain = false;  // `40 grain`: tenths of a percent
    if (w != "%" && w != "percent") {
      if (!w.empty() || end >= words.size()) continue;
      grain = words[end].text == "grain";
      if (words[end].text != "%" && words[end].text != "percent" && !grain) continue;
      ++end;
    }
    int said = static_cast<int>(divide(n.over, n.under * (grain ? 10 : 1), rounding::down));
    while (end < words.size() && (words[end].text == "acidity" || words[end].text == "acid" ||
                                  words[end].text == "strength" || words[end].text == "acetic")) {
      if (words[end].text == "acid" && end + 1 == words.size() && words[end - 1].text != "acetic")
        break;
      ++end;
    }
    // `5 % or higher`: at least so much.
    if (end + 1 < words.size() && words[end].text == "or" &&
        one_of(words[end + 1].text, {"higher", "stronger", "greater", "above"}))
      end += 2;
    // `4-5 %`, `4 to 5 %`: the weaker one counts.
    std::size_t begin = i;
    if (begin > 0 && words[begin - 1].text == "to") --begin;
    number low;
    std::string_view before =
        begin > 0 ? std::string_view(words[begin - 1].text) : std::string_view();
    if (begin > 0 && take_number(before, low) == number_fault::none && before.empty()) {
      --begin;
      said = std::min(said, static_cast<int>(divide(low.over, low.under, rounding::down)));
    } else {
      begin = i;
      // `at least 5 %`; with `at most 5 %` nobody knows.
      if (begin > 1 && words[begin - 2].text == "at" && words[begin - 1].text == "least" &&
          words[begin - 1].segment == words[i].segment)
        begin -= 2;
    }
    percent = percent ? std::min(*percent, said) : said;
    erase(words, begin, end);
    i = begin == 0 ? 0 : begin - 1;
  }
}

/// Words in their usual spelling: `grn` is green, `tumeric` turmeric.
inline void spell_out(const edition& rules, std::vector<line_token>& words) {
  for (line_token& w : words) {
    const auto at =
        std::lower_bound(rules.spellings.begin(), rules.spellings.end(), std::string_view(w.text),
                         [](const spelling& s, std::string_view wanted) { return s.id < wanted; });
    if (at != rules.spellings.end() && at->id == w.text) w.text = std::string(at->meant);
  }
}

/// Numbers and sizes such as `1/4`, `inch`, `1/4inch`.
[[nodiscard]] inline bool is_size(std::string_view w) {
  if (w == "inch" || w == "inches" || w == "in" || w == "cm" || w == "mm") return true;
  number n;
  return take_number(w, n) == number_fault::none &&
         (w.empty() || unit_named(w) != nullptr || w == "in" || w == "inch" || w == "cm" ||
          w == "mm" || w == "%");
}

}  // namespace line

}  // namespace jarproof::detail
