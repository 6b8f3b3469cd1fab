#pragma once

#include "ui/paper/plot.h"

#include <optional>
#include <utility>

namespace warmbench::ui {

/// One line of a row plot. Every mark has a shape of its own: no colour tells anything.
struct PlotRow {
    using Span = std::pair<double, double>;
    QString label;                ///< at the left, never cut
    QString value;                ///< at the right, in words
    std::optional<Span> range;    ///< a hatched box
    std::optional<double> wanted; ///< an empty box from 0
    std::optional<double> made;   ///< a filled box from 0
    std::optional<Span> interval; ///< a line with ends
    std::optional<double> point;  ///< a dot on it
    bool open = false;            ///< the dot is a ring: little is known
};

/// What the axis of a row plot is.
struct PlotAxis {
    double most = 1;
    double scale = 1; ///< numbers on the axis are as many times the values
    QString unit;     ///< behind the last number
};

/// Rows under one another on one axis from 0, in plots of so few that each finds room on a page.
[[nodiscard]] std::vector<Plot> rowPlots(const std::vector<PlotRow>& rows, const PlotAxis& axis);

/// A step between numbers of an axis: 1, 2 or 5 times a power of ten, so that about `count` find room.
[[nodiscard]] double axisStep(double most, int count);

} // namespace warmbench::ui
