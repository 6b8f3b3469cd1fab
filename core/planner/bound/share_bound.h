#pragma once

#include "core/planner/bound/zone_kinds.h"
#include "core/planner/problem.h"

#include <cstdint>
#include <stop_token>

namespace warmbench::planner {

/// Thousandths that batch `index` costs at least, placed or not, with its slots' share of the mats.
[[nodiscard]] std::int64_t leastCost(const Problem& problem, const ZoneKinds& zones, int index);

/// A lower bound of the total in thousandths that looks at one batch at a time: the mat of a zone costs its
/// day's money however many slots are taken, so each slot taken pays at least an equal share of it. With that
/// share added to a batch's own costs, the batch costs at least its cheapest chain of stays, or its value.
/// Any part of it is a bound too: what was added up when `stop` is requested is returned.
[[nodiscard]] std::int64_t shareBound(const Problem& problem, const ZoneKinds& zones,
                                      const std::stop_token& stop);

} // namespace warmbench::planner
