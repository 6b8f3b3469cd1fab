#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace warmbench::exchange {

/// A moment as a file gives it.
struct Moment {
    std::int64_t microseconds = 0; ///< since 1970-01-01 00:00: UTC with an offset, else the file's own clock
    bool offset = false;           ///< whether an offset from UTC (or Z) was given
};

/// Reads an ISO 8601 moment such as `2027-03-01T06:30`, `2027-03-01 06:30:15.25+01:00` or `2027-03-01`
/// (midnight): T or a blank, seconds and their fraction (down to a microsecond) optional, `24:00` the day's
/// end, then nothing, Z or an offset. Nothing for anything else.
std::optional<Moment> momentFromIso(std::string_view text);

} // namespace warmbench::exchange
