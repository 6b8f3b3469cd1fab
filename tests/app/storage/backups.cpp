#include "app/storage/backups.h"
#include "tests/app/storage/book_folder.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

#include <QDate>

#include <filesystem>
#include <fstream>

using namespace warmbench;
using namespace warmbench::tests;
using app::OpenMode;

TEST_CASE("A book backs itself up before a day's first change, and once") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    {
        const auto book = opened(file, OpenMode::Write);
        book->keepBackups(true);
        CHECK(app::backupsOf(file).empty());
        REQUIRE(!book->perform(handsOf(1)));
        REQUIRE(!book->perform(handsOf(2)));
    }
    const auto again = opened(file, OpenMode::Write);
    again->keepBackups(true);
    REQUIRE(!again->perform(handsOf(3)));
    CHECK(!again->lastBackupTrouble());
    const auto backups = app::backupsOf(file);
    REQUIRE(backups.size() == 1);
    CHECK(backups.front().day.iso() == QDate::currentDate().toString(Qt::ISODate).toStdString());
    CHECK(opened(backups.front().path, OpenMode::Read)->book() == smallBook().book);
}

TEST_CASE("A backup that can't be made hinders no work, and is told of") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    std::ofstream(app::backupFolder(file)) << "in the way";
    const auto book = opened(file, OpenMode::Write);
    book->keepBackups(true);
    REQUIRE(!book->perform(handsOf(1)));
    REQUIRE(book->lastBackupTrouble());
    CHECK(book->lastBackupTrouble()->what.text().starts_with("no backup can be made: "));
}

TEST_CASE("Backups are thinned with age: days, then weeks, then months, then years") {
    std::vector<Day> days;
    const Day today = day("2027-03-15");
    for (int i = 0; i < 1000; ++i) days.push_back(today - i);
    const std::vector<Day> gone = app::daysToThin(days, today);
    std::vector<std::string> kept;
    for (const Day one : days)
        if (std::find(gone.begin(), gone.end(), one) == gone.end()) kept.push_back(one.iso());
    CHECK(kept ==
          std::vector<std::string>{"2027-03-15", "2027-03-14", "2027-03-13", "2027-03-12", "2027-03-11",
                                   "2027-03-10", "2027-03-09", "2027-03-08", "2027-03-01", "2027-02-22",
                                   "2027-02-15", "2027-02-01", "2027-01-01", "2026-12-01", "2026-11-01",
                                   "2026-10-01", "2026-09-01", "2026-08-01", "2026-07-01", "2026-06-01",
                                   "2026-05-01", "2026-04-01", "2026-01-01", "2025-01-01", "2024-06-19"});
    CHECK(app::daysToThin({}, today).empty());
}

TEST_CASE("A backup is put in the place of the book, which is kept; a damaged one is not") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    {
        const auto book = opened(file, OpenMode::Write);
        book->keepBackups(true);
        REQUIRE(!book->perform(handsOf(1)));
    }
    const std::string backup = app::backupsOf(file).front().path;
    const auto kept = app::restoreBackup(backup, file);
    REQUIRE(kept);
    CHECK(opened(file, OpenMode::Write)->book() == smallBook().book);
    CHECK(opened(*kept, OpenMode::Read)->book().all<HandDay>().size() == 1);
    std::filesystem::resize_file(backup, 5000);
    const auto before = opened(file, OpenMode::Read)->book();
    CHECK(!app::restoreBackup(backup, file));
    CHECK(opened(file, OpenMode::Read)->book() == before);
}

TEST_CASE("A backup is put into a new file, and where the book is gone") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    REQUIRE(!opened(file, OpenMode::Write)->backUpOn(day("2027-03-02")));
    const std::string backup = app::backupsOf(file).front().path;
    CHECK(app::copyBackup(backup, file)); // there is a file of that name
    REQUIRE(!app::copyBackup(backup, folder.path("new.wbook")));
    CHECK(opened(folder.path("new.wbook"), OpenMode::Write)->book() == smallBook().book);
    std::filesystem::remove(file);
    const auto kept = app::restoreBackup(backup, file);
    REQUIRE(kept);
    CHECK(kept->empty());
    CHECK(opened(file, OpenMode::Write)->book() == smallBook().book);
}

TEST_CASE("A book that is put aside for a backup keeps what was in its log only") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    // Another program that has the book open keeps its log from being written back and taken away.
    const auto open = opened(file, OpenMode::Write);
    REQUIRE(!open->backUpOn(day("2027-03-02")));
    REQUIRE(!open->perform(handsOf(1)));
    REQUIRE(std::filesystem::exists(file + "-wal"));
    const auto kept = app::restoreBackup(app::backupsOf(file).front().path, file);
    REQUIRE(kept);
    CHECK(opened(file, OpenMode::Write)->book() == smallBook().book);
    CHECK(opened(*kept, OpenMode::Read)->book().all<HandDay>().size() == 1);
    CHECK(open->perform(handsOf(2))); // it does not write into what was put aside
}
