// Which rows of a food's tables fit a plan, and the listed jar whose time holds.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
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

/// Which columns of the tables a method of heating is looked up in.
enum class heat { pressure, boiling_water };

[[nodiscard]] inline bool has_column(const table& row, heat by) noexcept {
  return by == heat::boiling_water ? !row.boiling_water.empty()
                                   : !row.dial.empty() || !row.weighted.empty();
}

/// Steam canners and low-temperature pasteurization have no columns of their own: they go by the
/// rows of the boiling-water table. Without a method, acid food is looked up there too.
[[nodiscard]] inline heat heat_of(const process& p, const method* m) noexcept {
  if (m != nullptr) return m->id == "pressure" ? heat::pressure : heat::boiling_water;
  return p.kind == food_class::acid ? heat::boiling_water : heat::pressure;
}

[[nodiscard]] inline std::vector<const table*> rows_by(const process& p, heat by) {
  std::vector<const table*> rows;
  for (const table& row : p.tables) {
    if (has_column(row, by)) rows.push_back(&row);
  }
  return rows;
}

template <class Rows>
[[nodiscard]] std::vector<std::string_view> packs_of(const Rows& rows) {
  std::vector<std::string_view> packs;
  for (const auto& r : rows) {
    if (std::find(packs.begin(), packs.end(), r.row->pack) == packs.end())
      packs.push_back(r.row->pack);
  }
  return packs;
}

/// Of these rows, those for the plan's pack and form; says what no row has. Never empty where
/// `rows` is not.
[[nodiscard]] inline std::vector<const table*> rows_for_pack_and_form(
    judging& j, std::vector<const table*> rows) {
  const plan& what = j.what;
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
          {what.pack->text, std::string(rows.front()->pack), {}, {}, {}});
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
      const bool same_columns =
          (row.row->dial.empty() || !other.row->dial.empty()) &&
          (row.row->weighted.empty() || !other.row->weighted.empty()) &&
          (row.row->boiling_water.empty() || !other.row->boiling_water.empty());
      nearer = nearer || (other.row->pack == row.row->pack && same_columns &&
                          other.row->forms.contains(form) &&
                          find(j.rules.jars, other.jar->jar)->volume_floz < floz);
    }
    if (!nearer) return false;
  }
  return true;
}

/// Pairs rows with the listed jar whose time holds; none where the jar is larger than all.
[[nodiscard]] inline std::vector<fitting_row> paired(const judging& j,
                                                     const std::vector<const table*>& rows,
                                                     std::int64_t volume) {
  std::vector<fitting_row> out;
  for (const table* row : rows) {
    if (const jar_minutes* m = listed_jar(j.rules, *row, volume)) out.push_back({row, m});
  }
  const std::vector<fitting_row> all = out;
  out.erase(std::remove_if(out.begin(), out.end(),
                           [&](const fitting_row& r) { return has_nearer_row(j, r, all); }),
            out.end());
  return out;
}

/// Pairs rows with the listed jar whose time holds. Where the jar is larger than all listed ones,
/// says so and pairs with the largest, so that the report can show what would pass.
[[nodiscard]] inline std::vector<fitting_row> rows_for_jar(judging& j, const process& p,
                                                           const std::vector<const table*>& rows) {
  const std::optional<std::int64_t> volume = jar_volume(j);
  if (!volume) return {};
  std::vector<fitting_row> out = paired(j, rows, *volume);
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
  // 946 mL is a quart, rounded to the millilitre (29.5735 mL to the fluid ounce).
  constexpr std::int64_t micro_floz_per_ml = 33'814;
  const std::int64_t less = used->volume_floz * micro_per_unit - *volume;
  if (less != 0 && (less < 0 || less >= micro_floz_per_ml)) {
    sentence_facts facts;
    facts.found = jar.text;
    facts.required = std::string(used->title) + " time";
    if (j.what.jar_volume && j.what.jar_volume->metric)
      facts.reason = std::string(j.rules.metric_jar_says);
    j.say("jar-in-between", place_of("jar", jar), std::move(facts));
  }
  return out;
}

}  // namespace jarproof::detail
