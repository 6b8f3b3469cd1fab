#pragma once

#include "core/season/need.h"

#include <vector>

namespace warmbench::season {

/// Batches that a request lets be planned again: planned and not struck, with figures that can be, for its
/// days or for one before them that has slipped by. Those for its days have all their containers in each of
/// their stays, one stay after the other, or wait for a place with some of them; others stand as people put
/// them.
[[nodiscard]] std::vector<BatchId> plannedAgain(const HouseBook& book, const PlanRequest& request);

/// Whether a batch can stay as it is planned: its day is not before the first one planned, and all of it has
/// a place.
[[nodiscard]] bool canStayAsPlanned(const HouseBook& book, const Batch& batch, Day from);

/// How a planned batch can be struck: by its own recipe, on any of the request's days of the season in which
/// it is planned, its own day with them, as long as it is ready by `due`. One that has slipped by: on any of
/// the request's days of a season, in time or as late as a target may be met (mostDaysLate); refused where
/// there is none. Its recipe's figures can be.
[[nodiscard]] Result<Way> wayOfPlanned(const HouseBook& book, const Batch& batch, Day due,
                                       const PlanRequest& request);

/// The book without these planned batches.
[[nodiscard]] HouseBook without(HouseBook book, const std::vector<BatchId>& batches);

} // namespace warmbench::season
