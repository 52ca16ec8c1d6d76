// What one sentence of the directions is about: the table, the jars, what is not done; and which of
// its words decide. SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/mixture_parts.hpp"
#include "jarproof/detail/plan_lines.hpp"

namespace jarproof::detail {

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
  constexpr std::string_view no[] = {"no", "not", "never", "without", "omit", "skip", "don't"};
  constexpr std::string_view twice[] = {"no",  "not",   "never",   "nothing", "nobody",
                                        "nor", "don't", "neither", "cannot",  "can't"};
  if (at > 0 && line::one_of(sentence[at - 1].text, {"the", "any", "a"})) --at;
  if (at == 0 || !line::one_of(sentence[at - 1].text, no)) return false;
  // `Do not skip the rice`; `No rice until the last minute`, `Without rice it is dull, so add some`
  if (at > 1 && line::one_of(sentence[at - 1].text, {"omit", "skip"}) &&
      line::one_of(sentence[at - 2].text, {"not", "never", "don't"}))
    return false;
  if (std::any_of(sentence.begin(), sentence.end(), [](const line_token& t) {
        return line::one_of(t.text, {"until", "till", "unless", "but", "except", "so", "instead"});
      }))
    return false;
  // `It is nothing without rice`, `We never make it without rice`
  return sentence[at - 1].text != "without" ||
         std::none_of(sentence.begin(), sentence.begin() + static_cast<std::ptrdiff_t>(at) - 1,
                      [&](const line_token& t) { return line::one_of(t.text, twice); });
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

/// `no raw rice`, `do not add uncooked noodles`: cooked they may go in.
[[nodiscard]] inline bool is_one_state(const line_token& t) {
  return line::one_of(t.text, {"raw", "uncooked", "dry", "dried", "instant", "cooked", "plain",
                               "extra", "leftover", "too", "much"});
}

/// `they go in the jars`, `it is added to each jar`: what the sentence before it left out.
[[nodiscard]] inline bool comes_back(const std::vector<line_token>& sentence) {
  if (sentence.empty() ||
      !line::one_of(sentence.front().text, {"they", "it", "these", "those", "that", "which"}))
    return false;
  const auto has = [&](std::initializer_list<std::string_view> these) {
    return std::any_of(sentence.begin(), sentence.end(), [&](const line_token& t) {
      return std::find(these.begin(), these.end(), t.text) != these.end();
    });
  };
  return has({"go", "goes", "add", "added", "put"}) && !has({"not", "never", "serving", "table"});
}

/// `Do not add rice or pasta before canning`: foods that stay out, and nothing else in the
/// sentence.
[[nodiscard]] inline bool keeps_out(const edition& rules, const std::vector<line_token>& sentence) {
  const std::size_t start = !sentence.empty() && sentence[0].text == "do" ? 1 : 0;
  if (start + 1 >= sentence.size() ||
      !line::one_of(sentence[start].text, {"not", "never", "don't"}) ||
      !line::one_of(sentence[start + 1].text, {"add", "put", "use", "include"}))
    return false;
  std::size_t end = sentence.size();
  if (end > start + 4 && sentence[end - 2].text == "before" &&
      line::one_of(sentence[end - 1].text, {"canning", "processing"}))
    end -= 2;
  name_index names(rules, sentence);
  for (std::size_t at = start + 2; at < end;) {
    const name_match m = names.at(at, end, true);
    if (is_one_state(sentence[at])) return false;
    if (m.what == nullptr && !line::one_of(sentence[at].text, {"or", "and", "nor", "any", "the"}))
      return false;
    at = m.what == nullptr ? at + 1 : m.end;
  }
  return true;
}

/// `Put rice in the jar so it is ready to serve`, `Stir in cream before filling`: what goes into
/// the jar is not for the table.
[[nodiscard]] inline bool fills_jars(const std::vector<line_token>& sentence) {
  bool jar = false;
  for (std::size_t i = 0; i < sentence.size(); ++i) {
    const std::string& w = sentence[i].text;
    if (line::one_of(w, {"opened", "opening", "open"})) return false;
    jar = jar || line::one_of(w, {"jar", "jars", "frasco", "frascos"}) ||
          (w == "before" && i + 1 < sentence.size() &&
           line::one_of(sentence[i + 1].text,
                        {"filling", "canning", "processing", "jarring", "packing"}));
  }
  return jar;
}

/// True where a sentence begins or ends with the table or an opened jar: `To serve, stir in the
/// cream`, `add the noodles when serving`.
[[nodiscard]] inline bool is_about_serving(const std::vector<line_token>& sentence) {
  constexpr std::string_view words[] = {"serve", "serving", "served", "garnish", "table"};
  constexpr std::string_view doubts[] = {"as", "bowl", "bowls", "now", "rest", "some", "half"};
  const std::size_t size = sentence.size();
  if (fills_jars(sentence)) return false;
  const bool doubtful = std::any_of(sentence.begin(), sentence.end(), [&](const line_token& t) {
    return line::one_of(t.text, doubts);
  });
  if (doubtful) return false;
  // `Good with bread and butter`, `Add noodles when you reheat it`
  const bool work = std::any_of(sentence.begin(), sentence.end(), [](const line_token& t) {
    return line::one_of(t.text, {"can", "canning", "process", "pack", "pot", "before", "which", "i",
                                 "stirred", "put", "goes", "go", "cup", "cups"});
  });
  const auto first = [&](std::initializer_list<std::string_view> these) {
    return size > 2 && std::find(these.begin(), these.end(), sentence[0].text) != these.end();
  };
  if (!work && first({"good", "great", "delicious", "nice", "lovely"}) &&
      line::one_of(sentence[1].text, {"with", "over"}))
    return true;
  for (std::size_t i = 1; !work && first({"add", "stir", "cook"}) && i + 1 < size; ++i) {
    if (sentence[i].text != "when") continue;
    if (sentence[i + 1].text == "reheating" || sentence[i + 1].text == "eating") return true;
    if (sentence[i + 1].text == "you" && i + 2 < size &&
        line::one_of(sentence[i + 2].text, {"reheat", "eat"}))
      return true;
  }
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
  // `crushed tomatoes` are a food of their own; what else is crushed beside them is none.
  if (t.id == "crushed") {
    const auto alone = [&](std::size_t i) {
      return sentence[i].text == "crushed" &&
             (i + 1 == sentence.size() ||
              !line::one_of(sentence[i + 1].text,
                            {"tomato", "tomatoes", "garlic", "pineapple", "ice"}));
    };
    bool any = false;
    for (std::size_t i = 0; i < sentence.size(); ++i) any = any || alone(i);
    if (!any) return false;
  }
  if (t.check == "standing-unsaid" && p.held) return false;  // judged there
  if (!t.pack.empty() && (!p.pack || p.pack->text != t.pack)) return false;
  return t.beside.empty() ||
         std::any_of(sentence.begin(), sentence.end(), [&](const line_token& w) {
           return t.beside.contains(std::string_view(w.text));
         });
}

/// A word such as `meat` or `fruit`, which is what the list has.
[[nodiscard]] inline bool is_general_food(std::string_view id) {
  return line::one_of(id, {"meat", "mixed-vegetables", "bean", "soup-bones", "beef-roast",
                           "animal-fat", "fish", "poultry", "game-bird", "leafy-greens",
                           "root-vegetables", "game-meat", "whole-fruit-pieces"});
}

/// A food of its own, such as celery or shrimp; words such as `soup` or `vegetables` are what the
/// list has.
[[nodiscard]] inline bool is_low_acid_food(const edition& rules, const ingredient& i) {
  return i.kind == acidity::low_acid && !is_general_food(i.id) && !is_seasoning(rules, i) &&
         !is_liquid(rules, i) && !is_a(rules, i, "made-dish");
}

/// `the soup`, `the sauce`: what is in the pot.
[[nodiscard]] inline bool is_dish_word(const edition& rules, std::string_view name) {
  return line::one_of(name, {"soup", "stew", "sauce", "broth", "chili", "salsa", "relish"}) &&
         rules.heading_words.contains(name);
}

/// `Put everything in the pot`: what stands below `To serve:` goes in too.
[[nodiscard]] inline bool puts_all_in(const std::vector<line_token>& sentence) {
  bool all = false;
  bool vessel = false;
  bool put = false;
  for (const line_token& t : sentence) {
    if (line::one_of(t.text, {"serve", "serving", "opened", "opening", "except", "but"}))
      return false;
    all = all || line::one_of(t.text, {"everything", "all", "todo", "todos"});
    put = put || line::one_of(t.text, {"put", "stir", "combine", "mix", "throw", "ponga", "eche"});
    vessel = vessel || line::one_of(t.text, {"pot", "jar", "jars", "kettle", "olla", "frascos"});
  }
  return all && put && vessel;
}

/// `Process 75 minutes`, `Let the pressure fall to zero`: behind it the jars are closed and done.
[[nodiscard]] inline bool ends_process(const std::vector<line_token>& sentence) {
  const auto has = [&](std::initializer_list<std::string_view> these) {
    return std::any_of(sentence.begin(), sentence.end(), [&](const line_token& t) {
      return std::find(these.begin(), these.end(), t.text) != these.end();
    });
  };
  const bool minutes = has({"minutes", "minute", "min", "mins", "hour", "hours"});
  return (minutes && has({"process", "processed", "canner", "psi", "lb", "pounds", "bath"})) ||
         (has({"pressure", "canner"}) && has({"zero", "0", "down", "drop", "drops"}));
}

}  // namespace jarproof::detail
