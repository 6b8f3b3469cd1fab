#include "ui/journal/journal_place.h"

#include "ui/form/labels.h"
#include "ui/journal/journal_list.h"

#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QTreeView>
#include <QVBoxLayout>

namespace warmbench::ui {

JournalPlace::JournalPlace(Reader read, QWidget* parent)
    : Place(QStringLiteral("journal"), tr("Journal"), parent), m_read(std::move(read)),
      m_list(new JournalList(this)), m_search(new JournalSearch(this)), m_find(new QLineEdit(this)),
      m_table(new QTreeView(this)), m_count(new QLabel(this)),
      m_goBack(new QPushButton(tr("&Show the house as it was then"), this)),
      m_refusal(new TroubleLabel(QStringLiteral("journalRefusal"), this)) {
    m_find->setObjectName(QStringLiteral("journalFind"));
    m_find->setPlaceholderText(tr("Find in the journal"));
    m_find->setAccessibleName(m_find->placeholderText());
    m_find->setClearButtonEnabled(true);
    m_find->setMaximumWidth(420);
    m_search->setSourceModel(m_list);
    m_table->setObjectName(QStringLiteral("journalTable"));
    m_table->setAccessibleName(tr("Who did what when"));
    m_table->setModel(m_search);
    m_table->setRootIsDecorated(false);
    m_table->setUniformRowHeights(true);
    m_table->setAllColumnsShowFocus(true);
    m_goBack->setObjectName(QStringLiteral("journalGoBack"));
    m_goBack->setProperty("primary", true);
    m_count->setObjectName(QStringLiteral("journalCount"));
    m_count->setProperty("rank", QStringLiteral("quiet"));
    setFocusProxy(m_table);

    auto* head = new QHBoxLayout;
    head->addWidget(m_find, 1);
    head->addWidget(m_count);
    head->addStretch(1);
    auto* foot = new QHBoxLayout;
    foot->addWidget(m_goBack);
    foot->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 16, 20, 12);
    column->setSpacing(10);
    column->addLayout(head);
    column->addWidget(m_table, 1);
    column->addWidget(m_refusal);
    column->addLayout(foot);

    connect(m_find, &QLineEdit::textChanged, this, [this](const QString& words) {
        m_search->find(words);
        enable();
    });
    connect(m_goBack, &QPushButton::clicked, this, &JournalPlace::goBack);
    connect(m_table, &QTreeView::activated, this, &JournalPlace::goBack);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this, &JournalPlace::enable);
}

void JournalPlace::showBook(const BookView&) {
    const QModelIndex before = m_search->mapToSource(m_table->currentIndex());
    const std::int64_t chosen = before.isValid() ? m_list->step(before.row()).number : -1;
    auto steps = m_read();
    m_refusal->tell(steps ? Outcome() : Outcome(steps.refusal()));
    m_list->show(steps ? std::move(*steps) : std::vector<JournalStep>(), wording().locale());
    for (int row = 0; row < m_search->rowCount(); ++row) {
        const QModelIndex index = m_search->index(row, 0);
        if (m_list->step(m_search->mapToSource(index).row()).number == chosen)
            m_table->setCurrentIndex(index);
    }
    for (const int column : {JournalList::When, JournalList::Who}) m_table->resizeColumnToContents(column);
    enable();
}

void JournalPlace::enable() {
    m_goBack->setEnabled(m_table->currentIndex().isValid());
    const int all = m_list->rowCount();
    const int found = m_search->rowCount();
    m_count->setText(found == all
                         ? tr("Steps: %1").arg(wording().number(all))
                         : tr("Found: %1 of %2").arg(wording().number(found), wording().number(all)));
}

void JournalPlace::goBack() {
    const QModelIndex index = m_search->mapToSource(m_table->currentIndex());
    if (!index.isValid()) return;
    const JournalStep step = m_list->step(index.row()); // the list may be filled anew meanwhile
    Q_EMIT pastWanted(step);
}

} // namespace warmbench::ui
