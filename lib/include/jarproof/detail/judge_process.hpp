// Comparing a plan with the rows that fit it: time, pack, pressure, headspace.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/judge_rows.hpp"

namespace jarproof::detail {

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
