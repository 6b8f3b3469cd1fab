#include "core/planner/packing/refill.h"

#include "bench.h"

#include <catch2/catch.hpp>

using namespace warmbench::planner;
using namespace warmbench::planner::packing;

TEST_CASE("Everything is chosen when everything fits, and that is proven") {
    const Occupancy zone(test::zoneOf(6, 16), 20);
    std::vector<Candidate> candidates;
    for (int index = 0; index < 4; ++index)
        candidates.push_back({index, index + 9, 3, {2, 3}, true, 100, -1});
    const Refill refilled = refill(zone, candidates);
    CHECK(refilled.value == 400);
    CHECK(refilled.proven);
}

TEST_CASE("Of one choice at most one is placed") {
    const Occupancy zone(test::zoneOf(2, 2), 10);
    const std::vector<Candidate> candidates{{0, 3, 1, {1, 1}, false, 10, 0}, {4, 7, 1, {1, 1}, false, 30, 0}};
    const Refill refilled = refill(zone, candidates);
    CHECK(refilled.value == 30);
    CHECK(refilled.proven);
    CHECK(refilled.slots[0].empty());
    CHECK(refilled.slots[1].size() == 1);
}
