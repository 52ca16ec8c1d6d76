// `ways.yaml`, and sentences with words that are filled in.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>

#include "jarproof/detail/findings.hpp"
#include "process_entries.hpp"

namespace jarproof {

class way_entries : public process_entries {
 protected:
  /// `ways.yaml`: what `jarproof ways` says beside the numbers.
  void read_ways(const node& root) {
    only(root, {"left_out", "steps", "yields"});
    // An addition may bring only one of the lists.
    if (!extends_ || jarproof::find(root, "left_out") != nullptr)
      edition_.left_outs = entries<left_out>(root, "left_out", &way_entries::read_left_out, false);
    if (!extends_ || jarproof::find(root, "steps") != nullptr)
      edition_.way_steps = entries<way_step>(root, "steps", &way_entries::read_step, false);
    if (jarproof::find(root, "yields") != nullptr)
      edition_.dry_yields = entries<dry_yield>(root, "yields", &way_entries::read_yield, false);
  }
  [[nodiscard]] left_out read_left_out(const node& n) {
    only(n, {"id", "traits", "foods", "leave_out", "at_serving", "freezer", "evidence", "sources"});
    left_out out;
    out.id = text(n, "id");
    out.traits = words(n, "traits");
    for (const std::string_view t : out.traits) check_trait(*find(n, "traits"), t);
    out.foods = words(n, "foods");
    if (const node* foods = find(n, "foods")) {
      for (const node& f : foods->items) refer(f, storage_.keep(f.text), &edition::ingredients);
    }
    out.leave_out = sentence(n, "leave_out", false);
    out.at_serving = sentence(n, "at_serving", false);
    out.freezer = sentence(n, "freezer", false);
    if (out.leave_out.empty() && out.at_serving.empty() && out.freezer.empty())
      fault(n, "the entry says nothing", "add `leave_out`, `at_serving` or `freezer`");
    read_ground(n, out.evidence, out.sources);
    return out;
  }
  [[nodiscard]] way_step read_step(const node& n) {
    only(n, {"id", "way", "processes", "if_any", "says", "evidence", "sources"});
    way_step out;
    out.id = text(n, "id");
    out.way = one_of(n, "way", {"frame", "recipe", "parts", "freezer"});
    out.processes = words(n, "processes");
    if (const node* processes = find(n, "processes")) {
      for (const node& p : processes->items) refer(p, storage_.keep(p.text), &edition::processes);
    }
    out.if_any = words(n, "if_any");
    for (const std::string_view t : out.if_any) check_trait(*find(n, "if_any"), t);
    out.says = text(n, "says");
    read_ground(n, out.evidence, out.sources);
    return out;
  }
  [[nodiscard]] dry_yield read_yield(const node& n) {
    only(n, {"id", "traits", "lb", "jar", "jars", "sources"});
    dry_yield out;
    out.id = text(n, "id");
    out.traits = words(n, "traits");
    if (const node* traits = find(n, "traits")) {
      for (const std::string_view t : out.traits) check_trait(*traits, t);
    }
    out.thousandths_lb = thousandths(n, "lb", 100);
    out.jar = text(n, "jar");
    if (const node* jar = find(n, "jar")) refer(*jar, out.jar, &edition::jars);
    out.jars = number(n, "jars", 1, 100);
    out.sources = citations(n, true);
    return out;
  }
  /// A publication, or the word that there is none.
  void read_ground(const node& n, std::string_view& evidence, list<citation>& sources) {
    evidence = text(n, "evidence", false);
    sources = citations(n, evidence.empty());
  }

  [[nodiscard]] std::string_view sentence(const node& map, std::string_view key, bool needed) {
    const std::string_view out = text(map, key, needed);
    for (std::size_t at = out.find('{'); at != std::string_view::npos; at = out.find('{', at + 1)) {
      const std::string_view name = out.substr(at + 1, out.find('}', at) - at - 1);
      if (std::find(std::begin(detail::placeholders), std::end(detail::placeholders), name) !=
          std::end(detail::placeholders))
        continue;
      fault(*find(map, key), "`{" + std::string(name) + "}` is no word that can be filled in",
            "use one of: " + detail::joined(detail::placeholders, "and"));
    }
    return out;
  }
};

}  // namespace jarproof
