#pragma once

#include "core/season/need.h"

namespace warmbench::season {

/// What one stock can give for a target by the last day of striking.
struct StockOffer {
    StockId stock;
    std::int64_t cuttings = 0;
};

/// How a target would be met, in the days asked for or once its wood is right again, before the planner looks
/// for days and places.
struct TargetAnswer {
    Recipe recipe;
    StrikeWindow window; ///< all of it, from the first day asked for on
    bool ahead = false;  ///< nothing is to be struck in the days asked for
    std::int64_t cuttings = 0;
    std::optional<ContainerTypeId> containerType; ///< nothing where the book has none
    int containers = 0;
    int slots = 0;
    int rootingDays = 0;            ///< at the recipe's ideal root zone
    int openDays = 0;               ///< weaning and growing on, in the open
    Day ready;                      ///< potted on, when struck on the first day at the ideal root zone
    int lateDays = 0;               ///< that this is after the target's date
    std::vector<StockOffer> stocks; ///< those that give most first
    std::vector<ZoneId> zones;      ///< whose cover suits and whose mat or house can be as warm as it needs
    int freeSlots = 0;              ///< in them, on the first day of the window
    std::vector<Phrase> inTheWay;   ///< empty where nothing is
    Phrase doubt; ///< why so many cuttings are asked for, where it is doubt about the take; else empty
};

/// Nothing where the target is covered or no recipe is known: the need says why.
[[nodiscard]] std::optional<TargetAnswer> answerFor(const HouseBook& book, const TargetNeed& need);

} // namespace warmbench::season
