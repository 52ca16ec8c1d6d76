// What a run log says beside the time: venting, heating up, cooling, opening, jars.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "jarproof/detail/log_findings.hpp"

namespace jarproof::detail {

[[nodiscard]] inline bool found_in(const run_judging& j, std::string_view check) {
  return std::any_of(j.out.findings.begin(), j.out.findings.end(),
                     [&](const log_finding& f) { return f.check == check; });
}

inline void missing_event(run_judging& j, log_event_kind k, const char* what) {
  const log_row* row = &j.log.rows.back();
  log_finding& f =
      j.say("event-missing", row, {{}, "`" + std::string(name_of(k)) + "`", what, {}, {}});
  f.field = "event";
}

/// The heat may have been on to here; without `heat-off` what vouched last, so that no time limit
/// is too long.
[[nodiscard]] inline std::int64_t heat_ended(const run_judging& j) {
  if (j.course.off_us) return *j.course.off_us;
  if (const log_moment* off = last_before(j.moments, log_event_kind::heat_off, j.out.last_us))
    return off->at_us;
  if (!j.course.claimed.empty()) return j.course.claimed.back().to_us;
  std::int64_t last = j.out.first_us;
  for (const log_row& row : j.log.rows) {
    const bool counts =
        row.event &&
        (row.event->kind == log_event_kind::unsealed || row.event->kind == log_event_kind::broken ||
         row.event->kind == log_event_kind::opened || row.event->kind == log_event_kind::zero);
    if (!counts) last = row.at_us;
  }
  return last;
}

/// How a canner was vented before a time: from which jet of steam to which closing.
struct venting {
  const log_moment* steam = nullptr;
  const log_moment* closed = nullptr;
  const log_moment* air = nullptr;  ///< let air in, and no steam flowed since
};

/// Pressure is there: the gauge shows more than it may at zero, or somebody says so.
[[nodiscard]] inline bool has_pressure(const run_judging& j, const log_moment& m) {
  if (is_pressure(j.log.unit) && m.reading != nullptr)
    return *m.reading->reading > j.target.gauge_room;
  return m.of(log_event_kind::at_pressure) != nullptr || m.of(log_event_kind::steady) != nullptr;
}

/// The gauge shows no more than it may at zero.
[[nodiscard]] inline bool reads_nothing(const run_judging& j, const log_moment& m) {
  return is_pressure(j.log.unit) && m.reading != nullptr && !has_pressure(j, m);
}

/// The venting that still holds at `before_us`. A jet that stopped, a lid that was opened, low
/// water and a pressure that fell to zero let air in, and so does a weight that was taken off in
/// between.
[[nodiscard]] inline venting venting_before(const run_judging& j, std::int64_t before_us) {
  venting v;
  bool built = false;  // pressure was there behind a closed vent
  for (const log_moment& m : j.moments) {
    if (m.at_us > before_us) break;
    const bool fell = built && j.target.gauge_room > 0 && reads_nothing(j, m);
    const bool gone = m.of(log_event_kind::opened) != nullptr ||
                      m.of(log_event_kind::zero) != nullptr ||
                      m.of(log_event_kind::water_low) != nullptr || fell;
    const bool stopped =
        m.of(log_event_kind::boil_lost) != nullptr || m.of(log_event_kind::heat_off) != nullptr;
    if (gone && v.closed != nullptr) v = {nullptr, nullptr, &m};
    if ((gone || stopped) && v.closed == nullptr) v.steam = nullptr;
    if (m.of(log_event_kind::steam) != nullptr) v = {&m, nullptr, nullptr};
    built = !gone && v.closed != nullptr && (built || has_pressure(j, m));
    if (m.of(log_event_kind::weight_on) == nullptr) continue;
    if (v.closed == nullptr) {
      v.closed = &m;
    } else if (j.course.started_us && m.at_us > *j.course.started_us) {
      v = {nullptr, &m, nullptr};
    }
  }
  return v;
}

/// Where the jet of steam stopped before the vent was closed; null where it flows or did its part.
[[nodiscard]] inline const log_moment* jet_stopped(const run_judging& j) {
  const log_moment* steam = last_before(j.moments, log_event_kind::steam, j.out.last_us);
  if (steam == nullptr || !j.target.by_pressure) return nullptr;
  for (const log_moment& m : j.moments) {
    if (m.at_us < steam->at_us) continue;
    if (m.of(log_event_kind::weight_on) != nullptr) return nullptr;
    if (m.of(log_event_kind::boil_lost) != nullptr || m.of(log_event_kind::water_low) != nullptr ||
        m.of(log_event_kind::opened) != nullptr || m.of(log_event_kind::zero) != nullptr)
      return &m;
  }
  return nullptr;
}

/// A jet that stopped is begun again, and so are its minutes.
inline void judge_jet(run_judging& j) {
  const log_moment* stopped = jet_stopped(j);
  if (stopped == nullptr) return;
  const log_moment* steam = last_before(j.moments, log_event_kind::steam, stopped->at_us);
  sentence_facts facts;
  facts.found = duration_text(stopped->at_us - steam->at_us);
  facts.required = "at least " + std::to_string(j.target.vent_min) + " min";
  facts.reason = "The jet stopped at " + j.when(stopped->at_us) +
                 " with the vent open; its minutes begin again with new steam.";
  j.say("vent-too-short", stopped->first, std::move(facts)).outcome = outcome::incomplete;
}

/// Two to three inches of water last no longer at the open vent: common practice, no source.
inline constexpr int longest_vent_min = 60;

/// The venting before the time that counts. In a log that is being written it may be to come.
inline void judge_vent(run_judging& j, std::int64_t before_us) {
  const venting v = venting_before(j, before_us);
  const bool running = j.out.running && j.out.state != run_state::cooling;
  if (v.air != nullptr && v.steam == nullptr) {
    const log_row* row = v.air->of(log_event_kind::zero);
    for (const log_event_kind k : {log_event_kind::opened, log_event_kind::water_low}) {
      if (row == nullptr) row = v.air->of(k);
    }
    sentence_facts facts;
    facts.found = "0 min";
    facts.required = "at least " + std::to_string(j.target.vent_min) + " min";
    facts.reason = row == nullptr ? "The pressure was gone at " + j.when(v.air->at_us)
                                  : "The log has `" + std::string(name_of(row->event->kind)) +
                                        "` at " + j.when(v.air->at_us);
    facts.reason += ", which lets air in; behind it no steam flowed from the open vent.";
    log_finding& f =
        j.say("vent-too-short", row == nullptr ? v.air->reading : row, std::move(facts));
    if (running) f.outcome = outcome::incomplete;
    return;
  }
  if (v.closed == nullptr) missing_event(j, log_event_kind::weight_on, "when the vent was closed");
  if (v.steam == nullptr) missing_event(j, log_event_kind::steam, "when steam began to flow");
  if (v.closed == nullptr || v.steam == nullptr) return;
  const std::int64_t lasted = v.closed->at_us - v.steam->at_us;
  if (lasted > longest_vent_min * us_per_min) {
    j.say("log-unlike-plan", v.steam->of(log_event_kind::steam),
          {duration_text(lasted) + " of venting",
           "at most " + std::to_string(longest_vent_min) + " min",
           "A canner that steams for so long boils dry: look at the times of `steam` and "
           "`weight-on`.",
           {},
           {}});
    return;
  }
  if (lasted >= j.target.vent_min * us_per_min) return;
  sentence_facts facts;
  facts.found = duration_text(lasted);
  facts.required = "at least " + std::to_string(j.target.vent_min) + " min";
  log_finding& f =
      j.say("vent-too-short", v.closed->of(log_event_kind::weight_on), std::move(facts));
  if (running) f.outcome = outcome::incomplete;
}

/// Readings where there is no pressure: at an open vent, at `zero` and behind it. A gauge that
/// shows more there shows the pressure of the air too, or the canner was not as the log says.
inline void judge_zero_readings(run_judging& j) {
  if (!is_pressure(j.log.unit) || j.target.gauge_room == 0) return;
  bool open = false;
  for (const log_moment& m : j.moments) {
    // A lid that is opened under pressure is said by another check.
    const bool down =
        m.of(log_event_kind::zero) != nullptr || m.of(log_event_kind::steam) != nullptr;
    // The gauge may rise at once when the vent is closed.
    if (m.of(log_event_kind::weight_on) != nullptr || m.of(log_event_kind::at_pressure) != nullptr)
      open = false;
    if (down) open = true;
    if (!open || m.reading == nullptr || *m.reading->reading <= j.target.gauge_room) continue;
    log_finding& f = j.say("gauge-not-at-zero", m.reading,
                           {reading_text(j, *m.reading),
                            "at most " + limit_text(j.log.unit, j.target.gauge_room),
                            {},
                            {},
                            j.when(m.at_us)});
    f.field = std::string(name_of(j.log.unit));
    f.column = m.reading->reading_column;
    return;
  }
}

/// A gauge beside a weight that moves, and shows far less than the weight holds.
inline void judge_gauge_beside_weight(run_judging& j) {
  if (!j.target.weighted || !j.target.by_reading || !j.target.by_steady) return;
  for (const log_moment& m : j.moments) {
    if (m.of(log_event_kind::steady) == nullptr || m.reading == nullptr) continue;
    if (*m.reading->reading + j.target.gauge_room >= *j.target.least) continue;
    log_finding& f = j.say("gauges-disagree", m.reading,
                           {reading_text(j, *m.reading), j.target.hold, {}, {}, j.when(m.at_us)});
    f.field = std::string(name_of(j.log.unit));
    f.column = m.reading->reading_column;
    return;
  }
}

/// Fish in quart jars is heated slowly before the steam flows.
inline void judge_heat_up(run_judging& j, std::int64_t before_us) {
  const process* p = j.out.plan.process;
  if (p == nullptr || p->needs.heat_up_min == 0) return;
  const venting v = venting_before(j, before_us);
  if (v.steam == nullptr || v.closed == nullptr) return;  // said already
  const log_moment* on = last_before(j.moments, log_event_kind::heat_on, v.steam->at_us);
  if (on == nullptr) {
    missing_event(j, log_event_kind::heat_on, "when the heating began");
    return;
  }
  const std::int64_t lasted = v.closed->at_us - on->at_us;
  const int needed = p->needs.heat_up_min + j.target.vent_min;
  if (lasted >= needed * us_per_min) return;
  log_finding& f =
      j.say("heat-up-too-short", v.closed->of(log_event_kind::weight_on),
            {duration_text(lasted), "at least " + std::to_string(needed) + " min", {}, {}, {}});
  cite_first(j.rules, p->sources, f);
  if (j.out.running && j.out.state != run_state::cooling) f.outcome = outcome::incomplete;
}

/// Where the cooling begins: at the end of the time that was delivered, at the heat off, else
/// behind the last row that vouched.
[[nodiscard]] inline std::int64_t cooling_from(const run_judging& j) {
  if (j.delivered) return longest(j.course.vouched).to_us;
  return j.course.off_us.value_or(j.course.restarted_us.value_or(j.log.rows.front().at_us));
}

/// When the pressure was zero: by the event, or by the first reading of nothing after the heat.
[[nodiscard]] inline const log_moment* zero_of(const run_judging& j, std::int64_t from_us) {
  for (const log_moment& m : j.moments) {
    if (m.at_us < from_us) continue;
    if (m.of(log_event_kind::zero) != nullptr) return &m;
    if (j.course.off_us && m.at_us > from_us && is_pressure(j.log.unit) && m.reading != nullptr &&
        *m.reading->reading == 0)
      return &m;
  }
  return nullptr;
}

/// The first moment after the process at which next to no pressure is left: that early, it did not
/// go by itself.
[[nodiscard]] inline const log_moment* nearly_zero(const run_judging& j, std::int64_t from_us) {
  for (const log_moment& m : j.moments) {
    if (m.at_us <= from_us) continue;
    if (m.of(log_event_kind::zero) != nullptr) return &m;
    if (is_pressure(j.log.unit) && m.reading != nullptr &&
        *m.reading->reading <= j.target.gauge_room)
      return &m;
  }
  return nullptr;
}

/// Opened without a word on the pressure, so long after the heat that it may have been down.
[[nodiscard]] inline bool may_be_down(const run_judging& j, const log_moment& opened) {
  if (!j.course.off_us || opened.at_us < *j.course.off_us) return false;
  const int fastest = limit_of(j.rules.run.limits, "fastest-cooling-min");
  if (opened.at_us - *j.course.off_us < fastest * us_per_min) return false;
  for (const log_moment& m : j.moments) {
    const bool while_cooling = m.at_us > *j.course.off_us && m.at_us <= opened.at_us;
    if (while_cooling && m.reading != nullptr && is_pressure(j.log.unit)) return false;
  }
  return true;
}

/// The last moment before `down` at which the canner was at pressure: from then on it cooled.
[[nodiscard]] inline std::int64_t at_pressure_until(const run_judging& j, std::int64_t from_us,
                                                    const log_moment& down) {
  std::int64_t out = from_us;
  for (const log_moment& m : j.moments) {
    if (m.at_us <= from_us || m.at_us >= down.at_us) continue;
    const bool held =
        j.target.by_reading && m.reading != nullptr && *m.reading->reading >= *j.target.least;
    if (held || m.of(log_event_kind::heat_off) != nullptr ||
        m.of(log_event_kind::steady) != nullptr)
      out = m.at_us;
  }
  return out;
}

/// Pressure that goes faster than it does by itself: all of it, or between two readings.
inline void judge_fall(run_judging& j, std::int64_t from_us, int fastest) {
  const log_moment* down = nearly_zero(j, from_us);
  if (down == nullptr) return;
  const std::int64_t until = at_pressure_until(j, from_us, *down);
  const log_row* row = down->of(log_event_kind::zero);
  if (down->at_us - until < fastest * us_per_min) {
    j.unsaid("cooling-forced", row == nullptr ? down->reading : row,
             {"to nothing within " + duration_text(down->at_us - until),
              "at least " + std::to_string(fastest) + " min",
              {},
              {},
              {}});
    return;
  }
  if (!j.target.most) return;
  const log_row* before = nullptr;
  for (const log_moment& m : j.moments) {
    if (m.at_us > down->at_us) return;
    if (m.reading == nullptr) continue;
    // All the pressure of a canner in the shortest time, and as much as a gauge may be off.
    if (before != nullptr && before->at_us >= from_us) {
      const std::int64_t fell = *before->reading - *m.reading->reading;
      const std::int64_t took_s = (m.at_us - before->at_us) / 1'000'000;
      if ((fell - j.target.gauge_room) * fastest * 60 > *j.target.most * took_s) {
        j.unsaid("cooling-forced", m.reading,
                 {"from " + reading_text(j, *before) + " to " + reading_text(j, *m.reading) +
                      " within " + duration_text(m.at_us - before->at_us),
                  "longer",
                  {},
                  {},
                  {}});
        return;
      }
    }
    before = m.reading;
  }
}

inline void judge_cooling(run_judging& j) {
  const std::int64_t from = cooling_from(j);
  const log_moment* zero = zero_of(j, from);
  // A lid that was opened before the time that counted was closed and vented again.
  const log_moment* opened = first_after(j.moments, log_event_kind::opened,
                                         j.delivered ? from : j.course.restarted_us.value_or(from));
  if (opened != nullptr && (zero == nullptr || opened->at_us < zero->at_us)) {
    const log_row* row = opened->of(log_event_kind::opened);
    if (zero == nullptr && may_be_down(j, *opened)) {
      missing_event(j, log_event_kind::zero, "when the pressure was down by itself");
    } else {
      j.say("cooling-forced", row,
            {"`opened` at " + j.when(opened->at_us),
             "after the pressure is zero by itself",
             zero == nullptr ? "" : "The pressure was zero at " + j.when(zero->at_us) + ".",
             {},
             {}});
    }
    return;
  }
  const int fastest = limit_of(j.rules.run.limits, "fastest-cooling-min");
  const bool ended = j.delivered || j.course.off_us.has_value();
  if (ended) judge_fall(j, from, fastest);
  if (zero == nullptr) {
    // Jars that were counted were taken out of a canner that somebody opened.
    if (j.out.state == run_state::over && j.course.started_us)
      missing_event(j, log_event_kind::zero, "when the pressure was down by itself");
    return;
  }
  if (opened == nullptr) return;
  const int wait = limit_of(j.rules.run.limits, "wait-after-zero-min");
  if (opened->at_us - zero->at_us >= wait * us_per_min) return;
  j.say("opened-too-early", opened->of(log_event_kind::opened),
        {duration_text(opened->at_us - zero->at_us),
         "at least " + std::to_string(wait) + " min",
         {},
         {},
         {}});
}

}  // namespace jarproof::detail
