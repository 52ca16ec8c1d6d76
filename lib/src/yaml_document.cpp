// SPDX-License-Identifier: MIT
#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/parser.h>

#include <sstream>
#include <string>
#include <tuple>
#include <unordered_map>
#include <utility>

#include "jarproof/detail/words.hpp"
#include "jarproof/yaml.hpp"
#include "yaml_text.hpp"

namespace jarproof {
namespace {

constexpr std::size_t largest_text = 1 << 20;
constexpr std::size_t deepest = 16;

/// Thrown through yaml-cpp to leave a document that must not be read further.
struct stop_reading {};

constexpr const char* alias_message = "an alias (`*name`) repeats another value";
constexpr const char* unclosed_message = "a bracket or brace is not closed";
constexpr const char* unclosed_write = "close it with `]` or `}`";
constexpr const char* alias_write = "write the value out here";

/// What yaml-cpp's message means for somebody who wrote a plan.
[[nodiscard]] std::pair<std::string, std::string> plain_words(const std::string& message) {
  const auto says = [&](const char* part) { return message.find(part) != std::string::npos; };
  if (says("referenced anchor is not defined")) return {alias_message, alias_write};
  if (says("end of sequence flow") || says("end of map flow")) {
    return {unclosed_message, unclosed_write};
  }
  if (says("end of scalar") || says("illegal EOF in scalar") ||
      says("illegal document indicator")) {
    return {"a quote is not closed", "close it, or leave both quotes out"};
  }
  if (says("unknown escape"))
    return {"a backslash in double quotes starts an unknown escape", "use single quotes"};
  return {"the YAML cannot be read here (" + message + ")",
          "check quotes, brackets and indentation"};
}

class builder : public YAML::EventHandler {
 public:
  builder(std::string_view text, std::string_view name) : text_(text), name_(name) {}

  std::vector<document> documents;

  [[nodiscard]] std::size_t lines() const noexcept { return text_.lines(); }

  void fault(const node& at, std::string message, std::string write) {
    documents.back().faults.push_back(
        {std::string(name_), at.line, at.column, at.path, std::move(message), std::move(write)});
  }

  /// Reading ends in the middle of a document. Its last value may be cut off, so nothing is said
  /// about that one.
  void break_off() {
    document& d = documents.back();
    d.broken = true;
    if (!d.root.members.empty()) d.root.members.pop_back();
    open_.clear();
  }

  void broken_syntax(const YAML::Mark& mark, std::string message, std::string write) {
    node at;
    std::tie(at.line, at.column) = text_.place(mark);
    if (documents.empty()) OnDocumentStart(mark);
    fault(at, std::move(message), std::move(write));
    break_off();
  }

  /// What a message of yaml-cpp means at its place; it often shows only after the slip.
  void explain(const YAML::Mark& mark, const std::string& message) {
    const auto says = [&](const char* part) { return message.find(part) != std::string::npos; };
    if (says("illegal map value") || says("end of map not found")) {
      const std::string_view before = text_.line_before(mark);
      const std::string_view above = text_.line_above(mark);
      const std::string_view text = detail::trim(before);
      if (!text.empty() && (text.back() == '"' || text.back() == '\'')) {
        broken_syntax(mark, "text stands behind a closing quote",
                      "put all of it between the quotes");
      } else if (const std::size_t colon = glued_colon(above); colon != std::string_view::npos) {
        YAML::Mark at = mark;
        at.line = mark.line - 1;
        at.column = static_cast<int>(colon);
        broken_syntax(at, "no blank stands after this colon", "write `key: value`");
      } else if (says("end of map not found") || before.find(": ") == std::string_view::npos) {
        YAML::Mark at = mark;
        const std::size_t first = before.find_first_not_of(' ');
        if (first != std::string_view::npos) at.column = static_cast<int>(first);
        broken_syntax(at, "this line is indented otherwise than the keys above it",
                      "start it in the same column as they do");
      } else {
        broken_syntax(mark, "a second `: ` stands in this line",
                      "put the text after the first colon in quotes");
      }
      return;
    }
    auto [plain, write] = plain_words(message);
    broken_syntax(mark, std::move(plain), std::move(write));
  }

  void OnDocumentStart(const YAML::Mark& mark) override {
    document d;
    d.name = std::string(name_);
    std::tie(d.root.line, d.root.column) = text_.place(mark);
    if (!documents.empty() && !text_.begins_document(mark)) {
      // Which of the two was meant as the plan is not known, so neither is judged.
      fault(d.root, "the text goes on after its plan",
            "write `---` on a line of its own between two plans");
      throw stop_reading();
    }
    documents.push_back(std::move(d));
    open_.clear();
  }
  void OnDocumentEnd() override {}

  void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override {
    node n = make(mark, "", anchor);
    // The mark of an empty value is on the next line; the key's own place says more.
    if (!open_.empty() && open_.back().value->kind == node_kind::map && open_.back().has_key) {
      n.line = open_.back().key.line;
      n.column = open_.back().key.column;
    } else if (!open_.empty() && open_.back().value->kind == node_kind::sequence) {
      std::tie(n.line, n.column) = text_.lone_dash(*open_.back().value, n.line, {n.line, n.column});
    }
    add(std::move(n));
  }

  void OnAlias(const YAML::Mark& mark, YAML::anchor_t) override {
    node n = make(mark, "", 0);
    fault(n, alias_message, alias_write);
    n.faulty = true;
    add(std::move(n));
  }

  void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                const std::string& value) override {
    node n = make(mark, tag, anchor);
    n.kind = node_kind::scalar;
    n.text = value;
    if (!text_.quote_is_closed(mark)) {
      // yaml-cpp takes everything to the end of the text for the quoted text.
      fault(n, "a quote is not closed", "close it, or leave both quotes out");
      throw stop_reading();
    }
    n.style = text_.style_of(mark, value);
    if (n.style == scalar_style::literal)
      n.text_column = text_.literal_column(mark, value, n.column);
    add(std::move(n));
  }

  void OnSequenceStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                       YAML::EmitterStyle::value) override {
    open(make(mark, tag, anchor), node_kind::sequence);
  }
  void OnSequenceEnd() override { open_.pop_back(); }
  void OnMapStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                  YAML::EmitterStyle::value) override {
    open(make(mark, tag, anchor), node_kind::map);
  }
  void OnMapEnd() override { open_.pop_back(); }

 private:
  struct level {
    node* value;
    bool has_key = false;
    member key;
    std::unordered_map<std::string, int> lines = {};  // of the keys so far
  };

  marked_text text_;
  std::string_view name_;
  std::vector<level> open_;

  [[nodiscard]] node make(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor) {
    node n;
    std::tie(n.line, n.column) = text_.place(mark);
    const std::size_t faults_before = documents.back().faults.size();
    if (anchor != 0)
      fault(n, "an anchor (`&name`) marks this value",
            "leave the anchor out and write every value where it is used");
    if ((!tag.empty() && tag != "?" && tag != "!") || text_.has(mark, '!')) {
      fault(n, "a tag (`!name`) stands before this value", "leave the tag out");
    }
    n.faulty = documents.back().faults.size() != faults_before;
    return n;
  }

  void open(node n, node_kind kind) {
    n.kind = kind;
    if (open_.size() >= deepest) {
      fault(n, "the nesting is deeper than " + std::to_string(deepest) + " levels",
            "a plan needs two levels at most");
      throw stop_reading();
    }
    node* added = add(std::move(n));
    open_.push_back({added, false, {}, {}});
  }

  /// Puts a node where it belongs: the root, an item, a key, or the value of the last key.
  node* add(node n) {
    if (open_.empty()) {
      document& d = documents.back();
      d.root = std::move(n);
      return &d.root;
    }
    level& top = open_.back();
    if (top.value->kind == node_kind::sequence) {
      n.path = top.value->path + "[" + std::to_string(top.value->items.size() + 1) + "]";
      top.value->items.push_back(std::move(n));
      return &top.value->items.back();
    }
    if (!top.has_key) {
      if (n.kind != node_kind::scalar) {
        const auto count = [&](char c) { return text_.count(c); };
        if (count('{') + count('[') > count('}') + count(']')) {
          fault(n, unclosed_message, unclosed_write);
        } else {
          fault(n, "a key must be a word", "write `key: value`");
        }
        throw stop_reading();
      }
      top.key = {n.text, n.line, n.column, {}};
      top.has_key = true;
      key_node_ = std::move(n);
      return &key_node_;
    }
    top.has_key = false;
    n.path = top.value->path.empty() ? top.key.key : top.value->path + "." + top.key.key;
    node key_at;
    key_at.line = top.key.line;
    key_at.column = top.key.column;
    key_at.path = n.path;
    if (top.key.key == "<<") {
      fault(key_at, "`<<` merges another map into this one", "write the keys out");
      n.faulty = true;
    }
    const auto [first, is_new] = top.lines.try_emplace(top.key.key, top.key.line);
    if (!is_new) {
      fault(key_at,
            "`" + top.key.key + "` stands twice; the first is on line " +
                std::to_string(first->second),
            "keep one of the two");
    }
    member m = std::move(top.key);
    m.value = std::move(n);
    top.value->members.push_back(std::move(m));
    return &top.value->members.back().value;
  }

  node key_node_;
};

/// Faults of the bytes; where there are any, the text is not parsed.
[[nodiscard]] problems byte_faults(std::string_view text, std::string_view name) {
  problems errors;
  int line = 1;
  int column = 1;
  const auto fault = [&](std::string message, std::string write) {
    errors.push_back({std::string(name), line, column, "", std::move(message), std::move(write)});
  };
  if (text.size() > largest_text) {
    fault("the text is larger than 1 MiB", "split it into several files");
    return errors;
  }
  if (text.substr(0, 2) == "\xFF\xFE" || text.substr(0, 2) == "\xFE\xFF") {
    fault("the text is UTF-16", "save it as UTF-8");
    return errors;
  }
  const std::size_t bad = detail::invalid_utf8(text);
  bool line_start = true;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (i == bad) {
      fault("the text is not UTF-8 from here on", "save it as UTF-8");
      return errors;
    }
    if (c == '\t' && line_start) {
      fault("a tab stands where the line is indented", "indent with blanks");
      line_start = false;
    } else if (c != '\n' && c != '\r' && c != '\t' && detail::control_length(text.substr(i)) > 0) {
      fault("a control character stands in the text", "delete it");
    }
    if (c == '\n') {
      line_start = true;
      ++line;
      column = 1;
    } else {
      if (c != ' ') line_start = false;
      if ((static_cast<unsigned char>(c) & 0xC0) != 0x80) ++column;
    }
  }
  return errors;
}

}  // namespace

result<std::vector<document>> read_yaml(std::string_view text, std::string_view name) {
  if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);  // byte order mark
  problems errors = byte_faults(text, name);
  if (!errors.empty()) return errors;
  builder built(text, name);
  std::istringstream stream{std::string(text)};
  try {
    YAML::Parser parser(stream);
    while (parser.HandleNextDocument(built)) {
      if (built.documents.size() <= built.lines() + 1) continue;
      // yaml-cpp stands still before some texts and goes on making empty documents.
      built.documents.resize(1);
      built.broken_syntax(YAML::Mark::null_mark(), "the YAML cannot be read here",
                          "check quotes, brackets and commas");
      break;
    }
  } catch (const stop_reading&) {
    built.break_off();
  } catch (const YAML::Exception& e) {
    built.explain(e.mark, e.msg);
  }
  return std::move(built.documents);
}

}  // namespace jarproof
