#include "ui/draft/form_fields.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPointer>
#include <QSpinBox>

namespace warmbench::ui {
namespace {

/// A part of another field, such as the line of a spin box.
bool isPart(const QWidget& field) {
    const QWidget* above = field.parentWidget();
    return qobject_cast<const QAbstractSpinBox*>(above) || qobject_cast<const QComboBox*>(above);
}

QJsonValue valueOf(const QWidget& field) {
    if (const auto* line = qobject_cast<const QLineEdit*>(&field)) return line->text();
    if (const auto* count = qobject_cast<const QSpinBox*>(&field)) return count->value();
    if (const auto* number = qobject_cast<const QDoubleSpinBox*>(&field)) return number->value();
    if (const auto* day = qobject_cast<const QDateEdit*>(&field)) return day->date().toString(Qt::ISODate);
    if (const auto* choice = qobject_cast<const QComboBox*>(&field)) return choice->currentIndex();
    if (const auto* tick = qobject_cast<const QCheckBox*>(&field)) return tick->isChecked();
    if (const auto* lines = qobject_cast<const QPlainTextEdit*>(&field)) return lines->toPlainText();
    return QJsonValue(QJsonValue::Undefined);
}

void put(QWidget& field, const QJsonValue& value) {
    if (auto* line = qobject_cast<QLineEdit*>(&field)) {
        line->setText(value.toString());
        Q_EMIT line->textEdited(line->text());
    }
    if (auto* count = qobject_cast<QSpinBox*>(&field)) count->setValue(value.toInt(count->value()));
    if (auto* number = qobject_cast<QDoubleSpinBox*>(&field))
        number->setValue(value.toDouble(number->value()));
    if (auto* day = qobject_cast<QDateEdit*>(&field))
        if (const QDate date = QDate::fromString(value.toString(), Qt::ISODate); date.isValid())
            day->setDate(date);
    if (auto* choice = qobject_cast<QComboBox*>(&field))
        if (const int index = value.toInt(-1); index >= 0 && index < choice->count())
            choice->setCurrentIndex(index);
    if (auto* tick = qobject_cast<QCheckBox*>(&field)) tick->setChecked(value.toBool(tick->isChecked()));
    if (auto* lines = qobject_cast<QPlainTextEdit*>(&field)) lines->setPlainText(value.toString());
}

/// The words that a person reads beside a field.
QString labelOf(const QWidget& field) {
    const auto* tick = qobject_cast<const QCheckBox*>(&field);
    return tick ? tick->text().remove(u'&') : field.accessibleName();
}

/// What stands in a field, as a person reads it.
QString wordsIn(const QWidget& field) {
    if (const auto* line = qobject_cast<const QLineEdit*>(&field)) return line->text();
    if (const auto* box = qobject_cast<const QAbstractSpinBox*>(&field)) return box->text();
    if (const auto* choice = qobject_cast<const QComboBox*>(&field)) return choice->currentText();
    if (const auto* tick = qobject_cast<const QCheckBox*>(&field))
        return tick->isChecked() ? QStringLiteral("✓") : QStringLiteral("–");
    if (const auto* lines = qobject_cast<const QPlainTextEdit*>(&field)) return lines->toPlainText();
    return {};
}

} // namespace

QJsonObject fieldsOf(const QWidget& form) {
    QJsonObject fields;
    for (const QWidget* field : form.findChildren<QWidget*>()) {
        if (field->objectName().isEmpty() || isPart(*field)) continue;
        if (const QJsonValue value = valueOf(*field); !value.isUndefined())
            fields[field->objectName()] = value;
    }
    return fields;
}

void fillFields(QWidget& form, const QJsonObject& fields) {
    // In the form's own order: what is typed later may depend on what was chosen before, and be there only
    // after it.
    for (int round = 0; round < 2; ++round) {
        QList<QPointer<QWidget>> there;
        for (QWidget* field : form.findChildren<QWidget*>()) there += field;
        for (const QPointer<QWidget>& field : there) {
            if (!field) continue;
            const auto found = fields.find(field->objectName());
            if (found != fields.end() && !isPart(*field) && valueOf(*field).type() == found->type() &&
                valueOf(*field) != *found)
                put(*field, *found);
        }
    }
}

QJsonObject changedFields(const QJsonObject& before, const QJsonObject& now) {
    QJsonObject changed;
    for (auto field = now.begin(); field != now.end(); ++field)
        if (before.value(field.key()) != field.value()) changed[field.key()] = field.value();
    return changed;
}

QString toldFields(const QWidget& form, const QJsonObject& fields) {
    QStringList lines;
    for (const QWidget* field : form.findChildren<QWidget*>()) {
        if (field->objectName().isEmpty() || isPart(*field) || !fields.contains(field->objectName()))
            continue;
        const QString label = labelOf(*field);
        const QString words = wordsIn(*field);
        lines += label.isEmpty() ? words : label + QStringLiteral(": ") + words;
    }
    return lines.join(u'\n');
}

} // namespace warmbench::ui
