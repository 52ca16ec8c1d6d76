// The food that a dish is called by: `green beans` of "Grandma's green beans with bacon".
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/way_parts.hpp"

namespace jarproof::detail {

/// What a title speaks of, without what comes with it: the words before `with`, `for`, ...
[[nodiscard]] inline std::string head_of_title(std::string_view title) {
  std::string text = folded(title.substr(0, title.find_first_of(",(:;")));
  for (const std::string_view end : {" with ", " for ", " con ", " para "})
    text.resize(std::min(text.size(), text.find(end)));
  return text;
}

/// The processes whose name ends the title, by the longest such name; those that share it are all
/// there.
[[nodiscard]] inline std::vector<const process*> named_by_title(const edition& rules,
                                                                std::string_view title) {
  std::vector<const process*> out;
  std::size_t longest = 0;
  const std::string whole = folded(title);
  for (const std::string& text : {whole, head_of_title(title)}) {
    const auto take = [&](const process& p, std::string_view name) {
      const bool ends = text.size() >= name.size() &&
                        text.compare(text.size() - name.size(), name.size(), name) == 0 &&
                        (text.size() == name.size() || text[text.size() - name.size() - 1] == ' ');
      if (!ends || name.size() < longest) return;
      if (name.size() > longest) out.clear();
      longest = name.size();
      if (std::find(out.begin(), out.end(), &p) == out.end()) out.push_back(&p);
    };
    for (const process& p : rules.processes) {
      if (!usable(p)) continue;
      for (const std::string_view name : p.names) take(p, name);
      for (const std::string_view name : p.shared_names) take(p, name);
    }
    if (!out.empty()) return out;
  }
  return out;
}

/// True where the first line is a title that was pasted without a blank line below it: it has no
/// amount, the next two have, and it is nothing that a jar may hold. So no food is passed over.
[[nodiscard]] inline bool is_title(const dish& d) {
  if (d.lines.size() < 4) return false;
  const plan_line& first = d.lines.front();
  if (first.reading.amount || !d.lines[1].reading.amount || !d.lines[2].reading.amount)
    return false;
  const ingredient* i = first.reading.what;
  return i == nullptr || !first.reading.strange.empty() || !ban_on(d.rules, *i).empty() ||
         is_a(d.rules, *i, "made-dish");
}

/// Water or broth to cover what is solid.
[[nodiscard]] inline bool has_broth(const dish& d) {
  return std::any_of(d.lines.begin(), d.lines.end(), [&](const plan_line& l) {
    return l.reading.what != nullptr && is_liquid(d.rules, *l.reading.what);
  });
}

/// A plain food that the title names and the lines hold, canned by its own table without the rest.
/// Stock is strained: nothing of its lines stays but the liquid.
[[nodiscard]] inline std::optional<way> titled_food(const dish& d, const process& p) {
  if (p.recipe != recipe_kind::plain) return std::nullopt;
  const ingredient* food = p.names.empty() ? nullptr : ingredient_named(d.rules, p.names[0]);
  const bool stock = food != nullptr && is_a(d.rules, *food, "broth");
  bool bones = false;
  way out;
  out.kind = "as-planned";
  out.title = "The food it is called by: " + std::string(p.title);
  out.process = &p;
  left_outs outs(d.rules);
  int own = 0;
  int others = 0;
  const auto unread = [&](const plan_line& l) {
    // `Cook the beans until soft.` is no food of its own.
    const bool step = !l.reading.amount && !l.said->text.empty() && l.said->text.back() == '.';
    return l.reading.what == nullptr || !l.reading.strange.empty() || step;
  };
  for (const plan_line& l : d.lines) {
    each_ingredient(l, [&](const ingredient& i) {
      const left_out* entry = find(d.rules.left_outs, "bones");
      bones = bones || (entry != nullptr && entry->foods.contains(i.id)) ||
              (i.can_as.contains(p.id) && !is_liquid(d.rules, i));
    });
    if (stock && l.reading.what != nullptr && ban_on(d.rules, *l.reading.what).empty()) continue;
    if (unread(l)) {
      outs.add(find(d.rules.left_outs, "not-read"), short_line(l));
      ++out.altered;
      continue;
    }
    each_ingredient(l, [&](const ingredient& i) {
      if (i.can_as.contains(p.id)) {
        ++own;
        return;
      }
      const bool banned = !ban_on(d.rules, i).empty();
      if (!banned && (is_a(d.rules, i, "water") || is_seasoning(d.rules, i))) return;
      others += banned ? 0 : 1;
      const left_out* entry = outs.entry_of(i, says_for_jar);
      outs.add(entry != nullptr ? entry : find(d.rules.left_outs, "not-held"), short_line(l));
      ++out.altered;
    });
  }
  // `Chili` is a name of peppers too; what is mostly something else is no plain food.
  if (stock ? !bones : own == 0 || others > own) return std::nullopt;
  outs.write(out);
  out.numbers = numbers_for(d, p, out.changes);
  if (!open_to(d, out.numbers)) return std::nullopt;
  add_acid(p, out.changes);
  cite(d, p, out.numbers, out.sources);
  return out;
}

}  // namespace jarproof::detail
