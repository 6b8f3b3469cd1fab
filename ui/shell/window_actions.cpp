#include "core/book/query.h"
#include "ui/form/labels.h"
#include "ui/shell/day_bar.h"
#include "ui/shell/find_box.h"
#include "ui/shell/house_page.h"
#include "ui/shell/main_window.h"
#include "ui/shell/place_row.h"
#include "ui/words/phrase_words.h"

#include <QAction>
#include <QActionGroup>
#include <QMenu>

/// What each entry of the menus does, and when it can be had.
namespace warmbench::ui {

void MainWindow::connectMenus() {
    DayLine& line = m_dayBar->line();
    connect(m_menus.create, &QAction::triggered, this, &MainWindow::chooseFileToCreate);
    connect(m_menus.open, &QAction::triggered, this, &MainWindow::chooseFileToOpen);
    connect(m_menus.openShared, &QAction::triggered, this, &MainWindow::askForSharedBook);
    connect(m_menus.backups, &QAction::triggered, this, &MainWindow::chooseBackups);
    connect(m_menus.takeCopy, &QAction::triggered, this, &MainWindow::askWhereToTakeCopy);
    connect(m_menus.bringHome, &QAction::triggered, this, &MainWindow::askForCopy);
    connect(m_menus.saveMap, &QAction::triggered, this, &MainWindow::chooseFileForMap);
    connect(m_menus.print, &QAction::triggered, this, &MainWindow::printOnPaper);
    connect(m_menus.quit, &QAction::triggered, this, &QWidget::close);
    connect(m_menus.undo, &QAction::triggered, this, [this] {
        const QString words = told(m_session->undoWords().toStdString(), m_wording);
        tell(m_session->undo(), tr("Taken back: %1").arg(words));
    });
    connect(m_menus.redo, &QAction::triggered, this, [this] {
        const QString words = told(m_session->redoWords().toStdString(), m_wording);
        tell(m_session->redo(), tr("Done again: %1").arg(words));
    });
    connect(m_menus.now, &QAction::triggered, this, &MainWindow::showNow);
    FindBox& find = m_placeRow->find();
    connect(m_menus.find, &QAction::triggered, &find, [&find] {
        find.setFocus();
        find.selectAll();
    });
    find.setSource([this](const QString& typed) {
        return m_session ? findEntries(shown(), day(), typed) : QList<FindEntry>();
    });
    connect(&find, &FindBox::found, this, &MainWindow::showOnMap);
    connect(m_placeRow, &PlaceRow::placeChosen, this, &MainWindow::showPlace);
    connect(m_menus.systemTheme, &QAction::triggered, this, [this] { setTheme(Theme::System); });
    connect(m_menus.lightTheme, &QAction::triggered, this, [this] { setTheme(Theme::Light); });
    connect(m_menus.darkTheme, &QAction::triggered, this, [this] { setTheme(Theme::Dark); });
    connect(m_menus.languages, &QActionGroup::triggered, this,
            [this](const QAction* action) { setLanguage(action->data().toString()); });
    connect(m_menus.fahrenheit, &QAction::toggled, this, &MainWindow::setFahrenheit);
    connect(m_menus.zoomIn, &QAction::triggered, &m_house->map(), &BenchMap::zoomIn);
    connect(m_menus.zoomOut, &QAction::triggered, &m_house->map(), &BenchMap::zoomOut);
    connect(m_menus.fit, &QAction::triggered, &m_house->map(), &BenchMap::fit);
    connect(m_menus.dayBack, &QAction::triggered, &line, [&line] { line.setDay(line.day() - 1); });
    connect(m_menus.dayOn, &QAction::triggered, &line, [&line] { line.setDay(line.day() + 1); });
    connect(m_menus.today, &QAction::triggered, &line, [&line] { line.setDay(line.today()); });
    connect(m_menus.play, &QAction::triggered, &line, [&line] { line.play(!line.isPlaying()); });
    connect(m_menus.showBatch, &QAction::triggered, this, [this] { showOnMap(m_selection); });
    connectBatchMenu();
    connect(m_menus.planDays, &QAction::triggered, this, &MainWindow::planDays);
    connect(m_menus.keys, &QAction::triggered, this, &MainWindow::showKeys);
    connect(m_menus.about, &QAction::triggered, this, &MainWindow::showAbout);
}

void MainWindow::updateActions() {
    const bool open = m_session != nullptr;
    const Batch* batch = selectedBatch();
    const bool planned = batch && !m_past && !m_proposed && batch->state == BatchState::Planned;
    for (QAction* action : {m_menus.saveMap, m_menus.find, m_menus.zoomIn, m_menus.zoomOut, m_menus.fit,
                            m_menus.dayBack, m_menus.dayOn, m_menus.today, m_menus.play})
        action->setEnabled(open);
    m_menus.places->setEnabled(open);
    m_menus.backups->setEnabled(m_opener.backups() != nullptr);
    for (QAction* action : {m_menus.takeCopy, m_menus.bringHome})
        action->setEnabled(open && !m_past && m_session->copies());
    m_backupTrouble->tell(open ? m_session->backupTrouble() : QString());
    for (QAction* action : {m_menus.print, m_menus.planDays}) action->setEnabled(open && !m_past);
    m_menus.now->setEnabled(m_past.has_value());
    m_menus.languages->setEnabled(m_plan.isNull()); // a plan that is being looked at would be lost
    m_menus.showBatch->setEnabled(batch);
    for (QAction* action : {m_menus.move, m_menus.split})
        action->setEnabled(batch && !m_past && batch->state != BatchState::Ended);
    const bool struck = batch && !m_past && !m_proposed && batch->state == BatchState::Struck;
    for (QAction* action : {m_menus.check, m_menus.wean, m_menus.potOn}) action->setEnabled(struck);
    m_menus.labels->setEnabled(batch && !m_past && batch->state != BatchState::Ended);
    m_menus.strike->setEnabled(planned);
    m_menus.removeBatch->setEnabled(planned);
    const QString undo = open && !m_past && !m_proposed ? m_session->undoWords() : QString();
    const QString redo = open && !m_past && !m_proposed ? m_session->redoWords() : QString();
    m_menus.undo->setEnabled(!undo.isEmpty());
    m_menus.redo->setEnabled(!redo.isEmpty());
    m_menus.undo->setText(undo.isEmpty() ? tr("&Undo")
                                         : tr("&Undo: %1").arg(told(undo.toStdString(), m_wording)));
    m_menus.redo->setText(redo.isEmpty() ? tr("&Redo")
                                         : tr("&Redo: %1").arg(told(redo.toStdString(), m_wording)));
}

} // namespace warmbench::ui
