#include "ui/shell/find_box.h"

#include "ui/shell/find_entries.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QHash>

namespace warmbench::ui {

FindBox::FindBox(QWidget* parent) : QLineEdit(parent) {
    setObjectName(QStringLiteral("find"));
    setPlaceholderText(tr("Find a taxon, batch, target or zone"));
    setAccessibleName(tr("Find a taxon, batch, target or zone"));
    setClearButtonEnabled(true);
    setMinimumWidth(140);
}

QSize FindBox::sizeHint() const {
    return {std::max(260, fontMetrics().horizontalAdvance(placeholderText()) + 56),
            QLineEdit::sizeHint().height()};
}

void FindBox::offer(const HouseBook& book) {
    QStringList words;
    QHash<QString, Selection> targets;
    for (const FindEntry& entry : findEntries(book)) {
        words += entry.words;
        targets.insert(entry.words, entry.target);
    }
    auto* found = new QCompleter(words, this);
    found->setCaseSensitivity(Qt::CaseInsensitive);
    found->setFilterMode(Qt::MatchContains);
    found->setMaxVisibleItems(12);
    found->popup()->setMinimumWidth(420);
    delete completer();
    setCompleter(found);
    connect(found, qOverload<const QString&>(&QCompleter::activated), this,
            [this, targets](const QString& entry) { Q_EMIT this->found(targets.value(entry)); });
}

} // namespace warmbench::ui
