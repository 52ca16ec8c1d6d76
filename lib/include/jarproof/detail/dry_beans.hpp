// Dried beans and peas whose own line says that they go into the jar dry.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/mixture_parts.hpp"
#include "jarproof/detail/plan_lines.hpp"

namespace jarproof::detail {

/// True for dried beans or peas that are said to go in as they are, whatever the plan says of them
/// elsewhere.
[[nodiscard]] inline bool denies_soaking(const edition& rules, const plan_line& l) {
  bool legume = false;
  each_ingredient(l,
                  [&](const ingredient& i) { legume = legume || is_a(rules, i, "dried-legume"); });
  if (!legume) return false;
  if (says(l.reading, "unsoaked") || says(l.reading, "uncooked")) return true;
  for (const std::string_view w : {"soaked", "cooked", "boiled", "rehydrated"}) {
    if (denies(l.reading, w)) return true;
  }
  // Said of the beans that were bought, or of what is to be done with them; a doubt is enough.
  for (const std::string_view w :
       {"raw", "later", "bag", "barely", "quite", "hardly", "straight"}) {
    if (says(l.reading, w)) return true;
  }
  const std::vector<std::string>& words = l.reading.words;
  const auto behind = [&](std::size_t i, std::size_t n) {
    return i + n < words.size() ? std::string_view(words[i + n]) : std::string_view();
  };
  for (std::size_t i = 0; i < words.size(); ++i) {
    const std::string_view before = i > 0 ? std::string_view(words[i - 1]) : std::string_view();
    const std::string_view w = words[i];
    const bool soaking = w == "soaking" || w == "soak";
    if (soaking && (before == "no" || before == "without" || behind(i, 1) == "not")) return true;
    if (w == "need" && before == "no" && behind(i, 1) == "to" && behind(i, 2) == "soak")
      return true;  // `no need to soak`
    if (w == "in" && behind(i, 1) == "the" && (behind(i, 2) == "jar" || behind(i, 2) == "jars"))
      return true;  // `they cook in the jar`
    if (w == "dry" && (before == "in" || behind(i, 1) == "packed" || behind(i, 1) == "pack"))
      return true;  // `put in dry`
    if (w == "soaked" && (behind(i, 2) == "minutes" || behind(i, 2) == "min")) return true;
  }
  return false;
}

inline void judge_dry_beans(judging& j, const process& food, const plan_line& l) {
  if (!denies_soaking(j.rules, l)) return;
  finding& f = j.say("beans-not-rehydrated", place_of("ingredients", *l.said),
                     {l.said->text, "beans rehydrated", {}, {}, {}});
  cite_first(j.rules, food.sources, f);
}

/// True for a food whose dried beans are soaked and boiled before the jars are filled. In a frame
/// the lines say it of each.
[[nodiscard]] inline bool rehydrates_beans(const process& food) {
  return food.recipe != recipe_kind::frame &&
         std::any_of(food.conditions.begin(), food.conditions.end(),
                     [](const condition& c) { return c.check == "beans-not-rehydrated"; });
}

/// Directions for dried beans that leave the soaking or the boiling out: whatever the plan states
/// beside them, beans go in as the directions have it. Lines may say it too.
inline void judge_bean_steps(judging& j, const process& food) {
  if (!rehydrates_beans(food) || j.what.steps.empty()) return;
  bool soaked = false;
  bool boiled = false;
  for (const plan_line& l : read_lines(j)) {
    if (l.reading.what == nullptr) continue;
    const bool ready = is_a(j.rules, *l.reading.what, "rehydrated-legume");
    soaked = soaked || ready || says(l.reading, "soaked") || says(l.reading, "rehydrated");
    boiled = boiled || ready || says(l.reading, "boiled") || says(l.reading, "cooked") ||
             says(l.reading, "rehydrated");
  }
  for (const word& step : j.what.steps) {
    const std::vector<line_token> words = tokens_of(plain_line(step.text));
    for (std::size_t i = 0; i < words.size(); ++i) {
      const std::string& w = words[i].text;
      if (i > 0 && line::one_of(words[i - 1].text, {"not", "never", "no", "without", "don't"}))
        continue;
      soaked = soaked || line::one_of(w, {"soak", "soaked", "soaking", "remojo", "remojar",
                                          "remoje", "rehydrate", "rehydrated", "stand"});
      boiled = boiled || line::one_of(w, {"boil", "boiled", "boiling", "simmer", "cook", "hierva",
                                          "hervir", "cueza", "cocer"});
    }
  }
  if (soaked && boiled) return;
  const word& first = j.what.steps.front();
  j.say("steps-against-plan", place_of("steps", first),
        {first.text,
         "beans rehydrated",
         soaked ? "The directions do not boil the beans before they are filled."
                : "The directions do not soak the beans.",
         {},
         {}});
}

}  // namespace jarproof::detail
