#pragma once

#include "ui/map/map_layout.h"
#include "ui/map/paint_kit.h"

class QPainter;

namespace warmbench::ui {

/// Paints a scene at a layout: benches, zones with their headings, patches, pots as far as they can be seen
/// at that scale.
class MapPainter {
public:
    MapPainter(const Palette& palette, const TypeSizes& type, const Wording& wording, Surface surface)
        : m_kit(palette, type, wording, surface) {}

    /// Paints what lies in `clip`, and marks what is selected.
    void paint(QPainter& painter, const MapScene& scene, const MapLayout& layout, const QRect& clip,
               const Selection& selection) const;

private:
    struct Canvas;
    void paintHouse(const Canvas& canvas, int house) const;
    void paintBench(const Canvas& canvas, int bench) const;
    void paintZone(const Canvas& canvas, int zone) const;
    void paintHeading(const Canvas& canvas, int zone) const;
    void paintGround(const Canvas& canvas, int zone, const QRect& area) const;
    void paintGrid(const Canvas& canvas, int zone, const QRect& area) const;
    void paintSelectedZone(const Canvas& canvas, int zone) const;

    PaintKit m_kit;
};

} // namespace warmbench::ui
