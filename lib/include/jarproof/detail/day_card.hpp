// The texts of the day: step card, cautions, label, what to check, how to open.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/day.hpp"
#include "jarproof/detail/day_jars.hpp"
#include "jarproof/detail/day_loads.hpp"
#include "jarproof/detail/ingredient_facts.hpp"
#include "jarproof/format/text.hpp"

namespace jarproof::detail {

/// Food that is boiled before tasting where there is any doubt: low-acid food, tomatoes, and what
/// keeps by an acid that was put into the jar.
[[nodiscard]] inline bool is_boiled_first(const edition& rules, const process& p) {
  if (p.kind == food_class::low_acid || !p.acids.empty()) return true;
  for (const tested_recipe& r : p.recipes) {
    for (const recipe_part& part : r.parts) {
      for (const std::string_view id : part.foods) {
        const ingredient* i = find(rules.ingredients, id);
        if (i != nullptr && is_kind_of(rules, *i, "tomato")) return true;
      }
    }
  }
  return p.id.find("tomat") != std::string_view::npos;
}

/// Minutes to boil before tasting at an altitude; a begun thousand feet counts whole from 1,000 ft
/// on.
[[nodiscard]] inline int boiling_minutes(const edition& rules, int altitude_ft) {
  const day_number* base = number_of(rules, "boil-before-tasting");
  const day_number* each = number_of(rules, "boil-each-1000-ft");
  if (base == nullptr || each == nullptr) return 0;
  int out = base->thousandths / 1'000;
  if (altitude_ft >= 1'000) out += (altitude_ft + 999) / 1'000 * (each->thousandths / 1'000);
  return out;
}

/// Minutes for which empty jars are boiled, 0 where the process is long enough.
[[nodiscard]] inline int sterilizing_minutes(const edition& rules, const requirement& r,
                                             int minutes, int altitude_ft) {
  if (r.method == "pressure") return 0;
  const method* m = find(rules.methods, "boiling-water");
  if (m == nullptr || minutes >= m->sterilize_under_min) return 0;
  const int further = std::max(altitude_ft - 1'000, 0);
  return m->sterilize_min + (further + 999) / 1'000;
}

/// Writes the texts of one batch.
class card_writer {
 public:
  card_writer(const edition& rules, const plan& what, const day_plan& day, day_batch& out)
      : rules_(rules), what_(what), day_(day), out_(out), required_(*out.judged.required) {}

  void write() {
    minutes_ = process_minutes(what_, required_);
    sterilize_ = sterilizing_minutes(rules_, required_, minutes_, out_.judged.altitude_ft);
    fill_words();
    const bool remainder = out_.jars && out_.jars->left > 0;
    if (fills_no_jar(out_)) {
      out_.unsaid.emplace_back("Steps: the food fills no jar.");
      for (const day_text& t : rules_.day.texts) {
        if (t.part == "left" && remainder && fits(t)) add_left(t);
      }
      return;
    }
    for (const day_text& t : rules_.day.texts) {
      if (!fits(t)) continue;
      if (t.part == "step") out_.steps.push_back(step_of(t));
      if (t.part == "caution") out_.cautions.push_back(step_of(t));
      if (t.part == "check") out_.check_after.push_back(step_of(t));
      if (t.part == "opening") out_.opening.push_back(step_of(t));
      if (t.part == "left" && remainder) add_left(t);
    }
    write_label();
  }

 private:
  const edition& rules_;
  const plan& what_;
  const day_plan& day_;
  day_batch& out_;
  const requirement& required_;
  int minutes_ = 0;
  int longest_ = 0;  ///< of its loads, which may hold a food that takes longer
  int sterilize_ = 0;
  filling_words words_;

  [[nodiscard]] const process& food() const { return *out_.judged.process; }

  void fill_words() {
    std::string time = time_text(minutes_);
    longest_ = minutes_;
    for (const day_load& l : day_.loads) {
      for (const day_load_part& p : l.parts) {
        if (&day_.batches[p.batch] != &out_ || l.time_min <= minutes_) continue;
        time += " (" + time_text(l.time_min) + " in load " + std::to_string(l.number) + ")";
        longest_ = std::max(longest_, l.time_min);
      }
    }
    const method* m = find(rules_.methods, required_.method);
    int vent = m == nullptr ? 0 : m->vent_min;
    if (what_.vent)
      vent = std::max(vent,
                      static_cast<int>(divide(what_.vent->value.value, ms_per_min, rounding::up)));
    std::string acids;
    for (const acid_choice& a : food().acids)
      acids += (acids.empty() ? "" : "; or ") + std::string(a.says);
    const std::string least = std::to_string(required_.least_f.value_or(0)) + " F";
    words_ = {{"time", time},
              {"pressure", process_pressure(what_, required_)},
              {"headspace", headspace_text(required_.headspace_thousandths_in)},
              {"vent", std::to_string(vent)},
              {"jar", what_.jar->text},
              {"jars", out_.jars ? std::to_string(planned_jars(*out_.jars)) : std::string("the")},
              {"water", std::to_string(food().needs.water_qt)},
              {"water_f", number_text(rules_, required_.pack == "raw" ? "water-raw" : "water-hot")},
              {"sterilize", std::to_string(sterilize_)},
              {"acid", acids},
              {"solids", share_of_jar(food().needs.solids_percent)},
              {"temperature", std::to_string(required_.least_f.value_or(0)) + " to " +
                                  std::to_string(required_.most_f.value_or(0)) + " F"},
              {"temperature_least", least},
              {"heat_up", std::to_string(food().needs.heat_up_min)},
              {"boil", std::to_string(boiling_minutes(rules_, out_.judged.altitude_ft))},
              {"cool_least", number_text(rules_, "cool-least")},
              {"cool_most", number_text(rules_, "cool-most")},
              {"years", number_text(rules_, "keep-years")}};
  }

  [[nodiscard]] bool fits(const day_text& t) const {
    if (!t.methods.empty() && !t.methods.contains(required_.method)) return false;
    if (!t.gauges.empty() && !t.gauges.contains(what_.gauge ? what_.gauge->text : "any"))
      return false;
    // `raw or hot` where the plan leaves it open and both are accepted: both texts stand.
    if (!t.packs.empty() &&
        std::none_of(t.packs.begin(), t.packs.end(), [&](std::string_view pack) {
          return required_.pack.find(pack) != std::string::npos;
        }))
      return false;
    if (t.when.empty()) return true;
    const process_needs& n = food().needs;
    if (t.when == "sterilize") return sterilize_ > 0;
    if (t.when == "own-water") return n.water_qt > 0;
    if (t.when == "usual-water") return n.water_qt == 0;
    if (t.when == "own-heat-up") return n.heat_up_min > 0;
    if (t.when == "conditions") return !directions(false).empty();
    if (t.when == "solids") return n.solids_percent > 0;
    if (t.when == "fills") return true;
    if (t.when == "acid") return !food().acids.empty();
    if (t.when == "up-to-30-min") return longest_ <= 30;
    if (t.when == "over-30-min") return longest_ > 30;
    return t.when == "boil-first" && is_boiled_first(rules_, food());
  }

  /// The conditions of the process for this pack: those of the filling, or all others.
  [[nodiscard]] std::vector<std::string> directions(bool filling) const {
    std::vector<std::string> out;
    for (const condition& c : food().conditions) {
      if (c.fills != filling) continue;
      const bool other_pack =
          !c.packs.empty() && std::none_of(c.packs.begin(), c.packs.end(), [&](std::string_view p) {
            return required_.pack.find(p) != std::string::npos;
          });
      if (!other_pack) out.emplace_back(c.says);
    }
    return out;
  }

  [[nodiscard]] day_step step_of(const day_text& t) const {
    day_step out;
    out.id = std::string(t.id);
    out.says = filled(t.says, words_);
    out.evidence = std::string(t.evidence);
    if (t.when == "conditions" || t.when == "fills") {
      out.parts = directions(t.when == "fills");
      add_sources(rules_, food().sources, out.sources);
    } else if (t.when == "acid") {
      add_sources(rules_, food().sources, out.sources);
    } else {
      add_sources(rules_, t.sources, out.sources);
    }
    return out;
  }

  void add_left(const day_text& t) {
    if (t.id != "smaller-jar") {
      out_.left.push_back(step_of(t));
      return;
    }
    const jar_size* jar = smaller_jar(what_, rules_, out_.judged, *out_.jars);
    if (jar == nullptr) return;
    for (auto& [name, value] : words_) {
      if (name == "jar") value = std::string(jar->title);
    }
    out_.left.push_back(step_of(t));
    for (auto& [name, value] : words_) {
      if (name == "jar") value = what_.jar->text;
    }
  }

  /// What the jars got in their loads, which may hold a food that takes more: `40 min`, and where
  /// their loads differ `20 min (40 min in load 2)`. `own` of the plan where nothing is planned.
  template <class Of>
  [[nodiscard]] std::string of_loads(const std::string& own, Of&& of) const {
    std::vector<const day_load*> mine;
    for (const day_load& l : day_.loads) {
      for (const day_load_part& p : l.parts) {
        if (&day_.batches[p.batch] == &out_) mine.push_back(&l);
      }
    }
    if (mine.empty()) return own;
    const std::string first = of(*mine.front());
    const bool same =
        std::all_of(mine.begin(), mine.end(), [&](const day_load* l) { return of(*l) == first; });
    if (same) return first;
    std::string out = own;
    for (const day_load* l : mine) {
      if (of(*l) != own) out += " (" + of(*l) + " in load " + std::to_string(l->number) + ")";
    }
    return out;
  }

  /// `180 to 185 F`
  [[nodiscard]] std::string temperature() const {
    return std::to_string(required_.least_f.value_or(0)) + " to " +
           std::to_string(required_.most_f.value_or(0)) + " F";
  }

  void write_label() {
    const auto line = [&](std::string name, std::string value) {
      if (!value.empty()) out_.label.push_back({std::move(name), std::move(value)});
    };
    const std::string title(food().title);
    line("food", what_.title ? what_.title->text + " (" + title + ")" : title);
    if (what_.date) {
      line("canned", what_.date->text);
    } else {
      out_.unsaid.emplace_back("Dates of the label: the plan says no `date`.");
    }
    const std::string pressure =
        of_loads(process_pressure(what_, required_), [](const day_load& l) { return l.pressure; });
    const std::string time =
        of_loads(time_text(minutes_), [](const day_load& l) { return time_text(l.time_min); });
    line("process", title_of_method(rules_, required_.method) +
                        (what_.gauge ? ", " + what_.gauge->text + " gauge" : "") +
                        (pressure.empty() ? "" : ", " + pressure) +
                        (required_.least_f ? ", " + temperature() : "") + ", " + time + ", " +
                        required_.pack + " pack, " + what_.jar->text + " jars");
    line("altitude", altitude_text(out_.judged.altitude_ft));
    line("rules", std::string(rules_.name) + ", " + std::string(rules_.version));
    line("lot", out_.lot);
    const day_number* years = number_of(rules_, "keep-years");
    if (what_.date && years != nullptr)
      line("use first",
           "by " + iso_text(years_after(date_of(what_.date->text), years->thousandths / 1'000)) +
               ", for quality");
  }
};

}  // namespace jarproof::detail
