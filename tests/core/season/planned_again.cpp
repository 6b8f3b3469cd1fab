#include "core/season/planned_again.h"

#include "core/book/query.h"
#include "core/book/rules.h"
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

Proposal plannedFor(const HouseBook& book, const PlanRequest& request) {
    const MonthProblem month = monthProblem(book, builtIn(), request);
    planner::Options options;
    options.rounds = 200;
    auto found = planner::solve(month.problem, options);
    REQUIRE(found);
    return proposalFrom(book, month, found->answer);
}

/// August, with what was planned for it free to move at this cost.
PlanRequest augustAgain(Money changeCost) {
    return {on(8, 2), 28, 900, changeCost};
}

/// A nursery with a plan for 40 plants in August, accepted.
SeasonBook withPlan() {
    SeasonBook nursery;
    nursery.want(40, on(12, 1));
    REQUIRE(nursery.book.perform(plannedFor(nursery.book, {on(8, 2), 28, 900, {}}).command()));
    return nursery;
}

} // namespace

TEST_CASE("Nothing moves in a plan that nothing has happened to") {
    const SeasonBook nursery = withPlan();
    HouseBook book = nursery.book;
    const Proposal proposal = plannedFor(book, augustAgain(usualChangeCost));
    REQUIRE(proposal.lines.size() == book.all<Batch>().size());
    CHECK(proposal.changes() == 0);
    CHECK(proposal.cuttingsPlaced == proposal.cuttingsWanted);
    CHECK(proposal.cost.changes == 0);
    REQUIRE(book.perform(proposal.command()));
    CHECK(book.all<Batch>() == nursery.book.all<Batch>());
}

TEST_CASE("Planned batches move off a zone whose mat heats no more, as little as needed") {
    SeasonBook nursery = withPlan();
    Zone spare = nursery.book.get<Zone>(nursery.warm);
    Zone broken = spare;
    broken.mat->rated = Watts{1};
    // Without heat the zone is at 12 °C, below what the recipe bears; half of the open zone gets a mat.
    Zone open = nursery.book.get<Zone>(nursery.open);
    open.cols = 8;
    spare.id = {};
    spare.name = "C";
    spare.col = 24;
    spare.cols = 8;
    const HouseBook before = nursery.book;
    for (const BatchId id : plannedAgain(before, augustAgain(Money{0})))
        for (const Stay* stay : staysInOrder(before, id))
            if (stay->zone == nursery.open)
                for (const Place& place : stay->places) REQUIRE(place.slots.col + place.slots.width <= 8);
    REQUIRE(nursery.book.perform(
        Command{Group{"rebuild", {Put<Zone>{open}, Put<Zone>{broken}, Put<Zone>{spare}}}}));
    const Proposal proposal = plannedFor(nursery.book, augustAgain(usualChangeCost));
    REQUIRE(proposal.notPlaced.empty());
    CHECK(proposal.changes() == proposal.lines.size());
    for (const StrikeLine& line : proposal.lines) CHECK(line.stays.front().zone != nursery.warm);
    CHECK(proposal.cost.changes == static_cast<std::int64_t>(proposal.lines.size()) * 5000);
    REQUIRE(nursery.book.perform(proposal.command()));
    CHECK(audit(nursery.book).empty());
    CHECK(nursery.book.all<Batch>().size() == before.all<Batch>().size());
}

TEST_CASE("A batch that moves says whether hands are short where it was, or another place costs less") {
    SeasonBook nursery = withPlan();
    const HouseBook before = nursery.book;
    const Batch& planned = before.all<Batch>().begin()->second;
    HandDay holiday;
    holiday.day = planned.strikeDay;
    holiday.note = "holiday";
    nursery.add(holiday);
    const Proposal proposal = plannedFor(nursery.book, augustAgain(usualChangeCost));
    int moved = 0;
    for (const StrikeLine& line : proposal.lines) {
        const bool wasThen = before.get<Batch>(line.batch.id).strikeDay == holiday.day;
        CHECK((line.change == LineChange::Moved) == !line.moved.empty());
        if (!wasThen) continue;
        ++moved;
        CHECK(line.moved == phrase("hands are short on %1", holiday.day));
    }
    CHECK(moved > 0);
}

TEST_CASE("A planned batch that finds no room any more loses its place, not itself") {
    SeasonBook nursery = withPlan();
    Zone broken = nursery.book.get<Zone>(nursery.warm);
    broken.mat->rated = Watts{1};
    House cold = nursery.book.all<House>().begin()->second;
    cold.air = testing::allYear(Celsius{120}); // so that the lowest set-point takes power as well
    REQUIRE(nursery.book.perform(Command{Group{"cold", {Put<Zone>{broken}, Put<House>{cold}}}}));
    const std::size_t planned = nursery.book.all<Batch>().size();
    const Proposal proposal = plannedFor(nursery.book, augustAgain(usualChangeCost));
    CHECK(proposal.lines.empty());
    REQUIRE(proposal.notPlaced.size() == planned);
    for (const NotPlaced& one : proposal.notPlaced) {
        REQUIRE(one.planned);
        CHECK(title(nursery.book, one) == one.planned->code + " for T1, Olearia × haastii");
        CHECK_FALSE(one.why.empty());
    }
    REQUIRE(nursery.book.perform(proposal.command()));
    CHECK(nursery.book.all<Batch>().size() == planned);
    CHECK(nursery.book.all<Stay>().empty());
    // Once the mat is back, those that wait are placed again.
    broken.mat->rated = Watts{3000};
    REQUIRE(nursery.book.perform(Command{Put<Zone>{broken}}));
    const Proposal again = plannedFor(nursery.book, augustAgain(usualChangeCost));
    CHECK(again.notPlaced.empty());
    CHECK(again.changes() == planned);
    CHECK(again.cost.changes == 0);
}

TEST_CASE("Only batches planned for the days asked for are planned again") {
    const SeasonBook nursery = withPlan();
    const std::size_t all = nursery.book.all<Batch>().size();
    CHECK(plannedAgain(nursery.book, augustAgain(Money{0})).size() == all);
    CHECK(plannedAgain(nursery.book, {on(8, 2), 28, 900, {}}).empty());
    CHECK(plannedAgain(nursery.book, {on(9, 1), 28, 900, Money{0}}).empty());
    HouseBook struck = nursery.book;
    const Batch& first = struck.all<Batch>().begin()->second;
    REQUIRE(struck.perform(Command{StrikeBatch{first.id, first.strikeDay}}));
    CHECK(plannedAgain(struck, augustAgain(Money{0})).size() == all - 1);
}
