#include "core/book/readings.h"
#include "core/book/rules.h"
#include "tests/core/book/refused.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::literals;
using namespace warmbench::tests;
using climate::MinuteReading;

namespace {

std::int32_t minuteOf(const char* iso) {
    return day(iso).number() * climate::minutesPerDay;
}

/// Hourly readings of so many days.
std::vector<MinuteReading> hourly(const char* from, int days, int hundredths) {
    std::vector<MinuteReading> readings;
    for (int hour = 0; hour < days * 24; ++hour) readings.push_back({minuteOf(from) + hour * 60, hundredths});
    return readings;
}

Command keep(ZoneId zone, std::vector<MinuteReading> readings, Channel channel = Channel::RootZone) {
    return {KeepReadings{{zone, std::nullopt}, {{channel, std::move(readings)}}}};
}

} // namespace

TEST_CASE("Readings are kept month by month, taken back and kept again") {
    SmallBook small = smallBook();
    const HouseBook before = small.book;
    const auto readings = hourly("2027-02-20", 30, 2050);
    CHECK(words(small.book, keep(small.warm, readings)) == "Keep 720 readings of Bench 1 · A");
    const auto change = small.book.perform(keep(small.warm, readings));
    REQUIRE(change);
    const ReadingPlace place{small.warm, std::nullopt};
    CHECK(small.book.readingsOf(place, Channel::RootZone).size() == 2);
    CHECK(readingsBetween(small.book, place, Channel::RootZone, day("2027-02-01"), day("2027-04-01")) ==
          readings);
    CHECK(
        readingsBetween(small.book, place, Channel::RootZone, day("2027-02-28"), day("2027-03-02")).size() ==
        48);
    CHECK(readingsBetween(small.book, place, Channel::Air, day("2027-02-01"), day("2027-04-01")).empty());
    CHECK(placesWithReadings(small.book) == std::vector<ReadingPlace>{place});
    CHECK(audit(small.book).empty());
    const HouseBook after = small.book;
    REQUIRE(!small.book.apply(change->inverse()));
    CHECK(small.book == before);
    CHECK(placesWithReadings(small.book).empty());
    REQUIRE(!small.book.apply(*change));
    CHECK(small.book == after);
}

TEST_CASE("The root zone as it is, is the mean of the day up to the last reading, if that is not old") {
    SmallBook small = smallBook();
    CHECK(!measuredRootZone(small.book, small.warm, day("2027-03-01")));
    auto readings = hourly("2027-02-27", 3, 1900);                  // up to 23 h of 1 March
    for (std::size_t i = 48; i < 60; ++i) readings[i].value = 1700; // the first half of its last day
    perform(small.book, keep(small.warm, readings));
    CHECK(measuredRootZone(small.book, small.warm, day("2027-02-28")) == 19_degC);
    CHECK(measuredRootZone(small.book, small.warm, day("2027-03-01")) == 18_degC);
    CHECK(measuredRootZone(small.book, small.warm, day("2027-03-02")) == 18_degC);
    CHECK(!measuredRootZone(small.book, small.warm, day("2027-03-03")));
    CHECK(!measuredRootZone(small.book, small.warm, day("2027-02-26")));
    // Half a day has been logged: the day and night up to its end.
    perform(small.book, keep(small.warm, hourly("2027-03-04", 1, 2200)));
    readings = hourly("2027-03-05", 1, 2000);
    readings.resize(12);
    perform(small.book, keep(small.warm, readings));
    CHECK(measuredRootZone(small.book, small.warm, day("2027-03-05")) == 21_degC);
    // From day to day, on and back, it is as each day by itself has it.
    RootZoneLogs logs;
    for (const int step : {1, -1})
        for (int ahead = 0; ahead < 45; ++ahead) {
            const Day on = (step > 0 ? day("2027-02-01") : day("2027-03-17")) + step * ahead;
            CHECK(logs.on(small.book, small.warm, on) == measuredRootZone(small.book, small.warm, on));
        }
    // Air is not the root zone, and another zone is not this one.
    CHECK(!measuredRootZone(small.book, small.cool, day("2027-03-01")));
}

TEST_CASE("What a book has of a minute stays; the rest of an overlap is added") {
    SmallBook small = smallBook();
    const ReadingPlace place{small.warm, std::nullopt};
    perform(small.book, keep(small.warm, hourly("2027-03-01", 2, 2000)));
    ChannelReadings again{Channel::RootZone, hourly("2027-03-02", 2, 2000)};
    again.readings[0].value = 1500;
    const ReadingsToKeep found = toKeep(small.book, place, again);
    CHECK(found.fresh == 24);
    CHECK(found.same == 23);
    CHECK(found.another == 1);
    perform(small.book, {KeepReadings{place, {again}}});
    CHECK(readingsBetween(small.book, place, Channel::RootZone, day("2027-03-01"), day("2027-04-01")) ==
          hourly("2027-03-01", 3, 2000));
    // The same file once more changes nothing.
    const HouseBook before = small.book;
    perform(small.book, {KeepReadings{place, {again}}});
    CHECK(small.book == before);
}

TEST_CASE("Two files of one group become one month") {
    SmallBook small = smallBook();
    perform(small.book, {Group{"Keep two files",
                               {keep(small.warm, hourly("2027-03-01", 1, 2000)),
                                keep(small.warm, hourly("2027-03-02", 1, 2100))}}});
    CHECK(small.book.all<ReadingMonth>().size() == 1);
    CHECK(readingsBetween(small.book, {small.warm, std::nullopt}, Channel::RootZone, day("2027-03-01"),
                          day("2027-03-03"))
              .size() == 48);
}

TEST_CASE("Days of readings are removed, and put back by undo") {
    SmallBook small = smallBook();
    const ReadingPlace place{small.warm, std::nullopt};
    perform(small.book, keep(small.warm, hourly("2027-02-20", 60, 2050)));
    perform(small.book, keep(small.warm, hourly("2027-02-20", 60, 8000), Channel::Humidity));
    const HouseBook before = small.book;
    const Command remove{RemoveReadings{place, Channel::RootZone, day("2027-02-01"), day("2027-03-11")}};
    CHECK(words(small.book, remove) == "Remove readings of Bench 1 · A from 2027-02-01 to 2027-03-10");
    const auto change = small.book.perform(remove);
    REQUIRE(change);
    const auto left =
        readingsBetween(small.book, place, Channel::RootZone, day("2027-01-01"), day("2028-01-01"));
    CHECK(left.size() == (60 - 19) * 24);
    CHECK(left.front().minute == minuteOf("2027-03-11"));
    CHECK(small.book.readingsOf(place, Channel::Humidity).size() == 3);
    REQUIRE(!small.book.apply(change->inverse()));
    CHECK(small.book == before);
    perform(small.book, {RemoveReadings{place, std::nullopt, day("2027-01-01"), day("2028-01-01")}});
    CHECK(placesWithReadings(small.book).empty());
}

TEST_CASE("Readings that no logger has measured are refused") {
    SmallBook small = smallBook();
    const auto at = [&](int hundredths, Channel channel) {
        return refused(small.book, keep(small.warm, hourly("2027-03-01", 1, hundredths), channel));
    };
    CHECK(at(10'001, Channel::RootZone) ==
          "Bench 1 · A, root zone of 2027-03: a temperature that is not from -60 to 100 °C");
    CHECK(at(-1, Channel::Humidity) ==
          "Bench 1 · A, humidity of 2027-03: a humidity that is not from 0 to 100 %");
    CHECK(refused(small.book, keep(small.warm, {{60, 1}, {60, 2}})) ==
          "readings: they are not in order of time");
    CHECK(refused(small.book, {KeepReadings{{}, {{Channel::Air, hourly("2027-03-01", 1, 2000)}}}}) ==
          "month of readings: it must be of a zone or of a house");
}

TEST_CASE("A house or a zone with readings is not removed") {
    SmallBook small = smallBook();
    House house = small.book.get<House>(small.house);
    house.id = {};
    house.name = "Tunnel";
    perform(small.book, {Put<House>{house}});
    const HouseId tunnel = small.book.all<House>().rbegin()->first;
    perform(small.book,
            {KeepReadings{{std::nullopt, tunnel}, {{Channel::Air, hourly("2027-03-01", 1, 900)}}}});
    CHECK(refused(small.book, {Remove<House>{tunnel}}) ==
          "Tunnel: readings of a logger are kept of it; remove those first");
    perform(small.book, {RemoveStay{small.weaning}});
    perform(small.book, keep(small.cool, hourly("2027-03-01", 1, 900)));
    CHECK(refused(small.book, {Remove<Zone>{small.cool}}) ==
          small.book.get<Zone>(small.cool).name +
              ": readings of a logger are kept of it; remove those first");
    perform(small.book,
            {RemoveReadings{{small.cool, std::nullopt}, std::nullopt, Day::first(), Day::last()}});
    CHECK(refused(small.book, {Remove<Zone>{small.cool}}) == "done");
}
