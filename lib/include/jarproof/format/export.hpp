// A whole edition as data: JSON (docs/edition-schema.json) and CSV (RFC 4180).
//
//   std::string json = jarproof::edition_json(edition);
//   std::string csv = jarproof::edition_csv(edition);   // `record` says what a line is
//
// Numbers stand in the unit in which their source printed them; the unit is part of the key.
// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "jarproof/detail/export_csv.hpp"
#include "jarproof/detail/export_json.hpp"

namespace jarproof {

/// The whole edition as one JSON object.
[[nodiscard]] inline std::string edition_json(const edition& rules) {
  return detail::edition_writer(rules).take();
}

/// The edition as CSV with a header; `record` is `edition`, `source`, `food`, `row`, `condition`,
/// `acid`, `recipe-part`, `ingredient`, `weight`, `without-process`, `ph` or `check`.
[[nodiscard]] inline std::string edition_csv(const edition& rules) {
  return detail::csv_writer(rules).take();
}

}  // namespace jarproof
