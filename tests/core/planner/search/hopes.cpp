#include "core/planner/search/walk.h"
#include "tests/support/random_problem.h"

#include <catch2/catch.hpp>

using namespace warmbench::planner;
using namespace warmbench::planner::search;
using namespace warmbench::tests;

namespace {

/// What is not looked at further must truly be hopeless: counts of what the test met.
struct Met {
    int placed = 0;
    int atLeast = 0; ///< that cost the least that was foreseen
    int denied = 0;  ///< that were said to have no room
};

void checkPlaced(const Model& model, const State& state, Met& met) {
    std::int64_t leftOut = 0;
    for (int batch = 0; batch < static_cast<int>(model.batches.size()); ++batch) {
        const BatchModel& made = model.batches[at(batch)];
        if (!state.isPlaced(batch)) {
            leftOut += made.pinned ? 0 : made.value;
            continue;
        }
        ++met.placed;
        CHECK(state.plan(batch).direct >= made.least);
        met.atLeast += state.plan(batch).direct == made.least;
    }
    CHECK(state.leftOutCost() == leftOut);
}

void checkDenied(const Model& model, const State& state, Inserter& inserter, Random& random, Met& met) {
    Taste taste;
    taste.looks = 1'000'000;
    Plan plan;
    for (int batch = 0; batch < static_cast<int>(model.batches.size()); ++batch) {
        if (state.isPlaced(batch) || inserter.mayPlace(state, batch, random)) continue;
        ++met.denied;
        CHECK(inserter.best(state, batch, taste, random, plan) == never);
    }
}

} // namespace

TEST_CASE("Nothing stands for less than was foreseen, and what is said to have no room has none") {
    std::mt19937 numbers(1128);
    Met met;
    for (int i = 0; i < 150; ++i) {
        const Problem problem = randomProblem(numbers);
        const Model model(problem);
        if (model.batches.empty()) continue;
        INFO("random problem " << i);
        Walk walk(model, static_cast<std::uint64_t>(i));
        walk.construct([] { return false; });
        Inserter inserter(model);
        Random random(7);
        for (int round = 0; round < 40; ++round) {
            walk.round({round * 100, round % 2 == 0 ? 0 : 2048});
            checkPlaced(model, walk.state(), met);
            checkDenied(model, walk.state(), inserter, random, met);
        }
    }
    CHECK(met.placed > 1000);
    CHECK(met.atLeast > 100);
    CHECK(met.denied > 100);
}

TEST_CASE("In a large house alone it is hotter, and firmer about leaving out while it is hot") {
    const double meanCost = 5000;
    Cooling small = Cooling::forRounds(64'000, mostOfSmallHouse);
    Cooling large = Cooling::forRounds(65'000, mostOfSmallHouse + 1);
    CHECK(small.heat(meanCost).firmness == 0);
    CHECK(large.heat(meanCost).firmness == 3 * 1024);
    CHECK(large.heat(meanCost).dearer == 2 * small.heat(meanCost).dearer);
    small.progress = large.progress = 0.5;
    CHECK(large.heat(meanCost).firmness == 3 * 512);
    large.progress = 1;
    CHECK(large.heat(meanCost).firmness == 0);
    CHECK(large.heat(meanCost).dearer == 0);
}
