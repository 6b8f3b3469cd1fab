#pragma once

#include "core/quantity/day.h"
#include "core/quantity/id.h"
#include "core/quantity/quantity.h"

#include <array>
#include <string>

namespace warmbench {

/// Latitude in tenths of a degree, north positive.
using Latitude = Amount<struct LatitudeTag, 10>;

/// What holds for the whole nursery: its place, its hands, and what it counts as a cost when it plans.
/// A house book has exactly one.
struct Nursery {
    NurseryId id{1};
    std::string name;
    Latitude latitude{500};
    int seasonShiftDays = 0; ///< its seasons come so many days later (earlier when negative)
    std::string currency = "€";
    Money pricePerKilowattHour{30};
    std::array<int, 7> strikesByWeekday{400, 400, 400, 400, 400, 0, 0}; ///< cuttings, Monday first
    int surenessPermille = 900;                                         ///< with which targets are to be met
    Money scatterCost{50};     ///< of each group of a batch's containers beyond the first
    Money moveCost{10};        ///< of moving one container
    Money offIdealCost{1};     ///< of one container standing a day one degree off its ideal
    int lateCostPermille = 20; ///< of the worth of a late plant, for each day
    friend bool operator==(const Nursery&, const Nursery&) = default;

    [[nodiscard]] bool southern() const { return latitude.parts < 0; }
};

/// A day on which there are other hands than its weekday says: a holiday, a half day, help.
struct HandDay {
    HandDayId id;
    Day day;
    int cuttings = 0;
    std::string note;
    friend bool operator==(const HandDay&, const HandDay&) = default;
};

} // namespace warmbench
