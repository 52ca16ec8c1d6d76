// Numbers as a cook reads them: `4,600 ft (1,402 m)`, `15 psi (103 kPa)`, `1 1/4 in (32 mm)`.
//
// No streams and no locale, so that a report is the same everywhere. A pressure beside a published
// US figure is rounded up on a dial; altitudes and headspaces go to the nearest metre and mm.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "jarproof/edition.hpp"

#include "jarproof/quantity.hpp"

namespace jarproof {

/// `12345` as `12,345`.
[[nodiscard]] inline std::string grouped(std::int64_t number) {
  std::string digits = std::to_string(number < 0 ? -number : number);
  for (std::size_t at = digits.size(); at > 3; at -= 3) digits.insert(at - 3, 1, ',');
  return number < 0 ? "-" + digits : digits;
}

/// A decimal of thousandths without trailing zeros: 1250 is `1.25`.
[[nodiscard]] inline std::string decimal_of_thousandths(std::int64_t thousandths) {
  std::string out = thousandths < 0 ? "-" : "";
  const std::int64_t size = thousandths < 0 ? -thousandths : thousandths;
  out += std::to_string(size / 1000);
  std::string part = std::to_string(1000 + size % 1000).substr(1);
  while (!part.empty() && part.back() == '0') part.pop_back();
  return part.empty() ? out : out + "." + part;
}

/// Thousandths of a unit as whole and fraction where it is a kitchen fraction: 1250 is `1 1/4`.
[[nodiscard]] inline std::string kitchen_fraction(int thousandths) {
  struct known {
    int thousandths;
    const char* text;
  };
  constexpr known fractions[] = {{125, "1/8"}, {250, "1/4"}, {375, "3/8"}, {500, "1/2"},
                                 {625, "5/8"}, {750, "3/4"}, {875, "7/8"}};
  for (const known& f : fractions) {
    if (thousandths % 1000 != f.thousandths) continue;
    return thousandths < 1000 ? f.text : std::to_string(thousandths / 1000) + " " + f.text;
  }
  return decimal_of_thousandths(thousandths);
}

/// An altitude, with the metres to the nearest.
[[nodiscard]] inline std::string altitude_text(int feet) {
  const std::int64_t metres = (std::int64_t{feet} * 3048 + 5'000) / 10'000;
  return grouped(feet) + " ft (" + grouped(metres) + " m)";
}

/// A published pressure with its kPa (1 psi = 6.894757 kPa, NIST SP 811, B.8): on a dial rounded
/// up, on a weight to the nearest, which is how weights are marked.
[[nodiscard]] inline std::string pressure_text(int psi, std::string_view gauge = "dial") {
  const std::int64_t pascal = std::int64_t{psi} * 6'894'758 / 1'000;
  const std::int64_t kpa = gauge == "weighted" ? (pascal + 500) / 1'000 : (pascal + 999) / 1'000;
  return std::to_string(psi) + " psi (" + std::to_string(kpa) + " kPa)";
}

/// What a dial must show that reads high by so many millionths of a psi.
[[nodiscard]] inline std::string dial_text(int psi, std::int64_t high) {
  const auto pounds = [](std::int64_t micro) {
    return decimal_of_thousandths((micro + 999) / 1'000) + " psi";
  };
  return "must show " + pounds(std::int64_t{psi} * 1'000'000 + high) + ", as it reads " +
         pounds(high) + " high";
}

/// A published headspace, with mm to the nearest (reading precision is 1 mm).
[[nodiscard]] inline std::string headspace_text(int thousandths_in) {
  const std::int64_t mm = (std::int64_t{thousandths_in} * 254 + 5'000) / 10'000;
  return kitchen_fraction(thousandths_in) + " in (" + std::to_string(mm) + " mm)";
}

/// A share of a jar: `half`, `40 %`.
[[nodiscard]] inline std::string share_of_jar(int percent) {
  return percent == 50 ? "half" : std::to_string(percent) + " %";
}

/// `75 min`, and from an hour on also `1 h 15 min`.
[[nodiscard]] inline std::string time_text(int minutes) {
  std::string out = std::to_string(minutes) + " min";
  if (minutes > 60) {
    out += " (" + std::to_string(minutes / 60) + " h";
    if (minutes % 60 != 0) out += " " + std::to_string(minutes % 60) + " min";
    out += ")";
  }
  return out;
}

/// `pH 3.3 to 4.8 (apricots)`: a published value, which explains and never permits.
[[nodiscard]] inline std::string ph_text(const ph_entry& e) {
  std::string out = "pH " + decimal_of_thousandths(e.low_hundredths * 10);
  if (e.high_hundredths != e.low_hundredths)
    out += " to " + decimal_of_thousandths(e.high_hundredths * 10);
  out += " (" + std::string(e.food) + (e.evidence == "memory" ? ", from memory)." : ").");
  if (!e.says.empty()) out += " " + std::string(e.says);
  return out;
}

}  // namespace jarproof
