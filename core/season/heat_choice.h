#pragma once

#include "core/book/house_book.h"

namespace warmbench::season {

/// One way to run a mat under a batch, and what it brings.
struct HeatChoice {
    std::optional<Celsius> setPoint; ///< nothing: off
    std::optional<int> days; ///< until nine of ten of those that root have; nothing where not in a year
    Money cost{};            ///< of the zone's mat until then, or for a year
    bool suits = false;      ///< the root zone stays within the recipe's range
};

/// The mat off, and at each set-point that its power holds in the house's air, for cuttings struck by a
/// recipe on a day: costs by U A dT day by day (matCostPerDay) against thermal time. Empty where the zone has
/// no mat or the recipe's figures can't be.
[[nodiscard]] std::vector<HeatChoice> heatChoices(const HouseBook& book, const Zone& zone,
                                                  const Recipe& recipe, Day strikeDay);
/// The same of a batch, as seen on a day: what is still to come from that day on, or from its strike day
/// where that is later, after the warmth that it has had. 0 days where that was enough already.
[[nodiscard]] std::vector<HeatChoice> heatChoices(const HouseBook& book, const Zone& zone, const Batch& batch,
                                                  Day day);

} // namespace warmbench::season
