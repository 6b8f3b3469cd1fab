#pragma once

#include "core/book/house_book.h"
#include "ui/map/map_scene.h"

#include <QList>
#include <QString>

namespace warmbench::ui {

/// Something that can be found by typing a part of its words.
struct FindEntry {
    QString words;
    Selection target;
};

/// Every batch by its code and by each name of its taxon and target, and every zone.
[[nodiscard]] QList<FindEntry> findEntries(const HouseBook& book);

} // namespace warmbench::ui
