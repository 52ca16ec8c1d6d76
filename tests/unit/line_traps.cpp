// Lines in which something that matters hides, and what must be read (tests/corpus/traps.tsv).
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <sstream>
#include <string>

#include "jarproof/builtin.hpp"
#include "jarproof/check.hpp"
#include "jarproof/detail/ingredient_line.hpp"
#include "support/dishes.hpp"
#include "support/fixtures.hpp"

namespace line_traps_tests {
namespace {

TEST_SUITE_BEGIN("recipe");

/// `onion [2 lb] +butter |cream ~mashed @serving`; `unread` where the line is not understood.
std::string read(const std::string& text) {
  const jarproof::detail::line_reading r =
      jarproof::detail::read_line(jarproof::builtin_edition(), text);
  if (r.what == nullptr || !r.strange.empty()) return "unread";
  std::string out = std::string(r.what->id) + " [" + (r.amount ? r.amount_text : "") + "]";
  for (const auto& o : r.others) out += (o.instead ? " |" : " +") + std::string(o.what->id);
  for (const auto* t : r.telling) out += " ~" + std::string(t->id);
  if (r.vinegar_percent) out += " " + std::to_string(*r.vinegar_percent) + " %";
  return out + (r.at_serving ? " @serving" : "");
}

TEST_CASE("nothing that matters hides in a line") {
  std::istringstream lines(fixtures::file_text("tests/corpus/traps.tsv"));
  std::string row;
  int count = 0;
  while (std::getline(lines, row)) {
    if (row.empty() || row[0] == '#') continue;
    const std::size_t tab = row.find('\t');
    REQUIRE(tab != std::string::npos);
    CAPTURE(row);
    CHECK(read(row.substr(0, tab)) == row.substr(tab + 1));
    ++count;
  }
  CHECK(count >= 550);
}

TEST_CASE("a heading is for the table only where all its words say so") {
  const auto verdict_below = [](const std::string& heading) {
    return fixtures::soup_with({heading, "1 cup cream"}).verdict;
  };
  for (const char* heading : {"To serve:", "For serving:", "Garnish:", "At the table:"}) {
    CAPTURE(heading);
    CHECK(verdict_below(heading) == jarproof::verdict::accepted);
  }
  for (const char* heading : {"For 6 servings:",
                              "Serves 6:",
                              "Ingredients (6 servings):",
                              "Ingredients to serve 8:",
                              "Serving 8:",
                              "To serve 8 people:",
                              "To serve 8",
                              "For the service",
                              "For the preserves:",
                              "For the conserve:",
                              "Reserve:",
                              "Reserved:",
                              "Reserved liquid and:",
                              "From the reserve:",
                              "For the topping:",
                              "For the pie topping:",
                              "Topping:",
                              "Cornstarch slurry:",
                              "Thickened with flour:",
                              "Cream, to finish:",
                              "to finish, thicken",
                              "For richness stir in something creamy"}) {
    CAPTURE(heading);
    CHECK(verdict_below(heading) == jarproof::verdict::rejected);
  }
  // A heading that names what may not be in the jar is read as a line, and alone it is enough.
  for (const char* heading : {"Cornstarch slurry:", "Thickened with flour:", "Cream, to finish:"}) {
    CAPTURE(heading);
    CHECK_FALSE(jarproof::detail::is_heading(jarproof::builtin_edition(), heading));
  }
}

TEST_SUITE_END();

}  // namespace
}  // namespace line_traps_tests
