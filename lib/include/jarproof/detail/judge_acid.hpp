// Acid that goes into every jar: tomatoes, figs, Asian pears and others.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/ingredient_line.hpp"
#include "jarproof/detail/judge_process.hpp"
#include "jarproof/detail/list_headings.hpp"

namespace jarproof::detail {

/// One acid of `2 tbsp bottled lemon juice per quart`.
struct acid_addition {
  place at;
  std::string text;
  line_reading reading;
  std::int64_t jar_micro_floz = 0;  ///< 0 where the line does not say which jar
  bool by_key = false;              ///< of the plan's `acid`, not of its ingredients
  bool doubtful = false;            ///< by its heading it may not be in the jar
};

/// The volume of a jar in words: a listed size, an amount, or the plan's own jar.
[[nodiscard]] inline std::int64_t jar_in_words(const judging& j, const std::string& jar) {
  if (jar == "jar") return jar_volume(j).value_or(0);
  if (const jar_size* size = jar_named(j.rules, jar)) return size->volume_floz * micro_per_unit;
  const amount_reading r = read_amount(jar, dimension::volume, rounding::up);
  return r.ok() ? r.value : 0;
}

/// True where a line of the recipe is the acid for each jar.
[[nodiscard]] inline bool answers_acid(const judging& j, const process& p,
                                       const line_reading& reading) {
  if (p.acids.empty() || reading.what == nullptr) return false;
  return !reading.per_jar.empty() || is_a(j.rules, *reading.what, "acidifier");
}

/// `per quart: 2 tbsp bottled lemon juice` and `lemon juice, 2 tbsp` with the amount in front.
[[nodiscard]] inline std::string amount_first(std::string_view text) {
  std::size_t digit = 0;
  while (digit < text.size() && !is_digit(text[digit])) ++digit;
  if (digit == 0 || digit == text.size()) return std::string(text);
  std::string_view rest = text.substr(digit);
  number low;
  number high;
  if (!take_numbers(rest, low, high) || take_measure_unit(rest) == nullptr)
    return std::string(text);
  const std::string_view amount = text.substr(digit, text.size() - digit - rest.size());
  return std::string(amount) + " " + std::string(text.substr(0, digit)) + std::string(rest);
}

/// Splits `1 tbsp bottled lemon juice and 1/4 tsp citric acid per pint`; the jar counts for all.
[[nodiscard]] inline std::vector<acid_addition> read_acid_text(const judging& j, const place& at,
                                                               std::string_view text) {
  std::vector<acid_addition> out;
  std::string_view rest = text;
  while (!rest.empty()) {
    std::size_t cut = std::string_view::npos;
    std::size_t width = 0;
    for (const std::string_view between : {" and ", " plus ", "+", ";", ", "}) {
      const std::size_t here = rest.find(between);
      // A comma before a number begins the next acid where an amount stands before it too.
      const bool amount_before =
          here != std::string_view::npos &&
          std::any_of(rest.begin(), rest.begin() + static_cast<std::ptrdiff_t>(here), is_digit);
      if (between == ", " && here != std::string_view::npos &&
          (here + 2 >= rest.size() || !is_digit(rest[here + 2]) || !amount_before))
        continue;
      if (here < cut) {
        cut = here;
        width = between.size();
      }
    }
    const std::string_view one = trim(rest.substr(0, cut));
    if (!one.empty())
      out.push_back({at, std::string(one), read_line(j.rules, amount_first(one)), 0, true});
    if (cut == std::string_view::npos) break;
    rest.remove_prefix(cut + width);
  }
  std::string jar;
  for (const acid_addition& a : out) {
    if (!a.reading.per_jar.empty()) jar = a.reading.per_jar;
  }
  for (acid_addition& a : out) {
    a.jar_micro_floz = jar_in_words(j, a.reading.per_jar.empty() ? jar : a.reading.per_jar);
  }
  return out;
}

/// Acids among the ingredients: those for each jar, and those for the batch where the number of
/// jars is known.
[[nodiscard]] inline std::vector<acid_addition> acids_among_ingredients(const judging& j) {
  std::vector<acid_addition> out;
  const plan& what = j.what;
  const std::vector<listed_under> under = headings_of(j.rules, what.ingredients);
  for (std::size_t i = 0; i < what.ingredients.size(); ++i) {
    const word& line = what.ingredients[i];
    acid_addition a{place_of("ingredients", line), line.text, read_line(j.rules, line.text), 0};
    if (a.reading.per_jar.empty()) a.reading.per_jar = under[i].per_jar;
    a.doubtful = under[i].doubtful || under[i].serving || a.reading.at_serving;
    const bool acid = a.reading.what != nullptr && is_a(j.rules, *a.reading.what, "acidifier");
    if (!acid) continue;
    if (!a.reading.per_jar.empty()) {
      a.jar_micro_floz = jar_in_words(j, a.reading.per_jar);
    } else if (what.jars && what.jars->value > 0) {
      a.jar_micro_floz = jar_volume(j).value_or(0) * what.jars->value;
    }
    out.push_back(std::move(a));
  }
  return out;
}

/// What the jar needs of an acid, for a reader: the publication's own words.
[[nodiscard]] inline std::string needed_acids(const process& p) {
  std::string out;
  for (const acid_choice& a : p.acids) out += (out.empty() ? "" : "; or ") + std::string(a.says);
  return out;
}

[[nodiscard]] inline std::string name_of_acid(const judging& j, const acid_choice& a) {
  const ingredient* i = find(j.rules.ingredients, a.acid);
  return i == nullptr ? std::string(a.acid) : std::string(i->names[0]);
}

/// A line that a cook can copy.
[[nodiscard]] inline std::string acid_example(const judging& j, const acid_choice& a) {
  const bool spoon = a.thousandths_tsp_per_pint % 3000 == 0;
  return "acid: " +
         (spoon ? std::to_string(a.thousandths_tsp_per_pint / 3000) + " tbsp "
                : kitchen_fraction(a.thousandths_tsp_per_pint) + " tsp ") +
         name_of_acid(j, a) + " per pint";
}

/// Judges one acid; true where it alone suffices. Otherwise `why` is what is wrong with it.
[[nodiscard]] inline bool suffices(judging& j, const process& p, const acid_addition& given,
                                   std::optional<std::pair<std::string_view, bool>>& why,
                                   sentence_facts& facts) {
  facts.found = given.text;
  facts.required = needed_acids(p);
  const auto wrong = [&](std::string_view id, bool left_unsaid = false) {
    why = {id, left_unsaid};
    return false;
  };
  const ingredient* acid = given.reading.what;
  if (acid == nullptr || !given.reading.strange.empty()) {
    facts.instead = "Write it like `" + acid_example(j, p.acids[0]) + "`.";
    return wrong("amount-unknown");
  }
  if (given.doubtful || says_doubtful(given.reading, true)) return wrong("acid-missing");
  if (!given.reading.open.empty()) {
    facts.instead =
        "`" + given.reading.open + "` leaves open how much it is: write the one amount.";
    return wrong("amount-unknown");
  }
  const int percent = given.reading.vinegar_percent.value_or(acid->vinegar_percent);
  if (percent > 0 && percent < 5) return wrong("vinegar-too-weak");
  for (const acid_choice& a : p.acids) {
    const ingredient* tested = find(j.rules.ingredients, a.acid);
    if (tested == nullptr) continue;
    if (!is_kind_of(j.rules, *acid, a.acid)) {
      // `lemon juice` may be the bottled juice that was tested, or not.
      if (is_kind_of(j.rules, *tested, acid->id)) {
        facts.instead = "For example: `" + acid_example(j, a) + "`.";
        return wrong("acid-not-bottled", true);
      }
      continue;
    }
    if (!given.reading.amount || given.jar_micro_floz <= 0) {
      facts.instead = "Write it like `" + acid_example(j, a) + "`.";
      return wrong("amount-unknown");
    }
    const measure_unit& tsp = *unit_named("tsp");
    const std::optional<measured> m =
        converted(j.rules, *acid, *given.reading.amount, tsp, given.reading.words);
    if (!m) {
      facts.instead = "Write it like `" + acid_example(j, a) + "`.";
      return wrong("amount-unknown");
    }
    // Thousandths of a tsp for the jar the line speaks of; a pint is 16 fl oz.
    const std::int64_t least =
        divide(a.thousandths_tsp_per_pint * (given.jar_micro_floz / 1000), 16'000, rounding::up);
    if (m->low >= least) return true;
    return wrong("acid-too-little");
  }
  if (is_a(j.rules, *acid, "not-bottled")) return wrong("acid-not-bottled");
  if (is_a(j.rules, *acid, "homemade")) return wrong("vinegar-homemade");
  return wrong("acid-does-not-count");
}

/// True where an acid that does not suffice speaks against one that does: too little of it, unfit,
/// or `none`. A line without an amount leaves it to the other, and an acid that no table counts may
/// be added for the taste.
[[nodiscard]] inline bool contradicts(const acid_addition& a,
                                      const std::pair<std::string_view, bool>& why) {
  const std::string plain = folded(a.text);
  if (plain == "none" || plain == "no" || a.doubtful) return true;
  if (a.by_key && (a.reading.what == nullptr || !a.reading.strange.empty())) return true;
  if (why.first == "amount-unknown") return !a.reading.open.empty();
  return a.reading.what != nullptr && !why.second && why.first != "acid-does-not-count";
}

/// True for what may stand beside an acid: another acid, salt and sugar. Soda takes the acid away,
/// and food is no acid.
[[nodiscard]] inline bool may_join_acid(const judging& j, const acid_addition& a) {
  const ingredient* what = a.reading.what;
  if (what == nullptr || !a.reading.others.empty()) return false;
  return what->kind == acidity::acid || is_a(j.rules, *what, "salt") ||
         is_a(j.rules, *what, "sugar");
}

/// Every acid of the plan; of mixed ones, one alone must suffice. What `acid` and the lines say of
/// the same acid must agree: none of them may say too little.
inline void judge_acid(judging& j, const process& p) {
  if (p.acids.empty()) return;
  const plan& what = j.what;
  std::vector<acid_addition> given = acids_among_ingredients(j);
  if (what.acid) {
    for (acid_addition& a : read_acid_text(j, place_of("acid", *what.acid), what.acid->text))
      given.push_back(std::move(a));
  }
  if (given.empty()) {
    if (what.acid) {
      finding& f = j.say("acid-missing", place_of("acid", *what.acid),
                         {what.acid->text, needed_acids(p), {}, {}, {}});
      cite_first(j.rules, p.sources, f);
    } else if (follows_publication(what)) {
      finding& f = j.say("step-reminder", place_of("acid", what),
                         {{}, {}, "Add to each jar: " + needed_acids(p) + ".", {}, {}});
      cite_first(j.rules, p.sources, f);
    } else {
      missing(j, "acid", acid_example(j, p.acids[0]));
    }
    return;
  }
  struct complaint {
    std::pair<std::string_view, bool> id;
    place at;
    sentence_facts facts;
  };
  std::vector<complaint> complaints;
  bool enough_by_key = false;
  bool enough_by_line = false;
  bool joined_by_food = false;
  bool key_contradicts = false;
  bool line_contradicts = false;
  for (const acid_addition& a : given) {
    std::optional<std::pair<std::string_view, bool>> why;
    sentence_facts facts;
    if (a.by_key && !may_join_acid(j, a) && given.size() > 1) {
      facts.found = a.text;
      facts.required = needed_acids(p);
      complaints.push_back({{"acid-does-not-count", false}, a.at, std::move(facts)});
      joined_by_food = true;
      continue;
    }
    if (suffices(j, p, a, why, facts)) {
      (a.by_key ? enough_by_key : enough_by_line) = true;
      continue;
    }
    bool& against = a.by_key ? key_contradicts : line_contradicts;
    against = against || contradicts(a, *why);
    const std::string_view lone = folded(a.text) == "none" || folded(a.text) == "no"
                                      ? std::string_view("acid-missing")
                                      : why->first;
    complaints.push_back({{lone, why->second}, a.at, std::move(facts)});
  }
  const bool agree = (!key_contradicts || enough_by_key) && (!line_contradicts || enough_by_line);
  if ((enough_by_key || enough_by_line) && agree && !joined_by_food) return;
  for (complaint& c : complaints) {
    finding& f = c.id.second ? j.unsaid(c.id.first, c.at, std::move(c.facts))
                             : j.say(c.id.first, c.at, std::move(c.facts));
    cite_first(j.rules, p.sources, f);
  }
}

/// The strength that the plan states for its vinegar.
inline void judge_vinegar(judging& j, const process& p) {
  const plan& what = j.what;
  if (!what.vinegar || what.vinegar->value.value >= 5 * micro_per_unit / 100) return;
  finding& f = j.say("vinegar-too-weak", place_of("vinegar", *what.vinegar),
                     {what.vinegar->text, "at least 5 %", {}, {}, {}});
  cite_first(j.rules, p.sources, f);
}

}  // namespace jarproof::detail
