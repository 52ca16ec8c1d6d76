// Shared by the tests of the shelf: lots recorded from plans, lines read, lines about jars.
// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "jarproof/shelf.hpp"

namespace fixtures {

/// Green beans, raw pack, 9 pints, weighted gauge at 4,600 ft, lot `beans-1` of 2026-07-18:
/// accepted (USDA Complete Guide 2015, part 4, page 4-8: 20 min, 15 psi above 1,000 ft).
std::map<std::string, std::string> kitchen_lot();

struct recorded_lot {
  jarproof::report report;
  std::string line;
};

/// The line of a plan that must be accepted; an empty value leaves a key out.
recorded_lot recorded(const std::map<std::string, std::string>& keys,
                      std::optional<jarproof::shelf_run> run = std::nullopt, int unsealed = 0);

/// Why a plan is not recorded, as `.expect` files have it; empty where it is.
std::string refusals_of(const std::map<std::string, std::string>& keys);

/// One line read as line 1 of `shelf.jsonl`; it must be readable.
jarproof::shelf_line line_from(std::string_view text);
jarproof::shelf_record record_from(std::string_view text);

/// What is wrong with a line that cannot be read: `PATH | message | write`, a line each.
std::string record_faults(std::string_view text);

/// Puts a readable line on a shelf; says why where it does not fit.
std::string add_line(jarproof::shelf& s, std::string_view text);

/// A line about jars.
std::string happening(std::string_view lot, std::string_view date, std::string_view what,
                      int count);

/// `text` with the first `from` as `to`; the test fails where there is none.
std::string replaced(std::string text, std::string_view from, std::string_view to);

}  // namespace fixtures
