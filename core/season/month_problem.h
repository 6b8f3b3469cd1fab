#pragma once

#include "core/planner/problem.h"
#include "core/season/need.h"

#include <map>

namespace warmbench::season {

/// What one batch of the problem is in the book, when it is placed.
struct BatchPart {
    std::string id;               ///< of the problem's batch: target's name and a letter, or its code
    std::optional<BatchId> again; ///< the planned batch that it is; nothing where it is new
    std::optional<TargetId> target;
    Way way;
    std::optional<StockId> stock;
    ContainerTypeId containerType;
    int containers = 0;
    std::int64_t cuttings = 0;
};

/// Cuttings of a target, or of a batch that was to be planned again, that are not even put to the planner,
/// and why.
struct Shortfall {
    std::optional<TargetId> target;
    std::optional<BatchId> again;
    std::int64_t cuttings = 0;
    Phrase why;
};

/// A month's planning problem, and what its indices mean in the book.
struct MonthProblem {
    planner::Problem problem;
    Day from;
    int strikeDays = 0; ///< days on which may be struck
    std::vector<TargetNeed> needs;
    std::vector<BatchPart> parts; ///< parts[i] is problem.batches[firstPart + i]; those planned again first
    std::size_t firstPart = 0;    ///< batches before it are stays planned earlier, pinned
    std::vector<ZoneId> zones;    ///< of problem.zones
    std::vector<Shortfall> shortfalls;
    std::map<StayId, Day> early; ///< stays that the forecast ends before their day; their slots count as free

    /// Cuttings that the targets that can be struck now ask for, the shortfalls' and those planned again with
    /// them.
    [[nodiscard]] std::int64_t cuttingsWanted() const;
    [[nodiscard]] const BatchPart& partOf(int batch) const {
        return parts[static_cast<std::size_t>(batch) - firstPart];
    }
};

/// Turns targets, recipes, stocks, hands, houses and what already stands there into a planning problem.
///
/// Each target becomes one batch or more of at most so many containers that each finds room and hands, from
/// the stocks that give most. A batch roots until nine of ten that will root have rooted, then weans and
/// grows on under no cover until it is potted on. Its value is the worth of its share of the target's plants.
/// Batches that the request lets be planned again are taken out of the book's stays, stocks and hands, and
/// join them with their own recipes, stocks and containers, and with their places as the plan before where
/// they can stay there.
/// The horizon reaches past the last strike day by as long as the batches stand, at most `longestHorizon`
/// days in all.
[[nodiscard]] MonthProblem monthProblem(const HouseBook& book, const RecipeLibrary& library,
                                        const PlanRequest& request);

/// The most days that a month's problem looks ahead.
inline constexpr int longestHorizon = 240;

/// What a zone's mat costs in a day at a set-point with the house's air of that month, rounded to a
/// hundredth; nothing where its rated power can't hold the set-point. Heat loss is U A dT
/// (core/climate/heat.h).
[[nodiscard]] std::optional<Money> matCostPerDay(const HouseBook& book, const Zone& zone, Celsius setPoint,
                                                 Celsius air);

} // namespace warmbench::season
