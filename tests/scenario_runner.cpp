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
#include <vector>

namespace {

std::string read_all(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

struct scenario {
  std::string args;
  std::string env;
  int status = 0;
  std::map<std::string, std::string>
      files;  // also `stdin`, `stdout`, `stderr`, `stdout has`, `stderr has`
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
    } else if (line.rfind("args: ", 0) == 0) {
      out.args = line.substr(6);
    } else if (line.rfind("env: ", 0) == 0) {
      out.env = line.substr(5);
    } else if (line.rfind("status: ", 0) == 0) {
      out.status = std::atoi(line.substr(8).c_str());
    } else if (!line.empty() && line[0] != '#') {
      std::fprintf(stderr, "unknown scenario line: %s\n", line.c_str());
      std::exit(1);
    }
  }
  return out;
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
    asserts = asserts || name == "stdout" || name == "stderr" || name == "stdout has" ||
              name == "stderr has";
    if (name == "stdout" || name == "stderr" || name.find(" has") != std::string::npos) continue;
    std::filesystem::create_directories((work / name).parent_path());
    std::ofstream(work / name, std::ios::binary) << text;
  }
  if (!asserts || s.args.empty()) {
    std::fprintf(stderr, "the scenario asserts nothing\n");
    return 1;
  }
  const bool has_stdin = s.files.count("stdin") != 0;
  const std::string command = "cd '" + work.string() + "' && " + s.env +
                              " SOURCE='" JARPROOF_SOURCE_DIR "' '" + std::string(argv[1]) + "' " +
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
    const auto has = s.files.find(std::string(stream) + " has");
    if (has == s.files.end()) continue;
    std::istringstream wanted(has->second);
    for (std::string line; std::getline(wanted, line);) {
      if (line.empty() || got.find(line) != std::string::npos) continue;
      std::fprintf(stderr, "%s has no `%s`; it is:\n%s\n", stream, line.c_str(), got.c_str());
      ++wrong;
    }
  }
  return wrong == 0 ? 0 : 1;
}
