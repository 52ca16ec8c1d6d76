// SPDX-License-Identifier: MIT
#include "support/shelves.hpp"

#include <doctest/doctest.h>

#include <utility>
#include <variant>

#include "jarproof/builtin.hpp"
#include "jarproof/json.hpp"
#include "support/fixtures.hpp"
#include "support/readings.hpp"

namespace fixtures {

namespace {

std::string short_lines(const jarproof::problems& errors) {
  std::string out;
  for (const jarproof::problem& p : errors)
    out += p.path + " | " + p.message + " | " + p.write + "\n";
  return out;
}

struct attempt {
  jarproof::report report;
  jarproof::result<std::string> line;
};

attempt attempted(const std::map<std::string, std::string>& keys,
                  std::optional<jarproof::shelf_run> run, int unsealed) {
  const jarproof::document text = documents_of(plan_text(keys)).front();
  const auto plan = jarproof::read_plan(text);
  REQUIRE(plan);
  const jarproof::edition& rules = jarproof::builtin_edition();
  const jarproof::report report = jarproof::check(*plan, rules);
  return {report, jarproof::record_line(report, *plan, text, rules, std::move(run), unsealed)};
}

}  // namespace

std::map<std::string, std::string> kitchen_lot() {
  auto keys = beans();
  keys["title"] = "Green beans, first picking";
  keys["lot"] = "beans-1";
  keys["date"] = "2026-07-18";
  keys["jars"] = "9";
  return keys;
}

recorded_lot recorded(const std::map<std::string, std::string>& keys,
                      std::optional<jarproof::shelf_run> run, int unsealed) {
  attempt a = attempted(keys, std::move(run), unsealed);
  if (!a.line) FAIL(short_lines(a.line.errors()));
  return {std::move(a.report), std::move(*a.line)};
}

std::string refusals_of(const std::map<std::string, std::string>& keys) {
  const attempt a = attempted(keys, std::nullopt, 0);
  std::string out;
  if (a.line) return out;
  for (const jarproof::problem& p : a.line.errors()) out += line_of(p) + "\n";
  return out;
}

jarproof::shelf_line line_from(std::string_view text) {
  const auto read = jarproof::read_json_line(text, "shelf.jsonl:1");
  REQUIRE(read);
  REQUIRE(jarproof::is_record(read->root));
  const auto line = jarproof::read_record(*read);
  if (!line) FAIL(short_lines(line.errors()));
  return *line;
}

jarproof::shelf_record record_from(std::string_view text) {
  return std::get<jarproof::shelf_record>(line_from(text));
}

std::string record_faults(std::string_view text) {
  const auto read = jarproof::read_json_line(text, "shelf.jsonl:1");
  REQUIRE(read);
  const auto line = jarproof::read_record(*read);
  if (line) return "";
  for (const jarproof::problem& p : line.errors()) CHECK(p.file == "shelf.jsonl:1");
  return short_lines(line.errors());
}

std::string add_line(jarproof::shelf& s, std::string_view text) {
  return short_lines(s.add(line_from(text)));
}

std::string happening(std::string_view lot, std::string_view date, std::string_view what,
                      int count) {
  jarproof::detail::json_writer w;
  w.begin('{');
  w.member("record", jarproof::shelf_format);
  w.member("lot", lot);
  w.member("date", date);
  w.member(what, count);
  w.end('}');
  return w.take();
}

std::string replaced(std::string text, std::string_view from, std::string_view to) {
  const std::size_t at = text.find(from);
  REQUIRE(at != std::string::npos);
  return text.replace(at, from.size(), to);
}

}  // namespace fixtures
