#include "ui/form/fields.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QSpinBox>

namespace warmbench::ui {
namespace {

template <class Field>
Field* placed(QFormLayout& form, const char* name, const QString& label, Field* field) {
    field->setObjectName(QString::fromLatin1(name));
    field->setAccessibleName(QString(label).remove(u'&'));
    form.addRow(label, field);
    return field;
}

} // namespace

QLineEdit* addText(QFormLayout& form, const char* name, const QString& label, const std::string& value) {
    return placed(form, name, label, new QLineEdit(text(value)));
}

QSpinBox* addCount(QFormLayout& form, const char* name, const QString& label, int value, int low, int high,
                   const QString& unit) {
    auto* field = new QSpinBox;
    field->setRange(low, high);
    field->setValue(value);
    if (!unit.isEmpty()) field->setSuffix(QChar(0x00A0) + unit);
    return placed(form, name, label, field);
}

QDoubleSpinBox* addNumber(QFormLayout& form, const char* name, const QString& label, double value, double low,
                          double high, int decimals, const QString& unit) {
    auto* field = new QDoubleSpinBox;
    field->setDecimals(decimals);
    field->setRange(low, high);
    field->setValue(value);
    if (!unit.isEmpty()) field->setSuffix(QChar(0x00A0) + unit);
    return placed(form, name, label, field);
}

QComboBox* addChoice(QFormLayout& form, const char* name, const QString& label, const QStringList& words,
                     int current) {
    auto* field = new QComboBox;
    field->addItems(words);
    field->setCurrentIndex(current);
    return placed(form, name, label, field);
}

QCheckBox* addTick(QFormLayout& form, const char* name, const QString& label, bool on) {
    auto* field = new QCheckBox(label);
    field->setObjectName(QString::fromLatin1(name));
    field->setChecked(on);
    form.addRow(QString(), field);
    return field;
}

QDateEdit* addDay(QFormLayout& form, const char* name, const QString& label, Day day) {
    auto* field = new QDateEdit(qDate(day));
    field->setCalendarPopup(true);
    return placed(form, name, label, field);
}

std::string said(const QLineEdit& field) {
    return field.text().trimmed().toStdString();
}

} // namespace warmbench::ui
