#include "core/forecast/batch_curve.h"

#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::forecast;
using namespace warmbench::tests;

TEST_CASE(
    "A batch's curve rises from its strike day, within its band, with the checks of each day together") {
    SmallBook small = smallBook();
    for (int pot = 1; pot <= 3; ++pot)
        perform(small.book,
                {RecordCheck{{{}, small.struck, pot, day("2027-03-18"), 5, pot, 0, 4 - pot, 1, {}, ""}}});
    perform(small.book, {RecordCheck{{{}, small.struck, 1, day("2027-03-25"), 5, 4, 0, 1, 0, {}, ""}}});
    const BookForecast forecast(small.book, day("2027-03-20"));
    const BatchCurve curve = batchCurve(small.book, forecast, small.struck);
    REQUIRE(curve.days.size() > 30);
    CHECK(curve.days.front().day == day("2027-02-15"));
    CHECK(curve.days.back().day > *curve.outlook.likelyReady);
    for (std::size_t i = 0; i < curve.days.size(); ++i) {
        const auto& one = curve.days[i].rooted;
        CHECK(one.band.low <= one.expected);
        // The mean of a share that is nearly always 0 may lie above most of its law.
        CHECK(one.expected <= one.band.high + 1e-4);
        if (i > 0) CHECK(one.expected >= curve.days[i - 1].rooted.expected);
    }
    // The check of the 25th is not known on the 20th.
    REQUIRE(curve.checks.size() == 1);
    CHECK(curve.checks[0].rooted == 6);
    CHECK(curve.checks[0].alive == 12);
}

TEST_CASE("The forecast of some batches says of them, and of their target, what that of all does") {
    SmallBook small = smallBook();
    perform(small.book, {StrikeBatch{small.planned, day("2027-03-01")}});
    const Day today = day("2027-03-20");
    const BookForecast all(small.book, today);
    const BookForecast some(small.book, today, std::set<BatchId>{small.struck, small.planned});
    const BookForecast one(small.book, today, std::set<BatchId>{small.struck});
    CHECK(one.batches().size() == 1);
    CHECK(one.batches().at(small.struck).expected == all.batches().at(small.struck).expected);
    CHECK(some.target(small.book, small.target).sureness == all.target(small.book, small.target).sureness);
    CHECK(some.target(small.book, small.target).surePlants ==
          all.target(small.book, small.target).surePlants);
}
