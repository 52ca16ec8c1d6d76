// Words that are plain beside one food and change another: `ground` beside beef is a cut, beside
// corn it is meal. They stand here and not in the rule folder: no folder may forget one.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <initializer_list>
#include <string>
#include <string_view>

#include "jarproof/detail/ingredient_facts.hpp"
#include "jarproof/detail/line_state.hpp"

namespace jarproof::detail::line {

/// Finds what the main food of a line is, and the words that make something else of it. Such a word
/// is strange, so that the line asks.
class doubts {
 public:
  explicit doubts(state& s) : s_(s), food_(*s.out.what) {
    const edition& rules = s.rules;
    const std::string_view id = most_general(rules, food_).id;
    const auto holds = [&](std::string_view part) {
      return food_.id.find(part) != std::string_view::npos;
    };
    meat_ = is_a(rules, food_, "meat") || is_a(rules, food_, "poultry");
    broth_ = is_a(rules, food_, "broth");
    const bool seasoning = is_a(rules, food_, "spice") || is_a(rules, food_, "fresh-herb") ||
                           is_a(rules, food_, "condiment");
    solid_ = !seasoning && !broth_ && food_.kind == acidity::low_acid &&
             !is_a(rules, food_, "liquid") && !is_a(rules, food_, "seafood");
    plant_ = solid_ && !meat_;
    legume_ = is_a(rules, food_, "dried-legume") || is_a(rules, food_, "rehydrated-legume");
    corn_ = plant_ && holds("corn");
    potato_ = plant_ && (holds("potato") || one_of(id, {"taro", "cassava", "yam"}));
    starchy_ = plant_ && (legume_ || corn_ || potato_ || holds("pea") || holds("bean"));
    onion_ = plant_ && holds("onion");
    tomato_ = id == "tomato";
    squash_ = plant_ && (holds("squash") || holds("pumpkin"));
  }

  void run() {
    if (!ban_on(s_.rules, food_).empty()) return;
    constexpr std::string_view cuts[] = {"slice",  "slices", "sliced", "cut",    "inch",  "inches",
                                         "cm",     "mm",     "strips", "rounds", "cubes", "cubed",
                                         "chunks", "pieces", "coins",  "diced",  "in"};
    is_cut_ = std::any_of(s_.tokens.begin(), s_.tokens.end(), [&](const line_token& t) {
      return one_of(t.text, cuts) || is_size(t.text);
    });
    for (std::size_t i = 0; i < s_.size(); ++i) {
      if (s_.uses[i] == use::name || s_.uses[i] == use::other) continue;
      if (changes(i)) s_.out.strange.push_back(s_.text(i));
    }
    // `1 box potato` is dried and comes in flakes.
    for (const std::string_view unit : {"box", "packet", "package", "pkg", "envelope"}) {
      if (potato_ && s_.out.amount_text.find(unit) != std::string::npos)
        s_.out.strange.emplace_back(unit);
    }
    // `1 loaf pumpkin` is a cake.
    if (s_.out.amount_text.find("loaf") != std::string::npos &&
        food_.id.find("bread") == std::string_view::npos)
      s_.out.strange.emplace_back("loaf");
    // `1 slab of pork`: what is counted names the piece.
    for (const std::string_view unit : {"slab", "stick", "sheet", "link", "ring", "pat", "head"}) {
      if (meat_ && s_.out.amount_text.find(unit) != std::string::npos)
        s_.out.strange.emplace_back(unit);
    }
  }

 private:
  state& s_;
  const ingredient& food_;
  bool meat_ = false;
  bool broth_ = false;
  bool solid_ = false;
  bool plant_ = false;
  bool legume_ = false;
  bool corn_ = false;
  bool potato_ = false;
  bool starchy_ = false;
  bool onion_ = false;
  bool tomato_ = false;
  bool squash_ = false;
  bool is_cut_ = false;

  [[nodiscard]] bool said(std::initializer_list<std::string_view> words) const {
    return std::any_of(s_.tokens.begin(), s_.tokens.end(), [&](const line_token& t) {
      return std::find(words.begin(), words.end(), t.text) != words.end();
    });
  }

  [[nodiscard]] std::string_view before(std::size_t i) const {
    return i > 0 ? std::string_view(s_.text(i - 1)) : std::string_view();
  }

  [[nodiscard]] std::string_view behind(std::size_t i) const {
    return i + 1 < s_.size() ? std::string_view(s_.text(i + 1)) : std::string_view();
  }

  /// `cut to pieces`
  [[nodiscard]] bool is_cut_before(std::size_t i) const {
    return i > 1 && one_of(s_.text(i - 2), {"cut", "chopped", "broken", "snapped", "sliced"});
  }

  [[nodiscard]] bool changes(std::size_t i) const {
    const std::string& w = s_.text(i);
    if (w == "browning" && !one_of(before(i), {"for", "before", "after", "when", "prevent"}))
      return solid_ || broth_;
    if ((solid_ || broth_ || tomato_) && is_dense(i)) return true;
    if (starchy_ && is_meal(w, i)) return true;
    if (plant_ && is_soft(w, i)) return true;
    const bool root = plant_ && one_of(food_.id, {"beet", "carrot", "turnip", "radish", "parsnip"});
    if ((potato_ || onion_ || tomato_ || corn_ || legume_ || root || food_.id == "green-pea") &&
        one_of(w, {"leaf", "leaves", "stems", "stalk", "stalks", "tops", "vines"}) && s_.is_free(i))
      return true;
    if (food_.id == "green-pea" && one_of(w, {"pod", "pods"}))
      return !said({"shelled", "shell", "shucked"});
    if (meat_ && is_other_meat(w, i)) return true;
    if (meat_ && is_too_large(w)) return true;
    if ((meat_ || broth_) && is_old(w, i)) return true;
    if (tomato_ && w == "tart") return true;
    if (food_.id == "green-bean" && w == "shelled") return true;
    if (food_.id == "green-mango" && one_of(w, {"ripe", "ripened", "ripest", "soft", "yellow"}))
      return !one_of(before(i), {"not", "before", "yet"});
    if (broth_ && one_of(w, {"undrained", "set", "foam", "layer", "curdle", "gone", "ball", "balls",
                             "jelled"}))
      return behind(i) != "aside";
    return false;
  }

  /// `thick broth`; `cut in thick slices` is a cut.
  [[nodiscard]] bool is_dense(std::size_t i) const {
    const std::string& w = s_.text(i);
    if (one_of(w, {"thick", "thickly", "thickness"})) return !is_cut_ && behind(i) != "skinned";
    // `not skimmed` leaves the fat where it is.
    if (one_of(w, {"skimmed", "strained", "defatted"}) && one_of(before(i), {"not", "never"}))
      return broth_ || meat_;
    return false;
  }

  /// Starchy food that is dry and fine, or crisp: meal, flakes, chips.
  [[nodiscard]] bool is_meal(const std::string& w, std::size_t i) const {
    constexpr std::string_view meal[] = {
        "ground", "flaked", "powdered", "cracked", "hulled",      "toasted",    "tostado",
        "mealy",  "sifted", "crumbled", "slaked",  "microplaned", "tostaditos", "tostados",
        "crisp",  "molido", "chips",    "crushed", "ball",        "balls",      "crumbly"};
    if (one_of(w, meal)) return true;
    if (w == "grain") return before(i) != "whole";
    if (legume_ && one_of(w, {"hard", "firm", "chewy"})) return true;
    if (legume_ && one_of(w, {"minced", "grated"})) return true;
    if ((corn_ || potato_) && one_of(w, {"grated", "shredded", "minced"})) return true;
    if (potato_ && one_of(w, {"stick", "ring", "baked"})) return true;
    return corn_ && one_of(w, {"round", "rounds", "triangles", "strips", "stick", "sticks",
                               "sheets", "stack", "scraped", "worked"});
  }

  /// A vegetable that is no longer in pieces.
  [[nodiscard]] bool is_soft(const std::string& w, std::size_t i) const {
    if (one_of(w, {"melted", "worked", "crumbled", "flaked", "wrapped", "bundled", "juiced",
                   "powdered"}))
      return true;
    // `until falling apart`, `cooked to pieces`
    if (w == "apart") return one_of(before(i), {"fall", "falls", "falling"});
    if (w == "pieces" && before(i) == "to") return !is_cut_before(i);
    if (squash_ && one_of(w, {"grated", "ground", "shredded", "baked", "scooped"})) return true;
    if (w == "pressed") return food_.id.find("garlic") == std::string_view::npos;
    if (onion_ && one_of(w, {"crisp", "ball", "balls", "toasted", "powdered"})) return true;
    if (w == "bits") return before(i) == "to";
    if (w == "tart") return food_.id.find("apple") == std::string_view::npos;
    if (w == "fist") return true;
    if (w == "jar") return before(i) == "the" && said({"tall"});
    return w == "whole" && !is_cut_ && said({"large", "huge", "jumbo", "giant", "big"});
  }

  [[nodiscard]] bool is_other_meat(const std::string& w, std::size_t i) const {
    if (food_.id.find("sausage") != std::string_view::npos) return false;
    constexpr std::string_view parts[] = {
        "head",      "heads",  "heart",   "hearts",  "ear",     "ears",     "eyes",
        "stick",     "sticks", "rings",   "link",    "links",   "sheet",    "sheets",
        "undrained", "dipped", "rolled",  "wrapped", "stacked", "shavings", "crisp",
        "bits",      "bit",    "strings", "flaked",  "crumble", "drops"};
    if (one_of(w, parts)) return w != "bits" || before(i) != "sized";
    const bool half = one_of(w, {"barely", "partially", "partly", "hardly"});
    if (half && one_of(behind(i), {"cooked", "browned", "done"})) return true;
    if (w == "raw" && before(i) == "still") return true;
    return w == "middle" && said({"raw", "uncooked", "pink", "rare"});
  }

  [[nodiscard]] bool is_too_large(const std::string& w) const {
    if (w == "fist") return true;
    const bool bird = is_a(s_.rules, food_, "poultry") || food_.id == "rabbit" ||
                      food_.id == "hare" || food_.id == "squirrel";
    if (w == "whole") return !bird && !is_cut_;
    if (one_of(w, {"ball", "balls"}) && food_.id.find("ground") == std::string_view::npos)
      return true;
    return one_of(w, {"piece", "chunk"}) && said({"one"}) &&
           !said({"cut", "cubed", "diced", "sliced", "chopped"});
  }

  /// Meat or broth that was kept, nobody knows how.
  [[nodiscard]] bool is_old(const std::string& w, std::size_t i) const {
    constexpr std::string_view kept[] = {"week",   "weeks",  "garage", "porch",    "car",
                                         "bench",  "cellar", "noon",   "bubbling", "slimy",
                                         "smells", "smell",  "oldest", "truck",    "dirty"};
    if (one_of(w, kept)) return true;
    if (w == "old") return !is_a(s_.rules, food_, "poultry");
    if (w == "days" || w == "day") return !said({"aged", "hung", "refrigerated", "before"});
    if (w == "night") return before(i) == "last";
    if (w == "twice") return said({"thawed", "frozen"});
    if (w == "out") return before(i) == "left" || before(i) == "sat" || before(i) == "set";
    return w == "off" &&
           (before(i) == "slightly" || before(i) == "bit" || before(i) == "gone" ||
            before(i) == "little" || (s_.segment_begin(i) == i && s_.segment_end(i) == i + 1));
  }
};

}  // namespace jarproof::detail::line
