#pragma once

#include <QTreeWidget>

namespace warmbench::ui {

/// A list with named columns and no tree; the last column takes the room that is left. `spoken` is its
/// accessible name.
QTreeWidget* makeTable(const QString& name, const QString& spoken, const QStringList& columns,
                       QWidget* parent);

/// Lets the last column say what it has in as many lines as that takes, instead of cutting it off.
void wrapLastColumn(QTreeWidget& table);

/// Makes all columns but the last as wide as what stands in them.
void fitColumns(QTreeWidget& table);

} // namespace warmbench::ui
