#include "ui/map/map_painter.h"

#include "ui/map/stage_mark.h"
#include "ui/map/zone_label.h"

#include <QPainter>

#include <cmath>

namespace warmbench::ui {
namespace {

/// Sides of a slot, in pixels, from which more of it is shown.
constexpr double gridFrom = 5;
constexpr double ringsFrom = 14;
constexpr double potTextFrom = 46;

constexpr double markSide = 10;

std::size_t nth(int index) {
    return static_cast<std::size_t>(index);
}

QColor faded(QColor colour, double share) {
    colour.setAlphaF(static_cast<float>(share));
    return colour;
}

/// A ring of a pot seen from above, to be stamped.
QPixmap ringStamp(int side, const QColor& colour, double ratio) {
    QPixmap stamp(QSize(side, side) * ratio);
    stamp.setDevicePixelRatio(ratio);
    stamp.fill(Qt::transparent);
    QPainter painter(&stamp);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour, 1));
    painter.drawEllipse(QRectF(0, 0, side, side).adjusted(1, 1, -1, -1));
    return stamp;
}

} // namespace

struct MapPainter::Canvas {
    QPainter& painter;
    const MapScene& scene;
    const MapLayout& layout;
    const QRect& clip;
    const Selection& selection;

    [[nodiscard]] double slotSide(int zone) const { return scene.zones[nth(zone)].slot * layout.scale(); }
};

void MapPainter::paint(QPainter& painter, const MapScene& scene, const MapLayout& layout, const QRect& clip,
                       const Selection& selection) const {
    painter.setLayoutDirection(Qt::LayoutDirectionAuto); // each text by its own letters
    painter.fillRect(clip, m_palette.paper);
    const Canvas canvas{painter, scene, layout, clip, selection};
    for (int house = 0; house < static_cast<int>(scene.houses.size()); ++house) paintHouse(canvas, house);
    for (int bench = 0; bench < static_cast<int>(scene.benches.size()); ++bench) paintBench(canvas, bench);
    for (int zone = 0; zone < static_cast<int>(scene.zones.size()); ++zone) paintZone(canvas, zone);
    for (const SceneStay& stay : scene.stays)
        if (selection == Selection{stay.batch}) paintSelectedStay(canvas, stay);
    for (int zone = 0; zone < static_cast<int>(scene.zones.size()); ++zone)
        if (selection == Selection{scene.zones[nth(zone)].id}) paintSelectedZone(canvas, zone);
}

void MapPainter::paintHouse(const Canvas& canvas, int index) const {
    const SceneHouse& house = canvas.scene.houses[nth(index)];
    const QRectF walls = canvas.layout.house(index);
    if (!walls.adjusted(-2, -houseTitleHeight, 2, 2).intersects(canvas.clip)) return;
    QPainter& painter = canvas.painter;
    painter.fillRect(walls, m_palette.floor);
    painter.setPen(QPen(m_palette.benchEdge, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(walls.toRect());
    const double baseline = walls.top() - 10;
    painter.setPen(m_palette.ink);
    painter.setFont(m_type.strong);
    painter.drawText(QPointF(walls.left(), baseline), house.name);
    const QFontMetricsF strong(m_type.strong);
    const QFontMetricsF quiet(m_type.quiet);
    const double x = walls.left() + strong.horizontalAdvance(house.name) + 12;
    const auto metres = [&](double length) { return m_wording.metres(Millimetres{std::llround(length)}); };
    const QString taken = QCoreApplication::translate("MapPainter", "%1 of %2 slots taken")
                              .arg(m_wording.number(house.taken), m_wording.number(house.usable));
    const QString air =
        QCoreApplication::translate("MapPainter", "air %1").arg(m_wording.temperature(house.air));
    const QString size =
        metres(house.length) + QStringLiteral(" × ") + metres(house.width) + QStringLiteral(" m");
    painter.setFont(m_type.quiet);
    painter.setPen(m_palette.quietInk);
    const QString dot = QStringLiteral(" · ");
    for (const QString& words : {size + dot + air + dot + taken, air + dot + taken, taken})
        if (x + quiet.horizontalAdvance(words) <= walls.right()) {
            painter.drawText(QPointF(x, baseline), words);
            break;
        }
}

void MapPainter::paintBench(const Canvas& canvas, int index) const {
    const SceneBench& bench = canvas.scene.benches[nth(index)];
    const QRect body = canvas.layout.benchBody(canvas.scene, index);
    if (!body.adjusted(0, 0, 0, 24).intersects(canvas.clip)) return;
    QPainter& painter = canvas.painter;
    painter.fillRect(body, m_palette.benchEdge);
    painter.fillRect(body.adjusted(1, 1, -1, -1), m_palette.bench);
    const QRect slots = canvas.layout.benchSlots(canvas.scene, index);
    const double room = bench.before * canvas.layout.scale() - (body.bottom() - slots.bottom());
    const QFontMetrics metrics(m_type.quiet);
    if (room < metrics.height() + 4 || metrics.horizontalAdvance(bench.name) > body.width()) return;
    painter.setPen(m_palette.quietInk);
    painter.setFont(m_type.quiet);
    painter.drawText(QPointF(body.left() + 2, body.bottom() + 4 + metrics.ascent()), bench.name);
}

void MapPainter::paintZone(const Canvas& canvas, int index) const {
    const SceneZone& zone = canvas.scene.zones[nth(index)];
    const QRect area = canvas.layout.zoneSlots(canvas.scene, index);
    const QRect heading = canvas.layout.heading(canvas.scene, index);
    if (!(area | heading).intersects(canvas.clip)) return;
    paintGround(canvas, index, area);
    for (int stay = zone.firstStay; stay < zone.endStay; ++stay)
        paintPatch(canvas, canvas.scene.stays[nth(stay)]);
    paintGrid(canvas, index, area);
    for (int stay = zone.firstStay; stay < zone.endStay; ++stay) {
        paintContainers(canvas, canvas.scene.stays[nth(stay)]);
        paintLetters(canvas, canvas.scene.stays[nth(stay)]);
    }
    // Two zones beside each other are told apart by a line of the bench between them.
    canvas.painter.fillRect(QRect(area.left(), area.top(), 1, area.height()), m_palette.benchEdge);
    paintHeading(canvas, index);
}

void MapPainter::paintGround(const Canvas& canvas, int index, const QRect& area) const {
    const SceneZone& zone = canvas.scene.zones[nth(index)];
    QPainter& painter = canvas.painter;
    painter.fillRect(area, m_palette.slot);
    const auto texture = [&](Texture kind, const QColor& colour) {
        fillTexture(painter, area, kind, colour, m_surface);
    };
    if (zone.cover == Cover::Mist) texture(Texture::Dots, faded(m_palette.accent, 0.35));
    if (zone.cover == Cover::Fog) texture(Texture::DenseDots, faded(m_palette.accent, 0.35));
    if (zone.cover == Cover::Tent) texture(Texture::Rising, faded(m_palette.benchEdge, 0.30));
    if (zone.cover == Cover::Bag) texture(Texture::Squares, faded(m_palette.benchEdge, 0.22));
    for (const Slot blocked : zone.blocked)
        painter.fillRect(canvas.layout.slots(canvas.scene, index, {blocked.row, blocked.col, 1, 1}),
                         m_palette.bench);
}

void MapPainter::paintGrid(const Canvas& canvas, int index, const QRect& area) const {
    const double side = canvas.slotSide(index);
    if (side < gridFrom) return;
    const SceneZone& zone = canvas.scene.zones[nth(index)];
    const QColor line = faded(m_palette.bench, side < 9 ? 0.45 : 0.75);
    const auto edge = [&](int start, int number) {
        return start + static_cast<int>(std::lround(number * side));
    };
    for (int col = 1; col < zone.cols; ++col)
        canvas.painter.fillRect(QRect(edge(area.left(), col), area.top(), 1, area.height()), line);
    for (int row = 1; row < zone.rows; ++row)
        canvas.painter.fillRect(QRect(area.left(), edge(area.top(), row), area.width(), 1), line);
}

void MapPainter::paintPatch(const Canvas& canvas, const SceneStay& stay) const {
    QPainter& painter = canvas.painter;
    const QColor colour = m_palette.of(stay.progress);
    for (const SlotRect& rect : stay.patch)
        painter.fillRect(canvas.layout.slots(canvas.scene, stay.zone, rect).adjusted(-1, -1, 1, 1),
                         stay.progress == Progress::Planned ? colour : m_palette.slot);
    for (const SlotRect& rect : stay.patch) {
        const QRect area = canvas.layout.slots(canvas.scene, stay.zone, rect);
        if (stay.progress != Progress::Planned) {
            painter.fillRect(area, colour);
            continue;
        }
        painter.fillRect(area, m_palette.slot);
        fillTexture(painter, area, Texture::Falling, faded(colour, 0.6), m_surface);
    }
}

void MapPainter::paintContainers(const Canvas& canvas, const SceneStay& stay) const {
    const double side = canvas.slotSide(stay.zone);
    if (side < ringsFrom) return;
    QPainter& painter = canvas.painter;
    const QColor ground = m_palette.of(stay.progress);
    const QColor ring =
        stay.progress == Progress::Planned ? faded(ground, 0.6) : faded(m_palette.textOn(ground), 0.28);
    const int stampSide = static_cast<int>(side) - 3;
    const QPixmap stamp = m_surface == Surface::Pixels
                              ? ringStamp(stampSide, ring, painter.device()->devicePixelRatioF())
                              : QPixmap();
    for (int i = stay.firstPot; i < stay.endPot; ++i) {
        const ScenePot& pot = canvas.scene.pots[nth(i)];
        const QRect area = canvas.layout.slots(canvas.scene, stay.zone, pot.slots);
        if (!area.intersects(canvas.clip)) continue;
        if (pot.slots.height > 1 || pot.slots.width > 1) {
            painter.fillRect(area.adjusted(2, 2, -1, -1), ground);
            painter.setPen(QPen(ring, 1));
            painter.setBrush(Qt::NoBrush);
            painter.drawRect(area.adjusted(2, 2, -2, -2));
        } else if (m_surface == Surface::Pixels) {
            painter.drawPixmap(area.topLeft() + QPoint(2, 2), stamp);
        } else {
            painter.setPen(QPen(ring, 1));
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(QRectF(area).adjusted(2.5, 2.5, -1.5, -1.5));
        }
    }
    if (side >= potTextFrom) paintPotText(canvas, stay);
}

void MapPainter::paintPotText(const Canvas& canvas, const SceneStay& stay) const {
    QPainter& painter = canvas.painter;
    const QColor ground = stay.progress == Progress::Planned ? m_palette.slot : m_palette.of(stay.progress);
    painter.setPen(m_palette.textOn(ground));
    painter.setFont(m_type.quiet);
    const QFontMetrics metrics(m_type.quiet);
    for (int i = stay.firstPot; i < stay.endPot; ++i) {
        const ScenePot& pot = canvas.scene.pots[nth(i)];
        const QRect area = canvas.layout.slots(canvas.scene, stay.zone, pot.slots);
        if (!area.intersects(canvas.clip)) continue;
        const auto centred = [&](const QString& words, double line) {
            const double x = area.center().x() - metrics.horizontalAdvance(words) / 2.0;
            painter.drawText(QPointF(x, area.center().y() + line * metrics.height() + metrics.ascent() / 2.0),
                             words);
        };
        const QString name = stay.letters + QString::number(pot.number);
        if (pot.examined == 0) {
            centred(name, -0.5);
            centred(m_wording.number(pot.cuttings), 0.5);
        } else {
            centred(name, -0.5);
            centred(m_wording.number(pot.rooted) + u'/' + m_wording.number(pot.examined), 0.5);
        }
    }
}

void MapPainter::paintLetters(const Canvas& canvas, const SceneStay& stay) const {
    const QRect area = canvas.layout.slots(canvas.scene, stay.zone, stay.patch[nth(stay.labelRect)]);
    if (!area.intersects(canvas.clip) || area.height() < 15 || area.width() < 13) return;
    if (canvas.slotSide(stay.zone) >= potTextFrom) return;
    const QFontMetrics metrics(m_type.strong);
    const int textWidth = metrics.horizontalAdvance(stay.letters);
    if (textWidth + 4 > area.width()) return;
    const bool marked = hasStageMark(stay.progress) && textWidth + markSide + 12 <= area.width();
    const double width = textWidth + (marked ? markSide + 4 : 0);
    const QPointF centre = QRectF(area).center();
    const double left = centre.x() - width / 2;
    QPainter& painter = canvas.painter;
    const bool planned = stay.progress == Progress::Planned;
    const QColor ground = planned ? m_palette.slot : m_palette.of(stay.progress);
    const QRectF plate = QRectF(left, centre.y() - 9, width, 18).adjusted(-4, 0, 4, 0);
    painter.fillRect(plate & QRectF(area).adjusted(1, 1, -1, -1), ground);
    const QColor colour = m_palette.textOn(ground);
    painter.setPen(colour);
    painter.setFont(m_type.strong);
    painter.drawText(QPointF(left, centre.y() + metrics.ascent() / 2.0 - 1), stay.letters);
    if (marked)
        paintStageMark(painter, stay.progress,
                       {left + textWidth + 4, centre.y() - markSide / 2, markSide, markSide}, colour);
    if (stay.troubles.empty() || area.width() < 30 || area.height() < 34) return;
    const QRectF chip(area.right() - 15, area.top() + 2, 14, 14);
    painter.fillRect(chip, m_palette.trouble);
    painter.fillRect(chip.adjusted(1, 1, -1, -1), m_palette.troubleGround);
    painter.setPen(m_palette.trouble);
    painter.drawText(QPointF(chip.center().x() - metrics.horizontalAdvance(u'!') / 2.0, chip.bottom() - 2),
                     QStringLiteral("!"));
}

void MapPainter::paintHeading(const Canvas& canvas, int index) const {
    const SceneZone& zone = canvas.scene.zones[nth(index)];
    const QRect strip = canvas.layout.heading(canvas.scene, index);
    const bool outside = canvas.layout.headingOutside(canvas.scene, index);
    const ZoneLabel label = zoneLabel(zone, strip.width(), m_type, m_wording);
    const QFontMetrics quiet(m_type.quiet);
    const QFontMetrics strong(m_type.strong);
    if (!outside && (label.name.isEmpty() || strip.height() < strong.height())) return;
    QPainter& painter = canvas.painter;
    const QColor ground = m_palette.heatAt(zone.setPoint);
    painter.fillRect(outside ? strip.adjusted(1, 0, 0, -1) : strip, ground);
    const QColor colour = m_palette.textOn(ground);
    const double baseline = strip.center().y() + strong.ascent() / 2.0;
    double x = strip.left() + headingGap;
    const auto put = [&](const QString& words, const QFont& font, const QFontMetrics& metrics) {
        if (words.isEmpty()) return;
        painter.setFont(font);
        painter.setPen(colour);
        painter.drawText(QPointF(x, baseline), words);
        x += metrics.horizontalAdvance(words) + headingGap;
    };
    put(label.name, m_type.strong, strong);
    put(label.heat, m_type.quiet, quiet);
    if (!label.trouble.isEmpty()) {
        const QRectF chip(x - 2, strip.top() + 3, quiet.horizontalAdvance(label.trouble) + headingGap,
                          strip.height() - 6);
        painter.fillRect(chip, m_palette.troubleGround);
        painter.setPen(m_palette.trouble);
        painter.setFont(m_type.quiet);
        painter.drawText(QPointF(chip.left() + headingGap / 2.0, baseline), label.trouble);
    }
    x = strip.right() - headingGap - quiet.horizontalAdvance(label.taken) + 1;
    put(label.taken, m_type.quiet, quiet);
}

void MapPainter::paintSelectedStay(const Canvas& canvas, const SceneStay& stay) const {
    for (const SlotRect& rect : stay.patch)
        canvas.painter.fillRect(canvas.layout.slots(canvas.scene, stay.zone, rect).adjusted(-4, -4, 4, 4),
                                m_palette.ink);
    paintPatch(canvas, stay);
    paintContainers(canvas, stay);
    paintLetters(canvas, stay);
}

void MapPainter::paintSelectedZone(const Canvas& canvas, int index) const {
    QRect area = canvas.layout.zoneSlots(canvas.scene, index);
    if (canvas.layout.headingOutside(canvas.scene, index)) area |= canvas.layout.heading(canvas.scene, index);
    canvas.painter.setPen(QPen(m_palette.ink, 3, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    canvas.painter.setBrush(Qt::NoBrush);
    canvas.painter.drawRect(QRectF(area).adjusted(-0.5, -0.5, 0.5, 0.5));
}

} // namespace warmbench::ui
