// SPDX-License-Identifier: MIT
#include "readings.hpp"

#include <doctest/doctest.h>

#include "jarproof/json.hpp"
#include "jarproof/read_plan.hpp"
#include "jarproof/yaml.hpp"

namespace fixtures {
namespace {

using jarproof::problems;

bool ends_with(std::string_view text, std::string_view end) {
  return text.size() >= end.size() && text.substr(text.size() - end.size()) == end;
}

void add(problems& all, const problems& more) { all.insert(all.end(), more.begin(), more.end()); }

void add_plan_faults(problems& all, jarproof::document d) {
  // Who opens the file of a recipe says so; here none is opened.
  if (jarproof::find(d.root, "recipe") != nullptr) d.recipe_source = "a recipe";
  if (const auto plan = jarproof::read_plan(d); !plan) add(all, plan.errors());
}

problems problems_of(std::string_view text, std::string_view name) {
  problems all;
  if (ends_with(name, ".jsonl")) {
    for (int line = 1; !text.empty(); ++line) {
      const std::size_t end = text.find('\n');
      const auto read = jarproof::read_json_line(text.substr(0, end),
                                                 std::string(name) + ":" + std::to_string(line));
      read ? add_plan_faults(all, *read) : add(all, read.errors());
      text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
    return all;
  }
  const auto read =
      ends_with(name, ".json") ? jarproof::read_json(text, name) : jarproof::read_yaml(text, name);
  if (!read) return read.errors();
  for (const jarproof::document& d : *read) add_plan_faults(all, d);
  return all;
}

std::string place_line(const jarproof::problem& p) {
  return place_of(p) + (p.path.empty() ? "" : " " + p.path);
}

}  // namespace

std::string line_of(const jarproof::problem& p) {
  return place_line(p) + " | " + p.message + " | " + p.write;
}

std::string repeated(std::string_view text, std::size_t times) {
  std::string out;
  out.reserve(text.size() * times);
  for (std::size_t i = 0; i < times; ++i) out += text;
  return out;
}

bool begins(std::string_view text, std::string_view head) {
  return text.substr(0, head.size()) == head;
}

std::string faults_of(std::string_view text, std::string_view name) {
  std::string out;
  for (const jarproof::problem& p : problems_of(text, name)) out += line_of(p) + "\n";
  return out;
}

std::string fault_places_of(std::string_view text, std::string_view name) {
  std::string out;
  for (const jarproof::problem& p : problems_of(text, name)) out += place_line(p) + "\n";
  return out;
}

std::vector<jarproof::document> documents_of(std::string_view text, std::string_view name) {
  const auto read =
      ends_with(name, ".json") ? jarproof::read_json(text, name) : jarproof::read_yaml(text, name);
  if (!read) FAIL(text << "\n" << line_of(read.errors().front()));
  return *read;
}

jarproof::node root_of(std::string_view text, std::string_view name) {
  const std::vector<jarproof::document> all = documents_of(text, name);
  REQUIRE(all.size() == 1);
  return all.front().root;
}

}  // namespace fixtures
