#include "core/quantity/day.h"

#include <cstdio>

namespace warmbench {
namespace {

/// `count` decimal digits at the front of `text`, which is shortened by them.
std::optional<int> takeDigits(std::string_view& text, std::size_t count) {
    if (text.size() < count) return std::nullopt;
    int value = 0;
    for (std::size_t i = 0; i < count; ++i) {
        if (text[i] < '0' || text[i] > '9') return std::nullopt;
        value = value * 10 + (text[i] - '0');
    }
    text.remove_prefix(count);
    return value;
}

bool takeHyphen(std::string_view& text) {
    if (text.empty() || text.front() != '-') return false;
    text.remove_prefix(1);
    return true;
}

} // namespace

std::optional<Day> Day::make(int year, unsigned month, unsigned dayOfMonth) {
    const std::chrono::year_month_day date{std::chrono::year{year}, std::chrono::month{month},
                                           std::chrono::day{dayOfMonth}};
    if (!date.ok() || year < 1 || year > 9999) return std::nullopt;
    return Day{std::chrono::sys_days{date}};
}

std::optional<Day> Day::fromIso(std::string_view text) {
    const auto year = takeDigits(text, 4);
    if (!year || !takeHyphen(text)) return std::nullopt;
    const auto month = takeDigits(text, 2);
    if (!month || !takeHyphen(text)) return std::nullopt;
    const auto day = takeDigits(text, 2);
    if (!day || !text.empty()) return std::nullopt;
    return make(*year, static_cast<unsigned>(*month), static_cast<unsigned>(*day));
}

std::string Day::iso() const {
    char text[32];
    std::snprintf(text, sizeof text, "%04d-%02u-%02u", year(), month(), dayOfMonth());
    return text;
}

int Day::dayOfYear() const {
    const std::chrono::sys_days newYear{date().year() / std::chrono::January / 1};
    return static_cast<int>((m_days - newYear).count()) + 1;
}

int Day::weekday() const {
    return static_cast<int>(std::chrono::weekday{m_days}.iso_encoding()) - 1;
}

std::optional<MonthDay> MonthDay::fromIso(std::string_view text) {
    const auto month = takeDigits(text, 2);
    if (!month || !takeHyphen(text)) return std::nullopt;
    const auto day = takeDigits(text, 2);
    if (!day || !text.empty()) return std::nullopt;
    const MonthDay found{static_cast<unsigned>(*month), static_cast<unsigned>(*day)};
    if (!Day::make(2000, found.month, found.day)) return std::nullopt;
    return found;
}

std::string MonthDay::iso() const {
    char text[16];
    std::snprintf(text, sizeof text, "%02u-%02u", month, day);
    return text;
}

Day MonthDay::in(int year) const {
    if (const auto found = Day::make(year, month, day)) return *found;
    return *Day::make(year, month, day - 1);
}

} // namespace warmbench
