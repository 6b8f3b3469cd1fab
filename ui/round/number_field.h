#pragma once

#include <QLineEdit>

#include <optional>

namespace warmbench::ui {

/// A field for one count, wide enough for five figures, that takes nothing but figures.
[[nodiscard]] QLineEdit* numberField(const QString& objectName, const QString& accessibleName, int highest,
                                     QWidget* parent);

/// The count in a field; nothing where it is empty.
[[nodiscard]] std::optional<int> countIn(const QLineEdit& field);

} // namespace warmbench::ui
