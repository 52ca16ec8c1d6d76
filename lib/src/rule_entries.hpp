// From the values of rule files to the entries of an edition.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/ingredient_facts.hpp"
#include "jarproof/quantity.hpp"
#include "vocabulary_entries.hpp"

namespace jarproof {

/// One function for each kind of entry. What an entry refers to is checked when all files are read.
class rule_entries : public vocabulary_entries {
 protected:
  void read_edition(const node& root) {
    only(root, {"name", "version", "scope", "caution", "extends"});
    edition_.name = text(root, "name");
    edition_.version = text(root, "version");
    if (!edition_.version.empty() && !is_version(edition_.version))
      fault(*jarproof::find(root, "version"),
            "`" + std::string(edition_.version) + "` is no version",
            "write YEAR.MONTH.NUMBER, such as 2026.11.1");
    edition_.scope = text(root, "scope");
    edition_.caution = text(root, "caution");
  }

  /// `2026.11.1`: year, month, number.
  [[nodiscard]] static bool is_version(std::string_view text) {
    const std::size_t first = text.find('.');
    const std::size_t second = first == std::string_view::npos ? first : text.find('.', first + 1);
    if (first != 4 || second == std::string_view::npos || second + 1 == text.size()) return false;
    for (const char c : text) {
      if (c != '.' && !detail::is_digit(c)) return false;
    }
    if (text.find('.', second + 1) != std::string_view::npos) return false;
    const std::string month(text.substr(first + 1, second - first - 1));
    return !month.empty() && month.size() <= 2 && std::stoi(month) >= 1 && std::stoi(month) <= 12;
  }

  [[nodiscard]] source read_source(const node& n) {
    only(n, {"id", "title", "publisher", "edition", "url"});
    return {text(n, "id"), text(n, "title"), text(n, "publisher"), text(n, "edition", false),
            text(n, "url", false)};
  }

  void read_altitude(const node& root) {
    only(root, {"highest_ft", "bands"});
    if (extends_ && jarproof::find(root, "highest_ft") != nullptr)
      fault(*jarproof::find(root, "highest_ft"), "the built-in edition sets the highest altitude",
            "drop it here");
    edition_.highest_ft = number(root, "highest_ft", 1000, 15000, !extends_);
    edition_.bands = entries<band_set>(root, "bands", &rule_entries::read_bands, false);
  }

  [[nodiscard]] band_set read_bands(const node& n) {
    only(n, {"id", "title", "gauge", "steps", "sources"});
    band_set out;
    out.id = text(n, "id");
    out.title = text(n, "title");
    out.gauge = one_of(n, "gauge", {"dial", "weighted"}, false);
    if (out.gauge.empty() && find(n, "gauge") != nullptr) out.gauge = unknown_gauge;
    out.sources = citations(n, true);
    std::vector<altitude_step> steps;
    constexpr int open_end = -1;
    constexpr int unknown =
        -2;  // after a band that is wrong itself, nothing is said about the next
    int next = 0;
    for (const node& s : items(n, "steps", true)) {
      only(s, {"from_ft", "through_ft", "psi", "says", "sources"});
      const std::size_t errors_before = errors_.size();
      altitude_step step;
      step.from_ft = number(s, "from_ft", 0, 15000);
      step.through_ft = number(s, "through_ft", 1, 15000, false);
      step.psi = number(s, "psi", 1, 15, !out.gauge.empty());
      step.says = text(s, "says", false);
      step.sources = citations(s, false);
      steps.push_back(step);
      if (errors_.size() != errors_before) {
        next = unknown;
      } else if (step.through_ft != 0 && step.through_ft < step.from_ft) {
        fault(s, "the band ends before it begins", "swap the ends");
        next = unknown;
      } else {
        if (next == open_end) {
          fault(s, "a band stands after one without an upper end",
                "give the band before it a `through_ft`");
        } else if (next != unknown && step.from_ft != next) {
          fault(s,
                step.from_ft > next ? "a gap lies before this band"
                                    : "this band overlaps the one before it",
                "write `from_ft: " + std::to_string(next) + "`");
        }
        next = step.through_ft == 0 ? open_end : step.through_ft + 1;
      }
    }
    out.steps = storage_.keep(std::move(steps));
    return out;
  }

  void read_jars(const node& root) {
    only(root, {"metric_says", "jars"});
    edition_.metric_jar_says = text(root, "metric_says");
    edition_.jars = entries<jar_size>(root, "jars", &rule_entries::read_jar, false);
    const node* jars = find(root, "jars");
    for (std::size_t i = 1; i < edition_.jars.size(); ++i) {
      const int before = edition_.jars[i - 1].volume_floz;
      if (before == 0 || edition_.jars[i].volume_floz == 0) continue;  // reported already
      if (edition_.jars[i].volume_floz <= before) {
        fault(jars->items[i], "this jar is not larger than the one before it",
              "list jars from small to large");
      }
    }
  }

  [[nodiscard]] jar_size read_jar(const node& n) {
    only(n, {"id", "title", "volume_floz", "names", "limit", "sources"});
    return {text(n, "id"),     text(n, "title"),        number(n, "volume_floz", 1, 256),
            words(n, "names"), text(n, "limit", false), citations(n, true)};
  }

  [[nodiscard]] method read_method(const node& n) {
    only(n, {"id", "title", "names", "accepted", "why", "instead", "vent_min", "highest_psi",
             "weights_psi", "weights_kpa", "smallest_canner_quarts", "smallest_canner_volume_qt",
             "gauge_error_psi", "longest_min", "sterilize_under_min", "sterilize_min", "sources"});
    method m;
    m.id = text(n, "id");
    m.title = text(n, "title");
    m.names = words(n, "names");
    m.accepted = truth(n, "accepted");
    m.why = text(n, "why", !m.accepted);
    m.instead = text(n, "instead", !m.accepted);
    const bool pressure = m.id == "pressure";
    m.vent_min = number(n, "vent_min", 1, 60, pressure);
    m.highest_psi = number(n, "highest_psi", 1, 30, pressure);
    m.weights_psi = numbers(n, "weights_psi", 1, 30);
    m.weights_kpa = numbers(n, "weights_kpa", 1, 210);
    m.smallest_canner_quarts = number(n, "smallest_canner_quarts", 1, 20, pressure);
    m.smallest_canner_volume_qt = number(n, "smallest_canner_volume_qt", 1, 60, pressure);
    m.gauge_error_psi = number(n, "gauge_error_psi", 1, 5, pressure);
    m.longest_min = number(n, "longest_min", 1, 600, false);
    m.sterilize_under_min = number(n, "sterilize_under_min", 1, 60, false);
    m.sterilize_min = number(n, "sterilize_min", 1, 60, m.sterilize_under_min != 0);
    m.sources = citations(n, true);
    if (pressure && (m.weights_psi.empty() || m.weights_kpa.size() != 2 * m.weights_psi.size())) {
      fault(n, "`weights_psi` and `weights_kpa` do not fit together",
            "give two kPa markings for each psi");
    }
    return m;
  }

  void read_vocabulary(const node& root) {
    only(root, {"forms", "prepared", "plain_words", "heading_words", "acid_words", "cut_words",
                "line_words", "telling_words", "step_words", "spellings", "phrases"});
    edition_.plain_words = words(root, "plain_words", !extends_);
    read_recipe_words(root);
    // An edition of its own needs the lists; an addition brings what it has.
    if (!extends_ || jarproof::find(root, "forms") != nullptr)
      edition_.forms = entries<form_word>(root, "forms", &rule_entries::read_form, false);
    if (!extends_ || jarproof::find(root, "prepared") != nullptr)
      edition_.prepared =
          entries<prepared_word>(root, "prepared", &rule_entries::read_prepared, false);
  }
  [[nodiscard]] seasoning_limit read_seasoning(const node& n) {
    only(n, {"id", "says", "trait", "foods", "unit", "per_quart", "evidence"});
    seasoning_limit out;
    out.id = text(n, "id");
    out.says = text(n, "says");
    out.trait = trait_of(n, "trait");
    out.foods = words(n, "foods");
    if (const node* foods = find(n, "foods")) {
      for (const node& f : foods->items) refer(f, storage_.keep(f.text), &edition::ingredients);
    }
    if (out.trait.empty() == out.foods.empty())
      fault(n, "a seasoning is named by its trait or by its foods", "give one of the two");
    out.unit = one_of(n, "unit", {"tsp", "tbsp", "cup", "clove", "piece", "sprig", "oz"});
    if (const node* amount = value(n, "per_quart", true)) out.per_quart = printed(*amount);
    out.evidence = text(n, "evidence");
    return out;
  }
  [[nodiscard]] form_word read_form(const node& n) {
    only(n, {"id", "says", "refused_by"});
    return {text(n, "id"), text(n, "says"), reference(n, "refused_by", &edition::checks, false)};
  }
  [[nodiscard]] prepared_word read_prepared(const node& n) {
    only(n, {"id", "says", "denies", "refused_by", "general"});
    return {text(n, "id"), text(n, "says"), reference(n, "denies", &edition::prepared, false),
            reference(n, "refused_by", &edition::checks, false), packs(n, "general")};
  }

  [[nodiscard]] ingredient read_ingredient(const node& n) {
    only(n, {"id", "names", "class", "kind_of", "traits", "vinegar_percent", "can_as", "weights"});
    ingredient out;
    out.id = text(n, "id");
    out.names = words(n, "names", true);
    if (const node* names = find(n, "names")) {
      for (const node& name : names->items) {
        const std::string plain = detail::folded(name.text);
        if (plain == name.text || name.text.empty()) continue;
        fault(name, "the name `" + name.text + "` is not in plain letters",
              "write `" + plain + "`: lower case, blanks for hyphens");
      }
    }
    const std::string_view kind = one_of(n, "class", {"acid", "low-acid", "borderline", "neutral"});
    out.kind = kind == "acid"         ? acidity::acid
               : kind == "borderline" ? acidity::borderline
               : kind == "neutral"    ? acidity::neutral
                                      : acidity::low_acid;
    out.kind_of = reference(n, "kind_of", &edition::ingredients, false);
    out.traits = words(n, "traits");
    for (const std::string_view t : out.traits) check_trait(*find(n, "traits"), t);
    out.vinegar_percent = number(n, "vinegar_percent", 1, 30, false);
    out.can_as = words(n, "can_as");
    if (const node* can_as = find(n, "can_as")) {
      for (const node& p : can_as->items) refer(p, storage_.keep(p.text), &edition::processes);
    }
    std::vector<measure_weight> weights;
    for (const node& w : items(n, "weights", false)) read_weights(w, weights);
    out.weights = storage_.keep(std::move(weights));
    return out;
  }

  [[nodiscard]] std::string_view trait_of(const node& n, std::string_view key) {
    const std::string_view t = text(n, key, false);
    if (!t.empty()) check_trait(*find(n, key), t);
    return t;
  }

  /// One line of weights: a form and one or more measures of it, in grams.
  void read_weights(const node& n, std::vector<measure_weight>& out) {
    only(n, {"form", "cup", "tbsp", "tsp", "piece", "clove", "head", "stick", "can", "sources"});
    measure_weight w;
    w.form = text(n, "form", false);
    w.sources = citations(n, true);
    bool any = false;
    for (const std::string_view unit :
         {"cup", "tbsp", "tsp", "piece", "clove", "head", "stick", "can"}) {
      const node* grams = find(n, unit);
      if (grams == nullptr) continue;
      any = true;
      w.unit = unit;
      if (grams->kind != node_kind::sequence || grams->items.size() != 2) {
        fault(*grams, "a weight has a lowest and a highest value",
              "write `" + std::string(unit) + ": [150, 160]`, in grams");
        continue;
      }
      const printed_amount low = printed(grams->items[0]);
      const printed_amount high = printed(grams->items[1]);
      w.low_mg = static_cast<int>(low.over * 1000LL / low.under);
      w.high_mg = static_cast<int>((high.over * 1000LL + high.under - 1) / high.under);
      if (w.low_mg == 0 || w.low_mg > w.high_mg)
        fault(*grams, "this is no range of weights", "write the lower one first, above 0");
      out.push_back(w);
    }
    if (!any && n.kind == node_kind::map)
      fault(n, "the weight has no measure", "write it like `cup: [150, 160]`, in grams");
  }

  [[nodiscard]] untested_food read_untested(const node& n) {
    only(n, {"id", "title", "names", "class", "why", "instead", "sources"});
    return {text(n, "id"),  text(n, "title"),   words(n, "names", true),
            text(n, "why"), text(n, "instead"), citations(n, true)};
  }

  void read_ph(const node& root) {
    only(root, {"entries"});
    std::vector<ph_entry> out;
    for (const node& n : items(root, "entries", true)) {
      only(n, {"food", "ph", "explains", "says", "evidence", "sources"});
      ph_entry e;
      e.food = text(n, "food");
      e.explains = words(n, "explains");
      e.says = text(n, "says", false);
      e.evidence = one_of(n, "evidence", {"seen", "memory"}, false);
      if (e.evidence.empty()) e.evidence = "seen";
      afterwards([this, &n, e] {
        if (edition_.processes.empty()) return;  // reported already
        for (const std::string_view id : e.explains) {
          if (jarproof::find(edition_.processes, id) != nullptr ||
              jarproof::find(edition_.ingredients, id) != nullptr ||
              jarproof::find(edition_.untested_foods, id) != nullptr)
            continue;
          fault(n, "`" + std::string(id) + "` is neither a food nor an ingredient",
                "name one that is, or drop it from `explains`");
        }
      });
      e.sources = citations(n, true);
      const node* ph = value(n, "ph", true);
      if (ph != nullptr && (ph->kind != node_kind::sequence || ph->items.size() != 2)) {
        fault(*ph, "a pH has a lowest and a highest value", "write `ph: [3.1, 3.4]`");
      } else if (ph != nullptr) {
        const printed_amount low = printed(ph->items[0]);
        const printed_amount high = printed(ph->items[1]);
        e.low_hundredths = static_cast<int>(low.over * 100LL / low.under);
        e.high_hundredths = static_cast<int>((high.over * 100LL + high.under - 1) / high.under);
        if (e.low_hundredths > e.high_hundredths || e.high_hundredths > 1400)
          fault(*ph, "this is no pH range", "write the lower end first; a pH is at most 14");
      }
      out.push_back(e);
    }
    edition_.ph = storage_.keep(std::move(out));
  }

  [[nodiscard]] check_rule read_check(const node& root, const std::string& stem_of_file) {
    only(root, {"id", "title", "level", "outcome", "since", "sources", "says", "unsaid", "why",
                "fix", "log_says", "log_fix", "log_level", "log_outcome", "examples"});
    check_rule c;
    c.id = text(root, "id");
    same_as_file(root, c.id, stem_of_file);
    c.title = text(root, "title");
    c.level = one_of(root, "level", {"error", "warning", "note"});
    c.outcome = one_of(root, "outcome", {"rejects", "untested", "incomplete", "none"});
    if (!c.level.empty() && c.level != "error" && !c.outcome.empty() && c.outcome != "none") {
      fault(*find(root, "level"), "a check that changes the verdict is an error",
            "write `level: error`");
    }
    c.since = text(root, "since");
    c.says = sentence(root, "says", c.outcome != "incomplete" || find(root, "unsaid") == nullptr);
    c.unsaid = sentence(root, "unsaid", false);
    c.why = sentence(root, "why", true);
    c.fix = sentence(root, "fix", true);
    c.log_says = sentence(root, "log_says", false);
    c.log_fix = sentence(root, "log_fix", false);
    c.log_level = one_of(root, "log_level", {"error", "warning", "note"}, false);
    c.log_outcome =
        one_of(root, "log_outcome", {"rejects", "untested", "incomplete", "none"}, false);
    c.sources = citations(root, true);
    const node* examples = value(root, "examples", true);
    if (examples == nullptr) return c;
    only(*examples, {"good", "bad"});
    c.good = read_examples(*examples, "good");
    c.bad = read_examples(*examples, "bad");
    return c;
  }

  [[nodiscard]] list<example> read_examples(const node& map, std::string_view key) {
    std::vector<example> out;
    for (const node& n : items(map, key, true)) {
      only(n, {"name", "plan", "log", "expect"});
      example x;
      x.name = text(n, "name");
      const node* plan = value(n, "plan", true);
      // Not trimmed: the places in `expect` count from the first character.
      if (plan != nullptr && !text_of(*plan).empty()) x.plan = storage_.keep(plan->text);
      const node* log = value(n, "log", false);
      if (log != nullptr && !text_of(*log).empty()) x.log = storage_.keep(log->text);
      if (key == "bad") x.expect = words(n, "expect", true, false);
      if (key == "good" && find(n, "expect") != nullptr)
        fault(n, "a good example expects nothing", "leave `expect` out");
      out.push_back(x);
    }
    return storage_.keep(std::move(out));
  }
};

}  // namespace jarproof
