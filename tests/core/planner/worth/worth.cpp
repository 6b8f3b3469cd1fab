#include "core/planner/worth/worth.h"

#include <catch2/catch.hpp>

using namespace warmbench::planner;

namespace {

/// A batch of one container and ten cuttings that stands one day at 15 degrees or more; value in units.
Batch batchOf(const std::string& id, std::int64_t value) {
    Batch batch;
    batch.id = id;
    batch.cuttings = 10;
    batch.value = 100 * value;
    StayRule stay;
    stay.covers = 1U << static_cast<unsigned>(warmbench::Cover::Open);
    stay.low = 150;
    stay.ideal = 150;
    stay.high = 250;
    stay.duration.days = 1;
    batch.stays = {stay};
    return batch;
}

Zone zoneOf(const std::string& id, int cols, std::int64_t floor) {
    Zone zone;
    zone.id = id;
    zone.cols = cols;
    zone.blocked.assign(static_cast<std::size_t>(cols), 0);
    zone.cover = warmbench::Cover::Open;
    zone.floor = {floor};
    return zone;
}

/// One day, two batches of 5 and 3 units, and room, stock and hands for both.
Problem amplePair() {
    Problem problem;
    problem.days = 1;
    problem.zones = {zoneOf("a", 2, 150)};
    problem.stocks = {{"row", {{0, 20}}}};
    problem.strikeCapacity = {20};
    problem.batches = {batchOf("first", 5), batchOf("second", 3)};
    for (Batch& batch : problem.batches) batch.stock = 0;
    return problem;
}

Worth worthOf(const Problem& problem) {
    Options options;
    options.seconds = 60; // the clock ends no search here: each is proven long before
    const auto solved = solve(problem, options);
    REQUIRE(solved.ok());
    return worth(problem, *solved, options);
}

void requireOneUnit(const Worth& found, UnitWorth::Of of) {
    REQUIRE(found.units.size() == 1);
    CHECK(found.units[0].of == of);
    CHECK(found.units[0].index == 0);
    // Any price from that of the batch left out to that of the one placed is a dual price.
    CHECK(found.units[0].price >= 3000);
    CHECK(found.units[0].price <= 5000);
    CHECK(found.units[0].saved == 3000);
    CHECK(found.units[0].exact);
    CHECK(found.total == 3000);
}

} // namespace

TEST_CASE("Where nothing is scarce, one more unit of it is worth nothing") {
    const Worth found = worthOf(amplePair());
    CHECK(found.units.empty());
    CHECK(found.mats.empty());
    CHECK(found.total == 0);
}

TEST_CASE("One more slot is worth the batch that lacked it") {
    Problem problem = amplePair();
    problem.zones = {zoneOf("a", 1, 150)};
    requireOneUnit(worthOf(problem), UnitWorth::Of::Zone);
}

TEST_CASE("Ten more cuttings of a stock are worth the batch that lacked them") {
    Problem problem = amplePair();
    problem.stocks[0].steps[0].total = 10;
    requireOneUnit(worthOf(problem), UnitWorth::Of::Stock);
}

TEST_CASE("Hands for ten more cuttings are worth the batch that lacked them") {
    Problem problem = amplePair();
    problem.strikeCapacity = {10};
    requireOneUnit(worthOf(problem), UnitWorth::Of::Day);
}

TEST_CASE("A mat is worth what its batches are, less what it costs to run") {
    Problem problem = amplePair();
    Zone warm = zoneOf("warm", 1, 100);
    warm.hasMat = true;
    warm.setPoints = {{180, 50}};
    problem.zones = {warm, zoneOf("cold", 1, 100)};
    const Worth found = worthOf(problem);
    REQUIRE(found.mats.size() == 2);
    CHECK(found.total == 3500); // the second batch, and the mat's day
    CHECK(found.mats[0].zone == 0);
    CHECK_FALSE(found.mats[0].like);
    CHECK(found.mats[0].cost == 500);
    CHECK(found.mats[0].saves == 4500);
    CHECK(found.mats[1].zone == 1);
    CHECK(found.mats[1].like == 0);
    CHECK(found.mats[1].cost == 500);
    CHECK(found.mats[1].saves == 2500);
    for (const MatWorth& mat : found.mats) CHECK(mat.exact);
}

TEST_CASE("Every scarce stock has its price, and the five dearest are solved again") {
    Problem problem = amplePair();
    problem.zones = {zoneOf("a", 14, 150)};
    problem.strikeCapacity = {140};
    problem.stocks.clear();
    problem.batches.clear();
    for (int stock = 0; stock < 7; ++stock) {
        problem.stocks.push_back({"row " + std::to_string(stock), {{0, 10}}});
        for (const int value : {10 * stock + 5, 10 * stock + 3}) {
            Batch batch = batchOf("batch " + std::to_string(value), value);
            batch.stock = stock;
            problem.batches.push_back(batch);
        }
    }
    const Worth found = worthOf(problem);
    REQUIRE(found.units.size() == 7);
    for (std::size_t i = 0; i < found.units.size(); ++i) {
        const UnitWorth& unit = found.units[i];
        CHECK(unit.of == UnitWorth::Of::Stock);
        CHECK(unit.index == 6 - static_cast<int>(i));
        CHECK(unit.price >= 1000 * (10 * unit.index + 3));
        CHECK(unit.price <= 1000 * (10 * unit.index + 5));
        CHECK(unit.saved ==
              (i < 5 ? std::optional<std::int64_t>(1000 * (10 * unit.index + 3)) : std::nullopt));
        CHECK(unit.exact == (i < 5));
    }
}

TEST_CASE("Once it is asked to stop, no unit and no mat is said to have been solved again") {
    Problem problem = amplePair();
    problem.zones[0].cols = 1;
    problem.zones[0].blocked.resize(1);
    problem.zones[0].hasMat = true;
    problem.zones[0].setPoints = {{200, 10}};
    Options options;
    options.seconds = 60;
    const auto solved = solve(problem, options);
    REQUIRE(solved.ok());
    std::stop_source stop;
    options.progress = [&](const Progress&) { stop.request_stop(); }; // amid the first that is solved again
    const Worth found = worth(problem, *solved, options, stop.get_token());
    CHECK(found.priced);
    REQUIRE_FALSE(found.units.empty());
    for (const UnitWorth& unit : found.units) CHECK_FALSE((unit.saved || unit.exact));
    CHECK(found.mats.empty());
    CHECK(found.total == solved->answer.cost.total());
}

TEST_CASE("A mat that what is held needs cannot be done without") {
    Problem problem = amplePair();
    problem.zones = {zoneOf("warm", 2, 100)};
    problem.zones[0].hasMat = true;
    problem.zones[0].setPoints = {{180, 50}};
    problem.held = {{"standing", 0, {{0, 0, 1, 1}}, 150, 250, {}}};
    problem.held[0].duration.days = 1;
    const Worth found = worthOf(problem);
    REQUIRE(found.mats.size() == 1);
    CHECK(found.mats[0].cost == 500);
    CHECK_FALSE(found.mats[0].saves);
}

TEST_CASE("Where dual prices would take too much memory no unit is told, and mats are still looked at") {
    Problem problem = amplePair();
    problem.zones = {zoneOf("warm", 1, 100), zoneOf("cold", 1, 100)};
    problem.zones[0].hasMat = true;
    problem.zones[0].setPoints = {{180, 50}};
    Options options;
    options.rounds = 100;
    const auto solved = solve(problem, options);
    REQUIRE(solved.ok());
    const Worth ample = worth(problem, *solved, options);
    CHECK(ample.priced);
    CHECK_FALSE(ample.units.empty());
    const Worth scant = worth(problem, *solved, options, {}, BoundOptions{1});
    CHECK_FALSE(scant.priced);
    CHECK(scant.units.empty());
    REQUIRE(scant.mats.size() == 2);
    CHECK(scant.mats[0].saves == ample.mats[0].saves);
}
