#include "core/planner/reasons/ruled_out.h"

#include "core/planner/reasons/words.h"
#include "core/quantity/phrase.h"

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
            return phrase("stock %1 gives %2 by %3, %4 short of the %5 that it takes", stock.id,
                          counted(total, "cutting"), dayRange(last, last), batch.cuttings - total,
                          batch.cuttings)
                .text();
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
    return phrase("hands are short by %1 on its best strike day, %2: %3 to strike, %4 can be struck",
                  counted(batch.cuttings - most, "cutting"), dayRange(bestDay, bestDay), batch.cuttings, most)
        .text();
}

/// What a set-point or floor misses of the range that a stay accepts, in tenths.
std::int64_t missing(const StayRule& rule, std::int64_t warm) {
    if (warm < rule.low) return rule.low - warm;
    return warm > rule.high ? warm - rule.high : 0;
}

/// Where one of the stays can never be: no zone has its cover, its room, or on any day from the first strike
/// day on its warmth.
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
        const int lastFloor = std::max(batch.strikeFirst, static_cast<int>(zone.floor.size()) - 1);
        for (int state = -1; state < static_cast<int>(zone.setPoints.size()); ++state)
            for (int day = batch.strikeFirst; day <= lastFloor; ++day) {
                const std::int64_t warm = rootZone(zone, state, day);
                if (missing(rule, warm) >= nearest) continue;
                nearest = missing(rule, warm);
                nearestWarmth = warm;
                nearestZone = &zone;
            }
    }
    if (!covered) return phrase("no zone has the cover that it needs: %1", covers).text();
    if (nearestZone == nullptr)
        return phrase("its %1 need %2 in one zone, and the largest %3 zone has %4",
                      counted(batch.containers, "container"), counted(slots, "slot"), covers, largest)
            .text();
    if (nearest > 0)
        return phrase("no %1 zone offers %2; the nearest is %3 in %4", covers, warmth(rule.low, rule.high),
                      warmth(nearestWarmth, nearestWarmth), nearestZone->id)
            .text();
    return {};
}

} // namespace

std::string ruledOut(const Problem& problem, const Batch& batch) {
    if (batch.strikeFirst >= problem.days)
        return phrase("its first strike day, %1, lies beyond the horizon of %2",
                      dayRange(batch.strikeFirst, batch.strikeFirst), counted(problem.days, "day"))
            .text();
    for (const StayRule& rule : batch.stays)
        if (std::string reason = noZone(problem, batch, rule); !reason.empty()) return reason;
    return shortOfSupply(problem, batch, std::min(batch.strikeLast, problem.days - 1));
}

} // namespace warmbench::planner
