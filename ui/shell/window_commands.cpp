#include "core/book/query.h"
#include "ui/map/map_sheet.h"
#include "ui/paper/print_dialog.h"
#include "ui/plan/plan_dialog.h"
#include "ui/shell/house_page.h"
#include "ui/shell/main_window.h"
#include "ui/shell/shared_book_dialog.h"
#include "ui/words/phrase_words.h"

#include <QApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QMessageBox>
#include <QStackedWidget>
#include <QStatusBar>

/// What is done with a book, and with the files round it.
namespace warmbench::ui {

Outcome MainWindow::openBook(const QString& name) {
    return showOpened(m_opener.open(name), name);
}

Outcome MainWindow::createBook(const QString& name) {
    return showOpened(m_opener.create(name), name);
}

Outcome MainWindow::showOpened(Result<std::unique_ptr<BookSession>> opened, const QString& name) {
    if (!opened) {
        tellRefused(opened.refusal(), name);
        return opened.refusal();
    }
    setSession(std::move(*opened));
    return std::nullopt;
}

Outcome MainWindow::perform(const Command& command) {
    if (m_past)
        return Refusal{{}, tr("this is the house as it was; go back to now to change it").toStdString()};
    if (m_proposed)
        return Refusal{
            {}, tr("a plan is shown that is not accepted yet; accept it or close it first").toStdString()};
    const Phrase said = words(m_session->book(), command);
    Outcome outcome = m_session->perform(command);
    if (!outcome) statusBar()->showMessage(tr("Done: %1").arg(told(said, m_wording)));
    updateActions();
    return outcome;
}

void MainWindow::performOnMap(const Command& command) {
    m_house->tell(perform(command));
}

void MainWindow::tell(const Outcome& refusal, const QString& done) {
    m_house->tell(refusal);
    // Other places than the house have no line of their own for what was refused by a menu.
    statusBar()->showMessage(refusal ? told(*refusal, m_wording) : done);
    updateActions();
}

void MainWindow::planDays() {
    if (m_plan) {
        m_plan->raise();
        m_plan->activateWindow();
        return;
    }
    m_plan = new PlanDialog(
        m_session->book(), m_opener.recipes(), day(), m_wording,
        [this](const Command& command) { return acceptPlan(command); }, this);
    m_plan->setAttribute(Qt::WA_DeleteOnClose);
    connect(m_plan, &PlanDialog::chosenChanged, this, &MainWindow::showProposed);
    connect(m_plan, &QDialog::finished, this, [this] {
        m_plan = nullptr;
        showProposed(std::nullopt);
    });
    m_plan->show();
    updateActions();
}

Outcome MainWindow::acceptPlan(const Command& command) {
    auto proposed = std::exchange(m_proposed, std::nullopt);
    m_forecasts.forget(); // they are of what is proposed
    Outcome refusal = perform(command);
    if (refusal) {
        m_proposed = std::move(proposed);
        m_forecasts.forget();
        showBook();
        return refusal;
    }
    m_proposedWords->hide();
    m_house->tell({});
    return std::nullopt;
}

void MainWindow::printOnPaper() {
    PrintDialog dialog(m_session->book(), m_forecasts.on(m_session->book(), day()), day(), m_wording, this);
    if (const auto* place = qobject_cast<Place*>(m_places->currentWidget()))
        dialog.choosePaperOf(place->name());
    dialog.exec();
}

void MainWindow::chooseFileToCreate() {
    QString name = QFileDialog::getSaveFileName(this, tr("New house book"),
                                                QStringLiteral("nursery.warmbench"), m_opener.fileFilter());
    if (name.isEmpty()) return;
    if (QFileInfo(name).suffix().isEmpty()) name += QStringLiteral(".warmbench");
    (void)createBook(name);
}

void MainWindow::chooseFileToOpen() {
    const QString name =
        QFileDialog::getOpenFileName(this, tr("Open a house book"), {}, m_opener.fileFilter());
    if (!name.isEmpty()) (void)openBook(name);
}

void MainWindow::askForSharedBook() {
    SharedBookDialog dialog(this);
    if (dialog.exec() == QDialog::Accepted) (void)openBook(dialog.address());
}

void MainWindow::chooseFileForMap() {
    const QString name = QFileDialog::getSaveFileName(
        this, tr("Save the map as a picture"), QStringLiteral("map.pdf"), tr("Pictures (*.pdf *.png *.svg)"));
    if (name.isEmpty()) return;
    SheetOptions options;
    options.dark = m_palette->dark;
    tell(writeMapSheet(shown(), day(), name, options, m_wording), tr("Saved: %1").arg(name));
}

void MainWindow::showKeys() {
    QMessageBox::information(
        this, tr("Keys"),
        tr("<p><b>On the map</b><br>Arrows: the next zone or batch on that side<br>Enter: from a zone to its "
           "batches, "
           "Escape: back<br>M or Space: take up the chosen batch; then arrows aim, Tab: the next zone that "
           "suits, T: turn, Enter: put down, Escape: put back<br>+ and -: zoom, 0: show everything<br>Ctrl "
           "and arrows: move the map<br>Menu key or right button: all that can be done with a batch</p>"
           "<p><b>On the day line</b><br>Left and Right: a day<br>PgUp and PgDn: a week<br>Home: today, "
           "Space: play</p>"
           "<p><b>On the house in plan</b> (Nursery)<br>N and P: the next thing and the one "
           "before<br>Arrows: "
           "move it, Shift and arrows: its right and front edges<br>Enter: keep it so, Escape: leave it</p>"
           "<p><b>Anywhere</b><br>Ctrl F: find<br>Ctrl Z: undo<br>Alt and Left, Right: a day back, on<br>F8: "
           "back to now from an earlier step</p>"));
}

void MainWindow::showAbout() {
    QMessageBox::about(this, tr("About Warmbench"),
                       tr("<p><b>Warmbench %1</b></p><p>Plans the work of a propagation house.</p>")
                           .arg(QApplication::applicationVersion()));
}

} // namespace warmbench::ui
