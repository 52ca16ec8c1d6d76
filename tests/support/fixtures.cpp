// SPDX-License-Identifier: MIT
#include "fixtures.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "jarproof/yaml.hpp"

namespace fixtures {

std::string file_text(const std::string& path_in_checkout) {
  std::ifstream file(std::string(JARPROOF_SOURCE_DIR) + "/" + path_in_checkout, std::ios::binary);
  REQUIRE_MESSAGE(file, path_in_checkout);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

std::vector<jarproof::rule_file> rule_files() {
  namespace fs = std::filesystem;
  const fs::path folder = std::string(JARPROOF_SOURCE_DIR) + "/rules";
  std::vector<jarproof::rule_file> out;
  for (const auto& entry : fs::recursive_directory_iterator(folder)) {
    if (!entry.is_regular_file() || entry.path().extension() != ".yaml") continue;
    const std::string name = entry.path().lexically_relative(folder).generic_string();
    out.push_back({name, file_text("rules/" + name)});
  }
  std::sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.name < b.name; });
  return out;
}

const jarproof::edition& loaded_edition() {
  static const jarproof::result<jarproof::owned_edition> loaded =
      jarproof::load_edition(rule_files());
  REQUIRE(loaded);
  return loaded->view();
}

jarproof::plan plan_from(std::string_view yaml) {
  const auto documents = jarproof::read_yaml(yaml, "plan.yaml");
  REQUIRE(documents);
  REQUIRE(documents->size() == 1);
  const auto plan = jarproof::read_plan(documents->front());
  INFO(yaml);
  REQUIRE(plan);
  return *plan;
}

jarproof::report judged(std::string_view yaml) {
  return jarproof::check(plan_from(yaml), jarproof::builtin_edition());
}

std::string plan_text(std::map<std::string, std::string> keys,
                      const std::map<std::string, std::string>& changes) {
  for (const auto& [key, value] : changes) keys[key] = value;
  std::string out;
  for (const auto& [key, value] : keys) {
    if (!value.empty()) out += key + ": " + value + "\n";
  }
  return out;
}

std::map<std::string, std::string> beans() {
  return {{"food", "green beans"}, {"pack", "raw"},        {"jar", "pint"},
          {"method", "pressure"},  {"gauge", "weighted"},  {"pressure", "15 psi"},
          {"time", "20 min"},      {"altitude", "4600 ft"}};
}

std::map<std::string, std::string> dial_beans() {
  std::map<std::string, std::string> plan = beans();
  plan["gauge"] = "dial";
  plan["pressure"] = "13 psi";
  return plan;
}

jarproof::report beans_with(const std::map<std::string, std::string>& changes) {
  return judged(plan_text(beans(), changes));
}

const jarproof::finding* finding_of(const jarproof::report& r, std::string_view check) {
  for (const jarproof::finding& f : r.findings) {
    if (f.check == check) return &f;
  }
  return nullptr;
}

bool has(const jarproof::report& r, std::string_view check) {
  return finding_of(r, check) != nullptr;
}

}  // namespace fixtures
