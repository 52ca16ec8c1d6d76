// SPDX-License-Identifier: MIT
#include <algorithm>
#include <string>
#include <utility>

#include "jarproof/detail/words.hpp"
#include "jarproof/json.hpp"
#include "jarproof/read_recipe.hpp"

namespace jarproof {
namespace {

constexpr std::size_t largest_page = 16 << 20;
constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

[[nodiscard]] problems one(std::string_view name, std::string message, std::string write) {
  return {{std::string(name), 0, 0, "", std::move(message), std::move(write)}};
}

/// Without what keeps old browsers from reading a script: `<!-- ... -->`, `<![CDATA[ ... ]]>`, each
/// perhaps behind `//`.
[[nodiscard]] std::string_view without_wrapping(std::string_view text) {
  const auto slashes = [&] {
    if (text.substr(0, 2) == "//") text = detail::trim(text.substr(2));
  };
  text = detail::trim(text);
  slashes();
  for (const auto& [head, tail] :
       {std::pair<std::string_view, std::string_view>{"<!--", "-->"}, {"<![CDATA[", "]]>"}}) {
    if (text.substr(0, head.size()) != head) continue;
    text = detail::trim(text.substr(head.size()));
    slashes();
    if (text.size() >= tail.size() && text.substr(text.size() - tail.size()) == tail)
      text = detail::trim(text.substr(0, text.size() - tail.size()));
    if (text.size() >= 2 && text.substr(text.size() - 2) == "//")
      text = detail::trim(text.substr(0, text.size() - 2));
  }
  return text;
}

/// The texts of all `<script type="application/ld+json">` elements of a page.
[[nodiscard]] std::vector<std::string_view> linked_data_scripts(std::string_view page) {
  std::string lower(page);
  std::transform(lower.begin(), lower.end(), lower.begin(), detail::lower);
  std::vector<std::string_view> out;
  for (std::size_t at = lower.find("<script"); at != std::string::npos;
       at = lower.find("<script", at)) {
    const std::size_t open_end = lower.find('>', at);
    if (open_end == std::string::npos) break;
    const std::size_t end = std::min(lower.find("</script", open_end), lower.size());
    const std::string_view attributes = std::string_view(lower).substr(at, open_end - at);
    if (attributes.find("application/ld+json") != std::string_view::npos)
      out.push_back(without_wrapping(page.substr(open_end + 1, end - open_end - 1)));
    at = end;
  }
  return out;
}

[[nodiscard]] result<std::vector<recipe>> read_page(std::string_view page, std::string_view name) {
  if (page.size() > largest_page)
    return one(name, "the page is larger than 16 MiB", "save the recipe alone");
  const std::vector<std::string_view> scripts = linked_data_scripts(page);
  if (scripts.empty()) {
    return one(name, "the page holds no recipe data (`<script type=\"application/ld+json\">`)",
               "copy the recipe as plain text into a .txt file");
  }
  std::vector<document> documents;
  problems broken;
  for (std::size_t i = 0; i < scripts.size(); ++i) {
    result<std::vector<document>> read = read_json(scripts[i], name);
    if (read) {
      std::move(read->begin(), read->end(), std::back_inserter(documents));
      continue;
    }
    for (problem p : read.errors()) {
      p.message = "recipe data " + std::to_string(i + 1) + " of the page: " + p.message;
      p.write += ", or copy the recipe as plain text into a .txt file";
      broken.push_back(std::move(p));
    }
  }
  result<std::vector<recipe>> recipes = recipes_of(documents, std::string(name));
  // A page may hold other data that is broken; the recipe is what counts.
  const bool none = std::none_of(documents.begin(), documents.end(), [](const document& d) {
    std::vector<const node*> found;
    detail::find_recipes(d.root, found);
    return !found.empty();
  });
  if (!recipes && none && !broken.empty()) return broken;
  return recipes;
}

}  // namespace

result<std::vector<recipe>> read_recipe_json(std::string_view text, std::string_view name) {
  if (text.substr(0, 3) == byte_order_mark) text.remove_prefix(3);
  const std::string_view content = detail::trim(text);
  if (content.empty()) return one(name, "the recipe is empty", "write the recipe into it");
  if (content.front() == '<') return read_page(content, name);
  const result<std::vector<document>> read = read_json(text, name);
  if (!read) return read.errors();
  return recipes_of(*read, std::string(name));
}

result<std::vector<recipe>> read_recipes(std::string_view text, std::string_view name) {
  std::string_view content = text.substr(text.substr(0, 3) == byte_order_mark ? 3 : 0);
  content = detail::trim(content);
  const char first = content.empty() ? ' ' : content.front();
  // `[ ]` and `[x]` are boxes to tick in a list.
  const bool box = content.substr(0, 2) == "[]" || content.substr(0, 3) == "[ ]" ||
                   content.substr(0, 3) == "[x]" || content.substr(0, 3) == "[X]";
  if (first == '<' || first == '{' || (first == '[' && !box)) return read_recipe_json(text, name);
  result<recipe> read = read_recipe_text(text, std::string(name));
  if (!read) return read.errors();
  return std::vector<recipe>{std::move(*read)};
}

}  // namespace jarproof
