// SPDX-License-Identifier: MIT
#include "published.hpp"

#include <doctest/doctest.h>

#include <string_view>

#include "fixtures.hpp"

namespace fixtures {
namespace {

/// Fields of RFC 4180 lines.
std::vector<std::vector<std::string>> csv(const std::string& text) {
  std::vector<std::vector<std::string>> lines(1, std::vector<std::string>(1));
  bool quoted = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (quoted) {
      if (c == '"' && i + 1 < text.size() && text[i + 1] == '"') {
        lines.back().back() += c;
        ++i;
      } else if (c == '"') {
        quoted = false;
      } else {
        lines.back().back() += c;
      }
    } else if (c == '"') {
      quoted = true;
    } else if (c == ',') {
      lines.back().emplace_back();
    } else if (c == '\n') {
      lines.emplace_back(1);
    } else {
      lines.back().back() += c;
    }
  }
  if (lines.back().size() == 1) lines.pop_back();
  return lines;
}

std::vector<std::string> split(const std::string& text, char by) {
  std::vector<std::string> out(1);
  for (const char c : text) {
    if (c == by) {
      out.emplace_back();
    } else {
      out.back() += c;
    }
  }
  return out;
}

int thousandths(const std::string& decimal) {
  const auto parts = split(decimal, '.');
  std::string places = parts.size() > 1 ? parts[1] : "";
  places.resize(3, '0');
  return std::stoi(parts[0]) * 1000 + std::stoi(places);
}

std::vector<published_row> read() {
  std::vector<published_row> out;
  for (const char* file : {"vegetables", "vegetables-and-mixtures", "meats-and-seafood", "fruits",
                           "tomatoes", "pickles-and-jams"}) {
    const auto lines = csv(file_text(std::string("tests/published/") + file + ".csv"));
    REQUIRE(lines.size() > 1);
    for (std::size_t i = 1; i < lines.size(); ++i) {
      const auto& f = lines[i];
      INFO(file << ".csv line " << i + 1);
      REQUIRE(f.size() == 13);
      published_row row{f[0], f[1], f[2], f[3], f[4], {}, thousandths(f[8]), f[9], f[10], f[12]};
      const bool in_water = row.column == "boiling-water";
      const auto bands = split(f[5], '/');
      const auto psi = split(f[6], '/');
      const auto minutes = split(f[7], '/');
      REQUIRE(bands.size() == (in_water ? minutes : psi).size());
      for (std::size_t b = 0; b < bands.size(); ++b) {
        const auto ends = split(bands[b], '-');
        REQUIRE(ends.size() == 2);
        row.bands.push_back({std::stoi(ends[0]), ends[1].empty() ? 0 : std::stoi(ends[1]),
                             in_water ? 0 : std::stoi(psi[b]),
                             std::stoi(minutes[in_water ? b : 0])});
      }
      out.push_back(std::move(row));
    }
  }
  return out;
}

}  // namespace

std::vector<std::vector<std::string>> published_lines(const std::string& file) {
  return csv(file_text("tests/published/" + file));
}

const std::vector<published_row>& published_rows() {
  static const std::vector<published_row> rows = read();
  return rows;
}

}  // namespace fixtures
