#pragma once

#include "core/season/need.h"

#include <vector>

namespace warmbench::season {

/// Batches that a request lets be planned again: planned for its days, not struck, with figures that can be,
/// and with all their containers in each of their stays, one stay after the other.
[[nodiscard]] std::vector<BatchId> plannedAgain(const HouseBook& book, const PlanRequest& request);

/// How a planned batch can be struck: by its own recipe, on any of the request's days of the season in which
/// it is planned, its own day with them, as long as it is ready by `due`. Nothing where its recipe's figures
/// can't be.
[[nodiscard]] std::optional<Way> wayOfPlanned(const HouseBook& book, const Batch& batch, Day due,
                                              const PlanRequest& request);

/// The book without these planned batches.
[[nodiscard]] HouseBook without(HouseBook book, const std::vector<BatchId>& batches);

} // namespace warmbench::season
