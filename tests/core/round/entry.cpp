#include "core/round/entry.h"
#include "core/round/merge.h"
#include "core/round/weaning.h"

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
    CHECK(wrongWith(small.book, check(small, "2027-03-20", 6, 2), today)
              ->what.text()
              .find("only 5 stand in it") != std::string::npos);
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
    REQUIRE(found.commands.size() == 2);
    CHECK(found.all.checks == 2);
    CHECK(std::get<RecordCheck>(found.commands.front().what).check.rooted == 2);
    CHECK(std::get<RecordCheck>(found.commands.back().what).check.rooted == 4);
    perform(small.book, {Group{"Bring home", found.commands}});
    CHECK(mergeRound(small.book, copy).commands.empty());
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
    REQUIRE(found.commands.size() == 1);
    CHECK(std::get<RecordCheck>(found.commands.front().what).check.day == day("2027-03-10"));
    REQUIRE(found.conflicts.size() == 3);
    CHECK(found.conflicts[0].text() ==
          "27-046-A/01: it was looked at on 2027-03-20 in both books: 3 of 5 rooted "
          "here, 4 of 5 rooted in the copy");
    CHECK(found.conflicts[1].place == "27-046-A, container 2");
    CHECK(found.conflicts[1].what.text().find("only 3 stand in it") != std::string::npos);
    CHECK(found.conflicts[2].what == "this book has no such batch");
}

TEST_CASE("What was thrown away and potted on with a copy is brought home with its freed slots, once") {
    SmallBook small = smallBook();
    HouseBook copy = small.book;
    perform(copy, {RecordLoss{{{}, small.struck, 1, day("2027-03-10"), 1, "rot"}}});
    perform(copy, {Discard{small.struck, day("2027-03-12"), {2}, "grey mould"}});
    perform(copy, {PotOn{small.struck, day("2027-04-10"), {{3, 4, 1}}, "early"}});
    const RoundMerge found = mergeRound(small.book, copy);
    CHECK(found.conflicts.empty());
    CHECK(found.all.losses == 2);
    CHECK(found.all.pottings == 1);
    CHECK(found.all.first == day("2027-03-10"));
    CHECK(found.all.last == day("2027-04-10"));
    CHECK(found.byBatch == std::map<BatchId, RoundDeeds>{{small.struck, found.all}});
    const Command home = bringHome(found, "laptop.wbook");
    CHECK(words(small.book, home).text() == "Bring home the round in laptop.wbook");
    perform(small.book, home);
    CHECK(small.book.all<Loss>() == copy.all<Loss>());
    CHECK(small.book.all<Potting>() == copy.all<Potting>());
    CHECK(small.book.all<Stay>() == copy.all<Stay>());
    CHECK(mergeRound(small.book, copy).commands.empty());
    CHECK(mergeRound(small.book, copy).conflicts.empty());
}

TEST_CASE("A container of which the books tell different ends is left out, with both") {
    SmallBook small = smallBook();
    HouseBook copy = small.book;
    perform(copy, {PotOn{small.struck, day("2027-04-10"), {{3, 4, 1}}, ""}});
    perform(copy, {Discard{small.struck, day("2027-04-11"), {2}, "grey mould"}});
    perform(small.book, {PotOn{small.struck, day("2027-04-10"), {{3, 5, 0}}, ""}});
    perform(small.book, {RecordLoss{{{}, small.struck, 2, day("2027-04-01"), 2, "rot"}}});
    const HouseBook before = small.book;
    const RoundMerge found = mergeRound(small.book, copy);
    CHECK(found.commands.empty());
    REQUIRE(found.conflicts.size() == 2);
    CHECK(found.conflicts[0].text() == "27-046-A/03: it was potted on on 2027-04-10 in both books: 5 potted "
                                       "on here, 4 potted on in the copy");
    CHECK(found.conflicts[1].text() == "27-046-A/02: 5 were thrown away in the copy, but 3 stand in it here");
    CHECK(small.book == before);
}

TEST_CASE("A batch that was weaned with a copy is weaned at home on that day, once") {
    SmallBook small = smallBook();
    HouseBook copy = small.book;
    perform(copy, {RecordCheck{check(small, "2027-03-24", 5, 5)}});
    perform(copy, *weanCommand(copy, small.struck, day("2027-03-25")));
    const RoundMerge found = mergeRound(small.book, copy);
    CHECK(found.conflicts.empty());
    CHECK(found.all.checks == 1);
    CHECK(found.all.weanings == 1);
    perform(small.book, {Group{"Bring home", found.commands}});
    CHECK(small.book.all<Stay>() == copy.all<Stay>());
    CHECK(mergeRound(small.book, copy).commands.empty());
    CHECK(mergeRound(small.book, copy).conflicts.empty());
}

TEST_CASE("A batch that was weaned with a copy on the plan's day, or later, is weaned at home so") {
    for (const char* on : {"2027-04-01", "2027-04-05"}) {
        INFO(on);
        SmallBook small = smallBook();
        HouseBook copy = small.book;
        perform(copy, *weanCommand(copy, small.struck, day(on)));
        const RoundMerge found = mergeRound(small.book, copy);
        CHECK(found.conflicts.empty());
        CHECK(found.all.weanings == 1);
        perform(small.book, {Group{"Bring home", found.commands}});
        CHECK(small.book.all<Stay>() == copy.all<Stay>());
        CHECK(mergeRound(small.book, copy).commands.empty());
    }
}

TEST_CASE("A batch that both books weaned on other days is told, and stays as it is at home") {
    SmallBook small = smallBook();
    perform(small.book, {RecordCheck{check(small, "2027-03-19", 5, 4)}});
    HouseBook copy = small.book;
    perform(copy, *weanCommand(copy, small.struck, day("2027-03-25")));
    perform(small.book, *weanCommand(small.book, small.struck, day("2027-03-20")));
    const RoundMerge found = mergeRound(small.book, copy);
    CHECK(found.commands.empty());
    REQUIRE(found.conflicts.size() == 1);
    CHECK(found.conflicts[0].text() ==
          "27-046-A: it was weaned on 2027-03-25 in the copy, but here: it was weaned on 2027-03-20");
}
