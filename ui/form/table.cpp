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
    for (int column = 0; column + 1 < table.columnCount(); ++column) table.resizeColumnToContents(column);
}

} // namespace warmbench::ui
