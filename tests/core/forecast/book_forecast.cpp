#include "core/forecast/book_forecast.h"

#include "core/forecast/stay_ends.h"
#include "tests/support/small_book.h"
#include "tests/support/within.h"

using namespace warmbench;
using namespace warmbench::forecast;
using namespace warmbench::tests;

namespace {

RootCheck check(const SmallBook& small, int pot, const char* on, int rooted) {
    return {{}, small.struck, pot, day(on), 5, rooted, 0, 5 - rooted, 0, std::nullopt, ""};
}

void aim(SmallBook& small) {
    perform(small.book, {DescribeBatch{small.struck, small.target, ""}});
}

} // namespace

TEST_CASE("A book's forecast has its struck batches only") {
    SmallBook small = smallBook();
    const BookForecast forecast(small.book, day("2027-03-20"));
    REQUIRE(forecast.batches().size() == 1);
    const BatchOutlook& outlook = forecast.batches().at(small.struck);
    CHECK(outlook.struck == 20);
    CHECK(outlook.rooting);
    CHECK(outlook.assumedReady == day("2027-04-01"));
    CHECK(outlook.surePlants < outlook.expected);
    CHECK(BookForecast(small.book, day("2027-02-14")).batches().empty());
    // The plan's day alone does not wean it.
    CHECK(BookForecast(small.book, day("2027-04-02")).batches().at(small.struck).rooting);
    perform(small.book, {WeanStay{small.weaning, day("2027-04-01")}});
    CHECK_FALSE(BookForecast(small.book, day("2027-04-02")).batches().at(small.struck).rooting);
}

TEST_CASE("Kept up to date change by change it says what a new one says") {
    SmallBook small = smallBook();
    BookForecast kept(small.book, day("2027-03-20"));
    for (int pot = 1; pot <= 3; ++pot)
        kept.update(small.book, perform(small.book, {RecordCheck{check(small, pot, "2027-03-18", 1)}}));
    kept.update(small.book,
                perform(small.book, {RecordLoss{{{}, small.struck, 4, day("2027-03-19"), 2, "rot"}}}));
    const BookForecast fresh(small.book, day("2027-03-20"));
    const BatchOutlook& one = kept.batches().at(small.struck);
    const BatchOutlook& other = fresh.batches().at(small.struck);
    CHECK(one.expected == other.expected);
    CHECK(one.likelyReady == other.likelyReady);
    CHECK(one.surePlants == other.surePlants);
    CHECK(one.examined == 15);
    kept.update(small.book,
                perform(small.book, {SetMatRuns{small.warm, day("2027-03-21"), day("2027-04-01"), {}}}));
    CHECK(*kept.batches().at(small.struck).likelyReady > *other.likelyReady);
}

TEST_CASE("A target counts on what its batches surely give") {
    SmallBook small = smallBook();
    perform(small.book, {RemoveBatch{small.planned}});
    perform(small.book, {DescribeBatch{small.struck, std::nullopt, ""}});
    const BookForecast before(small.book, day("2027-03-20"));
    CHECK(before.target(small.book, small.target).expected == 0);
    aim(small);
    const BookForecast forecast(small.book, day("2027-03-20"));
    const TargetOutlook outlook = forecast.target(small.book, small.target);
    CHECK(outlook.wanted == 50);
    CHECK(outlook.expected == Approx(forecast.batches().at(small.struck).expected));
    CHECK(outlook.surePlants == forecast.batches().at(small.struck).surePlants);
    CHECK(outlook.sureness == 0);
    REQUIRE(outlook.ready);
    CHECK(*outlook.ready == *forecast.batches().at(small.struck).likelyReady + 14);
}

TEST_CASE("A late batch keeps its slots, until another batch is to stand there") {
    SmallBook small = smallBook();
    for (int pot = 1; pot <= 4; ++pot) perform(small.book, {RecordCheck{check(small, pot, "2027-03-29", 0)}});
    const BookForecast forecast(small.book, day("2027-03-30"));
    const int slip = forecast.batches().at(small.struck).slip();
    REQUIRE(slip >= slipThatMatters);
    const auto ends = stayEnds(small.book, forecast);
    CHECK(ends.at(small.rooting) == day("2027-04-01") + slip);
    CHECK(ends.at(small.weaning) == day("2027-04-15") + slip);

    Batch next = small.book.get<Batch>(small.planned);
    next.id = {};
    next.code.clear();
    next.strikeDay = day("2027-04-03");
    next.containerType = small.pot;
    next.containers = {{0, 5}};
    perform(small.book, {AddBatch{next,
                                  {Stay{{},
                                        {},
                                        Stage::Rooting,
                                        small.warm,
                                        day("2027-04-03"),
                                        day("2027-05-01"),
                                        {{1, {0, 0, 1, 1}}}}}}});
    CHECK(stayEnds(small.book, forecast).at(small.rooting) == day("2027-04-03"));
}

TEST_CASE("A batch on time changes no stay") {
    const SmallBook small = smallBook();
    const BookForecast forecast(small.book, day("2027-02-16"));
    const int slip = forecast.batches().at(small.struck).slip();
    CHECK(std::abs(slip) <= 2);
    for (const auto& [stay, end] : stayEnds(small.book, forecast))
        CHECK(std::abs(end - small.book.get<Stay>(stay).to) <= 2);
}
