#include "tests/ui/backup_pictures.h"

#include "tests/ui/window.h"
#include "ui/backups/backups_dialog.h"

#include <QApplication>
#include <QFile>
#include <QTemporaryDir>
#include <QTreeWidget>

namespace warmbench::tests {
namespace {

/// Backups of the small nursery, of which one is damaged.
class SmallShelf : public ui::BackupShelf {
public:
    std::vector<ui::KeptBackup> backupsOf(const QString&) override {
        std::vector<ui::KeptBackup> kept;
        for (const int ago : {0, 1, 2, 5, 12, 40})
            kept.push_back({smallNurseryToday() - ago, QString::number(ago)});
        return kept;
    }
    Result<ui::BackupContent> lookInto(const QString& backup) override {
        if (backup == QStringLiteral("2"))
            return Refusal{"2027-02-13.warmbench",
                           "the file is damaged; open a backup, and keep this file as it is"};
        const int ago = backup.toInt();
        const QDateTime at(ui::qDate(smallNurseryToday() - ago - 1), QTime(16, 40));
        return ui::BackupContent{
            smallNursery(), ui::JournalStep{1208 - ago * 11, at, QStringLiteral("anna"),
                                            QStringLiteral("Check container 27-011-A/03: 9 of 12 rooted")}};
    }
    Outcome copyTo(const QString&, const QString&) override { return std::nullopt; }
    Result<QString> putInPlaceOf(const QString&, const QString&) override { return QString(); }
};

/// A book whose backup could not be made.
class TroubledSession : public ui::MemorySession {
public:
    using MemorySession::MemorySession;
    QString drafts;
    [[nodiscard]] QString draftFile() const override { return drafts; }
    [[nodiscard]] QString backupTrouble() const override {
        return QStringLiteral("Your changes are kept, but today's backup could not be made: "
                              "/home/anna/nursery.warmbench.backups: no backup can be made: No space left on "
                              "device. It is tried again with tomorrow's first change.");
    }
};

struct ShelfOpener : SmallNurseryOpener {
    SmallShelf shelf;
    ui::BackupShelf* backups() override { return &shelf; }
};

} // namespace

void writeBackupPictures(const QString& folder) {
    ShelfOpener opener;
    ui::MainWindow window(opener, smallNurseryToday());
    const QTemporaryDir beside;
    auto session = std::make_unique<TroubledSession>(smallNursery(), QStringLiteral("nursery.warmbench"));
    session->drafts = beside.filePath(QStringLiteral("unsaved"));
    QFile typed(session->drafts);
    if (typed.open(QIODevice::WriteOnly))
        typed.write(
            R"({"drafts":[{"place":"targets","key":"0","words":"a new target","fields":{"a":"b"}},)"
            R"({"place":"round","key":"x","words":"what was found in 27-011-A/03","fields":{"a":"b"}}]})");
    typed.close();
    window.setSession(std::move(session));
    window.resize(1280, 720);
    window.show();
    for (const bool dark : {false, true}) {
        const QString look = dark ? QStringLiteral("-dark.png") : QStringLiteral(".png");
        window.setTheme(dark ? ui::Theme::Dark : ui::Theme::Light);
        window.showBackupsOf(QStringLiteral("/home/anna/nursery.warmbench"));
        auto* dialog = window.findChild<ui::BackupsDialog*>();
        auto* list = dialog->findChild<QTreeWidget*>(QStringLiteral("backupList"));
        while (list->topLevelItem(5)->text(1).isEmpty())
            QApplication::processEvents(QEventLoop::WaitForMoreEvents);
        QApplication::processEvents();
        dialog->grab().save(folder + QStringLiteral("backups") + look);
        list->setCurrentItem(list->topLevelItem(2));
        QApplication::processEvents();
        dialog->grab().save(folder + QStringLiteral("backups-damaged") + look);
        window.grab().save(folder + QStringLiteral("window-backup-trouble") + look);
        delete dialog;
    }
    window.setTheme(ui::Theme::Light);
}

} // namespace warmbench::tests
