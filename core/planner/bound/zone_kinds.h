#pragma once

#include "core/planner/problem.h"

#include <vector>

namespace warmbench::planner {

/// Zones that are alike in all but name, taken together so that a bound need not tell them apart.
struct ZoneKind {
    int zone = 0;  ///< one of them, which stands for all
    int count = 0; ///< how many there are
    int slots = 0; ///< slots of each that are not blocked
};

struct ZoneKinds {
    std::vector<ZoneKind> kinds;
    std::vector<int> ofZone; ///< kind of each zone of the problem
};

[[nodiscard]] ZoneKinds zoneKinds(const Problem& problem);

} // namespace warmbench::planner
