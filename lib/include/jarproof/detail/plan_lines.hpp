// The ingredient lines of a plan, read, with their amounts in the whole batch.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <iterator>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/ingredient_line.hpp"
#include "jarproof/detail/judge_acid.hpp"
#include "jarproof/detail/judge_process.hpp"
#include "jarproof/detail/list_headings.hpp"
#include "jarproof/detail/soaking_water.hpp"

namespace jarproof::detail {

/// A line of the plan, read.
struct plan_line {
  const word* said;
  line_reading reading;
  std::optional<measured> amount;  ///< of the whole batch; nothing where it cannot be known
  bool for_table = false;          ///< it stands below `To serve:`
  bool doubtful = false;           ///< by its heading it may not be in the jar
  bool poured_off = false;         ///< by its heading it is poured off
};

/// Water that does not stay in the jar, where the line itself says so. Soaking water alone may end
/// in the jar: that of dried chiles often does.
[[nodiscard]] inline bool says_discarded(const plan_line& l) {
  if (!says(l.reading, "discarded") && !says(l.reading, "drained")) return false;
  // `some discarded`, `drained into the jars`, `for soaking, then for the brine`
  return std::none_of(l.reading.words.begin(), l.reading.words.end(), [](const std::string& w) {
    return line::one_of(
        w, {"some", "if", "then", "into", "half", "part", "most", "used", "use", "not", "partly"});
  });
}

/// An amount for each jar becomes one of the batch by the number of jars and their size; without
/// both it says nothing.
[[nodiscard]] inline std::optional<measured> batch_amount(const judging& j, const line_reading& r) {
  if (!r.amount || r.per_jar.empty()) return r.amount;
  const std::int64_t jars = j.what.jars ? j.what.jars->value : 0;
  const std::int64_t meant = jar_in_words(j, r.per_jar) / 1000;  // 1/1000 fl oz
  const std::int64_t own = jar_volume(j).value_or(0) / 1000;
  if (jars <= 0 || meant <= 0 || own <= 0) return std::nullopt;
  measured out = *r.amount;
  out.low = divide(out.low * jars * own, meant, rounding::down);
  out.high = divide(out.high * jars * own, meant, rounding::up);
  out.metric = 0;
  return out;
}

/// A line below `To serve:` that puts the others in: `stir into the pot and fill the jars`.
[[nodiscard]] inline bool fills_from(std::string_view text) {
  bool stir = false;
  bool vessel = false;
  for (const line_token& t : tokens_of(plain_line(text.substr(0, 1'000)))) {
    if (line::one_of(t.text, {"serve", "serving", "opened", "opening"})) return false;
    stir = stir || line::one_of(t.text, {"stir", "fill", "put", "add", "cook"});
    vessel = vessel || line::one_of(t.text, {"pot", "jar", "jars", "kettle", "olla", "frascos"});
  }
  return stir && vessel;
}

/// `1 cup each carrots and corn` as two lines; any other line as it is.
[[nodiscard]] inline std::vector<plan_line> one_for_each(plan_line line) {
  if (!line.reading.each) return {std::move(line)};
  std::vector<other_ingredient> more;
  std::vector<other_ingredient>& others = line.reading.others;
  const auto own = std::stable_partition(others.begin(), others.end(),
                                         [](const other_ingredient& o) { return o.instead; });
  std::move(own, others.end(), std::back_inserter(more));
  others.erase(own, others.end());
  std::vector<plan_line> out{line};
  for (const other_ingredient& o : more) {
    plan_line next = line;
    next.reading.what = o.what;
    next.reading.name = o.name;
    next.reading.others.clear();
    next.amount = o.amount ? o.amount : line.amount;
    next.reading.amount = next.amount;
    out.push_back(std::move(next));
  }
  return out;
}

/// Of several lines of water, the one that the directions soak in and pour off.
inline void find_soaking_water(const judging& j, std::vector<plan_line>& lines) {
  const auto is_water = [&](const plan_line& l) {
    return l.reading.what != nullptr && is_a(j.rules, *l.reading.what, "water") &&
           l.reading.others.empty() && l.amount && l.reading.per_jar.empty();
  };
  for (plan_line& l : lines) {
    if (!is_water(l)) continue;
    const auto equal = std::count_if(lines.begin(), lines.end(), [&](const plan_line& other) {
      return is_water(other) && other.amount->high == l.amount->high;
    });
    const auto all = std::count_if(lines.begin(), lines.end(), is_water);
    if (equal == 1 && all > 1 && is_soaked_and_drained(j, *l.amount)) l.poured_off = true;
  }
}

[[nodiscard]] inline std::vector<plan_line> read_lines(const judging& j) {
  std::vector<plan_line> out;
  const std::vector<word>& said = j.what.ingredients;
  const std::vector<listed_under> under = headings_of(j.rules, said);
  std::size_t section = 0;  // its first line
  bool fills = false;       // a line below `To serve:` puts the others in
  for (std::size_t i = 0; i < said.size(); ++i) {
    const word& w = said[i];
    if (under[i].heading) {
      section = out.size();
      fills = false;
      continue;
    }
    if (under[i].serving && !fills && fills_from(w.text)) {
      fills = true;
      for (std::size_t k = section; k < out.size(); ++k)
        out[k] = {out[k].said, read_line(j.rules, out[k].said->text), out[k].amount};
    }
    const bool serving = under[i].serving && !fills && !line::names_closed_jar(plain_line(w.text));
    line_reading reading = read_line(j.rules, w.text);
    reading.at_serving = reading.at_serving || serving;
    if (reading.per_jar.empty()) reading.per_jar = under[i].per_jar;
    std::optional<measured> amount = batch_amount(j, reading);
    if (amount && reading.purchased) {
      amount->high = reading.purchased->high;
      amount->metric = 0;
    }
    plan_line line{&w, std::move(reading), amount, serving, under[i].doubtful, under[i].poured_off};
    for (plan_line& one : one_for_each(std::move(line))) out.push_back(std::move(one));
  }
  find_soaking_water(j, out);
  return out;
}

/// The report shows what each line was taken for.
inline void report_lines(judging& j, const std::vector<plan_line>& lines) {
  for (const plan_line& l : lines) {
    ingredient_line entry{l.said->line, l.said->text, {}, l.reading.amount_text, "low-acid", {}};
    if (l.reading.what != nullptr && l.reading.strange.empty()) {
      entry.ingredient = std::string(l.reading.what->id);
      entry.kind = std::string(name_of(l.reading.what->kind));
      for (const std::string_view t : l.reading.what->traits) entry.traits.emplace_back(t);
    }
    j.out.ingredients.push_back(std::move(entry));
  }
}

}  // namespace jarproof::detail
