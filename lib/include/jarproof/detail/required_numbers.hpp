// What the rows that fit a plan ask for in numbers, on each gauge and at its altitude.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/judge_rows.hpp"

namespace jarproof::detail {

/// A column of a table: one of a gauge, or the boiling-water times.
enum class column { dial, weighted, boiling_water };

[[nodiscard]] inline std::string_view name_of(column c) noexcept {
  return c == column::dial ? "dial" : c == column::weighted ? "weighted" : "";
}

[[nodiscard]] inline column column_of(std::string_view gauge) noexcept {
  return gauge == "weighted" ? column::weighted : column::dial;
}

/// The bands of a row in one column, or null.
[[nodiscard]] inline const band_set* bands_of(const judging& j, const table& row,
                                              column c) noexcept {
  return find(j.rules.bands, c == column::dial       ? row.dial
                             : c == column::weighted ? row.weighted
                                                     : row.boiling_water);
}

/// What one row asks for in one column at one altitude.
struct offer {
  const table* row;
  const jar_minutes* jar;
  const band_set* bands;
  const altitude_step* step;
  int minutes;
};

/// All offers of the rows in a column. Below zero, the altitude is not said: the lowest band still
/// is the least that any kitchen needs.
[[nodiscard]] inline std::vector<offer> offers_in(const judging& j,
                                                  const std::vector<fitting_row>& rows, column c,
                                                  int altitude_ft) {
  std::vector<offer> out;
  if (altitude_ft > j.rules.highest_ft) return out;
  for (const fitting_row& r : rows) {
    const band_set* bands = bands_of(j, *r.row, c);
    if (bands == nullptr) continue;
    const altitude_step* step =
        altitude_ft < 0 ? bands->steps.begin() : band_at(*bands, altitude_ft);
    if (step == nullptr) continue;
    const auto band = static_cast<std::size_t>(step - bands->steps.begin());
    out.push_back(
        {r.row, r.jar, bands, step, r.jar->minutes[c == column::boiling_water ? band : 0]});
  }
  return out;
}

/// Pressure options of one cell belong together, pressure and time: of each form the option with
/// the highest pressure that the plan reaches, where it reaches none the one with the lowest, and
/// where it states none the first.
[[nodiscard]] inline std::vector<offer> chosen(const std::vector<offer>& offers,
                                               std::optional<std::int64_t> micro_psi) {
  std::vector<offer> out;
  const auto better = [&](const offer& a, const offer& b) {
    if (!micro_psi) return false;
    const bool a_reached = a.step->psi * micro_per_unit <= *micro_psi;
    const bool b_reached = b.step->psi * micro_per_unit <= *micro_psi;
    if (a_reached != b_reached) return a_reached;
    return a_reached ? a.step->psi > b.step->psi : a.step->psi < b.step->psi;
  };
  for (const offer& first : offers) {
    for (const std::string_view form : first.row->forms) {
      const offer* best = nullptr;
      for (const offer& o : offers) {
        if (o.row->pack != first.row->pack || !o.row->forms.contains(form)) continue;
        if (best == nullptr || better(o, *best)) best = &o;
      }
      const bool there = std::any_of(out.begin(), out.end(), [&](const offer& o) {
        return o.row == best->row && o.bands == best->bands;
      });
      if (!there) out.push_back(*best);
    }
  }
  return out;
}

/// The strictest numbers among offers of one column: of forms that the plan leaves open, the
/// longest time, the highest pressure and the largest headspace hold.
[[nodiscard]] inline std::optional<requirement> strictest(const judging& j, const process& p,
                                                          const std::vector<offer>& offers,
                                                          column c, std::string_view method_id) {
  if (offers.empty()) return std::nullopt;
  requirement out;
  out.method = std::string(method_id);
  out.gauge = std::string(name_of(c));
  const method* canner = find(j.rules.methods, method_id);
  if (c != column::boiling_water && canner != nullptr) out.vent_min = canner->vent_min;
  for (const offer& o : offers) {
    if (o.minutes > out.time_min) {
      out.time_min = o.minutes;
      out.pack = std::string(o.row->pack);
      out.jar = std::string(o.jar->jar);
      out.style = std::string(o.row->style);
    }
    if (c != column::boiling_water)
      out.pressure_psi = std::max(out.pressure_psi.value_or(0), o.step->psi);
    out.headspace_thousandths_in =
        std::max(out.headspace_thousandths_in, o.row->headspace_thousandths_in);
    out.verified = out.verified && o.row->use;
    add_sources(j.rules, o.row->sources.empty() ? p.sources : o.row->sources, out.sources);
    add_sources(j.rules, o.step->sources, out.sources);
  }
  if (!j.what.pack) out.pack = joined(packs_of(offers));
  return out;
}

/// Low-temperature pasteurization takes jar, pack and headspace from the boiling-water table and
/// its own time, which no altitude changes.
[[nodiscard]] inline std::optional<requirement> by_low_temperature(
    const judging& j, const process& p, const std::vector<fitting_row>& rows) {
  if (p.low_temperature.minutes == 0) return std::nullopt;
  std::optional<requirement> out = strictest(j, p, offers_in(j, rows, column::boiling_water, 0),
                                             column::boiling_water, "low-temperature");
  if (!out) return out;
  out->time_min = p.low_temperature.minutes;
  out->least_f = p.low_temperature.least_f;
  out->most_f = p.low_temperature.most_f;
  add_sources(j.rules, p.low_temperature.sources, out->sources);
  return out;
}

/// One requirement for each pressure option of a gauge, in the order of the tables.
inline void add_pressure_options(const judging& j, const process& p,
                                 const std::vector<fitting_row>& rows, column c, int feet,
                                 std::vector<requirement>& out) {
  const std::vector<offer> all = offers_in(j, rows, c, feet);
  std::vector<const band_set*> done;
  for (const offer& o : all) {
    if (std::find(done.begin(), done.end(), o.bands) != done.end()) continue;
    done.push_back(o.bands);
    std::vector<offer> same;
    std::copy_if(all.begin(), all.end(), std::back_inserter(same),
                 [&](const offer& other) { return other.bands == o.bands; });
    if (auto r = strictest(j, p, same, c, "pressure")) out.push_back(std::move(*r));
  }
}

/// Every published way for this food, pack, jar and altitude.
[[nodiscard]] inline std::vector<requirement> all_ways(const judging& j, const process& p,
                                                       int feet) {
  std::vector<requirement> out;
  const std::optional<std::int64_t> volume = jar_volume(j);
  if (!volume || feet > j.rules.highest_ft) return out;
  const auto rows = [&](heat by) {
    std::vector<const table*> kept = rows_by(p, by);
    const auto drop = [&](auto&& unfit) {
      kept.erase(std::remove_if(kept.begin(), kept.end(), unfit), kept.end());
    };
    drop([](const table* t) { return !t->use; });
    if (j.what.pack) drop([&](const table* t) { return t->pack != j.what.pack->text; });
    if (const form_word* form = form_of(j))
      drop([&](const table* t) { return !t->forms.contains(form->id); });
    return paired(j, kept, *volume);
  };
  const std::vector<fitting_row> in_water = rows(heat::boiling_water);
  if (auto r = strictest(j, p, offers_in(j, in_water, column::boiling_water, feet),
                         column::boiling_water, "boiling-water")) {
    const method* steam = find(j.rules.methods, "steam");
    requirement in_steam = *r;
    in_steam.method = "steam";
    out.push_back(std::move(*r));
    if (steam != nullptr && in_steam.time_min <= steam->longest_min && p.kind == food_class::acid)
      out.push_back(std::move(in_steam));
  }
  if (auto r = by_low_temperature(j, p, in_water)) out.push_back(std::move(*r));
  const std::vector<fitting_row> under_pressure = rows(heat::pressure);
  add_pressure_options(j, p, under_pressure, column::dial, feet, out);
  add_pressure_options(j, p, under_pressure, column::weighted, feet, out);
  return out;
}

/// The pressure that the plan states for a gauge, where it says something about that gauge at all.
[[nodiscard]] inline std::optional<std::int64_t> stated_pressure(const judging& j, column c) {
  const method* canner = find(j.rules.methods, "pressure");
  if (!j.what.pressure || canner == nullptr) return std::nullopt;
  if (c == column::dial) return dial_pressure(j.what);
  const std::optional<int> weight = weight_of(*canner, j.what.pressure->value);
  if (!weight) return std::nullopt;
  return *weight * micro_per_unit;
}

[[nodiscard]] inline bool same_way(const requirement& a, const requirement& b) noexcept {
  return a.method == b.method && a.gauge == b.gauge && a.pressure_psi == b.pressure_psi &&
         a.time_min == b.time_min;
}

/// Says where a band of a table rests on a publication of its own.
inline void note_of_band(judging& j, const std::vector<offer>& offers) {
  for (const offer& o : offers) {
    if (o.step->says.empty()) continue;
    finding& f = j.say(
        "altitude-by-extension", place_of("altitude", *j.what.altitude),
        {j.what.altitude->text, pressure_text(o.step->psi), std::string(o.step->says), {}, {}});
    cite_first(j.rules, o.step->sources, f);
    return;
  }
}

/// Fills `required` and `options` and says where no table reaches this altitude.
inline void find_required(judging& j, const process& p, const method* m,
                          const std::vector<fitting_row>& rows) {
  const plan& what = j.what;
  if (!what.altitude || rows.empty()) return;
  const int feet = j.out.altitude_ft;
  const bool in_water = heat_of(p, m) == heat::boiling_water;
  const std::string_view gauge = what.gauge ? std::string_view(what.gauge->text) : "dial";
  const column first = in_water ? column::boiling_water : column_of(gauge);
  const std::vector<offer> offers =
      chosen(offers_in(j, rows, first, feet), in_water ? std::nullopt : stated_pressure(j, first));
  if (m != nullptr && m->id == "low-temperature") {
    if (feet <= j.rules.highest_ft) j.out.required = by_low_temperature(j, p, rows);
  } else {
    j.out.required = strictest(j, p, offers, first,
                               m != nullptr ? m->id
                               : in_water   ? "boiling-water"
                                            : "pressure");
  }
  for (requirement& way : all_ways(j, p, feet)) {
    if (j.out.required && same_way(way, *j.out.required)) continue;
    j.out.options.push_back(std::move(way));
  }
  const bool has_bands = std::any_of(rows.begin(), rows.end(), [&](const fitting_row& r) {
    return bands_of(j, *r.row, first) != nullptr;
  });
  if (!has_bands) {
    j.say("no-tested-process",
          what.gauge ? place_of("gauge", *what.gauge) : place_of("gauge", what),
          {what.gauge ? what.gauge->text : "",
           {},
           "The table has no column for a " + std::string(gauge) + " gauge.",
           {},
           {}});
    return;
  }
  if (offers.empty()) {
    sentence_facts facts;
    facts.found = what.altitude->text;
    int top = 0;  // where this column ends; without a printed end, where all tables do
    for (const fitting_row& r : rows) {
      if (const band_set* bands = bands_of(j, *r.row, first)) {
        const int end = bands->steps[bands->steps.size() - 1].through_ft;
        top = std::max(top, end == 0 ? j.rules.highest_ft : std::min(end, j.rules.highest_ft));
      }
    }
    facts.required = "at most " + altitude_text(top);
    j.say("altitude-outside-table", place_of("altitude", *what.altitude), std::move(facts));
    return;
  }
  note_of_band(j, offers);
}

}  // namespace jarproof::detail
