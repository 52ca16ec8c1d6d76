// Broken rule folders: every `.case` file of tests/bad-input/rules/ changes the good folder in
// memory and lists exactly what the loader must say. The form of a case is described in
// tests/bad-input/rules/README.md.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

#include "support/fixtures.hpp"

namespace bad_rules_tests {
namespace {

constexpr const char* folder = "tests/bad-input/rules";

std::vector<std::string> case_names() {
  namespace fs = std::filesystem;
  std::vector<std::string> out;
  for (const auto& entry :
       fs::directory_iterator(std::string(JARPROOF_SOURCE_DIR) + "/" + folder)) {
    if (entry.path().extension() == ".case") out.push_back(entry.path().filename().string());
  }
  std::sort(out.begin(), out.end());
  return out;
}

bool starts(const std::string& line, std::string_view head) { return line.rfind(head, 0) == 0; }

/// `\n` and `\t` stand for a line end and a tab.
std::string unescaped(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] == '\\' && i + 1 < text.size() && (text[i + 1] == 'n' || text[i + 1] == 't')) {
      out += text[++i] == 'n' ? '\n' : '\t';
    } else {
      out += text[i];
    }
  }
  return out;
}

std::string& text_of(std::vector<jarproof::rule_file>& files, const std::string& name) {
  const auto at =
      std::find_if(files.begin(), files.end(), [&](const auto& f) { return f.name == name; });
  if (at != files.end()) return at->text;
  files.push_back({name, ""});
  return files.back().text;
}

/// A case that no longer fits the rule folder, or is written wrongly.
struct bad_case {
  std::string why;
};

void require(bool good, const std::string& why) {
  if (!good) throw bad_case{why};
}

/// Replaces the one place where `from` stands; several places, or none, make the case stale.
void replace_once(std::string& text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  require(at != std::string::npos, "no `" + from + "` in the rule file");
  require(text.find(from, at + 1) == std::string::npos, "`" + from + "` stands twice");
  text.replace(at, from.size(), to);
}

struct broken_folder {
  std::vector<jarproof::rule_file> files;
  std::string expect;
};

/// Leaves the first line of a long list of words, and blanks in place of the others, so that places
/// stay what they are: no case is about these words, and each would be read for every case.
void shorten(std::string& text, const std::string& key) {
  const std::size_t start = text.find("\n" + key + ": [\n");
  if (start == std::string::npos) return;
  const std::size_t first = text.find('\n', start + key.size() + 5);
  const std::size_t end = text.find("]\n", first);
  for (std::size_t i = first; i < end; ++i) {
    if (text[i] != '\n') text[i] = ' ';
  }
}

/// A smaller edition: the single files, the checks and the plain low-acid foods of the rule folder,
/// and the files of `base/`, whose text does not change with the rules.
std::vector<jarproof::rule_file> good_folder() {
  std::vector<jarproof::rule_file> files = fixtures::rule_files();
  files.erase(std::remove_if(files.begin(), files.end(),
                             [](const jarproof::rule_file& f) {
                               return starts(f.name, "ingredients/") ||
                                      f.name == "without-process.yaml" ||
                                      f.name == "acidity.yaml" || f.name == "seasonings.yaml" ||
                                      f.name == "canning-day.yaml" ||
                                      f.text.find("\nclass: acid") != std::string::npos ||
                                      f.text.find("\nrecipes:") != std::string::npos ||
                                      f.text.find("\nacids:") != std::string::npos ||
                                      f.text.find("\nshared_names:") != std::string::npos ||
                                      f.text.find("\nmade_of:") != std::string::npos ||
                                      f.name == "ways.yaml" || f.name == "canning-day.yaml";
                             }),
              files.end());
  for (const char* name : {"altitude.yaml", "methods.yaml", "processes/okra.yaml"}) {
    text_of(files, name) = fixtures::file_text(std::string(folder) + "/base/" + name);
  }
  for (const char* key : {"line_words", "spellings"})
    shorten(text_of(files, "vocabulary.yaml"), key);
  return files;
}

broken_folder changed(const std::vector<jarproof::rule_file>& good, const std::string& text) {
  broken_folder out{good, ""};
  std::string file;     // that `replace:` works on
  std::string from;     // waits for its `with:`
  std::string section;  // `expect`, or the name of a file that is being added
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) {
    if (starts(line, "--- add-file: ")) {
      section = line.substr(14);
      text_of(out.files, section).clear();
    } else if (line == "--- expect") {
      section = "expect";
    } else if (section == "expect") {
      out.expect += line + "\n";
    } else if (!section.empty()) {
      text_of(out.files, section) += line + "\n";
    } else if (starts(line, "file: ")) {
      file = line.substr(6);
    } else if (starts(line, "replace: ")) {
      from = unescaped(std::string_view(line).substr(9));
    } else if (starts(line, "with:")) {
      require(!file.empty() && !from.empty(), "`with:` needs `file:` and `replace:` before it");
      replace_once(text_of(out.files, file), from,
                   unescaped(std::string_view(line).substr(std::min<std::size_t>(6, line.size()))));
      from.clear();
    } else if (starts(line, "remove-file: ")) {
      const std::string name = line.substr(13);
      const auto at = std::remove_if(out.files.begin(), out.files.end(),
                                     [&](const auto& f) { return f.name == name; });
      require(at != out.files.end(), "there is no " + name);
      out.files.erase(at, out.files.end());
    } else if (!line.empty() && line[0] != '#') {
      require(false, "unknown line: " + line);
    }
  }
  require(from.empty(), "`replace:` without `with:`");
  require(!out.expect.empty(), "the case expects nothing");
  require(out.expect.find(":0:") == std::string::npos, "every message has its place");
  return out;
}

/// `FILE:LINE:COLUMN | message | write`, a line for each problem.
std::string lines_of(const jarproof::problems& errors) {
  std::string out;
  for (const jarproof::problem& p : errors) {
    out += p.file + ":" + std::to_string(p.line) + ":" + std::to_string(p.column) + " | " +
           p.message + " | " + p.write + "\n";
  }
  return out;
}

/// Enough of a long list to see what it is about.
std::string beginning(const std::string& lines) {
  std::size_t end = 0;
  for (int i = 0; i < 12 && end < lines.size(); ++i) end = lines.find('\n', end) + 1;
  return end == lines.size() ? lines : lines.substr(0, end) + "... and more\n";
}

}  // namespace

TEST_SUITE_BEGIN("bad_input");

TEST_CASE("the rule folder that the cases change is good") {
  const auto loaded = jarproof::load_edition(good_folder());
  if (!loaded) FAIL(lines_of(loaded.errors()));
  CHECK(case_names().size() >= 100);
}

TEST_CASE("every broken rule folder is refused with exactly the lines of its case") {
  const std::vector<jarproof::rule_file> good = good_folder();
  for (const std::string& name : case_names()) {
    CAPTURE(name);
    try {
      const broken_folder broken =
          changed(good, fixtures::file_text(std::string(folder) + "/" + name));
      const auto loaded = jarproof::load_edition(broken.files);
      const std::string got =
          loaded ? "nothing: the folder was loaded\n" : lines_of(loaded.errors());
      const bool as_expected = got == broken.expect;
      CHECK_MESSAGE(as_expected, "\nit says:\n"
                                     << beginning(got) << "expected:\n"
                                     << broken.expect);
    } catch (const bad_case& bad) {
      FAIL_CHECK("the case is stale: " << bad.why);
    }
  }
}

TEST_SUITE_END();

}  // namespace bad_rules_tests
