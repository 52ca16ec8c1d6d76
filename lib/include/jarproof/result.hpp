// What went wrong while reading, and a value that may be missing because of it.
//
//   jarproof::result<jarproof::plan> r = ...;
//   if (!r) for (const jarproof::problem& p : r.errors()) use(p.line, p.message, p.write);
//
// Nothing here throws. A fault in the plan itself (too short a time, say) is no problem in this
// sense: it is a finding in the report.
// SPDX-License-Identifier: MIT
#pragma once

#include <cassert>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace jarproof {

/// One reason why a text could not be read.
struct problem {
  std::string file;     ///< display name of the text
  int line = 0;         ///< 1-based; 0 where the format has no lines (JSON)
  int column = 0;       ///< 1-based, in characters; 0 where `line` is 0
  std::string path;     ///< keys that lead to the place, such as `canner.quarts`; may be empty
  std::string message;  ///< what is wrong
  std::string write;    ///< what to write instead
};

/// All independent problems of one text, in the order of their places.
using problems = std::vector<problem>;

/// Either a `T` or the problems that kept it from being made.
template <class T>
class result {
 public:
  result(T value) : state_(std::in_place_index<0>, std::move(value)) {}
  result(problems errors) : state_(std::in_place_index<1>, std::move(errors)) {}

  [[nodiscard]] explicit operator bool() const noexcept { return state_.index() == 0; }
  /// Only where the result converts to true.
  [[nodiscard]] const T& operator*() const noexcept {
    const T* value = std::get_if<0>(&state_);
    assert(value != nullptr);
    return *value;
  }
  [[nodiscard]] T& operator*() noexcept {
    T* value = std::get_if<0>(&state_);
    assert(value != nullptr);
    return *value;
  }
  [[nodiscard]] const T* operator->() const noexcept { return &**this; }
  [[nodiscard]] T* operator->() noexcept { return &**this; }
  /// Only where the result converts to false.
  [[nodiscard]] const problems& errors() const noexcept {
    const problems* errors = std::get_if<1>(&state_);
    assert(errors != nullptr);
    return *errors;
  }

 private:
  std::variant<T, problems> state_;
};

}  // namespace jarproof
