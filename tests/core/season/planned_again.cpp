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
    for (const StrikeLine& line : proposal.lines) {
        CHECK(line.stays.front().zone != nursery.warm);
        CHECK(line.moved == "it is colder or warmer now where it was");
    }
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

TEST_CASE("A mat that is out of order is planned with no more, and what it did before is left alone") {
    SeasonBook nursery = withPlan();
    REQUIRE(!nursery.book.matRunsOf(nursery.warm).empty());
    Zone zone = nursery.book.get<Zone>(nursery.warm);
    const Day broke = nursery.book.all<Batch>().begin()->second.strikeDay + 3;
    zone.mat->outOfOrderFrom = broke;
    REQUIRE(nursery.book.perform(Command{Refit{broke, zone}}));
    const auto pointsOf = [&](Day from) {
        const MonthProblem month = monthProblem(nursery.book, builtIn(), {from, 28, 900, usualChangeCost});
        for (std::size_t i = 0; i < month.zones.size(); ++i)
            if (month.zones[i] == nursery.warm) return month.problem.zones[i].setPoints.size();
        return std::size_t{99};
    };
    CHECK(pointsOf(broke) == 0);
    CHECK(pointsOf(broke - 10) == 0); // the days planned reach beyond the day
    const std::set<MatRunId> runs = nursery.book.matRunsOf(nursery.warm);
    REQUIRE(runs.size() == 1);
    const MatRun run = nursery.book.get<MatRun>(*runs.begin());
    CHECK(run.to == broke);
    // At 12 °C nothing roots there.
    const Proposal proposal = plannedFor(nursery.book, augustAgain(usualChangeCost));
    CHECK(proposal.lines.empty());
    CHECK_FALSE(proposal.notPlaced.empty());
    REQUIRE(nursery.book.perform(proposal.command()));
    CHECK(nursery.book.get<MatRun>(run.id) == run);
    CHECK(audit(nursery.book).empty());
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
    CHECK(plannedAgain(nursery.book, {on(7, 1), 28, 900, Money{0}}).empty());
    HouseBook struck = nursery.book;
    const Batch& first = struck.all<Batch>().begin()->second;
    REQUIRE(struck.perform(Command{StrikeBatch{first.id, first.strikeDay}}));
    CHECK(plannedAgain(struck, augustAgain(Money{0})).size() == all - 1);
}

TEST_CASE("Planned batches whose day has slipped by are planned anew, at no cost, and stay themselves") {
    SeasonBook nursery = withPlan();
    nursery.want(30, on(12, 20));
    REQUIRE(nursery.book.perform(plannedFor(nursery.book, {on(8, 2), 28, 900, {}}).command()));
    const HouseBook before = nursery.book;
    REQUIRE(before.all<Batch>().size() >= 2);
    const PlanRequest later{on(9, 1), 28, 900, usualChangeCost};
    for (const auto& [id, batch] : before.all<Batch>()) REQUIRE(batch.strikeDay < later.from);
    CHECK(plannedAgain(before, later).size() == before.all<Batch>().size());
    const Proposal proposal = plannedFor(before, later);
    REQUIRE(proposal.lines.size() == before.all<Batch>().size());
    CHECK(proposal.changes() == proposal.lines.size());
    CHECK(proposal.cost.changes == 0);
    for (const StrikeLine& line : proposal.lines) {
        CHECK(line.change == LineChange::Moved);
        CHECK(line.moved.empty());
        CHECK(line.batch.strikeDay >= later.from);
    }
    REQUIRE(nursery.book.perform(proposal.command()));
    CHECK(audit(nursery.book).empty());
    REQUIRE(nursery.book.all<Batch>().size() == before.all<Batch>().size());
    for (const auto& [id, batch] : nursery.book.all<Batch>()) {
        const Batch& was = before.get<Batch>(id);
        CHECK(batch.target == was.target);
        CHECK(batch.stock == was.stock);
        CHECK(batch.containers == was.containers);
        CHECK(batch.strikeDay >= later.from);
        CHECK(staysInOrder(nursery.book, id).front()->from == batch.strikeDay);
    }
}

TEST_CASE("A batch that has slipped is struck at a cost of some days late, or not where that is too many") {
    SeasonBook nursery = withPlan();
    const Target target = nursery.book.all<Target>().begin()->second;
    const auto way = wayBy(nursery.book.all<Batch>().begin()->second.recipe);
    const PlanRequest later{on(9, 1), 28, 900, usualChangeCost};
    const auto wantedBy = [&](Day due) {
        Target sooner = target;
        sooner.due = due;
        HouseBook book = nursery.book;
        REQUIRE(book.perform(Command{Put<Target>{sooner}}));
        return plannedFor(book, later);
    };
    const Proposal late = wantedBy(later.from + (way->daysToReady - mostDaysLate));
    CHECK(late.notPlaced.empty());
    REQUIRE_FALSE(late.lines.empty());
    for (const StrikeLine& line : late.lines) {
        CHECK(line.late);
        CHECK(line.batch.strikeDay <= later.from + 6);
    }
    const Proposal tooLate = wantedBy(later.from + (way->daysToReady - mostDaysLate - 1));
    CHECK(tooLate.lines.empty());
    REQUIRE(tooLate.notPlaced.size() == nursery.book.all<Batch>().size());
    const NotPlaced& one = tooLate.notPlaced.front();
    REQUIRE(one.planned);
    CHECK(one.target == target.id);
    CHECK(one.why.text().find("it was not struck on " + one.planned->strikeDay.iso()) == 0);
    CHECK(one.why.text().find("29 days after its target's date; give the target a later date") !=
          std::string::npos);
}

TEST_CASE(
    "A batch that has slipped out of its season loses its place, and the plan says until when it waits") {
    SeasonBook nursery = withPlan();
    const PlanRequest winter{on(12, 1), 28, 900, usualChangeCost};
    const Proposal proposal = plannedFor(nursery.book, winter);
    CHECK(proposal.lines.empty());
    const std::size_t batches = nursery.book.all<Batch>().size();
    REQUIRE(proposal.notPlaced.size() == batches);
    CHECK(proposal.cuttingsWanted > 0);
    const NotPlaced& one = proposal.notPlaced.front();
    CHECK(one.why.text() == "it was not struck on " + one.planned->strikeDay.iso() +
                                ", and its semi-ripe is right again from 2028-07-15 on only");
    REQUIRE(nursery.book.perform(proposal.command()));
    CHECK(nursery.book.all<Stay>().empty());
    CHECK(nursery.book.all<Batch>().size() == batches);
}

TEST_CASE("A batch of which some containers have no place any more is planned as a whole, at no cost") {
    SeasonBook nursery = withPlan();
    const auto found = std::find_if(nursery.book.all<Batch>().begin(), nursery.book.all<Batch>().end(),
                                    [](const auto& entry) { return entry.second.containers.size() > 1; });
    REQUIRE(found != nursery.book.all<Batch>().end());
    const BatchId id = found->first;
    const Day from = found->second.strikeDay;
    CHECK(canStayAsPlanned(nursery.book, found->second, from));
    for (const Stay* stay : staysInOrder(nursery.book, id)) {
        std::vector<Place> places = stay->places;
        places.pop_back();
        REQUIRE(nursery.book.perform(Command{MoveStay{stay->id, stay->zone, stay->from, stay->to, places}}));
    }
    CHECK_FALSE(canStayAsPlanned(nursery.book, nursery.book.get<Batch>(id), from));
    const Proposal proposal = plannedFor(nursery.book, augustAgain(usualChangeCost));
    CHECK(proposal.cost.changes == 0);
    REQUIRE(nursery.book.perform(proposal.command()));
    for (const Stay* stay : staysInOrder(nursery.book, id))
        CHECK(stay->places.size() == nursery.book.get<Batch>(id).containers.size());
}
