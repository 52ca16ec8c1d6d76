// The tree that every reader hands on.
// SPDX-License-Identifier: MIT
#include "jarproof/document.hpp"

#include <doctest/doctest.h>

#include <string>
#include <utility>

namespace document_tests {

using jarproof::find;
using jarproof::node;
using jarproof::node_kind;
using jarproof::scalar_style;

namespace {

node map_of(std::initializer_list<std::pair<const char*, const char*>> entries) {
  node map;
  map.kind = node_kind::map;
  for (const auto& [key, text] : entries) {
    node value;
    value.kind = node_kind::scalar;
    value.text = text;
    map.members.push_back({key, 1, 1, value});
  }
  return map;
}

}  // namespace

TEST_SUITE_BEGIN("document");

TEST_CASE("a value that nobody wrote is null, plain and without a place") {
  const node n;
  CHECK(n.kind == node_kind::null);
  CHECK(n.style == scalar_style::plain);
  CHECK(n.text.empty());
  CHECK(n.line == 0);
  CHECK(n.column == 0);
  CHECK(n.members.empty());
  CHECK(n.items.empty());
}

TEST_CASE("find gives the value of a key, in place") {
  const node map = map_of({{"food", "corn"}, {"jar", "pint"}});
  const node* jar = find(map, "jar");
  REQUIRE(jar != nullptr);
  CHECK(jar->text == "pint");
  CHECK(jar == &map.members[1].value);
}

TEST_CASE("find gives null for a key that is not there") {
  const node map = map_of({{"food", "corn"}});
  CHECK(find(map, "jar") == nullptr);
  CHECK(find(map, "") == nullptr);
  CHECK(find(map, "foo") == nullptr);
  CHECK(find(map, "food ") == nullptr);
  CHECK(find(map, "Food") == nullptr);
}

TEST_CASE("find gives null in what is no map") {
  node sequence;
  sequence.kind = node_kind::sequence;
  sequence.items.push_back(map_of({{"food", "corn"}}));
  CHECK(find(sequence, "food") == nullptr);
  CHECK(find(node{}, "food") == nullptr);
}

TEST_CASE("of two equal keys find gives the first") {
  const node map = map_of({{"food", "corn"}, {"food", "peas"}});
  REQUIRE(find(map, "food") != nullptr);
  CHECK(find(map, "food")->text == "corn");
}

TEST_SUITE_END();

}  // namespace document_tests
