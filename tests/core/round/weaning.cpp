#include "core/round/weaning.h"

#include "core/book/query.h"
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
    const Recipe& recipe = small.book.get<Batch>(small.struck).recipe;
    CHECK(stay->to - stay->from == recipe.weanDays.value + recipe.growOnDays.value);
}

TEST_CASE("A batch is not weaned on the day it is struck, nor twice") {
    const SmallBook small = smallBook();
    const auto early = weanCommand(small.book, small.struck, day("2027-02-15"));
    REQUIRE_FALSE(early);
    CHECK(early.refusal().text() == "27-046-A: it roots from 2027-02-15 on; expected a day after");
    const auto twice = weanCommand(small.book, small.struck, day("2027-04-02"));
    REQUIRE_FALSE(twice);
    CHECK(twice.refusal().text() == "27-046-A: it was weaned on 2027-04-01");
}
