#include "core/book/whereabouts.h"

#include <algorithm>

namespace warmbench {

std::vector<const Stay*> staysOn(const HouseBook& book, BatchId batch, Day day) {
    std::vector<const Stay*> stays;
    for (const StayId id : book.staysOf(batch))
        if (const Stay& stay = book.get<Stay>(id); stay.from <= day && day < stay.to) stays.push_back(&stay);
    return stays;
}

const Stay* stayOf(const HouseBook& book, BatchId batch, int container, Day day) {
    for (const Stay* stay : staysOn(book, batch, day))
        for (const Place& place : stay->places)
            if (place.container == container) return stay;
    return nullptr;
}

std::vector<ZoneId> zonesOn(const HouseBook& book, BatchId batch, Day day) {
    std::vector<std::pair<std::size_t, ZoneId>> zones;
    for (const Stay* stay : staysOn(book, batch, day)) {
        const auto known = std::find_if(zones.begin(), zones.end(),
                                        [&](const auto& one) { return one.second == stay->zone; });
        if (known == zones.end())
            zones.emplace_back(stay->places.size(), stay->zone);
        else
            known->first += stay->places.size();
    }
    std::stable_sort(zones.begin(), zones.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    std::vector<ZoneId> ids;
    for (const auto& [count, zone] : zones) ids.push_back(zone);
    return ids;
}

} // namespace warmbench
