#include "core/planner/packing/repack.h"

#include "bench.h"

#include <catch2/catch.hpp>

using namespace warmbench::planner;
using namespace warmbench::planner::packing;

namespace {

std::vector<Load> someLoads(std::minstd_rand& random, int count, int days) {
    const std::vector<Footprint> footprints{{1, 1}, {2, 3}, {3, 2}, {2, 4}};
    std::vector<Load> loads;
    for (int index = 0; index < count; ++index) {
        Load load;
        load.from = test::within(random, 0, days - 1);
        load.to = load.from + test::within(random, 1, 20);
        load.footprint = footprints[static_cast<std::size_t>(test::within(random, 0, 3))];
        load.containers = test::within(random, 1, load.footprint.height == 1 ? 20 : 5);
        load.turn = test::within(random, 0, 1) == 1;
        loads.push_back(load);
    }
    return loads;
}

} // namespace

TEST_CASE("What is packed stands well, and the same again for the same seed") {
    std::minstd_rand random(17);
    int packed = 0;
    for (int round = 0; round < 40; ++round) {
        const Zone zone = test::zoneOf(6, 16, {{0, 0, 1, 1}});
        std::vector<Load> loads = someLoads(random, 7, 40);
        loads[0].fixed = {{3, 0, 3, 2}, {3, 2, 3, 2}};
        loads[0].containers = 2;
        const Packing packing = repack(zone, 50, loads, 50, {60, 0, true, 7});
        if (packing.verdict != Verdict::Packed) continue;
        ++packed;
        CHECK(test::packedWell(zone, 50, loads, packing.slots));
        CHECK(repack(zone, 50, loads, 50, {60, 0, true, 7}).slots == packing.slots);
    }
    CHECK(packed > 20);
}

TEST_CASE("Loads of single slots fit whenever the count of every day suffices") {
    std::minstd_rand random(23);
    for (int round = 0; round < 40; ++round) {
        const Zone zone = test::zoneOf(3, 7, {{1, 1, 1, 1}});
        std::vector<int> free(30, 20);
        std::vector<Load> loads;
        for (int tries = 0; tries < 200; ++tries) {
            Load load;
            load.from = test::within(random, 0, 29);
            load.to = std::min(30, load.from + test::within(random, 1, 12));
            load.containers = test::within(random, 1, 6);
            bool fits = true;
            for (int day = load.from; day < load.to; ++day)
                fits = fits && free[static_cast<std::size_t>(day)] >= load.containers;
            if (!fits) continue;
            for (int day = load.from; day < load.to; ++day)
                free[static_cast<std::size_t>(day)] -= load.containers;
            loads.push_back(load);
        }
        const Packing packing = repack(zone, 30, loads, 0, {1, 0, false, 1});
        REQUIRE(packing.verdict == Verdict::Packed);
        CHECK(test::packedWell(zone, 30, loads, packing.slots));
        ++loads[0].containers;
        loads[0].containers += free[static_cast<std::size_t>(loads[0].from)];
        CHECK(repack(zone, 30, loads, 0).verdict == Verdict::Cannot);
    }
}

TEST_CASE("A second stay in the same zone keeps its slots and costs no move") {
    std::vector<Load> loads(2);
    loads[0] = {0, 10, 6, {1, 1}, false, {}, {}, -1, 0};
    loads[1] = {10, 20, 6, {1, 1}, false, {}, {}, 0, 150};
    const Packing packing = repack(test::zoneOf(3, 4), 30, loads, 50);
    REQUIRE(packing.verdict == Verdict::Packed);
    CHECK(packing.cost == 0);
    CHECK(packing.slots[0] == packing.slots[1]);
}

TEST_CASE("Fixed loads that share a slot cannot be packed") {
    std::vector<Load> loads(2);
    loads[0].fixed = {{0, 0, 1, 1}};
    loads[1].fixed = {{0, 0, 1, 1}};
    CHECK(repack(test::zoneOf(1, 2), 5, loads, 0).verdict == Verdict::Cannot);
}

TEST_CASE("What is fixed apart costs nothing, alone in a zone or not") {
    Load apart{0, 10, 2, {1, 1}, false, {{0, 0, 1, 1}, {1, 3, 1, 1}}, {}, -1, 0};
    const Load other{0, 10, 3, {1, 1}, false, {}, {}, -1, 0};
    for (const auto& loads : {std::vector{apart}, std::vector{apart, other}}) {
        const Packing packing = repack(test::zoneOf(2, 4), 10, loads, 50);
        CHECK(packing.verdict == Verdict::Packed);
        CHECK(packing.cost == 0);
        CHECK(packing.slots[0] == apart.fixed);
    }
}
