// The rows of a run by time, and what is told of them: stretches, losses, gaps.
// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <iterator>
#include <optional>
#include <string_view>
#include <vector>

#include "jarproof/log_report.hpp"
#include "jarproof/run_log.hpp"

namespace jarproof::detail {

/// All rows of one time.
struct log_moment {
  std::int64_t at_us = 0;
  const log_row* first = nullptr;
  const log_row* reading = nullptr;
  std::array<const log_row*, std::size(log_event_words)> events{};

  [[nodiscard]] const log_row* of(log_event_kind k) const noexcept {
    return events[static_cast<std::size_t>(k)];
  }
};

[[nodiscard]] inline std::vector<log_moment> moments_of(const run_log& log) {
  std::vector<log_moment> out;
  for (const log_row& row : log.rows) {
    if (out.empty() || out.back().at_us != row.at_us) {
      out.emplace_back();
      out.back().at_us = row.at_us;
      out.back().first = &row;
    }
    log_moment& m = out.back();
    if (row.reading) m.reading = &row;
    if (row.event) m.events[static_cast<std::size_t>(row.event->kind)] = &row;
  }
  return out;
}

/// The last moment with this event at or before a time; null where there is none.
[[nodiscard]] inline const log_moment* last_before(const std::vector<log_moment>& all,
                                                   log_event_kind k, std::int64_t at_us) noexcept {
  const log_moment* found = nullptr;
  for (const log_moment& m : all) {
    if (m.at_us <= at_us && m.of(k) != nullptr) found = &m;
  }
  return found;
}

/// The first moment with this event at or after a time; null where there is none.
[[nodiscard]] inline const log_moment* first_after(const std::vector<log_moment>& all,
                                                   log_event_kind k, std::int64_t at_us) noexcept {
  for (const log_moment& m : all) {
    if (m.at_us >= at_us && m.of(k) != nullptr) return &m;
  }
  return nullptr;
}

/// A moment that ended a stretch, or at which the timing began too early.
struct log_loss {
  std::string_view check;
  const log_row* row = nullptr;
  std::int64_t at_us = 0;
  std::optional<std::int64_t> again_us;  ///< from then it was held again
  bool unclear = false;                  ///< the log leaves open whether it was one
};

struct log_gap {
  std::int64_t from_us = 0;
  std::int64_t to_us = 0;
  const log_row* row = nullptr;  ///< the row that stands too late
};

struct log_course {
  std::optional<std::int64_t> started_us;    ///< the first start of the timing
  std::optional<std::int64_t> restarted_us;  ///< the last one
  std::optional<std::int64_t> off_us;        ///< heat off, after the last start
  const log_row* end_row = nullptr;  ///< that row, or the one that ended the count without it
  std::int64_t span_us = -1;         ///< longest time from a start to the next, or to the heat off
  std::int64_t span_from_us = 0;
  std::int64_t span_to_us = 0;
  std::vector<held_stretch> claimed;  ///< held, by the rows there are
  std::vector<held_stretch> vouched;  ///< the same, ended at every gap
  std::vector<log_loss> losses;
  std::vector<log_gap> gaps;
  std::optional<std::int64_t> counts_from_us;  ///< at the end of a log without `heat-off`
  bool lost = false;                           ///< there the time should count, and does not
};

[[nodiscard]] inline held_stretch longest(const std::vector<held_stretch>& all) noexcept {
  held_stretch out;
  for (const held_stretch& s : all) {
    if (s.to_us - s.from_us > out.to_us - out.from_us) out = s;
  }
  return out;
}

}  // namespace jarproof::detail
