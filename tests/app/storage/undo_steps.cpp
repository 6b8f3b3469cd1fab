#include "tests/app/storage/book_folder.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

#include <random>

using namespace warmbench;
using namespace warmbench::tests;
using app::BookFile;
using app::OpenMode;

TEST_CASE(
    "What was done before the program was closed can be taken back, and what was taken back done again") {
    const BookFolder folder(GENERATE(Kept::InFiles, Kept::Shared));
    const std::string file = folder.smallBookFile();
    const HouseBook before = opened(file, OpenMode::Read)->book();
    REQUIRE(!opened(file, OpenMode::Write)->perform(handsOf(1)));
    const HouseBook after = opened(file, OpenMode::Read)->book();
    {
        const auto book = opened(file, OpenMode::Write);
        CHECK(book->undoWords() == "Add hand day 2030-01-02");
        REQUIRE(!book->undo());
        CHECK(book->book() == before);
    }
    const auto book = opened(file, OpenMode::Write);
    // The entry that made the book is no step.
    CHECK(book->undo()->text() == "there is nothing to undo");
    CHECK(book->redoWords() == "Add hand day 2030-01-02");
    REQUIRE(!book->redo());
    CHECK(book->book() == after);
    CHECK(book->check().empty());
}

TEST_CASE("However many steps there are, all can be taken back, closed and opened again on the way") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    const HouseBook before = opened(file, OpenMode::Read)->book();
    constexpr int steps = 450; // more than are read at once
    auto book = opened(file, OpenMode::Write);
    for (int i = 0; i < steps; ++i) REQUIRE(!book->perform(handsOf(i)));
    for (int i = 0; i < steps; ++i) {
        if (i % 170 == 100) {
            book.reset();
            book = opened(file, OpenMode::Write);
        }
        REQUIRE(!book->undo());
    }
    CHECK(book->book() == before);
    CHECK(book->undoWords().empty());
    for (int i = 0; i < steps; ++i) REQUIRE(!book->redo());
    CHECK(book->redoWords().empty());
    CHECK(book->book().all<HandDay>().size() == before.all<HandDay>().size() + steps);
}

TEST_CASE("Steps are the same whether the program stayed open or was closed") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    auto stays = opened(file, OpenMode::Write);
    std::mt19937 random(11);
    int made = 0;
    for (int i = 0; i < 400; ++i) {
        const auto what = random() % 5;
        if (what < 2)
            REQUIRE(!stays->perform(handsOf(made++)));
        else if (what < 4 && !stays->undoWords().empty())
            REQUIRE(!stays->undo());
        else if (!stays->redoWords().empty())
            REQUIRE(!stays->redo());
        if (i % 10 != 0) continue;
        const auto closed = opened(file, OpenMode::Write);
        CHECK(closed->undoWords() == stays->undoWords());
        CHECK(closed->redoWords() == stays->redoWords());
    }
}

TEST_CASE("What another program of the same person has done in between is no step of this one's undo") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    {
        const auto window = opened(file, OpenMode::Write);
        REQUIRE(!window->perform(handsOf(1)));
        REQUIRE(!opened(file, OpenMode::Write)->perform(handsOf(2)));
        REQUIRE(!window->perform(handsOf(3)));
        REQUIRE(!window->undo());
        REQUIRE(!window->undo());
        CHECK(window->redoWords() == "Add hand day 2030-01-02");
    }
    const auto again = opened(file, OpenMode::Write);
    CHECK(again->undoWords() == "Add hand day 2030-01-03");
    REQUIRE(!again->undo());
    CHECK(again->undo()->text() == "there is nothing to undo");
    CHECK(again->book().all<HandDay>() == smallBook().book.all<HandDay>());
}
