#include "core/climate/thermal_time.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace warmbench::climate {
namespace {

constexpr double hoursPerDay = 24;
/// Readings this much further apart than longestStep are not yet a gap: hours are rounded numbers.
constexpr double rounding = 1e-6;

double capOf(const Thresholds& thresholds) {
    return thresholds.cap.value_or(std::numeric_limits<double>::infinity());
}

double clip(double celsius, const Thresholds& thresholds) {
    return std::clamp(celsius, thresholds.base, capOf(thresholds));
}

/// Mean excess over the base, clipped, along a straight line between two temperatures.
double meanExcess(double one, double other, const Thresholds& thresholds) {
    const double low = std::min(one, other);
    const double high = std::max(one, other);
    const double lowClipped = clip(low, thresholds);
    const double highClipped = clip(high, thresholds);
    if (lowClipped == highClipped) return lowClipped - thresholds.base;
    // Of the line's length, a part lies between base and cap, where the excess is the mean of its ends, and
    // a part above the cap.
    const double partBetween = (highClipped - lowClipped) / (high - low);
    const double partAbove = (high - highClipped) / (high - low);
    return partBetween * ((lowClipped + highClipped) / 2 - thresholds.base) +
           partAbove * (highClipped - thresholds.base);
}

double fourCases(double highest, double lowest, double base) {
    const double mean = (highest + lowest) / 2;
    if (lowest >= base) return mean - base;
    if (highest <= base) return 0;
    if (mean > base) return (highest - base) / 2 - (base - lowest) / 4;
    return (highest - base) / 4;
}

} // namespace

double ThermalTime::gapHours() const {
    double hours = 0;
    for (const Gap& gap : gaps) hours += gap.to - gap.from;
    return hours;
}

double steadyDegreeDays(double celsius, double hours, const Thresholds& thresholds) {
    return (clip(celsius, thresholds) - thresholds.base) * hours / hoursPerDay;
}

ThermalTime thermalTime(std::span<const Reading> readings, const Thresholds& thresholds) {
    ThermalTime sum;
    for (std::size_t i = 1; i < readings.size(); ++i) {
        const Reading& before = readings[i - 1];
        const Reading& after = readings[i];
        const double hours = after.hour - before.hour;
        const double degreeDays = meanExcess(before.celsius, after.celsius, thresholds) * hours / hoursPerDay;
        if (hours > longestStep + rounding) {
            sum.gaps.push_back({before.hour, after.hour});
            sum.acrossGaps += degreeDays;
        } else {
            sum.measured += degreeDays;
        }
    }
    return sum;
}

double dailyDegreeDays(double highest, double lowest, const Thresholds& thresholds, DailyRule rule) {
    switch (rule) {
    case DailyRule::MeanThenClip:
        return clip((highest + lowest) / 2, thresholds) - thresholds.base;
    case DailyRule::ClipThenMean:
        return (clip(highest, thresholds) + clip(lowest, thresholds)) / 2 - thresholds.base;
    case DailyRule::CapThenMean:
        return std::max(0.0, (std::min(highest, capOf(thresholds)) + lowest) / 2 - thresholds.base);
    case DailyRule::FourCases:
        return fourCases(highest, lowest, thresholds.base);
    }
    return 0;
}

} // namespace warmbench::climate
