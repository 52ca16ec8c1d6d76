// Writes an edition as CSV (RFC 4180).
// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/export_words.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/json.hpp"
#include "jarproof/format/numbers.hpp"

namespace jarproof::detail {

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

}  // namespace jarproof::detail
