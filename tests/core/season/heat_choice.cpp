#include "core/season/heat_choice.h"

#include "core/book/query.h"
#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::season;
using warmbench::testing::SeasonBook;
using warmbench::testing::semiRipe;

TEST_CASE("A warmer mat roots sooner, and each set-point has its cost until then") {
    const SeasonBook nursery;
    const Zone& warm = nursery.book.get<Zone>(nursery.warm);
    const auto choices = heatChoices(nursery.book, warm, semiRipe(nursery.taxon), *Day::make(2027, 11, 1));
    REQUIRE(choices.size() >= 3);
    CHECK_FALSE(choices[0].setPoint);
    CHECK(choices[0].cost == Money{});
    for (std::size_t i = 2; i < choices.size(); ++i) {
        REQUIRE(choices[i].days);
        CHECK(*choices[i].days < *choices[i - 1].days);
    }
    // Nine of ten have after 56 days at 18 °C.
    CHECK(choices[2].setPoint == Celsius{180});
    CHECK(choices[2].days == 56);
    CHECK(choices[2].suits);
    CHECK(choices[2].cost > Money{});
}

TEST_CASE("Without a mat there is nothing to choose") {
    const SeasonBook nursery;
    CHECK(heatChoices(nursery.book, nursery.book.get<Zone>(nursery.open), semiRipe(nursery.taxon),
                      *Day::make(2027, 11, 1))
              .empty());
}

TEST_CASE("Of a batch that stands already only what is still to come is reckoned") {
    SeasonBook nursery;
    const Day struck = *Day::make(2027, 11, 1);
    const BatchId id = nursery.strike(struck, 30, 80);
    Stay stay = *staysInOrder(nursery.book, id).front();
    REQUIRE(nursery.book.perform({MoveStay{stay.id, nursery.warm, stay.from, stay.to, stay.places}}));
    REQUIRE(nursery.book.perform({SetMatRuns{
        nursery.warm, stay.from, stay.to, {{{}, nursery.warm, stay.from, stay.to, Celsius{180}}}}}));
    const Zone& warm = nursery.book.get<Zone>(nursery.warm);
    const Batch& batch = nursery.book.get<Batch>(id);
    const auto whole = heatChoices(nursery.book, warm, batch.recipe, struck);
    const auto later = heatChoices(nursery.book, warm, batch, struck + 20);
    REQUIRE(later.size() == whole.size());
    CHECK(later[2].setPoint == Celsius{180});
    CHECK(*later[2].days == *whole[2].days - 20);
    CHECK(later[2].cost < whole[2].cost);
    // The same as from the start where nothing has passed yet, and nothing once it is ready.
    CHECK(heatChoices(nursery.book, warm, batch, struck - 5)[2].days == whole[2].days);
    CHECK(heatChoices(nursery.book, warm, batch, struck + *whole[2].days)[2].days == 0);
}
