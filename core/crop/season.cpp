#include "core/crop/season.h"

#include <algorithm>
#include <array>

namespace warmbench {
namespace {

constexpr std::array<unsigned, 12> longestMonths{31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
constexpr int commonYear = 2027; // any year of 365 days serves
constexpr int daysOfCommonYear = 365;

MonthDay laterBy(MonthDay day, int days) {
    const Day moved = day.in(commonYear) + days % daysOfCommonYear;
    return {moved.month(), moved.dayOfMonth()};
}

} // namespace

MonthDay halfAYearFrom(MonthDay day) {
    const unsigned month = (day.month + 5) % 12 + 1;
    const unsigned longest = longestMonths[month - 1];
    const unsigned lastOfOwn = day.month == 2 ? 28 : longestMonths[day.month - 1];
    return {month, day.day >= lastOfOwn ? longest : std::min(day.day, longest)};
}

Season seasonFor(Season north, double latitude, int shiftDays) {
    Season season = north;
    if (latitude < 0) season = {halfAYearFrom(season.from), halfAYearFrom(season.to)};
    if (shiftDays % daysOfCommonYear != 0)
        season = {laterBy(season.from, shiftDays), laterBy(season.to, shiftDays)};
    return season;
}

std::vector<StrikeWindow> strikeWindows(const Season& season, Day from, Day to) {
    const int yearsToEnd = season.from <= season.to ? 0 : 1;
    std::vector<StrikeWindow> windows;
    for (int year = from.year() - yearsToEnd; from <= to && year <= to.year(); ++year) {
        const StrikeWindow window{season.from.in(year), season.to.in(year + yearsToEnd)};
        if (window.last >= from && window.first <= to) windows.push_back(window);
    }
    return windows;
}

} // namespace warmbench
