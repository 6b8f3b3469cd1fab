#include "ui/map/map_painter.h"

#include "ui/map/patch_painter.h"
#include "ui/map/texture.h"
#include "ui/map/zone_label.h"

#include <QPainter>
#include <QPixmapCache>

#include <cmath>

namespace warmbench::ui {
namespace {

struct CoverTexture {
    Texture texture;
    QColor colour;
};

std::optional<CoverTexture> textureOf(Cover cover, const Palette& palette) {
    switch (cover) {
    case Cover::Open:
        return std::nullopt;
    case Cover::Bag:
        return CoverTexture{Texture::Squares, faded(palette.benchEdge, 0.22)};
    case Cover::Tent:
        return CoverTexture{Texture::Rising, faded(palette.benchEdge, 0.30)};
    case Cover::Mist:
        return CoverTexture{Texture::Dots, faded(palette.accent, 0.35)};
    case Cover::Fog:
        return CoverTexture{Texture::DenseDots, faded(palette.accent, 0.35)};
    }
    return std::nullopt;
}

/// A square of free slots under a cover, to be laid side by side: on pixels that is much faster than lines.
QPixmap coverTile(Cover cover, const Palette& palette, double ratio) {
    const QString key = QStringLiteral("warmbench-cover-%1-%2-%3")
                            .arg(static_cast<int>(cover))
                            .arg(palette.dark ? 1 : 0)
                            .arg(ratio);
    QPixmap tile;
    if (QPixmapCache::find(key, &tile)) return tile;
    tile = QPixmap(QSize(textureTile, textureTile) * ratio);
    tile.setDevicePixelRatio(ratio);
    tile.fill(palette.slot);
    QPainter painter(&tile);
    const auto made = textureOf(cover, palette);
    if (made) fillTexture(painter, QRectF(0, 0, textureTile, textureTile), made->texture, made->colour);
    painter.end();
    QPixmapCache::insert(key, tile);
    return tile;
}

} // namespace

struct MapPainter::Canvas {
    QPainter& painter;
    const MapScene& scene;
    const MapLayout& layout;
    const QRect& clip;
    PatchPainter& patches;

    [[nodiscard]] double slotSide(int zone) const { return scene.zones[nth(zone)].slot * layout.scale(); }
};

void MapPainter::paint(QPainter& painter, const MapScene& scene, const MapLayout& layout, const QRect& clip,
                       const Selection& selection) const {
    painter.setLayoutDirection(Qt::LayoutDirectionAuto); // each text by its own letters
    painter.fillRect(clip, m_kit.palette.paper);
    PatchPainter patches(painter, m_kit, scene, layout, clip);
    const Canvas canvas{painter, scene, layout, clip, patches};
    for (int house = 0; house < static_cast<int>(scene.houses.size()); ++house) paintHouse(canvas, house);
    for (int bench = 0; bench < static_cast<int>(scene.benches.size()); ++bench) paintBench(canvas, bench);
    for (int zone = 0; zone < static_cast<int>(scene.zones.size()); ++zone) paintZone(canvas, zone);
    for (const SceneStay& stay : scene.stays)
        if (selection == Selection{stay.batch}) patches.paintSelected(stay);
    for (int zone = 0; zone < static_cast<int>(scene.zones.size()); ++zone)
        if (selection == Selection{scene.zones[nth(zone)].id}) paintSelectedZone(canvas, zone);
}

void MapPainter::paintHouse(const Canvas& canvas, int index) const {
    const SceneHouse& house = canvas.scene.houses[nth(index)];
    const QRectF walls = canvas.layout.house(index);
    if (!walls.adjusted(-2, -houseTitleHeight, 2, 2).intersects(canvas.clip)) return;
    QPainter& painter = canvas.painter;
    painter.fillRect(walls, m_kit.palette.floor);
    painter.setPen(QPen(m_kit.palette.benchEdge, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(walls.toRect());
    const double baseline = walls.top() - 10;
    painter.setPen(m_kit.palette.ink);
    painter.setFont(m_kit.type.strong);
    painter.drawText(QPointF(walls.left(), baseline), house.name);
    const QFontMetrics& quiet = m_kit.quiet;
    const double x = walls.left() + m_kit.strong.horizontalAdvance(house.name) + 12;
    const auto metres = [&](double length) {
        return m_kit.wording.metres(Millimetres{std::llround(length)});
    };
    const QString taken = QCoreApplication::translate("MapPainter", "%1 of %2 slots taken")
                              .arg(m_kit.wording.number(house.taken), m_kit.wording.number(house.usable));
    const QString air =
        QCoreApplication::translate("MapPainter", "air %1").arg(m_kit.wording.temperature(house.air));
    const QString size =
        metres(house.length) + QStringLiteral(" × ") + metres(house.width) + QStringLiteral(" m");
    painter.setFont(m_kit.type.quiet);
    painter.setPen(m_kit.palette.quietInk);
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
    painter.fillRect(body, m_kit.palette.benchEdge);
    painter.fillRect(body.adjusted(1, 1, -1, -1), m_kit.palette.bench);
    const QRect slots = canvas.layout.benchSlots(canvas.scene, index);
    const double room = bench.before * canvas.layout.scale() - (body.bottom() - slots.bottom());
    const QFontMetrics& metrics = m_kit.quiet;
    if (room < metrics.height() + 4 || metrics.horizontalAdvance(bench.name) > body.width()) return;
    // The next bench's edge and headings reach out over its slots.
    const QRect words(body.left(), body.bottom() + 1, body.width(), metrics.height() + 4);
    for (int other = 0; other < static_cast<int>(canvas.scene.benches.size()); ++other)
        if (other != index && canvas.layout.benchBody(canvas.scene, other).intersects(words)) return;
    painter.setPen(m_kit.palette.quietInk);
    painter.setFont(m_kit.type.quiet);
    painter.drawText(QPointF(body.left() + 2, body.bottom() + 4 + metrics.ascent()), bench.name);
}

void MapPainter::paintZone(const Canvas& canvas, int index) const {
    const SceneZone& zone = canvas.scene.zones[nth(index)];
    const QRect area = canvas.layout.zoneSlots(canvas.scene, index);
    const QRect heading = canvas.layout.heading(canvas.scene, index);
    if (!(area | heading).intersects(canvas.clip)) return;
    paintGround(canvas, index, area);
    paintGrid(canvas, index, area);
    for (int stay = zone.firstStay; stay < zone.endStay; ++stay)
        canvas.patches.paintArea(canvas.scene.stays[nth(stay)]);
    for (int stay = zone.firstStay; stay < zone.endStay; ++stay)
        canvas.patches.paintDetail(canvas.scene.stays[nth(stay)]);
    // Two zones beside each other are told apart by a line of the bench between them.
    canvas.painter.fillRect(QRect(area.left(), area.top(), 1, area.height()), m_kit.palette.benchEdge);
    paintHeading(canvas, index);
}

void MapPainter::paintGround(const Canvas& canvas, int index, const QRect& area) const {
    const SceneZone& zone = canvas.scene.zones[nth(index)];
    QPainter& painter = canvas.painter;
    const auto texture = textureOf(zone.cover, m_kit.palette);
    if (texture && m_kit.surface == Surface::Pixels) {
        painter.drawTiledPixmap(area,
                                coverTile(zone.cover, m_kit.palette, painter.device()->devicePixelRatioF()));
    } else {
        painter.fillRect(area, m_kit.palette.slot);
        if (texture) fillTexture(painter, area, texture->texture, texture->colour);
    }
    for (const Slot blocked : zone.blocked)
        painter.fillRect(canvas.layout.slots(canvas.scene, index, {blocked.row, blocked.col, 1, 1}),
                         m_kit.palette.bench);
}

void MapPainter::paintGrid(const Canvas& canvas, int index, const QRect& area) const {
    const double side = canvas.slotSide(index);
    if (side < gridFrom) return;
    const SceneZone& zone = canvas.scene.zones[nth(index)];
    const auto edge = [&](int start, int number) {
        return start + static_cast<int>(std::lround(number * side));
    };
    for (int col = 1; col < zone.cols; ++col)
        canvas.painter.fillRect(QRect(edge(area.left(), col), area.top(), 1, area.height()), m_kit.freeLine);
    for (int row = 1; row < zone.rows; ++row)
        canvas.painter.fillRect(QRect(area.left(), edge(area.top(), row), area.width(), 1), m_kit.freeLine);
}

void MapPainter::paintHeading(const Canvas& canvas, int index) const {
    paintZoneHeading(canvas.painter, canvas.layout.heading(canvas.scene, index),
                     canvas.layout.headingOutside(canvas.scene, index), canvas.scene.zones[nth(index)],
                     m_kit);
}

void MapPainter::paintSelectedZone(const Canvas& canvas, int index) const {
    QRect area = canvas.layout.zoneSlots(canvas.scene, index);
    if (canvas.layout.headingOutside(canvas.scene, index)) area |= canvas.layout.heading(canvas.scene, index);
    canvas.painter.setPen(QPen(m_kit.palette.ink, 3, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    canvas.painter.setBrush(Qt::NoBrush);
    canvas.painter.drawRect(QRectF(area).adjusted(-0.5, -0.5, 0.5, 0.5));
}

} // namespace warmbench::ui
