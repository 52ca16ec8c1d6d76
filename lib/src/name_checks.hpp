// No name means two things: foods, ingredients, jars and methods of an edition.
// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <set>
#include <string>
#include <string_view>

#include "jarproof/detail/words.hpp"
#include "jarproof/document.hpp"
#include "rule_entries.hpp"

namespace jarproof {

/// Looks at the names when all files are read.
class name_checks : public rule_entries {
 protected:
  std::map<std::string, document> documents_;  // by file name, so that the order is always the same
  const edition* base_ = nullptr;              // the edition that is added to

  [[nodiscard]] static std::string stem(const std::string& name) {
    const std::size_t slash = name.rfind('/');
    const std::size_t dot = name.rfind('.');
    return name.substr(slash + 1, dot == std::string::npos ? dot : dot - slash - 1);
  }

  /// A name means one entry, unless all its owners declare it as shared.
  void check_names() {
    check_names_of("jars.yaml", "jars");
    check_names_of("methods.yaml", "methods");
    check_ingredient_names();
    owners_of owners;
    std::map<std::string, std::set<std::string>> sharers;
    if (base_ != nullptr) {
      for (const process& p : base_->processes) {
        const std::string id(p.id);
        owners.try_emplace(detail::folded(p.id), id);
        owners.try_emplace(detail::folded(p.title), id);
        for (const std::string_view n : p.names) owners.try_emplace(detail::folded(n), id);
        for (const std::string_view n : p.shared_names)
          sharers[detail::folded(n)].insert("built-in " + id);
      }
      for (const untested_food& f : base_->untested_foods) {
        for (const std::string_view n : f.names)
          owners.try_emplace(detail::folded(n), std::string(f.id));
      }
    }
    const auto each = [&](const char* key, const auto& visit) {
      for (const auto& [file, d] : documents_) {
        if (file.rfind("processes/", 0) != 0) continue;
        const node* found = find(d.root, key);
        if (found == nullptr) continue;
        if (found->kind == node_kind::scalar) visit(file, *found);
        for (const node& n : found->items) visit(file, n);
      }
    };
    for (const char* key : {"id", "names", "title"}) {
      each(key, [&](const std::string& file, const node& n) {
        // What built-in foods share may be shared with one more, and belongs to none alone.
        if (base_ != nullptr && sharers.count(detail::folded(n.text)) != 0) {
          fault(file, n.line, n.column, "built-in foods share the name `" + n.text + "`",
                "list it under `shared_names`");
        }
        own(owners, stem(file), file, n,
            "keep it in one place, or list it under `shared_names` in all");
      });
    }
    // A food without a process has no name of one that has.
    const auto without = documents_.find("without-process.yaml");
    const node* foods = without == documents_.end() ? nullptr : find(without->second.root, "foods");
    if (foods != nullptr) {
      for (const node& food : foods->items) own_names_of(owners, "without-process.yaml", food);
    }
    each("shared_names", [&](const std::string& file, const node& n) {
      sharers[detail::folded(n.text)].insert(file);
    });
    each("shared_names", [&](const std::string& file, const node& n) {
      const std::string plain = detail::folded(n.text);
      if (owners.count(plain) != 0) {
        fault(file, n.line, n.column,
              "the shared name `" + n.text + "` is the only name of `" + owners[plain] + "`",
              "list it under `shared_names` there, or drop it here");
      } else if (sharers[plain].size() < 2) {
        fault(file, n.line, n.column, "the shared name `" + n.text + "` is shared with nobody",
              "move it to `names`");
      }
    });
  }

 private:
  using owners_of = std::map<std::string, std::string>;  // folded name, id of its owner

  /// Gives a name to its owner; a name that another entry has already is an error.
  void own(owners_of& owners, const std::string& owner, const std::string& file, const node& name,
           const char* write) {
    const auto [old, is_new] = owners.try_emplace(detail::folded(name.text), owner);
    if (is_new || old->second == owner) return;
    fault(file, name.line, name.column,
          "the name `" + name.text + "` belongs to `" + old->second + "` too", write);
  }

  /// Names of the entries of one file: ids first, so that no name hides another entry's id.
  void check_names_of(const std::string& file, std::string_view key) {
    const auto document = documents_.find(file);
    const node* entries_node =
        document == documents_.end() ? nullptr : find(document->second.root, key);
    if (entries_node == nullptr) return;
    owners_of owners;
    constexpr const char* write = "keep it in one place";
    for (const node& entry : entries_node->items) {
      const node* id = find(entry, "id");
      if (id != nullptr) own(owners, id->text, file, *id, write);
    }
    for (const node& entry : entries_node->items) {
      const node* id = find(entry, "id");
      const node* names = find(entry, "names");
      if (id == nullptr || names == nullptr) continue;
      for (const node& name : names->items) own(owners, id->text, file, name, write);
    }
  }

  void own_names_of(owners_of& owners, const std::string& file, const node& entry) {
    const node* id = find(entry, "id");
    if (id == nullptr) return;
    constexpr const char* write = "keep it in one place";
    for (const std::string_view key : {"id", "title"}) {
      if (const node* name = find(entry, key)) own(owners, id->text, file, *name, write);
    }
    if (const node* names = find(entry, "names")) {
      for (const node& name : names->items) own(owners, id->text, file, name, write);
    }
  }

  /// A name means one ingredient, and no ingredient is a kind of itself. Ids are not names: the id
  /// `pepper` is the vegetable, and the word is the spice.
  void check_ingredient_names() {
    owners_of names;
    owners_of ids;
    if (base_ != nullptr) {
      for (const ingredient& i : base_->ingredients) {
        for (const std::string_view n : i.names)
          names.try_emplace(std::string(n), std::string(i.id));
      }
    }
    for (const auto& [file, d] : documents_) {
      if (file.rfind("ingredients/", 0) != 0) continue;
      const node* entries_node = find(d.root, "ingredients");
      if (entries_node == nullptr) continue;
      for (const node& entry : entries_node->items) {
        const node* id = find(entry, "id");
        if (id == nullptr) continue;
        if (!ids.try_emplace(id->text, file).second)
          fault(file, id->line, id->column, "the id `" + id->text + "` stands twice",
                "give every ingredient an id of its own");
        if (const node* list = find(entry, "names")) {
          for (const node& name : list->items)
            own(names, id->text, file, name, "keep it in one place");
        }
        std::size_t steps = 0;
        const ingredient* up = find(edition_.ingredients, std::string_view(id->text));
        while (up != nullptr && !up->kind_of.empty() && steps <= edition_.ingredients.size()) {
          up = find(edition_.ingredients, up->kind_of);
          ++steps;
        }
        if (steps > edition_.ingredients.size())
          fault(file, id->line, id->column, "`" + id->text + "` is a kind of itself",
                "correct `kind_of`");
      }
    }
  }
};

}  // namespace jarproof
