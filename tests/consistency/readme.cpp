// What the README shows is what the program prints, and its C++ is the example that is built.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <filesystem>
#include <map>
#include <string>
#include <vector>

#include "jarproof/format/log_text.hpp"
#include "jarproof/judge_log.hpp"
#include "jarproof/read_log.hpp"
#include "jarproof/yaml.hpp"
#include "support/fixtures.hpp"

namespace readme_tests {
namespace {

/// The fenced block after a marker comment, cut at lines that are `...`.
std::vector<std::string> block_after(const std::string& text, const std::string& marker) {
  const std::size_t at = text.find(marker);
  REQUIRE_MESSAGE(at != std::string::npos, marker);
  const std::size_t open = text.find('\n', text.find("```", at)) + 1;
  const std::string block = text.substr(open, text.find("\n```", open) + 1 - open);
  std::vector<std::string> parts(1);
  for (std::size_t i = 0; i < block.size();) {
    const std::size_t end = block.find('\n', i) + 1;
    const std::string line = block.substr(i, end - i);
    if (line == "...\n") {
      parts.emplace_back();
    } else {
      parts.back() += line;
    }
    i = end;
  }
  return parts;
}

/// Each part of the block stands in `printed`, in order and from the beginning of a line.
void check_shown(const std::string& marker, const std::string& printed) {
  std::size_t from = 0;
  for (const std::string& part : block_after(fixtures::file_text("README.md"), marker)) {
    INFO(part);
    const std::size_t at = printed.find(part, from);
    REQUIRE(at != std::string::npos);
    CHECK((at == 0 || printed[at - 1] == '\n'));
    from = at + part.size();
  }
  CHECK(from > 0);
}

TEST_SUITE("consistency") {
  TEST_CASE("the output in the README is what the program prints") {
    const std::string plan = "examples/plans/soup-first-try.yaml";
    const auto documents = jarproof::read_yaml(fixtures::file_text(plan), plan);
    REQUIRE(documents);
    const auto read = jarproof::read_plan(documents->front());
    REQUIRE(read);
    const jarproof::edition& rules = jarproof::builtin_edition();
    const std::string printed = jarproof::text_of(jarproof::check(*read, rules), rules);
    check_shown("output of: jarproof check " + plan, printed);
  }

  TEST_CASE("the screen of a running log in the README is what the program prints") {
    const std::string name = "examples/logs/soup-load-3-so-far.csv";
    const auto log = jarproof::read_log(fixtures::file_text(name), name);
    REQUIRE(log);
    const jarproof::edition& rules = jarproof::builtin_edition();
    const jarproof::plan plan = fixtures::plan_from(fixtures::file_text("examples/days/soup.yaml"));
    check_shown("output of: jarproof log examples/days/soup.yaml " + name,
                jarproof::log_text(jarproof::judge_log(plan, rules, *log), rules));
  }

  TEST_CASE("every example plan comes out as its file says") {
    const std::map<std::string, jarproof::verdict> expected{
        {"soup-first-try", jarproof::verdict::rejected},
        {"soup-corrected", jarproof::verdict::accepted},
        {"green-beans", jarproof::verdict::accepted},
        {"onions-metric", jarproof::verdict::accepted},
        {"beets-in-boiling-water", jarproof::verdict::rejected},
        {"white-beans-left-open", jarproof::verdict::incomplete},
        {"chile-salsa", jarproof::verdict::accepted},
        {"chile-salsa-own", jarproof::verdict::rejected},
        {"tomatoes-metric", jarproof::verdict::accepted},
        {"venison-bean-stew", jarproof::verdict::rejected}};
    std::size_t files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(std::string(JARPROOF_SOURCE_DIR) +
                                                                 "/examples/plans")) {
      ++files;
      const std::string name = entry.path().stem().string();
      INFO(name);
      REQUIRE(expected.count(name) == 1);
      const std::string path = "examples/plans/" + entry.path().filename().string();
      const auto documents = jarproof::read_yaml(fixtures::file_text(path), path);
      REQUIRE(documents);
      const auto read = jarproof::read_plan(documents->front());
      REQUIRE(read);
      CHECK(jarproof::check(*read, jarproof::builtin_edition()).verdict == expected.at(name));
    }
    CHECK(files == expected.size());
  }

  TEST_CASE("the C++ in the README is the example that is built and run") {
    const auto parts =
        block_after(fixtures::file_text("README.md"), "part of: examples/cpp/minimal.cpp");
    REQUIRE(parts.size() == 1);
    CHECK(fixtures::file_text("examples/cpp/minimal.cpp").find(parts[0]) != std::string::npos);
  }
}

}  // namespace
}  // namespace readme_tests
