// Reading JSON and JSON Lines into document trees, and recipes out of JSON and web pages (target
// jarproof::json, over Boost.JSON).
// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>
#include <vector>

#include "jarproof/document.hpp"
#include "jarproof/recipe.hpp"
#include "jarproof/result.hpp"

namespace jarproof {

/// One JSON text (RFC 8259): an object is one document, an array one document for each element.
/// Places are key paths, such as `canner.quarts`. Duplicate keys, bytes that are no UTF-8, nesting
/// deeper than 16 and more than `largest` MiB are refused; no plan is larger than one, but an
/// exported edition is.
[[nodiscard]] result<std::vector<document>> read_json(std::string_view text, std::string_view name,
                                                      int largest = 1);

/// One line of JSON Lines; `name` is `FILE:LINE`.
[[nodiscard]] result<document> read_json_line(std::string_view line, std::string_view name);

/// Every schema.org Recipe in a JSON text, or in the `<script type="application/ld+json">` elements
/// of a web page or a piece of one. A page may have 16 MiB, the JSON in it the usual 1 MiB.
[[nodiscard]] result<std::vector<recipe>> read_recipe_json(std::string_view text,
                                                           std::string_view name);

/// Recipes of any kind, told by what the text begins with: `{`, `[` or `<` is JSON or a web page,
/// anything else a recipe as pasted text.
[[nodiscard]] result<std::vector<recipe>> read_recipes(std::string_view text,
                                                       std::string_view name);

}  // namespace jarproof
