#pragma once

#include "core/book/house_book.h"

/// What something new starts with; each figure is there to be changed by her own.
namespace warmbench {

[[nodiscard]] House firstHouse(const HouseBook& book);
/// A bench under the others of its house, an aisle apart, as long as the house allows.
[[nodiscard]] Bench firstBench(const HouseBook& book, HouseId house);
/// A zone on the columns of its bench that lie right of its other zones.
[[nodiscard]] Zone firstZone(const HouseBook& book, BenchId bench);
/// A mat for a zone of this size, with the power and loss that mats under benches commonly have.
[[nodiscard]] Mat firstMat(const HouseBook& book, const Zone& zone);

} // namespace warmbench
