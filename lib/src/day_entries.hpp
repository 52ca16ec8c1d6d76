// `canning-day.yaml`: a section for each part of the work that it speaks of.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

#include "run_entries.hpp"

namespace jarproof {

class day_entries : public run_entries {
 protected:
  void read_canning_day(const node& root) {
    only(root, {"run", "after", "day"});
    if (const node* run = value(root, "run", true)) read_run(*run);
    if (const node* after = value(root, "after", true)) read_after(*after);
    if (const node* day = value(root, "day", true)) edition_.day = read_day(*day);
  }

 private:
  [[nodiscard]] day_rules read_day(const node& n) {
    only(n, {"minutes", "numbers", "produce", "texts"});
    day_rules out;
    out.minutes = entries<day_minutes>(n, "minutes", &day_entries::read_minutes, false);
    out.numbers = entries<day_number>(n, "numbers", &day_entries::read_number, false);
    out.produce = entries<day_produce>(n, "produce", &day_entries::read_produce, false);
    out.texts = entries<day_text>(n, "texts", &day_entries::read_text, false);
    return out;
  }

  [[nodiscard]] list<std::string_view> methods(const node& n, bool needed) {
    const list<std::string_view> out = words(n, "methods", needed);
    if (const node* found = find(n, "methods")) {
      for (const node& m : found->items) refer(m, storage_.keep(m.text), &edition::methods);
    }
    return out;
  }

  [[nodiscard]] day_minutes read_minutes(const node& n) {
    only(n, {"id", "stage", "methods", "from", "through", "use", "says", "evidence", "sources"});
    day_minutes out;
    out.id = text(n, "id");
    out.stage = one_of(n, "stage", {"heat-up", "come-up", "cool-down", "rest", "next-load"});
    out.methods = methods(n, true);
    constexpr int most_min = 240;
    out.from_min = number(n, "from", 0, most_min);
    out.through_min = number(n, "through", 0, most_min);
    out.use_min = number(n, "use", 0, most_min);
    if (out.from_min > out.use_min || out.use_min > out.through_min)
      fault(n, "`use` does not lie between `from` and `through`", "write them in this order");
    out.says = text(n, "says");
    read_ground(n, out.evidence, out.sources);
    return out;
  }

  [[nodiscard]] day_number read_number(const node& n) {
    only(n, {"id", "value", "unit", "says", "evidence", "sources"});
    day_number out;
    out.id = text(n, "id");
    out.thousandths = thousandths(n, "value", 1'000);
    out.unit = one_of(n, "unit", {"in", "jars", "F", "h", "years", "min"});
    out.says = text(n, "says");
    read_ground(n, out.evidence, out.sources);
    return out;
  }

  [[nodiscard]] day_produce read_produce(const node& n) {
    only(n, {"id", "names", "processes", "jar", "pounds", "bushel", "evidence", "sources"});
    day_produce out;
    out.id = text(n, "id");
    out.names = words(n, "names", true);
    out.processes = words(n, "processes", true);
    if (const node* processes = find(n, "processes")) {
      for (const node& p : processes->items) refer(p, storage_.keep(p.text), &edition::processes);
    }
    out.jar = reference(n, "jar", &edition::jars, true);
    const std::vector<node>& pounds = items(n, "pounds", true);
    if (pounds.size() == 2) {
      out.from_thousandths_lb = thousandths_of(pounds[0], 100);
      out.through_thousandths_lb = thousandths_of(pounds[1], 100);
    }
    if (pounds.size() == 1 || pounds.size() > 2 ||
        out.from_thousandths_lb > out.through_thousandths_lb)
      fault(n, "`pounds` takes the least and the most", "write it like `pounds: [2, 2.5]`");
    if (const node* bushel = value(n, "bushel", false)) {
      only(*bushel, {"pounds", "quarts"});
      out.bushel_lb = number(*bushel, "pounds", 1, 200);
      const list<int> quarts = numbers(*bushel, "quarts", 1, 200);
      if (quarts.size() == 2 && quarts[0] <= quarts[1]) {
        out.bushel_from_qt = quarts[0];
        out.bushel_through_qt = quarts[1];
      } else {
        fault(*bushel, "`quarts` takes the least and the most", "write it like `quarts: [16, 20]`");
      }
    }
    read_ground(n, out.evidence, out.sources);
    return out;
  }

  [[nodiscard]] day_text read_text(const node& n) {
    only(n, {"id", "part", "when", "methods", "packs", "gauges", "says", "evidence", "sources"});
    day_text out;
    out.id = text(n, "id");
    out.part = known_word(n, "part", detail::day_parts, true);
    out.when = known_word(n, "when", detail::day_conditions, false);
    out.methods = methods(n, false);
    out.packs = words(n, "packs");
    out.gauges = words(n, "gauges");
    out.says = text(n, "says");
    for (std::size_t at = out.says.find('{'); at != std::string_view::npos;
         at = out.says.find('{', at + 1)) {
      const std::string_view name = out.says.substr(at + 1, out.says.find('}', at) - at - 1);
      if (std::find(std::begin(detail::day_words), std::end(detail::day_words), name) ==
          std::end(detail::day_words))
        fault(*find(n, "says"), "`{" + std::string(name) + "}` is no word that can be filled in",
              "use one of: " + detail::joined(detail::day_words, "and"));
    }
    read_ground(n, out.evidence, out.sources);
    return out;
  }

  template <class Words>
  [[nodiscard]] std::string_view known_word(const node& n, std::string_view key, const Words& known,
                                            bool needed) {
    const std::string_view out = text(n, key, needed);
    if (!out.empty() && std::find(std::begin(known), std::end(known), out) == std::end(known))
      fault(*find(n, key), "`" + std::string(out) + "` is not known here",
            "write " + detail::joined(known));
    return out;
  }
};

}  // namespace jarproof
