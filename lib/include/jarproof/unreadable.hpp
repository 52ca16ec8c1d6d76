// The report for a text that is no plan.
// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <utility>

#include "jarproof/detail/findings.hpp"
#include "jarproof/report.hpp"
#include "jarproof/result.hpp"

namespace jarproof {

/// One finding for each problem, so that an answer stands in the place of the plan.
[[nodiscard]] inline report unreadable_report(std::string_view source, const problems& errors,
                                              const edition& rules) {
  report out;
  out.source = std::string(source);
  const plan nothing_read;
  detail::judging j{nothing_read, rules, out, {}};
  for (const problem& p : errors) {
    detail::sentence_facts facts;
    facts.reason = p.message;
    facts.instead = p.write;
    finding& f = j.say("plan-unreadable", {p.path, p.line, p.column}, std::move(facts));
    f.required = p.write;
    if (!p.file.empty() && p.file != source) f.file = p.file;  // the recipe
  }
  out.verdict = verdict::unreadable;
  return out;
}

}  // namespace jarproof
