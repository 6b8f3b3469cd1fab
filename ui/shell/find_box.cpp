#include "ui/shell/find_box.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QEvent>
#include <QStandardItemModel>

#include <algorithm>

namespace warmbench::ui {

FindBox::FindBox(QWidget* parent) : QLineEdit(parent), m_words(new QStandardItemModel(this)) {
    setObjectName(QStringLiteral("find"));
    setPlaceholderText(tr("Find a taxon, batch, target or slot"));
    setAccessibleName(tr("Find a taxon, batch, target or slot"));
    setToolTip(tr("A part of any name, code or target, or a zone with a row and a column: A 2 5"));
    setClearButtonEnabled(true);
    setMinimumWidth(140);
    auto* under = new QCompleter(m_words, this);
    under->setCompletionMode(QCompleter::UnfilteredPopupCompletion);
    under->setMaxVisibleItems(12);
    under->popup()->setMinimumWidth(420);
    setCompleter(under);
    under->popup()->installEventFilter(this);
    connect(this, &QLineEdit::textEdited, this, &FindBox::search);
    // Not with this field as the receiver: QLineEdit parts from its completer whenever it loses the focus.
    connect(under, qOverload<const QString&>(&QCompleter::activated), under,
            [this](const QString& words) { goTo(words); });
    connect(this, &QLineEdit::returnPressed, this, [this] {
        if (!goTo(text()) && !m_entries.empty()) goTo(m_entries.front().words);
    });
}

bool FindBox::goTo(const QString& words) {
    const auto chosen = std::find_if(m_entries.begin(), m_entries.end(),
                                     [&](const FindEntry& one) { return one.words == words; });
    if (chosen == m_entries.end()) return false;
    completer()->popup()->hide();
    Q_EMIT found(chosen->target);
    return true;
}

QSize FindBox::sizeHint() const {
    return {std::max(260, fontMetrics().horizontalAdvance(placeholderText()) + 56),
            QLineEdit::sizeHint().height()};
}

/// The list is wider than the field, and stands inside the window, by its edge where it must.
bool FindBox::eventFilter(QObject* watched, QEvent* event) {
    QWidget* list = completer()->popup();
    const bool placed =
        event->type() == QEvent::Show || event->type() == QEvent::Move || event->type() == QEvent::Resize;
    if (watched == list && placed) {
        const QRect room(window()->mapToGlobal(QPoint(0, 0)), window()->size());
        const QPoint under = mapToGlobal(QPoint(isRightToLeft() ? width() - list->width() : 0, height()));
        const int x = std::max(room.left(), std::min(under.x(), room.right() + 1 - list->width()));
        if (list->x() != x) list->move(x, list->y());
    }
    return QLineEdit::eventFilter(watched, event);
}

void FindBox::search(const QString& typed) {
    m_entries = m_source ? m_source(typed) : QList<FindEntry>();
    m_words->clear();
    for (const FindEntry& entry : m_entries) m_words->appendRow(new QStandardItem(entry.words));
    const bool none = m_entries.empty() && !typed.trimmed().isEmpty();
    const QString words = none ? tr("Nothing in this book is called “%1”.").arg(typed.trimmed()) : QString();
    if (none) {
        auto* line = new QStandardItem(words);
        line->setFlags(Qt::NoItemFlags); // there to be read, not to be gone to
        m_words->appendRow(line);
    }
    setAccessibleDescription(words);
}

} // namespace warmbench::ui
