// Runs the examples of one check, as they stand in its rule file, against the built-in edition.
// SPDX-License-Identifier: MIT
#include <cstdio>
#include <string>
#include <string_view>

#include "jarproof/builtin.hpp"
#include "jarproof/rules.hpp"

int main(int argc, char** argv) {
  const std::string_view id = argc == 2 ? argv[1] : "";
  const jarproof::edition& rules = jarproof::builtin_edition();
  const jarproof::check_rule* check = jarproof::find(rules.checks, id);
  if (check == nullptr) {
    std::fprintf(stderr, "the built-in edition has no check `%s`; build the target `update`\n",
                 argc == 2 ? argv[1] : "");
    return 1;
  }
  int wrong = 0;
  for (const jarproof::problem& p : jarproof::run_examples(*check, rules)) {
    std::fprintf(stderr, "%s: %s; %s\n", p.file.c_str(), p.message.c_str(), p.write.c_str());
    ++wrong;
  }
  if (check->good.size() + check->bad.size() < 2) ++wrong;
  return wrong == 0 ? 0 : 1;
}
