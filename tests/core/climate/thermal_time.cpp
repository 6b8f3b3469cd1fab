#include "core/climate/thermal_time.h"

#include "tests/support/within.h"

using namespace warmbench::climate;
using warmbench::tests::within;

TEST_CASE("Base and cap cut a line where it crosses them, not at the readings") {
    const std::vector<Reading> upAndDown{{0, 0}, {3, 30}, {6, 0}};
    // Above 10 for 2 of every 3 hours and above 20 for one: 5 degrees on average in between, 10 above.
    CHECK(thermalTime(upAndDown, {10, 20}).total() == within(2 * (1 * 5.0 + 1 * 10.0) / 24, 1e-12));
    CHECK(thermalTime(upAndDown, {10, {}}).total() == within(2 * 2 * 10.0 / 24, 1e-12));
}

TEST_CASE("Steps of more than three hours are gaps, and are told apart") {
    const std::vector<Reading> readings{{0, 20}, {3, 20}, {7.5, 20}, {8, 20}, {20, 20}};
    const ThermalTime found = thermalTime(readings, {8, {}});
    REQUIRE(found.gaps.size() == 2);
    CHECK(found.gaps[0].from == 3);
    CHECK(found.gaps[1].to == 20);
    CHECK(found.gapHours() == 16.5);
    CHECK(found.measured == within(12 * 3.5 / 24, 1e-12));
    CHECK(found.acrossGaps == within(12 * 16.5 / 24, 1e-12));
}

TEST_CASE("Three hours in rounded numbers are no gap") {
    const double twentyPastSix = 6 + 20.0 / 60;
    const double twentyPastNine = twentyPastSix + 3 + 1e-13;
    CHECK(thermalTime(std::vector<Reading>{{twentyPastSix, 20}, {twentyPastNine, 20}}, {8, {}}).gaps.empty());
}

TEST_CASE("No reading and one reading give no degree-days") {
    CHECK(thermalTime({}, {8, {}}).total() == 0);
    CHECK(thermalTime(std::vector<Reading>{{5, 20}}, {8, {}}).total() == 0);
}

TEST_CASE("A steady temperature counts by its excess, between base and cap") {
    CHECK(steadyDegreeDays(20, 48, {8, {}}) == 24);
    CHECK(steadyDegreeDays(5, 48, {8, {}}) == 0);
    CHECK(steadyDegreeDays(30, 24, {8, 25}) == 17);
}
