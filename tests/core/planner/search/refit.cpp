#include "core/planner/search/refit.h"
#include "core/planner/format/problem_format.h"
#include "core/planner/planner.h"
#include "core/planner/search/walk.h"
#include "tests/support/planning_data.h"

#include <catch2/catch.hpp>

using namespace warmbench::planner;
using namespace warmbench::planner::search;
using warmbench::tests::fileText;
using warmbench::tests::planningData;

namespace {

Batch trays(const std::string& id, int containers, Footprint footprint, bool turn) {
    StayRule stay;
    stay.covers = 1U << static_cast<unsigned>(Cover::Open);
    stay.low = 50;
    stay.ideal = 110;
    stay.high = 250;
    stay.duration.days = 5;
    Batch batch;
    batch.id = id;
    batch.containers = containers;
    batch.footprint = footprint;
    batch.turn = turn;
    batch.value = 1000;
    batch.stays = {stay};
    return batch;
}

/// An open bench without a mat, ten days, and batches that are to be struck on the first.
Problem benchOf(int rows, int cols, std::vector<Batch> batches) {
    Problem problem;
    problem.days = 10;
    Zone zone;
    zone.id = "bench";
    zone.rows = rows;
    zone.cols = cols;
    zone.blocked.assign(at(rows) * at(cols), 0);
    zone.cover = Cover::Open;
    zone.floor = {110};
    problem.zones = {zone};
    problem.start = "2027-02-01";
    problem.batches = std::move(batches);
    return problem;
}

Plan struckAtOnce(const Problem& problem, int batch, std::vector<SlotRect> slots) {
    slots.resize(at(problem.batches[at(batch)].containers));
    return {batch, 0, 0, {{0, off, 0, 5}}, std::move(slots)};
}

/// Two trays of 2 x 2 on a bench of 2 x 6: four columns are free, but not side by side.
Problem dividedBench() {
    return benchOf(2, 6, {trays("first", 1, {2, 2}, false), trays("long", 1, {2, 4}, false)});
}

struct Made {
    bool isMade = false;
    Plan plan;
    std::vector<Plan> moved;
};

Made roomForSecond(const Problem& problem, const Scope* scope = nullptr) {
    const Model model(problem);
    State state(model);
    state.place(struckAtOnce(problem, 0, {{0, 2, 2, 2}}));
    Made made;
    made.plan = struckAtOnce(problem, 1, {});
    Refit refit(model);
    made.isMade = refit.makeRoom(state, scope ? *scope : model.whole, 0, made.plan, made.moved);
    return made;
}

} // namespace

TEST_CASE("What stands in the middle of a bench makes way for a longer tray") {
    const Problem problem = dividedBench();
    const Made made = roomForSecond(problem);
    REQUIRE(made.isMade);
    REQUIRE(made.moved.size() == 1);
    CHECK(made.moved[0].batch == 0);
    const Model model(problem);
    State state(model);
    state.place(made.moved[0]);
    CHECK(state.occupancy(0).isFree(made.plan.slots[0], 0, 5));
}

TEST_CASE("What is held, pinned to slots, of a plan made before or not in the scope makes no way") {
    Problem problem = dividedBench();
    SECTION("pinned to its slots") {
        problem.batches[0].pin = Pin{0, 0, {{0, 2, 2, 2}}};
        CHECK_FALSE(roomForSecond(problem).isMade);
    }
    SECTION("of a plan made before") {
        problem.changeCost = 10;
        problem.batches[0].previous = std::vector<PlacedStay>{{0, 0, 5, {{0, 2, 2, 2}}}};
        CHECK_FALSE(roomForSecond(problem).isMade);
    }
    SECTION("not in the scope") {
        const Model model(problem);
        Scope scope = Scope::ofZones(model, {0});
        scope.add(1);
        CHECK_FALSE(roomForSecond(problem, &scope).isMade);
    }
    SECTION("held") {
        Held held;
        held.id = "old";
        held.slots = {{0, 2, 2, 2}};
        held.low = 50;
        held.high = 250;
        held.duration.days = 5;
        problem.held = {held};
        const Model model(problem);
        const State state(model);
        Plan plan = struckAtOnce(problem, 1, {});
        std::vector<Plan> moved;
        CHECK_FALSE(Refit(model).makeRoom(state, model.whole, 0, plan, moved));
        CHECK(moved.empty());
    }
}

TEST_CASE("A small bench is filled to its last slot where only exact packing finds how") {
    const Problem problem = benchOf(
        5, 5,
        {trays("wide", 2, {2, 4}, true), trays("pair", 2, {1, 3}, true), trays("third", 1, {1, 3}, true)});
    std::vector<packing::Load> loads;
    for (const Batch& batch : problem.batches)
        loads.push_back({0, 5, batch.containers, batch.footprint, true, {}, {}, -1, 0});
    REQUIRE(packing::repack(problem.zones[0], problem.days, loads, 0, {8, 0, false, 1}).verdict ==
            packing::Verdict::Unknown);
    for (const std::uint64_t seed : {1U, 2U, 3U}) {
        Options options;
        options.rounds = 300;
        options.seed = seed;
        options.threads = 1;
        CHECK(solve(problem, options)->answer.cost.total() == 0);
    }
}

TEST_CASE("Rounds that gave others other slots, kept or undone, leave a plan that adds up") {
    const Problem problem = readProblem(fileText(planningData("p09-trays-tight.json"))).value();
    const Model model(problem);
    Walk walk(model, 5);
    walk.construct([] { return false; });
    for (int round = 0; round < 4000; ++round) walk.round({200, 0});
    State again(model);
    for (int zone = 0; zone < static_cast<int>(model.zones.size()); ++zone)
        if (!model.zones[at(zone)].held.empty()) again.chooseHeld(zone, walk.state().heldChoice(zone));
    for (const Plan& plan : walk.state().plans())
        if (plan.strike >= 0) {
            CHECK(plan.direct == directCost(model, plan));
            again.place(plan);
        }
    CHECK(again.cost() == walk.cost());
    for (int zone = 0; zone < static_cast<int>(model.zones.size()); ++zone)
        CHECK(again.occupancy(zone) == walk.state().occupancy(zone));
}
