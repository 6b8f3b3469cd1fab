#pragma once

#include "core/book/house_book.h"

#include <vector>

/// Where a batch stands on a day when its containers stand apart.
namespace warmbench {

/// All stays of a batch that cover `day`: more than one where its containers stand apart.
[[nodiscard]] std::vector<const Stay*> staysOn(const HouseBook& book, BatchId batch, Day day);
/// The stay in which one container of a batch stands on `day`; null where it has no place.
[[nodiscard]] const Stay* stayOf(const HouseBook& book, BatchId batch, int container, Day day);
/// The zones in which a batch stands on `day`, those with most of its containers first.
[[nodiscard]] std::vector<ZoneId> zonesOn(const HouseBook& book, BatchId batch, Day day);
/// The same; where its last stay has ended and it stands there all the same, as nobody has taken it away, the
/// zones of that stay.
[[nodiscard]] std::vector<ZoneId> zonesLastOn(const HouseBook& book, BatchId batch, Day day);
/// Where a batch is to be looked for on `day`: `Bench 1 · A`, `last in Bench 1 · B` where its stay has ended,
/// `no place` where it never had one.
[[nodiscard]] Phrase whereOn(const HouseBook& book, BatchId batch, Day day);

} // namespace warmbench
