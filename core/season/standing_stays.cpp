#include "core/season/standing_stays.h"

#include "core/book/query.h"

#include <algorithm>
#include <numeric>

namespace warmbench::season {
namespace {

/// Temperatures that any state of a zone lies within, in tenths.
constexpr std::int64_t coldest = -500;
constexpr std::int64_t hottest = 600;

/// A stay that the plan has to leave as it is, on the days of the problem.
struct Fixed {
    const Stay* stay = nullptr;
    int zone = 0;
    int from = 0;
    int to = 0;
    std::int64_t low = coldest;
    std::int64_t high = hottest;
};

/// What a stay that roots keeps to at the most: the range of its recipe. Later it stands cool as well.
void keepToRecipe(Fixed& fixed, const Batch& batch) {
    if (fixed.stay->stage != Stage::Rooting) return;
    fixed.low = batch.recipe.rootZoneLow.value.parts;
    fixed.high = batch.recipe.rootZoneHigh.value.parts;
}

/// What a stay that roots keeps to where it can: the root zone that its mat is set to give it, since the day
/// on which it ends was reckoned with that. Another heat would make it ready on another day.
void keepToHeat(Fixed& fixed, const HouseBook& book, const planner::Zone& zone, Day from) {
    if (fixed.stay->stage != Stage::Rooting) return;
    const auto set = setPointOn(book, fixed.stay->zone, from + fixed.from);
    const auto offered =
        std::find_if(zone.setPoints.begin(), zone.setPoints.end(),
                     [&](const planner::SetPoint& one) { return set && one.tenths == set->parts; });
    if (set && offered == zone.setPoints.end()) return;
    const int state = set ? static_cast<int>(offered - zone.setPoints.begin()) : -1;
    std::int64_t low = hottest;
    std::int64_t high = coldest;
    for (int day = fixed.from; day < fixed.to; ++day) {
        const std::int64_t warmth = planner::rootZone(zone, state, day);
        low = std::min(low, warmth);
        high = std::max(high, warmth);
    }
    fixed.low = low;
    fixed.high = high;
}

bool accepts(const planner::Zone& zone, int setPoint, const Fixed& fixed) {
    for (int day = fixed.from; day < fixed.to; ++day) {
        const std::int64_t warmth = planner::rootZone(zone, setPoint, day);
        if (warmth < fixed.low || warmth > fixed.high) return false;
    }
    return true;
}

bool someStateSuits(const planner::Zone& zone, const std::vector<Fixed*>& together) {
    for (int setPoint = -1; setPoint < static_cast<int>(zone.setPoints.size()); ++setPoint)
        if (std::all_of(together.begin(), together.end(),
                        [&](const Fixed* fixed) { return accepts(zone, setPoint, *fixed); }))
            return true;
    return false;
}

/// Stays of one zone whose days touch each other in a chain must share one state of the mat.
void widenWhereNeeded(const HouseBook& book, const planner::Zone& zone, std::vector<Fixed*> stays) {
    std::sort(stays.begin(), stays.end(), [](const Fixed* a, const Fixed* b) { return a->from < b->from; });
    for (std::size_t first = 0; first < stays.size();) {
        std::vector<Fixed*> chain;
        int end = stays[first]->to;
        std::size_t next = first;
        for (; next < stays.size() && (chain.empty() || stays[next]->from < end); ++next) {
            chain.push_back(stays[next]);
            end = std::max(end, stays[next]->to);
        }
        if (!someStateSuits(zone, chain))
            for (Fixed* fixed : chain) keepToRecipe(*fixed, book.get<Batch>(fixed->stay->batch));
        if (!someStateSuits(zone, chain))
            for (Fixed* fixed : chain) {
                fixed->low = coldest;
                fixed->high = hottest;
            }
        first = next;
    }
}

std::vector<SlotRect> slotsOf(const Stay& stay) {
    std::vector<SlotRect> slots;
    for (const Place& place : stay.places) slots.push_back(place.slots);
    return slots;
}

planner::Batch pinnedBatch(const Fixed& fixed, const Footprint& footprint, bool turnable,
                           const planner::Zone& zone, const std::string& id) {
    planner::Batch batch;
    batch.id = id;
    batch.containers = static_cast<int>(fixed.stay->places.size());
    batch.footprint = footprint;
    batch.turn = turnable;
    batch.strikeFirst = batch.strikeLast = fixed.from;
    planner::StayRule rule;
    rule.covers = static_cast<std::uint8_t>(1 << static_cast<int>(zone.cover));
    rule.low = rule.ideal = fixed.low;
    rule.high = fixed.high;
    rule.duration.days = std::min(fixed.to - fixed.from, planner::longestStay);
    batch.stays.push_back(rule);
    batch.pin = planner::Pin{fixed.from, fixed.zone, slotsOf(*fixed.stay)};
    return batch;
}

} // namespace

void addStandingStays(planner::Problem& problem, const HouseBook& book,
                      const std::map<ZoneId, int>& zoneIndex, Day from, const std::map<StayId, Day>& ends) {
    std::vector<Fixed> all;
    for (const auto& [id, stay] : book.all<Stay>()) {
        const auto moved = ends.find(id);
        const Day end = moved == ends.end() ? stay.to : moved->second;
        if (end <= from || stay.from - from >= problem.days) continue;
        const int zone = zoneIndex.at(stay.zone);
        Fixed fixed{&stay, zone, std::max(0, stay.from - from), end - from};
        keepToRecipe(fixed, book.get<Batch>(stay.batch));
        keepToHeat(fixed, book, problem.zones[static_cast<std::size_t>(zone)], from);
        all.push_back(fixed);
    }
    std::map<int, std::vector<Fixed*>> byZone;
    for (Fixed& fixed : all) byZone[fixed.zone].push_back(&fixed);
    for (const auto& [zone, stays] : byZone)
        widenWhereNeeded(book, problem.zones[static_cast<std::size_t>(zone)], stays);
    for (const Fixed& fixed : all) {
        const Batch& batch = book.get<Batch>(fixed.stay->batch);
        const std::string id = batch.code + " stay " + std::to_string(fixed.stay->id.number);
        if (fixed.stay->from <= from) {
            planner::Held held{id, fixed.zone, slotsOf(*fixed.stay), fixed.low, fixed.high, {}};
            held.duration.days = std::min(fixed.to, planner::longestStay);
            problem.held.push_back(std::move(held));
        } else {
            const ContainerType& type = book.get<ContainerType>(batch.containerType);
            problem.batches.push_back(pinnedBatch(fixed, type.footprint, type.turnable,
                                                  problem.zones[static_cast<std::size_t>(fixed.zone)], id));
        }
    }
}

} // namespace warmbench::season
