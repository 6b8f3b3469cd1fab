#pragma once

#include <cstddef>
#include <string_view>

namespace warmbench {

/// Bytes of the UTF-8 character at the front of `text`; 0 where there is none. The ranges are those of table
/// 3-7 of the Unicode Standard: no surrogates, no overlong forms.
[[nodiscard]] std::size_t utf8Length(std::string_view text);

/// Characters of a text in UTF-8.
[[nodiscard]] std::size_t characters(std::string_view text);

} // namespace warmbench
