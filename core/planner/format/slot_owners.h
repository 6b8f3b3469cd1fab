#pragma once

#include "core/planner/problem.h"

#include <optional>
#include <vector>

namespace warmbench::planner {

/// Who took which slots of the zones last. Owners are numbers from 0 on.
class SlotOwners {
public:
    /// Why slots cannot be taken: the first that is blocked (no owner) or taken.
    struct Clash {
        Slot slot;
        std::optional<int> owner;
    };
    /// Takes the slots of `rect`, which lies on the grid of `zone`, for `owner`. An owner below `since` does
    /// not count any more: a later round need not begin with an empty house.
    [[nodiscard]] std::optional<Clash> take(const Zone& zone, std::size_t zoneIndex, const SlotRect& rect,
                                            int owner, int since);

private:
    std::vector<std::vector<int>> m_zones; ///< owner of each slot, row by row; -1 before the first
};

} // namespace warmbench::planner
