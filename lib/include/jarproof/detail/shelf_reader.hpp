// Strict reading of one line of a shelf record; every fault of the line at once.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "jarproof/detail/dates.hpp"
#include "jarproof/detail/plan_values.hpp"
#include "jarproof/detail/shelf_writer.hpp"
#include "jarproof/read_plan.hpp"
#include "jarproof/shelf_record.hpp"

namespace jarproof::detail {

inline constexpr std::string_view record_keys[] = {
    "record",   "lot",  "title", "date", "library", "edition",  "verdict", "process",
    "required", "plan", "jars",  "jar",  "run",     "unsealed", "use_by"};
inline constexpr std::string_view happening_keys[] = {"record", "lot",       "date",    "opened",
                                                      "eaten",  "discarded", "unsealed"};

class shelf_reader : private plan_values {
 public:
  explicit shelf_reader(const document& source) : plan_values(source) {}

  [[nodiscard]] result<shelf_line> read() {
    errors_ = source_.faults;
    for (problem& p : errors_) p.file = source_.name;
    const node* format = value_of("record");
    if (format != nullptr && format->text != shelf_format) {
      fault(*format, "`" + format->text + "` is no record that can be read",
            "write `" + std::string(shelf_format) + "`");
    }
    shelf_line out = is_happening() ? shelf_line(happening()) : shelf_line(record());
    if (!errors_.empty()) return errors_;
    return out;
  }

 private:
  /// A line with a key that only the record of a lot has is one, however much of it is missing.
  [[nodiscard]] bool is_happening() const {
    return std::none_of(
        source_.root.members.begin(), source_.root.members.end(),
        [](const member& m) { return is_in(m.key, record_keys) && !is_in(m.key, happening_keys); });
  }

  template <class Keys>
  [[nodiscard]] static bool is_in(std::string_view key, const Keys& keys) {
    return std::find(std::begin(keys), std::end(keys), key) != std::end(keys);
  }

  template <class Keys>
  void unknown_keys(const Keys& keys, std::string_view of) {
    for (const member& m : source_.root.members) {
      if (!is_in(m.key, keys))
        unknown_key(m, m.value.path, nearest(m.key, keys), joined(keys, "and"), of);
    }
  }

  /// The value of a key that must be there.
  [[nodiscard]] const node* value_of(std::string_view key, const node* in = nullptr,
                                     std::string_view write = "") {
    const node& map = in == nullptr ? source_.root : *in;
    const node* value = find(map, key);
    if (value != nullptr) return value;
    const std::string path = (map.path.empty() ? "" : map.path + ".") + std::string(key);
    errors_.push_back({source_.name, map.line, map.column, path,
                       "`" + std::string(key) + "` is missing",
                       write.empty() ? "write it as the other lines have it" : std::string(write)});
    return nullptr;
  }

  /// The value of a key that must be there, where it is one text or number.
  [[nodiscard]] const node* scalar_of(std::string_view key, const node* in = nullptr,
                                      std::string_view write = "") {
    const node* value = value_of(key, in, write);
    if (value == nullptr || (value->kind == node_kind::scalar && !trim(value->text).empty()))
      return value;
    fault(*value, "`" + std::string(key) + "` takes one value",
          write.empty() ? "write it as the other lines have it" : std::string(write));
    return nullptr;
  }

  [[nodiscard]] std::string text_of(std::string_view key, const node* in = nullptr,
                                    std::string_view write = "") {
    const node* value = scalar_of(key, in, write);
    const std::optional<word> written = value == nullptr ? std::nullopt : text(*value, key);
    return written ? written->text : "";
  }

  [[nodiscard]] std::string date_of(std::string_view key) {
    const node* value = scalar_of(key, nullptr, "write year, month and day, such as `2026-08-14`");
    const std::optional<word> written = value == nullptr ? std::nullopt : date(*value, key);
    return written ? written->text : "";
  }

  /// A number of jars; `0` only where `none` may be.
  [[nodiscard]] int count_of(std::string_view key, bool none = false) {
    const node* value = scalar_of(key, nullptr, "write a whole number, such as `7`");
    if (value == nullptr || (none && value->text == "0")) return 0;
    const std::optional<said<int>> number = count(*value, key);
    return number ? number->value : 0;
  }

  [[nodiscard]] verdict verdict_in(std::string_view key, const node* in = nullptr) {
    constexpr verdict all[] = {verdict::accepted, verdict::rejected, verdict::untested,
                               verdict::incomplete};
    const node* value = value_of(key, in, "write the verdict, such as `accepted`");
    if (value == nullptr) return verdict::incomplete;
    for (const verdict v : all) {
      if (value->kind == node_kind::scalar && value->text == name_of(v)) return v;
    }
    fault(*value, "`" + value->text + "` is no verdict of a plan",
          "write accepted, rejected, untested or incomplete");
    return verdict::incomplete;
  }

  /// An object with these keys and no others; null, and said, where it is none.
  [[nodiscard]] const node* object(const node* value, std::string_view key,
                                   std::initializer_list<std::string_view> keys,
                                   std::string_view example) {
    if (value == nullptr) return nullptr;
    if (value->kind != node_kind::map) {
      fault(*value, "`" + std::string(key) + "` takes its parts in braces",
            "write `" + std::string(example) + "`");
      return nullptr;
    }
    for (const member& m : value->members) {
      if (!is_in(m.key, keys))
        unknown_key(m, m.value.path, nearest(m.key, keys), joined(keys, "and"),
                    "`" + std::string(key) + "`");
    }
    return value;
  }

  [[nodiscard]] shelf_happening happening() {
    shelf_happening out;
    unknown_keys(happening_keys, "a line about a lot");
    out.source = source_.name;
    out.lot = text_of("lot");
    out.date = date_of("date");
    int said = 0;
    for (const shelf_event e :
         {shelf_event::opened, shelf_event::eaten, shelf_event::discarded, shelf_event::unsealed}) {
      if (find(source_.root, name_of(e)) == nullptr) continue;
      ++said;
      out.what = e;
      out.jars = count_of(name_of(e));
    }
    if (said != 1) {
      fault(source_.root,
            said == 0 ? "the line does not say what happened" : "the line says several things",
            "write one of `opened`, `eaten`, `discarded` and `unsealed` with a count, such as "
            "`\"opened\": 2`");
    }
    return out;
  }

  [[nodiscard]] shelf_record record() {
    shelf_record out;
    unknown_keys(record_keys, "the record of a lot");
    out.source = source_.name;
    out.lot = text_of("lot", nullptr, "give the lot a name of its own, such as `beans-1`");
    if (const node* title = value_of("title")) {
      const bool empty = title->kind == node_kind::scalar && title->text.empty();
      if (!empty) out.title = text(*title, "title").value_or(word{}).text;
    }
    out.date = date_of("date");
    out.library = text_of("library");
    const node* edition = object(value_of("edition"), "edition", {"name", "version"},
                                 "{\"name\": \"...\", \"version\": \"...\"}");
    if (edition != nullptr) {
      out.edition_name = text_of("name", edition);
      out.edition_version = text_of("version", edition);
    }
    out.verdict = verdict_in("verdict");
    if (const node* process = value_of("process"); process && process->kind != node_kind::null)
      out.process = text(*process, "process").value_or(word{}).text;
    read_required(out);
    read_plan_of(out);
    out.jars = count_of("jars");
    out.jar = text_of("jar");
    const node* run = find(source_.root, "run");
    if (object(run, "run", {"verdict", "log"},
               "{\"verdict\": \"accepted\", \"log\": \"soup.csv\"}"))
      out.run = shelf_run{verdict_in("verdict", run), text_of("log", run)};
    out.unsealed = count_of("unsealed", true);
    if (out.jars > 0 && out.unsealed > out.jars) {
      fault(*find(source_.root, "unsealed"), "more jars are unsealed than were put up",
            "write at most " + std::to_string(out.jars));
    }
    read_use_by(out);
    agree_with_plan(out);
    return out;
  }

  /// Kept as it was written: a later version may say more in it.
  void read_required(shelf_record& out) {
    const node* required = value_of("required");
    if (required == nullptr) return;
    if (required->kind != node_kind::map && required->kind != node_kind::null)
      fault(*required, "`required` is neither an object nor null", "write it as a report has it");
    out.required = tree_text(*required, plain_scalars::as_written);
  }

  void read_plan_of(shelf_record& out) {
    const node* written =
        value_of("plan", nullptr, "write the plan, so that it can be judged again");
    if (written == nullptr) return;
    document d;
    d.name = source_.name;
    d.root = *written;
    // The lines of the recipe were recorded with the plan; its file is no longer needed.
    if (find(*written, "ingredients") != nullptr) d.recipe_source = d.name;
    result<jarproof::plan> read = jarproof::read_plan(d);
    if (read) {
      out.plan = std::move(*read);
      out.plan_text = tree_text(*written, plain_scalars::as_texts);
      return;
    }
    for (problem p : read.errors()) {
      if (p.path != "plan" && p.path.compare(0, 5, "plan.") != 0) p.path.insert(0, "plan.");
      errors_.push_back(std::move(p));
    }
  }

  void read_use_by(shelf_record& out) {
    out.use_by = date_of("use_by");
    if (out.date.empty() || out.use_by.empty()) return;
    const std::string latest = a_year_after(out.date);
    if (out.use_by >= out.date && out.use_by <= latest) return;
    fault(*find(source_.root, "use_by"),
          out.use_by < out.date ? "the day of use lies before `date`"
                                : "the day of use is more than a year after `date`",
          "write `" + latest + "`");
  }

  /// Of two statements that differ, one would go unseen.
  void agree_with_plan(const shelf_record& out) {
    const auto agree = [&](std::string_view key, bool same, const std::string& of_plan) {
      const node* value = find(source_.root, key);
      if (same || value == nullptr) return;
      fault(*value, "the plan in the record has " + std::string(key) + " `" + of_plan + "`",
            "write the same in both places");
    };
    const jarproof::plan& p = out.plan;
    if (p.lot && !out.lot.empty()) agree("lot", p.lot->text == out.lot, p.lot->text);
    if (p.date && !out.date.empty()) agree("date", p.date->text == out.date, p.date->text);
    if (p.jars && out.jars > 0) agree("jars", p.jars->value == out.jars, p.jars->text);
    if (p.jar && !out.jar.empty()) agree("jar", p.jar->text == out.jar, p.jar->text);
  }
};

}  // namespace jarproof::detail
