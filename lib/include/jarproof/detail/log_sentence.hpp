// Sentences about what to do at the canner, with words that are filled in.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <iterator>
#include <string>
#include <string_view>

#include "jarproof/detail/words.hpp"

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
  return with_words(sentence, [&](std::string_view name) -> std::string_view {
    if (name == "hold") return facts.hold;
    if (name == "time") return facts.time;
    if (name == "at") return facts.at;
    return name == "limit" ? std::string_view(facts.limit) : std::string_view();
  });
}

}  // namespace jarproof::detail
