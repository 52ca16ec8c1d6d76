// The edition that is compiled into the library (target jarproof::builtin).
// SPDX-License-Identifier: MIT
#pragma once

#include "jarproof/edition.hpp"

namespace jarproof {

/// Constant data: nothing is parsed or allocated, at start or later.
[[nodiscard]] const edition& builtin_edition() noexcept;

}  // namespace jarproof
