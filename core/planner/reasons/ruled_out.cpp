#include "core/planner/reasons/ruled_out.h"

#include "core/planner/reasons/words.h"

#include <algorithm>
#include <limits>

namespace warmbench::planner {

namespace {

int openSlots(const Zone& zone) {
    return zone.rows * zone.cols -
           static_cast<int>(std::count(zone.blocked.begin(), zone.blocked.end(), char{1}));
}

std::int64_t totalBy(const Stock& stock, int day) {
    std::int64_t total = 0;
    for (const StockStep& step : stock.steps)
        if (step.day <= day) total = step.total;
    return total;
}

std::string shortOfSupply(const Problem& problem, const Batch& batch, int last) {
    if (batch.stock) {
        const Stock& stock = problem.stocks[static_cast<std::size_t>(*batch.stock)];
        const std::int64_t total = totalBy(stock, last);
        if (total < batch.cuttings)
            return "stock " + stock.id + " gives " + counted(total, "cutting") + " by day " +
                   std::to_string(last) + ", " + std::to_string(batch.cuttings - total) + " short of the " +
                   std::to_string(batch.cuttings) + " that it takes";
    }
    if (problem.strikeCapacity.empty()) return {};
    std::int64_t most = 0;
    int bestDay = batch.strikeFirst;
    for (int day = batch.strikeFirst; day <= last; ++day) {
        const std::int64_t hands =
            problem.strikeCapacity[static_cast<std::size_t>(day) % problem.strikeCapacity.size()];
        if (hands <= most) continue;
        most = hands;
        bestDay = day;
    }
    if (most >= batch.cuttings) return {};
    return "hands are short by " + counted(batch.cuttings - most, "cutting") +
           " on its best strike day, day " + std::to_string(bestDay) + ": " + std::to_string(batch.cuttings) +
           " to strike, " + std::to_string(most) + " can be struck";
}

/// What a set-point or floor misses of the range that a stay accepts, in tenths.
std::int64_t missing(const StayRule& rule, std::int64_t warm) {
    if (warm < rule.low) return rule.low - warm;
    return warm > rule.high ? warm - rule.high : 0;
}

std::string noZone(const Problem& problem, const Batch& batch, const StayRule& rule) {
    const std::string covers = coverNamesOf(rule);
    const std::int64_t slots =
        std::int64_t{batch.containers} * batch.footprint.height * batch.footprint.width;
    bool covered = false;
    int largest = 0;
    std::int64_t nearest = std::numeric_limits<std::int64_t>::max();
    std::int64_t nearestWarmth = 0;
    const Zone* nearestZone = nullptr;
    for (const Zone& zone : problem.zones) {
        if (!rule.accepts(zone.cover)) continue;
        covered = true;
        largest = std::max(largest, openSlots(zone));
        if (openSlots(zone) < slots) continue;
        for (int state = -1; state < static_cast<int>(zone.setPoints.size()); ++state) {
            const std::int64_t warm = rootZone(zone, state, batch.strikeFirst);
            if (missing(rule, warm) >= nearest) continue;
            nearest = missing(rule, warm);
            nearestWarmth = warm;
            nearestZone = &zone;
        }
    }
    if (!covered) return "no zone has the cover that it needs: " + covers;
    if (nearestZone == nullptr)
        return "its " + counted(batch.containers, "container") + " need " + counted(slots, "slot") +
               " in one zone, and the largest " + covers + " zone has " + std::to_string(largest);
    if (nearest > 0)
        return "no " + covers + " zone offers " + warmth(rule.low, rule.high) + "; the nearest is " +
               warmth(nearestWarmth, nearestWarmth) + " in " + nearestZone->id;
    return {};
}

} // namespace

std::string ruledOut(const Problem& problem, const Batch& batch) {
    if (batch.strikeFirst >= problem.days)
        return "its first strike day, day " + std::to_string(batch.strikeFirst) +
               ", lies beyond the horizon of " + counted(problem.days, "day");
    for (const StayRule& rule : batch.stays)
        if (std::string reason = noZone(problem, batch, rule); !reason.empty()) return reason;
    return shortOfSupply(problem, batch, std::min(batch.strikeLast, problem.days - 1));
}

} // namespace warmbench::planner
