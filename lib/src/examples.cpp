// SPDX-License-Identifier: MIT
#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "jarproof/day_of.hpp"
#include "jarproof/detail/words.hpp"
#include "jarproof/judge_log.hpp"
#include "jarproof/read_log.hpp"
#include "jarproof/read_plan.hpp"
#include "jarproof/rules.hpp"
#include "jarproof/unreadable.hpp"
#include "jarproof/unreadable_log.hpp"
#include "jarproof/yaml.hpp"

namespace jarproof {
namespace {

/// The plan of an example, or what makes it none.
[[nodiscard]] result<plan> plan_of(const example& shown) {
  const result<std::vector<document>> read = read_yaml(shown.plan, shown.name);
  if (!read) return read.errors();
  if (read->size() != 1)
    return problems{{std::string(shown.name), 1, 1, "", "one plan is needed", "write one plan"}};
  return read_plan(read->front());
}

/// True where the findings of an example name this one.
template <class Finding>
[[nodiscard]] bool counts(const Finding& f, const check_rule& check) {
  return f.outcome != outcome::none || f.check == check.id;
}

[[nodiscard]] std::vector<std::string> run_findings(const check_rule& check, const example& shown,
                                                    const plan& what, const edition& rules) {
  const result<run_log> log = read_log(shown.log, std::string(shown.name));
  const log_report judged =
      log ? judge_log(what, rules, *log)
          : unreadable_log_report(shown.name, log.errors(), jarproof::check(what, rules), rules);
  std::vector<std::string> out;
  for (const log_finding& f : judged.findings) {
    if (counts(f, check)) out.push_back(std::to_string(f.line) + " " + f.check);
  }
  return out;
}

[[nodiscard]] std::vector<finding> plan_findings(const example& shown, const result<plan>& what,
                                                 const edition& rules) {
  if (!what) return unreadable_report(shown.name, what.errors(), rules).findings;
  // What the canning day finds has no outcome, so only the examples of its own checks show it.
  day_plan day = day_of(*what, rules);
  day_batch& only = day.batches.front();
  std::vector<finding> out = std::move(only.judged.findings);
  out.insert(out.end(), only.findings.begin(), only.findings.end());
  return out;
}

}  // namespace

std::vector<std::string> example_findings(const check_rule& check, const example& shown,
                                          const edition& rules) {
  const result<plan> what = plan_of(shown);
  if (what && !shown.log.empty()) return run_findings(check, shown, *what, rules);
  std::vector<std::string> out;
  for (const finding& f : plan_findings(shown, what, rules)) {
    if (!counts(f, check)) continue;
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
    if (!named)
      differs(x, "does not expect its own check",
              std::string("add a `") + (x.log.empty() ? "LINE:COLUMN" : "LINE") + own + "` entry");
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
