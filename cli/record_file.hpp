// Adding lines to a shelf record, so that none is lost: not by two programs at once, and not by a
// disk that is full (docs/shelf.md).
// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "exit_code.hpp"

namespace jarproof::cli {

/// Adds lines of `record_line` to the file, which is made where there is none: all of them in one
/// piece, or, with a complaint, none. What says nothing new of a lot is not added again. A lot
/// that is recorded otherwise is refused (`not_done`), and so is a run log that is not accepted,
/// of a lot that is not on the shelf (the status of its verdict).
[[nodiscard]] exit_code append_records(const std::string& file,
                                       const std::vector<std::string>& lines);

}  // namespace jarproof::cli
