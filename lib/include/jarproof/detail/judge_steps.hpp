// The directions of a recipe: words that decide by themselves, such as `thicken` or `puree`, and
// things that the list of ingredients does not have. Nothing in the directions makes up for a fact
// that the plan leaves unsaid.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/judge_mixture.hpp"
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

/// `Put rice in the jar so it is ready to serve`: what goes into the jar is not for the table.
[[nodiscard]] inline bool fills_jars(const std::vector<line_token>& sentence) {
  bool jar = false;
  bool fill = false;
  for (const line_token& t : sentence) {
    if (line::one_of(t.text, {"opened", "opening", "open"})) return false;
    jar = jar || line::one_of(t.text, {"jar", "jars", "frasco", "frascos"});
    fill = fill || line::one_of(t.text, {"put", "fill", "pack", "ladle", "ponga", "llene"});
  }
  return jar && fill;
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

/// Reads the sentences of the directions, and the title, which is a sentence too.
class step_reader {
 public:
  /// `food` is the process that the plan follows, or null.
  step_reader(judging& j, const process* food)
      : j_(j),
        tested_(food != nullptr && !food->recipes.empty()),
        acid_(food != nullptr && food->kind == food_class::acid),
        lines_(read_lines(j)) {}

  void read(const word& text, std::string_view field) {
    for (const std::vector<line_token>& s : sentences_of(text.text)) {
      find_telling(text, field, s);
      processed_ = processed_ || (field == "steps" && ends_process(s));
      if (is_about_serving(s) || lines_.empty()) continue;
      find_foods(text, field, s);
      const auto served = std::find_if(lines_.begin(), lines_.end(),
                                       [](const plan_line& l) { return l.for_table; });
      if (served != lines_.end() && puts_all_in(s))
        j_.say("step-names-unlisted", place_of(field, text),
               {text.text, {}, "everything, and so of \"" + served->said->text + "\"", {}, {}});
      if (field == "steps") find_unknown(text, s);
    }
  }

  /// A title of the cook's own dish: what it names is in the pot. The title of a published food
  /// names that food.
  void read_title(const word& title) {
    if (j_.what.food || tested_ || lines_.empty()) return;
    read(title, "title");
    constexpr std::string_view telling[] = {"creamy", "thick",  "bisque", "smoked", "cured",
                                            "corned", "espesa", "crema",  "pickled"};
    for (const line_token& t : tokens_of(plain_line(title.text))) {
      if (!line::one_of(t.text, telling) || is_in_a_line(t.text)) continue;
      j_.say("step-names-unlisted", place_of("title", title),
             {title.text, {}, "\"" + t.text + "\"", {}, {}});
    }
  }

 private:
  judging& j_;
  bool tested_;
  bool acid_;
  std::vector<plan_line> lines_;
  bool processed_ = false;  // a sentence before this one was about the process

  /// `Cool on towels overnight`, `Check the seals next day`: jars that were processed may stand.
  /// Not a second load, not what is left, and no food that a sentence names.
  [[nodiscard]] bool is_about_closed_jars(const std::vector<line_token>& s) const {
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
      closed = closed || line::one_of(w, {"jars", "jar", "seal", "seals", "sealed", "towel",
                                          "towels", "rack", "boards", "drafts", "draft", "label",
                                          "lids", "rings", "bands", "em", "them"});
    }
    // `Cool overnight.` names nothing else that could cool.
    if (!closed && (it || s.empty() || s.front().text != "cool")) return false;
    name_index names(j_.rules, s);
    for (std::size_t i = 0; i < s.size(); ++i) {
      const name_match m = names.at(i, s.size(), true);
      if (m.what != nullptr && m.what->id != "kitchen-utensil") return false;
      if (is_dish_word(j_.rules, s[i].text)) return false;
    }
    return true;
  }

  [[nodiscard]] bool is_in_a_line(std::string_view w) const {
    return std::any_of(lines_.begin(), lines_.end(), [&](const plan_line& l) {
      const std::vector<line_token> words = tokens_of(plain_line(l.said->text));
      return std::any_of(words.begin(), words.end(),
                         [&](const line_token& t) { return t.text == w; });
    });
  }

  /// What stands below `To serve:` is not listed for a sentence that puts it in the pot.
  [[nodiscard]] bool is_listed(const ingredient& i, bool in_pot) const {
    return std::any_of(lines_.begin(), lines_.end(), [&](const plan_line& l) {
      if (l.reading.at_serving && in_pot) return false;
      bool same = false;
      each_ingredient(l, [&](const ingredient& other) {
        same = same || &most_general(j_.rules, other) == &most_general(j_.rules, i);
        // `the flour` of the steps is any flour of the list.
        const std::string_view ban = ban_on(j_.rules, i);
        same = same || (!ban.empty() && ban == ban_on(j_.rules, other));
      });
      return same;
    });
  }

  /// A published recipe is thickened, pressed and put aside as it was tested; one of an acid food
  /// also soaks overnight and cooks down slowly.
  [[nodiscard]] bool is_tested_work(const telling_word& t) const {
    if (line::one_of(t.check, {"low-acid-puree", "thickener-in-jar", "too-dense", "fat-in-jar"}))
      return true;
    return acid_ && t.check != "steps-against-plan";
  }

  void find_telling(const word& text, std::string_view field, const std::vector<line_token>& s) {
    for (const list<telling_word>& words : {j_.rules.telling_words, j_.rules.step_words}) {
      if (words.begin() == j_.rules.step_words.begin() && forbids(s)) continue;
      for (const telling_word& t : words) {
        if (tested_ && is_tested_work(t)) continue;
        if (!decides(j_.what, s, t)) continue;
        if (t.check == "low-acid-puree" && acid_) continue;
        if (t.check == "standing-unsaid" && (processed_ || ends_process(s)) &&
            is_about_closed_jars(s))
          continue;
        j_.say(t.check, place_of(field, text),
               {text.text,
                "none of it",
                (field == "title" ? "The title says \"" : "The directions say \"") +
                    std::string(t.id) + "\".",
                {},
                {}});
      }
    }
  }

  void find_foods(const word& text, std::string_view field, const std::vector<line_token>& s) {
    const bool in_pot = std::any_of(s.begin(), s.end(), [](const line_token& t) {
      return line::one_of(t.text, {"pot", "jar", "jars", "stir", "kettle", "olla", "frascos"});
    });
    name_index names(j_.rules, s);
    for (std::size_t from = 0; from < s.size();) {
      const name_match m = names.at(from, s.size(), false);
      from = m.what == nullptr ? from + 1 : m.end;
      if (m.what == nullptr) continue;
      if (is_listed(*m.what, in_pot) || is_denied(s, m.from)) continue;
      if (field == "title" && !tells_in_title(*m.what)) continue;
      if (ban_on(j_.rules, *m.what).empty() && (tested_ || !is_low_acid_food(j_.rules, *m.what)))
        continue;
      const std::string name = words_between(s, m.from, m.end);
      // Fat is skimmed from every soup, a date stands on labels, to dip is a verb, and `the stew`
      // is this dish.
      if (line::one_of(name, {"fat", "grasa", "date", "dip"}) || is_dish_word(j_.rules, name) ||
          is_handling(s, m, name))
        continue;
      j_.say("step-names-unlisted", place_of(field, text),
             {text.text, {}, "\"" + name + "\"", {}, {}});
    }
  }

  /// Words of the work that are names of food elsewhere: to poke, to skim, a potato masher, a
  /// butter knife, `put the chicken back in`.
  [[nodiscard]] static bool is_handling(const std::vector<line_token>& s, const name_match& m,
                                        std::string_view name) {
    if (line::one_of(name, {"poke", "skim", "mince", "roaster", "cooking liquid"})) return true;
    if (m.end >= s.size()) return false;
    if (line::one_of(s[m.end].text, {"masher", "knife", "peeler"})) return true;
    return m.end > m.from + 1 && s[m.end - 1].text == "back" &&
           line::one_of(s[m.end].text, {"in", "into", "to", "on"});
  }

  /// A dish says little of what is in it, and a title names beans and meat at large: only what may
  /// not be in a jar counts there, and seafood, which takes longer.
  [[nodiscard]] bool tells_in_title(const ingredient& i) const {
    if (is_a(j_.rules, i, "made-dish")) return line::one_of(i.id, {"noodle-soup", "cream-soup"});
    return !ban_on(j_.rules, i).empty() || is_a(j_.rules, i, "seafood");
  }

  /// `Add Mehl`, `Eche migas`: a thing put in that nobody knows.
  void find_unknown(const word& text, std::vector<line_token> s) {
    constexpr std::string_view verbs[] = {"add",    "agregue", "agrega", "agregar", "anada",
                                          "anadir", "ponga",   "poner",  "eche",    "echar"};
    constexpr std::string_view ends[] = {"to",   "into", "until", "for", "when", "on",   "in",
                                         "from", "so",   "then",  "al",  "a",    "en",   "hasta",
                                         "que",  "if",   "as",    "at",  "or",   "with", "para"};
    if (tested_) return;
    line::spell_out(j_.rules, s);
    name_index names(j_.rules, s);
    for (std::size_t i = 0; i + 1 < s.size(); ++i) {
      const bool stir = s[i].text == "stir" && s[i + 1].text == "in";
      if (!stir && !line::one_of(s[i].text, verbs)) continue;
      if (is_denied(s, i)) continue;
      std::size_t at = i + (stir ? 2 : 1);
      if (at < s.size() && s[at].text == "in" && !stir) ++at;
      while (at < s.size() && line::one_of(s[at].text, {"a", "al"})) ++at;
      for (const std::size_t last = std::min(s.size(), at + 6); at < last;) {
        if (line::one_of(s[at].text, ends) || s[at].segment != s[i].segment) break;
        const name_match m = names.at(at, s.size(), true);
        if (m.what != nullptr) {
          at = m.end;
          continue;
        }
        if (!is_known_word(s[at].text)) {
          j_.say("step-names-unlisted", place_of("steps", text),
                 {text.text, {}, "\"" + s[at].text + "\"", {}, {}});
          break;
        }
        ++at;
      }
    }
  }

  [[nodiscard]] bool is_known_word(const std::string& w) const {
    const auto is_word_of = [&](const telling_word& t) { return t.id == w; };
    return w.size() < 3 || !line::is_letter(w.front()) || is_line_word(j_.rules, w) ||
           j_.rules.heading_words.contains(std::string_view(w)) || line::is_size(w) ||
           j_.rules.cut_words.contains(std::string_view(w)) || unit_named(w) != nullptr ||
           j_.rules.acid_words.contains(std::string_view(w)) || is_dish_word(j_.rules, w) ||
           is_thing_at_hand(w) || is_in_a_line(w) ||
           std::any_of(j_.rules.telling_words.begin(), j_.rules.telling_words.end(), is_word_of);
  }

  [[nodiscard]] bool is_thing_at_hand(std::string_view w) const {
    return line::one_of(
        w, {"juice", "juices", "liquid", "liquids", "skins", "ingredients", "everything", "tapas",
            "tapa", "olla", "frascos", "frasco", "tarros", "aros", "fuego"});
  }
};

/// Says what the directions and the title have against the plan. `food` is the process that it
/// follows, or null.
inline void judge_steps(judging& j, const process* food) {
  if (j.what.steps.empty() && !j.what.title) return;
  step_reader reader(j, food);
  for (const word& step : j.what.steps) reader.read(step, "steps");
  if (j.what.title) reader.read_title(*j.what.title);
}

}  // namespace jarproof::detail
