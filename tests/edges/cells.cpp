// Edge checks generated from the second entry: every cell at its exact numbers, and one step beyond
// each of them, in US and in metric units.
//
// What must come out is worked out from the published rows alone, never from the edition under
// test. SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <cstdio>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "support/fixtures.hpp"
#include "support/published.hpp"

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

/// The form word of rows that hold for one kind of bean only.
std::string form_of(const published_row& row) {
  if (row.form.find("small beans") != std::string::npos) return "small";
  if (row.form.find("large beans") != std::string::npos) return "large";
  return "";
}

/// The published row for another pack or jar of the same food: the smallest listed jar that holds
/// as much.
const published_row* row_for(const published_row& like, const std::string& pack, int floz) {
  const published_row* best = nullptr;
  for (const published_row& r : fixtures::published_rows()) {
    if (r.food != like.food || r.pack != pack || r.gauge != like.gauge ||
        size_of(r.jar).floz < floz)
      continue;
    const std::string form = form_of(r);
    if (!form.empty() && !form_of(like).empty() && form != form_of(like)) continue;
    // Where the plan does not say which bean, the row with the larger headspace holds.
    if (best == nullptr || size_of(r.jar).floz < size_of(best->jar).floz ||
        (r.jar == best->jar && r.headspace_thousandths_in > best->headspace_thousandths_in)) {
      best = &r;
    }
  }
  return best;
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
    return metric ? std::to_string(thousandths * 254 / 10'000 - 2) + " mm"
                  : in_inches(thousandths - 125);
  }
  std::string jar(const std::string& id) const { return metric ? size_of(id).metric : id; }
};

struct tally {
  std::size_t plans = 0;
};

void edges_of(const published_row& row, const published_band& band, const units& in, tally& count) {
  const bool used = row.entry != "copied";
  const int top = band.through_ft == 0 ? 10'000 : band.through_ft;
  keys exact{{"food", row.food},
             {"form", form_of(row)},
             {"pack", row.pack},
             {"jar", in.jar(row.jar)},
             {"method", "pressure"},
             {"gauge", row.gauge},
             {"pressure", in.pressure(band.psi, row.gauge)},
             {"time", in.time(row.time_min)},
             {"altitude", in.altitude(top, true)},
             {"headspace", in.headspace(row.headspace_thousandths_in)},
             {"vent", "10 min"},
             {"as-published", "true"}};
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
    if (!used) {
      CHECK(r.verdict != jarproof::verdict::accepted);
      CHECK(fixtures::has(r, "table-not-verified"));
      return;
    }
    CHECK((r.verdict == jarproof::verdict::accepted) == accepted);
    bool one = accepted;
    for (const char* check : any_of) one = one || fixtures::has(r, check);
    CHECK(one);
  };

  // The exact numbers, at both ends of the band.
  expect({}, true, {});
  expect({{"altitude", in.altitude(band.from_ft, false)}}, true, {});
  // One minute less, one pressure step less, headspace too small, vent one minute short.
  expect({{"time", in.time(row.time_min - 1)}}, false, {"time-too-short"});
  expect({{"pressure", in.pressure_below(band.psi, row.gauge)}}, false, {"pressure-too-low"});
  expect({{"headspace", in.headspace_below(row.headspace_thousandths_in)}}, false,
         {"headspace-too-small"});
  expect({{"vent", "9 min"}}, false, {"vent-too-short"});
  // Boiling water for a low-acid food, whatever the time.
  expect({{"method", "boiling-water"}, {"time", "240 min"}}, false, {"low-acid-needs-pressure"});

  // One foot over the band: the next printed band decides; the dial tables go on at 15 psi to
  // 10,000 ft by South Dakota State University Extension, and nothing is published above.
  int next_psi = 0;
  for (const published_band& b : row.bands) {
    if (band.through_ft != 0 && b.from_ft == band.through_ft + 1) next_psi = b.psi;
  }
  if (next_psi == 0 && top < 10'000) next_psi = 15;
  if (next_psi == 0) {
    expect({{"altitude", in.altitude_above(top)}}, false, {"altitude-outside-table"});
  } else {
    expect({{"altitude", in.altitude_above(top)}}, next_psi <= band.psi, {"pressure-too-low"});
  }

  // One jar size up, at this row's numbers.
  if (const std::optional<std::string> up = larger(row.jar)) {
    const published_row* other = row_for(row, row.pack, size_of(*up).floz);
    const bool covered = other != nullptr && other->time_min <= row.time_min &&
                         other->headspace_thousandths_in <= row.headspace_thousandths_in;
    expect({{"jar", in.jar(*up)}}, covered,
           other == nullptr
               ? std::initializer_list<const char*>{"jar-too-large"}
               : std::initializer_list<const char*>{"time-too-short", "headspace-too-small"});
  }
  // A metric jar that is a little larger than the listed one takes the next larger size.
  if (in.metric) {
    const int ml = std::stoi(in.jar(row.jar)) + 1;
    const published_row* other = row_for(row, row.pack, size_of(row.jar).floz + 1);
    const bool covered = other != nullptr && other->time_min <= row.time_min &&
                         other->headspace_thousandths_in <= row.headspace_thousandths_in;
    expect({{"jar", std::to_string(ml) + " mL"}}, covered,
           {"jar-too-large", "time-too-short", "headspace-too-small"});
  }
  // The other pack, at this row's numbers.
  const std::string other_pack = row.pack == "raw" ? "hot" : "raw";
  const published_row* other = row_for(row, other_pack, size_of(row.jar).floz);
  const bool covered = other != nullptr && other->time_min <= row.time_min &&
                       other->headspace_thousandths_in <= row.headspace_thousandths_in;
  expect({{"pack", other_pack}}, covered,
         {"pack-not-tested", "time-too-short", "headspace-too-small", "jar-too-large"});
}

TEST_SUITE("edges") {
  TEST_CASE("each cell is accepted at its exact numbers and not one step beyond") {
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
      "a dial at 15 psi from 8,001 to 10,000 ft is accepted with a note that names Extension") {
    for (const published_row& row : fixtures::published_rows()) {
      if (row.gauge != "dial" || row.entry == "copied") continue;
      for (const char* altitude : {"8001 ft", "10000 ft", "2439 m", "3048 m"}) {
        const keys plan{{"food", row.food},     {"form", form_of(row)},
                        {"pack", row.pack},     {"jar", row.jar},
                        {"method", "pressure"}, {"gauge", "dial"},
                        {"pressure", "15 psi"}, {"time", std::to_string(row.time_min) + " min"},
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
