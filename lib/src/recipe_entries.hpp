// From a process file to its tested recipes: their parts, amounts and traits.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <iterator>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/quantity.hpp"
#include "rule_reader.hpp"

namespace jarproof {

/// What an entry refers to is checked when all files are read.
class recipe_entries : public rule_reader {
 protected:
  [[nodiscard]] list<tested_recipe> read_recipes(const node& root) {
    std::vector<tested_recipe> out;
    for (const node& n : items(root, "recipes", false)) {
      only(n, {"variant", "set", "yield", "parts"});
      tested_recipe r;
      r.variant = text(n, "variant", false);
      r.set = text(n, "set", false);
      for (const tested_recipe& other : out) {
        if (other.variant != r.variant) continue;
        fault(n,
              r.variant.empty() ? "two recipes have no `variant`" : "this `variant` stands twice",
              "give each recipe a name of its own");
        break;
      }
      if (const node* yield = value(n, "yield", false)) {
        only(*yield, {"jar", "from", "through"});
        r.yield_jar = reference(*yield, "jar", &edition::jars, true);
        r.yield_from = number(*yield, "from", 1, 200);
        r.yield_through = number(*yield, "through", 1, 200);
      }
      std::vector<recipe_part> parts;
      for (const node& part : items(n, "parts", true)) parts.push_back(read_part(part));
      const auto anchors =
          std::count_if(parts.begin(), parts.end(), [](const recipe_part& p) { return p.anchor; });
      if (!parts.empty() && anchors != 1) {
        fault(n, anchors == 0 ? "no part is the anchor" : "several parts are the anchor",
              "mark the main food, and it alone, with `anchor: yes`");
      }
      r.parts = storage_.keep(std::move(parts));
      out.push_back(r);
    }
    return storage_.keep(std::move(out));
  }

  static constexpr std::string_view part_units[] = {
      "tsp", "tbsp", "floz", "cup",   "pint",  "quart", "gallon", "oz",
      "lb",  "g",    "mL",   "piece", "clove", "head",  "stick",  "drop"};

  [[nodiscard]] recipe_part read_part(const node& n) {
    only(n, {"food",   "limit", "role",     "anchor", "optional", "discarded", "swap",
             "one_of", "form",  "evidence", "also",   "tsp",      "tbsp",      "floz",
             "cup",    "pint",  "quart",    "gallon", "oz",       "lb",        "g",
             "mL",     "piece", "clove",    "head",   "stick",    "drop"});
    recipe_part p;
    std::vector<std::string_view> foods;
    if (const node* food = value(n, "food", true)) {
      if (food->kind == node_kind::sequence) {
        p.foods = words(n, "food", true);
        for (const node& f : food->items) refer(f, storage_.keep(f.text), &edition::ingredients);
      } else {
        foods.push_back(reference(n, "food", &edition::ingredients, true));
        p.foods = storage_.keep(std::move(foods));
      }
    }
    const std::string_view limit = one_of(n, "limit", {"least", "most", "between", "free"});
    p.limit = limit == "least"     ? part_limit::least
              : limit == "most"    ? part_limit::most
              : limit == "between" ? part_limit::between
                                   : part_limit::free;
    p.role = role_of(one_of(n, "role",
                            {"acid-food", "low-acid", "acid", "salt", "sugar", "spice", "water",
                             "starch", "fat", "other"}));
    p.anchor = truth(n, "anchor", false);
    p.optional = truth(n, "optional", false);
    p.discarded = truth(n, "discarded", false);
    p.swap = text(n, "swap", false);
    p.one_of = text(n, "one_of", false);
    p.form = text(n, "form", false);
    static_cast<void>(one_of(n, "evidence", {"seen", "seen-part", "memory"}, false));
    int units = 0;
    for (const std::string_view unit :
         {"tsp", "tbsp", "floz", "cup", "pint", "quart", "gallon", "oz", "lb", "g", "mL", "piece",
          "clove", "head", "stick", "drop"}) {
      const node* amount = find(n, unit);
      if (amount == nullptr) continue;
      ++units;
      p.unit = unit;
      const bool range = amount->kind == node_kind::sequence;
      if (range && amount->items.size() != 2) {
        fault(*amount, "a range has two ends", "write `[4, 6]`");
        continue;
      }
      p.low = printed(range ? amount->items[0] : *amount);
      p.high = range ? printed(amount->items[1]) : p.low;
      if (p.low.over * p.high.under > p.high.over * p.low.under)
        fault(*amount, "the range ends before it begins", "swap the ends");
    }
    if (const node* also = value(n, "also", false)) {
      for (const member& m : also->members) {
        const auto known = std::find(std::begin(part_units), std::end(part_units), m.key);
        if (known == std::end(part_units)) {
          fault(file_, m.line, m.column, "`" + m.key + "` is no measure here",
                "write `also: {lb: 3}`");
          continue;
        }
        p.also_unit = *known;
        p.also = printed(m.value);
      }
      if (also->kind != node_kind::map || also->members.size() != 1)
        fault(*also, "a second measure is one amount with its unit", "write `also: {lb: 3}`");
    }
    if (units != 1 && n.kind == node_kind::map) {
      fault(n, units == 0 ? "the part has no amount" : "the part has several amounts",
            "write one, with its unit as the key: `cup: 1/2` or `lb: [2.5, 3]`");
    }
    return p;
  }

  [[nodiscard]] static part_role role_of(std::string_view role) noexcept {
    if (role == "acid-food") return part_role::acid_food;
    if (role == "low-acid") return part_role::low_acid;
    if (role == "acid") return part_role::acid;
    if (role == "salt") return part_role::salt;
    if (role == "sugar") return part_role::sugar;
    if (role == "spice") return part_role::spice;
    if (role == "water") return part_role::water;
    if (role == "starch") return part_role::starch;
    if (role == "fat") return part_role::fat;
    return part_role::other;
  }

  /// `3`, `2.25`, `1/3`, `2 2/3`: as printed, exactly.
  [[nodiscard]] printed_amount printed(const node& n) {
    std::string_view rest = n.text;
    detail::number found;
    const bool read = n.kind == node_kind::scalar &&
                      detail::take_number(rest, found) == detail::number_fault::none &&
                      detail::trim(rest).empty();
    // Small enough that two amounts can be multiplied with each other exactly.
    if (!read || found.over > 10'000'000 || found.under > 10'000) {
      fault(n, "`" + n.text + "` is no amount", "write it like `3`, `2.25`, `1/3` or `2 2/3`");
      return {};
    }
    return {static_cast<int>(found.over), static_cast<int>(found.under)};
  }

  static constexpr std::string_view known_traits[] = {
      "thickener",      "dairy",        "grain-or-pasta", "fat",         "egg",
      "low-acid-puree", "dried-legume", "cured-meat",     "meat",        "poultry",
      "seafood",        "leafy-green",  "alcohol",        "spice",       "fresh-herb",
      "salt",           "sugar",        "acidifier",      "pectin",      "liquid",
      "sweetener",      "water",        "homemade",       "not-bottled", "rehydrated-legume",
      "condiment",      "made-dish",    "broth",          "starter"};

  void check_trait(const node& at, std::string_view t) {
    if (std::find(std::begin(known_traits), std::end(known_traits), t) != std::end(known_traits))
      return;
    fault(at, "`" + std::string(t) + "` is no trait",
          "use one of: " + detail::joined(known_traits, "and"));
  }
};

}  // namespace jarproof
