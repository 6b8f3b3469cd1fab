#include "app/storage/backups.h"
#include "app/window/file_session.h"
#include "tests/app/storage/book_folder.h"
#include "tests/app/window/comes.h"
#include "tests/support/small_book.h"
#include "ui/backups/backups_dialog.h"
#include "ui/shell/main_window.h"

#include <catch2/catch.hpp>

#include <QAction>
#include <QApplication>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QTimer>
#include <QTreeWidget>

#include <filesystem>

using namespace warmbench;
using namespace warmbench::tests;
using app::OpenMode;

namespace {

namespace fs = std::filesystem;

/// The window on a book with two backups: a sound one from before its hands were put in, and a damaged one.
struct OpenBackups {
    BookFolder folder;
    std::string file = folder.smallBookFile();
    NoKeys keys;
    app::FileOpener opener{keys};
    ui::MainWindow window{opener, day("2027-03-05")};

    OpenBackups() {
        {
            const auto book = opened(file, OpenMode::Write);
            REQUIRE(!book->backUpOn(day("2027-03-02")));
            REQUIRE(!book->perform(handsOf(1)));
            REQUIRE(!book->backUpOn(day("2027-03-04")));
            REQUIRE(!book->perform(handsOf(2)));
        }
        fs::resize_file(backupOf("2027-03-04"), 5000);
        REQUIRE(!window.openBook(QString::fromStdString(file)));
        window.show();
    }
    [[nodiscard]] std::string backupOf(const std::string& date) const {
        return app::backupFolder(file) + "/" + date + ".warmbench";
    }
    ui::BackupsDialog* listed() {
        window.findChild<QAction*>(QStringLiteral("backups"))->trigger();
        auto* dialog = window.findChild<ui::BackupsDialog*>();
        REQUIRE(dialog);
        const auto* list = dialog->findChild<QTreeWidget*>(QStringLiteral("backupList"));
        REQUIRE(list->topLevelItemCount() == 2);
        REQUIRE(comes([&] { return list->topLevelItem(1)->text(4) == QStringLiteral("sound"); }));
        return dialog;
    }
    static QPushButton* button(QWidget* in, const char* name) {
        return in->findChild<QPushButton*>(QLatin1String(name));
    }
    /// The dialog with the sound backup chosen.
    ui::BackupsDialog* choseSound() {
        ui::BackupsDialog* dialog = listed();
        auto* list = dialog->findChild<QTreeWidget*>(QStringLiteral("backupList"));
        list->setCurrentItem(list->topLevelItem(1));
        return dialog;
    }
};

} // namespace

TEST_CASE("The backups of a book are listed with what is in them, and a damaged one can't be gone back to") {
    OpenBackups open;
    ui::BackupsDialog* dialog = open.listed();
    auto* list = dialog->findChild<QTreeWidget*>(QStringLiteral("backupList"));
    CHECK(list->topLevelItem(0)->text(0) == ui::Wording().longDate(day("2027-03-04")));
    CHECK(list->topLevelItem(0)->text(4) == QStringLiteral("damaged"));
    CHECK(list->topLevelItem(1)->text(1) == QString::number(smallBook().book.all<Batch>().size()));
    CHECK(list->topLevelItem(1)->text(2) == QString::number(smallBook().book.all<Target>().size()));
    CHECK(list->topLevelItem(1)->text(5) == QStringLiteral("Make the book"));
    for (const char* name : {"backupLook", "backupCopy", "backupPlace"})
        CHECK(!OpenBackups::button(dialog, name)->isEnabled());
    auto* inside = dialog->findChild<QLabel*>(QStringLiteral("backupInside"));
    CHECK(inside->text().startsWith(QStringLiteral("It does not open: ")));
    list->setCurrentItem(list->topLevelItem(1));
    for (const char* name : {"backupLook", "backupCopy", "backupPlace"})
        CHECK(OpenBackups::button(dialog, name)->isEnabled());
    CHECK(inside->text().contains(QStringLiteral("Targets: ")));
}

TEST_CASE("A look inside a backup shows it in a window of its own, where nothing can be changed") {
    OpenBackups open;
    OpenBackups::button(open.choseSound(), "backupLook")->click();
    ui::MainWindow* look = nullptr;
    for (QWidget* widget : QApplication::topLevelWidgets())
        if (widget->objectName() == QStringLiteral("backupWindow"))
            look = qobject_cast<ui::MainWindow*>(widget);
    REQUIRE(look);
    CHECK(look->session()->book() == smallBook().book);
    CHECK(look->day() == day("2027-03-02"));
    CHECK(look->findChild<QLabel*>(QStringLiteral("onlyRead"))
              ->text()
              .contains(QStringLiteral("to be looked at only")));
    CHECK(look->session()->perform(handsOf(7)));
    CHECK(look->session()->book() == smallBook().book);
    CHECK(open.window.session()->book().all<HandDay>().size() == 2);
    look->close();
    CHECK(opened(open.backupOf("2027-03-02"), OpenMode::Read)->book() == smallBook().book);
}

TEST_CASE("A backup that is put in the place of the open book opens there, and the old book is kept") {
    OpenBackups open;
    OpenBackups::button(open.choseSound(), "backupPlace")->click();
    auto* ask = open.window.findChild<QMessageBox*>(QStringLiteral("putInPlace"));
    REQUIRE(ask);
    CHECK(ask->defaultButton() == ask->button(QMessageBox::Cancel));
    for (QAbstractButton* button : ask->buttons())
        if (ask->buttonRole(button) == QMessageBox::AcceptRole) button->click();
    auto* done = open.window.findChild<QMessageBox*>(QStringLiteral("putInPlaceDone"));
    REQUIRE(done);
    CHECK(done->informativeText().contains(QStringLiteral("small.wbook.before-restore-1")));
    done->accept();
    CHECK(open.window.session()->book() == smallBook().book);
    REQUIRE(!open.window.session()->perform(handsOf(9)));
    CHECK(opened(open.file + ".before-restore-1", OpenMode::Read)->book().all<HandDay>().size() == 2);
    CHECK(opened(open.file, OpenMode::Read)->check().empty());
}

TEST_CASE("A question about a backup that is answered with no leaves the book as it is") {
    OpenBackups open;
    const auto before = open.window.session()->book();
    OpenBackups::button(open.choseSound(), "backupPlace")->click();
    auto* ask = open.window.findChild<QMessageBox*>(QStringLiteral("putInPlace"));
    REQUIRE(ask);
    ask->button(QMessageBox::Cancel)->click();
    CHECK(open.window.session()->book() == before);
    CHECK(!fs::exists(open.file + ".before-restore-1"));
}

TEST_CASE("A damaged book is told of with a way to its backups") {
    OpenBackups open;
    open.window.setSession(nullptr);
    fs::resize_file(open.file, 5000);
    QTimer::singleShot(0, [] {
        auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        if (QPushButton* look = box ? OpenBackups::button(box, "lookAtBackups") : nullptr)
            look->click();
        else if (box)
            box->reject();
    });
    CHECK(open.window.openBook(QString::fromStdString(open.file)));
    auto* dialog = open.window.findChild<ui::BackupsDialog*>();
    REQUIRE(dialog);
    auto* list = dialog->findChild<QTreeWidget*>(QStringLiteral("backupList"));
    REQUIRE(comes([&] { return list->topLevelItem(1)->text(4) == QStringLiteral("sound"); }));
    list->setCurrentItem(list->topLevelItem(1));
    OpenBackups::button(dialog, "backupPlace")->click();
    auto* ask = open.window.findChild<QMessageBox*>(QStringLiteral("putInPlace"));
    REQUIRE(ask);
    for (QAbstractButton* button : ask->buttons())
        if (ask->buttonRole(button) == QMessageBox::AcceptRole) button->click();
    REQUIRE(open.window.session());
    CHECK(open.window.session()->book() == smallBook().book);
    CHECK(fs::file_size(open.file + ".before-restore-1") == 5000);
}

TEST_CASE("The window says that the day's backup could not be made, and goes on working") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    // A file stands where the backups' folder would be.
    fs::copy_file(file, app::backupFolder(file));
    NoKeys keys;
    app::FileOpener opener(keys);
    ui::MainWindow window(opener, day("2027-03-05"));
    REQUIRE(!window.openBook(QString::fromStdString(file)));
    window.show();
    auto* words = window.findChild<QLabel*>(QStringLiteral("backupTrouble"));
    CHECK(!words->isVisible());
    REQUIRE(!window.session()->perform(handsOf(1)));
    CHECK(words->isVisible());
    CHECK(words->text().startsWith(
        QStringLiteral("Your changes are kept, but today's backup could not be made: ")));
    CHECK(opened(file, OpenMode::Read)->book().all<HandDay>().size() == 1);
    window.setSession(nullptr);
    CHECK(!words->isVisible());
}
