#include "core/season/batch_price.h"

#include <algorithm>

namespace warmbench::season {

Money worthOfPlant(const HouseBook& book, std::optional<TargetId> target) {
    if (target) return book.get<Target>(*target).worth;
    Money best{100};
    for (const auto& [id, one] : book.all<Target>()) best = std::max(best, one.worth);
    return best;
}

void price(planner::Batch& batch, std::int64_t value, const Nursery& nursery) {
    batch.value = value;
    batch.latePerDay = value * nursery.lateCostPermille / 1000;
    batch.moveCost = nursery.moveCost.parts * batch.containers;
}

} // namespace warmbench::season
