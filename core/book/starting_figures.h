#pragma once

#include "core/book/house_book.h"

#include <optional>

/// What something new starts with; each figure is there to be changed by her own.
namespace warmbench {

[[nodiscard]] House firstHouse(const HouseBook& book);
/// A bench of a house with a name that none of the others has, not placed yet.
[[nodiscard]] Bench unplacedBench(const HouseBook& book, HouseId house);
/// The same as large as a free place of the house allows: an aisle from the others where that is possible,
/// else beside them. Nothing where the house is full.
[[nodiscard]] std::optional<Bench> firstBench(const HouseBook& book, HouseId house);
/// A zone on the columns of its bench that lie right of its other zones.
[[nodiscard]] Zone firstZone(const HouseBook& book, BenchId bench);
/// A mat for a zone of this size, with the power and loss that mats under benches commonly have.
[[nodiscard]] Mat firstMat(const HouseBook& book, const Zone& zone);

} // namespace warmbench
