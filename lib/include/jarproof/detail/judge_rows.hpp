// Which rows of a food's tables fit a plan, and what they ask for in numbers.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/judge_kitchen.hpp"

namespace jarproof::detail {

/// A table row that fits what the plan says, with the jar whose time it gives.
struct fitting_row {
  const table* row;
  const jar_minutes* jar;
};

[[nodiscard]] inline std::optional<std::int64_t> jar_volume(const judging& j) {
  if (!j.what.jar) return std::nullopt;
  if (j.what.jar_volume) return j.what.jar_volume->value;
  const jar_size* size = jar_named(j.rules, j.what.jar->text);
  if (size == nullptr) return std::nullopt;
  return size->volume_floz * micro_per_unit;
}

[[nodiscard]] inline std::vector<std::string_view> packs_of(const std::vector<fitting_row>& rows) {
  std::vector<std::string_view> packs;
  for (const fitting_row& r : rows) {
    if (std::find(packs.begin(), packs.end(), r.row->pack) == packs.end())
      packs.push_back(r.row->pack);
  }
  return packs;
}

/// Rows of `p` for the plan's pack and form; says what no row has. Never empty where `p` has rows.
[[nodiscard]] inline std::vector<const table*> rows_for_pack_and_form(judging& j,
                                                                      const process& p) {
  const plan& what = j.what;
  std::vector<const table*> rows;
  for (const table& row : p.tables) rows.push_back(&row);
  const auto keep = [&](auto&& fits) {
    std::vector<const table*> kept;
    for (const table* row : rows) {
      if (fits(*row)) kept.push_back(row);
    }
    const bool some = !kept.empty();
    if (some) rows = std::move(kept);
    return some;
  };
  if (what.pack && !keep([&](const table& row) { return row.pack == what.pack->text; })) {
    j.say("pack-not-tested", place_of("pack", *what.pack),
          {what.pack->text, std::string(p.tables[0].pack), {}, {}, {}});
  }
  if (!what.form) return rows;
  const form_word* form = form_of(j);
  if (form != nullptr && !form->refused_by.empty()) {
    j.say(form->refused_by, place_of("form", *what.form), {what.form->text, {}, {}, {}, {}});
    return rows;
  }
  if (form != nullptr && keep([&](const table& row) { return row.forms.contains(form->id); }))
    return rows;
  std::vector<std::string_view> known;
  for (const table* row : rows) {
    for (const std::string_view f : row->forms) {
      if (std::find(known.begin(), known.end(), f) == known.end()) known.push_back(f);
    }
  }
  sentence_facts facts;
  facts.found = what.form->text;
  facts.choices = joined(known);
  facts.required = facts.choices;
  if (form == nullptr) {
    const std::string near = nearest(what.form->text, known);
    facts.instead =
        near.empty() ? "Write one of: " + facts.choices + "." : "Did you mean `" + near + "`?";
    j.say("word-unknown", place_of("form", *what.form), std::move(facts));
  } else {
    j.say("form-not-tested", place_of("form", *what.form), std::move(facts));
  }
  return rows;
}

/// True where other rows of the same pack and gauges list a smaller fitting jar for every form of
/// `row`: a pint then takes the pint's own row, not the next larger jar of this one.
[[nodiscard]] inline bool has_nearer_row(const judging& j, const fitting_row& row,
                                         const std::vector<fitting_row>& rows) {
  const int floz = find(j.rules.jars, row.jar->jar)->volume_floz;
  for (const std::string_view form : row.row->forms) {
    bool nearer = false;
    for (const fitting_row& other : rows) {
      const bool same_columns = (row.row->dial.empty() || !other.row->dial.empty()) &&
                                (row.row->weighted.empty() || !other.row->weighted.empty());
      nearer = nearer || (other.row->pack == row.row->pack && same_columns &&
                          other.row->forms.contains(form) &&
                          find(j.rules.jars, other.jar->jar)->volume_floz < floz);
    }
    if (!nearer) return false;
  }
  return true;
}

/// Pairs rows with the listed jar whose time holds. Where the jar is larger than all listed ones,
/// says so and pairs with the largest, so that the report can show what would pass.
[[nodiscard]] inline std::vector<fitting_row> rows_for_jar(judging& j, const process& p,
                                                           const std::vector<const table*>& rows) {
  std::vector<fitting_row> out;
  const std::optional<std::int64_t> volume = jar_volume(j);
  if (!volume) return out;
  for (const table* row : rows) {
    if (const jar_minutes* m = listed_jar(j.rules, *row, *volume)) out.push_back({row, m});
  }
  const std::vector<fitting_row> all = out;
  out.erase(std::remove_if(out.begin(), out.end(),
                           [&](const fitting_row& r) { return has_nearer_row(j, r, all); }),
            out.end());
  const word& jar = *j.what.jar;
  const jar_size* named = j.what.jar_volume ? nullptr : jar_named(j.rules, jar.text);
  if (out.empty()) {
    const jar_minutes* largest = nullptr;
    for (const table* row : rows) {
      const jar_minutes* m = largest_jar(j.rules, *row);
      if (m == nullptr) continue;
      out.push_back({row, m});
      const jar_size* size = find(j.rules.jars, m->jar);
      const jar_size* best = largest == nullptr ? nullptr : find(j.rules.jars, largest->jar);
      if (best == nullptr || size->volume_floz > best->volume_floz) largest = m;
    }
    if (largest == nullptr) return out;
    out.erase(std::remove_if(out.begin(), out.end(),
                             [&](const fitting_row& r) { return r.jar->jar != largest->jar; }),
              out.end());
    sentence_facts facts;
    facts.found = jar.text;
    facts.required = std::string(find(j.rules.jars, largest->jar)->title) + " jars or smaller";
    if (named != nullptr) facts.reason = std::string(named->limit);
    if (j.what.jar_volume && j.what.jar_volume->metric)
      facts.reason = std::string(j.rules.metric_jar_says);
    j.words.jar = std::string(find(j.rules.jars, largest->jar)->title);
    finding& f = j.say("jar-too-large", place_of("jar", jar), std::move(facts));
    cite_first(j.rules, p.sources, f);
    if (named != nullptr) cite_first(j.rules, named->sources, f);
    return out;
  }
  const jar_size* used = find(j.rules.jars, out.front().jar->jar);
  j.words.jar = std::string(used->title);
  if (used->volume_floz * micro_per_unit != *volume) {
    sentence_facts facts;
    facts.found = jar.text;
    facts.required = std::string(used->title) + " time";
    if (j.what.jar_volume && j.what.jar_volume->metric)
      facts.reason = std::string(j.rules.metric_jar_says);
    j.say("jar-in-between", place_of("jar", jar), std::move(facts));
  }
  return out;
}

/// The column of a row for one gauge, or null.
[[nodiscard]] inline const band_set* column(const judging& j, const table& row,
                                            std::string_view gauge) {
  return find(j.rules.bands, gauge == "dial" ? row.dial : row.weighted);
}

/// The strictest numbers among `rows` for one gauge at one altitude: of forms that the plan leaves
/// open, the longest time and the largest headspace hold.
[[nodiscard]] inline std::optional<requirement> strictest(const judging& j, const process& p,
                                                          const std::vector<fitting_row>& rows,
                                                          std::string_view gauge, int altitude_ft) {
  std::optional<requirement> out;
  const method* canner = find(j.rules.methods, "pressure");
  for (const fitting_row& r : rows) {
    const band_set* bands = column(j, *r.row, gauge);
    const altitude_step* step = bands == nullptr ? nullptr : band_at(*bands, altitude_ft);
    if (step == nullptr) continue;
    if (!out) {
      out.emplace();
      out->method = "pressure";
      out->gauge = std::string(gauge);
      if (canner != nullptr) out->vent_min = canner->vent_min;
    }
    if (r.jar->minutes[0] > out->time_min) {
      out->time_min = r.jar->minutes[0];
      out->pack = std::string(r.row->pack);
      out->jar = std::string(r.jar->jar);
      out->style = std::string(r.row->style);
    }
    out->pressure_psi = std::max(out->pressure_psi.value_or(0), step->psi);
    out->headspace_thousandths_in =
        std::max(out->headspace_thousandths_in, r.row->headspace_thousandths_in);
    out->verified = out->verified && r.row->use;
    add_sources(j.rules, r.row->sources.empty() ? p.sources : r.row->sources, out->sources);
    add_sources(j.rules, step->sources, out->sources);
  }
  if (out && !j.what.pack) out->pack = joined(packs_of(rows));
  return out;
}

/// Fills `required` and `options` and says where no table reaches this altitude.
inline void find_required(judging& j, const process& p, const std::vector<fitting_row>& rows) {
  const plan& what = j.what;
  if (!what.altitude || rows.empty()) return;
  const int feet = j.out.altitude_ft;
  const std::string_view stated =
      what.gauge ? std::string_view(what.gauge->text) : std::string_view();
  const std::string_view first = stated.empty() ? "dial" : stated;
  const std::string_view second = first == "dial" ? "weighted" : "dial";
  if (feet <= j.rules.highest_ft) {
    j.out.required = strictest(j, p, rows, first, feet);
    if (std::optional<requirement> other = strictest(j, p, rows, second, feet)) {
      j.out.options.push_back(std::move(*other));
    }
  }
  const bool has_column = std::any_of(rows.begin(), rows.end(), [&](const fitting_row& r) {
    return column(j, *r.row, first) != nullptr;
  });
  if (!has_column) {
    j.say("no-tested-process",
          what.gauge ? place_of("gauge", *what.gauge) : place_of("gauge", what),
          {what.gauge ? what.gauge->text : "",
           {},
           "The table has no column for a " + std::string(first) + " gauge.",
           {},
           {}});
    return;
  }
  if (!j.out.required) {
    sentence_facts facts;
    facts.found = what.altitude->text;
    int top = 0;  // where this gauge's column ends; without a printed end, where all tables do
    for (const fitting_row& r : rows) {
      if (const band_set* bands = column(j, *r.row, first)) {
        const int end = bands->steps[bands->steps.size() - 1].through_ft;
        top = std::max(top, end == 0 ? j.rules.highest_ft : std::min(end, j.rules.highest_ft));
      }
    }
    facts.required = "at most " + altitude_text(top);
    j.say("altitude-outside-table", place_of("altitude", *what.altitude), std::move(facts));
    return;
  }
  for (const fitting_row& r : rows) {
    const band_set* bands = column(j, *r.row, first);
    const altitude_step* step = bands == nullptr ? nullptr : band_at(*bands, feet);
    if (step == nullptr || step->says.empty()) continue;
    finding& f =
        j.say("altitude-by-extension", place_of("altitude", *what.altitude),
              {what.altitude->text, pressure_text(step->psi), std::string(step->says), {}, {}});
    cite_first(j.rules, step->sources, f);
    return;
  }
}

}  // namespace jarproof::detail
