// SPDX-License-Identifier: MIT
#include <optional>
#include <string>
#include <vector>

#include "../commands.hpp"
#include "../options.hpp"
#include "jarproof/detail/words.hpp"
#include "jarproof/format/find.hpp"
#include "jarproof/quantity.hpp"

namespace jarproof::cli {

namespace po = boost::program_options;

exit_code run_find(const arguments& args) {
  constexpr const char* usage =
      "Usage: jarproof find TEXT [options]\n"
      "Shows the published processes for a food.\n"
      "Exit status: 0 done, 2 nothing found, 3 not done.\n";
  po::options_description options;
  options.add_options()("text", po::value<std::vector<std::string>>(), "")(
      "altitude", po::value<std::string>()->value_name("FEET"),
      "show the pressures at this altitude, such as \"4600 ft\"")(
      "rules", po::value<std::string>()->value_name("DIR"), "use the rule files in this folder");
  const parsed p =
      parse(args, usage, options, po::positional_options_description().add("text", -1));
  if (!p.values) return p.status;
  if (p.values->count("text") == 0) {
    complain(std::string("no food given\n") + usage);
    return not_done;
  }
  std::optional<int> altitude_ft;
  if (p.values->count("altitude") != 0) {
    const amount_reading r =
        read_amount((*p.values)["altitude"].as<std::string>(), dimension::altitude, rounding::up);
    if (!r.ok()) {
      complain("--altitude: " + r.message + "; " + r.write);
      return not_done;
    }
    altitude_ft = whole_feet(r.value);
  }
  const std::optional<chosen_rules> chosen = choose_rules(*p.values);
  if (!chosen) return not_done;
  const edition& rules = chosen->rules();
  std::string text;
  for (const std::string& word : (*p.values)["text"].as<std::vector<std::string>>())
    text += (text.empty() ? "" : " ") + word;

  const std::vector<const process*> foods = foods_matching(rules, text);
  const untested_food* untested = untested_named(rules, text);
  if (untested != nullptr && foods_named(rules, text).empty()) {
    detail::text_writer w(style_of_output());
    w.heading(std::string(untested->title) + ": no tested process", "1");
    w.paragraph(untested->why, "  ", 2);
    w.paragraph(untested->instead, "  Do: ", 6);
    std::vector<std::string> sources;
    detail::add_sources(rules, untested->sources, sources);
    w.paragraph(detail::sources_text(sources), "  Source: ", 10);
    return print(w.take()) ? not_accepted : not_done;
  }
  if (foods.empty()) {
    const std::vector<std::string> near = names_near(rules, text);
    complain("no published process in this edition for `" + text + "`" +
             (near.empty() ? "" : "; nearest names: " + detail::joined(near)) +
             ". No process found does not mean that one may be made up.");
    return not_accepted;
  }
  const text_style style = style_of_output();
  std::string out;
  for (const process* food : foods) out += find_text(*food, rules, altitude_ft, style) + "\n";
  return print(out + caution_text(rules, style)) ? all_accepted : not_done;
}

}  // namespace jarproof::cli
