// One tested recipe against the lines of a plan.
//
// The recipe is scaled by its main food: what must be there has to be at least, what is limited at
// most, the printed amount at that scale.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/recipe_places.hpp"

namespace jarproof::detail {

/// A finding that is held back until it is known which recipe the plan follows.
struct held_finding {
  std::string_view id;
  place at;
  sentence_facts facts;
  bool left_unsaid = false;
};

/// The check that speaks where a part is below or above what was tested.
[[nodiscard]] inline std::string_view check_below(const recipe_part& p) noexcept {
  switch (p.role) {
    case part_role::acid:
      return "acid-too-little";
    case part_role::salt:
      return "salt-reduced-in-ferment";
    case part_role::sugar:
      return "sugar-reduced-in-jam";
    default:
      return "recipe-part-too-small";
  }
}

[[nodiscard]] inline std::string_view check_above(const recipe_part& p) noexcept {
  switch (p.role) {
    case part_role::low_acid:
    case part_role::spice:  // a spice with a limit is a fresh herb
      return "low-acid-share-too-high";
    case part_role::starch:
      return "thickener-in-jar";
    case part_role::fat:
      return "fat-in-jar";
    case part_role::water:
      return "water-too-much";
    default:
      return "recipe-part-too-large";
  }
}

/// One tested recipe against the lines of a plan.
class recipe_comparison : public recipe_places {
 public:
  recipe_comparison(const judging& j, const tested_recipe& r, const std::vector<plan_line>& lines)
      : recipe_places(j, r, lines) {
    if (!find_scale()) return;
    for (const recipe_part& part : recipe_.parts) {
      if (part.discarded) {
        compare_discarded(part);
      } else if (!part.anchor && part.limit != part_limit::free) {
        compare(part);
      }
    }
    compare_families();
  }

  [[nodiscard]] const std::vector<held_finding>& findings() const noexcept { return findings_; }
  [[nodiscard]] bool has_main_food() const {
    return anchor_ != nullptr && line_of(*anchor_) != nullptr;
  }
  /// True where a part that belongs to the recipe has no line.
  [[nodiscard]] bool lacks_part() const {
    return std::any_of(recipe_.parts.begin(), recipe_.parts.end(), [&](const recipe_part& part) {
      return belongs(part) && !has_line(part) && !alternative_is_there(part);
    });
  }
  /// True for a recipe that is more than its main food and what may be left out.
  [[nodiscard]] bool has_more() const {
    return std::any_of(recipe_.parts.begin(), recipe_.parts.end(),
                       [](const recipe_part& part) { return belongs(part) && !part.anchor; });
  }

 private:
  std::vector<held_finding> findings_;
  const recipe_part* anchor_ = nullptr;
  measured given_anchor_;

  [[nodiscard]] static bool belongs(const recipe_part& part) noexcept {
    return !part.optional && !part.discarded && part.limit != part_limit::free &&
           part.role != part_role::water;
  }

  void hold(std::string_view id, const place& at, sentence_facts facts, bool left_unsaid = false) {
    findings_.push_back({id, at, std::move(facts), left_unsaid});
  }

  [[nodiscard]] place at(const plan_line& l) const { return place_of("ingredients", *l.said); }

  /// Finds the main food and its amount; without them nothing can be compared.
  bool find_scale() {
    for (const recipe_part& part : recipe_.parts) {
      if (part.anchor) anchor_ = &part;
    }
    if (anchor_ == nullptr) return false;
    const plan_line* line = line_of(*anchor_);
    if (line == nullptr) {
      hold("recipe-not-shown", place_of("ingredients", j_.what.ingredients.front()),
           {{},
            "the published recipe",
            "Its main food, " + food_text(*anchor_) + ", is not among the ingredients",
            {},
            {}},
           true);
      return false;
    }
    bool unknown = false;
    const std::optional<measured> sum = sum_of(*anchor_, unknown);
    bool doubtful = false;
    for (std::size_t i = 0; i < lines_.size(); ++i)
      doubtful = doubtful || (part_of_[i] == anchor_ &&
                              (lines_[i].doubtful || says(lines_[i].reading, "optional")));
    if (doubtful || unknown || !sum || sum->low == 0) {
      say_unknown(*anchor_, *line);
      return false;
    }
    given_anchor_ = *sum;
    return true;
  }

  void say_unknown(const recipe_part& part, const plan_line& first) {
    // Of several lines of a part, the one that leaves its amount open.
    const plan_line* open = &first;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      if (part_of_[i] == &part && !lines_[i].reading.open.empty()) open = &lines_[i];
    }
    const plan_line& line = *open;
    sentence_facts facts;
    facts.found = line.said->text;
    facts.required = std::string(part.unit);
    if (!line.reading.open.empty()) {
      facts.instead =
          "`" + line.reading.open + "` leaves open how much it is: write the one amount.";
      hold("amount-unknown", at(line), std::move(facts));
      return;
    }
    if (line.amount && near_to(j_.rules, *line.reading.what, part) < nearness::kind) {
      facts.reason = "another kind than the recipe's own counts by its weight";
      facts.instead = "Write how much it weighs, or use " + food_text(part) + ".";
      hold("amount-unknown", at(line), std::move(facts));
      return;
    }
    facts.reason =
        "the published recipe measures " + food_text(part) + " in `" + std::string(part.unit) + "`";
    facts.instead = "Write how much it is in that measure.";
    hold("amount-unknown", at(line), std::move(facts));
  }

  struct bounds {
    std::int64_t least;
    std::int64_t most;
  };

  /// The amount of a part at the plan's scale. A main food with a printed range stands for one
  /// whole batch, or for several, anywhere in that range; in between the strict end counts both
  /// ways.
  [[nodiscard]] bounds at_scale(const recipe_part& part) const {
    const measure_unit& unit = *unit_named(part.unit);
    const base_amount low = base_of(anchor_->low, *unit_named(anchor_->unit));
    const base_amount high = base_of(anchor_->high, *unit_named(anchor_->unit));
    constexpr printed_amount batches[] = {{1, 4}, {1, 2}, {1, 1}, {3, 2}, {2, 1},
                                          {3, 1}, {4, 1}, {5, 1}, {6, 1}};
    for (const printed_amount n : batches) {
      const bool reaches = given_anchor_.high * n.under * low.under >= low.over * n.over;
      const bool within = given_anchor_.low * n.under * high.under <= high.over * n.over;
      if (!reaches || !within || anchor_is_exact()) continue;
      return {scaled(base_of(part.low, unit), n.over, {n.under, 1}, rounding::up),
              scaled(base_of(part.high, unit), n.over, {n.under, 1}, rounding::down)};
    }
    return {scaled(base_of(part.low, unit), given_anchor_.high, low, rounding::up),
            scaled(base_of(part.high, unit), given_anchor_.low, high, rounding::down)};
  }
  [[nodiscard]] bool keeps_ratio(const measured& given, base_amount printed, bool least) const {
    return anchor_is_exact() &&
           is_in_ratio(given, given_anchor_, printed,
                       base_of(anchor_->low, *unit_named(anchor_->unit)), least);
  }
  [[nodiscard]] bool anchor_is_exact() const noexcept {
    return anchor_->low.over * anchor_->high.under == anchor_->high.over * anchor_->low.under;
  }
  /// Packages of pectin are marked in whole grams or millilitres, within 2 % of the printed amount.
  [[nodiscard]] static bounds widened(const recipe_part& part, bounds b) noexcept {
    if (part.limit != part_limit::between || part.role != part_role::other) return b;
    return {b.least - b.least / 50, b.most + b.most / 50};
  }

  [[nodiscard]] std::string for_so_much() const {
    const plan_line* line = line_of(*anchor_);
    return "for \"" + line->said->text + "\"";
  }

  void compare(const recipe_part& part) {
    const measure_unit& unit = *unit_named(part.unit);
    const bounds exact = at_scale(part);
    const bounds b = widened(part, exact);
    const plan_line* line = line_of(part);
    // Less of a spice changes the taste alone.
    const bool needs = part.limit == part_limit::least ||
                       (part.limit == part_limit::between && part.role != part_role::spice);
    const bool limits = part.limit == part_limit::most || part.limit == part_limit::between;
    const std::string least = "at least " + measure_text(exact.least, unit, rounding::up) + " " +
                              food_text(part) + " " + for_so_much();
    const std::string most = "at most " + measure_text(exact.most, unit, rounding::down) + " " +
                             food_text(part) + " " + for_so_much();
    if (line == nullptr) {
      if (!needs || part.optional || b.least == 0 || alternative_is_there(part)) return;
      const plan_line* meant = meant_for(part);
      sentence_facts facts;
      facts.found = meant == nullptr ? "none" : meant->said->text;
      facts.required = least;
      if (part.role == part_role::acid && has_unfit_acid()) return;  // said about that line
      hold(part.role == part_role::acid ? "acid-missing" : check_below(part),
           meant == nullptr ? place_of("ingredients", j_.what.ingredients.front()) : at(*meant),
           std::move(facts));
      return;
    }
    bool unknown = false;
    const std::optional<measured> sum = sum_of(part, unknown);
    if (unknown || !sum) {
      say_unknown(part, *line);
      return;
    }
    if (needs && near_to(j_.rules, *line->reading.what, part) == nearness::more_general &&
        part.role == part_role::acid) {
      hold("acid-not-bottled", at(*line), {line->said->text, food_text(part), {}, {}, {}}, true);
    }
    if (needs && !part.optional && b.least > 0) {
      for (std::size_t i = 0; i < lines_.size(); ++i) {
        if (part_of_[i] != &part) continue;
        if (!lines_[i].doubtful && !says_doubtful(lines_[i].reading, part.role == part_role::acid))
          continue;
        hold(part.role == part_role::acid ? "acid-missing" : check_below(part), at(lines_[i]),
             {lines_[i].said->text, least, {}, {}, {}});
      }
    }
    if (needs && sum->low < b.least && !keeps_ratio(*sum, base_of(part.low, unit), true)) {
      hold(check_below(part), at(*line), {said_of(part), least, {}, {}, {}});
    }
    const bool second = limits && !part.one_of.empty() && earlier_alternative(part);
    if (second) {
      hold(check_above(part), at(*line),
           {line->said->text, "one of the alternatives alone", {}, {}, {}});
    } else if (limits && sum->high > b.most && !exchanged(part) &&
               !keeps_ratio(*sum, base_of(part.high, unit), false)) {
      hold(check_above(part), at(*line),
           {said_of(part), most, "The tested recipe has " + most + ".", {}, {}});
    }
  }

  /// Water that is poured off may be any amount; a line that only looks like it, no more than
  /// printed.
  void compare_discarded(const recipe_part& part) {
    const plan_line* line = line_of(part);
    if (part.role != part_role::water || line == nullptr || is_discarded(*line)) return;
    const measure_unit& unit = *unit_named(part.unit);
    const std::int64_t most = at_scale(part).most;
    bool unknown = false;
    const std::optional<measured> sum = sum_of(part, unknown);
    if (unknown || !sum) {
      say_unknown(part, *line);
    } else if (sum->high > most) {
      hold("water-too-much", at(*line),
           {said_of(part),
            "at most " + measure_text(most, unit, rounding::down) + " " + food_text(part) + " " +
                for_so_much(),
            "Only what is poured off may be more: say `discarded` on that line.",
            {},
            {}});
    }
  }

  /// Of parts with the same `one_of` word one alone suffices.
  [[nodiscard]] bool alternative_is_there(const recipe_part& part) const {
    if (part.one_of.empty()) return false;
    return std::any_of(recipe_.parts.begin(), recipe_.parts.end(), [&](const recipe_part& other) {
      return &other != &part && other.one_of == part.one_of && has_line(other);
    });
  }

  [[nodiscard]] bool earlier_alternative(const recipe_part& part) const {
    for (const recipe_part& other : recipe_.parts) {
      if (&other == &part) return false;
      if (other.one_of == part.one_of && has_line(other)) return true;
    }
    return false;
  }

  /// The family in which one kind may stand for another: pepper for pepper, onion for onion. Only
  /// low-acid parts have one, and never the main food.
  [[nodiscard]] std::string_view family_of(const recipe_part& part) const {
    if (part.role != part_role::low_acid || part.anchor || part.limit != part_limit::most ||
        !part.one_of.empty())
      return {};  // `pearl onions or slices of onion` are counted, and no other onion is meant
    const ingredient* i = find(j_.rules.ingredients, part.foods[0]);
    if (i == nullptr) return {};
    return !part.swap.empty() ? part.swap : most_general(j_.rules, *i).id;
  }

  /// True where the part is over its own amount but its family as a whole is not.
  [[nodiscard]] bool exchanged(const recipe_part& part) const {
    const std::string_view family = family_of(part);
    return !family.empty() && family_fits(family) == std::optional<bool>(true);
  }

  /// Lines without a part of their own that belong to a family of the recipe take a place in it.
  void compare_families() {
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      if (part_of_[i] != nullptr || !readable(lines_[i])) continue;
      const std::string_view top = most_general(j_.rules, *lines_[i].reading.what).id;
      for (const recipe_part& part : recipe_.parts) {
        const ingredient* food = find(j_.rules.ingredients, part.foods[0]);
        if (family_of(part).empty() || most_general(j_.rules, *food).id != top) continue;
        part_of_[i] = &part;
        const std::string_view family = family_of(part);
        const std::optional<bool> fits = family_fits(family);
        if (!fits) {
          say_unknown(part, lines_[i]);
        } else if (!*fits) {
          hold("low-acid-share-too-high", at(lines_[i]),
               {lines_[i].said->text,
                "no more " + std::string(top) + " in all than the tested recipe has " +
                    for_so_much(),
                {},
                {},
                {}});
        }
        break;
      }
    }
  }

  /// All kinds of a family together against all of them in the recipe, by weight where they are
  /// measured in different ways; nothing where no published weight leads there.
  [[nodiscard]] std::optional<bool> family_fits(std::string_view family) const {
    const std::optional<bool> as_printed = fits_as_printed(family);
    return as_printed ? as_printed : fits_by_weight(family);
  }

  /// In the one measure that the recipe prints for the whole family; nothing where it prints more
  /// than one, or pieces of another kind stand for its own: six bell peppers are not six chiles.
  [[nodiscard]] std::optional<bool> fits_as_printed(std::string_view family) const {
    const recipe_part* first = nullptr;
    std::int64_t allowed = 0;
    base_amount printed;
    measured given;
    bool metric = true;
    for (const recipe_part& part : recipe_.parts) {
      if (family_of(part) != family) continue;
      if (first == nullptr) first = &part;
      const measure_unit& common = *unit_named(first->unit);
      const measure_unit& unit = *unit_named(part.unit);
      const bool pieces = common.kind == measure_kind::count;
      if (unit.kind != common.kind || unit.counts != common.counts) return std::nullopt;
      if (pieces && part.foods[0] != first->foods[0]) return std::nullopt;
      allowed += at_scale(part).most;
      const base_amount own = base_of(part.high, unit);
      metric = metric && own.under <= 100 && printed.under <= 100;  // as far as it stays exact
      if (metric)
        printed = {printed.over * own.under + own.over * printed.under, printed.under * own.under};
      for (std::size_t i = 0; i < lines_.size(); ++i) {
        if (part_of_[i] != &part) continue;
        const plan_line& l = lines_[i];
        if (!l.amount || !l.reading.open.empty()) return std::nullopt;
        if (pieces && near_to(j_.rules, *l.reading.what, part) < nearness::kind)
          return std::nullopt;
        const std::optional<measured> one =
            converted(j_.rules, *l.reading.what, *l.amount, common, l.reading.words);
        if (!one) return std::nullopt;
        given.high += one->high;
        given.metric += one->metric;
        metric = metric && one->metric > 0;
      }
    }
    if (first != nullptr) given.kind = unit_named(first->unit)->kind;
    return given.high <= allowed || (metric && keeps_ratio(given, printed, false));
  }

  [[nodiscard]] std::optional<bool> fits_by_weight(std::string_view family) const {
    std::int64_t allowed = 0;
    std::int64_t given = 0;
    for (const recipe_part& part : recipe_.parts) {
      if (family_of(part) != family) continue;
      const measure_unit& unit = *unit_named(part.unit);
      const std::int64_t most = at_scale(part).most;
      const std::optional<measured> printed =
          weight_of(*find(j_.rules.ingredients, part.foods[0]),
                    {unit.kind, most, most, unit.counts, false}, line::words_of(part.form));
      if (!printed) return std::nullopt;
      allowed += printed->low;
      for (std::size_t i = 0; i < lines_.size(); ++i) {
        if (part_of_[i] != &part) continue;
        const plan_line& l = lines_[i];
        if (!l.amount || !l.reading.open.empty()) return std::nullopt;
        const std::optional<measured> one = weight_of(*l.reading.what, *l.amount, l.reading.words);
        if (!one) return std::nullopt;
        given += one->high;
      }
    }
    return given <= allowed;
  }

  /// In ounces. The weight of a piece is the food's own: kinds of chile weigh from 6 to 60 g.
  [[nodiscard]] std::optional<measured> weight_of(const ingredient& i, const measured& m,
                                                  const std::vector<std::string>& words) const {
    const bool own = std::any_of(i.weights.begin(), i.weights.end(),
                                 [&](const measure_weight& w) { return w.unit == m.counts; });
    if (m.kind == measure_kind::count && !own) return std::nullopt;
    return converted(j_.rules, i, m, *unit_named("oz"), words);
  }
};

}  // namespace jarproof::detail
