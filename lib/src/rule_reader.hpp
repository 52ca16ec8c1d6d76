// Strict reading of values in rule files: every mistake is an error with its place.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <functional>
#include <initializer_list>
#include <memory>
#include <set>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "jarproof/detail/words.hpp"
#include "jarproof/document.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/result.hpp"

namespace jarproof {

/// Owns what the views of an edition point at.
class storage {
 public:
  [[nodiscard]] std::string_view keep(const std::string& text) {
    auto owned = std::make_shared<const std::string>(text);
    kept_.push_back(owned);
    return *owned;
  }
  template <class T>
  [[nodiscard]] list<T> keep(std::vector<T> values) {
    auto owned = std::make_shared<const std::vector<T>>(std::move(values));
    kept_.push_back(owned);
    return {owned->data(), owned->size()};
  }
  [[nodiscard]] std::vector<std::shared_ptr<const void>> take() { return std::move(kept_); }

 private:
  std::vector<std::shared_ptr<const void>> kept_;
};

/// What the readers of all rule files share. A value that cannot be read is reported and stands in
/// as nothing, so that one mistake gives one message.
class rule_reader {
 protected:
  storage storage_;
  problems errors_;
  edition edition_;
  std::vector<std::function<void()>> later_;  // what can be checked only when all files are read
  std::string file_;
  bool extends_ = false;          // the folder adds to an edition that is there already
  std::set<std::string> unread_;  // files that gave no entries; what rests on them is not checked

  /// The file in which an entry of a list of the edition stands.
  [[nodiscard]] static std::string file_of(const source*, std::string_view) {
    return "sources.yaml";
  }
  [[nodiscard]] static std::string file_of(const band_set*, std::string_view) {
    return "altitude.yaml";
  }
  [[nodiscard]] static std::string file_of(const form_word*, std::string_view) {
    return "vocabulary.yaml";
  }
  [[nodiscard]] static std::string file_of(const prepared_word*, std::string_view) {
    return "vocabulary.yaml";
  }
  [[nodiscard]] static std::string file_of(const jar_size*, std::string_view) {
    return "jars.yaml";
  }
  [[nodiscard]] static std::string file_of(const ingredient*, std::string_view) {
    return "ingredients/GROUP.yaml";
  }
  [[nodiscard]] static std::string file_of(const seasoning_limit*, std::string_view) {
    return "seasonings.yaml";
  }
  [[nodiscard]] static std::string file_of(const telling_word*, std::string_view) {
    return "vocabulary.yaml";
  }
  [[nodiscard]] static std::string file_of(const spelling*, std::string_view) {
    return "vocabulary.yaml";
  }
  [[nodiscard]] static std::string file_of(const untested_food*, std::string_view) {
    return "without-process.yaml";
  }
  [[nodiscard]] static std::string file_of(const left_out*, std::string_view) {
    return "ways.yaml";
  }
  [[nodiscard]] static std::string file_of(const dry_yield*, std::string_view) {
    return "ways.yaml";
  }
  [[nodiscard]] static std::string file_of(const way_step*, std::string_view) {
    return "ways.yaml";
  }
  [[nodiscard]] static std::string file_of(const method*, std::string_view) {
    return "methods.yaml";
  }
  [[nodiscard]] static std::string file_of(const process*, std::string_view id) {
    return "processes/" + std::string(id) + ".yaml";
  }
  [[nodiscard]] static std::string file_of(const check_rule*, std::string_view id) {
    return "checks/" + std::string(id) + ".yaml";
  }

  void fault(const std::string& file, int line, int column, std::string message,
             std::string write) {
    errors_.push_back({file, line, column, "", std::move(message), std::move(write)});
  }
  void fault(const node& at, std::string message, std::string write) {
    fault(file_, at.line, at.column, std::move(message), std::move(write));
  }

  void only(const node& map, const std::vector<std::string_view>& keys) {
    if (map.kind != node_kind::map && !map.faulty) {
      fault(map, "keys with values are needed here", "use: " + detail::joined(keys, "and"));
    }
    for (const member& m : map.members) {
      if (std::find(keys.begin(), keys.end(), m.key) != keys.end()) continue;
      const std::string near = detail::nearest(m.key, keys);
      fault(file_, m.line, m.column, "`" + m.key + "` is no key here",
            near.empty() ? "use one of: " + detail::joined(keys, "and")
                         : "did you mean `" + near + "`?");
    }
  }

  [[nodiscard]] const node* value(const node& map, std::string_view key, bool needed) {
    if (map.kind != node_kind::map) return nullptr;  // reported already
    const node* found = find(map, key);
    if (found != nullptr && found->faulty) return nullptr;  // reported already
    if (found == nullptr && needed)
      fault(map, "`" + std::string(key) + "` is missing", "add `" + std::string(key) + ": ...`");
    return found;
  }

  [[nodiscard]] std::string_view text_of(const node& n) {
    if (n.kind != node_kind::scalar || detail::trim(n.text).empty()) {
      fault(n, "a text is needed here", "write one text");
      return {};
    }
    return storage_.keep(std::string(detail::trim(n.text)));
  }
  [[nodiscard]] std::string_view text(const node& map, std::string_view key, bool needed = true) {
    const node* n = value(map, key, needed);
    return n == nullptr ? std::string_view() : text_of(*n);
  }

  [[nodiscard]] int number_of(const node& n, int least, int most) {
    int number = 0;
    bool good = n.kind == node_kind::scalar && !n.text.empty() && n.text.size() <= 6;
    for (const char c : n.text) good = good && detail::is_digit(c);
    if (good && n.text.size() > 1 && n.text[0] == '0') good = false;
    if (!good) {
      // `20 min` holds the number; of `25.5` or `1,000` no part may be kept.
      std::string digits;
      for (const char c : n.text) {
        if (!detail::is_digit(c)) break;
        if (digits == "0") digits.clear();
        digits.push_back(c);
      }
      const std::size_t rest = n.text.find_first_not_of("0123456789");
      const bool unit = rest != std::string::npos &&
                        (n.text[rest] == ' ' || detail::lower(n.text[rest]) != n.text[rest] ||
                         (n.text[rest] >= 'a' && n.text[rest] <= 'z'));
      std::string write = "write digits only";
      if (!digits.empty() && rest == std::string::npos) write = "write `" + digits + "`";
      if (!digits.empty() && unit) write = "write `" + digits + "`; the unit is part of the key";
      fault(n,
            n.kind == node_kind::scalar ? "`" + n.text + "` is no whole number"
                                        : "a whole number is needed here",
            std::move(write));
      return 0;
    }
    number = std::stoi(n.text);
    if (number < least || number > most) {
      fault(n,
            "`" + n.text + "` is outside " + std::to_string(least) + " to " + std::to_string(most),
            "check it against the source");
      return 0;
    }
    return number;
  }
  [[nodiscard]] int number(const node& map, std::string_view key, int least, int most,
                           bool needed = true) {
    const node* n = value(map, key, needed);
    return n == nullptr ? 0 : number_of(*n, least, most);
  }

  /// A decimal with up to three places, as thousandths.
  [[nodiscard]] int thousandths(const node& map, std::string_view key, int most) {
    const node* n = value(map, key, true);
    return n == nullptr ? 0 : thousandths_of(*n, most);
  }
  [[nodiscard]] int thousandths_of(const node& n, int most) {
    const std::string& t = n.text;
    const std::size_t point = t.find('.');
    const std::string whole = t.substr(0, point);
    std::string part = point == std::string::npos ? "" : t.substr(point + 1);
    bool good = n.kind == node_kind::scalar && !whole.empty() && whole.size() <= 4 &&
                part.size() <= 3 && (point == std::string::npos || !part.empty());
    for (const char c : whole + part) good = good && detail::is_digit(c);
    if (!good) {
      fault(n, "`" + t + "` is no decimal number",
            "write it like `1` or `1.25`; the unit is part of the key");
      return 0;
    }
    part.resize(3, '0');
    const int number = std::stoi(whole) * 1000 + std::stoi(part);
    if (number == 0 || number > most * 1000)
      fault(n, "`" + t + "` is outside the possible range", "check it against the source");
    return number;
  }

  [[nodiscard]] bool truth(const node& map, std::string_view key, bool needed = true) {
    const node* n = value(map, key, needed);
    if (n == nullptr) return false;
    if (n->text == "yes" || n->text == "true") return true;
    if (n->text != "no" && n->text != "false")
      fault(*n, "`" + n->text + "` is neither yes nor no", "write yes or no");
    return false;
  }

  [[nodiscard]] std::string_view one_of(const node& map, std::string_view key,
                                        std::initializer_list<std::string_view> words,
                                        bool needed = true) {
    const node* n = value(map, key, needed);
    if (n == nullptr) return {};
    if (std::find(words.begin(), words.end(), n->text) == words.end()) {
      fault(*n, "`" + n->text + "` is not known here", "write " + detail::joined(words));
      return {};
    }
    return storage_.keep(n->text);
  }

  [[nodiscard]] const std::vector<node>& items(const node& map, std::string_view key, bool needed) {
    static const std::vector<node> none;
    const node* n = value(map, key, needed);
    if (n == nullptr) return none;
    if (n->kind != node_kind::sequence || n->items.empty()) {
      fault(*n, "`" + std::string(key) + "` takes a list with at least one entry",
            "write `[...]` or lines that begin with `- `");
      return none;
    }
    return n->items;
  }

  [[nodiscard]] list<std::string_view> words(const node& map, std::string_view key,
                                             bool needed = false, bool once = true) {
    std::vector<std::string_view> out;
    for (const node& n : items(map, key, needed)) {
      const std::string_view one = text_of(n);
      if (once && std::find(out.begin(), out.end(), one) != out.end())
        fault(n, "`" + std::string(one) + "` stands twice", "keep one");
      out.push_back(one);
    }
    return storage_.keep(std::move(out));
  }

  [[nodiscard]] list<int> numbers(const node& map, std::string_view key, int least, int most) {
    std::vector<int> out;
    for (const node& n : items(map, key, false)) out.push_back(number_of(n, least, most));
    return storage_.keep(std::move(out));
  }

  /// Entries with an `id` that is unique in the list.
  template <class T, class Reader>
  [[nodiscard]] list<T> entries(const node& root, std::string_view key,
                                T (Reader::*read)(const node&), bool whole_file = true) {
    if (whole_file) only(root, {key});
    std::vector<T> out;
    std::set<std::string_view> ids;
    for (const node& n : items(root, key, true)) {
      if (n.kind != node_kind::map) {
        fault(n, "an entry with keys is needed here", "write `- id: ...`");
        continue;
      }
      T entry = (static_cast<Reader*>(this)->*read)(n);
      if (!entry.id.empty() && !ids.insert(entry.id).second) {
        fault(n, "the id `" + std::string(entry.id) + "` stands twice",
              "give every entry an id of its own");
      }
      out.push_back(entry);
    }
    return storage_.keep(std::move(out));
  }

  /// Puts off a check until all files are read, with the file name it belongs to.
  template <class Check>
  void afterwards(Check check) {
    later_.push_back([this, file = file_, check] {
      file_ = file;
      check();
    });
  }

  /// `key` names an entry of a list that may not be read yet.
  template <class T>
  [[nodiscard]] std::string_view reference(const node& map, std::string_view key,
                                           list<T> edition::*entries_of, bool needed) {
    const node* n = value(map, key, needed);
    if (n == nullptr) return {};
    const std::string_view id = text_of(*n);
    refer(*n, id, entries_of);
    return id;
  }
  template <class T>
  void refer(const node& at, std::string_view id, list<T> edition::*entries_of) {
    if (id.empty()) return;
    afterwards([this, &at, id, entries_of] {
      if (find(edition_.*entries_of, id) != nullptr) return;
      if constexpr (std::is_same_v<T, process>) {
        if (edition_.processes.empty()) return;  // reported already
      }
      if (unread_.count(file_of(static_cast<const T*>(nullptr), id)) != 0) return;
      std::vector<std::string_view> known;
      for (const T& e : edition_.*entries_of) known.push_back(e.id);
      const std::string near = detail::nearest(id, known);
      fault(at, "`" + std::string(id) + "` is not defined",
            near.empty() ? "define it in " + file_of(static_cast<const T*>(nullptr), id) +
                               ", or name one that is"
                         : "did you mean `" + near + "`?");
    });
  }

  [[nodiscard]] list<citation> citations(const node& map, bool needed) {
    std::vector<citation> out;
    for (const node& n : items(map, "sources", needed)) {
      only(n, {"ref", "part", "page"});
      out.push_back({reference(n, "ref", &edition::sources, true), text(n, "part", false),
                     text(n, "page", false)});
    }
    return storage_.keep(std::move(out));
  }
};

}  // namespace jarproof
