#include "ui/map/bench_map.h"

#include "ui/map/next_target.h"

#include <QKeyEvent>
#include <QScrollBar>

/// The map by keys alone.
namespace warmbench::ui {
namespace {

constexpr int panStep = 60;

} // namespace

bool BenchMap::focusNextPrevChild(bool next) {
    // Tab goes from one zone that suits to the next while something is carried.
    return !carries() && QAbstractScrollArea::focusNextPrevChild(next);
}

void BenchMap::keyPressEvent(QKeyEvent* event) {
    if (carries() && m_hand->key(m_scene, m_layout, *event)) return;
    const bool pans = event->modifiers().testFlag(Qt::ControlModifier);
    const auto go = [&](QPoint direction) {
        if (!pans) return moveSelection(direction);
        horizontalScrollBar()->setValue(horizontalScrollBar()->value() + direction.x() * panStep);
        verticalScrollBar()->setValue(verticalScrollBar()->value() + direction.y() * panStep);
    };
    switch (event->key()) {
    case Qt::Key_Left:
        return go({-1, 0});
    case Qt::Key_Right:
        return go({1, 0});
    case Qt::Key_Up:
        return go({0, -1});
    case Qt::Key_Down:
        return go({0, 1});
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return enterZone();
    case Qt::Key_Escape:
        return leave();
    case Qt::Key_M:
    case Qt::Key_Space:
        if (const auto* batch = std::get_if<BatchId>(&m_selection)) Q_EMIT takenUp(*batch, false);
        return;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        return zoomIn();
    case Qt::Key_Minus:
        return zoomOut();
    case Qt::Key_0:
        return fit();
    default:
        QAbstractScrollArea::keyPressEvent(event);
    }
}

void BenchMap::moveSelection(QPoint direction) {
    if (const auto next = nextTarget(m_scene, m_layout, m_selection, direction)) choose(*next);
}

void BenchMap::enterZone() {
    const auto* id = std::get_if<ZoneId>(&m_selection);
    const SceneZone* zone = id ? m_scene.find(*id) : nullptr;
    if (zone && zone->firstStay < zone->endStay)
        choose(m_scene.stays[static_cast<std::size_t>(zone->firstStay)].batch);
}

void BenchMap::leave() {
    const auto* id = std::get_if<BatchId>(&m_selection);
    const SceneStay* stay = id ? m_scene.find(*id) : nullptr;
    choose(stay ? Selection{m_scene.zones[static_cast<std::size_t>(stay->zone)].id} : Selection{});
}

} // namespace warmbench::ui
