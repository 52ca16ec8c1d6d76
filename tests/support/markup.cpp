// SPDX-License-Identifier: MIT
#include "markup.hpp"

#include <algorithm>
#include <set>
#include <utility>

namespace fixtures {

namespace {

constexpr std::string_view entities[] = {"&amp;", "&lt;", "&gt;", "&quot;", "&#39;"};

bool is_name(char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; }

/// Reads a page from front to back and notes what is wrong.
class reader {
 public:
  explicit reader(std::string_view text) : rest_(text) {}

  std::vector<std::string> read() {
    while (!rest_.empty()) {
      if (rest_.front() == '<') {
        tag();
      } else {
        text();
      }
    }
    for (const std::string& name : open_) wrong("<" + name + "> is not closed");
    for (const std::string& id : wanted_) {
      if (ids_.count(id) == 0) wrong("nothing has the id " + id);
    }
    return std::move(faults_);
  }

  int count(const std::string& name) const {
    return static_cast<int>(std::count(seen_.begin(), seen_.end(), name));
  }

 private:
  void wrong(const std::string& fault) { faults_.push_back(fault); }
  std::string parent() const { return open_.empty() ? "" : open_.back(); }

  void text() {
    const std::size_t end = std::min(rest_.find('<'), rest_.size());
    if (parent() == "svg" && rest_.substr(0, end).find_first_not_of('\n') != std::string_view::npos)
      wrong("text straight in a picture");
    if (parent() == "title" && after_svg_) titled_ = end > 0;
    if (parent() != "style") escaped(rest_.substr(0, end));
    rest_.remove_prefix(end);
  }

  void escaped(std::string_view words) {
    for (std::size_t i = 0; i < words.size(); ++i) {
      const auto c = static_cast<unsigned char>(words[i]);
      if ((c < 0x20 && c != '\n') || c == 0x7F) wrong("a control character");
      if (c == '<' || c == '>') wrong("a bare angle bracket");
      if (c != '&') continue;
      const std::string_view from = words.substr(i);
      if (std::none_of(std::begin(entities), std::end(entities),
                       [&](std::string_view e) { return from.substr(0, e.size()) == e; }))
        wrong("a bare &");
    }
  }

  void tag() {
    const std::size_t end = rest_.find('>');
    if (end == std::string_view::npos) {
      wrong("a tag without end");
      rest_ = {};
      return;
    }
    std::string_view inside = rest_.substr(1, end - 1);
    rest_.remove_prefix(end + 1);
    if (inside == "!doctype html") return;
    if (inside.substr(0, 1) == "/") {
      const std::string name(inside.substr(1));
      if (parent() != name) {
        wrong("</" + name + "> closes <" + parent() + ">");
      } else {
        open_.pop_back();
      }
      if (name == "title" && after_svg_ && !titled_) wrong("a picture with an empty title");
      if (name == "title") after_svg_ = false;
      return;
    }
    const bool alone = !inside.empty() && inside.back() == '/';
    if (alone) inside.remove_suffix(1);
    std::size_t at = 0;
    while (at < inside.size() && is_name(inside[at])) ++at;
    const std::string name(inside.substr(0, at));
    if (name.empty()) wrong("a tag without a name: " + std::string(inside));
    begin(name, attributes(inside.substr(at)));
    if (!alone && name != "meta") open_.push_back(name);
    if (alone && std::find(open_.begin(), open_.end(), "svg") == open_.end())
      wrong("<" + name + "/> outside of a picture");
  }

  using pairs = std::vector<std::pair<std::string, std::string>>;

  pairs attributes(std::string_view text) {
    pairs out;
    while (!text.empty()) {
      if (text.front() != ' ') {
        wrong("no blank before an attribute: " + std::string(text));
        return out;
      }
      text.remove_prefix(1);
      const std::size_t equals = text.find("=\"");
      const std::size_t close =
          equals == std::string_view::npos ? equals : text.find('"', equals + 2);
      if (close == std::string_view::npos) {
        wrong("an attribute without quotes: " + std::string(text));
        return out;
      }
      const std::string key(text.substr(0, equals));
      const std::string value(text.substr(equals + 2, close - equals - 2));
      escaped(value);
      for (const auto& [other, unused] : out) {
        if (other == key) wrong("twice in one tag: " + key);
      }
      out.emplace_back(key, value);
      text.remove_prefix(close + 1);
    }
    return out;
  }

  void begin(const std::string& name, const pairs& all) {
    seen_.push_back(name);
    bool scope = false;
    for (const auto& [key, value] : all) {
      if (key == "id" && !ids_.insert(value).second) wrong("the id " + value + " stands twice");
      if (key == "id" && value.find_first_of(" \n") != std::string::npos) wrong("a blank in an id");
      if (key == "aria-labelledby") refer(value);
      if (key == "href") {
        value.substr(0, 1) == "#" ? refer(value.substr(1)) : wrong("a link to " + value);
      }
      if (key.substr(0, 2) == "on" || key == "src" || key == "srcset" || key == "style" ||
          key == "xlink:href")
        wrong("the attribute " + key);
      scope = scope || (key == "scope" && (value == "row" || value == "col"));
    }
    if (after_svg_ && name != "title") {
      wrong("a picture whose title is not first");
      after_svg_ = false;
    }
    if (name == "svg") {
      after_svg_ = true;
      titled_ = false;
    }
    if (name == "th" && !scope) wrong("a header cell without scope");
    for (const char* bad : {"script", "iframe", "object", "embed", "link", "img", "use", "image",
                            "base", "form", "foreignobject"}) {
      if (name == bad) wrong("<" + name + ">");
    }
    if (name.size() == 2 && name[0] == 'h' && name[1] >= '1' && name[1] <= '6') {
      const int level = name[1] - '0';
      if (level > level_ + 1) wrong("from h" + std::to_string(level_) + " to " + name);
      level_ = level;
    }
  }

  /// Ids parted by blanks.
  void refer(std::string_view ids) {
    while (!ids.empty()) {
      const std::size_t end = std::min(ids.find(' '), ids.size());
      wanted_.insert(std::string(ids.substr(0, end)));
      ids.remove_prefix(std::min(end + 1, ids.size()));
    }
  }

  std::string_view rest_;
  std::vector<std::string> faults_;
  std::vector<std::string> open_;
  std::vector<std::string> seen_;
  std::set<std::string> ids_;
  std::set<std::string> wanted_;
  bool after_svg_ = false;
  bool titled_ = false;
  int level_ = 0;
};

}  // namespace

std::vector<std::string> faults_of_markup(std::string_view markup) { return reader(markup).read(); }

std::vector<std::string> faults_of_page(std::string_view page) {
  reader r(page);
  std::vector<std::string> out = r.read();
  const auto need = [&](std::string_view what) {
    if (page.find(what) == std::string_view::npos) out.push_back("lacks " + std::string(what));
  };
  constexpr std::string_view start = "<!doctype html>\n<html lang=\"en\">\n";
  if (page.substr(0, start.size()) != start) out.emplace_back("does not begin as a page");
  need("<meta charset=\"utf-8\">");
  need("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">");
  need("default-src 'none'");
  need("<main>");
  need("<footer>");
  for (const char* bad : {"url(", "@import", "@font-face", "javascript:", "<script"}) {
    if (page.find(bad) != std::string_view::npos) out.push_back(std::string("has ") + bad);
  }
  for (const char* once : {"html", "head", "body", "main", "h1", "style", "footer"}) {
    if (r.count(once) != 1)
      out.push_back("<" + std::string(once) + "> " + std::to_string(r.count(once)) + " times");
  }
  return out;
}

std::string words_of_page(std::string_view page) {
  std::string out;
  bool inside = false;
  for (const char c : page.substr(std::min(page.find("<body>"), page.size()))) {
    if (c == '<') inside = true;
    if (!inside) out += c;
    if (c == '>') inside = false;
  }
  for (const auto& [entity, c] :
       {std::pair{"&lt;", "<"}, {"&gt;", ">"}, {"&quot;", "\""}, {"&#39;", "'"}, {"&amp;", "&"}}) {
    const std::string from = entity;
    for (std::size_t at = out.find(from); at != std::string::npos; at = out.find(from, at + 1))
      out.replace(at, from.size(), c);
  }
  return out;
}

std::string one_line(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c == '`') continue;
    const char plain = c == '\n' ? ' ' : c;
    if (plain != ' ' || (!out.empty() && out.back() != ' ')) out += plain;
  }
  return out;
}

bool stands_in(const std::string& text, const std::string& what) {
  return text.find(what) != std::string::npos;
}

}  // namespace fixtures
