// The tested recipes of the edition against a second entry, read apart from it in a text copy of
// the USDA Complete Guide to Home Canning (2015), line by line. SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <cstdio>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "support/fixtures.hpp"
#include "support/published.hpp"

namespace published_recipes_tests {
namespace {

using jarproof::builtin_edition;

/// The amount as a fraction of base units, `1 1/2` cups being 72,000 thousandths of a tsp.
jarproof::detail::base_amount amount_of(std::string_view text, std::string_view unit) {
  jarproof::detail::number n;
  REQUIRE(jarproof::detail::take_number(text, n) == jarproof::detail::number_fault::none);
  const jarproof::detail::measure_unit* u = jarproof::detail::unit_named(unit);
  REQUIRE(u != nullptr);
  return jarproof::detail::base_of({static_cast<int>(n.over), static_cast<int>(n.under)}, *u);
}

bool is_food_of(const jarproof::recipe_part& part, const std::string& names) {
  std::size_t from = 0;
  while (from <= names.size()) {
    const std::size_t end = std::min(names.find('|', from), names.size());
    const jarproof::ingredient* i = jarproof::find(
        builtin_edition().ingredients, std::string_view(names).substr(from, end - from));
    for (const std::string_view food : part.foods) {
      const jarproof::ingredient* f = jarproof::find(builtin_edition().ingredients, food);
      if (i != nullptr && f != nullptr &&
          &jarproof::detail::most_general(builtin_edition(), *i) ==
              &jarproof::detail::most_general(builtin_edition(), *f))
        return true;
    }
    from = end + 1;
  }
  return false;
}

TEST_SUITE("published") {
  TEST_CASE("every amount of the second entry of the recipes stands in the edition") {
    std::map<std::string, std::size_t> kinds;
    std::set<std::string> foods;
    const auto lines = fixtures::published_lines("recipes.csv");
    for (std::size_t k = 1; k < lines.size(); ++k) {
      const auto& f = lines[k];
      REQUIRE(f.size() == 10);
      INFO("recipes.csv line " << k + 1 << ": " << f[0] << ", " << f[2] << " " << f[4] << " "
                               << f[5]);
      ++kinds[f[7] == "same" ? "same" : "other"];
      const jarproof::process* food = jarproof::find(builtin_edition().processes, f[0]);
      REQUIRE(food != nullptr);
      if (f[7] != "same") {
        CHECK_FALSE(f[7].empty());
        continue;
      }
      foods.insert(f[0]);
      const jarproof::detail::base_amount wanted = amount_of(f[4], f[5]);
      bool found = false;
      for (const jarproof::tested_recipe& r : food->recipes) {
        for (const jarproof::recipe_part& part : r.parts) {
          const auto* unit = jarproof::detail::unit_named(part.unit);
          const auto* other = jarproof::detail::unit_named(f[5]);
          const jarproof::detail::base_amount high = jarproof::detail::base_of(part.high, *unit);
          found = found || (unit->kind == other->kind && high.over == wanted.over &&
                            high.under == wanted.under && is_food_of(part, f[2]));
        }
      }
      CHECK(found);
    }
    std::printf(
        "second entry of recipes: %zu amounts of %zu foods agree, %zu lines are no amount of "
        "the edition\n",
        kinds["same"], foods.size(), kinds["other"]);
    CHECK(kinds["same"] > 750);
    CHECK(foods.size() > 75);
  }
}

}  // namespace
}  // namespace published_recipes_tests
