// SPDX-License-Identifier: MIT
#include <initializer_list>
#include <map>
#include <string>
#include <string_view>

#include "jarproof/rules.hpp"

namespace jarproof {
namespace {

/// Turns an edition into constexpr arrays. Equal arrays are written once.
class writer {
 public:
  [[nodiscard]] std::string write(const edition& e) {
    const std::string whole = braces({value(e.name),
                                      value(e.version),
                                      value(e.scope),
                                      value(e.caution),
                                      value(e.metric_jar_says),
                                      value(e.highest_ft),
                                      array("source", e.sources),
                                      array("band_set", e.bands),
                                      array("jar_size", e.jars),
                                      array("method", e.methods),
                                      array("form_word", e.forms),
                                      array("prepared_word", e.prepared),
                                      words(e.plain_words),
                                      words(e.heading_words),
                                      words(e.acid_words),
                                      words(e.cut_words),
                                      words(e.line_words),
                                      array("telling_word", e.telling_words),
                                      array("telling_word", e.step_words),
                                      array("spelling", e.spellings),
                                      value(e.phrases),
                                      array("process", e.processes),
                                      array("ingredient", e.ingredients),
                                      array("ingredient_name", e.ingredient_names),
                                      array("seasoning_limit", e.seasonings),
                                      array("untested_food", e.untested_foods),
                                      array("ph_entry", e.ph),
                                      array("check_rule", e.checks),
                                      array("left_out", e.left_outs),
                                      array("way_step", e.way_steps),
                                      array("dry_yield", e.dry_yields),
                                      value(e.run),
                                      value(e.after),
                                      value(e.day)});
    std::string out = "// Generated from the rule folder, edition " + std::string(e.version) +
                      ", by `jarproof rules --embed rules`. Do not edit.\n"
                      "// SPDX-License-Identifier: MIT\n"
                      "#include \"jarproof/builtin.hpp\"\n\n"
                      "namespace jarproof {\nnamespace {\n\nusing sv = std::string_view;\n"
                      "using namespace std::string_view_literals;\n\n";
    out += arrays_;
    out += "\nconstexpr edition data = " + whole + ";\n\n}  // namespace\n\n";
    out +=
        "const edition& builtin_edition() noexcept { return data; }\n\n}  // namespace jarproof\n";
    return out;
  }

 private:
  std::string arrays_;
  std::map<std::string, std::string> names_;

  /// A list in braces, because its parts are then evaluated from left to right: arrays get their
  /// names as they are written, and every compiler must write the same text.
  [[nodiscard]] static std::string braces(std::initializer_list<std::string> fields) {
    std::string out = "{";
    for (const std::string& field : fields) out += (out.size() > 1 ? ", " : "") + field;
    return out + "}";
  }

  [[nodiscard]] static std::string value(std::string_view text) {
    std::string out = "\"";
    for (const char c : text) {
      if (c == '\n') {
        out += "\\n";
      } else if (static_cast<unsigned char>(c) < 0x20) {
        constexpr std::string_view octal = "01234567";
        const auto byte = static_cast<unsigned char>(c);
        out += {'\\', '0', octal[byte >> 3], octal[byte & 7]};
      } else {
        if (c == '"' || c == '\\') out += '\\';
        out += c;
      }
    }
    // With its length: to count the letters of all names is more than a compiler may do.
    return out + "\"sv";
  }
  [[nodiscard]] static std::string value(int number) { return std::to_string(number); }
  [[nodiscard]] static std::string value(bool truth) { return truth ? "true" : "false"; }
  [[nodiscard]] static std::string value(food_class kind) {
    return kind == food_class::acid ? "food_class::acid" : "food_class::low_acid";
  }
  [[nodiscard]] static std::string value(recipe_kind kind) {
    if (kind == recipe_kind::plain) return "recipe_kind::plain";
    return kind == recipe_kind::frame ? "recipe_kind::frame" : "recipe_kind::fixed";
  }
  [[nodiscard]] static std::string value(const citation& c) {
    return braces({value(c.ref), value(c.part), value(c.page)});
  }
  [[nodiscard]] static std::string value(const source& s) {
    return braces(
        {value(s.id), value(s.title), value(s.publisher), value(s.edition), value(s.url)});
  }
  [[nodiscard]] std::string value(const altitude_step& s) {
    return braces(
        {value(s.from_ft), value(s.through_ft), value(s.psi), value(s.says), cited(s.sources)});
  }
  [[nodiscard]] std::string value(const band_set& b) {
    return braces({value(b.id), value(b.title), value(b.gauge), array("altitude_step", b.steps),
                   cited(b.sources)});
  }
  [[nodiscard]] std::string value(const jar_size& j) {
    return braces({value(j.id), value(j.title), value(j.volume_floz), words(j.names),
                   value(j.limit), cited(j.sources)});
  }
  [[nodiscard]] std::string value(const method& m) {
    return braces({value(m.id), value(m.title), words(m.names), value(m.accepted), value(m.why),
                   value(m.instead), value(m.vent_min), value(m.highest_psi),
                   array("int", m.weights_psi), array("int", m.weights_kpa),
                   value(m.smallest_canner_quarts), value(m.smallest_canner_volume_qt),
                   value(m.gauge_error_psi), value(m.longest_min), value(m.sterilize_under_min),
                   value(m.sterilize_min), cited(m.sources)});
  }
  [[nodiscard]] static std::string value(const form_word& f) {
    return braces({value(f.id), value(f.says), value(f.refused_by)});
  }
  [[nodiscard]] std::string value(const prepared_word& p) {
    return braces(
        {value(p.id), value(p.says), value(p.denies), value(p.refused_by), words(p.general)});
  }
  [[nodiscard]] std::string value(const jar_minutes& m) {
    return braces({value(m.jar), array("int", m.minutes)});
  }
  [[nodiscard]] std::string value(const table& t) {
    return braces({words(t.forms), value(t.pack), value(t.style), value(t.headspace_thousandths_in),
                   array("jar_minutes", t.minutes), value(t.dial), value(t.weighted),
                   value(t.boiling_water), cited(t.sources), value(t.evidence), value(t.entries),
                   value(t.use), value(t.note)});
  }
  [[nodiscard]] std::string value(const condition& c) {
    return braces({value(c.says), words(c.packs), value(c.prepared), value(c.check),
                   value(c.must_be_said), value(c.instead_of_recipe), words(c.if_any),
                   words(c.said_by), value(c.own_recipe), value(c.fills)});
  }
  [[nodiscard]] static std::string value(const acid_choice& a) {
    return braces({value(a.acid), value(a.thousandths_tsp_per_pint), value(a.says)});
  }
  [[nodiscard]] std::string value(const process_needs& n) {
    return braces({value(n.heat_up_min), value(n.water_qt), value(n.canner_volume_qt),
                   value(n.canner_volume_most_qt), value(n.canner_pints), value(n.canner_quarts),
                   value(n.solids_percent), value(n.holds_percent), value(n.held_most_h),
                   words(n.packed_cold)});
  }
  [[nodiscard]] std::string value(const process& p) {
    return braces({value(p.id), value(p.title), words(p.names), words(p.shared_names),
                   value(p.covers), value(p.kind), value(p.recipe), array("table", p.tables),
                   array("condition", p.conditions), value(p.low_temperature),
                   array("acid_choice", p.acids), value(p.needs), words(p.made_of), words(p.holds),
                   words(p.liquids), array("tested_recipe", p.recipes), value(p.source_note),
                   value(p.added_by), cited(p.sources)});
  }
  [[nodiscard]] std::string value(const low_temperature_process& l) {
    return braces({value(l.minutes), value(l.least_f), value(l.most_f), cited(l.sources)});
  }
  [[nodiscard]] static std::string value(printed_amount a) {
    return braces({value(a.over), value(a.under)});
  }
  [[nodiscard]] static std::string value(part_limit l) {
    constexpr const char* names[] = {"least", "most", "between", "free"};
    return std::string("part_limit::") + names[static_cast<int>(l)];
  }
  [[nodiscard]] static std::string value(part_role r) {
    constexpr const char* names[] = {"acid_food", "low_acid", "acid",   "salt", "sugar",
                                     "spice",     "water",    "starch", "fat",  "other"};
    return std::string("part_role::") + names[static_cast<int>(r)];
  }
  [[nodiscard]] std::string value(const recipe_part& p) {
    return braces({words(p.foods), value(p.unit), value(p.low), value(p.high), value(p.also_unit),
                   value(p.also), value(p.limit), value(p.role), value(p.anchor), value(p.optional),
                   value(p.discarded), value(p.swap), value(p.one_of), value(p.form)});
  }
  [[nodiscard]] std::string value(const tested_recipe& r) {
    return braces({value(r.variant), value(r.set), value(r.yield_jar), value(r.yield_from),
                   value(r.yield_through), array("recipe_part", r.parts)});
  }
  [[nodiscard]] static std::string value(acidity a) {
    constexpr const char* names[] = {"acid", "low_acid", "borderline", "neutral"};
    return std::string("acidity::") + names[static_cast<int>(a)];
  }
  [[nodiscard]] std::string value(const measure_weight& w) {
    return braces(
        {value(w.form), value(w.unit), value(w.low_mg), value(w.high_mg), cited(w.sources)});
  }
  [[nodiscard]] std::string value(const ingredient& i) {
    return braces({value(i.id), words(i.names), value(i.kind), value(i.kind_of), words(i.traits),
                   value(i.vinegar_percent), words(i.can_as), array("measure_weight", i.weights)});
  }
  [[nodiscard]] static std::string value(const ingredient_name& n) {
    return braces({value(n.name), value(n.at)});
  }
  [[nodiscard]] std::string value(const seasoning_limit& s) {
    return braces({value(s.id), value(s.says), value(s.trait), words(s.foods), value(s.unit),
                   value(s.per_quart), value(s.evidence)});
  }
  [[nodiscard]] std::string value(const telling_word& t) {
    return braces({value(t.id), value(t.check), words(t.unless), words(t.beside), value(t.pack)});
  }
  [[nodiscard]] static std::string value(const spelling& s) {
    return braces({value(s.id), value(s.meant)});
  }
  [[nodiscard]] std::string value(const phrase_words& p) {
    std::string out;
    for (const phrase_list& l : phrase_lists) out += (out.empty() ? "{" : ", ") + words(p.*l.words);
    return out + "}";
  }
  [[nodiscard]] std::string value(const untested_food& f) {
    return braces({value(f.id), value(f.title), words(f.names), value(f.why), value(f.instead),
                   cited(f.sources)});
  }
  [[nodiscard]] std::string value(const left_out& l) {
    return braces({value(l.id), words(l.traits), words(l.foods), value(l.leave_out),
                   value(l.at_serving), value(l.freezer), value(l.evidence), cited(l.sources)});
  }
  [[nodiscard]] std::string value(const way_step& s) {
    return braces({value(s.id), value(s.way), words(s.processes), words(s.if_any), value(s.says),
                   value(s.evidence), cited(s.sources)});
  }
  [[nodiscard]] std::string value(const dry_yield& y) {
    return braces({value(y.id), words(y.traits), std::to_string(y.thousandths_lb), value(y.jar),
                   std::to_string(y.jars), cited(y.sources)});
  }
  [[nodiscard]] std::string value(const run_limit& l) {
    return braces(
        {value(l.id), value(l.value), value(l.says), value(l.evidence), cited(l.sources)});
  }
  [[nodiscard]] std::string value(const run_step& s) {
    return braces({value(s.id), value(s.says), value(s.evidence), cited(s.sources)});
  }
  [[nodiscard]] static std::string value(const boiling_point& b) {
    return braces({value(b.altitude_ft), value(b.thousandths_f)});
  }
  [[nodiscard]] std::string value(const run_rules& r) {
    return braces({array("run_limit", r.limits), array("run_step", r.steps),
                   array("boiling_point", r.boiling), value(r.boiling_evidence),
                   cited(r.boiling_sources)});
  }
  [[nodiscard]] std::string value(const after_rules& r) {
    return braces({array("run_limit", r.limits), array("run_step", r.steps),
                   words(r.not_reprocessed), value(r.not_reprocessed_evidence),
                   cited(r.not_reprocessed_sources)});
  }
  [[nodiscard]] std::string value(const day_minutes& m) {
    return braces({value(m.id), value(m.stage), words(m.methods), value(m.from_min),
                   value(m.through_min), value(m.use_min), value(m.says), value(m.evidence),
                   cited(m.sources)});
  }
  [[nodiscard]] std::string value(const day_number& n) {
    return braces({value(n.id), value(n.thousandths), value(n.unit), value(n.says),
                   value(n.evidence), cited(n.sources)});
  }
  [[nodiscard]] std::string value(const day_produce& p) {
    return braces({value(p.id), words(p.names), words(p.processes), value(p.jar),
                   value(p.from_thousandths_lb), value(p.through_thousandths_lb),
                   value(p.bushel_lb), value(p.bushel_from_qt), value(p.bushel_through_qt),
                   value(p.evidence), cited(p.sources)});
  }
  [[nodiscard]] std::string value(const day_text& t) {
    return braces({value(t.id), value(t.part), value(t.when), words(t.methods), words(t.packs),
                   words(t.gauges), value(t.says), value(t.evidence), cited(t.sources)});
  }
  [[nodiscard]] std::string value(const day_rules& d) {
    return braces({array("day_minutes", d.minutes), array("day_number", d.numbers),
                   array("day_produce", d.produce), array("day_text", d.texts)});
  }
  [[nodiscard]] std::string value(const ph_entry& e) {
    return braces({value(e.food), words(e.explains), value(e.low_hundredths),
                   value(e.high_hundredths), value(e.says), value(e.evidence), cited(e.sources)});
  }
  [[nodiscard]] std::string value(const example& x) {
    return braces({value(x.name), value(x.plan), value(x.log), words(x.expect)});
  }
  [[nodiscard]] std::string value(const check_rule& c) {
    return braces({value(c.id), value(c.title), value(c.level), value(c.outcome), value(c.since),
                   value(c.says), value(c.unsaid), value(c.why), value(c.fix), value(c.log_says),
                   value(c.log_fix), value(c.log_level), value(c.log_outcome), cited(c.sources),
                   array("example", c.good), array("example", c.bad)});
  }

  [[nodiscard]] std::string words(list<std::string_view> w) { return array("sv", w); }
  [[nodiscard]] std::string cited(list<citation> c) { return array("citation", c); }

  template <class T>
  [[nodiscard]] std::string array(std::string_view type, list<T> values) {
    if (values.empty()) return "{}";
    std::string text = "constexpr " + std::string(type) + " @[] = {";
    bool first = true;
    for (const T& v : values) {
      text += (first ? "" : ",\n    ") + value(v);
      first = false;
    }
    text += "};\n";
    const auto [at, is_new] = names_.try_emplace(text, "a" + std::to_string(names_.size()));
    if (is_new) arrays_ += text.replace(text.find('@'), 1, at->second);
    return at->second;
  }
};

}  // namespace

std::string embedded_source(const edition& rules) { return writer().write(rules); }

}  // namespace jarproof
