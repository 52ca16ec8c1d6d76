// The tree that every reader (YAML, JSON) hands to the plan and rule readers.
//
//   const jarproof::node* jar = jarproof::find(document.root, "jar");
//   if (jar) use(jar->text, jar->line, jar->column);
//
// A text becomes a tree without losing where each key and value stood; what the values mean is
// decided later, so that one text gives all its errors at once.
// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "jarproof/result.hpp"

namespace jarproof {

enum class node_kind { null, scalar, sequence, map };

/// How a scalar was written; a folded scalar has lost its line ends.
enum class scalar_style { plain, quoted, literal, folded };

struct member;

/// One value of a document with its place (1-based; 0 where the format has no lines).
struct node {
  node_kind kind = node_kind::null;
  scalar_style style = scalar_style::plain;
  bool faulty = false;     ///< a fault of the document stands here; nothing more is to be said
  bool in_recipe = false;  ///< stands in the recipe that the plan names, not in the plan
  std::string text;        ///< of a scalar
  int line = 0;
  int column = 0;       ///< in characters
  int text_column = 0;  ///< of a literal block: where its lines begin, from the line below on
  std::string path;     ///< keys from the root, such as `canner.quarts` or `prepared[2]`
  std::vector<member> members;  ///< of a map, in the order of the text
  std::vector<node> items;      ///< of a sequence
};

/// One key of a map with its value.
struct member {
  std::string key;
  int line = 0;
  int column = 0;
  node value;
};

/// One document of a text, for example one plan of a file that holds several.
struct document {
  std::string name;     ///< display name of the text; `FILE:LINE` for a line of JSON Lines
  node root;            ///< as far as it could be read
  problems faults;      ///< duplicate keys, anchors, broken syntax and the like in this document
  bool broken = false;  ///< the syntax broke: `root` ends where it did
  std::string recipe_source = {};  ///< display name of the recipe; empty where it has none
};

/// The value of `key` in a map, or null.
[[nodiscard]] inline const node* find(const node& map, std::string_view key) noexcept {
  for (const member& m : map.members) {
    if (m.key == key) return &m.value;
  }
  return nullptr;
}

}  // namespace jarproof
