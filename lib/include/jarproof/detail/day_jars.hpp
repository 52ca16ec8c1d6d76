// How many jars a batch fills, and how much fresh food that takes.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "jarproof/check.hpp"
#include "jarproof/day.hpp"
#include "jarproof/detail/day_words.hpp"
#include "jarproof/format/numbers.hpp"

namespace jarproof::detail {

/// What the jar of the plan holds, and how much of it is food.
[[nodiscard]] inline std::optional<day_jars> jar_of(const plan& what, const edition& rules,
                                                    const requirement& required) {
  report scratch;
  const std::optional<std::int64_t> volume = jar_volume(judging{what, rules, scratch, {}});
  const day_number* regular = number_of(rules, "mouth-regular");
  const day_number* wide = number_of(rules, "mouth-wide");
  if (!volume || regular == nullptr || wide == nullptr) return std::nullopt;
  const std::int64_t headspace = headspace_of(what, required);
  day_jars out;
  out.jar = what.jar->text;
  out.volume = *volume;
  out.fill_most = *volume - headspace_room(regular->thousandths, headspace);
  out.fill_least = *volume - headspace_room(wide->thousandths, headspace);
  // Headspace of an inch and more in the smallest jars leaves next to nothing.
  if (out.fill_least <= 0 || out.fill_most <= 0) return std::nullopt;
  return out;
}

/// No kitchen fills more than a plan can state in `jars`.
[[nodiscard]] inline int whole_jars(std::int64_t count) noexcept {
  return static_cast<int>(std::min<std::int64_t>(count, 9'999));
}

/// The fresh food of this process, or null.
[[nodiscard]] inline const day_produce* produce_of(const edition& rules, const process& p) {
  for (const day_produce& d : rules.day.produce) {
    if (d.processes.contains(p.id)) return &d;
  }
  return nullptr;
}

/// A jar of the batch as thousandths of the jar that `d` counts pounds for.
[[nodiscard]] inline std::int64_t thousandths_of_jar(const edition& rules, const day_produce& d,
                                                     std::int64_t volume) {
  const jar_size* jar = find(rules.jars, d.jar);
  if (jar == nullptr || jar->volume_floz <= 0) return 0;
  return volume / (jar->volume_floz * (micro_per_unit / 1'000));
}

/// Jars from fresh food; false, with the reason, where the rules do not lead there.
[[nodiscard]] inline bool count_from(const plan& what, const edition& rules, const process& p,
                                     day_jars& out, std::string& why_not) {
  const raw_food& food = what.from->value;
  const day_produce* d = produce_of(rules, p);
  const std::string name = folded(food.name);
  if (d == nullptr) {
    why_not = "Jars from `" + what.from->text + "`: the rules have no pounds per jar for " +
              std::string(p.title) + ".";
    return false;
  }
  const bool same = name.empty() || std::any_of(d->names.begin(), d->names.end(),
                                                [&](std::string_view n) { return name == n; });
  if (!same) {
    why_not = "Jars from `" + what.from->text + "`: the pounds per jar for " +
              std::string(p.title) + " are of " + std::string(d->names[0]) + ".";
    return false;
  }
  const std::int64_t jar = thousandths_of_jar(rules, *d, out.volume);
  if (jar == 0) return false;
  if (food.bushels) {
    if (d->bushel_lb == 0) {
      why_not = "Jars from `" + what.from->text + "`: no bushel of " + std::string(d->names[0]) +
                " is in the rules; write the pounds.";
      return false;
    }
    const std::int64_t floz = food.thousandths * 32 * 1'000;  // of a quart a bushel
    out.count = whole_jars(floz * d->bushel_from_qt / out.volume);
    out.most = whole_jars(floz * d->bushel_through_qt / out.volume);
  } else {
    const std::int64_t scaled = food.thousandths * 1'000 / jar;
    out.count = whole_jars(scaled / d->through_thousandths_lb);
    out.most = whole_jars(scaled / d->from_thousandths_lb);
  }
  out.by = "from";
  return true;
}

/// Fresh food for so many jars, rounded up to half pounds and half bushels.
[[nodiscard]] inline std::optional<day_food> food_for(const edition& rules, const process& p,
                                                      const day_jars& jars) {
  const day_produce* d = produce_of(rules, p);
  if (d == nullptr || jars.count == 0) return std::nullopt;
  const std::int64_t jar = thousandths_of_jar(rules, *d, jars.volume);
  if (jar == 0) return std::nullopt;
  const auto halves = [](std::int64_t over, std::int64_t under) {
    return divide(over, under * 500, rounding::up) * 500;
  };
  day_food out;
  out.name = std::string(d->names[0]);
  out.least_lb = halves(jars.count * jar * d->from_thousandths_lb, 1'000);
  out.most_lb = halves(jars.count * jar * d->through_thousandths_lb, 1'000);
  const std::int64_t quarts = jars.count * (jars.volume / 32'000);  // thousandths
  // Half a bushel is no help to whoever needs a few pounds.
  if (d->bushel_lb != 0 && quarts >= d->bushel_from_qt * std::int64_t{500}) {
    out.least_bushels = halves(quarts, d->bushel_through_qt);
    out.most_bushels = halves(quarts, d->bushel_from_qt);
  }
  out.evidence = std::string(d->evidence);
  add_sources(rules, d->sources, out.sources);
  return out;
}

/// The jars of one accepted plan; what keeps them from being counted goes to `unsaid`.
[[nodiscard]] inline std::optional<day_jars> jars_of(const plan& what, const edition& rules,
                                                     const report& judged,
                                                     std::vector<std::string>& unsaid) {
  std::optional<day_jars> out = jar_of(what, rules, *judged.required);
  if (!out) {
    unsaid.emplace_back("Jars: the room in this jar is not known.");
    return out;
  }
  const std::optional<measured> made = yield_volume(what);
  if (what.batch || made) {
    // 1 fl oz is 6 tsp; a yield is in thousandths of a tsp.
    out->available = what.batch ? what.batch->value.value : made->low * 1'000 / 6;
    if (what.keep_back) out->available -= what.keep_back->value.value;
    out->available = std::max<std::int64_t>(out->available, 0);
    out->by = what.batch ? "batch" : "yield";
    out->count = whole_jars(out->available / out->fill_most);
    out->most = whole_jars(out->available / out->fill_least);
  }
  if (what.keep_back && out->by.empty() && what.yield)
    unsaid.push_back("`keep-back` is a volume, and the yield `" + what.yield->text +
                     "` is none; write `batch`, such as `batch: 6 qt`.");
  if (what.keep_back && out->by.empty() && !what.yield)
    unsaid.emplace_back("`keep-back` is taken from `batch` or `yield`; the plan has neither.");
  if (what.jars) {
    out->by = "jars";
    out->count = out->most = what.jars->value;
  }
  if (out->by.empty() && what.from) {
    std::string why_not;
    if (!count_from(what, rules, *judged.process, *out, why_not)) {
      unsaid.push_back(std::move(why_not));
      return std::nullopt;
    }
  }
  if (out->by.empty()) {
    unsaid.emplace_back(
        "Jars, loads and produce: the plan says neither `batch`, `jars` nor `from`.");
    return std::nullopt;
  }
  out->left = std::max<std::int64_t>(out->available - out->count * out->fill_most, 0);
  return out;
}

/// The largest listed jar below the plan's own that what is left would fill, with the process of
/// the plan; null where there is none, or where `check` does not accept it.
[[nodiscard]] inline const jar_size* smaller_jar(const plan& what, const edition& rules,
                                                 const report& judged, const day_jars& jars) {
  const jar_size* best = nullptr;
  for (const jar_size& jar : rules.jars) {
    if (jar.volume_floz * micro_per_unit >= jars.volume) continue;
    plan q = what;
    q.jars.reset();
    q.jar->text = std::string(jar.id);
    q.jar_volume.reset();
    const std::optional<day_jars> room = jar_of(q, rules, *judged.required);
    if (!room || room->fill_most > jars.left) continue;
    // What fills several jars belongs into jars of the plan.
    if (jars.left >= jars.fill_most) continue;
    if (check(q, rules).verdict == verdict::accepted) best = &jar;
  }
  return best;
}

}  // namespace jarproof::detail
