#pragma once

#include <QLocale>
#include <QString>

namespace warmbench::ui {

/// A text of the trade's own part of the program, with its days (`2027-03-02`) written as the locale does.
[[nodiscard]] QString withLocalDates(const QString& words, const QLocale& locale = QLocale());

} // namespace warmbench::ui
