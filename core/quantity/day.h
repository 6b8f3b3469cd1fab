#pragma once

#include <array>
#include <chrono>
#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace warmbench {

inline constexpr std::array monthNames{"January", "February", "March",     "April",   "May",      "June",
                                       "July",    "August",   "September", "October", "November", "December"};

/// A calendar day (proleptic Gregorian, no time zone), years 1 to 9999.
class Day {
public:
    constexpr Day() = default;
    constexpr explicit Day(std::chrono::sys_days days) : m_days(days) {}

    /// The day of a date that exists, such as make(2027, 2, 28); nothing for 30 February.
    static std::optional<Day> make(int year, unsigned month, unsigned dayOfMonth);
    /// Reads `2027-02-01`, exactly; nothing for anything else.
    static std::optional<Day> fromIso(std::string_view text);
    /// Days since 1970-01-01.
    static constexpr Day fromNumber(int number) {
        return Day{std::chrono::sys_days{std::chrono::days{number}}};
    }

    /// The first day there is, 0001-01-01.
    static constexpr Day first() { return fromNumber(-719'162); }
    /// The last day there is, 9999-12-31.
    static constexpr Day last() { return fromNumber(2'932'896); }

    [[nodiscard]] std::string iso() const;
    [[nodiscard]] constexpr int number() const { return static_cast<int>(m_days.time_since_epoch().count()); }
    [[nodiscard]] std::chrono::year_month_day date() const { return std::chrono::year_month_day{m_days}; }
    [[nodiscard]] int year() const { return static_cast<int>(date().year()); }
    /// 1 to 12.
    [[nodiscard]] unsigned month() const { return static_cast<unsigned>(date().month()); }
    /// 1 to 31.
    [[nodiscard]] unsigned dayOfMonth() const { return static_cast<unsigned>(date().day()); }
    /// 1 to 366.
    [[nodiscard]] int dayOfYear() const;
    /// 0 is Monday, 6 is Sunday (ISO 8601 order).
    [[nodiscard]] int weekday() const;

    friend constexpr auto operator<=>(Day, Day) = default;
    friend constexpr Day operator+(Day d, int n) { return Day{d.m_days + std::chrono::days{n}}; }
    friend constexpr Day operator-(Day d, int n) { return Day{d.m_days - std::chrono::days{n}}; }
    /// Days from b to a.
    friend constexpr int operator-(Day a, Day b) { return static_cast<int>((a.m_days - b.m_days).count()); }

private:
    std::chrono::sys_days m_days{};
};

/// A day of any year, such as the first day of a season window.
struct MonthDay {
    unsigned month = 1; ///< 1 to 12
    unsigned day = 1;   ///< 1 to 31, one that the month has in a leap year

    /// Reads `02-28`; nothing for a day that no year has.
    static std::optional<MonthDay> fromIso(std::string_view text);
    [[nodiscard]] std::string iso() const;
    /// That day in `year`; 29 February becomes the 28th where the year has none.
    [[nodiscard]] Day in(int year) const;
    friend constexpr auto operator<=>(MonthDay, MonthDay) = default;
};

} // namespace warmbench
