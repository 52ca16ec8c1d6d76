// What the commands share: parsing their options, opening files, choosing rules, writing out.
// SPDX-License-Identifier: MIT
#pragma once

#include <boost/program_options/options_description.hpp>
#include <boost/program_options/positional_options.hpp>
#include <boost/program_options/variables_map.hpp>
#include <optional>
#include <string>
#include <vector>

#include "commands.hpp"
#include "jarproof/builtin.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/text.hpp"
#include "jarproof/rules.hpp"

namespace jarproof::cli {

/// The options of one command, or nothing where they are wrong or ask for help; then `status` holds
/// the exit status and everything has been said.
struct parsed {
  std::optional<boost::program_options::variables_map> values;
  exit_code status = all_accepted;
};

[[nodiscard]] parsed parse(const arguments& args, const std::string& usage,
                           boost::program_options::options_description options,
                           const boost::program_options::positional_options_description& positions);

/// A line on standard error.
void complain(const std::string& message);
void complain(const problems& errors);

/// The text of a file, `-` for standard input; nothing, with a complaint, where it cannot be read.
[[nodiscard]] std::optional<std::string> read_file(const std::string& path);

/// All rule files of a folder.
[[nodiscard]] std::optional<std::vector<rule_file>> read_rule_folder(const std::string& folder);

/// The edition to use: the built-in one, or that of a folder; `owned` keeps the latter alive.
struct chosen_rules {
  std::optional<owned_edition> owned;
  [[nodiscard]] const edition& rules() const noexcept {
    return owned ? owned->view() : builtin_edition();
  }
};
[[nodiscard]] std::optional<chosen_rules> choose_rules(
    const boost::program_options::variables_map& values);

/// Colour on a terminal unless NO_COLOR is set.
[[nodiscard]] text_style style_of_output();

/// Writes to standard output; false, with a complaint, where that fails.
[[nodiscard]] bool print(const std::string& text);

}  // namespace jarproof::cli
