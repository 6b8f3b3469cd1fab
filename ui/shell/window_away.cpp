#include "ui/away/homecoming_dialog.h"
#include "ui/shell/main_window.h"
#include "ui/words/phrase_words.h"

#include <QApplication>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QStatusBar>

/// A copy of the book that is taken along on a round, and what comes home with it.
namespace warmbench::ui {
namespace {

/// The waiting pointer, for as long as this lives.
class Waiting {
public:
    Waiting() { QApplication::setOverrideCursor(Qt::WaitCursor); }
    Waiting(const Waiting&) = delete;
    Waiting& operator=(const Waiting&) = delete;
    ~Waiting() { QApplication::restoreOverrideCursor(); }
};

} // namespace

void MainWindow::tellInBox(const char* name, const QString& words, const QString& more) {
    auto* box = new QMessageBox(QMessageBox::Information, tr("Warmbench"), words, QMessageBox::Ok, this);
    box->setObjectName(QLatin1String(name));
    box->setInformativeText(more);
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->open();
}

/// The file dialog's own question whether a file is to be replaced is not asked: none ever is.
void MainWindow::askWhereToTakeCopy() {
    QString name = QFileDialog::getSaveFileName(
        this, tr("Take a copy along on a round"), m_session->copies()->proposedName(m_today),
        m_opener.fileFilter(), nullptr, QFileDialog::DontConfirmOverwrite);
    if (name.isEmpty()) return;
    if (QFileInfo(name).suffix().isEmpty()) name += QStringLiteral(".warmbench");
    (void)takeCopy(name);
}

Outcome MainWindow::takeCopy(const QString& file) {
    const Outcome refusal = [&] {
        const Waiting waiting;
        return m_session->copies()->take(file);
    }();
    if (refusal) {
        tellInBox("copyRefused", tr("No copy was made."), told(*refusal, m_wording));
        return refusal;
    }
    tellInBox("copyTaken",
              tr("The copy is %1. Take it along and open it there with File > Open a house book.")
                  .arg(QDir::toNativeSeparators(file)),
              tr("What you find with it comes home with File > Bring a round home from a copy: root checks, "
                 "losses, weanings and pottings on. Whatever else is done in the copy stays there, so do "
                 "your planning here."));
    return std::nullopt;
}

void MainWindow::askForCopy() {
    if (const QString why = m_session->onlyReadWhy(); !why.isEmpty())
        return tellInBox("homecomingRefused", tr("Nothing can be brought home just now."), why);
    const QString name = QFileDialog::getOpenFileName(this, tr("The copy that was taken along on the round"),
                                                      {}, m_opener.fileFilter());
    if (!name.isEmpty()) (void)bringHome(name);
}

Outcome MainWindow::bringHome(const QString& copy) {
    auto content = [&] {
        const Waiting waiting;
        return m_session->copies()->lookInto(copy);
    }();
    if (!content) {
        tellInBox("homecomingRefused", tr("Nothing was brought home."), told(content.refusal(), m_wording));
        return content.refusal();
    }
    delete m_homecoming;
    m_homecoming = new HomecomingDialog(
        m_session->book(), m_session->name(), std::move(*content), copy, m_wording,
        [this](const Command& command) {
            const QString sum = m_homecoming->sumWords();
            Outcome refusal = perform(command);
            if (!refusal) statusBar()->showMessage(tr("The round is home. %1").arg(sum));
            return refusal;
        },
        this);
    m_homecoming->setAttribute(Qt::WA_DeleteOnClose);
    connect(m_session.get(), &BookSession::changed, m_homecoming, &HomecomingDialog::refresh);
    m_homecoming->open();
    return std::nullopt;
}

} // namespace warmbench::ui
