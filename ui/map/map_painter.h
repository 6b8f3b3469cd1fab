#pragma once

#include "ui/map/map_layout.h"
#include "ui/map/texture.h"
#include "ui/theme/palette.h"
#include "ui/theme/type.h"
#include "ui/words/wording.h"

class QPainter;

namespace warmbench::ui {

/// Paints a scene at a layout: benches, zones with their headings, patches, pots as far as they can be seen
/// at that scale.
class MapPainter {
public:
    MapPainter(const Palette& palette, const TypeSizes& type, const Wording& wording, Surface surface)
        : m_palette(palette), m_type(type), m_wording(wording), m_surface(surface) {}

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
    void paintPatch(const Canvas& canvas, const SceneStay& stay) const;
    void paintContainers(const Canvas& canvas, const SceneStay& stay) const;
    void paintPotText(const Canvas& canvas, const SceneStay& stay) const;
    void paintLetters(const Canvas& canvas, const SceneStay& stay) const;
    void paintSelectedStay(const Canvas& canvas, const SceneStay& stay) const;
    void paintSelectedZone(const Canvas& canvas, int zone) const;

    const Palette& m_palette;
    const TypeSizes& m_type;
    const Wording& m_wording;
    Surface m_surface;
};

} // namespace warmbench::ui
