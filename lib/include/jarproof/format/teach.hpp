// What one check is about: as text for a terminal, as a Markdown page for docs/checks/.
// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "jarproof/detail/findings.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/text.hpp"

namespace jarproof {

namespace detail {

/// True where the check is about runs alone: every example has a log.
[[nodiscard]] inline bool of_runs_alone(const check_rule& c) noexcept {
  for (const list<example> examples : {c.good, c.bad}) {
    for (const example& x : examples) {
      if (x.log.empty()) return false;
    }
  }
  return !c.bad.empty();
}

[[nodiscard]] inline std::string effect_on(const std::string& what, std::string_view outcome,
                                           std::string_view level) {
  return outcome == "rejects"    ? "rejects the " + what
         : outcome == "untested" ? "makes the " + what + " untested: no published process covers it"
         : outcome == "incomplete" ? "makes the " + what + " incomplete"
                                   : "does not change the verdict (" + std::string(level) + ")";
}

/// What a check does to the verdict, in words; a check may also stand for a fact left unsaid.
[[nodiscard]] inline std::string effect_of(const check_rule& c) {
  const std::string what = of_runs_alone(c) ? "run" : "plan";
  std::string out = effect_on(what, c.outcome, c.level);
  if (!c.unsaid.empty() && c.outcome != "incomplete")
    out += "; left " + std::string(what == "run" ? "open" : "unsaid") + ", it makes the " + what +
           " incomplete";
  if (!c.log_says.empty()) {
    out +=
        "; of a run log it " + effect_on("run", c.log_outcome.empty() ? c.outcome : c.log_outcome,
                                         c.log_level.empty() ? c.level : c.log_level);
  }
  return out;
}

/// The lines of a plan, each indented.
[[nodiscard]] inline std::string indented(std::string_view text, std::string_view by) {
  std::string out;
  while (!text.empty()) {
    const std::size_t end = text.find('\n');
    out += std::string(by) + std::string(text.substr(0, end)) + "\n";
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
  }
  return out;
}

/// A sentence of a check file as it stands in a text about the check: general words in place of a
/// plan's own.
[[nodiscard]] inline std::string without_placeholders(std::string_view sentence) {
  plan_words words;
  words.food = "the food";
  words.jar = "the listed";
  words.pack = "the published";
  words.altitude = "the altitude of the kitchen";
  words.method = "the method";
  return filled(sentence,
                {"what the plan says", "what the process asks for", "", "", "the listed words",
                 "the moment that its method names"},
                words, "the fact");
}

}  // namespace detail

/// Teaches one check: what, why, what to do, a good and a bad example, sources.
[[nodiscard]] inline std::string why_text(const check_rule& c, const edition& rules,
                                          text_style style = {}) {
  detail::text_writer w(style);
  w.heading(c.id, "1");
  w.paragraph(std::string(c.title) + ".");
  w.paragraph("It " + detail::effect_of(c) + ".");
  w.blank();
  w.paragraph(detail::without_placeholders(c.why), "Why: ", 5);
  // What to do about a slip of the pen is known only with the slip.
  const std::string fix = detail::without_placeholders(c.fix);
  if (!fix.empty()) {
    w.blank();
    w.paragraph(fix, "Do: ", 4);
  }
  std::string out = w.take();
  const auto show = [&](const example& x, std::string_view does) {
    out += "\nA " + std::string(x.log.empty() ? "plan" : "run") + " that " + std::string(does) +
           " (" + std::string(x.name) + "):\n\n" + detail::indented(x.plan, "    ");
    if (!x.log.empty()) out += "\n" + detail::indented(x.log, "    ");
  };
  if (!c.good.empty()) show(c.good[0], "passes");
  if (!c.bad.empty()) {
    show(c.bad[0], "does not");
    out += "\n";
    for (const std::string_view e : c.bad[0].expect)
      out += "    found at line" + std::string(c.bad[0].log.empty() ? ":column " : " ") +
             std::string(e) + "\n";
  }
  detail::text_writer end(style);
  end.blank();
  for (const citation& s : c.sources) end.paragraph(detail::source_text(rules, s), "Source: ", 8);
  return out + end.take();
}

/// The page of one check in docs/checks/.
[[nodiscard]] inline std::string check_page(const check_rule& c, const edition& rules) {
  std::string out = "<!-- Written from rules/checks/" + std::string(c.id) +
                    ".yaml by the build target `update`. Do not edit. -->\n# " + std::string(c.id) +
                    "\n\n" + std::string(c.title) + ".\n\n";
  const auto paragraph = [&](const std::string& text) {
    detail::text_writer w(text_style{100, false});
    w.paragraph(text);
    out += w.take();
  };
  paragraph("It " + detail::effect_of(c) + ". Since edition " + std::string(c.since) + ".");
  out += "\n## Why\n\n";
  paragraph(detail::without_placeholders(c.why));
  const std::string fix = detail::without_placeholders(c.fix);
  if (!fix.empty()) {
    out += "\n## What to do\n\n";
    paragraph(fix);
  }
  const auto shown = [&](const example& x) {
    out += "\n" + std::string(x.name) + ":\n\n```yaml\n" + detail::indented(x.plan, "") + "```\n";
    if (!x.log.empty()) out += "\n```csv\n" + detail::indented(x.log, "") + "```\n";
    if (x.expect.empty()) return;
    out +=
        "\nFound (line" + std::string(x.log.empty() ? ":column" : " of the log,") + " check):\n\n";
    for (const std::string_view e : x.expect) out += "- `" + std::string(e) + "`\n";
  };
  const std::string what = detail::of_runs_alone(c) ? "Runs" : "Plans";
  out += "\n## " + what + " that pass\n";
  for (const example& x : c.good) shown(x);
  out += "\n## " + what + " that do not\n";
  for (const example& x : c.bad) shown(x);
  out += "\n## Sources\n\n";
  for (const citation& s : c.sources) {
    const source* known = find(rules.sources, s.ref);
    const std::string text = detail::source_text(rules, s);
    out += known != nullptr && !known->url.empty()
               ? "- [" + text + "](" + std::string(known->url) + ")\n"
               : "- " + text + "\n";
  }
  return out;
}

/// The list of all checks in docs/checks/.
[[nodiscard]] inline std::string check_index(const edition& rules) {
  std::string out =
      "<!-- Written from rules/checks/ by the build target `update`. Do not edit. -->\n"
      "# Checks\n\n| check | outcome | asks |\n| --- | --- | --- |\n";
  for (const check_rule& c : rules.checks) {
    out += "| [" + std::string(c.id) + "](" + std::string(c.id) + ".md) | " +
           std::string(c.outcome) + " | " + std::string(c.title) + " |\n";
  }
  return out;
}

}  // namespace jarproof
