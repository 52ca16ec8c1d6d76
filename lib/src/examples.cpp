// SPDX-License-Identifier: MIT
#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "jarproof/day_of.hpp"
#include "jarproof/detail/words.hpp"
#include "jarproof/read_plan.hpp"
#include "jarproof/rules.hpp"
#include "jarproof/unreadable.hpp"
#include "jarproof/yaml.hpp"

namespace jarproof {
namespace {

[[nodiscard]] report judged(const example& shown, const edition& rules) {
  const result<std::vector<document>> read = read_yaml(shown.plan, shown.name);
  if (!read) return unreadable_report(shown.name, read.errors(), rules);
  if (read->size() != 1) {
    return unreadable_report(
        shown.name, {{std::string(shown.name), 1, 1, "", "one plan is needed", "write one plan"}},
        rules);
  }
  const result<plan> what = read_plan(read->front());
  if (!what) return unreadable_report(shown.name, what.errors(), rules);
  // What the canning day finds has no outcome, so only the examples of its own checks show it.
  day_plan day = day_of(*what, rules);
  day_batch& only = day.batches.front();
  report out = std::move(only.judged);
  out.findings.insert(out.findings.end(), only.findings.begin(), only.findings.end());
  return out;
}

}  // namespace

std::vector<std::string> example_findings(const check_rule& check, const example& shown,
                                          const edition& rules) {
  std::vector<std::string> out;
  for (const finding& f : judged(shown, rules).findings) {
    if (f.outcome == outcome::none && f.check != check.id) continue;
    out.push_back(std::to_string(f.line) + ":" + std::to_string(f.column) + " " + f.check);
  }
  return out;
}

problems run_examples(const check_rule& check, const edition& rules) {
  problems out;
  const auto differs = [&](const example& x, std::string message, std::string write) {
    out.push_back({"checks/" + std::string(check.id) + ".yaml", 1, 1, "examples",
                   "example \"" + std::string(x.name) + "\" " + std::move(message),
                   std::move(write)});
  };
  for (const example& x : check.good) {
    const std::vector<std::string> found = example_findings(check, x, rules);
    if (!found.empty())
      differs(x, "is not good: " + detail::joined(found, "and"), "mend the plan or the rule");
  }
  for (const example& x : check.bad) {
    const std::vector<std::string> found = example_findings(check, x, rules);
    if (!std::equal(found.begin(), found.end(), x.expect.begin(), x.expect.end())) {
      differs(x, "gives " + (found.empty() ? "nothing" : detail::joined(found, "and")),
              "it expects " + detail::joined(x.expect, "and"));
    }
    const std::string own = " " + std::string(check.id);
    const bool named = std::any_of(x.expect.begin(), x.expect.end(), [&](std::string_view e) {
      return e.size() > own.size() && e.substr(e.size() - own.size()) == own;
    });
    if (!named) differs(x, "does not expect its own check", "add a `LINE:COLUMN" + own + "` entry");
  }
  return out;
}

problems run_examples(const edition& rules) {
  problems out;
  for (const check_rule& c : rules.checks) {
    problems more = run_examples(c, rules);
    out.insert(out.end(), more.begin(), more.end());
  }
  return out;
}

}  // namespace jarproof
