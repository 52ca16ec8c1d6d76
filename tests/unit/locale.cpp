// A locale with a decimal comma changes nothing: not what is read, not what is written.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <clocale>
#include <cstdlib>
#include <locale>
#include <stdexcept>
#include <string>

#include "jarproof/format/charts.hpp"
#include "jarproof/format/html_check.hpp"
#include "jarproof/json.hpp"
#include "support/fixtures.hpp"
#include "support/readings.hpp"
#include "support/small_edition.hpp"

namespace locale_tests {
namespace {

bool comma_expected() {
  const char* wanted = std::getenv("JARPROOF_EXPECT_COMMA");
  return wanted != nullptr && std::string(wanted) == "1";
}

/// Sets the locale of C and of C++; a C++ library may know only `C`.
void use_locale(const char* name) {
  std::setlocale(LC_ALL, name);
  try {
    std::locale::global(std::locale(name));
  } catch (const std::runtime_error&) {
    std::setlocale(LC_ALL, name);
  }
}

/// Where a comma is expected, the whole run of the program stands under the user's locale, so that
/// every other suite is a test of it too.
const bool from_the_start = [] {
  if (comma_expected()) use_locale("");
  return true;
}();

/// A locale while it lives, then what was before.
class under_locale {
 public:
  explicit under_locale(const char* name)
      : c_(std::setlocale(LC_ALL, nullptr)), cpp_(std::locale()) {
    use_locale(name);
  }
  under_locale(const under_locale&) = delete;
  under_locale& operator=(const under_locale&) = delete;
  ~under_locale() {
    std::locale::global(cpp_);
    std::setlocale(LC_ALL, c_.c_str());
  }

 private:
  std::string c_;
  std::locale cpp_;
};

/// The same work under `C` and under the user's locale.
template <class Work>
void check_same(Work&& work) {
  std::string plain;
  std::string local;
  {
    const under_locale with("C");
    plain = work();
  }
  {
    const under_locale with("");
    local = work();
  }
  CHECK_FALSE(plain.empty());
  const bool same = plain == local;  // the texts may be long
  CHECK(same);
}

std::string described(const jarproof::amount_reading& r) {
  return std::to_string(r.value) + " " + r.message + " " + r.write;
}

std::string beans() {
  return fixtures::plan_text(fixtures::beans(),
                             {{"headspace", "1.25 in"}, {"title", "\u00D1and\u00FA"}});
}

}  // namespace

TEST_SUITE_BEGIN("locale");

TEST_CASE("where a comma is expected, the locale has one") {
  REQUIRE(from_the_start);
  const under_locale with("");
  const std::string point = std::localeconv()->decimal_point;
  if (comma_expected()) {
    REQUIRE(point == ",");
  } else {
    CHECK_FALSE(point.empty());
  }
}

TEST_CASE("amounts are read the same") {
  using jarproof::dimension;
  using jarproof::read_amount;
  const under_locale with("");
  CHECK(read_amount("1.5 in", dimension::length).value == 38'100'000);
  CHECK(read_amount("0.7 bar", dimension::pressure).value == 10'152'641);
  CHECK(read_amount("4,600 ft", dimension::altitude).value == 4'600'000);
  CHECK_FALSE(read_amount("1,5 in", dimension::length).ok());
  check_same([] {
    std::string out;
    for (const char* text :
         {"1.5 in", "1,5 in", "1.234,5 in", "1 234.5 in", "1,234.5 in", "\u00BD in"}) {
      out += described(read_amount(text, dimension::length)) + "\n";
    }
    return out;
  });
}

TEST_CASE("plans are read the same from YAML and from JSON") {
  check_same([] {
    return beans() + fixtures::faults_of(beans()) + fixtures::faults_of("time: 1,5\nvent: 75\n");
  });
  check_same([] {
    const auto root =
        fixtures::root_of("{\"a\": 1.50, \"b\": 1e-3, \"c\": 12345678.9}", "plan.json");
    return root.members[0].value.text + " " + root.members[1].value.text + " " +
           root.members[2].value.text;
  });
}

TEST_CASE("reports are written the same as JSON and as text") {
  check_same(
      [] { return jarproof::json_of({fixtures::judged(beans())}, jarproof::builtin_edition()); });
  check_same([] { return jarproof::json_line_of(fixtures::full_report()); });
  check_same(
      [] { return jarproof::text_of(fixtures::judged(beans()), jarproof::builtin_edition()); });
  check_same([] {
    return jarproof::text_of(fixtures::full_report(), fixtures::small_edition, {60, true});
  });
}

TEST_CASE("pages and their pictures are written the same") {
  check_same(
      [] { return jarproof::html_of({fixtures::judged(beans())}, jarproof::builtin_edition()); });
  check_same([] {
    jarproof::page_chart c;
    c.id = "run";
    c.courses = {{{1'234'567, 15'250}, {2'000'000, 14'900}}};
    c.levels = {{15'500, "required"}};
    c.events = {{1'500'500, "steam"}};
    jarproof::html_writer w;
    jarproof::write_chart(w, c);
    return w.take();
  });
}

TEST_CASE("numbers are written the same") {
  check_same([] {
    return jarproof::grouped(1'234'567) + jarproof::decimal_of_thousandths(1'250) +
           jarproof::altitude_text(4'600) + jarproof::pressure_text(15) +
           jarproof::headspace_text(1'250) + jarproof::time_text(75);
  });
}

TEST_CASE("rules are loaded the same") {
  check_same([] {
    const auto loaded = jarproof::load_edition(fixtures::rule_files());
    REQUIRE(loaded);
    return jarproof::embedded_source(loaded->view());
  });
}

TEST_SUITE_END();

}  // namespace locale_tests
