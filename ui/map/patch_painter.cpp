#include "ui/map/patch_painter.h"

#include "ui/map/stage_mark.h"
#include "ui/map/texture.h"

#include <QPainter>

namespace warmbench::ui {
namespace {

/// Sides of a slot, in pixels, from which more of it is shown.
constexpr double ringsFrom = 18;
constexpr double potTextFrom = 46;

constexpr double markSide = 10;

QColor ringColour(const PaintKit& kit, Progress progress) {
    return progress == Progress::Planned ? faded(kit.palette.of(progress), 0.6)
                                         : faded(kit.inkOn(progress), 0.28);
}

} // namespace

double PatchPainter::slotSide(const SceneStay& stay) const {
    return m_scene.zones[nth(stay.zone)].slot * m_layout.scale();
}

void PatchPainter::paintArea(const SceneStay& stay) {
    const QColor& ground = m_kit.ground(stay.progress);
    const bool planned = stay.progress == Progress::Planned;
    if (stay.patch.size() == 1 && !planned) {
        const QRect area = pixels(stay, stay.patch.front());
        if (!area.intersects(m_clip)) return;
        m_painter.fillRect(area.adjusted(1, 1, -1, -1), ground);
    } else {
        const QColor& rim = planned ? m_kit.palette.of(stay.progress) : m_kit.palette.slot;
        for (const SlotRect& rect : stay.patch)
            m_painter.fillRect(pixels(stay, rect).adjusted(-1, -1, 1, 1), rim);
        for (const SlotRect& rect : stay.patch) {
            m_painter.fillRect(pixels(stay, rect), ground);
            if (planned) fillTexture(m_painter, pixels(stay, rect), Texture::Falling, faded(rim, 0.6));
        }
    }
    if (slotSide(stay) >= gridFrom) paintGrid(stay);
}

void PatchPainter::paintGrid(const SceneStay& stay) {
    const QColor& line = m_kit.lineOn(stay.progress);
    for (const SlotRect& rect : stay.patch) {
        const QRect area = pixels(stay, rect);
        for (int col = 1; col < rect.width; ++col) {
            const int x = pixels(stay, {rect.row, rect.col + col, 1, 1}).left();
            m_painter.fillRect(QRect(x, area.top() + 1, 1, area.height() - 2), line);
        }
        for (int row = 1; row < rect.height; ++row) {
            const int y = pixels(stay, {rect.row + row, rect.col, 1, 1}).top();
            m_painter.fillRect(QRect(area.left() + 1, y, area.width() - 2, 1), line);
        }
    }
}

void PatchPainter::paintDetail(const SceneStay& stay) {
    const double side = slotSide(stay);
    if (side >= ringsFrom) paintContainers(stay, side);
    if (side >= potTextFrom)
        paintPotText(stay);
    else
        paintLetters(stay);
}

const QPixmap& PatchPainter::stamp(Progress progress, int side) {
    QPixmap& made = m_stamps[side * 8 + static_cast<int>(progress)];
    if (!made.isNull()) return made;
    const double ratio = m_painter.device()->devicePixelRatioF();
    made = QPixmap(QSize(side, side) * ratio);
    made.setDevicePixelRatio(ratio);
    made.fill(Qt::transparent);
    QPainter ring(&made);
    ring.setRenderHint(QPainter::Antialiasing);
    ring.setPen(QPen(ringColour(m_kit, progress), 1));
    ring.drawEllipse(QRectF(0, 0, side, side).adjusted(1, 1, -1, -1));
    return made;
}

void PatchPainter::paintContainers(const SceneStay& stay, double side) {
    const int stampSide = static_cast<int>(side) - 3;
    for (int i = stay.firstPot; i < stay.endPot; ++i) {
        const ScenePot& pot = m_scene.pots[nth(i)];
        const QRect area = pixels(stay, pot.slots);
        if (!area.intersects(m_clip)) continue;
        const bool tray = pot.slots.height > 1 || pot.slots.width > 1;
        if (!tray && m_kit.surface == Surface::Pixels)
            m_painter.drawPixmap(area.topLeft() + QPoint(2, 2), stamp(stay.progress, stampSide));
        else
            paintContainer(area, stay.progress, tray);
    }
}

void PatchPainter::paintContainer(const QRect& area, Progress progress, bool tray) {
    if (tray) m_painter.fillRect(area.adjusted(2, 2, -1, -1), m_kit.ground(progress));
    m_painter.setPen(QPen(ringColour(m_kit, progress), 1));
    m_painter.setBrush(Qt::NoBrush);
    if (tray)
        m_painter.drawRect(area.adjusted(2, 2, -2, -2));
    else
        m_painter.drawEllipse(QRectF(area).adjusted(2.5, 2.5, -1.5, -1.5));
}

void PatchPainter::paintPotText(const SceneStay& stay) {
    m_painter.setPen(m_kit.inkOn(stay.progress));
    m_painter.setFont(m_kit.type.quiet);
    for (int i = stay.firstPot; i < stay.endPot; ++i) {
        const ScenePot& pot = m_scene.pots[nth(i)];
        const QRect area = pixels(stay, pot.slots);
        if (!area.intersects(m_clip)) continue;
        const auto centred = [&](const QString& words, double line) {
            const double x = area.center().x() - m_kit.quiet.horizontalAdvance(words) / 2.0;
            const double y = area.center().y() + line * m_kit.quiet.height() + m_kit.quiet.ascent() / 2.0;
            m_painter.drawText(QPointF(x, y), words);
        };
        centred(stay.letters + QString::number(pot.number), -0.5);
        centred(pot.examined == 0
                    ? m_kit.wording.number(pot.cuttings)
                    : m_kit.wording.number(pot.rooted) + u'/' + m_kit.wording.number(pot.examined),
                0.5);
    }
}

void PatchPainter::paintLetters(const SceneStay& stay) {
    const QRect area = pixels(stay, stay.patch[nth(stay.labelRect)]);
    if (area.height() < 15 || area.width() < 13 || !area.intersects(m_clip)) return;
    const int textWidth = m_kit.widthOf(stay.letters);
    if (textWidth + 4 > area.width()) return;
    const bool marked = hasStageMark(stay.progress) && textWidth + markSide + 12 <= area.width();
    const double width = textWidth + (marked ? markSide + 4 : 0);
    const QPointF centre = QRectF(area).center();
    const double left = centre.x() - width / 2;
    const QRectF plate = QRectF(left, centre.y() - 9, width, 18).adjusted(-4, 0, 4, 0);
    m_painter.fillRect(plate & QRectF(area).adjusted(1, 1, -1, -1), m_kit.ground(stay.progress));
    const QColor& ink = m_kit.inkOn(stay.progress);
    m_painter.setPen(ink);
    m_painter.setFont(m_kit.type.strong);
    m_painter.drawText(QPointF(left, centre.y() + m_kit.strong.ascent() / 2.0 - 1), stay.letters);
    if (marked)
        paintStageMark(m_painter, stay.progress,
                       {left + textWidth + 4, centre.y() - markSide / 2, markSide, markSide}, ink);
    if (!stay.troubles.empty() && area.width() >= 30 && area.height() >= 34) paintTrouble(area);
}

void PatchPainter::paintTrouble(const QRect& area) {
    const QRectF chip(area.right() - 15, area.top() + 2, 14, 14);
    m_painter.fillRect(chip, m_kit.palette.trouble);
    m_painter.fillRect(chip.adjusted(1, 1, -1, -1), m_kit.palette.troubleGround);
    m_painter.setPen(m_kit.palette.trouble);
    const QString mark = QStringLiteral("!");
    m_painter.drawText(
        QPointF(chip.center().x() - m_kit.strong.horizontalAdvance(mark) / 2.0, chip.bottom() - 2), mark);
}

void PatchPainter::paintSelected(const SceneStay& stay) {
    for (const SlotRect& rect : stay.patch)
        m_painter.fillRect(pixels(stay, rect).adjusted(-3, -3, 3, 3), m_kit.palette.ink);
    paintArea(stay);
    paintDetail(stay);
}

} // namespace warmbench::ui
