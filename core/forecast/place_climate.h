#pragma once

#include "core/book/readings.h"

#include <optional>
#include <vector>

namespace warmbench::forecast {

/// What was to be expected in a zone on a day, and what the cuttings rooting there should have.
struct ExpectedDay {
    Day day;
    std::optional<Celsius> setPoint; ///< of its mat; nothing while that is off
    Celsius rootZone{};              ///< expected: the set-point or the unheated root zone
    std::optional<Celsius> low;      ///< the highest of the lowest temperatures of what roots there
    std::optional<Celsius> high;     ///< the lowest of the highest
};

/// All that is known of the climate in a zone or a house.
struct PlaceClimate {
    std::vector<climate::MinuteReading> rootZone;
    std::vector<climate::MinuteReading>
        air; ///< over the zone; of its house where it has no logger of its own
    std::vector<climate::MinuteReading>
        deficit;                       ///< vapour pressure deficit of that air, in hundredths of kPa
    std::vector<ExpectedDay> expected; ///< one a day, of a zone only
};

/// On the days from <= day < to. The deficit is there for the minutes that have air and humidity both.
[[nodiscard]] PlaceClimate climateOf(const HouseBook& book, const ReadingPlace& place, Day from, Day to);

/// The first and the last day that have a reading in a place, the air of a zone's house with it; nothing
/// where there is none.
struct ReadingDays {
    Day first;
    Day last;
};
[[nodiscard]] std::optional<ReadingDays> readingDays(const HouseBook& book, const ReadingPlace& place);

} // namespace warmbench::forecast
