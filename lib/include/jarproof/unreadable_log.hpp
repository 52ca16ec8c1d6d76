// The report for a text that is no run log.
// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <utility>

#include "jarproof/detail/log_findings.hpp"
#include "jarproof/log_report.hpp"
#include "jarproof/result.hpp"

namespace jarproof {

/// One finding for each problem. `judged` is what the plan of the log gives.
[[nodiscard]] inline log_report unreadable_log_report(std::string_view source,
                                                      const problems& errors, report judged,
                                                      const edition& rules) {
  log_report out;
  out.source = std::string(source);
  out.plan = std::move(judged);
  const plan nothing_planned;
  const run_log nothing_logged;
  detail::run_judging j{nothing_planned, rules, nothing_logged, out, {}, {}, {}, {}};
  for (const problem& p : errors) {
    detail::sentence_facts facts;
    facts.reason = p.message;
    facts.instead = p.write;
    log_finding& f = j.say("log-unreadable", nullptr, std::move(facts));
    f.field = p.path;
    f.line = p.line;
    f.column = p.column;
    f.required = p.write;
  }
  out.verdict = verdict::unreadable;
  return out;
}

}  // namespace jarproof
