// Plain text helpers: comparing names as people write them, nearest words, sentences from lists.
// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

namespace jarproof::detail {

[[nodiscard]] constexpr bool is_space(char c) noexcept {
  return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}

[[nodiscard]] constexpr bool is_digit(char c) noexcept { return c >= '0' && c <= '9'; }

/// ASCII only: food names in other scripts are compared as they stand, whatever the locale.
[[nodiscard]] constexpr char lower(char c) noexcept {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

[[nodiscard]] constexpr std::string_view trim(std::string_view text) noexcept {
  while (!text.empty() && is_space(text.front())) text.remove_prefix(1);
  while (!text.empty() && is_space(text.back())) text.remove_suffix(1);
  return text;
}

/// Lower case, hyphens and runs of white space as one blank: `Green-Beans ` is `green beans`.
[[nodiscard]] inline std::string folded(std::string_view text) {
  std::string out;
  for (const char c : trim(text)) {
    const char plain = c == '-' || c == '_' || is_space(c) ? ' ' : lower(c);
    if (plain == ' ' && (out.empty() || out.back() == ' ')) continue;
    out.push_back(plain);
  }
  while (!out.empty() && out.back() == ' ') out.pop_back();
  return out;
}

/// True where `text`, folded, is `wanted`, which is folded already. Compares character by
/// character, so that a long list of names is passed through without copies.
[[nodiscard]] constexpr bool folds_to(std::string_view text, std::string_view wanted) noexcept {
  std::size_t at = 0;
  bool blank = false;
  for (const char c : trim(text)) {
    const char plain = c == '-' || c == '_' || is_space(c) ? ' ' : lower(c);
    if (plain == ' ') {
      blank = at > 0;
      continue;
    }
    if (blank) {
      if (at >= wanted.size() || wanted[at] != ' ') return false;
      ++at;
      blank = false;
    }
    if (at >= wanted.size() || wanted[at] != plain) return false;
    ++at;
  }
  return at == wanted.size();
}

/// Number of single-character edits (insert, delete, replace, swap neighbours) between two words;
/// more than `most` says only that it is more.
[[nodiscard]] inline std::size_t distance(std::string_view a, std::string_view b,
                                          std::size_t most = std::string_view::npos) {
  if (std::max(a.size(), b.size()) - std::min(a.size(), b.size()) > most) return most + 1;
  std::vector<std::size_t> before(b.size() + 1);
  std::vector<std::size_t> last(b.size() + 1);
  std::vector<std::size_t> now(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) last[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    now[0] = i;
    std::size_t least = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t replace = last[j - 1] + (a[i - 1] == b[j - 1] ? 0U : 1U);
      now[j] = std::min({last[j] + 1, now[j - 1] + 1, replace});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) {
        now[j] = std::min(now[j], before[j - 2] + 1);
      }
      least = std::min(least, now[j]);
    }
    if (least > most) return most + 1;
    std::swap(before, last);
    std::swap(last, now);
  }
  return last[b.size()];
}

/// The word nearest to `wanted`, or empty where none is near enough to be a slip of the pen.
template <class Words>
[[nodiscard]] std::string nearest(std::string_view wanted, const Words& words) {
  // A long text is no slip of the pen for a short word, and comparing it would be slow.
  if (wanted.size() > 64) return {};
  const std::string from = folded(wanted);
  std::string best;
  std::size_t best_distance = std::max<std::size_t>(1, from.size() / 3) + 1;
  for (const auto& word : words) {
    const std::size_t d = distance(from, folded(word));
    if (d < best_distance) {
      best_distance = d;
      best = std::string(word);
    }
  }
  return best;
}

/// `a`, `a or b`, `a, b or c`.
template <class Words>
[[nodiscard]] std::string joined(const Words& words, std::string_view last = "or") {
  std::string out;
  std::size_t index = 0;
  const std::size_t count =
      static_cast<std::size_t>(std::distance(std::begin(words), std::end(words)));
  for (const auto& word : words) {
    if (index > 0) {
      out += index + 1 == count ? " " + std::string(last) + " " : std::string(", ");
    }
    out += std::string(word);
    ++index;
  }
  return out;
}

/// First byte that is no part of valid UTF-8, or npos. Overlong forms, surrogates and values
/// above U+10FFFF are invalid (RFC 3629, section 4).
[[nodiscard]] constexpr std::size_t invalid_utf8(std::string_view text) noexcept {
  std::size_t i = 0;
  while (i < text.size()) {
    const auto byte = [&](std::size_t at) { return static_cast<unsigned char>(text[at]); };
    const unsigned char first = byte(i);
    std::size_t more = 0;
    if (first < 0x80) {
      more = 0;
    } else if (first >= 0xC2 && first <= 0xDF) {
      more = 1;
    } else if (first >= 0xE0 && first <= 0xEF) {
      more = 2;
    } else if (first >= 0xF0 && first <= 0xF4) {
      more = 3;
    } else {
      return i;
    }
    if (i + more >= text.size() && more > 0) return i;
    for (std::size_t k = 1; k <= more; ++k) {
      if ((byte(i + k) & 0xC0) != 0x80) return i;
    }
    if ((first == 0xE0 && byte(i + 1) < 0xA0) || (first == 0xED && byte(i + 1) > 0x9F) ||
        (first == 0xF0 && byte(i + 1) < 0x90) || (first == 0xF4 && byte(i + 1) > 0x8F)) {
      return i;
    }
    i += more + 1;
  }
  return std::string_view::npos;
}

/// Length of the control character at the front of `text`, or 0: U+0000 to U+001F, U+007F, and
/// U+0080 to U+009F, which some terminals obey.
[[nodiscard]] constexpr std::size_t control_length(std::string_view text) noexcept {
  const auto byte = [&](std::size_t at) { return static_cast<unsigned char>(text[at]); };
  if (text.empty()) return 0;
  if (byte(0) < 0x20 || byte(0) == 0x7F) return 1;
  const bool high = text.size() > 1 && byte(0) == 0xC2 && byte(1) >= 0x80 && byte(1) <= 0x9F;
  return high ? 2 : 0;
}

/// True where a control character other than a line end stands in `text`.
[[nodiscard]] constexpr bool has_control(std::string_view text) noexcept {
  for (; !text.empty(); text.remove_prefix(1)) {
    if (text.front() != '\n' && control_length(text) > 0) return true;
  }
  return false;
}

/// `text` as valid UTF-8: bytes that are none become U+FFFD.
[[nodiscard]] inline std::string valid_utf8(std::string_view text) {
  std::string out;
  for (std::size_t bad = invalid_utf8(text); bad != std::string_view::npos;
       bad = invalid_utf8(text)) {
    out += text.substr(0, bad);
    out += "\xEF\xBF\xBD";
    text.remove_prefix(bad + 1);
  }
  return out += text;
}

/// `text` as it may be shown on a terminal: control characters become U+FFFD.
[[nodiscard]] inline std::string printable(std::string_view text) {
  const std::string valid = valid_utf8(text);
  std::string_view rest = valid;
  std::string out;
  while (!rest.empty()) {
    const std::size_t control = rest.front() == '\n' ? 0 : control_length(rest);
    if (control == 0) {
      out += rest.front();
      rest.remove_prefix(1);
    } else {
      out += "\xEF\xBF\xBD";
      rest.remove_prefix(control);
    }
  }
  return out;
}

/// Characters of valid UTF-8 (code points).
[[nodiscard]] constexpr std::size_t characters(std::string_view text) noexcept {
  std::size_t count = 0;
  for (const char c : text) {
    if ((static_cast<unsigned char>(c) & 0xC0) != 0x80) ++count;
  }
  return count;
}

/// Where the preparation behind a food begins: a comma, but not one that groups thousands.
[[nodiscard]] inline std::size_t preparation_comma(std::string_view line) noexcept {
  for (std::size_t at = line.find(','); at != std::string_view::npos; at = line.find(',', at + 1)) {
    const bool grouping =
        at > 0 && at + 1 < line.size() && is_digit(line[at - 1]) && is_digit(line[at + 1]);
    if (!grouping) return at;
  }
  return std::string_view::npos;
}

/// The sentence with each `{word}` replaced by what `word_for(word)` gives.
template <class WordFor>
[[nodiscard]] std::string with_words(std::string_view sentence, WordFor&& word_for) {
  std::string out;
  while (!sentence.empty()) {
    const std::size_t open = sentence.find('{');
    out += sentence.substr(0, open);
    if (open == std::string_view::npos) break;
    sentence.remove_prefix(open + 1);
    const std::size_t close = sentence.find('}');
    out += word_for(sentence.substr(0, close));
    sentence.remove_prefix(close == std::string_view::npos ? sentence.size() : close + 1);
  }
  return out;
}

}  // namespace jarproof::detail
