// Making findings about a run out of the sentences in the check files.
// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/findings.hpp"
#include "jarproof/detail/log_course.hpp"
#include "jarproof/detail/log_target.hpp"
#include "jarproof/detail/log_times.hpp"
#include "jarproof/log_report.hpp"

namespace jarproof::detail {

/// The plan, the log, the rules and the report that is being written.
struct run_judging {
  const plan& what;
  const edition& rules;
  const run_log& log;
  log_report& out;
  std::vector<log_moment> moments;
  log_target target;
  log_course course;
  plan_words words;
  bool delivered = false;  ///< the whole time, by what the rows vouch for
  std::int64_t needed_us = 0;

  [[nodiscard]] std::string when(std::int64_t at_us) const { return when_text(log.clock, at_us); }

  /// Adds a finding of the check `id` at a row. As for a plan, a check that the rules lack objects
  /// all the same.
  log_finding& say(std::string_view id, const log_row* row, sentence_facts facts = {}) {
    return add(id, row, std::move(facts), false);
  }

  /// The same for what the log leaves open: always incomplete.
  log_finding& unsaid(std::string_view id, const log_row* row, sentence_facts facts = {}) {
    return add(id, row, std::move(facts), true);
  }

 private:
  log_finding& add(std::string_view id, const log_row* row, sentence_facts facts, bool open) {
    log_finding f;
    f.check = std::string(id);
    if (row != nullptr) {
      f.line = row->line;
      f.column = row->event ? row->event->column : row->reading ? row->reading_column : row->column;
      f.field = row->event ? "event" : std::string(name_of(log.unit));
      f.at_us = row->at_us;
    } else {
      f.line = 1;
      f.column = 1;
    }
    const check_rule* rule = find(rules.checks, id);
    if (rule == nullptr) {
      f.level = level::error;
      f.outcome = outcome::rejects;
      f.message = "The check " + f.check + " objects, but the rules in use hold no text for it.";
    } else {
      const auto or_else = [](std::string_view first, std::string_view second) {
        return first.empty() ? second : first;
      };
      f.level = open ? level::error : level_of(or_else(rule->log_level, rule->level));
      f.outcome =
          open ? outcome::incomplete : outcome_of(or_else(rule->log_outcome, rule->outcome));
      f.message =
          filled(open ? rule->unsaid : or_else(rule->log_says, rule->says), facts, words, f.field);
      f.why = filled(rule->why, facts, words, f.field);
      f.fix = filled(or_else(rule->log_fix, rule->fix), facts, words, f.field);
      add_sources(rules, rule->sources, f.sources);
    }
    f.found = std::move(facts.found);
    f.required = std::move(facts.required);
    out.findings.push_back(std::move(f));
    return out.findings.back();
  }
};

/// `12.5 psi`, as the log has it.
[[nodiscard]] inline std::string reading_text(const run_judging& j, const log_row& row) {
  return row.reading_text + " " + std::string(name_of(j.log.unit));
}

/// A fault that the rest of the run made good, or still can.
inline void soften(const run_judging& j, log_finding& f) {
  if (j.delivered) {
    f.level = level::note;
    f.outcome = outcome::none;
  } else if (j.out.running && j.out.state != run_state::cooling) {
    f.outcome = outcome::incomplete;
  }
}

}  // namespace jarproof::detail
