// The lines of a pasted recipe: places, bullets, headings, yields, amounts.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/pasted_text.hpp"
#include "jarproof/detail/words.hpp"

namespace jarproof::detail {

/// One line that is not blank, without its bullet.
struct recipe_line {
  std::string text;
  int line = 0;
  int column = 0;       ///< of the text; of the whole line where that holds markup
  int block = 0;        ///< lines without a blank line between them have the same
  int number = 0;       ///< 3 for `3. Drain the beans.`; 0 for a line without number
  bool bullet = false;  ///< a list sign stood before it
  bool hash = false;    ///< `#` stood before it
  bool ruled = false;   ///< a line of `---` or `===` stands below it
};

[[nodiscard]] inline bool begins_with(std::string_view text, std::string_view head) noexcept {
  return text.substr(0, head.size()) == head;
}

/// Takes list signs and blanks from the front; a box to tick is one too.
inline void take_bullets(std::string_view& text, recipe_line& out) {
  constexpr std::string_view bullets[] = {
      "*",      "+",      "-",      "[ ]",    "[]",     "[x]",    "[X]",    "\u00B7",
      "\u2013", "\u2014", "\u2022", "\u2023", "\u2043", "\u2212", "\u25A0", "\u25A1",
      "\u25AA", "\u25AB", "\u25B8", "\u25BA", "\u25CB", "\u25CF", "\u25E6", "\u25A2",
      "\u2610", "\u2611", "\u2713", "\u2714", "\u2794", "\u27A4", "\u00BB"};
  for (bool more = true; more;) {
    text = trim(text);
    more = false;
    // `#10 can` is the size of a can.
    const std::size_t behind = std::min(text.find_first_not_of('#'), text.size());
    if (behind > 0 && behind < text.size() && text[behind] == ' ') {
      text.remove_prefix(behind);
      out.hash = more = true;
      continue;
    }
    for (const std::string_view b : bullets) {
      // `**Soup**` is emphasis, not a list.
      if (!begins_with(text, b) || (b == "*" && begins_with(text, "**"))) continue;
      text.remove_prefix(b.size());
      out.bullet = more = true;
      break;
    }
  }
}

/// Length of `3. ` or `Step 3:` at the front, with the number; 0 where there is none.
[[nodiscard]] inline std::size_t list_number(std::string_view text, int& number) {
  std::size_t at = 0;
  const bool step = text.size() > 5 && folds_to(text.substr(0, 4), "step") && text[4] == ' ';
  if (step) at = 5;
  const std::size_t first = at;
  int value = 0;
  while (at < text.size() && at < first + 2 && is_digit(text[at]))
    value = value * 10 + (text[at++] - '0');
  if (at == first) return 0;
  const bool mark = at < text.size() && (text[at] == '.' || text[at] == ')' || text[at] == ':');
  if (mark) ++at;
  if ((!mark && !step) || (at < text.size() && text[at] != ' ')) return 0;
  number = value;
  return at;
}

/// A line without letters and digits, such as a rule of `---`.
[[nodiscard]] inline bool is_rule(std::string_view text) noexcept {
  return text.find_first_not_of("-=_*#~. ") == std::string_view::npos;
}

/// Splits a text that holds no control characters but line ends and tabs.
[[nodiscard]] inline std::vector<recipe_line> recipe_lines(std::string_view text) {
  std::vector<recipe_line> out;
  int line = 0;
  int block = 0;
  while (!text.empty()) {
    std::size_t end = text.find_first_of("\r\n");
    const std::string_view raw = text.substr(0, end);
    if (end != std::string_view::npos && text.substr(end, 2) == "\r\n") ++end;
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    ++line;
    const std::string plain = plain_text(raw);
    const bool same = plain.size() == raw.size();  // only tabs were changed
    const std::size_t indent = std::min(raw.find_first_not_of(" \t"), raw.size());
    std::string_view rest = plain;
    if (trim(rest).empty()) ++block;
    while (!rest.empty()) {
      const std::size_t part_end = rest.find('\n');
      const std::string_view part = trim(rest.substr(0, part_end));
      rest.remove_prefix(part_end == std::string_view::npos ? rest.size() : part_end + 1);
      if (part.empty()) continue;
      if (is_rule(part)) {
        if (!out.empty() && out.back().line == line - 1) out.back().ruled = true;
        ++block;
        continue;
      }
      recipe_line one;
      one.line = line;
      one.block = block;
      std::string_view words = part;
      take_bullets(words, one);
      if (words.empty()) continue;  // a list sign alone; its text stands on the next line
      const auto before = part.substr(0, part.size() - words.size());
      one.column = static_cast<int>(indent + 1 + (same ? characters(before) : 0));
      one.text = std::string(words);
      static_cast<void>(list_number(words, one.number));
      out.push_back(std::move(one));
    }
  }
  return out;
}

/// The text of a numbered line without its number, at its place.
inline void drop_number(recipe_line& l) {
  int number = 0;
  const std::size_t length = list_number(l.text, number);
  if (length == 0) return;
  const std::size_t first = std::min(l.text.find_first_not_of(' ', length), l.text.size());
  if (first == l.text.size()) return;
  l.text.erase(0, first);
  l.column += static_cast<int>(first);
}

[[nodiscard]] inline std::size_t word_count(std::string_view text) noexcept {
  std::size_t count = 0;
  bool inside = false;
  for (const char c : text) {
    if (c != ' ' && !inside) ++count;
    inside = c != ' ';
  }
  return count;
}

/// True where a number stands at the front, also behind `about`.
[[nodiscard]] inline bool begins_with_amount(std::string_view text) {
  text = trim(text);
  for (const std::string_view about : {"about ", "approximately ", "approx. ", "approx ", "up to ",
                                       "around ", "roughly ", "~", "c. "}) {
    if (text.size() > about.size() && folds_to(trim(text.substr(0, about.size())), trim(about))) {
      text = trim(text.substr(about.size()));
      break;
    }
  }
  if (text.empty()) return false;
  const std::string_view three = text.substr(0, 3);
  return is_digit(text.front()) || text.substr(0, 2) == "\u00BC" || text.substr(0, 2) == "\u00BD" ||
         text.substr(0, 2) == "\u00BE" || (three >= "\u2150" && three <= "\u215F");
}

[[nodiscard]] inline bool ends_sentence(std::string_view text) noexcept {
  return !text.empty() && (text.back() == '.' || text.back() == '!' || text.back() == '?');
}

enum class text_part { front, ingredients, steps, notes, reviews };

/// A line that names the part below it; `rest` is what stands behind a colon in the same line.
struct recipe_heading {
  text_part part;
  std::string_view rest;
  bool says_more = false;  ///< words stand beside the heading: `Ingredients (plus rice)`
};

[[nodiscard]] inline bool is_one_of(std::string_view text,
                                    std::initializer_list<std::string_view> all) noexcept {
  return std::find(all.begin(), all.end(), text) != all.end();
}

[[nodiscard]] inline std::optional<recipe_heading> heading_of(std::string_view text) {
  constexpr std::string_view signs = "*_#=- ";
  const std::size_t first = text.find_first_not_of(signs);
  if (first == std::string_view::npos) return std::nullopt;
  text = text.substr(first, text.find_last_not_of(signs) + 1 - first);
  const std::size_t colon = std::min(text.find(':'), text.size());
  if (colon > 60) return std::nullopt;
  const std::string_view label = text.substr(0, colon);
  const std::size_t inner = std::min(label.find_last_not_of(signs) + 1, label.find('('));
  const std::string head = folded(label.substr(0, inner));
  std::string_view rest = trim(text.substr(std::min(colon + 1, text.size())));
  const std::size_t word = std::min(rest.find_first_not_of(signs), rest.size());
  rest.remove_prefix(word);
  const std::size_t first_end = std::min(head.find(' '), head.size());
  std::string_view first_word = std::string_view(head).substr(0, first_end);
  const bool listed = first_word == "ingredients,";  // `Ingredients, in the order of the layers`
  if (listed) first_word.remove_suffix(1);
  const std::string_view behind = trim(std::string_view(head).substr(first_end));
  const std::string_view second_word = behind.substr(0, behind.find(' '));
  const std::size_t last_start = head.rfind(' ') + 1;  // npos + 1 is 0
  const std::string_view last_word = std::string_view(head).substr(last_start);
  const std::size_t words = word_count(head);
  const bool joins = is_one_of(second_word, {"for", "to", "list", "needed", "you", "required"});
  const bool digits = std::any_of(head.begin(), head.end(), is_digit);

  if (digits) return std::nullopt;
  const bool says_more = label.find('(') != std::string_view::npos || listed ||
                         (words > 2 && is_one_of(second_word, {"for", "to"})) ||
                         (words > 2 && is_one_of(last_word, {"ingredients", "directions", "steps",
                                                             "instructions", "method"}));
  if (is_one_of(head, {"ingredients", "ingredient", "you will need", "you need", "ingredient list",
                       "what you need", "what you will need", "what you'll need", "you'll need",
                       "ingredientes", "ingrédients", "ingredients needed"}) ||
      (words <= 8 && first_word == "ingredients" && (joins || listed)) ||
      (words <= 4 && last_word == "ingredients"))
    return recipe_heading{text_part::ingredients, rest, says_more};
  const bool steps =
      is_one_of(head, {"method",
                       "directions",
                       "direction",
                       "instructions",
                       "steps",
                       "preparation",
                       "procedure",
                       "how to make it",
                       "how to make",
                       "to make",
                       "canning",
                       "processing",
                       "process",
                       "preparation and canning",
                       "step by step",
                       "making",
                       "cooking",
                       "what you do",
                       "preparación",
                       "preparacion",
                       "modo de preparación",
                       "modo de preparacion",
                       "procedimiento",
                       "elaboración",
                       "elaboracion",
                       "préparation",
                       "what to do",
                       "how to do it"}) ||
      (words <= 7 && is_one_of(first_word, {"directions", "instructions", "method", "steps"}) &&
       is_one_of(second_word, {"for", "to"})) ||
      (words <= 4 &&
       is_one_of(last_word, {"directions", "instructions", "steps", "method", "procedure"}));
  // `Preparation: 20 min` is a time.
  int number = 0;
  if (steps && (list_number(rest, number) > 0 || !begins_with_amount(rest)))
    return recipe_heading{text_part::steps, rest, says_more};
  if (rest.empty() &&
      is_one_of(head, {"note", "notes", "recipe notes", "cook's notes", "tip", "tips", "equipment",
                       "storage", "variations", "serving suggestions", "nutrition",
                       "nutrition facts", "nutrition information", "comments", "source"}))
    return recipe_heading{text_part::notes, rest};
  if (rest.empty() && is_one_of(head, {"reviews", "review", "ratings"}))
    return recipe_heading{text_part::reviews, rest};
  return std::nullopt;
}

/// `For the beans:`, or `For the beans` alone: names a part of the list and is no ingredient.
[[nodiscard]] inline bool is_sub_heading(std::string_view text) {
  while (!text.empty() && (text.back() == '*' || text.back() == '_')) text.remove_suffix(1);
  if (begins_with_amount(text) || word_count(text) > 8) return false;
  if (!text.empty() && text.back() == ':') return true;
  const std::string plain = folded(text);
  return begins_with(plain, "for the ") && word_count(plain) <= 5 &&
         plain.find_first_of(",(0123456789") == std::string::npos;
}

/// `Prep time: 15 min` and the like, which recipe sites put above a list.
[[nodiscard]] inline bool is_fact_label(std::string_view text) {
  const std::string head = folded(text.substr(0, std::min<std::size_t>(text.find(':'), 40)));
  for (const std::string_view time : {"prep time", "preparation time", "cook time", "cooking time",
                                      "total time", "active time"}) {
    if (begins_with(head, time)) return true;
  }
  return text.find(':') != std::string_view::npos &&
         is_one_of(head, {"time", "preparation", "course", "cuisine", "category", "author",
                          "keyword", "keywords", "calories", "difficulty", "rating", "published"});
}

/// True where nothing but a time stands behind the label: `Prep time: 15 min`; in `Cook time: 2 h,
/// then 1 cup rice` more does.
[[nodiscard]] inline bool is_bare_time(std::string_view text) {
  const std::size_t colon = std::min(text.find(':'), text.size());
  std::string plain = folded(text.substr(std::min(colon + 1, text.size())));
  std::string_view rest = plain;
  while (!rest.empty()) {
    const std::size_t end = std::min(rest.find_first_of(" ,.()+/-~"), rest.size());
    const std::string_view w = rest.substr(0, end);
    rest.remove_prefix(std::min(end + 1, rest.size()));
    const std::size_t letter = std::min(w.find_first_not_of("0123456789"), w.size());
    if (!is_one_of(w.substr(letter),
                   {"",     "m",       "min",        "mins",      "minute", "minutes", "h",
                    "hr",   "hrs",     "hour",       "hours",     "and",    "about",   "plus",
                    "day",  "days",    "to",         "overnight", "total",  "active",  "soaking",
                    "soak", "canning", "processing", "\u00BD",    "\u00BC", "\u00BE"}))
      return false;
  }
  return colon < text.size();
}

/// How much the recipe makes, where the line says that; `strict` asks for an amount and nothing
/// that could be an ingredient behind it.
struct recipe_yield {
  std::string text;
  bool serves = false;
};

/// True where nothing but vessels, eaters and the dish is counted: `Makes 1 cup flour slurry` is
/// more than a yield.
[[nodiscard]] inline bool counts_servings(std::string_view plain) {
  constexpr std::string_view counted[] = {
      "about",      "approximately", "around",     "roughly",   "approx",   "or",      "so",
      "to",         "half",          "a",          "dozen",     "pint",     "pints",   "quart",
      "quarts",     "jar",           "jars",       "half-pint", "pt",       "pts",     "qt",
      "qts",        "gallon",        "gallons",    "cup",       "cups",     "liter",   "liters",
      "litre",      "litres",        "l",          "ml",        "oz",       "ounce",   "ounces",
      "serving",    "servings",      "people",     "persons",   "portions", "bowls",   "small",
      "large",      "big",           "full",       "soup",      "stew",     "chili",   "sauce",
      "salsa",      "broth",         "stock",      "beans",     "relish",   "pickles", "jam",
      "chutney",    "frascos",       "frasco",     "litros",    "tarros",   "de",      "canner",
      "load",       "loads",         "batch",      "batches",   "one",      "two",     "three",
      "half-pints", "portion",       "eight-ounce"};
  while (!plain.empty()) {
    const std::size_t end = std::min(plain.find(' '), plain.size());
    std::string_view w = plain.substr(0, end);
    plain.remove_prefix(std::min(end + 1, plain.size()));
    while (!w.empty() && (w.back() == '.' || w.back() == ')' || w.back() == ','))
      w.remove_suffix(1);
    while (!w.empty() && w.front() == '(') w.remove_prefix(1);
    const bool number = std::any_of(w.begin(), w.end(), [](char c) { return is_digit(c); });
    const bool beyond_ascii = !w.empty() && static_cast<unsigned char>(w.front()) >= 0x80;
    if (!w.empty() && !number && !beyond_ascii && w != "-" &&
        std::find(std::begin(counted), std::end(counted), w) == std::end(counted))
      return false;
  }
  return true;
}

/// `About 9 pints`: jars or a measure, and nothing that they hold.
[[nodiscard]] inline bool is_bare_yield(std::string_view text) {
  const std::string plain = folded(trim(text));
  const bool counted = std::any_of(plain.begin(), plain.end(), [](char c) { return is_digit(c); });
  if (!counted || plain.size() > 60 || !counts_servings(plain)) return false;
  for (const std::string_view jars :
       {"pint", "quart", "jar", "litre", "liter", "serving", "frasco", "litro", "tarro"}) {
    if (plain.find(jars) != std::string::npos) return true;
  }
  return false;
}

[[nodiscard]] inline std::optional<recipe_yield> yield_of(std::string_view text, bool strict) {
  text = trim(text);
  while (!text.empty() && (text.back() == '*' || text.back() == '_' || text.back() == '.'))
    text.remove_suffix(1);
  while (!text.empty() && (text.front() == '*' || text.front() == '_')) text.remove_prefix(1);
  const std::string head = folded(text.substr(0, 30)) + " ";
  for (const std::string_view label :
       {"recipe yields", "recipe makes", "this recipe makes", "yields", "yield", "makes",
        "servings", "serves", "number of servings", "portions", "rinde", "rinden", "porciones"}) {
    if (!begins_with(head, label) || (head[label.size()] != ' ' && head[label.size()] != ':'))
      continue;
    // Folding may only shorten runs of blanks, so a label written oddly is not taken for one.
    if (!folds_to(text.substr(0, std::min(label.size(), text.size())), label)) return std::nullopt;
    std::string_view rest = trim(text.substr(std::min(label.size(), text.size())));
    const bool colon = !rest.empty() && rest.front() == ':';
    if (colon) rest = trim(rest.substr(1));
    while (!rest.empty() && (rest.front() == '*' || rest.front() == '_' || rest.front() == ' '))
      rest.remove_prefix(1);
    const std::string plain = " " + folded(rest) + " ";
    const bool amount = begins_with_amount(rest);
    const bool more =
        rest.find_first_of(",;") != std::string_view::npos ||
        plain.find(" with ") != std::string::npos || plain.find(" and ") != std::string::npos ||
        plain.find(" plus ") != std::string::npos || plain.find(" of ") != std::string::npos;
    if (rest.empty() || word_count(rest) > (strict ? 8U : 12U)) return std::nullopt;
    const bool strange = more || !counts_servings(trim(plain));
    if (strict ? !amount || strange : !amount && !colon) return std::nullopt;
    const bool serves =
        is_one_of(label, {"servings", "serves", "number of servings", "portions", "porciones"});
    return recipe_yield{std::string(serves ? text : rest), serves};
  }
  return std::nullopt;
}

}  // namespace jarproof::detail
