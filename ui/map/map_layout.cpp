#include "ui/map/map_layout.h"

#include <algorithm>
#include <cmath>

namespace warmbench::ui {
namespace {

/// A slot is never drawn smaller or larger than so many pixels per millimetre.
constexpr double leastScale = 0.004;
constexpr double mostScale = 1.2;

/// Lengths of columns and widths of rows of houses, in millimetres.
struct Arrangement {
    std::vector<double> columns;
    std::vector<double> rows;
};

Arrangement arrange(const MapScene& scene, int columns) {
    Arrangement made;
    const auto count = static_cast<int>(scene.houses.size());
    made.columns.assign(nth(columns), 0);
    made.rows.assign(nth((count + columns - 1) / columns), 0);
    for (int i = 0; i < count; ++i) {
        double& column = made.columns[nth(i % columns)];
        double& row = made.rows[nth(i / columns)];
        column = std::max(column, scene.houses[nth(i)].length);
        row = std::max(row, scene.houses[nth(i)].width);
    }
    return made;
}

double sum(const std::vector<double>& parts) {
    double total = 0;
    for (const double part : parts) total += part;
    return total;
}

double fixedWidth(int columns) {
    return mapMargin * (columns + 1);
}

double fixedHeight(std::size_t rows) {
    return static_cast<double>(rows) * (houseTitleHeight + mapMargin) + mapMargin / 2;
}

} // namespace

double MapLayout::scaleForWidth(const MapScene& scene, int columns, double width) {
    const double length = std::max(1.0, sum(arrange(scene, columns).columns));
    return std::clamp((width - fixedWidth(columns)) / length, leastScale, mostScale);
}

MapLayout MapLayout::fitted(const MapScene& scene, QSizeF size) {
    MapLayout best(scene, 1, leastScale);
    for (int columns = 1; columns <= std::max(1, static_cast<int>(scene.houses.size())); ++columns) {
        const Arrangement made = arrange(scene, columns);
        const double high = (size.height() - fixedHeight(made.rows.size())) / std::max(1.0, sum(made.rows));
        const double wide = scaleForWidth(scene, columns, size.width());
        const double scale = std::clamp(std::min(high, wide), leastScale, mostScale);
        if (scale > best.scale()) best = MapLayout(scene, columns, scale);
    }
    return best;
}

MapLayout::MapLayout(const MapScene& scene, int columns, double scale)
    : m_scale(std::clamp(scale, leastScale, mostScale)), m_columns(std::max(1, columns)) {
    const Arrangement made = arrange(scene, m_columns);
    double y = 0;
    for (std::size_t row = 0; row < made.rows.size(); ++row) {
        double x = mapMargin;
        for (std::size_t column = 0; column < made.columns.size(); ++column) {
            const std::size_t index = row * made.columns.size() + column;
            if (index >= scene.houses.size()) break;
            const SceneHouse& house = scene.houses[index];
            m_houses.emplace_back(x, y + houseTitleHeight, house.length * m_scale, house.width * m_scale);
            x += made.columns[column] * m_scale + mapMargin;
        }
        y += houseTitleHeight + made.rows[row] * m_scale + mapMargin;
    }
    m_size = {sum(made.columns) * m_scale + fixedWidth(m_columns), y + mapMargin / 2};
}

QRect MapLayout::toPixels(int house, const QRectF& millimetres) const {
    const QPointF corner = m_houses[nth(house)].topLeft();
    const auto left = static_cast<int>(std::lround(corner.x() + millimetres.left() * m_scale));
    const auto top = static_cast<int>(std::lround(corner.y() + millimetres.top() * m_scale));
    const auto right = static_cast<int>(std::lround(corner.x() + millimetres.right() * m_scale));
    const auto bottom = static_cast<int>(std::lround(corner.y() + millimetres.bottom() * m_scale));
    return {left, top, right - left, bottom - top};
}

QRect MapLayout::benchSlots(const MapScene& scene, int bench) const {
    const SceneBench& one = scene.benches[nth(bench)];
    return toPixels(one.house, one.area);
}

QRect MapLayout::benchBody(const MapScene& scene, int bench) const {
    QRect body = benchSlots(scene, bench);
    const QRect slots = body;
    for (int zone = 0; zone < static_cast<int>(scene.zones.size()); ++zone)
        if (scene.zones[nth(zone)].bench == bench && headingOutside(scene, zone))
            body |= heading(scene, zone);
    const SceneBench& one = scene.benches[nth(bench)];
    const auto rim = [&](double room, bool taken) {
        return static_cast<int>(taken ? benchRim : std::min(benchRim, room * m_scale / 2));
    };
    const int side = static_cast<int>(benchRim);
    return body.adjusted(-side, -rim(one.behind, body.top() < slots.top()), side,
                         rim(one.before, body.bottom() > slots.bottom()));
}

QRect MapLayout::zoneSlots(const MapScene& scene, int zone) const {
    const SceneZone& one = scene.zones[nth(zone)];
    return toPixels(scene.benches[nth(one.bench)].house, one.area);
}

bool MapLayout::headingOutside(const MapScene& scene, int zone) const {
    const SceneZone& one = scene.zones[nth(zone)];
    const SceneBench& bench = scene.benches[nth(one.bench)];
    const double room = one.heading == HeadingSide::Behind   ? bench.behind
                        : one.heading == HeadingSide::Before ? bench.before
                                                             : 0;
    return room * m_scale >= headingHeight + 2 * benchRim;
}

QRect MapLayout::heading(const MapScene& scene, int zone) const {
    const QRect slots = zoneSlots(scene, zone);
    const int height = static_cast<int>(headingHeight);
    if (!headingOutside(scene, zone)) {
        // Over a zone that is hardly higher only its name, so that what stands there is still seen.
        const bool low = slots.height() < 3 * height;
        const int width = low ? std::min(slots.width() - 4, narrowHeading) : slots.width() - 4;
        return {slots.left() + 2, slots.top() + 2, width, std::min(height - 4, slots.height() - 4)};
    }
    if (scene.zones[nth(zone)].heading == HeadingSide::Before)
        return {slots.left(), slots.bottom() + 1, slots.width(), height};
    return {slots.left(), slots.top() - height, slots.width(), height};
}

QRect MapLayout::slots(const MapScene& scene, int zone, const SlotRect& rect) const {
    const SceneZone& one = scene.zones[nth(zone)];
    const QRectF area(one.area.left() + rect.col * one.slot, one.area.top() + rect.row * one.slot,
                      rect.width * one.slot, rect.height * one.slot);
    return toPixels(scene.benches[nth(one.bench)].house, area);
}

QRect MapLayout::extent(const MapScene& scene, const Selection& selection) const {
    QRect all;
    for (int zone = 0; zone < static_cast<int>(scene.zones.size()); ++zone)
        if (selection == Selection{scene.zones[nth(zone)].id})
            all |= zoneSlots(scene, zone) | heading(scene, zone);
    for (const SceneStay& stay : scene.stays)
        if (selection == Selection{stay.batch})
            for (const SlotRect& rect : stay.patch) all |= slots(scene, stay.zone, rect);
    return all;
}

MapHit MapLayout::at(const MapScene& scene, QPointF point) const {
    MapHit hit;
    for (int zone = 0; zone < static_cast<int>(scene.zones.size()); ++zone) {
        const QRect area = zoneSlots(scene, zone);
        if (headingOutside(scene, zone) && heading(scene, zone).contains(point.toPoint())) {
            hit.zone = zone;
            return hit;
        }
        if (!area.contains(point.toPoint())) continue;
        const SceneZone& one = scene.zones[nth(zone)];
        const double side = one.slot * m_scale;
        hit.zone = zone;
        hit.slot = Slot{std::clamp(static_cast<int>((point.y() - area.top()) / side), 0, one.rows - 1),
                        std::clamp(static_cast<int>((point.x() - area.left()) / side), 0, one.cols - 1)};
        const int pot = one.potAt[nth(hit.slot->row * one.cols + hit.slot->col)];
        if (pot < 0) return hit;
        hit.pot = pot;
        hit.stay = scene.pots[nth(pot)].stay;
        return hit;
    }
    return hit;
}

} // namespace warmbench::ui
