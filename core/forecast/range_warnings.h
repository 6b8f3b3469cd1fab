#pragma once

#include "core/book/house_book.h"

#include <vector>

namespace warmbench::forecast {

/// A time in which a zone's root zone, as its logger has it, lay outside what the cuttings rooting there
/// should have.
struct RangeWarning {
    ZoneId zone;
    bool below = false;
    double from = 0;              ///< hour since 1970-01-01 00:00 of the place's winter time
    double to = 0;                ///< hour of the end of its last stretch
    double hours = 0;             ///< outside, of all stretches, each hour once
    double extreme = 0;           ///< the reading furthest outside, degrees Celsius
    std::vector<BatchId> batches; ///< whose range it left
};

/// Shorter stretches are not told (a decision of this program).
inline constexpr double hoursThatMatter = 2;
/// Stretches that are no more than this apart are one: a mat's thermostat switches, a cold spell goes on
/// (a decision of this program).
inline constexpr double hoursJoined = 6;

/// The warnings of the days from <= day < to in all zones, the latest first.
[[nodiscard]] std::vector<RangeWarning> rangeWarnings(const HouseBook& book, Day from, Day to);

} // namespace warmbench::forecast
