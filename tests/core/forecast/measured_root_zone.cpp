#include "core/forecast/measured_root_zone.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::forecast;

namespace {

const Day first = Day::fromNumber(20'000);
constexpr ZoneId zone{3};
const climate::Thresholds overSix{6, {}};

/// Readings of one temperature every hour for so many hours, from `hour` of the first day on.
std::vector<climate::Reading> hourly(double hour, int count, double celsius) {
    std::vector<climate::Reading> readings;
    readings.reserve(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i) readings.push_back({20'000 * 24.0 + hour + i, celsius});
    return readings;
}

} // namespace

TEST_CASE("A whole day is measured, in its own zone") {
    const MeasuredRootZone measured(zone, hourly(0, 49, 18));
    CHECK(measured.on(zone, first, overSix).value() == Approx(12));
    CHECK(measured.on(zone, first + 1, overSix).value() == Approx(12));
    CHECK_FALSE(measured.on(zone, first + 2, overSix));
    CHECK_FALSE(measured.on({4}, first, overSix));
    CHECK(measured.between(first + 1, first + 2).size() == 24);
}

TEST_CASE("Midnight between two readings lies on the straight line between them") {
    std::vector<climate::Reading> readings = hourly(-0.5, 26, 18);
    readings.front().celsius = 10; // 14 at midnight
    const MeasuredRootZone measured(zone, readings);
    CHECK(measured.on(zone, first, overSix).value() == Approx(12 - 0.5 * 0.5 * 4 / 24));
}

TEST_CASE("A day with a long gap, or not covered to its ends, is not measured") {
    std::vector<climate::Reading> gap = hourly(0, 10, 18);
    for (const climate::Reading& reading : hourly(14, 12, 18)) gap.push_back(reading);
    CHECK_FALSE(MeasuredRootZone(zone, gap).on(zone, first, overSix));
    CHECK_FALSE(MeasuredRootZone(zone, hourly(1, 30, 18)).on(zone, first, overSix));
    CHECK_FALSE(MeasuredRootZone(zone, hourly(0, 24, 18)).on(zone, first, overSix));
}
