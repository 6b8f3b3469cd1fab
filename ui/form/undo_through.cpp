#include "ui/form/undo_through.h"

#include <QAbstractSpinBox>
#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>

namespace warmbench::ui {
namespace {

/// The line that takes what is typed into a field; null for what is no field of one line.
const QLineEdit* lineOf(const QObject& field) {
    if (const auto* line = qobject_cast<const QLineEdit*>(&field)) return line;
    const auto* box = qobject_cast<const QAbstractSpinBox*>(&field);
    return box ? box->findChild<QLineEdit*>() : nullptr;
}

} // namespace

UndoThrough::UndoThrough(QWidget& window) : QObject(&window), m_window(window) {
    qApp->installEventFilter(this);
}

bool UndoThrough::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::ShortcutOverride) return false;
    const auto* widget = qobject_cast<const QWidget*>(watched);
    if (!widget || widget->window() != &m_window) return false;
    const QLineEdit* line = lineOf(*widget);
    if (!line) return false;
    const auto* key = static_cast<const QKeyEvent*>(event);
    const bool nothing = (key->matches(QKeySequence::Undo) && !line->isUndoAvailable()) ||
                         (key->matches(QKeySequence::Redo) && !line->isRedoAvailable());
    if (nothing) event->ignore();
    return nothing;
}

} // namespace warmbench::ui
