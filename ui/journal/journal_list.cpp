#include "ui/journal/journal_list.h"

#include "ui/words/phrase_words.h"

#include <algorithm>

namespace warmbench::ui {

QString stepTime(const JournalStep& step, const QLocale& locale) {
    const QDateTime local = step.at.toLocalTime();
    return JournalList::tr("%1, %2").arg(locale.toString(local.date(), QStringLiteral("d MMM yyyy")),
                                         locale.toString(local.time(), QLocale::ShortFormat));
}

void JournalList::show(std::vector<JournalStep> steps, const QLocale& locale) {
    beginResetModel();
    m_steps = std::move(steps);
    m_locale = locale;
    endResetModel();
}

int JournalList::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_steps.size());
}

int JournalList::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : 3;
}

QVariant JournalList::data(const QModelIndex& index, int role) const {
    if (role != Qt::DisplayRole) return {};
    const JournalStep& one = step(index.row());
    switch (index.column()) {
    case When:
        return stepTime(one, m_locale);
    case Who:
        return one.who;
    default:
        return told(one.words.toStdString(), Wording(m_locale));
    }
}

QVariant JournalList::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    const QString heads[] = {tr("When"), tr("Who"), tr("What was done")};
    return heads[section];
}

void JournalSearch::find(const QString& words) {
    m_words = words.split(u' ', Qt::SkipEmptyParts);
    invalidateFilter();
}

bool JournalSearch::filterAcceptsRow(int row, const QModelIndex& parent) const {
    return std::all_of(m_words.begin(), m_words.end(), [&](const QString& word) {
        for (int column = 0; column < sourceModel()->columnCount(parent); ++column)
            if (sourceModel()
                    ->index(row, column, parent)
                    .data()
                    .toString()
                    .contains(word, Qt::CaseInsensitive))
                return true;
        return false;
    });
}

} // namespace warmbench::ui
