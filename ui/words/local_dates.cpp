#include "ui/words/local_dates.h"

#include <QDate>
#include <QRegularExpression>

namespace warmbench::ui {

QString dayAndMonth(const QDate& day, const QLocale& locale, bool withYear) {
    const QString shortest = locale.dateFormat(QLocale::ShortFormat);
    // Without the full stop of a shortened month, which would end sentences in the middle.
    QString month = locale.monthName(day.month(), QLocale::ShortFormat);
    if (month.endsWith(u'.')) month.chop(1);
    QString dayOfMonth = locale.toString(day.day());
    const QString year = withYear ? QString::number(day.year()) : QString();
    if (shortest.indexOf(u'M') < shortest.indexOf(u'd'))
        return month + u' ' + dayOfMonth + (withYear ? QStringLiteral(", ") + year : QString());
    if (locale.dateFormat(QLocale::LongFormat).contains(QLatin1String("d. "))) dayOfMonth += u'.';
    return dayOfMonth + u' ' + month + (withYear ? u' ' + year : QString());
}

QString withLocalDates(const QString& words, const QLocale& locale) {
    static const QRegularExpression iso(QStringLiteral("(?<![\\d-])\\d{4}-\\d{2}-\\d{2}(?![\\d-])"));
    QString local;
    qsizetype told = 0;
    for (auto found = iso.globalMatch(words); found.hasNext();) {
        const QRegularExpressionMatch match = found.next();
        const QDate day = QDate::fromString(match.captured(), Qt::ISODate);
        if (!day.isValid()) continue;
        local += words.mid(told, match.capturedStart() - told) + dayAndMonth(day, locale, true);
        told = match.capturedEnd();
    }
    return local + words.mid(told);
}

} // namespace warmbench::ui
