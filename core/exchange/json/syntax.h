#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace warmbench::json {

/// Lists and objects may be nested this deep.
inline constexpr int deepestNesting = 64;

/// What keeps a text from being JSON (RFC 8259, UTF-8), with its line and column; nothing where it is JSON.
/// The words NaN, Infinity and -Infinity are let through as numbers, so that they can be refused where
/// they stand.
[[nodiscard]] std::optional<std::string> syntaxFault(std::string_view text);

} // namespace warmbench::json
