#pragma once

#include "ui/map/map_layout.h"
#include "ui/map/paint_kit.h"

#include <QHash>
#include <QPixmap>

class QPainter;

namespace warmbench::ui {

/// Paints the patches of batches, and of their containers as much as can be seen at the scale.
class PatchPainter {
public:
    PatchPainter(QPainter& painter, const PaintKit& kit, const MapScene& scene, const MapLayout& layout,
                 const QRect& clip)
        : m_painter(painter), m_kit(kit), m_scene(scene), m_layout(layout), m_clip(clip) {}

    /// The patch as one area with its grid; to be painted over the zone's.
    void paintArea(const SceneStay& stay);
    /// Its containers and letters; to be painted over all areas.
    void paintDetail(const SceneStay& stay);
    /// All of it once more, with a ring round it.
    void paintSelected(const SceneStay& stay);

private:
    [[nodiscard]] double slotSide(const SceneStay& stay) const;
    [[nodiscard]] QRect pixels(const SceneStay& stay, const SlotRect& rect) const {
        return m_layout.slots(m_scene, stay.zone, rect);
    }
    void paintGrid(const SceneStay& stay);
    void paintContainers(const SceneStay& stay, double side);
    void paintContainer(const QRect& area, Progress progress, bool tray);
    void paintPotText(const SceneStay& stay);
    void paintLetters(const SceneStay& stay);
    void paintTrouble(const QRect& area);
    const QPixmap& stamp(Progress progress, int side);

    QPainter& m_painter;
    const PaintKit& m_kit;
    const MapScene& m_scene;
    const MapLayout& m_layout;
    const QRect& m_clip;
    QHash<int, QPixmap> m_stamps;
};

} // namespace warmbench::ui
