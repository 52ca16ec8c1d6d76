// From a document tree to a plan: every key, every error at once, every place.
// SPDX-License-Identifier: MIT
#include "jarproof/read_plan.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <ostream>
#include <string>
#include <string_view>

#include "jarproof/keys.hpp"
#include "support/fixtures.hpp"
#include "support/readings.hpp"

namespace read_plan_tests {

using fixtures::begins;
using fixtures::fault_places_of;
using fixtures::faults_of;
using fixtures::place_of;
using fixtures::plan_from;
using jarproof::plan;

namespace {

struct keyed {
  std::string_view key;
  std::string_view value;
  std::string_view message = {};
};

constexpr keyed good_values[] = {{"title", "Green beans, first picking"},
                                 {"title", "\"7 quarts: beans\""},
                                 {"lot", "2026-08-14-a"},
                                 {"date", "2026-08-14"},
                                 {"date", "2028-02-29"},
                                 {"date", "2000-02-29"},
                                 {"food", "green beans"},
                                 {"form", "1-inch-pieces"},
                                 {"as-published", "true"},
                                 {"as-published", "No"},
                                 {"recipe", "soups/venison.txt"},
                                 {"steps", "[Soak the beans., \"Boil: 5 min\"]"},
                                 {"yield", "9 pints"},
                                 {"yield", "9"},
                                 {"ingredients", "[7 lb green beans, 7 tsp salt]"},
                                 {"ingredients", "7 lb green beans"},
                                 {"pack", "raw"},
                                 {"pack", "HOT"},
                                 {"jar", "pint"},
                                 {"jar", "pint-and-half"},
                                 {"jar", "12 oz"},
                                 {"jar", "500 mL"},
                                 {"jar", "1/2 pint"},
                                 {"method", "pressure"},
                                 {"method", "open-kettle"},
                                 {"gauge", "dial"},
                                 {"gauge", "Weighted"},
                                 {"gauge-error", "+1 psi"},
                                 {"gauge-error", "-7 kPa"},
                                 {"gauge-error", "0 psi"},
                                 {"pressure", "11 psi"},
                                 {"pressure", "69 kPa"},
                                 {"pressure", "0.7 bar"},
                                 {"time", "75 min"},
                                 {"time", "1 h 15 min"},
                                 {"temperature", "182 F"},
                                 {"temperature", "83 C"},
                                 {"altitude", "4,600 ft"},
                                 {"altitude", "260 m"},
                                 {"altitude", "-10 ft"},
                                 {"headspace", "1 1/4 in"},
                                 {"headspace", "25 mm"},
                                 {"vent", "10 min"},
                                 {"heat-up", "20 min"},
                                 {"water", "4 qt"},
                                 {"water", "3.8 L"},
                                 {"acid", "2 tbsp bottled lemon juice per quart"},
                                 {"vinegar", "5 %"},
                                 {"solids", "1/2"},
                                 {"solids", "50 %"},
                                 {"prepared", "[beans rehydrated, boiled 5 min]"},
                                 {"prepared", "jars sterilized"},
                                 {"held", "{for: 14 h, at: 38 F}"},
                                 {"held", "{at: 4 C}"},
                                 {"batch", "9 qt"},
                                 {"batch", "8.5 L"},
                                 {"jars", "9"},
                                 {"jars", "9999"},
                                 {"from", "20 lb tomatoes"},
                                 {"from", "1/2 bushel of apples"},
                                 {"from", "9kg"},
                                 {"keep-back", "2 qt"},
                                 {"keep-back", "0 qt"},
                                 {"canner", "{quarts: 7, pints: 9, volume: 16 qt}"},
                                 {"canner", "{volume: 15 L}"},
                                 {"start", "14:30"},
                                 {"start", "00:00"},
                                 {"finish-by", "23:59"}};

constexpr keyed bad_values[] = {
    {"title", "\"\"", "`title` takes one line of text"},
    {"title", "[a, b]", "`title` takes one value"},
    {"lot", "{a: b}", "`lot` takes one value"},
    {"date", "2026-02-29", "`2026-02-29` is no date"},
    {"date", "1900-02-29", "`1900-02-29` is no date"},
    {"date", "2026-13-01", "`2026-13-01` is no date"},
    {"date", "2026-00-10", "`2026-00-10` is no date"},
    {"date", "2026-04-31", "`2026-04-31` is no date"},
    {"date", "2026-04-00", "`2026-04-00` is no date"},
    {"date", "2026-8-14", "`2026-8-14` is no date"},
    {"date", "08/14/2026", "`08/14/2026` is no date"},
    {"date", "2026-08-14T10:00", "`2026-08-14T10:00` is no date"},
    {"food", "[corn, peas]", "`food` takes one value"},
    {"form", "\" \"", "`form` takes one line of text"},
    {"as-published", "maybe", "`maybe` is neither true nor false"},
    {"as-published", "1", "`1` is neither true nor false"},
    {"recipe", "[soup.txt]", "`recipe` takes one value"},
    {"recipe", "\"\"", "`recipe` takes one line of text"},
    {"steps", "[]", "`steps` is empty"},
    {"steps", "{boil: 5 min}", "`steps` takes a list"},
    {"yield", "[9 pints]", "`yield` takes one value"},
    {"ingredients", "[]", "`ingredients` is empty"},
    {"ingredients", "\"\"", "`ingredients` takes one line of text"},
    {"pack", "warm", "`warm` is no pack"},
    {"jar", "12", "`12` has no unit"},
    {"jar", "0 oz", "the jar is empty"},
    {"jar", "-1", "the amount `-1` has a sign"},
    {"jar", "1,5", "`1,5` has a comma that does not group thousands"},
    {"method", "[pressure]", "`method` takes one value"},
    {"gauge", "both", "`both` is no gauge"},
    {"gauge-error", "+1", "`+1` has no unit"},
    {"pressure", "11", "`11` has no unit"},
    {"pressure", "0 psi", "`0 psi` is not above zero"},
    {"pressure", "-11 psi", "`-11 psi` is not above zero"},
    {"time", "75", "`75` has no unit"},
    {"time", "0 min", "`0 min` is not above zero"},
    {"time", "-5 min", "the amount `-5 min` has a sign"},
    {"time", "1:15", "`1:15` has a unit that is not known here"},
    {"temperature", "182", "`182` has no unit"},
    {"altitude", "4600", "`4600` has no unit"},
    {"altitude", "high", "`high` is not an amount"},
    {"headspace", "1", "`1` has no unit"},
    {"headspace", "1,5 in", "`1,5 in` has a comma that does not group thousands"},
    {"headspace", "1/0 in", "`1/0 in` divides by zero"},
    {"vent", "10", "`10` has no unit"},
    {"heat-up", "20", "`20` has no unit"},
    {"water", "4", "`4` has no unit"},
    {"acid", "[lemon]", "`acid` takes one value"},
    {"vinegar", "strong", "`strong` is not an amount"},
    {"solids", "half", "`half` is not an amount"},
    {"prepared", "[]", "`prepared` is empty"},
    {"held", "14 h", "`held` takes its parts in braces"},
    {"held", "[14 h]", "`held` takes its parts in braces"},
    {"held", "{}", "`held` takes its parts in braces"},
    {"batch", "9", "`9` has no unit"},
    {"batch", "0 qt", "`0 qt` is not above zero"},
    {"jars", "0", "`0` is no count"},
    {"jars", "07", "`07` is no count"},
    {"jars", "7.0", "`7.0` is no count"},
    {"jars", "-7", "`-7` is no count"},
    {"jars", "7 jars", "`7 jars` is no count"},
    {"jars", "10000", "`10000` is no count"},
    {"from", "20 tomatoes", "`20 tomatoes` is no amount of fresh food"},
    {"from", "40 oz beans", "`40 oz beans` is no amount of fresh food"},
    {"keep-back", "2", "`2` has no unit"},
    {"keep-back", "-2 qt", "the amount `-2 qt` has a sign"},
    {"canner", "7", "`canner` takes its parts in braces"},
    {"start", "9:30", "`9:30` is no time of day"},
    {"start", "24:00", "`24:00` is no time of day"},
    {"start", "14:60", "`14:60` is no time of day"},
    {"start", "14.30", "`14.30` is no time of day"},
    {"start", "14:30:00", "`14:30:00` is no time of day"},
    {"finish-by", "6 pm", "`6 pm` is no time of day"}};

std::string line_with(const keyed& k) {
  return std::string(k.key) + ": " + std::string(k.value) + "\n";
}

const char* full_plan =
    "title: Hunter's beans\n"
    "lot: a-7\n"
    "date: 2026-08-14\n"
    "food: green beans\n"
    "form: 1-inch-pieces\n"
    "as-published: yes\n"
    "ingredients: [7 lb green beans, 7 tsp salt]\n"
    "pack: raw\n"
    "jar: 12 oz\n"
    "method: pressure\n"
    "gauge: dial\n"
    "gauge-error: +1 psi\n"
    "pressure: 12 psi\n"
    "time: 1 h 15 min\n"
    "temperature: 182 F\n"
    "altitude: 4,600 ft\n"
    "headspace: 1 in\n"
    "vent: 10 min\n"
    "heat-up: 20 min\n"
    "water: 4 qt\n"
    "acid: 2 tbsp bottled lemon juice per quart\n"
    "vinegar: 5 %\n"
    "solids: 1/2\n"
    "prepared: [beans rehydrated]\n"
    "held: {for: 14 h, at: 38 F}\n"
    "batch: 9 qt\n"
    "jars: 9\n"
    "keep-back: 2 qt\n"
    "canner: {quarts: 7, pints: 9, volume: 16 qt}\n"
    "start: 14:30\n"
    "finish-by: 18:00\n";

}  // namespace

TEST_SUITE_BEGIN("read_plan");

TEST_CASE("every key of a plan has good and bad values below") {
  for (const jarproof::plan_key& key : jarproof::plan_keys) {
    CAPTURE(key.name);
    const auto is_it = [&](const keyed& k) { return k.key == key.name; };
    CHECK(std::any_of(std::begin(good_values), std::end(good_values), is_it));
    CHECK(std::any_of(std::begin(bad_values), std::end(bad_values), is_it));
  }
}

TEST_CASE("good values are read") {
  for (const keyed& k : good_values) CHECK(faults_of(line_with(k)) == "");
}

TEST_CASE("bad values are refused at their place, with what to write") {
  for (const keyed& k : bad_values) {
    const std::string faults = faults_of(line_with(k));
    const std::string head = "1:" + std::to_string(k.key.size() + 3) + " " + std::string(k.key) +
                             " | " + std::string(k.message) + " | ";
    CAPTURE(k.value);
    CAPTURE(faults);
    CHECK(begins(faults, head));
    CHECK(faults.size() > head.size() + 1);
    CHECK(std::count(faults.begin(), faults.end(), '\n') == 1);
  }
}

TEST_CASE("the example of every key is a value that is read") {
  for (const jarproof::plan_key& key : jarproof::plan_keys) {
    CHECK(faults_of(std::string(key.name) + ": " + std::string(key.example) + "\n") == "");
    CHECK(jarproof::find_key(key.name) == &key);
  }
  CHECK(jarproof::find_key("temprature") == nullptr);
}

TEST_CASE("what a plan says stands in the plan, with its words and its place") {
  const plan p = plan_from(full_plan);
  CHECK(p.source == "plan.yaml");
  CHECK(place_of(p) == "1:1");
  CHECK(p.title->text == "Hunter's beans");
  CHECK(p.lot->text == "a-7");
  CHECK(p.date->text == "2026-08-14");
  CHECK(p.food->text == "green beans");
  CHECK(place_of(*p.food) == "4:7");
  CHECK(p.form->text == "1-inch-pieces");
  CHECK(p.as_published->value);
  REQUIRE(p.ingredients.size() == 2);
  CHECK(p.ingredients[1].text == "7 tsp salt");
  CHECK(place_of(p.ingredients[1]) == "7:33");
  CHECK(p.pack->text == "raw");
  CHECK(p.jar->text == "12 oz");
  CHECK(p.jar_volume->value == 12'000'000);
  CHECK(p.method->text == "pressure");
  CHECK(p.gauge->text == "dial");
  CHECK(p.gauge_error->value.value == 1'000'000);
  CHECK(p.pressure->value.value == 12'000'000);
  CHECK(p.pressure->text == "12 psi");
  CHECK(place_of(*p.pressure) == "13:11");
  CHECK(p.time->value.value == 4'500'000);
  CHECK(p.temperature->value.value == 182'000);
  CHECK(p.altitude->value.value == 4'600'000);
  CHECK(p.headspace->value.value == 25'400'000);
  CHECK(p.vent->value.value == 600'000);
  CHECK(p.heat_up->value.value == 1'200'000);
  CHECK(p.water->value.value == 128'000'000);
  CHECK(p.acid->text == "2 tbsp bottled lemon juice per quart");
  CHECK(p.vinegar->value.value == 50'000);
  CHECK(p.solids->value.value == 500'000);
  REQUIRE(p.prepared.size() == 1);
  CHECK(p.prepared[0].text == "beans rehydrated");
  CHECK(place_of(*p.held) == "25:7");
  CHECK(p.held->value.duration->value.value == 50'400'000);
  CHECK(p.held->value.temperature->value.value == 38'000);
  CHECK(p.held->value.highest_temperature == 38'000);
  CHECK(p.batch->value.value == 288'000'000);
  CHECK(p.jars->value == 9);
  CHECK(p.keep_back->value.value == 64'000'000);
  CHECK(p.canner->value.quarts->value == 7);
  CHECK(p.canner->value.pints->value == 9);
  CHECK(p.canner->value.volume->value.value == 512'000'000);
  CHECK(place_of(*p.canner->value.volume) == "29:39");
  CHECK(p.start->text == "14:30");
  CHECK(p.finish_by->text == "18:00");
}

TEST_CASE("what a plan does not say is absent") {
  const plan p = plan_from("food: corn\n");
  CHECK_FALSE(p.title);
  CHECK_FALSE(p.as_published);
  CHECK(p.ingredients.empty());
  CHECK_FALSE(p.pack);
  CHECK_FALSE(p.jar_volume);
  CHECK_FALSE(p.pressure);
  CHECK_FALSE(p.altitude);
  CHECK_FALSE(p.held);
  CHECK_FALSE(p.canner);
}

TEST_CASE("a named jar has no volume of its own, an amount has one") {
  CHECK_FALSE(plan_from("jar: pint\n").jar_volume);
  CHECK_FALSE(plan_from("jar: half-gallon\n").jar_volume);
  CHECK(plan_from("jar: 1/2 pint\n").jar_volume->value == 8'000'000);
  CHECK(plan_from("jar: \u00BD gallon\n").jar_volume->value == 64'000'000);
  CHECK(plan_from("jar: 500 mL\n").jar_volume->metric);
}

TEST_CASE("every jar, method and form of the edition can be written by its id") {
  const jarproof::edition& rules = fixtures::loaded_edition();
  REQUIRE_FALSE(rules.jars.empty());
  for (const auto& jar : rules.jars) CHECK(faults_of("jar: " + std::string(jar.id) + "\n") == "");
  for (const auto& m : rules.methods) CHECK(faults_of("method: " + std::string(m.id) + "\n") == "");
  for (const auto& f : rules.forms) CHECK(faults_of("form: " + std::string(f.id) + "\n") == "");
}

TEST_CASE("a jar in words that nobody knows is read, and then not accepted") {
  const jarproof::edition& rules = fixtures::loaded_edition();
  const auto judged = [&](std::string_view jar) {
    const std::string text = fixtures::plan_text(fixtures::beans(), {{"jar", std::string(jar)}});
    return jarproof::check(plan_from(text), rules).verdict;
  };
  REQUIRE(judged("pint") == jarproof::verdict::accepted);
  for (const std::string_view jar :
       {"-1 pint", "12 stone", "1,5 pints", "1/0 pint", "big", "\u00BD", "pint pint"}) {
    CAPTURE(jar);
    CHECK(judged(jar) != jarproof::verdict::accepted);
  }
}

TEST_CASE("conversions are rounded against the cook") {
  CHECK(plan_from("altitude: 609 m\n").altitude->value.value == 1'998'032);
  CHECK(plan_from("pressure: 69 kPa\n").pressure->value.value == 10'007'603);
  CHECK(plan_from("time: 1/7 min\n").time->value.value == 8'571);
  CHECK(plan_from("jar: 1 tsp\n").jar_volume->value == 166'667);
  CHECK(plan_from("solids: 1/3\n").solids->value.value == 333'334);
  CHECK(plan_from("vinegar: 14/3 %\n").vinegar->value.value == 46'666);
  const auto held = plan_from("held: {for: 1/7 min, at: 4.0001 C}\n").held->value;
  CHECK(held.duration->value.value == 8'572);
  CHECK(held.temperature->value.value == 39'200);
  CHECK(held.highest_temperature == 39'201);
}

TEST_CASE("a vinegar of `5` is refused: it is neither 5 % nor 500 %") {
  CHECK(fault_places_of("vinegar: 5\n") == "1:10 vinegar\n");
  CHECK(fault_places_of("vinegar: 4\n") == "1:10 vinegar\n");
}

TEST_CASE("an altitude, gauge error or temperature of `-` is no number") {
  CHECK(fault_places_of("altitude: \"-\"\n") == "1:11 altitude\n");
  CHECK(fault_places_of("altitude: +\n") == "1:11 altitude\n");
  CHECK(fault_places_of("gauge-error: \"-\"\n") == "1:14 gauge-error\n");
  CHECK(fault_places_of("held: {for: 1 h, at: \"-\"}\n") == "1:22 held.at\n");
}

TEST_CASE("all errors of a plan are told at once, in the order of the text") {
  CHECK(faults_of("food: corn\n"
                  "pack: warm\n"
                  "presure: 11 psi\n"
                  "time: 85\n"
                  "jars: 0\n"
                  "held: {for: 2, att: 38 F}\n") ==
        "2:7 pack | `warm` is no pack | write raw or hot\n"
        "3:1 presure | `presure` is no key of a plan | did you mean `pressure`?\n"
        "4:7 time | `85` has no unit | write the unit: `85 min` (min or h)\n"
        "5:7 jars | `0` is no count | write a whole number without a unit, such as `7`\n"
        "6:13 held.for | `2` has no unit | write the unit: `2 min` (min or h)\n"
        "6:16 held.att | `att` is no key of `held` | did you mean `at`?\n");
}

TEST_CASE("a misspelt key is answered with the nearest one") {
  struct slip {
    std::string_view written, meant;
  };
  for (const slip& s : {slip{"presure", "pressure"}, slip{"altitud", "altitude"},
                        slip{"gauge_error", "gauge-error"}, slip{"Food", "food"},
                        slip{"tiem", "time"}, slip{"ingredient", "ingredients"},
                        slip{"head space", "headspace"}, slip{"as published", "as-published"}}) {
    CHECK(faults_of(std::string(s.written) + ": x\n") ==
          "1:1 " + std::string(s.written) + " | `" + std::string(s.written) +
              "` is no key of a plan | did you mean `" + std::string(s.meant) + "`?\n");
  }
}

TEST_CASE("a key that is near none is answered with all keys") {
  const std::string faults = faults_of("colour: green\n");
  CHECK(begins(faults, "1:1 colour | `colour` is no key of a plan | use one of: title, "));
  for (const jarproof::plan_key& key : jarproof::plan_keys) {
    CHECK(faults.find(key.name) != std::string::npos);
  }
}

TEST_CASE("the parts of a canner are checked like keys") {
  CHECK(faults_of("canner: {quart: 7, pints: 9 pints, volume: 16}\n") ==
        "1:10 canner.quart | `quart` is no key of `canner` | did you mean `quarts`?\n"
        "1:27 canner.pints | `9 pints` is no count | write a whole number without a unit, such as "
        "`7`\n"
        "1:44 canner.volume | `16` has no unit | write the unit: `16 qt` (oz, cup, pt, qt, gal, mL "
        "or L)\n");
  CHECK(fault_places_of("canner:\n  quarts: 0\n  volume: 0 qt\n") ==
        "2:11 canner.quarts\n3:11 canner.volume\n");
  CHECK(begins(faults_of("canner: {makers-name: x}\n"),
               "1:10 canner.makers-name | `makers-name` is no key of `canner` | "
               "use one of: quarts, pints and volume"));
}

TEST_CASE("maps may be written in lines of their own") {
  const plan p = plan_from("held:\n  for: 30 min\n  at: 70 F\ncanner:\n  quarts: 7\n");
  CHECK(p.held->value.duration->value.value == 1'800'000);
  CHECK(place_of(*p.held->value.temperature) == "3:7");
  CHECK(p.canner->value.quarts->value == 7);
  CHECK_FALSE(p.canner->value.volume);
}

TEST_CASE("a value that is missing points at its key") {
  for (const jarproof::plan_key& key : jarproof::plan_keys) {
    const std::string name(key.name);
    for (const std::string_view nothing : {"", " ~", " null", "  # later"}) {
      const std::string text = "\n" + name + ":" + std::string(nothing) + "\n\n";
      CHECK(begins(faults_of(text), "2:1 " + name + " | `" + name + "` "));
    }
  }
  CHECK(fault_places_of("food: corn\ncanner:\n  quarts:\n  pints: 9\nheld: {for: , at: 38 F}\n") ==
        "3:3 canner.quarts\n5:8 held.for\n");
}

TEST_CASE("quoted null is a word") {
  CHECK(plan_from("food: \"null\"\n").food->text == "null");
  CHECK(plan_from("food: '~'\n").food->text == "~");
}

TEST_CASE("a value that is one literal line is that line") {
  const plan p = plan_from("food: |\n  green beans\n");
  CHECK(p.food->text == "green beans");
  CHECK((place_of(*p.food) == "1:7" || place_of(*p.food) == "2:3"));
  const plan below = plan_from("food: |\n\n  green beans\n");
  CHECK((place_of(*below.food) == "1:7" || place_of(*below.food) == "3:3"));
}

TEST_CASE("blanks around a value do not count") {
  CHECK(plan_from("food: \"  green beans \"\n").food->text == "green beans");
  CHECK(plan_from("pack: ' Raw '\n").pack->text == "raw");
}

TEST_CASE("control characters that escapes would bring in are refused") {
  for (const std::string_view escape : {"\\e[31m", "\\r", "\\0", "\\x07", "\\u009b31m", "\\x7f"}) {
    CHECK(fault_places_of("food: corn\ntitle: \"a" + std::string(escape) + "b\"\n") ==
          "2:8 title\n");
  }
}

TEST_CASE("what is no map is no plan") {
  const std::string no_plan =
      " | this is no plan | write a plan as keys with values, for example `food: green beans`\n";
  CHECK(faults_of("green beans\n") == "1:1" + no_plan);
  CHECK(faults_of("food:green beans\n") == "1:1" + no_plan);
  CHECK(faults_of("- food\n- pack\n") == "1:1" + no_plan);
  CHECK(faults_of("---\n~\n") == "2:1" + no_plan);
  CHECK(faults_of("{}\n") ==
        "1:1 | the plan is empty | write at least `food`, `pack`, `jar`, "
        "`method`, `time` and `altitude`\n");
}

TEST_CASE("a plan starts where its document does") {
  const auto documents = fixtures::documents_of("food: corn\n---\n\n\n  food: peas\n");
  REQUIRE(documents.size() == 2);
  CHECK(place_of(*jarproof::read_plan(documents[0])) == "1:1");
  CHECK(place_of(*jarproof::read_plan(documents[1])) == "5:3");
}

TEST_SUITE_END();

}  // namespace read_plan_tests
