#include "core/planner/format/slot_owners.h"

#include <algorithm>

namespace warmbench::planner {

std::optional<SlotOwners::Clash> SlotOwners::take(const Zone& zone, std::size_t zoneIndex,
                                                  const SlotRect& rect, int owner, int since) {
    m_zones.resize(std::max(m_zones.size(), zoneIndex + 1));
    std::vector<int>& owners = m_zones[zoneIndex];
    owners.resize(zone.blocked.size(), -1);
    for (int row = rect.row; row < rect.row + rect.height; ++row) {
        for (int col = rect.col; col < rect.col + rect.width; ++col) {
            const auto slot = static_cast<std::size_t>(row) * static_cast<std::size_t>(zone.cols) +
                              static_cast<std::size_t>(col);
            if (zone.blocked[slot]) return Clash{{row, col}, std::nullopt};
            if (owners[slot] >= since) return Clash{{row, col}, owners[slot]};
            owners[slot] = owner;
        }
    }
    return std::nullopt;
}

} // namespace warmbench::planner
