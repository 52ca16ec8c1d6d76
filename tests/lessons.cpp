// Compares the lessons in docs/course/ with the plans that they show and with what the program
// prints for their commands, or writes both into the pages. See DEVELOPERS.md.
//
// usage: lessons PROGRAM CHECKOUT PAGE.md   one lesson
//        lessons PROGRAM CHECKOUT           every example of a lesson is shown, every lesson listed
//        lessons PROGRAM CHECKOUT --update  rewrites the blocks of all lessons
// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;

/// Stands in a page above the block that shows a whole file.
const std::string marker = "<!-- all of: ";

/// Outside the course, and kept in the same way.
const std::vector<std::string> other_pages = {"docs/canning-day.md", "docs/run-log.md"};

std::string read_all(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

bool starts_with(const std::string& text, const std::string& head) {
  return text.compare(0, head.size(), head) == 0;
}

/// What the command prints, both outputs as they come, run in the checkout. It goes through the
/// shell as a reader types it, and it goes to no terminal, so nothing is coloured.
std::string printed(const std::string& program, const fs::path& checkout,
                    const std::string& command) {
  const std::string line = "exec 2>&1 </dev/null; cd '" + checkout.string() + "'; jarproof() { '" +
                           program + "' \"$@\"; }\n" + command;
  std::string out;
  std::FILE* pipe = popen(line.c_str(), "r");
  if (pipe == nullptr) return out;
  char bytes[4096];
  for (std::size_t n = 0; (n = std::fread(bytes, 1, sizeof bytes, pipe)) != 0;)
    out.append(bytes, n);
  pclose(pipe);
  return out;
}

struct lesson {
  std::string text;
  std::vector<std::string> files;  // shown, as paths in the checkout
  std::size_t commands = 0;
  std::vector<std::string> faults;
};

/// The page as it must be: every block written anew, all else kept.
lesson renewed(const std::string& page, const std::string& program, const fs::path& checkout) {
  lesson out;
  std::istringstream lines(page);
  std::string shown;
  for (std::string line; std::getline(lines, line);) {
    out.text += line + "\n";
    if (starts_with(line, marker)) {
      shown = line.substr(marker.size(), line.find(" -->") - marker.size());
      continue;
    }
    if (!starts_with(line, "```")) continue;
    const std::string fence = line;
    std::vector<std::string> old;
    while (std::getline(lines, line) && line != "```") old.push_back(line);
    if (!shown.empty()) {
      if (!fs::is_regular_file(checkout / shown)) out.faults.push_back("no file " + shown);
      out.text += read_all(checkout / shown);
      out.files.push_back(shown);
    } else if (fence == "```console") {
      bool goes_on = false;
      std::string command;
      const std::size_t before = out.commands;
      for (const std::string& l : old) {
        if (!goes_on && !starts_with(l, "$ ")) continue;  // output of before
        out.text += l + "\n";
        command += (goes_on ? l : l.substr(2)) + "\n";
        goes_on = l.back() == '\\';
        if (goes_on) continue;
        ++out.commands;
        if (command.find("jarproof ") == std::string::npos)
          out.faults.push_back("the command does not run jarproof: " + command);
        const std::string answer = printed(program, checkout, command);
        if (answer.empty()) out.faults.push_back("nothing is printed by: " + command);
        out.text += answer;
        command.clear();
      }
      if (out.commands == before || goes_on) out.faults.push_back("a block without a command");
    } else {
      out.faults.push_back("a block " + fence + " that nothing compares; put `" + marker +
                           "FILE -->` above it, or make it ```console");
      for (const std::string& l : old) out.text += l + "\n";
    }
    out.text += "```\n";
    shown.clear();
  }
  if (out.files.empty()) out.faults.push_back("no plan is shown");
  if (out.commands == 0) out.faults.push_back("no command is shown");
  return out;
}

/// Files of a folder of the checkout by name, as paths in the checkout.
std::vector<std::string> files_of(const fs::path& checkout, const std::string& folder) {
  std::vector<std::string> out;
  for (const auto& entry : fs::directory_iterator(checkout / folder))
    out.push_back(folder + "/" + entry.path().filename().string());
  std::sort(out.begin(), out.end());
  return out;
}

/// All pages of the course but its index.
std::vector<std::string> pages_of(const fs::path& checkout) {
  std::vector<std::string> out = files_of(checkout, "docs/course");
  out.erase(std::remove(out.begin(), out.end(), "docs/course/README.md"), out.end());
  return out;
}

int told(const std::string& where, const std::vector<std::string>& faults) {
  for (const std::string& fault : faults)
    std::fprintf(stderr, "%s: %s\n", where.c_str(), fault.c_str());
  return static_cast<int>(faults.size());
}

/// The first line that differs, so that the log says where.
std::string difference(const std::string& page, const std::string& wanted) {
  std::istringstream a(page);
  std::istringstream b(wanted);
  std::string in_page;
  std::string in_wanted;
  int line = 0;
  do {
    ++line;
    in_page.clear();
    in_wanted.clear();
    std::getline(a, in_page);
    std::getline(b, in_wanted);
  } while (in_page == in_wanted && (a || b));
  return "line " + std::to_string(line) + " is\n  " + in_page + "\nand must be\n  " + in_wanted +
         "\nTo rewrite all lessons: cmake --build --preset dev --target update-lessons";
}

int compare(const std::string& program, const fs::path& checkout, const std::string& name) {
  const std::string page = read_all(checkout / name);
  lesson l = renewed(page, program, checkout);
  if (l.text != page) l.faults.push_back(difference(page, l.text));
  return told(name, l.faults);
}

int update(const std::string& program, const fs::path& checkout) {
  int wrong = 0;
  std::vector<std::string> pages = pages_of(checkout);
  pages.insert(pages.end(), other_pages.begin(), other_pages.end());
  for (const std::string& name : pages) {
    const lesson l = renewed(read_all(checkout / name), program, checkout);
    wrong += told(name, l.faults);
    if (!l.faults.empty()) continue;
    std::ofstream file(checkout / name, std::ios::binary);
    file << l.text;
    if (!file.flush()) wrong += told(name, {"cannot be written"});
  }
  return wrong;
}

/// Every file of examples/lessons/ is shown in a lesson and says in its first line that it is
/// invented; every lesson is listed in the index.
int complete(const std::string& program, const fs::path& checkout) {
  int wrong = 0;
  const std::string index = read_all(checkout / "docs/course/README.md");
  std::vector<std::string> shown;
  const std::vector<std::string> pages = pages_of(checkout);
  for (const std::string& name : pages) {
    const std::string file = fs::path(name).filename().string();
    if (index.find("(" + file + ")") == std::string::npos)
      wrong += told(name, {"docs/course/README.md does not list it"});
    for (const std::string& f : renewed(read_all(checkout / name), program, checkout).files)
      shown.push_back(f);
  }
  for (const std::string& name : files_of(checkout, "examples/lessons")) {
    if (std::count(shown.begin(), shown.end(), name) == 0)
      wrong += told(name, {"no lesson shows it"});
    const std::string text = read_all(checkout / name);
    const std::string head = text.substr(0, text.find('\n'));
    if (head.find("Invented") == std::string::npos && head.find("invented") == std::string::npos)
      wrong += told(name, {"its first line does not say that it is invented"});
  }
  if (pages.empty()) wrong += told("docs/course", {"no lessons"});
  return wrong;
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 3 && argc != 4) return 1;
  const std::string program = argv[1];
  const fs::path checkout = argv[2];
  const std::string what = argc == 4 ? argv[3] : "";
  if (what.empty()) return complete(program, checkout) == 0 ? 0 : 1;
  if (what == "--update") return update(program, checkout) == 0 ? 0 : 1;
  return compare(program, checkout, what) == 0 ? 0 : 1;
}
