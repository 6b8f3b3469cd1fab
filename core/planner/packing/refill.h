#pragma once

#include "core/planner/packing/occupancy.h"

#include <cstdint>
#include <span>
#include <stop_token>
#include <vector>

namespace warmbench::planner::packing {

/// What may be placed in a zone, whole or not at all.
struct Candidate {
    int from = 0;
    int to = 1; ///< first day after
    int containers = 1;
    Footprint footprint;
    bool turn = false;
    std::int64_t value = 0; ///< gained when placed, above 0, in the caller's unit of money
    int choice = -1;        ///< of candidates with one `choice` from 0 on, at most one is placed
};

struct RefillLimits {
    long steps = 100000; ///< choices tried and rounds of packing
    long exactSteps =
        20000; ///< nodes of exact search when a choice is not placed otherwise; `stop` waits for them
    std::uint64_t seed = 1;
    std::int64_t atLeast = 0; ///< only a greater value than this is of use
};

struct Refill {
    std::vector<std::vector<SlotRect>> slots; ///< by candidate; empty where it is not placed
    std::int64_t value = 0;
    bool proven = false; ///< no choice is worth more (than the greater of `value` and `atLeast`)
    long steps = 0;      ///< nodes used
};

/// Chooses the candidates of the greatest value that can stand together in the free slots of `zone`
/// (two-dimensional cutting, Beasley 1985, where all stand on the same days). Any-time: `stop` or the steps
/// end it with the best so far.
[[nodiscard]] Refill refill(const Occupancy& zone, std::span<const Candidate> candidates,
                            const RefillLimits& limits = {}, const std::stop_token& stop = {});

} // namespace warmbench::planner::packing
