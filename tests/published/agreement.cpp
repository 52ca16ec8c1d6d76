// The edition against the second entry of the same tables, cell by cell, both ways.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <cstdio>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/builtin.hpp"
#include "support/published.hpp"

namespace agreement_tests {
namespace {

using fixtures::published_row;

std::string_view band_set_of(const jarproof::table& t, const std::string& column) {
  return column == "dial" ? t.dial : column == "weighted" ? t.weighted : t.boiling_water;
}

/// What tells the pressure options of one gauge apart: the pressure of the lowest band.
int lowest_psi(const jarproof::band_set& bands) { return bands.steps[0].psi; }

/// Tables of the edition with this row's pack, jar, column and pressure option; several only where
/// forms differ, which headspace or the words of the form tell apart.
std::vector<const jarproof::table*> tables_like(const published_row& row) {
  std::vector<const jarproof::table*> out;
  const jarproof::edition& rules = jarproof::builtin_edition();
  const jarproof::process* food = jarproof::find(rules.processes, row.food);
  if (food == nullptr) return out;
  for (const jarproof::table& t : food->tables) {
    const jarproof::band_set* bands = jarproof::find(rules.bands, band_set_of(t, row.column));
    bool has_jar = false;
    for (const jarproof::jar_minutes& m : t.minutes) has_jar = has_jar || m.jar == row.jar;
    if (bands == nullptr || t.pack != row.pack || !has_jar) continue;
    if (lowest_psi(*bands) != row.bands[0].psi) continue;
    out.push_back(&t);
  }
  const auto keep = [&](auto&& fits) {
    std::vector<const jarproof::table*> kept;
    for (const jarproof::table* t : out) {
      if (fits(*t)) kept.push_back(t);
    }
    if (out.size() > 1 && !kept.empty()) out = kept;
  };
  keep([&](const jarproof::table& t) {
    return t.headspace_thousandths_in == row.headspace_thousandths_in;
  });
  keep([&](const jarproof::table& t) {
    const bool sterile = row.form.find("sterile") != std::string::npos &&
                         row.form.find("unsterilized") == std::string::npos;
    return t.forms.contains("in-sterile-jars") == sterile;
  });
  return out;
}

TEST_SUITE("published") {
  TEST_CASE("every cell of the second entry stands in the edition") {
    std::size_t cells = 0;
    for (const published_row& row : fixtures::published_rows()) {
      INFO(row.food << ", " << row.form << ", " << row.pack << ", " << row.jar << ", " << row.column
                    << " (" << row.source << ")");
      const std::vector<const jarproof::table*> like = tables_like(row);
      REQUIRE(like.size() == 1);
      const jarproof::table& t = *like.front();
      CHECK(t.headspace_thousandths_in == row.headspace_thousandths_in);
      const jarproof::band_set* bands =
          jarproof::find(jarproof::builtin_edition().bands, band_set_of(t, row.column));
      REQUIRE(bands != nullptr);
      for (const fixtures::published_band& b : row.bands) {
        ++cells;
        const jarproof::altitude_step* low = jarproof::band_at(*bands, b.from_ft);
        const jarproof::altitude_step* high =
            jarproof::band_at(*bands, b.through_ft == 0 ? 10000 : b.through_ft);
        REQUIRE(low != nullptr);
        CHECK(low == high);
        CHECK(low->psi == b.psi);
        // One leaflet prints the bands of its gauges in finer steps than the edition needs.
        if (b.psi == 0) CHECK(low->from_ft == b.from_ft);
        if (b.psi == 0) CHECK(low->through_ft == b.through_ft);
        const auto band = static_cast<std::size_t>(low - bands->steps.begin());
        for (const jarproof::jar_minutes& m : t.minutes) {
          if (m.jar == row.jar) CHECK(m.minutes[b.psi == 0 ? band : 0] == b.time_min);
        }
      }
    }
    // Low-acid 724: 120 dial rows of four bands (onions: six) and 120 weighted rows of two. Acid:
    // 120 boiling-water rows of three bands and 87 of four, 78 dial rows of four, 78 weighted rows
    // of two and 20 of one.
    CHECK(cells == 724 + 120 * 3 + 87 * 4 + 78 * 4 + 78 * 2 + 20);
    std::printf("second entry: %zu rows, %zu cells agree with the edition\n",
                fixtures::published_rows().size(), cells);
  }

  TEST_CASE("the edition holds no row that the second entry does not") {
    std::multiset<std::string> published;
    for (const published_row& row : fixtures::published_rows()) {
      published.insert(row.food + "|" + row.pack + "|" + row.jar + "|" + row.column + "|" +
                       std::to_string(row.bands[0].psi) + "|" +
                       std::to_string(row.headspace_thousandths_in));
    }
    std::size_t rows = 0;
    const jarproof::edition& rules = jarproof::builtin_edition();
    for (const jarproof::process& p : rules.processes) {
      for (const jarproof::table& t : p.tables) {
        for (const jarproof::jar_minutes& m : t.minutes) {
          for (const std::string column : {"dial", "weighted", "boiling-water"}) {
            const jarproof::band_set* bands = jarproof::find(rules.bands, band_set_of(t, column));
            if (bands == nullptr) continue;
            ++rows;
            const std::string key = std::string(p.id) + "|" + std::string(t.pack) + "|" +
                                    std::string(m.jar) + "|" + column + "|" +
                                    std::to_string(lowest_psi(*bands)) + "|" +
                                    std::to_string(t.headspace_thousandths_in);
            INFO(key);
            const auto found = published.find(key);
            REQUIRE(found != published.end());
            published.erase(found);
          }
        }
      }
    }
    CHECK(published.empty());
    CHECK(rows == 623);
    CHECK(rules.processes.size() == 158);
  }

  TEST_CASE("a row that could only be copied is not used to accept anything") {
    std::map<std::string, std::size_t> kinds;
    for (const published_row& row : fixtures::published_rows()) {
      ++kinds[row.entry];
      CHECK_FALSE(row.source.empty());
      if (row.entry != "read")
        std::printf("single entry (%s): %s, %s, %s, %s\n", row.entry.c_str(), row.food.c_str(),
                    row.pack.c_str(), row.jar.c_str(), row.column.c_str());
      if (row.entry != "copied") continue;
      const auto like = tables_like(row);
      REQUIRE(like.size() == 1);
      CHECK_FALSE(like.front()->use);
    }
    for (const auto& [kind, count] : kinds) std::printf("%s: %zu rows\n", kind.c_str(), count);
    for (const auto& [kind, count] : kinds) {
      CHECK((kind == "read" || kind == "read-part" || kind == "second-hand" || kind == "copied"));
      CHECK(count > 0);
    }
    CHECK(kinds["read"] > 580);
  }
}

}  // namespace
}  // namespace agreement_tests
