// Directions that say something else than the plan: another method, a shorter time, another pack.
// Which of the two the cook will follow nobody knows, so that the plan is not accepted.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/judge_steps.hpp"
#include "jarproof/detail/step_numbers.hpp"

namespace jarproof::detail {

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

/// `Fill jars, seal, and boil one hour`, `Boil the filled jars for 3 hours`, `Steam the jars 75
/// min`: jars that are closed and heated. Empty jars boil 10 minutes, and what is boiled before it
/// is filled stands in front of them.
[[nodiscard]] inline bool boils_closed_jars(const std::vector<line_token>& s) {
  const bool empty = has_one_of(s, {"empty", "sterilize", "sterilise", "wash", "clean", "warm"});
  const std::optional<int> minutes = longest_minutes(s);
  const bool hours = minutes && *minutes > 15 && !empty;
  bool closed = false;
  for (std::size_t i = 0; i < s.size(); ++i) {
    closed = closed || line::one_of(s[i].text, {"seal", "sealed", "lids", "screw"});
    if (!line::one_of(s[i].text, {"boil", "steam"})) continue;
    // `boil the closed jars`, `Cover the jars with water and boil`
    std::size_t jar = i + 1;
    while (jar < s.size() && line::one_of(s[jar].text, {"the", "closed", "filled", "full", "hot"}))
      ++jar;
    if (hours && jar < s.size() && s[jar].text == "jars") return true;
    if (hours && s[i].text == "boil" && has_one_of(s, {"cover"}) && has_one_of(s, {"jars"}))
      return true;
    if (!closed || s[i].text == "steam") continue;
    std::size_t at = i + 1;
    while (at < s.size() && line::one_of(s[at].text, {"for", "them", "it", "the", "jars"})) ++at;
    if (at == s.size() || sixtieths_at(s, at)) return true;
  }
  return false;
}

/// True where a sentence is about the processing of filled jars and about no other time.
[[nodiscard]] inline bool is_about_processing(const std::vector<line_token>& s) {
  if (has_one_of(s, {"blender", "processor", "vent", "venting", "exhaust", "cool", "simmer", "soak",
                     "rest", "wait", "stand", "steam", "food"}) &&
      !has_one_of(s, {"including"}))
    return false;
  // Jars wait in the open canner before they are lifted out.
  const std::optional<int> minutes = longest_minutes(s);
  if (minutes && *minutes <= 10 && has_one_of(s, {"off", "lid", "remove", "removing", "open"}))
    return false;
  if (has_one_of(s, {"process", "processed", "processing", "canner", "psi", "procesar", "procese"}))
    return true;
  if (times_jars(s) || times_before_jars(s) || bare_minutes(s) || boils_closed_jars(s)) return true;
  // `Can for 20 minutes`, `Can 45 minutes`, `Canning time: 45 min`
  if (s.size() > 1 && line::one_of(s[0].text, {"can", "jar", "canning"}) &&
      (is_digit(s[1].text.front()) ||
       line::one_of(s[1].text, {"for", "at", "pints", "quarts", "them", "it", "time"})))
    return true;
  if (has_one_of(s, {"cooker", "zero", "drop", "drops", "fall", "falls", "bones", "stock", "hen",
                     "beans", "chicken", "meat", "until", "wait"}))
    return false;
  // `Hold the pressure for half an hour`, `45 min at 15#`, `Let it rock 45 minutes`
  if (names_pressure(s) ||
      has_one_of(s, {"rock", "rocks", "rocking", "jiggle", "jiggles", "jiggling"}))
    return true;
  for (std::size_t i = 0; i + 1 < s.size(); ++i) {
    if (s[i].text == "pressure" && line::one_of(s[i + 1].text, {"can", "canned"})) return true;
    if (s[i].text == "turn" && s[i + 1].text == "off" &&
        !has_one_of(s, {"boil", "cook", "cover", "let", "add", "stir"}))
      return true;
  }
  if (has_one_of(s, {"jars"}) && has_one_of(s, {"go", "give", "run", "cook"}) && minutes)
    return true;
  return has_one_of(s, {"pressure"}) && has_one_of(s, {"cook", "keep", "hold", "maintain"}) &&
         !has_one_of(s, {"weight"});
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
  if (forbids(s)) return {};
  // `Method: boiling water`
  const bool label = s.size() > 1 && s.size() < 6 && line::one_of(s[0].text, {"method", "process"});
  const bool jars = label || is_about_filled_jars(s);
  const bool doubtful = has_one_of(s, {"not", "never", "no", "don't", "instead", "cannot", "blanch",
                                       "empty", "sterilize", "wash", "warm", "keep", "unsafe"});
  if (own.id == "pressure" && boils_closed_jars(s)) return "boil";
  std::string_view found;
  for (const method& m : rules.methods) {
    for (const std::string_view name : m.names) {
      std::size_t at = 0;
      if (!stands_in(s, name, at) || is_denied(s, at)) continue;
      // `Water bath for 3 hours` speaks of jars without saying so.
      const bool clear = name.find(" canner") != std::string_view::npos ||
                         name.find(" canning") != std::string_view::npos ||
                         name.find("bath") != std::string_view::npos;
      if (!jars && (!clear || doubtful)) continue;
      if (&m == &own) return {};  // one of several, as in `by water bath or pressure`
      // Words that decide by themselves, such as `slow cooker`, have their own check.
      if (find(rules.telling_words, name) == nullptr) found = name;
    }
  }
  return found;
}

/// `Let sit 4 hours`, `Hold at 120 F`: cooked food that waits in the warm.
[[nodiscard]] inline bool waits_warm(const std::vector<line_token>& s) {
  const std::optional<int> minutes = longest_minutes(s);
  const std::optional<int> degrees = largest_before(s, {"f", "degrees"});
  const bool fill = has_one_of(s, {"fill", "filling", "jarring", "canning"});
  if (has_one_of(s, {"refrigerator", "refrigerate", "fridge", "chill",   "ice",  "cold",   "soak",
                     "soaking",      "soaked",      "beans",  "brine",   "salt", "canner", "seal",
                     "simmer",       "cook",        "boil",   "water",   "lids", "store",  "stored",
                     "serving",      "opened",      "oven",   "marinate"}) ||
      (has_one_of(s, {"jars"}) && !fill))
    return false;
  if (degrees && *degrees > 40 * 60 && *degrees <= 140 * 60)
    return fill || has_one_of(s, {"hold", "keep"});
  return minutes && *minutes > 120 && has_one_of(s, {"let", "set", "leave", "keep", "hold"}) &&
         has_one_of(s, {"sit", "stand", "aside", "warm", "wait", "rest"});
}

/// Numbers of one sentence against those that the plan needs.
inline void judge_numbers(judging& j, const word& step, const std::vector<line_token>& s) {
  const requirement& needed = *j.out.required;
  const auto against = [&](std::string reason, std::string required) {
    j.say("steps-against-plan", place_of("steps", step),
          {step.text, std::move(required), std::move(reason), {}, {}});
  };
  const std::optional<int> minutes = longest_minutes(s);
  const std::optional<int> bare = bare_minutes(s);
  const int longest = std::max(minutes.value_or(0), bare.value_or(0));
  if ((minutes || bare) && is_about_processing(s) && longest < needed.time_min)
    against("The directions process for " + std::to_string(longest) + " min.",
            std::to_string(needed.time_min) + " min");
  const bool vents = has_one_of(s, {"vent", "venting", "exhaust"}) ||
                     (has_one_of(s, {"steam"}) && has_one_of(s, {"escape", "escapes"}));
  if (minutes && vents && needed.vent_min && *minutes < *needed.vent_min)
    against("The directions vent for " + std::to_string(*minutes) + " min.",
            std::to_string(*needed.vent_min) + " min");
  if (waits_warm(s) && !j.what.held)
    j.say("standing-unsaid", place_of("steps", step),
          {step.text, "none of it", "The directions let it wait.", {}, {}});
  const std::optional<int> headspace = headspace_in(s);
  if (headspace && *headspace + 1 < needed.headspace_thousandths_in)
    against("The directions leave less headspace.",
            headspace_text(needed.headspace_thousandths_in));
  const std::optional<int> psi = pressure_in(s);
  if (!psi || !needed.pressure_psi) return;
  // Recipes print the pressure of the lowest band, 10 psi on a weighted and 11 on a dial gauge;
  // the plan's own holds higher up.
  const bool lowest = *psi == 10 || *psi == 11;
  const method* canner = find(j.rules.methods, "pressure");
  const bool too_high = canner != nullptr && *psi > canner->highest_psi;
  const std::string found = "The directions name " + std::to_string(*psi) + " psi.";
  const std::string required = std::to_string(*needed.pressure_psi) + " psi";
  if ((*psi < *needed.pressure_psi && !lowest) || too_high) {
    against(found, required);
  } else if (*psi < *needed.pressure_psi) {
    j.say("step-pressure-lower", place_of("steps", step), {step.text, required, found, {}, {}});
  }
}

/// Minutes of a boil of everything in the pot: `Cover with broth and boil 3 min`. Single foods have
/// their own times, and beans stand in their water after it.
[[nodiscard]] inline std::optional<int> boil_of_all(const edition& rules,
                                                    const std::vector<line_token>& s) {
  const bool fills = has_one_of(s, {"fill", "ladle", "pack", "jar"});
  if (has_one_of(s,
                 {"soak", "drain", "drained", "stand", "blanch", "scald", "hour", "hours", "wait",
                  "canner", "lids", "serving", "serve", "opened", "opening", "empty", "more"}) ||
      (!fills && has_one_of(s, {"jars", "then"})))
    return std::nullopt;
  const auto boil = std::find_if(s.begin(), s.end(), [](const line_token& t) {
    return line::one_of(t.text, {"boil", "boils", "boiling", "simmer"});
  });
  const std::optional<int> minutes = longest_minutes(s);
  if (boil == s.end() || !minutes) return std::nullopt;
  name_index names(rules, s);
  for (std::size_t from = 0; from < s.size(); ++from) {
    const name_match m = names.at(from, s.size(), true);
    if (m.what != nullptr && m.what->id != "kitchen-utensil" && !is_liquid(rules, *m.what) &&
        !is_a(rules, *m.what, "water") && !is_dish_word(rules, words_between(s, m.from, m.end)))
      return std::nullopt;
  }
  return minutes;
}

/// The minutes of a step such as `boiled 5 min` that the food's process has for a mixture of the
/// cook's own, or nothing.
[[nodiscard]] inline std::optional<int> boil_needed(const process* food) {
  if (food == nullptr || food->recipe != recipe_kind::frame) return std::nullopt;
  for (const condition& c : food->conditions) {
    const std::vector<line_token> words = tokens_of(c.prepared);
    if (!words.empty() && words.front().text == "boiled")
      if (const std::optional<int> minutes = longest_minutes(words)) return minutes;
  }
  return std::nullopt;
}

/// `Fill the jars 3/4 full of meat`: more than half of solids; not `with broth to 3/4 full`.
[[nodiscard]] inline bool fills_over_half(const std::vector<line_token>& s) {
  if (!has_one_of(s, {"jar", "jars", "fill", "pack"})) return false;
  for (std::size_t at = 0; at < s.size();) {
    const std::optional<int> sixtieths = sixtieths_at(s, at);
    if (!sixtieths) {
      ++at;
      continue;
    }
    if (*sixtieths <= 30 || *sixtieths >= 60) continue;
    while (at < s.size() && line::one_of(s[at].text, {"of", "the", "way", "jar", "jars"})) ++at;
    if (at < s.size() && line::one_of(s[at].text, {"full", "with", "meat", "solids"}) &&
        !has_one_of(s, {"soup", "stew", "mixture", "canner"}))
      return true;
  }
  return false;
}

/// Says what the directions have against the plan. `food` is the process that it follows, or null,
/// `own` is the plan's method, or null.
inline void judge_directions(judging& j, const process* food, const method* own) {
  const std::optional<int> least_boil = boil_needed(food);
  const auto against = [&](const word& step, std::string reason, std::string required) {
    j.say("steps-against-plan", place_of("steps", step),
          {step.text, std::move(required), std::move(reason), {}, {}});
  };
  for (const word& step : j.what.steps) {
    // `2-quart jars` are half-gallons; `2 quart jars` are two quarts, and as words they are alike.
    std::string as_written = step.text;
    std::transform(as_written.begin(), as_written.end(), as_written.begin(), lower);
    for (const std::string_view jars :
         {"2-quart jar", "two-quart jar", "2-qt jar", "2-qt. jar", "two-qt jar", "two-qt. jar"}) {
      if (j.what.jar && as_written.find(jars) != std::string::npos)
        against(step, "The directions name a \"" + std::string(jars) + "\".", j.what.jar->text);
    }
    for (const std::vector<line_token>& sentence : sentences_of(step.text)) {
      const std::vector<line_token> s = in_digits(sentence);
      if (own != nullptr) {
        const std::string_view name = other_method_in(j.rules, *own, s);
        if (!name.empty())
          against(step, "The directions name \"" + std::string(name) + "\".",
                  std::string(own->title));
      }
      if (const std::string jar = large_jar_in(s); !jar.empty() && j.what.jar)
        against(step, "The directions name \"" + jar + "\".", j.what.jar->text);
      if (least_boil && fills_over_half(s))
        against(step, "The directions fill the jars more than half with solids.",
                "half solids, half liquid");
      const std::optional<int> boil = least_boil ? boil_of_all(j.rules, s) : std::nullopt;
      if (boil && *boil < *least_boil)
        against(step, "The directions boil it for " + std::to_string(*boil) + " min.",
                std::to_string(*least_boil) + " min");
      if (j.out.required) judge_numbers(j, step, s);
    }
  }
  // `Boiling water bath soup`: a title names a method without speaking of jars.
  if (own == nullptr || !j.what.title || j.what.food) return;
  const std::vector<line_token> title = tokens_of(plain_line(j.what.title->text));
  for (const method& m : j.rules.methods) {
    for (const std::string_view name : m.names) {
      std::size_t at = 0;
      if (&m == own || name == "sun" || !stands_in(title, name, at)) continue;
      if (find(j.rules.telling_words, name) != nullptr) continue;
      j.say("steps-against-plan", place_of("title", *j.what.title),
            {j.what.title->text,
             std::string(own->title),
             "The title names \"" + std::string(name) + "\".",
             {},
             {}});
      return;
    }
  }
}

}  // namespace jarproof::detail
