// The edition as data: JSON against its schema, CSV by its columns, and a folder that extends it.
// SPDX-License-Identifier: MIT
#include "jarproof/format/export.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "jarproof/detail/ingredient_line.hpp"
#include "jarproof/json.hpp"
#include "support/fixtures.hpp"

namespace export_tests {
namespace {

using jarproof::builtin_edition;
using jarproof::find;
using jarproof::node;
using jarproof::node_kind;

node parsed(const std::string& text) {
  auto read = jarproof::read_json(text, "text.json", 8);
  REQUIRE(read);
  REQUIRE(read->size() == 1);
  return read->front().root;
}

/// The keywords of JSON Schema 2020-12 that the schema uses; any other fails the test.
class schema_check {
 public:
  explicit schema_check(const node& schema) : root_(schema) {}

  void against(const node& value, const node& schema, const std::string& path) {
    INFO(path);
    if (const node* ref = find(schema, "$ref")) {
      const std::string name = ref->text.substr(std::string("#/$defs/").size());
      const node* to = find(*find(root_, "$defs"), name);
      REQUIRE(to != nullptr);
      return against(value, *to, path);
    }
    for (const jarproof::member& m : schema.members) {
      const std::vector<std::string> known{
          "type",     "properties", "required", "additionalProperties", "items",
          "minItems", "enum",       "const",    "description",          "title",
          "$schema",  "$id",        "$defs"};
      CHECK(std::find(known.begin(), known.end(), m.key) != known.end());
    }
    if (const node* one = find(schema, "const")) CHECK(value.text == one->text);
    if (const node* some = find(schema, "enum")) {
      const bool listed = std::any_of(some->items.begin(), some->items.end(),
                                      [&](const node& n) { return n.text == value.text; });
      CHECK(listed);
    }
    const node* type = find(schema, "type");
    if (type == nullptr) return;
    if (type->text == "object") return object(value, schema, path);
    if (type->text == "array") {
      REQUIRE(value.kind == node_kind::sequence);
      CHECK_FALSE(value.items.empty());
      for (std::size_t i = 0; i < value.items.size(); ++i)
        against(value.items[i], *find(schema, "items"), path + "/" + std::to_string(i));
      return;
    }
    CHECK(value.kind == node_kind::scalar);
    const bool plain = value.style == jarproof::scalar_style::plain;
    CHECK(plain == (type->text != "string"));
    if (type->text == "integer")
      CHECK(value.text.find_first_not_of("0123456789") == std::string::npos);
    if (type->text == "boolean") CHECK((value.text == "true" || value.text == "false"));
    ++leaves;
  }

  std::size_t leaves = 0;

 private:
  const node& root_;

  void object(const node& value, const node& schema, const std::string& path) {
    REQUIRE(value.kind == node_kind::map);
    const node* properties = find(schema, "properties");
    REQUIRE(properties != nullptr);
    for (const jarproof::member& m : value.members) {
      const node* one = find(*properties, m.key);
      INFO(path << "/" << m.key);
      REQUIRE(one != nullptr);
      against(m.value, *one, path + "/" + m.key);
    }
    if (const node* required = find(schema, "required")) {
      for (const node& key : required->items) {
        INFO(path << " lacks " << key.text);
        CHECK(find(value, key.text) != nullptr);
      }
    }
  }
};

std::vector<jarproof::rule_file> addition(const std::string& process_text) {
  return {{"edition.yaml",
           "extends: builtin\nname: Valley tables\nversion: 2026.11.1\nscope: One table.\n"
           "caution: Invented for a test.\n"},
          {"sources.yaml",
           "sources:\n  - {id: valley-bulletin, title: Bulletin 7, publisher: Valley Extension}\n"},
          {"processes/valley-plums.yaml", process_text}};
}

/// Invented numbers.
const char* const valley_plums =
    "id: valley-plums\ntitle: valley plums\nnames: [valley plums, zwetschgen]\nclass: acid\n"
    "recipe: plain\nsource_note: From a bulletin of the valley.\nsources: [{ref: "
    "valley-bulletin}]\n"
    "tables:\n  - forms: [whole]\n    pack: hot\n    style: whole plums\n    headspace_in: 0.5\n"
    "    minutes: {pint: [20, 25, 30, 35]}\n    boiling_water: boiling-water-4\n"
    "    evidence: seen\n    entries: 1\n    use: yes\n";

std::string lines_of(const jarproof::problems& errors) {
  std::string out;
  for (const jarproof::problem& p : errors)
    out += p.file + ": " + p.message + "; " + p.write + "\n";
  return out;
}

TEST_SUITE_BEGIN("rules");

TEST_CASE("the exported edition follows its schema") {
  const node schema = parsed(fixtures::file_text("docs/edition-schema.json"));
  const node data = parsed(jarproof::edition_json(builtin_edition()));
  schema_check check(schema);
  check.against(data, schema, "");
  CHECK(check.leaves > 10'000);
  CHECK(find(data, "processes")->items.size() == builtin_edition().processes.size());
  CHECK(find(data, "checks")->items.size() == builtin_edition().checks.size());
  CHECK(find(data, "ingredients")->items.size() == builtin_edition().ingredients.size());
}

TEST_CASE("a printed amount keeps its form") {
  using jarproof::detail::printed_text;
  CHECK(printed_text({3, 1}) == "3");
  CHECK(printed_text({1, 3}) == "1/3");
  CHECK(printed_text({8, 3}) == "2 2/3");
  CHECK(printed_text({5, 10}) == "0.5");
  CHECK(printed_text({225, 100}) == "2.25");
  CHECK(printed_text({3125, 10000}) == "0.3125");
  CHECK(printed_text({0, 1}) == "0");
}

TEST_CASE("the CSV has a line for every row and quotes what needs it") {
  const std::string csv = jarproof::edition_csv(builtin_edition());
  std::size_t lines = 0;
  std::size_t rows = 0;
  std::size_t commas = 0;
  bool quoted = false;
  std::size_t columns = 0;
  for (std::size_t i = 0; i < csv.size(); ++i) {
    if (csv[i] == '"') quoted = !quoted;
    if (!quoted && csv[i] == ',') ++commas;
    if (!quoted && csv[i] == '\n') {
      if (lines == 0) columns = commas;
      CHECK(commas == columns);
      commas = 0;
      ++lines;
      if (csv.compare(i + 1, 4, "row,") == 0) ++rows;
    }
  }
  CHECK_FALSE(quoted);
  CHECK(rows == 623);
  CHECK(columns == std::size(jarproof::detail::csv_columns) - 1);
}

TEST_CASE("a folder can add a food to the built-in edition, and a plan says whose it is") {
  const auto loaded = jarproof::load_edition(addition(valley_plums), &builtin_edition());
  if (!loaded) FAIL(lines_of(loaded.errors()));
  const jarproof::edition& rules = loaded->view();
  CHECK(rules.processes.size() == builtin_edition().processes.size() + 1);
  CHECK(rules.caution.find(builtin_edition().caution) == 0);
  const jarproof::plan plan = fixtures::plan_from(
      "food: valley plums\npack: hot\njar: pint\nmethod: boiling-water\ntime: 30 min\n"
      "altitude: 4600 ft\n");
  const jarproof::report r = jarproof::check(plan, rules);
  CHECK(r.verdict == jarproof::verdict::accepted);
  const jarproof::finding* note = fixtures::finding_of(r, "numbers-by-extension");
  REQUIRE(note != nullptr);
  CHECK(note->level == jarproof::level::warning);
  CHECK(note->message.find("Valley tables, 2026.11.1") != std::string::npos);
  CHECK(jarproof::text_of(r, rules).find("ACCEPTED by rules of Valley") == 0);
  // The built-in foods stay as they are.
  const jarproof::plan beans = fixtures::plan_from(fixtures::plan_text(fixtures::beans()));
  CHECK(jarproof::check(beans, rules).verdict == jarproof::verdict::accepted);
}

TEST_CASE("an addition may bring words of phrases that there are") {
  const auto with = [](const std::string& phrases) {
    auto files = addition(valley_plums);
    files.push_back({"vocabulary.yaml", "phrases: {" + phrases + ": [gnome]}\n"});
    return jarproof::load_edition(files, &builtin_edition());
  };
  const auto understood = [](const jarproof::edition& rules, const char* line) {
    return jarproof::detail::read_line(rules, line).strange.empty();
  };
  const auto loaded = with("likened_to");
  if (!loaded) FAIL(lines_of(loaded.errors()));
  const char* gnomes = "2 lb carrots, the size of a gnome";
  const char* walnuts = "2 lb carrots, the size of a walnut";
  CHECK(understood(loaded->view(), gnomes));
  CHECK(understood(loaded->view(), walnuts));
  CHECK_FALSE(understood(builtin_edition(), gnomes));
  const auto unknown = with("likened");
  REQUIRE_FALSE(unknown);
  CHECK(lines_of(unknown.errors()).find("`likened` is no key here") != std::string::npos);
  // Without the words nothing is taken back: the walnut is there, and so is the cream.
  jarproof::edition bare = builtin_edition();
  bare.phrases = {};
  CHECK(jarproof::detail::read_line(builtin_edition(), walnuts).others.empty());
  CHECK_FALSE(jarproof::detail::read_line(bare, walnuts).others.empty());
  CHECK_FALSE(jarproof::detail::read_line(bare, "1 cup cream, for serving").at_serving);
}

TEST_CASE("an addition changes nothing that is built in") {
  const auto errors_of = [](const std::vector<jarproof::rule_file>& files) {
    const auto loaded = jarproof::load_edition(files, &builtin_edition());
    return loaded ? std::string("loaded") : lines_of(loaded.errors());
  };
  std::string text = valley_plums;
  const auto with = [&](const std::string& from, const std::string& to) {
    std::string changed = text;
    changed.replace(changed.find(from), from.size(), to);
    return changed;
  };
  CHECK(errors_of(addition(with("names: [valley plums,", "names: [plums,")))
            .find("belongs to `plums`") != std::string::npos);
  CHECK(errors_of(addition(with("names: [valley plums,", "names: [salsa,")))
            .find("built-in foods share the name `salsa`") != std::string::npos);
  CHECK(errors_of(addition(with("source_note: From a bulletin of the valley.\n", "")))
            .find("`source_note` is missing") != std::string::npos);
  auto files = addition(text);
  files.push_back({"processes/okra.yaml", fixtures::file_text("rules/processes/okra.yaml")});
  CHECK(errors_of(files).find("the built-in edition has a `okra` already") != std::string::npos);
  files = addition(text);
  files.push_back({"jars.yaml", fixtures::file_text("rules/jars.yaml")});
  CHECK(errors_of(files).find("jars, methods and the canning day belong to the built-in edition") !=
        std::string::npos);
  files = addition(text);
  files[0].text.replace(files[0].text.find("builtin"), 7, "last-year");
  CHECK(errors_of(files).find("`last-year` is no edition that can be extended") !=
        std::string::npos);
  const auto alone = jarproof::load_edition(addition(text));
  REQUIRE_FALSE(alone);
  CHECK(lines_of(alone.errors()).find("no built-in edition here to extend") != std::string::npos);
}

TEST_SUITE_END();

}  // namespace
}  // namespace export_tests
