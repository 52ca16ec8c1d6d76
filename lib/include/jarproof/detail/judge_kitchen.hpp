// Checks that need no food: method, canner, gauge, pressure limits, held food, words.
// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "jarproof/detail/findings.hpp"
#include "jarproof/detail/words.hpp"
#include "jarproof/format/numbers.hpp"
#include "jarproof/keys.hpp"
#include "jarproof/lookup.hpp"

namespace jarproof::detail {

/// True where the plan says that it follows a publication, and names which.
[[nodiscard]] inline bool follows_publication(const plan& p) noexcept {
  return p.as_published && p.as_published->value && p.food;
}

/// Reports a critical fact that the plan does not say.
inline void missing(judging& j, std::string_view key, std::string write = {}) {
  const plan_key* known = find_key(key);
  sentence_facts facts;
  facts.reason = known == nullptr ? std::string(key) : std::string(known->what);
  const std::string line = !write.empty() ? std::move(write)
                           : known == nullptr
                               ? std::string(key)
                               : std::string(key) + ": " + std::string(known->example);
  facts.instead = "For example: `" + line + "`.";
  j.unsaid("fact-missing", place_of(key, j.what), std::move(facts));
}

[[nodiscard]] inline std::string pounds(std::int64_t micro_psi) {
  return decimal_of_thousandths(micro_psi / 1000) + " psi";
}

/// Pressure that the plan's gauge stands for on a dial: a reading in metric units counts as whole
/// psi, rounded down, and what the dial reads high is taken off.
[[nodiscard]] inline std::int64_t dial_pressure(const plan& p) noexcept {
  std::int64_t value = p.pressure->value.value;
  if (p.pressure->value.metric) value -= value % micro_per_unit;
  if (p.gauge_error && p.gauge_error->value.value > 0) value -= p.gauge_error->value.value;
  return value;
}

/// True where a dial stands above the highest pressure. In kPa the limit is the mark of the highest
/// weight: here the metric reading counts as it is, because rounding it down would let more pass.
[[nodiscard]] inline bool over_the_limit(const method& canner, const plan& p) noexcept {
  if (!p.pressure->value.metric || canner.weights_kpa.empty()) {
    return dial_pressure(p) > canner.highest_psi * micro_per_unit;
  }
  const std::int64_t error =
      p.gauge_error && p.gauge_error->value.value > 0 ? p.gauge_error->value.value : 0;
  const std::int64_t mark = canner.weights_kpa[canner.weights_kpa.size() - 1];
  return p.pressure->value.value - error > mark * 145'038;
}

/// The weight a stated pressure names, in psi, or nothing where no weight holds it.
[[nodiscard]] inline std::optional<int> weight_of(const method& canner,
                                                  const amount& pressure) noexcept {
  for (std::size_t i = 0; i < canner.weights_psi.size(); ++i) {
    if (!pressure.metric) {
      if (pressure.value == canner.weights_psi[i] * micro_per_unit) return canner.weights_psi[i];
      continue;
    }
    for (std::size_t k = 2 * i; k < 2 * i + 2 && k < canner.weights_kpa.size(); ++k) {
      // One kPa is 145,037.737 millionths of a psi; both sides are compared in hundredths of a kPa.
      const std::int64_t hundredths = (pressure.value * 100 + 72'519) / 145'038;
      if (hundredths == canner.weights_kpa[k] * 100) return canner.weights_psi[i];
    }
  }
  return std::nullopt;
}

/// The method, or null where it is missing, unknown or refused; says so.
[[nodiscard]] inline const method* judge_method(judging& j) {
  const plan& p = j.what;
  if (!p.method) {
    missing(j, "method");
    return nullptr;
  }
  const method* m = method_named(j.rules, p.method->text);
  j.words.method = m == nullptr ? p.method->text : std::string(m->title);
  if (m != nullptr && m->accepted) return m;
  sentence_facts facts;
  facts.found = p.method->text;
  std::vector<std::string_view> accepted;
  std::vector<std::string_view> names;
  for (const method& each : j.rules.methods) {
    if (each.accepted) accepted.push_back(each.id);
    if (!each.accepted) continue;  // a refused method is no suggestion
    names.push_back(each.id);
    for (const std::string_view name : each.names) names.push_back(name);
  }
  facts.required = joined(accepted);
  if (m != nullptr) {
    facts.reason = std::string(m->why);
    facts.instead = std::string(m->instead);
  } else {
    facts.reason = "No published process goes by that name.";
    const std::string near = nearest(p.method->text, names);
    facts.instead = (near.empty() ? "" : "Did you mean `" + near + "`? ") +
                    "Write one of: " + facts.required +
                    ". An electric cooker, a multi-cooker or a pressure cooker " +
                    "is no pressure canner, so do not write `pressure` for one.";
  }
  finding& f = j.say("method-not-accepted", place_of("method", *p.method), std::move(facts));
  if (m != nullptr) cite_first(j.rules, m->sources, f);
  return nullptr;
}

/// Limits of the pressure canner itself. True where the stated pressure can be compared further.
[[nodiscard]] inline bool judge_pressure_canner(judging& j, const method& canner) {
  const plan& p = j.what;
  bool comparable = p.pressure.has_value();
  const bool weighted = p.gauge && p.gauge->text == "weighted";
  if (p.gauge_error) {
    const std::int64_t error = p.gauge_error->value.value;
    const std::int64_t size = error < 0 ? -error : error;
    sentence_facts facts;
    facts.found = p.gauge_error->text;
    facts.required = "at most " + std::to_string(canner.gauge_error_psi) + " psi either way";
    if (weighted) {
      j.say("gauge-error-unused", place_of("gauge-error", *p.gauge_error), std::move(facts));
    } else if (size > canner.gauge_error_psi * micro_per_unit) {
      j.say("gauge-error-too-large", place_of("gauge-error", *p.gauge_error), std::move(facts));
      comparable = false;
    }
  }
  if (p.pressure) {
    sentence_facts facts;
    facts.found = p.pressure->text;
    facts.required = "at most " + pressure_text(canner.highest_psi);
    const std::optional<int> weight = weight_of(canner, p.pressure->value);
    const bool too_high =
        weighted && weight ? *weight > canner.highest_psi : over_the_limit(canner, p);
    if (too_high) {
      j.say("pressure-too-high", place_of("pressure", *p.pressure), std::move(facts));
      comparable = false;
    } else if (weighted && !weight) {
      std::vector<std::string> weights;
      for (const int w : canner.weights_psi) weights.push_back(std::to_string(w));
      facts.choices = joined(weights) + " psi";
      facts.required = facts.choices;
      j.say("gauge-cannot-hold", place_of("pressure", *p.pressure), std::move(facts));
      comparable = false;
    }
  }
  if (p.vent && p.vent->value.value < canner.vent_min * ms_per_min) {
    j.say("vent-too-short", place_of("vent", *p.vent),
          {p.vent->text, "at least " + std::to_string(canner.vent_min) + " min", {}, {}, {}});
  }
  if (p.canner) {
    const canner_size& size = p.canner->value;
    const std::string least =
        "at least " + std::to_string(canner.smallest_canner_quarts) + " quart jars";
    if (size.quarts && size.quarts->value < canner.smallest_canner_quarts) {
      j.say("canner-too-small", place_of("canner", *size.quarts),
            {size.quarts->text + " quart jars", least, {}, {}, {}});
    } else if (size.pints && size.pints->value < canner.smallest_canner_quarts) {
      // What does not take that many pints does not take that many quarts.
      j.say("canner-too-small", place_of("canner", *size.pints),
            {size.pints->text + " pint jars", least, {}, {}, {}});
    } else if (size.volume &&
               size.volume->value.value < canner.smallest_canner_volume_qt * 32 * micro_per_unit) {
      j.say("canner-too-small", place_of("canner", *size.volume),
            {size.volume->text,
             "about " + std::to_string(canner.smallest_canner_volume_qt) +
                 " qt or more, which takes " + std::to_string(canner.smallest_canner_quarts) +
                 " quart jars",
             {},
             {},
             {}});
    }
  }
  return comparable;
}

[[nodiscard]] inline bool has_prepared(const plan& p, std::string_view id) {
  const std::string wanted = folded(id);
  for (const word& w : p.prepared) {
    if (folds_to(w.text, wanted)) return true;
  }
  return false;
}

/// Cooked food kept before canning. Limits: USDA two-hour rule, one hour above 90 F; cold food up
/// to three days (contract of the plan file: the shorter of the published 3 to 4 days).
inline void judge_held(judging& j, const process_needs& needs) {
  const plan& p = j.what;
  if (!p.held) return;
  const holding& h = p.held->value;
  if (!h.duration || !h.temperature) {
    missing(j, "held");
    return;
  }
  const std::int64_t hours_ms = 3'600'000;
  const std::int64_t lasted = h.duration->value.value;
  const bool cold = h.highest_temperature <= 40'000;
  const bool hot = h.temperature->value.value >= 140'000;
  sentence_facts facts;
  facts.found = h.duration->text + " at " + h.temperature->text;
  const place at = place_of("held", *p.held);
  const int limit_h = h.highest_temperature > 90'000 ? 1 : 2;
  if (!cold && !hot && lasted > limit_h * hours_ms) {
    facts.required =
        "at most " + std::to_string(limit_h) + " h between 40 F (4 C) and 140 F (60 C)";
    j.say("held-too-warm", at, std::move(facts));
    return;
  }
  const int most_h = needs.held_most_h > 0 ? needs.held_most_h : 72;
  if (cold && lasted > most_h * hours_ms) {
    facts.required = "at most " + std::to_string(most_h) + " h at 40 F (4 C) or colder";
    j.say("held-too-long", at, std::move(facts));
    return;
  }
  if (p.pack && needs.packed_cold.contains(p.pack->text)) return;  // a step of that process
  if (p.pack && p.pack->text == "raw") {
    j.say("not-in-process", at,
          {facts.found,
           {},
           "Food that was cooked and kept goes into a hot pack, never a raw one.",
           {},
           {}});
    return;
  }
  if (!cold) return;
  if (!has_prepared(p, "reheated to a boil")) {
    j.say("not-reheated", at, {facts.found, "reheated to a boil", {}, {}, {}});
  }
  j.say("held-cold", at, std::move(facts));
}

/// Words of the closed vocabularies that the edition does not hold.
inline void judge_words(judging& j) {
  const plan& p = j.what;
  const auto unknown = [&](std::string_view key, const word& w, const std::string& near,
                           const std::string& choices) {
    sentence_facts facts;
    facts.found = w.text;
    facts.instead = !near.empty()          ? "Did you mean `" + near + "`?"
                    : choices.size() > 200 ? "`jarproof rules` lists the words that may stand here."
                                           : "Write one of: " + choices + ".";
    j.say("word-unknown", place_of(key, w), std::move(facts));
  };
  std::vector<std::string_view> prepared;
  for (const prepared_word& w : j.rules.prepared) prepared.push_back(w.id);
  for (const word& w : p.prepared) {
    bool known = false;
    const std::string plain = folded(w.text);
    for (const std::string_view id : prepared) known = known || folds_to(id, plain);
    if (!known) unknown("prepared", w, nearest(w.text, prepared), joined(prepared));
  }
  if (p.jar && !p.jar_volume && jar_named(j.rules, p.jar->text) == nullptr) {
    std::vector<std::string_view> jars;
    for (const jar_size& size : j.rules.jars) jars.push_back(size.id);
    unknown("jar", *p.jar, nearest(p.jar->text, jars), joined(jars));
  }
}

[[nodiscard]] inline const form_word* form_of(const judging& j) {
  if (!j.what.form) return nullptr;
  const std::string wanted = folded(j.what.form->text);
  for (const form_word& f : j.rules.forms) {
    if (folds_to(f.id, wanted)) return &f;
  }
  return nullptr;
}

}  // namespace jarproof::detail
