// The numbers of a way: what `check` asks of a plan for that process in this kitchen.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <iterator>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "jarproof/check.hpp"
#include "jarproof/detail/report_words.hpp"
#include "jarproof/way.hpp"

namespace jarproof::detail {

/// The dish whose ways are looked for.
struct dish {
  const plan& what;
  const edition& rules;
  report judged;   ///< of the plan as it stands
  report scratch;  ///< takes what reading the lines finds
  judging reading;
  std::vector<plan_line> lines;  ///< of the jar; what is for the table is left out
};

inline void add_once(std::vector<std::string>& out, std::string text) {
  if (!text.empty() && std::find(out.begin(), out.end(), text) == out.end())
    out.push_back(std::move(text));
}

[[nodiscard]] inline word word_of(std::string_view text) {
  word out;
  out.text = std::string(text);
  return out;
}

/// A process is named only where somebody read its numbers again.
[[nodiscard]] inline bool usable(const process& p) {
  return std::any_of(p.tables.begin(), p.tables.end(), [](const table& t) { return t.use; });
}

/// The plan's jar, canner and altitude for another process. The hot pack is taken where there is
/// one.
[[nodiscard]] inline plan plan_for(const plan& what, const process& p) {
  plan out;
  out.source = what.source;
  out.title = what.title;
  out.food = word_of(p.id);
  out.as_published.emplace();
  out.as_published->value = true;
  out.jar = what.jar;
  out.jar_volume = what.jar_volume;
  out.jars = what.jars;
  out.batch = what.batch;
  out.method = what.method;
  out.gauge = what.gauge;
  out.gauge_error = what.gauge_error;
  out.pressure = what.pressure;
  out.altitude = what.altitude;
  const bool hot = std::any_of(p.tables.begin(), p.tables.end(),
                               [](const table& t) { return t.use && t.pack == "hot"; });
  if (hot) out.pack = word_of("hot");
  return out;
}

/// What `check` requires of such a plan; nothing where the numbers may not be used.
inline void take_numbers_of(const edition& rules, const plan& asked, way_numbers& out,
                            std::vector<std::string>& changes) {
  plan q = asked;
  report r = check(q, rules);
  const method* steam = find(rules.methods, "steam");
  const bool too_long = r.required && r.required->method == "steam" && steam != nullptr &&
                        r.required->time_min > steam->longest_min;
  if (too_long) {  // a steam canner cannot run that long
    q.method = word_of("boiling-water");
    r = check(q, rules);
  }
  std::vector<requirement> all;
  if (r.required) all.push_back(*r.required);
  all.insert(all.end(), r.options.begin(), r.options.end());
  all.erase(std::remove_if(all.begin(), all.end(),
                           [](const requirement& each) { return !each.verified; }),
            all.end());
  if (all.empty()) return;
  out.required = all.front();
  out.options.assign(all.begin() + 1, all.end());
  for (const finding& f : r.findings) {
    if (f.check == "jar-too-large") add_once(changes, "Use " + f.required + ".");
  }
  const method* own = asked.method ? method_named(rules, asked.method->text) : nullptr;
  if (asked.method && (own == nullptr || own->id != out.required->method))
    add_once(changes, "Use a " + title_of_method(rules, out.required->method) + ".");
  const std::string& gauge = out.required->gauge;
  if (asked.gauge && !gauge.empty() && asked.gauge->text != gauge)
    add_once(changes, "Use a " + gauge + " gauge; the table has no other.");
}

/// A variant of a tested recipe may have no numbers in the jar of the plan, and yet in a smaller
/// one: the largest of those that are listed.
inline void take_smaller_jar(const dish& d, const process& p, const plan& asked, way_numbers& out,
                             std::vector<std::string>& changes) {
  const jar_size* largest = nullptr;
  const std::int64_t own = jar_volume(d.reading).value_or(0);
  for (const jar_minutes& m : p.tables[0].minutes) {
    const jar_size* jar = find(d.rules.jars, m.jar);
    if (jar == nullptr || jar->volume_floz * micro_per_unit >= own) continue;
    if (largest == nullptr || jar->volume_floz > largest->volume_floz) largest = jar;
  }
  if (largest == nullptr) return;
  plan q = asked;
  q.jar = word_of(largest->id);
  q.jar_volume.reset();
  take_numbers_of(d.rules, q, out, changes);
  if (out.required) add_once(changes, "Use " + std::string(largest->title) + " jars or smaller.");
}

/// The numbers of a process for the dish, or for those of its lines that go into it; without a jar,
/// for every jar that its tables list.
[[nodiscard]] inline way_numbers numbers_for(const dish& d, const process& p,
                                             std::vector<std::string>& changes,
                                             const std::vector<plan_line>& lines = {}) {
  way_numbers out;
  plan asked = plan_for(d.what, p);
  for (const plan_line& l : lines) asked.ingredients.push_back(*l.said);
  const bool jar_known = jar_volume(d.reading).has_value();
  if (!jar_known) out.missing.emplace_back("jar");
  if (!d.what.altitude) out.missing.emplace_back("altitude");
  if (!d.what.altitude) return out;
  if (jar_known) {
    take_numbers_of(d.rules, asked, out, changes);
    if (!out.required && !lines.empty()) take_smaller_jar(d, p, asked, out, changes);
  } else {
    for (const jar_size& jar : d.rules.jars) {
      const bool listed = std::any_of(p.tables.begin(), p.tables.end(), [&](const table& t) {
        return t.use && std::any_of(t.minutes.begin(), t.minutes.end(),
                                    [&](const jar_minutes& m) { return m.jar == jar.id; });
      });
      if (!listed) continue;
      plan q = asked;
      q.jar = word_of(jar.id);
      q.jar_volume.reset();
      way_numbers one;
      take_numbers_of(d.rules, q, one, changes);
      if (one.required && one.required->jar == jar.id) out.by_jar.push_back(*one.required);
    }
  }
  const requirement* first = out.required         ? &*out.required
                             : out.by_jar.empty() ? nullptr
                                                  : &out.by_jar.front();
  if (first != nullptr && !first->gauge.empty() && !d.what.gauge) out.missing.emplace_back("gauge");
  return out;
}

/// True where the process has numbers for this kitchen, or where the plan does not say enough to
/// look for them.
[[nodiscard]] inline bool open_to(const dish& d, const way_numbers& n) {
  return n.required || !n.by_jar.empty() || !d.what.altitude;
}

/// The acid that goes into each jar, in the publication's words.
inline void add_acid(const process& p, std::vector<std::string>& changes) {
  if (!p.acids.empty()) add_once(changes, "Acid in each jar: " + needed_acids(p) + ".");
}

inline void cite(const dish& d, const process& p, const way_numbers& n,
                 std::vector<std::string>& sources) {
  if (n.required) {
    for (const std::string& s : n.required->sources) add_once(sources, s);
  }
  for (const requirement& r : n.by_jar) {
    for (const std::string& s : r.sources) add_once(sources, s);
  }
  add_sources(d.rules, p.sources, sources);
}

/// The steps of one kind of way that belong to this process and to what is in the dish.
template <class HasTrait>
void add_steps(const dish& d, std::string_view kind, const process* p, HasTrait has, way& out) {
  for (const way_step& s : d.rules.way_steps) {
    if (s.way != kind) continue;
    if (!s.processes.empty() && (p == nullptr || !s.processes.contains(p->id))) continue;
    if (!s.if_any.empty() && !std::any_of(s.if_any.begin(), s.if_any.end(), has)) continue;
    add_once(out.changes, std::string(s.says));
    add_sources(d.rules, s.sources, out.sources);
  }
}

/// The other published position on parts that alone would need longer: what differs for each, and
/// once what that position is.
inline void add_other_position(const report& r, way& out) {
  std::string each;
  std::string rest;
  for (const finding& f : r.findings) {
    if (f.check != "other-position") continue;
    const std::size_t end = f.message.find(". ");
    const std::string first = f.message.substr(0, end == std::string::npos ? end : end + 1);
    if (each.find(first) == std::string::npos) each += first + " ";
    rest = end == std::string::npos ? std::string() : f.message.substr(end + 2);
  }
  if (!each.empty()) out.notes.push_back(each + rest);
}

/// `2 lb beef` of `2 lb beef, cut in cubes`. Where the food stands behind the comma, as in `8 cups
/// peeled, diced tomatoes`, up to its end.
[[nodiscard]] inline std::string short_line(const plan_line& l) {
  std::string_view text = trim(l.said->text);
  line::skip_bullet(text);
  const std::string_view cut = trim(text.substr(0, preparation_comma(text)));
  const line_reading& r = l.reading;
  if (r.what == nullptr || cut.size() == text.size()) return std::string(cut);
  // The last word of the name tells: `tomatoes` of `diced tomatoes`.
  const std::size_t blank = r.name.rfind(' ');
  const std::string_view last =
      std::string_view(r.name).substr(blank == std::string::npos ? 0 : blank + 1);
  const std::string_view stem = last.substr(0, 4);  // `berries` or `berry`
  std::size_t end = cut.size();
  while (end < text.size() && folded(text.substr(0, end)).find(stem) == std::string::npos) {
    const std::size_t comma = text.find(',', end + 1);
    end = comma == std::string_view::npos ? text.size() : comma;
  }
  return std::string(trim(text.substr(0, end)));
}

/// True for food that comes in a can, or canned, from a store or a shelf.
[[nodiscard]] inline bool is_canned(const plan_line& l) {
  constexpr std::string_view words[] = {"can",    "cans", "canned", "tin",      "tins",
                                        "tinned", "lata", "latas",  "enlatado", "enlatados"};
  for (const line_token& t : tokens_of(plain_line(l.said->text.substr(0, 1'000)))) {
    if (std::find(std::begin(words), std::end(words), t.text) != std::end(words)) return true;
  }
  return false;
}

/// Lines that share one sentence about what is left out.
class left_outs {
 public:
  explicit left_outs(const edition& rules, bool freezer = false)
      : rules_(rules), freezer_(freezer) {}

  /// The entry that fits an ingredient and says something on this way, or null.
  template <class Says>
  [[nodiscard]] const left_out* entry_of(const ingredient& i, Says something) const {
    for (const left_out& e : rules_.left_outs) {
      const bool fits = std::any_of(e.traits.begin(), e.traits.end(),
                                    [&](std::string_view t) { return is_a(rules_, i, t); }) ||
                        std::any_of(e.foods.begin(), e.foods.end(), [&](std::string_view food) {
                          return is_kind_of(rules_, i, food);
                        });
      if (fits && something(e)) return &e;
    }
    return nullptr;
  }

  void add(const left_out* entry, std::string found) {
    if (entry == nullptr) return;
    for (group& g : groups_) {
      const bool same = freezer_ ? g.entry->freezer == entry->freezer
                                 : g.entry->leave_out == entry->leave_out &&
                                       g.entry->at_serving == entry->at_serving;
      if (!same) continue;
      add_once(g.found, std::move(found));
      return;
    }
    groups_.push_back({entry, {std::move(found)}});
  }

  /// One sentence for each group, with its sources.
  void write(way& out) const {
    for (const group& g : groups_) {
      sentence_facts facts;
      for (const std::string& f : g.found) facts.found += (facts.found.empty() ? "" : ", ") + f;
      const left_out& e = *g.entry;
      std::string text =
          freezer_ ? filled(e.freezer, facts, {}, {}) : filled(e.leave_out, facts, {}, {});
      const std::string later = freezer_ ? "" : filled(e.at_serving, facts, {}, {});
      if (!later.empty()) text += (text.empty() ? "" : " ") + later;
      add_once(out.changes, std::move(text));
      add_sources(rules_, e.sources, out.sources);
    }
  }

 private:
  struct group {
    const left_out* entry;
    std::vector<std::string> found;
  };
  const edition& rules_;
  bool freezer_;
  std::vector<group> groups_;
};

}  // namespace jarproof::detail
