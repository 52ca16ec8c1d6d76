// SPDX-License-Identifier: MIT
#include <exception>
#include <string>

#include "commands.hpp"
#include "jarproof/builtin.hpp"
#include "jarproof/detail/words.hpp"
#include "jarproof/version.hpp"
#include "options.hpp"

namespace {

struct command {
  const char* name;
  const char* does;
  jarproof::cli::exit_code (*run)(const jarproof::cli::arguments&);
};

constexpr command commands[] = {
    {"check", "judge canning plans against the published tables", jarproof::cli::run_check},
    {"why", "teach one check: what, why, a good and a bad example", jarproof::cli::run_why},
    {"find", "show the published processes for a food", jarproof::cli::run_find},
    {"ways", "show the tested ways to get a dish on the shelf", jarproof::cli::run_ways},
    {"log", "judge what the canner did against the plan", jarproof::cli::run_log},
    {"day", "plan the day: jars, canner loads, clock, step card", jarproof::cli::run_day},
    {"rules", "list the rule data, check a rule folder", jarproof::cli::run_rules}};

std::string usage() {
  std::string out = "Usage: jarproof COMMAND ...\n\nCommands:\n";
  for (const command& c : commands) {
    std::string name = std::string("  ") + c.name;
    name.resize(10, ' ');
    out += name + c.does + "\n";
  }
  return out + "\n`jarproof COMMAND --help` shows the options of a command.\n";
}

jarproof::cli::exit_code run(const jarproof::cli::arguments& args) {
  using namespace jarproof::cli;
  if (args.empty()) {
    complain("no command given\n" + usage());
    return not_done;
  }
  if (args[0] == "--help" || args[0] == "-h") return print(usage()) ? all_accepted : not_done;
  if (args[0] == "--version") {
    const jarproof::edition& rules = jarproof::builtin_edition();
    return print("jarproof " + std::string(jarproof::library_version) + ", rules " +
                 std::string(rules.name) + " " + std::string(rules.version) + "\n")
               ? all_accepted
               : not_done;
  }
  std::vector<std::string> names;
  for (const command& c : commands) {
    if (args[0] == c.name) return c.run({args.begin() + 1, args.end()});
    names.emplace_back(c.name);
  }
  const std::string near = jarproof::detail::nearest(args[0], names);
  complain("`" + args[0] + "` is no command" +
           (near.empty() ? "" : "; did you mean `" + near + "`?") + "\n" + usage());
  return not_done;
}

}  // namespace

int main(int argc, char** argv) {
  try {
    return run({argv + 1, argv + argc});
  } catch (const std::exception& e) {
    jarproof::cli::complain(e.what());
    return jarproof::cli::not_done;
  }
}
