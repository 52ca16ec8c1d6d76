// Judges one plan with the built-in edition. Link jarproof::builtin and jarproof::yaml.
// SPDX-License-Identifier: MIT
#include <iostream>

#include "jarproof/jarproof.hpp"
#include "jarproof/yaml.hpp"

int main() {
  const auto documents = jarproof::read_yaml(
      "food: green beans\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\n"
      "pressure: 10 psi\ntime: 20 min\naltitude: 4600 ft\n",
      "beans.yaml");
  if (!documents) return 3;
  const auto plan = jarproof::read_plan(documents->front());
  if (!plan) return 3;
  const jarproof::report report = jarproof::check(*plan, jarproof::builtin_edition());
  std::cout << jarproof::name_of(report.verdict) << "\n";
  for (const jarproof::finding& f : report.findings) {
    if (f.outcome != jarproof::outcome::none) std::cerr << f.line << ": " << f.message << "\n";
  }
}
