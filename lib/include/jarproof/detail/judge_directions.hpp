// Directions that say something else than the plan: another method, a shorter time, another pack.
// Which of the two the cook will follow nobody knows, so that the plan is not accepted.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/dry_beans.hpp"
#include "jarproof/detail/judge_steps.hpp"
#include "jarproof/detail/processing_sentences.hpp"
#include "jarproof/detail/step_amounts.hpp"
#include "jarproof/detail/step_numbers.hpp"

namespace jarproof::detail {

/// The published minutes of the plan's jar in the lowest kitchens, of a table whose time grows with
/// the altitude; 0 where there is none.
[[nodiscard]] inline int lowest_minutes(const judging& j, const process* food) {
  const std::optional<std::int64_t> volume = j.what.jar ? jar_volume(j) : std::nullopt;
  if (food == nullptr || !volume || !j.what.pack) return 0;
  int minutes = 0;
  for (const table& t : food->tables) {
    if (t.boiling_water.empty() || !t.use || t.pack != j.what.pack->text) continue;
    const jar_minutes* listed = listed_jar(j.rules, t, *volume);
    if (listed != nullptr) minutes = std::max(minutes, listed->minutes[0]);
  }
  return minutes;
}

/// `let stand 12 hours` of cucumbers in salt water: a pickle whose process has it so, before
/// anything is heated or filled.
[[nodiscard]] inline bool is_published_wait(const process* food, const std::vector<line_token>& s) {
  const std::optional<int> minutes = longest_minutes(s);
  if (food == nullptr || food->kind != food_class::acid || !minutes ||
      has_one_of(s, {"boil", "boiling", "canning", "cook", "cooked", "cooking", "fill", "filling",
                     "heat", "hot", "jar", "jars", "simmer", "warm"}))
    return false;
  return std::any_of(food->conditions.begin(), food->conditions.end(), [&](const condition& c) {
    const std::vector<line_token> says = tokens_of(plain_line(c.says));
    return has_one_of(says, {"stand"}) && !has_one_of(says, {"refrigerator"}) &&
           longest_minutes(says) == minutes;
  });
}

/// Numbers of one sentence against those that the plan needs. `food` is its process, or null.
inline void judge_numbers(judging& j, const process* food, const word& step,
                          const std::vector<line_token>& s) {
  const requirement& needed = *j.out.required;
  const auto against = [&](std::string reason, std::string required) {
    j.say("steps-against-plan", place_of("steps", step),
          {step.text, std::move(required), std::move(reason), {}, {}});
  };
  const std::optional<int> minutes = longest_minutes(s);
  const std::optional<int> bare = bare_minutes(s);
  const int longest = std::max(minutes.value_or(0), bare.value_or(0));
  if ((minutes || bare) && is_about_processing(s) && longest < needed.time_min) {
    const std::string found = "The directions process for " + std::to_string(longest) + " min.";
    const std::string required = std::to_string(needed.time_min) + " min";
    if (longest == lowest_minutes(j, food)) {
      // Recipes print the time of the lowest kitchens; the plan's own holds higher up.
      j.say("step-time-lower", place_of("steps", step), {step.text, required, found, {}, {}});
    } else {
      against(found, required);
    }
  }
  const bool vents = has_one_of(s, {"vent", "venting", "exhaust"}) ||
                     (has_one_of(s, {"steam"}) && has_one_of(s, {"escape", "escapes"}));
  if (minutes && vents && needed.vent_min && *minutes < *needed.vent_min)
    against("The directions vent for " + std::to_string(*minutes) + " min.",
            std::to_string(*needed.vent_min) + " min");
  if (waits_warm(s) && !j.what.held && !is_published_wait(food, s))
    j.say("standing-unsaid", place_of("steps", step),
          {step.text, "none of it", "The directions let it wait.", {}, {}});
  // Cooked food is kept no longer than 3 days before it is canned (as for `held`).
  const std::optional<int> days = largest_before(s, {"days"});
  if (days && *days > 3 * 60 && !j.what.held &&
      has_one_of(s, {"chill", "refrigerate", "refrigerator", "fridge"}) &&
      has_one_of(s, {"fill", "then", "can", "canning", "before"}))
    j.say("standing-unsaid", place_of("steps", step),
          {step.text, "none of it", "The directions keep it for days.", {}, {}});
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

/// `Leave the peels on`, where the process is for peeled food.
inline void judge_peeling(judging& j, const process& food, const word& step,
                          const std::vector<line_token>& s) {
  if (std::none_of(food.conditions.begin(), food.conditions.end(),
                   [](const condition& c) { return c.prepared == "peeled"; }))
    return;
  std::size_t at = 0;
  for (const std::string_view kept : {"peels on", "skins on", "need to peel", "do not peel",
                                      "peel is fine", "skin on", "not be peeled"}) {
    if (stands_in(s, kept, at))
      j.say("steps-against-plan", place_of("steps", step),
            {step.text, "peeled", "The directions do not peel it.", {}, {}});
  }
}

/// Dried beans that soak too short, or boil too short before the jars are filled.
inline void judge_bean_minutes(judging& j, const process& food, const word& step,
                               const std::vector<line_token>& s) {
  if (!rehydrates_beans(food)) return;
  const auto against = [&](std::string reason, std::string required) {
    j.say("steps-against-plan", place_of("steps", step),
          {step.text, std::move(required), std::move(reason), {}, {}});
  };
  const auto is_boil = [](const line_token& t) {
    return line::one_of(t.text, {"boil", "boiling", "simmer", "cook"});
  };
  const auto boil = std::find_if(s.begin(), s.end(), is_boil);
  const auto soak = std::find_if(s.begin(), boil, [](const line_token& t) {
    return line::one_of(t.text, {"soak", "soaked"});
  });
  if (soak != boil) {
    // `Boil 2 minutes and soak 1 hour` is the short way; without the boil an hour is not enough.
    const std::optional<int> minutes = longest_minutes({soak, boil});
    if (minutes &&
        (*minutes < 60 || (*minutes < 12 * 60 && has_one_of(s, {"cold", "cool", "warm"}))))
      against("The directions soak the beans for " + std::to_string(*minutes) + " min.",
              "12 to 18 hours, or 2 min of boiling and 1 hour");
  }
  const auto last = std::find_if(s.rbegin(), s.rend(), is_boil).base();
  if (last == s.begin() || !has_one_of(s, {"fill", "jar", "jars", "pack"}) ||
      !has_one_of(s, {"beans", "peas", "frijoles"}) || has_one_of(s, {"process"}))
    return;
  const std::optional<int> minutes = longest_minutes({last, s.end()});
  if (minutes && *minutes < 30)
    against("The directions boil the beans for " + std::to_string(*minutes) + " min.", "30 min");
}

/// A jar of the directions that is larger than the plan's own, or empty. `pint or quart jars` is
/// for both, where the food has a process in both.
[[nodiscard]] inline std::string jar_too_large_in(const judging& j, const process* food,
                                                  const std::vector<line_token>& s) {
  const std::optional<std::int64_t> own = j.what.jar ? jar_volume(j) : std::nullopt;
  if (!own || has_one_of(s, {"freeze", "freezer", "refrigerator", "makes", "yields"})) return {};
  const std::vector<step_jar> named = jars_in(s);
  const auto fits = [&](const step_jar& jar) {
    // 500 mL are a pint and a little more.
    return jar.millis <= *own / 1'000 * 53 / 50;
  };
  const bool both = std::any_of(named.begin(), named.end(), fits);
  for (const step_jar& jar : named) {
    if (fits(jar)) continue;
    const bool listed = food != nullptr &&
                        std::any_of(food->tables.begin(), food->tables.end(), [&](const table& t) {
                          return t.use && listed_jar(j.rules, t, jar.millis * 1'000) != nullptr;
                        });
    if (!both || !listed) return jar.text;
  }
  return {};
}

/// Says what the directions have against the plan. `food` is the process that it follows, or null,
/// `own` is the plan's method, or null.
inline void judge_directions(judging& j, const process* food, const method* own) {
  const std::optional<int> least_boil = boil_needed(food);
  std::optional<step_amounts> amounts;
  if (food != nullptr) {
    amounts.emplace(j, *food);
    judge_bean_steps(j, *food);
  }
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
      if (const std::string jar = jar_too_large_in(j, food, s); !jar.empty())
        against(step, "The directions name \"" + jar + "\".", j.what.jar->text);
      if (amounts) amounts->judge(step, s);
      if (food != nullptr) {
        if (const std::string_view cubes = cubes_too_large_for(s, {food}); !cubes.empty())
          against(step, "The directions cut larger pieces.", std::string(cubes));
        judge_peeling(j, *food, step, s);
        judge_bean_minutes(j, *food, step, s);
      }
      if (least_boil && fills_over_half(s))
        against(step, "The directions fill the jars more than half with solids.",
                "half solids, half liquid");
      const std::optional<int> boil = least_boil ? boil_of_all(j.rules, s) : std::nullopt;
      if (boil && *boil < *least_boil)
        against(step, "The directions boil it for " + std::to_string(*boil) + " min.",
                std::to_string(*least_boil) + " min");
      if (j.out.required) judge_numbers(j, food, step, s);
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
