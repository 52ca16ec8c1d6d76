// Comparing a plan with the published tables of its food.
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
  if (!j.out.required) {
    sentence_facts facts;
    facts.found = what.altitude->text;
    facts.required = "at most " + altitude_text(j.rules.highest_ft);
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

/// A number that holds for the plan's pack; where it is unsaid, the mildest and the strictest.
struct number_range {
  int least = 0;
  int most = 0;
};

template <class Number>
[[nodiscard]] number_range by_pack(const std::vector<fitting_row>& rows, Number&& number) {
  number_range out;
  for (const std::string_view pack : packs_of(rows)) {
    int strictest_number = 0;
    for (const fitting_row& r : rows) {
      if (r.row->pack == pack) strictest_number = std::max(strictest_number, number(r));
    }
    out.least = out.least == 0 ? strictest_number : std::min(out.least, strictest_number);
    out.most = std::max(out.most, strictest_number);
  }
  return out;
}

[[nodiscard]] inline number_range times_of(const std::vector<fitting_row>& rows) {
  return by_pack(rows, [](const fitting_row& r) { return r.jar->minutes[0]; });
}

[[nodiscard]] inline number_range headspaces_of(const std::vector<fitting_row>& rows) {
  return by_pack(rows, [](const fitting_row& r) { return r.row->headspace_thousandths_in; });
}

/// Headspace up to 1 mm below the published one is reading precision.
[[nodiscard]] inline bool headspace_reaches(std::int64_t given_nm, int thousandths_in) noexcept {
  return given_nm >= thousandths_in * nm_per_in / 1000 - nm_per_mm;
}

inline void judge_time(judging& j, const process& p, const std::vector<fitting_row>& rows) {
  const plan& what = j.what;
  const number_range needed = times_of(rows);
  if (!what.time) {
    missing(j, "time", "time: " + std::to_string(needed.most) + " min");
    return;
  }
  const std::int64_t ms = what.time->value.value;
  sentence_facts facts;
  facts.found = what.time->text;
  if (ms < needed.least * ms_per_min) {
    facts.required = time_text(needed.least);
    finding& f = j.say("time-too-short", place_of("time", *what.time), std::move(facts));
    cite_first(j.rules, p.sources, f);
  } else if (ms > needed.most * ms_per_min) {
    facts.required = time_text(needed.most);
    j.say("over-required", place_of("time", *what.time), std::move(facts));
  }
}

/// An unsaid pack does no harm only where both packs are published and the plan holds for both.
inline void judge_unsaid_pack(judging& j, const process& p, const std::vector<fitting_row>& rows) {
  const plan& what = j.what;
  if (what.pack) return;
  const std::vector<std::string_view> packs = packs_of(rows);
  std::vector<std::string_view> published;
  for (const table& t : p.tables) {
    if (std::find(published.begin(), published.end(), t.pack) == published.end()) {
      published.push_back(t.pack);
    }
  }
  const bool time_holds = what.time && what.time->value.value >= times_of(rows).most * ms_per_min;
  const bool headspace_holds =
      !what.headspace || headspace_reaches(what.headspace->value.value, headspaces_of(rows).most);
  if (published.size() < 2) {
    missing(j, "pack", "pack: " + std::string(published.front()));
  } else if (packs.size() == published.size() && time_holds && headspace_holds) {
    j.say("holds-either-way", place_of("pack", what), {{}, {}, "raw and hot pack", {}, {}});
  } else {
    missing(j, "pack");
  }
}

enum class fit { below, fits, above };

/// The stated pressure against one column, where it says something about that gauge at all.
[[nodiscard]] inline std::optional<fit> pressure_fit(const judging& j, const method& canner,
                                                     std::string_view gauge, int psi) {
  std::int64_t value = 0;
  if (gauge == "weighted") {
    const std::optional<int> weight = weight_of(canner, j.what.pressure->value);
    if (!weight) return std::nullopt;
    value = *weight * micro_per_unit;
  } else {
    value = dial_pressure(j.what);
  }
  if (value < psi * micro_per_unit) return fit::below;
  return value == psi * micro_per_unit ? fit::fits : fit::above;
}

inline void judge_pressure(judging& j, const process& p, const method& canner,
                           const std::vector<fitting_row>& rows, bool comparable) {
  const plan& what = j.what;
  if (!what.pressure) {
    missing(j, "pressure",
            j.out.required && what.gauge
                ? "pressure: " + std::to_string(*j.out.required->pressure_psi) + " psi"
                : "");
  }
  if (!what.pressure || !comparable) {
    if (!what.gauge) missing(j, "gauge");
    return;
  }
  // Without an altitude the lowest band still is the least any kitchen needs.
  const auto needed = [&](std::string_view gauge) -> std::optional<int> {
    if (j.out.altitude_ft > j.rules.highest_ft) return std::nullopt;
    std::optional<int> psi;
    for (const fitting_row& r : rows) {
      const band_set* bands = column(j, *r.row, gauge);
      if (bands == nullptr) continue;
      const altitude_step* step =
          j.out.altitude_ft < 0 ? &bands->steps[0] : band_at(*bands, j.out.altitude_ft);
      if (step != nullptr) psi = std::max(psi.value_or(0), step->psi);
    }
    return psi;
  };
  const auto against = [&](int psi, std::string_view gauge) {
    sentence_facts facts;
    facts.found = what.pressure->text;
    facts.required = pressure_text(psi, gauge);
    if (what.gauge_error && what.gauge_error->value.value > 0 && gauge == "dial") {
      const std::int64_t error = what.gauge_error->value.value;
      facts.required += ", which is " + pounds(psi * micro_per_unit + error) + " on this gauge";
      facts.reason = "The dial reads high by " + pounds(error) + ", so the true pressure is lower.";
    }
    return facts;
  };
  const auto too_low = [&](int psi, std::string_view gauge) {
    finding& f =
        j.say("pressure-too-low", place_of("pressure", *what.pressure), against(psi, gauge));
    cite_first(j.rules, p.sources, f);
  };
  if (what.gauge) {
    const std::optional<int> psi = needed(what.gauge->text);
    if (!psi) return;
    const std::optional<fit> fits = pressure_fit(j, canner, what.gauge->text, *psi);
    if (fits == fit::below) too_low(*psi, what.gauge->text);
    if (fits == fit::above && j.out.altitude_ft >= 0) {
      j.say("over-required", place_of("pressure", *what.pressure), against(*psi, what.gauge->text));
    }
    return;
  }
  const std::optional<int> dial = needed("dial");
  const std::optional<int> weighted = needed("weighted");
  const std::optional<fit> on_dial = dial ? pressure_fit(j, canner, "dial", *dial) : std::nullopt;
  const std::optional<fit> on_weight =
      weighted ? pressure_fit(j, canner, "weighted", *weighted) : std::nullopt;
  const bool both = on_dial && on_weight && *on_dial != fit::below && *on_weight != fit::below;
  if (both && j.out.altitude_ft >= 0) {
    j.say("holds-either-way", place_of("gauge", what),
          {{}, {}, "a dial and a weighted gauge", {}, {}});
    return;
  }
  // Where no gauge would do, it is too low whatever the gauge; the milder number is what it misses.
  const bool no_weight_does = !on_weight || *on_weight == fit::below;
  if (on_dial == fit::below && no_weight_does) {
    too_low(weighted ? std::min(*dial, *weighted) : *dial, "dial");
  }
  missing(j, "gauge");
}

inline void judge_headspace(judging& j, const std::vector<fitting_row>& rows) {
  const number_range needed = headspaces_of(rows);
  const plan& what = j.what;
  if (!what.headspace) {
    j.say("step-reminder", place_of("headspace", what),
          {{}, {}, "Leave " + headspace_text(needed.most) + " of headspace.", {}, {}});
    return;
  }
  const std::int64_t given = what.headspace->value.value;
  const std::int64_t most_nm = needed.most * nm_per_in / 1000;
  const place at = place_of("headspace", *what.headspace);
  if (!headspace_reaches(given, needed.least)) {
    j.say("headspace-too-small", at,
          {what.headspace->text, headspace_text(needed.least), {}, {}, {}});
  } else if (given > most_nm) {
    finding& f = j.say("headspace-too-large", at,
                       {what.headspace->text, headspace_text(needed.most), {}, {}, {}});
    if (given <= most_nm + nm_per_in / 4) f.level = level::note;
  }
}

}  // namespace jarproof::detail
