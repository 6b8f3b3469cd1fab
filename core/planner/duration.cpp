#include "core/planner/problem.h"

#include <algorithm>

namespace warmbench::planner {

std::optional<int> stayLength(const Duration& duration, const Zone& zone, int setPoint, int from) {
    if (duration.days) return duration.days;
    std::int64_t gained = 0;
    for (int n = 1; n <= longestStay; ++n) {
        std::int64_t warmth = rootZone(zone, setPoint, from + n - 1);
        if (duration.cap) warmth = std::min(warmth, *duration.cap);
        gained += std::max<std::int64_t>(0, warmth - duration.base);
        if (gained >= duration.degreeDays) return n;
    }
    return std::nullopt;
}

} // namespace warmbench::planner
