#include "core/planner/bound/stay_choices.h"

#include <algorithm>
#include <limits>
#include <map>
#include <optional>
#include <set>
#include <utility>

namespace warmbench::planner {
namespace {

__extension__ using Wide = __int128;

constexpr std::int64_t unreachable = std::numeric_limits<std::int64_t>::max();
constexpr std::int64_t highestChain = 4'000'000'000'000'000'000;
constexpr int mostStrikeDays = 5000;
constexpr std::size_t mostChoices = 200'000; ///< of one batch

std::int64_t clamped(Wide cost) {
    return cost > highestCost ? highestCost : static_cast<std::int64_t>(cost);
}

/// Thousandths off ideal over the days of a stay, nothing where one of them is too cold or too warm.
std::optional<Wide> offIdeal(const StayRule& rule, const Zone& zone, int setPoint, int from, int to) {
    std::int64_t tenths = 0;
    for (int day = from; day < to; ++day) {
        const std::int64_t warmth = rootZone(zone, setPoint, day);
        if (warmth < rule.low || warmth > rule.high) return std::nullopt;
        tenths += warmth > rule.ideal ? warmth - rule.ideal : rule.ideal - warmth;
    }
    return Wide{tenths} * rule.offIdeal;
}

/// Whether hands and stock suffice for `batch` on `day`, were it alone.
bool canStrike(const Problem& problem, const Batch& batch, int day) {
    if (batch.cuttings > strikeCapacityOn(problem, day)) return false;
    return !batch.stock ||
           batch.cuttings <= stockUpTo(problem.stocks[static_cast<std::size_t>(*batch.stock)], day);
}

std::set<int> strikeDays(const Problem& problem, const Batch& batch) {
    std::set<int> days;
    const int pinned = batch.pin && batch.pin->strikeDay ? *batch.pin->strikeDay : -1;
    const int first = std::max({0, batch.strikeFirst, pinned});
    const int last = std::min({batch.strikeLast, problem.days - 1, pinned < 0 ? batch.strikeLast : pinned});
    for (int day = first; day <= last; ++day)
        if (canStrike(problem, batch, day)) days.insert(day);
    return days;
}

/// Day and kind of zone in which a stay ends.
using Ends = std::set<std::pair<int, int>>;

std::vector<StayChoice> choicesOfStay(const Problem& problem, const ZoneKinds& zones, const Batch& batch,
                                      std::size_t stay, const std::set<int>& days, const Ends& before) {
    const StayRule& rule = batch.stays[stay];
    const bool last = stay + 1 == batch.stays.size();
    std::vector<StayChoice> choices;
    for (int kind = 0; kind < static_cast<int>(zones.kinds.size()); ++kind) {
        const ZoneKind& group = zones.kinds[static_cast<std::size_t>(kind)];
        const Zone& zone = problem.zones[static_cast<std::size_t>(group.zone)];
        if (!rule.accepts(zone.cover) || slotsOf(batch) > group.slots) continue;
        if (stay == 0 && batch.pin && batch.pin->zone &&
            zones.ofZone[static_cast<std::size_t>(*batch.pin->zone)] != kind)
            continue;
        for (int setPoint = -1; setPoint < static_cast<int>(zone.setPoints.size()); ++setPoint) {
            for (const int from : days) {
                const auto length = stayLength(rule.duration, zone, setPoint, from);
                if (!length) continue;
                const int to = from + *length;
                const auto off = offIdeal(rule, zone, setPoint, from, to);
                if (!off) continue;
                Wide cost = *off;
                if (last && batch.due && to > *batch.due)
                    cost += Wide{10} * batch.latePerDay * (to - *batch.due);
                if (stay > 0 && before.contains({from, kind}))
                    choices.push_back({kind, setPoint, from, to, true, clamped(cost)});
                if (stay > 0) cost += Wide{10} * batch.moveCost;
                choices.push_back({kind, setPoint, from, to, false, clamped(cost)});
            }
        }
    }
    return choices;
}

/// A choice that may be the one of the plan made before: its slots are not known.
bool isAsBefore(const StayChoice& choice, std::size_t stay, const std::vector<PlacedStay>& before,
                const ZoneKinds& zones) {
    return choice.from == before[stay].from &&
           choice.kind == zones.ofZone[static_cast<std::size_t>(before[stay].zone)] &&
           (stay + 1 == before.size() || choice.to == before[stay + 1].from);
}

/// Adds the change to the first stay of all chains that are surely not the one of the plan made before.
void addChanges(const Problem& problem, const ZoneKinds& zones, const Batch& batch, StayChoices& stays) {
    if (!batch.previous || problem.changeCost == 0) return;
    const std::vector<PlacedStay>& before = *batch.previous;
    bool canBeKept = before.size() == stays.size();
    for (std::size_t stay = 0; stay < stays.size() && canBeKept; ++stay)
        canBeKept = std::any_of(stays[stay].begin(), stays[stay].end(), [&](const StayChoice& choice) {
            return isAsBefore(choice, stay, before, zones);
        });
    for (StayChoice& choice : stays.front())
        if (!canBeKept || !isAsBefore(choice, 0, before, zones))
            choice.cost = clamped(Wide{choice.cost} + Wide{10} * problem.changeCost);
}

/// Drops what no chain of at most `limit` thousandths uses.
void keepChains(StayChoices& stays, std::int64_t limit) {
    // least[k]: by day, least cost of stays 0..k-1 that end (for k = 0: that may begin) then.
    std::vector<std::map<int, std::int64_t>> least(stays.size() + 1);
    for (const StayChoice& choice : stays.front()) least[0][choice.from] = 0;
    const auto at = [](const std::map<int, std::int64_t>& costs, int day) {
        const auto found = costs.find(day);
        return found == costs.end() ? unreachable : found->second;
    };
    const auto lower = [](std::map<int, std::int64_t>& costs, int day, std::int64_t cost) {
        const auto [found, isNew] = costs.emplace(day, std::min(cost, highestChain));
        if (!isNew) found->second = std::min(found->second, cost);
    };
    for (std::size_t k = 0; k < stays.size(); ++k)
        for (const StayChoice& choice : stays[k]) {
            const std::int64_t before = at(least[k], choice.from);
            if (before != unreachable) lower(least[k + 1], choice.to, before + choice.cost);
        }
    std::map<int, std::int64_t> after;
    for (const auto& [day, cost] : least.back()) after[day] = 0;
    for (std::size_t k = stays.size(); k-- > 0;) {
        std::map<int, std::int64_t> rest;
        std::erase_if(stays[k], [&](const StayChoice& choice) {
            const std::int64_t before = at(least[k], choice.from);
            const std::int64_t behind = at(after, choice.to);
            if (before == unreachable || behind == unreachable || before + choice.cost + behind > limit)
                return true;
            lower(rest, choice.from, choice.cost + behind);
            return false;
        });
        after = std::move(rest);
    }
}

} // namespace

std::int64_t strikeCapacityOn(const Problem& problem, int day) {
    const auto& capacity = problem.strikeCapacity;
    if (capacity.empty()) return std::numeric_limits<std::int64_t>::max();
    return capacity[static_cast<std::size_t>(day) % capacity.size()];
}

std::int64_t stockUpTo(const Stock& stock, int day) {
    std::int64_t total = 0;
    for (const StockStep& step : stock.steps)
        if (step.day <= day) total = step.total;
    return total;
}

std::int64_t slotsOf(const Batch& batch) {
    const Wide slots = Wide{batch.containers} * batch.footprint.height * batch.footprint.width;
    return clamped(slots);
}

std::int64_t valueOf(const Problem& problem, const Batch& batch) {
    return clamped(Wide{10} * batch.value + (batch.previous ? Wide{10} * problem.changeCost : Wide{0}));
}

std::optional<StayChoices> stayChoices(const Problem& problem, const ZoneKinds& zones, int index) {
    const Batch& batch = problem.batches[static_cast<std::size_t>(index)];
    const std::int64_t window =
        std::int64_t{std::min(batch.strikeLast, problem.days - 1)} - batch.strikeFirst;
    if (window > mostStrikeDays && !(batch.pin && batch.pin->strikeDay)) return std::nullopt;
    StayChoices stays;
    std::set<int> days = strikeDays(problem, batch);
    Ends before;
    std::size_t choices = 0;
    for (std::size_t stay = 0; stay < batch.stays.size(); ++stay) {
        stays.push_back(choicesOfStay(problem, zones, batch, stay, days, before));
        choices += stays.back().size();
        if (choices > mostChoices) return std::nullopt;
        days.clear();
        before.clear();
        for (const StayChoice& choice : stays.back()) {
            days.insert(choice.to);
            before.emplace(choice.to, choice.kind);
        }
    }
    addChanges(problem, zones, batch, stays);
    keepChains(stays, batch.pin ? unreachable - 1 : valueOf(problem, batch));
    return stays;
}

} // namespace warmbench::planner
