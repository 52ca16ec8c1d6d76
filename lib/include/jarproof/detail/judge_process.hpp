// Comparing a plan with the rows that fit it: time, pack, pressure, headspace.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/heat_words.hpp"
#include "jarproof/detail/required_numbers.hpp"

namespace jarproof::detail {

/// A number that holds for the plan's pack; where it is unsaid, the mildest and the strictest.
struct number_range {
  int least = 0;
  int most = 0;
};

template <class Rows, class Number>
[[nodiscard]] number_range by_pack(const Rows& rows, Number&& number) {
  number_range out;
  for (const std::string_view pack : packs_of(rows)) {
    int strictest_number = 0;
    for (const auto& r : rows) {
      if (r.row->pack == pack) strictest_number = std::max(strictest_number, number(r));
    }
    out.least = out.least == 0 ? strictest_number : std::min(out.least, strictest_number);
    out.most = std::max(out.most, strictest_number);
  }
  return out;
}

[[nodiscard]] inline number_range times_of(const std::vector<offer>& offers) {
  return by_pack(offers, [](const offer& o) { return o.minutes; });
}

[[nodiscard]] inline number_range headspaces_of(const std::vector<fitting_row>& rows) {
  return by_pack(rows, [](const fitting_row& r) { return r.row->headspace_thousandths_in; });
}

/// Headspace up to 1 mm below the published one is reading precision.
[[nodiscard]] inline bool headspace_reaches(std::int64_t given_nm, int thousandths_in) noexcept {
  return given_nm >= thousandths_in * nm_per_in / 1000 - nm_per_mm;
}

/// `10 min at 15 psi, 15 min at 10 psi`: where a table has several pressure options, each with a
/// time of its own.
[[nodiscard]] inline std::string options_text(const std::vector<offer>& offers) {
  std::vector<const offer*> options;
  for (const offer& o : offers) {
    const bool there = std::any_of(options.begin(), options.end(), [&](const offer* other) {
      return other->step->psi == o.step->psi && other->minutes == o.minutes;
    });
    if (!there) options.push_back(&o);
  }
  std::sort(options.begin(), options.end(),
            [](const offer* a, const offer* b) { return a->step->psi < b->step->psi; });
  if (options.size() < 2 || options.front()->step->psi == options.back()->step->psi) return {};
  std::string out = "Each pressure has its own time:";
  for (const offer* o : options) {
    out += (o == options.front() ? " " : ", ") + std::to_string(o->minutes) + " min at " +
           std::to_string(o->step->psi) + " psi";
  }
  return out + ".";
}

inline void judge_time(judging& j, const process& p, std::string_view method_id,
                       number_range needed, std::string reason) {
  const plan& what = j.what;
  const bool by_recipe = j.least_by != nullptr && needed.least < j.least_min;
  if (by_recipe) {
    reason = "So long is the published time for " + std::string(j.least_by->title) +
             " in this jar, and the ingredients are a variant of it. " + reason;
    needed = {j.least_min, std::max(needed.most, j.least_min)};
  }
  if (!what.time) {
    missing(j, "time", "time: " + std::to_string(needed.most) + " min");
    return;
  }
  const std::int64_t ms = what.time->value.value;
  sentence_facts facts;
  facts.found = what.time->text;
  if (ms < needed.least * ms_per_min) {
    facts.required = time_text(needed.least);
    facts.reason = std::move(reason);
    facts.counted = start_of_time(method_id);
    finding& f = j.say("time-too-short", place_of("time", *what.time), std::move(facts));
    cite_first(j.rules, by_recipe ? j.least_by->sources : p.sources, f);
  } else if (ms > needed.most * ms_per_min) {
    facts.required = time_text(needed.most);
    j.say("over-required", place_of("time", *what.time), std::move(facts));
  }
}

/// An unsaid pack does no harm only where both packs are published and the plan holds for both.
inline void judge_unsaid_pack(judging& j, const std::vector<const table*>& published_rows,
                              const std::vector<fitting_row>& rows, number_range times) {
  const plan& what = j.what;
  if (what.pack) return;
  std::vector<std::string_view> published;
  for (const table* t : published_rows) {
    if (std::find(published.begin(), published.end(), t->pack) == published.end()) {
      published.push_back(t->pack);
    }
  }
  const bool time_holds = what.time && what.time->value.value >= times.most * ms_per_min;
  const bool headspace_holds =
      !what.headspace || headspace_reaches(what.headspace->value.value, headspaces_of(rows).most);
  if (published.size() < 2) {
    missing(j, "pack", "pack: " + std::string(published.front()));
  } else if (packs_of(rows).size() == published.size() && time_holds && headspace_holds) {
    j.say("holds-either-way", place_of("pack", what), {{}, {}, "raw and hot pack", {}, {}});
  } else {
    missing(j, "pack");
  }
}

enum class fit { below, fits, above };

/// The stated pressure against what the chosen offers of one gauge need; nothing where either is
/// not known.
[[nodiscard]] inline std::optional<fit> pressure_fit(const judging& j, column c,
                                                     std::optional<int> psi) {
  const std::optional<std::int64_t> value = stated_pressure(j, c);
  if (!value || !psi) return std::nullopt;
  if (*value < *psi * micro_per_unit) return fit::below;
  return *value == *psi * micro_per_unit ? fit::fits : fit::above;
}

[[nodiscard]] inline std::optional<int> psi_of(const std::vector<offer>& offers) {
  std::optional<int> psi;
  for (const offer& o : offers) psi = std::max(psi.value_or(0), o.step->psi);
  return psi;
}

inline void say_too_low(judging& j, const process& p, int psi, column c, std::string reason) {
  const plan& what = j.what;
  sentence_facts facts;
  facts.found = what.pressure->text;
  facts.required = pressure_text(psi, name_of(c));
  facts.reason = std::move(reason);
  if (what.gauge_error && what.gauge_error->value.value > 0 && c == column::dial) {
    const std::int64_t error = what.gauge_error->value.value;
    facts.required += ", which is " + pounds(psi * micro_per_unit + error) + " on this gauge";
    facts.reason = "The dial reads high by " + pounds(error) + ", so the true pressure is lower. " +
                   facts.reason;
  }
  finding& f = j.say("pressure-too-low", place_of("pressure", *what.pressure), std::move(facts));
  cite_first(j.rules, p.sources, f);
  const bool high = what.gauge_error && what.gauge_error->value.value > 0 && c == column::dial;
  const std::int64_t held = what.pressure->value.value - (high ? what.gauge_error->value.value : 0);
  if (p.kind == food_class::low_acid && j.out.altitude_ft >= 0 && held > 0)
    f.explains = heat_words(static_cast<double>(held) / micro_per_unit, j.out.altitude_ft);
}

/// Time and pressure of a plan that says its gauge.
inline void judge_gauge(judging& j, const process& p, const std::vector<fitting_row>& rows,
                        column c, const std::vector<const table*>& published, bool comparable) {
  const plan& what = j.what;
  const std::optional<std::int64_t> stated =
      comparable ? stated_pressure(j, c) : std::optional<std::int64_t>();
  const std::vector<offer> here = offers_in(j, rows, c, j.out.altitude_ft);
  // Above the last band the time can still be compared: under pressure no altitude changes it.
  const std::vector<offer> all = here.empty() ? offers_in(j, rows, c, -1) : here;
  const std::vector<offer> offers = chosen(all, stated);
  if (!offers.empty()) {
    judge_time(j, p, "pressure", times_of(offers), options_text(all));
    judge_unsaid_pack(j, published, rows, times_of(offers));
  } else {
    if (!what.time) missing(j, "time");
    if (!what.pack) missing(j, "pack");
  }
  if (!what.pressure) {
    missing(j, "pressure",
            j.out.required && j.out.required->pressure_psi
                ? "pressure: " + std::to_string(*j.out.required->pressure_psi) + " psi"
                : "");
    return;
  }
  if (!comparable || here.empty()) return;
  const std::optional<int> psi = psi_of(offers);
  const std::optional<fit> fits = pressure_fit(j, c, psi);
  if (fits == fit::below) say_too_low(j, p, *psi, c, options_text(all));
  if (fits == fit::above && j.out.altitude_ft >= 0) {
    j.say("over-required", place_of("pressure", *what.pressure),
          {what.pressure->text, pressure_text(*psi, name_of(c)), {}, {}, {}});
  }
}

/// The same where the gauge is unsaid: no harm is done where the plan holds on either.
inline void judge_either_gauge(judging& j, const process& p, const std::vector<fitting_row>& rows,
                               const std::vector<const table*>& published, bool comparable) {
  const plan& what = j.what;
  std::optional<number_range> times;
  std::optional<int> least_psi;
  bool both = true;
  bool none = true;
  for (const column c : {column::dial, column::weighted}) {
    std::vector<offer> offers = offers_in(j, rows, c, j.out.altitude_ft);
    if (offers.empty()) offers = offers_in(j, rows, c, -1);
    offers = chosen(offers, comparable ? stated_pressure(j, c) : std::optional<std::int64_t>());
    if (offers.empty()) {
      both = false;
      continue;
    }
    const number_range here = times_of(offers);
    times = times
                ? number_range{std::min(times->least, here.least), std::max(times->most, here.most)}
                : here;
    const std::optional<int> psi = psi_of(offers);
    least_psi = least_psi ? std::min(*least_psi, *psi) : psi;
    const std::optional<fit> fits = pressure_fit(j, c, psi);
    both = both && fits && *fits != fit::below;
    none = none && (!fits || *fits == fit::below);
  }
  if (times) {
    judge_time(j, p, "pressure", *times, {});
    judge_unsaid_pack(j, published, rows, *times);
    both = both && what.time && what.time->value.value >= times->most * ms_per_min;
  }
  if (!what.pressure) missing(j, "pressure");
  if (!what.pressure || !comparable) {
    missing(j, "gauge");
    return;
  }
  if (j.out.altitude_ft > j.rules.highest_ft) {
    missing(j, "gauge");
    return;
  }
  if (both && j.out.altitude_ft >= 0) {
    j.say("holds-either-way", place_of("gauge", what),
          {{}, {}, "a dial and a weighted gauge", {}, {}});
    return;
  }
  // Where no gauge would do, it is too low whatever the gauge; the milder number is what it misses.
  const bool below_on_dial = least_psi && stated_pressure(j, column::dial) &&
                             *stated_pressure(j, column::dial) < *least_psi * micro_per_unit;
  if (none && below_on_dial) say_too_low(j, p, *least_psi, column::dial, {});
  missing(j, "gauge");
}

/// Jars are boiled empty before filling where the process is too short to do it: under ten minutes
/// (methods.yaml). The time for that grows with altitude.
inline void judge_sterilizing(judging& j, const process& p, const std::vector<offer>& offers) {
  const method* water = find(j.rules.methods, "boiling-water");
  const plan& what = j.what;
  if (water == nullptr || water->sterilize_under_min == 0 || offers.empty()) return;
  const int short_ms = water->sterilize_under_min;
  if (times_of(offers).most >= short_ms) return;
  if (what.time && what.time->value.value >= short_ms * ms_per_min) return;
  const int feet = std::max(j.out.altitude_ft, 0);
  const int minutes = water->sterilize_min + (feet > 1000 ? (feet - 1000 + 999) / 1000 : 0);
  const std::string boil = std::to_string(minutes) + " min";
  const auto said = [&](std::string_view id) -> const word* {
    for (const word& w : what.prepared) {
      if (folded(w.text) == id) return &w;
    }
    return nullptr;
  };
  sentence_facts facts;
  facts.required = boil;
  facts.instead = std::to_string(short_ms) + " min";
  if (const word* denied = said("jars not sterilized")) {
    facts.found = denied->text;
    finding& f = j.say("jar-sterilization", place_of("prepared", *denied), std::move(facts));
    cite_first(j.rules, p.sources, f);
  } else if (said("jars sterilized") == nullptr && follows_publication(what)) {
    finding& f = j.say("step-reminder", place_of("jar", what),
                       {{},
                        {},
                        "Boil the empty jars " + boil +
                            " before filling, covered by 1 inch of water; the process is shorter "
                            "than " +
                            std::to_string(short_ms) + " min.",
                        {},
                        {}});
    cite_first(j.rules, p.sources, f);
  } else if (said("jars sterilized") == nullptr) {
    finding& f = j.unsaid("jar-sterilization", place_of("prepared", what), std::move(facts));
    cite_first(j.rules, p.sources, f);
  }
}

/// Boiling water, and what goes by its times: the steam canner.
inline void judge_boiling_water(judging& j, const process& p, const method& m,
                                const std::vector<fitting_row>& rows,
                                const std::vector<const table*>& published) {
  const plan& what = j.what;
  const std::vector<offer> here = offers_in(j, rows, column::boiling_water, j.out.altitude_ft);
  if (here.empty()) {  // above the last band; said already
    if (!what.time) missing(j, "time");
    if (!what.pack) missing(j, "pack");
    return;
  }
  const number_range times = times_of(here);
  judge_time(j, p, m.id, times, {});
  judge_unsaid_pack(j, published, rows, times);
  judge_sterilizing(j, p, here);
  if (m.longest_min == 0) return;
  const std::int64_t stated = what.time ? what.time->value.value : 0;
  if (times.least > m.longest_min || stated > m.longest_min * ms_per_min) {
    const bool by_table = times.least > m.longest_min;
    finding& f = j.say("steam-time-too-long",
                       by_table ? place_of("method", *what.method) : place_of("time", *what.time),
                       {by_table ? time_text(times.least) : what.time->text,
                        "at most " + std::to_string(m.longest_min) + " min",
                        {},
                        {},
                        {}});
    cite_first(j.rules, m.sources, f);
  }
}

/// Low-temperature pasteurization: only where the recipe names it, with its own time and its own
/// temperature.
inline void judge_low_temperature(judging& j, const process& p,
                                  const std::vector<fitting_row>& rows,
                                  const std::vector<const table*>& published) {
  const plan& what = j.what;
  const low_temperature_process& low = p.low_temperature;
  const number_range times{low.minutes, low.minutes};
  judge_time(j, p, "low-temperature", times, {});
  judge_unsaid_pack(j, published, rows, times);
  const std::string range =
      std::to_string(low.least_f) + " to " + std::to_string(low.most_f) + " F";
  if (!what.temperature) {
    missing(j, "temperature", "temperature: " + std::to_string(low.least_f) + " F");
  } else if (what.temperature->value.value < low.least_f * 1000) {
    finding& f = j.say("temperature-too-low", place_of("temperature", *what.temperature),
                       {what.temperature->text, range, {}, {}, {}});
    cite_first(j.rules, low.sources, f);
  } else if (what.temperature->value.value > low.most_f * 1000) {
    j.say("over-required", place_of("temperature", *what.temperature),
          {what.temperature->text, range, {}, {}, {}});
  }
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
  } else if (given > most_nm + nm_per_mm) {  // reading precision
    finding& f = j.say("headspace-too-large", at,
                       {what.headspace->text, headspace_text(needed.most), {}, {}, {}});
    if (given <= most_nm + nm_per_in / 4) f.level = level::note;
  }
}

}  // namespace jarproof::detail
