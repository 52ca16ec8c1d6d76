// How long a run held what is asked for: stretches, losses, gaps.
//
// The time counts from `at-pressure` while readings at the target, or rows that say `steady`, vouch
// for it. One reading below it ends the stretch at the last row that vouched.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "jarproof/detail/log_moments.hpp"
#include "jarproof/detail/log_target.hpp"
#include "jarproof/log_report.hpp"
#include "jarproof/run_log.hpp"

namespace jarproof::detail {

class course_reader {
 public:
  course_reader(const std::vector<log_moment>& all, const log_target& target, std::int64_t gap_us,
                std::int64_t rise_us)
      : all_(all), target_(target), gap_us_(gap_us), rise_us_(rise_us) {
    const bool steady = std::any_of(all.begin(), all.end(), [](const log_moment& m) {
      return m.of(log_event_kind::steady) != nullptr;
    });
    by_weight_ = target.by_pressure && target.by_steady && (target.weighted || steady);
  }

  [[nodiscard]] log_course read() {
    find_ready();
    const bool starts = has(log_event_kind::at_pressure);
    for (std::size_t i = 0; i < all_.size(); ++i) {
      const log_moment& m = all_[i];
      look_at_vent(m);
      look_at_weight(m);
      const bool begins = starts                ? m.of(log_event_kind::at_pressure) != nullptr
                          : target_.by_pressure ? !counting_ && begins_by_itself(m)
                                                : begins_at_boil(m);
      if (begins) {
        begin(i);
      } else if (counting_ && !pressure_gone(m)) {
        pass(m);
      }
      if (counting_ && ends_count(m)) {
        stop(i);
      } else if (!counting_ && out_.started_us && !out_.off_us) {
        // The pressure was gone before: the heat went off all the same.
        if (m.of(log_event_kind::heat_off) != nullptr) out_.off_us = m.at_us;
      }
    }
    if (counting_) end_of_log();
    return std::move(out_);
  }

 private:
  enum class state { none, good, bad };

  const std::vector<log_moment>& all_;
  const log_target& target_;
  std::int64_t gap_us_;
  std::int64_t rise_us_;
  log_course out_;
  bool by_weight_ = false;                 // a weight decides; the dial beside it may read low
  std::optional<std::int64_t> dial_;       // what the dial showed when the weight moved last
  std::optional<std::int64_t> closed_us_;  // the vent was closed last
  bool vent_open_ = false;
  // Low water, or a lost boil or weight, is back when somebody writes it, not at the next reading.
  const log_row* lost_by_ = nullptr;
  bool seen_ = false;  // a row vouched for the stretch that is open
  bool counting_ = false;
  std::optional<held_stretch> open_;  // as claimed
  std::int64_t vouched_from_ = 0;
  std::int64_t last_good_ = 0;
  std::int64_t began_ = 0;
  std::optional<std::int64_t> ready_us_;  // vent closed, or the water at the boil

  [[nodiscard]] bool has(log_event_kind k) const noexcept {
    return first_after(all_, k, all_.front().at_us) != nullptr;
  }
  void find_ready() {
    const log_moment* ready =
        first_after(all_, target_.by_pressure ? log_event_kind::weight_on : log_event_kind::steam,
                    all_.front().at_us);
    if (ready != nullptr) ready_us_ = ready->at_us;
  }
  [[nodiscard]] bool is_ready(const log_moment& m) const noexcept {
    return !ready_us_ || m.at_us >= *ready_us_;
  }
  /// A full boil is where the time begins; a low temperature has nothing that one sees.
  [[nodiscard]] bool begins_at_boil(const log_moment& m) const noexcept {
    return target_.method != "low-temperature" && m.of(log_event_kind::steam) != nullptr;
  }
  /// Without a start the earliest one that the rows allow for.
  [[nodiscard]] bool begins_by_itself(const log_moment& m) const noexcept {
    return is_ready(m) && !vent_open_ && state_of(m) == state::good &&
           m.of(log_event_kind::heat_off) == nullptr && !out_.off_us;
  }
  void look_at_vent(const log_moment& m) noexcept {
    if (m.of(log_event_kind::steam) != nullptr) vent_open_ = true;
    if (m.of(log_event_kind::weight_on) == nullptr) return;
    closed_us_ = m.at_us;
    vent_open_ = false;
  }
  void look_at_weight(const log_moment& m) noexcept {
    if (!by_weight_ || !target_.by_reading || m.reading == nullptr) return;
    const bool moves =
        m.of(log_event_kind::steady) != nullptr || m.of(log_event_kind::at_pressure) != nullptr;
    if (moves) dial_ = *m.reading->reading;
  }
  /// The event that is written when what was lost is back. A dial shows it by itself.
  [[nodiscard]] bool is_back(const log_moment& m) const noexcept {
    if (lost_by_ == nullptr || m.of(log_event_kind::at_pressure) != nullptr) return true;
    const bool dry = lost_by_->event->kind == log_event_kind::water_low;
    // Water in a pressure canner is put in after the lid is opened, and the venting tells of it.
    if (target_.by_pressure)
      return dry || !target_.by_steady || m.of(log_event_kind::steady) != nullptr;
    return m.of(log_event_kind::steam) != nullptr ||
           (!dry && m.of(log_event_kind::steady) != nullptr);
  }
  [[nodiscard]] std::string_view check_of(const log_moment& m) const noexcept {
    if (!target_.by_pressure && m.of(log_event_kind::water_low) != nullptr) return "water-low";
    if (target_.by_pressure) return "pressure-dropped";
    if (target_.method == "low-temperature") return "temperature-too-low";
    return "boil-lost";
  }
  [[nodiscard]] const log_row* row_of(const log_moment& m) const noexcept {
    for (const log_event_kind k : {log_event_kind::water_low, log_event_kind::boil_lost}) {
      if (m.of(k) != nullptr) return m.of(k);
    }
    return m.reading != nullptr ? m.reading : m.first;
  }
  [[nodiscard]] state state_of(const log_moment& m) const noexcept {
    if (!is_ready(m)) return state::none;
    if (m.of(log_event_kind::boil_lost) != nullptr || m.of(log_event_kind::water_low) != nullptr)
      return state::bad;
    // The lid is lifted when the heat goes off.
    if (target_.method == "steam" && m.of(log_event_kind::opened) != nullptr &&
        m.of(log_event_kind::heat_off) == nullptr)
      return state::bad;
    const bool steady = target_.by_steady && m.of(log_event_kind::steady) != nullptr;
    // A canner with a weight and a dial goes by the weight.
    if (steady && target_.by_pressure) return state::good;
    if (target_.by_reading && m.reading != nullptr) {
      if (*m.reading->reading >= *target_.least) return state::good;
      return is_as_weight_moved(m) ? state::none : state::bad;
    }
    const bool boils =
        target_.by_steady && !target_.by_pressure && m.of(log_event_kind::steam) != nullptr;
    return steady || boils ? state::good : state::none;
  }
  /// A dial that is off shows as much as it did when the weight moved. One that shows less shows a
  /// drop.
  [[nodiscard]] bool is_as_weight_moved(const log_moment& m) const noexcept {
    return by_weight_ && dial_ && is_near(m) && *m.reading->reading >= *dial_;
  }
  /// A reading that is below by no more than a gauge may be off.
  [[nodiscard]] bool is_near(const log_moment& m) const noexcept {
    return *m.reading->reading + target_.gauge_room >= *target_.least;
  }
  /// The heat was off, or the weight: somebody put it on again.
  [[nodiscard]] bool put_on_again(const log_moment& m) const noexcept {
    return m.at_us > began_ &&
           (m.of(log_event_kind::heat_on) != nullptr ||
            (target_.by_pressure && m.of(log_event_kind::weight_on) != nullptr));
  }
  /// What the gauge shows then is no drop any more.
  [[nodiscard]] bool pressure_gone(const log_moment& m) const noexcept {
    return target_.by_pressure &&
           (m.of(log_event_kind::zero) != nullptr || m.of(log_event_kind::opened) != nullptr);
  }
  /// The vent is opened, the pressure is gone, or the heat is off.
  [[nodiscard]] bool ends_count(const log_moment& m) const noexcept {
    if (m.of(log_event_kind::heat_off) != nullptr) return true;
    if (m.of(log_event_kind::unsealed) != nullptr) return true;
    return pressure_gone(m) ||
           (target_.by_pressure && m.of(log_event_kind::steam) != nullptr && m.at_us > began_);
  }

  void lose(std::string_view check, const log_moment& m, const log_row* row) {
    out_.losses.push_back({check, row, m.at_us, {}});
  }
  void close(std::int64_t claimed_to, std::int64_t vouched_to, const log_row* row) {
    if (!open_) return;
    out_.claimed.push_back({open_->from_us, claimed_to, true});
    if (seen_ || !target_.by_pressure) {
      out_.vouched.push_back({vouched_from_, vouched_to, true});
    } else if (vouched_to > vouched_from_) {
      out_.gaps.push_back({vouched_from_, vouched_to, row});
    }
    open_.reset();
  }
  void open(const log_moment& m) {
    open_ = held_stretch{m.at_us, m.at_us, true};
    vouched_from_ = m.at_us;
    last_good_ = m.at_us;
    seen_ = state_of(m) == state::good;
  }
  void take_span(std::int64_t to_us) {
    to_us = std::max(to_us, began_);
    if (to_us - began_ <= out_.span_us) return;
    out_.span_us = to_us - began_;
    out_.span_from_us = began_;
    out_.span_to_us = to_us;
  }

  void begin(std::size_t index) {
    const log_moment& m = all_[index];
    if (counting_) {
      close(last_good_, last_good_, m.first);
      take_span(m.at_us);
    }
    counting_ = true;
    began_ = m.at_us;
    if (!out_.started_us) out_.started_us = m.at_us;
    out_.restarted_us = m.at_us;
    out_.off_us.reset();
    out_.end_row = nullptr;
    out_.lost = false;
    const log_row* mark = m.of(log_event_kind::at_pressure);
    lost_by_ = nullptr;
    if (target_.by_pressure && closed_us_ && m.at_us - *closed_us_ < rise_us_) {
      lose("timing-started-early", m, mark != nullptr ? mark : m.first);
      out_.losses.back().unclear = true;
      out_.lost = true;
      return;
    }
    if (!is_ready(m) || state_of(m) == state::bad || began_below(index) || leaps_up(index)) {
      lose("timing-started-early", m, mark != nullptr ? mark : m.first);
      out_.lost = true;
      return;
    }
    held_again(m);
    open(m);
  }
  void held_again(const log_moment& m) {
    if (!out_.losses.empty() && !out_.losses.back().again_us) out_.losses.back().again_us = m.at_us;
  }

  /// No canner gains or loses more than a gauge may be off within a minute: a reading so close to a
  /// start or an end without one says that it was not held there.
  [[nodiscard]] bool far_below(const log_moment& m) const noexcept {
    return target_.by_pressure && target_.by_reading && m.reading != nullptr &&
           *m.reading->reading < *target_.least && !is_near(m);
  }
  [[nodiscard]] bool leaps_up(std::size_t index) const noexcept {
    if (all_[index].reading != nullptr) return false;
    for (std::size_t i = index; i-- > 0;) {
      if (all_[index].at_us - all_[i].at_us > us_per_min) return false;
      if (all_[i].reading != nullptr) return far_below(all_[i]);
    }
    return false;
  }
  [[nodiscard]] bool leaps_down(std::size_t index) const noexcept {
    if (all_[index].reading != nullptr) return false;
    for (std::size_t i = index + 1; i < all_.size(); ++i) {
      if (all_[i].at_us - all_[index].at_us > us_per_min) return false;
      if (all_[i].reading != nullptr) return far_below(all_[i]);
    }
    return false;
  }

  /// The start has no reading of its own, the one before it is below and so is the next.
  [[nodiscard]] bool began_below(std::size_t index) const noexcept {
    if (state_of(all_[index]) != state::none) return false;
    for (std::size_t i = index; i-- > 0;) {
      const state before = state_of(all_[i]);
      if (before == state::good) return false;
      if (before == state::bad) break;
    }
    for (std::size_t i = index + 1; i < all_.size(); ++i) {
      const state after = state_of(all_[i]);
      // What is lost later was there at the start.
      const bool by_event = all_[i].of(log_event_kind::boil_lost) != nullptr ||
                            all_[i].of(log_event_kind::water_low) != nullptr;
      if (after != state::none) return after == state::bad && !by_event;
      if (ends_count(all_[i])) return false;
    }
    return false;
  }

  void pass(const log_moment& m) {
    const bool again = put_on_again(m);
    const state s = again ? state::bad : state_of(m);
    if (s == state::bad) {
      for (const log_event_kind k : {log_event_kind::boil_lost, log_event_kind::water_low}) {
        if (m.of(k) != nullptr) lost_by_ = m.of(k);
      }
      if (open_) {
        const log_row* row = row_of(m);
        if (again) {
          row = m.of(log_event_kind::heat_on);
          if (row == nullptr) row = m.of(log_event_kind::weight_on);
        }
        close(last_good_, last_good_, m.first);
        lose(check_of(m), m, row);
      }
      out_.lost = true;
      return;
    }
    if (s == state::none || !is_back(m)) return;
    lost_by_ = nullptr;
    if (!open_) {
      open(m);
      held_again(m);
      out_.lost = false;
      return;
    }
    look_for_gap(m.at_us, m.reading != nullptr ? m.reading : m.first);
    last_good_ = m.at_us;
    seen_ = true;
  }
  void look_for_gap(std::int64_t at_us, const log_row* row) {
    if (at_us - last_good_ <= gap_us_) return;
    out_.gaps.push_back({last_good_, at_us, row});
    if (seen_ || !target_.by_pressure) out_.vouched.push_back({vouched_from_, last_good_, true});
    vouched_from_ = at_us;
  }

  void stop(std::size_t index) {
    const log_moment& m = all_[index];
    const log_row* off = m.of(log_event_kind::heat_off);
    const bool by_heat = off != nullptr;
    if (open_) {
      // Nothing vouches for the time behind the last row where the heat was not turned off by plan.
      const bool held = by_heat && !leaps_down(index);
      const std::int64_t to = held ? m.at_us : last_good_;
      if (held) look_for_gap(m.at_us, off);
      close(to, to, m.first);
    }
    take_span(by_heat ? m.at_us : last_good_);
    if (by_heat) {
      out_.off_us = m.at_us;
    }
    out_.end_row = by_heat ? off : m.first;
    counting_ = false;
    out_.lost = false;
  }

  void end_of_log() {
    take_span(all_.back().at_us);
    if (!open_) return;
    const bool gap = all_.back().at_us - last_good_ > gap_us_;
    if (gap) out_.gaps.push_back({last_good_, all_.back().at_us, all_.back().first});
    if (!gap) out_.counts_from_us = vouched_from_;
    close(last_good_, last_good_, all_.back().first);
  }
};

}  // namespace jarproof::detail
