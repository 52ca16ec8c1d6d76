// Shared by the tests: plans from text, the rule folder, reports.
// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/jarproof.hpp"
#include "jarproof/rules.hpp"

namespace fixtures {

/// A file of the checkout; the test fails where it cannot be read.
std::string file_text(const std::string& path_in_checkout);

/// All rule files of the checkout, in order.
std::vector<jarproof::rule_file> rule_files();

/// The edition of the rule folder, loaded once.
const jarproof::edition& loaded_edition();

/// A plan from YAML text that must be readable.
jarproof::plan plan_from(std::string_view yaml);

/// The report of a YAML plan under the built-in edition.
jarproof::report judged(std::string_view yaml);

/// `key: value` lines, with changes; an empty value leaves a key out.
std::string plan_text(std::map<std::string, std::string> keys,
                      const std::map<std::string, std::string>& changes = {});

/// Green beans, raw pack, pints, weighted gauge at 4,600 ft: accepted as it stands
/// (USDA Complete Guide 2015, part 4, page 4-8: 20 min, 15 psi above 1,000 ft).
std::map<std::string, std::string> beans();

/// The same on a dial gauge: 13 psi up to 6,000 ft.
std::map<std::string, std::string> dial_beans();

/// The report of `beans` with changes.
jarproof::report beans_with(const std::map<std::string, std::string>& changes);

/// True where the report has a finding of this check; with an outcome, one that has it.
bool has(const jarproof::report& r, std::string_view check);
const jarproof::finding* finding_of(const jarproof::report& r, std::string_view check);

}  // namespace fixtures
