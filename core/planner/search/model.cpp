#include "core/planner/search/model.h"

#include "core/planner/index.h"
#include "core/planner/search/cost.h"
#include "core/planner/search/previous.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <thread>
#include <tuple>

namespace warmbench::planner::search {

namespace {

/// More than all else together can cost, and small enough to be added some millions of times.
constexpr std::int64_t pinnedValue = 1'000'000'000'000;

/// So many sizes of batches at most have their full days kept.
constexpr std::size_t mostSizes = 48;

bool suits(std::int64_t low, std::int64_t high, const Zone& zone, int state, int from, int to) {
    for (int day = from; day < to; ++day) {
        const std::int64_t warmth = rootZone(zone, state, day);
        if (warmth < low || warmth > high) return false;
    }
    return true;
}

/// What a stay costs and how long it lasts from each day of a run of days on, found with one look at each day
/// that any of them covers: a stay that begins later never ends sooner.
class TermsByDay {
public:
    TermsByDay(const StayRule& rule, const Zone& zone, int state)
        : m_rule(rule), m_zone(zone), m_state(state) {}

    /// Of a stay from `day` on; days must be asked in order.
    StayTerms from(int day) {
        if (m_end <= day) {
            m_end = day;
            m_gained = 0;
            m_degrees = 0;
        } else {
            for (; m_begin < day; ++m_begin) leave(m_begin);
        }
        m_begin = day;
        while (!isLongEnough()) {
            const std::int64_t warmth = rootZone(m_zone, m_state, m_end);
            if (m_end - day == longestStay || warmth < m_rule.low || warmth > m_rule.high) return {};
            m_gained += gain(warmth);
            m_degrees += std::abs(warmth - m_rule.ideal);
            ++m_end;
        }
        return StayTerms::of(m_degrees, m_rule.offIdeal, m_end - day);
    }

private:
    [[nodiscard]] bool isLongEnough() const {
        const int days = m_end - m_begin;
        if (m_rule.duration.days) return days >= *m_rule.duration.days;
        return days > 0 && m_gained >= m_rule.duration.degreeDays;
    }
    [[nodiscard]] std::int64_t gain(std::int64_t warmth) const {
        const Duration& duration = m_rule.duration;
        return std::max<std::int64_t>(0, std::min(warmth, duration.cap.value_or(warmth)) - duration.base);
    }
    void leave(int day) {
        const std::int64_t warmth = rootZone(m_zone, m_state, day);
        m_gained -= gain(warmth);
        m_degrees -= std::abs(warmth - m_rule.ideal);
    }

    const StayRule& m_rule;
    const Zone& m_zone;
    int m_state;
    int m_begin = 0; ///< the days looked at, [m_begin, m_end), are all warm enough and not too warm
    int m_end = 0;
    std::int64_t m_gained = 0;
    std::int64_t m_degrees = 0; ///< off ideal
};

StateWarmth warmthOf(const Zone& zone, int state) {
    StateWarmth warmth{rootZone(zone, state, 0), rootZone(zone, state, 0)};
    for (int day = 1; day < static_cast<int>(zone.floor.size()); ++day) {
        warmth.least = std::min(warmth.least, rootZone(zone, state, day));
        warmth.most = std::max(warmth.most, rootZone(zone, state, day));
    }
    return warmth;
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
            for (int state = off; state < static_cast<int>(zone.setPoints.size()); ++state)
                made.warmth.push_back(warmthOf(zone, state));
            model.classes.push_back(made);
        }
        ZoneModel& place = model.zones[z];
        place.zoneClass = entry->second;
        place.slots = zone.rows * zone.cols -
                      static_cast<int>(std::count(zone.blocked.begin(), zone.blocked.end(), char{1}));
        model.classes[at(entry->second)].zones.push_back(static_cast<int>(z));
    }
}

void addHeld(Model& model) {
    const Problem& problem = *model.problem;
    for (std::size_t h = 0; h < problem.held.size(); ++h)
        model.zones[at(problem.held[h].zone)].held.push_back(static_cast<int>(h));
    for (std::size_t z = 0; z < problem.zones.size(); ++z) {
        ZoneModel& place = model.zones[z];
        const Zone& zone = problem.zones[z];
        for (int state = off; !place.held.empty() && state < static_cast<int>(zone.setPoints.size());
             ++state) {
            HeldChoice choice;
            choice.state = state;
            for (const int h : place.held) {
                const Held& held = problem.held[at(h)];
                const std::optional<int> length = stayLength(held.duration, zone, state, 0);
                if (!length || !suits(held.low, held.high, zone, state, 0, *length)) break;
                choice.until.push_back(*length);
            }
            if (choice.until.size() < place.held.size()) continue;
            choice.days = std::min(model.days, *std::max_element(choice.until.begin(), choice.until.end()));
            choice.slotsByDay.assign(at(choice.days), 0);
            for (std::size_t i = 0; i < place.held.size(); ++i) {
                int slots = 0;
                for (const SlotRect& rect : problem.held[at(place.held[i])].slots)
                    slots += rect.height * rect.width;
                for (int day = 0; day < std::min(choice.until[i], model.days); ++day)
                    choice.slotsByDay[at(day)] += slots;
            }
            place.heldChoices.push_back(choice);
        }
        // The cheapest first: it is begun with.
        const ZoneClass& kind = model.classes[at(place.zoneClass)];
        std::stable_sort(place.heldChoices.begin(), place.heldChoices.end(),
                         [&](const HeldChoice& a, const HeldChoice& b) {
                             return kind.costAt(a.state) * a.days < kind.costAt(b.state) * b.days;
                         });
    }
}

void addOptions(const Model& model, const StayRule& rule, const Stopped& stopped, StayModel& stay,
                int& shortest, int& longest) {
    for (std::size_t c = 0; c < model.classes.size() && !stopped(); ++c) {
        const Zone& zone = model.problem->zones[at(model.classes[c].zones.front())];
        if (!rule.accepts(zone.cover)) continue;
        for (int state = off; state < static_cast<int>(zone.setPoints.size()); ++state) {
            const StateWarmth& warmth = model.classes[c].warmth[at(state + 1)];
            if (warmth.most < rule.low || warmth.least > rule.high) continue;
            StayOption option;
            option.zoneClass = static_cast<int>(c);
            option.state = static_cast<std::int16_t>(state);
            option.steady = warmth.least == warmth.most;
            option.firstTerms = static_cast<std::uint32_t>(stay.allTerms.size());
            const int last = option.steady ? stay.firstStart : stay.lastStart;
            option.least = never;
            TermsByDay terms(rule, zone, state);
            for (int day = stay.firstStart; day <= last; ++day) {
                stay.allTerms.push_back(terms.from(day));
                const int length = stay.allTerms.back().length();
                if (length == 0) continue;
                option.least = std::min(option.least, stay.allTerms.back().offIdeal());
                shortest = std::min(shortest, length);
                longest = std::max(longest, length);
            }
            if (option.least == never) {
                stay.allTerms.resize(option.firstTerms);
                continue;
            }
            stay.options.push_back(option);
        }
    }
    std::stable_sort(stay.options.begin(), stay.options.end(),
                     [](const StayOption& a, const StayOption& b) { return a.least < b.least; });
}

/// Slots that all containers of the batch take; 0 where no zone has so many.
int slotsOf(const Model& model, const Batch& batch) {
    std::int64_t most = 0;
    for (const ZoneModel& zone : model.zones) most = std::max<std::int64_t>(most, zone.slots);
    const std::int64_t each = std::int64_t{batch.footprint.height} * batch.footprint.width;
    return each > most || each * batch.containers > most ? 0 : static_cast<int>(each * batch.containers);
}

bool canFollowInPlace(const StayModel& before, const StayModel& after) {
    return std::any_of(before.options.begin(), before.options.end(),
                       [&](const StayOption& option) { return after.suits(option.zoneClass); });
}

/// Off ideal and moves that no way to stand avoids; 0 where there is none.
std::int64_t leastOf(const BatchModel& batch) {
    std::int64_t least = 0;
    for (std::size_t k = 0; k < batch.stays.size(); ++k) {
        if (batch.stays[k].options.empty()) return 0;
        least += batch.stays[k].options.front().least;
        if (k > 0 && !canFollowInPlace(batch.stays[k - 1], batch.stays[k])) least += batch.moveCost;
    }
    return least;
}

/// `stay` is working memory, kept from batch to batch so that it seldom grows.
BatchModel batchOf(const Model& model, const Batch& batch, bool isSearched, const Stopped& stopped,
                   StayModel& stay) {
    BatchModel made;
    made.strikeFirst = batch.strikeFirst;
    made.strikeLast = std::min(batch.strikeLast, model.days - 1);
    made.slots = slotsOf(model, batch);
    made.single = batch.footprint == Footprint{1, 1};
    made.pinned = batch.pin.has_value();
    if (batch.pin && batch.pin->strikeDay) made.strikeFirst = made.strikeLast = *batch.pin->strikeDay;
    if (made.slots == 0) made.strikeLast = made.strikeFirst - 1;
    if (batch.pin && batch.pin->zone) made.pinnedZone = *batch.pin->zone;
    if (batch.previous) {
        made.previous = &*batch.previous;
        made.isKeepable = made.slots > 0 && canBeKept(*model.problem, batch);
        made.changeCost = model.problem->changeCost * thousandths;
    }
    made.value = made.pinned ? pinnedValue : batch.value * thousandths + made.changeCost;
    made.latePerDay = batch.latePerDay * thousandths;
    if (batch.due) made.due = *batch.due;
    made.moveCost = batch.moveCost * thousandths;
    int first = made.strikeFirst;
    int last = made.strikeLast;
    made.stays.reserve(batch.stays.size());
    for (const StayRule& rule : batch.stays) {
        stay.options.clear();
        stay.allTerms.clear();
        stay.firstStart = first;
        stay.lastStart = last;
        int shortest = longestStay;
        int longest = 0;
        if (isSearched && first <= last) addOptions(model, rule, stopped, stay, shortest, longest);
        if (stay.options.empty()) made.strikeLast = made.strikeFirst - 1;
        first += shortest;
        last += longest;
        made.stays.push_back(stay);
    }
    made.least = leastOf(made);
    return made;
}

} // namespace

Model::Model(const Problem& source, const Making& making)
    : problem(&source), days(source.days), scatterCost(source.scatterCost * thousandths),
      zones(source.zones.size()) {
    classify(*this);
    addHeld(*this);
    makeBatches(making);
    makeSizes();
    whole = Scope::whole(*this);
    for (std::size_t b = 0; b < batches.size(); ++b) {
        const Batch& batch = source.batches[b];
        BatchModel& made = batches[b];
        made.firstStay = stayCount;
        made.firstSlot = placeCount;
        stayCount += static_cast<int>(batch.stays.size());
        if (made.slots > 0) placeCount += static_cast<int>(batch.stays.size()) * batch.containers;
        if (!made.pinned) worth += made.value;
        batchOfStay.insert(batchOfStay.end(), batch.stays.size(), static_cast<int>(b));
        anyPlaced = anyPlaced || !made.single;
        if (batch.pin && !batch.pin->slots.empty()) zones[at(*batch.pin->zone)].placed = true;
        if (made.isKeepable && made.changeCost > 0)
            for (const PlacedStay& stay : *batch.previous) zones[at(stay.zone)].placed = true;
    }
    for (ZoneModel& zone : zones) zone.placed = zone.placed || anyPlaced;
    anyPlaced = std::any_of(zones.begin(), zones.end(), [](const ZoneModel& zone) { return zone.placed; });
    hands.assign(at(days), never);
    if (!source.strikeCapacity.empty())
        for (int day = 0; day < days; ++day)
            hands[at(day)] = source.strikeCapacity[at(day) % source.strikeCapacity.size()];
    for (const Stock& stock : source.stocks) {
        std::vector<std::int64_t> total(at(days), 0);
        for (const StockStep& step : stock.steps)
            for (int day = step.day; day < days; ++day) total[at(day)] = step.total;
        yield.push_back(std::move(total));
    }
}

void Model::makeBatches(const Making& making) {
    batches.resize(problem->batches.size());
    const auto make = [this, &making](std::size_t first, std::size_t last) {
        StayModel memory;
        for (std::size_t b = first; b < last; ++b)
            batches[b] =
                batchOf(*this, problem->batches[b], b >= at(making.firstSearched), making.stopped, memory);
    };
    const std::size_t half = making.threads > 1 ? batches.size() / 2 : batches.size();
    const std::jthread other([&] { make(half, batches.size()); });
    make(0, half);
}

void Model::makeSizes() {
    std::vector<int> all{1};
    for (const BatchModel& batch : batches) all.push_back(std::max(1, batch.slots));
    std::sort(all.begin(), all.end());
    all.erase(std::unique(all.begin(), all.end()), all.end());
    const std::size_t each = (all.size() + mostSizes - 1) / mostSizes;
    for (std::size_t i = 0; i < all.size(); i += each) sizes.push_back(all[i]);
    const auto fittingIn = [this](int slots) {
        return static_cast<int>(std::upper_bound(sizes.begin(), sizes.end(), slots) - sizes.begin());
    };
    int most = 0;
    for (const ZoneModel& zone : zones) most = std::max(most, zone.slots);
    for (int free = 0; free <= most; ++free) fitting.push_back(fittingIn(free));
    for (int batch = 0; batch < static_cast<int>(batches.size()); ++batch)
        setSlots(batch, batches[at(batch)].slots);
    for (const ZoneClass& kind : classes) states = std::max(states, static_cast<int>(kind.warmth.size()));
}

void Model::setSlots(int batch, int slots) {
    batches[at(batch)].slots = slots;
    batches[at(batch)].size =
        static_cast<int>(std::upper_bound(sizes.begin(), sizes.end(), std::max(1, slots)) - sizes.begin()) -
        1;
}

bool Model::fitsGrid(int batch, int zone) const {
    const Batch& wanted = problem->batches[at(batch)];
    const Zone& grid = problem->zones[at(zone)];
    const auto [height, width] = wanted.footprint;
    return (height <= grid.rows && width <= grid.cols) ||
           (wanted.turn && width <= grid.rows && height <= grid.cols);
}

} // namespace warmbench::planner::search
