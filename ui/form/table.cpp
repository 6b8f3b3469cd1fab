#include "ui/form/table.h"

#include <QHeaderView>

namespace warmbench::ui {

QTreeWidget* makeTable(const QString& name, const QString& spoken, const QStringList& columns,
                       QWidget* parent) {
    auto* table = new QTreeWidget(parent);
    table->setObjectName(name);
    table->setAccessibleName(spoken);
    table->setHeaderLabels(columns);
    table->setRootIsDecorated(false);
    table->setUniformRowHeights(true);
    table->setAllColumnsShowFocus(true);
    table->header()->setStretchLastSection(true);
    return table;
}

void fitColumns(QTreeWidget& table) {
    const int last = table.columnCount() - 1;
    for (int column = 0; column < last; ++column) table.resizeColumnToContents(column);
    // The last one has what is left, unless its head needs more: then the table scrolls.
    QHeaderView& header = *table.header();
    const int needed = header.sectionSizeHint(last);
    const bool fits = last < 0 || header.sectionPosition(last) + needed <= table.viewport()->width();
    header.setStretchLastSection(fits);
    if (!fits) header.resizeSection(last, needed);
}

} // namespace warmbench::ui
