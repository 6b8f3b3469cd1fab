#include "ui/map/bench_map.h"

#include <QContextMenuEvent>

/// Where what can be done with a batch of the map is asked for.
namespace warmbench::ui {

void BenchMap::contextMenuEvent(QContextMenuEvent* event) {
    if (carries()) return;
    const bool byKey = event->reason() == QContextMenuEvent::Keyboard;
    if (!byKey) choose(selectionAt(event->pos()));
    const auto* batch = std::get_if<BatchId>(&m_selection);
    if (!batch) return;
    const QRect patch = m_layout.extent(m_scene, m_selection).translated(origin());
    const QPoint middle = (patch & viewport()->rect()).isValid() ? (patch & viewport()->rect()).center()
                                                                 : viewport()->rect().center();
    Q_EMIT menuWanted(*batch, byKey ? viewport()->mapToGlobal(middle) : event->globalPos());
}

} // namespace warmbench::ui
