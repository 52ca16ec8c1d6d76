// SPDX-License-Identifier: MIT
#include "recipe_file.hpp"

#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>
#include <utility>

#include "jarproof/detail/words.hpp"
#include "jarproof/json.hpp"

namespace jarproof::cli {
namespace {

namespace fs = std::filesystem;

/// The text of the file; otherwise why it cannot be read, and what to write.
struct file_reading {
  std::string text;
  std::string message;
  std::string write;
};

[[nodiscard]] file_reading read_recipe_file(const std::string& path) {
  constexpr std::uintmax_t largest_file = 16 << 20;
  const std::string shown = "`" + path + "`";
  std::error_code ec;
  const fs::file_status status = fs::status(path, ec);
  if (!fs::exists(status))
    return {"", "there is no file " + shown,
            "write the path of the recipe, as seen from the folder of the plan"};
  if (fs::is_directory(status))
    return {"", shown + " is a folder",
            "name a file in it, such as `recipe: " + path + "/soup.txt`"};
  // A device or a pipe may never end.
  if (!fs::is_regular_file(status)) return {"", shown + " is no plain file", "name a text file"};
  if (fs::file_size(path, ec) > largest_file || ec)
    return {"", shown + " is larger than 16 MiB", "name a file with the recipe alone"};
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  if (fs::file_size(path, ec) > 0) text << file.rdbuf();
  if (!file) return {"", shown + " cannot be read", "check who may read the file"};
  return {text.str(), "", ""};
}

}  // namespace

void add_named_recipe(document& plan, const std::string& folder) {
  const node* name = find(plan.root, "recipe");
  if (name == nullptr || name->kind != node_kind::scalar || name->faulty) return;
  const std::string written(detail::trim(name->text));
  if (written.empty() || detail::has_control(written) || written.find('\n') != std::string::npos)
    return;               // `read_plan` says what is wrong with it
  const node at = *name;  // adding members moves the tree
  const std::string path = (fs::path(folder) / written).generic_string();
  const auto fault = [&](std::string message, std::string write) {
    plan.faults.push_back(
        {plan.name, at.line, at.column, at.path, std::move(message), std::move(write)});
  };
  recipe found;
  found.source = path;
  const file_reading file = read_recipe_file(path);
  if (!file.message.empty()) {
    fault(file.message, file.write);
  } else if (result<std::vector<recipe>> read = read_recipes(file.text, path); !read) {
    for (problem p : read.errors()) {
      p.file = path;
      plan.faults.push_back(std::move(p));
    }
  } else if (read->size() > 1) {
    fault("`" + path + "` holds " + std::to_string(read->size()) + " recipes",
          "put the one that is meant into a file of its own");
  } else {
    found = std::move(read->front());
    found.source = path;
  }
  add_recipe(plan, found);
}

std::string folder_of(const std::string& file) {
  return fs::path(file).parent_path().generic_string();
}

std::vector<document> plans_of(std::vector<recipe> recipes, const std::string& name) {
  std::vector<document> out;
  std::set<std::string> names;
  for (const recipe& r : recipes) names.insert(r.source);
  for (recipe& r : recipes) {
    if (recipes.size() == 1) r.source = name;
    if (names.size() < recipes.size()) r.source = name + "[" + std::to_string(out.size() + 1) + "]";
    out.push_back(plan_document(r));
  }
  return out;
}

}  // namespace jarproof::cli
