#include "core/planner/packing/placement.h"

#include "bench.h"

#include <catch2/catch.hpp>

using namespace warmbench::planner;
using namespace warmbench::planner::packing;

TEST_CASE("Containers of one slot are placed whenever enough slots are free") {
    std::minstd_rand random(3);
    Placer placer;
    std::vector<SlotRect> slots;
    for (int round = 0; round < 100; ++round) {
        const Zone bench = test::zoneOf(test::within(random, 1, 6), test::within(random, 1, 12));
        Occupancy zone(bench, 10);
        std::vector<test::Standing> all;
        for (int slot = 0; slot < bench.rows * bench.cols; ++slot) {
            if (test::within(random, 0, 2) != 0) continue;
            const SlotRect rect{slot / bench.cols, slot % bench.cols, 1, 1};
            const int from = test::within(random, 0, 9);
            zone.occupy({&rect, 1}, from, from + 3);
            all.push_back({rect, from, from + 3});
        }
        Cells free;
        zone.freeOver(2, 6, free);
        CHECK_FALSE(placer.place(zone, {2, 6, free.count() + 1, {1, 1}, false, {}}, slots));
        CHECK(slots.empty());
        if (free.empty()) continue;
        CHECK(placer.place(zone, {2, 6, free.count(), {1, 1}, false, {}}, slots));
        for (const SlotRect& rect : slots) all.push_back({rect, 2, 6});
        CHECK(test::standsWell(bench, 10, all));
    }
}

TEST_CASE("A stay keeps the slots that it had when they are free") {
    Occupancy zone(test::zoneOf(4, 8), 20);
    Placer placer;
    std::vector<SlotRect> slots;
    const std::vector<SlotRect> before{{0, 2, 1, 1}, {3, 6, 1, 1}};
    CHECK(placer.place(zone, {5, 9, 2, {1, 1}, false, before}, slots));
    CHECK(slots == before);
    zone.occupy({before.data(), 1}, 8, 9);
    CHECK(placer.place(zone, {5, 9, 2, {1, 1}, false, before}, slots));
    CHECK(slots != before);
}

TEST_CASE("On an empty bench a stay stands in one group") {
    Placer placer;
    std::vector<SlotRect> slots;
    for (const Footprint& footprint : {Footprint{1, 1}, Footprint{2, 3}, Footprint{3, 2}, Footprint{2, 4}})
        for (const bool turn : {false, true})
            for (int containers = 1; containers <= 8; ++containers) {
                const Occupancy zone(test::zoneOf(6, 16), 10);
                REQUIRE(placer.place(zone, {0, 5, containers, footprint, turn, {}}, slots));
                CHECK(groups(slots) == 1);
                REQUIRE(placer.placeQuickly(zone, {0, 5, containers, footprint, turn, {}}, slots));
                CHECK(groups(slots) == 1);
            }
}

TEST_CASE("Trays fill a bench that they fit exactly") {
    Placer placer;
    std::vector<SlotRect> slots;
    const Occupancy zone(test::zoneOf(6, 16), 10);
    CHECK(placer.place(zone, {0, 5, 16, {2, 3}, true, {}}, slots));
    CHECK(slots.size() == 16);
    CHECK(placer.place(zone, {0, 5, 12, {4, 2}, true, {}}, slots));
    CHECK(slots.size() == 12);
}
