#pragma once

#include "core/book/house_book.h"

#include <string>

/// What a new target starts with.
namespace warmbench::season {

/// What a plant of a target is worth until somebody says otherwise: a start, so that it is planned at all.
inline constexpr Money usualWorth{100};

/// `T07` for 7.
[[nodiscard]] std::string numberedTargetName(std::size_t number);
/// The next free name of a target: `T07` after six.
[[nodiscard]] std::string nextTargetName(const HouseBook& book);

} // namespace warmbench::season
