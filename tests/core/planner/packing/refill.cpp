#include "core/planner/packing/refill.h"

#include "bench.h"
#include "brute_force.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <iterator>

using namespace warmbench::planner;
using namespace warmbench::planner::packing;

namespace {

std::vector<test::Standing> standingOf(const std::vector<Candidate>& candidates, const Refill& refilled) {
    std::vector<test::Standing> all;
    for (std::size_t index = 0; index < candidates.size(); ++index) {
        const auto standing = [&](const SlotRect& rect) {
            return test::Standing{rect, candidates[index].from, candidates[index].to};
        };
        std::transform(refilled.slots[index].begin(), refilled.slots[index].end(), std::back_inserter(all),
                       standing);
    }
    return all;
}

} // namespace

TEST_CASE("Everything is chosen when everything fits, and that is proven") {
    const Occupancy zone(test::zoneOf(6, 16), 20);
    std::vector<Candidate> candidates(4, {0, 9, 3, {2, 3}, true, 100, -1});
    candidates[3].from = 5;
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

TEST_CASE("What is chosen is worth as much as trying every subset finds") {
    std::minstd_rand random(53);
    for (int round = 0; round < 40; ++round) {
        const Zone bench =
            test::zoneOf(test::within(random, 2, 3), test::within(random, 2, 4), {{0, 1, 1, 1}});
        std::vector<Candidate> candidates;
        for (int index = 0; index < 6; ++index) {
            Candidate one;
            one.from = test::within(random, 0, 3);
            one.to = one.from + test::within(random, 1, 4);
            one.footprint = {test::within(random, 1, 2), test::within(random, 1, 2)};
            one.containers = test::within(random, 1, 2);
            one.turn = test::within(random, 0, 1) == 1;
            one.value = test::within(random, 1, 20);
            one.choice = test::within(random, -2, 1);
            candidates.push_back(one);
        }
        const Refill refilled = refill(Occupancy(bench, 5), candidates);
        REQUIRE(refilled.proven);
        REQUIRE(refilled.value == test::greatestValue(bench, 5, candidates));
        CHECK(test::standsWell(bench, 5, standingOf(candidates, refilled)));
        const Refill none = refill(Occupancy(bench, 5), candidates, {100000, 20000, 1, refilled.value});
        CHECK(none.proven);
    }
}

TEST_CASE("The most valuable pieces of a plate are found and proven (Beasley 1985, OR-Library ngcut)") {
    // What the best choice leaves out, from tests/data/planning/orlib/optimum.csv.
    const std::vector<std::int64_t> optimum{16800, 35300, 31700, 3400, 25700, 22200};
    for (std::size_t index = 0; index < optimum.size(); ++index) {
        std::ifstream file(WARMBENCH_TEST_DATA "/data/planning/orlib/ngcut" + std::to_string(index + 1) +
                           ".json");
        const nlohmann::json problem = nlohmann::json::parse(file);
        const Zone bench = test::zoneOf(problem["zones"][0]["rows"], problem["zones"][0]["cols"]);
        std::vector<Candidate> candidates;
        std::int64_t all = 0;
        for (const nlohmann::json& batch : problem["batches"]) {
            const auto value = static_cast<std::int64_t>(std::llround(batch["value"].get<double>() * 100));
            candidates.push_back({0, 1, 1, {batch["footprint"][0], batch["footprint"][1]}, false, value, -1});
            all += value;
        }
        const Refill refilled = refill(Occupancy(bench, 1), candidates);
        CHECK(refilled.proven);
        CHECK(all - refilled.value == optimum[index]);
        CHECK(test::standsWell(bench, 1, standingOf(candidates, refilled)));
        std::int64_t placed = 0;
        for (std::size_t piece = 0; piece < candidates.size(); ++piece)
            if (!refilled.slots[piece].empty()) placed += candidates[piece].value;
        CHECK(placed == refilled.value);
        CHECK(refill(Occupancy(bench, 1), candidates).slots == refilled.slots);
    }
}

TEST_CASE("A refill that is stopped gives what it has and claims nothing") {
    std::stop_source source;
    source.request_stop();
    const Occupancy zone(test::zoneOf(2, 2), 10);
    const std::vector<Candidate> candidates{{0, 3, 3, {1, 1}, false, 10, -1},
                                            {0, 3, 3, {1, 1}, false, 30, -1}};
    const Refill refilled = refill(zone, candidates, {}, source.get_token());
    CHECK_FALSE(refilled.proven);
    CHECK(refilled.slots.size() == 2);
}
