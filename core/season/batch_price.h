#pragma once

#include "core/book/house_book.h"
#include "core/planner/problem.h"

namespace warmbench::season {

/// The worth of one plant of a target; without a target the best that any has, and no less than 1 of the
/// currency: whoever planned it did so for reasons of their own.
[[nodiscard]] Money worthOfPlant(const HouseBook& book, std::optional<TargetId> target);

/// Prices a batch whose containers are filled in: its value, hundredths, what each late day loses of that,
/// and what moving it costs.
void price(planner::Batch& batch, std::int64_t value, const Nursery& nursery);

} // namespace warmbench::season
