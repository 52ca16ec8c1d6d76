// SPDX-License-Identifier: MIT
#include <algorithm>
#include <iterator>
#include <string>
#include <utility>
#include <vector>

#include "../commands.hpp"
#include "../options.hpp"
#include "../recipe_file.hpp"
#include "jarproof/detail/words.hpp"
#include "jarproof/jarproof.hpp"
#include "jarproof/json.hpp"
#include "jarproof/read_recipe.hpp"
#include "jarproof/yaml.hpp"

namespace jarproof::cli {
namespace {

namespace po = boost::program_options;

constexpr const char* usage =
    "Usage: jarproof check [options] FILE...\n"
    "Judges every plan or recipe in the files; `-` reads standard input.\n"
    "Exit status: 0 all accepted, 1 some rejected, 2 some untested or incomplete, 3 not done.\n";

/// A value given on the command line in place of the plan's own.
struct override_of {
  std::string key;
  std::string value;
};

/// Puts `value` at a dotted key, such as `canner.quarts`. Without a place in the text, findings
/// about it name only the key.
void set(node& map, std::string_view key, const std::string& path, const std::string& value) {
  const std::size_t dot = key.find('.');
  const std::string first(key.substr(0, dot));
  member* at = nullptr;
  for (member& m : map.members) {
    if (m.key == first) at = &m;
  }
  if (at == nullptr) {
    map.members.push_back({first, 0, 0, {}});
    at = &map.members.back();
  }
  const std::string whole = path.empty() ? first : path + "." + first;
  if (dot == std::string_view::npos) {
    at->value = node{};
    at->value.kind = node_kind::scalar;
    at->value.style = scalar_style::quoted;
    at->value.text = value;
  } else if (at->value.kind != node_kind::map) {
    at->value = node{};
    at->value.kind = node_kind::map;
  }
  at->value.path = whole;
  if (dot != std::string_view::npos) set(at->value, key.substr(dot + 1), whole, value);
}

struct job {
  const edition& rules;
  std::vector<override_of> overrides;
  std::string input;        ///< yaml, json, jsonl, recipe, or empty: by the name of the file
  std::string folder = {};  ///< of the file; the recipes that its plans name are looked for there
};

[[nodiscard]] report judged(document d, const job& work) {
  std::string folder = work.folder;
  if (d.root.kind == node_kind::map) {
    for (const override_of& o : work.overrides) {
      set(d.root, o.key, "", o.value);
      // A name given on the command line is one of the folder where the command is given.
      if (o.key == "recipe") folder.clear();
    }
  }
  add_named_recipe(d, folder);
  const result<plan> what = read_plan(d);
  return what ? check(*what, work.rules) : unreadable_report(d.name, what.errors(), work.rules);
}

/// Kind of input that the name of a file tells.
[[nodiscard]] std::string kind_of(const std::string& name) {
  const std::size_t dot = name.rfind('.');
  const std::string ending = dot == std::string::npos ? "" : detail::folded(name.substr(dot + 1));
  if (ending == "json" || ending == "jsonl") return ending;
  return ending == "txt" || ending == "html" || ending == "htm" ? "recipe" : "yaml";
}

/// A report for each recipe, or one that says what is wrong.
[[nodiscard]] std::vector<report> judge_recipes(result<std::vector<recipe>> recipes,
                                                const std::string& name, const job& work) {
  if (!recipes) return {unreadable_report(name, recipes.errors(), work.rules)};
  std::vector<report> out;
  for (document& d : plans_of(std::move(*recipes), name)) out.push_back(judged(std::move(d), work));
  return out;
}

/// One line of JSON Lines: always one report, so that answers and lines stay paired.
[[nodiscard]] report judge_line(std::string_view line, const std::string& name, const job& work) {
  result<document> read = read_json_line(line, name);
  if (!read) return unreadable_report(name, read.errors(), work.rules);
  if (!is_linked_data(read->root)) return judged(std::move(*read), work);
  std::vector<report> of_recipes = judge_recipes(recipes_of({*read}, name), name, work);
  if (of_recipes.size() == 1) return std::move(of_recipes.front());
  return unreadable_report(
      name,
      {{name, 0, 0, "", "the line holds " + std::to_string(of_recipes.size()) + " recipes",
        "write one recipe a line"}},
      work.rules);
}

[[nodiscard]] std::vector<report> judge_lines(const std::string& text, const std::string& name,
                                              const job& work) {
  std::vector<report> out;
  std::string_view rest = text;
  for (int line = 1; !rest.empty(); ++line) {
    const std::size_t end = rest.find('\n');
    const std::string_view one = rest.substr(0, end);
    rest.remove_prefix(end == std::string_view::npos ? rest.size() : end + 1);
    if (detail::trim(one).empty()) continue;
    const std::string place = name + ":" + std::to_string(line);
    out.push_back(judge_line(one, place, work));
  }
  return out;
}

[[nodiscard]] std::vector<report> judge_text(const std::string& text, const std::string& name,
                                             const job& work) {
  const std::string kind = work.input.empty() ? kind_of(name) : work.input;
  if (kind == "jsonl") return judge_lines(text, name, work);
  if (kind == "recipe") {
    // An empty file holds no plan, of whatever kind.
    if (detail::trim(text).empty()) return {};
    return judge_recipes(read_recipes(text, name), name, work);
  }
  result<std::vector<document>> read =
      kind == "json" ? read_json(text, name) : read_yaml(text, name);
  if (!read) return {unreadable_report(name, read.errors(), work.rules)};
  const auto linked = [](const document& d) { return is_linked_data(d.root); };
  if (!read->empty() && std::all_of(read->begin(), read->end(), linked))
    return judge_recipes(recipes_of(*read, name), name, work);
  std::vector<report> out;
  for (document& d : *read) {
    if (linked(d)) {
      const std::string place = d.name;
      for (report& r : judge_recipes(recipes_of({std::move(d)}, place), place, work))
        out.push_back(std::move(r));
      continue;
    }
    // Several plans in one file are told apart by the line on which they begin.
    if (read->size() > 1 && d.root.line > 0) d.name += ":" + std::to_string(d.root.line);
    out.push_back(judged(std::move(d), work));
  }
  return out;
}

[[nodiscard]] std::string as_text(const std::vector<report>& reports, const edition& rules) {
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
  return out + caution_text(rules, style);
}

}  // namespace

exit_code run_check(const arguments& args) {
  po::options_description options;
  options.add_options()("file", po::value<std::vector<std::string>>(), "")(
      "input", po::value<std::string>()->value_name("KIND"),
      "yaml, json, jsonl or recipe, where the file name does not tell")(
      "format", po::value<std::string>()->default_value("text")->value_name("KIND"),
      "text, json or jsonl (one report a line)")(
      "set", po::value<std::vector<std::string>>()->value_name("KEY=VALUE"),
      "use this value in place of the plan's own; may be repeated")(
      "rules", po::value<std::string>()->value_name("DIR"),
      "judge by the rule files in this folder");
  const parsed p =
      parse(args, usage, options, po::positional_options_description().add("file", -1));
  if (!p.values) return p.status;
  const po::variables_map& values = *p.values;
  const auto chosen_of = [&](const char* option, std::initializer_list<std::string_view> known) {
    const std::string chosen = values.count(option) != 0 ? values[option].as<std::string>() : "";
    for (const std::string_view k : known) {
      if (chosen == k) return true;
    }
    complain("--" + std::string(option) + " takes " + detail::joined(known) + ", not `" + chosen +
             "`");
    return false;
  };
  if (!chosen_of("format", {"text", "json", "jsonl"})) return not_done;
  if (values.count("input") != 0 && !chosen_of("input", {"yaml", "json", "jsonl", "recipe"}))
    return not_done;
  if (values.count("file") == 0) {
    complain(std::string("no plan given\n") + usage);
    return not_done;
  }
  const std::optional<chosen_rules> rules = choose_rules(values);
  if (!rules) return not_done;

  job work{rules->rules(), {}, values.count("input") != 0 ? values["input"].as<std::string>() : ""};
  if (values.count("set") != 0) {
    for (const std::string& text : values["set"].as<std::vector<std::string>>()) {
      const std::size_t equals = text.find('=');
      if (equals == 0 || equals == std::string::npos) {
        complain("--set takes KEY=VALUE, such as `--set \"time=75 min\"`, not `" + text + "`");
        return not_done;
      }
      work.overrides.push_back({text.substr(0, equals), text.substr(equals + 1)});
    }
  }

  exit_code status = all_accepted;
  std::vector<report> reports;
  for (const std::string& file : values["file"].as<std::vector<std::string>>()) {
    const std::optional<std::string> text = read_file(file);
    if (!text) {
      status = not_done;
      continue;
    }
    work.folder = folder_of(file);
    std::vector<report> some = judge_text(*text, file == "-" ? "stdin" : file, work);
    if (some.empty()) {
      complain(file + " holds no plan");
      status = not_done;
    }
    reports.insert(reports.end(), std::make_move_iterator(some.begin()),
                   std::make_move_iterator(some.end()));
  }
  for (const report& r : reports) status = worse(status, code_of(r.verdict));
  if (reports.empty()) return not_done;

  const std::string format = values["format"].as<std::string>();
  std::string out;
  if (format == "json") {
    out = json_of(reports, work.rules);
  } else if (format == "jsonl") {
    for (const report& r : reports) out += json_line_of(r) + "\n";
  } else {
    out = as_text(reports, work.rules);
  }
  return print(out) ? status : not_done;
}

}  // namespace jarproof::cli
