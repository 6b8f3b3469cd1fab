#include "ui/wants/table_place.h"

#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace warmbench::ui {

void setNumber(QTreeWidgetItem& item, int column, const QString& words) {
    item.setText(column, words);
    item.setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
}

TablePlace::TablePlace(const QString& name, const QString& title, const QStringList& columns, QWidget* parent)
    : Place(name, title, parent), m_words(new QLabel(this)), m_table(new QTreeWidget(this)),
      m_new(new QPushButton(tr("&New…"), this)), m_change(new QPushButton(tr("&Change…"), this)),
      m_remove(new QPushButton(tr("&Remove"), this)), m_refusal(new QLabel(this)) {
    m_table->setObjectName(name + QStringLiteral("Table"));
    m_table->setAccessibleName(title);
    m_table->setHeaderLabels(columns);
    m_table->setRootIsDecorated(false);
    m_table->setAllColumnsShowFocus(true);
    m_table->header()->setStretchLastSection(true);
    m_new->setObjectName(name + QStringLiteral("New"));
    m_new->setProperty("primary", true);
    m_change->setObjectName(name + QStringLiteral("Change"));
    m_remove->setObjectName(name + QStringLiteral("Remove"));
    m_words->setObjectName(name + QStringLiteral("Words"));
    m_words->setWordWrap(true);
    m_refusal->setProperty("rank", QStringLiteral("trouble"));
    m_refusal->setWordWrap(true);
    m_refusal->hide();
    setFocusProxy(m_table);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_new);
    buttons->addWidget(m_change);
    buttons->addWidget(m_remove);
    buttons->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 16, 20, 12);
    column->setSpacing(10);
    column->addWidget(m_words);
    column->addWidget(m_table, 1);
    column->addWidget(m_refusal);
    column->addLayout(buttons);
    connect(m_new, &QPushButton::clicked, this, [this] { putIn(); });
    connect(m_change, &QPushButton::clicked, this, &TablePlace::changeCurrent);
    connect(m_remove, &QPushButton::clicked, this, &TablePlace::removeCurrent);
    connect(m_table, &QTreeWidget::itemActivated, this, &TablePlace::changeCurrent);
    connect(m_table, &QTreeWidget::currentItemChanged, this, &TablePlace::enableButtons);
    auto* removal = new QShortcut(QKeySequence::Delete, m_table);
    removal->setContext(Qt::WidgetShortcut);
    connect(removal, &QShortcut::activated, this, &TablePlace::removeCurrent);
}

void TablePlace::showBook(const BookView& view) {
    m_book = &view.book;
    m_recipes = &view.recipes;
    m_today = view.today;
    const QTreeWidgetItem* before = m_table->currentItem();
    const QVariant number = before ? before->data(0, idNumber) : QVariant();
    m_table->clear();
    fill(*m_table, view);
    for (int row = 0; row < m_table->topLevelItemCount(); ++row)
        if (m_table->topLevelItem(row)->data(0, idNumber) == number)
            m_table->setCurrentItem(m_table->topLevelItem(row));
    for (int column = 0; column + 1 < m_table->columnCount(); ++column)
        m_table->resizeColumnToContents(column);
    m_words->setText(m_table->topLevelItemCount() == 0 ? hint() : summary());
    m_words->setVisible(!m_words->text().isEmpty());
    tell(std::nullopt);
    enableButtons();
}

void TablePlace::enableButtons() {
    m_change->setEnabled(m_table->currentItem());
    m_remove->setEnabled(m_table->currentItem());
}

void TablePlace::changeCurrent() {
    if (const QTreeWidgetItem* item = m_table->currentItem()) change(item->data(0, idNumber).toLongLong());
}

void TablePlace::removeCurrent() {
    if (const QTreeWidgetItem* item = m_table->currentItem())
        tell(perform(removal(item->data(0, idNumber).toLongLong())));
}

void TablePlace::tell(const Outcome& refusal) {
    m_refusal->setVisible(refusal.has_value());
    if (refusal) m_refusal->setText(text(refusal->text()));
}

} // namespace warmbench::ui
