// Recipes that cannot be read: every file of tests/bad-input/recipes/ is refused with exactly the
// lines of the `.expect` file beside it, as for plans.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <filesystem>
#include <set>
#include <string>

#include "jarproof/json.hpp"
#include "support/fixtures.hpp"
#include "support/readings.hpp"

namespace bad_recipes_tests {

TEST_SUITE_BEGIN("bad_input");

TEST_CASE("every broken recipe is refused with exactly the lines of its expectation") {
  namespace fs = std::filesystem;
  const std::string folder = "tests/bad-input/recipes/";
  std::set<std::string> recipes;
  std::set<std::string> expected;
  for (const auto& entry :
       fs::directory_iterator(std::string(JARPROOF_SOURCE_DIR) + "/" + folder)) {
    const std::string name = entry.path().filename().string();
    const std::string stem = entry.path().stem().string();
    if (entry.path().extension() == ".expect") {
      expected.insert(stem);
      continue;
    }
    recipes.insert(stem);
    const auto read = jarproof::read_recipes(fixtures::file_text(folder + name), name);
    std::string got;
    if (!read) {
      for (const jarproof::problem& p : read.errors()) {
        got += fixtures::line_of(p) + "\n";
        CHECK(p.file.substr(0, name.size()) == name);
      }
    }
    const std::string wanted = fixtures::file_text(folder + stem + ".expect");
    const bool as_expected = !got.empty() && got == wanted;
    CHECK_MESSAGE(as_expected, name << "\nit says:\n" << got << "expected:\n" << wanted);
  }
  CHECK(recipes.size() >= 10);
  CHECK(recipes == expected);
}

TEST_SUITE_END();

}  // namespace bad_recipes_tests
