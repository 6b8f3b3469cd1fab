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
    const std::string twice = other->perform(handsOf(1))->text();
    CHECK(twice.starts_with("2030-01-02: the hands of this day stand twice (just before: "));
    CHECK(twice.ends_with(": Add hand day 2030-01-02)"));
    CHECK(other->book() == one->book());
    REQUIRE(!other->perform({Put<HandDay>{{{1}, day("2030-01-02"), 99, ""}}}));
    const auto refusal = one->undo();
    REQUIRE(refusal);
    CHECK(refusal->text() ==
          "hand day: it has been changed meanwhile, so this can't be done any more; look at it again");
    CHECK(opened(file, OpenMode::Read)->book() == other->book());
}

TEST_CASE("Who is slower with the same slots is told who was faster") {
    const BookFolder folder(GENERATE(Kept::InFiles, Kept::Shared));
    const std::string file = folder.smallBookFile();
    const SmallBook small = smallBook();
    const auto one = opened(file, OpenMode::Write);
    const auto other = opened(file, OpenMode::Write);
    const Stay stay = small.book.get<Stay>(small.plannedStay);
    // Both plan a batch on the same slot for days that overlap.
    Batch batch = small.book.get<Batch>(small.struck);
    batch.id = {};
    batch.code.clear();
    batch.state = BatchState::Planned;
    batch.strikeDay = day("2027-06-01");
    batch.containers = {{1, 5}};
    const Stay there{
        {}, {}, Stage::Rooting, small.warm, day("2027-06-01"), day("2027-07-01"), {{1, {0, 0, 1, 1}}}};
    Stay later = there;
    later.from = day("2027-06-10");
    Batch second = batch;
    second.strikeDay = later.from;
    REQUIRE(!one->perform({AddBatch{batch, {there}}}));
    const auto refusal = other->perform({AddBatch{second, {later}}});
    REQUIRE(refusal);
    CHECK(refusal->what.text().find("(just before: ") != std::string::npos);
    CHECK(other->book() == one->book());
    // What one has moved the other does not move elsewhere before she has seen it.
    REQUIRE(!one->perform({MoveStay{stay.id, stay.zone, stay.from, stay.to + 1, stay.places}}));
    const auto late = other->perform({MoveStay{stay.id, stay.zone, stay.from, stay.to + 2, stay.places}});
    REQUIRE(late);
    INFO(late->text());
    CHECK(late->what.text().starts_with("somebody was faster with the same things ("));
    CHECK(late->what.text().ends_with("); look at it again"));
    CHECK(other->book() == one->book());
    REQUIRE(!other->perform({MoveStay{stay.id, stay.zone, stay.from, stay.to + 2, stay.places}}));
    CHECK(other->check().empty());
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
