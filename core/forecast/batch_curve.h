#pragma once

#include "core/forecast/book_forecast.h"

#include <vector>

namespace warmbench::forecast {

/// What a chart of one batch's forecast shows.
struct BatchCurve {
    struct DayShare {
        Day day;
        BatchForecast::Share rooted; ///< of those alive, with its 90 % band
    };
    /// All root checks of a day together.
    struct Checked {
        Day day;
        int rooted = 0;
        int alive = 0; ///< examined and not dead
    };
    BatchOutlook outlook;
    std::vector<DayShare>
        days; ///< from the strike day until some days after it is surely ready, or the plan's day
    std::vector<Checked> checks; ///< up to the day of the forecast
    int measuredDays = 0;        ///< days so far whose warmth a logger has measured
    int daysSoFar = 0;
    double degreeDays = 0; ///< of warmth so far, above the recipe's base
};

/// Of a batch that has an outlook in the forecast.
[[nodiscard]] BatchCurve batchCurve(const HouseBook& book, const BookForecast& forecast, BatchId batch);

} // namespace warmbench::forecast
