// Broken plan files: every file of tests/bad-input/plans/ is refused with exactly the lines of the
// `.expect` file beside it, `LINE:COLUMN path | message | write` (JSON has no lines: `0:0`).
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <string>
#include <vector>

#include "support/fixtures.hpp"
#include "support/readings.hpp"

namespace bad_plans_tests {
namespace {

constexpr const char* folder = "tests/bad-input/plans/";

/// Names of all files with one of these endings, in order.
std::vector<std::string> files_with(const std::vector<std::string>& endings) {
  namespace fs = std::filesystem;
  std::vector<std::string> out;
  for (const auto& entry :
       fs::directory_iterator(std::string(JARPROOF_SOURCE_DIR) + "/" + folder)) {
    const std::string ending = entry.path().extension().string();
    if (std::find(endings.begin(), endings.end(), ending) != endings.end()) {
      out.push_back(entry.path().filename().string());
    }
  }
  std::sort(out.begin(), out.end());
  return out;
}

std::string stem_of(const std::string& name) { return name.substr(0, name.rfind('.')); }

std::vector<std::string> plans() { return files_with({".yaml", ".json", ".jsonl"}); }

}  // namespace

TEST_SUITE_BEGIN("bad_input");

TEST_CASE("every broken plan has its expectation, and every expectation its plan") {
  std::vector<std::string> stems;
  for (const std::string& name : plans()) stems.push_back(stem_of(name));
  std::vector<std::string> expected;
  for (const std::string& name : files_with({".expect"})) expected.push_back(stem_of(name));
  CHECK(stems.size() >= 30);
  CHECK(stems == expected);
}

TEST_CASE("every broken plan is refused with exactly the lines of its expectation") {
  for (const std::string& name : plans()) {
    const std::string got = fixtures::faults_of(fixtures::file_text(folder + name), name);
    const std::string expected = fixtures::file_text(folder + stem_of(name) + ".expect");
    const bool as_expected = !got.empty() && got == expected;
    CHECK_MESSAGE(as_expected, name << "\nit says:\n" << got << "expected:\n" << expected);
  }
}

TEST_SUITE_END();

}  // namespace bad_plans_tests
