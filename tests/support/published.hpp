// The second entry of the published tables (tests/published/*.csv).
// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

namespace fixtures {

struct published_band {
  int from_ft = 0;
  int through_ft = 0;  ///< 0 where no upper end is printed
  int psi = 0;         ///< 0 in a boiling-water row
  int time_min = 0;
};

/// One row: one food, form, pack, jar and column; each pressure option is a row of its own.
struct published_row {
  std::string food;
  std::string form;
  std::string pack;
  std::string jar;
  std::string column;  ///< `dial`, `weighted` or `boiling-water`
  std::vector<published_band> bands;
  int headspace_thousandths_in = 0;
  std::string entry;  ///< `read`, `read-part`, `second-hand` or `copied`
  std::string source;
  std::string note;
};

/// All rows of all files; a malformed line fails the test.
const std::vector<published_row>& published_rows();

/// Fields of the lines of a CSV file below tests/published (RFC 4180), header included.
std::vector<std::vector<std::string>> published_lines(const std::string& file);

}  // namespace fixtures
