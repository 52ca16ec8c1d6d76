// The edition against the second entry of the same tables, cell by cell, both ways.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <cstdio>
#include <set>
#include <string>

#include "jarproof/builtin.hpp"
#include "support/published.hpp"

namespace {

using fixtures::published_row;

/// Tables of the edition with this row's pack, jar and gauge; several only where a form of its own
/// has a headspace of its own, which then tells them apart.
std::vector<const jarproof::table*> tables_like(const published_row& row, bool with_headspace) {
  std::vector<const jarproof::table*> out;
  const jarproof::process* food = jarproof::find(jarproof::builtin_edition().processes, row.food);
  if (food == nullptr) return out;
  for (const jarproof::table& t : food->tables) {
    const bool has_gauge = !(row.gauge == "dial" ? t.dial : t.weighted).empty();
    bool has_jar = false;
    for (const jarproof::jar_minutes& m : t.minutes) has_jar = has_jar || m.jar == row.jar;
    if (t.pack != row.pack || !has_gauge || !has_jar) continue;
    if (with_headspace && t.headspace_thousandths_in != row.headspace_thousandths_in) continue;
    out.push_back(&t);
  }
  return out;
}

TEST_SUITE("published") {
  TEST_CASE("every cell of the second entry stands in the edition") {
    std::size_t cells = 0;
    for (const published_row& row : fixtures::published_rows()) {
      INFO(row.food << ", " << row.form << ", " << row.pack << ", " << row.jar << ", " << row.gauge
                    << " (" << row.source << ")");
      std::vector<const jarproof::table*> like = tables_like(row, false);
      REQUIRE_FALSE(like.empty());
      if (like.size() > 1) like = tables_like(row, true);
      REQUIRE(like.size() == 1);
      const jarproof::table& t = *like.front();
      CHECK(t.headspace_thousandths_in == row.headspace_thousandths_in);
      for (const jarproof::jar_minutes& m : t.minutes) {
        if (m.jar == row.jar) CHECK(m.minutes[0] == row.time_min);
      }
      const jarproof::band_set* bands = jarproof::find(jarproof::builtin_edition().bands,
                                                       row.gauge == "dial" ? t.dial : t.weighted);
      REQUIRE(bands != nullptr);
      for (const fixtures::published_band& b : row.bands) {
        ++cells;
        const jarproof::altitude_step* low = jarproof::band_at(*bands, b.from_ft);
        const jarproof::altitude_step* high =
            jarproof::band_at(*bands, b.through_ft == 0 ? 10000 : b.through_ft);
        REQUIRE(low != nullptr);
        REQUIRE(high != nullptr);
        CHECK(low->psi == b.psi);
        CHECK(high->psi == b.psi);
        // One foot lower belongs to the band before, one foot higher to the next.
        if (b.through_ft != 0) {
          const jarproof::altitude_step* next = jarproof::band_at(*bands, b.through_ft + 1);
          CHECK((next == nullptr || next->psi >= b.psi));
        }
      }
    }
    CHECK(cells == 724);  // 120 dial rows of four bands (onions: six) and 120 weighted rows of two
    std::printf("second entry: %zu rows, %zu cells agree with the edition\n",
                fixtures::published_rows().size(), cells);
  }

  TEST_CASE("the edition holds no row that the second entry does not") {
    std::set<std::string> published;
    for (const published_row& row : fixtures::published_rows()) {
      const bool is_new = published
                              .insert(row.food + "|" + row.pack + "|" + row.jar + "|" + row.gauge +
                                      "|" + std::to_string(row.headspace_thousandths_in))
                              .second;
      INFO(row.food << " " << row.pack << " " << row.jar << " " << row.gauge);
      CHECK(is_new);
    }
    std::size_t rows = 0;
    for (const jarproof::process& p : jarproof::builtin_edition().processes) {
      for (const jarproof::table& t : p.tables) {
        for (const jarproof::jar_minutes& m : t.minutes) {
          for (const std::string gauge : {"dial", "weighted"}) {
            if ((gauge == "dial" ? t.dial : t.weighted).empty()) continue;
            ++rows;
            const std::string key = std::string(p.id) + "|" + std::string(t.pack) + "|" +
                                    std::string(m.jar) + "|" + gauge + "|" +
                                    std::to_string(t.headspace_thousandths_in);
            INFO(key);
            CHECK(published.count(key) == 1);
          }
        }
      }
    }
    CHECK(rows == fixtures::published_rows().size());
    CHECK(rows == 240);
    CHECK(jarproof::builtin_edition().processes.size() == 47);
  }

  TEST_CASE("a row that could only be copied is not used to accept anything") {
    std::size_t copied = 0;
    for (const published_row& row : fixtures::published_rows()) {
      CHECK((row.entry == "read" || row.entry == "read-part" || row.entry == "copied"));
      CHECK_FALSE(row.source.empty());
      const bool single = row.entry != "read";
      if (single)
        std::printf("single entry (%s): %s, %s, %s, %s\n", row.entry.c_str(), row.food.c_str(),
                    row.pack.c_str(), row.jar.c_str(), row.gauge.c_str());
      if (row.entry != "copied") continue;
      ++copied;
      const auto like = tables_like(row, false);
      REQUIRE(like.size() == 1);
      CHECK_FALSE(like.front()->use);
    }
    CHECK(copied == 2);  // fish in quart jars, both gauges
  }
}

}  // namespace
