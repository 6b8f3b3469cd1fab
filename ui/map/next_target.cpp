#include "ui/map/next_target.h"

#include <cmath>
#include <limits>

namespace warmbench::ui {
namespace {

struct Target {
    Selection selection;
    QPointF centre;
};

std::vector<Target> targets(const MapScene& scene, const MapLayout& layout, bool batches) {
    std::vector<Target> all;
    if (batches) {
        for (const SceneStay& stay : scene.stays) {
            const SlotRect& rect = stay.patch[static_cast<std::size_t>(stay.labelRect)];
            all.push_back({stay.batch, QRectF(layout.slots(scene, stay.zone, rect)).center()});
        }
    } else {
        for (std::size_t zone = 0; zone < scene.zones.size(); ++zone)
            all.push_back(
                {scene.zones[zone].id, QRectF(layout.zoneSlots(scene, static_cast<int>(zone))).center()});
    }
    return all;
}

} // namespace

std::optional<Selection> nextTarget(const MapScene& scene, const MapLayout& layout, const Selection& from,
                                    QPoint direction) {
    const std::vector<Target> all = targets(scene, layout, std::holds_alternative<BatchId>(from));
    const Target* start = nullptr;
    for (const Target& one : all)
        if (one.selection == from) start = &one;
    if (!start) return scene.zones.empty() ? std::nullopt : std::optional<Selection>(scene.zones.front().id);
    std::optional<Selection> best;
    double bestDistance = std::numeric_limits<double>::max();
    for (const Target& one : all) {
        const QPointF way = one.centre - start->centre;
        const double along = way.x() * direction.x() + way.y() * direction.y();
        const double aside = std::abs(way.x() * direction.y()) + std::abs(way.y() * direction.x());
        if (along < 1 || along < aside / 4) continue;
        const double distance = along + 2 * aside;
        if (distance < bestDistance) {
            bestDistance = distance;
            best = one.selection;
        }
    }
    return best;
}

} // namespace warmbench::ui
