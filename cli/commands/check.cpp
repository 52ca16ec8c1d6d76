// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <thread>
#include <utility>
#include <vector>

#include "../commands.hpp"
#include "../options.hpp"
#include "../parallel.hpp"
#include "../plan_files.hpp"
#include "../record_file.hpp"
#include "jarproof/detail/dates.hpp"
#include "jarproof/format/html_check.hpp"
#include "jarproof/jarproof.hpp"

namespace jarproof::cli {
namespace {

namespace po = boost::program_options;

constexpr const char* usage =
    "Usage: jarproof check [options] FILE...\n"
    "Judges every plan or recipe in the files; `-` reads standard input.\n"
    "Exit status: 0 all accepted, 1 some rejected, 2 some untested or incomplete, 3 not done.\n";

/// Where a dish may not be canned as planned, `ways` shows how else; said once for each file.
[[nodiscard]] std::vector<std::string> ways_hints(const std::vector<report>& reports,
                                                  const std::vector<plan_entry>& plans) {
  std::vector<std::string> out;
  const std::string* last = nullptr;
  for (std::size_t i = 0; i < reports.size(); ++i) {
    const report& r = reports[i];
    const bool refused = r.verdict == verdict::rejected || r.verdict == verdict::untested;
    if (!refused || r.mixture_class.empty()) continue;
    if (last != nullptr && *last == plans[i].file) continue;
    last = &plans[i].file;
    out.push_back("Tested ways for this dish: jarproof ways " + *last);
  }
  return out;
}

/// How many plans are judged at once; nothing, with a complaint, where the option is wrong.
[[nodiscard]] std::optional<std::size_t> threads_of(const po::variables_map& values) {
  constexpr int most = 256;
  if (values.count("threads") == 0) return std::max(1U, std::thread::hardware_concurrency());
  const int wanted = values["threads"].as<int>();
  if (wanted >= 1 && wanted <= most) return static_cast<std::size_t>(wanted);
  complain("--threads takes a whole number from 1 to " + std::to_string(most) + ", not " +
           std::to_string(wanted));
  return std::nullopt;
}

/// The day that a shelf is told for, empty without the option.
[[nodiscard]] std::optional<std::string> day_of(const po::variables_map& values) {
  if (values.count("on") == 0) return "";
  const std::string day = values["on"].as<std::string>();
  if (detail::is_date(day)) return day;
  complain("--on takes year, month and day, such as 2026-11-28, not `" + day + "`");
  return std::nullopt;
}

/// The shelf that stood among the plans; its lots were judged with them.
[[nodiscard]] shelf_today shelf_of(const plan_files& given, const std::vector<report>& reports,
                                   const edition& rules, const std::string& day) {
  std::vector<report> of_lots(given.shelf.lots().size());
  for (std::size_t i = 0; i < given.plans.size(); ++i) {
    if (given.plans[i].lot) of_lots[*given.plans[i].lot] = reports[i];
  }
  shelf_today out = today_of(given.shelf, std::move(of_lots), rules, day);
  out.unread = given.unread_lines;
  return out;
}

/// Records every accepted plan; the others are named. The status is that of the recording alone.
[[nodiscard]] exit_code record_plans(const std::string& file, const plan_files& given,
                                     const std::vector<report>& reports, const edition& rules) {
  exit_code status = all_accepted;
  std::vector<std::string> lines;
  for (std::size_t i = 0; i < given.plans.size(); ++i) {
    const plan_entry& each = given.plans[i];
    if (!each.what) continue;
    if (each.lot) {
      complain(
          problems{{each.name, 0, 0, "", "this is a record already", "it is not recorded again"}});
      continue;
    }
    const result<std::string> line = record_line(reports[i], *each.what, each.text, rules);
    if (line) {
      lines.push_back(*line);
      continue;
    }
    complain(line.errors());
    if (reports[i].verdict == verdict::accepted) status = not_done;
  }
  return worse(status, append_records(file, lines));
}

[[nodiscard]] std::string as_text(const std::vector<report>& reports,
                                  const std::vector<plan_entry>& plans, const edition& rules,
                                  const std::optional<shelf_today>& today) {
  const text_style style = style_of_output();
  std::string out;
  std::size_t accepted = 0;
  for (const report& r : reports) {
    out += text_of(r, rules, style) + "\n";
    accepted += r.verdict == verdict::accepted ? 1 : 0;
  }
  if (reports.size() > 1) {
    out +=
        std::to_string(reports.size()) + " plans, " + std::to_string(accepted) + " accepted.\n\n";
  }
  const std::vector<std::string> hints = ways_hints(reports, plans);
  for (const std::string& hint : hints) out += hint + "\n";
  if (!hints.empty()) out += "\n";
  if (today) out += shelf_text(*today, style) + "\n";
  return out + caution_text(rules, style);
}

}  // namespace

exit_code run_check(const arguments& args) {
  po::options_description options;
  options.add_options()("file", po::value<std::vector<std::string>>(), "")(
      "input", po::value<std::string>()->value_name("KIND"),
      "yaml, json, jsonl or recipe, where the file name does not tell")(
      "format", po::value<std::string>()->default_value("text")->value_name("KIND"),
      "text, json, jsonl (one report a line) or html (one page)")(
      "set", po::value<std::vector<std::string>>()->value_name("KEY=VALUE"),
      "use this value in place of the plan's own; may be repeated")(
      "rules", po::value<std::string>()->value_name("DIR"),
      "judge by the rule files in this folder")(
      "record", po::value<std::string>()->value_name("FILE"),
      "add a line for each accepted plan to this shelf record")(
      "on", po::value<std::string>()->value_name("DATE"),
      "tell the shelf for this day, such as 2026-11-28")(
      "threads", po::value<int>()->value_name("N"),
      "judge so many plans at once; without it, as many as the machine can");
  const parsed p =
      parse(args, usage, options, po::positional_options_description().add("file", -1));
  if (!p.values) return p.status;
  const po::variables_map& values = *p.values;
  if (!one_of(values, "format", {"text", "json", "jsonl", "html"})) return not_done;
  const std::optional<std::size_t> threads = threads_of(values);
  const std::optional<std::string> chosen_day = day_of(values);
  if (!threads || !chosen_day) return not_done;
  const std::string& day = *chosen_day;
  const std::optional<plan_files> given = read_plan_files(values, usage);
  if (!given) return not_done;
  const std::optional<chosen_rules> chosen = choose_rules(values);
  if (!chosen) return not_done;
  const edition& rules = chosen->rules();

  std::vector<report> reports(given->plans.size());
  for_each_index(reports.size(), *threads, [&](std::size_t i) {
    const plan_entry& each = given->plans[i];
    reports[i] = each.what ? check(*each.what, rules)
                           : unreadable_report(each.name, each.what.errors(), rules);
  });
  exit_code status = given->status;
  for (const report& r : reports) status = worse(status, code_of(r.verdict));
  if (reports.empty()) return not_done;
  std::optional<shelf_today> today;
  if (!given->shelf.lots().empty()) today = shelf_of(*given, reports, rules, day);
  if (today) status = worse(status, status_of(*today));
  if (values.count("record") != 0) {
    status =
        worse(status, record_plans(values["record"].as<std::string>(), *given, reports, rules));
  }

  const std::string format = values["format"].as<std::string>();
  std::string out;
  if (format == "json") {
    out = today ? json_of(reports, *today, rules) : json_of(reports, rules);
  } else if (format == "jsonl") {
    for (const report& r : reports) out += json_line_of(r) + "\n";
  } else if (format == "html") {
    out = html_of(reports, rules, {ways_hints(reports, given->plans), today});
  } else {
    out = as_text(reports, given->plans, rules, today);
  }
  return print(out) ? status : not_done;
}

}  // namespace jarproof::cli
