#include "core/round/entry.h"

#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::round;
using namespace warmbench::tests;

namespace {

RootCheck check(const SmallBook& small, const char* on, int examined, int rooted) {
    return {{}, small.struck, 1, day(on), examined, rooted, 0, examined - rooted, 0, std::nullopt, ""};
}

} // namespace

TEST_CASE("More rooted than examined, a day to come and more than stand there are refused") {
    const SmallBook small = smallBook();
    const Day today = day("2027-03-20");
    CHECK_FALSE(wrongWith(small.book, check(small, "2027-03-20", 5, 3), today));
    const auto tooMany = wrongWith(small.book, check(small, "2027-03-20", 4, 5), today);
    REQUIRE(tooMany);
    CHECK(tooMany->text() == "27-046-A/01: 5 rooted, but only 4 examined");
    CHECK(wrongWith(small.book, check(small, "2027-03-21", 4, 2), today)->what ==
          "found 2027-03-21, expected a day up to 2027-03-20");
    CHECK(wrongWith(small.book, check(small, "2027-03-20", 6, 2), today)->what.find("only 5 stand in it") !=
          std::string::npos);
    RootCheck nowhere = check(small, "2027-03-20", 4, 2);
    nowhere.container = 9;
    CHECK(wrongWith(small.book, nowhere, today));
    nowhere.batch = {99};
    CHECK(wrongWith(small.book, nowhere, today));
}

TEST_CASE("Roots that vanish raise a question, roots that grow none") {
    SmallBook small = smallBook();
    CHECK_FALSE(questionAbout(small.book, check(small, "2027-03-20", 5, 0)));
    perform(small.book, {RecordCheck{check(small, "2027-03-15", 5, 3)}});
    CHECK_FALSE(questionAbout(small.book, check(small, "2027-03-20", 5, 4)));
    const auto question = questionAbout(small.book, check(small, "2027-03-20", 5, 2));
    REQUIRE(question);
    CHECK(*question == "27-046-A/01: 2 of 5 rooted, but 3 of 5 on 2027-03-15; have roots vanished?");
    // One of five picked may be one of the two that were not rooted.
    CHECK_FALSE(questionAbout(small.book, check(small, "2027-03-20", 1, 0)));
    CHECK(questionAbout(small.book, check(small, "2027-03-15", 5, 3)));
}

TEST_CASE("Checks entered in a copy are brought home, once") {
    SmallBook small = smallBook();
    perform(small.book, {RecordCheck{check(small, "2027-03-10", 5, 1)}});
    HouseBook copy = small.book;
    perform(copy, {RecordCheck{check(small, "2027-03-20", 5, 4)}});
    perform(copy, {RecordCheck{check(small, "2027-03-15", 5, 2)}});
    perform(small.book, {RecordCheck{check(small, "2027-03-12", 5, 1)}});
    const RoundMerge found = mergeRound(small.book, copy);
    CHECK(found.conflicts.empty());
    REQUIRE(found.checks.size() == 2);
    CHECK(found.checks.front().rooted == 2);
    CHECK(found.checks.back().rooted == 4);
    for (const RootCheck& one : found.checks) perform(small.book, {RecordCheck{one}});
    CHECK(mergeRound(small.book, copy).checks.empty());
}

TEST_CASE("What both books say otherwise, or the book can't hold any more, is told and left out") {
    SmallBook small = smallBook();
    HouseBook copy = small.book;
    perform(copy, {RecordCheck{check(small, "2027-03-10", 5, 1)}});
    perform(copy, {RecordCheck{check(small, "2027-03-20", 5, 4)}});
    RootCheck other = check(small, "2027-03-20", 5, 2);
    other.container = 2;
    perform(copy, {RecordCheck{other}});
    Batch fresh = copy.get<Batch>(small.struck);
    fresh.id = {};
    fresh.code.clear();
    for (BatchContainer& container : fresh.containers) container.number = 0;
    perform(copy, {AddBatch{fresh, {}}});
    const Batch& added = copy.all<Batch>().rbegin()->second;
    perform(copy, {RecordCheck{{{}, added.id, 1, day("2027-03-22"), 5, 1, 0, 4, 0, std::nullopt, ""}}});
    // At home the first pot was looked at the same day, and two cuttings of the second were lost.
    perform(small.book, {RecordCheck{check(small, "2027-03-20", 5, 3)}});
    perform(small.book, {RecordLoss{{{}, small.struck, 2, day("2027-03-18"), 2, "rot"}}});
    const RoundMerge found = mergeRound(small.book, copy);
    REQUIRE(found.checks.size() == 1);
    CHECK(found.checks.front().day == day("2027-03-10"));
    REQUIRE(found.conflicts.size() == 3);
    CHECK(found.conflicts[0].text() ==
          "27-046-A/01: it was looked at on 2027-03-20 in both books: 3 of 5 rooted "
          "here, 4 of 5 in the copy");
    CHECK(found.conflicts[1].place == "27-046-A, container 2");
    CHECK(found.conflicts[1].what.find("only 3 stand in it") != std::string::npos);
    CHECK(found.conflicts[2].what == "this book has no such batch");
}
