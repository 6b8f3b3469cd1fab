#include "tests/core/book/refused.h"
#include "tests/support/small_book.h"

using namespace warmbench;
using namespace warmbench::tests;

namespace {

RootCheck checkOf(BatchId batch, int container, const char* when, int examined) {
    RootCheck check;
    check.batch = batch;
    check.container = container;
    check.day = day(when);
    check.examined = check.rooted = examined;
    return check;
}

} // namespace

TEST_CASE("A batch is of one taxon, in containers that are numbered and filled") {
    SmallBook small = smallBook();
    const auto add = [&](auto change) {
        Batch batch = small.book.get<Batch>(small.struck);
        batch.code.clear();
        change(batch);
        return refused(small.book, {AddBatch{batch, {}}});
    };
    CHECK(add([](Batch& b) { b.code = "27-046-A"; }) == "27-046-A: two batches have this code");
    CHECK(add([](Batch& b) { b.taxon = {7}; }) == "27-046-B: its taxon, number 7, is not in this book");
    CHECK(add([&](Batch& b) { b.taxon = small.fuchsia; }) == "27-046-B: its recipe is for another taxon");
    CHECK(add([](Batch& b) { b.stock = StockId{7}; }) ==
          "27-046-B: its stock, number 7, is not in this book");
    CHECK(add([](Batch& b) { b.target = TargetId{7}; }) ==
          "27-046-B: its target, number 7, is not in this book");
    CHECK(add([](Batch& b) { b.containerType = {7}; }) ==
          "27-046-B: its container type, number 7, is not in this book");
    CHECK(add([](Batch& b) { b.containers.clear(); }) == "27-046-B: it has no container");
    CHECK(add([](Batch& b) { b.containers[1].number = 1; }) ==
          "27-046-B: its containers are not numbered 1, 2, 3, ...");
    CHECK(add([](Batch& b) { b.containers[2].cuttings = 0; }) ==
          "27-046-B, container 3: 0 cuttings; expected 1 to 100000");
}

TEST_CASE("A batch keeps its target's and its stock's taxon") {
    SmallBook small = smallBook();
    perform(small.book,
            {Put<Target>{{{}, "T2", small.fuchsia, 10, day("2027-06-01"), Money{100}, std::nullopt, ""}}});
    CHECK(refused(small.book, {DescribeBatch{small.struck, TargetId{2}, ""}}) ==
          "27-046-A: target T2 wants another taxon");
}

TEST_CASE("A stay begins after striking, ends after it begins, and holds containers of its batch") {
    SmallBook small = smallBook();
    const Stay weaning = small.book.get<Stay>(small.weaning);
    const auto move = [&](auto change) {
        MoveStay to{weaning.id, weaning.zone, weaning.from, weaning.to, weaning.places};
        change(to);
        return refused(small.book, {to});
    };
    CHECK(move([](MoveStay& s) { s.to = s.from; }) ==
          "27-046-A: a stay that begins on 2027-04-01 can't end on 2027-04-01");
    CHECK(move([](MoveStay& s) { s.from = day("2027-02-14"); }) ==
          "27-046-A: it can't stand there on 2027-02-14: it is struck on 2027-02-15");
    CHECK(move([](MoveStay& s) { s.places.clear(); }) == "27-046-A: a stay without a container");
    CHECK(move([](MoveStay& s) { s.zone = {7}; }) == "stay 2: its zone, number 7, is not in this book");
    CHECK(move([](MoveStay& s) { s.places[0].container = 9; }) == "27-046-A: it has no container 9");
    CHECK(move([](MoveStay& s) { s.places[1].container = 1; }) ==
          "27-046-A, container 1: it stands twice in one stay");
    CHECK(move([](MoveStay& s) { s.places[0].slots.width = 2; }) ==
          "27-046-A, container 1: it does not cover 1 by 2 slots");
    CHECK(move([](MoveStay& s) { s.places[0].slots.col = 4; }) ==
          "27-046-A, container 1: its slots leave Bench 1 · B");
    CHECK(move([](MoveStay& s) { s.places[1].slots.col = 0; }) ==
          "27-046-A, container 2: it stands on the same slot as container 1");
    CHECK(move([](MoveStay& s) { s.from = day("2027-03-30"); }) ==
          "27-046-A, container 1: it would be in two places on 2027-03-30");
    CHECK(move([&](MoveStay& s) {
              s.zone = small.warm;
              s.places = {{1, {1, 0, 1, 1}}};
          }) == "27-046-A, container 1: its slot in Bench 1 · A is taken by 27-060-A on 2027-04-01");
    CHECK(move([&](MoveStay& s) {
              s.zone = small.warm;
              s.places = {{1, {3, 7, 1, 1}}};
          }) == "27-046-A, container 1: it stands on a blocked slot of Bench 1 · A");
    CHECK(
        refused(small.book, {AddStay{{{}, {7}, Stage::Weaning, small.cool, weaning.from, weaning.to, {}}}}) ==
        "stay 4: its batch, number 7, is not in this book");
}

TEST_CASE("Only what is struck and no longer roots was weaned") {
    SmallBook small = smallBook();
    CHECK(refused(small.book, {WeanStay{small.rooting, day("2027-03-01")}}) ==
          "27-046-A: what was weaned on 2027-03-01 can't root from 2027-02-15 on");
    CHECK(refused(small.book, {WeanStay{small.plannedStay, day("2027-03-01")}}) ==
          "27-060-A: it is not struck yet, so it can't be weaned");
}

TEST_CASE("A tray that may be turned lies either way") {
    SmallBook small = smallBook();
    const Stay stay = small.book.get<Stay>(small.plannedStay);
    const auto move = [&](std::vector<Place> places) {
        return refused(small.book, {MoveStay{stay.id, stay.zone, stay.from, stay.to, std::move(places)}});
    };
    CHECK(move({{1, {1, 0, 3, 1}}, {2, {1, 1, 1, 3}}}) == "done");
    CHECK(move({{1, {1, 0, 3, 3}}}) == "27-060-A, container 1: it does not cover 3 by 3 slots");
}

TEST_CASE("A root check counts each cutting once, of those that stand there") {
    SmallBook small = smallBook();
    const auto record = [&](auto change) {
        RootCheck check = checkOf(small.struck, 1, "2027-03-15", 5);
        change(check);
        return refused(small.book, {RecordCheck{check}});
    };
    const std::string place = "27-046-A, container 1: ";
    CHECK(record([](RootCheck& c) { c.batch = {7}; }) ==
          "root check 1: its batch, number 7, is not in this book");
    CHECK(record([](RootCheck& c) { c.container = 9; }) == "27-046-A: it has no container 9");
    CHECK(record([&](RootCheck& c) { c.batch = small.planned; }) ==
          "27-060-A, container 1: it has not been struck");
    CHECK(record([](RootCheck& c) { c.day = day("2027-02-14"); }) ==
          place + "2027-02-14 is before it was struck, on 2027-02-15");
    CHECK(record([](RootCheck& c) { c.dead = -1; }) == place + "a count is below 0");
    CHECK(record([](RootCheck& c) { c.examined = c.rooted = 0; }) == place + "no cutting was examined");
    CHECK(record([](RootCheck& c) { c.dead = 1; }) ==
          place + "5 examined, but rooted, callused, alive and dead make 6");
    CHECK(record([](RootCheck& c) { c.grade = 6; }) == place + "grade 6; expected 0 to 5");
    CHECK(record([](RootCheck& c) { c.examined = c.rooted = 6; }) ==
          place + "6 examined, but only 5 stand in it");
}

TEST_CASE("A loss before a root check must leave what was examined") {
    SmallBook small = smallBook();
    perform(small.book, {RecordCheck{checkOf(small.struck, 1, "2027-03-15", 5)}});
    CHECK(refused(small.book, {RecordLoss{{{}, small.struck, 1, day("2027-03-10"), 1, "rot"}}}) ==
          "27-046-A, container 1: 5 examined, but only 4 stand in it");
    CHECK(refused(small.book, {PotOn{small.struck, day("2027-03-10"), {{1, 1, 0}}, ""}}) ==
          "27-046-A, container 1: 5 examined, but only 4 stand in it");
    CHECK(refused(small.book, {RecordLoss{{{}, small.struck, 1, day("2027-03-15"), 1, "rot"}}}) == "done");
}

TEST_CASE("No more comes out of a container than was struck in it") {
    SmallBook small = smallBook();
    const Day when = day("2027-03-20");
    const std::string place = "27-046-A, container 1: ";
    CHECK(refused(small.book, {RecordLoss{{{}, small.struck, 1, when, 0, ""}}}) ==
          place + "no cutting was lost");
    CHECK(refused(small.book, {RecordLoss{{{}, small.struck, 1, when, 7, ""}}}) ==
          place + "that is 2 more than stood in it");
    CHECK(refused(small.book, {PotOn{small.struck, when, {{1, 0, 0}}, ""}}) ==
          place + "nothing was potted on or lost");
    CHECK(refused(small.book, {PotOn{small.struck, when, {{1, 5, 1}}, ""}}) ==
          place + "that is 1 more than stood in it");
}
