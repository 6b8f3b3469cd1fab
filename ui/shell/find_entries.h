#pragma once

#include "core/book/house_book.h"
#include "ui/map/map_scene.h"

#include <QList>
#include <QString>

namespace warmbench::ui {

/// Something that was found by typing a part of its words.
struct FindEntry {
    QString words;
    Selection target;
};

/// What holds each of the words typed, at most `most`: zones, batches by their code and by each name of their
/// taxon and target, and, where a zone is named with two numbers, the slot in that row and column, with what
/// stands on it on a day. Upper and lower case, and `x` and `×`, are one. Empty where nothing is typed.
[[nodiscard]] QList<FindEntry> findEntries(const HouseBook& book, Day day, const QString& typed,
                                           qsizetype most = 200);

} // namespace warmbench::ui
