// SPDX-License-Identifier: MIT
#include "jarproof/ways.hpp"

#include <optional>
#include <string>
#include <vector>

#include "../commands.hpp"
#include "../options.hpp"
#include "../plan_files.hpp"
#include "jarproof/format/html_ways.hpp"
#include "jarproof/format/ways.hpp"
#include "jarproof/unreadable.hpp"

namespace jarproof::cli {

namespace po = boost::program_options;

exit_code run_ways(const arguments& args) {
  constexpr const char* usage =
      "Usage: jarproof ways [options] FILE...\n"
      "Shows the tested ways to get a dish, or its parts, on the shelf; `-` reads standard input.\n"
      "Exit status: 0 done, 2 nothing but the freezer found, 3 not done.\n";
  po::options_description options;
  options.add_options()("file", po::value<std::vector<std::string>>(), "")(
      "input", po::value<std::string>()->value_name("KIND"),
      "yaml, json, jsonl or recipe, where the file name does not tell")(
      "format", po::value<std::string>()->default_value("text")->value_name("KIND"),
      "text, json or html")("set", po::value<std::vector<std::string>>()->value_name("KEY=VALUE"),
                            "use this value in place of the plan's own; may be repeated")(
      "rules", po::value<std::string>()->value_name("DIR"), "use the rule files in this folder");
  const parsed p =
      parse(args, usage, options, po::positional_options_description().add("file", -1));
  if (!p.values) return p.status;
  if (!one_of(*p.values, "format", {"text", "json", "html"})) return not_done;
  const std::optional<plan_files> given = read_plan_files(*p.values, usage);
  if (!given) return not_done;
  const std::optional<chosen_rules> chosen = choose_rules(*p.values);
  if (!chosen) return not_done;
  const edition& rules = chosen->rules();

  exit_code status = given->status;
  std::vector<found_ways> found;
  for (const plan_entry& each : given->plans) {
    if (!each.what) {
      found.push_back({each.name, {}, {}, unreadable_report(each.name, each.what.errors(), rules)});
      status = not_done;
      continue;
    }
    found_ways one{each.name, {}, ways_of(*each.what, rules), {}};
    if (each.what->title) one.title = each.what->title->text;
    if (each.what->altitude) one.altitude_ft = whole_feet(each.what->altitude->value.value);
    if (!reaches_shelf(one.ways)) status = worse(status, not_accepted);
    found.push_back(std::move(one));
  }
  if (found.empty()) return not_done;

  const std::string format = (*p.values)["format"].as<std::string>();
  if (format == "json") return print(ways_json(found)) ? status : not_done;
  if (format == "html") return print(html_of(found, rules)) ? status : not_done;
  const text_style style = style_of_output();
  std::string out;
  for (const found_ways& f : found) out += ways_text(f, rules, style) + "\n";
  return print(out + caution_text(rules, style)) ? status : not_done;
}

}  // namespace jarproof::cli
