// What a sentence of the directions says of the processing: for how long, by which method, how the
// jars are filled and what waits before. SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/step_numbers.hpp"
#include "jarproof/detail/step_sentences.hpp"

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
                            {"minute", "minutes", "min", "mins", "m", "minuto", "minutos"})) {
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
  std::size_t pack = 0;
  if (hours && *minutes >= 60 && stands_in(s, "cold pack", pack)) return true;
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
    // `Boil in canner 3 hrs`, `Add vinegar to each jar and boil 3 hours`
    if (hours && s[i].text == "boil" && has_one_of(s, {"canner"})) return true;
    if (hours && *minutes >= 60 && s[i].text == "boil" &&
        std::any_of(s.begin(), s.begin() + static_cast<std::ptrdiff_t>(i), [](const line_token& t) {
          return line::one_of(t.text, {"jar", "jars"});
        }))
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
      has_one_of(s, {"rock", "rocks", "rocking", "jiggle", "jiggles", "jiggling", "jiggler"}))
    return true;
  for (std::size_t i = 0; i + 1 < s.size(); ++i) {
    if (s[i].text == "pressure" && line::one_of(s[i + 1].text, {"can", "canned"})) return true;
    if (s[i].text == "turn" && s[i + 1].text == "off" &&
        !has_one_of(s, {"boil", "cook", "cover", "let", "add", "stir"}))
      return true;
  }
  if (has_one_of(s, {"jars", "them"}) && has_one_of(s, {"go", "give", "run", "cook"}) && minutes)
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
      // `cover the beans with boiling water` fills the jars.
      if (name == "boiling water" && at > 0 &&
          line::one_of(s[at - 1].text, {"with", "add", "pour", "of", "fresh", "more", "enough"}))
        continue;
      // `Water bath for 3 hours` speaks of jars without saying so.
      const bool clear = line::one_of(name, {"bwb", "hwb", "wb"}) ||
                         name.find(" canner") != std::string_view::npos ||
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

}  // namespace jarproof::detail
