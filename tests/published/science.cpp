// Every published or worked-out number of steam, air, heat and acid that has a formula, each within
// the tolerance of its line in science.csv, which names its source. "Worked out" lines were
// computed apart from the library, from the equations they name.
//
// Not in the file, since no formula gives them: measured D values, z and F0 targets, limits of
// regulations (pH, water activity, venting, cooling, filing), kitchen roundings of units, the
// acid per jar of the tested recipes, lists of pH, and what a regulator marked 10 runs at. Three
// pKa of citric acid by a fit of 1949 are left out too: the fit was read, its target was not.
//
// The lines on acid, vinegar and salt, the sum of a course in FAO's example and the z of three D
// values are worked out here and not by the library. It computes no acidity on purpose: the
// buffers of food are unknown, and no substitution may be derived from it.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <set>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/physics.hpp"
#include "jarproof/quantity.hpp"
#include "support/published.hpp"

namespace science_tests {

using namespace jarproof;

namespace {

constexpr double mL_per_floz = 231.0 * 16.387064 / 128.0;  // a gallon is 231 cubic inches
constexpr double pa_per_inhg = 13'595.1 * 9.80665 * 0.0254;
constexpr double g_per_oz = pascal_per_psi * 0.0254 * 0.0254 / 9.80665 * 1000.0 / 16.0;

/// One line of science.csv: `in` are its inputs, `in_unit` and `unit` as written there.
struct line {
  std::string id;
  std::vector<double> in;
  std::vector<std::string> in_unit;
  double value = 0.0;
  std::string unit;
  double tolerance = 0.0;
};

std::vector<std::string> parts(const std::string& text) {
  std::vector<std::string> out;
  std::istringstream stream(text);
  for (std::string part; std::getline(stream, part, ';');) out.push_back(part);
  return out;
}

std::vector<line> lines() {
  std::vector<line> out;
  const auto rows = fixtures::published_lines("science.csv");
  REQUIRE(rows.size() > 1);
  for (std::size_t i = 1; i < rows.size(); ++i) {
    const auto& f = rows[i];
    INFO("science.csv line " << i + 1);
    REQUIRE(f.size() == 8);
    CHECK_FALSE(f[7].empty());
    line l{f[0], {}, parts(f[3]), std::stod(f[4]), f[5], std::stod(f[6])};
    for (const std::string& number : parts(f[2])) l.in.push_back(std::stod(number));
    out.push_back(std::move(l));
  }
  return out;
}

/// Nothing becomes a number that equals none.
double number(std::optional<double> value) {
  return value.value_or(std::numeric_limits<double>::quiet_NaN());
}

/// What 1 of a unit of pressure is in pascal.
double pascal_of(std::string_view unit) {
  if (unit == "Pa") return 1.0;
  if (unit == "kPa" || unit == "kPa abs") return 1e3;
  if (unit == "bar") return 1e5;
  if (unit == "MPa") return 1e6;
  if (unit == "psi" || unit == "psia") return pascal_per_psi;
  if (unit == "atm") return 101'325.0;
  REQUIRE(unit == "inHg");
  return pa_per_inhg;
}

double celsius_of(double degrees, std::string_view unit) {
  if (unit == "K") return degrees - 273.15;
  if (unit == "degF") return celsius_from_fahrenheit(degrees);
  REQUIRE(unit == "degC");
  return degrees;
}

double from_celsius(double degrees, std::string_view unit) {
  if (unit == "K") return degrees + 273.15;
  if (unit == "degF") return fahrenheit_from_celsius(degrees);
  REQUIRE(unit == "degC");
  return degrees;
}

double metres(const line& l) { return l.in[0] * (l.in_unit[0] == "ft" ? m_per_ft : 1.0); }

double saturation_temperature(const line& l) {
  const double pa = l.in[0] * pascal_of(l.in_unit[0]);
  return from_celsius(number(saturation_temperature_c(pa)), l.unit);
}

double saturation_pressure(const line& l) {
  return number(saturation_pressure_pa(celsius_of(l.in[0], l.in_unit[0]))) / pascal_of(l.unit);
}

double atmosphere(const line& l) { return number(air_pressure_pa(metres(l))) / pascal_of(l.unit); }

double isa_constant(const line& l) {
  if (l.id == "isa-const-t0") return detail::sea_level_k;
  if (l.id == "isa-const-p0") return detail::sea_level_pa;
  if (l.id == "isa-const-g0") return detail::gravity_m_per_s2;
  if (l.id == "isa-const-m0") return detail::air_kg_per_kmol;
  if (l.id == "isa-const-r") return detail::gas_j_per_kmol_k;
  if (l.id == "isa-const-r0") return detail::earth_radius_m;
  REQUIRE(l.id == "isa-const-lapse");
  return detail::lapse_k_per_m;
}

double boiling(const line& l) {
  const double fahrenheit = number(boiling_point_f(metres(l) / m_per_ft));
  return from_celsius(celsius_from_fahrenheit(fahrenheit), l.unit);
}

double boiling_isothermal(const line& l) {
  const double pa = 101'300.0 * std::exp(-1.16e-4 * metres(l));
  return fahrenheit_from_celsius(number(saturation_temperature_c(pa)));
}

double steam(const line& l) { return number(steam_temperature_f(l.in[0], l.in[1])); }

double gauge_for(const line& l) {
  const double fahrenheit = fahrenheit_from_celsius(celsius_of(l.in[0], l.in_unit[0]));
  return number(gauge_psi_for(fahrenheit, l.in[1]));
}

double ramp(const line& l) {
  const temperature_point course[] = {{0.0, l.in[0]}, {l.in[2], l.in[1]}};
  return number(lethality_min(course));
}

double trapezoids(const line& l) {
  constexpr lethality_scale scale{121.11, 10.0};
  double sum = 0.0;
  for (std::size_t i = 2; i + 1 < l.in.size(); i += 2) {
    sum += (l.in[i] - l.in[i - 2]) / 2.0 *
           (number(lethal_rate(l.in[i - 1], scale)) + number(lethal_rate(l.in[i + 1], scale)));
  }
  return sum;
}

/// A steady temperature whose rate is the sum, held for one step.
double steps_of_rates(const line& l) {
  const double steady = f0_celsius.reference + f0_celsius.z * std::log10(l.in[0]);
  const temperature_point course[] = {{0.0, steady}, {l.in[1], steady}};
  return number(lethality_min(course, f0_celsius));
}

double z_of_three(const line& l) {
  double mean_t = 0.0, mean_log = 0.0, over = 0.0, under = 0.0;
  for (std::size_t i = 0; i < 3; ++i) {
    mean_t += l.in[i] / 3.0;
    mean_log += std::log10(l.in[i + 3]) / 3.0;
  }
  for (std::size_t i = 0; i < 3; ++i) {
    over += (l.in[i] - mean_t) * (std::log10(l.in[i + 3]) - mean_log);
    under += (l.in[i] - mean_t) * (l.in[i] - mean_t);
  }
  return -under / over;
}

/// Volume through the reader of amounts, which counts in millionths of a fluid ounce and rounds
/// down; three of each, since a teaspoon is the sixth of an ounce. Inputs are whole quarters.
double volume(const line& l) {
  const std::string quarters = std::to_string(std::lround(l.in[0] * 3.0 * 4.0)) + "/4 ";
  const amount_reading read = read_amount(quarters + l.in_unit[0], dimension::volume);
  CHECK(read.ok());
  const double mL = static_cast<double>(read.value) / micro_per_unit * mL_per_floz / 3.0;
  return l.unit == "L" ? mL / 1000.0 : mL;
}

double pressure_unit(const line& l) {
  return l.in[0] * pascal_of(l.in_unit[0]) / pascal_of(l.unit);
}

double weak_acid_ph(double mol_per_l, double ka) {
  return -std::log10((-ka + std::sqrt(ka * ka + 4.0 * ka * mol_per_l)) / 2.0);
}
double ionised(double ph) { return 1.0 / (1.0 + std::pow(10.0, 4.756 - ph)); }
double citrate_charge(double ph) {
  const double h = std::pow(10.0, -ph);
  const double k1 = std::pow(10.0, -3.128), k2 = std::pow(10.0, -4.761),
               k3 = std::pow(10.0, -6.396);
  const double one = h * h * k1, two = h * k1 * k2, three = k1 * k2 * k3;
  return (one + 2.0 * two + 3.0 * three) / (h * h * h + one + two + three);
}
double lemon_g(const line& l) { return l.in[0] * mL_per_floz / 2.0 * 1.03 * l.in[1] / 100.0; }
double vinegar_g(const line& l) { return l.in[0] * mL_per_floz / 2.0 * l.in[1] / 100.0; }

/// Ids that begin alike are worked out alike; the longest beginning counts.
struct kind {
  std::string_view ids;
  double (*value)(const line&);
};

constexpr double acetic_g_per_mol = 60.052;
constexpr double citric_g_per_mol = 192.124;

const kind kinds[] = {
    {"if97-n",
     [](const line& l) {
       return detail::saturation_n[static_cast<std::size_t>(std::stoi(l.id.substr(6))) - 1];
     }},
    {"if97-t35-", saturation_pressure},
    {"if97-t36-", saturation_temperature},
    {"if97-pm", saturation_pressure},
    {"if97-tb", saturation_temperature},
    {"tsat-", saturation_temperature},
    {"psat-", saturation_pressure},
    {"retort-120c-", gauge_for},
    {"isa-const-", isa_constant},
    {"isa-exp", [](const line&) { return detail::pressure_exponent; }},
    {"isa-scale-",
     [](const line& l) {
       return detail::sea_level_k / detail::lapse_k_per_m / (l.unit == "ft" ? m_per_ft : 1.0);
     }},
    {"isa-11km", atmosphere},
    {"isa-p", atmosphere},
    {"isa-ratio-",
     [](const line& l) { return number(air_pressure_pa(metres(l))) / detail::sea_level_pa; }},
    {"isa-inhg-", atmosphere},
    {"isa-m-",
     [](const line& l) { return number(air_pressure_pa(geopotential_m(metres(l)))) / 1e5; }},
    {"boil-", boiling},
    {"boil-isothermal-", boiling_isothermal},
    {"canner-need-240", gauge_for},
    {"canner-need240-", [](const line& l) { return number(gauge_psi_for(240.0, l.in[0])); }},
    {"canner-", steam},
    {"canner-air-",
     [](const line& l) { return number(steam_temperature_f(10.5, 0.0, l.in[0] / 100.0)); }},
    {"lethal-f-", [](const line& l) { return number(lethal_rate(l.in[0])); }},
    {"lethal-c-", [](const line& l) { return number(lethal_rate(l.in[0], f0_celsius)); }},
    {"lethal-ex-",
     [](const line& l) {
       return number(lethal_rate(l.in[0], {l.in[1], l.in[2]}));
     }},
    {"f0-ex-fao-total", steps_of_rates},
    {"f0-ex-fao-heat", [](const line& l) { return (l.in[0] / 2.0 + l.in[1]) * l.in[2]; }},
    {"f0-trapezoid-uneven", trapezoids},
    {"f0-ramp-", ramp},
    {"f0-", [](const line& l) { return number(minutes_at(250.0, l.in[0] * l.in[1])); }},
    {"hold-240-", [](const line& l) { return number(minutes_at(240.0, l.in[0])); }},
    {"cbot-z-f", [](const line&) { return f0_celsius.z * 1.8; }},
    {"cbot-d-", [](const line& l) { return number(minutes_at(l.in[0], 0.21)); }},
    {"cbot-a16037-z-", z_of_three},
    {"np-85-rate",
     [](const line& l) {
       return number(lethal_rate(l.in[0], {90.0, 7.0}));
     }},
    {"np-85-time",
     [](const line& l) {
       return number(minutes_at(l.in[0], 10.0, {90.0, 7.0}));
     }},
    {"u-", volume},
    {"jar-", volume},
    {"u-psi", pressure_unit},
    {"u-atm-", pressure_unit},
    {"u-bar-", pressure_unit},
    {"u-inhg", pressure_unit},
    {"u-lb", [](const line&) { return g_per_oz * 16.0; }},
    {"u-oz", [](const line&) { return g_per_oz; }},
    {"u-ft", [](const line& l) { return l.in[0] * m_per_ft; }},
    {"u-f2c-", [](const line& l) { return celsius_from_fahrenheit(l.in[0]); }},
    {"salt-cup", [](const line& l) { return l.in[0] * g_per_oz; }},
    {"vinegar-grain", [](const line& l) { return l.in[0] / 10.0; }},
    {"vinegar-dilute-total", [](const line& l) { return l.in[0] * l.in[1] / l.in[2]; }},
    {"vinegar-dilute-water", [](const line& l) { return l.in[0] * (l.in[1] / l.in[2] - 1.0); }},
    {"vinegar-mix-", [](const line& l) { return l.in[0] * l.in[1] / (l.in[0] + l.in[2]); }},
    {"vinegar-molar", [](const line& l) { return l.in[0] * 10.0 / acetic_g_per_mol; }},
    {"vinegar-ph",
     [](const line& l) {
       return weak_acid_ph(l.in[0] * 10.0 / acetic_g_per_mol, std::pow(10.0, -4.756));
     }},
    {"pka-", [](const line& l) { return -std::log10(l.in[0]); }},
    {"hh-1", [](const line& l) { return -std::log10(l.in[2]) + std::log10(l.in[1] / l.in[0]); }},
    {"hh-2", [](const line& l) { return l.in[2] + std::log10(l.in[1] / l.in[0]); }},
    {"hh-3", [](const line& l) { return l.in[1] + std::log10(l.in[0]); }},
    {"weak-", [](const line& l) { return weak_acid_ph(l.in[0], l.in[1]); }},
    {"acetic-ionised-", [](const line& l) { return ionised(l.in[0]); }},
    {"citric-charge-", [](const line& l) { return citrate_charge(l.in[0]); }},
    {"acid-g-lemon", lemon_g},
    {"acid-g-vinegar", vinegar_g},
    {"acid-meq-lemon-46",
     [](const line& l) { return lemon_g(l) / citric_g_per_mol * 1e3 * citrate_charge(l.in[2]); }},
    {"acid-meq-vinegar-46",
     [](const line& l) { return vinegar_g(l) / acetic_g_per_mol * 1e3 * ionised(l.in[2]); }},
};

const kind* kind_of(const line& l) {
  const kind* best = nullptr;
  for (const kind& k : kinds) {
    const bool begins = l.id.compare(0, k.ids.size(), k.ids) == 0;
    if (begins && (best == nullptr || best->ids.size() < k.ids.size())) best = &k;
  }
  return best;
}

TEST_SUITE("published") {
  TEST_CASE("every number of the science file that has a formula") {
    std::set<std::string> ids;
    std::set<std::string_view> used;
    for (const line& l : lines()) {
      INFO("science.csv " << l.id);
      CHECK(ids.insert(l.id).second);
      const kind* k = kind_of(l);
      REQUIRE_MESSAGE(k != nullptr, "no formula for this line");
      used.insert(k->ids);
      const double value = k->value(l);
      // An exact number may still be off by the last digits that a double holds.
      const double tolerance = std::max(l.tolerance, std::abs(l.value) * 1e-15);
      INFO("expected " << l.value << " within " << l.tolerance << ", got " << value);
      CHECK(std::abs(value - l.value) <= tolerance);
    }
    for (const kind& k : kinds) {
      INFO("kind " << std::string(k.ids));
      CHECK(used.count(k.ids) == 1);
    }
  }
}

}  // namespace
}  // namespace science_tests
