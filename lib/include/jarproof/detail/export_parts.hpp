// Parts of an edition as JSON that several of its lists share, and what a run is held to.
// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "jarproof/edition.hpp"
#include "jarproof/format/json.hpp"
#include "jarproof/format/numbers.hpp"

namespace jarproof::detail {

class export_parts {
 protected:
  json_writer w_;

  explicit export_parts(int depth) : w_(depth) {}

  template <class T, class Write>
  void array(std::string_view key, list<T> values, Write&& write_one) {
    if (values.empty()) return;
    w_.key(key);
    w_.begin('[');
    for (const T& v : values) {
      w_.begin('{');
      write_one(v);
      w_.end('}');
    }
    w_.end(']');
  }
  void words(std::string_view key, list<std::string_view> values) {
    if (values.empty()) return;
    w_.key(key);
    w_.begin('[');
    for (const std::string_view v : values) w_.text(v);
    w_.end(']');
  }
  void numbers(std::string_view key, list<int> values) {
    w_.key(key);
    w_.begin('[');
    for (const int v : values) w_.number(v);
    w_.end(']');
  }
  void some(std::string_view key, std::string_view text) {
    if (!text.empty()) w_.member(key, text);
  }
  void some(std::string_view key, int number) {
    if (number != 0) w_.member(key, number);
  }
  void decimal(std::string_view key, int thousandths) {
    w_.key(key);
    w_.raw(decimal_of_thousandths(thousandths));
  }
  void cited(list<citation> sources) {
    array("sources", sources, [&](const citation& c) {
      w_.member("ref", c.ref);
      some("part", c.part);
      some("page", c.page);
    });
  }

  void flag(std::string_view key) {
    w_.key(key);
    w_.raw("true");
  }
  void write_limits_and_steps(list<run_limit> limits, list<run_step> steps) {
    array("limits", limits, [&](const run_limit& l) {
      w_.member("id", l.id);
      w_.member("value", l.value);
      w_.member("says", l.says);
      some("evidence", l.evidence);
      cited(l.sources);
    });
    array("steps", steps, [&](const run_step& s) {
      w_.member("id", s.id);
      w_.member("says", s.says);
      some("evidence", s.evidence);
      cited(s.sources);
    });
  }
  void write_run(const run_rules& run, const after_rules& after) {
    if (run.limits.empty() && after.limits.empty()) return;
    w_.key("run");
    w_.begin('{');
    write_limits_and_steps(run.limits, run.steps);
    w_.key("boiling");
    w_.begin('{');
    array("points", run.boiling, [&](const boiling_point& b) {
      w_.member("altitude_ft", b.altitude_ft);
      decimal("f", b.thousandths_f);
    });
    some("evidence", run.boiling_evidence);
    cited(run.boiling_sources);
    w_.end('}');
    w_.end('}');
    w_.key("after");
    w_.begin('{');
    write_limits_and_steps(after.limits, after.steps);
    if (!after.not_reprocessed.empty()) {
      w_.key("not_reprocessed");
      w_.begin('{');
      words("processes", after.not_reprocessed);
      some("evidence", after.not_reprocessed_evidence);
      cited(after.not_reprocessed_sources);
      w_.end('}');
    }
    w_.end('}');
  }
};

}  // namespace jarproof::detail
