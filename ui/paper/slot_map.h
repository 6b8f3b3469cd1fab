#pragma once

#include "core/book/house_book.h"
#include "ui/map/letters.h"
#include "ui/paper/plot.h"
#include "ui/words/wording.h"

#include <QColor>

namespace warmbench::ui {

/// The colours of a small map; on paper black and grey on white.
struct SlotMapLook {
    QColor ink = Qt::black;
    QColor slot = Qt::white;                  ///< a free one
    QColor taken = Qt::gray;                  ///< hatch of what others take
    QColor chosen = QColor(0xd8, 0xd8, 0xd8); ///< of the batches that are shown; they are framed in ink
    QColor onChosen = Qt::black;
};

/// A zone's slots on a day, the back row above: those of some batches filled, with their letters, and what
/// each letter is beside them; what else stands there is hatched, what takes no container crossed out.
[[nodiscard]] Plot slotMap(const HouseBook& book, ZoneId zone, Day day, const std::vector<BatchId>& batches,
                           const Letters& letters, const Wording& wording, const SlotMapLook& look = {});

/// The zone in which a batch first stands; nothing while it has no place.
[[nodiscard]] std::optional<ZoneId> firstZoneOf(const HouseBook& book, BatchId batch);

} // namespace warmbench::ui
