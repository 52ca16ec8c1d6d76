// Scores the reader of recipes and the judge on a folder of recipes that were annotated by hand.
//
//   corpus_score FOLDER [--all] [--least PER_MILLE] [--least-verdicts PER_MILLE]
//
// Prints the share of lines whose food and amount are right, the dangerous misreadings (a forbidden
// or low-acid thing taken for harmless), the verdicts that agree, and the plans that are accepted
// although the annotation says otherwise. Fails where one of the last two kinds is not empty or a
// share is below the least. tests/corpus/README.md describes the files.
// SPDX-License-Identifier: MIT
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/builtin.hpp"
#include "jarproof/check.hpp"
#include "jarproof/detail/ingredient_line.hpp"
#include "jarproof/detail/pasted_text.hpp"
#include "jarproof/detail/plan_lines.hpp"
#include "jarproof/json.hpp"
#include "jarproof/read_plan.hpp"
#include "jarproof/recipe.hpp"
#include "jarproof/yaml.hpp"

namespace {

using namespace jarproof;
using namespace jarproof::detail;

const edition& rules = builtin_edition();

std::string text_at(const node& map, std::string_view key) {
  const node* n = find(map, key);
  return n == nullptr ? std::string() : n->text;
}

std::vector<std::string> parts_of(const std::string& text, char between) {
  std::vector<std::string> out;
  std::string_view rest = text;
  for (;;) {
    const std::size_t cut = rest.find(between);
    out.emplace_back(trim(rest.substr(0, cut)));
    if (cut == std::string_view::npos) return out;
    rest.remove_prefix(cut + 1);
  }
}

const ingredient* meant(const std::string& food) {
  const std::string plain = folded(plain_line(food));
  if (const ingredient* i = ingredient_named(rules, plain)) return i;
  const line_reading r = read_line(rules, plain);
  return r.strange.empty() ? r.what : nullptr;
}

/// A word that the ids or the read names share, such as `salt` of `sea-salt`; states and shapes do
/// not count.
bool share_a_word(std::string_view a, std::string_view b) {
  constexpr std::string_view states[] = {"canned", "dried", "dry",   "fresh", "frozen", "ground",
                                         "cooked", "green", "red",   "white", "black",  "sweet",
                                         "whole",  "other", "mixed", "sour",  "hot",    "pickled"};
  for (const std::string& one : line::words_of(a)) {
    if (line::one_of(one, states)) continue;
    for (const std::string& two : line::words_of(b)) {
      const auto same = [](const std::string& x, const std::string& y) {
        return x == y || x + "s" == y || x + "es" == y;
      };
      if (same(one, two) || same(two, one)) return true;
    }
  }
  return false;
}

template <class T>
bool same_list(const list<T>& a, const list<T>& b) {
  return a.size() == b.size() && std::is_permutation(a.begin(), a.end(), b.begin());
}

/// The annotation may name a near relative: one a kind of the other; or two that share their noun,
/// class and traits, and are canned by the same processes or differ only in a state that the line
/// itself says (`boned`).
bool same_food(const ingredient* wanted, const ingredient* read, std::string_view said) {
  if (wanted == nullptr || read == nullptr) return false;
  if (wanted == read) return true;
  if (wanted->kind != read->kind) return false;
  if (is_kind_of(rules, *wanted, read->id) || is_kind_of(rules, *read, wanted->id)) return true;
  const bool sibling = !wanted->kind_of.empty() && wanted->kind_of == read->kind_of;
  const bool noun = share_a_word(wanted->id, read->id) || share_a_word(wanted->id, said);
  if (!same_list(wanted->traits, read->traits) || !(noun || sibling)) return false;
  return same_list(wanted->can_as, read->can_as) || share_a_word(wanted->id, said);
}

bool has_food(const line_reading& r, const ingredient* wanted) {
  if (same_food(wanted, r.what, r.name)) return true;
  // `pumpkin, mashed` is the puree by its telling word.
  if (wanted != nullptr && r.what != nullptr && is_a(rules, *wanted, "low-acid-puree") &&
      share_a_word(wanted->id, r.what->id) &&
      std::any_of(r.telling.begin(), r.telling.end(),
                  [](const telling_word* t) { return t->check == "low-acid-puree"; }))
    return true;
  return std::any_of(r.others.begin(), r.others.end(),
                     [&](const other_ingredient& o) { return same_food(wanted, o.what, o.name); });
}

/// `Vegetables`, `Meat`: nobody can tell a heading without a colon from an ingredient without an
/// amount. Read as that food, or as unknown, nothing is guessed away.
bool maybe_heading(const line_reading& r, const std::string& text) {
  return !r.amount && r.others.size() < 2 && text.find_first_of("0123456789:") == std::string::npos;
}

/// Letters and figures alone, to find a line again that was put together out of two.
std::string squeezed(const std::string& text) {
  std::string out;
  for (const char c : text) {
    const char l = lower(c);
    if ((l >= 'a' && l <= 'z') || is_digit(l)) out += l;
  }
  return out;
}

bool amount_right(const line_reading& r, const std::string& wanted) {
  if (wanted.empty()) return !r.amount;
  const std::string with_food = plain_line(wanted + " x");
  std::string_view rest = with_food;
  const line_amount w = take_amount(rest);
  if (!w.amount) return !r.amount && r.amount_text.empty();
  const auto near = [](std::int64_t a, std::int64_t b) { return a - b <= 60 && b - a <= 60; };
  return r.amount && r.amount->kind == w.amount->kind && r.amount->counts == w.amount->counts &&
         near(r.amount->low, w.amount->low) && near(r.amount->high, w.amount->high);
}

/// True where something of the line objects by itself, whatever it is called.
bool has_danger(const ingredient& i, const std::string& danger) {
  if (danger == "no-process") {
    // Other bans are as good: the thing is not let pass.
    if (!ban_on(rules, i).empty()) return true;
    const bool canned = std::any_of(i.can_as.begin(), i.can_as.end(), [](std::string_view id) {
      const process* p = find(rules.processes, id);
      return p != nullptr &&
             std::any_of(p->tables.begin(), p->tables.end(), [](const table& t) { return t.use; });
    });
    return !canned && !is_a(rules, i, "spice") && !is_a(rules, i, "salt") &&
           !is_a(rules, i, "sugar") && !is_a(rules, i, "water");
  }
  return is_a(rules, i, danger);
}

struct tally {
  int lines = 0, right = 0, headings = 0, food_wrong = 0, amount_wrong = 0, dangerous = 0;
  int missed = 0;
  int recipes = 0, agree = 0, wrongly_accepted = 0, because_missing = 0;
};

/// `pasted` is the recipe that the line has to be an ingredient of, or nothing.
void score_line(const node& n, const std::string& file, const std::optional<recipe>& pasted,
                tally& sum, bool all) {
  const std::string text = detail::plain_text(text_at(n, "text"));  // as a page has it
  const std::string food = text_at(n, "food");
  const std::string danger = text_at(n, "danger");
  const std::string kind = text_at(n, "class");
  ++sum.lines;
  const line_reading r = read_line(rules, text);
  const bool known = r.what != nullptr && r.strange.empty();
  bool food_right = false;
  if (food == "heading") {
    food_right = is_heading(rules, text);
    if (!food_right && maybe_heading(r, text)) {
      food_right = true;
      ++sum.headings;
    }
  } else if (food == "unknown") {
    food_right = !known;
  } else {
    food_right = known;
    for (const std::string& f : parts_of(food, food.find('|') != std::string::npos ? '|' : '+'))
      food_right = food_right && has_food(r, meant(f));
  }
  const bool amount_ok =
      food == "heading" || food == "unknown" ||
      (r.at_serving && danger == "at-serving") ||  // what is not in the jar needs no amount
      amount_right(r, text_at(n, "amount"));
  bool harmless = known && food != "heading";
  if (harmless) {
    std::vector<const ingredient*> there{r.what};
    for (const other_ingredient& o : r.others) there.push_back(o.what);
    if (danger == "none" || danger == "at-serving" || danger == "unknown") {
      const bool low = std::any_of(there.begin(), there.end(), [](const ingredient* i) {
        return i->kind == acidity::low_acid || i->kind == acidity::borderline || !i->traits.empty();
      });
      harmless = kind == "low-acid" && !low;
      if (danger == "at-serving") harmless = false;
      if (danger == "unknown") harmless = true;
    } else {
      harmless = !r.at_serving &&
                 std::none_of(there.begin(), there.end(),
                              [&](const ingredient* i) { return has_danger(*i, danger); }) &&
                 r.telling.empty();
    }
  }
  // A line that the reader of pasted text passes over is read wrongly, and harms where it matters.
  const bool found =
      !pasted || food == "heading" ||
      std::any_of(pasted->ingredients.begin(), pasted->ingredients.end(), [&](const word& w) {
        return squeezed(w.text).find(squeezed(text)) != std::string::npos;
      });
  if (!found) {
    ++sum.missed;
    food_right = false;
    harmless = harmless || (danger != "none" && danger != "unknown" && danger != "at-serving");
    if (all) std::printf("MISSED %s: \"%s\"\n", file.c_str(), text.c_str());
  }
  if (harmless) ++sum.dangerous;
  if (food_right && amount_ok) {
    ++sum.right;
  } else {
    sum.food_wrong += food_right ? 0 : 1;
    sum.amount_wrong += amount_ok ? 0 : 1;
  }
  if (!all || (food_right && amount_ok && !harmless)) return;
  std::string read = r.what == nullptr ? "?" : std::string(r.what->id);
  for (const other_ingredient& o : r.others)
    read += (o.instead ? " | " : " + ") + std::string(o.what->id);
  for (const std::string& s : r.strange) read += " !" + s;
  std::printf("%s%s%s %s: \"%s\"\n    wanted %s [%s] %s, read %s [%s]\n", harmless ? "DANGER " : "",
              food_right ? "" : "food ", amount_ok ? "" : "amount ", file.c_str(), text.c_str(),
              food.c_str(), text_at(n, "amount").c_str(), danger.c_str(), read.c_str(),
              r.amount_text.c_str());
}

/// The recipe as the library reads what somebody pasted; nothing for a list of lines.
std::optional<recipe> pasted_recipe(const node& root, const std::string& file) {
  const std::string form = text_at(root, "form");
  if (form != "text" && form != "json-ld") return std::nullopt;
  result<std::vector<recipe>> read = read_recipes(text_at(root, "recipe"), file);
  if (!read || read->size() != 1) {
    std::printf("%s: the recipe cannot be read\n", file.c_str());
    return recipe{};
  }
  return std::move(read->front());
}

/// The plan of a recipe: its keys, and its lines as ingredients.
document plan_of(const node& root, const std::string& file, const std::optional<recipe>& pasted) {
  document d;
  d.name = file;
  d.root.kind = node_kind::map;
  d.root.line = d.root.column = 1;
  if (const node* plan = find(root, "plan")) {
    for (const member& m : plan->members) d.root.members.push_back(m);
  }
  if (find(d.root, "title") == nullptr) {
    node title;
    title.kind = node_kind::scalar;
    title.text = text_at(root, "title");
    d.root.members.push_back({"title", 1, 1, title});
  }
  if (pasted) {
    add_recipe(d, *pasted);
    return d;
  }
  node list;
  list.kind = node_kind::sequence;
  if (const node* lines = find(root, "lines")) {
    int at = 1;
    for (const node& n : lines->items) {
      node line;
      line.kind = node_kind::scalar;
      line.style = scalar_style::quoted;
      line.text = text_at(n, "text");
      std::replace(line.text.begin(), line.text.end(), '\n', ' ');
      line.line = ++at;
      line.column = 1;
      list.items.push_back(std::move(line));
    }
  }
  d.root.members.push_back({"ingredients", 1, 1, std::move(list)});
  return d;
}

void score_recipe(const node& root, const std::string& file, const std::optional<recipe>& pasted,
                  tally& sum, bool all) {
  const document d = plan_of(root, file, pasted);
  const result<plan> p = read_plan(d);
  ++sum.recipes;
  if (!p) {
    std::printf("%s: no plan: %s\n", file.c_str(), p.errors()[0].message.c_str());
    return;
  }
  const report r = check(*p, rules);
  const std::string wanted = text_at(root, "verdict");
  const bool agrees = name_of(r.verdict) == wanted;
  const bool wrong = r.verdict == verdict::accepted && wanted != "accepted";
  sum.agree += agrees ? 1 : 0;
  sum.wrongly_accepted += wrong ? 1 : 0;
  std::string missing;
  if (const node* because = find(root, "because")) {
    for (const node& b : because->items) {
      const bool there = std::any_of(r.findings.begin(), r.findings.end(),
                                     [&](const finding& f) { return f.check == b.text; });
      if (!there) missing += " " + b.text;
    }
  }
  if (!missing.empty()) ++sum.because_missing;
  const std::string process = text_at(root, "process");
  const bool other = wanted == "accepted" && (r.process == nullptr || r.process->id != process);
  if (!all || (agrees && missing.empty() && !other)) return;
  std::printf("%s%s: wanted %s (%s)%s%s, is %s (%s)\n", wrong ? "WRONGLY ACCEPTED " : "",
              file.c_str(), wanted.c_str(), process.c_str(), missing.empty() ? "" : ", missing",
              missing.c_str(), std::string(name_of(r.verdict)).c_str(),
              r.process == nullptr ? "none" : std::string(r.process->id).c_str());
  for (const finding& f : r.findings) {
    if (f.outcome != outcome::none)
      std::printf("    %d %s: %s\n", f.line, f.check.c_str(), f.message.c_str());
  }
}

}  // namespace

int main(int argc, char** argv) {
  if (argc < 2) return 3;
  bool all = false;
  int least = 0;
  int least_verdicts = 0;
  for (int i = 2; i < argc; ++i) {
    const std::string_view option = argv[i];
    all = all || option == "--all";
    if (option == "--least" && i + 1 < argc) least = std::atoi(argv[i + 1]);
    if (option == "--least-verdicts" && i + 1 < argc) least_verdicts = std::atoi(argv[i + 1]);
  }
  std::vector<std::filesystem::path> files;
  for (const auto& e : std::filesystem::directory_iterator(argv[1])) {
    if (e.path().extension() == ".yaml") files.push_back(e.path());
  }
  std::sort(files.begin(), files.end());
  tally sum;
  std::vector<std::string> texts;
  for (const auto& path : files) {
    std::ifstream in(path, std::ios::binary);
    const std::string text((std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>());
    const result<std::vector<document>> read = read_yaml(text, path.filename().string());
    if (!read || read->size() != 1 || !read->front().faults.empty()) {
      std::printf("%s cannot be read\n", path.filename().c_str());
      if (read && !read->empty() && !read->front().faults.empty())
        std::printf("  %d: %s\n", read->front().faults[0].line,
                    read->front().faults[0].message.c_str());
      continue;
    }
    const node& root = read->front().root;
    const std::optional<recipe> pasted = pasted_recipe(root, path.filename().string());
    if (const node* lines = find(root, "lines")) {
      for (const node& n : lines->items) {
        score_line(n, path.filename().string(), pasted, sum, all);
        texts.push_back(text_at(n, "text"));
      }
    }
    score_recipe(root, path.filename().string(), pasted, sum, all);
  }
  const auto begin = std::chrono::steady_clock::now();
  std::size_t known = 0;
  for (const std::string& t : texts) known += read_line(rules, t).what != nullptr ? 1U : 0U;
  const auto ns =
      std::chrono::duration_cast<std::chrono::nanoseconds>(std::chrono::steady_clock::now() - begin)
          .count();
  std::printf(
      "%d lines, %d right (%.1f %%), food wrong %d, amount wrong %d, passed over %d, dangerous %d; "
      "%d "
      "lines may be "
      "headings; %zu names, %lld ns a line\n",
      sum.lines, sum.right, 100.0 * sum.right / std::max(1, sum.lines), sum.food_wrong,
      sum.amount_wrong, sum.missed, sum.dangerous, sum.headings, known,
      static_cast<long long>(ns / std::max<long long>(1, static_cast<long long>(texts.size()))));
  std::printf(
      "%d recipes, %d verdicts agree (%.1f %%), %d wrongly accepted, %d without an expected "
      "check\n",
      sum.recipes, sum.agree, 100.0 * sum.agree / std::max(1, sum.recipes), sum.wrongly_accepted,
      sum.because_missing);
  const bool harmful = sum.dangerous > 0 || sum.wrongly_accepted > 0;
  const bool enough = sum.lines > 0 && sum.right * 1000 >= sum.lines * least &&
                      sum.agree * 1000 >= sum.recipes * least_verdicts;
  return !harmful && enough ? 0 : 1;
}
