// Reading YAML into document trees (target jarproof::yaml; yaml-cpp stays out of this header).
// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>
#include <vector>

#include "jarproof/document.hpp"
#include "jarproof/result.hpp"

namespace jarproof {

/// Every document of a YAML text, with line and column (1-based, in characters) for each key and
/// value. Duplicate keys, anchors, aliases, tags, `<<`, nesting deeper than 16 and broken syntax
/// are faults of their document, each with its place; documents before it stay readable. Bytes that
/// are no UTF-8, control characters, tabs for indentation and more than 1 MiB refuse the whole
/// text. An empty text gives no document. `name` is used in messages only; no file is opened.
[[nodiscard]] result<std::vector<document>> read_yaml(std::string_view text, std::string_view name);

}  // namespace jarproof
