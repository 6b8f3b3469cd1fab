#include "core/forecast/place_climate.h"

#include "tests/support/small_book.h"
#include "tests/support/within.h"

using namespace warmbench;
using namespace warmbench::forecast;
using namespace warmbench::tests;

TEST_CASE("A zone's climate has its root zone, the air of its house, the deficit and what was expected") {
    SmallBook small = smallBook();
    const std::int32_t begins = day("2027-03-20").number() * climate::minutesPerDay;
    const ReadingPlace zone{small.warm, std::nullopt};
    const ReadingPlace house{std::nullopt, small.house};
    CHECK_FALSE(readingDays(small.book, zone));
    perform(small.book, {KeepReadings{zone, {{Channel::RootZone, {{begins, 1950}, {begins + 60, 1960}}}}}});
    perform(small.book, {KeepReadings{house,
                                      {{Channel::Air, {{begins, 2000}, {begins + 60, 2000}}},
                                       {Channel::Humidity, {{begins, 5000}, {begins + 90, 6000}}}}}});
    const PlaceClimate found = climateOf(small.book, zone, day("2027-03-20"), day("2027-04-20"));
    CHECK(found.rootZone.size() == 2);
    CHECK(found.air.size() == 2);
    // Half of the saturation pressure at 20 °C, 2.338 kPa (FAO 56, table 2.3), at the one minute with both.
    REQUIRE(found.deficit.size() == 1);
    CHECK(found.deficit[0].units() == within(1.17, 0.01));
    REQUIRE(found.expected.size() == 31);
    const Recipe& recipe = small.book.get<Batch>(small.struck).recipe;
    CHECK(found.expected[0].setPoint == Celsius{200});
    CHECK(found.expected[0].low == recipe.rootZoneLow.value);
    CHECK(found.expected[0].high == recipe.rootZoneHigh.value);
    // From 1 April the mat is off, from the 12th nothing roots there.
    CHECK_FALSE(found.expected[12].setPoint);
    CHECK_FALSE(found.expected[30].low);
    CHECK(readingDays(small.book, zone)->last == day("2027-03-20"));
    CHECK(climateOf(small.book, house, day("2027-03-20"), day("2027-03-21")).expected.empty());
}
