// A constant view of consecutive values; the rule data is made of these.
// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>

namespace jarproof {

/// Non-owning view of `size()` constant values; whoever owns the values must outlive it.
template <class T>
class list {
 public:
  constexpr list() noexcept = default;
  constexpr list(const T* first, std::size_t size) noexcept : first_(first), size_(size) {}
  template <std::size_t N>
  constexpr list(const T (&values)[N]) noexcept : first_(values), size_(N) {}

  [[nodiscard]] constexpr const T* begin() const noexcept { return first_; }
  [[nodiscard]] constexpr const T* end() const noexcept { return first_ + size_; }
  [[nodiscard]] constexpr std::size_t size() const noexcept { return size_; }
  [[nodiscard]] constexpr bool empty() const noexcept { return size_ == 0; }
  /// `index` must be below `size()`.
  [[nodiscard]] constexpr const T& operator[](std::size_t index) const noexcept {
    return first_[index];
  }

  /// True where a value equals `wanted`.
  template <class U>
  [[nodiscard]] constexpr bool contains(const U& wanted) const noexcept {
    for (const T& value : *this) {
      if (value == wanted) return true;
    }
    return false;
  }

 private:
  const T* first_ = nullptr;
  std::size_t size_ = 0;
};

}  // namespace jarproof
