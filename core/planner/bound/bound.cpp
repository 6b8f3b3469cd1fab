#include "core/planner/bound/bound.h"

#include "core/planner/bound/cost_step.h"
#include "core/planner/bound/share_bound.h"
#include "core/planner/bound/zone_kinds.h"

namespace warmbench::planner {

void improveBound(const Problem& problem, const BoundOptions&, const std::function<std::int64_t()>&,
                  const std::function<void(std::int64_t)>& onImproved, std::stop_token stop) {
    const ZoneKinds zones = zoneKinds(problem);
    const std::int64_t step = costStep(problem);
    const std::int64_t first = roundedUp(shareBound(problem, zones, stop), step);
    if (first > 0) onImproved(first);
}

} // namespace warmbench::planner
