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

/// True where the words of `id`, one after the other, stand in the sentence at word `from` or
/// behind it; `at` is the first of them.
[[nodiscard]] inline bool stands_in(const std::vector<line_token>& sentence, std::string_view id,
                                    std::size_t& at, std::size_t from = 0) {
  std::size_t width = 1;
  for (const char c : id) width += c == ' ' ? 1 : 0;
  for (at = from; at + width <= sentence.size(); ++at) {
    if (words_between(sentence, at, at + width) == id) return true;
  }
  return false;
}

/// Where the `not` stands in `Do not puree`, `Caution: Never add flour`; the size of the sentence
/// where it does not begin so.
[[nodiscard]] inline std::size_t forbidding_word(const std::vector<line_token>& sentence) {
  std::size_t at = 0;
  if (sentence.size() > 1 && line::one_of(sentence[0].text, {"caution", "important", "note",
                                                             "please", "remember", "warning"}))
    ++at;
  if (at < sentence.size() && sentence[at].text == "do") ++at;
  const bool no =
      at + 1 < sentence.size() && line::one_of(sentence[at].text, {"not", "never", "don't"});
  return no ? at : sentence.size();
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

/// `Do not mash or puree`: the second of two things that a sentence forbids.
[[nodiscard]] inline bool is_forbidden_too(const std::vector<line_token>& sentence,
                                           std::size_t at) {
  const std::size_t no = forbidding_word(sentence);
  return at == no + 3 && at < sentence.size() &&
         line::one_of(sentence[at - 1].text, {"or", "nor"}) &&
         sentence[no].segment == sentence[at].segment && is_denied(sentence, no + 1);
}

/// `Do not puree all of it`, `Never mash it completely`: some of it is. What is forbidden stands at
/// word `at`.
[[nodiscard]] inline bool forbids_a_part(const std::vector<line_token>& sentence, std::size_t at) {
  for (std::size_t i = at + 1; i < sentence.size(); ++i) {
    const std::string_view before = sentence[i - 1].text;
    const std::string_view next =
        i + 1 < sentence.size() ? sentence[i + 1].text : std::string_view();
    if (sentence[i].text == "all" && before != "at" && next != "purpose") return true;
    if (line::one_of(sentence[i].text,
                     {"completely", "entire", "entirely", "every", "everything", "fully", "half",
                      "more", "most", "much", "too", "totally", "whole"}))
      return true;
  }
  return false;
}

/// `Do not fill the jars to the brim`, `Never turn them upside down`: what is not done to the jars.
[[nodiscard]] inline bool forbids(const std::vector<line_token>& sentence) {
  const std::size_t start = forbidding_word(sentence);
  if (start + 1 >= sentence.size() ||
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

/// `they go in the jars`, `Add it to each jar`: what the sentence before it left out.
[[nodiscard]] inline bool comes_back(const std::vector<line_token>& sentence) {
  const auto is_it = [&](std::size_t at) {
    return at < sentence.size() && line::one_of(sentence[at].text, {"they", "it", "these", "those",
                                                                    "that", "which", "them"});
  };
  bool told = false;
  for (std::size_t i = 0; i + 1 < sentence.size(); ++i)
    told = told || (is_it(i + 1) && line::one_of(sentence[i].text, {"add", "put"}));
  return (is_it(0) || told) && has_one_of(sentence, {"go", "goes", "add", "added", "put"}) &&
         !has_one_of(sentence, {"not", "never", "serving", "table"});
}

/// `Do not add rice or pasta before canning`, `Do not add noodles, flour or other thickening agents
/// to home canned soups`: foods that stay out, and nothing else in the sentence.
[[nodiscard]] inline bool keeps_out(const edition& rules, const std::vector<line_token>& sentence) {
  const std::size_t no = forbidding_word(sentence);
  if (no + 1 >= sentence.size()) return false;
  const bool thickens = sentence[no + 1].text == "thicken" && no + 2 < sentence.size() &&
                        sentence[no + 2].text == "with";
  if (!thickens && !line::one_of(sentence[no + 1].text, {"add", "put", "use", "include"}))
    return false;
  const std::size_t first = no + (thickens ? 3 : 2);
  std::size_t end = sentence.size();
  if (end > first + 2 && sentence[end - 2].text == "before" &&
      line::one_of(sentence[end - 1].text, {"canning", "processing"}))
    end -= 2;
  std::size_t dish = end;  // of `to home canned soups`
  while (dish > first &&
         line::one_of(sentence[dish - 1].text, {"soup", "soups", "canned", "home", "the", "your"}))
    --dish;
  if (dish < end && dish > first + 1 && sentence[dish - 1].text == "to") end = dish - 1;
  name_index names(rules, sentence);
  for (std::size_t at = first; at < end;) {
    const name_match m = names.at(at, end, true);
    if (is_one_state(sentence[at])) return false;
    // `Do not use other thickeners`: one of them is used.
    const bool other = at > first && sentence[at].text == "other" &&
                       line::one_of(sentence[at - 1].text, {"or", "and", "nor"});
    if (m.what == nullptr && !other &&
        !line::one_of(sentence[at].text, {"or", "and", "nor", "any", "the", "thickening", "agents",
                                          "agent", "thickener", "thickeners"}))
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
  // `Great on tacos`; `Great on its own, with rice in it`
  const bool inside = std::any_of(sentence.begin(), sentence.end(), [](const line_token& t) {
    return line::one_of(t.text, {"in", "into", "inside", "added"});
  });
  if (!work && first({"good", "great", "delicious", "nice", "lovely"}) &&
      (line::one_of(sentence[1].text, {"with", "over"}) || (sentence[1].text == "on" && !inside)))
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
  if (t.unless.contains(std::string_view("not")) && !forbids_a_part(sentence, at) &&
      (is_denied(sentence, at) || is_forbidden_too(sentence, at)))
    return true;
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
  // `Do not puree the carrots, puree the beans`: each time that it stands there.
  bool said = false;
  std::size_t at = 0;
  for (std::size_t from = 0; !said && stands_in(sentence, t.id, at, from); from = at + 1)
    said = !is_taken_back(sentence, at, t);
  if (!said) return false;
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
  const bool minutes = has_one_of(sentence, {"minutes", "minute", "min", "mins", "hour", "hours"});
  return (minutes && has_one_of(sentence, {"process", "processed", "canner", "psi", "lb", "pounds",
                                           "bath"})) ||
         (has_one_of(sentence, {"pressure", "canner"}) &&
          has_one_of(sentence, {"zero", "0", "down", "drop", "drops"}));
}

}  // namespace jarproof::detail
