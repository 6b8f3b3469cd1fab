#include "ui/paper/month_painter.h"

#include "core/book/query.h"
#include "ui/words/say.h"
#include "ui/words/taxon_text.h"

#include <QDate>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace warmbench::ui {
namespace {

QString plainName(const HouseBook& book, TaxonId taxon) {
    QString name;
    for (const TaxonRun& run : taxonRuns(book.get<Taxon>(taxon).name)) name += run.text;
    return name;
}

/// Whether a text finds room in a day's width.
bool fitsDay(const QPainter& painter, const MonthGrid& grid, const QString& words) {
    return QFontMetricsF(painter.font(), painter.device()).horizontalAdvance(words) < grid.dayWidth - 1;
}

void hatch(QPainter& painter, const QRectF& box, const QColor& colour, double step) {
    painter.save();
    painter.setClipRect(box, Qt::IntersectClip);
    painter.setPen(QPen(colour, step / 7));
    for (double x = box.left() - box.height(); x < box.right(); x += step)
        painter.drawLine(QPointF(x, box.bottom()), QPointF(x + box.height(), box.top()));
    painter.restore();
}

/// The part of a window that is in sight; empty where none is.
std::optional<std::pair<int, int>> inSight(const MonthGrid& grid, const StrikeWindow& window) {
    const int first = std::max(0, window.first - grid.from);
    const int end = std::min(grid.days, window.last - grid.from + 1);
    if (first >= end) return std::nullopt;
    return std::pair(first, end);
}

void paintTried(QPainter& painter, const MonthGrid& grid, const MonthLine& line, const MonthLook& look,
                const QRectF& row) {
    const int day = *line.tried - grid.from;
    if (day < 0 || day >= grid.days) return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(look.ink, grid.line / 8, Qt::DashLine));
    painter.drawRect(QRectF(grid.x(day), row.top(), grid.dayWidth, row.height()).adjusted(1, 1, -1, -1));
}

} // namespace

std::vector<MonthLine> monthLines(const HouseBook& book, const season::MonthPlan& plan,
                                  const Wording& wording) {
    std::vector<MonthLine> lines;
    for (const season::MonthBatch& one : plan.batches) {
        const Batch& batch = book.get<Batch>(one.batch);
        MonthLine line;
        line.label = text(batch.code) + QStringLiteral("  ") + wording.number(batch.cuttings()) +
                     QStringLiteral("  ") + plainName(book, batch.taxon);
        line.window = one.window;
        line.chosen = batch.strikeDay;
        line.struck = batch.state != BatchState::Planned;
        line.mark = line.struck ? QStringLiteral("✓") : QString();
        line.late = one.due && one.ready && *one.ready > *one.due;
        lines.push_back(std::move(line));
    }
    for (const season::MonthWant& want : plan.wants) {
        const Target& target = book.get<Target>(want.target);
        MonthLine line;
        line.label =
            say("%1 wants %2  %3")
                .arg(text(target.name), wording.locale().toString(static_cast<qlonglong>(want.cuttings)),
                     plainName(book, target.taxon));
        line.window = want.window;
        line.late = want.late;
        lines.push_back(std::move(line));
    }
    return lines;
}

void paintMonthHead(QPainter& painter, const MonthGrid& grid, const season::MonthPlan& plan,
                    const MonthLook& look, const Wording& wording, double top, double bottom) {
    for (int day = 0; day < grid.days; ++day)
        if (plan.hands[static_cast<std::size_t>(day)].hands == 0)
            painter.fillRect(QRectF(grid.x(day), top, grid.dayWidth, bottom - top), look.noHands);
    const QLocale& locale = wording.locale();
    // Numbers of all days where they find room, else of Mondays.
    const bool every = fitsDay(painter, grid, QStringLiteral("28"));
    for (int day = 0; day < grid.days; ++day) {
        const Day date = grid.from + day;
        const bool monday = date.weekday() == 0;
        painter.setPen(QPen(look.rule, monday ? grid.line / 10 : grid.line / 25));
        if (monday || every)
            painter.drawLine(QPointF(grid.x(day), top + (monday ? 0 : grid.line)),
                             QPointF(grid.x(day), bottom));
        painter.setPen(look.quietInk);
        // The month stands over its first day that is shown, a week's day over each Monday.
        const bool begins = day == 0 || date.dayOfMonth() == 1;
        if (every ? begins : monday || day == 0) {
            const QDate shown = qDate(date);
            const int left = every ? shown.daysInMonth() - shown.day() + 1 : 7 - date.weekday();
            const int room = std::min(left, grid.days - day);
            const QRectF week(grid.x(day) + grid.line / 6, top, room * grid.dayWidth - grid.line / 6,
                              grid.line * 1.2);
            const QString words =
                every ? locale.toString(shown, QStringLiteral("MMMM yyyy")) : wording.shortDate(date);
            if (QFontMetricsF(painter.font(), painter.device()).horizontalAdvance(words) <= week.width())
                painter.drawText(week, Qt::AlignLeft | Qt::AlignVCenter, words);
        }
        painter.setPen(look.ink);
        if (every)
            painter.drawText(QRectF(grid.x(day), top + grid.line * 1.2, grid.dayWidth, grid.line * 1.2),
                             Qt::AlignCenter, locale.toString(static_cast<int>(date.dayOfMonth())));
    }
}

void paintMonthHands(QPainter& painter, const MonthGrid& grid, const season::MonthPlan& plan,
                     const MonthLook& look, const Wording& wording, double top) {
    for (int day = 0; day < grid.days; ++day) {
        const season::DayHands& hands = plan.hands[static_cast<std::size_t>(day)];
        const QRectF cell(grid.x(day), top, grid.dayWidth, grid.handsHeight());
        const int most = std::max({hands.hands, hands.cuttings, 1});
        const double full = cell.height() - 2;
        const double width = std::max(1.0, grid.dayWidth / 6);
        // A bar at the cell's right edge: its outline the hands, its filling what is planned.
        const QRectF room(cell.right() - width - 1, cell.bottom() - 1 - full * hands.hands / most, width,
                          full * hands.hands / most);
        const QRectF used(room.left(), cell.bottom() - 1 - full * hands.cuttings / most, width,
                          full * hands.cuttings / most);
        painter.fillRect(used, hands.over() ? look.over : look.chosen);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(look.ink, grid.line / 20));
        painter.drawRect(room);
        const QRectF words(cell.left(), cell.top(), cell.width() - width - 2, cell.height());
        const QString planned =
            wording.number(hands.cuttings) + (hands.over() ? QStringLiteral("!") : QString());
        const QString able = (hands.special ? QStringLiteral("•") : QString()) + wording.number(hands.hands);
        const auto say = [&](const QString& what, Qt::Alignment where, const QColor& colour) {
            if (QFontMetricsF(painter.font(), painter.device()).horizontalAdvance(what) > words.width())
                return;
            painter.setPen(colour);
            painter.drawText(words, where | Qt::AlignHCenter, what);
        };
        if (hands.cuttings > 0) say(planned, Qt::AlignTop, hands.over() ? look.over : look.ink);
        if (hands.hands > 0 || hands.special) say(able, Qt::AlignBottom, look.quietInk);
        if (hands.over() && grid.dayWidth < 2.5 * grid.line) {
            painter.setPen(look.over);
            painter.drawText(words, Qt::AlignCenter, QStringLiteral("!"));
        }
    }
}

void paintMonthLine(QPainter& painter, const MonthGrid& grid, const MonthLine& line, const MonthLook& look,
                    const QRectF& label, double top) {
    const QRectF row(grid.left, top + grid.rowHeight() * 0.12, grid.dayWidth * grid.days,
                     grid.rowHeight() * 0.76);
    painter.setPen(look.ink);
    const QString words = line.late ? line.label + say(" · late") : line.label;
    painter.drawText(label, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, words);
    if (const auto window = inSight(grid, line.window)) {
        const QRectF box(grid.x(window->first), row.top() + row.height() * 0.2,
                         grid.dayWidth * (window->second - window->first), row.height() * 0.6);
        hatch(painter, box, look.window, grid.line / 2);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(look.window, grid.line / 15));
        painter.drawRect(box);
    }
    if (line.chosen && *line.chosen >= grid.from && *line.chosen < grid.from + grid.days) {
        const QRectF day(grid.x(*line.chosen - grid.from), row.top(), grid.dayWidth, row.height());
        painter.setPen(Qt::NoPen);
        painter.setBrush(look.chosen);
        painter.drawRoundedRect(day.adjusted(0.5, 0, -0.5, 0), grid.line / 6, grid.line / 6);
        painter.setPen(look.onChosen);
        if (!line.mark.isEmpty() && fitsDay(painter, grid, line.mark))
            painter.drawText(day, Qt::AlignCenter, line.mark);
    }
    if (line.tried) paintTried(painter, grid, line, look, row);
}

} // namespace warmbench::ui
