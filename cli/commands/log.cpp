// SPDX-License-Identifier: MIT
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "../commands.hpp"
#include "../options.hpp"
#include "../plan_files.hpp"
#include "jarproof/check.hpp"
#include "jarproof/format/html_log.hpp"
#include "jarproof/format/log_json.hpp"
#include "jarproof/format/log_text.hpp"
#include "jarproof/judge_log.hpp"
#include "jarproof/read_log.hpp"
#include "jarproof/unreadable.hpp"
#include "jarproof/unreadable_log.hpp"

namespace jarproof::cli {
namespace {

namespace po = boost::program_options;

constexpr const char* usage =
    "Usage: jarproof log [options] PLAN LOG\n"
    "Judges what the canner did against the plan; `-` reads one of the two from standard input.\n"
    "Exit status: 0 delivered, 1 not delivered, 2 untested, incomplete or still running, 3 not "
    "done.\n";

/// One run in the format that is asked for; `log` has no rows where it could not be read.
[[nodiscard]] std::string written(const log_report& r, const jarproof::run_log& log,
                                  const std::string& format, const edition& rules) {
  if (format == "html") return html_of(r, log, rules);
  if (format == "json") return log_json(r, rules);
  const text_style style = style_of_output();
  const std::string text = log_text(r, rules, style);
  // At the stove there is one screen, and no room for more.
  return r.running ? text : text + "\n" + caution_text(rules, style);
}

}  // namespace

exit_code run_log(const arguments& args) {
  po::options_description options;
  options.add_options()("file", po::value<std::vector<std::string>>(), "")(
      "log", po::value<std::string>(), "")("input", po::value<std::string>()->value_name("KIND"),
                                           "of the plan: yaml, json, jsonl or recipe, where the "
                                           "file name does not tell")(
      "format", po::value<std::string>()->default_value("text")->value_name("KIND"),
      "text, json or html (one page)")(
      "set", po::value<std::vector<std::string>>()->value_name("KEY=VALUE"),
      "use this value in place of the plan's own; may be repeated")(
      "rules", po::value<std::string>()->value_name("DIR"),
      "judge by the rule files in this folder");
  const parsed p = parse(args, usage, options,
                         po::positional_options_description().add("file", 1).add("log", 1));
  if (!p.values) return p.status;
  const po::variables_map& values = *p.values;
  if (!one_of(values, "format", {"text", "json", "html"})) return not_done;
  if (values.count("log") == 0) {
    complain(std::string("a plan and a log are needed\n") + usage);
    return not_done;
  }
  const std::string name = values["log"].as<std::string>();
  if (name == "-" && values["file"].as<std::vector<std::string>>().front() == "-") {
    complain("only one of plan and log can come from standard input");
    return not_done;
  }
  const std::optional<plan_files> given = read_plan_files(values, usage);
  if (!given) return not_done;
  const std::optional<std::string> text = read_file(name);
  if (!text) return not_done;
  const std::optional<chosen_rules> chosen = choose_rules(values);
  if (!chosen || given->status == not_done) return not_done;
  const edition& rules = chosen->rules();
  if (given->plans.size() != 1) {
    complain("the plan file holds " + std::to_string(given->plans.size()) +
             " plans; a log belongs to one");
    return not_done;
  }
  const plan_entry& entry = given->plans.front();
  const std::string shown = name == "-" ? "stdin" : name;
  const result<jarproof::run_log> log = read_log(*text, shown);
  const jarproof::run_log rows = log ? *log : jarproof::run_log{};
  const std::string format = values["format"].as<std::string>();
  if (!entry.what) {
    const report unread = unreadable_report(entry.name, entry.what.errors(), rules);
    const log_report r =
        unreadable_log_report(shown, log ? problems{} : log.errors(), unread, rules);
    std::string out = written(r, rows, format, rules);
    if (format == "text") out = text_of(unread, rules) + "\n" + out;
    return print(out) ? not_done : not_done;
  }
  const log_report r =
      log ? judge_log(*entry.what, rules, *log)
          : unreadable_log_report(shown, log.errors(), check(*entry.what, rules), rules);
  if (!print(written(r, rows, format, rules))) return not_done;
  return code_of(r.verdict);
}

}  // namespace jarproof::cli
