// Writes an edition as one JSON object (docs/edition-schema.json).
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <iterator>
#include <string>
#include <string_view>
#include <utility>

#include "jarproof/detail/export_parts.hpp"
#include "jarproof/detail/export_words.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/json.hpp"
#include "jarproof/format/numbers.hpp"

namespace jarproof::detail {

class edition_writer : private export_parts {
 public:
  explicit edition_writer(const edition& rules) : export_parts(3), rules_(rules) {}

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
    words("heading_words", rules_.heading_words);
    words("acid_words", rules_.acid_words);
    words("cut_words", rules_.cut_words);
    words("line_words", rules_.line_words);
    array("telling_words", rules_.telling_words, [&](const telling_word& t) {
      w_.member("id", t.id);
      w_.member("check", t.check);
      words("unless", t.unless);
    });
    array("step_words", rules_.step_words, [&](const telling_word& t) {
      w_.member("id", t.id);
      w_.member("check", t.check);
      words("unless", t.unless);
      words("beside", t.beside);
      some("pack", t.pack);
    });
    array("spellings", rules_.spellings, [&](const spelling& s) {
      w_.member("id", s.id);
      w_.member("meant", s.meant);
    });
    write(rules_.phrases);
    array("processes", rules_.processes, [&](const process& p) { write(p); });
    array("ingredients", rules_.ingredients, [&](const ingredient& i) {
      w_.member("id", i.id);
      words("names", i.names);
      w_.member("class", jarproof::name_of(i.kind));
      some("kind_of", i.kind_of);
      words("traits", i.traits);
      some("vinegar_percent", i.vinegar_percent);
      words("can_as", i.can_as);
      array("weights", i.weights, [&](const measure_weight& m) {
        some("form", m.form);
        w_.member("unit", m.unit);
        decimal("low_g", m.low_mg);
        decimal("high_g", m.high_mg);
        cited(m.sources);
      });
    });
    array("seasonings", rules_.seasonings, [&](const seasoning_limit& s) {
      w_.member("id", s.id);
      w_.member("says", s.says);
      some("trait", s.trait);
      words("foods", s.foods);
      w_.member("unit", s.unit);
      w_.member("per_quart", printed_text(s.per_quart));
      w_.member("evidence", s.evidence);
    });
    array("without_process", rules_.untested_foods, [&](const untested_food& f) {
      w_.member("id", f.id);
      w_.member("title", f.title);
      words("names", f.names);
      w_.member("why", f.why);
      w_.member("instead", f.instead);
      cited(f.sources);
    });
    array("left_out", rules_.left_outs, [&](const left_out& l) {
      w_.member("id", l.id);
      words("traits", l.traits);
      words("foods", l.foods);
      some("leave_out", l.leave_out);
      some("at_serving", l.at_serving);
      some("freezer", l.freezer);
      some("evidence", l.evidence);
      cited(l.sources);
    });
    array("way_steps", rules_.way_steps, [&](const way_step& s) {
      w_.member("id", s.id);
      w_.member("way", s.way);
      words("processes", s.processes);
      words("if_any", s.if_any);
      w_.member("says", s.says);
      some("evidence", s.evidence);
      cited(s.sources);
    });
    array("dry_yields", rules_.dry_yields, [&](const dry_yield& y) {
      w_.member("id", y.id);
      words("traits", y.traits);
      decimal("lb", y.thousandths_lb);
      w_.member("jar", y.jar);
      w_.member("jars", y.jars);
      cited(y.sources);
    });
    write_run(rules_.run, rules_.after);
    write(rules_.day);
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
      some("log_says", c.log_says);
      some("log_fix", c.log_fix);
      some("log_level", c.log_level);
      some("log_outcome", c.log_outcome);
      cited(c.sources);
      for (const auto& [key, examples] : {std::pair{"good", c.good}, std::pair{"bad", c.bad}}) {
        array(key, examples, [&](const example& x) {
          w_.member("name", x.name);
          w_.member("plan", x.plan);
          some("log", x.log);
          words("expect", x.expect);
        });
      }
    });
    w_.end('}');
    return w_.take() + "\n";
  }

 private:
  const edition& rules_;

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

  void write(const phrase_words& p) {
    const auto filled = [&](const phrase_list& l) { return !(p.*l.words).empty(); };
    if (std::none_of(std::begin(phrase_lists), std::end(phrase_lists), filled)) return;
    w_.key("phrases");
    w_.begin('{');
    for (const phrase_list& l : phrase_lists) words(l.key, p.*l.words);
    w_.end('}');
  }

  void write(const day_rules& d) {
    if (d.minutes.empty() && d.numbers.empty() && d.produce.empty() && d.texts.empty()) return;
    w_.key("day");
    w_.begin('{');
    array("minutes", d.minutes, [&](const day_minutes& m) {
      w_.member("id", m.id);
      w_.member("stage", m.stage);
      words("methods", m.methods);
      w_.member("from", m.from_min);
      w_.member("through", m.through_min);
      w_.member("use", m.use_min);
      w_.member("says", m.says);
      ground(m.evidence, m.sources);
    });
    array("numbers", d.numbers, [&](const day_number& n) {
      w_.member("id", n.id);
      decimal("value", n.thousandths);
      w_.member("unit", n.unit);
      w_.member("says", n.says);
      ground(n.evidence, n.sources);
    });
    array("produce", d.produce, [&](const day_produce& p) {
      w_.member("id", p.id);
      words("names", p.names);
      words("processes", p.processes);
      w_.member("jar", p.jar);
      decimal("pounds_from", p.from_thousandths_lb);
      decimal("pounds_through", p.through_thousandths_lb);
      some("bushel_lb", p.bushel_lb);
      some("bushel_from_qt", p.bushel_from_qt);
      some("bushel_through_qt", p.bushel_through_qt);
      ground(p.evidence, p.sources);
    });
    array("texts", d.texts, [&](const day_text& t) {
      w_.member("id", t.id);
      w_.member("part", t.part);
      some("when", t.when);
      words("methods", t.methods);
      words("packs", t.packs);
      words("gauges", t.gauges);
      w_.member("says", t.says);
      ground(t.evidence, t.sources);
    });
    w_.end('}');
  }
  void ground(std::string_view evidence, list<citation> sources) {
    some("evidence", evidence);
    cited(sources);
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
      words("if_any", c.if_any);
      words("said_by", c.said_by);
      if (c.own_recipe) flag("own_recipe");
      if (c.fills) flag("fills");
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
    some("holds_percent", n.holds_percent);
    some("held_most_h", n.held_most_h);
    words("packed_cold", n.packed_cold);
    w_.end('}');
    words("made_of", p.made_of);
    words("holds", p.holds);
    words("liquids", p.liquids);
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
};

}  // namespace jarproof::detail
