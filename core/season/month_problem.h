#pragma once

#include "core/planner/problem.h"
#include "core/season/need.h"

namespace warmbench::season {

/// What one batch of the problem is in the book, when it is placed.
struct BatchPart {
    std::string id;       ///< of the problem's batch: target's name and a letter
    std::size_t need = 0; ///< index of MonthProblem::needs
    StockId stock;
    ContainerTypeId containerType;
    int containers = 0;
    std::int64_t cuttings = 0;
};

/// Cuttings of a target that are not even put to the planner, and why.
struct Shortfall {
    TargetId target;
    std::int64_t cuttings = 0;
    std::string why;
};

/// A month's planning problem, and what its indices mean in the book.
struct MonthProblem {
    planner::Problem problem;
    Day from;
    int strikeDays = 0; ///< days on which may be struck
    std::vector<TargetNeed> needs;
    std::vector<BatchPart> parts; ///< parts[i] is problem.batches[firstPart + i]
    std::size_t firstPart = 0;    ///< batches before it are stays planned earlier, pinned
    std::vector<ZoneId> zones;    ///< of problem.zones
    std::vector<Shortfall> shortfalls;

    /// Cuttings that the targets that can be struck now ask for, the shortfalls' with them.
    [[nodiscard]] std::int64_t cuttingsWanted() const;
    [[nodiscard]] const Way& wayOf(const BatchPart& part) const { return *needs[part.need].way; }
};

/// Turns targets, recipes, stocks, hands, houses and what already stands there into a planning problem.
///
/// Each target becomes one batch or more of at most so many containers that each finds room and hands, from
/// the stocks that give most. A batch roots until nine of ten that will root have rooted, then weans and
/// grows on under no cover until it is potted on. Its value is the worth of its share of the target's plants.
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
