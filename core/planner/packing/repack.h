#pragma once

#include "core/planner/packing/occupancy.h"
#include "core/planner/packing/verdict.h"

#include <cstdint>
#include <span>
#include <vector>

namespace warmbench::planner::packing {

/// One stay in a zone that is packed as a whole.
struct Load {
    int from = 0;
    int to = 1; ///< first day after
    int containers = 1;
    Footprint footprint;
    bool turn = false;
    std::vector<SlotRect> fixed;     ///< held and pinned: stands here and nowhere else
    std::vector<SlotRect> preferred; ///< slots that save `moveCost`
    int follows = -1;                ///< the load, earlier in the list, whose slots save `moveCost` when kept
    std::int64_t moveCost = 0;       ///< in the caller's unit of money
};

struct PackLimits {
    long steps = 200;       ///< rounds of placing all loads
    long exactSteps = 0;    ///< nodes of exact search when no round has fitted all; 0: none
    bool improve = true;    ///< go on after a fit to save scatter and moves
    std::uint64_t seed = 1; ///< the same seed gives the same packing
};

struct Packing {
    Verdict verdict = Verdict::Unknown;
    std::vector<std::vector<SlotRect>> slots; ///< by load; empty unless packed
    std::int64_t cost = 0;                    ///< scatter and moves
    long steps = 0;                           ///< rounds used
};

/// Places all loads of one zone over days 0 .. `days` - 1 together, each container on slots of its own over
/// its days, at a small cost: `scatterCost` for each connected group of a load beyond the first, `moveCost`
/// where slots are not kept; fixed loads cost nothing. Loads of single slots are always placed when the days'
/// counts suffice and nothing is fixed. Fixed loads that overlap or stand on blocked slots: Cannot.
[[nodiscard]] Packing repack(const Zone& zone, int days, std::span<const Load> loads,
                             std::int64_t scatterCost, const PackLimits& limits = {});

/// The same round what stands in `zone` already and stays there.
[[nodiscard]] Packing repack(const Occupancy& zone, std::span<const Load> loads, std::int64_t scatterCost,
                             const PackLimits& limits = {});

} // namespace warmbench::planner::packing
