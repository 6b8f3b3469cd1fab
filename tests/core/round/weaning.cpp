#include "core/round/weaning.h"

#include "core/book/query.h"
#include "core/book/whereabouts.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::round;
using namespace warmbench::tests;

TEST_CASE("A batch that is weaned early goes to its weaning place that day, for as long as was planned") {
    SmallBook small = smallBook();
    const auto command = weanCommand(small.book, small.struck, day("2027-03-25"));
    REQUIRE(command);
    CHECK(words(small.book, *command) == "Wean 27-046-A");
    perform(small.book, *command);
    const Stay& rooting = small.book.get<Stay>(small.rooting);
    const Stay& weaning = small.book.get<Stay>(small.weaning);
    CHECK(rooting.to == day("2027-03-25"));
    CHECK(weaning.from == day("2027-03-25"));
    CHECK(weaning.to == day("2027-04-08"));
    CHECK(weaning.zone == small.cool);
    CHECK(weaning.weanedOn == day("2027-03-25"));
    CHECK_FALSE(rooting.weanedOn);
}

TEST_CASE("A batch with no place to be weaned in is weaned where it stands, for its recipe's days") {
    SmallBook small = smallBook();
    perform(small.book, {RemoveStay{small.weaning}});
    perform(small.book, *weanCommand(small.book, small.struck, day("2027-03-25")));
    const Stay* stay = stayOn(small.book, small.struck, day("2027-03-25"));
    REQUIRE(stay);
    CHECK(stay->stage == Stage::Weaning);
    CHECK(stay->zone == small.warm);
    CHECK(stay->places == small.book.get<Stay>(small.rooting).places);
    CHECK(stay->weanedOn == day("2027-03-25"));
    const Recipe& recipe = small.book.get<Batch>(small.struck).recipe;
    CHECK(stay->to - stay->from == recipe.weanDays.value + recipe.growOnDays.value);
}

TEST_CASE("A batch is not weaned on the day it is struck, nor twice") {
    SmallBook small = smallBook();
    perform(small.book, {RecordCheck{{{}, small.struck, 1, day("2027-03-24"), 5, 4, 0, 1, 0, {}, ""}}});
    const auto early = weanCommand(small.book, small.struck, day("2027-02-15"));
    REQUIRE_FALSE(early);
    CHECK(early.refusal().text() == "27-046-A: it roots from 2027-02-15 on; expected a day after");
    perform(small.book, *weanCommand(small.book, small.struck, day("2027-04-01")));
    const auto twice = weanCommand(small.book, small.struck, day("2027-04-02"));
    REQUIRE_FALSE(twice);
    CHECK(twice.refusal().text() == "27-046-A: it was weaned on 2027-04-01");
}

TEST_CASE("A batch that is weaned on the plan's day, or said to have been, keeps its stays and the day") {
    SmallBook small = smallBook();
    const Stay rooting = small.book.get<Stay>(small.rooting);
    Stay weaning = small.book.get<Stay>(small.weaning);
    weaning.weanedOn = weaning.from;
    perform(small.book, *weanCommand(small.book, small.struck, weaning.from));
    CHECK(small.book.get<Stay>(small.rooting) == rooting);
    CHECK(small.book.get<Stay>(small.weaning) == weaning);
    CHECK(small.book.staysOf(small.struck).size() == 2);
}

TEST_CASE(
    "A batch that the plan's day alone moved on is weaned when somebody says so, and rooted until then") {
    SmallBook small = smallBook();
    CHECK_FALSE(weanedByPlanOnly(small.book, small.struck, day("2027-03-31")));
    CHECK(weanedByPlanOnly(small.book, small.struck, day("2027-04-01")) == day("2027-04-01"));
    CHECK(weanedByPlanOnly(small.book, small.struck, day("2027-04-05")) == day("2027-04-01"));
    CHECK_FALSE(weanedByPlanOnly(small.book, small.struck, day("2027-04-15"))); // its place is given up
    const auto over = weanCommand(small.book, small.struck, day("2027-04-15"));
    REQUIRE_FALSE(over);
    CHECK(over.refusal().text() ==
          "27-046-A: its place was given up on 2027-04-15; give it one first, or pot it on");
    perform(small.book, *weanCommand(small.book, small.struck, day("2027-04-05")));
    const Stay* before = stayOn(small.book, small.struck, day("2027-04-04"));
    REQUIRE(before);
    CHECK(before->stage == Stage::Rooting);
    CHECK(before->zone == small.cool);
    CHECK(small.book.get<Stay>(small.weaning).from == day("2027-04-05"));
    CHECK(small.book.get<Stay>(small.weaning).to == day("2027-04-19"));
    CHECK_FALSE(weanedByPlanOnly(small.book, small.struck, day("2027-04-06")));
    CHECK_FALSE(weanCommand(small.book, small.struck, day("2027-04-06")));
}

TEST_CASE(
    "A batch that is weaned late keeps the end of its stay where its slots are wanted or it goes elsewhere") {
    SmallBook wanted = smallBook();
    const Stay weaning = wanted.book.get<Stay>(wanted.weaning);
    Stay next = wanted.book.get<Stay>(wanted.plannedStay);
    next.id = {};
    next.zone = wanted.cool;
    next.from = day("2027-04-16");
    next.to = day("2027-04-30");
    next.places = {{1, {weaning.places.front().slots.row, weaning.places.front().slots.col, 1, 3}},
                   {2, {3, 1, 1, 3}}};
    perform(wanted.book, {RemoveStay{wanted.plannedStay}});
    perform(wanted.book, {AddStay{next}});
    perform(wanted.book, *weanCommand(wanted.book, wanted.struck, day("2027-04-05")));
    CHECK(wanted.book.get<Stay>(wanted.weaning).to == weaning.to);

    SmallBook followed = smallBook();
    Stay grown = weaning;
    grown.id = {};
    grown.stage = Stage::GrowingOn;
    grown.from = weaning.to;
    grown.to = weaning.to + 20;
    perform(followed.book, {AddStay{grown}});
    perform(followed.book, *weanCommand(followed.book, followed.struck, day("2027-04-05")));
    CHECK(followed.book.get<Stay>(followed.weaning).to == weaning.to);
}

TEST_CASE("Roots that were seen do not tell that a batch was weaned; pots that were potted on do") {
    SmallBook seen = smallBook();
    perform(seen.book, {RecordCheck{{{}, seen.struck, 1, day("2027-03-30"), 5, 5, 0, 0, 0, {}, ""}}});
    CHECK(weanedByPlanOnly(seen.book, seen.struck, day("2027-04-05")) == day("2027-04-01"));
    SmallBook potted = smallBook();
    perform(potted.book, {PotOn{potted.struck, day("2027-04-03"), {{1, 5, 0}}, ""}});
    CHECK(weanedByPlanOnly(potted.book, potted.struck, day("2027-04-02")) == day("2027-04-01"));
    CHECK_FALSE(weanedByPlanOnly(potted.book, potted.struck, day("2027-04-05")));
}

TEST_CASE(
    "A batch that the plan has weaned and grown on elsewhere before anybody did rooted at both places") {
    SmallBook small = smallBook();
    const Stay weaning = small.book.get<Stay>(small.weaning);
    Stay grown = weaning;
    grown.id = {};
    grown.stage = Stage::GrowingOn;
    grown.zone = small.warm;
    grown.from = weaning.to;
    grown.to = weaning.to + 30;
    perform(small.book, {AddStay{grown}});
    CHECK(weanedByPlanOnly(small.book, small.struck, day("2027-04-20")) == day("2027-04-01"));
    perform(small.book, *weanCommand(small.book, small.struck, day("2027-04-20")));
    for (const char* on : {"2027-04-10", "2027-04-19"}) {
        INFO(on);
        REQUIRE(stayOn(small.book, small.struck, day(on)));
        CHECK(stayOn(small.book, small.struck, day(on))->stage == Stage::Rooting);
    }
    CHECK(stayOn(small.book, small.struck, day("2027-04-10"))->zone == small.cool);
    const Stay* since = stayOn(small.book, small.struck, day("2027-04-20"));
    REQUIRE(since);
    CHECK(since->zone == small.warm);
    CHECK(since->stage == Stage::GrowingOn);
    CHECK(since->weanedOn == day("2027-04-20"));
    CHECK_FALSE(weanedByPlanOnly(small.book, small.struck, day("2027-04-21")));
}

namespace {

/// The small book with the last container of its struck batch rooting in the cool zone, with no place to be
/// weaned in.
struct SplitBook {
    SmallBook small = smallBook();
    int apart = 0;

    SplitBook() {
        Stay rooting = small.book.get<Stay>(small.rooting);
        Stay weaning = small.book.get<Stay>(small.weaning);
        Stay other = rooting;
        apart = rooting.places.back().container;
        other.id = {};
        other.zone = small.cool;
        other.places = {{apart, {3, 3, 1, 1}}};
        rooting.places.pop_back();
        std::erase_if(weaning.places, [&](const Place& place) { return place.container == apart; });
        perform(small.book,
                {Group{"Split",
                       {{MoveStay{weaning.id, weaning.zone, weaning.from, weaning.to, weaning.places}},
                        {MoveStay{rooting.id, rooting.zone, rooting.from, rooting.to, rooting.places}},
                        {AddStay{other}}}}});
    }
    [[nodiscard]] const Stay* stayOf(int container, const char* on) const {
        for (const Stay* stay : staysOn(small.book, small.struck, day(on)))
            for (const Place& place : stay->places)
                if (place.container == container) return stay;
        return nullptr;
    }
};

} // namespace

TEST_CASE("Each part of a batch that stands apart is weaned where it was to be, or where it roots") {
    SplitBook split;
    HouseBook& book = split.small.book;
    perform(book, {RecordCheck{{{}, split.small.struck, 1, day("2027-03-24"), 5, 4, 0, 1, 0, {}, ""}}});
    perform(book, *weanCommand(book, split.small.struck, day("2027-03-25")));
    for (const BatchContainer& container : book.get<Batch>(split.small.struck).containers) {
        INFO(container.number);
        const Stay* before = split.stayOf(container.number, "2027-03-24");
        const Stay* after = split.stayOf(container.number, "2027-03-25");
        REQUIRE(before);
        REQUIRE(after);
        CHECK(before->stage == Stage::Rooting);
        CHECK(after->stage == Stage::Weaning);
        CHECK(after->zone == split.small.cool);
        CHECK((before->zone == after->zone) == (container.number == split.apart));
    }
    CHECK_FALSE(weanCommand(book, split.small.struck, day("2027-03-26")));
}

TEST_CASE("Of a batch of which a part is weaned the rest can be weaned later") {
    SplitBook split;
    HouseBook& book = split.small.book;
    const StayId apart = split.stayOf(split.apart, "2027-03-20")->id;
    Stay early = book.get<Stay>(apart);
    perform(book, {MoveStay{apart, early.zone, early.from, day("2027-03-20"), early.places}});
    early.id = {};
    early.stage = Stage::Weaning;
    early.from = day("2027-03-20");
    early.to = day("2027-04-03");
    early.weanedOn = early.from;
    perform(book, {AddStay{early}});
    perform(book, *weanCommand(book, split.small.struck, day("2027-03-25")));
    CHECK(split.stayOf(split.apart, "2027-03-25")->from == day("2027-03-20"));
    CHECK(split.stayOf(split.apart, "2027-03-25")->weanedOn == day("2027-03-20"));
    CHECK(book.get<Stay>(split.small.weaning).from == day("2027-03-25"));
}

TEST_CASE("What a batch was to root in later is taken back when it is weaned before") {
    SmallBook small = smallBook();
    Stay rooting = small.book.get<Stay>(small.rooting);
    Stay later = rooting;
    later.id = {};
    later.from = day("2027-03-28");
    perform(small.book,
            {MoveStay{rooting.id, rooting.zone, rooting.from, day("2027-03-28"), rooting.places}});
    perform(small.book, {AddStay{later}});
    perform(small.book, *weanCommand(small.book, small.struck, day("2027-03-25")));
    CHECK(small.book.get<Stay>(small.rooting).to == day("2027-03-25"));
    CHECK(staysOn(small.book, small.struck, day("2027-03-30")).size() == 1);
    CHECK(stayOn(small.book, small.struck, day("2027-03-30"))->stage == Stage::Weaning);
}
