// The plans that a command is given: files, `--input` and `--set`.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/document.hpp"
#include "jarproof/plan.hpp"
#include "jarproof/result.hpp"
#include "jarproof/shelf_today.hpp"
#include "options.hpp"

namespace jarproof::cli {

/// One plan of a file, or what makes it unreadable.
struct plan_entry {
  std::string name;
  result<plan> what;
  std::string file = {};  ///< as given on the command line
  document text = {};     ///< what the plan was read from
  std::optional<std::size_t> lot =
      {};  ///< it is that of a recorded lot, at this place in the shelf
};

/// True where the option has one of these values; complains otherwise.
[[nodiscard]] bool one_of(const boost::program_options::variables_map& values, const char* option,
                          std::initializer_list<std::string_view> known);

/// What the options `file`, `input` and `set` give, in order; `status` is `not_done` where one of
/// them cannot be read or holds no plan. Nothing, with a complaint, where the options are wrong.
/// In JSON Lines the record of a lot gives its plan; a line about its jars gives no plan, or, where
/// it is wrong, one that is unreadable.
struct plan_files {
  std::vector<plan_entry> plans;
  jarproof::shelf shelf;
  int unread_lines = 0;  ///< of JSON Lines: no JSON, or a line of a record that cannot be used
  exit_code status = all_accepted;
};
[[nodiscard]] std::optional<plan_files> read_plan_files(
    const boost::program_options::variables_map& values, const std::string& usage);

/// The lots of a shelf record, for a command whose plans stand elsewhere. Lines that cannot be used
/// are complained about, and the status is `not_done`; plans between the lines are passed over.
/// Nothing, with a complaint, where the file cannot be read or holds no lot.
[[nodiscard]] std::optional<plan_files> read_shelf(const std::string& file);

/// Of a shelf: each lot counts by its plan now and then, and by its run log. A lot may be worse
/// than its plan: then its run log was not accepted.
[[nodiscard]] exit_code status_of(const shelf_today& today);

}  // namespace jarproof::cli
