// SPDX-License-Identifier: MIT
#include "jarproof/rules.hpp"

#include <algorithm>
#include <map>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>

#include "jarproof/detail/line_text.hpp"
#include "jarproof/detail/words.hpp"
#include "jarproof/document.hpp"
#include "jarproof/yaml.hpp"
#include "name_checks.hpp"

namespace jarproof {
namespace {

class loader : public name_checks {
 public:
  [[nodiscard]] result<owned_edition> load(const std::vector<rule_file>& files,
                                           const edition* base) {
    for (const rule_file& f : files) read_file(f);
    begin_extension(base);
    for (const std::string_view name : single_files) {
      if (extends_ && name != "edition.yaml") continue;
      if (documents_.count(std::string(name)) == 0) {
        unread_.insert(std::string(name));
        errors_.push_back({std::string(name), 1, 1, "", "this rule file is missing",
                           "add it, or say `extends: builtin` in edition.yaml (rules/FORMAT.md)"});
      }
    }
    for (const auto& [name, d] : documents_) read_document(name, d.root);
    if (edition_.processes.empty() && processes_.empty() && !extends_) {
      errors_.push_back(
          {"processes", 1, 1, "", "no process file was given", "add processes/<food-id>.yaml"});
    }
    edition_.processes = storage_.keep(std::move(processes_));
    edition_.ingredients = storage_.keep(std::move(ingredients_));
    edition_.checks = storage_.keep(std::move(checks_));
    if (base_ != nullptr) add_to_base();
    index_names();
    for (const auto& later : later_) later();
    check_names();
    if (!errors_.empty()) {
      std::stable_sort(errors_.begin(), errors_.end(), [](const problem& a, const problem& b) {
        return std::tie(a.file, a.line, a.column) < std::tie(b.file, b.line, b.column);
      });
      return errors_;
    }
    return owned_edition(edition_, storage_.take());
  }

 private:
  static constexpr std::string_view single_files[] = {"edition.yaml",  "sources.yaml",
                                                      "altitude.yaml", "jars.yaml",
                                                      "methods.yaml",  "vocabulary.yaml"};
  static constexpr std::string_view optional_files[] = {
      "acidity.yaml", "canning-day.yaml", "seasonings.yaml", "ways.yaml", "without-process.yaml"};
  std::vector<process> processes_;
  std::vector<ingredient> ingredients_;
  std::vector<check_rule> checks_;

  /// Whether the folder adds to the built-in edition; decides what its files have to hold.
  void begin_extension(const edition* base) {
    const auto file = documents_.find("edition.yaml");
    const node* extends = file == documents_.end() ? nullptr : find(file->second.root, "extends");
    if (extends == nullptr) return;
    extends_ = true;
    base_ = base;
    if (extends->text != "builtin") {
      fault("edition.yaml", extends->line, extends->column,
            "`" + extends->text + "` is no edition that can be extended",
            "write `extends: builtin`");
    } else if (base == nullptr) {
      fault("edition.yaml", extends->line, extends->column,
            "there is no built-in edition here to extend", "give a whole edition");
    }
    for (const char* name : {"canning-day.yaml", "jars.yaml", "methods.yaml"}) {
      if (documents_.count(name) != 0)
        fault(name, 1, 1, "jars, methods and the canning day belong to the built-in edition",
              "remove this file");
    }
  }

  /// What the folder holds, behind what the base holds. It adds and changes nothing: an id of the
  /// base is refused.
  template <class T>
  void append(list<T> edition::*entries_of) {
    std::vector<T> all((base_->*entries_of).begin(), (base_->*entries_of).end());
    for (const T& own : edition_.*entries_of) {
      if (find(base_->*entries_of, own.id) != nullptr) {
        fault(file_of(static_cast<const T*>(nullptr), own.id), 1, 1,
              "the built-in edition has a `" + std::string(own.id) + "` already",
              "choose another id; an addition changes nothing that is built in");
      }
      all.push_back(own);
    }
    edition_.*entries_of = storage_.keep(std::move(all));
  }
  void append_words(list<std::string_view>& words, list<std::string_view> base) {
    std::vector<std::string_view> all(base.begin(), base.end());
    all.insert(all.end(), words.begin(), words.end());
    words = storage_.keep(std::move(all));
  }

  void add_to_base() {
    const std::string own = std::string(edition_.name) + ", " + std::string(edition_.version);
    std::vector<process> processes(edition_.processes.begin(), edition_.processes.end());
    for (process& p : processes) p.added_by = storage_.keep(own);
    edition_.processes = storage_.keep(std::move(processes));
    edition_.name = storage_.keep(std::string(base_->name) + " " + std::string(base_->version) +
                                  " with " + std::string(edition_.name));
    edition_.caution =
        storage_.keep(std::string(base_->caution) + " " + std::string(edition_.caution));
    edition_.jars = base_->jars;
    edition_.methods = base_->methods;
    edition_.day = base_->day;
    edition_.metric_jar_says = base_->metric_jar_says;
    edition_.highest_ft = base_->highest_ft;
    edition_.run = base_->run;
    edition_.after = base_->after;
    append(&edition::sources);
    append(&edition::bands);
    append(&edition::forms);
    append(&edition::prepared);
    append(&edition::processes);
    append(&edition::ingredients);
    append(&edition::seasonings);
    append(&edition::telling_words);
    append(&edition::step_words);
    append(&edition::spellings);
    append(&edition::untested_foods);
    append(&edition::checks);
    append(&edition::left_outs);
    append(&edition::way_steps);
    append(&edition::dry_yields);
    append_words(edition_.plain_words, base_->plain_words);
    append_words(edition_.heading_words, base_->heading_words);
    append_words(edition_.acid_words, base_->acid_words);
    append_words(edition_.cut_words, base_->cut_words);
    append_words(edition_.line_words, base_->line_words);
    for (const phrase_list& l : phrase_lists)
      append_words(edition_.phrases.*l.words, base_->phrases.*l.words);
    std::vector<ph_entry> ph(base_->ph.begin(), base_->ph.end());
    for (const ph_entry& e : edition_.ph) ph.push_back(e);
    edition_.ph = storage_.keep(std::move(ph));
  }

  /// Ingredients and names in order, so that a line of a recipe is looked up fast.
  void index_names() {
    std::vector<ingredient> sorted(edition_.ingredients.begin(), edition_.ingredients.end());
    std::stable_sort(sorted.begin(), sorted.end(),
                     [](const ingredient& a, const ingredient& b) { return a.id < b.id; });
    edition_.ingredients = storage_.keep(std::move(sorted));
    std::vector<ingredient_name> names;
    for (std::size_t i = 0; i < edition_.ingredients.size(); ++i) {
      for (const std::string_view n : edition_.ingredients[i].names)
        names.push_back({n, static_cast<int>(i)});
    }
    const auto by_name = [](const ingredient_name& a, const ingredient_name& b) {
      return a.name < b.name;
    };
    std::stable_sort(names.begin(), names.end(), by_name);
    // Lines are read without accents; a name that has them is found by its plain letters too.
    std::vector<ingredient_name> plain;
    for (const ingredient_name& n : names) {
      const std::string letters = detail::plain_line(n.name);
      const ingredient_name wanted{letters, n.at};
      if (letters == n.name || std::binary_search(names.begin(), names.end(), wanted, by_name) ||
          std::any_of(plain.begin(), plain.end(),
                      [&](const ingredient_name& p) { return p.name == letters; }))
        continue;
      plain.push_back({storage_.keep(letters), n.at});
    }
    names.insert(names.end(), plain.begin(), plain.end());
    std::stable_sort(names.begin(), names.end(), by_name);
    edition_.ingredient_names = storage_.keep(std::move(names));
    std::vector<spelling> spellings(edition_.spellings.begin(), edition_.spellings.end());
    std::sort(spellings.begin(), spellings.end(),
              [](const spelling& a, const spelling& b) { return a.id < b.id; });
    edition_.spellings = storage_.keep(std::move(spellings));
    sort_words(edition_.line_words);
    for (const phrase_list& l : phrase_lists) sort_words(edition_.phrases.*l.words);
  }
  void sort_words(list<std::string_view>& words) {
    std::vector<std::string_view> sorted(words.begin(), words.end());
    std::sort(sorted.begin(), sorted.end());
    words = storage_.keep(std::move(sorted));
  }

  void read_file(const rule_file& f) {
    result<std::vector<document>> read = read_yaml(f.text, f.name);
    if (!read) {
      errors_.insert(errors_.end(), read.errors().begin(), read.errors().end());
      documents_[f.name];  // so that it does not count as missing too
      unread_.insert(f.name);
      return;
    }
    if (read->size() != 1) {
      fault(f.name, 1, 1,
            read->empty() ? "the rule file is empty" : "the rule file holds several documents",
            "write exactly one document");
      documents_[f.name];
      unread_.insert(f.name);
      return;
    }
    document& d = read->front();
    errors_.insert(errors_.end(), d.faults.begin(), d.faults.end());
    if (documents_.count(f.name) != 0)
      fault(f.name, 1, 1, "this rule file was given twice", "give it once");
    if (d.broken) unread_.insert(f.name);
    documents_[f.name] = d.broken ? document{} : std::move(d);
  }

  void read_document(const std::string& name, const node& root) {
    file_ = name;
    if (root.line == 0) return;  // reported already
    const bool single = std::find(std::begin(single_files), std::end(single_files), name) !=
                            std::end(single_files) ||
                        std::find(std::begin(optional_files), std::end(optional_files), name) !=
                            std::end(optional_files);
    const auto in_folder = [&](const std::string& folder) {
      return name.rfind(folder, 0) == 0 && name.find('/', folder.size()) == std::string::npos &&
             name.size() > 5 && name.compare(name.size() - 5, 5, ".yaml") == 0;
    };
    const bool in_processes = in_folder("processes/");
    const bool in_checks = in_folder("checks/");
    const bool in_ingredients = in_folder("ingredients/");
    if (!single && !in_processes && !in_checks && !in_ingredients) {
      fault(root, "this is no rule file of an edition",
            std::string("use processes/<food-id>.yaml, checks/<check-id>.yaml, ") +
                "ingredients/<group>.yaml, " +
                "acidity.yaml, canning-day.yaml, seasonings.yaml, ways.yaml, " +
                "without-process.yaml, " + detail::joined(single_files));
      return;
    }
    if (root.kind != node_kind::map) {
      fault(root, "a rule file holds keys with values", "write `key: value` lines");
      return;
    }
    if (name == "edition.yaml") read_edition(root);
    if (name == "sources.yaml")
      edition_.sources = entries<source>(root, "sources", &loader::read_source);
    if (name == "altitude.yaml") read_altitude(root);
    if (name == "jars.yaml") read_jars(root);
    if (name == "methods.yaml")
      edition_.methods = entries<method>(root, "methods", &loader::read_method);
    if (name == "vocabulary.yaml") read_vocabulary(root);
    if (name == "acidity.yaml") read_ph(root);
    if (name == "seasonings.yaml")
      edition_.seasonings = entries<seasoning_limit>(root, "seasonings", &loader::read_seasoning);
    if (name == "ways.yaml") read_ways(root);
    if (name == "canning-day.yaml") read_canning_day(root);
    if (name == "without-process.yaml")
      edition_.untested_foods = entries<untested_food>(root, "foods", &loader::read_untested);
    if (in_ingredients) {
      for (const ingredient& i :
           entries<ingredient>(root, "ingredients", &loader::read_ingredient)) {
        ingredients_.push_back(i);
      }
    }
    if (in_processes) processes_.push_back(read_process(root, stem(name)));
    if (in_checks) checks_.push_back(read_check(root, stem(name)));
  }
};

}  // namespace

result<owned_edition> load_edition(const std::vector<rule_file>& files, const edition* base) {
  return loader().load(files, base);
}

}  // namespace jarproof
