#include "ui/wants/table_place.h"

#include "ui/form/labels.h"
#include "ui/form/table.h"
#include "ui/wants/list_dialog.h"

#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <set>

namespace warmbench::ui {
namespace {

const QString listKey = QStringLiteral("list"); ///< of the draft of a list; those of things are numbers

} // namespace

void setNumber(QTreeWidgetItem& item, int column, const QString& words) {
    item.setText(column, words);
    item.setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
}

TablePlace::TablePlace(const QString& name, const QString& title, const QStringList& columns, QWidget* parent)
    : Place(name, title, parent), m_words(new QLabel(this)),
      m_table(makeTable(name + QStringLiteral("Table"), title, columns, this)),
      m_new(new QPushButton(tr("&New…"), this)), m_change(new QPushButton(tr("&Change…"), this)),
      m_remove(new QPushButton(tr("&Remove"), this)), m_buttons(new QHBoxLayout),
      m_column(new QVBoxLayout(this)), m_refusal(new TroubleLabel(name + QStringLiteral("Refusal"), this)) {
    m_new->setObjectName(name + QStringLiteral("New"));
    m_new->setProperty("primary", true);
    m_change->setObjectName(name + QStringLiteral("Change"));
    m_remove->setObjectName(name + QStringLiteral("Remove"));
    m_words->setObjectName(name + QStringLiteral("Words"));
    m_words->setWordWrap(true);
    wrapLastColumn(*m_table);
    setFocusProxy(m_table);
    for (QPushButton* button : {m_new, m_change, m_remove}) m_buttons->addWidget(button);
    m_buttons->addStretch(1);
    m_column->setContentsMargins(20, 16, 20, 12);
    m_column->setSpacing(10);
    m_column->addWidget(m_words);
    m_column->addWidget(m_table, 1);
    m_column->addWidget(m_refusal);
    m_column->addLayout(m_buttons);
    connect(m_new, &QPushButton::clicked, this, [this] { putIn(); });
    connect(m_change, &QPushButton::clicked, this, &TablePlace::changeCurrent);
    connect(m_remove, &QPushButton::clicked, this, &TablePlace::removeCurrent);
    connect(m_table, &QTreeWidget::itemActivated, this, &TablePlace::changeCurrent);
    connect(m_table, &QTreeWidget::currentItemChanged, this, &TablePlace::enableButtons);
    auto* removal = new QShortcut(QKeySequence::Delete, m_table);
    removal->setContext(Qt::WidgetShortcut);
    connect(removal, &QShortcut::activated, this, &TablePlace::removeCurrent);
}

void TablePlace::addUnderTable(QWidget* widget) {
    m_column->insertWidget(m_column->indexOf(m_refusal), widget);
}

std::int64_t TablePlace::chosen() const {
    const QTreeWidgetItem* item = m_table->currentItem();
    return item ? item->data(0, idNumber).toLongLong() : 0;
}

void TablePlace::addListButton(season::ListKind kind) {
    m_listKind = kind;
    connect(addButton(name() + QStringLiteral("List"), tr("Put in a &list…")), &QPushButton::clicked, this,
            &TablePlace::askForList);
}

void TablePlace::askForList() {
    ListDialog dialog(
        book(), recipes(), m_listKind, wording(), [this](const Command& command) { return perform(command); },
        this);
    dialog.ask(drafts(), {name(), listKey, tr("a pasted list"), {}, {}});
}

QJsonObject TablePlace::typedFor(std::int64_t number) const {
    const Draft* draft = drafts() ? drafts()->find(name(), QString::number(number)) : nullptr;
    return draft ? draft->fields : QJsonObject();
}

void TablePlace::ask(DraftDialog& dialog, std::int64_t number, const QString& words) {
    std::set<std::int64_t> before;
    for (int row = 0; row < m_table->topLevelItemCount(); ++row)
        before.insert(m_table->topLevelItem(row)->data(0, idNumber).toLongLong());
    dialog.ask(drafts(), {name(), QString::number(number), words, {}, {}});
    // What is new is the one to look at.
    for (int row = 0; row < m_table->topLevelItemCount(); ++row)
        if (!before.contains(m_table->topLevelItem(row)->data(0, idNumber).toLongLong()))
            return m_table->setCurrentItem(m_table->topLevelItem(row));
}

bool TablePlace::resume(const Draft& draft) {
    if (draft.key == listKey) {
        askForList();
        return true;
    }
    const std::int64_t number = draft.key.toLongLong();
    for (int row = 0; number != 0 && row < m_table->topLevelItemCount(); ++row)
        if (m_table->topLevelItem(row)->data(0, idNumber).toLongLong() == number) {
            change(number);
            return true;
        }
    // A thing that is gone meanwhile can only be a new one.
    Draft fresh = draft;
    fresh.key = QString::number(0);
    fresh.left = false;
    drafts()->drop(draft.place, draft.key);
    drafts()->keep(fresh);
    putIn();
    return true;
}

QPushButton* TablePlace::addButton(const QString& objectName, const QString& words) {
    auto* button = new QPushButton(words, this);
    button->setObjectName(objectName);
    m_buttons->insertWidget(m_buttons->count() - 1, button);
    return button;
}

void TablePlace::showBook(const BookView& view) {
    m_book = &view.book;
    m_recipes = &view.recipes;
    m_today = view.today;
    const QTreeWidgetItem* before = m_table->currentItem();
    const QVariant number = before ? before->data(0, idNumber) : QVariant();
    QWidget* held = window()->focusWidget();
    m_table->clear();
    fill(*m_table, view);
    for (int row = 0; row < m_table->topLevelItemCount(); ++row)
        if (m_table->topLevelItem(row)->data(0, idNumber) == number)
            m_table->setCurrentItem(m_table->topLevelItem(row));
    fitColumns(*m_table);
    m_words->setText(m_table->topLevelItemCount() == 0 ? hint() : summary());
    m_words->setVisible(!m_words->text().isEmpty());
    m_refusal->tell(Outcome());
    enableButtons();
    // The button that opened a dialog was out of use for a moment, which took the keyboard from it.
    if (held == m_change || held == m_remove) (held->isEnabled() ? held : m_table)->setFocus();
}

void TablePlace::enableButtons() {
    m_change->setEnabled(m_table->currentItem());
    m_remove->setEnabled(m_table->currentItem());
    if (m_book) showChosen(chosen());
}

void TablePlace::changeCurrent() {
    if (const QTreeWidgetItem* item = m_table->currentItem()) change(item->data(0, idNumber).toLongLong());
}

void TablePlace::removeCurrent() {
    if (const QTreeWidgetItem* item = m_table->currentItem())
        m_refusal->tell(perform(removal(item->data(0, idNumber).toLongLong())));
}

} // namespace warmbench::ui
