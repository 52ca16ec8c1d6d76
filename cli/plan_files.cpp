// SPDX-License-Identifier: MIT
#include "plan_files.hpp"

#include <algorithm>
#include <iterator>
#include <optional>
#include <string_view>
#include <utility>
#include <variant>

#include "jarproof/detail/words.hpp"
#include "jarproof/document.hpp"
#include "jarproof/json.hpp"
#include "jarproof/read_plan.hpp"
#include "jarproof/read_recipe.hpp"
#include "jarproof/yaml.hpp"
#include "recipe_file.hpp"

namespace jarproof::cli {
namespace {

namespace po = boost::program_options;

/// A value given on the command line in place of the plan's own.
struct override_of {
  std::string key;
  node value;
};

/// What `--set` gives for `key`: the text as it stands, or, within braces or brackets, the map or
/// list that a plan would hold there. Without one, what is wrong has been said.
[[nodiscard]] std::optional<node> value_of(const std::string& key, const std::string& text) {
  const std::string_view seen = detail::trim(text);
  if (seen.empty() || (seen.front() != '{' && seen.front() != '[')) {
    node out;
    out.kind = node_kind::scalar;
    out.style = scalar_style::quoted;
    out.text = text;
    return out;
  }
  result<std::vector<document>> read = read_yaml(text, "--set " + key);
  if (!read) {
    complain(read.errors());
    return {};
  }
  for (const document& d : *read) complain(d.faults);
  if (read->size() != 1 || read->front().broken || !read->front().faults.empty()) {
    complain(
        "--set takes one value in braces or brackets, such as "
        "`--set \"canner={quarts: 7, pints: 9}\"`, not `" +
        text + "`");
    return {};
  }
  return std::move(read->front().root);
}

/// Gives a value its path. Without a place in the text, findings about it name only the key.
void put_at(node& value, const std::string& path) {
  value.path = path;
  value.line = value.column = value.text_column = 0;
  for (member& m : value.members) {
    m.line = m.column = 0;
    put_at(m.value, path + "." + m.key);
  }
  for (std::size_t i = 0; i < value.items.size(); ++i)
    put_at(value.items[i], path + "[" + std::to_string(i + 1) + "]");
}

/// Puts `value` at a dotted key, such as `canner.quarts`.
void set(node& map, std::string_view key, const std::string& path, const node& value) {
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
    at->value = value;
    put_at(at->value, whole);
    return;
  }
  if (at->value.kind != node_kind::map) {
    at->value = node{};
    at->value.kind = node_kind::map;
  }
  at->value.path = whole;
  set(at->value, key.substr(dot + 1), whole, value);
}

struct job {
  std::vector<override_of> overrides;
  std::string input;        ///< yaml, json, jsonl, recipe, or empty: by the name of the file
  std::string folder = {};  ///< of the file; the recipes that its plans name are looked for there
};

[[nodiscard]] plan_entry read_one(document d, const job& work) {
  std::string folder = work.folder;
  if (d.root.kind == node_kind::map) {
    for (const override_of& o : work.overrides) {
      set(d.root, o.key, "", o.value);
      // A name given on the command line is one of the folder where the command is given.
      if (o.key == "recipe") folder.clear();
    }
  }
  add_named_recipe(d, folder);
  result<plan> what = read_plan(d);
  std::string name = d.name;
  return {std::move(name), std::move(what), {}, std::move(d)};
}

/// Kind of input that the name of a file tells.
[[nodiscard]] std::string kind_of(const std::string& name) {
  const std::size_t dot = name.rfind('.');
  const std::string ending = dot == std::string::npos ? "" : detail::folded(name.substr(dot + 1));
  if (ending == "json" || ending == "jsonl") return ending;
  return ending == "txt" || ending == "html" || ending == "htm" ? "recipe" : "yaml";
}

/// A plan for each recipe, or what is wrong with them.
[[nodiscard]] std::vector<plan_entry> plans_from(result<std::vector<recipe>> recipes,
                                                 const std::string& name, const job& work) {
  if (!recipes) return {plan_entry{name, recipes.errors()}};
  std::vector<plan_entry> out;
  for (document& d : plans_of(std::move(*recipes), name))
    out.push_back(read_one(std::move(d), work));
  return out;
}

/// A line of a shelf record, put on the shelf: the plan of its lot, nothing for a line about jars,
/// or what is wrong with it.
[[nodiscard]] std::optional<plan_entry> read_shelf_line(document d, const job& work,
                                                        plan_files& all) {
  const std::string name = d.name;
  for (member& m : d.root.members) {
    if (m.key != "plan" || m.value.kind != node_kind::map) continue;
    for (const override_of& o : work.overrides) set(m.value, o.key, "plan", o.value);
  }
  result<shelf_line> line = read_record(d);
  problems wrong = line ? all.shelf.add(*line) : line.errors();
  if (!wrong.empty()) {
    ++all.unread_lines;
    return plan_entry{name, std::move(wrong)};
  }
  const auto* record = std::get_if<shelf_record>(&*line);
  if (record == nullptr) return std::nullopt;
  return plan_entry{name, record->plan, {}, {}, all.shelf.place_of(record->lot)};
}

/// One line of JSON Lines: one plan, so that answers and lines stay paired; only a line about the
/// jars of a lot gives none.
[[nodiscard]] std::optional<plan_entry> read_line(std::string_view line, const std::string& name,
                                                  const job& work, plan_files& all) {
  result<document> read = read_json_line(line, name);
  if (!read) {
    ++all.unread_lines;
    return plan_entry{name, read.errors()};
  }
  if (is_record(read->root)) return read_shelf_line(std::move(*read), work, all);
  if (!is_linked_data(read->root)) return read_one(std::move(*read), work);
  std::vector<plan_entry> of_recipes = plans_from(recipes_of({*read}, name), name, work);
  if (of_recipes.size() == 1) return std::move(of_recipes.front());
  return plan_entry{
      name,
      problems{{name, 0, 0, "", "the line holds " + std::to_string(of_recipes.size()) + " recipes",
                "write one recipe a line"}}};
}

[[nodiscard]] std::vector<plan_entry> read_lines(const std::string& text, const std::string& name,
                                                 const job& work, plan_files& all) {
  std::vector<plan_entry> out;
  std::string_view rest = text;
  for (int line = 1; !rest.empty(); ++line) {
    const std::size_t end = rest.find('\n');
    const std::string_view one = rest.substr(0, end);
    rest.remove_prefix(end == std::string_view::npos ? rest.size() : end + 1);
    if (detail::trim(one).empty()) continue;
    if (auto entry = read_line(one, name + ":" + std::to_string(line), work, all))
      out.push_back(std::move(*entry));
  }
  return out;
}

[[nodiscard]] std::vector<plan_entry> read_text(const std::string& text, const std::string& name,
                                                const job& work, plan_files& all) {
  const std::string kind = work.input.empty() ? kind_of(name) : work.input;
  if (kind == "jsonl") return read_lines(text, name, work, all);
  if (kind == "recipe") {
    // An empty file holds no plan, of whatever kind.
    if (detail::trim(text).empty()) return {};
    return plans_from(read_recipes(text, name), name, work);
  }
  result<std::vector<document>> read =
      kind == "json" ? read_json(text, name) : read_yaml(text, name);
  if (!read) return {plan_entry{name, read.errors()}};
  const auto linked = [](const document& d) { return is_linked_data(d.root); };
  if (!read->empty() && std::all_of(read->begin(), read->end(), linked))
    return plans_from(recipes_of(*read, name), name, work);
  std::vector<plan_entry> out;
  for (document& d : *read) {
    if (linked(d)) {
      const std::string place = d.name;
      for (plan_entry& e : plans_from(recipes_of({std::move(d)}, place), place, work))
        out.push_back(std::move(e));
      continue;
    }
    // Several plans in one file are told apart by the line on which they begin.
    if (read->size() > 1 && d.root.line > 0) d.name += ":" + std::to_string(d.root.line);
    out.push_back(read_one(std::move(d), work));
  }
  return out;
}

}  // namespace

bool one_of(const po::variables_map& values, const char* option,
            std::initializer_list<std::string_view> known) {
  const std::string chosen = values.count(option) != 0 ? values[option].as<std::string>() : "";
  for (const std::string_view k : known) {
    if (chosen == k) return true;
  }
  complain("--" + std::string(option) + " takes " + detail::joined(known) + ", not `" + chosen +
           "`");
  return false;
}

std::optional<plan_files> read_plan_files(const po::variables_map& values,
                                          const std::string& usage) {
  if (values.count("input") != 0 && !one_of(values, "input", {"yaml", "json", "jsonl", "recipe"}))
    return {};
  if (values.count("file") == 0) {
    complain("no plan given\n" + usage);
    return {};
  }
  job work{{}, values.count("input") != 0 ? values["input"].as<std::string>() : ""};
  if (values.count("set") != 0) {
    for (const std::string& text : values["set"].as<std::vector<std::string>>()) {
      const std::size_t equals = text.find('=');
      if (equals == 0 || equals == std::string::npos) {
        complain("--set takes KEY=VALUE, such as `--set \"time=75 min\"`, not `" + text + "`");
        return {};
      }
      const std::string key = text.substr(0, equals);
      std::optional<node> value = value_of(key, text.substr(equals + 1));
      if (!value) return {};
      work.overrides.push_back({key, std::move(*value)});
    }
  }
  plan_files out;
  for (const std::string& file : values["file"].as<std::vector<std::string>>()) {
    const std::optional<std::string> text = read_file(file);
    if (!text) {
      out.status = not_done;
      continue;
    }
    work.folder = folder_of(file);
    const std::size_t before = out.shelf.lines();
    std::vector<plan_entry> some = read_text(*text, file == "-" ? "stdin" : file, work, out);
    if (some.empty() && out.shelf.lines() == before) {
      complain(file + " holds no plan");
      out.status = not_done;
    }
    for (plan_entry& e : some) e.file = file;
    out.plans.insert(out.plans.end(), std::make_move_iterator(some.begin()),
                     std::make_move_iterator(some.end()));
  }
  return out;
}

std::optional<plan_files> read_shelf(const std::string& file) {
  const std::optional<std::string> text = read_file(file);
  if (!text) return {};
  plan_files out;
  for (const plan_entry& e : read_lines(*text, file == "-" ? "stdin" : file, job{}, out)) {
    if (e.what) continue;
    complain(e.what.errors());
    out.status = not_done;
  }
  if (!out.shelf.lots().empty()) return out;
  complain(file + " holds no lot");
  return {};
}

exit_code status_of(const shelf_today& today) {
  exit_code out = all_accepted;
  for (const lot_today& l : today.lots) {
    const shelf_record& r = l.lot.record;
    out = worse(out, worse(code_of(l.report.verdict), code_of(r.verdict)));
    if (r.run) out = worse(out, code_of(r.run->verdict));
  }
  return out;
}

}  // namespace jarproof::cli
