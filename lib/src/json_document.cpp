// SPDX-License-Identifier: MIT
#include <algorithm>
#include <boost/json/basic_parser_impl.hpp>
#include <string>
#include <unordered_set>
#include <utility>

#include "jarproof/detail/words.hpp"
#include "jarproof/json.hpp"

namespace jarproof {
namespace {

constexpr std::size_t largest_text = 1 << 20;
constexpr std::size_t deepest = 16;

/// Builds our tree from the parser's events: a value of Boost.JSON would keep only the last of two
/// equal keys.
struct handler {
  static constexpr std::size_t max_object_size = static_cast<std::size_t>(-1);
  static constexpr std::size_t max_array_size = static_cast<std::size_t>(-1);
  static constexpr std::size_t max_key_size = 4096;
  static constexpr std::size_t max_string_size = largest_text;
  using error_code = boost::json::error_code;
  using string_view = boost::json::string_view;

  std::string name;
  node root;
  problems errors;
  std::vector<node*> open;
  std::vector<std::unordered_set<std::string>> keys;  // of each open value
  std::string key;
  std::string partial;

  void fault(const std::string& path, std::string message, std::string write) {
    errors.push_back({name, 0, 0, path, std::move(message), std::move(write)});
  }

  node* add(node n) {
    if (open.empty()) {
      root = std::move(n);
      return &root;
    }
    node* top = open.back();
    if (top->kind == node_kind::sequence) {
      n.path = top->path + "[" + std::to_string(top->items.size() + 1) + "]";
      top->items.push_back(std::move(n));
      return &top->items.back();
    }
    n.path = top->path.empty() ? key : top->path + "." + key;
    if (!keys.back().insert(key).second) {
      fault(n.path, "`" + key + "` stands twice", "keep one of the two");
    }
    top->members.push_back({key, 0, 0, std::move(n)});
    return &top->members.back().value;
  }

  void begin(node_kind kind) {
    node n;
    n.kind = kind;
    open.push_back(add(std::move(n)));
    keys.emplace_back();
  }

  bool end() {
    open.pop_back();
    keys.pop_back();
    return true;
  }

  void scalar(std::string text, scalar_style style) {
    node n;
    n.kind = node_kind::scalar;
    n.style = style;
    n.text = std::move(text);
    add(std::move(n));
  }

  bool on_document_begin(error_code&) { return true; }
  bool on_document_end(error_code&) { return true; }
  bool on_object_begin(error_code&) { return begin(node_kind::map), true; }
  bool on_object_end(std::size_t, error_code&) { return end(); }
  bool on_array_begin(error_code&) { return begin(node_kind::sequence), true; }
  bool on_array_end(std::size_t, error_code&) { return end(); }
  bool on_key_part(string_view part, std::size_t, error_code&) {
    return partial.append(part.data(), part.size()), true;
  }
  bool on_key(string_view part, std::size_t, error_code&) {
    key = std::move(partial) + std::string(part.data(), part.size());
    partial.clear();
    return true;
  }
  bool on_string_part(string_view part, std::size_t, error_code&) {
    return partial.append(part.data(), part.size()), true;
  }
  bool on_string(string_view part, std::size_t, error_code&) {
    std::string text = std::move(partial) + std::string(part.data(), part.size());
    partial.clear();
    const bool lines = text.find('\n') != std::string::npos;
    scalar(std::move(text), lines ? scalar_style::literal : scalar_style::quoted);
    return true;
  }
  bool on_number_part(string_view part, error_code&) {
    return partial.append(part.data(), part.size()), true;
  }
  bool number(string_view part) {
    scalar(std::move(partial) + std::string(part.data(), part.size()), scalar_style::plain);
    partial.clear();
    return true;
  }
  bool on_int64(std::int64_t, string_view part, error_code&) { return number(part); }
  bool on_uint64(std::uint64_t, string_view part, error_code&) { return number(part); }
  bool on_double(double, string_view part, error_code&) { return number(part); }
  bool on_bool(bool value, error_code&) {
    return scalar(value ? "true" : "false", scalar_style::plain), true;
  }
  bool on_null(error_code&) { return add(node{}), true; }
  bool on_comment_part(string_view, error_code&) { return true; }
  bool on_comment(string_view, error_code&) { return true; }
};

[[nodiscard]] problems one(std::string_view name, std::string message, std::string write) {
  return {{std::string(name), 0, 0, "", std::move(message), std::move(write)}};
}

/// The whole text as one document; duplicate keys are its faults.
[[nodiscard]] result<document> parse(std::string_view text, std::string_view name,
                                     int largest = 1) {
  if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);  // byte order mark
  if (text.size() > largest_text * static_cast<std::size_t>(largest))
    return one(name, "the text is larger than " + std::to_string(largest) + " MiB",
               "split it into several files");
  if (detail::invalid_utf8(text) != std::string_view::npos)
    return one(name, "the text is not UTF-8", "save it as UTF-8");
  boost::json::parse_options options;
  options.max_depth = deepest;
  boost::json::basic_parser<handler> parser(options);
  parser.handler().name = std::string(name);
  boost::json::error_code ec;
  const std::size_t read = parser.write_some(false, text.data(), text.size(), ec);
  if (!ec && !detail::trim(text.substr(read)).empty()) ec = boost::json::error::extra_data;
  if (ec) {
    problems errors = std::move(parser.handler().errors);
    const bool deep = ec == boost::json::error::too_deep;
    errors.push_back(
        {std::string(name), 0, 0, "",
         deep ? "the nesting is deeper than " + std::to_string(deepest) + " levels"
              : "this is no JSON: " + ec.message() + " at byte " + std::to_string(read + 1),
         deep ? "a plan needs two levels at most" : "check quotes, commas and braces near it"});
    return errors;
  }
  return document{std::string(name), std::move(parser.handler().root),
                  std::move(parser.handler().errors)};
}

/// Paths inside an element of an array begin at the element.
void strip_path(node& n, std::size_t place) {
  n.path.erase(0, std::min(n.path.size(), place));
  if (!n.path.empty() && n.path.front() == '.') n.path.erase(0, 1);
  for (member& m : n.members) strip_path(m.value, place);
  for (node& item : n.items) strip_path(item, place);
}

}  // namespace

result<std::vector<document>> read_json(std::string_view text, std::string_view name, int largest) {
  if (detail::trim(text).empty()) return std::vector<document>{};
  result<document> whole = parse(text, name, largest);
  if (!whole) return whole.errors();
  std::vector<document> out;
  if (whole->root.kind != node_kind::sequence) {
    out.push_back(std::move(*whole));
    return out;
  }
  for (node& item : whole->root.items) {
    const std::string place = item.path;
    document d{std::string(name) + place, std::move(item), {}};
    for (problem& p : whole->faults) {
      if (p.path.compare(0, place.size() + 1, place + ".") != 0) continue;
      p.path.erase(0, place.size() + 1);
      p.file = d.name;
      d.faults.push_back(std::move(p));
    }
    strip_path(d.root, place.size());
    out.push_back(std::move(d));
  }
  return out;
}

result<document> read_json_line(std::string_view line, std::string_view name) {
  return parse(line, name);
}

}  // namespace jarproof
