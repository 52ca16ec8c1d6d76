// SPDX-License-Identifier: MIT
#include <string>
#include <vector>

#include "../commands.hpp"
#include "../options.hpp"
#include "jarproof/detail/words.hpp"
#include "jarproof/format/teach.hpp"

namespace jarproof::cli {

namespace po = boost::program_options;

exit_code run_why(const arguments& args) {
  constexpr const char* usage =
      "Usage: jarproof why CHECK\n"
      "Teaches one check. `jarproof rules` lists them.\n"
      "Exit status: 0 done, 2 no such check, 3 not done.\n";
  po::options_description options;
  options.add_options()("check", po::value<std::string>(), "")(
      "rules", po::value<std::string>()->value_name("DIR"), "use the rule files in this folder");
  const parsed p =
      parse(args, usage, options, po::positional_options_description().add("check", 1));
  if (!p.values) return p.status;
  if (p.values->count("check") == 0) {
    complain(std::string("no check given\n") + usage);
    return not_done;
  }
  const std::optional<chosen_rules> rules = choose_rules(*p.values);
  if (!rules) return not_done;
  const std::string id = (*p.values)["check"].as<std::string>();
  if (const check_rule* c = find(rules->rules().checks, id)) {
    return print(why_text(*c, rules->rules(), style_of_output())) ? all_accepted : not_done;
  }
  std::vector<std::string_view> ids;
  for (const check_rule& c : rules->rules().checks) ids.push_back(c.id);
  const std::string near = detail::nearest(id, ids);
  complain("there is no check `" + id + "`" +
           (near.empty() ? "; `jarproof rules` lists them" : "; did you mean `" + near + "`?"));
  return not_accepted;
}

}  // namespace jarproof::cli
