#include "core/book/query.h"
#include "ui/draft/draft_watch.h"
#include "ui/round/check_card.h"
#include "ui/round/due_card.h"
#include "ui/round/round_place.h"

#include <QTreeWidget>

#include <algorithm>

/// The round's cards, with what was typed into them and is not written down yet.
namespace warmbench::ui {
namespace {

QString codeOf(const HouseBook& book, const round::Stop& stop) {
    return text(containerCode(book.get<Batch>(stop.batch).code, stop.container));
}

/// One batch can be due for two things.
QString keyOf(const HouseBook& book, const round::Due& due) {
    return (due.task == round::Task::Wean ? QStringLiteral("wean ") : QStringLiteral("pot on ")) +
           text(book.get<Batch>(due.batch).code);
}

QString onDay(const QString& key, Day day) {
    return key + u' ' + text(day.iso());
}

} // namespace

void RoundPlace::showCheckCard(const round::Stop& stop) {
    m_check->showStop(*m_book, stop, m_day, m_today, wording());
    const QString code = codeOf(*m_book, stop);
    m_checkWatch->begin(
        drafts(), {name(), onDay(code, m_day), tr("what was found in %1").arg(code), text(m_day.iso()), {}});
}

void RoundPlace::showDueCard(const round::Due& due) {
    m_dueCard->showDue(*m_book, due, m_day, wording());
    const QString code = text(m_book->get<Batch>(due.batch).code);
    m_dueWatch->begin(drafts(), {name(),
                                 onDay(keyOf(*m_book, due), m_day),
                                 tr("potting on or weaning of %1").arg(code),
                                 text(m_day.iso()),
                                 {}});
}

bool RoundPlace::resume(const Draft& draft) {
    const auto stop = std::find_if(m_stops.begin(), m_stops.end(), [&](const round::Stop& one) {
        return onDay(codeOf(*m_book, one), m_day) == draft.key;
    });
    if (stop != m_stops.end()) {
        goTo(static_cast<std::size_t>(stop - m_stops.begin()));
        m_check->begin();
        return true;
    }
    const auto due = std::find_if(m_due.begin(), m_due.end(), [&](const round::Due& one) {
        return onDay(keyOf(*m_book, one), m_day) == draft.key;
    });
    if (due == m_due.end()) return false;
    goToDueLine(static_cast<std::size_t>(due - m_due.begin()));
    return true;
}

void RoundPlace::goToDueLine(std::size_t line) {
    m_dueList->setCurrentItem(m_dueList->topLevelItem(static_cast<int>(line)));
    m_onDue = true;
    showCard();
    m_dueCard->begin();
}

bool RoundPlace::goToDue(BatchId batch, round::Task task) {
    const auto due = std::find_if(m_due.begin(), m_due.end(), [&](const round::Due& one) {
        return one.batch == batch && one.task == task;
    });
    if (due != m_due.end()) goToDueLine(static_cast<std::size_t>(due - m_due.begin()));
    return due != m_due.end();
}

bool RoundPlace::goToStop(BatchId batch) {
    const auto stop = std::find_if(m_stops.begin(), m_stops.end(),
                                   [&](const round::Stop& one) { return one.batch == batch; });
    if (stop == m_stops.end()) return false;
    goTo(static_cast<std::size_t>(stop - m_stops.begin()));
    m_check->begin();
    return true;
}

} // namespace warmbench::ui
