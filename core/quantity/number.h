#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace warmbench {

/// Reads a finite decimal number such as `-3`, `+0.5`, `.5` or `2.5e-3`, exactly and with a point whatever
/// the locale; nothing for anything else (blanks, `nan`, `inf`, hexadecimals, numbers too large for a
/// double).
std::optional<double> numberFromText(std::string_view text);

/// Reads a number whose value is whole and at most 2^53 in size, such as `12`, `12.0` or `1e5`.
std::optional<std::int64_t> wholeNumberFromText(std::string_view text);

/// The shortest decimal text that reads back as the same double.
std::string numberText(double value);

} // namespace warmbench
