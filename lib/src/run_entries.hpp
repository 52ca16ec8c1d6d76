// `canning-day.yaml`: what a run log is held to, and what a cook is told to do.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/log_sentence.hpp"
#include "way_entries.hpp"

namespace jarproof {

class run_entries : public way_entries {
 protected:
  void read_run(const node& n) {
    only(n, {"limits", "steps", "boiling"});
    run_rules& out = edition_.run;
    out.limits = limits(n, run_limit_ids);
    out.steps = steps(n, run_step_ids);
    const node* boiling = value(n, "boiling", true);
    if (boiling == nullptr) return;
    only(*boiling, {"points", "evidence", "sources"});
    read_ground(*boiling, out.boiling_evidence, out.boiling_sources);
    std::vector<boiling_point> points;
    for (const node& p : items(*boiling, "points", true)) {
      only(p, {"altitude_ft", "f"});
      const boiling_point point{number(p, "altitude_ft", 0, 30'000), thousandths(p, "f", 220)};
      if (points.empty() ? point.altitude_ft != 0
                         : point.altitude_ft <= points.back().altitude_ft ||
                               point.thousandths_f >= points.back().thousandths_f)
        fault(p, "the points do not go up from 0 ft, or the temperatures do not fall",
              "list them from 0 ft up");
      points.push_back(point);
    }
    out.boiling = storage_.keep(std::move(points));
  }

  void read_after(const node& n) {
    only(n, {"limits", "steps", "not_reprocessed"});
    after_rules& out = edition_.after;
    out.limits = limits(n, after_limit_ids);
    out.steps = steps(n, after_step_ids);
    const node* dense = value(n, "not_reprocessed", false);
    if (dense == nullptr) return;
    only(*dense, {"processes", "evidence", "sources"});
    read_ground(*dense, out.not_reprocessed_evidence, out.not_reprocessed_sources);
    out.not_reprocessed = words(*dense, "processes", true);
    for (const node& p : items(*dense, "processes", false))
      refer(p, storage_.keep(p.text), &edition::processes);
  }

 private:
  /// All entries of a closed list: one that is missing would leave a fault unsaid.
  template <class T, std::size_t N>
  void all_known(const node& n, std::string_view key, list<T> entries,
                 const std::string_view (&ids)[N]) {
    const node* at = jarproof::find(n, key);
    if (at == nullptr) return;  // reported already
    for (const T& e : entries) {
      if (e.id.empty() || std::find(std::begin(ids), std::end(ids), e.id) != std::end(ids))
        continue;
      const std::string near = detail::nearest(e.id, ids);
      fault(*at, "`" + std::string(e.id) + "` is not asked for by the program",
            near.empty() ? "remove it" : "did you mean `" + near + "`?");
    }
    std::vector<std::string> missing;
    for (const std::string_view id : ids) {
      if (jarproof::find(entries, id) == nullptr) missing.push_back("`" + std::string(id) + "`");
    }
    if (!missing.empty())
      fault(*at,
            detail::joined(missing, "and") + (missing.size() == 1 ? " is" : " are") + " missing",
            "add an entry for each");
  }

  template <std::size_t N>
  [[nodiscard]] list<run_limit> limits(const node& n, const std::string_view (&ids)[N]) {
    const list<run_limit> out = entries<run_limit>(n, "limits", &run_entries::read_limit, false);
    all_known(n, "limits", out, ids);
    return out;
  }
  template <std::size_t N>
  [[nodiscard]] list<run_step> steps(const node& n, const std::string_view (&ids)[N]) {
    const list<run_step> out = entries<run_step>(n, "steps", &run_entries::read_run_step, false);
    all_known(n, "steps", out, ids);
    return out;
  }

 public:
  [[nodiscard]] run_limit read_limit(const node& n) {
    only(n, {"id", "value", "says", "evidence", "sources"});
    run_limit out;
    out.id = text(n, "id");
    out.value = number(n, "value", 1, 240);
    out.says = text(n, "says");
    read_ground(n, out.evidence, out.sources);
    return out;
  }
  [[nodiscard]] run_step read_run_step(const node& n) {
    only(n, {"id", "says", "evidence", "sources"});
    run_step out;
    out.id = text(n, "id");
    out.says = text(n, "says");
    const std::string wrong = detail::unknown_log_word(out.says);
    if (!wrong.empty())
      fault(*find(n, "says"), "`{" + wrong + "}` is no word that can be filled in",
            "use one of: " + detail::joined(detail::log_words, "and"));
    read_ground(n, out.evidence, out.sources);
    return out;
  }
};

}  // namespace jarproof
