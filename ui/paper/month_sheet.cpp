#include "ui/paper/month_sheet.h"

#include "ui/paper/html_table.h"
#include "ui/paper/month_painter.h"
#include "ui/paper/strike_list.h"
#include "ui/words/say.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace warmbench::ui {
namespace {

constexpr std::size_t linesOfPlot = 16;
/// Labels take at most this part of the width; longer ones go on in a second line.
constexpr double labelPart = 0.38;
constexpr int daysOfWeek = 7;

void paintMonth(QPainter& painter, const QRectF& area, const QFont& font, const season::MonthPlan& plan,
                const std::vector<MonthLine>& lines, const std::vector<MonthLine>& all,
                const Wording& wording) {
    painter.setFont(font);
    const QFontMetricsF metrics(font, painter.device());
    MonthGrid grid;
    grid.from = plan.from;
    grid.days = plan.days;
    grid.line = metrics.height();
    double labels = metrics.horizontalAdvance(say("Cuttings planned, and hands for"));
    for (const MonthLine& line : all)
        labels = std::max(labels, metrics.horizontalAdvance(line.label + say(" · late")));
    labels = std::min(labels + grid.line, labelPart * area.width());
    grid.left = area.left() + labels;
    grid.dayWidth = (area.width() - labels) / plan.days;
    const MonthLook look;
    paintMonthHead(painter, grid, plan, look, wording, area.top(), area.bottom());
    double top = area.top() + grid.headHeight();
    paintMonthHands(painter, grid, plan, look, wording, top);
    painter.setPen(look.ink);
    painter.drawText(QRectF(area.left(), top, labels - grid.line, grid.handsHeight()),
                     Qt::AlignLeft | Qt::AlignVCenter, say("Cuttings planned, and hands for"));
    top += grid.handsHeight();
    const double height = (area.bottom() - top) / static_cast<double>(lines.size());
    for (const MonthLine& line : lines) {
        paintMonthLine(painter, grid, line, look, QRectF(area.left(), top, labels - grid.line / 2, height),
                       top);
        top += height;
    }
}

QString weeksHtml(const season::MonthPlan& plan, const Wording& wording) {
    HtmlTable table({say("Week from"), say("Cuttings planned"), say("Hands for"),
                     say("Days that ask too much"), say("Other hands than usual")});
    for (int from = 0; from < plan.days; from += daysOfWeek) {
        int cuttings = 0;
        int hands = 0;
        QStringList over;
        QStringList special;
        for (int i = from; i < std::min(from + daysOfWeek, plan.days); ++i) {
            const season::DayHands& day = plan.hands[static_cast<std::size_t>(i)];
            cuttings += day.cuttings;
            hands += day.hands;
            if (day.over()) over += wording.shortDate(day.day);
            if (day.special)
                special += say("%1: %2").arg(wording.shortDate(day.day), wording.number(day.hands)) +
                           (day.note.empty() ? QString() : QStringLiteral(" (") + text(day.note) + u')');
        }
        const auto words = [](const QStringList& list) {
            return list.isEmpty() ? QStringLiteral("–") : list.join(QStringLiteral(", ")).toHtmlEscaped();
        };
        table.add({wording.shortDate(plan.from + from), wording.number(cuttings), wording.number(hands),
                   words(over), words(special)});
    }
    return table.html();
}

} // namespace

MonthSheet monthSheet(const HouseBook& book, const season::MonthPlan& plan, const Wording& wording) {
    MonthSheet sheet;
    const std::vector<MonthLine> lines = monthLines(book, plan, wording);
    sheet.html = paragraph(say(
        "Filled: the day of striking, with a tick once it is struck. Hatched: the days on which its wood "
        "is right and its target is met. Grey: nobody strikes. • hands of their own, ! more cuttings than "
        "hands."));
    if (lines.empty()) sheet.html += paragraph(say("Nothing is planned or wanted on these days."));
    for (std::size_t from = 0; from < lines.size(); from += linesOfPlot) {
        const std::vector<MonthLine> some(
            lines.begin() + static_cast<std::ptrdiff_t>(from),
            lines.begin() + static_cast<std::ptrdiff_t>(std::min(lines.size(), from + linesOfPlot)));
        const MonthGrid heights{plan.from, plan.days, 0, 1, 1};
        const double height =
            heights.headHeight() + heights.handsHeight() + 2 * static_cast<double>(some.size());
        sheet.html += plotMark(static_cast<int>(sheet.plots.size()));
        sheet.plots.push_back(
            {height, [plan, some, lines, wording](QPainter& painter, const QRectF& area, const QFont& font) {
                 paintMonth(painter, area, font, plan, some, lines, wording);
             }});
    }
    sheet.html += heading(say("Hands week by week")) + weeksHtml(plan, wording);
    if (plan.cuttings > 0) sheet.html += materialsHtml(plan.materials, wording);
    return sheet;
}

} // namespace warmbench::ui
