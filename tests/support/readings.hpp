// Shared by the tests of the readers: what a text says, or what is wrong with it.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <ctime>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/document.hpp"
#include "jarproof/result.hpp"

namespace fixtures {

/// One problem as the `.expect` files write it: `LINE:COLUMN path | message | write`.
std::string line_of(const jarproof::problem& p);

/// All problems of a text as such lines, from the reader or else from every plan of it; empty where
/// all of it can be read. The ending of `name` (.yaml, .json, .jsonl) says how it is read.
std::string faults_of(std::string_view text, std::string_view name = "plan.yaml");

/// Only the places: `LINE:COLUMN path`, a line each.
std::string fault_places_of(std::string_view text, std::string_view name = "plan.yaml");

/// The documents of a text that must be readable.
std::vector<jarproof::document> documents_of(std::string_view text,
                                             std::string_view name = "plan.yaml");

/// The root of a text that must hold exactly one document.
jarproof::node root_of(std::string_view text, std::string_view name = "plan.yaml");

/// `text` so many times.
std::string repeated(std::string_view text, std::size_t times);

bool begins(std::string_view text, std::string_view head);

/// The largest text that is read.
inline constexpr std::size_t one_mib = 1 << 20;

/// `LINE:COLUMN` of a key or value.
template <class Placed>
std::string place_of(const Placed& placed) {
  return std::to_string(placed.line) + ":" + std::to_string(placed.column);
}

}  // namespace fixtures
