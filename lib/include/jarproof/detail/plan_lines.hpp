// The ingredient lines of a plan, read, with their amounts in the whole batch.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstdint>
#include <iterator>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/ingredient_line.hpp"
#include "jarproof/detail/judge_acid.hpp"
#include "jarproof/detail/judge_process.hpp"

namespace jarproof::detail {

/// A line of the plan, read.
struct plan_line {
  const word* said;
  line_reading reading;
  std::optional<measured> amount;  ///< of the whole batch; nothing where it cannot be known
  bool for_table = false;          ///< it stands below `To serve:`
};

/// Water that does not stay in the jar, where the line itself says so. Soaking water alone may end
/// in the jar: that of dried chiles often does.
[[nodiscard]] inline bool says_discarded(const plan_line& l) {
  return says(l.reading, "discarded") || says(l.reading, "drained");
}

/// An amount for each jar becomes one of the batch by the number of jars and their size; without
/// both it says nothing.
[[nodiscard]] inline std::optional<measured> batch_amount(const judging& j, const line_reading& r) {
  if (!r.amount || r.per_jar.empty()) return r.amount;
  const std::int64_t jars = j.what.jars ? j.what.jars->value : 0;
  const std::int64_t meant = jar_in_words(j, r.per_jar) / 1000;  // 1/1000 fl oz
  const std::int64_t own = jar_volume(j).value_or(0) / 1000;
  if (jars <= 0 || meant <= 0 || own <= 0) return std::nullopt;
  measured out = *r.amount;
  out.low = divide(out.low * jars * own, meant, rounding::down);
  out.high = divide(out.high * jars * own, meant, rounding::up);
  return out;
}

/// A line that names a part of the recipe and no food: `For the sauce:`. All its words have to be
/// words of headings; `Cornstarch slurry:` and `Bacon:` are read as lines.
[[nodiscard]] inline bool is_heading(const edition& rules, std::string_view text) {
  const std::string plain = plain_line(text);
  if (plain.empty()) return false;
  std::string_view rest = plain;
  if (take_amount(rest).found) return false;
  constexpr std::string_view openings[] = {"for the ", "for ", "to serve", "to finish", "para "};
  const bool opens = std::any_of(std::begin(openings), std::end(openings),
                                 [&](std::string_view o) { return starts_with(plain, o); });
  if (plain.back() != ':' && !opens) return false;
  const std::vector<line_token> words = tokens_of(plain);
  return std::all_of(words.begin(), words.end(), [&](const line_token& t) {
    return rules.heading_words.contains(std::string_view(t.text)) || is_digit(t.text.front());
  });
}

/// Below `To serve:` nothing goes into the jar. `For 6 servings:` is how many it feeds.
[[nodiscard]] inline bool is_serving_heading(const edition& rules, std::string_view text) {
  constexpr std::string_view before[] = {"to",  "for", "at",  "when", "the",   "before", "a",
                                         "you", "it",  "jar", "is",   "after", "once",   "just"};
  bool any = false;
  for (const line_token& t : tokens_of(plain_line(text))) {
    if (is_listed(rules.phrases.serving_headings, t.text)) {
      any = true;
    } else if (!line::one_of(t.text, before)) {
      return false;
    }
  }
  return any;
}

/// `Soup` or `Molasses sauce` alone on its line: a heading without a colon, where the two lines
/// below begin with amounts. `Cream sauce` is no heading, nor is `Molasses sauce` where no molasses
/// stands below.
[[nodiscard]] inline bool is_quiet_heading(const edition& rules, const std::vector<word>& lines,
                                           std::size_t at) {
  const std::vector<line_token> words = tokens_of(plain_line(lines[at].text));
  if (words.empty() || words.size() > 4 || at + 2 >= lines.size()) return false;
  for (const std::size_t below : {at + 1, at + 2}) {
    const std::string plain = plain_line(lines[below].text);
    std::string_view rest = plain;
    if (!take_amount(rest).found) return false;
  }
  const std::string plain = plain_line(lines[at].text);
  std::string_view rest = plain;
  if (take_amount(rest).found || plain.find_first_of(",(") != std::string::npos) return false;
  // `Beans` or `Hot sauce` may be an ingredient whose amount was forgotten; `Soup`, `Pickles` and
  // `Syrup` name what is made.
  const auto may_be_food = [&](const ingredient* i) {
    if (i == nullptr) return false;
    const bool low_acid = i->kind == acidity::low_acid || i->kind == acidity::borderline;
    return !ban_on(rules, *i).empty() || is_a(rules, *i, "condiment") ||
           (low_acid && !is_a(rules, *i, "made-dish"));
  };
  if (may_be_food(ingredient_named(rules, plain))) return false;
  const auto is_known = [&](const line_token& t) {
    return t.text == "&" || (rules.heading_words.contains(std::string_view(t.text)) &&
                             !may_be_food(ingredient_named(rules, t.text)));
  };
  if (!is_known(words.back())) return false;
  return std::all_of(words.begin(), words.end(), [&](const line_token& t) {
    if (is_known(t)) return true;
    return std::any_of(lines.begin() + static_cast<std::ptrdiff_t>(at) + 1,
                       lines.begin() + static_cast<std::ptrdiff_t>(std::min(at + 5, lines.size())),
                       [&](const word& w) {
                         const std::vector<line_token> below = tokens_of(plain_line(w.text));
                         return std::any_of(below.begin(), below.end(), [&](const line_token& b) {
                           return starts_with(b.text, t.text);
                         });
                       });
  });
}

/// Sentences of a step, as plain words.
[[nodiscard]] inline std::vector<std::vector<line_token>> sentences_of(std::string_view step) {
  std::vector<std::vector<line_token>> out;
  while (!step.empty()) {
    std::size_t end = step.find_first_of(".;!?\n");
    // `1.5 cups` is no end.
    while (end != std::string_view::npos && end + 1 < step.size() && is_digit(step[end + 1]))
      end = step.find_first_of(".;!?\n", end + 1);
    out.push_back(tokens_of(plain_line(step.substr(0, std::min<std::size_t>(end, 1'000)))));
    if (end == std::string_view::npos) break;
    step.remove_prefix(end + 1);
  }
  return out;
}

/// A line below `To serve:` that puts the others in: `stir into the pot and fill the jars`.
[[nodiscard]] inline bool fills_from(std::string_view text) {
  bool stir = false;
  bool vessel = false;
  for (const line_token& t : tokens_of(plain_line(text.substr(0, 1'000)))) {
    if (line::one_of(t.text, {"serve", "serving", "opened", "opening"})) return false;
    stir = stir || line::one_of(t.text, {"stir", "fill", "put", "add", "cook"});
    vessel = vessel || line::one_of(t.text, {"pot", "jar", "jars", "kettle", "olla", "frascos"});
  }
  return stir && vessel;
}

[[nodiscard]] inline std::vector<plan_line> read_lines(const judging& j) {
  std::vector<plan_line> out;
  bool serving = false;
  std::size_t section = 0;  // its first line
  const std::vector<word>& said = j.what.ingredients;
  for (std::size_t i = 0; i < said.size(); ++i) {
    const word& w = said[i];
    if (is_heading(j.rules, w.text) || is_quiet_heading(j.rules, said, i)) {
      serving = is_serving_heading(j.rules, w.text);
      section = out.size();
      continue;
    }
    // Whatever else looks like a heading ends the part for the table.
    const std::string plain = plain_line(w.text);
    if (!plain.empty() && (plain.back() == ':' || starts_with(plain, "for "))) serving = false;
    if (serving && fills_from(w.text)) {
      serving = false;
      for (std::size_t k = section; k < out.size(); ++k)
        out[k] = {out[k].said, read_line(j.rules, out[k].said->text), out[k].amount};
    }
    line_reading reading = read_line(j.rules, w.text);
    reading.at_serving = reading.at_serving || serving;
    std::optional<measured> amount = batch_amount(j, reading);
    out.push_back({&w, std::move(reading), amount, serving});
  }
  return out;
}

/// The report shows what each line was taken for.
inline void report_lines(judging& j, const std::vector<plan_line>& lines) {
  for (const plan_line& l : lines) {
    ingredient_line entry{l.said->line, l.said->text, {}, l.reading.amount_text, "low-acid", {}};
    if (l.reading.what != nullptr && l.reading.strange.empty()) {
      entry.ingredient = std::string(l.reading.what->id);
      entry.kind = std::string(name_of(l.reading.what->kind));
      for (const std::string_view t : l.reading.what->traits) entry.traits.emplace_back(t);
    }
    j.out.ingredients.push_back(std::move(entry));
  }
}

}  // namespace jarproof::detail
