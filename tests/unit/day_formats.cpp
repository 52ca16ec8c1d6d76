// The day as text, JSON and iCalendar (RFC 5545).
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "jarproof/day_of.hpp"
#include "jarproof/format/day_json.hpp"
#include "jarproof/format/day_text.hpp"
#include "jarproof/format/icalendar.hpp"
#include "jarproof/json.hpp"
#include "support/fixtures.hpp"

namespace day_formats_tests {
namespace {

const jarproof::edition& rules = jarproof::builtin_edition();
using changes = std::map<std::string, std::string>;

jarproof::day_plan beans_day(changes more) {
  more.try_emplace("jars", "23");
  more.try_emplace("canner", "{quarts: 7, pints: 9}");
  return jarproof::day_of(fixtures::plan_from(fixtures::plan_text(fixtures::beans(), more)), rules);
}
changes dated() { return {{"date", "2026-08-14"}, {"start", "20:00"}}; }

std::string calendar(const jarproof::day_plan& d) {
  const auto out = jarproof::icalendar(d, rules);
  REQUIRE(out);
  return *out;
}
/// Content lines with their folds taken out (RFC 5545, 3.1).
std::vector<std::string> unfolded(const std::string& text) {
  std::vector<std::string> out;
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t end = text.find("\r\n", at);
    REQUIRE(end != std::string::npos);
    const std::string line = text.substr(at, end - at);
    CHECK(line.find_first_of("\r\n") == std::string::npos);
    CHECK(line.size() <= 75);
    if (!line.empty() && line.front() == ' ') {
      REQUIRE_FALSE(out.empty());
      out.back() += line.substr(1);
    } else {
      out.push_back(line);
    }
    at = end + 2;
  }
  return out;
}
std::size_t count(const std::vector<std::string>& lines, const std::string& line) {
  std::size_t out = 0;
  for (const std::string& l : lines) out += l == line ? 1 : 0;
  return out;
}

TEST_SUITE_BEGIN("day");

TEST_CASE("no line of the text is wider than a phone") {
  for (const changes& more : {changes{}, dated(), changes{{"batch", "12 qt"}, {"jars", ""}}}) {
    std::istringstream lines(jarproof::day_text_of(beans_day(more), rules));
    for (std::string line; std::getline(lines, line);) CHECK_MESSAGE(line.size() <= 60, line);
  }
}

TEST_CASE("the text has loads and clock and card in this order") {
  const std::string text = jarproof::day_text_of(beans_day(dated()), rules);
  std::size_t at = 0;
  for (const char* part :
       {"ACCEPTED", "3 loads: 8 + 8 + 7", "start      2026-08-14 20:00",
        "end        02:55 (+1 day)", "Load 1: 8 pint jars", "Load 3: 7 pint jars", "Step card",
        "Mind", "Label", "After 12 to 24 hours", "When a jar is opened"}) {
    at = text.find(part, at);
    CHECK_MESSAGE(at != std::string::npos, part);
  }
}

TEST_CASE("a plan that is not accepted prints its findings and no card") {
  const std::string text = jarproof::day_text_of(beans_day({{"time", "15 min"}}), rules);
  CHECK(text.find("time-too-short") != std::string::npos);
  CHECK(text.find("No step card") != std::string::npos);
  CHECK(text.find("Load 1") == std::string::npos);
  CHECK(text.find("Wipe the rims") == std::string::npos);
}

TEST_CASE("warnings of the check stand in the day too") {
  const std::string text =
      jarproof::day_text_of(beans_day({{"headspace", "1 1/2 in"}, {"jars", "2"}}), rules);
  CHECK(text.find("headspace-too-large") != std::string::npos);
  CHECK(text.find("load-small") != std::string::npos);
}

TEST_CASE("the JSON can be read and repeats the day") {
  for (const changes& more :
       {changes{}, dated(), changes{{"time", "15 min"}}, changes{{"jars", ""}, {"canner", ""}}}) {
    const std::string text = jarproof::day_json(beans_day(more), {}, rules);
    const auto read = jarproof::read_json(text, "day");
    REQUIRE(read);
    REQUIRE(read->size() == 1);
    const jarproof::node& root = read->front().root;
    for (const char* key : {"format", "library", "edition", "verdict", "plans", "unreadable",
                            "loads", "apart", "clock", "not_said"})
      CHECK_MESSAGE(find(root, key) != nullptr, key);
    const jarproof::node& first = find(root, "plans")->items.front();
    const bool accepted = find(root, "verdict")->text == "accepted";
    CHECK((find(first, "steps") != nullptr) == accepted);
  }
  const std::string text = jarproof::day_json(beans_day(dated()), {}, rules);
  CHECK(text.find("\"from\": \"20:00\"") != std::string::npos);
  CHECK(text.find("\"total_min\": 415") != std::string::npos);
}

TEST_CASE("the calendar is made of whole events in CRLF lines of at most 75 octets") {
  const std::vector<std::string> lines = unfolded(calendar(beans_day(dated())));
  CHECK(lines.front() == "BEGIN:VCALENDAR");
  CHECK(lines[1] == "VERSION:2.0");
  CHECK(lines[2].rfind("PRODID:", 0) == 0);
  CHECK(lines.back() == "END:VCALENDAR");
  // Three loads with six stages each, two spells between them, three tests of the seals.
  const std::size_t events = 3 * 6 + 2 + 3;
  CHECK(count(lines, "BEGIN:VEVENT") == events);
  CHECK(count(lines, "END:VEVENT") == events);
  CHECK(count(lines, "DTSTAMP:20260814T000000Z") == events);
  CHECK(count(lines, "BEGIN:VALARM") == 3 * 3);
  CHECK(count(lines, "TRIGGER;RELATED=END:PT0S") == 3 * 3);
  std::set<std::string> ids;
  std::size_t starts = 0;
  for (const std::string& l : lines) {
    if (l.rfind("UID:", 0) == 0) ids.insert(l);
    if (l.rfind("DTSTART:", 0) != 0) continue;
    ++starts;
    CHECK(l.size() == 8 + 15);  // floating: no Z, no zone
    CHECK(l.back() != 'Z');
  }
  CHECK(ids.size() == events);
  CHECK(starts == events);
}

TEST_CASE("every process of the day ends with an alarm") {
  const jarproof::day_plan d = beans_day(dated());
  const std::vector<std::string> lines = unfolded(calendar(d));
  std::size_t alarms = 0;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (lines[i].find("SUMMARY:") != 0 || lines[i].find("process 20 min") == std::string::npos)
      continue;
    bool alarm = false;
    for (std::size_t j = i; lines[j] != "END:VEVENT"; ++j)
      alarm = alarm || lines[j] == "BEGIN:VALARM";
    CHECK(alarm);
    ++alarms;
  }
  CHECK(alarms == 3);
}

TEST_CASE("times go over midnight and months") {
  const auto lines = unfolded(calendar(beans_day({{"date", "2026-08-31"}, {"start", "20:00"}})));
  CHECK(count(lines, "DTSTART:20260831T200000") == 1);
  CHECK(count(lines, "DTEND:20260901T025500") == 1);
  // Load 3 is out at 02:55; the seals are tested 12 to 24 hours later.
  CHECK(count(lines, "DTSTART:20260901T145500") == 1);
  CHECK(count(lines, "DTEND:20260902T025500") == 1);
}

TEST_CASE("the same day gives the same bytes and another time another id") {
  CHECK(calendar(beans_day(dated())) == calendar(beans_day(dated())));
  changes later = dated();
  later["start"] = "20:01";
  const auto ids = [](const std::string& text) {
    std::set<std::string> out;
    for (const std::string& l : unfolded(text)) {
      if (l.rfind("UID:", 0) == 0) out.insert(l);
    }
    return out;
  };
  const auto first = ids(calendar(beans_day(dated())));
  for (const std::string& id : ids(calendar(beans_day(later)))) CHECK(first.count(id) == 0);
}

TEST_CASE("text values are escaped and folds cut no character") {
  using jarproof::detail::calendar_line;
  using jarproof::detail::calendar_text;
  CHECK(calendar_text("a,b;c\\d\ne\x01") == "a\\,b\\;c\\\\d\\ne");
  const std::string exact(75, 'x');
  CHECK(calendar_line(exact) == exact + "\r\n");
  CHECK(calendar_line(exact + "y") == exact + "\r\n y\r\n");
  std::string umlauts = "S:";
  for (int i = 0; i < 100; ++i) umlauts += "\xC3\xA4";
  std::string joined;
  for (const std::string& l : unfolded(calendar_line(umlauts))) joined += l;
  CHECK(joined == umlauts);
  std::istringstream lines(calendar_line(umlauts));
  for (std::string line; std::getline(lines, line);) {
    line.pop_back();
    CHECK(jarproof::detail::valid_utf8(line) == line);
  }
}

TEST_CASE("what a calendar lacks is said all at once") {
  const auto problems = [](const changes& more) {
    const auto out = jarproof::icalendar(beans_day(more), rules);
    std::string text;
    if (!out) {
      for (const jarproof::problem& p : out.errors()) text += p.path + " ";
    }
    return text;
  };
  CHECK(problems({}) == "date start ");
  CHECK(problems({{"date", "2026-08-14"}}) == "start ");
  CHECK(problems({{"start", "14:30"}}) == "date ");
  CHECK(problems({{"canner", ""}, {"start", "14:30"}}) == " date ");
}

TEST_SUITE_END();

}  // namespace
}  // namespace day_formats_tests
