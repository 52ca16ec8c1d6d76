// How much seasoning a mixture has: above the limits of the edition it counts as a vegetable.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/judge_batch.hpp"
#include "jarproof/detail/judge_process.hpp"
#include "jarproof/detail/mixture_parts.hpp"
#include "jarproof/detail/plan_lines.hpp"

namespace jarproof::detail {

/// How much the batch makes, in thousandths of a teaspoon, at least: as stated, or the liquids and
/// four fifths of what the solids weigh, taken as water (common practice, no source).
[[nodiscard]] inline std::int64_t batch_at_least(const judging& j,
                                                 const std::vector<plan_line>& lines,
                                                 bool& stated) {
  stated = true;
  // 1 fl oz is 6 tsp.
  if (j.what.batch) return j.what.batch->value.value / 1'000 * 6;
  const std::int64_t jar = jar_volume(j).value_or(0);
  if (j.what.jars && jar > 0) return jar / 1'000 * 6 * j.what.jars->value;
  if (const std::optional<measured> made = yield_volume(j.what)) return made->low;
  stated = false;
  std::int64_t sum = 0;
  for (const plan_line& l : lines) {
    if (l.reading.what == nullptr || l.reading.at_serving || !l.amount || says_discarded(l))
      continue;
    const ingredient& i = *l.reading.what;
    const bool liquid = is_a(j.rules, i, "liquid") || is_a(j.rules, i, "water");
    if (liquid && l.amount->kind == measure_kind::volume) {
      sum += l.amount->low;
    } else if (!is_seasoning(j.rules, i)) {
      const std::optional<measured> mg = in_mg(j.rules, i, *l.amount, l.reading.words);
      // 1 mL of water weighs 1 g and is 0.2029 tsp.
      if (mg) sum += mg->low / 1'000 * 203 * 4 / 5;
    }
  }
  return sum;
}

/// What a frame holds without a process of its own, such as the zucchini of mixed vegetables, is a
/// part of the batch and not most of it.
inline void judge_held_share(judging& j, const process& frame,
                             const std::vector<plan_line>& lines) {
  if (frame.needs.holds_percent == 0) return;
  const measure_unit& cup = *unit_named("cup");
  std::int64_t sum = 0;
  const plan_line* last = nullptr;
  for (const plan_line& l : lines) {
    if (l.reading.at_serving || l.reading.what == nullptr) continue;
    const ingredient* held = nullptr;
    each_ingredient(l, [&](const ingredient& i) {
      if (frame.holds.contains(i.id)) held = &i;
    });
    if (held == nullptr) continue;
    const std::optional<measured> amount = amount_in(l, *held);
    const std::optional<measured> cups =
        amount ? converted(j.rules, *held, *amount, cup, l.reading.words) : std::nullopt;
    if (!cups || !l.reading.open.empty()) {
      j.say("amount-unknown", place_of("ingredients", *l.said),
            {l.said->text,
             "an amount in cups",
             "how much of the mixture it is decides, because it has no process of its own",
             {},
             {}});
      return;
    }
    sum += cups->high;
    last = &l;
  }
  if (last == nullptr) return;
  bool stated = false;
  const std::int64_t batch = batch_at_least(j, lines, stated);
  if (sum <= batch / 100 * frame.needs.holds_percent) return;
  if (!stated) {
    j.say("amount-unknown", place_of("ingredients", *last->said),
          {last->said->text,
           "`batch`",
           "how much the batch makes is not said, and that decides whether this is too much",
           "Write how much is ready to fill, for example `batch: 9 qt`.",
           {}});
    return;
  }
  finding& f = j.say("ingredient-without-process", place_of("ingredients", *last->said),
                     {last->said->text,
                      "at most " + std::to_string(frame.needs.holds_percent) + " % of the batch",
                      name_in(*last, *last->reading.what) + " above its share of the mixture",
                      {},
                      {}});
  cite_first(j.rules, frame.sources, f);
}

[[nodiscard]] inline bool is_about(const edition& rules, const seasoning_limit& s,
                                   const ingredient& i) {
  if (!s.trait.empty()) return is_a(rules, i, s.trait);
  return std::any_of(s.foods.begin(), s.foods.end(),
                     [&](std::string_view food) { return is_kind_of(rules, i, food); });
}

/// Seasonings against the limits of the edition: above them a seasoning is a vegetable.
inline void judge_seasonings(judging& j, const process& frame,
                             const std::vector<plan_line>& lines) {
  bool stated = false;
  const std::int64_t batch = batch_at_least(j, lines, stated);
  std::vector<const plan_line*> asked;  // two limits may be about one line
  for (const seasoning_limit& s : j.rules.seasonings) {
    // Fruit is canned in syrup; a soup is not.
    if (s.trait == "sugar" && frame.recipe != recipe_kind::frame) continue;
    const measure_unit& unit = *unit_named(s.unit);
    const base_amount each = base_of(s.per_quart, unit);
    // 192,000 thousandths of a tsp are a quart.
    const std::int64_t most = divide(each.over * (batch / 100), each.under * 1'920, rounding::down);
    std::int64_t sum = 0;
    const plan_line* last = nullptr;
    for (const plan_line& l : lines) {
      if (l.reading.at_serving || !l.amount) continue;
      bool about = false;
      const ingredient* what = nullptr;
      each_ingredient(l, [&](const ingredient& i) {
        if (!about && ban_on(j.rules, i).empty() && is_about(j.rules, s, i)) {
          about = true;
          what = &i;
        }
      });
      if (!about) continue;
      const std::optional<measured> amount = amount_in(l, *what);
      // A count belongs to the entry that counts, a measure to the one that measures.
      const auto same_kind = [&](const measure_unit& u) {
        return amount->kind == u.kind &&
               (u.kind != measure_kind::count || amount->counts == u.counts ||
                (u.counts == "piece" && amount->counts == "stick"));
      };
      const std::optional<measured> m =
          same_kind(unit) ? amount : converted(j.rules, *what, *amount, unit, l.reading.words);
      if (!m) {
        const bool elsewhere = std::any_of(
            j.rules.seasonings.begin(), j.rules.seasonings.end(), [&](const seasoning_limit& o) {
              if (&o == &s || !is_about(j.rules, o, *what)) return false;
              const measure_unit& u = *unit_named(o.unit);
              return same_kind(u) ||
                     converted(j.rules, *what, *amount, u, l.reading.words).has_value();
            });
        if (!elsewhere && std::find(asked.begin(), asked.end(), &l) == asked.end()) {
          asked.push_back(&l);
          j.say("amount-unknown", place_of("ingredients", *l.said),
                {l.said->text,
                 std::string(s.unit),
                 "how much of a seasoning it is decides whether it counts as a vegetable",
                 "Write how much it is in `" + std::string(s.unit) + "`.",
                 {}});
        }
        continue;
      }
      sum += m->high;
      last = &l;
    }
    if (last == nullptr || sum <= most) continue;
    const std::string limit = measure_text(each.over / each.under, unit, rounding::down) + " of " +
                              std::string(s.says) + " in a quart";
    if (!stated) {
      j.say("amount-unknown", place_of("ingredients", *last->said),
            {last->said->text,
             "`batch`",
             "how much the batch makes is not said, and at most " + limit + " counts as seasoning",
             "Write how much is ready to fill, for example `batch: 9 qt`.",
             {}});
    } else {
      sentence_facts facts;
      facts.found = last->said->text;
      facts.required = "at most " + limit;
      facts.reason = std::string(s.says) + " above a seasoning's amount (" + limit + ")";
      finding& f = j.say("ingredient-without-process", place_of("ingredients", *last->said),
                         std::move(facts));
      cite_first(j.rules, frame.sources, f);
    }
  }
}

}  // namespace jarproof::detail
