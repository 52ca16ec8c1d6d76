// SPDX-License-Identifier: MIT
#include <string>
#include <vector>

#include "../commands.hpp"
#include "../options.hpp"
#include "jarproof/builtin.hpp"
#include "jarproof/rules.hpp"

namespace jarproof::cli {
namespace {

namespace po = boost::program_options;

/// Numbers of one edition: a row is one jar of a table on one gauge, a cell one altitude band of
/// it.
struct counts {
  std::size_t rows = 0;
  std::size_t cells = 0;
  std::size_t single_entry_rows = 0;
  std::size_t unused_rows = 0;
  std::size_t examples = 0;
};

[[nodiscard]] counts count(const edition& rules) {
  counts out;
  for (const process& p : rules.processes) {
    for (const table& t : p.tables) {
      for (const std::string_view id : {t.dial, t.weighted}) {
        const band_set* bands = find(rules.bands, id);
        if (bands == nullptr) continue;
        out.rows += t.minutes.size();
        out.cells += t.minutes.size() * bands->steps.size();
        if (t.entries < 2) out.single_entry_rows += t.minutes.size();
        if (!t.use) out.unused_rows += t.minutes.size();
      }
    }
  }
  for (const check_rule& c : rules.checks) out.examples += c.good.size() + c.bad.size();
  return out;
}

[[nodiscard]] std::string counted(std::size_t number, std::string_view what) {
  return std::to_string(number) + " " + std::string(what);
}

[[nodiscard]] std::string listing(const edition& rules) {
  const counts n = count(rules);
  std::string out = std::string(rules.name) + ", " + std::string(rules.version) + "\n" +
                    std::string(rules.scope) + "\n\n";
  out += counted(rules.processes.size(), "foods, ") + counted(n.rows, "rows, ") +
         counted(n.cells, "cells, ") + counted(rules.checks.size(), "checks with ") +
         counted(n.examples, "examples, ") + counted(rules.sources.size(), "sources\n");
  out += counted(n.single_entry_rows, "rows rest on a single reading, ") +
         counted(n.unused_rows, "of all rows are shown but not used\n");
  out += "\nFoods\n";
  for (const process& p : rules.processes)
    out += "  " + std::string(p.id) + ": " + std::string(p.title) + "\n";
  out += "\nChecks (`jarproof why CHECK` teaches one)\n";
  for (const check_rule& c : rules.checks)
    out += "  " + std::string(c.id) + " (" + std::string(c.outcome) + "): " + std::string(c.title) +
           "\n";
  out += "\nMethods\n";
  for (const method& m : rules.methods)
    out += "  " + std::string(m.id) + ": " + (m.accepted ? "accepted" : "refused") + "\n";
  out += "\nForms\n";
  for (const form_word& f : rules.forms)
    out += "  " + std::string(f.id) + ": " + std::string(f.says) + "\n";
  out += "\nWords for `prepared`\n";
  for (const prepared_word& w : rules.prepared)
    out += "  " + std::string(w.id) + ": " + std::string(w.says) + "\n";
  out += "\nSources\n";
  for (const source& s : rules.sources) {
    out += "  " + std::string(s.id) + ": " + std::string(s.title) + ". " + std::string(s.publisher);
    if (!s.edition.empty()) out += ", " + std::string(s.edition);
    out += s.url.empty() ? "\n" : ". " + std::string(s.url) + "\n";
  }
  return out + "\n" + std::string(rules.caution) + "\n";
}

[[nodiscard]] exit_code check_folder(const std::string& folder) {
  const auto files = read_rule_folder(folder);
  if (!files) return not_done;
  const result<owned_edition> loaded = load_edition(*files);
  if (!loaded) {
    complain(loaded.errors());
    return not_done;
  }
  const problems differing = run_examples(loaded->view());
  if (!differing.empty()) {
    complain(differing);
    return some_rejected;
  }
  const counts n = count(loaded->view());
  return print(folder + ": good; " + counted(files->size(), "files, ") +
               counted(loaded->view().processes.size(), "foods, ") + counted(n.rows, "rows, ") +
               counted(n.cells, "cells, ") + counted(n.examples, "examples agree\n"))
             ? all_accepted
             : not_done;
}

}  // namespace

exit_code run_rules(const arguments& args) {
  constexpr const char* usage =
      "Usage: jarproof rules [options]\n"
      "Lists the rule data: edition, foods, checks, methods, words, sources.\n"
      "Exit status: 0 done, 1 an example of the rules does not come out as it says, 3 not done\n"
      "(broken rules included).\n";
  po::options_description options;
  options.add_options()("check", po::value<std::string>()->value_name("DIR"),
                        "validate a rule folder and run its examples")(
      "embed", po::value<std::string>()->value_name("DIR"),
      "write the C++ source of the built-in edition from a rule folder")(
      "rules", po::value<std::string>()->value_name("DIR"), "use the rule files in this folder");
  const parsed p = parse(args, usage, options, {});
  if (!p.values) return p.status;
  if (p.values->count("check") != 0) return check_folder((*p.values)["check"].as<std::string>());
  if (p.values->count("embed") != 0) {
    const auto files = read_rule_folder((*p.values)["embed"].as<std::string>());
    if (!files) return not_done;
    const result<owned_edition> loaded = load_edition(*files);
    if (!loaded) {
      complain(loaded.errors());
      return not_done;
    }
    return print(embedded_source(loaded->view())) ? all_accepted : not_done;
  }
  const std::optional<chosen_rules> chosen = choose_rules(*p.values);
  if (!chosen) return not_done;
  return print(listing(chosen->rules())) ? all_accepted : not_done;
}

}  // namespace jarproof::cli
