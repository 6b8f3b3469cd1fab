#pragma once

#include "ui/map/map_scene.h"

#include <QPointF>
#include <QRect>
#include <QSizeF>

#include <optional>
#include <vector>

namespace warmbench::ui {

/// What Qt counts in `int`, as the index of a vector; never below 0.
inline std::size_t nth(int index) {
    return static_cast<std::size_t>(index);
}

/// Pixels between things that do not grow with the scale.
inline constexpr double mapMargin = 16;
inline constexpr double houseTitleHeight = 32;
inline constexpr double headingHeight = 22;
inline constexpr int narrowHeading = 56; ///< of a heading that stands on few slots
/// Between a bench's slots and its edge.
inline constexpr double benchRim = 5;

/// What is at a point of the map.
struct MapHit {
    std::optional<int> zone; ///< indices into the scene's vectors
    std::optional<int> stay;
    std::optional<int> pot;
    std::optional<Slot> slot; ///< of the zone
};

/// Where everything of a scene lies in pixels at one scale: houses side by side in columns, each under its
/// title. Edges of slots are rounded to whole pixels, so that equal slots differ by at most one.
class MapLayout {
public:
    MapLayout() = default;
    /// `scale` in pixels per millimetre; `columns` of houses, at least 1.
    MapLayout(const MapScene& scene, int columns, double scale);
    /// The largest layout that fits into a size, with the number of columns that makes it so.
    static MapLayout fitted(const MapScene& scene, QSizeF size);
    /// The largest scale at which so many columns of houses are no wider than `width`.
    static double scaleForWidth(const MapScene& scene, int columns, double width);

    [[nodiscard]] double scale() const { return m_scale; }
    [[nodiscard]] int columns() const { return m_columns; }
    [[nodiscard]] QSizeF size() const { return m_size; }

    /// The house's walls.
    [[nodiscard]] QRectF house(int index) const { return m_houses[static_cast<std::size_t>(index)]; }
    [[nodiscard]] QRect benchSlots(const MapScene& scene, int bench) const;
    /// The bench with its rim and, where there is room, the headings of its zones.
    [[nodiscard]] QRect benchBody(const MapScene& scene, int bench) const;
    [[nodiscard]] QRect zoneSlots(const MapScene& scene, int zone) const;
    /// The strip of a zone's heading; inside the slots where there is no room outside.
    [[nodiscard]] QRect heading(const MapScene& scene, int zone) const;
    [[nodiscard]] bool headingOutside(const MapScene& scene, int zone) const;
    /// Slots of a zone, in pixels.
    [[nodiscard]] QRect slots(const MapScene& scene, int zone, const SlotRect& rect) const;
    /// All that belongs to a zone or a batch's patch, for scrolling to it.
    [[nodiscard]] QRect extent(const MapScene& scene, const Selection& selection) const;

    [[nodiscard]] MapHit at(const MapScene& scene, QPointF point) const;

private:
    [[nodiscard]] QRect toPixels(int house, const QRectF& millimetres) const;

    double m_scale = 0.1;
    int m_columns = 1;
    QSizeF m_size;
    std::vector<QRectF> m_houses;
};

} // namespace warmbench::ui
