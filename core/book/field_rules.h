#pragma once

#include "core/book/house_book.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

/// What every field keeps, whatever it belongs to: it can be written in any format and read back the same,
/// and sums of it do not overflow.
namespace warmbench {

/// No number, and no quantity in its whole units, is larger than this, either way.
inline constexpr std::int64_t largestNumber = 1'000'000'000;
/// The largest number that a thing has.
inline constexpr std::int64_t largestId = 999'999'999'999;
/// Bytes of a text.
inline constexpr std::size_t longestText = 100'000;
/// Entries of a list.
inline constexpr std::size_t longestList = 10'000;

/// What keeps bytes from being a text: they are not UTF-8, too many, or have a control character other than a
/// tab or a new line; nothing where they are one.
[[nodiscard]] std::optional<std::string> textFault(std::string_view text);

/// The first field of a thing that holds what no such field can hold, or refers to a thing that is not there.
template <class E>
[[nodiscard]] Outcome checkFields(const HouseBook& book, const E& thing);

/// What people call a thing, for which its own fields are enough: `27-048-A`, `Bench 1`, `stay 7`.
template <class E>
[[nodiscard]] std::string plainName(const E& thing) {
    if constexpr (requires { thing.code; })
        if (!thing.code.empty()) return thing.code;
    if constexpr (requires { thing.name; })
        if (!thing.name.empty()) return thing.name;
    return std::string(kindName<E>.one) + " " + std::to_string(thing.id.number);
}

} // namespace warmbench
