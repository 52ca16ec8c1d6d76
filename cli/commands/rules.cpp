// SPDX-License-Identifier: MIT
#include <string>
#include <vector>

#include "../commands.hpp"
#include "../options.hpp"
#include "jarproof/builtin.hpp"
#include "jarproof/format/export.hpp"
#include "jarproof/format/text.hpp"
#include "jarproof/rules.hpp"

namespace jarproof::cli {
namespace {

namespace po = boost::program_options;

/// Numbers of one edition: a row is one jar of a table in one column, a cell one altitude band of
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
      for (const std::string_view id : {t.dial, t.weighted, t.boiling_water}) {
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

/// A line for each table of a food that was read once only.
void single_rows(detail::text_writer& w, const process& p, const edition& rules) {
  for (const table& t : p.tables) {
    if (t.entries >= 2) continue;
    std::string jars;
    for (const jar_minutes& m : t.minutes) jars += (jars.empty() ? "" : ", ") + std::string(m.jar);
    std::string columns;
    for (const auto& [name, id] : {std::pair{"dial", t.dial}, std::pair{"weighted", t.weighted},
                                   std::pair{"boiling water", t.boiling_water}}) {
      if (find(rules.bands, id) != nullptr)
        columns += (columns.empty() ? "" : ", ") + std::string(name);
    }
    w.paragraph(std::string(t.pack) + " pack, " + jars + "; " + columns + " (" +
                    std::string(t.evidence) + (t.use ? ")" : "; not used)"),
                "  " + std::string(p.id) + ": ", 4);
  }
}

[[nodiscard]] std::string listing(const edition& rules) {
  const counts n = count(rules);
  detail::text_writer w(style_of_output());
  w.heading(std::string(rules.name) + ", " + std::string(rules.version), "1");
  w.paragraph(rules.scope);
  w.blank();
  w.paragraph(counted(rules.processes.size(), "foods, ") + counted(n.rows, "rows, ") +
              counted(n.cells, "cells, ") + counted(rules.checks.size(), "checks with ") +
              counted(n.examples, "examples, ") + counted(rules.sources.size(), "sources."));
  w.paragraph(counted(n.single_entry_rows, "rows rest on a single reading; ") +
              counted(n.unused_rows, "rows are shown and never used to accept a plan."));
  const auto entry = [&](std::string_view id, const std::string& text) {
    w.paragraph(text, "  " + std::string(id) + ": ", 4);
  };
  const auto begin = [&](std::string_view title) {
    w.blank();
    w.heading(title, "1");
  };
  w.paragraph(counted(rules.ingredients.size(), "ingredients, ") +
              counted(rules.untested_foods.size(), "foods without a process, ") +
              counted(rules.ph.size(), "pH values."));
  begin("Rows that rest on a single reading");
  for (const process& p : rules.processes) single_rows(w, p, rules);
  begin("Foods");
  for (const process& p : rules.processes) entry(p.id, std::string(p.title));
  begin("Checks (`jarproof why CHECK` teaches one)");
  for (const check_rule& c : rules.checks) {
    entry(c.id, std::string(c.title) + " (" + std::string(c.outcome) + ")");
  }
  begin("Methods");
  for (const method& m : rules.methods) entry(m.id, m.accepted ? "accepted" : "refused");
  begin("Forms");
  for (const form_word& f : rules.forms) entry(f.id, std::string(f.says));
  begin("Words for `prepared`");
  for (const prepared_word& p : rules.prepared) entry(p.id, std::string(p.says));
  begin("Ingredients (for recipes)");
  for (const ingredient& i : rules.ingredients) entry(i.id, std::string(name_of(i.kind)));
  begin("Foods without a tested process");
  for (const untested_food& f : rules.untested_foods) entry(f.id, std::string(f.title));
  begin("Sources");
  for (const source& s : rules.sources) {
    std::string text = std::string(s.publisher) + ": " + std::string(s.title);
    if (!s.edition.empty()) text += " (" + std::string(s.edition) + ")";
    entry(s.id, s.url.empty() ? text : text + " " + std::string(s.url));
  }
  w.blank();
  w.paragraph(rules.caution);
  return w.take();
}

[[nodiscard]] exit_code check_folder(const std::string& folder) {
  const auto files = read_rule_folder(folder);
  if (!files) return not_done;
  const result<owned_edition> loaded = load_edition(*files, &builtin_edition());
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
      "export", po::value<std::string>()->value_name("json|csv"),
      "write the whole edition as data (docs/edition-schema.json)")(
      "rules", po::value<std::string>()->value_name("DIR"), "use the rule files in this folder");
  const parsed p = parse(args, usage, options, {});
  if (!p.values) return p.status;
  if (p.values->count("check") != 0) return check_folder((*p.values)["check"].as<std::string>());
  if (p.values->count("embed") != 0) {
    const auto files = read_rule_folder((*p.values)["embed"].as<std::string>());
    if (!files) return not_done;
    const result<owned_edition> loaded = load_edition(*files, &builtin_edition());
    if (!loaded) {
      complain(loaded.errors());
      return not_done;
    }
    return print(embedded_source(loaded->view())) ? all_accepted : not_done;
  }
  const std::optional<chosen_rules> chosen = choose_rules(*p.values);
  if (!chosen) return not_done;
  if (p.values->count("export") != 0) {
    const std::string format = (*p.values)["export"].as<std::string>();
    if (format == "json") return print(edition_json(chosen->rules())) ? all_accepted : not_done;
    if (format == "csv") return print(edition_csv(chosen->rules())) ? all_accepted : not_done;
    complain("`" + format +
             "` is no format of an edition; write `--export json` or `--export csv`");
    return not_done;
  }
  return print(listing(chosen->rules())) ? all_accepted : not_done;
}

}  // namespace jarproof::cli
