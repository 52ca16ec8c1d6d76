// The directions of a recipe: words that decide by themselves, such as `thicken` or `puree`, and
// things that the list of ingredients does not have. Nothing in the directions makes up for a fact
// that the plan leaves unsaid.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/harmless_sentences.hpp"
#include "jarproof/detail/judge_food.hpp"
#include "jarproof/detail/own_words.hpp"
#include "jarproof/detail/step_sentences.hpp"

namespace jarproof::detail {

/// Reads the sentences of the directions, and the title, which is a sentence too.
class step_reader {
 public:
  /// `food` is the process that the plan follows, or null.
  step_reader(judging& j, const process* food)
      : j_(j),
        food_(food),
        tested_(food != nullptr && !food->recipes.empty()),
        acid_(food != nullptr && food->kind == food_class::acid),
        lines_(read_lines(j)) {}

  void read(const word& text, std::string_view field) {
    for (const std::vector<line_token>& s : sentences_of(text.text)) {
      find_telling(text, field, s);
      processed_ = processed_ || (field == "steps" && ends_process(s));
      if (is_about_serving(s)) continue;
      if (left_out_ && comes_back(s))
        j_.say("step-names-unlisted", place_of(field, text),
               {text.text, {}, "\"" + s.front().text + "\"", {}, {}});
      find_foods(text, field, s);
      const auto served = std::find_if(lines_.begin(), lines_.end(),
                                       [](const plan_line& l) { return l.for_table; });
      if (served != lines_.end() && puts_all_in(s))
        j_.say("step-names-unlisted", place_of(field, text),
               {text.text, {}, "everything, and so of \"" + served->said->text + "\"", {}, {}});
      if (field == "steps") find_unknown(text, s);
      before_ = s;
    }
  }

  /// A title of the cook's own dish: what it names is in the pot. The title of a published food
  /// names that food, and what else it names is asked about: `Clam chowder` beside `soups`. So is
  /// what the fresh food of `from` is.
  void read_title(const word& title, std::string_view field) {
    std::vector<line_token> s = tokens_of(plain_line(title.text));
    const std::string other = field == "title" ? other_food_in(s) : std::string();
    const bool plain = food_ != nullptr && food_->recipe == recipe_kind::plain;
    if (plain && j_.what.food) {
      // `white peaches` are not peaches, so that the name stays whole.
      s.erase(std::find_if(s.begin(), s.end(), [](const line_token& t) { return t.text == "for"; }),
              s.end());
      find_foods(title, field, s);
    }
    if (j_.what.food || tested_ || lines_.empty()) take_out_food(s);
    // Without lines nothing else says what is in the jar.
    if (!tested_ || lines_.empty()) find_telling(title, field, s);
    if (!plain || !j_.what.food) find_foods(title, field, s);
    for (const line_token& t : s) {  // what is left of `Green bean soup`
      if (plain && j_.what.food &&
          line::one_of(t.text, {"soup", "stew", "chili", "salsa", "relish"}) && !is_stock(food_))
        j_.say("step-names-unlisted", place_of(field, title),
               {title.text, {}, "\"" + t.text + "\"", {}, {}});
    }
    if (!other.empty())
      j_.say("step-names-unlisted", place_of(field, title),
             {title.text, {}, "\"" + other + "\"", {}, {}});
    for (const std::string_view phrase : j_.rules.phrases.titles) {
      std::size_t at = 0;
      if (!stands_in(s, phrase, at) || is_denied(s, at) || is_in_a_line(phrase)) continue;
      if (phrase == "pickled" && is_pickle(food_)) continue;
      j_.say("step-names-unlisted", place_of(field, title),
             {title.text, {}, "\"" + std::string(phrase) + "\"", {}, {}});
    }
  }

 private:
  judging& j_;
  const process* food_;
  bool tested_;
  bool acid_;
  std::vector<plan_line> lines_;
  bool processed_ = false;          // a sentence before this one was about the process
  bool left_out_ = false;           // the last sentence about food named some that stays out
  std::vector<line_token> before_;  // the sentence before this one

  [[nodiscard]] bool is_in_a_line(std::string_view w) const {
    return std::any_of(lines_.begin(), lines_.end(), [&](const plan_line& l) {
      const std::vector<line_token> words = tokens_of(plain_line(l.said->text));
      return std::any_of(words.begin(), words.end(),
                         [&](const line_token& t) { return t.text == w; });
    });
  }

  /// What stands below `To serve:` is not listed for a sentence that puts it in the pot.
  /// `the squash` is the butternut squash of the list, as long as it may be in a jar at all.
  [[nodiscard]] bool is_listed(const ingredient& i, std::string_view name, bool in_pot) const {
    const bool harmless = ban_on(j_.rules, i).empty() && !is_a(j_.rules, i, "seafood");
    const std::string last = " " + std::string(name);
    return std::any_of(lines_.begin(), lines_.end(), [&](const plan_line& l) {
      if (l.reading.at_serving && in_pot) return false;
      const std::string& listed = l.reading.name;
      bool same = harmless && listed.size() > last.size() &&
                  listed.compare(listed.size() - last.size(), last.size(), last) == 0;
      std::size_t at = 0;
      const std::vector<line_token> words = tokens_of(plain_line(l.said->text));
      same = same || (harmless && (stands_in(words, name, at) ||
                                   stands_in(words, std::string(name) + "s", at)));
      same = same || (is_legume(i) && l.reading.what != nullptr && is_legume(*l.reading.what));
      each_ingredient(l, [&](const ingredient& other) {
        same = same || &most_general(j_.rules, other) == &most_general(j_.rules, i);
        // `the flour` of the steps is any flour of the list.
        const std::string_view ban = ban_on(j_.rules, i);
        same = same || (!ban.empty() && ban == ban_on(j_.rules, other));
      });
      return same;
    });
  }

  /// `the beans` are those of the list, whichever they are. Lentils have no process.
  [[nodiscard]] bool is_legume(const ingredient& i) const {
    return (is_a(j_.rules, i, "dried-legume") || is_a(j_.rules, i, "rehydrated-legume")) &&
           !own_processes(j_.rules, i).empty();
  }

  [[nodiscard]] bool has_low_acid_anchor() const {
    return std::any_of(food_->recipes.begin(), food_->recipes.end(), [](const tested_recipe& r) {
      return std::any_of(r.parts.begin(), r.parts.end(), [](const recipe_part& p) {
        return p.anchor && p.role == part_role::low_acid;
      });
    });
  }

  /// A published recipe is thickened, pressed and put aside as it was tested; one of an acid food
  /// also soaks overnight and cooks down slowly. Low-acid food is pressed nowhere, and thickened
  /// only by boiling down.
  [[nodiscard]] bool is_tested_work(const telling_word& t, const std::vector<line_token>& s) const {
    // Mashed beans and beets are no pickles.
    const bool mashed = t.check == "low-acid-puree" && t.id.find("mash") != std::string_view::npos;
    if (acid_) return t.check != "steps-against-plan" && !(mashed && has_low_acid_anchor());
    if (t.check == "too-dense") return true;
    if (t.check == "low-acid-puree")  // tomatoes for a sauce go through a mill
      return has_one_of(s, {"tomato", "tomatoes"}) || !has_low_acid_anchor();
    if (t.check == "fat-in-jar") return has_part_with(*food_, part_role::fat);
    if (t.check != "thickener-in-jar") return false;
    return has_part_with(*food_, part_role::starch) ||
           (has_one_of(s, {"simmer", "cook", "boil"}) && has_one_of(s, {"until", "till", "til"}));
  }

  /// The name of another published food that a title has in place of the plan's own: `Apple pie
  /// filling` beside sliced apples. Empty where it has none.
  [[nodiscard]] std::string other_food_in(const std::vector<line_token>& s) const {
    if (food_ == nullptr || !j_.what.food) return {};
    const std::size_t own = widest_name(s, *food_).second;
    for (const process& p : j_.rules.processes) {
      if (&p == food_) continue;
      const auto [first, width] = widest_name(s, p);
      if (width > 1 && width > own) return words_between(s, first, first + width);
    }
    return {};
  }

  /// Where the longest name of a process stands in a title, and its words; 0 words for none.
  [[nodiscard]] static std::pair<std::size_t, std::size_t> widest_name(
      const std::vector<line_token>& s, const process& p) {
    std::pair<std::size_t, std::size_t> widest{0, 0};
    const auto take = [&](std::string_view name) {
      const std::size_t words =
          1 + static_cast<std::size_t>(std::count(name.begin(), name.end(), ' '));
      std::size_t at = 0;
      if (words > widest.second && stands_in(s, name, at)) widest = {at, words};
    };
    take(folded(p.title));
    for (const std::string_view name : p.names) take(name);
    for (const std::string_view name : p.shared_names) take(name);
    return widest;
  }

  /// Leaves of a title what is not the name of the plan's food, and nothing behind `for`, as in
  /// `Sauce for noodles`.
  void take_out_food(std::vector<line_token>& s) const {
    const auto table =
        std::find_if(s.begin(), s.end(), [](const line_token& t) { return t.text == "for"; });
    s.erase(table, s.end());
    if (food_ == nullptr) return;
    const auto [first, width] = widest_name(s, *food_);
    s.erase(s.begin() + static_cast<std::ptrdiff_t>(first),
            s.begin() + static_cast<std::ptrdiff_t>(first + width));
  }

  /// Food that the plan has without a line for it: what its process is made of.
  [[nodiscard]] bool is_of_process(const ingredient& i) const {
    if (food_ == nullptr) return false;
    // Directions say `cucumbers` of pickling cucumbers.
    if (tested_) return has_part_for(j_.rules, *food_, i, nearness::more_general);
    if (food_->recipe == recipe_kind::frame) {
      const place_in p = place_in_frame(j_.rules, *food_, i);
      return p == place_in::part || p == place_in::seasoning;
    }
    const std::vector<const process*> own = own_processes(j_.rules, i);
    return is_held_by(j_.rules, *food_, i) || i.can_as.contains(food_->id) ||
           std::find(own.begin(), own.end(), food_) != own.end();
  }

  /// Raw green beans are packed tightly by their own directions.
  [[nodiscard]] bool is_packed_tightly() const {
    return food_ != nullptr && j_.what.pack &&
           std::any_of(food_->conditions.begin(), food_->conditions.end(), [&](const condition& c) {
             return c.prepared == "packed tightly" &&
                    (c.packs.empty() || c.packs.contains(std::string_view(j_.what.pack->text)));
           });
  }

  void find_telling(const word& text, std::string_view field, const std::vector<line_token>& s) {
    const bool out = keeps_out(j_.rules, s);  // so that `thickening agents` are not there
    for (const list<telling_word>& words : {j_.rules.telling_words, j_.rules.step_words}) {
      if (words.begin() == j_.rules.step_words.begin() && forbids(s)) continue;
      for (const telling_word& t : words) {
        if (tested_ && is_tested_work(t, s)) continue;
        if (out && t.unless.contains(std::string_view("not"))) continue;
        if (!decides(j_.what, s, t)) continue;
        // `Add sugar. Taste and add more, if preferred.`
        if (t.id == "add more" && s.front().text == "taste" && adds_seasoning(j_.rules, before_))
          continue;
        if (t.check == "low-acid-puree" && acid_) {
          if ((tested_ || is_in_pieces(*food_)) && field == "steps")
            j_.say("steps-against-plan", place_of(field, text),
                   {text.text,
                    "pieces",
                    "The directions say \"" + std::string(t.id) + "\", and the table for " +
                        std::string(food_->title) + " is for pieces.",
                    {},
                    {}});
          continue;
        }
        if (t.check == "too-dense" && t.id.find("tight") != std::string_view::npos &&
            is_packed_tightly())
          continue;
        if (t.check == "standing-unsaid" && (is_about_taste(s) || simmers_on(s))) continue;
        if (t.check == "standing-unsaid" && (processed_ || ends_process(s)) &&
            is_about_closed_jars(j_.rules, s))
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
    left_out_ = keeps_out(j_.rules, s);
    if (left_out_) return;
    std::size_t denied_end = 0;  // of a food that `no` takes back
    for (std::size_t from = 0; from < s.size();) {
      name_match m = names.at(from, s.size(), false);
      // `beef barley soup` is a dish, and what it names is in it.
      const bool title = field != "steps";
      if (title && m.what != nullptr && m.end > m.from + 1 &&
          is_a(j_.rules, *m.what, "made-dish") && !tells_in_title(*m.what))
        m = names.at(from, m.end - 1, false);
      from = m.what == nullptr ? from + 1 : m.end;
      if (m.what == nullptr) continue;
      // `no noodles or rice`
      const bool also = denied_end > 0 && m.from == denied_end + 1 &&
                        line::one_of(s[denied_end].text, {"or", "nor"});
      if (((also || is_denied(s, m.from)) && !is_one_state(s[m.from])) ||
          is_thrown_away(j_.rules, s, m)) {
        denied_end = m.end;
        left_out_ = true;
        continue;
      }
      if (lines_.empty() ? is_of_process(*m.what)
                         : is_listed(*m.what, words_between(s, m.from, m.end), in_pot))
        continue;
      if (title && !tells_in_title(*m.what)) continue;
      // A title names beans at large, and `Canned peaches` are what the plan makes.
      if (title && (is_legume(*m.what) || s[m.from].text == "canned")) continue;
      const bool fish = title && is_a(j_.rules, *m.what, "seafood");
      if (ban_on(j_.rules, *m.what).empty() && !fish && !has_no_place(*m.what)) continue;
      const std::string name = words_between(s, m.from, m.end);
      // Fat is skimmed from every soup, a date stands on labels, to dip is a verb, a kitchen may be
      // a café, `the stew` is this dish, and spaghetti sauce has no spaghetti.
      const bool sauce = title && m.end < s.size() && s[m.end].text == "sauce";
      if (sauce || line::one_of(name, {"fat", "grasa", "date", "dip", "cafe", "hot sauce"}) ||
          is_dish_word(j_.rules, name) || is_handling(s, m, name) ||
          is_own_dish(food_, s, m, name) || is_own_pulp(name) || is_sausage_of_links(food_, s, m) ||
          (!tested_ && browns_in(j_.rules, s, *m.what)))
        continue;
      j_.say("step-names-unlisted", place_of(field, text),
             {text.text, {}, "\"" + name + "\"", {}, {}});
    }
  }

  /// `Combine with tomato pulp`: pressed tomatoes of the list. The pulp of low-acid food is thick.
  [[nodiscard]] bool is_own_pulp(std::string_view name) const {
    constexpr std::string_view pulp = " pulp";
    if (!acid_ || name.size() <= pulp.size() || name.substr(name.size() - pulp.size()) != pulp)
      return false;
    const std::string_view fruit = name.substr(0, name.size() - pulp.size());
    const ingredient* of = ingredient_named(j_.rules, fruit);
    return of != nullptr && of->kind != acidity::low_acid &&
           (lines_.empty() ? is_of_process(*of) : is_listed(*of, fruit, true));
  }

  /// Food that a plan has no place for unless a line names it. Beside a plain food that is all but
  /// salt, sugar, water and dried spices: garlic, tomatoes, soy sauce.
  [[nodiscard]] bool has_no_place(const ingredient& i) const {
    // A soup with lines has what they name, although it may have more.
    const bool by_lines =
        !lines_.empty() && food_ != nullptr && food_->recipe == recipe_kind::frame;
    if (!by_lines && is_of_process(i)) return false;
    if (is_low_acid_food(j_.rules, i) || is_a(j_.rules, i, "alcohol")) return true;
    const bool named = food_ != nullptr && food_->recipe != recipe_kind::frame;
    const auto is = [&](std::string_view trait) { return is_a(j_.rules, i, trait); };
    if (named && is("condiment")) return true;
    if (!named || i.kind == acidity::neutral || is("salt") || is("sugar") || is("spice") ||
        is("water") || is("liquid") || is("broth") || is("acidifier") || is("made-dish") ||
        is("sweetener"))
      return false;
    if (i.kind == acidity::acid && (tested_ || is_seasoning(j_.rules, i))) return false;
    return !is_general_food(i.id);
  }

  /// A dish says little of what is in it; of dishes only what may not be in a jar counts.
  [[nodiscard]] bool tells_in_title(const ingredient& i) const {
    if (is_a(j_.rules, i, "made-dish"))
      return is_a(j_.rules, i, "grain-or-pasta") || is_a(j_.rules, i, "dairy") ||
             is_a(j_.rules, i, "egg");
    return true;
  }

  /// `Add Mehl`, `Eche migas`: a thing put in that nobody knows.
  void find_unknown(const word& text, std::vector<line_token> s) {
    constexpr std::string_view verbs[] = {"add",   "agregue", "agrega",  "agregar",
                                          "anada", "anadir",  "ponga",   "poner",
                                          "eche",  "echar",   "ajoutez", "ajouter"};
    constexpr std::string_view verbs_in[] = {"stir", "whisk", "sprinkle", "mix",
                                             "fold", "blend", "shake",    "beat"};
    constexpr std::string_view ends[] = {"to",   "into", "until", "for", "when", "on",   "in",
                                         "from", "so",   "then",  "al",  "a",    "en",   "hasta",
                                         "que",  "if",   "as",    "at",  "or",   "with", "para"};
    line::spell_out(j_.rules, s);
    name_index names(j_.rules, s);
    for (std::size_t i = 0; i + 1 < s.size(); ++i) {
      const bool stir = (line::one_of(s[i].text, verbs_in) && s[i + 1].text == "in") ||
                        (s[i].text == "thicken" && s[i + 1].text == "with");
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
        // Stock takes back what was picked from its own bones.
        const bool picked =
            s[at].text == "trimmings" && s[at - 1].text == "meat" && is_stock(food_);
        if (!picked && !is_known_word(s[at].text)) {
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
};

/// Says what the directions, the title and what else names food have against the plan. `food` is
/// the process that it follows, or null.
inline void judge_steps(judging& j, const process* food) {
  const plan& p = j.what;
  if (p.steps.empty() && !p.title && !p.yield && !p.from) return;
  step_reader reader(j, food);
  for (const word& step : p.steps) reader.read(step, "steps");
  if (p.yield) reader.read(*p.yield, "yield");
  if (p.title) reader.read_title(*p.title, "title");
  if (p.from && !p.from->value.name.empty())
    reader.read_title({{}, p.from->value.name, p.from->line, p.from->column}, "from");
}

}  // namespace jarproof::detail
