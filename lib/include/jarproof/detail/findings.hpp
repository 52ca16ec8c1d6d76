// Making findings out of the sentences in the check files.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/words.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/plan.hpp"
#include "jarproof/report.hpp"

namespace jarproof::detail {

/// Words a check's sentences may use; the loader refuses any other.
inline constexpr std::string_view placeholders[] = {
    "found",  "required", "food",    "jar",     "pack",  "gauge",  "altitude",
    "method", "reason",   "instead", "choices", "field", "counted"};

/// What the sentences of one finding are filled with.
struct sentence_facts {
  std::string found;
  std::string required;
  std::string reason;
  std::string instead;
  std::string choices;
  std::string counted = {};  ///< from when the minutes count
};

/// From when the minutes of a process count, by the id of its method.
[[nodiscard]] constexpr std::string_view start_of_time(std::string_view method) noexcept {
  if (method == "pressure") return "when the pressure is reached";
  if (method == "low-temperature") return "when the water has its temperature";
  if (method == "steam") return "when pure steam flows";
  return "the full boil";
}

/// Words that are the same for every finding of one plan.
struct plan_words {
  std::string food = "this food";
  std::string jar = "this";
  std::string pack = "this";
  std::string gauge = "dial or weighted";
  std::string altitude = "any altitude";
  std::string method = "this method";
};

/// Where in the plan a finding points.
struct place {
  std::string_view field;
  int line = 0;
  int column = 0;
  bool in_recipe = false;
};

template <class T>
[[nodiscard]] place place_of(std::string_view field, const said<T>& value) noexcept {
  return {field, value.line, value.column, value.in_recipe};
}

/// The plan as a whole, for something that is not said.
[[nodiscard]] inline place place_of(std::string_view field, const plan& p) noexcept {
  return {field, p.line, p.column};
}

[[nodiscard]] inline std::string source_text(const edition& rules, const citation& c) {
  const source* s = find(rules.sources, c.ref);
  std::string out =
      s == nullptr ? std::string(c.ref) : std::string(s->publisher) + ": " + std::string(s->title);
  if (s != nullptr && !s->edition.empty()) out += " (" + std::string(s->edition) + ")";
  if (!c.page.empty()) out += ", page " + std::string(c.page);
  return out;
}

inline void add_sources(const edition& rules, list<citation> cited, std::vector<std::string>& out) {
  for (const citation& c : cited) {
    std::string text = source_text(rules, c);
    bool there = false;
    for (const std::string& have : out) there = there || have == text;
    if (!there) out.push_back(std::move(text));
  }
}

/// The publication that decides this finding stands before those that teach the check.
inline void cite_first(const edition& rules, list<citation> cited, finding& f) {
  std::vector<std::string> sources;
  add_sources(rules, cited, sources);
  for (std::string& s : f.sources) {
    const bool there = std::any_of(sources.begin(), sources.end(), [&](const std::string& have) {
      return have == s || have.compare(0, s.size() + 6, s + ", page") == 0;  // with its page
    });
    if (!there) sources.push_back(std::move(s));
  }
  f.sources = std::move(sources);
}

[[nodiscard]] inline std::string filled(std::string_view sentence, const sentence_facts& facts,
                                        const plan_words& words, std::string_view field) {
  std::string out = with_words(sentence, [&](std::string_view name) -> std::string_view {
    if (name == "found") return facts.found;
    if (name == "required") return facts.required;
    if (name == "reason") return facts.reason;
    if (name == "counted") return facts.counted;
    if (name == "instead") return facts.instead;
    if (name == "choices") return facts.choices;
    if (name == "food") return words.food;
    if (name == "jar") return words.jar;
    if (name == "pack") return words.pack;
    if (name == "gauge") return words.gauge;
    if (name == "altitude") return words.altitude;
    if (name == "method") return words.method;
    return name == "field" ? field : std::string_view();
  });
  for (std::size_t at = out.find("  "); at != std::string::npos; at = out.find("  ", at)) {
    out.erase(at, 1);  // an empty word between two blanks
  }
  while (!out.empty() && out.back() == ' ') out.pop_back();
  return out;
}

[[nodiscard]] constexpr outcome outcome_of(std::string_view name) noexcept {
  if (name == "rejects") return outcome::rejects;
  if (name == "untested") return outcome::untested;
  if (name == "incomplete") return outcome::incomplete;
  return outcome::none;
}

[[nodiscard]] constexpr level level_of(std::string_view name) noexcept {
  if (name == "error") return level::error;
  if (name == "warning") return level::warning;
  return level::note;
}

/// An ingredient of the cook's own recipe with the words that stood beside it.
struct own_part {
  const ingredient* what;
  std::vector<std::string> words;
};

/// The plan, the rules and the report that is being written.
struct judging {
  const plan& what;
  const edition& rules;
  report& out;
  plan_words words;
  std::optional<std::vector<own_part>> shown = std::nullopt;  ///< what fills a frame, where shown
  bool low_acid_mixture = false;  ///< a mixture that no process covers holds low-acid food
  int least_min = 0;  ///< a published recipe that the lines are a variant of asks for so long
  const process* least_by = nullptr;  ///< that recipe
  bool untested_variant = false;      ///< and one that no time of the frame stands for

  /// Adds a finding of the check `id`. A rule folder without that check still gets the finding,
  /// as an error that rejects: a missing sentence must not turn into a missing objection.
  finding& say(std::string_view id, const place& at, sentence_facts facts = {}) {
    return add(id, at, std::move(facts), false);
  }

  /// Adds the finding for a fact that the plan leaves unsaid: always incomplete.
  finding& unsaid(std::string_view id, const place& at, sentence_facts facts = {}) {
    return add(id, at, std::move(facts), true);
  }

 private:
  finding& add(std::string_view id, const place& at, sentence_facts facts, bool left_unsaid) {
    finding f;
    f.check = std::string(id);
    f.field = std::string(at.field);
    if (at.in_recipe) f.file = out.recipe_source;
    f.line = at.line;
    f.column = at.column;
    const check_rule* rule = find(rules.checks, id);
    if (rule == nullptr) {
      f.level = level::error;
      f.outcome = outcome::rejects;
      f.message = "The check " + f.check + " objects, but the rules in use hold no text for it.";
    } else {
      f.level = left_unsaid ? level::error : level_of(rule->level);
      f.outcome = left_unsaid ? outcome::incomplete : outcome_of(rule->outcome);
      f.message = filled(left_unsaid ? rule->unsaid : rule->says, facts, words, at.field);
      f.why = filled(rule->why, facts, words, at.field);
      f.fix = filled(rule->fix, facts, words, at.field);
      add_sources(rules, rule->sources, f.sources);
    }
    f.found = std::move(facts.found);
    f.required = std::move(facts.required);
    out.findings.push_back(std::move(f));
    return out.findings.back();
  }
};

}  // namespace jarproof::detail
