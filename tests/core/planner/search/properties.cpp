#include "core/planner/format/answer_format.h"
#include "core/planner/planner.h"
#include "core/planner/previous_plan.h"
#include "core/planner/verify/verify.h"
#include "tests/support/brute_force.h"
#include "tests/support/random_problem.h"
#include "tests/support/tiny_problem.h"

#include <catch2/catch.hpp>

using namespace warmbench::planner;
using namespace warmbench::tests;

namespace {

warmbench::Result<Solved> solved(const Problem& problem, std::int64_t rounds, int threads) {
    Options options;
    options.rounds = rounds;
    options.threads = threads;
    return solve(problem, options);
}

/// The problem asked again after its plan was made and the world has changed a little.
Problem askedAgain(Problem problem, const Answer& answer, std::mt19937& random) {
    const auto number = [&](int low, int high) {
        return std::uniform_int_distribution<int>(low, high)(random);
    };
    recallPlan(problem, answer);
    problem.changeCost = number(0, 150);
    for (Batch& batch : problem.batches) {
        if (number(1, 3) == 1) batch.value = number(50, 1500);
        if (number(1, 3) == 1 && !batch.pin) batch.strikeLast += 1;
        if (number(1, 4) == 1) batch.due = number(1, 4);
    }
    for (Zone& zone : problem.zones) {
        if (number(1, 4) == 1) zone.floor.back() += number(-10, 10);
        for (SetPoint& point : zone.setPoints) point.costPerDay = number(5, 90);
        if (number(1, 5) == 1 && problem.held.empty()) zone.blocked.front() = 1;
    }
    return problem;
}

} // namespace

TEST_CASE("The plan of a tiny problem costs what the cheapest of all plans costs") {
    std::mt19937 random(2027);
    for (int i = 0; i < 120; ++i) {
        const Problem problem = tinyProblem(random);
        const auto least = leastTotal(problem);
        const auto found = solved(problem, 300, 1);
        INFO("tiny problem " << i);
        REQUIRE(found.ok() == least.has_value());
        if (!least) continue;
        CHECK(found->answer.cost.total() == *least);
        CHECK(found->answer.bound <= *least);
    }
}

TEST_CASE("A tiny plan that is made again costs what the cheapest of all costs, its changes counted") {
    std::mt19937 random(1202);
    int changed = 0;
    int keptDearer = 0;
    for (int i = 0; i < 200; ++i) {
        const Problem before = tinyProblem(random);
        const auto plan = solved(before, 100, 1);
        if (!plan) continue;
        Problem again = askedAgain(before, plan->answer, random);
        const auto least = leastTotal(again);
        const auto found = solved(again, 900, 1);
        INFO("tiny problem " << i);
        REQUIRE(found.ok() == least.has_value());
        if (!least) continue;
        CHECK(found->answer.cost.total() == *least);
        CHECK(found->answer.bound <= *least);
        CHECK(verifyAnswer(again, answerText(again, found->answer)).valid());
        changed += found->answer.cost.changes > 0;
        again.changeCost = 0;
        keptDearer += leastTotal(again) < *least - found->answer.cost.changes;
    }
    CHECK(changed > 10);
    CHECK(keptDearer > 5);
}

TEST_CASE("Whatever the problem, the answer keeps every rule and the verifier finds the same cost") {
    std::mt19937 random(815);
    int refused = 0;
    for (int i = 0; i < 60; ++i) {
        const Problem problem = randomProblem(random);
        const auto found = solved(problem, 160, 1);
        INFO("random problem " << i << (found ? "" : ": " + found.refusal().text()));
        if (!found) {
            ++refused;
            CHECK(problem.batches.front().pin);
            continue;
        }
        const auto verdict = verifyAnswer(problem, answerText(problem, found->answer));
        INFO((verdict.violations.empty() ? "" : verdict.violations.front()));
        CHECK(verdict.valid());
        CHECK(found->answer.placed.size() + found->answer.unplaced.size() == problem.batches.size());
    }
    CHECK(refused < 20);
}

TEST_CASE("Whatever the problem, one seed and number of rounds give one answer on one and two threads") {
    std::mt19937 random(42);
    for (int i = 0; i < 15; ++i) {
        const Problem problem = randomProblem(random);
        const auto one = solved(problem, 160, 1);
        const auto two = solved(problem, 160, 2);
        INFO("random problem " << i);
        REQUIRE(one.ok() == two.ok());
        if (one) CHECK(answerText(problem, one->answer) == answerText(problem, two->answer));
    }
}
