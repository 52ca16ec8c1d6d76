// SPDX-License-Identifier: MIT
#include <filesystem>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "../commands.hpp"
#include "../options.hpp"
#include "../plan_files.hpp"
#include "../record_file.hpp"
#include "jarproof/check.hpp"
#include "jarproof/format/html_log.hpp"
#include "jarproof/format/log_json.hpp"
#include "jarproof/format/log_text.hpp"
#include "jarproof/judge_log.hpp"
#include "jarproof/read_log.hpp"
#include "jarproof/shelf.hpp"
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

/// Puts the lot on the shelf, where the run is over and delivered its process; else says why not.
/// The status is that of the recording alone.
[[nodiscard]] exit_code record_run(const std::string& file, const plan_entry& entry,
                                   const jarproof::run_log& log, const log_report& r,
                                   const edition& rules) {
  const auto refuse = [&](const char* message, const char* write) {
    complain(problems{{entry.lot ? entry.name : r.source, 0, 0, "", message, write}});
  };
  if (entry.lot) {
    refuse("this is a record already", "name the plan that it was made from");
    return not_done;
  }
  if (r.running) {
    refuse("the run is not over, so its lot is not recorded",
           "record it when the log is at its end");
    return all_accepted;
  }
  int lost = 0;  // a broken jar did not seal either
  for (const log_row& row : log.rows) lost += row.event ? row.event->count : 0;
  const std::string name = std::filesystem::path(r.source).filename().string();
  const result<std::string> line =
      record_line(r.plan, *entry.what, entry.text, rules, shelf_run{r.verdict, name}, lost);
  if (line) return append_records(file, {*line});
  complain(line.errors());
  return r.verdict == verdict::accepted ? not_done : all_accepted;
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
      "judge by the rule files in this folder")(
      "record", po::value<std::string>()->value_name("FILE"),
      "add the lot to this shelf record, if the run delivered its process");
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
    // The faults of the plan come first; of the log they are shown only where it has some.
    const report unread = unreadable_report(entry.name, entry.what.errors(), rules);
    const log_report r =
        unreadable_log_report(shown, log ? problems{} : log.errors(), unread, rules);
    std::string out = format == "text" ? text_of(unread, rules, style_of_output()) : "";
    if (format != "text" || !log) out += written(r, rows, format, rules);
    (void)print(out);
    return not_done;
  }
  const log_report r =
      log ? judge_log(*entry.what, rules, *log)
          : unreadable_log_report(shown, log.errors(), check(*entry.what, rules), rules);
  exit_code status = code_of(r.verdict);
  if (values.count("record") != 0 && log)
    status = worse(status, record_run(values["record"].as<std::string>(), entry, *log, r, rules));
  return print(written(r, rows, format, rules)) ? status : not_done;
}

}  // namespace jarproof::cli
