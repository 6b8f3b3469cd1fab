#pragma once

#include "core/book/house_book.h"

#include <vector>

namespace warmbench {

/// A book as it was before some of its latest changes, which are given the last first. Each is taken back by
/// its inverse, so the time depends on how many they are, not on how old the book is. Refused where they are
/// not the book's latest ones.
[[nodiscard]] Result<HouseBook> bookBefore(HouseBook now, const std::vector<Change>& latestFirst);

} // namespace warmbench
