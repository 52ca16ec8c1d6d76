// The plan of a canning day for a person, as wide as a phone.
//
//   std::string text = jarproof::day_text_of(day, edition, jarproof::text_style{});
// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/day.hpp"
#include "jarproof/detail/day_words.hpp"
#include "jarproof/format/numbers.hpp"
#include "jarproof/format/text.hpp"

namespace jarproof {

namespace detail {

/// `14:30`, and on later days `00:30 (+1 day)`; without a time of day `0:45` from the start.
[[nodiscard]] inline std::string clock_text(const day_plan& d, int minute) {
  if (!d.start_min) return std::to_string(minute / 60) + ":" + two_digits(minute % 60);
  const int at = *d.start_min + minute;
  std::string out = two_digits(at / 60 % 24) + ":" + two_digits(at % 60);
  const int days = at / minutes_a_day;
  if (days > 0) out += " (+" + std::to_string(days) + (days == 1 ? " day)" : " days)");
  return out;
}

[[nodiscard]] inline std::string hours_text(int minutes) {
  if (minutes < 60) return std::to_string(minutes) + " min";
  std::string out = std::to_string(minutes / 60) + " h";
  if (minutes % 60 != 0) out += " " + std::to_string(minutes % 60) + " min";
  return out;
}

/// `8 h to 9 h 30 min`, one of them where both are the same.
[[nodiscard]] inline std::string hours_range(int least, int most) {
  return least == most ? hours_text(most) : hours_text(least) + " to " + hours_text(most);
}

/// A volume of food with the millilitres: `13.5 fl oz (400 mL)`, both rounded down.
[[nodiscard]] inline std::string floz_text(std::int64_t millionths) {
  const std::int64_t tenths = millionths / 100'000;
  // 1 fl oz = 29.57353 mL (NIST SP 811, appendix B.8).
  const std::int64_t ml = millionths / 1'000 * 2'957'353 / 100'000'000;
  return decimal_of_thousandths(tenths * 100) + " fl oz (" + grouped(ml) + " mL)";
}

[[nodiscard]] inline std::string range_of_thousandths(std::int64_t low, std::int64_t high) {
  return low == high ? decimal_of_thousandths(high)
                     : decimal_of_thousandths(low) + " to " + decimal_of_thousandths(high);
}

/// `10 to 14 lb of apples (a quarter bushel)`.
[[nodiscard]] inline std::string food_text(const day_food& f) {
  // 1 lb = 0.45359237 kg (NIST SP 811, appendix B.8), up to the next 100 g.
  const auto kg = [](std::int64_t lb) {
    return divide(lb * 45'359'237, 10'000'000'000, rounding::up) * 100;
  };
  std::string out = range_of_thousandths(f.least_lb, f.most_lb) + " lb of " + f.name + " (" +
                    range_of_thousandths(kg(f.least_lb), kg(f.most_lb)) + " kg)";
  if (f.most_bushels > 0) {
    out += ", or " + range_of_thousandths(f.least_bushels, f.most_bushels) +
           (f.most_bushels > 1'000 ? " bushels" : " bushel");
  }
  return out;
}

/// `8 pint`, and in a mixed load `4 pint of Salsa + 3 quart of Tomatoes`.
[[nodiscard]] inline std::string load_jars_text(const day_plan& d, const day_load& l) {
  std::string out;
  for (const day_load_part& p : l.parts) {
    out += (out.empty() ? "" : " + ") + std::to_string(p.count) + " " +
           d.batches[p.batch].jars->jar + (p.count == 1 ? " jar" : " jars");
    if (d.batches.size() > 1) out += " of " + d.batches[p.batch].name;
  }
  return out;
}

class day_writer {
 public:
  day_writer(const day_plan& d, const edition& rules, text_style style)
      : d_(d), rules_(rules), style_(style), w_(style) {}

  [[nodiscard]] std::string take() {
    for (const day_batch& b : d_.batches) {
      if (b.judged.verdict != verdict::accepted) write_refused(b);
    }
    for (const day_batch& b : d_.batches) {
      if (b.judged.verdict == verdict::accepted) write_jars(b);
    }
    if (!d_.loads.empty()) write_loads();
    for (const std::string& text : d_.unsaid) w_.paragraph(text, "  Note: ", 8);
    for (const day_batch& b : d_.batches) {
      if (b.judged.verdict == verdict::accepted) write_card(b);
    }
    return out_ + w_.take();
  }

 private:
  const day_plan& d_;
  const edition& rules_;
  text_style style_;
  text_writer w_;
  std::string out_;
  bool begun_ = false;

  void write_refused(const day_batch& b) {
    out_ += text_of(b.judged, rules_, style_);
    text_writer w(style_);
    w.blank();
    w.paragraph("No step card and no loads: only a plan that is accepted gets them.");
    w.blank();
    out_ += w.take();
  }

  /// A blank line above all but the first.
  void section() {
    if (begun_) w_.blank();
    begun_ = true;
  }

  void title(std::string_view what, const day_batch& b) {
    w_.heading(
        std::string(what) + (d_.batches.size() > 1 || !b.judged.title.empty() ? ": " + b.name : ""),
        "1");
  }

  void write_jars(const day_batch& b) {
    section();
    w_.heading(headline_of(b.judged), colour_of(verdict::accepted));
    w_.paragraph(
        b.judged.title.empty() ? b.judged.source : b.judged.title + " (" + b.judged.source + ")",
        "  ", 2);
    if (b.jars) {
      const day_jars& j = *b.jars;
      std::string count = std::to_string(j.count) + " " + j.jar + (j.count == 1 ? " jar" : " jars");
      if (j.most > j.count) {
        count = "at least " + count + ", " + std::to_string(j.most) + " at most: have " +
                std::to_string(j.most - j.count) + " more ready";
      }
      w_.row("jars", count);
      w_.row("each holds", floz_text(j.fill_least) + " with a wide mouth to " +
                               floz_text(j.fill_most) +
                               " with a regular one (estimate: jar less the headspace as a "
                               "cylinder of the mouth)");
      if (j.available > 0) w_.row("to fill", floz_text(j.available));
      if (j.left > 0) {
        std::string text = floz_text(j.left) + ", by regular mouths.";
        for (const day_step& s : b.left) text += " " + s.says;
        w_.row("left over", text);
      }
    }
    if (b.produce) w_.row("fresh food", food_text(*b.produce));
    for (const std::string& text : b.unsaid) w_.paragraph(text, "  Not said: ", 12);
    for (const finding& f : b.judged.findings) {
      if (f.level == level::warning) write_finding(w_, b.judged, f, false);
    }
    for (const finding& f : b.findings) write_finding(w_, b.judged, f, false);
  }

  void write_loads() {
    section();
    std::string sizes;
    for (const day_load& l : d_.loads)
      sizes += (sizes.empty() ? "" : " + ") + std::to_string(l.jars);
    w_.heading(d_.loads.size() == 1
                   ? std::string("One load of ") + std::to_string(d_.loads.front().jars)
                   : std::to_string(d_.loads.size()) + " loads: " + sizes,
               "1");
    for (const std::string& text : d_.apart) w_.paragraph(text, "  ", 2);
    w_.row("all", hours_range(d_.least_total_min, d_.total_min) + ", planned with the longest");
    w_.row("fuel on", hours_range(d_.least_fuel_min, d_.fuel_min));
    if (d_.start_min) {
      w_.row("start", (d_.date.empty() ? "" : d_.date + " ") + clock_text(d_, 0) +
                          ", the first jars filled and on the heat");
      w_.row("end", clock_text(d_, d_.total_min) + ", the last jars come out");
    } else {
      w_.row("clock",
             "hours and minutes from when the first jars are on the heat; with `start` or "
             "`finish-by` times of day");
    }
    for (const day_load& l : d_.loads) {
      w_.blank();
      w_.heading("Load " + std::to_string(l.number) + ": " + load_jars_text(d_, l) +
                     " (the canner holds " + std::to_string(l.holds) + ")",
                 "1");
      for (const day_step& s : l.remarks) w_.paragraph(s.says, "  ", 2);
      for (const day_stage& s : l.stages) {
        std::string minutes = std::to_string(s.to_min - s.from_min) + " min";
        if (s.least_min != s.to_min - s.from_min)
          minutes = std::to_string(s.least_min) + " to " + minutes;
        w_.paragraph(s.what + (s.id == "process" ? "" : ", " + minutes),
                     "  " + clock_text(d_, s.from_min) + "  ", 9);
      }
      if (!l.stages.empty()) {
        const day_stage& last = l.stages.back();
        if (last.id != "next-load")
          w_.paragraph("lift the jars out", "  " + clock_text(d_, last.to_min) + "  ", 9);
      }
    }
  }

  void steps(const std::vector<day_step>& all, bool numbered) {
    int number = 0;
    for (const day_step& s : all) {
      const std::string head = numbered ? std::to_string(++number) + "." : std::string("-");
      std::string first = "  " + head;
      first.resize(numbered ? 6 : 4, ' ');
      w_.paragraph(s.says, first, first.size());
      for (const std::string& part : s.parts) w_.paragraph(part, "      - ", 8);
    }
  }

  void write_card(const day_batch& b) {
    section();
    title("Step card", b);
    steps(b.steps, true);
    w_.blank();
    w_.heading("Mind", "1");
    steps(b.cautions, false);
    w_.blank();
    w_.heading("Label", "1");
    for (const day_label_line& l : b.label) w_.row(l.name, l.value);
    w_.blank();
    w_.heading("After " + number_text(rules_, "cool-least") + " to " +
                   number_text(rules_, "cool-most") + " hours",
               "1");
    steps(b.check_after, false);
    w_.blank();
    w_.heading("When a jar is opened", "1");
    steps(b.opening, false);
    std::vector<std::string> sources;
    if (b.judged.required) sources = b.judged.required->sources;
    if (!sources.empty()) w_.paragraph(sources_text(sources), "  Source: ", 10);
  }
};

}  // namespace detail

/// The whole day: what is not accepted first, then jars, loads and clock, then the step cards.
[[nodiscard]] inline std::string day_text_of(const day_plan& day, const edition& rules,
                                             text_style style = {}) {
  return detail::day_writer(day, rules, style).take();
}

}  // namespace jarproof
