// One line of a recipe: how much of which ingredient, and how it was cut.
//
// The longest name wins; every other word must be one of the edition's plain words. A word that is
// not understood stays with the line, because it may be flour, cream or bacon.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/measure.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/lookup.hpp"

namespace jarproof::detail {

[[nodiscard]] inline bool has_trait(const ingredient& i, std::string_view trait) noexcept {
  return i.traits.contains(trait);
}

/// The more general ingredient, or null.
[[nodiscard]] inline const ingredient* parent_of(const edition& rules, const ingredient& i) {
  return i.kind_of.empty() ? nullptr : find(rules.ingredients, i.kind_of);
}

/// True where `i` is `id` or a kind of it.
[[nodiscard]] inline bool is_kind_of(const edition& rules, const ingredient& i,
                                     std::string_view id) {
  for (const ingredient* up = &i; up != nullptr; up = parent_of(rules, *up)) {
    if (up->id == id) return true;
  }
  return false;
}

[[nodiscard]] inline const ingredient& most_general(const edition& rules, const ingredient& i) {
  const ingredient* top = &i;
  while (const ingredient* up = parent_of(rules, *top)) top = up;
  return *top;
}

/// Trait of the ingredient or of what it is a kind of.
[[nodiscard]] inline bool is_a(const edition& rules, const ingredient& i, std::string_view trait) {
  for (const ingredient* up = &i; up != nullptr; up = parent_of(rules, *up)) {
    if (has_trait(*up, trait)) return true;
  }
  return false;
}

/// The ingredient with this name; names are kept folded by the loader.
[[nodiscard]] inline const ingredient* ingredient_named(const edition& rules,
                                                        std::string_view folded_name) {
  for (const ingredient& i : rules.ingredients) {
    if (i.names.contains(folded_name)) return &i;
  }
  return nullptr;
}

/// What a line says.
struct line_reading {
  std::optional<measured> amount;
  std::string amount_text;           ///< as written, for the report
  const ingredient* what = nullptr;  ///< null where no name is known
  std::string name;                  ///< the words that were looked up
  std::vector<std::string> words;    ///< the other words of the line
  std::vector<std::string> strange;  ///< of these, the ones that are not understood
  std::string per_jar;               ///< `quart` of `per quart`, `jar` of `in each jar`
  std::optional<int> vinegar_percent;
};

namespace line {

[[nodiscard]] inline std::vector<std::string> words_of(std::string_view text) {
  std::vector<std::string> out;
  const std::string plain = folded(text);
  std::string_view rest = plain;
  while (!rest.empty()) {
    const std::size_t end = rest.find_first_of(" (),;");
    std::string one(rest.substr(0, end));
    while (!one.empty() && (one.back() == '.' || one.back() == ':')) one.pop_back();
    if (!one.empty()) out.push_back(std::move(one));
    if (end == std::string_view::npos) break;
    rest.remove_prefix(end + 1);
  }
  return out;
}

[[nodiscard]] inline bool is_jar_word(std::string_view w) noexcept {
  constexpr std::string_view jars[] = {"jar",    "jars", "pint", "pints",    "quart",
                                       "quarts", "pt",   "qt",   "half pint"};
  return std::find(std::begin(jars), std::end(jars), w) != std::end(jars);
}

[[nodiscard]] inline std::string joined_words(const std::vector<std::string>& words,
                                              std::size_t from, std::size_t end) {
  std::string out;
  for (std::size_t i = from; i < end; ++i) out += (out.empty() ? "" : " ") + words[i];
  return out;
}

[[nodiscard]] inline bool is_metric_volume(std::string_view text) {
  const amount_reading r = read_amount(text, dimension::volume, rounding::up);
  return r.ok() && r.metric;
}

/// Takes `per quart`, `in each jar`, `to each 500 ml jar` out of the words.
inline void take_per_jar(std::vector<std::string>& words, std::string& per_jar) {
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (words[i] != "per" && words[i] != "each" && words[i] != "every") continue;
    std::size_t end = i + 1;
    while (end < words.size() && end < i + 4 && !is_jar_word(words[end])) ++end;
    const bool jar_word = end < words.size() && is_jar_word(words[end]);
    // `per 500 ml` needs no word for the jar.
    if (!jar_word) end = i + (i + 1 < words.size() && is_metric_volume(words[i + 1]) ? 1 : 2);
    if (end >= words.size() ||
        (!jar_word && !is_metric_volume(joined_words(words, i + 1, end + 1))))
      continue;
    std::string jar;
    for (std::size_t k = i + 1; k <= end; ++k) jar += (jar.empty() ? "" : " ") + words[k];
    // `500 ml jar` is a jar of 500 ml; `quart jar` a quart.
    if (words[end] == "jar" || words[end] == "jars") {
      const std::size_t cut = jar.rfind(' ');
      if (cut != std::string::npos) jar.resize(cut);
    }
    if (end + 1 < words.size() && (words[end + 1] == "jar" || words[end + 1] == "jars")) ++end;
    per_jar = jar;
    std::size_t start = i;
    while (start > 0 &&
           (words[start - 1] == "to" || words[start - 1] == "in" || words[start - 1] == "into" ||
            words[start - 1] == "for" || words[start - 1] == "added")) {
      --start;
    }
    words.erase(words.begin() + static_cast<std::ptrdiff_t>(start),
                words.begin() + static_cast<std::ptrdiff_t>(end) + 1);
    return;
  }
}

/// Takes a strength such as `5%` or `5 % acidity` out of the words.
inline void take_strength(std::vector<std::string>& words, std::optional<int>& percent) {
  for (std::size_t i = 0; i < words.size(); ++i) {
    std::string_view w = words[i];
    number n;
    if (take_number(w, n) != number_fault::none) continue;
    std::size_t end = i + 1;
    if (w != "%" && w != "percent") {
      if (!w.empty() || end >= words.size() || (words[end] != "%" && words[end] != "percent"))
        continue;
      ++end;
    }
    percent = static_cast<int>(divide(n.over, n.under, rounding::down));
    while (end < words.size() &&
           (words[end] == "acidity" || words[end] == "acid" || words[end] == "strength")) {
      if (words[end] == "acid" && end + 1 == words.size()) break;
      ++end;
    }
    words.erase(words.begin() + static_cast<std::ptrdiff_t>(i),
                words.begin() + static_cast<std::ptrdiff_t>(end));
    return;
  }
}

/// Numbers and sizes such as `1/4`, `inch`, `1/4-inch`.
[[nodiscard]] inline bool is_size(std::string_view w) {
  if (w == "inch" || w == "inches" || w == "in" || w == "cm" || w == "mm" || w == "inch.")
    return true;
  number n;
  return take_number(w, n) == number_fault::none &&
         (w.empty() || w == "in" || w == "inch" || w == "cm" || w == "mm");
}

/// Longest run of words that is an ingredient's name. Words behind a comma may belong to the name:
/// `lemon juice, bottled` is bottled lemon juice.
inline void find_name(const edition& rules, const std::vector<std::string>& head,
                      const std::vector<std::string>& tail, line_reading& out) {
  std::size_t best_from = 0;
  std::size_t best_end = 0;
  for (std::size_t length = head.size(); length > 0 && out.what == nullptr; --length) {
    for (std::size_t from = 0; from + length <= head.size(); ++from) {
      const ingredient* found = ingredient_named(rules, joined_words(head, from, from + length));
      if (found == nullptr) continue;
      out.what = found;
      best_from = from;
      best_end = from + length;
      break;
    }
  }
  out.name = out.what == nullptr ? joined_words(head, 0, head.size())
                                 : joined_words(head, best_from, best_end);
  for (std::size_t i = 0; i < head.size(); ++i) {
    if (out.what == nullptr || i < best_from || i >= best_end) out.words.push_back(head[i]);
  }
  if (out.what == nullptr) out.words.clear();
  for (const std::string& w : tail) {
    const ingredient* closer =
        out.what == nullptr ? nullptr : ingredient_named(rules, w + " " + out.name);
    if (closer != nullptr) {
      out.what = closer;
      out.name = w + " " + out.name;
    } else {
      out.words.push_back(w);
    }
  }
}

}  // namespace line

/// Reads one line; what it cannot read is in `strange`, never lost.
[[nodiscard]] inline line_reading read_line(const edition& rules, std::string_view text) {
  line_reading out;
  std::string_view rest = trim(text);
  while (!rest.empty() && (rest.front() == '-' || rest.front() == '*')) rest = trim(rest.substr(1));
  const std::string_view whole = rest;
  number low;
  number high;
  const bool counted = take_numbers(rest, low, high);
  if (counted) {
    std::optional<measured> inner = take_inner_measure(rest);
    const measure_unit* u = take_measure_unit(rest);
    if (!inner) inner = take_inner_measure(rest);
    const bool container = u != nullptr && u->counts == "can";
    constexpr measure_unit piece{"piece", measure_kind::count, 1'000, 1, "piece"};
    out.amount = measure_of(low, high, u == nullptr ? piece : *u);
    if (container && inner && low.under == 1 && low.over == high.over && low.over <= 100) {
      out.amount = inner;  // `2 (12 oz) cans`: what the cans hold
      out.amount->low *= low.over;
      out.amount->high *= low.over;
    }
    if (low.over == 0) out.amount.reset();
    out.amount_text = std::string(trim(whole.substr(0, whole.size() - rest.size())));
    rest = trim(rest);
    if (starts_with(rest, "of ")) rest.remove_prefix(3);
  }
  const std::size_t comma = std::min(preparation_comma(rest), rest.find('('));
  std::vector<std::string> head = line::words_of(rest.substr(0, comma));
  std::vector<std::string> tail = comma == std::string_view::npos
                                      ? std::vector<std::string>()
                                      : line::words_of(rest.substr(comma));
  for (std::vector<std::string>* words : {&head, &tail}) {
    if (out.per_jar.empty()) line::take_per_jar(*words, out.per_jar);
    if (!out.vinegar_percent) line::take_strength(*words, out.vinegar_percent);
  }
  line::find_name(rules, head, tail, out);
  const bool dried = out.what != nullptr && is_a(rules, *out.what, "spice");
  // `pepper` is the spice by the pinch; a quarter of a cup of it may be the vegetable.
  const bool much =
      out.amount && (out.amount->kind == measure_kind::mass ||
                     (out.amount->kind == measure_kind::volume && out.amount->high >= 12'000));
  const bool two_things = dried && much &&
                          find(rules.ingredients, std::string_view(out.name)) != nullptr &&
                          out.name != out.what->id;
  if (two_things) out.strange.push_back(out.name);
  for (const std::string& w : out.words) {
    // A spice is not cut: `pepper, chopped` is no black pepper.
    const bool cut = dried && (w == "chopped" || w == "diced" || w == "sliced" || w == "seeded" ||
                               w == "cored" || w == "peeled" || w == "strips");
    if (cut || (!line::is_size(w) && !rules.line_words.contains(w))) out.strange.push_back(w);
  }
  return out;
}

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
  return acid && says(r, "solution") && !says(r, "for") && !says(r, "in");
}

/// Milligrams in a measure of an ingredient, from the lightest to the heaviest published weight of
/// the forms that the line names, of all forms where it names none; nothing where none is known.
[[nodiscard]] inline std::optional<measured> weight_of_one(const edition& rules,
                                                           const ingredient& i,
                                                           std::string_view unit,
                                                           const std::vector<std::string>& words) {
  for (const ingredient* up = &i; up != nullptr; up = parent_of(rules, *up)) {
    measured range;
    bool by_form = false;
    for (const measure_weight& w : up->weights) {
      if (w.unit != unit) continue;
      const bool named = std::find(words.begin(), words.end(), std::string(w.form)) != words.end();
      if (by_form && !named) continue;
      if (named && !by_form) range = {};
      by_form = by_form || named;
      range.low = range.low == 0 ? w.low_mg : std::min<std::int64_t>(range.low, w.low_mg);
      range.high = std::max<std::int64_t>(range.high, w.high_mg);
    }
    if (range.high > 0) return range;
  }
  return std::nullopt;
}

/// An amount in milligrams, both ends; nothing where the weight of its measure is not published.
[[nodiscard]] inline std::optional<measured> in_mg(const edition& rules, const ingredient& i,
                                                   const measured& m,
                                                   const std::vector<std::string>& words) {
  measured out;
  out.kind = measure_kind::mass;
  if (m.kind == measure_kind::mass) {
    // 1 oz = 28,349.523 mg (NIST SP 811, B.8)
    out.low = divide(m.low * 28'349'523, 1'000'000, rounding::down);
    out.high = divide(m.high * 28'349'523, 1'000'000, rounding::up);
    return out;
  }
  const auto by = [&](std::string_view unit, std::int64_t base) -> std::optional<measured> {
    const std::optional<measured> one = weight_of_one(rules, i, unit, words);
    if (!one) return std::nullopt;
    measured sum = out;
    sum.low = divide(m.low * one->low, base, rounding::down);
    sum.high = divide(m.high * one->high, base, rounding::up);
    return sum;
  };
  if (m.kind == measure_kind::count) return by(m.counts, 1'000);
  for (const auto& [unit, base] : {std::pair<std::string_view, std::int64_t>{"cup", 48'000},
                                   {"tbsp", 3'000},
                                   {"tsp", 1'000}}) {
    if (auto sum = by(unit, base)) return sum;
  }
  return std::nullopt;
}

/// `m` in the measure that a recipe prints, both ends; nothing where no published weight leads
/// there.
[[nodiscard]] inline std::optional<measured> converted(const edition& rules, const ingredient& i,
                                                       const measured& m,
                                                       const measure_unit& printed,
                                                       const std::vector<std::string>& words) {
  if (m.kind == printed.kind && (m.kind != measure_kind::count || m.counts == printed.counts)) {
    return m;
  }
  if (m.ounces && printed.kind == measure_kind::volume && is_a(rules, i, "liquid")) {
    measured fluid = m;  // of a liquid, oz are fluid ounces
    fluid.kind = measure_kind::volume;
    fluid.low *= 6;
    fluid.high *= 6;
    return fluid;
  }
  const std::optional<measured> mg = in_mg(rules, i, m, words);
  if (!mg) return std::nullopt;
  measured out;
  out.kind = printed.kind;
  out.counts = printed.counts;
  if (printed.kind == measure_kind::mass) {
    out.low = divide(mg->low * 1'000'000, 28'349'523, rounding::down);
    out.high = divide(mg->high * 1'000'000, 28'349'523, rounding::up);
    return out;
  }
  const auto by = [&](std::string_view unit, std::int64_t base) {
    const std::optional<measured> one = weight_of_one(rules, i, unit, words);
    if (!one) return false;
    out.low = divide(mg->low * base, one->high, rounding::down);
    out.high = divide(mg->high * base, one->low, rounding::up);
    return true;
  };
  if (printed.kind == measure_kind::count)
    return by(printed.counts, 1'000) ? std::optional<measured>(out) : std::nullopt;
  const bool known = by("cup", 48'000) || by("tbsp", 3'000) || by("tsp", 1'000);
  return known ? std::optional<measured>(out) : std::nullopt;
}

}  // namespace jarproof::detail
