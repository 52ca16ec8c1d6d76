// How a plain food is cut: another cut than its table has, or a larger piece, is another process.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/line_text.hpp"
#include "jarproof/detail/plan_lines.hpp"
#include "jarproof/detail/token_numbers.hpp"
#include "jarproof/edition.hpp"

namespace jarproof::detail {

/// `slices` and `sliced`, `cubes` and `cubed` are one cut.
[[nodiscard]] inline std::string_view cut_stem(std::string_view w) noexcept {
  for (const std::string_view end : {"ed", "es", "s", "d", "e"}) {
    if (w.size() > end.size() + 2 && w.substr(w.size() - end.size()) == end)
      return w.substr(0, w.size() - end.size());
  }
  return w;
}

/// `cubed` is one, because `cubes` is listed.
[[nodiscard]] inline bool is_cut_word(const edition& rules, std::string_view w) {
  return std::any_of(rules.cut_words.begin(), rules.cut_words.end(),
                     [&](std::string_view c) { return cut_stem(c) == cut_stem(w); });
}

/// Tenths of an inch, rounded up, of the piece whose cut stands at `cut`: `3-inch cubes`, `2 cm
/// pieces`, `half inch cubes`; nothing where no size stands before it.
[[nodiscard]] inline std::optional<int> tenths_of_inch(const std::vector<line_token>& words,
                                                       std::size_t cut) {
  if (cut < 2) return std::nullopt;
  const std::string& unit = words[cut - 1].text;
  const bool inch = line::one_of(unit, {"inch", "inches", "in"});
  if (!inch && !line::one_of(unit, {"cm", "mm"})) return std::nullopt;
  std::size_t at = cut - 2;
  if (words[at].text == "half") return inch ? std::optional<int>(5) : std::nullopt;
  if (at > 0 && is_digit(words[at - 1].text.front()) &&
      words[at].text.find('/') != std::string::npos)
    --at;  // `1 1/2`
  const std::optional<int> sixtieths = sixtieths_at(words, at);
  if (!sixtieths) return std::nullopt;
  if (inch) return (*sixtieths + 5) / 6;
  // 25.4 mm to the inch.
  const int tenths_of_mm = *sixtieths * (unit == "cm" ? 10 : 1) / 6;
  return (tenths_of_mm * 10 + 253) / 254;
}

/// True where a word of the line is a cut that a table of the food does not have: another cut is
/// another process. Where the food is boiled down or pressed, as for sauce, no form of the table is
/// a cut, and how it was cut before changes nothing.
[[nodiscard]] inline bool has_other_cut(const edition& rules, const plan_line& l,
                                        const process& food) {
  const auto is_cut = [&](std::string_view w) { return is_cut_word(rules, w); };
  for (const table& t : food.tables) {
    std::vector<line_token> listed;
    for (const std::string_view f : t.forms) {
      for (line_token& word : tokens_of(folded(f))) listed.push_back(std::move(word));
    }
    const bool any_cut = std::any_of(listed.begin(), listed.end(),
                                     [&](const line_token& w) { return is_cut(w.text); });
    if (!any_cut && !listed.empty()) continue;
    const std::vector<line_token> said = tokens_of(plain_line(l.said->text));
    for (std::size_t i = 0; i < said.size(); ++i) {
      const std::optional<int> size = tenths_of_inch(said, i);
      if (!size || !is_cut(said[i].text)) continue;
      for (std::size_t k = 0; k < listed.size(); ++k) {
        const std::optional<int> most = tenths_of_inch(listed, k);
        if (most && cut_stem(listed[k].text) == cut_stem(said[i].text) && *size > *most)
          return true;
      }
    }
    for (const std::string& w : l.reading.words) {
      if (!is_cut(w)) continue;
      const bool fits = std::any_of(listed.begin(), listed.end(), [&](const line_token& f) {
        return cut_stem(f.text) == cut_stem(w) ||
               // Pieces of any size that fit the jar.
               (f.text == "pieces" && line::one_of(w, {"chunks", "cubed", "cubes"}) &&
                t.forms.contains(std::string_view("pieces")));
      });
      if (!fits) return true;
    }
  }
  return false;
}

/// Tenths of an inch of the cubes that words name, such as `3-inch cubes` or `1-inch dice`.
[[nodiscard]] inline std::optional<int> size_of_cubes(const std::vector<line_token>& words) {
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (!line::one_of(words[i].text,
                      {"cubes", "cube", "cubed", "dice", "diced", "chunks", "chunk", "pieces"}))
      continue;
    if (const std::optional<int> size = tenths_of_inch(words, i)) return size;
  }
  return std::nullopt;
}

/// The form that a food's own tables print for its cubes, where those that the words name are
/// larger: `half-inch-cubes` for potatoes in 1-inch cubes; empty for none.
[[nodiscard]] inline std::string_view cubes_too_large_for(const std::vector<line_token>& said,
                                                          const std::vector<const process*>& own) {
  const std::optional<int> size = size_of_cubes(said);
  std::string_view printed_form;
  for (const process* p : own) {
    for (const table& t : p->tables) {
      for (const std::string_view form : t.forms) {
        const std::vector<line_token> words = tokens_of(folded(form));
        if (words.empty() || words.back().text != "cubes") continue;
        const std::optional<int> printed = size_of_cubes(words);
        if (!printed) continue;
        if (!size || *size <= *printed) return {};
        printed_form = form;
      }
    }
  }
  return printed_form;
}

}  // namespace jarproof::detail
