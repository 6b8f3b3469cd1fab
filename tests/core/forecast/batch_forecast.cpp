#include "core/forecast/batch_forecast.h"

#include "tests/support/small_book.h"
#include "tests/support/within.h"

using namespace warmbench;
using namespace warmbench::forecast;
using namespace warmbench::tests;

namespace {

const Batch& struckIn(const SmallBook& small) {
    return small.book.get<Batch>(small.struck);
}

BatchForecast forecastOf(const SmallBook& small, const char* on) {
    return BatchForecast::make(small.book, struckIn(small), day(on)).value();
}

/// All four pots looked at, five cuttings each.
void look(SmallBook& small, const char* on, int rooted, int dead = 0) {
    for (int pot = 1; pot <= 4; ++pot)
        perform(
            small.book,
            {RecordCheck{
                {{}, small.struck, pot, day(on), 5, rooted, 0, 5 - rooted - dead, dead, std::nullopt, ""}}});
}

} // namespace

TEST_CASE("Thermal time passes by the mat's set-point, then by the unheated root zone where that is warmer") {
    const SmallBook small = smallBook();
    const BatchWarmth warmth(small.book, struckIn(small));
    CHECK(warmth.by(day("2027-02-15")) == 0);
    CHECK(warmth.by(day("2027-02-10")) == 0);
    CHECK(warmth.by(day("2027-02-25")) == Approx(10 * (20.0 - 6)));
    // The mat is off from 2027-04-01 on, and the batch stands elsewhere.
    const double last = warmth.by(day("2027-04-02")) - warmth.by(day("2027-04-01"));
    CHECK(last < 14);
    CHECK(warmth.dayOf(140) == day("2027-02-25"));
    CHECK(warmth.dayOf(140.1) == day("2027-02-26"));
    CHECK_FALSE(warmth.dayOf(1e9));
}

TEST_CASE("A measured day counts instead of the set-point") {
    const SmallBook small = smallBook();
    const MeasuredDay measured = [&](ZoneId zone, Day on,
                                     const climate::Thresholds& thresholds) -> std::optional<double> {
        CHECK(thresholds.base == 6);
        if (zone != small.warm || on >= day("2027-02-20")) return std::nullopt;
        return 9.5;
    };
    const BatchWarmth warmth(small.book, struckIn(small), measured);
    CHECK(warmth.measuredDays() == 5);
    CHECK(warmth.by(day("2027-02-21")) == Approx(5 * 9.5 + 14));
}

TEST_CASE("Before any check a batch gives what its recipe says") {
    const BatchForecast forecast = forecastOf(smallBook(), "2027-02-16");
    // A take of 70 to 90 %.
    CHECK(forecast.plants(0, 0.9).expected == within(0.806 * 20, 0.2));
    // Ready after 42 days at 20.5 over 6: 609 degree-days, 43.5 days at 20.
    const auto ready = forecast.readyDay(0.5);
    REQUIRE(ready);
    CHECK(std::abs(*ready - day("2027-03-31")) <= 1);
    CHECK(*forecast.readyDay(0.9) > *ready);
    CHECK(forecast.plants(0, 0.9).sureness == Approx(1));
    CHECK(forecast.plants(21, 0.9).sureness == 0);
}

TEST_CASE("Early roots bring the ready day forward, none so far puts it off") {
    SmallBook early = smallBook();
    look(early, "2027-03-08", 4);
    SmallBook late = smallBook();
    look(late, "2027-03-29", 0);
    const auto before = forecastOf(smallBook(), "2027-04-01").readyDay(0.5);
    CHECK(*forecastOf(early, "2027-04-01").readyDay(0.5) < *before);
    CHECK(*forecastOf(late, "2027-04-01").readyDay(0.5) > *before);
    CHECK(forecastOf(late, "2027-04-01").plants(0, 0.9).expected <
          forecastOf(early, "2027-04-01").plants(0, 0.9).expected);
}

TEST_CASE("A check after the day is not known on it") {
    SmallBook small = smallBook();
    look(small, "2027-03-29", 0);
    CHECK(forecastOf(small, "2027-03-28").plants(0, 0.9).expected ==
          Approx(forecastOf(smallBook(), "2027-03-28").plants(0, 0.9).expected));
}

TEST_CASE("The dead give no plants") {
    SmallBook small = smallBook();
    look(small, "2027-03-08", 2, 3);
    const BatchForecast forecast = forecastOf(small, "2027-03-09");
    CHECK(forecast.plants(0, 0.9).interval.high <= 8);
    CHECK(forecast.plants(0, 0.9).expected == within(8, 1e-6));
    CHECK(forecast.evidence().deadPart == within(0.6, 1e-12));
}

TEST_CASE("Plants in pots are certain, and what was left behind had no roots that day") {
    SmallBook small = smallBook();
    perform(small.book, {PotOn{small.struck, day("2027-04-05"), {{1, 5, 0}, {2, 3, 0}, {3, 4, 1}}, ""}});
    const BatchForecast forecast = forecastOf(small, "2027-04-06");
    CHECK(forecast.evidence().potted == 12);
    const auto plants = forecast.plants(12, 0.9);
    CHECK(plants.sureness == Approx(1));
    CHECK(plants.interval.high <= 19);
    CHECK(plants.expected > 15);
}

TEST_CASE("The share rooted grows by day, within its band") {
    SmallBook small = smallBook();
    look(small, "2027-03-15", 2);
    const BatchForecast forecast = forecastOf(small, "2027-03-15");
    double last = 0;
    for (Day on = day("2027-02-20"); on < day("2027-05-01"); on = on + 7) {
        const auto share = forecast.rootedOn(on, 0.9);
        CHECK(share.expected >= last);
        CHECK(share.band.low <= share.expected);
        CHECK(share.expected <= share.band.high);
        last = share.expected;
    }
    CHECK(forecast.rootedOn(day("2027-03-15"), 0.9).expected == within(0.4, 0.1));
}
