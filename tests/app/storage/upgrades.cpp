#include "tests/app/storage/book_folder.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

#include <filesystem>

using namespace warmbench;
using namespace warmbench::tests;
using app::OpenMode;

namespace {

/// A copy of the kept book of version 1, which holds the small book and one more entry in its journal.
std::string oldBook(const BookFolder& folder) {
    std::string file = folder.path("old.wbook");
    std::filesystem::copy_file(WARMBENCH_TEST_DATA "/data/book/version-1.wbook", file);
    return file;
}

} // namespace

TEST_CASE("A book of version 1 is read as it is, and not changed by that") {
    const BookFolder folder;
    const std::string file = oldBook(folder);
    const auto before = folder.files();
    HouseBook expected = smallBook().book;
    perform(expected, handsOf(1));
    CHECK(opened(file, OpenMode::Read)->book() == expected);
    CHECK(folder.files() == before);
}

TEST_CASE("A book of version 1 is brought up to date for writing, after a backup") {
    const BookFolder folder;
    const std::string file = oldBook(folder);
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
    CHECK(opened(file + ".version-1.backup", OpenMode::Read)->book() == expected);
    CHECK(opened(file, OpenMode::Write)->book().all<HandDay>().size() == 2);
    CHECK(folder.files().size() == 2);
}

TEST_CASE("A book whose program was killed just after bringing it up to date opens") {
    const BookFolder folder;
    const std::string file = oldBook(folder);
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
