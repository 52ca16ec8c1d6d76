// What every check of the built-in edition must teach: a reason of readable length, examples of
// both kinds, a publication.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <iterator>
#include <sstream>
#include <string>

#include "jarproof/builtin.hpp"

namespace check_texts_tests {
namespace {

TEST_SUITE("consistency") {
  TEST_CASE("every check says why in 40 to 150 words and has examples and a source") {
    const jarproof::edition& rules = jarproof::builtin_edition();
    CHECK(rules.checks.size() >= 74);
    for (const jarproof::check_rule& check : rules.checks) {
      CAPTURE(check.id);
      std::istringstream words{std::string(check.why)};
      const auto count = std::distance(std::istream_iterator<std::string>(words),
                                       std::istream_iterator<std::string>());
      CHECK(count >= 40);
      CHECK(count <= 150);
      CHECK(check.good.size() >= 1);
      CHECK(check.bad.size() >= 1);
      CHECK(check.sources.size() >= 1);
    }
  }
}

}  // namespace
}  // namespace check_texts_tests
