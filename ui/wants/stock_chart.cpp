#include "ui/wants/stock_chart.h"

#include <QDate>
#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace warmbench::ui {
namespace {

constexpr double woodLines = 3.2;
constexpr double gap = 8;

std::int64_t mostOf(const season::WoodCalendar& calendar) {
    std::int64_t most = 1;
    for (const std::int64_t shoots : calendar.shoots) most = std::max(most, shoots);
    for (const std::int64_t taken : calendar.taken) most = std::max(most, taken);
    return most;
}

} // namespace

StockChart::StockChart(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("stockChart"));
}

void StockChart::setLook(const Palette& palette, const TypeSizes& type, const Wording& wording) {
    m_palette = &palette;
    m_type = &type;
    m_wording = &wording;
}

void StockChart::showStock(Day from, std::vector<season::WoodCalendar> calendars) {
    m_from = from;
    m_calendars = std::move(calendars);
    setVisible(!m_calendars.empty());
    updateGeometry();
    update();
}

QSize StockChart::sizeHint() const {
    if (!m_type) return {400, 0};
    const double line = QFontMetricsF(m_type->quiet).height();
    const double height = (woodLines * static_cast<double>(m_calendars.size()) + 1.4) * line;
    return {400, static_cast<int>(height + gap)};
}

void StockChart::paintEvent(QPaintEvent* /*event*/) {
    if (!m_type || m_calendars.empty()) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(m_type->quiet);
    const QFontMetricsF metrics(m_type->quiet);
    double labels = 0;
    for (const season::WoodCalendar& calendar : m_calendars)
        labels = std::max(labels, metrics.horizontalAdvance(m_wording->wood(calendar.wood)));
    const double left = labels + 2 * gap;
    const double height = woodLines * metrics.height();
    const double bottom = height * static_cast<double>(m_calendars.size());
    const QRectF all(left, 0, width() - left - 1, bottom);
    painter.fillRect(all, m_palette->panel);
    paintMonths(painter, all);
    double top = 0;
    for (const season::WoodCalendar& calendar : m_calendars) {
        painter.setPen(m_palette->ink);
        painter.drawText(QRectF(0, top, labels, height), Qt::AlignLeft | Qt::AlignVCenter,
                         m_wording->wood(calendar.wood));
        paintWood(painter, QRectF(left, top, all.width(), height), calendar);
        top += height;
    }
}

void StockChart::paintMonths(QPainter& painter, const QRectF& area) const {
    const auto days = static_cast<int>(m_calendars.front().shoots.size());
    const double each = area.width() / days;
    const double line = QFontMetricsF(m_type->quiet).height();
    for (int day = 0; day < days; ++day) {
        const Day date = m_from + day;
        if (date.dayOfMonth() != 1) continue;
        const double x = area.left() + day * each;
        painter.setPen(m_palette->rule);
        painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()));
        const QString month = m_wording->locale().toString(qDate(date), QStringLiteral("MMM"));
        if (x + 2 + QFontMetricsF(m_type->quiet).horizontalAdvance(month) > area.right()) continue;
        painter.setPen(m_palette->quietInk);
        painter.drawText(QRectF(x + 2, area.bottom(), 31 * each, 1.4 * line),
                         Qt::AlignLeft | Qt::AlignVCenter, month);
    }
}

void StockChart::paintWood(QPainter& painter, const QRectF& area,
                           const season::WoodCalendar& calendar) const {
    const auto days = static_cast<int>(calendar.shoots.size());
    const double each = area.width() / days;
    const double line = QFontMetricsF(m_type->quiet).height();
    const double full = area.height() - 1.2 * line;
    const double ground = area.bottom() - 1;
    const auto most = static_cast<double>(mostOf(calendar));
    const auto y = [&](std::int64_t shoots) { return ground - full * static_cast<double>(shoots) / most; };
    QPainterPath standing;
    standing.moveTo(area.left(), ground);
    for (int day = 0; day < days; ++day) {
        standing.lineTo(area.left() + day * each, y(calendar.shoots[static_cast<std::size_t>(day)]));
        standing.lineTo(area.left() + (day + 1) * each, y(calendar.shoots[static_cast<std::size_t>(day)]));
    }
    standing.lineTo(area.right(), ground);
    painter.setPen(QPen(m_palette->quietInk, 1));
    painter.setBrush(m_palette->accentGround);
    painter.drawPath(standing);
    double free = area.left();
    for (int day = 0; day < days; ++day) {
        const auto index = static_cast<std::size_t>(day);
        const std::int64_t taken = calendar.taken[index];
        if (taken == 0) continue;
        const bool over = taken > calendar.shoots[index];
        const QColor colour = over ? m_palette->trouble : m_palette->accent;
        const double x = area.left() + (day + 0.5) * each;
        painter.setPen(QPen(colour, 2));
        painter.drawLine(QPointF(x, ground), QPointF(x, y(taken)));
        // A number stands where the one before it leaves room.
        const QString number = m_wording->locale().toString(static_cast<qlonglong>(taken)) +
                               (over ? QStringLiteral("!") : QString());
        const double wide = QFontMetricsF(m_type->quiet).horizontalAdvance(number);
        if (x - wide / 2 < free || x + wide / 2 > area.right()) continue;
        painter.setPen(over ? m_palette->trouble : m_palette->ink);
        painter.drawText(QRectF(x - wide / 2 - 1, y(taken) - line, wide + 2, line), Qt::AlignCenter, number);
        free = x + wide / 2 + 4;
    }
}

} // namespace warmbench::ui
