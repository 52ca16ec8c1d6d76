// Edge checks generated from the tested recipes: each as published, and one tenth beyond each of
// its limits, in US and in metric units. SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <set>
#include <string>
#include <vector>

#include "jarproof/yaml.hpp"
#include "support/fixtures.hpp"

namespace edges_recipes_tests {
namespace {

using jarproof::part_limit;
using jarproof::part_role;
using jarproof::process;
using jarproof::recipe_part;
using jarproof::tested_recipe;

const jarproof::edition& rules() { return jarproof::builtin_edition(); }

/// A share of a printed amount, in ten-thousandths of its unit; rounded away from the cook.
std::string share_of(jarproof::printed_amount a, int tenths, bool up) {
  const std::int64_t over = std::int64_t{a.over} * tenths * 1'000;
  const std::int64_t tt = (over + (up ? a.under - 1 : 0)) / a.under;
  std::string part = std::to_string(10'000 + tt % 10'000).substr(1);
  return std::to_string(tt / 10'000) + "." + part;
}

/// As printed: `2 2/3`, `3`, `0.5`.
std::string printed(jarproof::printed_amount a) {
  if (a.under == 3) {
    return (a.over >= 3 ? std::to_string(a.over / 3) + " " : "") + std::to_string(a.over % 3) +
           "/3";
  }
  return share_of(a, 10, true);
}

struct metric_unit {
  const char* unit;
  const char* metric;
  std::int64_t micro;  // millionths of the metric unit (NIST SP 811, appendix B.8)
};
constexpr metric_unit metric_units[] = {
    {"tsp", "mL", 4'928'922},        {"tbsp", "mL", 14'786'765},  {"floz", "mL", 29'573'530},
    {"cup", "mL", 236'588'240},      {"pint", "mL", 473'176'470}, {"quart", "mL", 946'352'950},
    {"gallon", "mL", 3'785'411'784}, {"oz", "g", 28'349'523},     {"lb", "g", 453'592'370}};

/// In tenths of a millilitre or gram; `up` where at least the printed amount is wanted.
std::string in_metric(const std::string& unit, jarproof::printed_amount a, bool up) {
  for (const metric_unit& m : metric_units) {
    if (unit != m.unit) continue;
    const std::int64_t tenths = (m.micro * a.over / a.under + (up ? 99'999 : 0)) / 100'000;
    return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " " + m.metric;
  }
  return printed(a) + " " + unit;
}

std::string name_of(std::string_view id) {
  const jarproof::ingredient* i = jarproof::find(rules().ingredients, id);
  REQUIRE(i != nullptr);
  return std::string(i->names[0]);
}

struct line {
  const recipe_part* part;
  std::string text;
};

std::string line_text(const recipe_part& p, bool metric) {
  const bool high = p.limit == part_limit::most || p.limit == part_limit::free || p.low.over == 0;
  const jarproof::printed_amount a = high ? p.high : p.low;
  const std::string amount =
      metric && !p.anchor
          ? in_metric(std::string(p.unit), a, p.limit != part_limit::most && p.low.over > 0)
          : printed(a) + " " + std::string(p.unit == "floz" ? "fl oz" : p.unit);
  return amount + " " + name_of(p.foods[0]);
}

/// The lines of one recipe, without what is poured off and without second alternatives.
std::vector<line> lines_of(const tested_recipe& r, bool metric) {
  std::vector<line> out;
  std::set<std::string_view> alternatives;
  for (const recipe_part& p : r.parts) {
    if (p.discarded) continue;
    if (!p.one_of.empty() && !alternatives.insert(p.one_of).second) continue;
    out.push_back({&p, line_text(p, metric)});
  }
  return out;
}

/// The same, with the first recipe of every other set of the food: a sauce beside its beans.
std::vector<line> whole_lines_of(const process& p, const tested_recipe& r, bool metric) {
  std::vector<line> whole = lines_of(r, metric);
  for (const tested_recipe& other : p.recipes) {
    const auto first = std::find_if(p.recipes.begin(), p.recipes.end(),
                                    [&](const tested_recipe& x) { return x.set == other.set; });
    if (other.set == r.set || &other != &*first) continue;
    for (line& l : lines_of(other, metric)) whole.push_back(std::move(l));
  }
  return whole;
}

/// A plan that keeps to the first used table of the food, at 900 ft.
std::string plan_of(const process& p, const std::vector<line>& lines) {
  const jarproof::table* t = nullptr;
  for (const jarproof::table& each : p.tables) {
    if (each.use && t == nullptr) t = &each;
  }
  REQUIRE(t != nullptr);
  std::string out = "food: " + std::string(p.id) + "\npack: " + std::string(t->pack) +
                    "\njar: " + std::string(t->minutes[0].jar) +
                    "\nform: " + std::string(t->forms[0]) + "\n";
  if (t->boiling_water.empty()) {
    out += "method: pressure\ngauge: weighted\npressure: 10 psi\n";
  } else {
    out += "method: boiling-water\n";
  }
  out += "time: " + std::to_string(std::max(10, t->minutes[0].minutes[0])) +
         " min\naltitude: 900 ft\nas-published: true\ningredients:\n";
  for (const line& l : lines) out += "  - " + l.text + "\n";
  return out;
}

jarproof::report judged(const std::string& plan) {
  auto read = jarproof::read_yaml(plan, "plan.yaml");
  REQUIRE(read);
  auto what = jarproof::read_plan(read->front());
  REQUIRE(what);
  return jarproof::check(*what, rules());
}

struct tally {
  std::size_t recipes = 0;
  std::size_t plans = 0;
};

void expect(tally& count, const process& p, const std::vector<line>& lines,
            jarproof::verdict verdict, const char* check) {
  const std::string plan = plan_of(p, lines);
  const jarproof::report r = judged(plan);
  ++count.plans;
  INFO(plan);
  std::string found;
  for (const jarproof::finding& f : r.findings) {
    if (f.outcome != jarproof::outcome::none) found += f.check + " (" + f.message + ") ";
  }
  INFO("found: " << found);
  CHECK(r.verdict == verdict);
  if (check != nullptr) CHECK(fixtures::has(r, check));
}

/// Another kind of the same family, such as a jalapeno for a bell pepper, best one that has kinds
/// itself, such as a bell pepper.
std::string_view other_kind(std::string_view id) {
  const jarproof::ingredient* i = jarproof::find(rules().ingredients, id);
  const std::string_view top = jarproof::detail::most_general(rules(), *i).id;
  std::string_view other;
  for (const jarproof::ingredient& each : rules().ingredients) {
    if (each.id == id || each.kind_of != top || each.kind_of == id || each.names.empty()) continue;
    const bool has_kinds =
        std::any_of(rules().ingredients.begin(), rules().ingredients.end(),
                    [&](const jarproof::ingredient& kind) { return kind.kind_of == each.id; });
    if (has_kinds) return each.id;
    if (other.empty()) other = each.id;
  }
  return other;
}

void edges_of(const process& p, const tested_recipe& r, bool metric, tally& count) {
  ++count.recipes;
  const std::vector<line> whole = whole_lines_of(p, r, metric);
  expect(count, p, whole, jarproof::verdict::accepted, nullptr);
  const auto changed = [&](std::size_t i, const std::string& text) {
    std::vector<line> lines = whole;
    lines[i].text = text;
    return lines;
  };
  const auto without = [&](std::size_t i) {
    std::vector<line> lines = whole;
    lines.erase(lines.begin() + static_cast<std::ptrdiff_t>(i));
    return lines;
  };
  bool has_acid = false;
  for (const line& l : whole)
    has_acid = has_acid || (l.part->role == part_role::acid && l.part->limit == part_limit::least);
  for (std::size_t i = 0; i < whole.size(); ++i) {
    const recipe_part& part = *whole[i].part;
    const std::string unit = part.unit == "floz" ? "fl oz" : std::string(part.unit);
    const std::string name = name_of(part.foods[0]);
    const std::string more = share_of(part.high, 11, true) + " " + unit + " " + name;
    const std::string less = share_of(part.low, 9, false) + " " + unit + " " + name;
    if (part.anchor) {
      // More of the main food without more acid.
      const bool alone = p.recipes.size() == 1;  // another column may cover it
      if (has_acid && alone && part.low.over * part.high.under == part.high.over * part.low.under)
        expect(count, p, changed(i, more), jarproof::verdict::rejected, nullptr);
      continue;
    }
    // A food whose recipes differ in this very amount may be one of the others then.
    const bool only_one = p.recipes.size() == 1;
    if (part.limit == part_limit::most) {
      const jarproof::report as_other = judged(plan_of(p, changed(i, more)));
      if (only_one || as_other.verdict != jarproof::verdict::accepted) {
        expect(count, p, changed(i, more), jarproof::verdict::rejected,
               part.role == part_role::low_acid && only_one ? "low-acid-share-too-high" : nullptr);
      }
      expect(count, p, without(i), jarproof::verdict::accepted, nullptr);
    }
    if (part.limit == part_limit::least && part.low.over > 0 && !part.optional) {
      const jarproof::report as_other = judged(plan_of(p, changed(i, less)));
      if (only_one || as_other.verdict != jarproof::verdict::accepted) {
        expect(count, p, changed(i, less), jarproof::verdict::rejected,
               part.role == part_role::acid && only_one ? "acid-too-little" : nullptr);
        // Left out, it may still be among the swaps of another; never accepted all the same.
        CHECK(judged(plan_of(p, without(i))).verdict != jarproof::verdict::accepted);
        ++count.plans;
      }
      if (part.role == part_role::acid) {
        // More acid than tested is on the strict side.
        expect(count, p, changed(i, share_of(part.high, 15, true) + " " + unit + " " + name),
               jarproof::verdict::accepted, nullptr);
      }
    }
    if (part.limit == part_limit::free && part.role != part_role::low_acid) {
      expect(count, p, changed(i, less), jarproof::verdict::accepted, nullptr);
    }
    // One kind for another, the total unchanged.
    const std::string_view kind = other_kind(part.foods[0]);
    if (part.limit == part_limit::most && part.role == part_role::low_acid && part.one_of.empty() &&
        !kind.empty() && part.unit != "piece") {
      const std::string swapped = printed(part.high) + " " + unit + " " + name_of(kind);
      expect(count, p, changed(i, swapped), jarproof::verdict::accepted, nullptr);
    }
  }
  // Things that no recipe without them takes in.
  for (const char* text : {"1 cup all-purpose flour", "1 cup heavy cream", "2 cups macaroni",
                           "2 eggs", "1 cup butter"}) {
    std::vector<line> lines = whole;
    static const recipe_part none;
    lines.push_back({&none, text});
    expect(count, p, lines, jarproof::verdict::rejected, nullptr);
  }
  std::vector<line> strange = whole;
  static const recipe_part none;
  strange.push_back({&none, "2 cups gribble root"});
  expect(count, p, strange, jarproof::verdict::incomplete, "ingredient-unknown");
}

/// How the plans below are canned. Their time is longer than any published one, so a plan fails by
/// its lines alone.
struct kitchen {
  const char* title;
  bool by_pressure;
  const char* more;
};
constexpr kitchen as_it_is_pressure{"a dish", true, ""};
constexpr kitchen as_it_is_water{"a dish", false, ""};
// All that a soup, or mixed vegetables, must say.
constexpr kitchen as_soup{
    "a soup", true,
    "solids: 1/2\nbatch: 40 qt\nprepared: [beans rehydrated, meat precooked, boiled 5 min]\n"};
constexpr kitchen as_vegetables{"a dish", true, "batch: 40 qt\nprepared: [boiled 5 min]\n"};

/// `food` may be empty: then the lines decide what it is.
std::string kitchen_plan(const process& own, const kitchen& k, std::string_view food,
                         const char* jar, const std::vector<line>& lines) {
  std::string out = "title: " + std::string(k.title) + "\n";
  if (!food.empty()) out += "food: " + std::string(food) + "\nas-published: true\n";
  out += "pack: " + std::string(own.tables[0].pack) + "\njar: " + jar + "\n";
  out += k.by_pressure ? "method: pressure\ngauge: weighted\npressure: 15 psi\ntime: 200 min\n"
                       : "method: boiling-water\ntime: 200 min\n";
  out += "altitude: 4600 ft\n";
  if (food.empty()) out += k.more;
  out += "ingredients:\n";
  for (const line& l : lines) out += "  - " + l.text + "\n";
  return out;
}

/// An accepted plan without a named food is its own recipe, or has numbers as strong as that one's
/// in the same jar. `changed` says that the lines are no longer the recipe.
void expect_unnamed(tally& count, const process& own, const kitchen& k, const char* jar,
                    const std::vector<line>& lines, bool changed) {
  const std::string plan = kitchen_plan(own, k, {}, jar, lines);
  const jarproof::report r = judged(plan);
  ++count.plans;
  if (r.verdict != jarproof::verdict::accepted) return;
  INFO(plan);
  INFO("own: " << std::string(own.id) << std::string(changed ? ", changed" : ""));
  REQUIRE(r.process != nullptr);
  INFO("accepted as " << std::string(r.process->id));
  REQUIRE(r.required);
  if (r.process == &own) {
    CHECK_FALSE(changed);
    return;
  }
  // A process for low-acid food is no weaker than the boiling water of an acid recipe.
  if (own.kind == jarproof::food_class::acid && r.required->method == "pressure") return;
  const jarproof::report named = judged(kitchen_plan(own, k, own.id, jar, lines));
  for (const jarproof::finding& f : named.findings) {
    CHECK(f.check != "jar-too-large");
    CHECK(f.check != "low-acid-needs-pressure");
  }
  REQUIRE(named.required);
  CHECK(named.required->method == r.required->method);
  CHECK(named.required->time_min <= r.required->time_min);
  CHECK(named.required->pressure_psi.value_or(0) <= r.required->pressure_psi.value_or(0));
}

void unnamed_edges_of(const process& p, const tested_recipe& r, tally& count) {
  ++count.recipes;
  const std::vector<line> whole = whole_lines_of(p, r, false);
  for (const kitchen& k : {as_it_is_pressure, as_it_is_water, as_soup, as_vegetables}) {
    for (const char* jar : {"pint", "quart"}) expect_unnamed(count, p, k, jar, whole, false);
  }
  const auto expect_changed = [&](const std::vector<line>& lines) {
    // A food with several recipes may have one that allows just this.
    const kitchen& own = p.tables[0].boiling_water.empty() ? as_it_is_pressure : as_it_is_water;
    if (judged(kitchen_plan(p, own, p.id, "pint", lines)).verdict == jarproof::verdict::accepted)
      return;
    for (const kitchen& k : {own, as_soup, as_vegetables})
      expect_unnamed(count, p, k, "pint", lines, true);
    expect_unnamed(count, p, as_soup, "quart", lines, true);
  };
  static const recipe_part none;
  std::vector<line> corn = whole;
  corn.push_back({&none, "2 cups corn"});
  expect_changed(corn);
  for (std::size_t i = 0; i < whole.size(); ++i) {
    const recipe_part& part = *whole[i].part;
    if (part.role != part_role::low_acid || part.anchor) continue;
    std::vector<line> more = whole;
    more[i].text = share_of(part.high, 11, true) + " " +
                   std::string(part.unit == "floz" ? "fl oz" : part.unit) + " " +
                   name_of(part.foods[0]);
    expect_changed(more);
  }
}

TEST_SUITE("edges") {
  TEST_CASE("edges: a tested recipe without its name is not taken for a weaker process") {
    tally count;
    for (const process& p : rules().processes) {
      for (const tested_recipe& r : p.recipes) unnamed_edges_of(p, r, count);
    }
    std::printf("recipes without a name: %zu recipes, %zu plans\n", count.recipes, count.plans);
    CHECK(count.recipes > 100);
    CHECK(count.plans > 1000);
  }
  TEST_CASE(
      "edges: each tested recipe is accepted as published and not a tenth beyond its limits") {
    tally count;
    for (const bool metric : {false, true}) {
      for (const process& p : rules().processes) {
        const bool used = std::any_of(p.tables.begin(), p.tables.end(),
                                      [](const jarproof::table& t) { return t.use; });
        if (!used) continue;
        for (const tested_recipe& r : p.recipes) edges_of(p, r, metric, count);
      }
    }
    std::printf("recipe checks: %zu recipes, %zu plans\n", count.recipes, count.plans);
    CHECK(count.recipes > 200);
  }
}

}  // namespace
}  // namespace edges_recipes_tests
