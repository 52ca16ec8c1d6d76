// Sentences of the directions that name a fault or a food and mean none: jars that cool overnight,
// a dish that tastes better the next day, meat that is browned in a little fat.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/step_sentences.hpp"

namespace jarproof::detail {

/// `Cool on towels overnight`, `Check the seals next day`: jars that were processed may stand.
/// Not a second load, not what is left, and no food that a sentence names.
[[nodiscard]] inline bool is_about_closed_jars(const edition& rules,
                                               const std::vector<line_token>& s) {
  bool closed = false;
  bool it = false;
  for (std::size_t i = 0; i < s.size(); ++i) {
    const std::string& w = s[i].text;
    const bool day = i + 1 < s.size() && line::one_of(s[i + 1].text, {"day", "morning"});
    if (line::one_of(w, {"before", "fill",   "filling",     "filled", "ladle",     "then",
                         "pot",    "kettle", "load",        "loads",  "batch",     "other",
                         "others", "rest",   "second",      "half",   "remaining", "some",
                         "more",   "again",  "unprocessed", "food",   "contents",  "mixture"}) ||
        (w == "next" && !day))
      return false;
    it = it || w == "it";
    closed = closed || line::one_of(w, {"jars", "jar", "seal", "seals", "sealed", "towel", "towels",
                                        "rack", "boards", "drafts", "draft", "label", "lids",
                                        "rings", "bands", "em", "them"});
  }
  // `Cool overnight.` names nothing else that could cool.
  if (!closed && (it || s.empty() || s.front().text != "cool")) return false;
  name_index names(rules, s);
  for (std::size_t i = 0; i < s.size(); ++i) {
    const name_match m = names.at(i, s.size(), true);
    if (m.what != nullptr && m.what->id != "kitchen-utensil") return false;
    if (is_dish_word(rules, s[i].text)) return false;
  }
  return true;
}

/// `Even better the next day`: nothing that anybody does.
[[nodiscard]] inline bool is_about_taste(const std::vector<line_token>& sentence) {
  bool better = false;
  for (const line_token& t : sentence) {
    if (!line::one_of(t.text,
                      {"even",    "it",     "is",   "are", "tastes", "taste", "flavor",   "flavour",
                       "flavors", "better", "best", "the", "this",   "soup",  "stew",     "chili",
                       "always",  "on",     "next", "day", "a",      "after", "improves", "gets"}))
      return false;
    better = better || line::one_of(t.text, {"better", "best", "improves"});
  }
  return better;
}

/// `Simmer the bones overnight`: stock that cooks on does not stand.
[[nodiscard]] inline bool simmers_on(const std::vector<line_token>& sentence) {
  bool simmers = false;
  bool stock = false;
  for (const line_token& t : sentence) {
    if (line::one_of(t.text, {"off", "let", "leave", "left", "cool", "stand", "sit", "then", "keep",
                              "rest", "counter", "porch", "out"}))
      return false;
    simmers = simmers || line::one_of(t.text, {"simmer", "simmers", "simmering"});
    stock = stock || line::one_of(t.text, {"bones", "bone", "carcass", "carcasses", "stock"});
  }
  return simmers && stock;
}

/// `in a 4-gallon stock pot`: the vessel; `Add a stock pot` and `Stir in a stock pot` are bouillon.
[[nodiscard]] inline bool is_stock_pot(const std::vector<line_token>& s, const name_match& m,
                                       std::string_view name) {
  if (name != "stock pot" && name != "stock pots") return false;
  for (std::size_t at = m.from; at > 0; --at) {
    const std::string& w = s[at - 1].text;
    if (line::one_of(w, {"big", "deep", "gal", "gallon", "heavy", "large", "qt", "quart", "same"}))
      return true;
    if (line::one_of(w, {"in", "into", "to"})) return at < 2 || s[at - 2].text != "stir";
    if (!line::one_of(w, {"a", "the", "your", "stainless", "steel", "tall"})) return false;
  }
  return false;
}

/// `Trim off beet tops`: a part of a plant that is thrown away, and nothing else is done with it.
[[nodiscard]] inline bool is_thrown_away(const edition& rules, const std::vector<line_token>& s,
                                         const name_match& m) {
  if (m.what->kind != acidity::low_acid || !is_listed(rules.phrases.waste, s[m.end - 1].text))
    return false;
  std::size_t at = m.from;
  if (at > 0 && s[at - 1].text == "the") --at;
  const bool off = at > 1 && s[at - 1].text == "off" &&
                   line::one_of(s[at - 2].text, {"cut", "pull", "trim", "twist"});
  if (!off && (at == 0 || s[at - 1].text != "discard")) return false;
  return std::none_of(s.begin(), s.end(), [](const line_token& t) {
    return line::one_of(t.text,
                        {"add", "chop", "cook", "fill", "jar", "jars", "keep", "not", "pack", "put",
                         "reserve", "save", "stir", "then", "up", "use", "with"});
  });
}

/// Words of the work that are names of food elsewhere: to poke, to skim, a potato masher, a
/// butter knife, `put the chicken back in`.
[[nodiscard]] inline bool is_handling(const std::vector<line_token>& s, const name_match& m,
                                      std::string_view name) {
  if (line::one_of(name, {"poke", "skim", "mince", "roaster", "cooking liquid"})) return true;
  if (is_stock_pot(s, m, name)) return true;
  if (m.end >= s.size()) return false;
  if (line::one_of(s[m.end].text, {"masher", "knife", "peeler"})) return true;
  return m.end > m.from + 1 && s[m.end - 1].text == "back" &&
         line::one_of(s[m.end].text, {"in", "into", "to", "on"});
}

/// `Brown the meat in a little oil`: as the directions for meat have it. A recipe that was tested
/// prints its own fat.
[[nodiscard]] inline bool browns_in(const edition& rules, const std::vector<line_token>& s,
                                    const ingredient& i) {
  if (!is_a(rules, i, "fat") || is_a(rules, i, "dairy")) return false;
  return has_one_of(s, {"brown", "browned", "sear", "seared"}) &&
         has_one_of(s, {"little", "small", "bit"}) &&
         !has_one_of(s, {"add", "jar", "jars", "then", "more", "keep", "pour", "cup", "cups"});
}

/// Words for what is in the pot or around it.
[[nodiscard]] inline bool is_thing_at_hand(std::string_view w) {
  return line::one_of(
      w, {"juice", "juices", "liquid", "liquids", "skins", "ingredients", "everything", "tapas",
          "tapa", "olla", "frascos", "frasco", "tarros", "aros", "fuego"});
}

}  // namespace jarproof::detail
