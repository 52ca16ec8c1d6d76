// What the canning day goes by: minutes, jars, produce and texts; part of an edition
// (jarproof/edition.hpp). It decides nothing about a plan.
// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "jarproof/citation.hpp"
#include "jarproof/list.hpp"

namespace jarproof {

/// How long one stage of a load takes, from the least to the most that is known.
struct day_minutes {
  std::string_view id;
  std::string_view stage;          ///< `heat-up`, `come-up`, `cool-down`, `rest` or `next-load`
  list<std::string_view> methods;  ///< ids of the methods that have this stage
  int from_min = 0;
  int through_min = 0;
  int use_min = 0;  ///< what the clock is planned with
  std::string_view says;
  std::string_view evidence;  ///< where it has no source
  list<citation> sources;
};

/// A single number of the day, such as the boiling before tasting.
struct day_number {
  std::string_view id;
  int thousandths = 0;
  std::string_view unit;  ///< `in`, `jars`, `F`, `h`, `years` or `min`
  std::string_view says;
  std::string_view evidence;
  list<citation> sources;
};

/// How much fresh food, as bought, fills one jar.
struct day_produce {
  std::string_view id;
  list<std::string_view> names;      ///< words of `from` that mean it
  list<std::string_view> processes;  ///< ids of the processes that it is for
  std::string_view jar;              ///< id of the jar that the pounds are for
  int from_thousandths_lb = 0;
  int through_thousandths_lb = 0;
  int bushel_lb = 0;  ///< 0 where no bushel is known
  int bushel_from_qt = 0;
  int bushel_through_qt = 0;
  std::string_view evidence;
  list<citation> sources;
};

/// A sentence of the day, with words in braces that are filled in.
struct day_text {
  std::string_view id;
  std::string_view part;           ///< one of `day_parts`
  std::string_view when;           ///< asks for something of the process; may be empty
  list<std::string_view> methods;  ///< only with these; empty: with all
  list<std::string_view> packs;
  list<std::string_view> gauges;  ///< `dial`, `weighted`, or `any` where the plan does not say
  std::string_view says;
  std::string_view evidence;
  list<citation> sources;
};

/// Section `day` of rules/canning-day.yaml.
struct day_rules {
  list<day_minutes> minutes;
  list<day_number> numbers;
  list<day_produce> produce;
  list<day_text> texts;  ///< in the order of the day
};

namespace detail {

/// What a text may belong to: the step card, what to mind, food that fills no jar, a load of
/// several kinds or one that is half full, the day after, the day on which a jar is opened.
inline constexpr std::string_view day_parts[] = {"step",      "caution", "left",   "mixed",
                                                 "half-full", "check",   "opening"};

/// What `when` of a text may ask for.
inline constexpr std::string_view day_conditions[] = {
    "sterilize", "own-water", "usual-water",  "own-heat-up", "conditions", "acid",
    "solids",    "fills",     "up-to-30-min", "over-30-min", "boil-first"};

/// Words in braces that a text may hold.
inline constexpr std::string_view day_words[] = {
    "time",    "pressure", "headspace",  "vent",      "jar",         "jars",
    "water",   "water_f",  "sterilize",  "acid",      "temperature", "temperature_least",
    "heat_up", "boil",     "cool_least", "cool_most", "years",       "solids"};

}  // namespace detail

}  // namespace jarproof
