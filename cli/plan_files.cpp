// SPDX-License-Identifier: MIT
#include "plan_files.hpp"

#include <iterator>
#include <string_view>
#include <utility>

#include "jarproof/detail/words.hpp"
#include "jarproof/document.hpp"
#include "jarproof/json.hpp"
#include "jarproof/read_plan.hpp"
#include "jarproof/yaml.hpp"

namespace jarproof::cli {
namespace {

namespace po = boost::program_options;

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
  std::vector<override_of> overrides;
  std::string input;  ///< yaml, json, jsonl, or empty: by the name of the file
};

[[nodiscard]] plan_entry read_one(document d, const job& work) {
  if (d.root.kind == node_kind::map) {
    for (const override_of& o : work.overrides) set(d.root, o.key, "", o.value);
  }
  std::string name = d.name;
  return {std::move(name), read_plan(d)};
}

[[nodiscard]] bool ends_with(const std::string& text, std::string_view tail) {
  return text.size() >= tail.size() &&
         text.compare(text.size() - tail.size(), tail.size(), tail) == 0;
}

[[nodiscard]] std::vector<plan_entry> read_lines(const std::string& text, const std::string& name,
                                                 const job& work) {
  std::vector<plan_entry> out;
  std::string_view rest = text;
  for (int line = 1; !rest.empty(); ++line) {
    const std::size_t end = rest.find('\n');
    const std::string_view one = rest.substr(0, end);
    rest.remove_prefix(end == std::string_view::npos ? rest.size() : end + 1);
    if (detail::trim(one).empty()) continue;
    const std::string place = name + ":" + std::to_string(line);
    result<document> read = read_json_line(one, place);
    out.push_back(read ? read_one(std::move(*read), work) : plan_entry{place, read.errors()});
  }
  return out;
}

[[nodiscard]] std::vector<plan_entry> read_text(const std::string& text, const std::string& name,
                                                const job& work) {
  std::string kind = work.input;
  if (kind.empty())
    kind = ends_with(name, ".json") ? "json" : ends_with(name, ".jsonl") ? "jsonl" : "yaml";
  if (kind == "jsonl") return read_lines(text, name, work);
  result<std::vector<document>> read =
      kind == "json" ? read_json(text, name) : read_yaml(text, name);
  if (!read) return {plan_entry{name, read.errors()}};
  std::vector<plan_entry> out;
  for (document& d : *read) {
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
  if (values.count("input") != 0 && !one_of(values, "input", {"yaml", "json", "jsonl"})) return {};
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
      work.overrides.push_back({text.substr(0, equals), text.substr(equals + 1)});
    }
  }
  plan_files out;
  for (const std::string& file : values["file"].as<std::vector<std::string>>()) {
    const std::optional<std::string> text = read_file(file);
    if (!text) {
      out.status = not_done;
      continue;
    }
    std::vector<plan_entry> some = read_text(*text, file == "-" ? "stdin" : file, work);
    if (some.empty()) {
      complain(file + " holds no plan");
      out.status = not_done;
    }
    out.plans.insert(out.plans.end(), std::make_move_iterator(some.begin()),
                     std::make_move_iterator(some.end()));
  }
  return out;
}

}  // namespace jarproof::cli
