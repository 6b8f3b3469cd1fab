#include "core/book/load.h"

#include "core/book/query.h"
#include "tests/support/small_nursery.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace warmbench;

TEST_CASE("The load by heat adds up to the slots taken in every zone, each day") {
    const HouseBook book = tests::smallNursery();
    const Day from = tests::smallNurseryToday() - 30;
    const SlotLoad load = slotLoad(book, from, from + 90);
    REQUIRE(load.days() == 90);
    for (Day day = from; day < from + 90; day = day + 1) {
        int taken = 0;
        for (const auto& [id, zone] : book.all<Zone>()) taken += slotsTaken(book, id, day);
        CHECK(load.taken(day) == taken);
    }
    CHECK(load.usable == 3 * 6 * 46 - 2);
    CHECK(!load.heats.front());
    CHECK(std::is_sorted(load.heats.begin(), load.heats.end()));
}

TEST_CASE("A zone's slots count at the set-point of its mat on that day") {
    const HouseBook book = tests::smallNursery();
    const Day today = tests::smallNurseryToday();
    const SlotLoad load = slotLoad(book, today, today + 1);
    for (std::size_t heat = 0; heat < load.heats.size(); ++heat) {
        int taken = 0;
        for (const auto& [id, zone] : book.all<Zone>())
            if (setPointOn(book, id, today) == load.heats[heat]) taken += slotsTaken(book, id, today);
        CHECK(load.takenByHeat[heat][0] == taken);
    }
}

TEST_CASE("Cuttings struck stand on their strike day") {
    const HouseBook book = tests::smallNursery();
    const Day today = tests::smallNurseryToday();
    const SlotLoad load = slotLoad(book, today, today + 10);
    CHECK(load.cuttingsStruck == std::vector<int>{0, 8 * (24 + 30), 0, 0, 8 * (18 + 20), 0, 0, 0, 0, 8 * 16});
}

TEST_CASE("Batches count on the day on which their rooting is to end, whichever zone they stand in by then") {
    const HouseBook book = tests::smallNursery();
    const Day from = tests::smallNurseryToday() - 60;
    constexpr int days = 200;
    std::vector<int> expected(days, 0);
    for (const auto& [id, batch] : book.all<Batch>()) {
        std::optional<Day> ends;
        for (const StayId stay : book.staysOf(id))
            if (const Stay& one = book.get<Stay>(stay); one.stage == Stage::Rooting)
                ends = std::max(ends.value_or(one.to), one.to);
        if (ends && *ends >= from && *ends < from + days) ++expected[static_cast<std::size_t>(*ends - from)];
    }
    REQUIRE(std::count(expected.begin(), expected.end(), 0) < days);
    CHECK(slotLoad(book, from, from + days).batchesRooted == expected);
}

TEST_CASE("No days and an empty book have an empty load") {
    const Day day = tests::smallNurseryToday();
    CHECK(slotLoad(tests::smallNursery(), day, day).days() == 0);
    CHECK(slotLoad(HouseBook{}, day, day + 2).taken(day) == 0);
    CHECK(!daysOf(HouseBook{}));
}

TEST_CASE("The next slots fall free on the first day that some taken slot is not taken again") {
    const HouseBook book = tests::smallNursery();
    const Day today = tests::smallNurseryToday();
    for (const auto& [id, zone] : book.all<Zone>()) {
        const auto next = nextSlotsFree(book, id, today);
        REQUIRE(next);
        CHECK(*next > today);
        bool ends = false;
        for (const StayId stay : book.staysIn(id)) ends = ends || book.get<Stay>(stay).to == *next;
        CHECK(ends);
    }
    CHECK(!nextSlotsFree(book, book.all<Zone>().begin()->first, today + 400));
}
