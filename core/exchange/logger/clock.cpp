#include "core/exchange/logger/clock.h"

#include "core/quantity/day.h"

namespace warmbench::exchange {
namespace {

constexpr std::int64_t secondsPerHour = 3600;
constexpr std::int64_t secondsPerDay = 24 * secondsPerHour;

/// The n-th Sunday of a month, the last one for 0.
Day sunday(int year, unsigned month, int n) {
    if (n == 0) {
        const Day next = *Day::make(month == 12 ? year + 1 : year, month % 12 + 1, 1);
        const Day last = next - 1;
        return last - (last.weekday() + 1) % 7;
    }
    const Day first = *Day::make(year, month, 1);
    return first + (6 - first.weekday() + 7 * (n - 1));
}

} // namespace

bool Clock::summerAt(std::int64_t utc) const {
    if (summerTime == SummerTime::None) return false;
    const auto dayNumber = utc >= 0 ? utc / secondsPerDay : (utc - secondsPerDay + 1) / secondsPerDay;
    const int year = Day::fromNumber(static_cast<int>(dayNumber)).year();
    const auto at = [](Day day, std::int64_t seconds) { return day.number() * secondsPerDay + seconds; };
    const std::int64_t offset = offsetMinutes * 60;
    const auto [begins, ends] =
        summerTime == SummerTime::European
            ? std::pair(at(sunday(year, 3, 0), secondsPerHour), at(sunday(year, 10, 0), secondsPerHour))
            : std::pair(at(sunday(year, 3, 2), 2 * secondsPerHour - offset),
                        at(sunday(year, 11, 1), secondsPerHour - offset));
    return utc >= begins && utc < ends;
}

std::int64_t Clock::utc(std::int64_t shown, std::optional<std::int64_t> previous) const {
    const std::int64_t winter = shown - offsetMinutes * 60;
    const std::int64_t summer = winter - secondsPerHour;
    if (!summerAt(summer)) return winter;
    // Shown as winter time too: the hour comes twice.
    const bool twice = !summerAt(winter);
    return twice && previous && summer < *previous ? winter : summer;
}

} // namespace warmbench::exchange
