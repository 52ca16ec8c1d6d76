// Shared by the tests: plans of a dish, by the lines of its ingredients.
// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "jarproof/report.hpp"

namespace fixtures {

using lines = std::vector<std::string>;

/// `ingredients:` with a line for each; the first stands on line 2.
std::string ingredients_text(const lines& ingredients);

/// Above 1,000 ft a weighted gauge shows 15 psi (USDA Complete Guide 2015, parts 4 and 5).
inline constexpr const char* weighted = "method: pressure\ngauge: weighted\npressure: 15 psi\n";
inline constexpr const char* boiling_water = "method: boiling-water\n";

/// The ingredients, packed hot at 4,600 ft; `more` are further lines of the plan.
std::string hot_plan(const lines& ingredients, const std::string& more = "",
                     const std::string& jar = "quart", const std::string& time = "75 min",
                     const std::string& how = weighted);

/// Venison, carrots and broth: a soup (USDA Complete Guide 2015, part 4: quarts 75 min).
lines soup(const lines& more = {});

/// What a plan of a soup says beside its ingredients.
inline constexpr const char* soup_words = "solids: 1/2\nbatch: 7 qt\nprepared: [boiled 5 min]\n";

/// The report of that soup in quarts.
jarproof::report soup_with(const lines& more, const std::string& words = soup_words);

}  // namespace fixtures
