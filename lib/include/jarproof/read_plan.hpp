// From a document tree to a plan; every error of the text at once.
//
//   jarproof::result<jarproof::plan> plan = jarproof::read_plan(document);
//   if (!plan) for (const jarproof::problem& p : plan.errors()) ...
//
// Reading knows amounts and keys, not foods: which food, method or jar a word means is decided by
// the check, against an edition.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

#include "jarproof/detail/plan_values.hpp"

namespace jarproof {

namespace detail {

class plan_reader : private plan_values {
 public:
  explicit plan_reader(const document& source) : plan_values(source) {
    plan_.source = source.name;
    plan_.recipe_source = source.recipe_source;
    plan_.line = source.root.line;
    plan_.column = source.root.column;
  }

  [[nodiscard]] result<plan> read() {
    errors_ = source_.faults;
    for (problem& p : errors_) {
      // A document may have been given another name since, such as `kitchen.yaml:10`.
      if (!in_recipe(p)) p.file = source_.name;
    }
    if (source_.root.kind != node_kind::map) {
      if (errors_.empty())
        fault(source_.root, "this is no plan",
              "write a plan as keys with values, for example `food: green beans`");
      return errors_;
    }
    if (source_.root.members.empty() && errors_.empty()) {
      fault(source_.root, "the plan is empty",
            "write at least `food`, `pack`, `jar`, `method`, `time` and `altitude`");
    }
    for (const member& m : source_.root.members) read_member(m);
    if (!errors_.empty()) {
      const auto place = [&](const problem& p) {
        return std::make_tuple(in_recipe(p), p.line, p.column);
      };
      std::stable_sort(errors_.begin(), errors_.end(),
                       [&](const problem& a, const problem& b) { return place(a) < place(b); });
      return errors_;
    }
    return std::move(plan_);
  }

 private:
  plan plan_;

  [[nodiscard]] bool in_recipe(const problem& p) const {
    return !source_.recipe_source.empty() && p.file == source_.recipe_source;
  }

  /// Which lines the recipe has is not known here: whoever may open files puts them in before.
  void read_recipe_name(const node& value) {
    plan_.recipe = text(value, "recipe");
    if (plan_.recipe && source_.recipe_source.empty())
      fault(value, "the recipe `" + plan_.recipe->text + "` was not read with the plan",
            "write its lines under `ingredients`");
  }

  void read_jar(const node& value) {
    plan_.jar = text(value, "jar");
    if (!plan_.jar) return;
    const amount_reading r = read_amount(plan_.jar->text, dimension::volume, rounding::up);
    // `1/2 pint` is both an amount and a size's name; as an amount it means the same. What is no
    // amount, such as `8 oz jar`, may still be the name of a size in the edition.
    if (r.ok() && r.value > 0) {
      plan_.jar_volume = amount{r.value, r.metric};
      return;
    }
    const bool has_word =
        plan_.jar->text.find_first_not_of("+-.,/0123456789 ") != std::string::npos;
    if (r.ok()) fault(value, "the jar is empty", "write `jar: pint`");
    if (!r.ok() && !has_word) {
      fault(value, r.message,
            "write the unit: `" + plan_.jar->text + " oz` (oz, cup, pt, qt, gal, mL or L)");
    }
  }

  /// A canner that steams for more than an hour boils dry: common practice, no source.
  void read_vent(const node& value) {
    constexpr std::int64_t most = 60 * std::int64_t{60'000};
    plan_.vent = measure(value, "vent", dimension::time);
    if (plan_.vent && plan_.vent->value.value > most)
      fault(value, "`" + plan_.vent->text + "` is longer than a canner may be vented",
            "write the minutes of steady steam, such as `vent: 10 min`");
  }

  void read_held(const node& value) {
    said<holding> held{{}, "", value.line, value.column};
    small_map(value, "held", {"for", "at"}, [&](const member& m) {
      if (m.key == "for") {
        held.value.duration = measure(m.value, "held", dimension::time, rounding::up);
      } else {
        held.value.temperature = measure(m.value, "held", dimension::temperature);
        if (held.value.temperature) {
          held.value.highest_temperature =
              read_amount(held.value.temperature->text, dimension::temperature, rounding::up).value;
        }
      }
    });
    plan_.held = std::move(held);
  }

  void read_canner(const node& value) {
    said<canner_size> canner{{}, "", value.line, value.column};
    small_map(value, "canner", {"quarts", "pints", "volume"}, [&](const member& m) {
      if (m.key == "quarts") canner.value.quarts = count(m.value, "canner");
      if (m.key == "pints") canner.value.pints = count(m.value, "canner");
      if (m.key == "volume") canner.value.volume = positive(m.value, "canner", dimension::volume);
    });
    plan_.canner = std::move(canner);
  }

  void read_member(const member& m) {
    const std::string& key = m.key;
    const node& value = m.value;
    if (value.faulty) return;
    if (key == "title")
      plan_.title = text(value, key);
    else if (key == "lot")
      plan_.lot = text(value, key);
    else if (key == "date")
      plan_.date = date(value);
    else if (key == "food")
      plan_.food = text(value, key);
    else if (key == "form")
      plan_.form = text(value, key);
    else if (key == "as-published")
      plan_.as_published = yes_or_no(value, key);
    else if (key == "recipe")
      read_recipe_name(value);
    else if (key == "ingredients")
      plan_.ingredients = lines(value, key);
    else if (key == "steps")
      plan_.steps = lines(value, key);
    else if (key == "yield")
      plan_.yield = text(value, key);
    else if (key == "pack")
      plan_.pack = one_of(value, key, {"raw", "hot"});
    else if (key == "jar")
      read_jar(value);
    else if (key == "method")
      plan_.method = text(value, key);
    else if (key == "gauge")
      plan_.gauge = one_of(value, key, {"dial", "weighted"});
    else if (key == "gauge-error")
      plan_.gauge_error = measure(value, key, dimension::pressure, rounding::up);
    else if (key == "pressure")
      plan_.pressure = positive(value, key, dimension::pressure);
    else if (key == "time")
      plan_.time = positive(value, key, dimension::time);
    else if (key == "temperature")
      plan_.temperature = measure(value, key, dimension::temperature);
    else if (key == "altitude")
      plan_.altitude = measure(value, key, dimension::altitude, rounding::up);
    else if (key == "headspace")
      plan_.headspace = measure(value, key, dimension::length);
    else if (key == "vent")
      read_vent(value);
    else if (key == "heat-up")
      plan_.heat_up = measure(value, key, dimension::time);
    else if (key == "water")
      plan_.water = measure(value, key, dimension::volume);
    else if (key == "acid")
      plan_.acid = text(value, key);
    else if (key == "vinegar")
      plan_.vinegar = measure(value, key, dimension::share);
    else if (key == "solids")
      plan_.solids = measure(value, key, dimension::share, rounding::up);
    else if (key == "prepared")
      plan_.prepared = word_list(value, key);
    else if (key == "held")
      read_held(value);
    else if (key == "batch")
      plan_.batch = positive(value, key, dimension::volume);
    else if (key == "jars")
      plan_.jars = count(value, key);
    else if (key == "from")
      plan_.from = raw_food_of(value);
    else if (key == "keep-back")
      plan_.keep_back = measure(value, key, dimension::volume);
    else if (key == "canner")
      read_canner(value);
    else if (key == "start")
      plan_.start = clock(value, key);
    else if (key == "finish-by")
      plan_.finish_by = clock(value, key);
    else {
      std::vector<std::string_view> names;
      for (const plan_key& k : plan_keys) names.push_back(k.name);
      unknown_key(m, key, nearest(key, names), joined(names, "and"));
    }
  }
};

}  // namespace detail

/// Reads one document as a plan.
[[nodiscard]] inline result<plan> read_plan(const document& source) {
  return detail::plan_reader(source).read();
}

}  // namespace jarproof
