#include "core/planner/format/answer_format.h"
#include "core/planner/format/problem_format.h"
#include "core/planner/planner.h"
#include "core/planner/previous_plan.h"
#include "core/planner/verify/verify.h"
#include "tests/support/planning_data.h"

#include <catch2/catch.hpp>

using namespace warmbench::planner;
using warmbench::tests::fileText;
using warmbench::tests::planningData;

namespace {

Problem problemOf(const std::string& name) {
    return readProblem(fileText(planningData(name))).value();
}

Solved solved(const Problem& problem, std::int64_t rounds, std::uint64_t seed, int threads) {
    Options options;
    options.rounds = rounds;
    options.seed = seed;
    options.threads = threads;
    return solve(problem, options).value();
}

} // namespace

TEST_CASE("every kind of problem is solved with an answer that keeps all rules and says why") {
    for (const char* name : {"example-problem.json", "p01-tiny.json", "p02-small.json", "p05-pinned.json",
                             "p06-short.json", "p08-trays.json", "orlib/u120_00.json", "orlib/ngcut1.json"}) {
        const Problem problem = problemOf(name);
        const Solved found = solved(problem, 300, 1, 2);
        const auto verdict = verifyAnswer(problem, answerText(problem, found.answer));
        INFO(name << ": " << (verdict.violations.empty() ? "" : verdict.violations.front()));
        CHECK(verdict.valid());
        for (const UnplacedBatch& unplaced : found.answer.unplaced) CHECK_FALSE(unplaced.reason.empty());
    }
}

TEST_CASE("the problem that was solved by hand costs 11.80") {
    CHECK(solved(problemOf("p01-tiny.json"), 500, 1, 1).answer.cost.total() == 11800);
}

TEST_CASE("whatever the seed, plans that differ in several mats' runs are found: p03's proven optimum") {
    const Problem problem = problemOf("p03-rooting-only.json");
    for (const std::uint64_t seed : {1U, 2U, 3U}) {
        INFO("seed " << seed);
        CHECK(solved(problem, 20'000, seed, 2).answer.cost.total() == 370774);
    }
}

TEST_CASE("bins are filled to the last slots where that is the only way to need one less") {
    const Problem problem = problemOf("bins-tight.json");
    const Solved found = solved(problem, 300'000, 1, 2);
    CHECK(found.answer.cost.total() == 50'000);
    CHECK(found.answer.bound == 50'000);
}

TEST_CASE("one seed and number of rounds give one answer whatever the threads") {
    const Problem problem = problemOf("p02-small.json");
    const std::string one = answerText(problem, solved(problem, 400, 7, 1).answer);
    for (const int threads : {2, 3})
        CHECK(answerText(problem, solved(problem, 400, 7, threads).answer) == one);
}

TEST_CASE("a search that is stopped before it begins still answers validly") {
    const Problem problem = problemOf("p04-house.json");
    std::stop_source stop;
    stop.request_stop();
    const auto found = solve(problem, {}, stop.get_token());
    REQUIRE(found.ok());
    CHECK(found->ending == Ending::Stopped);
    CHECK(verifyAnswer(problem, answerText(problem, found->answer)).valid());
}

TEST_CASE("a plan that is made again over a plan of the same world changes nothing") {
    for (const char* name : {"p02-small.json", "p04-house.json", "p05-pinned.json", "p08-trays.json"}) {
        Problem problem = problemOf(name);
        const Solved first = solved(problem, 2000, 1, 2);
        recallPlan(problem, first.answer);
        problem.changeCost = 100'000;
        const Solved again = solved(problem, 1, 9, 2);
        INFO(name);
        CHECK(again.answer.cost.changes == 0);
        CHECK(again.answer.cost.total() <= first.answer.cost.total());
        CHECK(verifyAnswer(problem, answerText(problem, again.answer)).valid());
    }
}

TEST_CASE("a month that is planned again over its own plan keeps it, though no set-points are told") {
    Problem problem = problemOf("p10-month.json");
    for (const std::uint64_t seed : {1U, 2U, 3U}) {
        Problem again = problem;
        recallPlan(again, solved(problem, 20'000, seed, 2).answer);
        again.changeCost = 100'000;
        CHECK(solved(again, 50, 1, 2).answer.cost.changes == 0);
    }
}

TEST_CASE("a search that goes on from a good plan keeps it or betters it, where a new one has no time to") {
    Problem problem = problemOf("p09-trays-tight.json");
    const Answer good = solved(problem, 6'000, 1, 2).answer;
    CHECK(solved(problem, 300, 2, 2).answer.cost.total() > good.cost.total());
    recallPlan(problem, good);
    for (const std::uint64_t seed : {1U, 2U, 3U}) {
        Options options;
        options.rounds = 300;
        options.seed = seed;
        options.goesOn = true;
        CHECK(solve(problem, options)->answer.cost.total() <= good.cost.total());
    }
}

TEST_CASE("a batch that must go elsewhere, and nothing else, changes when changes are dear") {
    Problem problem = problemOf("p02-small.json");
    const Solved first = solved(problem, 2000, 1, 2);
    recallPlan(problem, first.answer);
    problem.changeCost = 100'000;
    const SlotRect broken = first.answer.placed.front().stays.front().slots.front();
    Zone& zone = problem.zones[static_cast<std::size_t>(first.answer.placed.front().stays.front().zone)];
    const int cell = broken.row * zone.cols + broken.col;
    zone.blocked[static_cast<std::size_t>(cell)] = 1;
    int onIt = 0;
    for (const PlacedBatch& placed : first.answer.placed)
        onIt += std::any_of(placed.stays.begin(), placed.stays.end(), [&](const PlacedStay& stay) {
            return problem.zones[static_cast<std::size_t>(stay.zone)].id == zone.id &&
                   std::find(stay.slots.begin(), stay.slots.end(), broken) != stay.slots.end();
        });
    const Solved again = solved(problem, 500, 9, 2);
    CHECK(again.answer.cost.changes == 1'000'000 * onIt);
    CHECK(verifyAnswer(problem, answerText(problem, again.answer)).valid());
}

TEST_CASE("a horizon far beyond all that can stand changes nothing") {
    Problem problem = problemOf("p02-small.json");
    problem.days = 3000;
    const Solved near = solved(problem, 200, 1, 2);
    problem.days = 1'000'000'000;
    const Solved far = solved(problem, 200, 1, 2);
    CHECK(answerText(problem, far.answer) == answerText(problem, near.answer));
    CHECK(verifyAnswer(problem, answerText(problem, far.answer)).valid());
}

TEST_CASE("days and zones that no memory holds are refused") {
    Problem problem = problemOf("p02-small.json");
    problem.days = 1'000'000'000;
    problem.batches.front().strikeLast = 999'999'999;
    const auto refused = solve(problem, {});
    REQUIRE_FALSE(refused);
    CHECK(refused.refusal().text().find("expected at most 20000000 days of zones") != std::string::npos);
}
