#include "tests/app/storage/book_folder.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

#include <sys/wait.h>
#include <unistd.h>

using namespace warmbench;
using namespace warmbench::tests;
using app::OpenMode;

TEST_CASE("What another writer has done is taken over before the next change") {
    const BookFolder folder(GENERATE(Kept::InFiles, Kept::Shared));
    const std::string file = folder.smallBookFile();
    const auto one = opened(file, OpenMode::Write);
    const auto other = opened(file, OpenMode::Write);
    int heard = 0;
    other->onChange([&](const Change&) { ++heard; });
    REQUIRE(!one->perform(handsOf(1)));
    REQUIRE(!other->perform(handsOf(2)));
    CHECK(heard == 2);
    CHECK(other->book().all<HandDay>().size() == 2);
    const auto taken = one->catchUp();
    REQUIRE(taken);
    CHECK(*taken == 1);
    CHECK(one->book() == other->book());
    CHECK(one->check().empty());
}

TEST_CASE("What no longer fits after another writer's change is refused and changes nothing") {
    const BookFolder folder(GENERATE(Kept::InFiles, Kept::Shared));
    const std::string file = folder.smallBookFile();
    const auto one = opened(file, OpenMode::Write);
    const auto other = opened(file, OpenMode::Write);
    REQUIRE(!one->perform(handsOf(1)));
    CHECK(other->perform(handsOf(1))->text() == "2030-01-02: the hands of this day stand twice");
    CHECK(other->book() == one->book());
    REQUIRE(!other->perform({Put<HandDay>{{{1}, day("2030-01-02"), 99, ""}}}));
    const auto refusal = one->undo();
    REQUIRE(refusal);
    CHECK(refusal->text() ==
          "hand day: it has been changed meanwhile, so this can't be done any more; look at it again");
    CHECK(opened(file, OpenMode::Read)->book() == other->book());
}

TEST_CASE("Two processes that write at once lose nothing of each other") {
    const BookFolder folder(GENERATE(Kept::InFiles, Kept::Shared));
    const std::string file = folder.smallBookFile();
    constexpr int commandsEach = 40;
    std::vector<pid_t> children;
    for (int process = 0; process < 2; ++process) {
        children.push_back(::fork());
        if (children.back() != 0) continue;
        const auto book = app::BookFile::open(file, OpenMode::Write);
        int failed = book ? 0 : 1;
        for (int i = 0; i < commandsEach && failed == 0; ++i)
            failed = (*book)->perform(handsOf(2 * i + process)) ? 1 : 0;
        ::_exit(failed);
    }
    for (const pid_t child : children) {
        int status = 0;
        ::waitpid(child, &status, 0);
        CHECK(status == 0);
    }
    const auto book = opened(file, OpenMode::Read);
    CHECK(book->book().all<HandDay>().size() == 2 * commandsEach);
    CHECK(book->check().empty());
}
