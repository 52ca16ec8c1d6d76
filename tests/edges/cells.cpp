// Edge checks generated from the second entry: every cell at its exact numbers, and one step beyond
// each of them, in US and in metric units.
//
// What must come out is worked out from the published rows alone, never from the edition under
// test. SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <cstdio>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "support/fixtures.hpp"
#include "support/published.hpp"

namespace cells_tests {
namespace {

using fixtures::published_band;
using fixtures::published_row;
using keys = std::map<std::string, std::string>;

struct size {
  const char* id;
  int floz;
  const char* metric;  // true volume, rounded down to whole mL (NIST SP 811, B.8: 29.57353 mL)
};
constexpr size sizes[] = {{"half-pint", 8, "236 mL"}, {"12-oz", 12, "354 mL"},
                          {"pint", 16, "473 mL"},     {"pint-and-half", 24, "709 mL"},
                          {"quart", 32, "946 mL"},    {"half-gallon", 64, "1892 mL"}};

const size& size_of(const std::string& id) {
  for (const size& s : sizes) {
    if (id == s.id) return s;
  }
  FAIL(id);
  return sizes[0];
}

/// The next larger size, if any.
std::optional<std::string> larger(const std::string& id) {
  for (std::size_t i = 0; i + 1 < std::size(sizes); ++i) {
    if (id == sizes[i].id) return sizes[i + 1].id;
  }
  return std::nullopt;
}

/// The form word of rows that hold for one form only.
std::string form_of(const published_row& row) {
  if (row.form.find("small beans") != std::string::npos) return "small";
  if (row.form.find("large beans") != std::string::npos) return "large";
  if (row.form.find("unsterilized jars") != std::string::npos) return "in-clean-jars";
  if (row.form.find("sterile jars") != std::string::npos) return "in-sterile-jars";
  return "";
}

/// Foods whose numbers are shown and not used: another publication speaks against the one, the
/// other is no table of the guide.
bool unused(const published_row& row) {
  return row.food == "mango-sauce" || row.food == "tomato-paste";
}

/// The numbers of a plan that a published row is compared with.
struct numbers {
  std::string pack;
  int floz = 0;
  int altitude_ft = 0;
  int psi = 0;
  int time_min = 0;
  int headspace_thousandths_in = 0;
};

/// True where a published row of the food covers these numbers: of its pack and column, for the
/// smallest listed jar that holds as much, with time and pressure of one and the same option.
bool covered(const published_row& like, const numbers& n) {
  int jar_floz = 0;
  for (const published_row& r : fixtures::published_rows()) {
    if (r.food != like.food || r.pack != n.pack || r.column != like.column) continue;
    const std::string form = form_of(r);
    if (!form.empty() && !form_of(like).empty() && form != form_of(like)) continue;
    const int floz = size_of(r.jar).floz;
    if (floz >= n.floz && (jar_floz == 0 || floz < jar_floz)) jar_floz = floz;
  }
  bool covers = false;
  int largest_headspace = 0;  // where the form is not said, the larger one holds
  for (const published_row& r : fixtures::published_rows()) {
    if (r.food != like.food || r.pack != n.pack || r.column != like.column ||
        size_of(r.jar).floz != jar_floz)
      continue;
    const std::string form = form_of(r);
    if (!form.empty() && !form_of(like).empty() && form != form_of(like)) continue;
    largest_headspace = std::max(largest_headspace, r.headspace_thousandths_in);
    for (const published_band& b : r.bands) {
      const int top = b.through_ft == 0 ? 10'000 : b.through_ft;
      if (n.altitude_ft < b.from_ft || n.altitude_ft > top) continue;
      covers = covers || (n.psi >= b.psi && n.time_min >= b.time_min);
    }
    // South Dakota State University Extension: 15 psi from 8,001 to 10,000 ft for the 11 psi
    // series.
    const bool goes_on = r.column == "dial" && r.bands[0].psi == 11;
    if (goes_on && n.altitude_ft > 8000 && n.altitude_ft <= 10'000)
      covers = covers || (n.psi >= 15 && n.time_min >= r.bands[0].time_min);
  }
  return covers && n.headspace_thousandths_in >= largest_headspace;
}

/// Judges a plan made of plain values; the places are the same for all.
jarproof::report judged(const keys& plan) {
  jarproof::document d;
  d.name = "plan";
  d.root.kind = jarproof::node_kind::map;
  for (const auto& [key, value] : plan) {
    if (value.empty()) continue;
    jarproof::node n;
    n.kind = jarproof::node_kind::scalar;
    n.text = value;
    n.path = key;
    d.root.members.push_back({key, 1, 1, n});
  }
  const auto read = jarproof::read_plan(d);
  REQUIRE(read);
  return jarproof::check(*read, jarproof::builtin_edition());
}

std::string in_inches(int thousandths) {
  return jarproof::decimal_of_thousandths(thousandths) + " in";
}

/// Plans are written twice; every number in its own unit.
struct units {
  bool metric;

  std::string pressure(int psi, const std::string& gauge) const {
    if (!metric) return std::to_string(psi) + " psi";
    if (gauge == "weighted") return psi == 5 ? "34 kPa" : psi == 10 ? "69 kPa" : "103 kPa";
    return std::to_string((psi * 6894757LL + 999'999) / 1'000'000) + " kPa";  // up to whole kPa
  }
  std::string pressure_below(int psi, const std::string& gauge) const {
    if (gauge == "weighted") return pressure(psi - 5, gauge);
    return metric ? std::to_string(psi * 6894757LL / 1'000'000) + " kPa"
                  : std::to_string(psi - 1) + " psi";
  }
  std::string time(int minutes) const {
    if (!metric || minutes < 60) return std::to_string(minutes) + " min";
    return std::to_string(minutes / 60) + " h " + std::to_string(minutes % 60) + " min";
  }
  /// The highest whole metre that is not above `feet`, and the lowest that is not below.
  std::string altitude(int feet, bool from_below) const {
    if (!metric) return std::to_string(feet) + " ft";
    const int tenth_mm = feet * 3048;
    return std::to_string(from_below ? tenth_mm / 10'000 : (tenth_mm + 9'999) / 10'000) + " m";
  }
  std::string altitude_above(int feet) const {
    return metric ? std::to_string(feet * 3048 / 10'000 + 1) + " m"
                  : std::to_string(feet + 1) + " ft";
  }
  std::string headspace(int thousandths) const {
    return metric ? std::to_string((thousandths * 254 + 5'000) / 10'000) + " mm"
                  : in_inches(thousandths);
  }
  std::string headspace_below(int thousandths) const {
    // More than 1 mm less than printed, also where little is printed.
    const int less = thousandths > 250 ? thousandths - 125 : thousandths / 2;
    return metric ? std::to_string(std::max(thousandths * 254 / 10'000 - 2, 0)) + " mm"
                  : in_inches(less);
  }
  std::string jar(const std::string& id) const { return metric ? size_of(id).metric : id; }
};

struct tally {
  std::size_t plans = 0;
};

void edges_of(const published_row& row, const published_band& band, const units& in, tally& count) {
  const bool in_water = row.column == "boiling-water";
  const int top = band.through_ft == 0 ? 10'000 : band.through_ft;
  const std::string gauge = in_water ? "" : row.column;
  const keys exact{{"food", row.food},
                   {"form", form_of(row)},
                   {"pack", row.pack},
                   {"jar", in.jar(row.jar)},
                   {"method", in_water ? "boiling-water" : "pressure"},
                   {"gauge", gauge},
                   {"pressure", in_water ? "" : in.pressure(band.psi, gauge)},
                   {"time", in.time(band.time_min)},
                   {"altitude", in.altitude(top, true)},
                   {"headspace", in.headspace(row.headspace_thousandths_in)},
                   {"vent", in_water ? "" : "10 min"},
                   {"as-published", "true"}};
  const numbers own{row.pack, size_of(row.jar).floz, top,
                    band.psi, band.time_min,         row.headspace_thousandths_in};
  const auto expect = [&](keys changes, bool accepted, std::initializer_list<const char*> any_of) {
    keys plan = exact;
    for (const auto& [key, value] : changes) plan[key] = value;
    const jarproof::report r = judged(plan);
    ++count.plans;
    INFO(fixtures::plan_text(plan) << "published by " << row.source);
    std::string found;
    for (const jarproof::finding& f : r.findings) {
      if (f.outcome != jarproof::outcome::none) found += f.check + " ";
    }
    INFO("found: " << found);
    if (unused(row)) {
      CHECK(r.verdict != jarproof::verdict::accepted);
      CHECK(fixtures::has(r, "table-not-verified"));
      return;
    }
    CHECK((r.verdict == jarproof::verdict::accepted) == accepted);
    bool one = accepted;
    for (const char* check : any_of) one = one || fixtures::has(r, check);
    CHECK(one);
  };
  const auto with = [&](auto&& change) {
    numbers n = own;
    change(n);
    return covered(row, n);
  };

  // The exact numbers, at both ends of the band.
  expect({}, true, {});
  expect({{"altitude", in.altitude(band.from_ft, false)}}, true, {});
  // One minute less, one pressure step less, headspace too small, vent one minute short.
  if (band.time_min > 1) {
    expect({{"time", in.time(band.time_min - 1)}}, with([](numbers& n) { --n.time_min; }),
           {"time-too-short"});
  }
  expect({{"headspace", in.headspace_below(row.headspace_thousandths_in)}}, false,
         {"headspace-too-small"});
  if (!in_water) {
    const int less = gauge == "weighted" ? band.psi - 5 : band.psi - 1;
    if (less > 0) {
      expect({{"pressure", in.pressure_below(band.psi, gauge)}},
             with([&](numbers& n) { n.psi = less; }), {"pressure-too-low", "time-too-short"});
    }
    expect({{"vent", "9 min"}}, false, {"vent-too-short"});
  }
  const jarproof::process& food = *jarproof::find(jarproof::builtin_edition().processes, row.food);
  if (food.kind == jarproof::food_class::low_acid) {
    // Boiling water for a low-acid food, whatever the time.
    expect({{"method", "boiling-water"}, {"time", "240 min"}}, false, {"low-acid-needs-pressure"});
  }
  if (in_water) {
    // A steam canner takes the boiling-water time up to 45 minutes (NCHFP, steam canners).
    expect({{"method", "steam"}}, band.time_min <= 45, {"steam-time-too-long"});
    expect({{"method", "steam"}, {"time", in.time(46)}}, false,
           {"steam-time-too-long", "time-too-short"});
    // Pressure has a table of its own or none.
    bool has_pressure = false;
    for (const published_row& r : fixtures::published_rows())
      has_pressure = has_pressure || (r.food == row.food && r.column != "boiling-water");
    if (!has_pressure) {
      expect({{"method", "pressure"}, {"gauge", "weighted"}, {"pressure", "15 psi"}}, false,
             {"no-tested-process"});
    }
    if (food.low_temperature.minutes == 0) {
      expect({{"method", "low-temperature"}, {"temperature", "182 F"}, {"time", "30 min"}}, false,
             {"method-not-for-food"});
    } else {
      const keys low{{"method", "low-temperature"}, {"temperature", "180 F"}, {"time", "30 min"}};
      expect(low, true, {});
      keys colder = low;
      colder["temperature"] = in.metric ? "82 C" : "179 F";
      expect(colder, false, {"temperature-too-low"});
      keys shorter = low;
      shorter["time"] = "29 min";
      expect(shorter, false, {"time-too-short"});
    }
  }

  // One foot over the band: the next printed band decides; above the last one nothing is published.
  expect({{"altitude", in.altitude_above(top)}}, with([](numbers& n) { ++n.altitude_ft; }),
         {"pressure-too-low", "time-too-short", "altitude-outside-table"});

  // One jar size up, at this row's numbers.
  if (const std::optional<std::string> up = larger(row.jar)) {
    expect({{"jar", in.jar(*up)}}, with([&](numbers& n) { n.floz = size_of(*up).floz; }),
           {"jar-too-large", "time-too-short", "headspace-too-small"});
  }
  // A metric jar that is a little larger than the listed one takes the next larger size.
  if (in.metric) {
    const int ml = std::stoi(in.jar(row.jar)) + 1;
    expect({{"jar", std::to_string(ml) + " mL"}}, with([](numbers& n) { ++n.floz; }),
           {"jar-too-large", "time-too-short", "headspace-too-small"});
  }
  // The other pack, at this row's numbers.
  const std::string other_pack = row.pack == "raw" ? "hot" : "raw";
  expect({{"pack", other_pack}}, with([&](numbers& n) { n.pack = other_pack; }),
         {"pack-not-tested", "time-too-short", "headspace-too-small", "jar-too-large"});
}

TEST_SUITE("edges") {
  TEST_CASE("edges: each cell is accepted at its exact numbers and not one step beyond") {
    tally count;
    for (const bool metric : {false, true}) {
      for (const published_row& row : fixtures::published_rows()) {
        for (const published_band& band : row.bands) edges_of(row, band, units{metric}, count);
      }
    }
    std::printf("edge checks: %zu plans\n", count.plans);
    CHECK(count.plans > 10'000);
  }

  TEST_CASE(
      "edges: a dial at 15 psi from 8,001 to 10,000 ft is accepted with a note that names "
      "Extension") {
    for (const published_row& row : fixtures::published_rows()) {
      if (row.column != "dial" || row.bands[0].psi != 11 || unused(row)) continue;
      for (const char* altitude : {"8001 ft", "10000 ft", "2439 m", "3048 m"}) {
        const keys plan{
            {"food", row.food},     {"form", form_of(row)},
            {"pack", row.pack},     {"jar", row.jar},
            {"method", "pressure"}, {"gauge", "dial"},
            {"pressure", "15 psi"}, {"time", std::to_string(row.bands[0].time_min) + " min"},
            {"altitude", altitude}, {"as-published", "true"}};
        const jarproof::report r = judged(plan);
        INFO(fixtures::plan_text(plan));
        CHECK(r.verdict == jarproof::verdict::accepted);
        if (row.food != "onions") {
          const jarproof::finding* note = fixtures::finding_of(r, "altitude-by-extension");
          REQUIRE(note != nullptr);
          CHECK(note->message.find("South Dakota State University Extension") != std::string::npos);
        }
        keys lower = plan;
        lower["pressure"] = "14 psi";
        CHECK(judged(lower).verdict == jarproof::verdict::rejected);
      }
    }
  }
}

}  // namespace
}  // namespace cells_tests
