#include "core/season/target_answer.h"

#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::season;
using warmbench::testing::on;
using warmbench::testing::SeasonBook;

namespace {

std::optional<TargetAnswer> answerOn(const SeasonBook& nursery, Day day) {
    PlanRequest request;
    request.from = day;
    return answerFor(nursery.book, targetNeeds(nursery.book, testing::builtIn(), request).front());
}

} // namespace

TEST_CASE("A target is answered with its wood, days, cuttings, containers, slots, stock and zones") {
    SeasonBook nursery;
    nursery.want(40, on(12, 20));
    const auto answer = answerOn(nursery, on(8, 2));
    REQUIRE(answer);
    CHECK(answer->recipe.wood == Wood::SemiRipe);
    CHECK(answer->window.first == on(8, 2));
    CHECK(answer->cuttings > 50); // 40 of 65 to 90 %, to be sure
    CHECK(answer->containers == (answer->cuttings + 4) / 5);
    CHECK(answer->slots == answer->containers);
    CHECK(answer->openDays == 30);
    CHECK(answer->rootingDays > 40);
    REQUIRE(answer->stocks.size() == 1);
    CHECK(answer->stocks[0].cuttings == 200);
    CHECK(answer->zones == std::vector{nursery.warm});
    CHECK(answer->freeSlots == 96);
    CHECK(answer->inTheWay.empty());
}

TEST_CASE("What is in the way of a target is said: stock, room, hands") {
    SeasonBook nursery;
    nursery.want(400, on(12, 20));
    const auto answer = answerOn(nursery, on(8, 2));
    REQUIRE(answer);
    REQUIRE(answer->inTheWay.size() == 2);
    CHECK(answer->inTheWay[0].text().find("its stock gives 200 semi-ripe cuttings of ") == 0);
    CHECK(answer->inTheWay[1] == "zones that suit it have 96 slots free on 2027-08-02");
    Nursery nobody = nursery.book.nursery();
    nobody.strikesByWeekday.fill(0);
    REQUIRE(nursery.book.perform(Command{Put<Nursery>{nobody}}));
    CHECK(answerOn(nursery, on(8, 2))->inTheWay.back() == "hands are left for 0 cuttings in those days");
}

TEST_CASE(
    "Where doubt about the take asks for most of the cuttings, the answer says so, and what would help") {
    SeasonBook nursery;
    nursery.want(20, on(12, 20));
    CHECK(answerOn(nursery, on(8, 2))->doubt.empty());
    Recipe wide = testing::semiRipe(nursery.taxon);
    wide.takePercent.value = {7, 90};
    for (const auto& [id, recipe] : nursery.book.all<Recipe>())
        if (recipe.taxon == nursery.taxon && recipe.wood == wide.wood) wide.id = id;
    REQUIRE(nursery.book.perform(Command{Put<Recipe>{wide}}));
    const auto answer = answerOn(nursery, on(8, 2));
    REQUIRE(answer);
    const std::string doubt = answer->doubt.text();
    INFO(doubt);
    CHECK(doubt.find(std::to_string(answer->cuttings) +
                     " cuttings for 20 plants, as the recipe's take may be "
                     "anything from 7 to 90 %") == 0);
    PlanRequest request;
    request.from = on(8, 2);
    request.surenessPermille = 700;
    const auto lessSure =
        answerFor(nursery.book, targetNeeds(nursery.book, testing::builtIn(), request).front());
    REQUIRE(lessSure);
    CHECK(doubt.find("at a sureness of 70 % they would be " + std::to_string(lessSure->cuttings)) !=
          std::string::npos);
}

TEST_CASE("A target that is covered, or out of season, has no answer but its need's reason") {
    SeasonBook nursery;
    nursery.want(40, *Day::make(2028, 12, 1));
    CHECK_FALSE(answerOn(nursery, on(1, 10)));
}
