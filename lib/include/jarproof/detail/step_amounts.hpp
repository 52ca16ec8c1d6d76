// Amounts of food that the directions name, against those of the list and of the published recipe:
// `Add 1/2 cup vinegar` beside a cup of it in the list. SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/judge_acid.hpp"
#include "jarproof/detail/recipe_places.hpp"
#include "jarproof/detail/step_sentences.hpp"

namespace jarproof::detail {

/// `1 tbsp lemon juice`, `lemon juice (1 tbsp)`, `onions increased to 4 lb` in a sentence.
struct step_amount {
  measured amount;
  std::string amount_text;
  const ingredient* what;
  std::string name;
};

/// The food that an amount right before word `at` measures; at most words of its cut between them.
[[nodiscard]] inline name_match food_behind(const edition& rules, name_index& names,
                                            const std::vector<line_token>& s, std::size_t at) {
  for (std::size_t i = at; i < std::min(s.size(), at + 5); ++i) {
    const name_match m = names.at(i, s.size(), true);
    if (m.what != nullptr) return m;
    const std::string& w = s[i].text;
    if (line::one_of(w, {"and", "or", "then", "until", "for", "at", "to", "in", "with", "into",
                         "min", "mins", "minute", "minutes", "hour", "hours", "times", "jars"}))
      break;
    if (!is_line_word(rules, w) && !line::is_size(w)) break;
  }
  return {};
}

/// All of them, in the order in which they stand. `of the vinegar` is a part of it and left out.
[[nodiscard]] inline std::vector<step_amount> amounts_in(const edition& rules,
                                                         const std::vector<line_token>& s) {
  std::vector<step_amount> out;
  name_index names(rules, s);
  const ingredient* before = nullptr;  // the last food, which an amount may follow
  std::string before_name;
  std::size_t before_end = 0;
  for (std::size_t at = 0; at < s.size();) {
    const bool number =
        is_digit(s[at].text.front()) || static_cast<unsigned char>(s[at].text.front()) >= 0x80;
    if (!number) {
      const name_match m = names.at(at, s.size(), true);
      if (m.what != nullptr) {
        before = m.what;
        before_name = words_between(s, m.from, m.end);
        before_end = m.end;
      }
      at = m.what == nullptr ? at + 1 : m.end;
      continue;
    }
    const std::string text = words_between(s, at, s.size());
    std::string_view rest = text;
    const line_amount amount = take_amount(rest);
    rest = trim(rest);
    const std::size_t left =
        rest.empty() ? 0 : 1 + static_cast<std::size_t>(std::count(rest.begin(), rest.end(), ' '));
    const std::size_t behind = std::max(at + 1, s.size() - std::min(left, s.size()));
    const bool part = behind > at + 1 && behind < s.size() && s[behind - 1].text == "the";
    const name_match m = food_behind(rules, names, s, behind);
    const bool fillers =
        std::all_of(s.begin() + static_cast<std::ptrdiff_t>(std::min(before_end, at)),
                    s.begin() + static_cast<std::ptrdiff_t>(at), [](const line_token& t) {
                      return line::one_of(t.text, {"to", "increased", "reduced", "about", "up",
                                                   "down", "is", "was", "of", "-"});
                    });
    if (amount.amount && m.what != nullptr && !part) {
      out.push_back({*amount.amount, amount.text, m.what, words_between(s, m.from, m.end)});
    } else if (amount.amount && m.what == nullptr && before != nullptr && fillers &&
               amount.amount->kind != measure_kind::count) {
      out.push_back({*amount.amount, amount.text, before, before_name});
    }
    if (m.what != nullptr) {
      before = m.what;
      before_name = words_between(s, m.from, m.end);
      before_end = m.end;
    }
    at = m.what != nullptr ? m.end : behind;
  }
  return out;
}

/// What the sentences of the directions say about amounts.
class step_amounts {
 public:
  step_amounts(judging& j, const process& food)
      : j_(j), food_(food), tested_(!food.recipes.empty()), lines_(read_lines(j)) {}

  void judge(const word& step, const std::vector<line_token>& s) {
    if (is_about_serving(s) || has_one_of(s, {"remaining", "rest", "reserved", "reserve", "other"}))
      return;
    find_fresh_acid(step, s);
    const bool splash = has_one_of(s, {"splash", "squeeze", "drizzle", "dash", "little", "bit"});
    if (splash && !food_.acids.empty() && !jar_of(s).empty() &&
        has_one_of(s, {"vinegar", "lemon", "lime", "acid"}))
      say_of(step, "The directions leave open how much acid each jar gets.");
    for (step_amount a : amounts_in(j_.rules, s)) {
      if (const ingredient* listed = listed_as(a)) a.what = listed;
      const bool acid = is_a(j_.rules, *a.what, "acidifier");
      const std::string jar = jar_of(s);
      if (!jar.empty()) {
        if (acid && !food_.acids.empty()) judge_jar_acid(step, a, jar);
      } else if (tested_) {
        judge_part(step, s, a);
      } else if (food_.recipe == recipe_kind::frame && a.what->kind == acidity::low_acid) {
        const std::optional<measured> listed = listed_of(a, nullptr);
        if (listed && a.amount.low > listed->high) say(step, a, "no more than the list has");
      }
    }
    if (!tested_) return;
    find_more(step, s);
    find_less(step, s);
    find_thinned(step, s);
  }

 private:
  judging& j_;
  const process& food_;
  bool tested_;
  std::vector<plan_line> lines_;

  /// `the beef` is the ground beef of the list. Beans are left out: cooked, they measure more.
  [[nodiscard]] const ingredient* listed_as(const step_amount& a) const {
    if (part_of(*a.what) != nullptr) return nullptr;
    const std::string last = " " + a.name;
    for (const plan_line& l : lines_) {
      const std::string& name = l.reading.name;
      if (l.reading.what == nullptr || is_a(j_.rules, *l.reading.what, "dried-legume")) continue;
      if (name.size() > last.size() &&
          name.compare(name.size() - last.size(), last.size(), last) == 0)
        return l.reading.what;
    }
    return nullptr;
  }

  /// `quart` of `to each quart`, `per quart jar`; empty where the amount is that of the batch.
  [[nodiscard]] static std::string jar_of(const std::vector<line_token>& s) {
    for (std::size_t i = 0; i + 1 < s.size(); ++i) {
      if (!line::one_of(s[i].text, {"each", "every", "per", "a"})) continue;
      const std::string& w = s[i + 1].text;
      if (line::one_of(w, {"pint", "quart", "jar"})) return w;
    }
    return {};
  }

  void say(const word& step, const step_amount& a, std::string required) {
    j_.say("steps-against-plan", place_of("steps", step),
           {step.text,
            std::move(required),
            "The directions have " + a.amount_text + " of " + a.name + ".",
            {},
            {}});
  }

  /// `Add fresh lemon juice`: of unknown strength, where the process asks for acid.
  void find_fresh_acid(const word& step, const std::vector<line_token>& s) {
    if (food_.acids.empty() && !has_part_with(food_, part_role::acid)) return;
    name_index names(j_.rules, s);
    for (std::size_t at = 0; at < s.size();) {
      const name_match m = names.at(at, s.size(), true);
      at = m.what == nullptr ? at + 1 : m.end;
      if (m.what == nullptr || !is_a(j_.rules, *m.what, "not-bottled") || is_denied(s, m.from))
        continue;
      const bool listed = std::any_of(lines_.begin(), lines_.end(),
                                      [&](const plan_line& l) { return l.reading.what == m.what; });
      if (!listed) say_of(step, "The directions have " + words_between(s, m.from, m.end) + ".");
    }
  }

  /// `Add 1 tbsp lemon juice to each quart`: enough by itself, bottled or not said.
  void judge_jar_acid(const word& step, const step_amount& a, const std::string& jar) {
    std::string name = a.name;
    for (const acid_choice& c : food_.acids) {
      const ingredient* tested = find(j_.rules.ingredients, c.acid);
      if (tested != nullptr && tested != a.what && is_kind_of(j_.rules, *tested, a.what->id))
        name = std::string(tested->names[0]);
    }
    const std::string text = a.amount_text + " " + name + " per " + jar;
    acid_addition given{place_of("steps", step), text, read_line(j_.rules, text), 0};
    given.jar_micro_floz = jar_in_words(j_, jar);
    std::optional<std::pair<std::string_view, bool>> why;
    sentence_facts facts;
    if (suffices(j_, food_, given, why, facts) || why->first == "acid-does-not-count") return;
    say(step, a, needed_acids(food_));
  }

  /// All lines that stand in the same part of the recipe, or are the same food, in the measure of
  /// `a`; nothing where there is none, or one of them cannot be compared.
  [[nodiscard]] std::optional<measured> listed_of(const step_amount& a,
                                                  const recipe_part* part) const {
    measured sum = a.amount;
    sum.low = sum.high = sum.metric = 0;
    bool any = false;
    const std::string_view unit = a.amount.kind == measure_kind::mass     ? "oz"
                                  : a.amount.kind == measure_kind::volume ? "cup"
                                                                          : a.amount.counts;
    const measure_unit* measure = unit_named(unit);
    for (const plan_line& l : lines_) {
      const ingredient* what = l.reading.what;
      if (what == nullptr || l.reading.at_serving) continue;
      const bool same = &most_general(j_.rules, *what) == &most_general(j_.rules, *a.what) ||
                        (part != nullptr && near_to(j_.rules, *what, *part) >= nearness::kind);
      if (!same) continue;
      const std::optional<measured> one =
          l.amount && measure != nullptr
              ? converted(j_.rules, *what, *l.amount, *measure, l.reading.words)
              : std::nullopt;
      if (!one) return std::nullopt;
      sum.low += one->low;
      sum.high += one->high;
      any = true;
    }
    return any ? std::optional<measured>(sum) : std::nullopt;
  }

  [[nodiscard]] const recipe_part* part_of(const ingredient& i) const {
    const recipe_part* best = nullptr;
    nearness nearest = nearness::other;
    for (const tested_recipe& r : food_.recipes) {
      for (const recipe_part& part : r.parts) {
        const nearness here = near_to(j_.rules, i, part);
        if (part.discarded || here <= nearest) continue;
        best = &part;
        nearest = here;
      }
    }
    return best;
  }

  [[nodiscard]] bool has_soak() const {
    return std::any_of(food_.recipes.begin(), food_.recipes.end(), [](const tested_recipe& r) {
      return std::any_of(r.parts.begin(), r.parts.end(),
                         [](const recipe_part& part) { return part.discarded; });
    });
  }

  void judge_part(const word& step, const std::vector<line_token>& s, const step_amount& a) {
    const bool water = is_a(j_.rules, *a.what, "water");
    // What peels, soaks and heats the jars is no part of the recipe.
    if (water &&
        (a.amount.kind == measure_kind::count ||
         has_one_of(s, {"soak", "soaking", "stand", "overnight", "canner", "blanch", "ice", "rinse",
                        "scald", "peel", "skins", "jars", "hours", "brine", "dissolve"}) ||
         (has_soak() && has_one_of(s, {"cucumbers", "drain"}))))
      return;
    const recipe_part* part = part_of(*a.what);
    const bool acid_recipe = food_.kind == food_class::acid;
    if (part == nullptr) {
      if (water && acid_recipe) say(step, a, "none of it");
      return;
    }
    if (part->limit == part_limit::free || (part->limit == part_limit::most && part->optional))
      return;
    const std::optional<measured> listed = listed_of(a, part);
    const bool least = part->limit != part_limit::most;
    const bool most = part->limit != part_limit::least;
    if (!listed) {
      const bool any = std::any_of(lines_.begin(), lines_.end(), [&](const plan_line& l) {
        return l.reading.what != nullptr &&
               near_to(j_.rules, *l.reading.what, *part) >= nearness::kind;
      });
      if (water && acid_recipe && !any) say(step, a, "none of it");
      return;
    }
    const bool less = least && !part->anchor && a.amount.high < listed->low;
    if (less || (most && a.amount.low > listed->high))
      say(step, a, "what the list of ingredients has");
  }

  void say_of(const word& step, std::string reason) {
    j_.say("steps-against-plan", place_of("steps", step),
           {step.text, "what the list of ingredients has", std::move(reason), {}, {}});
  }

  /// `Use half the vinegar`, `Cut the sugar in half`: less of what a recipe needs.
  void find_less(const word& step, const std::vector<line_token>& s) {
    name_index names(j_.rules, s);
    const bool halved = has_one_of(s, {"half", "halve"});
    for (std::size_t i = 0; i < s.size(); ++i) {
      const bool less = line::one_of(s[i].text, {"half", "less", "reduce", "reduced", "omit"}) ||
                        (halved && line::one_of(s[i].text, {"cut", "halve"}));
      if (!less || is_denied(s, i) || (i > 0 && line::one_of(s[i - 1].text, {"no", "not"})))
        continue;
      for (std::size_t at = i + 1; at < std::min(s.size(), i + 4); ++at) {
        const name_match m = names.at(at, s.size(), true);
        if (m.what == nullptr) continue;
        const recipe_part* part = part_of(*m.what);
        if (part != nullptr && !part->anchor &&
            (part->role == part_role::acid || part->role == part_role::sugar ||
             part->role == part_role::salt) &&
            (part->limit == part_limit::least || part->limit == part_limit::between))
          say_of(step, "The directions have less " + words_between(s, m.from, m.end) + ".");
        break;
      }
    }
  }

  /// `Top up the jars with boiling water`: in a recipe whose acid is in its liquid.
  void find_thinned(const word& step, const std::vector<line_token>& s) {
    if (food_.kind != food_class::acid || !has_one_of(s, {"water"}) ||
        !has_one_of(s, {"jar", "jars", "brine"}) || !has_one_of(s, {"top", "refill", "fill"}) ||
        has_one_of(s, {"canner", "bath", "pot", "kettle"}))
      return;
    if (has_part_with(food_, part_role::acid))
      say_of(step, "The directions fill the jars up with water.");
  }

  /// `2 lb more onions`, `twice the onions`: more of what a recipe limits.
  void find_more(const word& step, const std::vector<line_token>& s) {
    name_index names(j_.rules, s);
    for (std::size_t i = 0; i < s.size(); ++i) {
      if (!line::one_of(s[i].text, {"more", "another", "extra", "additional", "twice", "double",
                                    "triple", "increase"}) ||
          is_denied(s, i) || (i > 0 && line::one_of(s[i - 1].text, {"no", "not", "any"})))
        continue;
      for (std::size_t at = i + 1; at < std::min(s.size(), i + 5); ++at) {
        const name_match m = names.at(at, s.size(), true);
        if (m.what == nullptr) {
          if (line::one_of(s[at].text, {"and", "or", "minutes", "minute", "hour", "in", "if"}))
            break;
          continue;
        }
        const std::string name = words_between(s, m.from, m.end);
        const ingredient* listed = listed_as({{}, {}, m.what, name});
        const recipe_part* part = part_of(listed != nullptr ? *listed : *m.what);
        if (part != nullptr && part->role == part_role::low_acid && part->limit == part_limit::most)
          say_of(step, "The directions have more " + name + ".");
        break;
      }
    }
  }
};

}  // namespace jarproof::detail
