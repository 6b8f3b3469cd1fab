#include "core/planner/verify/warmth.h"

#include <algorithm>

namespace warmbench::planner::verify {

MatState MatStates::on(std::int64_t day) const {
    day = std::min(day, m_horizon - 1);
    const auto after = std::upper_bound(m_runs.begin(), m_runs.end(), day,
                                        [](std::int64_t d, const Run& run) { return d < run.from; });
    if (after == m_runs.begin() || day >= std::prev(after)->to) return std::nullopt;
    return std::prev(after)->setPoint;
}

std::optional<std::int64_t> MatStates::firstChange(std::int64_t from, std::int64_t to) const {
    for (std::int64_t day = from + 1; day < std::min(to, m_horizon); ++day)
        if (on(day) != on(from)) return day;
    return std::nullopt;
}

std::int64_t temperature(const Zone& zone, MatState state, std::int64_t day) {
    const auto last = static_cast<std::int64_t>(zone.floor.size()) - 1;
    const std::int64_t floor = zone.floor[static_cast<std::size_t>(std::min(day, last))];
    return state ? std::max(*state, floor) : floor;
}

std::optional<int> lengthOfStay(const Duration& duration, const Zone& zone, MatState state,
                                std::int64_t from) {
    if (duration.days) return *duration.days;
    std::int64_t missing = duration.degreeDays;
    for (int day = 0; day < longestStay; ++day) {
        const std::int64_t warmth = temperature(zone, state, from + day);
        const std::int64_t useful = duration.cap ? std::min(warmth, *duration.cap) : warmth;
        if (useful > duration.base) missing -= useful - duration.base;
        if (missing <= 0) return day + 1;
    }
    return std::nullopt;
}

} // namespace warmbench::planner::verify
