#include "core/climate/curve.h"

#include <catch2/catch.hpp>

#include <random>

using namespace warmbench::climate;

TEST_CASE("Few readings are drawn one by one, with those at the edges, and broken at gaps") {
    const std::vector<MinuteReading> readings{{0, 100}, {60, 200}, {120, 300}, {400, 400}, {460, 500}};
    const auto lines = curvesOf(readings, 50, 410, 100);
    REQUIRE(lines.size() == 2);
    REQUIRE(lines[0].size() == 3);
    CHECK(lines[0][0].minute == 0);
    CHECK(lines[0][2].value == 3);
    REQUIRE(lines[1].size() == 2);
    CHECK(lines[1][1].value == 5);
    CHECK(curvesOf(readings, 50, 50, 100).empty());
    CHECK(curvesOf({}, 0, 100, 100).empty());
}

TEST_CASE("Many readings are drawn with every column's lowest and highest, in order of time") {
    std::mt19937 random(3);
    std::vector<MinuteReading> readings;
    for (std::int32_t minute = 0; minute < 100'000; minute += 10)
        readings.push_back({minute, static_cast<std::int32_t>(random() % 3000)});
    readings[5000].value = -4000;
    readings[5001].value = 9000;
    const auto lines = curvesOf(readings, 0, 100'000, 500);
    REQUIRE(lines.size() == 1);
    CHECK(lines[0].size() <= 1000);
    double lowest = 0;
    double highest = 0;
    for (std::size_t i = 0; i < lines[0].size(); ++i) {
        if (i > 0) CHECK(lines[0][i].minute > lines[0][i - 1].minute);
        lowest = std::min(lowest, lines[0][i].value);
        highest = std::max(highest, lines[0][i].value);
    }
    CHECK(lowest == -40);
    CHECK(highest == 90);
}
