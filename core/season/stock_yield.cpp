#include "core/season/stock_yield.h"

#include "core/crop/season.h"

#include <algorithm>
#include <map>

namespace warmbench::season {
namespace {

const Flush* flushOf(const Stock& stock, Wood wood) {
    for (const Flush& flush : stock.flushes)
        if (flush.wood == wood && flush.cuttingsPerPlant > 0) return &flush;
    return nullptr;
}

/// Cuttings taken from the stock by strike day, from `since` on.
std::map<Day, std::int64_t> takenSince(const HouseBook& book, StockId stock, Day since) {
    std::map<Day, std::int64_t> taken;
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.stock == stock && batch.strikeDay >= since) taken[batch.strikeDay] += batch.cuttings();
    return taken;
}

} // namespace

bool yields(const Stock& stock, Wood wood) {
    return flushOf(stock, wood) != nullptr && stock.plants > 0;
}

std::vector<planner::StockStep> stockSteps(const HouseBook& book, const Stock& stock, Wood wood, Day from,
                                           int days) {
    std::vector<planner::StockStep> steps;
    const Flush* flush = flushOf(stock, wood);
    if (!flush || days < 1) return steps;
    const std::int64_t picking = std::int64_t{stock.plants} * flush->cuttingsPerPlant;
    const int regrowth = flush->regrowthDays;
    const Nursery& nursery = book.nursery();
    const Season local = seasonFor(flush->season, nursery.latitude.units(), nursery.seasonShiftDays);
    std::map<int, std::int64_t> added;
    for (const StrikeWindow& window : strikeWindows(local, from, from + days - 1)) {
        const Day start = std::max(window.first, from);
        const Day end = std::min(window.last, from + days - 1);
        std::int64_t onPlants = picking;
        std::map<int, std::int64_t> regrowing;
        for (const auto& [day, cuttings] : takenSince(book, stock.id, start - regrowth + 1)) {
            onPlants -= cuttings;
            // What the book has taken, or will, stands again so many days later.
            if (day + regrowth <= end) regrowing[day + regrowth - from] += cuttings;
        }
        added[start - from] += std::max<std::int64_t>(0, onPlants);
        for (const auto& [day, cuttings] : regrowing)
            for (int again = day; again <= end - from; again += regrowth)
                added[again] += std::min(cuttings, picking);
        for (int again = start - from + regrowth; again <= end - from; again += regrowth)
            added[again] += std::max<std::int64_t>(0, onPlants);
    }
    std::int64_t total = 0;
    for (const auto& [day, cuttings] : added)
        if (cuttings > 0) steps.push_back({day, total += cuttings});
    return steps;
}

std::int64_t fullYield(const HouseBook& book, const Stock& stock, Wood wood, Day from, int days) {
    const Flush* flush = flushOf(stock, wood);
    if (!flush || days < 1) return 0;
    const Nursery& nursery = book.nursery();
    const Season local = seasonFor(flush->season, nursery.latitude.units(), nursery.seasonShiftDays);
    std::int64_t pickings = 0;
    for (const StrikeWindow& window : strikeWindows(local, from, from + days - 1)) {
        const Day start = std::max(window.first, from);
        const Day end = std::min(window.last, from + days - 1);
        pickings += 1 + (end - start) / flush->regrowthDays;
    }
    return pickings * stock.plants * flush->cuttingsPerPlant;
}

} // namespace warmbench::season
