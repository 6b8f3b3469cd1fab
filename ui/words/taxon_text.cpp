#include "ui/words/taxon_text.h"

#include <QStringList>

namespace warmbench::ui {
namespace {

bool isUpright(const QString& word) {
    static const QStringList upright{QStringLiteral("×"),    QStringLiteral("x"),  QStringLiteral("subsp."),
                                     QStringLiteral("var."), QStringLiteral("f."), QStringLiteral("cv."),
                                     QStringLiteral("Group")};
    return upright.contains(word);
}

} // namespace

QList<TaxonRun> taxonRuns(std::string_view name) {
    QList<TaxonRun> runs;
    const auto add = [&](const QString& word, bool italic) {
        if (!runs.isEmpty()) {
            runs.back().text += u' ';
            if (runs.back().italic == italic) {
                runs.back().text += word;
                return;
            }
        }
        runs.append({word, italic});
    };
    bool inCultivar = false;
    const QString whole = QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
    for (QString word : whole.split(u' ', Qt::SkipEmptyParts)) {
        const bool opens = word.startsWith(u'\'');
        const bool closes = word.endsWith(u'\'') && word.size() > 1;
        inCultivar = inCultivar || opens;
        const bool upright = inCultivar || isUpright(word);
        if (opens) word.replace(0, 1, QChar(0x2018));
        if (closes && inCultivar) word.replace(word.size() - 1, 1, QChar(0x2019));
        if (closes) inCultivar = false;
        add(word, !upright);
    }
    return runs;
}

QString taxonHtml(std::string_view name) {
    QString html;
    for (const TaxonRun& run : taxonRuns(name)) {
        const QString text = run.text.toHtmlEscaped();
        html += run.italic ? QStringLiteral("<i>") + text + QStringLiteral("</i>") : text;
    }
    return html;
}

} // namespace warmbench::ui
