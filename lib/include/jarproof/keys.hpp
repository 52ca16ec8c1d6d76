// The keys of a plan, with an example of each; readers, messages and documentation share them.
// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace jarproof {

/// One key of the plan file.
struct plan_key {
  std::string_view name;
  std::string_view example;  ///< a value as a cook would write it
  std::string_view what;     ///< reads on after "the plan does not say"
};

inline constexpr plan_key plan_keys[] = {
    {"title", "Green beans, first picking", "what the batch is called"},
    {"lot", "2026-08-14-a", "which lot it is"},
    {"date", "2026-08-14", "the day"},
    {"food", "green beans", "which food it is"},
    {"form", "1-inch-pieces", "how the food is cut"},
    {"as-published", "true", "whether the published recipe is followed"},
    {"recipe", "soup.txt", "which recipe it is"},
    {"ingredients", "[7 lb green beans]", "what goes in"},
    {"steps", "[Boil 5 minutes.]", "how it is cooked"},
    {"yield", "9 pints", "how much it makes"},
    {"pack", "hot", "whether the jars are packed raw or hot"},
    {"jar", "pint", "the jar size"},
    {"method", "pressure", "the method"},
    {"gauge", "dial", "whether the canner has a dial or a weighted gauge"},
    {"gauge-error", "+1 psi", "the error of the dial"},
    {"pressure", "11 psi", "the pressure"},
    {"time", "20 min", "the process time"},
    {"temperature", "182 F", "the temperature"},
    {"altitude", "4600 ft", "the altitude of the kitchen"},
    {"headspace", "1 in", "the headspace"},
    {"vent", "10 min", "how long the canner is vented"},
    {"heat-up", "20 min", "how long the canner is heated before it is vented"},
    {"water", "4 qt", "how much water is in the canner"},
    {"acid", "2 tbsp bottled lemon juice per quart", "the acid in each jar"},
    {"vinegar", "5 %", "the strength of the vinegar"},
    {"solids", "1/2", "how full of solids the jars are"},
    {"prepared", "[beans rehydrated]", "how the food was prepared"},
    {"held", "{for: 14 h, at: 38 F}", "how the cooked food was kept"},
    {"batch", "9 qt", "how much there is"},
    {"jars", "9", "how many jars"},
    {"from", "20 lb tomatoes", "how much fresh food there is"},
    {"keep-back", "2 qt", "how much is kept for the table"},
    {"canner", "{quarts: 7, pints: 9, volume: 16 qt}", "what the canner holds"},
    {"start", "14:30", "when it starts"},
    {"finish-by", "18:00", "when it must be done"}};

/// The key with this name, or null.
[[nodiscard]] constexpr const plan_key* find_key(std::string_view name) noexcept {
  for (const plan_key& key : plan_keys) {
    if (key.name == name) return &key;
  }
  return nullptr;
}

}  // namespace jarproof
