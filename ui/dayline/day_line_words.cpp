#include "ui/dayline/day_line.h"
#include "ui/words/say.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

/// The words on the chart of the day line, each where neither a mark nor another word is.
namespace warmbench::ui {
namespace {

constexpr double handleRoom = 9; ///< of today's line from the handle, under which the handle stands for it
constexpr double flagHeight = 20;

} // namespace

/// What no word may stand on: strikes, rings, the handle, and today's line.
std::vector<QRectF> DayLine::marks(const QRectF& area) const {
    std::vector<QRectF> taken;
    for (int i = 0; i < m_load.days(); ++i) {
        const double x = xOf(m_from + i);
        const auto day = static_cast<std::size_t>(i);
        if (m_load.cuttingsStruck[day] > 0) taken.emplace_back(x - 2, area.top() - 20, 4, 12);
        if (m_load.batchesRooted[day] > 0) taken.emplace_back(x - 6, area.top() - 10, 12, 12);
    }
    taken.emplace_back(xOf(m_day) - 7, area.top() - flagHeight, 14, flagHeight);
    for (const Day day : {m_day, m_today}) taken.emplace_back(xOf(day) - 1, area.top(), 2, area.height());
    return taken;
}

void DayLine::paintWords(QPainter& painter, const QRectF& area) const {
    const QFontMetricsF metrics(m_type->quiet);
    painter.setFont(m_type->quiet);
    std::vector<QRectF> taken = marks(area);
    // At the first of the corners, given as the words' top left, that is free; nowhere if none is.
    const auto put = [&](const QString& words, const QColor& ink, std::initializer_list<QPointF> corners) {
        const QSizeF size(metrics.horizontalAdvance(words), metrics.ascent() + metrics.descent());
        for (const QPointF corner : corners) {
            const QRectF place(corner, size);
            const bool free = std::none_of(taken.begin(), taken.end(),
                                           [&](const QRectF& one) { return one.intersects(place); });
            if (!free || !QRectF(rect()).contains(place)) continue;
            painter.fillRect(place.intersected(area), m_palette->panel); // bars would make it hard to read
            painter.setPen(ink);
            painter.drawText(QPointF(corner.x(), corner.y() + metrics.ascent()), words);
            taken.push_back(place.adjusted(-4, 0, 4, 0));
            return;
        }
    };
    const bool seen = m_today >= m_from && m_today < m_from + daysShown;
    const double x = xOf(m_today);
    if (const QString words = say("today"); seen && std::abs(xOf(m_day) - x) > handleRoom)
        put(words, m_palette->ink,
            {{x + 4, area.top() + 2}, {x - 4 - metrics.horizontalAdvance(words), area.top() + 2}});
    const double over = area.top() - 8 - metrics.ascent();
    if (m_load.usable > 0) {
        const QString words = say("%1 slots").arg(m_wording->number(m_load.usable));
        const double right = area.right() - metrics.horizontalAdvance(words);
        const double limit = limitY(area);
        const double above = limit - 2 - metrics.ascent() - metrics.descent();
        put(words, m_palette->quietInk,
            {{right, above}, {right, limit + 3}, {area.left(), above}, {area.left(), limit + 3}});
    }
    const QString struck = say("cuttings struck");
    const double width = metrics.horizontalAdvance(struck);
    put(struck, m_palette->quietInk,
        {{area.left(), over},
         {area.right() - width, over},
         {area.right() - 2 * width, over},
         {area.left() + width, over}});
}

} // namespace warmbench::ui
