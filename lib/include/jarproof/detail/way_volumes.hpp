// How much of a recipe there is, in cups, and how many jars that fills.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/judge_mixture.hpp"
#include "jarproof/detail/plan_lines.hpp"
#include "jarproof/detail/way_numbers.hpp"
#include "jarproof/way.hpp"

namespace jarproof::detail {

/// Room for food under 1 in of headspace: 14 of 16 fl oz, 28 of 32 (common practice, no source).
inline constexpr int pint_floz = 16;
inline constexpr int pint_room_floz = 14;
/// Room for food in a pint freezer box or jar with 1 1/2 in of headspace (common practice, no
/// source).
inline constexpr int freezer_pint_room_floz = 12;
/// A fluid ounce in thousandths of a teaspoon.
inline constexpr std::int64_t base_in_floz = 6'000;

/// Tomatoes in pieces, also from a can.
[[nodiscard]] inline bool is_tomato(const edition& rules, const ingredient& i) {
  return is_kind_of(rules, i, "tomato") || i.can_as.contains("tomatoes-crushed");
}

/// True for what fills the jar around the solids of a frame.
[[nodiscard]] inline bool is_liquid_of(const edition& rules, const process* frame,
                                       const ingredient& i) {
  if (is_liquid(rules, i) || is_a(rules, i, "liquid")) return true;
  if (frame == nullptr || is_tomato(rules, i)) return false;
  return std::any_of(frame->liquids.begin(), frame->liquids.end(),
                     [&](std::string_view id) { return is_kind_of(rules, i, id); });
}

/// True for a dried bean or pea whose amount is that of the dry food.
[[nodiscard]] inline bool is_dry_legume(const edition& rules, const plan_line& l) {
  const ingredient& i = *l.reading.what;
  if (!is_a(rules, i, "dried-legume")) return false;
  if (says(l.reading, "dried") || says(l.reading, "dry")) return true;
  for (const ingredient* up = &i; up != nullptr; up = parent_of(rules, *up)) {
    if (std::any_of(up->weights.begin(), up->weights.end(),
                    [](const measure_weight& w) { return w.form == "dry"; }))
      return true;
  }
  return false;
}

/// What dry food fills when it is ready for the jar, by the published yields of whole loads.
[[nodiscard]] inline std::optional<volume_range> swollen_volume(const edition& rules,
                                                                const plan_line& l) {
  const ingredient& i = *l.reading.what;
  const std::optional<measured> mg = in_mg(rules, i, *l.amount, l.reading.words);
  if (!mg || mg->high <= 0) return std::nullopt;
  std::optional<volume_range> out;
  for (const dry_yield& y : rules.dry_yields) {
    const jar_size* jar = find(rules.jars, y.jar);
    const bool fits = std::any_of(y.traits.begin(), y.traits.end(),
                                  [&](std::string_view t) { return is_a(rules, i, t); });
    if (jar == nullptr || !fits || y.thousandths_lb <= 0) continue;
    // 1 lb = 453,592 mg (NIST SP 811, B.8)
    const std::int64_t load_mg = std::int64_t{y.thousandths_lb} * 453'592 / 1'000;
    const std::int64_t load = jar->volume_floz * base_in_floz * pint_room_floz / pint_floz * y.jars;
    const volume_range here{mg->low * (load / 1'000) / load_mg * 1'000,
                            mg->high * (load / 1'000) / load_mg * 1'000};
    if (!out) out = here;
    out->low = std::min(out->low, here.low);
    out->high = std::max(out->high, here.high);
  }
  return out;
}

/// The volume of a line as it goes into the jar; nothing where no published weight leads there, or
/// where the food swells or shrinks on the way.
[[nodiscard]] inline std::optional<volume_range> volume_of(const edition& rules,
                                                           const plan_line& l) {
  if (l.reading.what == nullptr || !l.amount) return std::nullopt;
  const ingredient& i = *l.reading.what;
  const bool by_volume = l.amount->kind == measure_kind::volume;
  const bool cooked = says(l.reading, "cooked") || says(l.reading, "rehydrated");
  if (is_dry_legume(rules, l)) return swollen_volume(rules, l);
  if (is_a(rules, i, "dried-legume") && !(by_volume && cooked)) return std::nullopt;
  if (is_a(rules, i, "leafy-green") && !(by_volume && cooked)) return std::nullopt;
  const std::optional<measured> m =
      converted(rules, i, *l.amount, *unit_named("cup"), l.reading.words);
  if (!m || m->high <= 0) return std::nullopt;
  return volume_range{m->low, m->high};
}

[[nodiscard]] inline std::string cups_text(std::int64_t base, rounding r) {
  constexpr std::int64_t quarter = way_cup / 4;  // as fine as a cook measures
  const std::int64_t whole = divide(base, quarter, r) * quarter;
  return measure_text(whole, *unit_named("cup"), r) + (whole == 0 ? "s" : "");
}

/// Water that is named for a step and not for the jar: `for the beans`, `to soak`.
[[nodiscard]] inline bool is_for_soaking(const plan_line& l) {
  return says_discarded(l) || says(l.reading, "soak") || says(l.reading, "soaking") ||
         says(l.reading, "for");
}

/// True where cooking makes the volume of a line no smaller than it says.
[[nodiscard]] inline bool is_ready(const edition& rules, const plan_line& l) {
  if (is_canned(l) || is_a(rules, *l.reading.what, "rehydrated-legume")) return true;
  return says(l.reading, "cooked") || says(l.reading, "boiled") || says(l.reading, "browned") ||
         says(l.reading, "roasted") || says(l.reading, "simmered");
}

/// Where the yields of dry food in a sum are published.
inline void cite_yields(const edition& rules, const way_amounts& a,
                        std::vector<std::string>& sources) {
  if (!a.swollen) return;
  for (const dry_yield& y : rules.dry_yields) add_sources(rules, y.sources, sources);
}

/// Solids and liquid of the lines that stay in the jar.
[[nodiscard]] inline way_amounts amounts_of(const edition& rules, const process* frame,
                                            const std::vector<plan_line>& lines) {
  way_amounts out;
  const auto add = [](std::optional<volume_range>& sum, const volume_range& v) {
    if (!sum) sum.emplace();
    sum->low += v.low;
    sum->high += v.high;
  };
  for (const plan_line& l : lines) {
    if (l.reading.what == nullptr || is_seasoning(rules, *l.reading.what)) continue;
    if (is_a(rules, *l.reading.what, "water") && (is_for_soaking(l) || !l.amount)) continue;
    const std::optional<volume_range> v = volume_of(rules, l);
    if (!v) {
      out.unknown.push_back(l.said->text);
      continue;
    }
    const bool liquid = is_liquid_of(rules, frame, *l.reading.what);
    add(liquid ? out.liquid : out.solids, *v);
    if (liquid) continue;
    const bool dry = is_dry_legume(rules, l);
    out.swollen = out.swollen || dry;
    out.raw = out.raw || !(dry || is_ready(rules, l));
    out.tomatoes = out.tomatoes || is_tomato(rules, *l.reading.what);
  }
  return out;
}

/// A dish without broth that has as much acid as tomatoes get in the jar, 2 tbsp to a quart (USDA
/// guide, part 3), is meant to keep by its acid.
inline constexpr std::int64_t sour_base_in_quart = 6'000;

[[nodiscard]] inline bool is_sour(const edition& rules, const std::vector<plan_line>& lines) {
  std::int64_t acid = 0;
  for (const plan_line& l : lines) {
    if (l.reading.what == nullptr) continue;
    if (is_a(rules, *l.reading.what, "broth")) return false;
    if (!is_a(rules, *l.reading.what, "acidifier")) continue;
    if (const std::optional<volume_range> v = volume_of(rules, l)) acid += v->low;
  }
  const way_amounts a = amounts_of(rules, nullptr, lines);
  const std::int64_t all = (a.solids ? a.solids->high : 0) + (a.liquid ? a.liquid->high : 0);
  return acid > 0 && acid * 4 * way_cup >= sour_base_in_quart * all;
}

/// How many jars the known solids fill by half, rounded down.
[[nodiscard]] inline way_jars jars_of(const way_amounts& a, std::string_view jar,
                                      std::int64_t micro_floz) {
  way_jars out;
  out.jar = std::string(jar);
  const std::int64_t room = micro_floz / 1'000 * pint_room_floz / pint_floz;  // 1/1000 fl oz
  out.solids = room * (base_in_floz / 1'000) / 2;
  if (out.solids <= 0 || !a.solids) return out;
  out.count = a.solids->low / out.solids;
  out.left = a.solids->low - out.count * out.solids;
  out.liquid = out.count * out.solids;
  out.missing = std::max<std::int64_t>(0, out.liquid - (a.liquid ? a.liquid->low : 0));
  return out;
}

}  // namespace jarproof::detail
