#pragma once

#include "core/climate/packed_readings.h"
#include "ui/words/wording.h"

#include <vector>

namespace warmbench::ui {

inline constexpr double minutesADay = climate::minutesPerDay;

/// A mark on a chart's line of time.
struct TimeTick {
    double minute = 0; ///< since 1970-01-01 00:00
    QString words;     ///< no two of a chart's are the same
};

/// Marks at round hours, days, months or years, no more than `most`.
[[nodiscard]] std::vector<TimeTick> timeTicks(double from, double to, int most, const Wording& wording);

} // namespace warmbench::ui
