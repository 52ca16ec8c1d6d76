// SPDX-License-Identifier: MIT
#include <optional>
#include <string>
#include <vector>

#include "../commands.hpp"
#include "../options.hpp"
#include "../plan_files.hpp"
#include "jarproof/day_of.hpp"
#include "jarproof/format/day_json.hpp"
#include "jarproof/format/day_text.hpp"
#include "jarproof/format/html_day.hpp"
#include "jarproof/format/icalendar.hpp"
#include "jarproof/format/shelf_text.hpp"
#include "jarproof/unreadable.hpp"

namespace jarproof::cli {

namespace po = boost::program_options;

exit_code run_day(const arguments& args) {
  constexpr const char* usage =
      "Usage: jarproof day [options] FILE...\n"
      "Plans the day: jars, canner loads, clock, step card; `-` reads standard input.\n"
      "All plans share the day and its canner. One that is not accepted gets no step card.\n"
      "Exit status: 0 all accepted, 1 some rejected, 2 some untested or incomplete, 3 not done.\n";
  po::options_description options;
  options.add_options()("file", po::value<std::vector<std::string>>(), "")(
      "input", po::value<std::string>()->value_name("KIND"),
      "yaml, json, jsonl or recipe, where the file name does not tell")(
      "format", po::value<std::string>()->default_value("text")->value_name("KIND"),
      "text, json, html (one page) or ical (iCalendar, for timers)")(
      "set", po::value<std::vector<std::string>>()->value_name("KEY=VALUE"),
      "use this value in place of the plan's own; may be repeated")(
      "rules", po::value<std::string>()->value_name("DIR"), "use the rule files in this folder")(
      "shelf", po::value<std::string>()->value_name("FILE"),
      "also tell from this shelf record what is left and what to eat first");
  const parsed p =
      parse(args, usage, options, po::positional_options_description().add("file", -1));
  if (!p.values) return p.status;
  if (!one_of(*p.values, "format", {"text", "json", "html", "ical"})) return not_done;
  const std::optional<plan_files> given = read_plan_files(*p.values, usage);
  if (!given) return not_done;
  const std::optional<chosen_rules> chosen = choose_rules(*p.values);
  if (!chosen) return not_done;
  const edition& rules = chosen->rules();

  exit_code status = given->status;
  std::vector<plan> plans;
  std::vector<report> unreadable;
  for (const plan_entry& each : given->plans) {
    if (each.what) {
      plans.push_back(*each.what);
    } else {
      unreadable.push_back(unreadable_report(each.name, each.what.errors(), rules));
      status = not_done;
    }
  }
  if (plans.empty() && unreadable.empty()) return not_done;
  const day_plan day = day_of(plans, rules);
  for (const day_batch& b : day.batches) status = worse(status, code_of(b.judged.verdict));

  std::optional<shelf_today> shelf;
  if (p.values->count("shelf") != 0) {
    const std::optional<plan_files> record = read_shelf((*p.values)["shelf"].as<std::string>());
    if (!record) return not_done;
    shelf = today_of(record->shelf, rules, day.date);
    shelf->unread = record->unread_lines;
    status = worse(status, worse(record->status, status_of(*shelf)));
  }

  const std::string format = (*p.values)["format"].as<std::string>();
  if (shelf && format == "ical") {
    complain("--shelf goes with --format text, json or html");
    return not_done;
  }
  if (format == "json") return print(day_json(day, unreadable, rules, shelf)) ? status : not_done;
  if (format == "html")
    return print(html_of(day, unreadable, rules, {{}, shelf})) ? status : not_done;
  if (format == "ical") {
    std::string refused;
    for (const report& r : unreadable) refused += text_of(r, rules);
    for (const day_batch& b : day.batches) {
      if (b.judged.verdict != verdict::accepted) refused += text_of(b.judged, rules);
    }
    if (!refused.empty()) complain("not in the calendar:\n" + refused);
    if (day.loads.empty() && status != all_accepted) return status;
    const result<std::string> calendar = icalendar(day, rules);
    if (!calendar) {
      complain(calendar.errors());
      return not_done;
    }
    return print(*calendar) ? status : not_done;
  }
  const text_style style = style_of_output();
  std::string out;
  for (const report& r : unreadable) out += text_of(r, rules, style) + "\n";
  if (!plans.empty()) out += day_text_of(day, rules, style) + "\n";
  if (shelf) out += shelf_text(*shelf, style) + "\n";
  return print(out + caution_text(rules, style)) ? status : not_done;
}

}  // namespace jarproof::cli
