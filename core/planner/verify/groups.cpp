#include "core/planner/verify/groups.h"

#include <numeric>
#include <vector>

namespace warmbench::planner::verify {

std::int64_t connectedGroups(const Covered& covered, std::size_t containers, const Zone& zone) {
    std::vector<std::size_t> leader(containers);
    std::iota(leader.begin(), leader.end(), std::size_t{0});
    const auto leaderOf = [&](std::size_t container) {
        while (leader[container] != container) container = leader[container] = leader[leader[container]];
        return container;
    };
    auto groups = static_cast<std::int64_t>(containers);
    const auto connect = [&](std::size_t a, std::size_t b) {
        a = leaderOf(a);
        b = leaderOf(b);
        if (a == b) return;
        leader[a] = b;
        --groups;
    };
    for (const auto& [slot, container] : covered) {
        const auto below = covered.find(slot + zone.cols);
        if (below != covered.end()) connect(container, below->second);
        if (slot % zone.cols == zone.cols - 1) continue;
        const auto right = covered.find(slot + 1);
        if (right != covered.end()) connect(container, right->second);
    }
    return groups;
}

} // namespace warmbench::planner::verify
