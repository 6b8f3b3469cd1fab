#pragma once

#include "core/planner/packing/refill.h"

namespace warmbench::planner::packing {

/// Chooses and places candidates one after the other, the most valuable for its slots and days first, then in
/// orders that change a little from round to round; `rounds` of them. Never proves anything but that all of
/// them, the best of each choice, are placed.
[[nodiscard]] Refill refillGreedily(const Occupancy& zone, std::span<const Candidate> candidates, long rounds,
                                    std::uint64_t seed, const std::stop_token& stop);

} // namespace warmbench::planner::packing
