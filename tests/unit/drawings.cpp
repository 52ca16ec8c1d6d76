// Pictures: what they show is what the report says, to scale, and nothing where nothing is known.
// SPDX-License-Identifier: MIT
#include "jarproof/format/drawings.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "jarproof/format/charts.hpp"
#include "jarproof/format/strips.hpp"
#include "support/fixtures.hpp"
#include "support/markup.hpp"

namespace drawings_tests {
namespace {

using strings = std::vector<std::string>;

std::string tomatoes(const std::string& altitude, const std::string& method = "boiling-water") {
  return "food: crushed tomatoes\nas-published: true\npack: hot\njar: quart\nmethod: " + method +
         "\ntime: 60 min\nacid: 2 tbsp bottled lemon juice per quart\naltitude: " + altitude + "\n";
}

strings names_of(const jarproof::band_picture& picture) {
  strings out;
  for (const jarproof::drawn_bands& row : picture.rows) out.push_back(row.name + " " + row.beside);
  return out;
}

std::size_t count(const std::string& text, const std::string& what) {
  std::size_t out = 0;
  for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + 1))
    ++out;
  return out;
}

}  // namespace

TEST_SUITE_BEGIN("drawings");

// USDA Complete Guide 2015, part 4, page 4-8: 11, 12, 13 and 14 psi on a dial, 10 and 15 by weight;
// 15 psi above 8,000 ft: South Dakota State University Extension, S-0001-25.
TEST_CASE("the bands of a pressure process, its own gauge first") {
  const auto picture = jarproof::bands_of(fixtures::beans_with({}), jarproof::builtin_edition());
  REQUIRE(picture);
  CHECK(picture->altitude_ft == 4'600);
  CHECK(picture->highest_ft == 10'000);
  CHECK(names_of(*picture) == strings{"Weighted gauge for 20 min", "Dial gauge for 20 min"});
  CHECK(jarproof::bands_in_words(*picture) ==
        strings{"Weighted gauge for 20 min: 10 psi up to 1,000 ft, 15 psi from 1,001 to 10,000 ft.",
                "Dial gauge for 20 min: 11 psi up to 2,000 ft, 12 psi from 2,001 to 4,000 ft, 13 "
                "psi from 4,001 to 6,000 ft, 14 psi from 6,001 to 8,000 ft, 15 psi from 8,001 to "
                "10,000 ft."});
  const std::string svg = jarproof::bands_svg("b", *picture);
  CHECK(fixtures::faults_of_markup(svg) == strings{});
  CHECK(count(svg, "class=\"here\"") == 2);
  CHECK(svg.find("this kitchen: 4,600 ft (1,402 m)") != std::string::npos);
}

// USDA Complete Guide 2015, part 3, page 3-7: quarts 45, 50, 55 and 60 min in boiling water.
TEST_CASE("minutes in boiling water stand in their bands") {
  const auto picture =
      jarproof::bands_of(fixtures::judged(tomatoes("3001 ft")), jarproof::builtin_edition());
  REQUIRE(picture);
  CHECK(picture->rows[0].unit == "min");
  CHECK(jarproof::bands_in_words(*picture)[0] ==
        "Boiling water: 45 min up to 1,000 ft, 50 min from 1,001 to 3,000 ft, 55 min from 3,001 to "
        "6,000 ft, 60 min from 6,001 to 10,000 ft.");
}

TEST_CASE("this kitchen is in one band of each row, at both ends of a band") {
  for (const char* altitude :
       {"0 ft", "1000 ft", "1001 ft", "3000 ft", "3001 ft", "6000 ft", "6001 ft", "10000 ft"}) {
    CAPTURE(altitude);
    const auto picture =
        jarproof::bands_of(fixtures::judged(tomatoes(altitude)), jarproof::builtin_edition());
    REQUIRE(picture);
    const std::string svg = jarproof::bands_svg("b", *picture);
    CHECK(count(svg, "class=\"here\"") == picture->rows.size());
  }
}

TEST_CASE("no bands where there are no numbers") {
  const jarproof::edition& rules = jarproof::builtin_edition();
  CHECK_FALSE(jarproof::bands_of(fixtures::beans_with({{"altitude", ""}}), rules));
  CHECK_FALSE(jarproof::bands_of(fixtures::beans_with({{"altitude", "10001 ft"}}), rules));
  CHECK_FALSE(jarproof::bands_of(fixtures::beans_with({{"food", "moon dust"}}), rules));
  jarproof::report r = fixtures::beans_with({});
  r.required->verified = false;
  CHECK_FALSE(jarproof::bands_of(r, rules));
  CHECK_FALSE(jarproof::jar_of(r.process, r.required, rules));
}

// Each number of each report is drawn as it stands there: every row of the edition that is in use.
TEST_CASE("whatever is asked for stands in the band of this kitchen") {
  const jarproof::edition& rules = jarproof::builtin_edition();
  std::size_t drawn = 0;
  for (const jarproof::process& p : rules.processes) {
    for (const jarproof::table& t : p.tables) {
      for (const jarproof::jar_minutes& m : t.minutes) {
        for (const int feet : {0, 4'600, 8'000}) {
          for (const auto& [gauge, id] :
               {std::pair{"dial", t.dial}, {"weighted", t.weighted}, {"", t.boiling_water}}) {
            const jarproof::band_set* set = jarproof::find(rules.bands, id);
            const jarproof::altitude_step* step =
                set == nullptr ? nullptr : jarproof::band_at(*set, feet);
            if (step == nullptr || !t.use) continue;
            jarproof::requirement q;
            q.method = *gauge == '\0' ? "boiling-water" : "pressure";
            q.gauge = gauge;
            q.pack = std::string(t.pack);
            q.jar = std::string(m.jar);
            if (*gauge != '\0') q.pressure_psi = step->psi;
            q.time_min =
                m.minutes[*gauge == '\0' ? static_cast<std::size_t>(step - set->steps.begin()) : 0];
            const auto picture = jarproof::bands_of(&p, q, {}, feet, rules);
            CAPTURE(p.id);
            REQUIRE(picture);
            for (const jarproof::drawn_band& b : picture->rows[0].bands) {
              if (feet < b.from_ft || feet > b.through_ft) continue;
              CHECK(b.value == q.pressure_psi.value_or(q.time_min));
              ++drawn;
            }
          }
        }
      }
    }
  }
  CHECK(drawn > 500);
}

// USDA Complete Guide 2015, part 1: a quart is 32 fl oz; a gallon of 128 fl oz is 231 cubic inches
// (NIST Handbook 44, appendix C).
TEST_CASE("a jar is as wide as its volume makes it") {
  CHECK(jarproof::detail::width_of_jar(32) == 3'330);  // cube root of 2 * 57.75 / pi: 3.3252
  CHECK(jarproof::detail::width_of_jar(16) == 2'640);
  CHECK(jarproof::detail::width_of_jar(0) == 0);
}

// USDA Complete Guide 2015, part 4, soups: 1 inch of headspace, jars half full of solids.
TEST_CASE("headspace and solids stand to scale") {
  const jarproof::edition& rules = jarproof::builtin_edition();
  const jarproof::report r = fixtures::judged(
      "food: soups\nas-published: true\npack: hot\njar: quart\nmethod: pressure\n"
      "gauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n");
  const auto jar = jarproof::jar_of(r.process, r.required, rules);
  REQUIRE(jar);
  CHECK(jar->solids_percent == 50);
  CHECK(jar->headspace_thousandths_in == 1'000);
  const std::string svg = jarproof::jar_svg("j", *jar);
  CHECK(fixtures::faults_of_markup(svg) == strings{});
  // The glass goes from 30 to 230 and is 6.66 in tall: an inch is 30, half of it is at 130.
  CHECK(svg.find("y1=\"60\"") != std::string::npos);
  CHECK(svg.find("y1=\"130\"") != std::string::npos);
  CHECK(jarproof::jar_in_words(*jar) ==
        "Headspace 1 in (25 mm), measured from the rim down. Solids fill at most half of the jar, "
        "hot liquid the rest.");
  const auto plain =
      jarproof::jar_of(fixtures::beans_with({}).process, fixtures::beans_with({}).required, rules);
  REQUIRE(plain);
  CHECK(plain->solids_percent == 0);
  CHECK(jarproof::jar_svg("j", *plain).find("class=\"liquid\"") == std::string::npos);
}

TEST_CASE("axes end at whole steps and have few ticks") {
  using jarproof::detail::extent;
  using jarproof::detail::value_scale;
  const auto psi = value_scale(extent{false, 0, 15'400});
  CHECK(psi.from == 0);
  CHECK(psi.through == 20'000);
  CHECK(psi.ticks() == std::vector<std::int64_t>{0, 5'000, 10'000, 15'000, 20'000});
  const auto below = value_scale(extent{false, -1, 1});
  CHECK(below.from <= -1);
  CHECK(below.through > 1);
  for (const std::int64_t high : {0, 1, 99, 12'345, 240'000, 999'999'999}) {
    const auto s = value_scale(extent{false, 0, high});
    CHECK(s.ticks().size() <= 9);
    CHECK(s.through > high);
  }
  const auto run = jarproof::detail::minute_scale(extent{false, 0, 130'000}, 865'000);  // 14:25
  CHECK(run.ticks() == std::vector<std::int64_t>{5'000, 35'000, 65'000, 95'000, 125'000});
  for (const std::int64_t high : {0L, 1L, 60'000L, 90'000'000L, 4'000'000'000L}) {
    const auto s = jarproof::detail::minute_scale(extent{false, 0, high}, 0);
    CHECK(s.ticks().size() <= 6);
    CHECK(s.at(high + 1'000'000, 10, 20) == 20);
  }
}

TEST_CASE("times of day") {
  using jarproof::time_of_day_text;
  CHECK(time_of_day_text(0) == "00:00");
  CHECK(time_of_day_text(870) == "14:30");
  CHECK(time_of_day_text(1'439) == "23:59");
  CHECK(time_of_day_text(1'440) == "00:00 next day");
  CHECK(time_of_day_text(2'885) == "00:05, day 3");
  CHECK(time_of_day_text(-30) == "23:30 the day before");
}

TEST_CASE("a chart shows and says all that is marked in it") {
  jarproof::page_chart c;
  c.id = "run";
  c.title = "Pressure <over> time";
  c.y_label = "psi";
  c.courses = {{{0, 0}, {24'000, 15'100}, {40'000, 13'200}, {60'000, 15'100}}, {{78'000, 15'000}}};
  c.levels = {{15'000, "15 psi required"}};
  c.spans = {{24'000, 110'000, jarproof::span_kind::process, "process"},
             {39'000, 47'000, jarproof::span_kind::failing, "below 15 psi"},
             {60'000, 78'000, jarproof::span_kind::gap, "no readings"}};
  c.events = {{2'500, "steam \"begins\""}, {24'000, "at pressure"}};
  jarproof::html_writer w;
  write_chart(w, c);
  const std::string out = w.take();
  CHECK(fixtures::faults_of_markup(out) == strings{});
  for (const char* line :
       {"<b>Dashed line:</b> 15 psi required", "<b>Shaded:</b> 24 min to 110 min: process",
        "<b>A</b> 39 min to 47 min: below 15 psi",
        "<b>Dashed box:</b> 60 min to 78 min: no readings",
        "<b>1</b> 2.5 min: steam &quot;begins&quot;", "<b>2</b> 24 min: at pressure"}) {
    CAPTURE(line);
    CHECK(out.find(line) != std::string::npos);
  }
  CHECK(count(out, "class=\"spot\"") == 5);
  CHECK(count(out, "class=\"course\"") == 1);
  c.clock_from_min = 23 * 60 + 50;
  jarproof::html_writer by_clock;
  write_chart(by_clock, c);
  CHECK(by_clock.take().find("00:29 next day to 00:37 next day: below 15 psi") !=
        std::string::npos);
}

TEST_CASE("no dip is lost where readings are many, and the picture stays small") {
  jarproof::page_chart c;
  c.id = "run";
  c.courses.emplace_back();
  for (int s = 0; s < 7'200; ++s)
    c.courses[0].push_back({s * 1'000 / 60, s == 4'321 ? 9'000 : 15'000});
  const auto frame = jarproof::detail::frame_of(c);
  const std::string path = jarproof::detail::course_path(c.courses[0], frame);
  CHECK(path.size() < 20'000);
  const std::int64_t lowest = frame.y_at(9'000);
  CHECK(path.find(" " + jarproof::detail::svg_number(lowest) + "L") != std::string::npos);
}

TEST_CASE("charts of little or absurd input are still charts") {
  for (const std::int64_t big : {std::int64_t{0}, std::int64_t{1}, std::int64_t{999'999'999'999}}) {
    jarproof::page_chart c;
    c.id = "run";
    c.title = "t";
    CHECK(fixtures::faults_of_markup(jarproof::chart_svg(c)) == strings{});
    c.courses = {{{big, -big}}, {}, {{big, big}}};
    c.spans = {{big, big, jarproof::span_kind::failing, ""}};
    for (int i = 0; i < 40; ++i) c.spans.push_back({0, i, jarproof::span_kind::failing, "x"});
    c.events = {{-big, "e"}};
    jarproof::html_writer w;
    write_chart(w, c);
    CHECK(fixtures::faults_of_markup(w.take()) == strings{});
  }
}

TEST_CASE("the day by the clock, load by load") {
  jarproof::page_strip day{"day", "The day", {}};
  day.rows.push_back({"Load 1",
                      {{570, 595, "heat up", jarproof::strip_look::heat},
                       {595, 670, "process", jarproof::strip_look::work}}});
  day.rows.push_back({"Load 2", {{1'425, 1'450, "heat up", jarproof::strip_look::heat}}});
  jarproof::html_writer w;
  write_strip(w, day);
  const std::string out = w.take();
  CHECK(fixtures::faults_of_markup(out) == strings{});
  const std::string words = fixtures::words_of_page("<body>" + out);
  CHECK(words.find("Load 1: 09:30 heat up, 09:55 process, until 11:10.") != std::string::npos);
  CHECK(words.find("00:10 next day") != std::string::npos);
  CHECK(words.find("done") != std::string::npos);
  CHECK(words.find("2. process") != std::string::npos);
  CHECK(count(out, "class=\"heat\"") == 2);
  day.by_clock = false;
  CHECK(jarproof::strip_svg(day).find("9:55 h process") != std::string::npos);
  jarproof::html_writer none;
  write_strip(none, {});
  CHECK(none.take().empty());
}

TEST_SUITE_END();

}  // namespace drawings_tests
