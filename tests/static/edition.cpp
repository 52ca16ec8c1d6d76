// Looking up an edition at compile time: both sides of every altitude step, entries by id.
// SPDX-License-Identifier: MIT
#include "jarproof/edition.hpp"

#include <doctest/doctest.h>

#include <climits>
#include <string_view>

namespace edition_tests {
namespace {

using jarproof::altitude_step;
using jarproof::band_at;
using jarproof::band_set;
using jarproof::find;
using jarproof::list;

constexpr altitude_step step(int from_ft, int through_ft, int psi) {
  altitude_step s;
  s.from_ft = from_ft;
  s.through_ft = through_ft;
  s.psi = psi;
  return s;
}

constexpr altitude_step dial_steps[] = {step(0, 2'000, 11), step(2'001, 4'000, 12),
                                        step(4'001, 6'000, 13)};
constexpr altitude_step weighted_steps[] = {step(0, 1'000, 10), step(1'001, 0, 15)};

constexpr band_set bands(std::string_view id, list<altitude_step> steps) {
  band_set b;
  b.id = id;
  b.steps = steps;
  return b;
}

constexpr band_set dial = bands("dial", dial_steps);
constexpr band_set weighted = bands("weighted", weighted_steps);
constexpr band_set empty = bands("empty", {});
constexpr band_set all_bands[] = {dial, weighted};

constexpr int psi_at(const band_set& set, int feet) {
  const altitude_step* found = band_at(set, feet);
  return found == nullptr ? -1 : found->psi;
}

static_assert(psi_at(dial, 0) == 11);
static_assert(psi_at(dial, 1) == 11);
static_assert(psi_at(dial, 1'999) == 11);
static_assert(psi_at(dial, 2'000) == 11);
static_assert(psi_at(dial, 2'001) == 12);
static_assert(psi_at(dial, 4'000) == 12);
static_assert(psi_at(dial, 4'001) == 13);
static_assert(psi_at(dial, 6'000) == 13);
static_assert(psi_at(dial, 6'001) == -1, "the table ends here");
static_assert(psi_at(dial, INT_MAX) == -1);
static_assert(psi_at(dial, -1) == -1, "an altitude below the sea is made 0 before it is looked up");

static_assert(psi_at(weighted, 1'000) == 10);
static_assert(psi_at(weighted, 1'001) == 15);
static_assert(psi_at(weighted, INT_MAX) == 15, "a band without an upper end has none");

static_assert(band_at(empty, 0) == nullptr);
static_assert(band_at(dial, 2'000) == &dial_steps[0]);

static_assert(find(list<band_set>(all_bands), "dial") == &all_bands[0]);
static_assert(find(list<band_set>(all_bands), "weighted") == &all_bands[1]);
static_assert(find(list<band_set>(all_bands), "weight") == nullptr);
static_assert(find(list<band_set>(all_bands), "Dial") == nullptr);
static_assert(find(list<band_set>(all_bands), "") == nullptr);
static_assert(find(list<band_set>(), "dial") == nullptr);

constexpr jarproof::edition unfilled;
static_assert(unfilled.processes.empty());
static_assert(unfilled.checks.empty());
static_assert(find(unfilled.jars, "pint") == nullptr);
static_assert(unfilled.highest_ft == 0);

constexpr jarproof::table row;
static_assert(!row.use, "a row is not used unless somebody says so");
constexpr jarproof::process food;
static_assert(food.kind == jarproof::food_class::low_acid,
              "a food is low-acid unless somebody says otherwise");
constexpr jarproof::method way;
static_assert(!way.accepted, "a method is refused unless somebody accepts it");

}  // namespace

TEST_SUITE_BEGIN("edition");

TEST_CASE("bands and entries are found at compile time and at run time alike") {
  for (int feet = 0; feet <= 6'500; ++feet) {
    const int expected = feet <= 2'000 ? 11 : feet <= 4'000 ? 12 : feet <= 6'000 ? 13 : -1;
    CHECK(psi_at(dial, feet) == expected);
    CHECK(psi_at(weighted, feet) == (feet <= 1'000 ? 10 : 15));
  }
  CHECK(find(list<band_set>(all_bands), "weighted") == &all_bands[1]);
}

TEST_SUITE_END();

}  // namespace edition_tests
