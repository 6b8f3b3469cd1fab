#include "core/round/weaning.h"
#include "ui/paper/print_dialog.h"
#include "ui/round/round_place.h"
#include "ui/shell/house_page.h"
#include "ui/shell/main_window.h"

#include <QAction>
#include <QLineEdit>
#include <QMenu>
#include <QStatusBar>

/// What is done with the selected batch, from the menu of batches wherever that comes up.
namespace warmbench::ui {

void MainWindow::connectBatchMenu() {
    connect(m_menus.move, &QAction::triggered, this, [this] { moveSelected(false); });
    connect(m_menus.split, &QAction::triggered, this, [this] { moveSelected(true); });
    connect(m_menus.strike, &QAction::triggered, this, &MainWindow::strikeSelected);
    connect(m_menus.check, &QAction::triggered, this, &MainWindow::checkSelected);
    connect(m_menus.wean, &QAction::triggered, this, &MainWindow::weanSelected);
    connect(m_menus.potOn, &QAction::triggered, this, &MainWindow::potOnSelected);
    connect(m_menus.labels, &QAction::triggered, this, &MainWindow::printLabelsOfSelected);
    connect(m_menus.removeBatch, &QAction::triggered, this, [this] {
        if (const Batch* batch = selectedBatch()) performOnMap({RemoveBatch{batch->id}});
    });
}

void MainWindow::showBatchMenu(BatchId batch, QPoint global) {
    // The day stays as it is, and with it the list that was asked in.
    m_selection = batch;
    showStays();
    showFacts();
    updateActions();
    m_menus.batches->popup(global);
}

void MainWindow::moveSelected(bool inPart) {
    const auto* batch = std::get_if<BatchId>(&m_selection);
    if (!batch) return;
    showPlace(housePlace);
    m_house->takeUp(*batch);
    if (auto* containers = m_house->findChild<QLineEdit*>(QStringLiteral("placingContainers"));
        inPart && containers->isVisible()) {
        containers->setFocus();
        containers->selectAll();
    }
}

void MainWindow::strikeSelected() {
    if (const Batch* batch = selectedBatch()) performOnMap({StrikeBatch{batch->id, m_today}});
}

void MainWindow::weanSelected() {
    const Batch* batch = selectedBatch();
    if (!batch) return;
    const auto command = round::weanCommand(shown(), batch->id, m_today);
    if (!command)
        tell(command.refusal(), {});
    else
        performOnMap(*command);
}

void MainWindow::goToSelectedInRound(const std::function<bool(BatchId)>& go, const QString& notThere) {
    const Batch* batch = selectedBatch();
    if (!batch) return;
    const BatchId id = batch->id;
    const QString code = text(batch->code);
    findChild<QAction*>(m_round->name())->trigger();
    if (!go(id)) statusBar()->showMessage(notThere.arg(code));
}

void MainWindow::checkSelected() {
    goToSelectedInRound([this](BatchId batch) { return m_round->goToStop(batch); },
                        tr("No container of %1 is worth a look on this day."));
}

void MainWindow::potOnSelected() {
    goToSelectedInRound([this](BatchId batch) { return m_round->goToDue(batch, round::Task::PotOn); },
                        tr("%1 is not due to be potted on on this day."));
}

void MainWindow::printLabelsOfSelected() {
    const Batch* batch = selectedBatch();
    if (!batch) return;
    PrintDialog dialog(m_session->book(), m_forecasts.on(m_session->book(), day()), day(), m_wording, this);
    dialog.chooseLabelsOf(batch->id);
    dialog.exec();
}

} // namespace warmbench::ui
