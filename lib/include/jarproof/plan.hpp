// What a cook intends to do with one batch.
//
//   jarproof::result<jarproof::plan> plan = jarproof::read_plan(document);   //
//   jarproof/read_plan.hpp
//
// Every value keeps the words in which it was written and the place where it stood.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace jarproof {

/// A value with its words and its place; line and column are 0 where the format has none.
template <class T>
struct said {
  T value{};
  std::string text;
  int line = 0;
  int column = 0;
  bool in_recipe = false;  ///< the place is one in the recipe, not in the plan
};

/// An amount in the fine unit of its dimension (jarproof/quantity.hpp).
struct amount {
  std::int64_t value = 0;
  bool metric = false;
};

struct nothing {};
using word = said<nothing>;
using quantity = said<amount>;

/// Cooked food kept before canning.
struct holding {
  std::optional<quantity> duration;      ///< `for`, rounded up
  std::optional<quantity> temperature;   ///< `at`, rounded down
  std::int64_t highest_temperature = 0;  ///< `at`, rounded up
};

/// What the stated canner holds.
struct canner_size {
  std::optional<said<int>> quarts;
  std::optional<said<int>> pints;
  std::optional<quantity> volume;  ///< rounded down
};

/// Fresh food as it was bought: `20 lb tomatoes`, `1/2 bushel of apples`.
struct raw_food {
  std::int64_t thousandths = 0;  ///< of a pound, or of a bushel; rounded down
  bool bushels = false;
  std::string name;  ///< of the food, as written; may be empty
};

struct plan {
  std::string source;  ///< display name of the text it came from
  int line = 0;        ///< where it starts
  int column = 0;

  std::optional<word> title, lot, date;
  std::optional<word> food, form;
  std::optional<said<bool>> as_published;
  std::optional<word> recipe;  ///< file name of a recipe, as written
  std::string recipe_source;   ///< display name of the recipe that was read; empty without one
  std::vector<word> ingredients;
  std::vector<word> steps;    ///< what is done with them, in the cook's words
  std::optional<word> yield;  ///< how much it makes, such as `9 pints`
  std::optional<word> pack;   ///< `raw` or `hot`
  std::optional<word> jar;
  std::optional<amount> jar_volume;  ///< of a jar written as an amount, rounded up
  std::optional<word> method;
  std::optional<word> gauge;  ///< `dial` or `weighted`
  std::optional<quantity> gauge_error, pressure;
  std::optional<quantity> time, temperature, altitude, headspace, vent, heat_up, water;
  std::optional<word> acid;
  std::optional<quantity> vinegar, solids;
  std::vector<word> prepared;
  std::optional<said<holding>> held;
  std::optional<quantity> batch, keep_back;
  std::optional<said<int>> jars;
  std::optional<said<raw_food>> from;
  std::optional<said<canner_size>> canner;
  std::optional<word> start, finish_by;
};

}  // namespace jarproof
