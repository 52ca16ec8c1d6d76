// The rule data: published tables, jars, methods, altitude bands and checks, as constant views.
//
//   const jarproof::edition& edition = jarproof::builtin_edition();   // jarproof/builtin.hpp
//   for (const jarproof::process& p : edition.processes) use(p.id, p.title);
//
// One model, two producers: the edition compiled into the library, and a rule folder read at run
// time (jarproof/rules.hpp). Every number stands in the unit in which its source printed it.
// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "jarproof/citation.hpp"
#include "jarproof/day_rules.hpp"
#include "jarproof/list.hpp"
#include "jarproof/recipe_words.hpp"
#include "jarproof/run_rules.hpp"
#include "jarproof/way_rules.hpp"

namespace jarproof {

/// One altitude band, both ends inclusive.
struct altitude_step {
  int from_ft = 0;
  int through_ft = 0;      ///< 0 where the table prints no upper end
  int psi = 0;             ///< 0 in a boiling-water band
  std::string_view says;   ///< shown with a plan that falls into this band; may be empty
  list<citation> sources;  ///< where this band alone rests on a publication of its own
};

/// A printed row of altitude bands, ascending and without gaps.
struct band_set {
  std::string_view id;
  std::string_view title;
  std::string_view gauge;  ///< `dial`, `weighted`, or empty for boiling water
  list<altitude_step> steps;
  list<citation> sources;
};

/// A jar size that tables list.
struct jar_size {
  std::string_view id;
  std::string_view title;
  int volume_floz = 0;  ///< US fluid ounces
  list<std::string_view> names;
  std::string_view limit;  ///< where this size may be used at all; may be empty
  list<citation> sources;
};

/// A way of heating jars, accepted or refused.
struct method {
  std::string_view id;
  std::string_view title;
  list<std::string_view> names;
  bool accepted = false;
  std::string_view why;      ///< of a refused method: what goes wrong
  std::string_view instead;  ///< of a refused method: what to do
  int vent_min = 0;
  int highest_psi = 0;
  list<int> weights_psi;  ///< what a weighted gauge can hold
  list<int> weights_kpa;  ///< the same in kPa as marked on weights, two for each psi
  int smallest_canner_quarts = 0;
  int smallest_canner_volume_qt = 0;
  int gauge_error_psi = 0;      ///< largest dial error that may be corrected for
  int longest_min = 0;          ///< of a steam canner, altitude included; 0 = no limit
  int sterilize_under_min = 0;  ///< jars are boiled empty for a process shorter than this
  int sterilize_min = 0;        ///< for so long up to 1,000 ft, and a minute more each 1,000 ft
  list<citation> sources;
};

/// A word of a closed vocabulary.
struct form_word {
  std::string_view id;
  std::string_view says;
  std::string_view refused_by;  ///< check that refuses this form of any low-acid food; may be empty
};

/// A word of the list that a plan's `prepared` may hold.
struct prepared_word {
  std::string_view id;
  std::string_view says;
  std::string_view denies;  ///< the prepared word that this one contradicts; may be empty
  std::string_view
      refused_by;  ///< check that refuses it where no condition asks for it; may be empty
  list<std::string_view> general;  ///< packs with which it is let pass where no condition names it
};

/// Minutes for one listed jar: one number under pressure, one for each altitude band in boiling
/// water.
struct jar_minutes {
  std::string_view jar;
  list<int> minutes;
};

/// A row group of a published table: everything that shares form, pack, bands and evidence. It is
/// either a boiling-water table or one pressure option with a column for each gauge.
struct table {
  list<std::string_view> forms;
  std::string_view pack;   ///< `raw` or `hot`
  std::string_view style;  ///< the preparation as the table describes it
  int headspace_thousandths_in = 0;
  list<jar_minutes> minutes;
  std::string_view dial;           ///< band set of the dial column; empty where there is none
  std::string_view weighted;       ///< band set of the weighted column; empty where there is none
  std::string_view boiling_water;  ///< band set of a boiling-water table; empty under pressure
  list<citation> sources;
  std::string_view evidence;
  int entries = 0;
  bool use = false;
  std::string_view note;
};

/// Something that belongs to a process beside its numbers.
struct condition {
  std::string_view says;
  list<std::string_view> packs;    ///< empty: both packs
  std::string_view prepared;       ///< word by which a plan states it; may be empty
  std::string_view check;          ///< check that finds it contradicted; may be empty
  bool must_be_said = false;       ///< left unsaid, the plan is incomplete
  bool instead_of_recipe = false;  ///< stated, no proportions need to be shown
  list<std::string_view> if_any;   ///< traits: belongs only to a recipe that shows such a thing
  list<std::string_view> said_by;  ///< words of those lines that state it too
  bool own_recipe = false;         ///< must be said where a frame is filled by the cook's own lines
  bool fills = false;              ///< is done when the jars are filled, after any acid
};

/// Acid that belongs into every jar; of several, one alone suffices.
struct acid_choice {
  std::string_view acid;  ///< id of an ingredient, such as `citric-acid`
  int thousandths_tsp_per_pint = 0;
  std::string_view says;
};

/// Low-temperature pasteurization, for the pickles whose recipe names it; 0 minutes = not named.
struct low_temperature_process {
  int minutes = 0;
  int least_f = 0;
  int most_f = 0;
  list<citation> sources;
};

/// An amount as printed: a fraction of a unit. Ranges have two.
struct printed_amount {
  int over = 0;
  int under = 1;
};

/// What a recipe's amount limits when the recipe is scaled by its main food.
enum class part_limit { least, most, between, free };

/// What a part does in the jar.
enum class part_role { acid_food, low_acid, acid, salt, sugar, spice, water, starch, fat, other };

/// One line of a tested recipe. Several foods: any of them or a mixture, by their sum.
struct recipe_part {
  list<std::string_view> foods;  ///< ids of ingredients
  std::string_view unit;         ///< `cup`, `lb`, `piece`, ... (jarproof/recipe_amount.hpp)
  printed_amount low;
  printed_amount high;
  std::string_view also_unit;  ///< of an amount that is printed in a second measure; may be empty
  printed_amount also;
  part_limit limit = part_limit::free;
  part_role role = part_role::other;
  bool anchor = false;  ///< the main food: the recipe is scaled by it
  bool optional = false;
  bool discarded = false;   ///< soak water and the like: does not stay in the jar
  std::string_view swap;    ///< parts with the same word may replace each other, total unchanged
  std::string_view one_of;  ///< of parts with the same word, one alone suffices
  std::string_view form;
};

/// One complete tested recipe. A food may have several, and a plan follows one whole.
struct tested_recipe {
  std::string_view variant;  ///< empty where the food has one recipe
  std::string_view set;      ///< a plan needs one recipe of each set; empty for the only set
  std::string_view yield_jar;
  int yield_from = 0;
  int yield_through = 0;
  list<recipe_part> parts;
};

/// Conditions of a process that a plan states as an amount; 0 = none.
struct process_needs {
  int heat_up_min = 0;
  int water_qt = 0;
  int canner_volume_qt = 0;            ///< at least
  int canner_volume_most_qt = 0;       ///< at most
  int canner_pints = 0;                ///< pint jars that the canner holds, at least
  int canner_quarts = 0;               ///< quart jars that the canner holds, at least
  int solids_percent = 0;              ///< at most
  int holds_percent = 0;               ///< of the batch, at most, are ingredients of `holds`
  int held_most_h = 0;                 ///< cold, before canning
  list<std::string_view> packed_cold;  ///< packs for which the process itself fills cold food
};

enum class food_class { acid, low_acid };

/// What an ingredient is by itself.
enum class acidity { acid, low_acid, borderline, neutral };

/// What one measure of an ingredient weighs, from the lightest to the heaviest published value.
struct measure_weight {
  std::string_view form;  ///< as measured: `chopped`, `whole`
  std::string_view unit;  ///< `cup`, `piece`, `clove`, ...
  int low_mg = 0;
  int high_mg = 0;
  list<citation> sources;
};

/// Something a recipe may hold.
struct ingredient {
  std::string_view id;
  list<std::string_view> names;
  acidity kind = acidity::low_acid;
  std::string_view kind_of;  ///< the more general ingredient; empty where there is none
  list<std::string_view> traits;
  int vinegar_percent = 0;        ///< of an acid whose name fixes its strength
  list<std::string_view> can_as;  ///< ids of the processes by which it is canned alone
  list<measure_weight> weights;
};

/// A name of an ingredient and where that ingredient stands; the list of them is sorted by name.
struct ingredient_name {
  std::string_view name;
  int at = 0;  ///< index in `edition::ingredients`
};

/// How much of a seasoning a quart may hold and still be a seasoning. Above it, it counts as a
/// vegetable. Either `trait` or `foods` says what it is about.
struct seasoning_limit {
  std::string_view id;
  std::string_view says;  ///< what it is about, in words
  std::string_view trait;
  list<std::string_view> foods;  ///< ids of ingredients; kinds of them count too
  std::string_view unit;
  printed_amount per_quart;
  std::string_view evidence;  ///< where the number comes from
};

/// A food that no published process covers, and what to do with it instead.
struct untested_food {
  std::string_view id;
  std::string_view title;
  list<std::string_view> names;
  std::string_view why;
  std::string_view instead;
  list<citation> sources;
};

/// A published pH: it explains why a food counts as acid or not, and never permits anything.
struct ph_entry {
  std::string_view food;            ///< as the list names it
  list<std::string_view> explains;  ///< ids of processes and ingredients
  int low_hundredths = 0;
  int high_hundredths = 0;
  std::string_view says;      ///< where table and list disagree; may be empty
  std::string_view evidence;  ///< `seen`, or `memory` where nobody has read it again
  list<citation> sources;
};

/// How a plan can show that its recipe is the tested one.
enum class recipe_kind {
  plain,  ///< one food and its liquid, nothing to show
  frame,  ///< the cook chooses within rules
  fixed   ///< tested proportions
};

/// One food's tested processes.
struct process {
  std::string_view id;
  std::string_view title;
  list<std::string_view> names;         ///< usual names, each of this food alone
  list<std::string_view> shared_names;  ///< usual names that fit several foods
  std::string_view covers;              ///< what the table says it is for; may be empty
  food_class kind = food_class::low_acid;
  recipe_kind recipe = recipe_kind::plain;
  list<table> tables;
  list<condition> conditions;
  low_temperature_process low_temperature;
  list<acid_choice> acids;
  process_needs needs;
  list<std::string_view> made_of;  ///< of a frame: foods that may go in, by process id
  list<std::string_view> holds;    ///< ingredients without a process of their own that may go in
  list<std::string_view> liquids;  ///< of a frame: of these one must be there; of a plain food: may
  list<tested_recipe> recipes;     ///< of a fixed recipe: its tested proportions
  std::string_view source_note;    ///< where its numbers are not the USDA guide's; may be empty
  std::string_view added_by;       ///< rules that add it to the built-in edition; else empty
  list<citation> sources;
};

/// A plan that shows what a check is for, and the findings it must give; with a run log, those of
/// the run.
struct example {
  std::string_view name;
  std::string_view plan;
  std::string_view log;           ///< CSV; empty where the plan alone is judged
  list<std::string_view> expect;  ///< `LINE:COLUMN check-id`, in order, findings with an outcome;
                                  ///< of a log `LINE check-id`
};

/// One thing that is looked at.
struct check_rule {
  std::string_view id;
  std::string_view title;
  std::string_view level;    ///< `error`, `warning`, `note`
  std::string_view outcome;  ///< `rejects`, `untested`, `incomplete`, `none`
  std::string_view since;
  std::string_view says;    ///< sentence with `{placeholders}`
  std::string_view unsaid;  ///< sentence for a fact left unsaid, outcome `incomplete`; may be empty
  std::string_view why;
  std::string_view fix;
  std::string_view log_says;     ///< the sentence about a run, where `says` is about a plan
  std::string_view log_fix;      ///< and what to do about it; empty: `fix`
  std::string_view log_level;    ///< of a finding about a run; empty: `level`
  std::string_view log_outcome;  ///< of a finding about a run; empty: `outcome`
  list<citation> sources;
  list<example> good;
  list<example> bad;
};

/// The rule data in use.
struct edition {
  std::string_view name;
  std::string_view version;
  std::string_view scope;
  std::string_view caution;
  std::string_view metric_jar_says;  ///< how a jar in metric units is matched
  int highest_ft = 0;                ///< no published process is used above
  list<source> sources;
  list<band_set> bands;
  list<jar_size> jars;
  list<method> methods;
  list<form_word> forms;
  list<prepared_word> prepared;
  list<std::string_view>
      plain_words;  ///< said of an ingredient, they change nothing that is checked
  list<std::string_view> heading_words;  ///< of which a heading such as `For the sauce:` consists
  list<std::string_view> acid_words;     ///< words that the line of an acid may have
  list<std::string_view> cut_words;      ///< words of a line that say how a food is cut: `sliced`
  list<std::string_view>
      line_words;  ///< single words of an ingredient line that change nothing that is checked
  list<telling_word> telling_words;
  list<telling_word> step_words;  ///< the same for directions alone
  list<spelling> spellings;       ///< sorted by what is written
  phrase_words phrases;
  list<process> processes;
  list<ingredient> ingredients;            ///< sorted by id
  list<ingredient_name> ingredient_names;  ///< of all ingredients, sorted
  list<seasoning_limit> seasonings;
  list<untested_food> untested_foods;
  list<ph_entry> ph;
  list<check_rule> checks;
  list<left_out> left_outs;
  list<way_step> way_steps;
  list<dry_yield> dry_yields;
  run_rules run;
  after_rules after;
  day_rules day;
};

[[nodiscard]] constexpr std::string_view name_of(acidity a) noexcept {
  return a == acidity::acid         ? "acid"
         : a == acidity::borderline ? "borderline"
         : a == acidity::neutral    ? "neutral"
                                    : "low-acid";
}

/// The entry with this id, or null. Works on every list of the edition.
template <class T>
[[nodiscard]] constexpr const T* find(list<T> entries, std::string_view id) noexcept {
  for (const T& entry : entries) {
    if (entry.id == id) return &entry;
  }
  return nullptr;
}

/// The ingredient with this id, or null; an edition keeps its ingredients sorted by id, because a
/// recipe looks up thousands of them.
[[nodiscard]] constexpr const ingredient* find(list<ingredient> entries,
                                               std::string_view id) noexcept {
  std::size_t first = 0;
  std::size_t last = entries.size();
  while (first < last) {
    const std::size_t middle = first + (last - first) / 2;
    if (entries[middle].id < id) {
      first = middle + 1;
    } else {
      last = middle;
    }
  }
  return first < entries.size() && entries[first].id == id ? &entries[first] : nullptr;
}

/// The band an altitude falls into, or null above the last one.
[[nodiscard]] constexpr const altitude_step* band_at(const band_set& bands,
                                                     int altitude_ft) noexcept {
  for (const altitude_step& step : bands.steps) {
    if (altitude_ft >= step.from_ft && (step.through_ft == 0 || altitude_ft <= step.through_ft)) {
      return &step;
    }
  }
  return nullptr;
}

}  // namespace jarproof
