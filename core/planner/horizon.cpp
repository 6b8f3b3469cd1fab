#include "core/planner/horizon.h"

#include <algorithm>
#include <cstdint>

namespace warmbench::planner {
namespace {

constexpr std::int64_t daysOfReasons = 366;

} // namespace

int daysInReach(const Problem& problem) {
    std::int64_t last = problem.held.empty() ? 1 : longestStay;
    for (const Batch& batch : problem.batches) {
        const std::int64_t strike =
            std::max(batch.strikeLast, batch.pin ? batch.pin->strikeDay.value_or(0) : 0);
        last = std::max(last, strike + 1 + longestStay * static_cast<std::int64_t>(batch.stays.size()));
    }
    return static_cast<int>(std::min<std::int64_t>(problem.days, last + daysOfReasons));
}

Problem endedAfter(Problem problem, int days) {
    problem.days = std::min(problem.days, days);
    for (Zone& zone : problem.zones)
        if (zone.floor.size() > static_cast<std::size_t>(problem.days))
            zone.floor.resize(static_cast<std::size_t>(problem.days));
    return problem;
}

} // namespace warmbench::planner
