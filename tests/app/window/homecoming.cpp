#include "app/storage/backups.h"
#include "app/window/file_session.h"
#include "core/round/weaning.h"
#include "tests/app/storage/book_folder.h"
#include "tests/app/storage/postgres_server.h"
#include "tests/app/window/comes.h"
#include "tests/support/small_book.h"
#include "ui/away/homecoming_dialog.h"
#include "ui/shell/main_window.h"

#include <catch2/catch.hpp>

#include <QAction>
#include <QFile>
#include <QLabel>
#include <QListWidget>
#include <QMessageBox>
#include <QPushButton>
#include <QTreeWidget>

#include <filesystem>

using namespace warmbench;
using namespace warmbench::tests;
using app::OpenMode;

namespace {

namespace fs = std::filesystem;

RootCheck checkOf(const SmallBook& small, int container, int rooted) {
    return {{}, small.struck, container, day("2027-03-20"), 5, rooted, 0, 5 - rooted, 0, std::nullopt, ""};
}

/// What is done on a round with a copy: a check, a pot thrown away, the rest weaned, one pot potted on.
void goRoundWith(const std::string& copy, const SmallBook& small) {
    const auto file = opened(copy, OpenMode::Write);
    REQUIRE(!file->perform({RecordCheck{checkOf(small, 1, 4)}}));
    REQUIRE(!file->perform({Discard{small.struck, day("2027-03-21"), {2}, "grey mould"}}));
    const auto wean = round::weanCommand(file->book(), small.struck, day("2027-03-25"));
    REQUIRE(wean);
    REQUIRE(!file->perform(*wean));
    REQUIRE(!file->perform({PotOn{small.struck, day("2027-04-10"), {{3, 4, 1}}, ""}}));
    // That is no part of a round, and stays in the copy.
    REQUIRE(!file->perform(handsOf(5)));
}

/// The window on a book.
struct AtHome {
    BookFolder folder;
    std::string file = folder.smallBookFile();
    const SmallBook small = smallBook();
    std::string copy = folder.filePath("laptop.warmbench");
    NoKeys keys;
    app::FileOpener opener{keys};
    ui::MainWindow window{opener, day("2027-03-05")};

    explicit AtHome(Kept kept = Kept::InFiles) : folder(kept) { openAs(file); }
    void openAs(const std::string& name) {
        REQUIRE(!window.openBook(QString::fromStdString(name)));
        window.show();
    }
    /// What a box of the window says.
    QString told(const char* box) const {
        const auto boxes = window.findChildren<QMessageBox*>(QLatin1String(box));
        REQUIRE(!boxes.empty());
        return boxes.back()->text() + QLatin1Char('|') + boxes.back()->informativeText();
    }
    ui::HomecomingDialog* shows(const std::string& from) {
        REQUIRE(!window.bringHome(QString::fromStdString(from)));
        auto* dialog = window.findChild<ui::HomecomingDialog*>();
        REQUIRE(dialog);
        return dialog;
    }
    QString refusedOf(const std::string& from) {
        REQUIRE(window.bringHome(QString::fromStdString(from)));
        CHECK(!window.findChild<ui::HomecomingDialog*>());
        return told("homecomingRefused");
    }
    [[nodiscard]] const HouseBook& book() const { return window.session()->book(); }
    /// The copy's file, and whatever stands beside it.
    [[nodiscard]] std::map<std::string, std::string> bytesOfCopy() const {
        std::map<std::string, std::string> found;
        for (const auto& [name, bytes] : folder.files())
            if (name.starts_with("laptop")) found.emplace(name, bytes);
        return found;
    }
};

template <class Widget>
Widget* in(const QWidget* dialog, const char* name) {
    auto* found = dialog->findChild<Widget*>(QLatin1String(name));
    REQUIRE(found);
    return found;
}

} // namespace

TEST_CASE("A copy that is taken along from the window is worked on and comes home as one step") {
    AtHome home(GENERATE(Kept::InFiles, Kept::Shared));
    REQUIRE(!home.window.session()->perform(handsOf(1)));
    REQUIRE(!home.window.takeCopy(QString::fromStdString(home.copy)));
    CHECK(home.told("copyTaken").contains(QString::fromStdString(home.copy)));
    CHECK(opened(home.copy, OpenMode::Read)->book() == home.book());
    goRoundWith(home.copy, home.small);
    const auto bytes = home.bytesOfCopy();
    CHECK(bytes.size() == 1);
    const HouseBook before = home.book();

    ui::HomecomingDialog* dialog = home.shows(home.copy);
    CHECK(home.book() == before);
    CHECK(in<QLabel>(dialog, "homecomingSum")->text() ==
          QStringLiteral("Root checks: 1. Losses: 1. Weanings: 1. Pottings on: 1."));
    const auto* batches = in<QTreeWidget>(dialog, "homecomingBatches");
    REQUIRE(batches->topLevelItemCount() == 1);
    CHECK(batches->topLevelItem(0)->text(0) == QStringLiteral("27-046-A"));
    CHECK(in<QLabel>(dialog, "homecomingSteps")
              ->text()
              .startsWith(QStringLiteral("Steps in the copy since it was taken along: 5; the last by ")));
    in<QPushButton>(dialog, "homecomingBring")->click();
    CHECK(dialog->result() == QDialog::Accepted);

    const auto away = opened(home.copy, OpenMode::Read);
    CHECK(home.book().all<RootCheck>() == away->book().all<RootCheck>());
    CHECK(home.book().all<Loss>() == away->book().all<Loss>());
    CHECK(home.book().all<Potting>() == away->book().all<Potting>());
    CHECK(home.book().all<Stay>() == away->book().all<Stay>());
    CHECK(home.book().all<HandDay>().size() == 1);
    CHECK(home.window.session()->undoWords() == QStringLiteral("Bring home the round in laptop.warmbench"));
    CHECK(home.bytesOfCopy() == bytes);
    CHECK(opened(home.file, OpenMode::Read)->check().empty());
    REQUIRE(!home.window.session()->undo());
    CHECK(home.book() == before);
    REQUIRE(!home.window.session()->redo());

    dialog = home.shows(home.copy);
    CHECK(
        in<QLabel>(dialog, "homecomingSum")->text().startsWith(QStringLiteral("There is nothing new in it")));
    CHECK(!in<QPushButton>(dialog, "homecomingBring")->isVisible());
}

TEST_CASE("What is in conflict is told before, left out, and shows also when it comes up meanwhile") {
    AtHome home;
    REQUIRE(!home.window.takeCopy(QString::fromStdString(home.copy)));
    {
        const auto file = opened(home.copy, OpenMode::Write);
        REQUIRE(!file->perform({RecordCheck{checkOf(home.small, 1, 4)}}));
        REQUIRE(!file->perform({RecordCheck{checkOf(home.small, 3, 2)}}));
    }
    ui::HomecomingDialog* dialog = home.shows(home.copy);
    const auto* conflicts = in<QListWidget>(dialog, "homecomingConflicts");
    CHECK(conflicts->count() == 0);
    {
        const auto other = opened(home.file, OpenMode::Write);
        REQUIRE(!other->perform({RecordCheck{checkOf(home.small, 1, 3)}}));
    }
    REQUIRE(comes([&] { return conflicts->count() == 1; }));
    CHECK(conflicts->item(0)->text().startsWith(QStringLiteral("27-046-A/01: it was looked at on ")));
    auto* bring = in<QPushButton>(dialog, "homecomingBring");
    CHECK(bring->text() == QStringLiteral("&Bring home all but the conflicts"));
    bring->click();
    CHECK(home.book().all<RootCheck>().size() == 2);
    dialog = home.shows(home.copy);
    CHECK(in<QLabel>(dialog, "homecomingSum")->text().startsWith(QStringLiteral("Nothing of it can be")));
    CHECK(!in<QPushButton>(dialog, "homecomingBring")->isEnabled());
    in<QPushButton>(dialog, "homecomingLeave")->click();
    CHECK(home.book().all<RootCheck>().size() == 2);
}

TEST_CASE("No copy replaces a file, and the proposed name is one that no file has") {
    AtHome home;
    auto& copies = *home.window.session()->copies();
    const QString proposed = copies.proposedName(day("2027-03-05"));
    CHECK(proposed == QString::fromStdString(home.folder.filePath("small-copy-2027-03-05.warmbench")));
    REQUIRE(!home.window.takeCopy(proposed));
    CHECK(copies.proposedName(day("2027-03-05")).endsWith(QStringLiteral("-2.warmbench")));
    REQUIRE(!home.window.session()->perform(handsOf(1)));
    const auto bytes = [&] {
        auto files = home.folder.files();
        std::erase_if(files, [](const auto& one) { return one.first.ends_with("-shm"); });
        return files;
    };
    const auto files = bytes();
    CHECK(home.window.takeCopy(proposed));
    CHECK(home.told("copyRefused").contains(QStringLiteral("there is a file of this name already")));
    CHECK(home.window.takeCopy(QString::fromStdString(home.file)));
    CHECK(home.window.takeCopy(QString::fromStdString(home.folder.filePath("none/copy.warmbench"))));
    CHECK(bytes() == files);
}

TEST_CASE("A shared book's copy is named after its database") {
    AtHome home(Kept::Shared);
    const QString proposed = home.window.session()->copies()->proposedName(day("2027-03-05"));
    CHECK(proposed.contains(QString::fromStdString(PostgresServer::databaseOf(home.file)) +
                            QStringLiteral("-copy-2027-03-05.warmbench")));
}

TEST_CASE("What is no copy of the open book is refused with a sentence each") {
    AtHome home;
    const HouseBook before = home.book();
    CHECK(home.refusedOf(home.file).contains(QStringLiteral("this is the book that is open here")));
    CHECK(home.refusedOf(home.copy).contains(QStringLiteral("there is no such file")));
    {
        QFile letter(QString::fromStdString(home.copy));
        REQUIRE(letter.open(QIODevice::WriteOnly));
        letter.write(QByteArray(4000, 'a'));
    }
    CHECK(home.refusedOf(home.copy).contains(QStringLiteral("this is no house book")));
    // The same things, but made anew.
    const std::string other = home.folder.smallBookFile("other.warmbench");
    CHECK(home.refusedOf(other).contains(QStringLiteral("no copy of small.wbook")));
    REQUIRE(!home.window.takeCopy(QString::fromStdString(home.folder.filePath("cut.warmbench"))));
    fs::resize_file(home.folder.filePath("cut.warmbench"), 9000);
    CHECK(home.refusedOf(home.folder.filePath("cut.warmbench")).contains(QStringLiteral("damaged")));
    CHECK(home.book() == before);
}

TEST_CASE("A book that can only be read brings nothing home and says why") {
    AtHome home;
    REQUIRE(!home.window.takeCopy(QString::fromStdString(home.copy)));
    goRoundWith(home.copy, home.small);
    const HouseBook before = home.book();
    ui::HomecomingDialog* dialog = home.shows(home.copy);
    fs::rename(home.file, home.file + ".away");
    REQUIRE(comes([&] { return !home.window.session()->onlyReadWhy().isEmpty(); }));
    in<QPushButton>(dialog, "homecomingBring")->click();
    CHECK(in<QLabel>(dialog, "homecomingRefusal")
              ->text()
              .startsWith(QStringLiteral("The book's file has been moved")));
    CHECK(dialog->isVisible());
    dialog->reject();
    home.window.findChild<QAction*>(QStringLiteral("bringHome"))->trigger();
    CHECK(home.told("homecomingRefused").contains(QStringLiteral("The book's file has been moved")));
    CHECK(home.window.takeCopy(QString::fromStdString(home.folder.filePath("second.warmbench"))));
    CHECK(!fs::exists(home.folder.filePath("second.warmbench")));
    CHECK(home.book() == before);
}

TEST_CASE(
    "Who may only read a shared book takes a copy along, and is told that nothing can be brought home") {
    AtHome home(Kept::Shared);
    PostgresServer& server = PostgresServer::shared();
    const std::string database = PostgresServer::databaseOf(home.file);
    const std::string reader = "looks_on_" + database;
    server.run(database, "CREATE ROLE " + reader + " LOGIN");
    server.run(database, "GRANT " + database + "_read TO " + reader);
    home.openAs(server.address(database, reader));
    REQUIRE(!home.window.takeCopy(QString::fromStdString(home.copy)));
    goRoundWith(home.copy, home.small);
    ui::HomecomingDialog* dialog = home.shows(home.copy);
    in<QPushButton>(dialog, "homecomingBring")->click();
    CHECK(
        in<QLabel>(dialog, "homecomingRefusal")
            ->text()
            .contains(QStringLiteral("your part in this shared book does not allow that; ask who keeps it")));
    CHECK(home.book() == smallBook().book);
}

TEST_CASE("Who may do rounds in a shared book brings checks home, and nothing that moves a batch") {
    AtHome home(Kept::Shared);
    PostgresServer& server = PostgresServer::shared();
    const std::string database = PostgresServer::databaseOf(home.file);
    const std::string walker = "walks_" + database;
    server.run(database, "CREATE ROLE " + walker + " LOGIN");
    server.run(database, "GRANT " + database + "_rounds TO " + walker);
    home.openAs(server.address(database, walker));
    REQUIRE(!home.window.takeCopy(QString::fromStdString(home.copy)));
    REQUIRE(!opened(home.copy, OpenMode::Write)->perform({RecordCheck{checkOf(home.small, 1, 3)}}));
    in<QPushButton>(home.shows(home.copy), "homecomingBring")->click();
    CHECK(home.book().all<RootCheck>().size() == 1);
    const HouseBook before = home.book();
    REQUIRE(!opened(home.copy, OpenMode::Write)
                 ->perform({PotOn{home.small.struck, day("2027-04-10"), {{3, 4, 1}}, ""}}));
    ui::HomecomingDialog* dialog = home.shows(home.copy);
    in<QPushButton>(dialog, "homecomingBring")->click();
    CHECK(in<QLabel>(dialog, "homecomingRefusal")
              ->text()
              .contains(QStringLiteral("your part in this shared book does not allow that")));
    CHECK(home.book() == before);
}

TEST_CASE("A look inside a backup offers no copies") {
    AtHome home;
    REQUIRE(!home.window.session()->perform(handsOf(1)));
    const auto look =
        home.opener.openToLook(QString::fromStdString(home.file), QStringLiteral("to be looked at"));
    REQUIRE(look);
    CHECK((*look)->copies() == nullptr);
}
