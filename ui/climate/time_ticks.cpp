#include "ui/climate/time_ticks.h"

#include <QDate>

#include <cmath>

namespace warmbench::ui {
namespace {

constexpr double perHour = 60;

std::vector<TimeTick> everyHours(double from, double to, int hours, const Wording& wording) {
    std::vector<TimeTick> ticks;
    const double step = hours * perHour;
    for (double minute = std::ceil(from / step) * step; minute <= to; minute += step) {
        const Day day = Day::fromNumber(static_cast<int>(std::floor(minute / minutesADay)));
        const int hour = static_cast<int>((minute - day.number() * minutesADay) / perHour);
        ticks.push_back(
            {minute, wording.shortDate(day) + QStringLiteral(" %1:00").arg(hour, 2, 10, QLatin1Char('0'))});
    }
    return ticks;
}

std::vector<TimeTick> everyDays(double from, double to, int days, const Wording& wording) {
    std::vector<TimeTick> ticks;
    for (int number = static_cast<int>(std::ceil(from / minutesADay)); number * minutesADay <= to; ++number)
        if (number % days == 0)
            ticks.push_back({number * minutesADay, wording.shortDate(Day::fromNumber(number))});
    return ticks;
}

std::vector<TimeTick> everyMonths(double from, double to, int months, const Wording& wording) {
    std::vector<TimeTick> ticks;
    Day day = climate::monthOf(static_cast<std::int32_t>(from));
    for (; day.number() * minutesADay <= to; day = climate::nextMonth(day))
        if (day.number() * minutesADay >= from && (day.month() - 1) % static_cast<unsigned>(months) == 0)
            ticks.push_back({day.number() * minutesADay,
                             months >= 12
                                 ? QString::number(day.year())
                                 : wording.locale().toString(qDate(day), QStringLiteral("MMM yyyy"))});
    return ticks;
}

} // namespace

std::vector<TimeTick> timeTicks(double from, double to, int most, const Wording& wording) {
    const double days = (to - from) / minutesADay;
    for (const int hours : {1, 3, 6, 12})
        if (days * 24 / hours <= most) return everyHours(from, to, hours, wording);
    for (const int step : {1, 2, 7, 14})
        if (days / step <= most) return everyDays(from, to, step, wording);
    for (const int months : {1, 3, 6})
        if (days / (30 * months) <= most) return everyMonths(from, to, months, wording);
    return everyMonths(from, to, 12, wording);
}

} // namespace warmbench::ui
