// A canning day in words: what the text and the page say alike.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/day.hpp"
#include "jarproof/detail/day_words.hpp"
#include "jarproof/detail/report_words.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/numbers.hpp"
#include "jarproof/quantity.hpp"

namespace jarproof::detail {

/// `14:30`, and on later days `00:30 (+1 day)`; without a time of day `0:45` from the start.
[[nodiscard]] inline std::string clock_text(const day_plan& d, int minute) {
  if (!d.start_min) return std::to_string(minute / 60) + ":" + two_digits(minute % 60);
  const int at = *d.start_min + minute;
  std::string out = two_digits(at / 60 % 24) + ":" + two_digits(at % 60);
  const int days = at / minutes_a_day;
  if (days > 0) out += " (+" + std::to_string(days) + (days == 1 ? " day)" : " days)");
  return out;
}

[[nodiscard]] inline std::string hours_text(int minutes) {
  if (minutes < 60) return std::to_string(minutes) + " min";
  std::string out = std::to_string(minutes / 60) + " h";
  if (minutes % 60 != 0) out += " " + std::to_string(minutes % 60) + " min";
  return out;
}

/// `8 h to 9 h 30 min`, one of them where both are the same.
[[nodiscard]] inline std::string hours_range(int least, int most) {
  return least == most ? hours_text(most) : hours_text(least) + " to " + hours_text(most);
}

/// A volume of food with the millilitres: `13.5 fl oz (400 mL)`, both rounded down.
[[nodiscard]] inline std::string floz_text(std::int64_t millionths) {
  const std::int64_t tenths = millionths / 100'000;
  // 1 fl oz = 29.57353 mL (NIST SP 811, appendix B.8).
  const std::int64_t ml = millionths / 1'000 * 2'957'353 / 100'000'000;
  return decimal_of_thousandths(tenths * 100) + " fl oz (" + grouped(ml) + " mL)";
}

[[nodiscard]] inline std::string range_of_thousandths(std::int64_t low, std::int64_t high) {
  return low == high ? decimal_of_thousandths(high)
                     : decimal_of_thousandths(low) + " to " + decimal_of_thousandths(high);
}

/// `10 to 14 lb of apples (a quarter bushel)`.
[[nodiscard]] inline std::string food_text(const day_food& f) {
  // 1 lb = 0.45359237 kg (NIST SP 811, appendix B.8), up to the next 100 g.
  const auto kg = [](std::int64_t lb) {
    return divide(lb * 45'359'237, 10'000'000'000, rounding::up) * 100;
  };
  std::string out = range_of_thousandths(f.least_lb, f.most_lb) + " lb of " + f.name + " (" +
                    range_of_thousandths(kg(f.least_lb), kg(f.most_lb)) + " kg)";
  if (f.most_bushels > 0) {
    out += ", or " + range_of_thousandths(f.least_bushels, f.most_bushels) +
           (f.most_bushels > 1'000 ? " bushels" : " bushel");
  }
  return out;
}

/// `8 pint`, and in a mixed load `4 pint of Salsa + 3 quart of Tomatoes`.
[[nodiscard]] inline std::string load_jars_text(const day_plan& d, const day_load& l) {
  std::string out;
  for (const day_load_part& p : l.parts) {
    out += (out.empty() ? "" : " + ") + std::to_string(p.count) + " " +
           d.batches[p.batch].jars->jar + (p.count == 1 ? " jar" : " jars");
    if (d.batches.size() > 1) out += " of " + d.batches[p.batch].name;
  }
  return out;
}

/// The jars of a batch that is accepted, and the fresh food for them.
[[nodiscard]] inline std::vector<named_value> rows_of_jars(const day_batch& b) {
  std::vector<named_value> out;
  if (b.jars) {
    const day_jars& j = *b.jars;
    std::string count = std::to_string(j.count) + " " + j.jar + (j.count == 1 ? " jar" : " jars");
    if (j.most > j.count) {
      count = "at least " + count + ", " + std::to_string(j.most) + " at most: have " +
              std::to_string(j.most - j.count) + " more ready";
    }
    out.push_back({"jars", std::move(count)});
    out.push_back({"each holds", floz_text(j.fill_least) + " with a wide mouth to " +
                                     floz_text(j.fill_most) +
                                     " with a regular one (estimate: jar less the headspace as a "
                                     "cylinder of the mouth)"});
    if (j.available > 0) out.push_back({"to fill", floz_text(j.available)});
    if (j.left > 0) {
      std::string text = floz_text(j.left) + ", by regular mouths.";
      for (const day_step& s : b.left) text += " " + s.says;
      out.push_back({"left over", std::move(text)});
    }
  }
  if (b.produce) out.push_back({"fresh food", food_text(*b.produce)});
  return out;
}

/// `3 loads: 8 + 8 + 7`
[[nodiscard]] inline std::string heading_of_loads(const day_plan& d) {
  if (d.loads.size() == 1) return "One load of " + std::to_string(d.loads.front().jars);
  std::string sizes;
  for (const day_load& l : d.loads) sizes += (sizes.empty() ? "" : " + ") + std::to_string(l.jars);
  return std::to_string(d.loads.size()) + " loads: " + sizes;
}

/// How long it takes, from when to when.
[[nodiscard]] inline std::vector<named_value> rows_of_day(const day_plan& d) {
  std::vector<named_value> out;
  out.push_back(
      {"all", hours_range(d.least_total_min, d.total_min) + ", planned with the longest"});
  out.push_back({"fuel on", hours_range(d.least_fuel_min, d.fuel_min)});
  if (d.start_min) {
    out.push_back({"start", (d.date.empty() ? "" : d.date + " ") + clock_text(d, 0) +
                                ", the first jars filled and on the heat"});
    out.push_back({"end", clock_text(d, d.total_min) + ", the last jars come out"});
  } else {
    out.push_back({"clock",
                   "hours and minutes from when the first jars are on the heat; with `start` or "
                   "`finish-by` times of day"});
  }
  return out;
}

/// `Load 2: 8 pint jars (the canner holds 9)`
[[nodiscard]] inline std::string heading_of_load(const day_plan& d, const day_load& l) {
  return "Load " + std::to_string(l.number) + ": " + load_jars_text(d, l) + " (the canner holds " +
         std::to_string(l.holds) + ")";
}

/// `After 12 to 24 hours`
[[nodiscard]] inline std::string heading_after(const edition& rules) {
  return "After " + number_text(rules, "cool-least") + " to " + number_text(rules, "cool-most") +
         " hours";
}

inline constexpr std::string_view no_card_text =
    "No step card and no loads: only a plan that is accepted gets them.";

}  // namespace jarproof::detail
