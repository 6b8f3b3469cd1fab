#include "core/book/command.h"
#include "core/book/query.h"
#include "core/book/rules.h"
#include "tests/support/small_book.h"
#include "tests/support/through_and_back.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::tests;

namespace {

template <class E>
E changedName(E thing) {
    thing.name += " (new)";
    return thing;
}

template <class E>
void addsChangesAndRemoves(HouseBook& book, E thing) {
    thing.id = {};
    followsThroughAndBack(book, {Put<E>{thing}});
    E added = book.all<E>().rbegin()->second;
    followsThroughAndBack(book, {Put<E>{changedName(added)}});
    followsThroughAndBack(book, {Remove<E>{added.id}});
}

} // namespace

TEST_CASE("The nursery's settings are changed") {
    SmallBook small = smallBook();
    Nursery nursery = small.book.nursery();
    nursery.surenessPermille = 950;
    followsThroughAndBack(small.book, {Put<Nursery>{nursery}});
    CHECK(small.book.nursery().surenessPermille == 950);
}

TEST_CASE("The hands of a day are added, changed and removed") {
    SmallBook small = smallBook();
    followsThroughAndBack(small.book, {Put<HandDay>{{{}, day("2027-05-01"), 0, "holiday"}}});
    followsThroughAndBack(small.book, {Put<HandDay>{{{1}, day("2027-05-01"), 50, "half a day"}}});
    followsThroughAndBack(small.book, {Remove<HandDay>{{1}}});
}

TEST_CASE("Houses, benches and zones are added, changed and removed") {
    SmallBook small = smallBook();
    addsChangesAndRemoves(small.book, changedName(small.book.get<House>(small.house)));
    Bench bench = changedName(small.book.get<Bench>(small.bench));
    bench.y = Millimetres{3000};
    addsChangesAndRemoves(small.book, bench);
    followsThroughAndBack(small.book, {Put<Bench>{[&] {
                              bench.id = {};
                              return bench;
                          }()}});
    Zone zone = changedName(small.book.get<Zone>(small.cool));
    zone.bench = small.book.all<Bench>().rbegin()->first;
    addsChangesAndRemoves(small.book, zone);
}

TEST_CASE("What is grown, and in what, is added, changed and removed") {
    SmallBook small = smallBook();
    HouseBook& book = small.book;
    addsChangesAndRemoves(book, changedName(book.get<ContainerType>(small.pot)));
    addsChangesAndRemoves(book, changedName(book.get<Medium>(small.medium)));
    addsChangesAndRemoves(book, changedName(book.get<Taxon>(small.fuchsia)));
    addsChangesAndRemoves(book, changedName(book.get<Recipe>(small.recipe)));
    addsChangesAndRemoves(book, changedName(book.get<Stock>(small.stock)));
    addsChangesAndRemoves(book, changedName(book.get<Target>(small.target)));
}

TEST_CASE("A batch that is added gets a code of its day, numbers for its containers, and its stays") {
    SmallBook small = smallBook();
    Batch batch = small.book.get<Batch>(small.struck);
    batch.code.clear();
    for (BatchContainer& one : batch.containers) one.number = 0;
    Stay stay = small.book.get<Stay>(small.rooting);
    for (Place& place : stay.places) place.slots.row = 2;
    followsThroughAndBack(small.book, {AddBatch{batch, {stay}}});
    const Batch& added = small.book.all<Batch>().rbegin()->second;
    CHECK(added.code == "27-046-B");
    CHECK(added.containers.back().number == 4);
    CHECK(small.book.staysOf(added.id).size() == 1);
}

TEST_CASE("Batches that one group adds get codes of their own") {
    SmallBook small = smallBook();
    Batch batch = small.book.get<Batch>(small.struck);
    batch.code.clear();
    batch.state = BatchState::Planned;
    batch.strikeDay = day("2027-03-03");
    Batch other = batch;
    other.strikeDay = day("2027-03-04");
    followsThroughAndBack(small.book, {Group{"two", {{AddBatch{batch, {}}}, {AddBatch{other, {}}}}}});
    // Both struck on another day than planned, the same one.
    followsThroughAndBack(
        small.book, {Group{"strike both",
                           {{StrikeBatch{{3}, day("2027-03-05")}}, {StrikeBatch{{4}, day("2027-03-05")}}}}});
    CHECK(small.book.get<Batch>({3}).code == "27-064-A");
    CHECK(small.book.get<Batch>({4}).code == "27-064-B");
}

TEST_CASE("A planned batch is struck on its day, or later with its stays moved along") {
    SmallBook small = smallBook();
    SmallBook late = smallBook();
    followsThroughAndBack(small.book, {StrikeBatch{small.planned, day("2027-03-01")}});
    CHECK(small.book.get<Batch>(small.planned).code == "27-060-A");
    followsThroughAndBack(late.book, {StrikeBatch{late.planned, day("2027-03-03")}});
    CHECK(late.book.get<Batch>(late.planned).code == "27-062-A");
    CHECK(late.book.get<Stay>(late.plannedStay).from == day("2027-03-03"));
    CHECK(late.book.get<Stay>(late.plannedStay).to == day("2027-04-14"));
}

TEST_CASE("A planned batch is taken out with its stays") {
    SmallBook small = smallBook();
    followsThroughAndBack(small.book, {RemoveBatch{small.planned}});
    CHECK(!small.book.find<Stay>(small.plannedStay));
}

TEST_CASE("A planned batch is planned anew, for another day and place, or for none") {
    SmallBook small = smallBook();
    const Stay before = small.book.get<Stay>(small.plannedStay);
    Stay moved = before;
    moved.id = {};
    moved.batch = {};
    moved.from = day("2027-03-09");
    moved.to = day("2027-04-20");
    Stay after = moved;
    after.stage = Stage::Weaning;
    after.from = moved.to;
    after.to = moved.to + 7;
    followsThroughAndBack(small.book, {PlanBatch{small.planned, day("2027-03-09"), {after, moved}}});
    CHECK(small.book.get<Batch>(small.planned).code == "27-068-A");
    CHECK(small.book.get<Stay>(small.plannedStay).from == moved.from);
    CHECK(small.book.staysOf(small.planned).size() == 2);
    followsThroughAndBack(small.book, {PlanBatch{small.planned, day("2027-03-09"), {}}});
    CHECK(small.book.staysOf(small.planned).empty());
    CHECK(small.book.get<Batch>(small.planned).code == "27-068-A");
}

TEST_CASE("A batch is described") {
    SmallBook small = smallBook();
    followsThroughAndBack(small.book, {DescribeBatch{small.struck, std::nullopt, "soft tips"}});
    CHECK(small.book.get<Batch>(small.struck).note == "soft tips");
    CHECK(!small.book.get<Batch>(small.struck).target);
}

TEST_CASE("Stays are moved, added and removed") {
    SmallBook small = smallBook();
    const Stay weaning = small.book.get<Stay>(small.weaning);
    std::vector<Place> lower = weaning.places;
    for (Place& place : lower) place.slots.row = 3;
    followsThroughAndBack(small.book, {MoveStay{small.weaning, small.cool, weaning.from, weaning.to, lower}});
    followsThroughAndBack(small.book, {RemoveStay{small.weaning}});
    followsThroughAndBack(small.book, {AddStay{weaning}});
    const StayId again = small.book.all<Stay>().rbegin()->first;
    followsThroughAndBack(small.book, {WeanStay{again, weaning.from}});
    CHECK(small.book.get<Stay>(again).weanedOn == weaning.from);
}

TEST_CASE("A mat's runs are set for some days, and cut at their ends") {
    SmallBook small = smallBook();
    const Day from = day("2027-03-01");
    const Day to = day("2027-03-10");
    followsThroughAndBack(small.book, {SetMatRuns{small.warm, from, to, {{{}, {}, from, to, Celsius{220}}}}});
    CHECK(setPointOn(small.book, small.warm, from - 1) == Celsius{200});
    CHECK(setPointOn(small.book, small.warm, from) == Celsius{220});
    CHECK(setPointOn(small.book, small.warm, to) == Celsius{200});
    followsThroughAndBack(small.book, {SetMatRuns{small.warm, day("2027-01-01"), day("2027-12-31"), {}}});
    CHECK(!setPointOn(small.book, small.warm, from));
}

TEST_CASE("Root checks are recorded and removed") {
    SmallBook small = smallBook();
    RootCheck check;
    check.batch = small.struck;
    check.container = 2;
    check.day = day("2027-03-15");
    check.examined = 5;
    check.rooted = 3;
    check.callused = 1;
    check.dead = 1;
    followsThroughAndBack(small.book, {RecordCheck{check}});
    followsThroughAndBack(small.book, {RemoveCheck{{1}}});
}

TEST_CASE("A loss leaves fewer cuttings standing") {
    SmallBook small = smallBook();
    followsThroughAndBack(small.book, {RecordLoss{{{}, small.struck, 1, day("2027-03-20"), 2, "rot"}}});
    const Batch& batch = small.book.get<Batch>(small.struck);
    CHECK(standing(small.book, batch, 1, day("2027-03-19")) == 5);
    CHECK(standing(small.book, batch, 1, day("2027-03-20")) == 3);
}

TEST_CASE("Potting on frees the slots of containers that are empty after it") {
    SmallBook small = smallBook();
    const Day when = day("2027-03-25");
    followsThroughAndBack(small.book, {PotOn{small.struck, when, {{1, 4, 1}, {2, 3, 0}}, ""}});
    CHECK(slotsTaken(small.book, small.warm, when - 1) == 4 + 6);
    CHECK(slotsTaken(small.book, small.warm, when) == 3 + 6);
    CHECK(small.book.get<Batch>(small.struck).state == BatchState::Struck);
    followsThroughAndBack(small.book, {PotOn{small.struck, when, {{2, 2, 0}, {3, 5, 0}, {4, 0, 5}}, ""}});
    CHECK(small.book.get<Batch>(small.struck).state == BatchState::Ended);
    CHECK(pottedOn(small.book, small.struck) == 14);
    CHECK(slotsTaken(small.book, small.cool, day("2027-04-02")) == 0);
}

TEST_CASE("Discarding throws away containers, or all that is left") {
    SmallBook small = smallBook();
    followsThroughAndBack(small.book, {Discard{small.struck, day("2027-03-25"), {2}, "rot"}});
    CHECK(slotsTaken(small.book, small.warm, day("2027-03-25")) == 3 + 6);
    followsThroughAndBack(small.book, {Discard{small.struck, day("2027-03-26"), {}, "rot"}});
    CHECK(small.book.get<Batch>(small.struck).state == BatchState::Ended);
}

TEST_CASE("A group is done whole or not at all") {
    SmallBook small = smallBook();
    const Command strike{StrikeBatch{small.planned, day("2027-03-01")}};
    const Command loss{RecordLoss{{{}, small.planned, 1, day("2027-03-20"), 31, "rot"}}};
    const HouseBook before = small.book;
    CHECK(!small.book.perform({Group{"both", {strike, loss}}}));
    CHECK(small.book == before);
    followsThroughAndBack(small.book, {Group{"", {strike}}});
    CHECK(words(before, {Group{"", {strike}}}) == "Strike 27-060-A");
}

TEST_CASE("Commands that speak of what is not there are refused and change nothing") {
    SmallBook small = smallBook();
    const HouseBook before = small.book;
    const auto refused = [&](const Command& command) {
        const auto change = small.book.perform(command);
        CHECK(small.book == before);
        return change ? "done" : change.refusal().text();
    };
    const std::string gone = "there is no number 99 in this book; it may have been removed meanwhile";
    CHECK(refused({Remove<Zone>{{99}}}) == "zone: " + gone);
    CHECK(refused({Put<Taxon>{{{99}, "Rosa", {}, {}, ""}}}) == "taxon: " + gone);
    CHECK(refused({StrikeBatch{{99}, day("2027-03-01")}}) == "batch: " + gone);
    CHECK(refused({RemoveBatch{{99}}}) == "batch: " + gone);
    CHECK(refused({PlanBatch{{99}, day("2027-03-01"), {}}}) == "batch: " + gone);
    CHECK(refused({DescribeBatch{{99}, {}, ""}}) == "batch: " + gone);
    CHECK(refused({MoveStay{{99}, small.cool, {}, {}, {}}}) == "stay: " + gone);
    CHECK(refused({RemoveStay{{99}}}) == "stay: " + gone);
    CHECK(refused({WeanStay{{99}, {}}}) == "stay: " + gone);
    CHECK(refused({RemoveCheck{{99}}}) == "root check: " + gone);
    CHECK(refused({SetMatRuns{{99}, day("2027-03-01"), day("2027-03-02"), {}}}) == "zone: " + gone);
    CHECK(refused({PotOn{{99}, day("2027-03-01"), {{1, 1, 0}}, ""}}) == "batch: " + gone);
    CHECK(refused({Discard{{99}, day("2027-03-01"), {}, ""}}) == "batch: " + gone);
}

TEST_CASE("Commands that make no sense are refused in words") {
    SmallBook small = smallBook();
    HouseBook& book = small.book;
    const auto refused = [&](const Command& command) {
        const auto change = book.perform(command);
        return change ? "done" : change.refusal().text();
    };
    const Day when = day("2027-03-20");
    CHECK(refused({StrikeBatch{small.struck, when}}) ==
          "27-046-A: it has been struck already, on 2027-02-15");
    CHECK(refused({RemoveBatch{small.struck}}) ==
          "27-046-A: it has been struck; discard it with a reason instead of removing it");
    CHECK(refused({PlanBatch{small.struck, when, {}}}) ==
          "27-046-A: it has been struck, so it can't be planned anew");
    CHECK(refused({PotOn{small.struck, when, {}, ""}}) == "27-046-A: no container was named to pot on from");
    CHECK(refused({PotOn{small.struck, when, {{1, 5, 0}, {1, 1, 0}}, ""}}) ==
          "27-046-A: container 1 is named twice");
    CHECK(refused({Discard{small.struck, when, {9}, ""}}) == "27-046-A: it has no container 9");
    CHECK(refused({SetMatRuns{small.warm, when, when, {}}}) == "mat: the days end before they begin");
    CHECK(refused({SetMatRuns{small.warm, when, when + 2, {{{}, {}, when, when + 3, Celsius{200}}}}}) ==
          "mat: a run from 2027-03-20 to 2027-03-23 leaves the days 2027-03-20 to 2027-03-22");
    perform(book, {Discard{small.struck, when, {}, "rot"}});
    CHECK(refused({Discard{small.struck, when, {}, ""}}) == "27-046-A: nothing stands in it any more");
}
