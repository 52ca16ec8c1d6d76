// `vocabulary.yaml`: the words by which recipes are read.
// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "day_entries.hpp"
#include "jarproof/detail/ingredient_facts.hpp"

namespace jarproof {

class vocabulary_entries : public day_entries {
 protected:
  void read_recipe_words(const node& root) {
    edition_.line_words = words(root, "line_words");
    edition_.heading_words = words(root, "heading_words");
    edition_.acid_words = words(root, "acid_words");
    edition_.cut_words = words(root, "cut_words");
    if (jarproof::find(root, "telling_words") != nullptr)
      edition_.telling_words =
          entries<telling_word>(root, "telling_words", &vocabulary_entries::read_telling, false);
    if (jarproof::find(root, "step_words") != nullptr)
      edition_.step_words =
          entries<telling_word>(root, "step_words", &vocabulary_entries::read_step_word, false);
    if (jarproof::find(root, "spellings") != nullptr)
      edition_.spellings =
          entries<spelling>(root, "spellings", &vocabulary_entries::read_spelling, false);
    if (const node* phrases = jarproof::find(root, "phrases")) read_phrases(*phrases);
  }

 private:
  void read_phrases(const node& n) {
    std::vector<std::string_view> keys;
    for (const phrase_list& l : phrase_lists) {
      keys.push_back(l.key);
      edition_.phrases.*l.words = words(n, l.key);
    }
    only(n, keys);
  }
  [[nodiscard]] telling_word read_telling(const node& n) {
    only(n, {"id", "check", "unless"});
    return {
        text(n, "id"), reference(n, "check", &edition::checks, true), words(n, "unless"), {}, {}};
  }
  [[nodiscard]] telling_word read_step_word(const node& n) {
    only(n, {"id", "check", "unless", "beside", "pack"});
    return {text(n, "id"), reference(n, "check", &edition::checks, true), words(n, "unless"),
            words(n, "beside"),
            find(n, "pack") == nullptr ? std::string_view() : one_of(n, "pack", {"raw", "hot"})};
  }
  [[nodiscard]] spelling read_spelling(const node& n) {
    only(n, {"id", "meant"});
    const spelling out{text(n, "id"), text(n, "meant")};
    if (out.id.find(' ') != std::string_view::npos || out.meant.find(' ') != std::string_view::npos)
      fault(n, "a spelling is of one word",
            "write one word for each; names of foods may be longer");
    // A word that names a food by itself is no slip of the pen.
    later_.push_back([this, file = file_, out, line = n.line, column = n.column] {
      if (detail::ingredient_named(edition_, out.id) != nullptr)
        fault(file, line, column, "`" + std::string(out.id) + "` is the name of an ingredient",
              "remove it here");
    });
    return out;
  }
};

}  // namespace jarproof
