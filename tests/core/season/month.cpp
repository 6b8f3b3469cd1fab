#include "core/book/query.h"
#include "core/book/rules.h"
#include "core/forecast/stay_ends.h"
#include "core/planner/planner.h"
#include "core/season/proposal.h"
#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::season;
using warmbench::testing::builtIn;
using warmbench::testing::on;
using warmbench::testing::SeasonBook;

namespace {

planner::Solved solved(const planner::Problem& problem) {
    planner::Options options;
    options.rounds = 200;
    auto found = planner::solve(problem, options);
    REQUIRE(found);
    return *found;
}

Proposal proposed(const SeasonBook& nursery, const PlanRequest& request) {
    const MonthProblem month = monthProblem(nursery.book, builtIn(), request);
    const planner::Solved found = solved(month.problem);
    return proposalFrom(nursery.book, month, found.answer, found.compromises);
}

} // namespace

TEST_CASE("A mat costs what its loss of heat costs, and offers no set-point that it can't hold") {
    SeasonBook nursery;
    const Zone& zone = nursery.book.get<Zone>(nursery.warm);
    // 96 slots of 13 cm are 1.6224 m2; 6.5 W/(m2 K) at 18 °C in air of 15 °C: 31.64 W, 0.759 kWh a day at
    // 0.30.
    CHECK(matCostPerDay(nursery.book, zone, Celsius{180}, Celsius{150}) == Money{23});
    CHECK(matCostPerDay(nursery.book, zone, Celsius{180}, Celsius{200}) == Money{0});
    Zone weak = zone;
    weak.mat->rated = Watts{300};
    CHECK_FALSE(matCostPerDay(nursery.book, weak, Celsius{180}, Celsius{150}));
}

TEST_CASE("A strike that ends late says by how much, and what sooner would cost") {
    SeasonBook nursery;
    nursery.want(40, on(10, 10));
    const Proposal proposal = proposed(nursery, {on(8, 2), 28, 900});
    for (const NotPlaced& one : proposal.notPlaced) UNSCOPED_INFO(one.why);
    REQUIRE_FALSE(proposal.lines.empty());
    for (const StrikeLine& line : proposal.lines) {
        CHECK(line.late);
        const int late = line.stays.back().to - on(10, 10);
        REQUIRE_FALSE(line.why.empty());
        CHECK_THAT(line.why.front(), Catch::StartsWith("ends " + std::to_string(late) + " days late"));
        CHECK_THAT(line.why.front(), Catch::Contains(": sooner it would cost "));
    }
    nursery = SeasonBook();
    nursery.want(40, on(12, 1));
    for (const StrikeLine& line : proposed(nursery, {on(8, 2), 28, 900}).lines) CHECK(line.why.empty());
}

TEST_CASE("A target that is worth too little for a place is told what it would have to be worth") {
    SeasonBook nursery;
    Target target = nursery.book.get<Target>(nursery.want(40, on(12, 1)));
    const auto proposedAt = [&](Money worth) {
        target.worth = worth;
        REQUIRE(nursery.book.perform(Command{Put<Target>{target}}));
        return proposed(nursery, {on(8, 2), 28, 900});
    };
    const Proposal none = proposedAt(Money{0});
    REQUIRE_FALSE(none.notPlaced.empty());
    CHECK(none.notPlaced.front().hint ==
          "a place for it never pays while “One is worth” of target " + target.name + " is 0");
    const Proposal little = proposedAt(Money{1});
    REQUIRE_FALSE(little.notPlaced.empty());
    Money enough{};
    for (const NotPlaced& one : little.notPlaced) {
        const std::string hint = one.hint.text();
        const std::string before =
            "it would have a place if “One is worth” of target " + target.name + " were ";
        INFO(hint);
        REQUIRE(hint.find(before) == 0);
        CHECK(hint.ends_with(" in place of 0.01"));
        enough = std::max(enough, Money::fromUnits(std::stod(hint.substr(before.size()))));
    }
    CHECK(proposedAt(enough).notPlaced.empty());
}

TEST_CASE("What holds for many batches of a target is said once, with their cuttings together") {
    SeasonBook nursery;
    nursery.want(40, on(12, 1));
    const Proposal some = proposed(nursery, {on(8, 2), 28, 900});
    nursery.want(6000, on(12, 1));
    Stock stock = nursery.book.get<Stock>(nursery.stock);
    stock.plants *= 100;
    REQUIRE(nursery.book.perform(Command{Put<Stock>{stock}}));
    const MonthProblem month = monthProblem(nursery.book, builtIn(), {on(8, 2), 28, 900});
    const Proposal all = proposed(nursery, {on(8, 2), 28, 900});
    REQUIRE(month.problem.batches.size() > all.lines.size() + 10);
    CHECK(all.notPlaced.size() < 8);
    std::int64_t left = 0;
    bool isOfMany = false;
    for (const NotPlaced& one : all.notPlaced) {
        left += one.cuttings;
        isOfMany = isOfMany || one.why.text().starts_with("each of ");
    }
    CHECK(isOfMany);
    CHECK(left + all.cuttingsPlaced == all.cuttingsWanted);
    CHECK(some.notPlaced.empty());
}

TEST_CASE("A month is planned, accepted, and undone without a trace") {
    SeasonBook nursery;
    nursery.want(40, on(12, 1));
    const Proposal proposal = proposed(nursery, {on(8, 2), 28, 900});
    REQUIRE(proposal.notPlaced.empty());
    CHECK(proposal.cuttingsPlaced == proposal.cuttingsWanted);
    CHECK(proposal.cuttingsPlaced > 50);
    for (const StrikeLine& line : proposal.lines) {
        CHECK(line.stays.size() == 2);
        CHECK(line.stays[0].zone == nursery.warm);
        CHECK(line.stays[1].zone == nursery.open);
        CHECK(line.stays[1].to <= on(12, 1));
    }
    const HouseBook before = nursery.book;
    auto change = nursery.book.perform(proposal.command());
    REQUIRE(change);
    CHECK(audit(nursery.book).empty());
    CHECK(nursery.book.all<Batch>().size() == proposal.lines.size());
    CHECK(setPointOn(nursery.book, nursery.warm, proposal.lines.front().batch.strikeDay) ==
          proposal.lines.front().setPoint);
    CHECK(targetNeeds(nursery.book, builtIn(), {on(8, 2), 28, 900}).front().state == NeedState::Covered);
    CHECK_FALSE(nursery.book.apply(change->inverse()));
    CHECK(nursery.book == before);
}

TEST_CASE("A large target is split into batches, and what the stock can't give is said") {
    SeasonBook nursery;
    nursery.want(170, on(12, 1)); // the stock gives 200 cuttings in these days, fewer than that takes
    const PlanRequest request{on(8, 2), 20, 900};
    const MonthProblem month = monthProblem(nursery.book, builtIn(), request);
    REQUIRE(month.parts.size() > 1);
    std::int64_t planned = 0;
    for (const BatchPart& part : month.parts) planned += part.cuttings;
    CHECK(planned == 200);
    REQUIRE(month.shortfalls.size() == 1);
    CHECK(month.shortfalls.front().cuttings == month.cuttingsWanted() - 200);
    CHECK(month.shortfalls.front().why.text().find("stock is short by") != std::string::npos);
}

TEST_CASE("What stands and what was planned before stays where it is") {
    SeasonBook nursery;
    nursery.strike(on(7, 20), 30, 60);
    const TargetId first = nursery.want(20, on(12, 1));
    const Proposal early = proposed(nursery, {on(8, 2), 14, 900});
    REQUIRE(nursery.book.perform(early.command()));
    CHECK(forecastFor(nursery.book, {on(8, 2), 28, 900}).target(nursery.book, first).surePlants >= 20);
    nursery.want(30, on(12, 10));
    const MonthProblem month = monthProblem(nursery.book, builtIn(), {on(8, 4), 28, 900});
    std::size_t fixed = month.problem.held.size() + month.firstPart;
    CHECK(fixed == nursery.book.all<Stay>().size());
    const Proposal later = proposalFrom(nursery.book, month, solved(month.problem).answer);
    CHECK(later.notPlaced.empty());
    REQUIRE(nursery.book.perform(later.command()));
    CHECK(audit(nursery.book).empty());
}

TEST_CASE(
    "What roots keeps its heat when more is planned beside it, since its days were reckoned with that") {
    SeasonBook nursery;
    nursery.want(20, on(12, 1));
    REQUIRE(nursery.book.perform(proposed(nursery, {on(8, 2), 7, 900}).command()));
    const Batch planned = nursery.book.all<Batch>().begin()->second;
    REQUIRE(nursery.book.perform({StrikeBatch{planned.id, planned.strikeDay}}));
    // Its mat is set off the ideal, so that the planner has a reason to change it.
    const Stay rooting = *staysInOrder(nursery.book, planned.id).front();
    REQUIRE(nursery.book.perform({SetMatRuns{nursery.warm,
                                             rooting.from,
                                             rooting.to,
                                             {{{}, nursery.warm, rooting.from, rooting.to, Celsius{210}}}}}));
    nursery.want(30, on(12, 10));
    const Day later = planned.strikeDay + 5;
    const MonthProblem month = monthProblem(nursery.book, builtIn(), {later, 28, 900});
    REQUIRE(month.problem.held.size() == 1);
    CHECK(month.problem.held.front().low == 210);
    CHECK(month.problem.held.front().high == 210);
    REQUIRE(nursery.book.perform(proposalFrom(nursery.book, month, solved(month.problem).answer).command()));
    for (Day day = later; day < rooting.to; day = day + 1)
        CHECK(setPointOn(nursery.book, nursery.warm, day) == Celsius{210});
}

TEST_CASE("Stays that no set-point of their zone suits don't stop the planning") {
    SeasonBook nursery;
    nursery.want(20, on(12, 1));
    const Proposal proposal = proposed(nursery, {on(8, 2), 7, 900});
    REQUIRE(nursery.book.perform(proposal.command()));
    House cold = nursery.book.all<House>().begin()->second;
    cold.unheatedRootZone = testing::allYear(Celsius{330}); // far above what the recipe bears
    REQUIRE(nursery.book.perform(Command{Put<House>{cold}}));
    const MonthProblem month = monthProblem(nursery.book, builtIn(), {on(8, 12), 14, 900});
    REQUIRE_FALSE(month.problem.held.empty());
    CHECK(solved(month.problem).answer.placed.size() + solved(month.problem).answer.unplaced.size() ==
          month.problem.batches.size());
}

TEST_CASE("Days without hands get no strikes, and planned batches use up their day's hands") {
    SeasonBook nursery;
    Nursery hands = nursery.book.nursery();
    hands.strikesByWeekday = {40, 0, 0, 0, 0, 0, 0};
    REQUIRE(nursery.book.perform(Command{Put<Nursery>{hands}}));
    nursery.add(HandDay{{}, on(8, 9), 0, "holiday"});
    nursery.want(40, on(12, 1));
    const MonthProblem month = monthProblem(nursery.book, builtIn(), {on(8, 2), 21, 900});
    CHECK(month.problem.strikeCapacity[0] == 40);
    CHECK(month.problem.strikeCapacity[1] == 0);
    CHECK(month.problem.strikeCapacity[7] == 0);
    CHECK(month.problem.strikeCapacity[14] == 40);
    const Proposal proposal = proposalFrom(nursery.book, month, solved(month.problem).answer);
    for (const StrikeLine& line : proposal.lines) CHECK(line.batch.strikeDay.weekday() == 0);
    REQUIRE(nursery.book.perform(proposal.command()));
    const MonthProblem again = monthProblem(nursery.book, builtIn(), {on(8, 2), 21, 900});
    CHECK(again.problem.strikeCapacity[0] + again.problem.strikeCapacity[14] == 80 - proposal.cuttingsPlaced);
}

TEST_CASE("A plan foresees the batches of targets and those that still stand, and no others") {
    SeasonBook nursery;
    const TargetId wanted = nursery.want(30, on(12, 1));
    const BatchId over = nursery.strike(on(3, 1), 10, 40);
    const BatchId ofTarget = nursery.strike(on(4, 20), 10, 20, wanted);
    const BatchId standing = nursery.strike(on(7, 20), 30, 60);
    const PlanRequest request{on(8, 2), 28, 900};
    const forecast::BookForecast whole = forecastFor(nursery.book, request);
    const forecast::BookForecast part = forecastForPlan(nursery.book, request);
    REQUIRE(whole.batches().contains(over));
    CHECK_FALSE(part.batches().contains(over));
    for (const BatchId asked : {ofTarget, standing}) {
        REQUIRE(part.batches().contains(asked));
        CHECK(part.batches().at(asked).expected == whole.batches().at(asked).expected);
    }
    CHECK(part.target(nursery.book, wanted).surePlants == whole.target(nursery.book, wanted).surePlants);
    CHECK(forecast::stayEnds(nursery.book, part) == forecast::stayEnds(nursery.book, whole));
}
