// SPDX-License-Identifier: MIT
#include "jarproof/jarproof.hpp"

jarproof::verdict judged_elsewhere(const jarproof::plan& plan);

jarproof::verdict judged_elsewhere(const jarproof::plan& plan) {
  return jarproof::check(plan, jarproof::builtin_edition()).verdict;
}
