// Which part of one tested recipe each line of a plan is, and how much of it the lines hold.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/plan_lines.hpp"

namespace jarproof::detail {

/// How near a line's ingredient is to a food of the recipe.
enum class nearness { other, more_general, kind, same };

[[nodiscard]] inline nearness near_to(const edition& rules, const ingredient& i,
                                      const recipe_part& part) {
  nearness best = nearness::other;
  for (const std::string_view food : part.foods) {
    if (i.id == food) return nearness::same;
    const ingredient* wanted = find(rules.ingredients, food);
    if (wanted == nullptr) continue;
    nearness here = nearness::other;
    if (is_kind_of(rules, i, food)) {
      here = nearness::kind;
    } else if (is_kind_of(rules, *wanted, i.id)) {
      here = nearness::more_general;
    }
    best = std::max(best, here);
  }
  return best;
}

/// True where a recipe of the food has a part in this role.
[[nodiscard]] inline bool has_part_with(const process& food, part_role role) {
  return std::any_of(food.recipes.begin(), food.recipes.end(), [&](const tested_recipe& r) {
    return std::any_of(r.parts.begin(), r.parts.end(),
                       [&](const recipe_part& part) { return part.role == role; });
  });
}

/// The lines of a plan, each with the part of one tested recipe in which it has its place.
class recipe_places {
 public:
  recipe_places(const judging& j, const tested_recipe& r, const std::vector<plan_line>& lines)
      : j_(j), recipe_(r), lines_(lines), part_of_(lines.size(), nullptr) {
    measure();
    assign();
  }

  /// True for a line that has a place in this recipe.
  [[nodiscard]] bool has_place(std::size_t line) const noexcept {
    return part_of_[line] != nullptr;
  }

 protected:
  const judging& j_;
  const tested_recipe& recipe_;
  const std::vector<plan_line>& lines_;
  std::vector<const recipe_part*> part_of_;  // of each line; null where it has no place

  /// True where the line says that it does not stay in the jar. A brine does stay, unless the
  /// recipe has one that is poured off.
  [[nodiscard]] bool is_discarded(const plan_line& l) const {
    const bool kept = says(l.reading, "then") || says(l.reading, "used") ||
                      says(l.reading, "into") || says(l.reading, "from");
    if (kept) return false;
    if (l.poured_off || says_discarded(l) || says(l.reading, "soak") || says(l.reading, "soaking"))
      return true;
    return says(l.reading, "brine") &&
           std::any_of(recipe_.parts.begin(), recipe_.parts.end(), [](const recipe_part& p) {
             return p.discarded && p.form.find("brine") != std::string_view::npos;
           });
  }
  [[nodiscard]] static bool readable(const plan_line& l) {
    return l.reading.what != nullptr && l.reading.strange.empty() && !l.reading.at_serving;
  }
  [[nodiscard]] bool has_line(const recipe_part& part) const {
    return std::find(part_of_.begin(), part_of_.end(), &part) != part_of_.end();
  }

  /// What the lines of a part hold together, in the measure that the recipe prints.
  [[nodiscard]] std::optional<measured> sum_of(const recipe_part& part,
                                               bool& without_amount) const {
    measured sum;
    sum.kind = unit_named(part.unit)->kind;
    bool any = false;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      if (part_of_[i] != &part) continue;
      const std::optional<measured> one = in_printed_measure(part, lines_[i]);
      if (!one) {
        without_amount = true;
        continue;
      }
      // The salt of a brine does not make up for salt that the ferment lacks.
      const bool alone = part.role == part_role::salt && part.limit == part_limit::least;
      if (alone && any) {
        sum.low = std::max(sum.low, one->low);
        sum.high = std::max(sum.high, one->high);
        sum.metric = 0;
      } else {
        sum.low += one->low;
        sum.high += one->high;
        const bool metric = one->metric > 0 && (!any || sum.metric > 0);
        sum.metric = metric ? sum.metric + one->metric : 0;
      }
      any = true;
    }
    if (!any) return std::nullopt;
    return sum;
  }

  /// A line's amount in the measure of its part. Where the recipe prints the amount in a second
  /// measure, the two printed amounts say how they go together.
  [[nodiscard]] std::optional<measured> in_printed_measure(const recipe_part& part,
                                                           const plan_line& l) const {
    if (!l.amount || !l.reading.open.empty()) return std::nullopt;
    const measure_unit& unit = *unit_named(part.unit);
    if (l.reading.purchased) {
      // The printed weight is the peeled or the bought one; where nothing says which, both count.
      const auto prints = [&](std::string_view w) {
        return part.form.find(w) != std::string_view::npos;
      };
      const measured& given = prints("peeled weight")  ? *l.reading.amount
                              : prints("as purchased") ? *l.reading.purchased
                                                       : *l.amount;
      return converted(j_.rules, *l.reading.what, given, unit, l.reading.words);
    }
    const measure_unit* also = part.also_unit.empty() ? nullptr : unit_named(part.also_unit);
    if (also != nullptr && l.amount->kind == also->kind && l.amount->kind != unit.kind) {
      const base_amount main = base_of(part.high, unit);
      const base_amount second = base_of(part.also, *also);
      measured out;
      out.kind = unit.kind;
      out.low = scaled(main, l.amount->low, second, rounding::down);
      out.high = scaled(main, l.amount->high, second, rounding::up);
      return out;
    }
    return converted(j_.rules, *l.reading.what, *l.amount, unit, l.reading.words);
  }

  [[nodiscard]] const plan_line* line_of(const recipe_part& part) const {
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      if (part_of_[i] == &part) return &lines_[i];
    }
    return nullptr;
  }

  /// All lines of a part as written, for a sum that is wrong.
  [[nodiscard]] std::string said_of(const recipe_part& part) const {
    std::string out;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      if (part_of_[i] == &part) out += (out.empty() ? "" : " + ") + lines_[i].said->text;
    }
    return out;
  }

  /// A line without a place that was meant for a missing part: rice vinegar for the vinegar,
  /// another salt for the salt of a ferment.
  [[nodiscard]] const plan_line* meant_for(const recipe_part& part) const {
    const std::string_view trait = part.role == part_role::acid    ? "acidifier"
                                   : part.role == part_role::salt  ? "salt"
                                   : part.role == part_role::sugar ? "sweetener"
                                                                   : "";
    for (std::size_t i = 0; i < lines_.size() && !trait.empty(); ++i) {
      if (part_of_[i] == nullptr && readable(lines_[i]) &&
          is_a(j_.rules, *lines_[i].reading.what, trait))
        return &lines_[i];
    }
    return nullptr;
  }

  [[nodiscard]] std::string food_text(const recipe_part& part) const {
    std::vector<std::string> names;
    for (const std::string_view id : part.foods) {
      const ingredient* i = find(j_.rules.ingredients, id);
      names.push_back(i == nullptr ? std::string(id) : std::string(i->names[0]));
    }
    return joined(names);
  }

  /// True where fresh juice or homemade vinegar stands for the acid.
  [[nodiscard]] bool has_unfit_acid() const {
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      if (part_of_[i] == nullptr && readable(lines_[i]) &&
          (is_a(j_.rules, *lines_[i].reading.what, "not-bottled") ||
           is_a(j_.rules, *lines_[i].reading.what, "homemade")))
        return true;
    }
    return false;
  }

 private:
  std::vector<nearness> near_;  // of each line to each part

  /// How near each line is to each part.
  void measure() {
    near_.assign(lines_.size() * recipe_.parts.size(), nearness::other);
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      if (!readable(lines_[i])) continue;
      for (std::size_t p = 0; p < recipe_.parts.size(); ++p)
        near_[i * recipe_.parts.size() + p] =
            near_to(j_.rules, *lines_[i].reading.what, recipe_.parts[p]);
    }
  }
  [[nodiscard]] nearness near(std::size_t line, const recipe_part& part) const {
    const auto p = static_cast<std::size_t>(&part - recipe_.parts.begin());
    return near_[line * recipe_.parts.size() + p];
  }

  /// Each line goes to the part it is nearest to; a kind that two parts name goes to the first that
  /// has no line yet.
  void assign() {
    for (const nearness wanted : {nearness::same, nearness::kind, nearness::more_general}) {
      for (std::size_t i = 0; i < lines_.size(); ++i) {
        if (part_of_[i] != nullptr || !readable(lines_[i])) continue;
        for (const recipe_part& part : recipe_.parts) {
          if (near(i, part) != wanted) continue;
          // `10 onions` are not ten slices, and no pearl onions; `2 slices onion` are.
          const std::optional<measured>& given = lines_[i].reading.amount;
          const bool slices = given && given->counts == "slice";
          if (wanted == nearness::more_general && part.limit == part_limit::most && !slices &&
              unit_named(part.unit)->kind == measure_kind::count)
            continue;
          if (part.discarded != is_discarded(lines_[i]) && has_part(i, wanted, !part.discarded))
            continue;
          const bool taken = has_line(part);
          if (part_of_[i] == nullptr || !taken) part_of_[i] = &part;
          if (!taken) break;
        }
      }
    }
  }
  [[nodiscard]] bool has_part(std::size_t line, nearness wanted, bool discarded) const {
    return std::any_of(recipe_.parts.begin(), recipe_.parts.end(), [&](const recipe_part& p) {
      return p.discarded == discarded && near(line, p) == wanted;
    });
  }
};

}  // namespace jarproof::detail
