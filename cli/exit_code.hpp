// Exit status of every command; docs/exit-codes.md is written from this.
// SPDX-License-Identifier: MIT
#pragma once

#include "jarproof/report.hpp"

namespace jarproof::cli {

enum exit_code : int {
  all_accepted = 0,  ///< also: the command did its work
  some_rejected = 1,
  not_accepted = 2,  ///< nothing rejected, something untested or incomplete; nothing found
  not_done = 3       ///< bad usage, unreadable file or plan, broken rules, no plan
};

/// 3 wins over 1, 1 over 2.
[[nodiscard]] constexpr exit_code worse(exit_code a, exit_code b) noexcept {
  if (a == not_done || b == not_done) return not_done;
  if (a == some_rejected || b == some_rejected) return some_rejected;
  return a > b ? a : b;
}

[[nodiscard]] constexpr exit_code code_of(verdict v) noexcept {
  switch (v) {
    case verdict::accepted:
      return all_accepted;
    case verdict::rejected:
      return some_rejected;
    case verdict::untested:
    case verdict::incomplete:
      return not_accepted;
    case verdict::unreadable:
      break;
  }
  return not_done;
}

}  // namespace jarproof::cli
