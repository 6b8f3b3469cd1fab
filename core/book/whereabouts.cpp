#include "core/book/whereabouts.h"

#include "core/book/query.h"

#include <algorithm>

namespace warmbench {
namespace {

/// The zones of stays, those with most containers first.
std::vector<ZoneId> zonesOf(const std::vector<const Stay*>& stays) {
    std::vector<std::pair<std::size_t, ZoneId>> zones;
    for (const Stay* stay : stays) {
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
    ids.reserve(zones.size());
    for (const auto& [count, zone] : zones) ids.push_back(zone);
    return ids;
}

} // namespace

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
    return zonesOf(staysOn(book, batch, day));
}

std::vector<ZoneId> zonesLastOn(const HouseBook& book, BatchId batch, Day day) {
    const std::vector<const Stay*> now = staysOn(book, batch, day);
    if (!now.empty()) return zonesOf(now);
    std::vector<const Stay*> last;
    for (const StayId id : book.staysOf(batch)) {
        const Stay& stay = book.get<Stay>(id);
        if (stay.to > day || (!last.empty() && stay.to < last.front()->to)) continue;
        if (!last.empty() && stay.to > last.front()->to) last.clear();
        last.push_back(&stay);
    }
    return zonesOf(last);
}

Phrase whereOn(const HouseBook& book, BatchId batch, Day day) {
    std::string names;
    for (const ZoneId zone : zonesLastOn(book, batch, day))
        names += (names.empty() ? "" : ", ") + zoneTitle(book, zone);
    if (names.empty()) return phrase("no place");
    return staysOn(book, batch, day).empty() ? phrase("last in %1", names) : phrase("%1", names);
}

} // namespace warmbench
