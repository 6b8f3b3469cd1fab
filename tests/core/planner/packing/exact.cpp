#include "core/planner/packing/exact.h"

#include "bench.h"
#include "brute_force.h"
#include "core/planner/packing/columns.h"
#include "core/planner/packing/conservative.h"
#include "core/planner/packing/plate.h"

#include <catch2/catch.hpp>

using namespace warmbench::planner;
using namespace warmbench::planner::packing;

namespace {

const std::vector<Footprint> manyFootprints{{1, 1}, {1, 2}, {2, 1}, {2, 2}, {1, 3}, {2, 3}};

Footprint someFootprint(std::minstd_rand& random) {
    return manyFootprints[static_cast<std::size_t>(test::within(random, 0, 5))];
}

Zone someZone(std::minstd_rand& random) {
    const int rows = test::within(random, 2, 3);
    const int cols = test::within(random, 2, 4);
    return test::zoneOf(rows, cols,
                        {{test::within(random, 0, rows - 1), test::within(random, 0, cols - 1), 1, 1}});
}

} // namespace

TEST_CASE("Exact packing over days agrees with trying every place") {
    std::minstd_rand random(41);
    int fitting = 0;
    int area = 0;
    for (int round = 0; round < 400; ++round) {
        const Zone zone = someZone(random);
        std::vector<Load> loads;
        for (int count = 0; count < 4; ++count) {
            Load load;
            load.from = test::within(random, 0, 3);
            load.to = load.from + test::within(random, 1, 3);
            load.footprint = someFootprint(random);
            load.containers =
                test::within(random, 1, load.footprint.height * load.footprint.width < 3 ? 2 : 1);
            load.turn = test::within(random, 0, 1) == 1;
            loads.push_back(load);
        }
        const bool fits = test::fitTogether(zone, 5, loads);
        std::vector<std::vector<SlotRect>> slots;
        const Verdict verdict = packExactly(Occupancy(zone, 5), loads, 1000000, slots);
        REQUIRE(verdict == (fits ? Verdict::Packed : Verdict::Cannot));
        if (fits) CHECK(test::packedWell(zone, 5, loads, slots));
        const Packing packing = repack(zone, 5, loads, 0, {20, 100000, false, 1});
        REQUIRE(packing.verdict == verdict);
        fitting += fits ? 1 : 0;
        area += repack(zone, 5, loads, 0, {0, 0, false, 1}).verdict == Verdict::Cannot ? 1 : 0;
    }
    CHECK(fitting > 50);
    CHECK(400 - fitting - area > 10); // refused for more than the count of slots
}

TEST_CASE("Repacking round fixed loads agrees with trying every place") {
    std::minstd_rand random(43);
    int fitting = 0;
    for (int round = 0; round < 1000; ++round) {
        const Zone zone = test::zoneOf(2, 4);
        std::vector<Load> loads(4);
        for (Load& load : loads) {
            load.from = test::within(random, 0, 3);
            load.to = load.from + test::within(random, 1, 3);
            load.containers = test::within(random, 1, 3);
        }
        for (const std::size_t index : {0U, 1U}) {
            loads[index].containers = 2;
            for (int column = 0; column < 2; ++column)
                loads[index].fixed.push_back(
                    {test::within(random, 0, 1), 2 * column + test::within(random, 0, 1), 1, 1});
        }
        const Packing packing = repack(zone, 5, loads, 0, {20, 100000, false, 1});
        REQUIRE(packing.verdict == (test::fitTogether(zone, 5, loads) ? Verdict::Packed : Verdict::Cannot));
        if (packing.verdict != Verdict::Packed) continue;
        ++fitting;
        CHECK(test::packedWell(zone, 5, loads, packing.slots));
    }
    CHECK(fitting > 100);
}

TEST_CASE("A plate is packed or refused as trying every place says, and no proof contradicts it") {
    std::minstd_rand random(47);
    int proofs = 0;
    for (int round = 0; round < 600; ++round) {
        const Zone zone = someZone(random);
        std::vector<Pieces> pieces;
        std::vector<Load> loads;
        for (int count = 0; count < 3; ++count) {
            const Pieces some{someFootprint(random), test::within(random, 0, 1) == 1,
                              test::within(random, 1, 2)};
            pieces.push_back(some);
            loads.push_back({0, 1, some.count, some.footprint, some.turn, {}, {}, -1, 0});
        }
        Cells free;
        Occupancy(zone, 1).freeOver(0, 1, free);
        const bool fits = test::fitTogether(zone, 1, loads);
        std::vector<std::vector<SlotRect>> slots;
        REQUIRE(packPlate(free, pieces, 1000000, slots) == (fits ? Verdict::Packed : Verdict::Cannot));
        if (fits) CHECK(test::packedWell(zone, 1, loads, slots));
        const bool refused = tooMuch(zone.rows, zone.cols, pieces);
        const bool refusedByColumns = fitColumns(free, pieces, 1000000) == Verdict::Cannot;
        CHECK_FALSE((fits && (refused || refusedByColumns)));
        proofs += refused || refusedByColumns ? 1 : 0;
    }
    CHECK(proofs > 100);
}

TEST_CASE("Two pieces too high and too wide to stand beside each other do not fit, whatever their area") {
    CHECK(tooMuch(5, 10, std::vector<Pieces>{{{3, 7}, false, 1}, {{3, 6}, false, 1}}));
    CHECK_FALSE(tooMuch(6, 10, std::vector<Pieces>{{{3, 7}, false, 1}, {{3, 6}, false, 1}}));
}

TEST_CASE("Search that may take no steps finds out nothing") {
    std::vector<std::vector<SlotRect>> slots;
    const std::vector<Load> loads{{0, 2, 1, {2, 2}, false, {}, {}, -1, 0},
                                  {1, 3, 1, {2, 2}, false, {}, {}, -1, 0}};
    CHECK(packExactly(Occupancy(test::zoneOf(4, 4), 5), loads, 0, slots) == Verdict::Unknown);
}
