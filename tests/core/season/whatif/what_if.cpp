#include "core/season/whatif/what_if.h"

#include "core/planner/planner.h"
#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::season;
using warmbench::testing::on;
using warmbench::testing::SeasonBook;

namespace {

/// Plans a copy of the book and accepts it there.
struct Tried {
    HouseBook book;
    Proposal plan;
    SeasonFigures figures;
};

Tried tryOut(const HouseBook& book, const Variation& variation) {
    auto copy = varied(book, variation);
    REQUIRE(copy);
    Tried tried{*copy, {}, {}};
    PlanRequest request;
    request.from = on(8, 2);
    request.surenessPermille = tried.book.nursery().surenessPermille;
    const MonthProblem month = monthProblem(tried.book, testing::builtIn(), request);
    planner::Options options;
    options.rounds = 300;
    const auto solved = planner::solve(month.problem, options);
    REQUIRE(solved);
    tried.plan = proposalFrom(tried.book, month, solved->answer);
    REQUIRE(tried.book.perform(tried.plan.command()));
    tried.figures = figuresOf(tried.book, testing::builtIn(), request, tried.plan);
    return tried;
}

} // namespace

TEST_CASE("Nothing changed asks for no command, and every change for its own") {
    SeasonBook nursery;
    CHECK(commandsOf(nursery.book, {}).empty());
    CHECK(Variation{}.changesNothing());
    Variation variation;
    variation.handsPercent = 50;
    variation.warmer = Celsius{-30};
    variation.surenessPermille = 950;
    variation.mat = OtherMat{nursery.open, Celsius{180}, Watts{3000}};
    const auto copy = varied(nursery.book, variation);
    REQUIRE(copy);
    CHECK(copy->nursery().strikesByWeekday[0] == 200);
    CHECK(copy->nursery().surenessPermille == 950);
    CHECK(copy->all<House>().begin()->second.air[0] == Celsius{120});
    CHECK(copy->all<House>().begin()->second.unheatedRootZone[6] == Celsius{90});
    REQUIRE(copy->get<Zone>(nursery.open).mat);
    CHECK(copy->get<Zone>(nursery.open).mat->setPoints == std::vector{Celsius{180}});
    CHECK_FALSE(nursery.book.get<Zone>(nursery.open).mat);
}

TEST_CASE("A set-point is added to a mat that is there, once and in its order") {
    SeasonBook nursery;
    Variation variation;
    variation.mat = OtherMat{nursery.warm, Celsius{195}, Watts{100}};
    const auto once = varied(nursery.book, variation);
    REQUIRE(once);
    const Mat& mat = *once->get<Zone>(nursery.warm).mat;
    CHECK(mat.setPoints == std::vector{Celsius{150}, Celsius{180}, Celsius{195}, Celsius{210}});
    CHECK(mat.rated == Watts{3000});
    const auto twice = varied(*once, variation);
    CHECK(twice->get<Zone>(nursery.warm).mat->setPoints.size() == 4);
}

TEST_CASE("What breaks a rule is refused in words") {
    SeasonBook nursery;
    Variation variation;
    variation.surenessPermille = 1000;
    const auto copy = varied(nursery.book, variation);
    REQUIRE_FALSE(copy);
    CHECK_FALSE(copy.refusal().text().empty());
}

TEST_CASE("Seasons are compared by what comes of them: fewer hands place less, more sureness strikes more") {
    SeasonBook nursery;
    nursery.want(40, on(12, 20));
    const Tried usual = tryOut(nursery.book, {});
    CHECK(usual.figures.targets == 1);
    CHECK(usual.figures.covered == 1);
    CHECK(usual.figures.left == 0);
    CHECK(usual.figures.plants >= 40);
    CHECK(usual.figures.slots == 192);
    CHECK(usual.figures.slotDays > 0);
    CHECK(usual.figures.kilowattHours > 0);

    Variation sure;
    sure.surenessPermille = 990;
    CHECK(tryOut(nursery.book, sure).figures.cuttings > usual.figures.cuttings);

    Variation noHands;
    noHands.handsPercent = 0;
    const Tried idle = tryOut(nursery.book, noHands);
    CHECK(idle.figures.batches == 0);
    CHECK(idle.figures.left > 0);
    CHECK(idle.figures.covered == 0);

    Variation cold;
    cold.warmer = Celsius{-40};
    CHECK(tryOut(nursery.book, cold).figures.kilowattHours > usual.figures.kilowattHours);
}

TEST_CASE("What was tried is kept with its plan as one step, which is undone as one") {
    SeasonBook nursery;
    nursery.want(40, on(12, 20));
    Variation sure;
    sure.surenessPermille = 970;
    const Tried tried = tryOut(nursery.book, sure);
    const HouseBook before = nursery.book;
    const auto change = nursery.book.perform(keepCommand(nursery.book, sure, tried.plan));
    REQUIRE(change);
    CHECK(nursery.book == tried.book);
    CHECK_FALSE(nursery.book.apply(change->inverse()));
    CHECK(nursery.book == before);
}
