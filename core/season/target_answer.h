#pragma once

#include "core/season/need.h"

namespace warmbench::season {

/// What one stock can give for a target by the last day of striking.
struct StockOffer {
    StockId stock;
    std::int64_t cuttings = 0;
};

/// How a target that can be struck now would be met, before the planner looks for days and places.
struct TargetAnswer {
    Recipe recipe;
    StrikeWindow window;
    std::int64_t cuttings = 0;
    std::optional<ContainerTypeId> containerType; ///< nothing where the book has none
    int containers = 0;
    int slots = 0;
    int rootingDays = 0;            ///< at the recipe's ideal root zone
    int openDays = 0;               ///< weaning and growing on, in the open
    std::vector<StockOffer> stocks; ///< those that give most first
    std::vector<ZoneId> zones;      ///< whose cover suits and whose mat or house can be as warm as it needs
    int freeSlots = 0;              ///< in them, on the first day of the window
    std::vector<Phrase> inTheWay;   ///< empty where nothing is
    Phrase doubt; ///< why so many cuttings are asked for, where it is doubt about the take; else empty
};

/// Nothing where the target is covered or can't be struck in the days asked for: the need says why.
[[nodiscard]] std::optional<TargetAnswer> answerFor(const HouseBook& book, const TargetNeed& need);

} // namespace warmbench::season
