// What a check of one plan found.
//
//   jarproof::report r = jarproof::check(plan, edition);       // jarproof/check.hpp
//   if (r.verdict == jarproof::verdict::accepted) ...
//   for (const jarproof::finding& f : r.findings) use(f.check, f.message, f.fix);
//
// A report refers to the edition it was made with (ids, sources, texts), which must outlive it.
// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/edition.hpp"

namespace jarproof {

/// What a finding does to the verdict, mildest first.
enum class outcome { none, incomplete, untested, rejects };

/// How a finding is shown (the words of SARIF 2.1.0, section 3.27.10).
enum class level { note, warning, error };

enum class verdict { accepted, incomplete, untested, rejected, unreadable };

[[nodiscard]] constexpr std::string_view name_of(outcome o) noexcept {
  switch (o) {
    case outcome::rejects:
      return "rejects";
    case outcome::untested:
      return "untested";
    case outcome::incomplete:
      return "incomplete";
    case outcome::none:
      break;
  }
  return "none";
}

[[nodiscard]] constexpr std::string_view name_of(level l) noexcept {
  switch (l) {
    case level::error:
      return "error";
    case level::warning:
      return "warning";
    case level::note:
      break;
  }
  return "note";
}

[[nodiscard]] constexpr std::string_view name_of(verdict v) noexcept {
  switch (v) {
    case verdict::accepted:
      return "accepted";
    case verdict::rejected:
      return "rejected";
    case verdict::untested:
      return "untested";
    case verdict::incomplete:
      return "incomplete";
    case verdict::unreadable:
      break;
  }
  return "unreadable";
}

/// One result of a check.
struct finding {
  std::string check;
  jarproof::level level = jarproof::level::note;
  jarproof::outcome outcome = jarproof::outcome::none;
  std::string field;  ///< plan key it is about; may be empty
  std::string file;   ///< of the place, where it is not the plan's own: the recipe; else empty
  int line = 0;       ///< 0 where the plan's format has no lines
  int column = 0;
  std::string found;     ///< as the plan says it
  std::string required;  ///< as the table says it
  std::string message;
  std::string why;
  std::string explains;  ///< what physics says about it; decides nothing; mostly empty
  std::string fix;
  std::vector<std::string> sources;
};

/// A published process in numbers for one jar, gauge and altitude.
struct requirement {
  std::string method;
  std::string gauge;  ///< empty where the method has none
  std::optional<int> pressure_psi;
  int time_min = 0;
  std::string pack;
  std::string jar;    ///< the listed size whose time it is
  std::string style;  ///< the preparation as the table describes it
  int headspace_thousandths_in = 0;
  std::optional<int> vent_min;
  std::optional<int> least_f;  ///< low-temperature pasteurization: the water is held between
  std::optional<int> most_f;   ///< these two, degrees Fahrenheit
  bool verified = true;        ///< false where nobody could read the numbers again: not to be used
  std::vector<std::string> sources;
};

/// What a line of the plan's ingredients was taken for.
struct ingredient_line {
  int line = 0;
  std::string text;
  std::string ingredient;           ///< name found in the edition; empty where the line is unknown
  std::string amount;               ///< amount in front of it, as written; may be empty
  std::string kind;                 ///< `acid`, `low-acid`, `borderline` or `neutral`
  std::vector<std::string> traits;  ///< of the ingredient: `thickener`, `dairy`, ...
};

struct report {
  std::string source;
  std::string recipe_source;  ///< where the lines of `ingredients` stand, if not in `source`
  std::string title;
  jarproof::verdict verdict = jarproof::verdict::unreadable;
  const jarproof::process* process = nullptr;  ///< null where the plan matches no food
  int altitude_ft = -1;                        ///< -1 where the plan does not say
  std::int64_t dial_high = 0;                  ///< what its dial reads high, in millionths of a psi
  std::optional<requirement> required;
  std::vector<requirement> options;
  std::vector<ingredient_line> ingredients;
  std::string mixture_class;  ///< `acid`, `low-acid` or `borderline`; empty where none was judged
  std::string mixture_by;     ///< the line that makes it so; empty where a tested recipe does
  std::vector<finding> findings;  ///< by line, column and check id
};

/// The worst outcome decides.
[[nodiscard]] inline verdict verdict_of(const std::vector<finding>& findings) noexcept {
  outcome worst = outcome::none;
  for (const finding& f : findings) {
    if (f.outcome > worst) worst = f.outcome;
  }
  switch (worst) {
    case outcome::rejects:
      return verdict::rejected;
    case outcome::untested:
      return verdict::untested;
    case outcome::incomplete:
      return verdict::incomplete;
    case outcome::none:
      break;
  }
  return verdict::accepted;
}

}  // namespace jarproof
