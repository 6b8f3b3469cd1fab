#include "core/season/day_work.h"

#include "core/book/query.h"
#include "core/book/whereabouts.h"
#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::season;
using warmbench::testing::on;
using warmbench::testing::SeasonBook;

namespace {

/// Puts a planned batch of so many cuttings into the warm zone.
BatchId plan(SeasonBook& nursery, Day day, int cuttings, int column) {
    const BatchId id = nursery.book.nextId<Batch>();
    Batch batch;
    batch.taxon = nursery.taxon;
    batch.recipe = testing::semiRipe(nursery.taxon);
    batch.stock = nursery.stock;
    batch.strikeDay = day;
    batch.containerType = nursery.pot;
    batch.containers = {{1, cuttings}};
    Stay stay;
    stay.zone = nursery.warm;
    stay.from = day;
    stay.to = day + 40;
    stay.places = {{1, {0, column, 1, 1}}};
    REQUIRE(nursery.book.perform(Command{AddBatch{batch, {stay}}}));
    return id;
}

DayWork workOn(const SeasonBook& nursery, Day day) {
    return dayWork(nursery.book, forecast::BookForecast(nursery.book, day));
}

} // namespace

TEST_CASE("A day asks for what is planned for it and what was left on days before") {
    SeasonBook nursery;
    const BatchId left = plan(nursery, on(8, 2), 5, 0);
    const BatchId today = plan(nursery, on(8, 4), 4, 1);
    plan(nursery, on(8, 5), 3, 2);
    const DayWork work = workOn(nursery, on(8, 4));
    CHECK(work.strikes == std::vector<BatchId>{left, today});
    REQUIRE(work.takings.size() == 1);
    CHECK(work.takings.front().cuttings == 9);
    CHECK(work.takings.front().stock == nursery.stock);
    CHECK(work.materials.containers.at("1-litre pot") == 2);
    CHECK(work.hazards.count(Hazard::Blades) == 1);
    REQUIRE(nursery.book.perform(Command{StrikeBatch{left, on(8, 4)}}));
    CHECK(workOn(nursery, on(8, 4)).strikes == std::vector<BatchId>{today});
    CHECK(workOn(nursery, on(8, 1)).strikes.empty());
}

TEST_CASE("A mat is set on the day on which its set-point changes, and only then") {
    SeasonBook nursery;
    REQUIRE(nursery.book.perform(Command{
        SetMatRuns{nursery.warm, on(8, 1), on(9, 1), {{{}, {}, on(8, 4), on(8, 10), Celsius{180}}}}}));
    REQUIRE(workOn(nursery, on(8, 4)).mats.size() == 1);
    CHECK_FALSE(workOn(nursery, on(8, 4)).mats.front().before);
    CHECK(workOn(nursery, on(8, 4)).mats.front().now == Celsius{180});
    CHECK(workOn(nursery, on(8, 4)).hazards.count(Hazard::ElectricHeat) == 1);
    CHECK(workOn(nursery, on(8, 5)).mats.empty());
    CHECK_FALSE(workOn(nursery, on(8, 10)).mats.front().now);
}

TEST_CASE("A day tells what is amiss where batches stand") {
    SeasonBook nursery;
    const BatchId id =
        nursery.strike(on(8, 1), 5, 60); // in the open at 12 °C; its recipe wants a tent and 14 °C
    const DayWork work = workOn(nursery, on(8, 10));
    REQUIRE(work.troubles.size() == 2);
    CHECK(nursery.book.get<Stay>(work.troubles[0].stay).batch == id);
    CHECK(workOn(nursery, on(12, 1)).troubles.empty());
}

TEST_CASE("A batch whose stay has ended is looked for where it stood last") {
    SeasonBook nursery;
    const BatchId batch = nursery.strike(on(7, 20), 20, 40);
    CHECK(whereOn(nursery.book, batch, on(7, 20)) == "Bench 1 · B");
    CHECK(whereOn(nursery.book, batch, on(7, 20) + 39) == "Bench 1 · B");
    CHECK(whereOn(nursery.book, batch, on(7, 20) + 40) == "last in Bench 1 · B");
    CHECK(zonesOn(nursery.book, batch, on(9, 10)).empty());
    CHECK(zonesLastOn(nursery.book, batch, on(9, 10)) == std::vector{nursery.open});
    // Before its first day it stands nowhere.
    CHECK(whereOn(nursery.book, batch, on(7, 19)) == "no place");
    const Stay first = nursery.book.get<Stay>(*nursery.book.staysOf(batch).begin());
    REQUIRE(
        nursery.book.perform(Command{MoveStay{first.id, nursery.warm, first.from, first.to, first.places}}));
    CHECK(whereOn(nursery.book, batch, on(9, 10)) == "last in Bench 1 · A");
}

TEST_CASE("Containers that were looked at today are no more to be looked at today") {
    SeasonBook nursery;
    nursery.strike(on(8, 2), 40, 90);
    const Day today = on(9, 20);
    const auto left = [&] {
        return dayWork(nursery.book, forecast::BookForecast(nursery.book, today)).stops;
    };
    const std::vector<round::Stop> stops = left();
    REQUIRE(!stops.empty());
    RootCheck check;
    check.batch = stops.front().batch;
    check.container = stops.front().container;
    check.day = today;
    check.examined = check.rooted = 1;
    REQUIRE(nursery.book.perform({RecordCheck{check}}));
    CHECK(left().size() == stops.size() - 1);
}
