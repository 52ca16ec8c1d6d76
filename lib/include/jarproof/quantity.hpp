// Amounts as people write them: `75 min`, `1 h 15 min`, `1 1/4 in`, `½ in`, `5,200 ft`, `500 mL`.
//
//   auto time = jarproof::read_amount("1 h 15 min", jarproof::dimension::time);
//   if (time.ok()) use(time.value);                     // 4'500'000 ms
//   else explain(time.message, time.write);
//
// Values are integers in a fine unit of their dimension, so that a published number is compared
// exactly. What a conversion cannot hold exactly is rounded in the direction the caller asks for,
// which is never the cook's favour.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "jarproof/detail/words.hpp"
#include "jarproof/list.hpp"

namespace jarproof {

/// What an amount measures, and the unit in which its value is held.
enum class dimension {
  time,         ///< milliseconds
  pressure,     ///< millionths of a psi, gauge
  length,       ///< nanometres; an inch is exactly 25'400'000 (NIST SP 811, appendix B.8)
  altitude,     ///< thousandths of a foot; a foot is exactly 0.3048 m (NIST SP 811, B.8)
  volume,       ///< millionths of a US fluid ounce
  temperature,  ///< thousandths of a degree Fahrenheit
  share         ///< millionths of the whole
};

enum class rounding { down, up };

inline constexpr std::int64_t ms_per_min = 60'000;
inline constexpr std::int64_t micro_per_unit = 1'000'000;
inline constexpr std::int64_t nm_per_in = 25'400'000;
inline constexpr std::int64_t nm_per_mm = 1'000'000;

/// An amount that was read, or the reason why it could not be.
struct amount_reading {
  std::int64_t value = 0;
  bool metric = false;  ///< written in a metric unit, so `value` comes from a conversion
  std::string message;  ///< empty where the reading is good
  std::string write;    ///< what to write instead

  [[nodiscard]] bool ok() const noexcept { return message.empty(); }
};

namespace detail {

struct unit {
  std::string_view name;
  std::int64_t factor;  ///< value = number * factor / divisor + offset
  std::int64_t divisor;
  std::int64_t offset = 0;
  bool metric = false;
};

inline constexpr unit time_units[] = {
    {"min", 60'000, 1},   {"h", 3'600'000, 1},     {"minutes", 60'000, 1}, {"minute", 60'000, 1},
    {"mins", 60'000, 1},  {"hours", 3'600'000, 1}, {"hour", 3'600'000, 1}, {"hrs", 3'600'000, 1},
    {"hr", 3'600'000, 1}, {"s", 1'000, 1},         {"sec", 1'000, 1},      {"seconds", 1'000, 1},
    {"second", 1'000, 1}};
// 1 psi = 6.894757293 kPa (NIST SP 811, appendix B.8), so 1 kPa = 0.145037737 psi, cut off.
inline constexpr unit pressure_units[] = {{"psi", 1'000'000, 1},
                                          {"kpa", 145'037'737, 1'000, 0, true},
                                          {"bar", 14'503'773, 1, 0, true},
                                          {"psig", 1'000'000, 1},
                                          {"lb", 1'000'000, 1},
                                          {"lbs", 1'000'000, 1},
                                          {"pounds", 1'000'000, 1},
                                          {"pound", 1'000'000, 1}};
inline constexpr unit length_units[] = {
    {"in", 25'400'000, 1},         {"mm", 1'000'000, 1, 0, true}, {"inch", 25'400'000, 1},
    {"inches", 25'400'000, 1},     {"\"", 25'400'000, 1},         {"\xE2\x80\xB3", 25'400'000, 1},
    {"cm", 10'000'000, 1, 0, true}};
inline constexpr unit altitude_units[] = {{"ft", 1'000, 1},
                                          {"m", 1'250'000, 381, 0, true},
                                          {"feet", 1'000, 1},
                                          {"foot", 1'000, 1},
                                          {"'", 1'000, 1},
                                          {"metres", 1'250'000, 381, 0, true},
                                          {"meters", 1'250'000, 381, 0, true},
                                          {"metre", 1'250'000, 381, 0, true},
                                          {"meter", 1'250'000, 381, 0, true}};
// 1 mL = 0.033814023 US fluid ounces (NIST SP 811, appendix B.8: 1 fl oz = 29.57353 mL).
inline constexpr unit volume_units[] = {{"qt", 32'000'000, 1},
                                        {"oz", 1'000'000, 1},
                                        {"ml", 33'814'023, 1'000, 0, true},
                                        {"l", 33'814'023, 1, 0, true},
                                        {"fl oz", 1'000'000, 1},
                                        {"quart", 32'000'000, 1},
                                        {"quarts", 32'000'000, 1},
                                        {"pt", 16'000'000, 1},
                                        {"pint", 16'000'000, 1},
                                        {"pints", 16'000'000, 1},
                                        {"gal", 128'000'000, 1},
                                        {"gallon", 128'000'000, 1},
                                        {"gallons", 128'000'000, 1},
                                        {"cup", 8'000'000, 1},
                                        {"cups", 8'000'000, 1},
                                        {"tbsp", 500'000, 1},
                                        {"tsp", 500'000, 3},
                                        {"tablespoon", 500'000, 1},
                                        {"tablespoons", 500'000, 1},
                                        {"teaspoon", 500'000, 3},
                                        {"teaspoons", 500'000, 3},
                                        {"liter", 33'814'023, 1, 0, true},
                                        {"liters", 33'814'023, 1, 0, true},
                                        {"litre", 33'814'023, 1, 0, true},
                                        {"litres", 33'814'023, 1, 0, true},
                                        {"ounces", 1'000'000, 1},
                                        {"ounce", 1'000'000, 1}};
inline constexpr unit temperature_units[] = {{"f", 1'000, 1},
                                             {"c", 1'800, 1, 32'000, true},
                                             {"\xC2\xB0"
                                              "f",
                                              1'000, 1},
                                             {"\xC2\xB0"
                                              "c",
                                              1'800, 1, 32'000, true}};
inline constexpr unit share_units[] = {
    {"%", 10'000, 1}, {"percent", 10'000, 1}, {"", 1'000'000, 1}};

struct dimension_words {
  list<unit> units;
  std::string_view example;     ///< what to write
  std::string_view first_unit;  ///< the first one to write
  std::string_view accepted;    ///< units to name in a message
};

[[nodiscard]] constexpr dimension_words words_of(dimension d) noexcept {
  switch (d) {
    case dimension::time:
      return {time_units, "75 min", "min", "min or h"};
    case dimension::pressure:
      return {pressure_units, "11 psi", "psi", "psi, kPa or bar"};
    case dimension::length:
      return {length_units, "1 in", "in", "in, mm or cm"};
    case dimension::altitude:
      return {altitude_units, "4600 ft", "ft", "ft or m"};
    case dimension::volume:
      return {volume_units, "9 qt", "qt", "oz, cup, pt, qt, gal, mL or L"};
    case dimension::temperature:
      return {temperature_units, "182 F", "F", "F or C"};
    case dimension::share:
      return {share_units, "1/2", "%", "a fraction or %"};
  }
  return {time_units, "75 min", "min", "min or h"};
}

/// A number as written, exact: numerator over denominator.
struct number {
  std::int64_t over = 0;
  std::int64_t under = 1;
};

enum class number_fault { none, missing, too_large, too_fine, comma, zero_under };

struct fraction_sign {
  std::string_view sign;
  int over;
  int under;
};
inline constexpr fraction_sign fraction_signs[] = {
    {"\xC2\xBD", 1, 2},     {"\xC2\xBC", 1, 4},     {"\xC2\xBE", 3, 4},
    {"\xE2\x85\x93", 1, 3}, {"\xE2\x85\x94", 2, 3}, {"\xE2\x85\x9B", 1, 8},
    {"\xE2\x85\x9C", 3, 8}, {"\xE2\x85\x9D", 5, 8}, {"\xE2\x85\x9E", 7, 8}};

[[nodiscard]] constexpr bool starts_with(std::string_view text, std::string_view head) noexcept {
  return text.substr(0, head.size()) == head;
}

/// Takes up to `most` digits; more than that is a number no kitchen has.
[[nodiscard]] constexpr bool take_digits(std::string_view& text, int most, std::int64_t& value,
                                         int& count) noexcept {
  count = 0;
  value = 0;
  while (!text.empty() && is_digit(text.front())) {
    if (++count > most) return false;
    value = value * 10 + (text.front() - '0');
    text.remove_prefix(1);
  }
  return true;
}

[[nodiscard]] constexpr bool take_fraction_sign(std::string_view& text, number& out) noexcept {
  for (const fraction_sign& f : fraction_signs) {
    if (starts_with(text, f.sign)) {
      out = {out.over * f.under + f.over, f.under};
      text.remove_prefix(f.sign.size());
      return true;
    }
  }
  return false;
}

/// Reads `7`, `5,200`, `0.75`, `3/4`, `1 1/4`, `1½` from the front of `text`.
[[nodiscard]] constexpr number_fault take_number(std::string_view& text, number& out) noexcept {
  out = {};
  if (take_fraction_sign(text, out)) return number_fault::none;
  std::int64_t whole = 0;
  int digits = 0;
  if (!take_digits(text, 6, whole, digits)) return number_fault::too_large;
  if (digits == 0) return number_fault::missing;
  // A comma groups thousands (`5,200`); as a decimal sign it could turn 1,5 into 15.
  while (!text.empty() && text.front() == ',') {
    std::string_view rest = text.substr(1);
    std::int64_t group = 0;
    int count = 0;
    if (digits > 3 || !take_digits(rest, 3, group, count) || count != 3) return number_fault::comma;
    if (whole > 999) return number_fault::too_large;
    whole = whole * 1000 + group;
    text = rest;
  }
  out.over = whole;
  if (!text.empty() && text.front() == '.') {
    text.remove_prefix(1);
    std::int64_t part = 0;
    int count = 0;
    if (!take_digits(text, 4, part, count)) return number_fault::too_fine;
    if (count == 0) return number_fault::missing;
    for (int i = 0; i < count; ++i) {
      out.over *= 10;
      out.under *= 10;
    }
    out.over += part;
    return number_fault::none;
  }
  if (take_fraction_sign(text, out)) return number_fault::none;
  // `3/4`, or the fraction of `1 1/4`.
  std::string_view rest = text;
  const bool spaced = !rest.empty() && (rest.front() == ' ' || rest.front() == '-');
  std::int64_t over = whole;
  if (spaced) {
    rest = trim(rest.substr(1));
    if (take_fraction_sign(rest, out)) {
      text = rest;
      return number_fault::none;
    }
    if (!take_digits(rest, 3, over, digits) || digits == 0) return number_fault::none;
  }
  if (rest.empty() || rest.front() != '/') return number_fault::none;
  rest.remove_prefix(1);
  std::int64_t under = 0;
  if (!take_digits(rest, 3, under, digits) || digits == 0) return number_fault::missing;
  if (under == 0) return number_fault::zero_under;
  out = {spaced ? whole * under + over : over, under};
  text = rest;
  return number_fault::none;
}

[[nodiscard]] constexpr std::int64_t divide(std::int64_t over, std::int64_t under,
                                            rounding direction) noexcept {
  const std::int64_t quotient = over / under;
  const std::int64_t rest = over % under;
  if (rest == 0) return quotient;
  if (direction == rounding::up) return over > 0 ? quotient + 1 : quotient;
  return over < 0 ? quotient - 1 : quotient;
}

/// The unit at the front of `text`, longest name first; nothing may follow it but a blank, a digit
/// or the end, so that `min` is not read out of `mint`.
[[nodiscard]] inline const unit* take_unit(std::string_view& text, list<unit> units) {
  const unit* best = nullptr;
  for (const unit& u : units) {
    if (u.name.empty() || u.name.size() > text.size()) continue;
    if (best != nullptr && best->name.size() >= u.name.size()) continue;
    bool same = true;
    for (std::size_t i = 0; i < u.name.size(); ++i) same = same && lower(text[i]) == u.name[i];
    if (!same) continue;
    const std::string_view rest = text.substr(u.name.size());
    if (rest.empty() || is_space(rest.front()) || is_digit(rest.front()) || rest.front() == '.') {
      best = &u;
    }
  }
  if (best != nullptr) text.remove_prefix(best->name.size());
  if (best != nullptr && !text.empty() && text.front() == '.') text.remove_prefix(1);  // `min.`
  return best;
}

}  // namespace detail

/// Reads a whole text as one amount of dimension `d`. The number needs its unit; a share may be a
/// plain fraction. Only altitudes, temperatures and pressures (a gauge error) may carry a sign.
[[nodiscard]] inline amount_reading read_amount(std::string_view written, dimension d,
                                                rounding direction = rounding::down) {
  using namespace detail;
  const dimension_words words = words_of(d);
  amount_reading out;
  const auto fault = [&](std::string message, std::string write = {}) {
    out.message = std::move(message);
    out.write =
        write.empty() ? "write it like `" + std::string(words.example) + "`" : std::move(write);
    return out;
  };
  // Blanks of other widths come along when text is copied from a page.
  std::string plain(written);
  for (const std::string_view blank : {"\xC2\xA0", "\xE2\x80\xAF", "\xE2\x80\x89"}) {
    for (std::size_t at = plain.find(blank); at != std::string::npos; at = plain.find(blank, at)) {
      plain.replace(at, blank.size(), " ");
    }
  }
  std::string_view text = trim(plain);
  if (text.empty()) return fault("the amount is empty");
  bool negative = false;
  if (text.front() == '+' || text.front() == '-') {
    if (d != dimension::altitude && d != dimension::pressure && d != dimension::temperature) {
      return fault("the amount `" + std::string(written) + "` has a sign");
    }
    negative = text.front() == '-';
    text = trim(text.substr(1));
    if (text.empty()) return fault("`" + std::string(trim(written)) + "` is not an amount");
  }
  const std::string quoted = "`" + std::string(trim(written)) + "`";
  const unit* last = nullptr;
  while (!text.empty()) {
    number n;
    switch (take_number(text, n)) {
      case number_fault::none:
        break;
      case number_fault::missing:
        return fault(quoted + " is not an amount");
      case number_fault::too_large:
        return fault(quoted + " is larger than any kitchen amount");
      case number_fault::too_fine:
        return fault(quoted + " has more than four decimals", "round it to four decimals");
      case number_fault::comma:
        return fault(quoted + " has a comma that does not group thousands",
                     "use a point for decimals (`1.5`) and a comma only as in `5,200`");
      case number_fault::zero_under:
        return fault(quoted + " divides by zero");
    }
    const bool thousands =
        n.under == 1000 || (n.under > 1 && n.over > n.under && n.over / n.under < 100);
    if (d == dimension::altitude && thousands) {
      return fault(quoted + " may mean thousands",
                   "write thousands with a comma or without, such as `5,200 ft` or `5200 ft`");
    }
    text = trim(text);
    // `12-oz`: a hyphen may join the number to its unit.
    if (text.size() > 1 && text.front() == '-' && !is_digit(text[1])) text.remove_prefix(1);
    const unit* found = take_unit(text, words.units);
    if (found == nullptr && text.empty() && words.units[words.units.size() - 1].name.empty()) {
      found = words.units.end() - 1;
    }
    if (found == nullptr && text.empty()) {
      return fault(quoted + " has no unit", "write the unit: `" + std::string(trim(written)) + " " +
                                                std::string(words.first_unit) + "` (" +
                                                std::string(words.accepted) + ")");
    }
    if (found == nullptr) {
      return fault(
          quoted + " has a unit that is not known here",
          "use " + std::string(words.accepted) + ", as in `" + std::string(words.example) + "`");
    }
    // `1 h 15 min`: a further part is of the same system and smaller. Two readings of one thing
    // (`10 psi 69 kPa`) are not added up.
    const bool adds_up = d == dimension::time || d == dimension::volume;
    if (last != nullptr && (!adds_up || found->metric != last->metric ||
                            found->factor * last->divisor >= last->factor * found->divisor)) {
      return fault(quoted + " names more than one amount");
    }
    last = found;
    const std::int64_t over = (negative ? -n.over : n.over) * found->factor;
    out.value += divide(over, n.under * found->divisor, direction) + found->offset;
    out.metric = found->metric;
    text = trim(text);
  }
  // The lowest land lies about 1,400 ft below the sea; a stray dash would make 5,200 ft count as 0.
  if (d == dimension::altitude && out.value < -1'500'000) {
    return fault(quoted + " lies deeper than any land", "leave the minus out");
  }
  if (d == dimension::share && out.value > micro_per_unit) {
    return fault(quoted + " is more than the whole");
  }
  return out;
}

/// Altitude in whole feet, rounded up; below sea level counts as 0.
[[nodiscard]] constexpr int whole_feet(std::int64_t thousandths_of_ft) noexcept {
  if (thousandths_of_ft <= 0) return 0;
  return static_cast<int>(detail::divide(thousandths_of_ft, 1000, rounding::up));
}

}  // namespace jarproof
