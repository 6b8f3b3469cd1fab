#pragma once

#include "core/crop/crop.h"

#include <vector>

namespace warmbench {

/// The day half a year away: the month six further on and the same day of it. The last day of a month becomes
/// the last of the other, and a day that the other month lacks its last; the last of February is written as
/// 29 February, which is the 28th in a year without one. So 07-15 is 01-15 and 02-28 is 08-31.
[[nodiscard]] MonthDay halfAYearFrom(MonthDay day);

/// A season given for the north as it is at a place: half a year away south of the equator (`latitude` in
/// degrees, below 0), then `shiftDays` later, or earlier where that is negative. Days are counted in a year
/// of 365; the result is the season itself where nothing is to be moved.
[[nodiscard]] Season seasonFor(Season north, double latitude, int shiftDays);

/// A season in a given year, first and last day included.
struct StrikeWindow {
    Day first;
    Day last;
    friend bool operator==(const StrikeWindow&, const StrikeWindow&) = default;
    [[nodiscard]] bool holds(Day day) const { return first <= day && day <= last; }
};

/// Every window of the season that shares a day with the period from `from` to `to`, both included, in order
/// and whole; a season that runs over the new year starts in the year before it ends. None where `to` is
/// before `from`.
[[nodiscard]] std::vector<StrikeWindow> strikeWindows(const Season& season, Day from, Day to);

} // namespace warmbench
