// Work on many plans at once.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <exception>
#include <thread>
#include <vector>

namespace jarproof::cli {

/// Calls `work(i)` for every i below `count`, on up to `threads` threads; the first exception of
/// any is thrown again. What `work` makes must go to a place of its own for each i, so that the
/// number of threads changes nothing.
template <class Work>
void for_each_index(std::size_t count, std::size_t threads, Work&& work) {
  std::atomic<std::size_t> next{0};
  const std::size_t used = std::max<std::size_t>(1, std::min(threads, count));
  std::vector<std::exception_ptr> failed(used);
  const auto run = [&](std::size_t thread) {
    try {
      for (std::size_t i = next++; i < count; i = next++) work(i);
    } catch (...) {
      failed[thread] = std::current_exception();
      next = count;
    }
  };
  std::vector<std::thread> others;
  try {
    for (std::size_t t = 1; t < used; ++t) others.emplace_back(run, t);
  } catch (const std::exception&) {
    // The system has no more threads: fewer do the same work.
  }
  run(0);
  for (std::thread& t : others) t.join();
  for (const std::exception_ptr& e : failed) {
    if (e) std::rethrow_exception(e);
  }
}

}  // namespace jarproof::cli
