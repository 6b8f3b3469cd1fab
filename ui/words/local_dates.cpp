#include "ui/words/local_dates.h"

#include <QDate>
#include <QRegularExpression>

namespace warmbench::ui {

QString withLocalDates(const QString& words, const QLocale& locale) {
    static const QRegularExpression iso(QStringLiteral("(?<![\\d-])\\d{4}-\\d{2}-\\d{2}(?![\\d-])"));
    const QString shortest = locale.dateFormat(QLocale::ShortFormat);
    const bool monthFirst = shortest.indexOf(u'M') < shortest.indexOf(u'd');
    const QString format = monthFirst ? QStringLiteral("MMM d, yyyy") : QStringLiteral("d MMM yyyy");
    QString local;
    qsizetype told = 0;
    for (auto found = iso.globalMatch(words); found.hasNext();) {
        const QRegularExpressionMatch match = found.next();
        const QDate day = QDate::fromString(match.captured(), Qt::ISODate);
        if (!day.isValid()) continue;
        local += words.mid(told, match.capturedStart() - told) + locale.toString(day, format);
        told = match.capturedEnd();
    }
    return local + words.mid(told);
}

} // namespace warmbench::ui
