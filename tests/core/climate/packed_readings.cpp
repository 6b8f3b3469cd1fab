#include "core/climate/packed_readings.h"

#include <catch2/catch.hpp>

#include <random>

using namespace warmbench;
using namespace warmbench::climate;

namespace {

const Day march = *Day::make(2027, 3, 1);
const std::int32_t marchBegins = march.number() * minutesPerDay;

std::vector<MinuteReading> unpacked(const std::string& text) {
    std::vector<MinuteReading> readings;
    CHECK(unpack(text, march, readings));
    return readings;
}

bool refused(const std::string& text) {
    std::vector<MinuteReading> readings{{1, 2}};
    return !unpack(text, march, readings) && readings == std::vector<MinuteReading>{{1, 2}};
}

} // namespace

TEST_CASE("Readings of a regular logger come back from about a byte and a half each") {
    std::vector<MinuteReading> readings;
    std::mt19937 random(1);
    std::int32_t value = 2000;
    for (std::int32_t minute = 0; minute < 31 * minutesPerDay; minute += 10) {
        value += static_cast<std::int32_t>(random() % 41) - 20;
        readings.push_back({marchBegins + minute, value});
    }
    const std::string text = pack(readings, march);
    CHECK(unpacked(text) == readings);
    CHECK(text.size() < readings.size() * 3 / 2);
}

TEST_CASE("Readings at odd times, below zero and at both ends of a month come back") {
    std::mt19937 random(2);
    for (int round = 0; round < 50; ++round) {
        std::vector<MinuteReading> readings{{marchBegins, -6000}};
        while (true) {
            const auto next = readings.back().minute + 1 + static_cast<std::int32_t>(random() % 3000);
            if (next >= marchBegins + 31 * minutesPerDay) break;
            readings.push_back({next, static_cast<std::int32_t>(random() % 16'001) - 6000});
        }
        readings.push_back({marchBegins + 31 * minutesPerDay - 1, 10'000});
        if (readings[readings.size() - 2].minute == readings.back().minute) readings.pop_back();
        CHECK(unpacked(pack(readings, march)) == readings);
    }
}

TEST_CASE("A text that holds no readings of the month is refused and leaves nothing behind") {
    const std::string sound = pack(std::vector<MinuteReading>{{marchBegins + 5, 1800}}, march);
    REQUIRE(!refused(sound));
    CHECK(refused(""));
    CHECK(refused(sound + "A"));
    CHECK(refused(sound.substr(0, sound.size() - 1)));
    CHECK(refused("ä"));
    CHECK(refused("AAAA"));           // a run of none
    CHECK(refused("ABBA"));           // a step in a run of one
    CHECK(refused("AACAA"));          // no step in a run of two
    CHECK(refused(sound + "AABA"));   // the same minute again
    CHECK(refused("_____________B")); // a number without an end
    CHECK(refused("AB_____PAA"));     // more readings than the month has minutes
    CHECK(refused(pack(std::vector<MinuteReading>{{marchBegins + 31 * minutesPerDay, 1800}}, march)));
}

TEST_CASE("Where two rows have a reading of one minute, the kept one stays") {
    const std::vector<MinuteReading> kept{{1, 10}, {3, 30}};
    const std::vector<MinuteReading> added{{0, 5}, {3, 31}, {4, 40}};
    CHECK(merged(kept, added) == std::vector<MinuteReading>{{0, 5}, {1, 10}, {3, 30}, {4, 40}});
}

TEST_CASE("The month of a minute is known before 1970 too") {
    CHECK(monthOf(marchBegins) == march);
    CHECK(monthOf(marchBegins - 1) == *Day::make(2027, 2, 1));
    CHECK(monthOf(-1) == *Day::make(1969, 12, 1));
    CHECK(nextMonth(*Day::make(2027, 1, 1)) == *Day::make(2027, 2, 1));
    CHECK(nextMonth(*Day::make(2027, 12, 1)) == *Day::make(2028, 1, 1));
}
