// From a process file to its tables and conditions.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <set>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

#include "jarproof/quantity.hpp"
#include "recipe_entries.hpp"

namespace jarproof {

/// What an entry refers to is checked when all files are read.
class process_entries : public recipe_entries {
 protected:
  static constexpr std::string_view unknown_gauge = "unknown";  // reported where it stands

  void same_as_file(const node& root, std::string_view id, const std::string& stem_of_file) {
    if (!id.empty() && id != stem_of_file) {
      fault(*find(root, "id"), "the id `" + std::string(id) + "` is not the name of its file",
            "write `id: " + stem_of_file + "` or rename the file");
    }
  }

  [[nodiscard]] process read_process(const node& root, const std::string& stem_of_file) {
    only(root, {"id", "title", "names", "shared_names", "covers", "class", "recipe", "tables",
                "conditions", "low_temperature", "acids", "needs", "made_of", "holds", "liquids",
                "recipes", "source_note", "sources"});
    process p;
    p.id = text(root, "id");
    same_as_file(root, p.id, stem_of_file);
    p.title = text(root, "title");
    p.names = words(root, "names");
    p.shared_names = words(root, "shared_names");
    p.covers = text(root, "covers", false);
    p.kind = one_of(root, "class", {"acid", "low-acid"}) == "acid" ? food_class::acid
                                                                   : food_class::low_acid;
    const std::string_view recipe = one_of(root, "recipe", {"plain", "frame", "fixed"});
    p.recipe = recipe == "fixed"   ? recipe_kind::fixed
               : recipe == "frame" ? recipe_kind::frame
                                   : recipe_kind::plain;
    p.sources = citations(root, true);
    std::vector<table> tables;
    for (const node& n : items(root, "tables", true)) tables.push_back(read_table(n));
    same_cell_twice(root, tables);
    p.tables = storage_.keep(std::move(tables));
    std::vector<condition> conditions;
    for (const node& n : items(root, "conditions", false)) conditions.push_back(read_condition(n));
    p.conditions = storage_.keep(std::move(conditions));
    std::vector<acid_choice> acids;
    for (const node& n : items(root, "acids", false)) {
      only(n, {"acid", "tsp_per_pint", "says"});
      acids.push_back({reference(n, "acid", &edition::ingredients, true),
                       thousandths(n, "tsp_per_pint", 48), text(n, "says")});
    }
    p.acids = storage_.keep(std::move(acids));
    if (const node* low = value(root, "low_temperature", false)) {
      only(*low, {"minutes", "least_f", "most_f", "sources"});
      p.low_temperature = {number(*low, "minutes", 1, 120), number(*low, "least_f", 150, 211),
                           number(*low, "most_f", 150, 211), citations(*low, true)};
      if (p.low_temperature.most_f != 0 && p.low_temperature.most_f < p.low_temperature.least_f)
        fault(*low, "the highest temperature is below the lowest", "swap the two");
      if (p.kind == food_class::low_acid)
        fault(*low, "low-acid food has no low-temperature process", "drop it, or correct `class`");
    }
    p.recipes = read_recipes(root);
    if (!p.recipes.empty() && !recipe.empty() && p.recipe != recipe_kind::fixed)
      fault(root, "`recipes` belongs to `recipe: fixed`", "change `recipe`, or drop `recipes`");
    if (const node* needs = find(root, "needs")) {
      only(*needs,
           {"heat_up_min", "water_qt", "canner_volume_qt", "canner_volume_most_qt", "canner_pints",
            "canner_quarts", "solids_percent", "holds_percent", "held_most_h", "packed_cold"});
      const auto at_most = [&](std::string_view key, int most) {
        return number(*needs, key, 1, most, false);
      };
      p.needs = {at_most("heat_up_min", 120),     at_most("water_qt", 30),
                 at_most("canner_volume_qt", 60), at_most("canner_volume_most_qt", 60),
                 at_most("canner_pints", 40),     at_most("canner_quarts", 20),
                 at_most("solids_percent", 100),  at_most("holds_percent", 100),
                 at_most("held_most_h", 72),      packs(*needs, "packed_cold")};
      const process_needs& n = p.needs;
      const bool range = n.canner_volume_most_qt > 0 || n.canner_quarts > 0 || n.canner_pints > 0;
      if (range && find(*needs, "canner_volume_qt") == nullptr) {
        fault(*needs, "a canner has an upper end or jars but no volume", "add `canner_volume_qt`");
      } else if (n.canner_volume_most_qt > 0 && n.canner_volume_most_qt < n.canner_volume_qt) {
        fault(*needs, "the largest canner is smaller than the smallest", "swap the two volumes");
      }
    }
    p.source_note = text(root, "source_note", extends_);
    p.made_of = words(root, "made_of");
    if (const node* made_of = find(root, "made_of")) {
      for (const node& f : made_of->items) refer(f, storage_.keep(f.text), &edition::processes);
    }
    p.holds = words(root, "holds");
    if (const node* holds = find(root, "holds")) {
      for (const node& i : holds->items) refer(i, storage_.keep(i.text), &edition::ingredients);
    }
    p.liquids = words(root, "liquids");
    if (const node* liquids = find(root, "liquids")) {
      for (const node& i : liquids->items) refer(i, storage_.keep(i.text), &edition::ingredients);
    }
    if (!recipe.empty() && p.made_of.empty() == (p.recipe == recipe_kind::frame)) {
      fault(root, "`made_of` belongs to `recipe: frame`, and to that alone",
            "list the ids of the foods that may go in, or change `recipe`");
    }
    return p;
  }

  [[nodiscard]] table read_table(const node& n) {
    only(n, {"forms", "pack", "style", "headspace_in", "minutes", "dial", "weighted",
             "boiling_water", "sources", "evidence", "entries", "use", "note"});
    table t;
    t.forms = words(n, "forms", true);
    if (const node* forms = find(n, "forms")) {
      for (const node& f : forms->items) refer(f, storage_.keep(f.text), &edition::forms);
    }
    t.pack = one_of(n, "pack", {"raw", "hot"});
    t.style = text(n, "style");
    t.headspace_thousandths_in = thousandths(n, "headspace_in", 3);
    const node* minutes = value(n, "minutes", true);
    std::vector<jar_minutes> jars;
    if (minutes != nullptr) {
      if (minutes->kind != node_kind::map || minutes->members.empty())
        fault(*minutes, "`minutes` names jars", "write `minutes: {pint: 20, quart: 25}`");
      for (const member& m : minutes->members) {
        node key;
        key.line = m.line;
        key.column = m.column;
        std::vector<int> each;
        for (const node& one : m.value.items) each.push_back(number_of(one, 1, 240));
        if (m.value.kind != node_kind::sequence) each.push_back(number_of(m.value, 1, 240));
        jars.push_back({storage_.keep(m.key), storage_.keep(std::move(each))});
        afterwards([this, key, id = jars.back().jar] {
          if (unread_.count("jars.yaml") == 0 && find(edition_.jars, id) == nullptr)
            fault(key, "`" + std::string(id) + "` is no jar of jars.yaml", "use the id of a jar");
        });
      }
    }
    t.minutes = storage_.keep(std::move(jars));
    afterwards([this, &n, listed = t.minutes] { larger_jar_longer(n, listed); });
    t.dial = column(n, "dial", "dial");
    t.weighted = column(n, "weighted", "weighted");
    t.boiling_water = column(n, "boiling_water", "");
    const bool gauges = !t.dial.empty() || !t.weighted.empty();
    if (!gauges && t.boiling_water.empty()) {
      fault(n, "the table has no column",
            "add `dial`, `weighted` or `boiling_water` with the id of a band set");
    } else if (gauges && !t.boiling_water.empty()) {
      fault(n, "boiling water and pressure have times of their own", "make them two tables");
    }
    if (minutes != nullptr) {
      for (const member& m : minutes->members) afterwards([this, &m, t] { times_fit(m.value, t); });
    }
    t.sources = citations(n, false);
    t.evidence = one_of(n, "evidence", {"seen", "seen-part", "memory"});
    t.entries = number(n, "entries", 1, 9);
    t.use = truth(n, "use");
    t.note = text(n, "note", false);
    if (t.evidence == "memory" && t.use) {
      fault(n, "a row from memory is not to be used", "write `use: no`, or read it and say `seen`");
    }
    const node* use = find(n, "use");
    if (use != nullptr && (use->text == "no" || use->text == "false") && t.note.empty())
      fault(n, "a table that is not to be used says why", "add `note: ...`");
    return t;
  }

  /// One time for each band in boiling water, one time alone under pressure.
  void times_fit(const node& given, const table& t) {
    const std::size_t count = given.kind == node_kind::sequence ? given.items.size() : 1;
    if (t.boiling_water.empty()) {
      if (count != 1)
        fault(given, "under pressure the time does not change with altitude", "write one number");
      return;
    }
    const band_set* bands = find(edition_.bands, t.boiling_water);
    if (bands == nullptr || bands->steps.empty()) return;  // reported already
    if (count != bands->steps.size()) {
      fault(given,
            "`" + std::string(bands->id) + "` has " + std::to_string(bands->steps.size()) +
                " bands and this is " + std::to_string(count) + " time" + (count == 1 ? "" : "s"),
            "write one time for each band, such as [10, 15, 20]");
      return;
    }
    for (std::size_t i = 1; i < given.items.size(); ++i) {
      const auto minutes = [](const node& n) {
        return n.text.size() > 3 ? 0 : std::atoi(n.text.c_str());  // others are reported already
      };
      if (minutes(given.items[i]) != 0 && minutes(given.items[i]) < minutes(given.items[i - 1]))
        fault(given.items[i], "a higher band takes less time than the one below it",
              "check both against the source");
    }
  }

  /// A larger jar never takes less time: the two were swapped when they were copied.
  void larger_jar_longer(const node& at, list<jar_minutes> listed) {
    for (const jar_minutes& small : listed) {
      for (const jar_minutes& large : listed) {
        const jar_size* a = find(edition_.jars, small.jar);
        const jar_size* b = find(edition_.jars, large.jar);
        if (a == nullptr || b == nullptr || a->volume_floz >= b->volume_floz) continue;
        if (a->volume_floz == 0) continue;  // reported already
        bool less = false;
        for (std::size_t i = 0; i < std::min(small.minutes.size(), large.minutes.size()); ++i) {
          less = less || (large.minutes[i] != 0 && small.minutes[i] > large.minutes[i]);
        }
        if (!less) continue;
        fault(at,
              "`" + std::string(large.jar) + "` takes less time than `" + std::string(small.jar) +
                  "`",
              "check both against the source");
      }
    }
  }

  [[nodiscard]] std::string_view column(const node& map, std::string_view key,
                                        std::string_view gauge) {
    const node* n = find(map, key);
    if (n == nullptr) return {};
    const std::string_view id = text_of(*n);
    refer(*n, id, &edition::bands);
    afterwards([this, n, id, gauge] {
      const band_set* bands = find(edition_.bands, id);
      if (bands == nullptr || bands->gauge == gauge || bands->gauge == unknown_gauge) return;
      fault(*n,
            "`" + std::string(id) + "` is no band set for " +
                (gauge.empty() ? "boiling water" : "a " + std::string(gauge) + " gauge"),
            gauge.empty() ? "name one without `gauge`"
                          : "name one whose `gauge` is " + std::string(gauge));
    });
    return id;
  }

  /// Two numbers for one cell would make the answer depend on their order. Pressure options of one
  /// gauge are cells of their own, told apart by their band sets.
  void same_cell_twice(const node& root, const std::vector<table>& tables) {
    std::set<std::tuple<std::string_view, std::string_view, std::string_view, std::string_view,
                        std::string_view>>
        cells;
    if (tables.empty()) return;
    const node& list_node = *find(root, "tables");
    for (std::size_t i = 0; i < tables.size(); ++i) {
      const table& t = tables[i];
      for (const std::string_view form : t.forms) {
        for (const jar_minutes& m : t.minutes) {
          for (const auto& [column, bands] :
               {std::pair<std::string_view, std::string_view>{"dial", t.dial},
                {"weighted", t.weighted},
                {"boiling-water", t.boiling_water}}) {
            if (bands.empty() || cells.emplace(form, t.pack, m.jar, column, bands).second) continue;
            fault(list_node.items[i],
                  "form `" + std::string(form) + "`, pack `" + std::string(t.pack) + "`, jar `" +
                      std::string(m.jar) + "` has two " + std::string(column) + " rows",
                  "keep one");
          }
        }
      }
    }
  }

  /// A list of packs.
  [[nodiscard]] list<std::string_view> packs(const node& map, std::string_view key) {
    const list<std::string_view> out = words(map, key);
    for (const std::string_view pack : out) {
      if (pack == "raw" || pack == "hot") continue;
      fault(*find(map, key), "`" + std::string(pack) + "` is no pack", "write raw or hot");
    }
    return out;
  }

  [[nodiscard]] condition read_condition(const node& n) {
    only(n, {"says", "packs", "prepared", "check", "must_be_said", "instead_of_recipe", "if_any",
             "said_by", "own_recipe", "fills"});
    condition c;
    c.says = text(n, "says");
    c.packs = packs(n, "packs");
    c.prepared = reference(n, "prepared", &edition::prepared, false);
    c.check = reference(n, "check", &edition::checks, false);
    c.must_be_said = truth(n, "must_be_said", false);
    c.instead_of_recipe = truth(n, "instead_of_recipe", false);
    c.if_any = words(n, "if_any");
    for (const std::string_view t : c.if_any) check_trait(*find(n, "if_any"), t);
    c.said_by = words(n, "said_by");
    c.own_recipe = truth(n, "own_recipe", false);
    c.fills = truth(n, "fills", false);
    if ((c.must_be_said || c.own_recipe || c.instead_of_recipe) && c.prepared.empty())
      fault(n, "a condition that must be said needs a word to say it with", "add `prepared: ...`");
    return c;
  }
};

}  // namespace jarproof
