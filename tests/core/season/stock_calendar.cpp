#include "core/season/stock_calendar.h"

#include "core/season/renewal.h"
#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::season;
using warmbench::testing::on;
using warmbench::testing::SeasonBook;

TEST_CASE("Shoots stand in their season, less what was taken until it has grown again") {
    SeasonBook nursery; // 20 plants of 10 cuttings, 15 July to 30 September, 30 days to grow again
    nursery.strike(on(8, 1), 50, 60);
    const auto calendars = stockCalendar(nursery.book, nursery.book.get<Stock>(nursery.stock), on(7, 14), 90);
    REQUIRE(calendars.size() == 1);
    const auto shoots = [&](Day day) {
        return calendars.front().shoots[static_cast<std::size_t>(day - on(7, 14))];
    };
    CHECK(shoots(on(7, 14)) == 0);
    CHECK(shoots(on(7, 15)) == 200);
    CHECK(shoots(on(8, 1)) == 200);
    CHECK(shoots(on(8, 2)) == 150);
    CHECK(shoots(on(8, 30)) == 150);
    CHECK(shoots(on(8, 31)) == 200);
    CHECK(shoots(on(9, 30)) == 200);
    CHECK(shoots(on(10, 1)) == 0);
    CHECK(calendars.front().taken[static_cast<std::size_t>(on(8, 1) - on(7, 14))] == 50);
}

TEST_CASE("A stock is overcut on the day on which more is taken than stands") {
    SeasonBook nursery;
    nursery.strike(on(8, 1), 150, 60);
    CHECK(overcuts(nursery.book, on(1, 1)).empty());
    nursery.strike(on(8, 20), 60, 60);
    const auto found = overcuts(nursery.book, on(1, 1));
    REQUIRE(found.size() == 1);
    CHECK(found[0].day == on(8, 20));
    CHECK(found[0].stands == 50);
    CHECK(found[0].over() == 10);
    CHECK(overcuts(nursery.book, on(8, 21)).empty());
    nursery.strike(on(10, 5), 3, 60);
    CHECK(overcuts(nursery.book, on(8, 21)).at(0).stands == 0);
    CHECK(takenFrom(nursery.book, nursery.stock, on(8, 1), on(8, 20)) == 150);
    CHECK(takenFrom(nursery.book, nursery.stock, on(8, 2), on(10, 6)) == 63);
}

TEST_CASE("A stock is renewed by a target of its own plants, due when its next season's cuttings are ready") {
    SeasonBook nursery;
    const Stock& stock = nursery.book.get<Stock>(nursery.stock);
    const Target target = renewalOf(nursery.book, stock, on(5, 1));
    CHECK(target.taxon == nursery.taxon);
    CHECK(target.plants == 20);
    CHECK(target.name == "T01");
    CHECK(target.note == "renews stock Row 2");
    // Struck a week before the season's end, 23 September, and potted on after the recipe's days.
    CHECK(target.due > on(9, 23) + 58);
    CHECK(target.due < on(9, 23) + 110);
    CHECK(nursery.book.perform(Command{Put<Target>{target}}));
    const BatchId batch = nursery.strike(on(8, 1), 30, 90, nursery.book.all<Target>().rbegin()->first);
    CHECK(renewedBy(nursery.book, nursery.book.get<Batch>(batch)) == &nursery.book.get<Stock>(nursery.stock));
    const HouseBook before = nursery.book;
    const Command command = potOnAsStock(nursery.book, {batch, on(10, 20), {{1, 3, 0}}, ""}, stock);
    CHECK(words(nursery.book, command).text() ==
          "Pot on " + nursery.book.get<Batch>(batch).code + " as stock plants of Row 2");
    const auto change = nursery.book.perform(command);
    REQUIRE(change);
    CHECK(nursery.book.get<Stock>(nursery.stock).plants == 23);
    REQUIRE_FALSE(nursery.book.apply(change->inverse()));
    CHECK(nursery.book == before);
    const BatchId other = nursery.strike(on(8, 1), 30, 90);
    CHECK(renewedBy(nursery.book, nursery.book.get<Batch>(other)) == nullptr);
    // In October its next season is that of the next year.
    CHECK(renewalOf(nursery.book, stock, on(10, 1)).due.year() == 2028);
}
