#include "ui/form/table.h"

#include <QEvent>
#include <QHeaderView>

namespace warmbench::ui {
namespace {

/// The last column has what is left, unless its head needs more: then the table scrolls.
void fitLast(QTreeWidget& table) {
    const int last = table.columnCount() - 1;
    QHeaderView& header = *table.header();
    const int needed = header.sectionSizeHint(last);
    const bool fits = last < 0 || header.sectionPosition(last) + needed <= table.viewport()->width();
    header.setStretchLastSection(fits);
    if (!fits) header.resizeSection(last, needed);
}

/// Fits the last column whenever the table gets another width.
class LastColumnFitter : public QObject {
public:
    explicit LastColumnFitter(QTreeWidget& table) : QObject(&table), m_table(table) {
        table.viewport()->installEventFilter(this);
    }

protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::Resize) fitLast(m_table);
        return false;
    }

private:
    QTreeWidget& m_table;
};

} // namespace

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
    new LastColumnFitter(*table);
    return table;
}

void fitColumns(QTreeWidget& table) {
    const int last = table.columnCount() - 1;
    for (int column = 0; column < last; ++column) table.resizeColumnToContents(column);
    fitLast(table);
}

} // namespace warmbench::ui
