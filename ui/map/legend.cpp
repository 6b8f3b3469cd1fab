#include "ui/map/legend.h"

#include "ui/map/stage_mark.h"
#include "ui/map/texture.h"

#include <QFontMetricsF>
#include <QPainter>

#include <array>

namespace warmbench::ui {
namespace {

constexpr double swatchWidth = 24;
constexpr double swatchHeight = 16;
constexpr double lineHeight = 24;
constexpr double gap = 20;

constexpr std::array stages{Progress::Planned, Progress::Struck,  Progress::Callused,
                            Progress::Rooted,  Progress::Weaning, Progress::Ready};

} // namespace

double Legend::run(QPainter* painter, QPointF corner, double width) const {
    if (painter) painter->setLayoutDirection(Qt::LayoutDirectionAuto);
    const QFontMetricsF metrics(m_type.quiet);
    QPointF at(0, 0);
    const auto room = [&](double needed) {
        if (at.x() > 0 && at.x() + needed > width) at = {0, at.y() + lineHeight};
        const QPointF place = corner + at + QPointF(0, (lineHeight - swatchHeight) / 2);
        at.rx() += needed + gap;
        return place;
    };
    const auto words = [&](QPointF place, const QString& text) {
        if (!painter) return;
        painter->setFont(m_type.quiet);
        painter->setPen(m_palette.quietInk);
        painter->drawText(place + QPointF(0, swatchHeight / 2 + metrics.ascent() / 2 - 1), text);
    };
    for (const Progress stage : stages) {
        const QString name = m_wording.progress(stage);
        const QPointF place = room(swatchWidth + 6 + metrics.horizontalAdvance(name));
        words(place + QPointF(swatchWidth + 6, 0), name);
        if (!painter) continue;
        const QRectF swatch(place, QSizeF(swatchWidth, swatchHeight));
        const QColor colour = m_palette.of(stage);
        painter->fillRect(swatch, colour);
        if (stage == Progress::Planned) {
            painter->fillRect(swatch.adjusted(1, 1, -1, -1), m_palette.slot);
            fillTexture(*painter, swatch.adjusted(1, 1, -1, -1), Texture::Falling, colour);
        }
        paintStageMark(*painter, stage, {place.x() + swatchWidth / 2 - 5, place.y() + 3, 10, 10},
                       m_palette.textOn(colour));
    }
    constexpr double step = 30;
    const QString set = QCoreApplication::translate("Legend", "%1, mat set to").arg(m_wording.degreeUnit());
    const QPointF place = room(metrics.horizontalAdvance(set) + 6 + 4 * step);
    words(place, set);
    double x = place.x() + metrics.horizontalAdvance(set) + 6;
    for (const int degrees : {15, 18, 21, 24}) {
        const Celsius setPoint{10 * degrees};
        const QString label = m_wording.degrees(setPoint);
        if (painter) {
            const QColor ground = m_palette.heatAt(setPoint);
            painter->fillRect(QRectF(x, place.y(), step, swatchHeight), ground);
            painter->setPen(m_palette.textOn(ground));
            painter->drawText(QPointF(x + (step - metrics.horizontalAdvance(label)) / 2,
                                      place.y() + swatchHeight / 2 + metrics.ascent() / 2 - 1),
                              label);
        }
        x += step;
    }
    return at.y() + lineHeight;
}

} // namespace warmbench::ui
