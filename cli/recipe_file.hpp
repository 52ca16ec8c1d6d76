// Recipes on the command line: the file that a plan names, and recipes as plans of their own.
// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "jarproof/document.hpp"
#include "jarproof/recipe.hpp"

namespace jarproof::cli {

/// Reads the file that the key `recipe` of a plan names, from `folder` on, and puts the recipe into
/// the document. What goes wrong becomes a fault of the document. A plan without that key stays as
/// it is.
void add_named_recipe(document& plan, const std::string& folder);

/// The folder that a file stands in; empty for the current one.
[[nodiscard]] std::string folder_of(const std::string& file);

/// One plan for each recipe, named `NAME`, or `NAME[1]`, `NAME[2]` ... where there are several; in
/// a JSON array the number is that of the element.
[[nodiscard]] std::vector<document> plans_of(std::vector<recipe> recipes, const std::string& name);

}  // namespace jarproof::cli
