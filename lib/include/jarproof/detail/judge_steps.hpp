// The directions of a recipe: words that decide by themselves, such as `thicken` or `puree`, and
// things that the list of ingredients does not have. Nothing in the directions makes up for a fact
// that the plan leaves unsaid.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/judge_mixture.hpp"
#include "jarproof/detail/plan_lines.hpp"

namespace jarproof::detail {

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

[[nodiscard]] inline bool is_taken_back(const std::vector<line_token>& sentence,
                                        list<std::string_view> unless) {
  return std::any_of(sentence.begin(), sentence.end(), [&](const line_token& t) {
    return unless.contains(std::string_view(t.text));
  });
}

/// True where the words of `id`, one after the other, stand in the sentence.
[[nodiscard]] inline bool stands_in(const std::vector<line_token>& sentence, std::string_view id) {
  const std::string text = " " + words_between(sentence, 0, sentence.size()) + " ";
  return text.find(" " + std::string(id) + " ") != std::string::npos;
}

/// True where the sentence is about the table or an opened jar, or says that something stays out.
[[nodiscard]] inline bool is_about_serving(const std::vector<line_token>& sentence) {
  constexpr std::string_view words[] = {
      "serve", "serving", "served", "opened",  "opening", "open",    "garnish", "table",
      "not",   "no",      "never",  "without", "later",   "freezer", "bowls",   "bowl"};
  return std::any_of(sentence.begin(), sentence.end(),
                     [&](const line_token& t) { return line::one_of(t.text, words); });
}

/// `food` is the process that the plan follows, or null.
inline void judge_steps(judging& j, const process* food) {
  if (j.what.steps.empty()) return;
  // A published recipe is thickened and pressed as it was tested.
  const bool tested = food != nullptr && !food->recipes.empty();
  const std::vector<plan_line> lines = read_lines(j);
  const auto is_listed = [&](const ingredient& i) {
    return std::any_of(lines.begin(), lines.end(), [&](const plan_line& l) {
      bool same = false;
      each_ingredient(l, [&](const ingredient& other) {
        same = same || &most_general(j.rules, other) == &most_general(j.rules, i);
        // `the flour` of the steps is any flour of the list.
        const std::string_view ban = ban_on(j.rules, i);
        same = same || (!ban.empty() && ban == ban_on(j.rules, other));
      });
      return same;
    });
  };
  for (const word& step : j.what.steps) {
    for (const std::vector<line_token>& s : sentences_of(step.text)) {
      for (const telling_word& t : j.rules.telling_words) {
        if (tested || !stands_in(s, t.id) || is_taken_back(s, t.unless)) continue;
        if (t.check == "standing-unsaid" && j.what.held) continue;  // judged there
        if (t.check == "low-acid-puree" && food != nullptr && food->kind == food_class::acid)
          continue;
        j.say(
            t.check, place_of("steps", step),
            {step.text, "none of it", "The directions say \"" + std::string(t.id) + "\".", {}, {}});
      }
      if (is_about_serving(s) || lines.empty()) continue;
      name_index names(j.rules, s);
      for (std::size_t from = 0; from < s.size();) {
        const name_match m = names.longest(from, s.size(), false);
        if (m.what == nullptr) break;
        from = m.end;
        if (ban_on(j.rules, *m.what).empty() || is_listed(*m.what)) continue;
        const std::string name = words_between(s, m.from, m.end);
        if (name == "fat") continue;  // it is skimmed and trimmed in every soup
        j.say("step-names-unlisted", place_of("steps", step),
              {step.text, {}, "\"" + name + "\"", {}, {}});
      }
    }
  }
}

}  // namespace jarproof::detail
