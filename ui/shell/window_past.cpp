#include "ui/journal/past_bar.h"
#include "ui/plan/plan_dialog.h"
#include "ui/shell/day_bar.h"
#include "ui/shell/house_page.h"
#include "ui/shell/main_window.h"

#include <QLabel>

#include <algorithm>

/// Seeing the book as it was after a step of its journal, or as a plan would make it.
namespace warmbench::ui {

Outcome MainWindow::showPast(const JournalStep& step) {
    if (!m_session) return std::nullopt;
    delete m_plan;
    showProposed(std::nullopt);
    auto journal = m_session->journal();
    auto book = m_session->bookAfter(step.number);
    Outcome refusal;
    if (!journal) refusal = journal.refusal();
    if (!book) refusal = book.refusal();
    m_house->tell(refusal);
    if (refusal) {
        showPlace(housePlace);
        return refusal;
    }
    const Day before = m_past ? m_past->dayNow : day();
    const auto same = [&](const JournalStep& one) { return one.number == step.number; };
    const auto found = std::find_if(journal->begin(), journal->end(), same);
    const auto index = static_cast<std::size_t>(found - journal->begin());
    const bool hasLater = index + 1 < journal->size();
    m_past = Past{std::move(*book), std::move(*journal), index, before};
    m_forecasts.forget();
    m_pastBar->show(step, m_wording.locale(), index > 0, hasLater);
    showBook();
    setDay(dayOf(step.at.toLocalTime().date()));
    showPlace(housePlace);
    return std::nullopt;
}

void MainWindow::stepPast(int steps) {
    if (!m_past) return;
    const auto last = static_cast<std::int64_t>(m_past->journal.size()) - 1;
    const auto wanted = std::clamp<std::int64_t>(static_cast<std::int64_t>(m_past->step) + steps, 0, last);
    const JournalStep step = m_past->journal[static_cast<std::size_t>(wanted)];
    (void)showPast(step);
}

void MainWindow::showNow() {
    if (!m_past) return;
    const Day before = m_past->dayNow;
    m_past.reset();
    m_forecasts.forget();
    m_pastBar->hide();
    showBook();
    setDay(before);
}

/// Lays what is ticked of a plan over the house, or nothing.
void MainWindow::showProposed(const std::optional<Command>& command) {
    if (!command && !m_proposed) return;
    m_proposed.reset();
    if (command) {
        HouseBook book = m_session->book();
        const auto change = book.perform(*command);
        m_house->tell(change ? Outcome() : Outcome(change.refusal()));
        if (change) m_proposed = std::move(book);
    }
    m_proposedWords->setVisible(m_proposed.has_value());
    m_forecasts.forget();
    showBook();
}

} // namespace warmbench::ui
