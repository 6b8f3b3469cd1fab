#include "ui/paper/row_plot.h"

#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace warmbench::ui {
namespace {

constexpr double rowLines = 1.7;
constexpr double axisLines = 2;
constexpr std::size_t rowsOfPlot = 18;
constexpr int numbersOnAxis = 5;
/// The labels take at most this part of the width; longer ones go on in a second line.
constexpr double mostLabelPart = 0.4;

/// Where things are, in the units of the device.
struct RowFrame {
    double line = 0; ///< height of a line of text
    double left = 0; ///< of the axis
    double width = 0;
    double most = 1;

    [[nodiscard]] double x(double value) const { return left + width * std::clamp(value, 0.0, most) / most; }
};

void paintAxis(QPainter& painter, const RowFrame& frame, const PlotAxis& axis, double top, double bottom) {
    painter.setPen(QPen(Qt::black, frame.line / 20));
    painter.drawLine(QPointF(frame.left, bottom), QPointF(frame.left + frame.width, bottom));
    const double step = axisStep(axis.most, numbersOnAxis);
    const QLocale locale;
    for (double value = 0; value <= axis.most * 1.0001; value += step) {
        const double x = frame.x(value);
        painter.setPen(QPen(Qt::gray, frame.line / 30, Qt::DotLine));
        painter.drawLine(QPointF(x, top), QPointF(x, bottom));
        painter.setPen(Qt::black);
        QString number = locale.toString(value * axis.scale, 'g', 6);
        if (value + step > axis.most * 1.0001 && !axis.unit.isEmpty()) number += u' ' + axis.unit;
        painter.drawText(QRectF(x - 4 * frame.line, bottom, 8 * frame.line, 1.4 * frame.line),
                         Qt::AlignHCenter | Qt::AlignBottom, number);
    }
}

void paintMarks(QPainter& painter, const RowFrame& frame, const PlotRow& row, double middle) {
    const double half = 0.45 * frame.line;
    const QPen thin(Qt::black, frame.line / 18);
    const auto box = [&](double from, double to, double height) {
        return QRectF(QPointF(frame.x(from), middle - height), QPointF(frame.x(to), middle + height));
    };
    if (row.range) {
        painter.setPen(QPen(Qt::darkGray, frame.line / 30));
        painter.setBrush(QBrush(Qt::darkGray, Qt::BDiagPattern));
        painter.drawRect(box(row.range->first, row.range->second, half));
    }
    painter.setPen(thin);
    if (row.made) {
        painter.setBrush(Qt::darkGray);
        painter.drawRect(box(0, *row.made, 0.7 * half));
    }
    painter.setBrush(Qt::NoBrush);
    if (row.wanted) painter.drawRect(box(0, *row.wanted, half));
    painter.setPen(QPen(Qt::black, frame.line / 9));
    if (row.interval) {
        const double low = frame.x(row.interval->first);
        const double high = frame.x(row.interval->second);
        painter.drawLine(QPointF(low, middle), QPointF(high, middle));
        for (const double end : {low, high})
            painter.drawLine(QPointF(end, middle - 0.6 * half), QPointF(end, middle + 0.6 * half));
    }
    if (row.point) {
        painter.setBrush(row.open ? Qt::white : Qt::black);
        painter.drawEllipse(QPointF(frame.x(*row.point), middle), 0.55 * half, 0.55 * half);
    }
}

/// `all` are the rows of all plots that stand under one another: their axes begin at one place.
void paintRows(QPainter& painter, const QRectF& area, const QFont& font, const std::vector<PlotRow>& rows,
               const std::vector<PlotRow>& all, const PlotAxis& axis) {
    painter.setFont(font);
    const QFontMetricsF metrics(font, painter.device());
    RowFrame frame;
    frame.line = metrics.height();
    frame.most = axis.most;
    double labels = 0;
    double values = 0;
    for (const PlotRow& row : all) {
        labels = std::max(labels, metrics.horizontalAdvance(row.label));
        values = std::max(values, metrics.horizontalAdvance(row.value));
    }
    labels = std::min(labels + frame.line / 4, mostLabelPart * area.width());
    frame.left = area.left() + labels + frame.line;
    frame.width = area.right() - values - 2 * frame.line - frame.left;
    const double height = (area.height() - axisLines * frame.line) / static_cast<double>(rows.size());
    paintAxis(painter, frame, axis, area.top(), area.bottom() - axisLines * frame.line);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const double top = area.top() + static_cast<double>(i) * height;
        paintMarks(painter, frame, rows[i], top + height / 2);
        painter.setPen(Qt::black);
        painter.drawText(QRectF(area.left(), top, labels, height),
                         Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, rows[i].label);
        painter.drawText(QRectF(frame.left + frame.width + frame.line, top, values + frame.line, height),
                         Qt::AlignLeft | Qt::AlignVCenter, rows[i].value);
    }
}

} // namespace

double axisStep(double most, int count) {
    const double rough = most / count;
    const double power = std::pow(10, std::floor(std::log10(rough)));
    for (const double times : {1.0, 2.0, 5.0})
        if (times * power >= rough * 0.999) return times * power;
    return 10 * power;
}

std::vector<Plot> rowPlots(const std::vector<PlotRow>& rows, const PlotAxis& axis) {
    std::vector<Plot> plots;
    for (std::size_t from = 0; from < rows.size(); from += rowsOfPlot) {
        const auto first = rows.begin() + static_cast<std::ptrdiff_t>(from);
        const auto last =
            rows.begin() + static_cast<std::ptrdiff_t>(std::min(rows.size(), from + rowsOfPlot));
        const std::vector<PlotRow> some(first, last);
        plots.push_back({rowLines * static_cast<double>(some.size()) + axisLines,
                         [some, rows, axis](QPainter& painter, const QRectF& area, const QFont& font) {
                             paintRows(painter, area, font, some, rows, axis);
                         }});
    }
    return plots;
}

} // namespace warmbench::ui
