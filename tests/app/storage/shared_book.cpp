#include "tests/app/storage/book_folder.h"
#include "tests/app/storage/postgres_server.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::tests;
using app::BookFile;
using app::OpenMode;

TEST_CASE("A new shared book never takes the place of another") {
    const BookFolder folder(Kept::Shared);
    const std::string address = folder.smallBookFile();
    const auto refusal = BookFile::create(address, HouseBook{});
    REQUIRE(refusal);
    CHECK(refusal->text() == address + ": there is a house book in this database already; choose another");
    CHECK(opened(address, OpenMode::Read)->book() == smallBook().book);
}

TEST_CASE("Where there is no shared book, or no server, that is said") {
    const BookFolder folder(Kept::Shared);
    const std::string empty = folder.path("empty");
    for (const OpenMode mode : {OpenMode::Read, OpenMode::Write})
        CHECK(BookFile::open(empty, mode).refusal().text() ==
              empty +
                  ": there is no house book in this database; 'warmbench new' or 'warmbench copy' makes one");
    const std::string missing = PostgresServer::shared().address("missing");
    CHECK(BookFile::open(missing, OpenMode::Read)
              .refusal()
              .text()
              .starts_with(missing + ": it can't be opened: "));
    const auto nobody = BookFile::open("postgresql://anna:secret@/x?host=/nowhere", OpenMode::Read);
    REQUIRE(!nobody);
    CHECK(nobody.refusal().place == "postgresql://anna@/x?host=/nowhere");
    CHECK(nobody.refusal().what.text().starts_with("it can't be opened: "));
    CHECK(nobody.refusal().what.text().find("secret") == std::string::npos);
}

TEST_CASE("A shared book of a newer program is refused and left alone") {
    const BookFolder folder(Kept::Shared);
    const std::string address = folder.smallBookFile();
    tamper(address, "UPDATE about SET version = version + 1");
    for (const OpenMode mode : {OpenMode::Read, OpenMode::Write})
        CHECK(BookFile::open(address, mode)
                  .refusal()
                  .what.text()
                  .starts_with("it was written by a newer Warmbench"));
}

TEST_CASE("A shared book whose rows tell nonsense is refused") {
    const BookFolder folder(Kept::Shared);
    const std::string address = folder.smallBookFile();
    tamper(address, "UPDATE zones SET cover = 'rain'");
    CHECK(BookFile::open(address, OpenMode::Read).refusal().text() ==
          address + ": the shared book is damaged: zone number 1: found nothing that can be its cover");
}

TEST_CASE("A shared book opened for reading is not changed") {
    const BookFolder folder(Kept::Shared);
    const std::string address = folder.smallBookFile();
    const auto book = opened(address, OpenMode::Read);
    CHECK(book->perform(handsOf(1))->text() == address + ": it was opened for reading only");
    CHECK(book->check().empty());
    CHECK(book->journal()->size() == 1);
}

TEST_CASE("A book moves between file and shared database as it is, its journal letter by letter") {
    const BookFolder files;
    const BookFolder databases(Kept::Shared);
    const std::string first = files.smallBookFile();
    const auto book = opened(first, OpenMode::Write);
    REQUIRE(!book->perform(handsOf(1)));
    REQUIRE(
        !book->perform({Put<HandDay>{{{}, day("2030-02-01"), 3, "Grüße, \\ ' \" \xF0\x9F\x8C\xB1\n;--"}}}));
    REQUIRE(!book->undo());
    REQUIRE(!book->redo());
    REQUIRE(!book->copyTo(databases.path("shared")));
    const auto shared = opened(databases.path("shared"), OpenMode::Write);
    REQUIRE(!shared->copyTo(files.path("back.wbook")));
    const auto back = opened(files.path("back.wbook"), OpenMode::Write);
    for (const BookFile* copy : {shared.get(), back.get()}) {
        CHECK(copy->book() == book->book());
        CHECK(copy->check().empty());
        const auto entries = *copy->journal();
        const auto expected = *book->journal();
        REQUIRE(entries.size() == expected.size());
        for (std::size_t i = 0; i < entries.size(); ++i) {
            CHECK(entries[i].seq == expected[i].seq);
            CHECK(entries[i].at == expected[i].at);
            CHECK(entries[i].who == expected[i].who);
            CHECK(entries[i].words == expected[i].words);
            CHECK(entries[i].change == expected[i].change);
        }
    }
    CHECK(shared->copyTo(first)->text() == first + ": there is a file of this name already; choose another");
    REQUIRE(!back->perform(handsOf(9)));
    CHECK(back->check().empty());
}
