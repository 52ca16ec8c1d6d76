// Shared by the tests: a strict look at a page, stricter than any browser.
// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace fixtures {

/// What is wrong with a page; empty where nothing is. Elements close in order, attributes are
/// quoted, texts are escaped, ids are there once and where they are referred to, headings go down
/// by one level at a time, header cells say what they head, pictures have a title, and nothing is
/// run or fetched.
std::vector<std::string> faults_of_page(std::string_view page);

/// The same for a piece of a page, such as one picture.
std::vector<std::string> faults_of_markup(std::string_view markup);

/// The page without its tags, texts as they are read.
std::string words_of_page(std::string_view page);

/// A text on one line and without backticks: lines end elsewhere in a page, and backticks have
/// become elements.
std::string one_line(const std::string& text);

/// True where `what` stands in the text.
bool stands_in(const std::string& text, const std::string& what);

}  // namespace fixtures
