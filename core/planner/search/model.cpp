#include "core/planner/search/model.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <tuple>

namespace warmbench::planner::search {

namespace {

constexpr std::int64_t thousandths = 10;
/// More than all else together can cost, and small enough to be added some millions of times.
constexpr std::int64_t pinnedValue = 1'000'000'000'000;

std::size_t index(int i) {
    return static_cast<std::size_t>(i);
}

bool suits(std::int64_t low, std::int64_t high, const Zone& zone, int state, int from, int to) {
    for (int day = from; day < to; ++day) {
        const std::int64_t warmth = rootZone(zone, state, day);
        if (warmth < low || warmth > high) return false;
    }
    return true;
}

StayTerms termsOf(const StayRule& rule, const Zone& zone, int state, int from) {
    if (!suits(rule.low, rule.high, zone, state, from, from + 1)) return {};
    const std::optional<int> length = stayLength(rule.duration, zone, state, from);
    if (!length || !suits(rule.low, rule.high, zone, state, from, from + *length)) return {};
    std::int64_t degrees = 0;
    for (int day = from; day < from + *length; ++day)
        degrees += std::abs(rootZone(zone, state, day) - rule.ideal);
    return {degrees * rule.offIdeal, *length};
}

/// The root zone is the same on every day at this state.
bool steadyAt(const Zone& zone, int state) {
    return std::all_of(zone.floor.begin(), zone.floor.end(), [&](std::int64_t floor) {
        return std::max(floor, state == off ? floor : zone.setPoints[index(state)].tenths) ==
               rootZone(zone, state, 0);
    });
}

void classify(Model& model) {
    using Key = std::tuple<Cover, std::vector<std::int64_t>, bool,
                           std::vector<std::pair<std::int64_t, std::int64_t>>>;
    std::map<Key, int> known;
    for (std::size_t z = 0; z < model.problem->zones.size(); ++z) {
        const Zone& zone = model.problem->zones[z];
        std::vector<std::pair<std::int64_t, std::int64_t>> setPoints;
        for (const SetPoint& point : zone.setPoints) setPoints.emplace_back(point.tenths, point.costPerDay);
        const auto [entry, isNew] = known.try_emplace({zone.cover, zone.floor, zone.hasMat, setPoints},
                                                      static_cast<int>(model.classes.size()));
        if (isNew) {
            ZoneClass made;
            made.hasMat = zone.hasMat;
            for (const SetPoint& point : zone.setPoints)
                made.matCost.push_back(point.costPerDay * thousandths);
            model.classes.push_back(made);
        }
        ZoneModel& place = model.zones[z];
        place.zoneClass = entry->second;
        place.slots = zone.rows * zone.cols -
                      static_cast<int>(std::count(zone.blocked.begin(), zone.blocked.end(), char{1}));
        model.classes[index(entry->second)].zones.push_back(static_cast<int>(z));
    }
}

void addHeld(Model& model) {
    const Problem& problem = *model.problem;
    for (std::size_t h = 0; h < problem.held.size(); ++h)
        model.zones[index(problem.held[h].zone)].held.push_back(static_cast<int>(h));
    for (std::size_t z = 0; z < problem.zones.size(); ++z) {
        ZoneModel& place = model.zones[z];
        const Zone& zone = problem.zones[z];
        for (int state = off; !place.held.empty() && state < static_cast<int>(zone.setPoints.size());
             ++state) {
            HeldChoice choice;
            choice.state = state;
            for (const int h : place.held) {
                const Held& held = problem.held[index(h)];
                const std::optional<int> length = stayLength(held.duration, zone, state, 0);
                if (!length || !suits(held.low, held.high, zone, state, 0, *length)) break;
                choice.until.push_back(*length);
            }
            if (choice.until.size() < place.held.size()) continue;
            choice.days = std::min(model.days, *std::max_element(choice.until.begin(), choice.until.end()));
            choice.slotsByDay.assign(index(choice.days), 0);
            for (std::size_t i = 0; i < place.held.size(); ++i) {
                int slots = 0;
                for (const SlotRect& rect : problem.held[index(place.held[i])].slots)
                    slots += rect.height * rect.width;
                for (int day = 0; day < std::min(choice.until[i], model.days); ++day)
                    choice.slotsByDay[index(day)] += slots;
            }
            place.heldChoices.push_back(choice);
        }
        // The cheapest first: it is begun with.
        const ZoneClass& kind = model.classes[index(place.zoneClass)];
        std::stable_sort(place.heldChoices.begin(), place.heldChoices.end(),
                         [&](const HeldChoice& a, const HeldChoice& b) {
                             return kind.costAt(a.state) * a.days < kind.costAt(b.state) * b.days;
                         });
    }
}

void addOptions(const Model& model, const StayRule& rule, StayModel& stay, int& shortest, int& longest) {
    for (std::size_t c = 0; c < model.classes.size(); ++c) {
        const Zone& zone = model.problem->zones[index(model.classes[c].zones.front())];
        if (!rule.accepts(zone.cover)) continue;
        for (int state = off; state < static_cast<int>(zone.setPoints.size()); ++state) {
            StayOption option;
            option.zoneClass = static_cast<int>(c);
            option.state = state;
            option.steady = steadyAt(zone, state);
            const int last = option.steady ? stay.firstStart : stay.lastStart;
            bool possible = false;
            for (int day = stay.firstStart; day <= last; ++day) {
                option.terms.push_back(termsOf(rule, zone, state, day));
                const int length = option.terms.back().length;
                if (length == 0) continue;
                possible = true;
                shortest = std::min(shortest, length);
                longest = std::max(longest, length);
            }
            if (!possible) continue;
            stay.options.push_back(std::move(option));
            stay.choices += static_cast<int>(model.classes[c].zones.size());
        }
    }
}

/// Slots that all containers of the batch take; 0 where no zone has so many.
int slotsOf(const Model& model, const Batch& batch) {
    std::int64_t most = 0;
    for (const ZoneModel& zone : model.zones) most = std::max<std::int64_t>(most, zone.slots);
    const std::int64_t each = std::int64_t{batch.footprint.height} * batch.footprint.width;
    return each > most || each * batch.containers > most ? 0 : static_cast<int>(each * batch.containers);
}

BatchModel batchOf(const Model& model, const Batch& batch) {
    BatchModel made;
    made.strikeFirst = batch.strikeFirst;
    made.strikeLast = std::min(batch.strikeLast, model.days - 1);
    made.slots = slotsOf(model, batch);
    if (made.slots == 0) made.strikeLast = made.strikeFirst - 1;
    made.single = batch.footprint == Footprint{1, 1};
    made.pinned = batch.pin.has_value();
    if (batch.pin && batch.pin->strikeDay) made.strikeFirst = made.strikeLast = *batch.pin->strikeDay;
    if (batch.pin && batch.pin->zone) made.pinnedZone = *batch.pin->zone;
    made.value = made.pinned ? pinnedValue : batch.value * thousandths;
    made.latePerDay = batch.latePerDay * thousandths;
    if (batch.due) made.due = *batch.due;
    made.moveCost = batch.moveCost * thousandths;
    int first = made.strikeFirst;
    int last = made.strikeLast;
    for (const StayRule& rule : batch.stays) {
        StayModel stay;
        stay.firstStart = first;
        stay.lastStart = last;
        int shortest = longestStay;
        int longest = 0;
        if (first <= last) addOptions(model, rule, stay, shortest, longest);
        if (stay.options.empty()) made.strikeLast = made.strikeFirst - 1;
        first += shortest;
        last += longest;
        made.stays.push_back(std::move(stay));
    }
    return made;
}

} // namespace

Model::Model(const Problem& source)
    : problem(&source), days(source.days), scatterCost(source.scatterCost * thousandths),
      zones(source.zones.size()) {
    classify(*this);
    addHeld(*this);
    for (const Batch& batch : source.batches) {
        BatchModel made = batchOf(*this, batch);
        made.firstStay = stayCount;
        made.firstSlot = placeCount;
        stayCount += static_cast<int>(batch.stays.size());
        if (made.slots > 0) placeCount += static_cast<int>(batch.stays.size()) * batch.containers;
        if (!made.pinned) worth += made.value;
        batchOfStay.insert(batchOfStay.end(), batch.stays.size(), static_cast<int>(batches.size()));
        anyPlaced = anyPlaced || !made.single;
        if (batch.pin && !batch.pin->slots.empty()) zones[index(*batch.pin->zone)].placed = true;
        batches.push_back(std::move(made));
    }
    for (ZoneModel& zone : zones) zone.placed = zone.placed || anyPlaced;
    anyPlaced = std::any_of(zones.begin(), zones.end(), [](const ZoneModel& zone) { return zone.placed; });
    hands.assign(index(days), never);
    if (!source.strikeCapacity.empty())
        for (int day = 0; day < days; ++day)
            hands[index(day)] = source.strikeCapacity[index(day) % source.strikeCapacity.size()];
    for (const Stock& stock : source.stocks) {
        std::vector<std::int64_t> total(index(days), 0);
        for (const StockStep& step : stock.steps)
            for (int day = step.day; day < days; ++day) total[index(day)] = step.total;
        yield.push_back(std::move(total));
    }
}

bool Model::fitsGrid(int batch, int zone) const {
    const Batch& wanted = problem->batches[index(batch)];
    const Zone& grid = problem->zones[index(zone)];
    const auto [height, width] = wanted.footprint;
    return (height <= grid.rows && width <= grid.cols) ||
           (wanted.turn && width <= grid.rows && height <= grid.cols);
}

} // namespace warmbench::planner::search
