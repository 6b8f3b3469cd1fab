#pragma once

#include <optional>
#include <span>
#include <vector>

/// Thermal time in degree-days: the temperature's excess over a base, integrated over days. Temperatures in
/// degrees Celsius (any one scale does), moments in hours from any fixed origin.
namespace warmbench::climate {

/// Warmth counts above `base`; what is above `cap` (not below the base) counts as the cap does.
struct Thresholds {
    double base = 0;
    std::optional<double> cap;
};

struct Reading {
    double hour = 0;
    double celsius = 0;
};

/// Two readings further apart leave a gap between them, hours (a decision of this program).
inline constexpr double longestStep = 3;

struct Gap {
    double from = 0; ///< hour of the reading before
    double to = 0;   ///< hour of the reading after
};

struct ThermalTime {
    double measured = 0; ///< degree-days over steps of at most longestStep
    double acrossGaps =
        0; ///< degree-days of straight lines across the gaps, to be replaced where more is known
    std::vector<Gap> gaps; ///< in order

    [[nodiscard]] double total() const { return measured + acrossGaps; }
    [[nodiscard]] double gapHours() const;
};

/// Degree-days of one degree held for `hours`.
double steadyDegreeDays(double celsius, double hours, const Thresholds& thresholds);

/// Degree-days under the readings, whose hours do not decrease: the exact integral of the straight lines
/// between them, clipped to base and cap wherever on a line they are crossed. Two readings of one hour are a
/// sudden step.
ThermalTime thermalTime(std::span<const Reading> readings, const Thresholds& thresholds);

/// How degree-days are taken from a day's extremes alone; the first two as named by McMaster and Wilhelm
/// 1997 (Agricultural and Forest Meteorology 87).
enum class DailyRule {
    MeanThenClip, ///< the mean of both extremes, clipped to base and cap (their method 1)
    ClipThenMean, ///< each extreme clipped to base and cap, then the mean (their method 2)
    CapThenMean,  ///< the highest held to the cap, then the mean, at least the base
    FourCases,    ///< Met Eireann's four cases of how the extremes lie about the base; takes no cap
};

/// Degree-days of one day from its highest and lowest temperature.
double dailyDegreeDays(double highest, double lowest, const Thresholds& thresholds, DailyRule rule);

} // namespace warmbench::climate
