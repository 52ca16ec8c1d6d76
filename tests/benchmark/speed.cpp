// How long reading and judging take. Compare only figures of one run: the first row, which does
// nothing but turn the same lines into plain letters, is the measure for the others.
//
//   cmake --preset release && cmake --build --preset release --target speed
//   build/release/tests/speed
//
// Lines and recipes are the annotated ones of tests/corpus/open. SPDX-License-Identifier: MIT
#include <benchmark/benchmark.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "jarproof/builtin.hpp"
#include "jarproof/check.hpp"
#include "jarproof/detail/ingredient_line.hpp"
#include "jarproof/read_plan.hpp"
#include "jarproof/yaml.hpp"

namespace {

namespace fs = std::filesystem;

const jarproof::edition& rules = jarproof::builtin_edition();

std::string text_of(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

struct corpus {
  std::vector<std::string> lines;
  std::vector<jarproof::plan> plans;  ///< recipes that are given as lines or text
};

corpus read_corpus() {
  corpus out;
  std::vector<fs::path> files;
  for (const auto& entry : fs::directory_iterator(JARPROOF_SOURCE_DIR "/tests/corpus/open"))
    files.push_back(entry.path());
  std::sort(files.begin(), files.end());
  for (const fs::path& file : files) {
    const auto read = jarproof::read_yaml(text_of(file), file.filename().string());
    if (!read || read->size() != 1) continue;
    const jarproof::node& root = read->front().root;
    if (const jarproof::node* lines = find(root, "lines")) {
      for (const jarproof::node& l : lines->items) out.lines.push_back(find(l, "text")->text);
    }
    const jarproof::node* settings = find(root, "plan");
    const jarproof::node* recipe = find(root, "recipe");
    if (settings == nullptr || recipe == nullptr || find(root, "form")->text == "json-ld") continue;
    jarproof::document d;
    d.root = *settings;
    d.root.members.push_back({"ingredients", 1, 1, *recipe});
    if (auto plan = jarproof::read_plan(d)) out.plans.push_back(std::move(*plan));
  }
  return out;
}

const corpus& recipes() {
  static const corpus all = read_corpus();
  return all;
}

void letters_of_lines(benchmark::State& state) {
  for ([[maybe_unused]] auto _ : state) {
    for (const std::string& l : recipes().lines)
      benchmark::DoNotOptimize(jarproof::detail::plain_line(l));
  }
  state.SetItemsProcessed(state.iterations() * static_cast<long>(recipes().lines.size()));
}
BENCHMARK(letters_of_lines)->Unit(benchmark::kMicrosecond);

void read_lines(benchmark::State& state) {
  for ([[maybe_unused]] auto _ : state) {
    for (const std::string& l : recipes().lines)
      benchmark::DoNotOptimize(jarproof::detail::read_line(rules, l));
  }
  state.SetItemsProcessed(state.iterations() * static_cast<long>(recipes().lines.size()));
}
BENCHMARK(read_lines)->Unit(benchmark::kMicrosecond);

/// Lines of words that no list has, the slowest to look up.
void read_unknown_lines(benchmark::State& state) {
  std::vector<std::string> lines;
  for (const std::string& l : recipes().lines) {
    std::string turned = l;
    for (char& c : turned) {
      if (c >= 'a' && c <= 'y') ++c;
    }
    lines.push_back(std::move(turned));
  }
  for ([[maybe_unused]] auto _ : state) {
    for (const std::string& l : lines)
      benchmark::DoNotOptimize(jarproof::detail::read_line(rules, l));
  }
  state.SetItemsProcessed(state.iterations() * static_cast<long>(lines.size()));
}
BENCHMARK(read_unknown_lines)->Unit(benchmark::kMicrosecond);

void judge_mixtures(benchmark::State& state) {
  for ([[maybe_unused]] auto _ : state) {
    for (const jarproof::plan& p : recipes().plans)
      benchmark::DoNotOptimize(jarproof::check(p, rules));
  }
  state.SetItemsProcessed(state.iterations() * static_cast<long>(recipes().plans.size()));
}
BENCHMARK(judge_mixtures)->Unit(benchmark::kMicrosecond);

void judge_a_plain_food(benchmark::State& state) {
  const auto read = jarproof::read_yaml(
      text_of(JARPROOF_SOURCE_DIR "/examples/plans/green-beans.yaml"), "green-beans.yaml");
  const auto plan = jarproof::read_plan(read->front());
  for ([[maybe_unused]] auto _ : state) benchmark::DoNotOptimize(jarproof::check(*plan, rules));
  state.SetItemsProcessed(state.iterations());
}
BENCHMARK(judge_a_plain_food)->Unit(benchmark::kMicrosecond);

}  // namespace

BENCHMARK_MAIN();
