#pragma once

#include "core/planner/packing/cells.h"
#include "core/planner/packing/plate.h"
#include "core/planner/packing/verdict.h"

#include <span>

namespace warmbench::planner::packing {

/// Whether `pieces` fit on the grid when in each column only the number of free slots counts, wherever they
/// lie: the cumulative relaxation of packing (as in Clautiaux, Carlier and Moukrim 2007, "A new exact method
/// for the two-dimensional orthogonal packing problem"). Cannot: they do not fit in truth either. Packed:
/// nothing is said. Ends after `steps` nodes.
[[nodiscard]] Verdict fitColumns(const Cells& free, std::span<const Pieces> pieces, long steps);

} // namespace warmbench::planner::packing
