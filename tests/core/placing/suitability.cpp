#include "core/placing/suitability.h"

#include "core/book/query.h"
#include "core/book/rules.h"
#include "core/season/month_problem.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::placing;
using namespace warmbench::tests;

namespace {

Suitability suitabilityOf(const HouseBook& book, BatchId batch, const std::vector<int>& containers,
                          const char* from) {
    auto carried = takeUp(book, batch, containers, day(from));
    if (!carried) FAIL(carried.refusal().text());
    return {book, *carried};
}

using Hindrances = std::vector<Hindrance>;

template <class E, class Edit>
void change(HouseBook& book, IdOf<E> id, Edit edit) {
    E thing = book.get<E>(id);
    edit(thing);
    perform(book, {Put<E>{thing}});
}

} // namespace

TEST_CASE("What is taken up: all that stands, from the strike day at the earliest, or the containers named") {
    const SmallBook small = smallBook();
    const auto planned = takeUp(small.book, small.planned, {}, day("2027-02-20"));
    REQUIRE(planned);
    CHECK(planned->day == day("2027-03-01"));
    CHECK(planned->containers == std::vector{1, 2});
    CHECK(planned->whole);
    CHECK(!planned->struck);
    CHECK(planned->turnable);
    CHECK(planned->end == day("2027-04-12"));
    // Days to root 28 to 42 at 20.5 °C over 6 °C: 42 x 14.5 degree-days until nine of ten have.
    CHECK(*planned->need == Approx(609).epsilon(1e-6));

    const auto pots = takeUp(small.book, small.struck, {3, 2, 3}, day("2027-03-10"));
    REQUIRE(pots);
    CHECK(pots->containers == std::vector{2, 3});
    CHECK(!pots->whole);
    CHECK(pots->struck);
    // 23 days at 20 °C have passed.
    CHECK(*pots->need == Approx(609 - 23 * 14.0));
    CHECK(takeUp(small.book, small.struck, {}, day("2027-04-05"))->stage == Stage::Weaning);
    CHECK(!takeUp(small.book, small.struck, {}, day("2027-04-05"))->need);
    CHECK(takeUp(small.book, small.struck, {2, 9}, day("2027-03-10")).refusal().text() ==
          "27-046-A: nothing stands in container 9; it has 1-4");
}

TEST_CASE("A zone suits by heat and cover, and says which set-point it needs and when it is ready there") {
    const SmallBook small = smallBook();
    const Suitability there = suitabilityOf(small.book, small.planned, {}, "2027-03-01");
    const ZoneVerdict& warm = *there.find(small.warm);
    CHECK(warm.suits());
    // The mat is off from 1 April on, which is too cold: 20 °C, the nearest to 20.5, until it is ready. 609
    // degree-days at 14 a day take 44 days.
    CHECK(warm.heat.changes);
    CHECK(warm.heat.setPoint == Celsius{200});
    CHECK(warm.heat.ready == day("2027-04-14"));
    CHECK(warm.heat.to == day("2027-04-14"));
    CHECK(warm.wantedSlots == 6);
    // 31 slots less four pots; its own slots are free to it.
    CHECK(warm.freeSlots == 27);
    const ZoneVerdict& cool = *there.find(small.cool);
    CHECK(cool.hindrances == Hindrances{Hindrance::Cover, Hindrance::TooCold});
    CHECK(cool.heat.rootZone == Celsius{105});
    CHECK(cool.heat.limit == Celsius{180});
    CHECK(!cool.cost);
}

TEST_CASE("Pots that have been struck keep their days, and weaned ones want to stand open") {
    const SmallBook small = smallBook();
    const Suitability rooting = suitabilityOf(small.book, small.struck, {3, 4}, "2027-03-10");
    CHECK(rooting.find(small.warm)->suits());
    CHECK(!rooting.find(small.warm)->heat.changes);
    CHECK(rooting.find(small.warm)->heat.to == day("2027-04-01"));
    const Suitability weaning = suitabilityOf(small.book, small.struck, {}, "2027-04-05");
    CHECK(weaning.find(small.cool)->suits());
    CHECK(weaning.find(small.warm)->hindrances == Hindrances{Hindrance::Cover});
}

TEST_CASE("What it does to the cost is the planner's own: heat off its ideal, and the mat's days") {
    const SmallBook small = smallBook();
    const HouseBook& book = small.book;
    const Suitability there = suitabilityOf(book, small.planned, {}, "2027-03-01");
    const CostChange& cost = *there.find(small.warm)->cost;
    // Half a degree off, two trays, a hundredth each: 42 days as planned, 44 there.
    CHECK(cost.now.offIdeal == 5 * 2 * 42);
    CHECK(cost.after.offIdeal == 5 * 2 * 44);
    const Money perDay = *season::matCostPerDay(book, book.get<Zone>(small.warm), Celsius{200}, Celsius{120});
    CHECK(perDay > Money{0});
    CHECK(cost.now.mats == 31 * perDay.parts * 10);
    CHECK(cost.after.mats == 44 * perDay.parts * 10);
    CHECK(cost.difference() == 20 + 13 * perDay.parts * 10);
    CHECK(cost.now.unplaced == 0);

    // Without a place it costs its value: 60 cuttings at 2.50, of which the recipe's take is had.
    HouseBook empty = book;
    perform(empty, {PlanBatch{small.planned, day("2027-03-01"), {}}});
    const Suitability again = suitabilityOf(empty, small.planned, {}, "2027-03-01");
    const std::int64_t value = again.find(small.warm)->cost->now.unplaced / 10;
    CHECK(value > 60 * 250 * 70 / 100);
    CHECK(value < 60 * 250 * 90 / 100);
}

TEST_CASE("Too few slots, and slots that are promised to others later, are told apart") {
    SmallBook small = smallBook();
    HouseBook& book = small.book;
    change<Zone>(book, small.cool, [](Zone& zone) {
        zone.cover = Cover::Mist;
        zone.mat = Mat{"mat B", Watts{1500}, HeatLoss{850}, {Celsius{200}}};
        for (int row = 1; row < 4; ++row)
            for (int col = 0; col < 4; ++col) zone.blocked.push_back({row, col});
    });
    // One tray of three slots on a row of four, until the pots come on 1 April to be weaned there.
    const Suitability one = suitabilityOf(book, small.planned, {1}, "2027-03-01");
    CHECK(one.find(small.cool)->hindrances == Hindrances{Hindrance::NotSoLong});
    CHECK(one.find(small.cool)->freeUntil == day("2027-04-01"));
    const Suitability both = suitabilityOf(book, small.planned, {}, "2027-03-01");
    CHECK(both.find(small.cool)->hindrances == Hindrances{Hindrance::NoRoom});
}

TEST_CASE("Heat that those who stand there do not bear is no way") {
    SmallBook small = smallBook();
    HouseBook& book = small.book;
    change<Zone>(book, small.warm, [](Zone& zone) {
        zone.mat->setPoints.push_back(Celsius{260});
        zone.mat->rated = Watts{15000};
    });
    Batch tropical = book.get<Batch>(small.planned);
    tropical.id = {};
    tropical.code.clear();
    tropical.recipe.id = {};
    tropical.recipe.name = "warmer";
    tropical.recipe.rootZoneLow.value = Celsius{250};
    tropical.recipe.rootZoneIdeal.value = Celsius{260};
    tropical.recipe.rootZoneHigh.value = Celsius{280};
    perform(book, {AddBatch{tropical, {}}});
    const BatchId id = book.all<Batch>().rbegin()->first;
    const Suitability there = suitabilityOf(book, id, {}, "2027-03-01");
    const ZoneVerdict& warm = *there.find(small.warm);
    CHECK(warm.hindrances == Hindrances{Hindrance::Others});
    CHECK(warm.heat.others == small.struck);
    CHECK(warm.heat.setPoint == Celsius{260});
}

TEST_CASE("A later place that is taken when it would come speaks against a zone") {
    SmallBook small = smallBook();
    HouseBook& book = small.book;
    const Stay rooting = book.get<Stay>(small.plannedStay);
    Stay weaning = rooting;
    weaning.zone = small.cool;
    weaning.stage = Stage::Weaning;
    weaning.from = rooting.to;
    weaning.to = rooting.to + 14;
    weaning.places = {{1, {1, 0, 1, 3}}, {2, {2, 0, 1, 3}}};
    perform(book, {PlanBatch{small.planned, day("2027-03-01"), {rooting, weaning}}});
    CHECK(suitabilityOf(book, small.planned, {}, "2027-03-01").find(small.warm)->suits());
    // The next one comes when it was to leave; ready two days later than planned, it would still be there.
    Batch next = book.get<Batch>(small.planned);
    next.id = {};
    next.code.clear();
    next.strikeDay = weaning.to;
    Stay nextStay = weaning;
    nextStay.stage = Stage::Rooting;
    nextStay.from = weaning.to;
    nextStay.to = weaning.to + 10;
    perform(book, {AddBatch{next, {nextStay}}});
    const ZoneVerdict warm = *suitabilityOf(book, small.planned, {}, "2027-03-01").find(small.warm);
    CHECK(warm.hindrances == Hindrances{Hindrance::Following});
    CHECK(warm.follower == book.all<Batch>().rbegin()->first);
}

TEST_CASE("What suits is put down as one sound step, its mat set with it, and can be taken back") {
    SmallBook small = smallBook();
    HouseBook& book = small.book;
    const Suitability there = suitabilityOf(book, small.planned, {}, "2027-03-01");
    CHECK_FALSE(there.placing(small.warm, {}));
    const auto slots = there.slotsAt(small.warm, {2, 3}, true);
    REQUIRE(slots.size() == 2);
    CHECK(slots.front().height == 3);
    const Command command = *there.placing(small.warm, slots);
    CHECK(words(book, command) == "Move 27-060-A within Bench 1 · A from 2027-03-01 on, and set its mat");
    const HouseBook before = book;
    const Change done = perform(book, command);
    CHECK(audit(book).empty());
    const Stay& stay = book.get<Stay>(small.plannedStay);
    CHECK(stay.to == day("2027-04-14"));
    CHECK(stay.places.front().slots == slots.front());
    CHECK(setPointOn(book, small.warm, day("2027-04-13")) == Celsius{200});
    CHECK(!setPointOn(book, small.warm, day("2027-04-14")));
    CHECK(!book.apply(done.inverse()));
    CHECK(book == before);
}
