#pragma once

#include "core/planner/search/state.h"

#include <optional>
#include <vector>

namespace warmbench::planner {

/// Slots that a stay would need more of.
struct LackingRoom {
    int zone = 0;
    int slots = 0;
    int from = 0; ///< days on which they are needed
    int to = 0;   ///< first day after
};

/// The fewest slots that would have to be free besides for the batch to stand beside what stands in `house`,
/// at the set-points asked for there, whatever that costs; hands and stock are not looked at. By each stay
/// that lacks some, and empty where the count of slots suffices. Nothing where no number of slots would do,
/// or once `stopped`.
[[nodiscard]] std::optional<std::vector<LackingRoom>> fewestLacking(const search::State& house, int batch,
                                                                    const search::Stopped& stopped);

} // namespace warmbench::planner
