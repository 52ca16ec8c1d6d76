// Writes the files that are made from the rule folder: the embedded edition and docs/checks/.
//
// It does not link the embedded edition, so that it also works while that file does not compile
// because the data model has changed.
// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "jarproof/format/teach.hpp"
#include "jarproof/rules.hpp"

namespace {

namespace fs = std::filesystem;

std::vector<jarproof::rule_file> rule_files(const fs::path& folder) {
  std::vector<jarproof::rule_file> out;
  for (const auto& entry : fs::recursive_directory_iterator(folder)) {
    if (!entry.is_regular_file() || entry.path().extension() != ".yaml") continue;
    std::ifstream file(entry.path(), std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    out.push_back({entry.path().lexically_relative(folder).generic_string(), text.str()});
  }
  std::sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.name < b.name; });
  return out;
}

bool write(const fs::path& path, const std::string& text) {
  std::ofstream file(path, std::ios::binary);
  file << text;
  return static_cast<bool>(file.flush());
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 2) return 1;
  const fs::path root = argv[1];
  const auto loaded = jarproof::load_edition(rule_files(root / "rules"));
  if (!loaded) {
    for (const jarproof::problem& p : loaded.errors()) {
      std::fprintf(stderr, "rules/%s:%d:%d: %s; %s\n", p.file.c_str(), p.line, p.column,
                   p.message.c_str(), p.write.c_str());
    }
    return 1;
  }
  const jarproof::edition& rules = loaded->view();
  bool good = write(root / "lib/src/edition_builtin.cpp", jarproof::embedded_source(rules));
  const fs::path pages = root / "docs/checks";
  fs::remove_all(pages);
  fs::create_directories(pages);
  good = good && write(pages / "README.md", jarproof::check_index(rules));
  for (const jarproof::check_rule& c : rules.checks) {
    good = good && write(pages / (std::string(c.id) + ".md"), jarproof::check_page(c, rules));
  }
  return good ? 0 : 1;
}
