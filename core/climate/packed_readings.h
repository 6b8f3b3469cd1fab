#pragma once

#include "core/quantity/day.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Readings as a short text, about a byte and a half for each reading of a regular logger.
///
/// The text is a row of numbers in the 64 characters A-Z a-z 0-9 - _, five bits a character, the lowest
/// first; the sixth bit says that more follow. Readings of even steps make one run: minutes since the end of
/// the run before (since the month began for the first), minutes of a step, number of readings, then for each
/// reading how much its value differs from the one before it (from 0 for the first of all), as twice the
/// difference, or twice its size less one where it is negative.
namespace warmbench::climate {

/// One reading: minutes since 1970-01-01 00:00 of the place's winter time, hundredths of a degree Celsius or
/// of a per cent.
struct MinuteReading {
    std::int32_t minute = 0;
    std::int32_t value = 0;
    friend bool operator==(const MinuteReading&, const MinuteReading&) = default;

    [[nodiscard]] double units() const { return value / 100.0; }
};

inline constexpr std::int32_t minutesPerDay = 24 * 60;

/// The first day of the month that a minute lies in.
[[nodiscard]] Day monthOf(std::int32_t minute);
/// The first day of the month after.
[[nodiscard]] Day nextMonth(Day month);

/// Readings of one month, their minutes rising.
[[nodiscard]] std::string pack(std::span<const MinuteReading> readings, Day month);

/// The readings that a text holds, put behind those in `into`; false, and nothing put there, where it is no
/// such text, is empty, or its minutes do not lie in the month.
bool unpack(std::string_view text, Day month, std::vector<MinuteReading>& into);

/// The readings that are in either, in order; where both have one of a minute, that of `kept`.
[[nodiscard]] std::vector<MinuteReading> merged(std::span<const MinuteReading> kept,
                                                std::span<const MinuteReading> added);

} // namespace warmbench::climate
