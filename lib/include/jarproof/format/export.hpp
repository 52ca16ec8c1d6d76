// A whole edition as data: JSON (docs/edition-schema.json) and CSV (RFC 4180).
//
//   std::string json = jarproof::edition_json(edition);
//   std::string csv = jarproof::edition_csv(edition);   // `record` says what a line is
//
// Numbers stand in the unit in which their source printed them; the unit is part of the key.
// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/edition.hpp"
#include "jarproof/format/json.hpp"
#include "jarproof/format/numbers.hpp"

namespace jarproof {

namespace detail {

[[nodiscard]] constexpr std::string_view name_of(part_limit l) noexcept {
  return l == part_limit::least     ? "least"
         : l == part_limit::most    ? "most"
         : l == part_limit::between ? "between"
                                    : "free";
}

[[nodiscard]] constexpr std::string_view name_of(part_role r) noexcept {
  constexpr std::string_view names[] = {"acid-food", "low-acid", "acid",   "salt", "sugar",
                                        "spice",     "water",    "starch", "fat",  "other"};
  return names[static_cast<std::size_t>(r)];
}

[[nodiscard]] constexpr std::string_view name_of(recipe_kind k) noexcept {
  return k == recipe_kind::plain ? "plain" : k == recipe_kind::frame ? "frame" : "fixed";
}

/// As printed: `3`, `0.5`, `2 2/3`.
[[nodiscard]] inline std::string printed_text(printed_amount a) {
  if (a.over % a.under == 0) return std::to_string(a.over / a.under);
  if (1'000 % a.under == 0 || 10'000 % a.under == 0) {
    std::string part = std::to_string(10'000 + a.over % a.under * (10'000 / a.under)).substr(1);
    while (part.back() == '0') part.pop_back();
    return std::to_string(a.over / a.under) + "." + part;
  }
  const std::string fraction = std::to_string(a.over % a.under) + "/" + std::to_string(a.under);
  return a.over < a.under ? fraction : std::to_string(a.over / a.under) + " " + fraction;
}

class edition_writer {
 public:
  explicit edition_writer(const edition& rules) : rules_(rules), w_(3) {}

  [[nodiscard]] std::string take() {
    w_.begin('{');
    w_.member("format", "jarproof-edition/1");
    w_.member("name", rules_.name);
    w_.member("version", rules_.version);
    w_.member("scope", rules_.scope);
    w_.member("caution", rules_.caution);
    w_.member("metric_jars", rules_.metric_jar_says);
    w_.member("highest_ft", rules_.highest_ft);
    array("sources", rules_.sources, [&](const source& s) {
      w_.member("id", s.id);
      w_.member("title", s.title);
      w_.member("publisher", s.publisher);
      some("edition", s.edition);
      some("url", s.url);
    });
    array("bands", rules_.bands, [&](const band_set& b) {
      w_.member("id", b.id);
      w_.member("title", b.title);
      some("gauge", b.gauge);
      array("steps", b.steps, [&](const altitude_step& s) {
        w_.member("from_ft", s.from_ft);
        some("through_ft", s.through_ft);
        some("psi", s.psi);
        some("says", s.says);
        cited(s.sources);
      });
      cited(b.sources);
    });
    array("jars", rules_.jars, [&](const jar_size& j) {
      w_.member("id", j.id);
      w_.member("title", j.title);
      w_.member("volume_floz", j.volume_floz);
      words("names", j.names);
      some("limit", j.limit);
      cited(j.sources);
    });
    array("methods", rules_.methods, [&](const method& m) { write(m); });
    array("forms", rules_.forms, [&](const form_word& f) {
      w_.member("id", f.id);
      w_.member("says", f.says);
      some("refused_by", f.refused_by);
    });
    array("prepared", rules_.prepared, [&](const prepared_word& p) {
      w_.member("id", p.id);
      w_.member("says", p.says);
      some("denies", p.denies);
      some("refused_by", p.refused_by);
      words("general", p.general);
    });
    words("plain_words", rules_.plain_words);
    words("line_words", rules_.line_words);
    array("processes", rules_.processes, [&](const process& p) { write(p); });
    array("ingredients", rules_.ingredients, [&](const ingredient& i) {
      w_.member("id", i.id);
      words("names", i.names);
      w_.member("class", jarproof::name_of(i.kind));
      some("kind_of", i.kind_of);
      words("traits", i.traits);
      some("vinegar_percent", i.vinegar_percent);
      array("weights", i.weights, [&](const measure_weight& m) {
        some("form", m.form);
        w_.member("unit", m.unit);
        decimal("low_g", m.low_mg);
        decimal("high_g", m.high_mg);
        cited(m.sources);
      });
    });
    array("without_process", rules_.untested_foods, [&](const untested_food& f) {
      w_.member("id", f.id);
      w_.member("title", f.title);
      words("names", f.names);
      w_.member("why", f.why);
      w_.member("instead", f.instead);
      cited(f.sources);
    });
    array("ph", rules_.ph, [&](const ph_entry& e) {
      w_.member("food", e.food);
      decimal("low", e.low_hundredths * 10);
      decimal("high", e.high_hundredths * 10);
      words("explains", e.explains);
      some("says", e.says);
      w_.member("evidence", e.evidence);
      cited(e.sources);
    });
    array("checks", rules_.checks, [&](const check_rule& c) {
      w_.member("id", c.id);
      w_.member("title", c.title);
      w_.member("level", c.level);
      w_.member("outcome", c.outcome);
      w_.member("since", c.since);
      some("says", c.says);
      some("unsaid", c.unsaid);
      w_.member("why", c.why);
      w_.member("fix", c.fix);
      cited(c.sources);
      for (const auto& [key, examples] : {std::pair{"good", c.good}, std::pair{"bad", c.bad}}) {
        array(key, examples, [&](const example& x) {
          w_.member("name", x.name);
          w_.member("plan", x.plan);
          words("expect", x.expect);
        });
      }
    });
    w_.end('}');
    return w_.take() + "\n";
  }

 private:
  const edition& rules_;
  json_writer w_;

  template <class T, class Write>
  void array(std::string_view key, list<T> values, Write&& write_one) {
    if (values.empty()) return;
    w_.key(key);
    w_.begin('[');
    for (const T& v : values) {
      w_.begin('{');
      write_one(v);
      w_.end('}');
    }
    w_.end(']');
  }
  void words(std::string_view key, list<std::string_view> values) {
    if (values.empty()) return;
    w_.key(key);
    w_.begin('[');
    for (const std::string_view v : values) w_.text(v);
    w_.end(']');
  }
  void numbers(std::string_view key, list<int> values) {
    w_.key(key);
    w_.begin('[');
    for (const int v : values) w_.number(v);
    w_.end(']');
  }
  void some(std::string_view key, std::string_view text) {
    if (!text.empty()) w_.member(key, text);
  }
  void some(std::string_view key, int number) {
    if (number != 0) w_.member(key, number);
  }
  void decimal(std::string_view key, int thousandths) {
    w_.key(key);
    w_.raw(decimal_of_thousandths(thousandths));
  }
  void cited(list<citation> sources) {
    array("sources", sources, [&](const citation& c) {
      w_.member("ref", c.ref);
      some("part", c.part);
      some("page", c.page);
    });
  }

  void write(const method& m) {
    w_.member("id", m.id);
    w_.member("title", m.title);
    words("names", m.names);
    w_.key("accepted");
    w_.raw(m.accepted ? "true" : "false");
    some("why", m.why);
    some("instead", m.instead);
    some("vent_min", m.vent_min);
    some("highest_psi", m.highest_psi);
    if (!m.weights_psi.empty()) numbers("weights_psi", m.weights_psi);
    if (!m.weights_kpa.empty()) numbers("weights_kpa", m.weights_kpa);
    some("smallest_canner_quarts", m.smallest_canner_quarts);
    some("smallest_canner_volume_qt", m.smallest_canner_volume_qt);
    some("gauge_error_psi", m.gauge_error_psi);
    some("longest_min", m.longest_min);
    some("sterilize_under_min", m.sterilize_under_min);
    some("sterilize_min", m.sterilize_min);
    cited(m.sources);
  }

  void write(const process& p) {
    w_.member("id", p.id);
    w_.member("title", p.title);
    words("names", p.names);
    words("shared_names", p.shared_names);
    some("covers", p.covers);
    w_.member("class", p.kind == food_class::acid ? "acid" : "low-acid");
    w_.member("recipe", detail::name_of(p.recipe));
    array("tables", p.tables, [&](const table& t) {
      words("forms", t.forms);
      w_.member("pack", t.pack);
      w_.member("style", t.style);
      decimal("headspace_in", t.headspace_thousandths_in);
      array("jars", t.minutes, [&](const jar_minutes& m) {
        w_.member("jar", m.jar);
        numbers("minutes", m.minutes);
      });
      some("dial", t.dial);
      some("weighted", t.weighted);
      some("boiling_water", t.boiling_water);
      cited(t.sources);
      w_.member("evidence", t.evidence);
      w_.member("entries", t.entries);
      w_.key("use");
      w_.raw(t.use ? "true" : "false");
      some("note", t.note);
    });
    array("conditions", p.conditions, [&](const condition& c) {
      w_.member("says", c.says);
      words("packs", c.packs);
      some("prepared", c.prepared);
      some("check", c.check);
      if (c.must_be_said) flag("must_be_said");
      if (c.instead_of_recipe) flag("instead_of_recipe");
    });
    if (p.low_temperature.minutes != 0) {
      w_.key("low_temperature");
      w_.begin('{');
      w_.member("minutes", p.low_temperature.minutes);
      w_.member("least_f", p.low_temperature.least_f);
      w_.member("most_f", p.low_temperature.most_f);
      cited(p.low_temperature.sources);
      w_.end('}');
    }
    array("acids", p.acids, [&](const acid_choice& a) {
      w_.member("acid", a.acid);
      decimal("tsp_per_pint", a.thousandths_tsp_per_pint);
      w_.member("says", a.says);
    });
    const process_needs& n = p.needs;
    w_.key("needs");
    w_.begin('{');
    some("heat_up_min", n.heat_up_min);
    some("water_qt", n.water_qt);
    some("canner_volume_qt", n.canner_volume_qt);
    some("canner_volume_most_qt", n.canner_volume_most_qt);
    some("canner_pints", n.canner_pints);
    some("canner_quarts", n.canner_quarts);
    some("solids_percent", n.solids_percent);
    some("held_most_h", n.held_most_h);
    words("packed_cold", n.packed_cold);
    w_.end('}');
    words("made_of", p.made_of);
    array("recipes", p.recipes, [&](const tested_recipe& r) {
      some("variant", r.variant);
      some("set", r.set);
      some("yield_jar", r.yield_jar);
      some("yield_from", r.yield_from);
      some("yield_through", r.yield_through);
      array("parts", r.parts, [&](const recipe_part& part) {
        words("food", part.foods);
        w_.member("unit", part.unit);
        w_.member("low", printed_text(part.low));
        w_.member("high", printed_text(part.high));
        if (!part.also_unit.empty()) {
          w_.member("also_unit", part.also_unit);
          w_.member("also", printed_text(part.also));
        }
        w_.member("limit", detail::name_of(part.limit));
        w_.member("role", detail::name_of(part.role));
        if (part.anchor) flag("anchor");
        if (part.optional) flag("optional");
        if (part.discarded) flag("discarded");
        some("swap", part.swap);
        some("one_of", part.one_of);
        some("form", part.form);
      });
    });
    some("source_note", p.source_note);
    some("added_by", p.added_by);
    cited(p.sources);
  }
  void flag(std::string_view key) {
    w_.key(key);
    w_.raw("true");
  }
};

/// Columns of the CSV; a line leaves those empty that its kind of record does not have.
inline constexpr std::string_view csv_columns[] = {
    "record", "id",   "food",    "variant",      "forms",   "pack", "jar",  "column",
    "bands",  "psi",  "minutes", "headspace_in", "unit",    "low",  "high", "limit",
    "role",   "text", "sources", "evidence",     "entries", "use"};

class csv_writer {
 public:
  explicit csv_writer(const edition& rules) : rules_(rules) {}

  [[nodiscard]] std::string take() {
    std::array<std::string, std::size(csv_columns)> head;
    for (std::size_t i = 0; i < head.size(); ++i) head[i] = std::string(csv_columns[i]);
    write(head);
    line("edition", rules_.version, {{"text", std::string(rules_.name)}});
    for (const source& s : rules_.sources) {
      line("source", s.id,
           {{"text", std::string(s.publisher) + ": " + std::string(s.title) +
                         (s.edition.empty() ? "" : " (" + std::string(s.edition) + ")") +
                         (s.url.empty() ? "" : " " + std::string(s.url))}});
    }
    for (const process& p : rules_.processes) write_process(p);
    for (const ingredient& i : rules_.ingredients) {
      line("ingredient", i.id,
           {{"text", joined(i.names, "and")}, {"role", std::string(jarproof::name_of(i.kind))}});
      for (const measure_weight& m : i.weights) {
        line("weight", i.id,
             {{"forms", std::string(m.form)},
              {"unit", "g per " + std::string(m.unit)},
              {"low", decimal_of_thousandths(m.low_mg)},
              {"high", decimal_of_thousandths(m.high_mg)},
              {"sources", refs(m.sources)}});
      }
    }
    for (const untested_food& f : rules_.untested_foods) {
      line("without-process", f.id,
           {{"text", std::string(f.why) + " " + std::string(f.instead)},
            {"sources", refs(f.sources)}});
    }
    for (const ph_entry& e : rules_.ph) {
      line("ph", e.food,
           {{"low", decimal_of_thousandths(e.low_hundredths * 10)},
            {"high", decimal_of_thousandths(e.high_hundredths * 10)},
            {"text", std::string(e.says)},
            {"evidence", std::string(e.evidence)},
            {"sources", refs(e.sources)}});
    }
    for (const check_rule& c : rules_.checks) {
      line("check", c.id,
           {{"role", std::string(c.outcome)},
            {"text", std::string(c.title)},
            {"sources", refs(c.sources)}});
    }
    return std::move(out_);
  }

 private:
  const edition& rules_;
  std::string out_;

  using fields = std::vector<std::pair<std::string_view, std::string>>;

  void line(std::string_view record, std::string_view id, const fields& given) {
    std::array<std::string, std::size(csv_columns)> cells;
    cells[0] = std::string(record);
    cells[1] = std::string(id);
    for (const auto& [column, text] : given) {
      for (std::size_t i = 0; i < cells.size(); ++i) {
        if (csv_columns[i] == column) cells[i] = text;
      }
    }
    write(cells);
  }

  void write(const std::array<std::string, std::size(csv_columns)>& cells) {
    for (std::size_t i = 0; i < cells.size(); ++i) {
      if (i > 0) out_ += ',';
      const std::string& c = cells[i];
      if (c.find_first_of(",\"\n\r") == std::string::npos) {
        out_ += c;
        continue;
      }
      out_ += '"';
      for (const char ch : c) out_ += ch == '"' ? std::string("\"\"") : std::string(1, ch);
      out_ += '"';
    }
    out_ += "\r\n";  // RFC 4180, section 2
  }

  [[nodiscard]] static std::string refs(list<citation> sources) {
    std::string out;
    for (const citation& c : sources) {
      out += (out.empty() ? "" : "; ") + std::string(c.ref);
      if (!c.page.empty()) out += " p. " + std::string(c.page);
    }
    return out;
  }

  [[nodiscard]] static std::string joined_by(list<std::string_view> words, char by) {
    std::string out;
    for (const std::string_view w : words)
      out += (out.empty() ? "" : std::string(1, by)) + std::string(w);
    return out;
  }

  void write_process(const process& p) {
    line("food", p.id,
         {{"role", p.kind == food_class::acid ? "acid" : "low-acid"},
          {"limit", std::string(name_of(p.recipe))},
          {"text", std::string(p.title)},
          {"sources", refs(p.sources)}});
    for (const table& t : p.tables) {
      for (const auto& [column, id] : {std::pair{std::string_view("dial"), t.dial},
                                       {std::string_view("weighted"), t.weighted},
                                       {std::string_view("boiling-water"), t.boiling_water}}) {
        const band_set* bands = find(rules_.bands, id);
        if (bands == nullptr) continue;
        for (const jar_minutes& m : t.minutes) write_row(p, t, column, *bands, m);
      }
    }
    for (const condition& c : p.conditions) {
      line("condition", p.id,
           {{"food", std::string(p.id)},
            {"pack", joined_by(c.packs, '/')},
            {"limit", c.must_be_said ? "must be said" : ""},
            {"text", std::string(c.says)}});
    }
    for (const acid_choice& a : p.acids) {
      line("acid", p.id,
           {{"food", std::string(a.acid)},
            {"unit", "tsp per pint"},
            {"low", decimal_of_thousandths(a.thousandths_tsp_per_pint)},
            {"text", std::string(a.says)}});
    }
    for (const tested_recipe& r : p.recipes) {
      for (const recipe_part& part : r.parts) {
        line("recipe-part", p.id,
             {{"food", joined_by(part.foods, '|')},
              {"variant", std::string(r.variant)},
              {"forms", std::string(part.form)},
              {"unit", std::string(part.unit)},
              {"low", printed_text(part.low)},
              {"high", printed_text(part.high)},
              {"limit", std::string(name_of(part.limit))},
              {"role", std::string(name_of(part.role))},
              {"text", std::string(part.anchor      ? "main food"
                                   : part.discarded ? "poured off"
                                   : part.optional  ? "optional"
                                                    : "")}});
      }
    }
  }

  void write_row(const process& p, const table& t, std::string_view column, const band_set& bands,
                 const jar_minutes& m) {
    std::string feet;
    std::string psi;
    std::string minutes;
    for (std::size_t i = 0; i < bands.steps.size(); ++i) {
      const altitude_step& s = bands.steps[i];
      const std::string between = i == 0 ? "" : "/";
      feet += between + std::to_string(s.from_ft) + "-" +
              (s.through_ft == 0 ? "" : std::to_string(s.through_ft));
      if (s.psi != 0) psi += between + std::to_string(s.psi);
    }
    for (std::size_t i = 0; i < m.minutes.size(); ++i)
      minutes += (i == 0 ? "" : "/") + std::to_string(m.minutes[i]);
    line("row", p.id,
         {{"food", std::string(p.id)},
          {"forms", joined_by(t.forms, '|')},
          {"pack", std::string(t.pack)},
          {"jar", std::string(m.jar)},
          {"column", std::string(column)},
          {"bands", feet},
          {"psi", psi},
          {"minutes", minutes},
          {"headspace_in", decimal_of_thousandths(t.headspace_thousandths_in)},
          {"text", std::string(t.note)},
          {"sources", refs(t.sources.empty() ? p.sources : t.sources)},
          {"evidence", std::string(t.evidence)},
          {"entries", std::to_string(t.entries)},
          {"use", t.use ? "yes" : "no"}});
  }
};

}  // namespace detail

/// The whole edition as one JSON object.
[[nodiscard]] inline std::string edition_json(const edition& rules) {
  return detail::edition_writer(rules).take();
}

/// The edition as CSV with a header; `record` is `edition`, `source`, `food`, `row`, `condition`,
/// `acid`, `recipe-part`, `ingredient`, `weight`, `without-process`, `ph` or `check`.
[[nodiscard]] inline std::string edition_csv(const edition& rules) {
  return detail::csv_writer(rules).take();
}

}  // namespace jarproof
