// SPDX-License-Identifier: MIT
#include "options.hpp"

#include <unistd.h>

#include <algorithm>
#include <boost/program_options/parsers.hpp>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <sstream>

namespace jarproof::cli {

namespace po = boost::program_options;

parsed parse(const arguments& args, const std::string& usage, po::options_description options,
             const po::positional_options_description& positions) {
  options.add_options()("help,h", "show this help");
  parsed out;
  try {
    po::variables_map values;
    // No guessing of shortened names: a plan judged by another option than meant does harm.
    const int style = po::command_line_style::unix_style & ~po::command_line_style::allow_guessing;
    po::store(
        po::command_line_parser(args).options(options).positional(positions).style(style).run(),
        values);
    po::notify(values);
    if (values.count("help") == 0) {
      out.values = std::move(values);
      return out;
    }
    std::ostringstream help;
    for (const auto& option : options.options()) {
      if (option->description().empty()) continue;  // a position, not an option
      help << "  " << option->format_name()
           << (option->semantic()->max_tokens() > 0 ? " " + option->format_parameter() : "")
           << "\n      " << option->description() << "\n";
    }
    out.status = print(usage + "\nOptions:\n" + help.str()) ? all_accepted : not_done;
  } catch (const po::error& e) {
    complain(std::string(e.what()) + "\n" + usage);
    out.status = not_done;
  }
  return out;
}

void complain(const std::string& message) { std::cerr << "jarproof: " << message << "\n"; }

void complain(const problems& errors) {
  for (const problem& p : errors) {
    std::cerr << p.file;
    if (p.line > 0) std::cerr << ":" << p.line << ":" << p.column;
    std::cerr << ": " << p.message << "; " << p.write << "\n";
  }
}

std::optional<std::string> read_file(const std::string& path) {
  std::ostringstream text;
  if (path == "-") {
    text << std::cin.rdbuf();
    return text.str();
  }
  std::error_code ec;
  if (std::filesystem::is_directory(path, ec)) {
    complain(path + " is a folder; name a file");
    return std::nullopt;
  }
  std::ifstream file(path, std::ios::binary);
  if (file) text << file.rdbuf();
  if (!file) {
    // An empty file is read well, but puts nothing into the stream.
    if (std::filesystem::is_regular_file(path, ec) && std::filesystem::file_size(path, ec) == 0 &&
        !ec)
      return std::string();
    complain(path + " cannot be read; check the name");
    return std::nullopt;
  }
  return text.str();
}

std::optional<std::vector<rule_file>> read_rule_folder(const std::string& folder) {
  namespace fs = std::filesystem;
  std::error_code ec;
  if (!fs::is_directory(folder, ec)) {
    complain(folder + " is no folder with rule files");
    return std::nullopt;
  }
  std::vector<rule_file> out;
  for (const auto& entry : fs::recursive_directory_iterator(folder, ec)) {
    // Files with a like ending are passed on too: the loader says that they are no rule files.
    const std::string ending = entry.path().extension().string();
    const bool like_rules = ending == ".yaml" || ending == ".yml" || ending == ".json";
    if (!entry.is_regular_file() || !like_rules) continue;
    std::optional<std::string> text = read_file(entry.path().string());
    if (!text) return std::nullopt;
    out.push_back({entry.path().lexically_relative(folder).generic_string(), std::move(*text)});
  }
  if (ec) {
    complain(folder + " cannot be read: " + ec.message());
    return std::nullopt;
  }
  // The order of a folder differs from machine to machine.
  std::sort(out.begin(), out.end(),
            [](const rule_file& a, const rule_file& b) { return a.name < b.name; });
  return out;
}

std::optional<chosen_rules> choose_rules(const po::variables_map& values) {
  chosen_rules out;
  if (values.count("rules") == 0) return out;
  const std::string folder = values["rules"].as<std::string>();
  const auto files = read_rule_folder(folder);
  if (!files) return std::nullopt;
  result<owned_edition> loaded = load_edition(*files, &builtin_edition());
  if (!loaded) {
    complain(loaded.errors());
    complain("the rules in " + folder + " cannot be used");
    return std::nullopt;
  }
  out.owned = std::move(*loaded);
  return out;
}

text_style style_of_output() {
  text_style style;
  const char* no_color = std::getenv("NO_COLOR");
  const char* terminal = std::getenv("TERM");
  const bool plain = (no_color != nullptr && *no_color != '\0') ||
                     (terminal != nullptr && std::string(terminal) == "dumb");
  style.colour = !plain && isatty(STDOUT_FILENO) != 0;
  return style;
}

bool print(const std::string& text) {
  std::cout << text << std::flush;
  if (std::cout) return true;
  complain("the output cannot be written");
  return false;
}

}  // namespace jarproof::cli
