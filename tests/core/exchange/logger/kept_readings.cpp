#include "core/exchange/logger/kept_readings.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::exchange;

TEST_CASE(
    "A book keeps the first reading of a minute, in its place's winter time, and humidity where it is") {
    const auto file = readLogger("logger.csv",
                                 "time,temp,rh\n2027-07-01T12:00:10Z,20.004,80\n2027-07-01T12:00:50Z,25,81\n"
                                 "2027-07-01T12:10:00Z,20.5,\n",
                                 {}, {"temp", "rh", {}, {}, {}, {}});
    REQUIRE(file);
    const KeptReadings kept = keptReadings(*file, 60, Channel::Air);
    CHECK(kept.sameMinute == 1);
    REQUIRE(kept.channels.size() == 2);
    const std::int32_t one = Day::make(2027, 7, 1)->number() * climate::minutesPerDay + 13 * 60;
    CHECK(kept.channels[0].channel == Channel::Air);
    CHECK(kept.channels[0].readings == std::vector<climate::MinuteReading>{{one, 2000}, {one + 10, 2050}});
    CHECK(kept.channels[1].channel == Channel::Humidity);
    CHECK(kept.channels[1].readings == std::vector<climate::MinuteReading>{{one, 8000}});
}
