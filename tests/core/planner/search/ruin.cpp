#include "core/planner/search/ruin.h"
#include "core/planner/format/problem_format.h"
#include "core/planner/search/walk.h"
#include "tests/support/planning_data.h"

#include <catch2/catch.hpp>

using namespace warmbench::planner;
using namespace warmbench::planner::search;
using warmbench::tests::fileText;
using warmbench::tests::planningData;

namespace {

/// Stock enough for striking a batch that is left out, on a day.
bool hasStock(const State& state, int batch, int day) {
    const Batch& wanted = state.model().problem->batches[at(batch)];
    return !wanted.stock || state.stockLeft(*wanted.stock, day) >= wanted.cuttings;
}

/// Of the batches left out for which room was made.
struct Freed {
    int lackedStock = 0;
    int haveStock = 0; ///< of those, once what was chosen is taken out
};

Freed roomMade(const Problem& problem, int rounds) {
    const Model model(problem);
    Walk walk(model, 3);
    walk.construct([] { return false; });
    Ruin ruin{State(model)};
    Random random(11);
    std::vector<int> batches;
    std::vector<Wish> wishes;
    Freed met;
    for (int round = 0; round < rounds; ++round) {
        State state = walk.state();
        ruin.choose(state, 1, random, false, batches, wishes);
        if (wishes.size() != 1 || wishes[0].day == Wish::any) continue;
        const Wish& wish = wishes[0];
        if (state.isPlaced(wish.batch) || hasStock(state, wish.batch, wish.day)) continue;
        ++met.lackedStock;
        for (const int batch : batches)
            if (state.isPlaced(batch)) state.remove(batch);
        met.haveStock += hasStock(state, wish.batch, wish.day);
    }
    return met;
}

} // namespace

TEST_CASE("Room for a batch that lacks cuttings is made in its stock too, in a house that is not small") {
    Problem problem = readProblem(fileText(planningData("p10-month.json"))).value();
    const Freed large = roomMade(problem, 4000);
    CHECK(large.lackedStock > 400);
    CHECK(large.haveStock > large.lackedStock * 9 / 10);
    problem.batches.resize(mostOfSmallHouse);
    for (Stock& stock : problem.stocks)
        for (StockStep& step : stock.steps) step.total /= 4;
    const Freed small = roomMade(problem, 4000);
    CHECK(small.lackedStock > 100);
    CHECK(small.haveStock < small.lackedStock / 2);
}
