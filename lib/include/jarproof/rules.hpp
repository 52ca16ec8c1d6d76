// Loading an edition from rule files, and writing one down as C++ (target jarproof::yaml).
//
//   auto loaded = jarproof::load_edition({{"edition.yaml", text}, {"jars.yaml", text}, ...});
//   if (!loaded) for (const jarproof::problem& p : loaded.errors()) ...
//   const jarproof::report r = jarproof::check(plan, loaded->view());
// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "jarproof/edition.hpp"
#include "jarproof/result.hpp"

namespace jarproof {

/// One file of a rule folder; `name` is its path inside the folder, such as `checks/x.yaml`.
struct rule_file {
  std::string name;
  std::string text;
};

/// An edition that owns its data. Copies share it.
class owned_edition {
 public:
  owned_edition(edition view, std::vector<std::shared_ptr<const void>> storage)
      : view_(view), storage_(std::move(storage)) {}
  [[nodiscard]] const edition& view() const noexcept { return view_; }

 private:
  edition view_;
  std::vector<std::shared_ptr<const void>> storage_;
};

/// Reads and validates a whole rule folder. All errors of all files are reported together, each
/// with file, line and column. The layout is described in rules/FORMAT.md.
///
/// A folder whose edition.yaml says `extends: builtin` holds only what it adds to `base`, which
/// must outlive the result; without `base` such a folder is refused.
[[nodiscard]] result<owned_edition> load_edition(const std::vector<rule_file>& files,
                                                 const edition* base = nullptr);

/// Findings of one example as the rule files write them: `LINE:COLUMN check-id`, for every finding
/// with an outcome and every finding of the example's own check.
[[nodiscard]] std::vector<std::string> example_findings(const check_rule& check,
                                                        const example& shown, const edition& rules);

/// Runs the examples of one check: good ones must be accepted without the check's finding, bad ones
/// must give exactly what they expect. Returns what differs.
[[nodiscard]] problems run_examples(const check_rule& check, const edition& rules);

/// The same for every check of an edition.
[[nodiscard]] problems run_examples(const edition& rules);

/// The C++ source that compiles `rules` into the library as constant data. The same edition always
/// gives the same text, so that it also serves to compare two editions completely.
[[nodiscard]] std::string embedded_source(const edition& rules);

}  // namespace jarproof
