#pragma once

#include "core/season/month_plan.h"
#include "ui/words/wording.h"

#include <QColor>
#include <QFont>
#include <QRectF>

class QPainter;

namespace warmbench::ui {

/// The colours of a month; on paper all are black, white or grey.
struct MonthLook {
    QColor ink = Qt::black;
    QColor quietInk = Qt::black;
    QColor rule = Qt::lightGray;
    QColor noHands = QColor(0xee, 0xee, 0xee); ///< ground of a day on which nobody strikes
    QColor window = Qt::gray;                  ///< hatch of the days on which may be struck
    QColor chosen = Qt::black;                 ///< of the strike day
    QColor onChosen = Qt::white;
    QColor over = Qt::black; ///< of a day with too few hands; always with `!`
    QColor current = Qt::white;
};

/// Where the days and lines of a month are, in the units of the painter.
struct MonthGrid {
    Day from;
    int days = 28;
    double left = 0; ///< of the first day; labels stand before it
    double dayWidth = 20;
    double line = 15; ///< height of a line of text

    [[nodiscard]] double x(int day) const { return left + dayWidth * day; }
    [[nodiscard]] double headHeight() const { return 2.4 * line; }
    [[nodiscard]] double handsHeight() const { return 2.4 * line; }
    [[nodiscard]] double rowHeight() const { return 1.7 * line; }
};

/// What one line of a month says.
struct MonthLine {
    QString label;
    StrikeWindow window;
    std::optional<Day> chosen; ///< the strike day
    QString mark;              ///< on it, such as the batch's letter
    bool struck = false;       ///< done: it stands fast
    bool late = false;
    std::optional<Day> tried; ///< the day to which it is being moved
};

/// Lines for the batches of a month, then for the targets that still want striking.
[[nodiscard]] std::vector<MonthLine> monthLines(const HouseBook& book, const season::MonthPlan& plan,
                                                const Wording& wording);

/// Days across: names, numbers, and the ground of days on which nobody strikes, down to `bottom`.
void paintMonthHead(QPainter& painter, const MonthGrid& grid, const season::MonthPlan& plan,
                    const MonthLook& look, const Wording& wording, double top, double bottom);
/// Cuttings planned over hands, day by day.
void paintMonthHands(QPainter& painter, const MonthGrid& grid, const season::MonthPlan& plan,
                     const MonthLook& look, const Wording& wording, double top);
void paintMonthLine(QPainter& painter, const MonthGrid& grid, const MonthLine& line, const MonthLook& look,
                    const QRectF& label, double top);

} // namespace warmbench::ui
