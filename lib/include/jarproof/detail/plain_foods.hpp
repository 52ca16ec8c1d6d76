// Which plain food the lines of a plan mean: by name, by what an ingredient is canned as, by its
// cut or by the title. SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/findings.hpp"
#include "jarproof/detail/food_cuts.hpp"
#include "jarproof/detail/ingredient_line.hpp"
#include "jarproof/detail/mixture_parts.hpp"
#include "jarproof/detail/step_sentences.hpp"

namespace jarproof::detail {

/// The food of an ingredient line written as a plain food name: `7 lb green beans, washed` is
/// `green beans`. What follows a comma is preparation; amount and unit in front do not count.
[[nodiscard]] inline std::string_view plain_food(std::string_view line) {
  std::string_view rest = trim(line.substr(0, preparation_comma(line)));
  number n;
  if (take_number(rest, n) != number_fault::none) return rest;
  rest = trim(rest);
  std::string_view after = rest;
  constexpr std::string_view weights[] = {"lb", "lbs", "pound", "pounds", "kg", "g"};
  std::string_view first = rest.substr(0, rest.find(' '));
  const std::size_t length = first.size();
  if (!first.empty() && first.back() == '.') first.remove_suffix(1);
  for (const std::string_view w : weights) {
    if (folded(first) == w) after = rest.substr(length);
  }
  if (after.size() == rest.size() && take_unit(after, list<unit>(volume_units)) == nullptr)
    return rest;
  after = trim(after);
  return starts_with(after, "of ") ? trim(after.substr(3)) : after;
}

/// True for a food that is pressed or mashed, such as fruit purees.
[[nodiscard]] inline bool is_puree(const process& p) {
  return std::all_of(p.tables.begin(), p.tables.end(), [](const table& t) {
    return t.forms.size() > 0 &&
           std::all_of(t.forms.begin(), t.forms.end(), [](std::string_view form) {
             return form.find("puree") != std::string_view::npos;
           });
  });
}

/// The processes of a line's food by its name, or else by what its ingredient is canned as alone.
[[nodiscard]] inline std::vector<const process*> foods_of(const edition& rules,
                                                          const plan_line& l) {
  const std::string_view before_comma = plain_food(l.said->text);
  std::vector<const process*> named = foods_named(rules, before_comma);
  if (l.reading.what == nullptr) return named;
  // `venison, ground` and `green beans, dried` are other foods than the word before the comma.
  const bool same = !named.empty() && read_line(rules, before_comma).what == l.reading.what;
  if (same) return named;
  std::vector<const process*> own = own_processes(rules, *l.reading.what);
  // `8 lb strawberries` are no puree until somebody says so.
  if (std::none_of(l.reading.telling.begin(), l.reading.telling.end(),
                   [](const telling_word* t) { return t->check == "low-acid-puree"; }))
    own.erase(std::remove_if(own.begin(), own.end(), [](const process* p) { return is_puree(*p); }),
              own.end());
  return own;
}

/// True for a plain acid food, such as sliced apples, whose tables are for pieces: pressed or
/// mashed it is another.
[[nodiscard]] inline bool is_in_pieces(const process& p) {
  if (p.recipe != recipe_kind::plain || p.kind != food_class::acid) return false;
  return std::all_of(p.tables.begin(), p.tables.end(), [](const table& t) {
    bool piece = false;
    for (const std::string_view form : t.forms) {
      if (form.find("crushed") != std::string_view::npos ||
          form.find("puree") != std::string_view::npos)
        return false;
      piece = piece || line::one_of(form, {"sliced", "slices", "halves", "halved", "quarters",
                                           "quartered", "whole", "chunks", "cubes", "sections"});
    }
    return piece;
  });
}

/// True where a line keeps the skins that the food's own directions take off: `beets, skins on`.
[[nodiscard]] inline bool keeps_skins(const process& p, const plan_line& l) {
  const bool peels = std::any_of(p.conditions.begin(), p.conditions.end(),
                                 [](const condition& c) { return c.prepared == "peeled"; });
  if (!peels) return false;
  if (says(l.reading, "unpeeled")) return true;
  const std::vector<line_token> words = tokens_of(plain_line(l.said->text));
  std::size_t at = 0;
  for (const std::string_view on : {"skins on", "skin on", "with skins", "with skin", "not peeled",
                                    "skins left on", "peel on", "peels on"}) {
    if (stands_in(words, on, at)) return true;
  }
  return false;
}

/// Foods of lines that all mean one plain food, such as `7 lb green beans` with salt; empty where
/// they are a mixture.
[[nodiscard]] inline std::vector<const process*> one_food(const judging& j,
                                                          const std::vector<plan_line>& lines) {
  std::vector<const process*> common;
  const ingredient* solid = nullptr;
  bool any = false;
  bool sweet = false;
  bool thin = false;
  for (const plan_line& l : lines) {
    if (l.reading.at_serving) continue;
    const std::vector<const process*> foods = foods_of(j.rules, l);
    const ingredient* what = l.reading.what;
    if (what != nullptr && foods.empty() && l.reading.others.empty() &&
        (is_seasoning(j.rules, *what) || is_liquid(j.rules, *what))) {
      sweet = sweet || is_a(j.rules, *what, "sugar");
      thin = thin || is_liquid(j.rules, *what);
      continue;
    }
    if (foods.empty() || !l.reading.others.empty()) return {};
    // Two things that one table names, such as carrots and carrots, are one food.
    if (solid != nullptr && what != nullptr &&
        &most_general(j.rules, *solid) != &most_general(j.rules, *what))
      return {};
    solid = what != nullptr ? what : solid;
    if (!any) {
      common = foods;
    } else {
      common.erase(std::remove_if(common.begin(), common.end(),
                                  [&](const process* p) {
                                    return std::find(foods.begin(), foods.end(), p) == foods.end();
                                  }),
                   common.end());
    }
    any = true;
  }
  // Fruit with sugar and no water is a jam, not fruit in syrup.
  if (sweet && !thin) return {};
  return common;
}

/// The plain food that the title names, of those that the ingredient is canned as: `Homemade
/// applesauce` beside apples. Null where it names none.
[[nodiscard]] inline const process* titled_food(const judging& j, const ingredient& solid) {
  if (!j.what.title) return nullptr;
  const std::vector<line_token> title = tokens_of(plain_line(j.what.title->text));
  const process* best = nullptr;
  std::size_t longest = 0;
  for (const std::string_view id : solid.can_as) {
    const process* p = find(j.rules.processes, id);
    if (p == nullptr || p->recipe != recipe_kind::plain) continue;
    for (const std::string_view name : p->names) {
      std::size_t at = 0;
      if (name.size() <= longest || !stands_in(title, name, at)) continue;
      best = p;
      longest = name.size();
    }
  }
  return best;
}

/// Of the foods that one line can mean those that its cut or the title leaves: `venison, in cubes`
/// is not ground, `Applesauce` is what its apples become.
[[nodiscard]] inline std::vector<const process*> narrowed(const judging& j,
                                                          const std::vector<plan_line>& lines,
                                                          std::vector<const process*> foods) {
  const ingredient* solid = nullptr;
  const plan_line* line = nullptr;
  for (const plan_line& l : lines) {
    const ingredient* what = l.reading.what;
    if (!l.reading.others.empty()) return foods;
    if (l.reading.at_serving || what == nullptr || is_seasoning(j.rules, *what) ||
        is_liquid(j.rules, *what))
      continue;
    if (solid != nullptr && solid != what) return foods;
    solid = what;
    line = &l;
  }
  if (solid == nullptr) return foods;
  if (const process* titled = titled_food(j, *solid)) return {titled};
  if (foods.empty()) return foods;
  // Slices of fruit may become sauce; meat in cubes stays in cubes.
  if (foods.front()->kind == food_class::acid) return foods;
  // `venison, cubed` is known as `cubed venison`.
  std::vector<std::string> words;
  for (const std::string& w : line->reading.words) {
    if (says(line->reading, w)) words.push_back(w);  // not `not cubed`
  }
  for (std::string& w : line::words_of(line->reading.name)) {
    if (is_cut_word(j.rules, w)) words.push_back(std::move(w));
  }
  const auto lists_cut = [&](const process* p) {
    return std::any_of(p->tables.begin(), p->tables.end(), [&](const table& t) {
      return std::any_of(t.forms.begin(), t.forms.end(), [&](std::string_view form) {
        return std::any_of(words.begin(), words.end(),
                           [&](const std::string& w) { return cut_stem(w) == cut_stem(form); });
      });
    });
  };
  if (std::any_of(foods.begin(), foods.end(), lists_cut))
    foods.erase(
        std::remove_if(foods.begin(), foods.end(), [&](const process* p) { return !lists_cut(p); }),
        foods.end());
  // Where the tables are the same, the food that asks for more steps.
  const auto same_tables = [&](const process* p) {
    const list<table>& one = foods.front()->tables;
    return std::equal(p->tables.begin(), p->tables.end(), one.begin(), one.end(),
                      [](const table& a, const table& b) {
                        return a.pack == b.pack && a.dial == b.dial && a.weighted == b.weighted &&
                               a.boiling_water == b.boiling_water && a.use == b.use &&
                               a.headspace_thousandths_in == b.headspace_thousandths_in &&
                               std::equal(a.minutes.begin(), a.minutes.end(), b.minutes.begin(),
                                          b.minutes.end(),
                                          [](const jar_minutes& x, const jar_minutes& y) {
                                            return x.jar == y.jar && x.minutes[0] == y.minutes[0];
                                          });
                      });
  };
  if (foods.size() > 1 && std::all_of(foods.begin(), foods.end(), same_tables))
    return {*std::max_element(foods.begin(), foods.end(), [](const process* a, const process* b) {
      return a->conditions.size() < b->conditions.size();
    })};
  return foods;
}

}  // namespace jarproof::detail
