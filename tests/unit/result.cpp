// A value, or the problems that kept it from being made.
// SPDX-License-Identifier: MIT
#include "jarproof/result.hpp"

#include <doctest/doctest.h>

#include <memory>
#include <string>
#include <type_traits>
#include <utility>

namespace result_tests {

using jarproof::problem;
using jarproof::problems;
using jarproof::result;

namespace {

result<int> minutes(bool good) {
  if (good) return 20;
  return problems{{"plan.yaml", 7, 12, "time", "`20` has no unit", "write the unit: `20 min`"}};
}

static_assert(!std::is_convertible_v<result<int>, bool>, "only where it is asked for");
static_assert(std::is_nothrow_constructible_v<bool, result<int>>);

}  // namespace

TEST_SUITE_BEGIN("result");

TEST_CASE("a result with a value is true and gives the value") {
  const result<int> r = minutes(true);
  REQUIRE(r);
  CHECK(*r == 20);
}

TEST_CASE("a result with problems is false and gives them") {
  const result<int> r = minutes(false);
  REQUIRE_FALSE(r);
  REQUIRE(r.errors().size() == 1);
  const problem& p = r.errors().front();
  CHECK(p.file == "plan.yaml");
  CHECK(p.line == 7);
  CHECK(p.column == 12);
  CHECK(p.path == "time");
  CHECK(p.message == "`20` has no unit");
  CHECK(p.write == "write the unit: `20 min`");
}

TEST_CASE("a result without a value is false even where no problem is named") {
  const result<int> r = problems{};
  CHECK_FALSE(r);
  CHECK(r.errors().empty());
}

TEST_CASE("members of the value can be read and changed in place") {
  result<std::string> r = std::string("pint");
  CHECK(r->size() == 4);
  *r += "s";
  r->push_back('!');
  CHECK(*r == "pints!");
  CHECK(*std::as_const(r) == "pints!");
  CHECK(std::as_const(r)->back() == '!');
}

TEST_CASE("a value that cannot be copied can be moved in and out") {
  result<std::unique_ptr<int>> r = std::make_unique<int>(15);
  REQUIRE(r);
  const std::unique_ptr<int> out = std::move(*r);
  CHECK(*out == 15);
}

TEST_CASE("a copy is of its own") {
  const result<std::string> r = std::string("raw");
  result<std::string> copy = r;
  *copy = "hot";
  CHECK(*r == "raw");
  CHECK(*copy == "hot");
}

TEST_CASE("a problem of a format without lines has no place") {
  const problem p;
  CHECK(p.line == 0);
  CHECK(p.column == 0);
  CHECK(p.path.empty());
}

TEST_SUITE_END();

}  // namespace result_tests
