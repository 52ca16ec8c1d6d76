// The plan of a canning day: jars, canner loads, the clock, produce, the step card and labels.
//
//   const jarproof::day_plan d = jarproof::day_of(plan, edition);      // jarproof/day_of.hpp
//   for (const jarproof::day_load& l : d.loads)
//     for (const jarproof::day_stage& s : l.stages) use(s.from_min, s.to_min, s.what);
//
// A plan that is not accepted has a report and nothing else. A day refers to the edition it was
// made with, which must outlive it.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "jarproof/report.hpp"

namespace jarproof {

/// The jars of one batch. Volumes are in millionths of a US fluid ounce.
struct day_jars {
  std::string jar;              ///< as the plan names it: `pint`, `500 mL`
  std::int64_t volume = 0;      ///< of the jar
  std::int64_t fill_least = 0;  ///< food in a jar with a wide mouth; an estimate
  std::int64_t fill_most = 0;   ///< food in a jar with a regular mouth; an estimate
  int count = 0;                ///< jars that are planned: stated, or filled at least
  int most = 0;                 ///< jars that it may fill; `count` where the plan states it
  std::string by;               ///< what they are counted from: `jars`, `batch`, `yield` or `from`
  std::int64_t available = 0;   ///< food to fill in; 0 where no volume is stated
  std::int64_t left = 0;        ///< of it, what fills no jar of this size
};

/// Fresh food for the jars, or in place of `batch`. Thousandths of a pound or of a bushel.
struct day_food {
  std::string name;
  std::int64_t least_lb = 0;
  std::int64_t most_lb = 0;
  std::int64_t least_bushels = 0;  ///< 0 where no bushel is published
  std::int64_t most_bushels = 0;
  std::vector<std::string> sources;
  std::string evidence;
};

/// One step of the card, caution or remark, with where it comes from.
struct day_step {
  std::string id;
  std::string says;
  std::vector<std::string> parts;  ///< the directions of the process, one by one
  std::vector<std::string> sources;
  std::string evidence;  ///< where it has no source
};

struct day_label_line {
  std::string name;
  std::string value;
};

/// One plan of the day. Where it is not accepted, all but its report and its names is empty.
struct day_batch {
  jarproof::report judged;
  std::string name;  ///< title of the plan, or of the food
  std::string lot;
  std::optional<day_jars> jars;
  std::optional<day_food> produce;
  std::vector<day_step> steps;  ///< the card, in order
  std::vector<day_step> cautions;
  std::vector<day_step> left;  ///< what to do with food that fills no jar
  std::vector<day_label_line> label;
  std::vector<day_step> check_after;
  std::vector<day_step> opening;
  std::vector<finding> findings;    ///< of the day; none of them changes the verdict
  std::vector<std::string> unsaid;  ///< what is left out, and why
};

/// A stretch of the clock, in minutes from the start of the day.
struct day_stage {
  std::string id;  ///< `heat-up`, `vent`, `come-up`, `process`, `cool-down`, `rest`, `next-load`
  int from_min = 0;
  int to_min = 0;
  int least_min = 0;  ///< how short it may be
  std::string what;
  bool fuel = false;  ///< the heat is on
  std::vector<std::string> sources;
  std::string evidence;
};

struct day_load_part {
  std::size_t batch = 0;  ///< index in `day_plan::batches`
  int count = 0;
};

/// Jars that are processed together.
struct day_load {
  int number = 1;
  std::vector<day_load_part> parts;
  int jars = 0;
  int holds = 0;  ///< jars of this kind that the canner holds
  std::string method;
  std::string gauge;
  std::string pressure;  ///< what the gauge shows; empty without one
  int time_min = 0;
  bool half_full = false;  ///< no more than half of what the canner holds
  std::vector<day_step> remarks;
  std::vector<day_stage> stages;
};

struct day_plan {
  jarproof::verdict verdict = jarproof::verdict::unreadable;  ///< the worst of all plans
  std::vector<day_batch> batches;
  std::vector<day_load> loads;
  std::vector<std::string> apart;  ///< why plans do not share a load
  std::vector<std::string> unsaid;
  std::string date;              ///< of the start, ISO; empty where no plan says it
  std::optional<int> start_min;  ///< time of day, minutes after midnight
  int total_min = 0;             ///< from the start to the last jars
  int least_total_min = 0;
  int fuel_min = 0;
  int least_fuel_min = 0;
};

}  // namespace jarproof
