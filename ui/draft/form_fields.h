#pragma once

#include <QJsonObject>

class QWidget;

namespace warmbench::ui {

/// What stands in the fields of a form, by the names of their objects; fields without a name are left out.
[[nodiscard]] QJsonObject fieldsOf(const QWidget& form);

/// Puts it there again, as if it had been typed. Fields that are not there, or take no such thing, stay as
/// they are.
void fillFields(QWidget& form, const QJsonObject& fields);

/// Those that are not what they were before.
[[nodiscard]] QJsonObject changedFields(const QJsonObject& before, const QJsonObject& now);

/// These fields of a form as a person reads them, with their labels, a line each.
[[nodiscard]] QString toldFields(const QWidget& form, const QJsonObject& fields);

} // namespace warmbench::ui
