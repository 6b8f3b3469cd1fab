#pragma once

#include "ui/words/wording.h"

#include <QStringList>

class QCheckBox;
class QComboBox;
class QDateEdit;
class QDoubleSpinBox;
class QFormLayout;
class QLineEdit;
class QSpinBox;

/// Adds a labelled field to a form, filled in; the label is its accessible name and `name` its object's.
namespace warmbench::ui {

QLineEdit* addText(QFormLayout& form, const char* name, const QString& label, const std::string& value);
QSpinBox* addCount(QFormLayout& form, const char* name, const QString& label, int value, int low, int high,
                   const QString& unit = {});
QDoubleSpinBox* addNumber(QFormLayout& form, const char* name, const QString& label, double value, double low,
                          double high, int decimals, const QString& unit = {});
QComboBox* addChoice(QFormLayout& form, const char* name, const QString& label, const QStringList& words,
                     int current);
QCheckBox* addTick(QFormLayout& form, const char* name, const QString& label, bool on);
QDateEdit* addDay(QFormLayout& form, const char* name, const QString& label, Day day);

/// What a text field says, without blanks round it, as UTF-8.
[[nodiscard]] std::string said(const QLineEdit& field);

} // namespace warmbench::ui
