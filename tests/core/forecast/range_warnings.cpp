#include "core/forecast/range_warnings.h"

#include "core/forecast/book_forecast.h"
#include "tests/support/small_book.h"
#include "tests/support/within.h"

using namespace warmbench;
using namespace warmbench::forecast;
using namespace warmbench::tests;

namespace {

/// Half-hourly readings of the warm zone from 2027-02-15 on, by hour since then.
Command readings(const SmallBook& small, int days, double (*celsius)(double hour)) {
    ChannelReadings root{Channel::RootZone, {}};
    const std::int32_t begins = day("2027-02-15").number() * climate::minutesPerDay;
    for (std::int32_t minute = 0; minute <= days * climate::minutesPerDay; minute += 30)
        root.readings.push_back({begins + minute, static_cast<std::int32_t>(celsius(minute / 60.0) * 100)});
    return {KeepReadings{{small.warm, std::nullopt}, {root}}};
}

} // namespace

TEST_CASE("One cold spell is told once, with its hours and all whose cuttings stand there") {
    SmallBook small = smallBook();
    perform(small.book, {StrikeBatch{small.planned, day("2027-03-01")}});
    // Cold in the nights of 10 and 11 March, from 22 to 2 and from 4 to 8 o'clock; a warm noon on the 20th.
    perform(small.book, readings(small, 50, [](double hour) {
                const double since = hour - 23 * 24 - 22;
                if ((since >= 0 && since < 4) || (since >= 6 && since < 10)) return 9.0;
                return hour >= 33 * 24 + 12 && hour < 33 * 24 + 15 ? 40.0 : 20.0;
            }));
    const auto found = rangeWarnings(small.book, day("2027-02-15"), day("2027-04-20"));
    REQUIRE(found.size() == 2);
    CHECK_FALSE(found[0].below);
    CHECK(found[0].extreme == 40);
    CHECK(found[0].hours == 3);
    const RangeWarning& cold = found[1];
    CHECK(cold.below);
    CHECK(cold.zone == small.warm);
    CHECK(cold.batches == std::vector<BatchId>{small.struck, small.planned});
    CHECK(cold.hours == 8);
    CHECK(cold.from == day("2027-03-10").number() * 24.0 + 22);
    CHECK(cold.to == day("2027-03-11").number() * 24.0 + 8);
    CHECK(cold.extreme == 9);
    CHECK(rangeWarnings(small.book, day("2027-03-12"), day("2027-03-15")).empty());
}

TEST_CASE("What was measured where a batch stands moves its forecast, at once when it is kept") {
    SmallBook small = smallBook();
    const Day today = day("2027-03-05");
    BookForecast forecast(small.book, today);
    const double expected = forecast.find(small.struck)->warmth().by(today);
    const Day ready = *forecast.batches().at(small.struck).likelyReady;
    const Change change = perform(small.book, readings(small, 18, [](double) { return 16.0; }));
    forecast.update(small.book, change);
    const BatchWarmth& warmth = forecast.find(small.struck)->warmth();
    CHECK(warmth.measuredDays() == 18);
    const Recipe& recipe = small.book.get<Batch>(small.struck).recipe;
    CHECK(expected - warmth.by(today) == within(18 * (20.0 - 16.0), 1e-9));
    CHECK(recipe.base.value.units() < 16);
    CHECK(*forecast.batches().at(small.struck).likelyReady > ready);
    forecast.update(small.book, [&] {
        const Change back = change.inverse();
        REQUIRE(!small.book.apply(back));
        return back;
    }());
    CHECK(forecast.find(small.struck)->warmth().by(today) == expected);
}
