#include "ui/form/table.h"

#include <QEvent>
#include <QHeaderView>
#include <QStyledItemDelegate>

#include <algorithm>

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

/// A cell as high as its words are when they are wrapped in its column.
class WrappedCell : public QStyledItemDelegate {
public:
    explicit WrappedCell(QTreeWidget& table) : QStyledItemDelegate(&table), m_table(table) {
        connect(table.header(), &QHeaderView::sectionResized, this, [this](int section) {
            if (section == m_table.columnCount() - 1) Q_EMIT sizeHintChanged(QModelIndex());
        });
    }
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override {
        const QSize oneLine = QStyledItemDelegate::sizeHint(option, index);
        const int margin = m_table.style()->pixelMetric(QStyle::PM_FocusFrameHMargin, &option, &m_table) + 1;
        const int room = std::max(1, m_table.columnWidth(index.column()) - 2 * margin);
        const QFontMetrics metrics(option.font);
        const int height =
            metrics
                .boundingRect(QRect(0, 0, room, QWIDGETSIZE_MAX), Qt::TextWordWrap, index.data().toString())
                .height();
        return {oneLine.width(), oneLine.height() + std::max(0, height - metrics.height())};
    }

private:
    QTreeWidget& m_table;
};

} // namespace

void wrapLastColumn(QTreeWidget& table) {
    table.setUniformRowHeights(false);
    table.setWordWrap(true);
    table.setItemDelegateForColumn(table.columnCount() - 1, new WrappedCell(table));
}

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
    // A head stands over its numbers, not at the other side of the column.
    if (const QTreeWidgetItem* first = table.topLevelItem(0))
        for (int column = 0; column <= last; ++column)
            if (first->textAlignment(column) & Qt::AlignRight)
                table.headerItem()->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    for (int column = 0; column < last; ++column) table.resizeColumnToContents(column);
    fitLast(table);
}

} // namespace warmbench::ui
