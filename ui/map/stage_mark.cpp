#include "ui/map/stage_mark.h"

#include <QPainter>
#include <QPainterPath>

namespace warmbench::ui {
namespace {

QPainterPath rootTip() {
    QPainterPath path(QPointF(0.2, 0.2));
    path.cubicTo(0.3, 0.5, 0.4, 0.6, 0.5, 0.9);
    path.cubicTo(0.6, 0.6, 0.7, 0.5, 0.8, 0.2);
    path.moveTo(0.5, 0.1);
    path.lineTo(0.5, 0.9);
    return path;
}

QPainterPath openingArc() {
    QPainterPath path;
    path.arcMoveTo(QRectF(0.1, 0.25, 0.8, 0.8), 0);
    path.arcTo(QRectF(0.1, 0.25, 0.8, 0.8), 0, 180);
    return path;
}

QPainterPath arrowUp() {
    QPainterPath path(QPointF(0.5, 0.95));
    path.lineTo(0.5, 0.1);
    path.moveTo(0.2, 0.42);
    path.lineTo(0.5, 0.1);
    path.lineTo(0.8, 0.42);
    return path;
}

QPainterPath ring() {
    QPainterPath path;
    path.addEllipse(QRectF(0.12, 0.12, 0.76, 0.76));
    return path;
}

QPainterPath markOf(Progress progress) {
    switch (progress) {
    case Progress::Callused:
        return ring();
    case Progress::Rooted:
        return rootTip();
    case Progress::Weaning:
        return openingArc();
    case Progress::Ready:
        return arrowUp();
    case Progress::Planned:
    case Progress::Struck:
        break;
    }
    return {};
}

} // namespace

bool hasStageMark(Progress progress) {
    return progress != Progress::Planned && progress != Progress::Struck;
}

void paintStageMark(QPainter& painter, Progress progress, const QRectF& box, const QColor& colour) {
    if (!hasStageMark(progress)) return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(box.topLeft());
    painter.scale(box.width(), box.height());
    painter.setPen(QPen(colour, 1.6 / box.width(), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(markOf(progress));
    painter.restore();
}

} // namespace warmbench::ui
