#include "core/planner/packing/occupancy.h"

#include "bench.h"

#include <catch2/catch.hpp>

using namespace warmbench::planner;
using namespace warmbench::planner::packing;

TEST_CASE("A slot is taken on the days of its stay and on no other") {
    Occupancy zone(test::zoneOf(6, 16, {{0, 0, 1, 1}}), 30);
    CHECK(zone.capacity() == 95);
    const std::vector<SlotRect> containers{{2, 3, 2, 2}, {4, 3, 2, 2}};
    zone.occupy(containers, 5, 9);
    CHECK(zone.freeOn(4) == 95);
    CHECK(zone.freeOn(5) == 87);
    CHECK(zone.freeOn(8) == 87);
    CHECK(zone.freeOn(9) == 95);
    CHECK(zone.leastFree(0, 5) == 95);
    CHECK(zone.leastFree(0, 6) == 87);
    CHECK(zone.isFree({3, 4, 1, 1}, 0, 5));
    CHECK_FALSE(zone.isFree({3, 4, 1, 1}, 0, 6));
    CHECK_FALSE(zone.isFree({0, 0, 2, 2}, 20, 21));
    Cells free;
    zone.freeOver(8, 12, free);
    CHECK(free.count() == 87);
    CHECK_FALSE(free.has(5, 4));
    CHECK_FALSE(free.has(0, 0));
}

TEST_CASE("Taking away what was put leaves the zone as it was") {
    std::minstd_rand random(11);
    Occupancy zone(test::zoneOf(7, 30), 50);
    const Occupancy empty = zone;
    std::vector<test::Standing> all;
    for (int count = 0; count < 200; ++count) {
        const SlotRect rect{test::within(random, 0, 5), test::within(random, 0, 27), 2, 3};
        const int from = test::within(random, 0, 49);
        const int to = from + test::within(random, 1, 30);
        if (!zone.isFree(rect, from, to)) continue;
        zone.occupy({&rect, 1}, from, to);
        all.push_back({rect, from, to});
    }
    CHECK(all.size() > 20);
    CHECK(test::standsWell(test::zoneOf(7, 30), 50, all));
    for (const test::Standing& one : all) zone.release({&one.rect, 1}, one.from, one.to);
    CHECK(zone == empty);
}

TEST_CASE("Beyond the horizon only blocked slots count") {
    Occupancy zone(test::zoneOf(2, 2, {{1, 1, 1, 1}}), 4);
    const SlotRect all{0, 0, 1, 2};
    zone.occupy({&all, 1}, 0, 9);
    Cells free;
    zone.freeOver(4, 9, free);
    CHECK(free.count() == 3);
    zone.freeOver(3, 9, free);
    CHECK(free.count() == 1);
    CHECK(zone.leastFree(4, 9) == 3);
}

TEST_CASE("Corners are where a container fits, on grids of more than one word too") {
    std::minstd_rand random(5);
    for (const auto& [rows, cols] : std::vector<std::pair<int, int>>{{1, 4}, {6, 16}, {5, 70}, {30, 60}}) {
        Cells free(rows, cols);
        free.fill();
        for (int count = 0; count < rows * cols / 6; ++count)
            free.remove(test::within(random, 0, rows * cols - 1));
        for (const Footprint& footprint :
             {Footprint{1, 1}, Footprint{2, 3}, Footprint{1, 4}, Footprint{5, 2}}) {
            Cells corners;
            free.corners(footprint, corners);
            for (int slot = 0; slot < free.size(); ++slot) {
                const SlotRect rect{slot / cols, slot % cols, footprint.height, footprint.width};
                const bool fits = rect.within(rows, cols) && free.covers(rect);
                if (corners.has(slot) != fits) FAIL("slot " << slot << " of " << rows << " x " << cols);
            }
        }
    }
}

TEST_CASE("Containers are connected along an edge, not at a corner") {
    CHECK(touch({0, 0, 2, 2}, {1, 2, 2, 2}));
    CHECK_FALSE(touch({0, 0, 2, 2}, {2, 2, 2, 2}));
    CHECK(groups({}) == 0);
    CHECK(groups({{0, 0, 1, 1}, {0, 1, 1, 1}, {1, 2, 1, 1}}) == 2);
}
