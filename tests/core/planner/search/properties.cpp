#include "core/planner/format/answer_format.h"
#include "core/planner/planner.h"
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
