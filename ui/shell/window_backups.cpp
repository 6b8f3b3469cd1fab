#include "ui/backups/backups_dialog.h"
#include "ui/shell/main_window.h"
#include "ui/words/phrase_words.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <QStatusBar>

/// Looking into a book's backups, and going back to one.
namespace warmbench::ui {

/// A book that does not open may have backups that do.
void MainWindow::tellRefused(const Refusal& refusal, const QString& book) {
    QMessageBox box(QMessageBox::Warning, tr("Warmbench"), told(refusal), QMessageBox::Ok, this);
    BackupShelf* shelf = m_opener.backups();
    const bool hasBackups = shelf && !shelf->backupsOf(book).empty();
    QPushButton* look =
        hasBackups ? box.addButton(tr("Look at its &backups…"), QMessageBox::ActionRole) : nullptr;
    if (look) look->setObjectName(QStringLiteral("lookAtBackups"));
    box.exec();
    if (look && box.clickedButton() == look) showBackupsOf(book);
}

void MainWindow::chooseBackups() {
    QString book = m_session ? m_session->fileName() : QString();
    if (book.isEmpty())
        book = QFileDialog::getOpenFileName(this, tr("The house book whose backups you want to see"), {},
                                            m_opener.fileFilter());
    if (!book.isEmpty()) showBackupsOf(book);
}

void MainWindow::showBackupsOf(const QString& book) {
    if (m_backups) m_backups->close();
    m_backups = new BackupsDialog(*m_opener.backups(), book, m_wording, this);
    m_backups->setAttribute(Qt::WA_DeleteOnClose);
    connect(m_backups, &BackupsDialog::lookWanted, this,
            [this, book](const KeptBackup& backup) { lookInside(backup, book); });
    connect(m_backups, &BackupsDialog::copyWanted, this, &MainWindow::copyBackup);
    connect(m_backups, &BackupsDialog::placeWanted, this,
            [this, book](const KeptBackup& backup) { askToPutInPlace(backup, book); });
    m_backups->show();
}

/// In a window of its own, so that both can be seen side by side.
void MainWindow::lookInside(const KeptBackup& backup, const QString& book) {
    auto session = m_opener.openToLook(
        backup.name, tr("This is the backup of %1 from the beginning of %2, to be looked at only.")
                         .arg(QFileInfo(book).fileName(), m_wording.longDate(backup.day)));
    if (!session) return tellRefused(session.refusal(), {});
    auto* window = new MainWindow(m_opener, m_today);
    window->setAttribute(Qt::WA_DeleteOnClose);
    window->setObjectName(QStringLiteral("backupWindow"));
    window->setTheme(m_theme);
    window->setFahrenheit(m_fahrenheit);
    window->setSession(std::move(*session));
    window->setDay(backup.day);
    window->resize(size());
    window->show();
}

void MainWindow::copyBackup(const KeptBackup& backup) {
    QString name = QFileDialog::getSaveFileName(
        m_backups, tr("Put the backup into a new file"),
        QStringLiteral("%1.warmbench").arg(QString::fromStdString(backup.day.iso())), m_opener.fileFilter());
    if (name.isEmpty()) return;
    if (QFileInfo(name).suffix().isEmpty()) name += QStringLiteral(".warmbench");
    if (const auto refusal = m_opener.backups()->copyTo(backup.name, name)) return tellRefused(*refusal, {});
    statusBar()->showMessage(tr("The backup is in %1").arg(name));
}

void MainWindow::askToPutInPlace(const KeptBackup& backup, const QString& book) {
    auto* box = new QMessageBox(
        QMessageBox::Question, tr("Put the backup in the book's place"),
        tr("%1 becomes what it was at the beginning of %2. What was put in since then is not in it: it is "
           "kept beside it, in a file of its own.")
            .arg(QFileInfo(book).fileName(), m_wording.longDate(backup.day)),
        QMessageBox::Cancel, this);
    box->setObjectName(QStringLiteral("putInPlace"));
    box->setAttribute(Qt::WA_DeleteOnClose);
    QPushButton* put = box->addButton(tr("&Put it in place"), QMessageBox::AcceptRole);
    box->setDefaultButton(QMessageBox::Cancel);
    connect(put, &QPushButton::clicked, this, [this, backup, book] { putInPlace(backup, book); });
    box->open();
}

void MainWindow::putInPlace(const KeptBackup& backup, const QString& book) {
    const bool wasOpen = m_session && m_session->fileName() == book;
    if (m_backups) m_backups->close();
    if (wasOpen) setSession(nullptr);
    const auto kept = m_opener.backups()->putInPlaceOf(backup.name, book);
    if (!kept) {
        if (wasOpen) (void)openBook(book);
        return tellRefused(kept.refusal(), {});
    }
    if (openBook(book)) return;
    auto* done = new QMessageBox(QMessageBox::Information, tr("The backup is in place"),
                                 tr("%1 is as it was at the beginning of %2.")
                                     .arg(QFileInfo(book).fileName(), m_wording.longDate(backup.day)),
                                 QMessageBox::Ok, this);
    done->setObjectName(QStringLiteral("putInPlaceDone"));
    if (!kept->isEmpty())
        done->setInformativeText(
            tr("What stood there is kept beside it as %1.").arg(QFileInfo(*kept).fileName()));
    done->setAttribute(Qt::WA_DeleteOnClose);
    done->open();
}

} // namespace warmbench::ui
