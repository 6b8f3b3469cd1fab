#include "core/round/round.h"

#include "core/round/due.h"
#include "core/round/weaning.h"
#include "tests/support/small_book.h"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::round;
using namespace warmbench::tests;
using warmbench::forecast::BookForecast;

namespace {

std::vector<Stop> stopsOn(const SmallBook& small, const char* on) {
    return roundOn(small.book, BookForecast(small.book, day(on)));
}

bool has(const Stop& stop, Reason reason) {
    return std::find(stop.reasons.begin(), stop.reasons.end(), reason) != stop.reasons.end();
}

void check(SmallBook& small, int pot, const char* on, int rooted, int dead = 0) {
    perform(small.book,
            {RecordCheck{
                {{}, small.struck, pot, day(on), 5, rooted, 0, 5 - rooted - dead, dead, std::nullopt, ""}}});
}

} // namespace

TEST_CASE("Softwood is left alone for ten days, then two pots of five are looked at") {
    SmallBook small = smallBook();
    CHECK(stopsOn(small, "2027-02-24").empty());
    const auto stops = stopsOn(small, "2027-02-25");
    REQUIRE(stops.size() == 2);
    CHECK(has(stops[0], Reason::Unchecked));
    CHECK(stops[0].examine == 5);
    CHECK(stops[0].why == "not looked at since it was struck, 10 days");
    check(small, 1, "2027-02-25", 0);
    check(small, 2, "2027-02-25", 0);
    CHECK(stopsOn(small, "2027-02-26").empty());
    const auto next = stopsOn(small, "2027-02-28");
    REQUIRE(next.size() == 2);
    // The pots that were not lifted last time.
    CHECK(next[0].container == 3);
    CHECK(next[1].container == 4);
}

TEST_CASE("Roots that should have started, and a batch that should be ready, are worth a look") {
    const SmallBook small = smallBook();
    const auto started = stopsOn(small, "2027-03-18");
    REQUIRE(started.size() == 2);
    CHECK(has(started[0], Reason::Started));
    CHECK_FALSE(has(started[0], Reason::Ready));
    SmallBook longer = smallBook();
    perform(longer.book, {MoveStay{longer.weaning, longer.cool, day("2027-05-01"), day("2027-05-15"),
                                   longer.book.get<Stay>(longer.weaning).places}});
    perform(longer.book, {MoveStay{longer.rooting, longer.warm, day("2027-02-15"), day("2027-05-01"),
                                   longer.book.get<Stay>(longer.rooting).places}});
    const auto ready = stopsOn(longer, "2027-04-28");
    CHECK(ready.size() == 4);
    CHECK(has(ready.front(), Reason::Ready));
}

TEST_CASE("A batch that only the plan's day moved on to weaning stays on the round until it is weaned") {
    SmallBook small = smallBook();
    const auto unseen = stopsOn(small, "2027-04-05");
    REQUIRE_FALSE(unseen.empty());
    CHECK(unseen.front().zone == small.cool);
    check(small, 1, "2027-04-05", 5);
    CHECK(stopsOn(small, "2027-04-05").size() == unseen.size());
    CHECK_FALSE(stopsOn(small, "2027-04-12").empty());
    perform(small.book, *weanCommand(small.book, small.struck, day("2027-04-06")));
    CHECK(stopsOn(small, "2027-04-12").empty());
}

TEST_CASE("A pot with losses is looked at again by itself") {
    SmallBook small = smallBook();
    check(small, 3, "2027-02-25", 0, 2);
    check(small, 1, "2027-02-25", 0);
    const auto stops = stopsOn(small, "2027-02-26");
    REQUIRE(stops.size() == 1);
    CHECK(stops[0].container == 3);
    CHECK(stops[0].reasons == std::vector{Reason::Losses});
    CHECK(stops[0].why == "2 of 5 dead on 2027-02-25");
}

TEST_CASE("What was found on a round takes no container off it") {
    SmallBook small = smallBook();
    check(small, 1, "2027-02-25", 3);
    const auto stops = stopsOn(small, "2027-02-25");
    REQUIRE(stops.size() == 2);
    CHECK(stops[0].container == 1);
    CHECK(stops[0].found == RootCheckId{1});
    CHECK(stops[1].container == 2);
    CHECK_FALSE(stops[1].found);
}

TEST_CASE("A walk goes along a bench and back along the next") {
    SmallBook small = smallBook();
    Bench second = small.book.get<Bench>(small.bench);
    second.id = {};
    second.name = "Bench 2";
    second.y = second.y + Millimetres{1500};
    perform(small.book, {Put<Bench>{second}});
    const BenchId bench{2};
    Zone zone = small.book.get<Zone>(small.cool);
    zone.id = {};
    zone.bench = bench;
    zone.blocked.clear();
    perform(small.book, {Put<Zone>{zone}});
    Batch batch = small.book.get<Batch>(small.struck);
    batch.id = {};
    batch.code.clear();
    batch.containers = {{1, 5}, {2, 5}};
    perform(small.book, {AddBatch{batch,
                                  {Stay{{},
                                        {},
                                        Stage::Rooting,
                                        ZoneId{3},
                                        day("2027-02-15"),
                                        day("2027-04-01"),
                                        {{1, {0, 0, 1, 1}}, {2, {0, 1, 1, 1}}}}}}});
    std::vector<std::pair<std::int64_t, int>> order;
    for (const Standing& one : walk(small.book, day("2027-02-20")))
        order.emplace_back(one.batch.number, one.container);
    const std::vector<std::pair<std::int64_t, int>> expected{{1, 1}, {1, 2}, {1, 3}, {1, 4}, {3, 2}, {3, 1}};
    CHECK(order == expected);
}

TEST_CASE("A batch is due to be weaned when most are rooted, and to be potted on after its days") {
    SmallBook small = smallBook();
    const auto dueFrom = [&](const char* on) { return dueOn(small.book, BookForecast(small.book, day(on))); };
    CHECK(dueFrom("2027-03-20").empty());
    for (int pot = 1; pot <= 4; ++pot) check(small, pot, "2027-03-22", 5);
    const auto wean = dueFrom("2027-03-24");
    REQUIRE(wean.size() == 1);
    CHECK(wean[0].task == Task::Wean);
    CHECK(wean[0].plants == 20);
    perform(small.book, *weanCommand(small.book, small.struck, day("2027-04-01")));
    CHECK(dueFrom("2027-04-10").empty());
    const auto potOn = dueFrom("2027-04-15");
    REQUIRE(potOn.size() == 1);
    CHECK(potOn[0].task == Task::PotOn);
    CHECK(potOn[0].since == day("2027-04-15"));
}

TEST_CASE(
    "A batch that stands in its weaning place by the plan's day alone is due to be weaned, not potted on") {
    SmallBook small = smallBook();
    const auto dueFrom = [&](const char* on) { return dueOn(small.book, BookForecast(small.book, day(on))); };
    const auto onTheDay = dueFrom("2027-04-01");
    REQUIRE(onTheDay.size() == 1);
    CHECK(onTheDay[0].why == "the plan weans it today, but no root of it was seen yet; look at it first");
    const auto left = dueFrom("2027-04-14");
    REQUIRE(left.size() == 1);
    CHECK(left[0].task == Task::Wean);
    CHECK(left[0].since == day("2027-04-01"));
    CHECK(left[0].why ==
          "the plan weans it since 2027-04-01, but no root of it was seen yet; look at it first");
    const auto over = dueFrom("2027-04-15");
    REQUIRE(over.size() == 1);
    CHECK(over[0].task == Task::PotOn);
    CHECK(over[0].why == "its place is given up on 2027-04-15, but nobody weaned it");
    perform(small.book, *weanCommand(small.book, small.struck, day("2027-04-05")));
    CHECK(dueFrom("2027-04-18").empty());
    CHECK(dueFrom("2027-04-19").at(0).why == "weaned on 2027-04-05 and grown on as its recipe says");
}

TEST_CASE(
    "A batch with roots that nobody weaned on the plan's day is due, and looked at, until somebody does") {
    SmallBook small = smallBook();
    for (int pot = 1; pot <= 4; ++pot) check(small, pot, "2027-03-22", 2);
    const auto dueFrom = [&](const char* on) { return dueOn(small.book, BookForecast(small.book, day(on))); };
    for (const char* on : {"2027-04-01", "2027-04-03", "2027-04-14"}) {
        INFO(on);
        const auto due = dueFrom(on);
        REQUIRE(due.size() == 1);
        CHECK(due[0].task == Task::Wean);
        CHECK(due[0].since == day("2027-04-01"));
        CHECK_THAT(due[0].why.text(), Catch::EndsWith("8 of 20 in the last checks"));
    }
    CHECK_THAT(dueFrom("2027-04-03")[0].why.text(),
               Catch::StartsWith("the plan weans it since 2027-04-01, but nobody has yet; about "));
    CHECK_FALSE(roundOn(small.book, BookForecast(small.book, day("2027-04-05"))).empty());
    perform(small.book, *weanCommand(small.book, small.struck, day("2027-04-01")));
    CHECK(dueFrom("2027-04-14").empty());
    CHECK(roundOn(small.book, BookForecast(small.book, day("2027-04-05"))).empty());
}
