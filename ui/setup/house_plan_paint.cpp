#include "core/book/query.h"
#include "ui/setup/house_plan.h"

#include <QPainter>

/// How a house in plan is drawn.
namespace warmbench::ui {

void HousePlan::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), m_palette->panel);
    if (!m_house || !m_type) return;
    painter.setRenderHint(QPainter::Antialiasing);
    const House& house = m_book->get<House>(*m_house);
    painter.setPen(QPen(m_palette->benchEdge, 1.5));
    painter.setBrush(m_palette->floor);
    painter.drawRect(onWidget(planRect(house)));
    for (const BenchId id : m_book->benchesOf(*m_house)) paintBench(painter, m_book->get<Bench>(id));
    painter.setBrush(Qt::NoBrush);
    if (m_chosen) {
        painter.setPen(QPen(m_palette->accent, hasFocus() ? 3 : 2));
        painter.drawRect(onWidget(planRect(*m_book, *m_chosen)));
    }
    if (m_drawn) {
        QColor veil = m_palette->accent;
        veil.setAlpha(60);
        painter.setPen(QPen(m_palette->accent, 2, Qt::DashLine));
        painter.setBrush(veil);
        painter.drawRect(onWidget(planRect(*m_book, *m_drawn)));
    }
    if (const Zone* zone = m_tool == Tool::BlockSlots ? blockedZone() : nullptr) {
        const QRectF rect = onWidget(planRect(*m_book, *zone));
        const double slot = rect.width() / zone->cols;
        const auto at = [&](Slot one) {
            return QRectF(rect.left() + slot * one.col, rect.top() + slot * one.row, slot, slot);
        };
        painter.setPen(QPen(m_palette->ink, 1));
        painter.setBrush(QBrush(m_palette->ink, Qt::DiagCrossPattern));
        for (const Slot one : zone->blocked) painter.drawRect(at(one));
        painter.setPen(QPen(m_palette->accent, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(at(m_slot));
    }
    if (hasFocus()) {
        painter.setPen(QPen(m_palette->accent, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    }
}

void HousePlan::paintBench(QPainter& painter, const Bench& bench) const {
    const QRectF rect = onWidget(planRect(bench));
    painter.setPen(QPen(m_palette->benchEdge, 1));
    painter.setBrush(m_palette->bench);
    painter.drawRect(rect);
    const double slot = rect.width() / bench.cols;
    if (slot >= 6) {
        painter.setPen(QPen(m_palette->rule, 0.5));
        for (int col = 1; col < bench.cols; ++col)
            painter.drawLine(QPointF(rect.left() + col * slot, rect.top()),
                             QPointF(rect.left() + col * slot, rect.bottom()));
        for (int row = 1; row < bench.rows; ++row)
            painter.drawLine(QPointF(rect.left(), rect.top() + row * slot),
                             QPointF(rect.right(), rect.top() + row * slot));
    }
    for (const ZoneId id : m_book->zonesOf(bench.id)) paintZone(painter, m_book->get<Zone>(id));
    // Its name stands in front of it, or on it where there is no room.
    painter.setFont(m_type->quiet);
    painter.setPen(m_palette->ink);
    const QFontMetricsF letters(m_type->quiet);
    const QString name = letters.elidedText(text(bench.name), Qt::ElideRight, rect.width());
    painter.drawText(QPointF(rect.left(), rect.bottom() + letters.ascent() + 1), name);
}

void HousePlan::paintZone(QPainter& painter, const Zone& zone) const {
    const QRectF rect = onWidget(planRect(*m_book, zone));
    const Bench& bench = m_book->get<Bench>(zone.bench);
    const double slot = rect.width() / zone.cols;
    painter.setPen(QPen(m_palette->benchEdge, 1.5));
    const std::optional<Celsius> setPoint = setPointOn(*m_book, zone.id, m_day);
    painter.setBrush(zone.mat ? m_palette->heatAt(setPoint) : m_palette->slot);
    painter.drawRect(rect);
    // What stands there on this day, so that she sees what a change would meet.
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_palette->quietInk);
    for (const StayId id : m_book->staysMeeting(zone.id, m_day, m_day + 1))
        for (const Place& place : m_book->get<Stay>(id).places) {
            const QRectF at(rect.left() + slot * place.slots.col, rect.top() + slot * place.slots.row,
                            slot * place.slots.width, slot * place.slots.height);
            const double inset = slot / 4;
            painter.drawEllipse(at.adjusted(inset, inset, -inset, -inset));
        }
    painter.setBrush(m_palette->benchEdge);
    for (const Slot blocked : zone.blocked)
        painter.drawRect(
            QRectF(rect.left() + slot * blocked.col, rect.top() + slot * blocked.row, slot, slot));
    const QString name = zone.mat ? tr("%1, %2, mat").arg(text(zone.name), m_wording.coverName(zone.cover))
                                  : tr("%1, %2").arg(text(zone.name), m_wording.coverName(zone.cover));
    const QFontMetricsF letters(m_type->quiet);
    const QString shown = letters.elidedText(name, Qt::ElideRight, rect.width() - 8);
    const QRectF label(rect.left() + 2, rect.top() + 2, letters.horizontalAdvance(shown) + 4,
                       letters.height());
    if (label.height() > rect.height() || bench.cols == 0) return;
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_palette->panel);
    painter.drawRect(label);
    painter.setPen(m_palette->ink);
    painter.setFont(m_type->quiet);
    painter.drawText(label, Qt::AlignCenter, shown);
}

} // namespace warmbench::ui
