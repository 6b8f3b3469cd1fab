#include "core/planner/bound/zone_kinds.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

namespace warmbench::planner {
namespace {

/// All that matters of a zone, with a floor that repeats its last day cut short.
auto featuresOf(const Zone& zone) {
    std::vector<std::int64_t> floor = zone.floor;
    while (floor.size() > 1 && floor.back() == floor[floor.size() - 2]) floor.pop_back();
    std::vector<std::pair<std::int64_t, std::int64_t>> setPoints;
    for (const SetPoint& point : zone.setPoints) setPoints.emplace_back(point.tenths, point.costPerDay);
    return std::tuple(zone.cover, zone.rows, zone.cols, zone.blocked, std::move(floor), std::move(setPoints));
}

} // namespace

ZoneKinds zoneKinds(const Problem& problem) {
    ZoneKinds result;
    std::map<decltype(featuresOf(problem.zones.front())), int> known;
    for (std::size_t z = 0; z < problem.zones.size(); ++z) {
        const Zone& zone = problem.zones[z];
        const auto [found, isNew] = known.emplace(featuresOf(zone), static_cast<int>(result.kinds.size()));
        if (isNew) {
            const auto free = std::count(zone.blocked.begin(), zone.blocked.end(), char{0});
            result.kinds.push_back({static_cast<int>(z), 0, static_cast<int>(free)});
        }
        ++result.kinds[static_cast<std::size_t>(found->second)].count;
        result.ofZone.push_back(found->second);
    }
    return result;
}

} // namespace warmbench::planner
