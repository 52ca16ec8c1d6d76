// SPDX-License-Identifier: MIT
#include <string>
#include <vector>

#include "../commands.hpp"
#include "../options.hpp"
#include "../plan_files.hpp"
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
[[nodiscard]] std::string ways_hint(const std::vector<report>& reports,
                                    const std::vector<plan_entry>& plans) {
  std::string out;
  const std::string* last = nullptr;
  for (std::size_t i = 0; i < reports.size(); ++i) {
    const report& r = reports[i];
    const bool refused = r.verdict == verdict::rejected || r.verdict == verdict::untested;
    if (!refused || r.mixture_class.empty()) continue;
    if (last != nullptr && *last == plans[i].file) continue;
    last = &plans[i].file;
    out += "Tested ways for this dish: jarproof ways " + *last + "\n";
  }
  return out.empty() ? out : out + "\n";
}

[[nodiscard]] std::string as_text(const std::vector<report>& reports,
                                  const std::vector<plan_entry>& plans, const edition& rules) {
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
  return out + ways_hint(reports, plans) + caution_text(rules, style);
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
      "judge by the rule files in this folder");
  const parsed p =
      parse(args, usage, options, po::positional_options_description().add("file", -1));
  if (!p.values) return p.status;
  const po::variables_map& values = *p.values;
  if (!one_of(values, "format", {"text", "json", "jsonl", "html"})) return not_done;
  const std::optional<plan_files> given = read_plan_files(values, usage);
  if (!given) return not_done;
  const std::optional<chosen_rules> chosen = choose_rules(values);
  if (!chosen) return not_done;
  const edition& rules = chosen->rules();

  exit_code status = given->status;
  std::vector<report> reports;
  for (const plan_entry& each : given->plans) {
    reports.push_back(each.what ? check(*each.what, rules)
                                : unreadable_report(each.name, each.what.errors(), rules));
    status = worse(status, code_of(reports.back().verdict));
  }
  if (reports.empty()) return not_done;

  const std::string format = values["format"].as<std::string>();
  std::string out;
  if (format == "json") {
    out = json_of(reports, rules);
  } else if (format == "jsonl") {
    for (const report& r : reports) out += json_line_of(r) + "\n";
  } else if (format == "html") {
    out = html_of(reports, rules);
  } else {
    out = as_text(reports, given->plans, rules);
  }
  return print(out) ? status : not_done;
}

}  // namespace jarproof::cli
