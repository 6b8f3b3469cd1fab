#pragma once

#include "core/planner/packing/occupancy.h"
#include "core/planner/packing/repack.h"

#include <span>
#include <vector>

namespace warmbench::planner::packing {

/// Packs all `loads` (their `fixed`, `preferred` and `follows` are not looked at) into what is free in
/// `zone`, or proves that they do not fit together: branch and bound over the container that has the fewest
/// places left, places of alike containers in order, with the slots that each day can still use as the bound.
/// For small zones. Ends after `steps` nodes. Into `slots`, by load: a place for each container; all empty
/// unless packed.
[[nodiscard]] Verdict packExactly(const Occupancy& zone, std::span<const Load> loads, long steps,
                                  std::vector<std::vector<SlotRect>>& slots);

} // namespace warmbench::planner::packing
