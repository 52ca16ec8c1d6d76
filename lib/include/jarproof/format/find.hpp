// The published processes for a food, in numbers, with or without an altitude.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/findings.hpp"
#include "jarproof/detail/words.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/numbers.hpp"
#include "jarproof/format/text.hpp"
#include "jarproof/lookup.hpp"

namespace jarproof {

/// Foods that a search text may mean: those it names; where it names none, those with a name that
/// holds it as whole words.
[[nodiscard]] inline std::vector<const process*> foods_matching(const edition& rules,
                                                                std::string_view text) {
  std::vector<const process*> out = foods_named(rules, text);
  const std::string wanted = " " + detail::folded(text) + " ";
  if (!out.empty() || wanted.size() < 4) return out;
  const auto holds = [&](std::string_view name) {
    return (" " + detail::folded(name) + " ").find(wanted) != std::string::npos;
  };
  for (const process& p : rules.processes) {
    bool found = holds(p.id) || holds(p.title);
    for (const std::string_view name : p.names) found = found || holds(name);
    if (found) out.push_back(&p);
  }
  return out;
}

namespace detail {

/// `13 psi (90 kPa)` at an altitude; without one the whole printed row of bands.
[[nodiscard]] inline std::string band_text(const band_set& bands, std::optional<int> altitude_ft,
                                           int highest_ft) {
  if (altitude_ft) {
    const altitude_step* step = *altitude_ft > highest_ft ? nullptr : band_at(bands, *altitude_ft);
    return step == nullptr ? "no published pressure at this altitude"
                           : pressure_text(step->psi, bands.gauge) +
                                 (step->says.empty() ? "" : ". " + std::string(step->says));
  }
  std::string out;
  for (const altitude_step& s : bands.steps) {
    if (!out.empty()) out += "; ";
    out += std::to_string(s.psi) + " psi ";
    out += s.through_ft == 0 ? "above " + grouped(s.from_ft - 1) + " ft"
                             : "to " + grouped(s.through_ft) + " ft";
  }
  return out;
}

/// The minutes in boiling water at an altitude; without one for the whole printed row of bands.
[[nodiscard]] inline std::string minutes_text(const band_set& bands, const jar_minutes& m,
                                              std::optional<int> altitude_ft, int highest_ft) {
  if (altitude_ft) {
    const altitude_step* step = *altitude_ft > highest_ft ? nullptr : band_at(bands, *altitude_ft);
    if (step == nullptr) return "no published time at this altitude";
    return time_text(m.minutes[static_cast<std::size_t>(step - bands.steps.begin())]);
  }
  std::string out;
  for (std::size_t i = 0; i < bands.steps.size(); ++i) {
    const altitude_step& s = bands.steps[i];
    out += (i == 0 ? "" : "; ") + std::to_string(m.minutes[i]) + " min ";
    out += s.through_ft == 0 ? "above " + grouped(s.from_ft - 1) + " ft"
                             : "to " + grouped(s.through_ft) + " ft";
  }
  return out;
}

/// The published pH values of a food in one line: they explain its class and decide nothing.
inline void write_ph(text_writer& w, const process& p, const edition& rules) {
  int low = 0;
  int high = 0;
  std::string says;
  for (const ph_entry& e : rules.ph) {
    if (!e.explains.contains(p.id)) continue;
    low = low == 0 ? e.low_hundredths : std::min(low, e.low_hundredths);
    high = std::max(high, e.high_hundredths);
    if (says.empty()) says = std::string(e.says);
  }
  if (low == 0) return;
  w.paragraph("Published pH " + decimal_of_thousandths(low * 10) +
                  (high == low ? "" : " to " + decimal_of_thousandths(high * 10)) +
                  "; that explains its class, and the table decides. " + says,
              "  ", 2);
}

inline void write_table(text_writer& w, const table& t, const edition& rules,
                        std::optional<int> altitude_ft) {
  w.blank();
  w.paragraph(std::string(t.pack) + " pack: " + std::string(t.style), "  ", 2);
  const band_set* water = find(rules.bands, t.boiling_water);
  w.row("canner", water != nullptr ? "boiling-water canner" : "pressure canner");
  for (const jar_minutes& m : t.minutes) {
    const jar_size* jar = find(rules.jars, m.jar);
    w.row(jar == nullptr ? m.jar : jar->title,
          water == nullptr ? time_text(m.minutes[0])
                           : minutes_text(*water, m, altitude_ft, rules.highest_ft));
  }
  w.row("headspace", headspace_text(t.headspace_thousandths_in));
  for (const auto& [name, id] : {std::pair{"dial", t.dial}, std::pair{"weighted", t.weighted}}) {
    if (const band_set* bands = find(rules.bands, id))
      w.row(name, band_text(*bands, altitude_ft, rules.highest_ft));
  }
  if (!t.use) w.paragraph("Not to be used: " + std::string(t.note), "  ", 2);
}

[[nodiscard]] inline std::string sources_of(const process& p, const table& t,
                                            const edition& rules) {
  std::vector<std::string> sources;
  add_sources(rules, t.sources.empty() ? p.sources : t.sources, sources);
  return sources_text(sources);
}

/// Acid that belongs into every jar, and what may be taken in its place.
inline void write_acids(text_writer& w, const process& p) {
  if (p.acids.empty()) return;
  std::string says;
  for (const acid_choice& a : p.acids) says += (says.empty() ? "" : "; or ") + std::string(a.says);
  w.paragraph("Acid into each jar: " + says + ".", "  ", 2);
}

}  // namespace detail

/// Every table of one food.
[[nodiscard]] inline std::string find_text(const process& p, const edition& rules,
                                           std::optional<int> altitude_ft = {},
                                           text_style style = {}) {
  detail::text_writer w(style);
  std::string title = std::string(p.title) + " (food: " + std::string(p.id) + ")";
  if (altitude_ft) title += " at " + altitude_text(*altitude_ft);
  w.heading(title, "1");
  if (!p.covers.empty()) w.paragraph(p.covers, "  ", 2);
  w.paragraph(p.kind == food_class::low_acid ? "Low-acid: pressure canner only."
              : p.acids.empty()
                  ? "Acid: each table says for which canner it is."
                  : "Acid with the acid below: each table says for which canner it is.",
              "  ", 2);
  detail::write_acids(w, p);
  detail::write_ph(w, p, rules);
  if (p.recipe == recipe_kind::fixed)
    w.paragraph("Only for the published recipe in its tested proportions.", "  ", 2);
  for (std::size_t i = 0; i < p.tables.size(); ++i) {
    detail::write_table(w, p.tables[i], rules, altitude_ft);
    // Tables of one source name it once, below the last of them.
    const std::string source = detail::sources_of(p, p.tables[i], rules);
    const bool last = i + 1 == p.tables.size();
    if (last || detail::sources_of(p, p.tables[i + 1], rules) != source)
      w.paragraph(source, "  Source: ", 10);
  }
  if (!p.conditions.empty()) w.blank();
  for (const condition& c : p.conditions) {
    const std::string pack = c.packs.empty() ? "" : detail::joined(c.packs) + " pack: ";
    w.paragraph(pack + std::string(c.says), "  - ", 4);
  }
  return w.take();
}

}  // namespace jarproof
