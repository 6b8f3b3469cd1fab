#include "core/planner/search/cooling.h"

#include <algorithm>
#include <cmath>

namespace warmbench::planner::search {

namespace {

/// Heat at the beginning of a cooling, as a part of the mean cost of a batch: of one that begins anew, of one
/// that goes on from the best, and of all where the search goes on from a good plan.
constexpr double firstHeat = 4;
constexpr double laterHeat = 0.5;
constexpr double heatOfGoingOn = 0.15;
/// In a large house what stands is moved more freely, for mats and days, than a batch is left out: it is so
/// many times as hot, and leaving out counts for so many times more at first.
constexpr double hotterInLarge = 2;
constexpr double firmerInLarge = 3;
/// A cooling of so many rounds for each batch is enough; then rather another.
constexpr double roundsForBatch = 1000;
constexpr int mostCycles = 1000;

} // namespace

Cooling Cooling::forRounds(double rounds, std::size_t batches) {
    const double enough = rounds / (roundsForBatch * std::max(1.0, static_cast<double>(batches)));
    // One that begins anew and one that goes on; with more time rather longer ones than many.
    const double cycles = std::max(std::min(enough, 2.0), std::sqrt(enough));
    return {0, std::clamp(static_cast<int>(cycles), 1, mostCycles), std::sqrt(std::min(1.0, enough)),
            batches > mostOfSmallHouse};
}

double Cooling::along() const {
    return std::clamp(progress, 0.0, 1.0) * cycles;
}

int Cooling::cycle() const {
    return std::min(static_cast<int>(along()), cycles - 1);
}

Heat Cooling::heat(double meanCost) const {
    constexpr double whole = 1024;
    const double left = 1 - (along() - cycle());
    const double anew = goesOn ? heatOfGoingOn : firstHeat * warmth;
    const double first = (cycle() % 2 == 1 && !goesOn ? laterHeat : anew) * meanCost;
    const double dearer = first * left * left * left;
    if (!isOfLarge) return {static_cast<std::int64_t>(dearer), 0};
    return {static_cast<std::int64_t>(hotterInLarge * dearer),
            static_cast<std::int64_t>(whole * firmerInLarge * left)};
}

} // namespace warmbench::planner::search
