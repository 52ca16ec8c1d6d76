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

/// True where the words of `id`, one after the other, stand in the sentence; `at` is the first.
[[nodiscard]] inline bool stands_in(const std::vector<line_token>& sentence, std::string_view id,
                                    std::size_t& at) {
  std::size_t width = 1;
  for (const char c : id) width += c == ' ' ? 1 : 0;
  for (at = 0; at + width <= sentence.size(); ++at) {
    if (words_between(sentence, at, at + width) == id) return true;
  }
  return false;
}

/// `no flour`, `without the cream`: only what stands right behind is taken back.
[[nodiscard]] inline bool is_denied(const std::vector<line_token>& sentence, std::size_t at) {
  if (at > 0 && line::one_of(sentence[at - 1].text, {"the", "any", "a"})) --at;
  return at > 0 && line::one_of(sentence[at - 1].text,
                                {"no", "not", "never", "without", "omit", "skip", "don't"});
}

/// `Do not fill the jars to the brim`, `Never turn them upside down`: what is not done to the jars.
[[nodiscard]] inline bool forbids(const std::vector<line_token>& sentence) {
  const std::size_t start = !sentence.empty() && sentence[0].text == "do" ? 1 : 0;
  if (start + 1 >= sentence.size() ||
      !line::one_of(sentence[start].text, {"not", "never", "don't"}) ||
      !line::one_of(sentence[start + 1].text, {"fill", "put", "pack", "turn", "process", "place",
                                               "set", "use", "leave", "lift", "press"}))
    return false;
  return std::none_of(sentence.begin(), sentence.end(), [](const line_token& t) {
    return line::one_of(t.text, {"until", "till", "unless", "but", "if", "before", "without"});
  });
}

/// True where a sentence begins or ends with the table or an opened jar: `To serve, stir in the
/// cream`, `add the noodles when serving`.
[[nodiscard]] inline bool is_about_serving(const std::vector<line_token>& sentence) {
  constexpr std::string_view words[] = {"serve", "serving", "served", "garnish", "table"};
  constexpr std::string_view doubts[] = {"as", "bowl", "bowls", "now", "rest", "some", "half"};
  const std::size_t size = sentence.size();
  const bool doubtful = std::any_of(sentence.begin(), sentence.end(), [&](const line_token& t) {
    return line::one_of(t.text, doubts);
  });
  if (doubtful) return false;
  for (std::size_t i = 0; i < size; ++i) {
    if (i >= 4 && i + 4 < size) continue;
    const bool opened = line::one_of(sentence[i].text, {"opened", "opening", "open"});
    bool jar = false;
    for (std::size_t k = i < 3 ? 0 : i - 3; k < std::min(size, i + 4); ++k)
      jar = jar || sentence[k].text == "jar" || sentence[k].text == "jars";
    const bool after =
        i > 0 && line::one_of(sentence[i - 1].text, {"the", "to", "in", "into", "before"});
    if (line::one_of(sentence[i].text, words) || (opened && jar && !after)) return true;
  }
  return false;
}

[[nodiscard]] inline bool is_taken_back(const std::vector<line_token>& sentence, std::size_t at,
                                        const telling_word& t) {
  constexpr std::string_view no[] = {"not", "never", "no", "without"};
  constexpr std::string_view table[] = {"serving", "serve", "opening", "opened"};
  if (is_denied(sentence, at) && t.unless.contains(std::string_view("not"))) return true;
  if (t.unless.contains(std::string_view("serving")) && is_about_serving(sentence)) return true;
  return std::any_of(sentence.begin(), sentence.end(), [&](const line_token& w) {
    return t.unless.contains(std::string_view(w.text)) && !line::one_of(w.text, no) &&
           !line::one_of(w.text, table);
  });
}

/// True where a word of the directions decides: it stands in the sentence, with what has to stand
/// beside it, and nothing takes it back.
[[nodiscard]] inline bool decides(const plan& p, const std::vector<line_token>& sentence,
                                  const telling_word& t) {
  std::size_t at = 0;
  if (!stands_in(sentence, t.id, at) || is_taken_back(sentence, at, t)) return false;
  if (t.check == "standing-unsaid" && p.held) return false;  // judged there
  if (!t.pack.empty() && (!p.pack || p.pack->text != t.pack)) return false;
  return t.beside.empty() ||
         std::any_of(sentence.begin(), sentence.end(), [&](const line_token& w) {
           return t.beside.contains(std::string_view(w.text));
         });
}

/// A food of its own, such as celery or shrimp; words such as `soup` or `vegetables` are what the
/// list has.
[[nodiscard]] inline bool is_low_acid_food(const edition& rules, const ingredient& i) {
  constexpr std::string_view general[] = {
      "meat", "mixed-vegetables", "bean",      "soup-bones",   "beef-roast",     "animal-fat",
      "fish", "poultry",          "game-bird", "leafy-greens", "root-vegetables"};
  return i.kind == acidity::low_acid && !line::one_of(i.id, general) && !is_seasoning(rules, i) &&
         !is_liquid(rules, i) && !is_a(rules, i, "made-dish");
}

/// `the soup`, `the sauce`: what is in the pot.
[[nodiscard]] inline bool is_dish_word(const edition& rules, std::string_view name) {
  return line::one_of(name, {"soup", "stew", "sauce", "broth", "chili", "salsa", "relish"}) &&
         rules.heading_words.contains(name);
}

/// `food` is the process that the plan follows, or null.
inline void judge_steps(judging& j, const process* food) {
  if (j.what.steps.empty()) return;
  // A published recipe is thickened and pressed as it was tested.
  const bool tested = food != nullptr && !food->recipes.empty();
  const bool acid = food != nullptr && food->kind == food_class::acid;
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
      for (const list<telling_word>& words : {j.rules.telling_words, j.rules.step_words}) {
        if (tested || (words.begin() == j.rules.step_words.begin() && forbids(s))) continue;
        for (const telling_word& t : words) {
          if (!decides(j.what, s, t)) continue;
          if (t.check == "low-acid-puree" && acid) continue;
          j.say(t.check, place_of("steps", step),
                {step.text, "none of it", "They say \"" + std::string(t.id) + "\".", {}, {}});
        }
      }
      if (is_about_serving(s) || lines.empty()) continue;
      name_index names(j.rules, s);
      for (std::size_t from = 0; from < s.size();) {
        const name_match m = names.at(from, s.size(), false);
        from = m.what == nullptr ? from + 1 : m.end;
        if (m.what == nullptr) continue;
        if (is_listed(*m.what) || is_denied(s, m.from)) continue;
        if (ban_on(j.rules, *m.what).empty() && (tested || !is_low_acid_food(j.rules, *m.what)))
          continue;
        const std::string name = words_between(s, m.from, m.end);
        // Fat is skimmed from every soup, a date stands on labels, to dip is a verb, and `the stew`
        // is this dish.
        if (name == "fat" || name == "grasa" || name == "date" || name == "dip" ||
            is_dish_word(j.rules, name))
          continue;
        j.say("step-names-unlisted", place_of("steps", step),
              {step.text, {}, "\"" + name + "\"", {}, {}});
      }
    }
  }
}

}  // namespace jarproof::detail
