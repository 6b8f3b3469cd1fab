#pragma once

#include <QDate>
#include <QLocale>
#include <QString>

namespace warmbench::ui {

/// `4 Feb`, `Feb 4` or `4. Feb`, in the order of the locale; `withYear` adds the year.
[[nodiscard]] QString dayAndMonth(const QDate& day, const QLocale& locale, bool withYear = false);

/// A text of the trade's own part of the program, with its days (`2027-03-02`) written as the locale does.
[[nodiscard]] QString withLocalDates(const QString& words, const QLocale& locale = QLocale());

} // namespace warmbench::ui
