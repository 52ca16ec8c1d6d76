// Directions that say something else than the plan: another method, a shorter time, another pack.
// Which of the two the cook will follow nobody knows, so that the plan is not accepted.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/judge_steps.hpp"
#include "jarproof/detail/token_numbers.hpp"

namespace jarproof::detail {

[[nodiscard]] inline bool has_one_of(const std::vector<line_token>& sentence,
                                     std::initializer_list<std::string_view> words) {
  return std::any_of(sentence.begin(), sentence.end(), [&](const line_token& t) {
    return std::find(words.begin(), words.end(), t.text) != words.end();
  });
}

/// The longest time that a sentence names, in minutes rounded up.
[[nodiscard]] inline std::optional<int> longest_minutes(const std::vector<line_token>& s) {
  std::optional<int> longest;
  int hours = 0;  // `1 hour and 15 minutes` is one time
  for (std::size_t at = 0; at < s.size();) {
    const std::optional<int> number = sixtieths_at(s, at);
    if (!number) {
      if (at < s.size() && !line::one_of(s[at].text, {"and", "y"})) hours = 0;
      ++at;
      continue;
    }
    while (at < s.size() && line::one_of(s[at].text, {"more", "full"})) ++at;
    if (at >= s.size()) break;
    if (line::one_of(s[at].text, {"hour", "hours", "hr", "hrs", "h", "hora", "horas"})) {
      hours = *number;
      longest = std::max(longest.value_or(0), hours);
      ++at;
    } else if (line::one_of(s[at].text,
                            {"minute", "minutes", "min", "mins", "minuto", "minutos"})) {
      longest = std::max(longest.value_or(0), hours + (*number + 59) / 60);
      hours = 0;
    }
  }
  return longest;
}

/// True where a sentence is about the processing of filled jars and about no other time.
[[nodiscard]] inline bool is_about_processing(const std::vector<line_token>& s) {
  if (has_one_of(s, {"blender", "processor", "vent", "venting", "exhaust", "cool", "simmer", "soak",
                     "rest", "wait", "stand", "steam", "food"}))
    return false;
  return has_one_of(s, {"process", "processed", "processing", "canner", "psi", "procesar"});
}

/// True where a sentence is about filled jars: those that are only washed or kept warm do no harm.
[[nodiscard]] inline bool is_about_filled_jars(const std::vector<line_token>& s) {
  if (has_one_of(s, {"empty", "sterilize", "sterilise", "sterilized", "sterilised", "sterilizing",
                     "warm", "wash", "washed", "clean", "keep"}))
    return false;
  return has_one_of(s, {"process", "processed", "processing", "can", "canned", "canning", "jar",
                        "jars", "seal", "sealed", "lid", "lids", "pints", "quarts"});
}

/// The name of a method that a sentence uses in place of the plan's own, or empty.
[[nodiscard]] inline std::string_view other_method_in(const edition& rules, const method& own,
                                                      const std::vector<line_token>& s) {
  if (!is_about_filled_jars(s) || forbids(s)) return {};
  std::string_view found;
  for (const method& m : rules.methods) {
    for (const std::string_view name : m.names) {
      std::size_t at = 0;
      if (!stands_in(s, name, at) || is_denied(s, at)) continue;
      if (&m == &own) return {};  // one of several, as in `by water bath or pressure`
      // Words that decide by themselves, such as `slow cooker`, have their own check.
      if (find(rules.telling_words, name) == nullptr) found = name;
    }
  }
  return found;
}

/// Says what the directions have against the plan. `own` is the plan's method, or null.
inline void judge_directions(judging& j, const method* own) {
  const auto against = [&](const word& step, std::string reason, std::string required) {
    j.say("steps-against-plan", place_of("steps", step),
          {step.text, std::move(required), std::move(reason), {}, {}});
  };
  for (const word& step : j.what.steps) {
    for (const std::vector<line_token>& s : sentences_of(step.text)) {
      if (own != nullptr) {
        const std::string_view name = other_method_in(j.rules, *own, s);
        if (!name.empty())
          against(step, "They name \"" + std::string(name) + "\".", std::string(own->title));
      }
      if (!j.out.required || !is_about_processing(s)) continue;
      const std::optional<int> minutes = longest_minutes(s);
      if (minutes && *minutes < j.out.required->time_min)
        against(step, "They process for " + std::to_string(*minutes) + " min.",
                std::to_string(j.out.required->time_min) + " min");
    }
  }
}

}  // namespace jarproof::detail
