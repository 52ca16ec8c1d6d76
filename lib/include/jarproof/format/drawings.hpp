// Pictures that teach: the altitude bands of a process with this kitchen marked, and a jar with its
// headspace and solids to scale.
//
//   std::string svg = jarproof::bands_svg("bands", jarproof::bands_of(report, edition));
//   std::string jar = jarproof::jar_svg("jar", jarproof::jar_of(report, edition));
//
// They show what the report says and judge nothing. Words for what they show stand beside them.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/detail/svg.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/numbers.hpp"
#include "jarproof/report.hpp"

namespace jarproof {

/// One band as drawn, both ends inclusive, in feet.
struct drawn_band {
  int from_ft = 0;
  int through_ft = 0;
  int value = 0;  ///< psi or minutes
};

/// The bands of one gauge or of boiling water.
struct drawn_bands {
  std::string name;    ///< `Dial gauge`
  std::string unit;    ///< `psi` or `min`
  std::string beside;  ///< what belongs to it: `for 60 min`; may be empty
  std::vector<drawn_band> bands;
};

/// The bands of a process, and where this kitchen lies.
struct band_picture {
  int altitude_ft = 0;
  int highest_ft = 0;  ///< where the picture ends
  std::vector<drawn_bands> rows;
};

/// A jar that is filled.
struct jar_picture {
  std::string title;  ///< of the jar: `quart`
  int volume_floz = 0;
  int headspace_thousandths_in = 0;
  int solids_percent = 0;  ///< at most; 0 where the process does not say
};

namespace detail {

/// True where a published row may be the one that `q` took its numbers from.
[[nodiscard]] inline bool row_of(const table& t, const requirement& q) noexcept {
  return t.use && (t.pack == q.pack || q.pack.find(" or ") != std::string::npos);
}

/// The bands that give the numbers of `q` at this altitude; nothing where none do.
[[nodiscard]] inline std::optional<drawn_bands> bands_for(const process& p, const requirement& q,
                                                          int feet, const edition& rules) {
  const method* canner = find(rules.methods, q.method);
  const int longest_min = canner == nullptr || q.pressure_psi ? 0 : canner->longest_min;
  for (const table& t : p.tables) {
    if (!row_of(t, q)) continue;
    const band_set* set = find(rules.bands, q.gauge == "dial"       ? t.dial
                                            : q.gauge == "weighted" ? t.weighted
                                                                    : t.boiling_water);
    const altitude_step* step = set == nullptr ? nullptr : band_at(*set, feet);
    if (step == nullptr) continue;
    const auto at = static_cast<std::size_t>(step - set->steps.begin());
    for (const jar_minutes& m : t.minutes) {
      const bool under_pressure = q.pressure_psi.has_value();
      if (m.jar != q.jar || m.minutes[under_pressure ? 0 : at] != q.time_min) continue;
      if (under_pressure && step->psi != *q.pressure_psi) continue;
      drawn_bands out;
      out.name = q.gauge == "dial"       ? "Dial gauge"
                 : q.gauge == "weighted" ? "Weighted gauge"
                 : q.method == "steam"   ? "Steam canner"
                                         : "Boiling water";
      out.unit = under_pressure ? "psi" : "min";
      if (under_pressure) out.beside = "for " + std::to_string(q.time_min) + " min";
      for (std::size_t i = 0; i < set->steps.size(); ++i) {
        const altitude_step& s = set->steps[i];
        const int end =
            s.through_ft == 0 ? rules.highest_ft : std::min(s.through_ft, rules.highest_ft);
        const int value = under_pressure ? s.psi : m.minutes[i];
        // A steam canner boils dry, so it stops where the time gets too long for it.
        if (longest_min > 0 && value > longest_min) break;
        out.bands.push_back({s.from_ft, end, value});
      }
      return out;
    }
  }
  return std::nullopt;
}

/// The part of an amount as a kitchen says it: 50 is `half`.
[[nodiscard]] inline std::string share_text(int percent) {
  return percent == 50 ? "half" : std::to_string(percent) + " %";
}

/// Inside width of a straight jar twice as tall as wide, in thousandths of an inch: the smallest
/// whose volume, pi / 2 times its cube, holds so many fluid ounces of 231/128 cubic inches.
[[nodiscard]] constexpr std::int64_t width_of_jar(int volume_floz) noexcept {
  std::int64_t width = 0;
  const std::int64_t volume = std::int64_t{volume_floz} * 2 * 231 * 1'000'000'000 / 128;
  while (355 * width * width * width < 113 * volume) width += 5;  // pi as 355/113
  return width;
}

}  // namespace detail

/// The bands for the numbers of a report, those it asks for first, then the other published ones;
/// nothing where it has no verified numbers for an altitude. `most` rows are kept.
[[nodiscard]] inline std::optional<band_picture> bands_of(const process* p,
                                                          const std::optional<requirement>& first,
                                                          const std::vector<requirement>& others,
                                                          int feet, const edition& rules,
                                                          std::size_t most = 6) {
  if (p == nullptr || !first || !first->verified || feet < 0 || feet > rules.highest_ft)
    return std::nullopt;
  band_picture out{feet, rules.highest_ft, {}};
  const auto add = [&](const requirement& q) {
    if (out.rows.size() == most || q.method == "low-temperature") return;
    std::optional<drawn_bands> row = detail::bands_for(*p, q, feet, rules);
    if (!row) return;
    for (const drawn_bands& there : out.rows) {
      const bool same_name = there.name == row->name && there.beside == row->beside;
      // Steam takes the minutes of boiling water.
      if (same_name || (row->unit == "min" && there.unit == "min")) return;
    }
    out.rows.push_back(std::move(*row));
  };
  add(*first);
  for (const requirement& q : others) add(q);
  if (out.rows.empty()) return std::nullopt;
  return out;
}

[[nodiscard]] inline std::optional<band_picture> bands_of(const report& r, const edition& rules) {
  return bands_of(r.process, r.required, r.options, r.altitude_ft, rules);
}

/// The jar of a requirement; nothing where its size is not known.
[[nodiscard]] inline std::optional<jar_picture> jar_of(const process* p,
                                                       const std::optional<requirement>& q,
                                                       const edition& rules) {
  if (p == nullptr || !q || !q->verified) return std::nullopt;
  const jar_size* jar = find(rules.jars, q->jar);
  if (jar == nullptr || jar->volume_floz <= 0 || q->headspace_thousandths_in <= 0)
    return std::nullopt;
  return jar_picture{std::string(jar->title), jar->volume_floz, q->headspace_thousandths_in,
                     p->needs.solids_percent};
}

/// What the bands say, a sentence for each row.
[[nodiscard]] inline std::vector<std::string> bands_in_words(const band_picture& picture) {
  std::vector<std::string> out;
  for (const drawn_bands& row : picture.rows) {
    std::string words = row.name + (row.beside.empty() ? "" : " " + row.beside) + ":";
    for (const drawn_band& b : row.bands) {
      words += (&b == row.bands.data() ? " " : ", ") + std::to_string(b.value) + " " + row.unit +
               (b.from_ft == 0 ? " up to " : " from " + grouped(b.from_ft) + " to ") +
               grouped(b.through_ft) + " ft";
    }
    out.push_back(words + ".");
  }
  return out;
}

/// One bar for each row, feet from left to right, the band of this kitchen filled dark.
[[nodiscard]] inline std::string bands_svg(std::string_view id, const band_picture& picture) {
  using detail::anchor;
  constexpr std::int64_t left = 60;
  constexpr std::int64_t wide = 3'480;
  constexpr std::int64_t first_row = 420;
  constexpr std::int64_t row_height = 660;
  const std::int64_t bottom =
      first_row + row_height * static_cast<std::int64_t>(picture.rows.size());
  const int highest_ft = std::max(picture.highest_ft, 1);
  const auto x_of = [&](int feet) { return left + wide * feet / highest_ft; };
  std::string words = "This kitchen is at " + altitude_text(picture.altitude_ft) + ".";
  for (const std::string& row : bands_in_words(picture)) words += " " + row;
  detail::svg_writer svg(id, 3'600, bottom + 440, "Altitude bands of the published table", words);
  const std::int64_t here = x_of(picture.altitude_ft);
  svg.line(here, 260, here, bottom, "leader");
  svg.text(here, 160, "this kitchen: " + altitude_text(picture.altitude_ft), "strong",
           here < 1'300   ? anchor::start
           : here > 2'300 ? anchor::end
                          : anchor::middle);
  std::int64_t y = first_row;
  for (const drawn_bands& row : picture.rows) {
    svg.text(left, y, row.name + ", " + row.unit + (row.beside.empty() ? "" : ", " + row.beside));
    const std::int64_t top = y + 70;
    int reached = 0;
    for (const bool dark : {false, true}) {  // the dark one last, so that its edge is whole
      for (const drawn_band& b : row.bands) {
        const bool is_here =
            picture.altitude_ft >= b.from_ft && picture.altitude_ft <= b.through_ft;
        if (is_here != dark) continue;
        const std::int64_t from = x_of(std::max(b.from_ft - 1, 0));
        const std::int64_t end = x_of(b.through_ft);
        svg.rect(from, top, end - from, 340, dark ? "here" : "cell");
        svg.text((from + end) / 2, top + 220, std::to_string(b.value), dark ? "light" : "inside",
                 anchor::middle);
        reached = std::max(reached, b.through_ft);
      }
    }
    if (reached < picture.highest_ft) {
      svg.rect(x_of(reached), top, x_of(picture.highest_ft) - x_of(reached), 340, "none");
      svg.text((x_of(reached) + x_of(picture.highest_ft)) / 2, top + 220, "none", "inside",
               anchor::middle);
    }
    svg.path(detail::path_point('M', here - 60, top + 445) +
                 detail::path_point('L', here + 60, top + 445) +
                 detail::path_point('L', here, top + 345) + "Z",
             "mark");
    y += row_height;
  }
  const std::int64_t axis = bottom - 110;
  svg.line(left, axis, left + wide, axis, "axis");
  for (int feet = 0; feet <= highest_ft; feet += 2'000) {
    svg.line(x_of(feet), axis, x_of(feet), axis + 60, "axis");
    if (feet + 1'000 < highest_ft)  // the last would run into the one before
      svg.text(x_of(feet), axis + 210, grouped(feet), "",
               feet == 0 ? anchor::start : anchor::middle);
  }
  svg.text(left + wide / 2, axis + 400, "feet above sea level", "", anchor::middle);
  return svg.take();
}

/// What the jar shows, in words.
[[nodiscard]] inline std::string jar_in_words(const jar_picture& picture) {
  std::string out = "Headspace " + headspace_text(picture.headspace_thousandths_in) +
                    ", measured from the rim down.";
  if (picture.solids_percent > 0) {
    out += " Solids fill at most " + detail::share_text(picture.solids_percent) +
           " of the jar, hot liquid the rest.";
  }
  return out;
}

/// A straight jar of that volume, twice as tall as wide, with a scale in inches from the rim down.
[[nodiscard]] inline std::string jar_svg(std::string_view id, const jar_picture& picture) {
  using detail::anchor;
  constexpr std::int64_t rim = 300;
  constexpr std::int64_t tall = 2'000;
  constexpr std::int64_t left = 500;
  const std::int64_t width_in = detail::width_of_jar(picture.volume_floz);
  const std::int64_t height_in = 2 * width_in;  // thousandths
  const auto down = [&](std::int64_t thousandths_in) {
    return rim + (height_in == 0 ? 0 : tall * thousandths_in / height_in);
  };
  const std::int64_t right = left + tall / 2;
  const std::int64_t bottom = rim + tall;
  detail::svg_writer svg(
      id, 3'600, bottom + 120, "A " + picture.title + " jar with its headspace, to scale",
      jar_in_words(picture) + " Drawn as a straight jar of that volume, twice as tall as wide.");
  const std::int64_t filled = std::min(down(picture.headspace_thousandths_in), bottom);
  svg.rect(left, rim, right - left, tall, "glass", 110);
  const std::int64_t solids =
      picture.solids_percent > 0 ? bottom - tall * picture.solids_percent / 100 : filled;
  // Square above, round below, like the glass.
  const auto fill = [&](std::int64_t top, std::string_view look) {
    svg.path(detail::path_point('M', left, top) + detail::path_point('L', right, top) +
                 detail::path_point('L', right, bottom - 110) +
                 detail::path_point('L', right - 110, bottom) +
                 detail::path_point('L', left + 110, bottom) +
                 detail::path_point('L', left, bottom - 110) + "Z",
             look);
  };
  fill(filled, picture.solids_percent > 0 ? "liquid" : "food");
  if (picture.solids_percent > 0) fill(std::max(solids, filled), "food");
  svg.rect(left, rim, right - left, tall, "outline", 110);
  svg.rect(left - 40, rim - 50, right - left + 80, 90, "mark", 20);
  for (std::int64_t inch = 0; inch * 1'000 <= height_in; ++inch) {
    svg.line(left - 190, down(inch * 1'000), left - 70, down(inch * 1'000), "axis");
    svg.text(left - 230, down(inch * 1'000) + 50, std::to_string(inch), "", anchor::end);
    for (int quarter = 1; quarter < 4; ++quarter) {
      const std::int64_t at = inch * 1'000 + quarter * 250;
      if (at > height_in) break;
      svg.line(left - (quarter == 2 ? 150 : 120), down(at), left - 70, down(at), "axis");
    }
  }
  svg.text(40, 160, "inches from the rim");
  const auto label = [&](std::int64_t y, std::string_view strong, std::string_view plain) {
    svg.line(left, y, right + 140, y, "level");
    svg.text(right + 190, y - 20, strong, "strong");
    svg.text(right + 190, y + 150, plain);
  };
  svg.text(right + 190, rim - 60, "rim");
  label(filled, headspace_text(picture.headspace_thousandths_in), "headspace: fill to here");
  if (picture.solids_percent > 0) {
    label(solids, "at most " + detail::share_text(picture.solids_percent) + " solids",
          "hot liquid above them");
  }
  return svg.take();
}

}  // namespace jarproof
