// Publications, and where in them a fact stands.
// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace jarproof {

/// Where a fact was published. `ref` is the id of a `source`.
struct citation {
  std::string_view ref;
  std::string_view part;
  std::string_view page;
};

/// One publication.
struct source {
  std::string_view id;
  std::string_view title;
  std::string_view publisher;
  std::string_view edition;
  std::string_view url;
};

}  // namespace jarproof
