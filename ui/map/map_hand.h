#pragma once

#include "ui/map/map_layout.h"
#include "ui/map/paint_kit.h"

class QKeyEvent;
class QPainter;

namespace warmbench::ui {

/// What holds something over the map to put it down there. While it is active the map gives it its keys and
/// mouse, and paints it over what stands.
class MapHand {
public:
    /// What a painting of the map goes by.
    struct View {
        const MapScene& scene;
        const MapLayout& layout;
        QRect visible; ///< of the layout
        const PaintKit& kit;
    };

    MapHand() = default;
    MapHand(const MapHand&) = delete;
    MapHand& operator=(const MapHand&) = delete;
    virtual ~MapHand() = default;

    [[nodiscard]] virtual bool isActive() const = 0;
    /// What lies over all zones and changes only with what is held.
    virtual void paintZones(QPainter& painter, const View& view) const = 0;
    /// What follows the aim.
    virtual void paintAim(QPainter& painter, const View& view) const = 0;
    /// Aims at what is at a point of the map; at nothing where no zone is.
    virtual void pointAt(const MapScene& scene, const MapHit& hit) = 0;
    /// The button was let go over what is aimed at.
    virtual void letGo() = 0;
    /// Whether the key was for it.
    virtual bool key(const MapScene& scene, const MapLayout& layout, const QKeyEvent& event) = 0;
};

} // namespace warmbench::ui
