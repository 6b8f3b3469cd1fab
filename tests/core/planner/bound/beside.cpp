#include "core/planner/bound/bound_beside.h"
#include "core/planner/bound/late_release.h"
#include "core/planner/format/problem_format.h"
#include "tests/support/planning_data.h"

#include <catch2/catch.hpp>

#include <future>

using namespace warmbench::planner;
using warmbench::tests::fileText;
using warmbench::tests::planningData;

TEST_CASE("A thread that is ended later is asked to stop at once, and waited for by the next only") {
    std::promise<void> goesOn;
    std::atomic<bool> isDone = false;
    bool wasAsked = false;
    auto held = std::make_shared<int>(7);
    const std::weak_ptr<int> released = held;
    endLater(std::jthread([&, held](const std::stop_token& stop) mutable {
        goesOn.get_future().wait();
        wasAsked = stop.stop_requested();
        releaseLater(std::move(held));
        isDone = true;
    }));
    held.reset();
    CHECK_FALSE(isDone);
    CHECK_FALSE(released.expired());
    goesOn.set_value();
    endLater({});
    CHECK(isDone);
    CHECK(wasAsked);
    releaseLater({}); // waits for the release before it
    CHECK(released.expired());
}

TEST_CASE("A bound beside a search reaches the optimum, and outlives what asked for it") {
    constexpr std::int64_t optimum = 11800; // optimum.csv
    const auto known = std::make_shared<Known>();
    known->total = optimum;
    std::jthread beside = improveBoundBeside(
        std::make_shared<const Problem>(readProblem(fileText(planningData("p01-tiny.json"))).value()), known);
    beside.join();
    CHECK(known->bound == optimum);
}
