// Runs one command-line scenario: a text file with the arguments, the files they need, and the
// exit status and outputs that must come out. See tests/cli/README.md.
// SPDX-License-Identifier: MIT
#include <sys/wait.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

#include "jarproof/json.hpp"

namespace {

std::string read_all(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

struct scenario {
  bool has_args = false;
  std::string args;
  std::string env;
  std::string before;
  int status = 0;
  // By name of the section; also `stdin`, and what is asserted about the outputs.
  std::map<std::string, std::string> files;
};

scenario parse(const std::string& text) {
  scenario out;
  std::istringstream lines(text);
  std::string section;
  for (std::string line; std::getline(lines, line);) {
    if (line.rfind("--- ", 0) == 0) {
      section = line.substr(4);
      out.files[section];
    } else if (!section.empty()) {
      out.files[section] += line + "\n";
    } else if (line == "args:" || line.rfind("args: ", 0) == 0) {
      out.has_args = true;
      out.args = line.substr(5);
    } else if (line.rfind("env: ", 0) == 0) {
      out.env = line.substr(5);
    } else if (line.rfind("before: ", 0) == 0) {
      out.before = line.substr(8) + " && ";
    } else if (line.rfind("status: ", 0) == 0) {
      out.status = std::atoi(line.substr(8).c_str());
    } else if (!line.empty() && line[0] != '#') {
      std::fprintf(stderr, "unknown scenario line: %s\n", line.c_str());
      std::exit(1);
    }
  }
  return out;
}

bool ends_with(const std::string& text, const std::string& tail) {
  return text.size() >= tail.size() &&
         text.compare(text.size() - tail.size(), tail.size(), tail) == 0;
}

bool is_assertion(const std::string& section) {
  return section == "stdout" || section == "stderr" || ends_with(section, " has") ||
         ends_with(section, " lacks");
}

/// A report as JSON is JSON and nothing else, whatever else the scenario asks.
int faults_of_json(const std::string& args, const std::string& out) {
  if (out.empty()) return 0;
  std::vector<std::string> texts;
  if (args.find("--format jsonl") != std::string::npos) {
    std::istringstream lines(out);
    for (std::string line; std::getline(lines, line);) texts.push_back(line);
  } else if (args.find("--format json") != std::string::npos) {
    texts.push_back(out);
  }
  int wrong = 0;
  for (const std::string& text : texts) {
    const auto read = jarproof::read_json_line(text, "stdout");
    if (read && read->root.kind == jarproof::node_kind::map) continue;
    std::fprintf(stderr, "stdout is no JSON object: %s\n", text.c_str());
    ++wrong;
  }
  return wrong;
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 4) return 1;
  const scenario s = parse(read_all(argv[2]));
  const std::filesystem::path work = argv[3];
  std::filesystem::remove_all(work);
  std::filesystem::create_directories(work);
  bool asserts = false;
  for (const auto& [name, text] : s.files) {
    asserts = asserts || is_assertion(name);
    if (is_assertion(name)) continue;
    std::filesystem::create_directories((work / name).parent_path());
    std::ofstream(work / name, std::ios::binary) << text;
  }
  if (!asserts || !s.has_args) {
    std::fprintf(stderr, "the scenario asserts nothing\n");
    return 1;
  }
  const bool has_stdin = s.files.count("stdin") != 0;
  // Exported first, so that the arguments can use it.
  const std::string command = "export SOURCE='" JARPROOF_SOURCE_DIR "' && cd '" + work.string() +
                              "' && " + s.before + s.env + " '" + std::string(argv[1]) + "' " +
                              s.args + (has_stdin ? " <stdin" : " </dev/null") +
                              " >out.txt 2>err.txt";
  const int raw = std::system(command.c_str());
  const int status = WIFEXITED(raw) ? WEXITSTATUS(raw) : -1;
  int wrong = 0;
  if (status != s.status) {
    std::fprintf(stderr, "exit status %d, expected %d\n", status, s.status);
    ++wrong;
  }
  for (const auto& [stream, file] :
       {std::pair{"stdout", "out.txt"}, std::pair{"stderr", "err.txt"}}) {
    const std::string got = read_all(work / file);
    const auto exact = s.files.find(stream);
    if (exact != s.files.end() && got != exact->second) {
      std::fprintf(stderr, "%s differs; it is:\n%s\nexpected:\n%s\n", stream, got.c_str(),
                   exact->second.c_str());
      ++wrong;
    }
    for (const auto& [word, needed] : {std::pair{" has", true}, std::pair{" lacks", false}}) {
      const auto section = s.files.find(std::string(stream) + word);
      if (section == s.files.end()) continue;
      std::istringstream wanted(section->second);
      for (std::string line; std::getline(wanted, line);) {
        if (line.empty() || (got.find(line) != std::string::npos) == needed) continue;
        std::fprintf(stderr, "%s %s `%s`; it is:\n%s\n", stream, needed ? "lacks" : "has",
                     line.c_str(), got.c_str());
        ++wrong;
      }
    }
    if (got.find('\x1b') != std::string::npos) {
      std::fprintf(stderr, "%s is a file and no terminal, but it is coloured\n", stream);
      ++wrong;
    }
  }
  wrong += faults_of_json(s.args, read_all(work / "out.txt"));
  return wrong == 0 ? 0 : 1;
}
