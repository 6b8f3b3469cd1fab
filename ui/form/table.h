#pragma once

#include <QTreeWidget>

namespace warmbench::ui {

/// A list with named columns and no tree; the last column takes the room that is left. `spoken` is its
/// accessible name.
QTreeWidget* makeTable(const QString& name, const QString& spoken, const QStringList& columns,
                       QWidget* parent);

/// Makes all columns but the last as wide as what stands in them.
void fitColumns(QTreeWidget& table);

} // namespace warmbench::ui
