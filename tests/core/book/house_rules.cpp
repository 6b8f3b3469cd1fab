#include "tests/core/book/refused.h"
#include "tests/support/small_book.h"

using namespace warmbench;
using namespace warmbench::tests;

TEST_CASE("The nursery's settings keep within sense") {
    SmallBook small = smallBook();
    const auto with = [&](auto change) { return refusedWith<Nursery>(small.book, {1}, change); };
    CHECK(with([](Nursery& n) { n.latitude = Latitude{901}; }) ==
          "nursery: latitude 90.1 is not between -90 and 90");
    CHECK(with([](Nursery& n) { n.seasonShiftDays = -91; }) ==
          "nursery: seasons shifted by -91 days; expected at most 90 either way");
    CHECK(with([](Nursery& n) { n.surenessPermille = 1000; }) ==
          "nursery: sureness must lie between 50 and 99.9 %");
    CHECK(with([](Nursery& n) { n.strikesByWeekday[6] = -1; }) ==
          "nursery: hands for fewer than 0 cuttings a day");
    CHECK(with([](Nursery& n) { n.moveCost = Money{-1}; }) == "nursery: a cost is below 0");
    CHECK(with([](Nursery& n) { n.lateCostPermille = -1; }) ==
          "nursery: the cost of a late plant is below 0");
}

TEST_CASE("A day has its hands once") {
    SmallBook small = smallBook();
    perform(small.book, {Put<HandDay>{{{}, day("2027-05-01"), 0, ""}}});
    CHECK(refused(small.book, {Put<HandDay>{{{}, day("2027-05-01"), 9, ""}}}) ==
          "2027-05-01: the hands of this day stand twice");
    CHECK(refused(small.book, {Put<HandDay>{{{}, day("2027-05-02"), -1, ""}}}) ==
          "2027-05-02: hands for fewer than 0 cuttings");
}

TEST_CASE("A house has a name of its own, sides and temperatures that can be") {
    SmallBook small = smallBook();
    const auto with = [&](auto change) { return refusedWith<House>(small.book, small.house, change); };
    CHECK(with([](House& h) { h.name.clear(); }) == "house: it needs a name");
    CHECK(with([](House& h) { h.width = Millimetres{499}; }) ==
          "Glasshouse: a side of 499 mm; expected half a metre to a kilometre");
    CHECK(with([](House& h) { h.air[3] = Celsius{601}; }) == "Glasshouse: 60.1 °C; expected -50 to 60 °C");
    CHECK(with([](House& h) { h.length = Millimetres{1500}; }) ==
          "Bench 1: it does not fit inside Glasshouse");
    CHECK(with([](House& h) { h.id = {}; }) == "Glasshouse: two houses have this name");
    CHECK(refused(small.book, {Remove<House>{small.house}}) ==
          "Glasshouse: it still has Bench 1 in it; remove that first");
}

TEST_CASE("A bench stands inside its house, across no other") {
    SmallBook small = smallBook();
    const auto with = [&](auto change) { return refusedWith<Bench>(small.book, small.bench, change); };
    CHECK(with([](Bench& b) { b.name.clear(); }) == "bench: it needs a name");
    CHECK(with([](Bench& b) { b.house = {7}; }) == "Bench 1: its house, number 7, is not in this book");
    CHECK(with([](Bench& b) { b.cols = 1001; }) ==
          "Bench 1: 4 rows and 1001 columns; expected 1 to 1000 of each");
    CHECK(with([](Bench& b) { b.slot = Millimetres{19}; }) ==
          "Bench 1: a slot of 19 mm; expected 20 to 2000 mm");
    CHECK(with([](Bench& b) { b.x = Millimetres{-1}; }) == "Bench 1: it does not fit inside Glasshouse");
    CHECK(with([](Bench& b) { b.cols = 8; }) == "Bench 1 · B: it leaves the bench");
    CHECK(with([](Bench& b) { b.id = {}; }) == "Bench 1: two benches of Glasshouse have this name");
    CHECK(with([](Bench& b) {
              b.id = {};
              b.name = "Bench 2";
          }) == "Bench 2: it stands across Bench 1");
    CHECK(refused(small.book, {Remove<Bench>{small.bench}}) ==
          "Bench 1: it still has zone A; remove that first");
}

TEST_CASE("A zone lies on its bench, across no other, and keeps what stands in it") {
    SmallBook small = smallBook();
    const auto with = [&](auto change) { return refusedWith<Zone>(small.book, small.warm, change); };
    CHECK(with([](Zone& z) { z.name.clear(); }) == "zone: it needs a name");
    CHECK(with([](Zone& z) { z.bench = {7}; }) == "A: its bench, number 7, is not in this book");
    CHECK(with([](Zone& z) { z.rows = 5; }) == "Bench 1 · A: it leaves the bench");
    CHECK(with([](Zone& z) { z.name = "B"; }) == "Bench 1 · B: two zones of this bench have this name");
    CHECK(with([](Zone& z) { z.cols = 9; }) == "Bench 1 · A: it lies across zone B");
    CHECK(with([](Zone& z) { z.blocked = {{4, 0}}; }) == "Bench 1 · A: a blocked slot lies outside it");
    CHECK(with([](Zone& z) {
              z.blocked = {{3, 0}, {3, 0}};
          }) == "Bench 1 · A: a blocked slot is named twice");
    CHECK(with([](Zone& z) {
              z.blocked = {{0, 0}};
          }) == "27-046-A, container 1: it stands on a blocked slot of Bench 1 · A");
    CHECK(with([](Zone& z) { z.mat->rated = Watts{0}; }) == "Bench 1 · A: its mat has no power");
    CHECK(with([](Zone& z) { z.mat->loss = HeatLoss{-1}; }) ==
          "Bench 1 · A: its mat's loss of heat is below 0");
    CHECK(with([](Zone& z) { z.mat->setPoints.clear(); }) == "Bench 1 · A: its mat has no set-point");
    CHECK(with([](Zone& z) { z.mat->setPoints = {Celsius{451}}; }) ==
          "Bench 1 · A: a set-point of 45.1 °C; expected 0 to 45 °C");
    CHECK(with([](Zone& z) {
              z.mat->setPoints = {Celsius{200}, Celsius{200}};
          }) == "Bench 1 · A: its mat's set-points do not rise");
    CHECK(with([](Zone& z) { z.mat.reset(); }) == "Bench 1 · A: it has no mat to run");
    CHECK(refused(small.book, {Remove<Zone>{small.warm}}) ==
          "A: 27-046-A stands or has stood there; move it first");
    perform(small.book, {RemoveBatch{small.planned}});
    perform(small.book, {RemoveStay{small.rooting}});
    CHECK(refused(small.book, {Remove<Zone>{small.warm}}) == "A: its mat has runs; take them out first");
}

TEST_CASE("A mat runs at one of its set-points at a time") {
    SmallBook small = smallBook();
    const Day from = day("2027-05-01");
    const auto set = [&](std::vector<MatRun> runs) {
        return refused(small.book, {SetMatRuns{small.warm, from, from + 9, std::move(runs)}});
    };
    CHECK(set({{{}, {}, from, from + 2, Celsius{190}}}) == "Bench 1 · A: 19 °C is no set-point of its mat");
    CHECK(set({{{}, {}, from + 2, from + 2, Celsius{200}}}) ==
          "Bench 1 · A: a run of its mat ends before it begins");
    CHECK(set({{{}, {}, from, from + 3, Celsius{200}}, {{}, {}, from + 2, from + 4, Celsius{220}}}) ==
          "Bench 1 · A: its mat has two set-points on 2027-05-03");
    CHECK(refused(small.book,
                  {SetMatRuns{small.cool, from, from + 9, {{{}, {}, from, from + 2, Celsius{200}}}}}) ==
          "Bench 1 · B: it has no mat to run");
}
