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
    // Until 25 September: what is taken on 2 August stands again after 30 days.
    CHECK(answer->stocks[0].cuttings == 400);
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
    CHECK(answer->inTheWay[0].text().find("its stock gives 400 semi-ripe cuttings of ") == 0);
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

TEST_CASE("A target whose window lies months ahead is answered with all of it at once") {
    SeasonBook nursery;
    nursery.want(40, on(12, 20));
    const auto answer = answerOn(nursery, on(1, 10));
    REQUIRE(answer);
    CHECK(answer->ahead);
    CHECK(answer->window == StrikeWindow{on(7, 15), on(12, 20) - 86});
    const auto inSeason = answerOn(nursery, on(8, 2));
    REQUIRE(inSeason);
    CHECK_FALSE(inSeason->ahead);
    CHECK(answer->recipe.wood == Wood::SemiRipe);
    CHECK(answer->cuttings == inSeason->cuttings);
    CHECK(answer->containers == inSeason->containers);
    CHECK(answer->slots == inSeason->slots);
    CHECK(answer->rootingDays == 56);
    CHECK(answer->openDays == 30);
    CHECK(answer->ready == on(7, 15) + 86);
    CHECK(answer->lateDays == 0);
    REQUIRE(answer->stocks.size() == 1);
    // 73 days of its season, its shoots stand again after 30 and 60 of them.
    CHECK(answer->stocks[0].cuttings == 600);
    CHECK(answer->zones == std::vector{nursery.warm});
    CHECK(answer->freeSlots == 96);
    CHECK(answer->inTheWay.empty());
}

TEST_CASE("A stock that is missing or too small for a window months ahead is told, with what it would give") {
    SeasonBook nursery;
    nursery.want(600, on(12, 20));
    const auto tooSmall = answerOn(nursery, on(1, 10));
    REQUIRE(tooSmall);
    const std::string cuttings = std::to_string(tooSmall->cuttings);
    REQUIRE_FALSE(tooSmall->inTheWay.empty());
    CHECK(tooSmall->inTheWay[0].text() == "its stock gives 600 semi-ripe cuttings of " + cuttings);
    Stock other = nursery.book.get<Stock>(nursery.stock);
    other.flushes[0].season = {{5, 1}, {6, 15}};
    REQUIRE(nursery.book.perform(Command{Put<Stock>{other}}));
    CHECK(answerOn(nursery, on(1, 10))->inTheWay[0].text() ==
          "its stock gives no semi-ripe cuttings in those days, and " + cuttings + " are needed");
    other.flushes[0].wood = Wood::Hardwood;
    REQUIRE(nursery.book.perform(Command{Put<Stock>{other}}));
    CHECK(answerOn(nursery, on(1, 10))->inTheWay[0].text() ==
          "its stock gives no semi-ripe cuttings at all, and " + cuttings + " are needed");
    REQUIRE(nursery.book.perform(Command{Remove<Stock>{nursery.stock}}));
    const auto none = answerOn(nursery, on(1, 10));
    REQUIRE(none);
    CHECK(none->stocks.empty());
    CHECK(none->inTheWay[0].text() ==
          "the book has no stock of it, which would have to give " + cuttings + " semi-ripe cuttings");
}

TEST_CASE("A stock of which other batches take all is told from one that gives nothing in those days") {
    SeasonBook nursery;
    nursery.want(40, on(12, 20));
    Stock slow = nursery.book.get<Stock>(nursery.stock);
    slow.flushes[0].regrowthDays = 300;
    REQUIRE(nursery.book.perform(Command{Put<Stock>{slow}}));
    nursery.strike(on(7, 15), 200, 30);
    const auto answer = answerOn(nursery, on(8, 2));
    REQUIRE(answer);
    REQUIRE_FALSE(answer->inTheWay.empty());
    CHECK(answer->inTheWay[0].text() ==
          "other batches take all semi-ripe cuttings that its stock gives in those days, and " +
              std::to_string(answer->cuttings) + " are needed");
}

TEST_CASE("A window that has gone by is answered with the next one, and how late its plants would be") {
    SeasonBook nursery;
    nursery.want(40, *Day::make(2028, 2, 1));
    const auto answer = answerOn(nursery, on(11, 1));
    REQUIRE(answer);
    CHECK(answer->ahead);
    CHECK(answer->window == StrikeWindow{*Day::make(2028, 7, 15), *Day::make(2028, 9, 30)});
    CHECK(answer->ready == *Day::make(2028, 10, 9));
    CHECK(answer->lateDays == 251);
    REQUIRE(answer->inTheWay.size() == 1);
    CHECK(answer->inTheWay[0] ==
          "even struck on 2028-07-15 they are potted on by 2028-10-09 only, 251 days late");
}

TEST_CASE("In an empty house the answer says that zones, containers and hands are missing") {
    HouseBook book;
    const auto put = [&](auto thing) {
        const auto id = book.nextId<decltype(thing)>();
        REQUIRE(book.perform(Command{Put<decltype(thing)>{std::move(thing)}}));
        return id;
    };
    const TaxonId taxon = put(Taxon{{}, "Olearia × haastii", {}, {}, ""});
    put(testing::semiRipe(taxon));
    put(Target{{}, "T1", taxon, 40, on(12, 20), Money{200}, {}, ""});
    PlanRequest request;
    request.from = on(1, 10);
    const auto answer = answerFor(book, targetNeeds(book, testing::builtIn(), request).front());
    REQUIRE(answer);
    CHECK(answer->cuttings > 50);
    CHECK_FALSE(answer->containerType);
    REQUIRE(answer->inTheWay.size() >= 3);
    CHECK(answer->inTheWay[0] == "the book has no container to strike in");
    CHECK(answer->inTheWay[1].text().find("the book has no stock of it") == 0);
    CHECK(answer->inTheWay[2] == "no house has a zone to root them in");
}

TEST_CASE("A house whose zones are all covered has none to wean in; a container may be too large for all") {
    SeasonBook nursery;
    nursery.want(40, on(12, 20));
    Zone open = nursery.book.get<Zone>(nursery.open);
    open.cover = Cover::Mist;
    REQUIRE(nursery.book.perform(Command{Put<Zone>{open}}));
    ContainerType pot = nursery.book.get<ContainerType>(nursery.pot);
    pot.footprint = {7, 1};
    REQUIRE(nursery.book.perform(Command{Put<ContainerType>{pot}}));
    const auto answer = answerOn(nursery, on(1, 10));
    REQUIRE(answer);
    REQUIRE(answer->inTheWay.size() == 2);
    CHECK(answer->inTheWay[0] == "1-litre pot is too large for every zone that suits it");
    CHECK(answer->inTheWay[1] == "no zone is without a cover, to wean and grow on in");
}

TEST_CASE("A target that is covered, or that no recipe is known for, has no answer but its need's reason") {
    SeasonBook nursery;
    const TargetId target = nursery.want(10, on(12, 20));
    nursery.strike(on(7, 20), 40, 80, target);
    CHECK_FALSE(answerOn(nursery, on(8, 2)));
    const TaxonId unknown = nursery.add(Taxon{{}, "Incognita dubia", {}, {}, ""});
    nursery.add(Target{{}, "X1", unknown, 20, on(9, 1), Money{100}, {}, ""});
    PlanRequest request;
    request.from = on(8, 2);
    const auto needs = targetNeeds(nursery.book, testing::builtIn(), request);
    CHECK_FALSE(answerFor(nursery.book, needs.front()));
    CHECK(needs.front().why.text().find("no recipe says how to strike it") == 0);
}
