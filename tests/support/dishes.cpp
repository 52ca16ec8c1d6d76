// SPDX-License-Identifier: MIT
#include "dishes.hpp"

#include "fixtures.hpp"

namespace fixtures {

std::string ingredients_text(const lines& ingredients) {
  std::string out = "ingredients:\n";
  for (const std::string& l : ingredients) out += "  - \"" + l + "\"\n";
  return out;
}

std::string hot_plan(const lines& ingredients, const std::string& more, const std::string& jar,
                     const std::string& time, const std::string& how) {
  return ingredients_text(ingredients) + "pack: hot\njar: " + jar + "\n" + how + "time: " + time +
         "\naltitude: 4600 ft\n" + more;
}

lines soup(const lines& more) {
  lines out = {"3 lb venison, cut in cubes and browned", "2 lb carrots, peeled and sliced",
               "3 qt beef broth"};
  out.insert(out.end(), more.begin(), more.end());
  return out;
}

jarproof::report soup_with(const lines& more, const std::string& words) {
  return judged(hot_plan(soup(more), words));
}

}  // namespace fixtures
