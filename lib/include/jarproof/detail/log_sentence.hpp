// Sentences about what to do at the canner, with words that are filled in.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <iterator>
#include <string>
#include <string_view>

namespace jarproof::detail {

/// Words that the sentences of a run may use; the loader refuses any other.
inline constexpr std::string_view log_words[] = {"hold", "time", "at", "limit"};

struct log_sentence_facts {
  std::string hold;   ///< what the canner holds: `at least 13 psi (90 kPa)`
  std::string time;   ///< the process time: `75 min`
  std::string at;     ///< a time of the log: `18:40`, `minute 87`
  std::string limit;  ///< a limit in words: `10 min`
};

/// The first word in braces that cannot be filled in; empty where there is none.
[[nodiscard]] inline std::string unknown_log_word(std::string_view sentence) {
  for (std::size_t at = sentence.find('{'); at != std::string_view::npos;
       at = sentence.find('{', at + 1)) {
    const std::string_view name = sentence.substr(at + 1, sentence.find('}', at) - at - 1);
    if (std::find(std::begin(log_words), std::end(log_words), name) == std::end(log_words))
      return std::string(name);
  }
  return {};
}

[[nodiscard]] inline std::string filled(std::string_view sentence,
                                        const log_sentence_facts& facts) {
  std::string out;
  while (!sentence.empty()) {
    const std::size_t open = sentence.find('{');
    out += sentence.substr(0, open);
    if (open == std::string_view::npos) break;
    sentence.remove_prefix(open + 1);
    const std::size_t close = sentence.find('}');
    const std::string_view name = sentence.substr(0, close);
    if (name == "hold") out += facts.hold;
    if (name == "time") out += facts.time;
    if (name == "at") out += facts.at;
    if (name == "limit") out += facts.limit;
    sentence.remove_prefix(close == std::string_view::npos ? sentence.size() : close + 1);
  }
  return out;
}

}  // namespace jarproof::detail
