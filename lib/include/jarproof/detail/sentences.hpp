// The sentences of a step of the directions. SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/line_numbers.hpp"
#include "jarproof/detail/line_text.hpp"
#include "jarproof/quantity.hpp"

namespace jarproof::detail {

/// True where one of the words stands in the sentence.
[[nodiscard]] inline bool has_one_of(const std::vector<line_token>& sentence,
                                     std::initializer_list<std::string_view> words) {
  return std::any_of(sentence.begin(), sentence.end(), [&](const line_token& t) {
    return std::find(words.begin(), words.end(), t.text) != words.end();
  });
}

/// True for the dot of `1.5 cups`, and of `45 min. at 10 lb.` where the sentence goes on.
[[nodiscard]] inline bool is_inner_dot(std::string_view text, std::size_t dot) {
  if (dot + 1 >= text.size()) return false;
  if (is_digit(text[dot + 1])) return true;
  if (text[dot] != '.') return false;
  const std::size_t start = text.find_last_of(" \t(0123456789-", dot) + 1;  // npos + 1 is 0
  const std::string word = folded(text.substr(start, dot - start));
  const std::size_t next = text.find_first_not_of(' ', dot + 1);
  return line::one_of(word, {"min", "mins", "hr", "hrs", "lb", "lbs", "qt", "qts", "pt", "pts",
                             "oz", "approx", "in", "tbsp", "tsp"}) &&
         next != std::string_view::npos &&
         (is_digit(text[next]) || (text[next] >= 'a' && text[next] <= 'z') || text[next] == '(');
}

/// Sentences of a step, as plain words.
[[nodiscard]] inline std::vector<std::vector<line_token>> sentences_of(std::string_view step) {
  std::vector<std::vector<line_token>> out;
  while (!step.empty()) {
    std::size_t end = step.find_first_of(".;!?\n");
    while (end != std::string_view::npos && is_inner_dot(step, end))
      end = step.find_first_of(".;!?\n", end + 1);
    out.push_back(tokens_of(plain_line(step.substr(0, std::min<std::size_t>(end, 1'000)))));
    if (end == std::string_view::npos) break;
    step.remove_prefix(end + 1);
  }
  return out;
}

}  // namespace jarproof::detail
