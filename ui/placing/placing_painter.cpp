#include "ui/map/map_hand.h"
#include "ui/map/zone_label.h"
#include "ui/placing/placing_hand.h"

#include <QPainter>
#include <QPainterPath>

namespace warmbench::ui {
namespace {

constexpr int chipSide = 20;
constexpr int frameWidth = 3;
constexpr int boxGap = 8;
constexpr int boxWidth = 300;

QRect wholeZone(const MapHand::View& view, int zone) {
    QRect area = view.layout.zoneSlots(view.scene, zone);
    if (view.layout.headingOutside(view.scene, zone)) area |= view.layout.heading(view.scene, zone);
    return area;
}

/// A tick or a cross on a ground of its own, in the corner of a zone.
void paintChip(QPainter& painter, const QRect& area, bool suits, const Palette& palette) {
    const int side = std::min({chipSide, area.width() - 2, area.height() - 2});
    if (side < 8) return;
    const QRect chip(area.right() - side, area.top() + 1, side, side);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(suits ? palette.accent : palette.paper);
    painter.drawEllipse(chip);
    painter.setPen(QPen(suits ? palette.paper : palette.ink, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const QRectF inside = QRectF(chip).adjusted(side * 0.28, side * 0.28, -side * 0.28, -side * 0.28);
    if (suits) {
        QPainterPath tick(QPointF(inside.left(), inside.center().y()));
        tick.lineTo(inside.left() + inside.width() * 0.4, inside.bottom());
        tick.lineTo(inside.right(), inside.top());
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(tick);
    } else {
        painter.drawLine(inside.topLeft(), inside.bottomRight());
        painter.drawLine(inside.topRight(), inside.bottomLeft());
    }
    painter.setRenderHint(QPainter::Antialiasing, false);
}

} // namespace

void PlacingHand::paintZones(QPainter& painter, const View& view) const {
    if (!m_suitability) return;
    const Palette& palette = view.kit.palette;
    for (int i = 0; i < static_cast<int>(view.scene.zones.size()); ++i) {
        const QRect area = wholeZone(view, i);
        if (!area.intersects(view.visible)) continue;
        const placing::ZoneVerdict* verdict = m_suitability->find(view.scene.zones[nth(i)].id);
        const bool suits = verdict && verdict->suits();
        // Its heading once more, with room for the mark at its end.
        paintZoneHeading(painter, view.layout.heading(view.scene, i),
                         view.layout.headingOutside(view.scene, i), view.scene.zones[nth(i)], view.kit,
                         chipSide);
        if (suits) {
            painter.setPen(QPen(palette.accent, frameWidth, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
            painter.setBrush(Qt::NoBrush);
            painter.drawRect(QRectF(area).adjusted(1, 1, -1, -1));
        } else {
            const QRect slots = view.layout.zoneSlots(view.scene, i) & view.visible;
            painter.fillRect(slots, faded(palette.paper, 0.55));
            painter.fillRect(slots, QBrush(faded(palette.ink, 0.45), Qt::BDiagPattern));
        }
        paintChip(painter, area, suits, palette);
    }
}

void PlacingHand::paintAim(QPainter& painter, const View& view) const {
    if (!m_suitability || !m_zone) return;
    const Palette& palette = view.kit.palette;
    int zone = 0;
    while (zone < static_cast<int>(view.scene.zones.size()) && view.scene.zones[nth(zone)].id != *m_zone)
        ++zone;
    if (zone == static_cast<int>(view.scene.zones.size())) return;
    const bool good = fits();
    QRect all = view.layout.slots(view.scene, zone, {m_aim.row, m_aim.col, 1, 1});
    painter.setPen(QPen(good ? palette.accent : palette.trouble, 2, good ? Qt::SolidLine : Qt::DashLine));
    painter.setBrush(faded(good ? palette.accentGround : palette.troubleGround, 0.7));
    for (const SlotRect& rect : m_slots) {
        const QRect slot = view.layout.slots(view.scene, zone, rect);
        all |= slot;
        painter.drawRect(slot.adjusted(1, 1, -1, -1));
    }
    painter.setPen(QPen(palette.ink, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(view.layout.slots(view.scene, zone, {m_aim.row, m_aim.col, 1, 1}));

    // The words stand beside the slots, wherever there is room in sight.
    const QString said = words().join(u'\n');
    const QFontMetrics& metrics = view.kit.quiet;
    const int width = std::min(boxWidth, view.visible.width() - 4 * boxGap);
    const QRect wrapped =
        metrics.boundingRect(QRect(0, 0, width, 10'000), Qt::AlignLeft | Qt::TextWordWrap, said);
    QRect box(0, 0, wrapped.width() + 2 * boxGap, wrapped.height() + 2 * boxGap);
    box.moveTopLeft({all.right() + boxGap, all.top()});
    if (box.right() > view.visible.right()) box.moveRight(all.left() - boxGap);
    if (box.left() < view.visible.left()) {
        box.moveLeft(std::clamp(all.left(), view.visible.left(),
                                std::max(view.visible.left(), view.visible.right() - box.width())));
        box.moveTop(all.bottom() + boxGap);
        if (box.bottom() > view.visible.bottom()) box.moveBottom(all.top() - boxGap);
    }
    box.moveTop(std::clamp(box.top(), view.visible.top(),
                           std::max(view.visible.top(), view.visible.bottom() - box.height())));
    painter.setPen(QPen(good ? palette.accent : palette.trouble, 2));
    painter.setBrush(palette.paper);
    painter.drawRect(box);
    painter.setPen(palette.ink);
    painter.setFont(view.kit.type.quiet);
    painter.drawText(box.adjusted(boxGap, boxGap, -boxGap, -boxGap), Qt::AlignLeft | Qt::TextWordWrap, said);
}

} // namespace warmbench::ui
