#pragma once

#include <cstdint>
#include <optional>

namespace warmbench::exchange {

/// When a clock is put forward in summer.
enum class SummerTime : std::uint8_t {
    None,     ///< never: most loggers
    European, ///< from the last Sunday of March to the last of October, at 01:00 UTC (Directive 2000/84/EC)
    American, ///< from the second Sunday of March to the first of November, at 02:00 (15 U.S.C. 260a)
};

/// A logger's clock.
struct Clock {
    int offsetMinutes = 0; ///< ahead of UTC in winter
    SummerTime summerTime = SummerTime::None;

    /// Seconds since 1970-01-01 00:00 UTC of what the clock shows, given in seconds since its own 1970-01-01
    /// 00:00. The hour that comes twice in autumn is the one that does not go back before `previous` (UTC),
    /// the first where both do not; one that is left out in spring counts as winter time.
    [[nodiscard]] std::int64_t utc(std::int64_t shown, std::optional<std::int64_t> previous) const;

private:
    [[nodiscard]] bool summerAt(std::int64_t utc) const;
};

} // namespace warmbench::exchange
