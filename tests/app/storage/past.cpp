#include "tests/app/storage/book_folder.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::tests;
using app::BookFile;
using app::OpenMode;

TEST_CASE("A book that is kept leads back to its book after any entry of its journal, undone ones as well") {
    const BookFolder folder(GENERATE(Kept::InFiles, Kept::Shared));
    const auto file = opened(folder.smallBookFile(), OpenMode::Write);
    std::vector<HouseBook> books{file->book()};
    for (int i = 0; i < 5; ++i) {
        REQUIRE(!file->perform(handsOf(i)));
        books.push_back(file->book());
    }
    REQUIRE(!file->undo());
    books.push_back(file->book());
    REQUIRE(!file->redo());
    books.push_back(file->book());
    const auto lines = file->journalLines();
    REQUIRE(lines);
    REQUIRE(lines->size() == books.size());
    for (std::size_t i = 0; i < books.size(); ++i) {
        const auto past = file->bookAfter((*lines)[i].seq);
        REQUIRE(past);
        CHECK(*past == books[i]);
        CHECK(!(*lines)[i].words.empty());
        CHECK(!(*lines)[i].at.empty());
    }
}

TEST_CASE("Looking back takes over what others have written since") {
    const BookFolder folder(GENERATE(Kept::InFiles, Kept::Shared));
    const std::string path = folder.smallBookFile();
    const auto mine = opened(path, OpenMode::Write);
    const HouseBook before = mine->book();
    const auto others = opened(path, OpenMode::Write);
    REQUIRE(!others->perform(handsOf(1)));
    const auto past = mine->bookAfter(1);
    REQUIRE(past);
    CHECK(*past == before);
    CHECK(mine->book() == others->book());
}

TEST_CASE("A journal entry that was tampered with is told, and leads to no book") {
    const BookFolder folder(GENERATE(Kept::InFiles, Kept::Shared));
    const std::string path = folder.smallBookFile();
    {
        const auto file = opened(path, OpenMode::Write);
        for (int i = 0; i < 3; ++i) REQUIRE(!file->perform(handsOf(i)));
    }
    tamper(path, "UPDATE journal SET change = '{' WHERE seq = 3");
    const auto file = opened(path, OpenMode::Write);
    CHECK(file->bookAfter(3));
    const auto past = file->bookAfter(1);
    REQUIRE(!past);
    CHECK(past.refusal().text().find("the journal is damaged") != std::string::npos);
}
