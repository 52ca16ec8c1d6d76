// A recipe out of pasted text. Whatever may be an ingredient is taken for one: a line too many asks
// the cook, a line too few would go unseen.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/recipe_lines.hpp"
#include "jarproof/recipe.hpp"

namespace jarproof::detail {

/// Faults of the bytes of a recipe, at most one for each line.
[[nodiscard]] inline problems recipe_byte_faults(std::string_view text, const std::string& name) {
  constexpr std::size_t largest_text = 1 << 20;
  problems errors;
  int line = 1;
  int column = 1;
  const auto fault = [&](std::string message, std::string write) {
    errors.push_back({name, line, column, "", std::move(message), std::move(write)});
  };
  if (text.size() > largest_text) {
    fault("the text is larger than 1 MiB", "give the recipe alone");
    return errors;
  }
  if (begins_with(text, "\xFF\xFE") || begins_with(text, "\xFE\xFF")) {
    fault("the text is UTF-16", "save it as UTF-8");
    return errors;
  }
  const std::size_t bad = invalid_utf8(text);
  int said_on = 0;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (i == bad) {
      fault("the text is not UTF-8 from here on", "save it as UTF-8");
      return errors;
    }
    if (c == '\n' || (c == '\r' && text.substr(i, 2) != "\r\n")) {
      ++line;
      column = 1;
      continue;
    }
    if (c != '\t' && c != '\r' && said_on != line && control_length(text.substr(i, 2)) > 0) {
      fault("a control character stands in the text", "delete it");
      said_on = line;
    }
    if ((static_cast<unsigned char>(c) & 0xC0) != 0x80) ++column;
  }
  return errors;
}

/// Puts ingredient lines that were broken in two together again.
class ingredient_joiner {
 public:
  explicit ingredient_joiner(std::vector<word>& out) : out_(out) {}

  void add(const recipe_line& l) {
    const bool adjacent = !out_.empty() && l.line <= last_line_ + 1 && l.block == block_;
    if (adjacent && !l.bullet && continues(l.text)) {
      out_.back().text += " " + l.text;
    } else {
      out_.push_back({{}, l.text, l.line, l.column});
      open_ = 0;
    }
    for (const char c : l.text) {
      if (c == '(') ++open_;
      if (c == ')' && open_ > 0) --open_;
    }
    last_line_ = l.line;
    block_ = l.block;
  }

  /// A heading inside the list stays a line: the judge knows which of them are no food, and which
  /// are about the table.
  void add_heading(const recipe_line& l) {
    part();
    out_.push_back({{}, l.text, l.line, l.column});
    open_ = 0;
    last_line_ = l.line;
  }

  /// The next line begins anew.
  void part() { block_ = -1; }

 private:
  std::vector<word>& out_;
  int last_line_ = 0;
  int block_ = -1;
  int open_ = 0;  ///< parentheses of the last ingredient

  [[nodiscard]] bool continues(std::string_view next) const {
    const std::string_view before = out_.back().text;
    const bool amount = begins_with_amount(next);
    // A parenthesis that is never closed must not swallow the rest of the list.
    if (open_ > 0 && (!amount || next.find(')') < next.find('('))) return true;
    if (before.back() == ',') return !amount;  // with an amount it is the next of the list
    const std::string last = folded(before.substr(before.rfind(' ') + 1));
    if (is_one_of(last, {"and", "or", "plus", "&"})) return true;
    if (next.front() != '(') return false;
    const std::size_t close = next.find(')');
    return close == std::string_view::npos || !begins_with_amount(next.substr(close + 1));
  }
};

class recipe_text_reader {
 public:
  recipe_text_reader(std::string_view text, std::string name) : lines_(recipe_lines(text)) {
    out_.source = std::move(name);
  }

  [[nodiscard]] result<recipe> read() {
    look_for_headings();
    text_part part = text_part::front;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      recipe_line& l = lines_[i];
      if (const std::optional<recipe_heading> h = heading_of(l.text)) {
        part = h->part;
        ingredients_.part();
        // What the heading says beside its word may be done with the recipe like any remark.
        if (h->says_more) out_.notes.push_back(said_in(l));
        if (h->rest.empty()) continue;
        const auto before = static_cast<std::size_t>(h->rest.data() - l.text.data());
        l.column += static_cast<int>(characters(std::string_view(l.text).substr(0, before)));
        l.text = std::string(h->rest);
        l.number = 0;
        static_cast<void>(list_number(l.text, l.number));
      }
      if (part == text_part::front) {
        has_list_ ? read_front(l) : read_loose(i);
      } else if (part == text_part::ingredients) {
        read_ingredient(l);
      } else if (part == text_part::steps) {
        read_step(l);
      } else if (begins_with_amount(l.text) && word_count(l.text) <= short_line &&
                 !ends_sentence(l.text) && !yield_of(l.text, true)) {
        ingredients_.add(l);  // a list goes on below its notes
      } else if (!take_yield(l, true)) {
        // `Step 2` below reviews belongs to the recipe again.
        const bool step = folds_to(l.text.substr(0, 4), "step");
        const bool aside = (part == text_part::reviews && !step) || is_aside(l.text);
        (aside ? out_.asides : out_.notes).push_back(said_in(l));
      }
    }
    if (!out_.ingredients.empty()) return std::move(out_);
    return problems{{out_.source, 1, 1, "",
                     lines_.empty() ? "the recipe is empty" : "the recipe has no ingredients",
                     "write a line `Ingredients` and below it one ingredient a line, such as `3 lb "
                     "venison, cubed`"}};
  }

 private:
  static constexpr std::size_t short_line = 8;  // words

  std::vector<recipe_line> lines_;
  recipe out_;
  ingredient_joiner ingredients_{out_.ingredients};
  bool has_list_ = false;   ///< the ingredients have a heading
  bool list_ends_ = false;  ///< and a heading stands behind them
  bool title_stands_off_ = false;
  bool yield_serves_ = false;
  int numbered_ = 0;           ///< last number of the ingredients
  std::vector<bool> amounts_;  ///< of each block: a line in it begins with an amount
  std::size_t last_step_ = 0;  ///< line of it

  void look_for_headings() {
    for (const recipe_line& l : lines_) {
      const std::optional<recipe_heading> h = heading_of(l.text);
      if (h && h->part == text_part::ingredients) has_list_ = true;
      if (h && h->part != text_part::ingredients && has_list_) list_ends_ = true;
      amounts_.resize(static_cast<std::size_t>(l.block) + 1);
      if (begins_with_amount(l.text)) amounts_.back() = true;
    }
    // A first line with a blank line below it is a title, unless all lines stand so.
    bool pair = false;
    for (std::size_t i = 2; i < lines_.size(); ++i)
      pair = pair || lines_[i].block == lines_[i - 1].block;
    title_stands_off_ = pair && lines_[0].block != lines_[1].block;
  }

  [[nodiscard]] static word said_in(const recipe_line& l) { return {{}, l.text, l.line, l.column}; }

  [[nodiscard]] static word title_in(const recipe_line& l) {
    constexpr std::string_view signs = "*_= ";
    word title = said_in(l);
    for (const std::string_view label : {"recipe:", "title:"}) {
      if (folds_to(std::string_view(title.text).substr(0, label.size()), label))
        title.text.erase(0, label.size());
    }
    const std::size_t first = title.text.find_first_not_of(signs);
    if (first == std::string::npos) return said_in(l);
    title.text = title.text.substr(first, title.text.find_last_not_of(signs) + 1 - first);
    return title;
  }

  /// `About 9 pints` above the list.
  [[nodiscard]] bool take_bare_yield(const recipe_line& l) {
    if (out_.yield || !is_bare_yield(l.text)) return false;
    out_.yield = said_in(l);
    yield_serves_ = false;
    return true;
  }

  [[nodiscard]] bool take_yield(const recipe_line& l, bool strict) {
    const std::optional<recipe_yield> y = yield_of(l.text, strict);
    if (!y) return false;
    // How many jars says more than how many eat.
    if (!out_.yield || (yield_serves_ && !y->serves)) {
      out_.yield = word{{}, y->text, l.line, l.column};
      yield_serves_ = y->serves;
    }
    return true;
  }

  /// Times and names; what says more than that, such as `Course: soup with rice`, is a note.
  [[nodiscard]] static bool is_aside(std::string_view text) {
    if (!is_fact_label(text)) return false;
    const std::string head = folded(text.substr(0, std::min<std::size_t>(text.find(':'), 40)));
    return is_bare_time(text) ||
           (word_count(text) <= 5 &&
            is_one_of(head, {"author", "calories", "difficulty", "rating", "published"}));
  }

  /// Above the heading of the ingredients.
  void read_front(const recipe_line& l) {
    // What the front says with an amount belongs to the recipe: it may be thickened above its list.
    if (take_bare_yield(l)) return;
    if (take_yield(l, false)) {
      // `Servings: 9 quarts plus 1 cup rice`
      if (!yield_of(l.text, true)) out_.notes.push_back(said_in(l));
      return;
    }
    if (begins_with_amount(l.text) && (out_.title || !out_.notes.empty() || l.bullet))
      return ingredients_.add(l);
    if (!out_.title && out_.notes.empty()) {
      out_.title = title_in(l);
    } else {
      (is_aside(l.text) ? out_.asides : out_.notes).push_back(said_in(l));
    }
  }

  /// `Dad's Chili` right above the first amount of a recipe that has directions too. What else may
  /// be bought by such a name, as a sauce or a broth, stays an ingredient.
  [[nodiscard]] bool names_whole_recipe() const {
    const std::string first = folded(lines_[0].text);
    const std::string_view last = std::string_view(first).substr(first.rfind(' ') + 1);
    if (lines_.size() < 3 || first.find_first_of(",(0123456789") != std::string::npos ||
        word_count(first) < 2 || !begins_with_amount(lines_[1].text) ||
        !is_one_of(last, {"soup", "stew", "chili", "chilli", "chowder", "gumbo", "salsa", "pickles",
                          "relish", "chutney", "jam", "jelly", "applesauce"}))
      return false;
    return std::any_of(lines_.begin(), lines_.end(), [](const recipe_line& l) {
      return ends_sentence(l.text) && word_count(l.text) > short_line &&
             !begins_with_amount(l.text);
    });
  }

  void read_ingredient(recipe_line& l) {
    if (is_sub_heading(l.text)) return ingredients_.add_heading(l);
    if (take_yield(l, true)) return;
    const bool sentence = ends_sentence(l.text) && word_count(l.text) > short_line;
    if (!list_ends_ && (is_next_step(l) || (sentence && !begins_with_amount(l.text))))
      return read_step(l);
    add_ingredient(l);
  }

  /// Numbers that begin behind the list are those of the directions.
  [[nodiscard]] bool is_next_step(const recipe_line& l) const {
    return l.number > 0 && numbered_ == 0 && !out_.ingredients.empty() &&
           (l.number == 1 || !out_.steps.empty()) && !begins_numbered_amount(l);
  }

  void add_ingredient(recipe_line& l) {
    if (l.number == numbered_ + 1) {
      numbered_ = l.number;
      drop_number(l);
    }
    ingredients_.add(l);
  }

  /// A line of a text that does not say where its ingredients begin.
  void read_loose(std::size_t i) {
    recipe_line& l = lines_[i];
    const bool amount = begins_with_amount(l.text);
    const std::size_t words = word_count(l.text);
    const bool sentence = ends_sentence(l.text);
    if (i == 0 && !amount && !l.bullet && !sentence && words <= 2 * short_line &&
        (l.hash || l.ruled || title_stands_off_ || names_whole_recipe()) &&
        !yield_of(l.text, false)) {
      out_.title = title_in(l);
      return;
    }
    if (is_sub_heading(l.text)) return ingredients_.add_heading(l);
    if (take_yield(l, true)) return;
    if (is_fact_label(l.text)) {
      (is_aside(l.text) ? out_.asides : out_.notes).push_back(said_in(l));
      return;
    }
    const bool long_line = words > short_line;
    const bool among_amounts = amounts_[static_cast<std::size_t>(l.block)];
    const bool says_step = l.number > 0 && folds_to(l.text.substr(0, 4), "step");
    const bool step = says_step || is_next_step(l) || (!amount && (long_line && sentence)) ||
                      (!amount && (long_line || sentence) && !among_amounts);
    step ? read_step(l) : add_ingredient(l);
  }

  [[nodiscard]] static bool begins_numbered_amount(recipe_line l) {
    drop_number(l);
    return begins_with_amount(l.text);
  }

  void read_step(recipe_line& l) {
    if (take_yield(l, true)) return;
    const bool lower_case = !l.text.empty() && l.text.front() >= 'a' && l.text.front() <= 'z';
    const bool goes_on = !out_.steps.empty() && lower_case && !l.bullet && l.number == 0 &&
                         last_step_ + 1 == static_cast<std::size_t>(l.line);
    last_step_ = static_cast<std::size_t>(l.line);
    if (goes_on) {
      out_.steps.back().text += " " + l.text;
      return;
    }
    drop_number(l);
    out_.steps.push_back(said_in(l));
  }
};

}  // namespace jarproof::detail
