#pragma once

#include "core/climate/thermal_time.h"

#include <span>
#include <vector>

namespace warmbench::climate {

/// A stretch of time in which readings lay outside a range.
struct Excursion {
    double from = 0;    ///< hour of the first reading outside
    double to = 0;      ///< hour of the first one inside again, or of the last before a gap
    double extreme = 0; ///< the reading furthest outside
    bool below = false;

    [[nodiscard]] double hours() const { return to - from; }
};

/// The stretches below `low` and above `high` (not below `low`) that last at least `leastHours`, in order. A
/// gap of more than longestStep ends a stretch. The readings' hours do not decrease.
[[nodiscard]] std::vector<Excursion> excursions(std::span<const Reading> readings, double low, double high,
                                                double leastHours);

} // namespace warmbench::climate
