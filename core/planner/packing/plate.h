#pragma once

#include "core/planner/packing/cells.h"
#include "core/planner/packing/verdict.h"

#include <span>
#include <vector>

namespace warmbench::planner::packing {

/// Containers alike that all stand at once.
struct Pieces {
    Footprint footprint;
    bool turn = false; ///< each may be turned by a quarter
    int count = 1;
};

/// Packs all `pieces` into the slots `free`. Exact: depth-first search in reading order along the short side
/// of the grid; in the first free slot a container begins, or it stays empty while as many slots as can stay
/// empty are not used up; positions that have failed before are remembered. Ends after `steps` nodes. Into
/// `slots`, by entry of `pieces`: one place for each container; all empty unless packed.
[[nodiscard]] Verdict packPlate(const Cells& free, std::span<const Pieces> pieces, long steps,
                                std::vector<std::vector<SlotRect>>& slots);

} // namespace warmbench::planner::packing
