// The library's own version; the rule data carries a version of its own.
// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace jarproof {

/// Version of the library, as printed in every report.
inline constexpr std::string_view library_version = "0.1.0";

/// Name and revision of the report layout written by `format/json.hpp`.
inline constexpr std::string_view report_format = "jarproof-report/1";

/// The same of the layout written by `format/log_json.hpp`.
inline constexpr std::string_view log_format = "jarproof-log/1";

}  // namespace jarproof
