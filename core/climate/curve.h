#pragma once

#include "core/climate/packed_readings.h"

#include <vector>

/// Readings as lines to draw.
namespace warmbench::climate {

struct CurvePoint {
    double minute = 0;
    double value = 0;
};

/// The lines of the readings from <= minute < to, broken at gaps of more than longestStep. Where there are
/// more readings than `columns` can show, each column of the same width gets its lowest and its highest, so
/// that no peak is lost; a reading before and one after are added so that lines go on to the edges. Values in
/// units.
[[nodiscard]] std::vector<std::vector<CurvePoint>> curvesOf(std::span<const MinuteReading> readings,
                                                            double from, double to, int columns);

} // namespace warmbench::climate
