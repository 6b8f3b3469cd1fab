#include "ui/form/changes.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QDateEdit>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QSpinBox>

namespace warmbench::ui {

void onChange(QWidget& form, QObject& watch, const std::function<void()>& changed) {
    const auto then = [changed] { changed(); };
    for (QWidget* field : form.findChildren<QWidget*>()) {
        if (auto* line = qobject_cast<QLineEdit*>(field))
            QObject::connect(line, &QLineEdit::textChanged, &watch, then);
        if (auto* count = qobject_cast<QSpinBox*>(field))
            QObject::connect(count, &QSpinBox::valueChanged, &watch, then);
        if (auto* number = qobject_cast<QDoubleSpinBox*>(field))
            QObject::connect(number, &QDoubleSpinBox::valueChanged, &watch, then);
        if (auto* day = qobject_cast<QDateEdit*>(field))
            QObject::connect(day, &QDateEdit::dateChanged, &watch, then);
        if (auto* choice = qobject_cast<QComboBox*>(field))
            QObject::connect(choice, &QComboBox::currentIndexChanged, &watch, then);
        if (auto* lines = qobject_cast<QPlainTextEdit*>(field))
            QObject::connect(lines, &QPlainTextEdit::textChanged, &watch, then);
        if (auto* button = qobject_cast<QAbstractButton*>(field);
            button && !qobject_cast<QDialogButtonBox*>(button->parentWidget()))
            QObject::connect(button, &QAbstractButton::clicked, &watch, then);
    }
}

} // namespace warmbench::ui
