#include "core/house/house.h"

namespace warmbench {
namespace {

/// Day 15 stands for the middle of each month.
Day middleOfMonth(int year, unsigned month) {
    return *Day::make(year, month, 15);
}

} // namespace

Celsius onDay(const MonthlyCelsius& byMonth, Day day) {
    int year = day.year();
    unsigned month = day.month();
    if (day < middleOfMonth(year, month)) {
        year -= month == 1 ? 1 : 0;
        month = month == 1 ? 12 : month - 1;
    }
    const unsigned nextMonth = month % 12 + 1;
    const Day before = middleOfMonth(year, month);
    const Day after = middleOfMonth(month == 12 ? year + 1 : year, nextMonth);
    const double share = static_cast<double>(day - before) / static_cast<double>(after - before);
    const double from = byMonth[month - 1].units();
    const double to = byMonth[nextMonth - 1].units();
    return Celsius::fromUnits(from + (to - from) * share);
}

} // namespace warmbench
