#include "ui/draft/draft_bar.h"
#include "ui/shell/main_window.h"

#include <QAction>

/// What was typed and is not in the book yet.
namespace warmbench::ui {

void MainWindow::openDrafts() {
    m_drafts = m_session ? std::make_unique<Drafts>(m_session->draftFile()) : nullptr;
    for (Place* place : m_listed) place->setDrafts(m_drafts.get());
    m_draftBar->setDrafts(m_drafts.get());
}

void MainWindow::goOnWith(const Draft& left) {
    const Draft draft = left; // what is told of changes with the drafts
    m_drafts->flush();        // so that no form tells later what it holds now
    for (Place* place : m_listed) {
        if (place->name() != draft.place) continue;
        showNow();
        if (const auto about = Day::fromIso(draft.day.toStdString())) setDay(*about);
        m_drafts->take(draft);
        findChild<QAction*>(place->name())->trigger();
        if (place->resume(draft)) continue;
        m_drafts->giveBack(draft);
        m_drafts->setGone(draft);
    }
}

} // namespace warmbench::ui
