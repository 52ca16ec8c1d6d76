// Words by which recipes are read; part of an edition (jarproof/edition.hpp).
// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "jarproof/list.hpp"

namespace jarproof {

/// A word of a recipe line or of its directions that decides, such as `breaded` or `puree`.
struct telling_word {
  std::string_view id;            ///< the word itself, folded; may be several words
  std::string_view check;         ///< check that speaks where it is found
  list<std::string_view> unless;  ///< words around it that take it back
  list<std::string_view> beside;  ///< words of which one must stand around it; empty: no matter
  std::string_view pack;          ///< only where the plan has this pack; empty: with any
};

/// A word of a recipe that is written otherwise: `grn` for green, `tumeric` for turmeric.
struct spelling {
  std::string_view id;     ///< as written, folded
  std::string_view meant;  ///< the usual word
};

/// Words of the phrases that a line is read for, each list sorted. Without a list its phrases are
/// not understood, and lines that have one stay unknown.
struct phrase_words {
  /// words of the table: `for serving`, `at the table`; what is for it is not in the jar
  list<std::string_view> serving;
  /// of a heading below which nothing goes into the jar: `To serve:`
  list<std::string_view> serving_headings;
  /// phrases by which a heading is about the table, whatever else it names: `when a jar is opened`
  list<std::string_view> opening_headings;
  /// phrases by which a part of a line is about the table: `on the side at serving`
  list<std::string_view> table_phrases;
  /// of a heading below which all goes into the jar: `For the brine:`
  list<std::string_view> plain_headings;
  /// words that leave an amount open, wherever they stand: `plus more`, `or less`
  list<std::string_view> open_amounts;
  /// the same as the last words of a thought: `a few extra`
  list<std::string_view> open_ends;
  /// of a title: what they tell of a dish its ingredients have to show: `creamy`, `chowder`
  list<std::string_view> titles;
  /// what something is without: `fat free`, `reduced sodium`
  list<std::string_view> absent;
  /// states that a `not` takes back: `not canned`
  list<std::string_view> denied_states;
  /// states that may be: `thawed if frozen`
  list<std::string_view> possible_states;
  /// states said once for two foods: `dried basil or oregano`
  list<std::string_view> shared_states;
  /// parts that are thrown away: the seeds of `seeds removed`
  list<std::string_view> waste;
  /// words that may stand among such parts
  list<std::string_view> around_waste;
  /// behind such parts: `seeds removed`
  list<std::string_view> removed;
  /// before such parts: `trimmed of fat`
  list<std::string_view> removing;
  /// colours that tell one part of a plant from another: `white part only`
  list<std::string_view> part_colors;
  /// those parts
  list<std::string_view> plant_parts;
  /// what a size is likened to: `the size of a walnut`
  list<std::string_view> likened_to;
  /// words before `dry` that make it no dried food: `pat dry`
  list<std::string_view> drying;
  /// last words of a name for which `dry` is nothing new: `dry mustard`
  list<std::string_view> powders;
  /// words between `for` and a food that keep it a purpose: `for the soup`
  list<std::string_view> before_purpose;
  /// what water is for: `water to boil the beans`
  list<std::string_view> cooking_in_water;
  /// words that may stand alone behind `and` or `with` and are no further food: `and cut`
  list<std::string_view> joined;
  /// what a thing is put in for: `for deglazing`, `to reduce foaming`
  list<std::string_view> purposes;
  /// words between `for` or `to` and such a word: `to reduce foaming`
  list<std::string_view> to_purposes;
  /// whole phrases that say nothing about what is in the jar: `from the mill`
  list<std::string_view> remarks;
  /// whole phrases by which a thing may be left out: `or none`
  list<std::string_view> left_out;
  /// where a spice, a fruit or a drink comes from: `mexican`
  list<std::string_view> origins;
  /// kinds and colours of peppers that decide nothing: `red`, `pointed`
  list<std::string_view> pepper_kinds;
  /// things of the kitchen that are no food: `muslin`
  list<std::string_view> utensils;
};

/// A list of phrase words and its key in `vocabulary.yaml`.
struct phrase_list {
  std::string_view key;
  list<std::string_view> phrase_words::*words;
};

inline constexpr phrase_list phrase_lists[] = {
    {"serving", &phrase_words::serving},
    {"serving_headings", &phrase_words::serving_headings},
    {"opening_headings", &phrase_words::opening_headings},
    {"table_phrases", &phrase_words::table_phrases},
    {"plain_headings", &phrase_words::plain_headings},
    {"open_amounts", &phrase_words::open_amounts},
    {"open_ends", &phrase_words::open_ends},
    {"titles", &phrase_words::titles},
    {"absent", &phrase_words::absent},
    {"denied_states", &phrase_words::denied_states},
    {"possible_states", &phrase_words::possible_states},
    {"shared_states", &phrase_words::shared_states},
    {"waste", &phrase_words::waste},
    {"around_waste", &phrase_words::around_waste},
    {"removed", &phrase_words::removed},
    {"removing", &phrase_words::removing},
    {"part_colors", &phrase_words::part_colors},
    {"plant_parts", &phrase_words::plant_parts},
    {"likened_to", &phrase_words::likened_to},
    {"drying", &phrase_words::drying},
    {"powders", &phrase_words::powders},
    {"before_purpose", &phrase_words::before_purpose},
    {"cooking_in_water", &phrase_words::cooking_in_water},
    {"joined", &phrase_words::joined},
    {"purposes", &phrase_words::purposes},
    {"to_purposes", &phrase_words::to_purposes},
    {"remarks", &phrase_words::remarks},
    {"left_out", &phrase_words::left_out},
    {"origins", &phrase_words::origins},
    {"pepper_kinds", &phrase_words::pepper_kinds},
    {"utensils", &phrase_words::utensils}};

}  // namespace jarproof
