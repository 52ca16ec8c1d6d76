// What must agree across code, rule files, pages and texts: check ids, plan keys, sources, links.
//
// The files are read as text, so that something added in one place and forgotten in another fails.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <map>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/format/teach.hpp"
#include "jarproof/keys.hpp"
#include "jarproof/rules.hpp"
#include "support/fixtures.hpp"

namespace ids_tests {
namespace {

namespace fs = std::filesystem;

const fs::path root = JARPROOF_SOURCE_DIR;

/// Files below `folder` (or the file itself) with one of the extensions, as paths in the checkout.
std::vector<std::string> files_of(const std::string& folder,
                                  const std::set<std::string>& extensions) {
  std::vector<std::string> out;
  if (fs::is_regular_file(root / folder)) return {folder};
  if (!fs::is_directory(root / folder)) return out;
  for (auto at = fs::recursive_directory_iterator(root / folder);
       at != fs::recursive_directory_iterator(); ++at) {
    // A build folder inside the checkout is not part of it.
    if (at->is_directory() &&
        (at->path().filename() == ".git" || fs::exists(at->path() / "CMakeCache.txt"))) {
      at.disable_recursion_pending();
    } else if (at->is_regular_file() && extensions.count(at->path().extension().string()) != 0) {
      out.push_back(at->path().lexically_relative(root).generic_string());
    }
  }
  std::sort(out.begin(), out.end());
  return out;
}

bool exists(const std::string& path_in_checkout) { return fs::exists(root / path_in_checkout); }

/// All first groups of a pattern in a text.
std::set<std::string> matches(const std::string& text, const std::string& pattern) {
  std::set<std::string> out;
  const std::regex expression(pattern);
  for (auto at = std::sregex_iterator(text.begin(), text.end(), expression);
       at != std::sregex_iterator(); ++at) {
    out.insert((*at)[1].str());
  }
  return out;
}

std::string headers() {
  std::string out;
  for (const std::string& file : files_of("lib/include/jarproof", {".hpp"}))
    out += fixtures::file_text(file);
  return out;
}

std::string rule_text() {
  std::string out;
  for (const jarproof::rule_file& f : fixtures::rule_files()) out += f.text + "\n";
  return out;
}

/// Ids that the code says about a stated fact, and about an unsaid one.
const std::set<std::string>& said_ids() {
  static const std::set<std::string> ids = [] {
    const std::string code = headers();
    std::set<std::string> out = matches(code, "\\bsay\\(\\s*\"([a-z-]+)\"");
    for (const std::string& id :
         matches(code, "judge_least\\(\\s*\\w+,\\s*\\w+,\\s*\"[a-z-]+\",\\s*\"([a-z-]+)\""))
      out.insert(id);
    for (const std::string& id : matches(code, "\\bobject\\(\\s*\"([a-z-]+)\"")) out.insert(id);
    for (const std::string& id : matches(code, "refused_by\\.empty\\(\\) \\? \"([a-z-]+)\""))
      out.insert(id);
    // Findings about recipes and acids are chosen first and said later; a recipe that is not shown
    // is always something unsaid.
    for (const std::string& id :
         matches(code, "\\b(?:hold|wrong)\\(\\s*\"(?!recipe-not-shown)([a-z-]+)\""))
      out.insert(id);
    for (const std::string& id : matches(code, "return \"([a-z]+-[a-z-]+)\";")) {
      if (exists("rules/checks/" + id + ".yaml")) out.insert(id);
    }
    // The table of traits that are kept out of every jar.
    for (const std::string& id : matches(code, "\\{\"[a-z-]+\",\\s*\"([a-z-]+)\"\\}")) {
      if (exists("rules/checks/" + id + ".yaml")) out.insert(id);
    }
    // The check of a condition that names none.
    for (const std::string& id :
         matches(code, "\\? std::string_view\\(\"([a-z-]+)\"\\) : c\\.check"))
      out.insert(id);
    return out;
  }();
  return ids;
}

const std::set<std::string>& unsaid_ids() {
  static const std::set<std::string> ids = matches(headers(), "\\bunsaid\\(\\s*\"([a-z-]+)\"");
  return ids;
}

/// Ids that rule data names: the check of a condition, the check that refuses a form or a word.
const std::set<std::string>& ids_in_data() {
  static const std::set<std::string> ids =
      matches(rule_text(), "\\b(?:check|refused_by): ([a-z-]+)");
  return ids;
}

std::set<std::string> ids_in_use() {
  std::set<std::string> out = said_ids();
  out.insert(unsaid_ids().begin(), unsaid_ids().end());
  out.insert(ids_in_data().begin(), ids_in_data().end());
  return out;
}

bool is_found_in_its_examples(const jarproof::check_rule& check) {
  const std::string tail = " " + std::string(check.id);
  for (const jarproof::example& x : check.bad) {
    for (const std::string& line :
         jarproof::example_findings(check, x, fixtures::loaded_edition())) {
      if (line.size() > tail.size() &&
          line.compare(line.size() - tail.size(), tail.size(), tail) == 0)
        return true;
    }
  }
  return false;
}

/// The text without what stands in code fences and code spans: nothing there is a link.
std::string without_code(const std::string& text) {
  std::string out;
  bool fenced = false;
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) {
    if (line.rfind("```", 0) == 0) {
      fenced = !fenced;
      continue;
    }
    if (!fenced) out += std::regex_replace(line, std::regex("`[^`]*`"), "") + "\n";
  }
  return out;
}

/// Letters turned by 13 places, so that a list of unwanted words does not itself hold them.
std::string turned(std::string text) {
  for (char& c : text) {
    if (c >= 'a' && c <= 'z') c = static_cast<char>('a' + (c - 'a' + 13) % 26);
    if (c >= 'A' && c <= 'Z') c = static_cast<char>('A' + (c - 'A' + 13) % 26);
  }
  return text;
}

/// True where `word` stands in `text` with no letter, digit or `_` at either end.
bool stands_in(const std::string& text, const std::string& word) {
  const auto inside = [](char c) {
    return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_';
  };
  for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) {
    const std::size_t end = at + word.size();
    if ((at == 0 || !inside(text[at - 1])) && (end == text.size() || !inside(text[end])))
      return true;
  }
  return false;
}

}  // namespace

TEST_SUITE_BEGIN("consistency");

TEST_CASE("the scan of the code finds ids of every kind") {
  CHECK(said_ids().count("pressure-too-low") == 1);
  CHECK(said_ids().count("water-too-little") == 1);
  CHECK(said_ids().count("step-left-out") == 1);
  CHECK(unsaid_ids().count("fact-missing") == 1);
  CHECK(ids_in_data().count("low-acid-puree") == 1);
  CHECK(ids_in_data().count("beans-not-rehydrated") == 1);
  CHECK(said_ids().size() >= 30);
}

// A semicolon in a name splits a list of CMake, and the case would never run.
TEST_CASE("no test case has a semicolon in its name") {
  std::size_t names = 0;
  for (const std::string& file : files_of("tests", {".cpp"})) {
    for (const std::string& name :
         matches(fixtures::file_text(file), "TEST_CASE\\(\\s*\"([^\"]*)\"")) {
      ++names;
      CAPTURE(file);
      CHECK_MESSAGE(name.find(';') == std::string::npos, name);
    }
  }
  CHECK(names > 300);
}

TEST_CASE("every check in use has a rule file and a page and an example in which it is found") {
  const jarproof::edition& rules = fixtures::loaded_edition();
  for (const std::string& id : ids_in_use()) {
    CAPTURE(id);
    CHECK_MESSAGE(exists("rules/checks/" + id + ".yaml"), "no rule file");
    CHECK_MESSAGE(exists("docs/checks/" + id + ".md"), "no page; build the target `update`");
    const jarproof::check_rule* check = jarproof::find(rules.checks, id);
    REQUIRE(check != nullptr);
    CHECK_MESSAGE(is_found_in_its_examples(*check), "no bad example gives it");
  }
}

TEST_CASE("every rule file of a check is in use") {
  const std::set<std::string> used = ids_in_use();
  for (const jarproof::check_rule& check : fixtures::loaded_edition().checks) {
    CHECK_MESSAGE(used.count(std::string(check.id)) == 1,
                  "neither code nor data names the check " << check.id);
  }
}

TEST_CASE("every check has the sentence that the code asks of it") {
  const jarproof::edition& rules = fixtures::loaded_edition();
  const auto check_named = [&](std::string_view id) {
    const jarproof::check_rule* check = jarproof::find(rules.checks, id);
    REQUIRE_MESSAGE(check != nullptr, id);
    return check;
  };
  for (const std::string& id : said_ids())
    CHECK_MESSAGE(!check_named(id)->says.empty(), id << " has no `says`");
  for (const std::string& id : unsaid_ids())
    CHECK_MESSAGE(!check_named(id)->unsaid.empty(), id << " has no `unsaid`");
  for (const jarproof::process& p : rules.processes) {
    for (const jarproof::condition& c : p.conditions) {
      const std::string_view id = c.check.empty() ? std::string_view("step-left-out") : c.check;
      CAPTURE(p.id);
      CHECK_MESSAGE(!check_named(id)->says.empty(), id << " has no `says`");
      if (c.must_be_said) CHECK_MESSAGE(!check_named(id)->unsaid.empty(), id << " has no `unsaid`");
    }
  }
}

TEST_CASE("the page of every check is what the rule file gives") {
  const jarproof::edition& rules = fixtures::loaded_edition();
  for (const jarproof::check_rule& check : rules.checks) {
    const std::string file = "docs/checks/" + std::string(check.id) + ".md";
    CAPTURE(file);
    REQUIRE_MESSAGE(exists(file), "build the target `update`");
    const bool fresh = fixtures::file_text(file) == jarproof::check_page(check, rules);
    CHECK_MESSAGE(fresh, "stale; build the target `update`");
  }
}

TEST_CASE("docs/checks holds pages of checks only and its list names each") {
  const jarproof::edition& rules = fixtures::loaded_edition();
  const std::vector<std::string> pages = files_of("docs/checks", {".md"});
  CHECK(pages.size() == rules.checks.size() + 1);
  for (const std::string& page : pages) {
    const std::string id = fs::path(page).stem().string();
    CHECK_MESSAGE((id == "README" || jarproof::find(rules.checks, id) != nullptr),
                  page << " belongs to no check; delete it");
  }
  const std::string index = fixtures::file_text("docs/checks/README.md");
  for (const jarproof::check_rule& check : rules.checks) {
    const std::string row = "| [" + std::string(check.id) + "](" + std::string(check.id) +
                            ".md) | " + std::string(check.outcome) + " | " +
                            std::string(check.title) + " |";
    CHECK_MESSAGE(index.find(row) != std::string::npos,
                  "docs/checks/README.md is stale for " << check.id);
  }
}

TEST_CASE("every link inside the documentation leads to a file") {
  std::vector<std::string> pages = files_of("docs", {".md"});
  for (const char* more : {"rules", "tests", "examples"}) {
    const std::vector<std::string> found = files_of(more, {".md"});
    pages.insert(pages.end(), found.begin(), found.end());
  }
  for (const std::string page : {"README.md", "DEVELOPERS.md"}) {
    CHECK_MESSAGE(exists(page), page << " is missing");
    if (exists(page)) pages.push_back(page);
  }
  CHECK_MESSAGE(exists("rules/FORMAT.md"), "messages of the loader name rules/FORMAT.md");
  for (const std::string& page : pages) {
    for (std::string link :
         matches(without_code(fixtures::file_text(page)), "\\]\\(([^)\\s]+)\\)")) {
      if (link.find("://") != std::string::npos || link.rfind("mailto:", 0) == 0) continue;
      link = link.substr(0, link.find('#'));
      if (link.empty()) continue;
      const fs::path target = (root / page).parent_path() / link;
      CHECK_MESSAGE(fs::exists(target), page << " links to " << link);
    }
  }
}

TEST_CASE("docs/plan-format.md has a place for every key of a plan") {
  REQUIRE_MESSAGE(exists("docs/plan-format.md"), "docs/plan-format.md is missing");
  const std::string text = fixtures::file_text("docs/plan-format.md");
  for (const jarproof::plan_key& key : jarproof::plan_keys) {
    CHECK_MESSAGE(text.find("`" + std::string(key.name) + "`") != std::string::npos,
                  "nothing about `" << key.name << "`");
  }
}

TEST_CASE("every source is cited by some rule") {
  const std::set<std::string> cited = matches(rule_text(), "\\bref: ([a-z0-9-]+)");
  const jarproof::edition& rules = fixtures::loaded_edition();
  CHECK(rules.sources.size() >= 10);
  for (const jarproof::source& s : rules.sources) {
    CHECK_MESSAGE(cited.count(std::string(s.id)) == 1,
                  "no rule cites " << s.id << "; take it out of sources.yaml");
  }
}

TEST_CASE("every form of the vocabulary is that of a table or refused") {
  const jarproof::edition& rules = fixtures::loaded_edition();
  std::set<std::string_view> forms;
  for (const jarproof::process& p : rules.processes) {
    for (const jarproof::table& t : p.tables) forms.insert(t.forms.begin(), t.forms.end());
  }
  CHECK(rules.forms.size() >= 10);
  for (const jarproof::form_word& f : rules.forms) {
    CHECK_MESSAGE((forms.count(f.id) == 1 || !f.refused_by.empty()),
                  "no table has the form `" << f.id << "`");
  }
}

TEST_CASE("no text of the checkout holds a brand or a note to self") {
  const std::set<std::string> text = {".hpp",  ".cpp",      ".h",     ".c",   ".md",   ".yaml",
                                      ".yml",  ".txt",      ".cmake", ".in",  ".json", ".mjs",
                                      ".html", ".scenario", ".case",  ".csv", ".sh"};
  std::vector<std::string> files;
  for (const char* folder : {".ci", "cli", "docs", "examples", "lib", "rules", "tests", "README.md",
                             "DEVELOPERS.md", "CMakeLists.txt", "CMakePresets.json"}) {
    const std::vector<std::string> found = files_of(folder, text);
    files.insert(files.end(), found.begin(), found.end());
  }
  CHECK(files.size() > 100);
  // Any case: makers of canners, jars and lids. As written: a maker whose name is a common word.
  const char* any_case[] = {"cerfgb",          "zveeb",       "nyy-nzrevpna", "nyy nzrevpna",
                            "vafgnag cbg",     "avawn sbbqv", "pebpx-cbg",    "pebpxcbg",
                            "onyy oyhr obbx",  "sbbqfnire",   "xree wne",     "gnggyre",
                            "angvbany cerfgb", "ovpx zpxrna", "uneirfg thneq"};
  const char* as_written[] = {"GBQB", "SVKZR", "KKK", "UNPX", "Onyy", "Xree", "Orneabegh"};
  for (const std::string& file : files) {
    std::string words = fixtures::file_text(file);
    // An address is quoted as it is.
    words = std::regex_replace(words, std::regex("https?://[^\\s)\"'>]+"), "");
    std::string lower = words;
    for (char& c : lower) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    for (const char* word : any_case)
      CHECK_MESSAGE(!stands_in(lower, turned(word)), file << " holds `" << turned(word) << "`");
    for (const char* word : as_written)
      CHECK_MESSAGE(!stands_in(words, turned(word)), file << " holds `" << turned(word) << "`");
  }
}

TEST_CASE("every source file names its licence at the top") {
  std::vector<std::string> files;
  for (const char* folder : {"cli", "lib", "tests", "examples"}) {
    const std::vector<std::string> found = files_of(folder, {".hpp", ".cpp", ".h", ".c"});
    files.insert(files.end(), found.begin(), found.end());
  }
  CHECK(files.size() > 40);
  for (const std::string& file : files) {
    const std::string head = fixtures::file_text(file).substr(0, 2000);
    CHECK_MESSAGE(head.find("SPDX-License-Identifier: MIT") != std::string::npos,
                  file << " has no SPDX line");
  }
}

TEST_SUITE_END();

}  // namespace ids_tests
