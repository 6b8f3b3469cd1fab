#include "core/planner/search/team.h"
#include "core/planner/format/answer_format.h"
#include "core/planner/format/problem_format.h"
#include "core/planner/planner.h"
#include "core/planner/reasons/reasons.h"
#include "core/planner/verify/verify.h"
#include "tests/support/planning_data.h"

#include <catch2/catch.hpp>

#include <string>

using namespace warmbench::planner;
using namespace warmbench::planner::search;
using warmbench::tests::fileText;
using warmbench::tests::planningData;

namespace {

bool goesOnForEver() {
    return false;
}

/// So many of one problem side by side, with the hands of all; they share its stocks where asked for.
Problem sideBySide(const char* file, int copies, bool sharesStocks) {
    const Problem one = readProblem(fileText(planningData(file))).value();
    Problem all = one;
    for (std::int64_t& hands : all.strikeCapacity) hands *= copies;
    if (sharesStocks)
        for (Stock& stock : all.stocks)
            for (StockStep& step : stock.steps) step.total *= copies;
    for (int copy = 1; copy < copies; ++copy) {
        const std::string mark = "-" + std::to_string(copy);
        for (Zone zone : one.zones) {
            zone.id += mark;
            all.zones.push_back(zone);
        }
        if (!sharesStocks)
            for (Stock stock : one.stocks) {
                stock.id += mark;
                all.stocks.push_back(stock);
            }
        const int zones = copy * static_cast<int>(one.zones.size());
        for (Held held : one.held) {
            held.id += mark;
            held.zone += zones;
            all.held.push_back(held);
        }
        for (Batch batch : one.batches) {
            batch.id += mark;
            if (batch.pin && batch.pin->zone) *batch.pin->zone += zones;
            if (batch.stock && !sharesStocks) *batch.stock += copy * static_cast<int>(one.stocks.size());
            all.batches.push_back(batch);
        }
    }
    return all;
}

/// The answer of a team after so many rounds of each walk in three legs, the last of them alone, or in turn.
Answer searched(const Problem& problem, std::int64_t rounds, bool inThreads, std::int64_t* begun = nullptr) {
    const Model model(problem);
    REQUIRE(Team::suits(model));
    Team team(model, 5);
    team.begin(goesOnForEver, goesOnForEver);
    if (begun) *begun = team.found().total();
    Cooling cooling;
    cooling.warmth = 0.02;
    for (int leg = 0; leg < 3; ++leg) {
        const auto along = [&](std::int64_t done) {
            return (leg + static_cast<double>(done) / static_cast<double>(rounds)) / 3;
        };
        team.walk({along, (leg + 1) / 3.0, leg == 1, inThreads}, cooling, goesOnForEver, goesOnForEver);
    }
    CHECK(team.rounds() >= 5 * rounds);
    team.finish(goesOnForEver);
    Answer answer = team.found().takeAnswer();
    giveReasons(
        problem, team.found().plans(), team.found().held(), [] { return true; }, answer);
    return answer;
}

} // namespace

TEST_CASE("Halves of a large house are searched side by side, and the whole keeps every rule") {
    for (const bool sharesStocks : {false, true}) {
        const Problem problem = sideBySide("p10-month.json", 3, sharesStocks);
        std::int64_t begun = 0;
        const Answer answer = searched(problem, 400, true, &begun);
        const auto verdict = verifyAnswer(problem, answerText(problem, answer));
        INFO((verdict.violations.empty() ? "" : verdict.violations.front()));
        CHECK(verdict.valid());
        CHECK(answer.cost.total() < begun);
        const Answer inTurn = searched(problem, 400, false);
        CHECK(answerText(problem, inTurn) == answerText(problem, answer));
    }
}

TEST_CASE("A large house of trays is searched by halves") {
    const Problem problem = sideBySide("p08-trays.json", 30, true);
    const Answer answer = searched(problem, 60, true);
    const auto verdict = verifyAnswer(problem, answerText(problem, answer));
    INFO((verdict.violations.empty() ? "" : verdict.violations.front()));
    CHECK(verdict.valid());
}

TEST_CASE("In a large house what is pinned is placed, whether or not the first plan by halves does so") {
    const Problem problem = sideBySide("p05-pinned.json", 45, true);
    Options options;
    options.rounds = 100;
    for (const std::uint64_t seed : {1U, 2U}) {
        options.seed = seed;
        const auto found = solve(problem, options);
        REQUIRE(found.ok());
        CHECK(verifyAnswer(problem, answerText(problem, found->answer)).valid());
    }
}

TEST_CASE(
    "Each half has its part of every class of zones and of the batches, and sets aside what the other uses") {
    const Problem problem = sideBySide("p10-month.json", 3, true);
    const Model model(problem);
    const State state(model);
    Random random(3);
    const Halves halves(model, random);
    const Scope one = halves.scope(state, 0);
    const Scope other = halves.scope(state, 1);
    CHECK(one.batches.size() + other.batches.size() == model.batches.size());
    CHECK(one.zones.size() + other.zones.size() == model.zones.size());
    for (std::size_t kind = 0; kind < model.classes.size(); ++kind) {
        const auto first = static_cast<int>(one.zonesOfClass[kind].size());
        CHECK(std::abs(first - static_cast<int>(other.zonesOfClass[kind].size())) <= 1);
    }
    const auto aside = halves.shares(state, random);
    for (int day = 0; day < model.days; ++day) {
        const auto index = static_cast<std::size_t>(day);
        CHECK(aside[0].hands[index] + aside[1].hands[index] == state.handsLeft(day));
        for (std::size_t stock = 0; stock < model.yield.size(); ++stock)
            if (!aside[0].cuttings[stock].empty())
                CHECK(aside[0].cuttings[stock][index] + aside[1].cuttings[stock][index] ==
                      model.yield[stock][index]);
    }
}
