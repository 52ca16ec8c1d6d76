// The commands; each gets its own arguments and returns the exit status.
// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "exit_code.hpp"

namespace jarproof::cli {

using arguments = std::vector<std::string>;

exit_code run_check(const arguments& args);
exit_code run_why(const arguments& args);
exit_code run_find(const arguments& args);
exit_code run_ways(const arguments& args);
exit_code run_log(const arguments& args);
exit_code run_day(const arguments& args);
exit_code run_rules(const arguments& args);

}  // namespace jarproof::cli
