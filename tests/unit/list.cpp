// The constant view that rule data is made of.
// SPDX-License-Identifier: MIT
#include "jarproof/list.hpp"

#include <doctest/doctest.h>

#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

namespace list_tests {

using jarproof::list;

namespace {

constexpr int psi[] = {5, 10, 15};
constexpr std::string_view packs[] = {"raw", "hot"};

static_assert(list<int>().empty());
static_assert(list<int>().begin() == list<int>().end());
static_assert(list<int>(psi).size() == 3);
static_assert(list<int>(psi)[2] == 15);
static_assert(list<int>(psi).contains(10));
static_assert(!list<int>(psi).contains(11));
static_assert(list<int>(psi, 2).size() == 2);
static_assert(!list<int>(psi, 2).contains(15));
static_assert(list<std::string_view>(packs).contains("hot"));
static_assert(std::is_trivially_copyable_v<list<int>>);
static_assert(std::is_nothrow_default_constructible_v<list<int>>);

}  // namespace

TEST_SUITE_BEGIN("list");

TEST_CASE("a list without values is empty") {
  const list<int> none;
  CHECK(none.empty());
  CHECK(none.size() == 0);
  CHECK(none.begin() == none.end());
  CHECK_FALSE(none.contains(0));
}

TEST_CASE("a list shows the values of an array in their order and copies none") {
  const list<int> view = psi;
  std::vector<int> seen;
  for (const int value : view) seen.push_back(value);
  CHECK(seen == std::vector<int>{5, 10, 15});
  CHECK(view.begin() == psi);
  CHECK(&view[1] == &psi[1]);
}

TEST_CASE("a list may show a part of what is there") {
  const std::vector<int> minutes = {20, 25, 30};
  const list<int> first(minutes.data(), 1);
  CHECK(first.size() == 1);
  CHECK(first[0] == 20);
  CHECK(list<int>(minutes.data(), 0).empty());
}

TEST_CASE("contains compares with values of another type") {
  const list<std::string_view> view = packs;
  CHECK(view.contains("raw"));
  CHECK(view.contains(std::string("hot")));
  CHECK_FALSE(view.contains("cold"));
  CHECK_FALSE(view.contains(""));
}

TEST_SUITE_END();

}  // namespace list_tests
