#pragma once

#include "core/placing/carried.h"

namespace warmbench::placing {

/// How a zone's mat would be run while something carried stands there.
struct HeatThere {
    bool suits = false;
    bool changes = false; ///< the mat has to be set otherwise than the book has it
    /// The set-point that is needed, or that the mat has on the first day as it is; nothing: off or no mat.
    std::optional<Celsius> setPoint;
    Day to;                   ///< the day on which it leaves
    std::optional<Day> ready; ///< where it roots: the day on which it is ready there
    // Where it does not suit:
    bool tooWarm = false;          ///< else too cold
    Celsius rootZone{};            ///< the worst as the mat is run
    Celsius limit{};               ///< of the recipe
    std::optional<BatchId> others; ///< a batch there that the heat that it needs would harm
};

/// What heat a zone offers. As the mat is run in the book where that does for every day, else at the
/// set-point nearest the recipe's ideal that does, that the mat's power holds, and that those who stand there
/// bear. While it roots its recipe's range counts; later it bears 3 to 32 °C (common practice, no source).
/// A planned batch that is taken up whole leaves when it is ready, others when they would have left.
[[nodiscard]] HeatThere heatThere(const HouseBook& book, const Carried& carried, const Zone& zone);

/// The root zone of a zone on each of the days from <= day < to, in tenths, as the book runs its mat, or at
/// one set-point throughout.
[[nodiscard]] std::vector<std::int64_t> rootZones(const HouseBook& book, const Zone& zone, Day from, Day to);
[[nodiscard]] std::vector<std::int64_t> rootZonesAt(const HouseBook& book, const Zone& zone, Day from, Day to,
                                                    std::optional<Celsius> setPoint);

} // namespace warmbench::placing
