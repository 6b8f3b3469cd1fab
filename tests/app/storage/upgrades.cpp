#include "tests/app/storage/book_folder.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

#include <filesystem>

using namespace warmbench;
using namespace warmbench::tests;
using app::OpenMode;

namespace {

/// A copy of the kept book of a version, which holds the small book and one more entry in its journal.
std::string oldBook(const BookFolder& folder, int version) {
    std::string file = folder.path("old.wbook");
    std::filesystem::copy_file(WARMBENCH_TEST_DATA "/data/book/version-" + std::to_string(version) + ".wbook",
                               file);
    return file;
}

} // namespace

TEST_CASE("A book of an earlier version is read as it is, and not changed by that") {
    const int version = GENERATE(1, 2, 3);
    const BookFolder folder;
    const std::string file = oldBook(folder, version);
    const auto before = folder.files();
    HouseBook expected = smallBook().book;
    perform(expected, handsOf(1));
    CHECK(opened(file, OpenMode::Read)->book() == expected);
    CHECK(folder.files() == before);
}

TEST_CASE("A book of an earlier version is brought up to date for writing, after a backup") {
    const int version = GENERATE(1, 2, 3);
    const BookFolder folder;
    const std::string file = oldBook(folder, version);
    HouseBook expected = smallBook().book;
    perform(expected, handsOf(1));
    {
        const auto book = opened(file, OpenMode::Write);
        CHECK(book->book() == expected);
        CHECK(book->journal()->size() == 2);
        CHECK(book->check().empty());
        REQUIRE(!book->perform(handsOf(2)));
        CHECK(book->check().empty());
    }
    CHECK(folder.files().size() == 2);
    CHECK(opened(file + ".version-" + std::to_string(version) + ".backup", OpenMode::Read)->book() ==
          expected);
    CHECK(opened(file, OpenMode::Write)->book().all<HandDay>().size() == 2);
    CHECK(folder.files().size() == 2);
}

TEST_CASE("A book whose program was killed just after bringing it up to date opens") {
    const int version = GENERATE(1, 2, 3);
    const BookFolder folder;
    const std::string file = oldBook(folder, version);
    const std::string left = folder.path("left.wbook");
    {
        // What is on the disk while the program runs: the new version is in the log alone.
        const auto book = opened(file, OpenMode::Write);
        std::filesystem::copy_file(file, left);
        std::filesystem::copy_file(file + "-wal", left + "-wal");
    }
    const auto book = opened(left, OpenMode::Write);
    CHECK(book->check().empty());
    CHECK(book->book() == opened(file, OpenMode::Read)->book());
}

TEST_CASE("Readings are kept in a book of version 2 that was brought up to date") {
    const BookFolder folder;
    const std::string file = oldBook(folder, 2);
    const ReadingPlace place{smallBook().warm, std::nullopt};
    {
        const auto book = opened(file, OpenMode::Write);
        REQUIRE(!book->perform(
            {KeepReadings{place, {{Channel::RootZone, {{30'000'000, 2000}, {30'000'060, 2010}}}}}}));
        CHECK(book->undoWords() == "Keep 2 readings of Bench 1 · A");
        REQUIRE(!book->undo());
        CHECK(book->book().all<ReadingMonth>().empty());
        REQUIRE(!book->redo());
        CHECK(book->check().empty());
    }
    CHECK(opened(file, OpenMode::Read)->book().readingsOf(place, Channel::RootZone).size() == 1);
}

TEST_CASE("A shared book of version 2 is read as it is, and brought up to date for writing") {
    const BookFolder folder(Kept::Shared);
    const std::string address = folder.smallBookFile();
    tamper(address, "DROP TABLE reading_months");
    tamper(address, "ALTER TABLE stays DROP COLUMN weaned_on");
    tamper(address, "UPDATE about SET version = 2");
    CHECK(opened(address, OpenMode::Read)->book() == smallBook().book);
    const auto book = opened(address, OpenMode::Write);
    const ReadingPlace place{smallBook().warm, std::nullopt};
    REQUIRE(!book->perform({KeepReadings{place, {{Channel::RootZone, {{30'000'000, 2000}}}}}}));
    CHECK(book->check().empty());
}

TEST_CASE("A weaning is kept in a book of version 3 that was brought up to date") {
    const BookFolder folder;
    const std::string file = oldBook(folder, 3);
    const SmallBook small = smallBook();
    {
        const auto book = opened(file, OpenMode::Write);
        CHECK_FALSE(book->book().get<Stay>(small.weaning).weanedOn);
        REQUIRE(!book->perform({WeanStay{small.weaning, day("2027-04-01")}}));
        REQUIRE(!book->undo());
        CHECK_FALSE(book->book().get<Stay>(small.weaning).weanedOn);
        REQUIRE(!book->redo());
        CHECK(book->check().empty());
    }
    CHECK(opened(file, OpenMode::Read)->book().get<Stay>(small.weaning).weanedOn == day("2027-04-01"));
}

TEST_CASE("A shared book of version 3 is read as it is, and brought up to date for writing") {
    const BookFolder folder(Kept::Shared);
    const std::string address = folder.smallBookFile();
    tamper(address, "ALTER TABLE stays DROP COLUMN weaned_on");
    tamper(address, "UPDATE about SET version = 3");
    const SmallBook small = smallBook();
    CHECK(opened(address, OpenMode::Read)->book() == small.book);
    const auto book = opened(address, OpenMode::Write);
    REQUIRE(!book->perform({WeanStay{small.weaning, day("2027-04-01")}}));
    CHECK(book->check().empty());
}
