#include "core/planner/reasons/reasons.h"
#include "core/planner/planner.h"
#include "core/planner/search/walk.h"

#include <catch2/catch.hpp>

#include <map>

using namespace warmbench::planner;
using Catch::Contains;

namespace {

/// A batch of `containers` containers and ten cuttings that is struck on day 1 and stands for a day, at 15
/// degrees or more; value in units.
Batch batchOf(const std::string& id, std::int64_t value, int containers = 1) {
    Batch batch;
    batch.id = id;
    batch.containers = containers;
    batch.cuttings = 10;
    batch.strikeFirst = batch.strikeLast = 1;
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

Zone zoneOf(const std::string& id, int cols) {
    Zone zone;
    zone.id = id;
    zone.cols = cols;
    zone.blocked.assign(static_cast<std::size_t>(cols), 0);
    zone.cover = warmbench::Cover::Open;
    zone.floor = {150};
    return zone;
}

/// Three days, two batches of 5 and 3 units, and room, stock and hands for both.
Problem amplePair() {
    Problem problem;
    problem.days = 3;
    problem.zones = {zoneOf("bench", 4)};
    problem.stocks = {{"row", {{0, 20}}}};
    problem.strikeCapacity = {20};
    problem.batches = {batchOf("first", 5), batchOf("second", 3)};
    for (Batch& batch : problem.batches) batch.stock = 0;
    return problem;
}

Answer solved(const Problem& problem) {
    Options options;
    options.rounds = 200;
    options.threads = 1;
    const auto result = solve(problem, options);
    REQUIRE(result.ok());
    return result->answer;
}

/// Why the second batch is left out, which it must be.
std::string reasonOfSecond(const Problem& problem) {
    const Answer answer = solved(problem);
    REQUIRE(answer.unplaced.size() == 1);
    REQUIRE(answer.unplaced[0].batch == 1);
    return answer.unplaced[0].reason;
}

/// Why the second batch is left out where time is up once that was asked so often.
std::string hastyReasonOfSecond(const Problem& problem, int timesAsked) {
    const search::Model model(problem);
    search::Walk walk(model, 1);
    walk.construct([] { return false; });
    REQUIRE(walk.state().isPlaced(0));
    REQUIRE_FALSE(walk.state().isPlaced(1));
    Answer answer;
    answer.unplaced = {{}};
    answer.unplaced[0].batch = 1;
    // The plan is stood in its house again, which asks often; then time is up.
    giveReasons(
        problem, walk.best(), walk.bestHeld(), [&] { return timesAsked-- <= 0; }, answer);
    return answer.unplaced[0].reason;
}

bool allPlaced(const Problem& problem) {
    return solved(problem).unplaced.empty();
}

} // namespace

TEST_CASE("A pair with room, stock and hands for both is placed") {
    CHECK(allPlaced(amplePair()));
}

TEST_CASE("Short stock is told by how many cuttings, and so many more place the batch") {
    Problem problem = amplePair();
    problem.stocks[0].steps[0].total = 13;
    CHECK_THAT(reasonOfSecond(problem), Contains("stock row is short by 7 cuttings on day 1"));
    problem.stocks[0].steps[0].total += 6;
    CHECK_FALSE(allPlaced(problem));
    problem.stocks[0].steps[0].total += 1;
    CHECK(allPlaced(problem));
}

TEST_CASE("Short hands are told by how many cuttings and on which day, and so many more place the batch") {
    Problem problem = amplePair();
    problem.strikeCapacity = {0, 14, 0};
    CHECK_THAT(reasonOfSecond(problem), Contains("hands are short by 6 cuttings on day 1"));
    problem.strikeCapacity[1] += 5;
    CHECK_FALSE(allPlaced(problem));
    problem.strikeCapacity[1] += 1;
    CHECK(allPlaced(problem));
}

TEST_CASE("Short space is told by how many slots of which cover and when, and so many more place the batch") {
    Problem problem = amplePair();
    problem.batches = {batchOf("first", 5, 3), batchOf("second", 3, 3)};
    // No other day helps: hands are there on day 1 only.
    problem.strikeCapacity = {0, 20, 0};
    CHECK_THAT(reasonOfSecond(problem), Contains("there is room for only 1 of its 3 containers") &&
                                            Contains("it would take 2 more open slots in bench on day 1"));
    problem.zones = {zoneOf("bench", 5)};
    CHECK_FALSE(allPlaced(problem));
    problem.zones = {zoneOf("bench", 6)};
    CHECK(allPlaced(problem));
}

TEST_CASE("Where not one container fits, the fewest slots are told, wherever and whenever that is") {
    Problem problem = amplePair();
    problem.batches = {batchOf("first", 9, 4), batchOf("second", 3, 2)};
    problem.batches[0].stays[0].duration.days = 2; // days 1 and 2
    problem.batches[1].strikeLast = 2;
    problem.batches[1].stays[0].duration.days = 2; // days 1 and 2, or 2 and beyond
    CHECK_THAT(reasonOfSecond(problem),
               Contains("there is no room for its 2 containers: it would take 2 more open slots in bench on "
                        "days 1 to 2"));
    problem.zones.push_back(zoneOf("shelf", 1)); // too small for it, whatever stands there
    CHECK_THAT(reasonOfSecond(problem), Contains("2 more open slots in bench"));
    problem.zones[1] = zoneOf("shelf", 5); // the first goes there or to the bench; one of the two has room
    CHECK(allPlaced(problem));
}

TEST_CASE("Slots that later stays lack are told with those of the first") {
    Problem problem = amplePair();
    problem.days = 6;
    problem.zones = {zoneOf("bench", 4), zoneOf("mist", 4)};
    problem.zones[1].cover = warmbench::Cover::Mist;
    problem.batches = {batchOf("first", 9, 3), batchOf("second", 3, 3)};
    for (Batch& batch : problem.batches) {
        batch.stays.push_back(batch.stays[0]);
        batch.stays[0].covers = 1U << static_cast<unsigned>(warmbench::Cover::Mist);
        batch.stays[0].duration.days = 2;
        batch.stays[1].duration.days = 2;
    }
    CHECK_THAT(reasonOfSecond(problem),
               Contains("2 more mist slots in mist on days 1 to 2, and for a later stay 2 more open slots "
                        "in bench on days 3 to 4"));
    problem.zones[1] = zoneOf("mist", 6);
    problem.zones[1].cover = warmbench::Cover::Mist;
    CHECK_FALSE(allPlaced(problem));
    problem.zones[0] = zoneOf("bench", 6);
    CHECK(allPlaced(problem));
}

TEST_CASE("Room that what is held takes is told as such, as no plan can do without it") {
    Problem problem = amplePair();
    Held held;
    held.id = "old";
    held.slots = {{0, 0, 1, 1}, {0, 1, 1, 1}, {0, 2, 1, 1}};
    held.high = 400;
    held.duration.days = 3;
    problem.held = {held};
    problem.batches[1].containers = 2;
    CHECK_THAT(reasonOfSecond(problem),
               Contains("beside what stands in the house already there is no room for "
                        "its 2 containers: it would take 1 more open slot in bench on "
                        "day 1"));
    problem.zones = {zoneOf("bench", 6)};
    CHECK(allPlaced(problem));
}

TEST_CASE("Where no day has both hands and stock, what lacks least is told and not the zones") {
    Problem problem = amplePair();
    problem.batches[1].strikeLast = 2;
    problem.stocks.push_back({"late row", {{2, 20}}});
    problem.batches[1].stock = 1;
    problem.strikeCapacity = {20, 20, 6};
    CHECK_THAT(reasonOfSecond(problem), Contains("hands are short by 4 cuttings on day 2"));
    problem.strikeCapacity[2] = 10;
    CHECK(allPlaced(problem));
}

TEST_CASE("A mat that others need at another set-point is told, not slots") {
    Problem problem = amplePair();
    problem.zones[0].floor = {100};
    problem.zones[0].hasMat = true;
    problem.zones[0].setPoints = {{150, 0}, {220, 0}};
    problem.batches[0].stays[0].high = 180;
    problem.batches[1].stays[0].low = 200;
    problem.batches[1].stays[0].ideal = 200;
    CHECK_THAT(reasonOfSecond(problem), Contains("stands at another set-point"));
    problem.batches[1].stays[0].low = problem.batches[1].stays[0].ideal = 150;
    CHECK(allPlaced(problem));
}

TEST_CASE("Hands that are short on all its days are told besides what room it lacks") {
    Problem problem = amplePair();
    problem.batches = {batchOf("first", 9, 4), batchOf("second", 3, 1)};
    problem.strikeCapacity = {0, 14, 0};
    CHECK_THAT(reasonOfSecond(problem), Contains("1 more open slot in bench on day 1") &&
                                            Contains("hands are short by 6 cuttings on day 1"));
}

TEST_CASE("A zone that is warm enough on a later day is not said to offer nothing") {
    Problem problem = amplePair();
    problem.batches[1].strikeLast = 2;
    problem.batches[1].stays[0].low = problem.batches[1].stays[0].ideal = 180;
    problem.batches[1].stays[0].high = 250;
    problem.zones[0].floor = {150, 150, 200};
    problem.strikeCapacity = {20, 20, 5};
    CHECK_THAT(reasonOfSecond(problem), !Contains("no open zone offers"));
    problem.zones[0].floor = {150, 150, 170};
    CHECK_THAT(reasonOfSecond(problem),
               Contains("no open zone offers 18 to 25 °C; the nearest is 17 °C in bench"));
    problem.zones[0].floor = {150, 150, 200};
    problem.strikeCapacity = {20, 20, 10};
    CHECK(allPlaced(problem));
}

TEST_CASE("Another strike day is told with its cost, and the batch is placed when it may be struck then") {
    Problem problem = amplePair();
    problem.strikeCapacity = {10};
    problem.batches[1].due = 2;
    problem.batches[1].latePerDay = 100;
    const std::string reason = reasonOfSecond(problem);
    CHECK_THAT(reason, Contains("struck 1 day earlier, on day 0, it would cost 0.00"));
    CHECK_THAT(reason, Contains("or 1 day later, on day 2, it would cost 1.00"));
    problem.batches[1].strikeFirst = 0;
    CHECK(solved(problem).cost.total() == 0);
    problem.batches[1].strikeFirst = problem.batches[1].strikeLast = 2;
    CHECK(solved(problem).cost.total() == 1000);
}

TEST_CASE(
    "A warmth that no zone offers is told with the nearest, and a mat that offers it places the batch") {
    Problem problem = amplePair();
    problem.batches[1].stays[0].low = 200;
    CHECK_THAT(reasonOfSecond(problem),
               Contains("no open zone offers 20 to 25 °C; the nearest is 15 °C in bench"));
    problem.zones.push_back(zoneOf("warm", 1));
    problem.zones[1].hasMat = true;
    problem.zones[1].setPoints = {{200, 10}};
    CHECK(allPlaced(problem));
}

TEST_CASE(
    "A batch that costs more than its value alone in the house is told so, and one of more value placed") {
    Problem problem = amplePair();
    problem.batches[1].due = 0;
    problem.batches[1].latePerDay = 200; // two days late on day 2
    CHECK_THAT(reasonOfSecond(problem),
               Contains("even alone in the house it would cost 4.00, more than its value of 3.00"));
    problem.batches[1].value = 401;
    CHECK(allPlaced(problem));
}

TEST_CASE("A late batch is told what being in time would cost, and is in time where it pays for it") {
    Problem problem = amplePair();
    problem.strikeCapacity = {10};
    for (Batch& batch : problem.batches) batch.strikeLast = 2;
    problem.batches[1].due = 2;
    problem.batches[1].latePerDay = 100;
    problem.batches[0].due = 2;
    problem.batches[0].latePerDay = 200;
    Options options;
    options.rounds = 200;
    options.threads = 1;
    const auto taken = solve(problem, options);
    REQUIRE(taken->compromises.size() == 1);
    CHECK(taken->compromises[0].batch == 1);
    CHECK(taken->compromises[0].reason == "ends 1 day late, which counts as 1.00: hands are short by 10 "
                                          "cuttings on day 1, which would be better");
    problem.strikeCapacity = {20};
    problem.stocks[0].steps = {{0, 13}, {2, 20}};
    CHECK(solve(problem, options)->compromises[0].reason ==
          "ends 1 day late, which counts as 1.00: stock row is short by 7 cuttings on day 1, which would be "
          "better");
    problem.stocks[0].steps = {{0, 20}};
    CHECK(solve(problem, options)->compromises.empty());
}

TEST_CASE("A late batch whose better place is taken is told where and when that would be") {
    Problem problem = amplePair();
    problem.zones = {zoneOf("bench", 1)};
    for (Batch& batch : problem.batches) {
        batch.strikeLast = 2;
        batch.due = 2;
        batch.latePerDay = batch.id == "first" ? 200 : 100;
    }
    Options options;
    options.rounds = 200;
    options.threads = 1;
    const auto taken = solve(problem, options);
    REQUIRE(taken->compromises.size() == 1);
    CHECK(taken->compromises[0].reason == "ends 1 day late, which counts as 1.00: the place that would suit "
                                          "it better, bench on day 1, is taken or "
                                          "stands at another set-point then");
    problem.zones = {zoneOf("bench", 2)};
    CHECK(solve(problem, options)->compromises.empty());
}

TEST_CASE("A batch off its ideal heat is told what its ideal would cost, or that no zone offers it") {
    Problem problem = amplePair();
    problem.batches.resize(1);
    StayRule& stay = problem.batches[0].stays[0];
    stay.ideal = 180;
    stay.offIdeal = 10;
    Options options;
    options.rounds = 200;
    options.threads = 1;
    const auto unheated = solve(problem, options);
    REQUIRE(unheated->compromises.size() == 1);
    CHECK(unheated->compromises[0].reason ==
          "is off its ideal heat, which counts as 0.30: no zone offers it anything nearer to its ideal");
    problem.zones.push_back(zoneOf("warm", 1));
    problem.zones[1].hasMat = true;
    problem.zones[1].setPoints = {{180, 50}};
    const auto heated = solve(problem, options);
    REQUIRE(heated->compromises.size() == 1);
    CHECK(heated->compromises[0].reason ==
          "is off its ideal heat, which counts as 0.30: nearer to its ideal it would cost 0.20 more");
    problem.zones[1].setPoints[0].costPerDay = 29;
    CHECK(solve(problem, options)->compromises.empty());
}

TEST_CASE("Each of many batches off their ideal heat is told why, pinned ones with them") {
    Problem problem = amplePair();
    problem.batches.clear();
    problem.zones = {zoneOf("bench", 150), zoneOf("warm", 1)};
    problem.zones[1].hasMat = true;
    problem.zones[1].setPoints = {{180, 5000}};
    problem.stocks.clear();
    problem.strikeCapacity = {2000};
    for (int i = 0; i < 150; ++i) {
        Batch batch = batchOf("batch " + std::to_string(i), 60);
        batch.stays[0].ideal = 180;
        batch.stays[0].offIdeal = 10;
        if (i % 2 == 1) batch.stays[0].high = 170; // too warm on the mat
        if (i == 30) {
            batch.pin.emplace();
            batch.pin->zone = 0;
        }
        problem.batches.push_back(batch);
    }
    Options options;
    options.rounds = 200;
    options.threads = 1;
    const auto found = solve(problem, options);
    REQUIRE(found);
    REQUIRE(found->answer.unplaced.empty());
    REQUIRE(found->compromises.size() == 150);
    for (int i = 0; i < 150; ++i) {
        const std::string reason = found->compromises[static_cast<std::size_t>(i)].reason;
        INFO(i);
        CHECK(found->compromises[static_cast<std::size_t>(i)].batch == i);
        CHECK_THAT(reason, Contains(i == 30      ? "it is pinned"
                                    : i % 2 == 1 ? "no zone offers it anything nearer to its ideal"
                                                 : "nearer to its ideal it would cost 49.70 more"));
    }
}

TEST_CASE("Where there is no time for more, what stock and hands lack is still told") {
    Problem problem = amplePair();
    problem.stocks[0].steps = {{0, 13}};
    // Once for the trial, once for each batch while the plan is stood in it, once for whether all stands.
    std::map<std::string, int> told;
    for (int times = 0; times < 200; ++times) ++told[hastyReasonOfSecond(problem, times)];
    CHECK(told.count("stock row is short by 7 cuttings on day 1, when it lacks least") == 1);
    problem.stocks[0].steps = {{0, 20}};
    problem.strikeCapacity = {13};
    told.clear();
    for (int times = 0; times < 200; ++times) ++told[hastyReasonOfSecond(problem, times)];
    CHECK(told.count("hands are short by 7 cuttings on day 1, when they lack least") == 1);
    for (const auto& [reason, times] : told) CHECK_FALSE(reason.empty());
}
